/**
 * Ordinary words and names that lie one slip from a word of the trade ("cold" from "sold"): each is taken as
 * typed, never corrected. Made by running common English words through the speller without this list.
 */
export const ORDINARY: ReadonlySet<string> = new Set(
  `
abel abide abound accents accept acquire acquires acrylics action actions advertise advertiser advertises
aground aide aided aiding ailing airing alien allay allays alloy alloys ally antiques arming ascent asides
assemble assembler assembles attacked attacking avalanches awry baas babble babe babes backer backers
backings bade bags baited baiting baits baked bakery baking balanced balances balding bale baled bales
ball balled band bandying banes bang banging bani banked banker bankers banks banned banning bans barbs
bard bards barer bares barfs barked barking barks baron barons barred barrels barren barristers based
baser basest bashes basis basked basking bass basses baste bastes basting batch bates bathe bathing
bathrooms baths bating batter batters battling bawled baying beached beaches beaching beads beak beaker
beakers beam beans bear beard beards bears beatings beats bedrooms bedsides beeches beef beep beer beets
beginnings begs belches bells benched bending bends benny bent bents beset besets beside bess bests bets
betting bias biases bibs bide biked biker bikers bikes bill bills binding bindings binged bins bites
blacked blacking blacks blame blames blanched blanches blanching blank blanked blanker blankest blare
blares blaze blazes bleachers bled blob blobs bloc blogs blot blots blows bluffed bluffing blush blushes
boar boas boast boasted boasts boats bobs bodes bogs boiled bold bond bonding bonds bones bongo bongos
booked books boos booster booted boots booty bops bores born bough boughs bout bouts bows boxed boxer
boxers brace braces brag brags braid braids braked bran brand branding brands bras brash brat brats brave
braves bray brays breach breached breaches breaching bread breads breakfasts bred brenda brew bride
bridged bridges bridle broad broads broken broker brook broth broths brushed bubbled bubbles bubbly buck
bucked bucking buds buffers build buildings bulls bumble bummed bumper bunch bunches bung bunked buns
buoying buoys burble buried burner burp burps burr burred burro burros burrs bury burying buses bush
bushes busying butchers butchery buts buttery butting buys cabled caged caging caked caking calf caller
calls calm calmed camel cameo camp camped camping camps cancels cancer canine canines canned canning canoe
canoed canoes caped capped captions captor captors carat carats carding cared caring carl carla carped
carpets cased cashes casing casings casks cater caters cats cause causes caved caving cawed cawing cease
ceases cedars cede ceded cedes cell chafe chain chaining chains chalks chalky champ champed champing
champs chance chanced chances chancing chanted chanting chap charging charmed charmer charmers charred
chart charted charter charters charts chas chased chases chasm chaste chaster chat chats cheat cheats
checked checks cheek cher cheryl chess chet chick chimp chin chink chino chins chips chirp chit choir
choirs chop chopped chord chords chose chuck chuckled cider circulars clack clacks claiming clam clammed
clamming clams clan clanged clanging clanking clans clap clapped clapping claps clarity clash clasp
clasped clasping clasps classifies cleanest cleanings cleans cleansed cleanser cleansers cleanses
cleansing cleared clearer clearing clears cleaved cleaver cleavers cleaving click clicks clip cloak cloaks
closed closer closes closest clot clothed clover clovers clubs cluck clucked clucks clue clump clumped
clumping clumps coaches coal coaled coaling coals coast coasted coaster coasters coasting coasts coatings
coax coaxed coaxing cocks cocktails codding coding cods coed coeds coffees coffer cogs cold colds colt
colts communist commuter compete competed competes completer completes compute computed computers computes
conditioned cone cones consignments consoled consuls contacts contracts contrast cooped coos coped copied
cops coral corals core cored cores coring cork corking corks corn cornea corned corners cornet cornier
corning corns coroner corps corral corrals correcting corrections corrects costed couched cough counted
counters counts county court cove covert coverts coves covet covets cower cowers cows coyer crab crabs
cradled crafts crafty cramp cramped cramping cramps crane craned cranes craning crash crated crater
craters crating crave craves craze crazes create creates credence credits crest crests cries crock crocks
cropped crouch crouches cubed cubes cubs cued cull culled cupped curbed curd cure curl curled curls
currant currents cursed cuts cuttings dabbed dabs dads dairy dais daisy dale dallies damp damped damps
dams dank dare dart daubed dawn dead deaf dealt dean deans dear dears debits debut decaf decay decays
decide decides deck decks decoded decreased decreasing deem deeps deer deleted deletes deliver delivers
deplete deport depose depot depots derail derailed derailing derided derive derived deriving desserts
details detain detained detaining dial dials dicing dicks died dies diking dill dills dine diner dinned
dinners disco discos discus dismounted displays disposals distresses dive dived diver divers divide
divided divides diviner diving doilies dolls domains dome donates donation dons dope dork dose dote
doubled doubles doubly dove downs downy doze dresden dressed dresses dressier dressings dried drier driers
drifting drink drip dripped dripping drivel drivels drivings droll drone droop drooped drooping droppings
droves drown drug drums drunks drys dual duck ducts dues dull dully dumpy dune duped dusts dying dykes
eagerest earner eased eases east eclectic edged edger edges edgy entertainments entryways eras erased
eraser erases estates executives extensions extras face faces fade fades failing fairy fake faked fakes
falling fame farce farces fared farmhouses farms farts fate fates faxed faxes faxing faze fazes feats feds
feeds feels feinting felled feller felling fells felts fend ferns ferried fests fiends filed files filet
fillets fillings fills film filmed filming filter filters finale finals finds fined fins fired fires firs
firsts fist fixes flair flairs flake flakes flame flamed flames flanked flare flared flares flatting
flawed fled flees fleet fleets flew flex fling flog flood floors flour flouting foal foals foamy foes
foiling fold fond font foods foots ford fording fore fores forge forged forger forges forgets forms fort
foul founds fount fours foxed foxing framed frat frats fray frays freebies freed freer frets fried frogs
frond fronts frost fulled fuller fulling fund furl furls furry gabbed gabbing gaggles gait gaits gales
gals gamed gamer games gapes garaged garages garbage gardens gashes gasps gated gates gavel gays gaze
gazed gazes gazing gees gelds gems genes gent gentlemen genus gets getting giggles gild gins glads glare
glared glares glaring glassed glassy glee glenda glided globe globes gloss glosses gloved glum glut gluts
glutted glutting gnus goads goat goats goggle goings golds golf gong goring gossips grabber grander
grandfathers grass grasses grate grave graze grazed grazes grazing grid grids grim grin grins grip grips
grove groves grubbed grubbing guide guides gunk gusted gusting gutter habitats hail hailed hailing haired
haled haler haling halls halo halt halve hammed handled handler handlers hands handy handymen hang hank
hard hardest hared hares harvests hate haul haunt haven haves haze heads heady heaps heard heart heath
heats heave helms helped hems hided hides highs hiked hikes hill hind hinged hint hitched hived hives
hoarse hock hocks hoed holdings holed holing holy homed homer homes homey honk honks hooding hoods hoof
hoofs hoop hoops hoot hoots hoped hopes hops horde hordes hording horsed hose hoses hostel hotels housed
hovel hull hump hunch hunches hung hunk hunts hurt hush hushes hutchins hype impacts impart incomes
increase increases inland instilled instilling interests interned jell jells jest jointed jolly jumbled
jumbles junket junks juts keel keeling keen keener keening keepers keeps kegs kelp kidded kilts kinked
kitchenettes kitchens kite kites knack knifed knits knives knocker knocks knot knots knows label lace lack
lacks lade laded lading lagged lags lain lake lamar lamb lambs lames lane lapels laps larded larger lash
lashes lass lasted lasting lasts latched lath lathed lather lathers laths launch lawns laws lead leaded
leader leafed leafing leafs leafy leak leaking leanings leans leap leaping learning lease leases leasing
leathery leave leaved leaving lefts legged lemons lenders lens lent levee levees lever levered levering
levers lewder libels lice licensed lick licks lied lifted lifting lifts liked liker lilted lilting limber
limbers lime limed limp limps linear linens lines linger lingered lingers linings linked linker linking
lips liquidating liquors lisp lisped lisping listen lists lithe lived liven liver livers lives livings
load loader loads loafed loafing loafs loam loaned loathe loathes loaves lobe locked locket lockets lodged
lofted lofts lofty logger logs loin loins lone loners longed looks loon loons loot lope lops lorded
lording lore lose loser lounged loved lover loves loving lowed lowers luck lucks lugged lugs lump lumps
lunge lunges lurch lusted lusting lute lynch mabel machined mads magazines mail mails makers makeups
making malt malts mangle mangles mantled maps marbled marking marks marla marred marrow marrows mars mart
marty mash mashing masked mass massing mast masts maternal maul mauls meal mean means measured meat meats
mechanism medal median medias medicines meek melding melt melts memberships mend mental mere metals mete
meted meteor meteors metes mike mikes miking milks milky milling mimes minds mined miner minerals mines
minor minors minuets minuses minuted minuter minutest mire mires miser mixer mixes mobs mole moles monkey
monkeys mooed mooing moor moos moose moped mopes moping mores morn moss motors mounding moused mouses
mousse mousy moves mowed mower mowers mowing mows mule mules mull mulls muscled muse musk muted muter
mutes mutt naiver nape nestling nets netting newer nigh nights node none nose nude nudes nudged nuns oats
officer offices ogled ogling opener opts orbitals oust ousts outdoors outset outsets owes owls owned paced
paces pacing packed pact pacts padres paged pager pagers paging pail pain pained paining painter paintings
palatable palate paled paler pales paling palled pallor palls palms paltry pamper pampers pane panes pang
pant panted panthers panties panting pants parch parched parching pare pared paring parka parked parks
parred parring parse parsed parses parsing part partials partied parting partings pass passes pasta pasted
pastel pastes pasting pastries pastry pasty patches patios pats patted patties patting patty paula pauline
pauper paupers paused pauses paved paving pawed pawing pawns payee payer payers payoffs pays pecked pecks
peep pends penis penning peons pepped pepping percents perch perk perking persona personae personals pest
pester pests petting petty phoned phones picker picket pickled pickling pickups picky picnics pictured
pictures pier piers pies pigs piked pikes piking piled piling pilings pilled pimping pinched pined pining
pinked pinking pinks pint pints pipes pitcher pitches pitching pits pitting pizzas places plainer planar
planed planets planks planner planners planter planters planting plants plastics plated plates platformed
platforms playable played players playing playoff plays pliant plied plies plods plotting ploy plying
poach poaching poet poets pointed pointer pointers pointing points poky poles polices polios polled polls
polo polyp ponds ponies pony pooch pops pork port porter ports pose posed poses posh posher posies posing
posters pots potted potter potties potty pouch pour pours pouted prawn pray prayed prayer praying preps
pressed prey preys priced pricey pricing prick pricked pricking pride prided priding pried primes primmer
primped primping prince print printers printing prints prize procession prods professing promote promoter
promotes prompted prone prop propped propping prying psalm pucks pulley pullouts pulp pulped pulps pulsed
purchase purchaser purchases putt puttied putting putts quiet quill quilts quit races racking racy rages
raided railed rained raises rake rams rank ranks rant rants rapes raps rare rated rates rave rays raze
read reads realist rebind rebinding rebuild recanted recanting receive receiver receives recline reclined
reclines records rectal reduces refinishes refunds refuse regaining regaling rein reindeer reinforce
reinforces reins relish relished relishing remainder remainders reminded reminds remote removed remover
removes rend rends repaid replace replaces replayed replaying reported reposed reprinted reprinting
reprise rescue rescuer rescues reserves reset resets resign resigns resist resisted resisting resorted
resorting respiratory retaining retired retiring retorted retorting returns reused reuses revere reveres
reverie reversed reverses reverts rewind rewinding ripe rise rite roads roar robe robes rock rocked rocket
rockets rockier rocks rocky rode roes roles rolled rolls roof rook rooking rooms roomy root rooter roped
rosary rose roses roster rosters rotund rounds rouse route routed routes rove roves rubs rues rummaged
rummages rums rungs runs runt runts ruse rust rusts ruts sack sacking sacks sadder sades safely safer
safest sagged sagging salt salts salvaged salvages salves salving sampling sandier sandy saner sang
sapling saplings sash satin savage saver saves savings sawed sawing saying scale scaled scales scaling
scalpers scalping scampers scant scare scared scent schools scold scooted scooting scope scoped scorch
scorer scores scorn scorned scotchs scoured scram scrapes scraps scratchy screwy seal seals seam seamed
seaming seams sear seared searing sears seas seated seconds secs section sections sects seed seeded
seedier seeds seeing seep sees selves sending sends serve served serves serviced services servile setter
setters settings settled settler settlers settling sever severs sewer sexed sexing shack shackle shackles
shacks shaded shady shake shakes shame shamed shames shape shaped shapes share shared shares shaven shaver
shaving sheaf sheave sheaves sheen sheep sheer sheers shel shell sheller shelling shelved shied ship ships
shits shoes shone shooed shooing shoos shootings shopping shore shores shorting shots shoulder shouting
shove shower shown shows showy shrank shred shreds shrew shrews shriek shrine shrinks shrunk sicks sics
sided sidewalks sidle sidles sifts sigh sighs silk silks sill silts sing sings sinus sipping sips sire
sires siring sirs site sites sixes size sizes skewed skewing skill skipper skipping skits slab slabs slack
slacking slacks slag slain slam slams slander slanders slang slaps slash slashes slate slates slave slaved
slaving slay slays sleds sleeker sleepers sleepier sleet sleets sleighed sleighs slewed slewing slices
slick slicks slid slime sling slings slink slinks slipped slippers slippery slipping slit slits slob slog
slops sloshed slots slowed sluts smack smacking smacks smart smarted smarting smash smashed smelling smite
smites smocking snacking snap snatches snide snipping snitched snits snooped snoozed snoozes snored snores
snow snowed snugged snugging soap socked sodas sods soft softies soil soled soles solo soothing sops sores
soul sowed sowing sows spaced spaces spacey spades spare sparing sparkle sparkles spate spay spayed
spaying spays speckle speckles sped speed speeding speller spelling spends spewed spewing spiced spices
spicy spike spill spine spire spirit spit spites spits splashed splat splats splay splayed splaying splice
splint splits spoke spokes sponged spongy spool spools spores sprang sprays spreads spreed sprig sprigs
springy sprint sprints sprung spry spying squared squarer squarest squire squires stable stabled stabler
stables stabling stage stages stagings stair stairs staked staking staled staler staling stalkers stalking
stall stalled stalling stammers stamp stamping stan standings stank star stared stares staring stark
starred starring stars starter startled startling starts starved starving stashed stated statements
statesmen stating stave staving stayed staying stays steady steaks stealing steals steamed steamier steams
steamy steels steep steeper steer stella stem steps stew stewed stewing sticking sticky stills stilt sting
stinging stings stink stinks stinting stocking stocks stoke stokes stoking stole stoles stomp stomps stone
stones stoop stooped stoops stops stored stories stork storks storm storms story stove stoves stowed
strain strained straining strains strand stranding strands straw straws strayed straying strays stream
streamer streamers strew strewed strewing strews stride strife striker strikes string strings strip stripe
striping strips strive stroke stuck stud students studios studs stumps suave subscriptions sued suing suit
suited suits sundae sundry sunk superb supers supper supple supplest supplied supplier suppliers suppose
supposes surer swab swam swamp swamps swan swaps sway sways sweat sweats sweeper sweets sweller swelling
swig swigs swill swine swines swivels swooped swung tabby tabled tablet tablets tabs tacky taco tacos tact
tads tail taint taints taken taker takes taking talc tale tales talks tally tamed taming tang tangs tanks
tans taper tapers tapped tapping taps targets tars tart tarts tasks taxing taxis teaches teaks team
teaming tear teas teasing tees telephoned telephones televising televisions tents tess test testable texts
thaw thee thin thinker thinkers thinned thinnest thins thorough thou though thrash thrashed thrashes
thrashing threat threats threes thrifty throw thus tick ticks tier tiers tilde timed timer times tings
tins tired title titles toddle toddled toddlers toddles toeing tomorrows tone tong toning toots topped
torch torched torching tort tosses tote toting touches touchings touchy tough towards towed tower towers
town towns toying tracks trail trailed trainer trainers trains trait transacting transactions transfers
translation trap traps trashy trawler trawlers tread treads treatable treed trek treks trestles trick
tricks tries trios tripe tripped trips troll trolls trough trowel trowels truce truces true trues trundled
tuck tucks tugs tulips tuna tune turd turf turns tusk tuxes tweak twee twice twined twinge twinges twins
twos tyke typed types typing umbrellas unfit unfits unite unites unity unleaded unto upgraded upholster
upholsters upper vague values valve vane vanes vanish vanished vanishes vanishing vanishings velvety
vendors voids waded wades wading waged wages waging waif waist waits waked wakes waking walk walker walled
walls walt wand wanda waned wanes waning warehoused wares warp warps washings wasp wasted wastes wasting
waved waves waving websites welt wept west whine whitewashes wicked wicket wickets wider widow width wile
wince windows wined wines wings wipe wiped wipers wipes wire wiser wished wishes witch withheld withholds
wits wive woody wooed worded wording words wore workable worker workings works worm wormed worming worn
wrapper wrenched wretch wretches wring writ writhing writings yarn yarns yearn yesterdays zipped
`
    .trim()
    .split(/\s+/),
);
