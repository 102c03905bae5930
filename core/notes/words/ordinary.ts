/**
 * Ordinary words and names that lie one slip from a word of the trade ("cold" from "sold"): each is taken as
 * typed, never corrected. Made by running common English words through the speller without this list.
 */
export const ORDINARY: ReadonlySet<string> = new Set(
  `
abel abound accents accept acquire acquires acrylics action actions advertise advertiser advertises
afternoons aground aiding ailing airing allays alloys ally antiques arming ascent asides assemble
assembler assembles attacked attacking avalanches babble backer backers backings butter butters below finger fingers float floats study studies swapped swap tiger tigers ignore ignores ignored directory searches organize organized spanning recover recovers finer holes caches packet packets traces trace nexts securing gating fired rusty radius baited baiting baits
baked bakery baking balanced balances balding baled balled bandying banging banked banker bankers banks
banned banning barbs bard bards bares barfs barked barking barks baron barons barred barrels barren
barristers based baser basest bashes basked basking bass basses baste bastes basting batch bathe bathing
bathrooms baths bating batter batters battling bawled baying beached beaches beaching beads beaker beakers
beans beards bears beatings bedrooms bedsides beeches beginnings belches benched bending bends benny beset
besets beside bess betting biases biked biker bikers bikes bill bills binding bindings binged bites
blacked blacking blacks blames blanched blanches blanching blank blanked blanker blankest blares blazes
bleachers blobs blogs blot blots blows bluffed bluffing blushes boasted boasts boiled bond bonding bonds
bongos booked books booster booted boots booty bough boughs boxers braces braid braids braked bran brand
branding brands bras braves breach breached breaches breaching bread breads breakfasts brenda bride
bridged bridges bridle broad broads broken broker brook broths brushed bubbled bubbles bubbly buck bucked
bucking buffers buildings bumble bummed bumper bunches bunked buoying buoys burble buried burner burred
burying bushes busying butchers butchery buttery butting cabled caging caking caller calls calmed camel
cameo camped camping camps cancels cancer canine canines canned canning canoe canoed canoes capped
captions captor captors carat carats carding cared caring carl carla carped carpets cased cashes casing
casings cater caters cats cause causes caving cawing cease ceases cedars chaining chains chalks chalky
champed champing champs chance chanced chances chancing chanted chanting char charges charging charmed
charmer charmers charred chars chart charted charter charters charts chas chased chases chaste chaster
cheats checked checks cher cheryl chess chet chimp chin chips chirp choirs chopped chord chords chuck
chuckled circulars clacks claiming clammed clamming clams clan clanged clanging clanking clans clapped
clapping claps clarity clash clasped clasping clasps classifies cleanest cleanings cleans cleansed
cleanser cleansers cleanses cleansing cleared clearer clearing clears cleaved cleaver cleavers cleaving
clicks cloaks closed closer closes closest clothe clothed clover clovers clubs clucked clucks clumped
clumping clumps coaches coaled coaling coast coasted coaster coasters coasting coasts coatings coaxed
coaxing cocks cocktails codding coding coffees coffer colts commissions communist commuter compete
competed competes completer completes compute computed computers computes conditioned consignments
consoled consuls contacts contracts contrast cooped coped copied cored coring corking cornea corned
corners cornet cornier corning coroner correcting corrections corrects costed couched counted counters
counts county covert coverts coves covets cowers crabs cradled crafts crafty cramped cramping cramps crane
craned cranes craning crash crated crater craters crating craves crazes create creates credits crests
crocks cropped crouch crouches cubed cubes culled cupped curbed curd curled currant currents cursed
cuttings dabbed dale dallies damped daubed dealt debits decays decide decides decoded decreased decreasing
deeps deleted deletes delivers deplete deport depose depot depots derail derailed derailing derided derive
derived deriving desserts details detain detained detaining dicing diking dills diner dinned dinners disco
discos discus dismounted displays disposals distresses dived diver divers divide divided divides diviner
diving doilies dolls domains donates donation doubled doubles doubly downs downy dresden dressed dresses
dressier dressings dried drier driers drifting drink dripped dripping drivel drivels drives drivings droll
drone droop drooped drooping droppings droves drown drums drunks ducts dumpy duped dusts dying dykes
eagerest earner eases eclectic edged edger edges entertainments entryways eras erased eraser erases
estates executives extensions extras failing fairy faked falling farce farces fared farmhouses farms
faxing feeds feels feinting felled feller felling fells felts ferns ferried fiends filed files filet
fillets fillings filmed filming filter filters finale finals finds fined firs firsts flair flairs flake
flakes flamed flames flanked flare flared flares flatting flawed flees fleet fleets fling flood floors
flour flouting foamy foiling fond foods foots fording forge forged forger forges forgets founds fours
foxing framed freebies freed freer fried frogs fronts fulled fuller fulling fund gabbed gabbing gaggles
gals gamed gamer games garaged garages garbage gardens gashes gated gates gavel gazed gazes gazing gelds
gentlemen getting giggles glared glares glaring glassed glassy glenda glided globes glosses gloved glutted
glutting gnus goggle golds gossips grabber grander grandfathers grasses grate grave grazed grazes grazing
grocer grocers groves grubbed grubbing guides gusted gusting gutter hailed hailing haired haled haler
haling halls halve hammed handled handler handlers hands handy handymen hank hardest harvests haunt haven
haves heads heady heard heart heath heats heave helped hided hides highs hinged hitched hoarse holdings
holed holing homed homer homes homey hooding hoped hopes hordes hording horsed hose hoses hostel hotels
housed hunches hunts hutchins impacts impart improvements incomes increase increases inland instilled
instilling interests interned jointed jumbled jumbles junket junks juts keeling keener keening keepers
keeps kidded kilts kinked kitchenettes kitchens kites knifed knits knives knocker knocks label laded
lading lagged lamar lapels larded larger lashes lasted lasting lasts latched lath lathed lather lathers
laths launch lawns leaded leader leafed leafing leafs leafy leaking leanings leaping learning leases
leasing leathery leave leaved leaving lefts legged lemons lenders levees levered levering levers lewder
libels licensed lifted lifting lifts lilted lilting limber limbers linear linens lines linger lingered
lingers linings linked linker linking liquidating liquors lisped lisping listen lists lived liven liver
livers lives livings loader loafed loafing loaned loathe loathes loaves locked locket lockets lodged
lofted lofts lofty logger loners longed lorded lording lounged loved lover loves loving lowers lugged
lunge lunges lusted lusting mabel machined magazines makers makeups making mangle mantled mantles marbled
marking marks marla marred marty mashing masked massing maternal measured mechanism median medias
medicines melding memberships mental metals mete meteor meteors metes miking milks milky milling minds
mined minerals minuets minuses minuted minuter minutest moaning monkey monkeys mooing mooning mopes moping
mores mornings motors mounding mourning moused mouses mousse moves mowers mowing muscled muse muted muter
mutes naiver nestling netting nights nudes nudged officer offices ogling opener orbitals others oust ousts
outdoors outset outsets owned pacing packed padres pagers paging pained paining painter paintings
palatable palate paling palled pallor palms paltry pamper pampers panes pant panted panthers panties
panting pants parched parching pared paring parka parked parks parred parring parsed parses parsing
partials partied parting partings passes pasted pastel pastes pasting pastries pastry patches patios
patted patties patting paula pauline pauper paupers paused pauses paving pawing pawns payer payers payoffs
pecked pends penis penning peons pepped pepping percents perking persona personae personals pester petting
phoned phones picker picket pickled pickling pickups picky picnics pictured pictures piers piked piking
piled piling pilings pilled pimping pinched pined pining pinked pinking pinks pint pints pitcher pitches
pitching pitting pizzas places plainer planar planed planets planks planner planners planter planters
planting plants plastics plated plates platformed platforms playable played players playing playoff plays
pliant plies plods plotting ploy plying poaching pointed pointer pointers pointing points poles polices
polios polled polyp ponds ponies porter posed posher posies posing posters pots potted potter potties
pouted prawn prayed prayer praying preps pressed priced pricey pricing prick pricked pricking prided
priding pried primes primmer primped primping prince printers printing prints procession prods professing
promote promoter promotes prompted propped propping prying psalm pulley pullouts pulped pulsed purchase
purchaser purchases puttied putting quilts racking rages raided railed rained raises rated rates realist
rebind rebinding rebuild recanted recanting receive receiver receives recline reclined reclines records
rectal reduces refinishes refunds refuse regaining regaling reindeer reinforce reinforces reins relish
relished relishing remainder remainders reminded reminds remote removed remover removes repaid replace
replaces replayed replaying reported reposed reprinted reprinting reprise rescue rescuer rescues reserves
reset resets resign resigns resist resisted resisting resorted resorting respiratory restore restores
retaining retired retiring retorted retorting returns reused reuses revere reveres reverie reversed
reverses reverts rewind rewinding rise roads rocked rocket rockets rockier rolled rolls rooking rooms
roomy rooter roped rosary roster rosters rotund rounds route routed routes rummaged rummages rungs ruse
sacking sacks sadder sades safely safer safest sagged sagging salt salts salvaged salvages salves salving
sampling sandier sandy saner sapling saplings satin savage saver saves savings sawing saying scale scaled
scales scaling scalpers scalping scampers scared scent schools scold scooted scooting scoped scorch scorer
scores scorned scotchs scoured scrapes scraps scratchy screwy seamed seaming seared searing seated seconds
sects seeded seedier seeing selves sending sends serve served serves serviced services servile setter
setters settings settled settler settlers settling sever severs sexing shackle shackles shacks shaded
shakes shamed shames shaped shapes shared shares shaven shaver shaving sheave sheaves sheers shel sheller
shelling shelved shied shits shoes shone shooed shooing shootings shopping shore shores shorting shoulder
shouting shove shower shown shows showy shrank shred shreds shrews shriek shrine shrinks shrunk sicks
sided sidewalks sidle sidles sifts silts sing sings sipping siring site sites skewed skewing skipper
skipping skits slacking slacks slander slanders slashes slate slates slave slaved slaving slays sleeker
sleepers sleepier sleets sleighed sleighs slewed slewing slices slicks slid slings slink slinks slipped
slippers slippery slipping slits sloshed slowed smacking smacks smarted smarting smashed smelling smites
smocking snacking snatches snide snipping snitched snits snooped snoozed snoozes snored snores snowed
snugged snugging socked soled soothing sores sowed sowing spaced spaces spacey spades sparing sparkle
sparkles spayed spaying spays speckle speckles speeding speller spelling spends spewed spewing spiced
spices spirit spites spits splashed splat splats splayed splaying splice splint splits spoke spokes
sponged spongy spools spores sprang sprays spreads spreed sprig sprigs springy sprint sprints sprung spry
spying squared squarer squarest squire squires stable stabled stabler stables stabling stage stages
stagings stairs staked staking staled staler staling stalkers stalking stalled stalling stammers stamp
stamping stan standings stared stares staring starred starring starter startled startling starts starved
starving stashed stated statements statesmen stating stave staving stayed staying stays steady steaks
stealing steals steamed steamier steams steamy steels steep steeper steer stella stem steps stewed stewing
sticking sticky stills stinging stings stink stinks stinting stocking stocks stokes stoking stoles stomp
stomps stones stoop stooped stoops stops stored stories storks storms stoves stowed strain strained
straining strains strand stranding strands straws strayed straying strays stream streamer streamers
strewed strewing strews stride strife striker strikes string strings stripe striping strips strive stroke
students studios stumps suave subscriptions suit suited suits sundae sundry superb supers supper supple
supplest supplied supplier suppliers suppose supposes swamp swamps swaps sways sweat sweats sweeper sweets
sweller swelling swigs swines swivels swooped tabby tabled tablet tablets tacky taint taints taken taker
takes taking tales tally taming tangs taper tapers tapped tapping taps targets tasks taxing teaches teaks
teaming teasing telephoned telephones televising televisions tess testable texts thinker thinkers thinned
thinnest thins thorough though thrash thrashed thrashes thrashing threat threats threes thrifty tier tiers
tilde timed timer times tired title titles toddle toddled toddlers toddles toeing tomorrows toning topped
torched torching tosses toting touches touchings touchy towards towers towns toying tracks trailed trainer
trainers trains transacting transactions transfers translation trap traps trashy trawler trawlers tread
treads treatable treed trestles tricks tries tripe tripped trips troll trolls trough trowel trowels truces
trundled tucks tulips turns tweak twined twinge twinges twins twos typing umbrellas unfit unfits unite
unites unity unleaded upgraded upholster upholsters values vanes vanish vanished vanishes vanishing
vanishings velvety vendors voids wading waging waist waits waked waking walker walled walls walt wanda
waning warehoused warp warps washings wasted wastes wasting waving websites whine whitewashes wholes
wicked wicket wickets widow width wince windows wined wines wings wipers wished wishes witch withheld
withholds woody wooed worded wording workable worker workings works wormed worming wrapper wrenched wretch
wretches wring writhing writings yearn yesterdays zipped
`
    .trim()
    .split(/\s+/),
);
