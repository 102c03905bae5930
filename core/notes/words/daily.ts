import { LIFE } from "./chatter.ts";
import { isEveryday } from "./everyday.ts";
import { WEEK } from "./week.ts";
import { LongList, wordSet } from "./words.ts";

/*
 * Words of daily life that no other table knows, by kind: in a clause of their own, or behind a mark or a preposition
 * once the fact stands, they say nothing of it. None says anything of money, of a deal, of whether something has
 * happened, or is itself sold as furniture or bought for it; what is a joke, a dream, a guess or a lie never stands here.
 */

/** People by what they do. */
const PEOPLE = `
actress acupuncturist aide apprentice arborist architect astronaut athlete aunty bachelor bagger baker
ballerina banker barber barista bartender beautician biker boxer brewer bricklayer bridesmaid broadcaster
busboy butcher butler camper caretaker cashier caterer celebrity cellist charmer chauffeur cheerleader chef
chiropodist choirmaster classmate clerk clinician clown clowns colonel comedian comrade concierge counselor
cowboy cowgirl crooner dancer dean dermatologist dietitian diplomat director diver doorman doula drummer
envoy esthetician exterminator farmhand ferryman fiance fiancee firefighter fireman fisherman fitter florist
foreman freshman gardener geek geezer goalkeeper godparent golfer grad granddad grandfolks grannie groomer
groundskeeper grownup guardian guitarist gymnast hairdresser hairstylist headmaster hiker hippie hipster
homebody homemaker housekeeper housemate housewife hunter hygienist inspector instructor intern investor
janitor jockey jogger juggler juror kayaker kindergartener lass lieutenant lifeguard linguist logger
lumberjack maid mailmen manicurist mason matron medic mentor midwife millionaire missionary moderator
motorist nanny naturalist neurologist newbie newlywed newlyweds nutritionist obstetrician oncologist
optician optometrist orderly organist orthodontist paralegal paramedic paramedics parishioner parishioners
peddler pediatrician performer pharmacist physician pianist pirate plasterer podiatrist policewoman potter
princess psychiatrist psychic punk quarterback rabbi ranger receptionist recruiter ref rescuer responder
retiree reverend rider roadie rookie sailor salesperson schoolteacher scoutmaster sculptor senator sergeant
sheriff shopkeeper shopper skater skier sleepyhead snob socialite soloist sophomore spouse sprinter stepdad
stepkid stepmom stewardess striker stylist subcontractor surfer surgeon swimmer tattooist taxidermist
teammate technician teller trainee trainer typist undertaker usher vendor veteran veterinarian violinist
duplex audition subdivision waiter waitress warden watchman widow widower winemaker wrestler yogi zookeeper
`;

/** Bad and good names for people, and what one calls them (mild). */
const NAMES_CALLED = `
airhead ass asshat asshole badass bastard bigmouth birdbrain bitch blabbermouth blockhead bonehead boor bozo
brat brute buffoon bugger bully butthead buzzkill cheapskate chump clod clueless coward crank creeper crook
crybaby dimwit dingbat dinosaur dirtbag ditz diva doofus dork douche douchebag dreamboat dullard dumbass
dumbo dunce dweeb flirt freeloader fuddy fusspot gasbag ghoul goober goof goofball goofus grinch grouch
grump gutsy hag hardhead hellion hooligan hottie hunk ignoramus imbecile jackass jerkface jester junkie
killjoy klutz knucklehead lamebrain lazybones loon loser loudmouth lout lowlife maniac meanie meathead
menace mensch miser mooch muppet ninny nitwit nutcase nutjob nutter oaf oddball outlaw pest phony pigheaded
pinhead prick prude rascal redneck rogue sassy savage savant scamp scatterbrain scoundrel scrooge shyster
simpleton skinflint sleaze slob slouch slowpoke smartass smartypants sourpuss spaz spoilsport stickler
stinker stooge stud superhero sweetums swine teacup tease tightwad toerag tramp troll troublemaker turd twat
twerp twit vixen wacko weakling weenie weirdo weirdos whiner whippersnapper wimp windbag wiseguy woos yokel
zombie
`;

/** Praise, verdicts, how it is. */
const VERDICTS = `
adorbs amazeballs banger bangers bangin bawdy beastly beaut blinding bougie brazen brill bussin captivating
cheeky cheesy chintzy clunky corny cottagey crappy cringey cringy crummy cursed cushy dainty damned decadent
delish demure dicey disgraceful dodgy dorky dreamlike eerie effin effortless egregious electrifying
enchanting endearing enviable exasperating excruciating exhilarating fab fantastical farcical fearless
feisty fiddly finicky flawless folksy freaky friggin frigging frilly gimmicky girly glitzy godawful goddamn
goddamned godsent gorge grandmotherly granola grotesque grubby grueling gruesome grungy hackneyed hallowed
haphazard hardcore harebrained haywire heinous hella hilariously hokey homely homey icky iconic idyllic
impeccable incredulous infuriating intimidating invincible juicy kitsch kitschy klutzy lackluster lame
laughable lavish lifelike loathsome lovable luscious lush luxe luxurious madcap magnetic manic meager
mediocre mega mellow menacing mesmerizing mindblowing mindboggling mindnumbing monotonous monumental morbid
moronic murderous mystical naff nailbiting nauseating neato needy nerdy nerveracking nightmarish noteworthy
nutty odd offputting ominous onerous opulent outlandish overkill painstaking peachy peaky perky phat
picturesque pitiful plush poignant preposterous priceless primo psychedelic pukey puny quaint queer
ravishing regal regrettable ridic righteous riveting rowdy rugged ruthless sappy scandalous scary schmaltzy
schnazzy scrawny scruffy scummy senseless sexy shameful shameless shitty skanky sleazy slick snappy snarky
snobby snooty snug soppy soulful soulless spicy spiteful spunky squishy stank stodgy stuffy stupefying
stupendous stupidly suave sublime sucky sultry sumptuous surreal swole tasteful thankless therapeutic
thoughtful thoughtless thrifty thrilling tickety titanic toxic trippy twee unbeatable uncanny uncool
underwhelming undignified unearthly uneventful unfathomable unforgettable unforgivable ungodly ungrateful
unhinged uninspired unremarkable unsightly unspeakable unwieldy upbeat uplifting vibrant visceral vivacious
vivid vulgar wack wacky whimsical whiny wholesome winsome wistful woeful woozy worldly yucky zany zen
`;

/** Feelings and moods. */
const MOODS = `
adoration adore aghast agitated ambivalent antsy apprehensive awe awestruck awkwardly bashful bawl befuddled
begrudging beholden bemused bereft berserk bewitched blissful blissfully bluesy breathless broody bugged
burnout calmly carefree catharsis cathartic chagrin cheerfully clammy clingy comforted comforting
contentment cowardly craving crestfallen dazed dejected delirious desperation despondent disbelief
disgruntled dismay dismayed distraught doldrums drowsy dumbfounded dumbstruck ecstasy edgy elation emo
empathy empowered enamored enchanted enraged enthralled enthused euphoria euphoric exasperated excitedly
exhilarated fatigue fatigued fearful fidgety flattered flummoxed flustered forlorn freaked frenzy fright
frisky funk fury giddily gladness glee gratified gratitude grieving griping groaned groaning grumbled
grumbling heartache heartbreak heartened heartless heartsick heartstrings heartwarming hesitant huggy
humbled humiliated hunger hysterics impatience impatient indifferent infatuated infuriated intimidated
intrigued invigorated irked jaded jealousy jitters jittery jolt joyfully jubilant lethargic liberated
lonesome longing loopy lovesick lovey maddening madly melancholy mindful mope moping mortifying mourn
mourning nauseated nervously nirvana optimism overexcited pained panicked panicking panicky peckish peeved
pensive perplexed perturbed pessimistic petrified pissed pissy pleasures pout pouting pouty proudest ragged
raging regretful rejoice rejoicing relish remorse resentful resentment restless restlessness riled sadness
salty scaremongering serenity sheepish shudder shuddered shy sighed sighing sleepily sorrow sorrowful
spazzing spellbound spooked squeamish stoic suffocating sulk sulked sulking sullen surly suspense testy
thankfulness thrill thrills tizzy tormented tortured touchy tranquil trauma traumatized traumatizing
triumphant turmoil twitchy unamused unfazed unimpressed unsettled unwell uptight vengeful verklempt vexed
victorious vindicated violated wail wailed wanderlust warmhearted wearily weirded welled whimper whimpered
whine whined whining wigged wince winced woe woes worked wowed yearn yearned yearning zapped zeal zealous
zest zing
`;

/** The body and health. */
const BODY = `
abdomen abs abscess acid acne adrenal adrenaline ailing ailment airway amputated anemia anemic anesthesia
antibiotic antibiotics antihistamine appendicitis armpit armpits arteries artery asthma asthmatic autopsy
backache backbreaking backside bald balding barf barfed barfing bedridden belch belched belching bicep
biceps bladder bled bleed bleeding bloated bloody bodily boner boob boobs bowel braces breastfed
breastfeeding bronchitis brow bruising bum bunion bunions buns burp burping butt buttcheeks callus calluses
capsule cardio cartilage cataract cavities cavity cheeks chemo chemotherapy chills chin chiro cholesterol
chronic clot clots coffin coma concussion constipated constipation contact contraction contractions covid
crampy crick crutch cuticles cyst dandruff dehydrated dehydration dementia dental dentures diabetes diabetic
diagnosed dialysis diarrhea dimple dimples disinfected dislocated dosed earache earlobe earwax eczema
endorphins epidural exhale exhaled eyeball eyeballs eyebrow eyebrows eyelash eyelashes eyelid eyelids facial
fart farted farting fatso fertility fingernail fingernails fingertip fingertips fist fists fitness flab
flabby flexed forehead fracture fractured freckles frostbite funnybone gag gagged gagging gallbladder
gallstones gash gashes germ germs gland glands glutes gout graze grazed groggily groin hairball hairdo
hairline hamstring hamstrings hangnail heartbeat heartbeats heartburn heartrate hemorrhoids hepatitis hernia
herniated hiccup hiccups hickey hips hives hormonal hormones hospitalized hunchback hygiene hypertension icu
incision indigestion inflamed inflammation influenza inhaled inhaler injection insulin intestines itch
itched itches itching jaw jaws jetlag jetlagged jugular kidneys kneecap kneecaps knuckle knuckles labored
laryngitis lash lashes laxative legged ligament lockjaw longevity lumpy malaria malnourished manicure
mascara massage massaged massages measles medicated medication medications menopause menstrual metabolism
miscarriage mono mouthful mri mucus mugshot mumps muscular mustache naproxen nasal navel nearsighted
nicotine nipple noggin nosebleed nostril nostrils nursed nursing nutrition obese ointment optometry
orthopedic ouchie outbreak overdose overdosed overweight pacemaker palm palms pancreas paralysis paralyzed
pee peed peeing pelvis perm perspiration perspiring pimple pimples pinky pitstop pneumonia ponytail poo poop
pooping pore pores posture prenatal prescriptions pricked prognosis prosthetic puberty puke puked puking pus
quad quads quarantine quarantined rashes reflexes reflux rehab relapse remission rhinitis rib runny saliva
scab scabs scalp scar scarred scars scent scented scrubs seasick sedated seizure senile sexual shave shaved
shaving shin shingles shins shiver shivered shivering sickly sickness skinned slobbered smallpox sneezy
sniffed sniffing sniffling snore snores snot snotty spasm spasms spat speck spinal spleen sprain sprained
starvation sterilized steroid steroids stethoscope sting stinging stings stink stinks stitched stitches
stomachache strep stretch strokes stubbed stubbing stubble stung sty suffocated sunscreen sunstroke
surgeries surgical sweated sweatpants swelled swollen syringe tanned tanning tattoo tattoos tearing tendon
testicles tetanus thigh thighs throb throbbed throbbing thumbnail thyroid tingle tingling tiptoe toenail
toenails tonsillitis tonsils torso transplant trembling tremors triage tuberculosis tumor twinge twitch
twitching ulcer ulcers ultrasound umbilical urine uterus vaccinated vaccination vaccine vaccines vagina
veins viral vitals vomited vomiting waist waistline wards wart warts weep wheeze wheezing whiplash whisker
whiskers womb wounded wounds wrinkle wrinkled wrinkles xray xrays zit zits
`;

/** Food and drink. */
const FOOD = `
aioli ale almonds appetizer appetizers apples applesauce apricot apricots artichoke arugula asparagus
avocado avocados bakeries bakers bakery barbeque basil beet beets berries berry beverage beverages biscotti
bisque bistro blackberries blackberry blintz blueberries blueberry boba bologna booze boozed boozy bowlful
bratwurst brie brine broccoli broth bun burrata buttered buttermilk butterscotch cafe cafes cafeteria cajun
calamari calzone candies canned cannoli cantaloupe caramel caramels carbs cashews cauliflower caviar celery
chardonnay cheddar cheeseburger cheeseburgers cheesecake cheesesteak cherries chestnuts chewy chickpeas
chipotle choc chocolatey chow chowder churros cilantro clam clams clementines coconut coleslaw condiments
confection coriander cornbread corndog cornflakes cottage crab crackers cranberries cranberry crave craved
cravings creamy creme crepe crepes croutons crumb crumble crunchy crust cucumber cuisine curries daiquiri
dairy deli delicacy delicatessen devoured dill diners dips doggie drumstick dumpling edible eggplant eggroll
enchilada entree fajita fajitas falafel feta figs fillet fizz flan flatbread flavored flavors flour focaccia
foodie fruity garlic gelato ginger gluten gnocchi gobble gobbled gouda gourmet grape grapefruit grapes
greens grub guava gummy gyro gyros haddock halibut hamburger hamburgers hangry herbs hoagie hollandaise
homebrew honeydew horseradish hummus icecream iced icing jalapeno juices kabob kabobs kale kebab
kebabs ketchup kimchi kiwi leek lemon lemons lentil lentils licorice lime limes linguine liquor lobster
lollipop lox lunched macaroni mango mangoes margarine marmalade marshmallow marshmallows martini mayo
mayonnaise meatball meats meaty melon meringue milk milkshake milkshakes mimosa mimosas mints miso mojito
mojitos mouthwatering mozzarella munch munchies mushroom mushrooms mustard naan nectarine noodle nosh nougat
nutmeg oats octopus olive olives onions oranges oregano oyster oysters paella pancake papaya paprika parfait
parmesan parsley pastrami pate pea peaches pear pears peas pecan pecans pepper peppermint pepperoni peppers
perogies pesto pickle pickled pickles pineapple pistachio pita plum plums polenta pomegranate porridge
potpie poultry poutine powdered pretzel prosciutto prune prunes pub pubs quiche quinoa radish raisin raisins
ranch raspberries raspberry ravenous ravioli refreshments rhubarb ribeye risotto roasted rosemary rotisserie
rum sage salami sandwiched sangria sardines sauces saucy sauerkraut savory scallops scone scones seafood
seltzer sherbet sherry sirloin slaw slurp slurped slushie smores snacked sorbet soy sparkling spatula spice
spices spinach spoonful sprouts squid stewed stir strawberries strawberry stroganoff strudel succotash
sweets swig swiss syrup takeaway tamale tangerine tapas taqueria tart tarts tempura tenderloin tequila
teriyaki thyme tiramisu tofu tonic topping toppings tortilla tortillas turnip turnips vegan vegans veggie
veggies venison vinaigrette vodka wafer walnuts watermelon whisky wing wok yam yams yeast yolk ziti zucchini
`;

/** Clothes and what one carries. */
const CLOTHES = `
apron attire baggy ballcap bandana bathrobe beanie belt bikini blazer blouse boot booties bowtie boxers
britches buckle cape cardigan clothes corset denim dungarees earbuds earmuffs flannel fleece flipflops
footwear garter hanky hat hattie headband hoodie hoodies hosiery jean jersey jumper jumpsuit khakis kilt
kimono leggings lingerie loafers mitten mittens moccasins necktie nightgown nightie nighty nylons outfit
outfits overalls pajama pajamas panties pantyhose petticoat pjs pocket polo poncho pullover raincoat sandal
sandals sarong scarves shawl shirts shoe shoelace shoelaces skirts slacks sleeve sleeves slipper smock
sneaker sneakers spandex specs stilettos sunglasses sunhat suspenders sweater sweaters sweatshirt swimsuit
swimsuits tee tights toga tshirt underpants undershirt underwear undies uniforms veil waistcoat wedgie wig
windbreaker yarmulke
`;

/** Work of any job. */
const JOBS = `
admin anchoring appointee auditions badges barracks bedside benchwarmer boardroom bosses brainstorm
brainstorming bureaucrat business caseload cases cashbox catheter certification charting childcare clinics
clipboard clipboards codeblue coop counselors coursework courthouse courtroom cram cramming credential
dayshift debrief debriefing demotion deployment diploma dispatcher docs dorm dormitory dorms downsized email
emails enrolled enrollment evals executive fax faxed fieldtrip fieldwork filing firehouse frat fraternity
freshmen furlough furloughed gpa gradebook graded grader graders grading handoff handover headquarters
highschool homeroom homeschool homeschooling inspections interns internship jobsite kinder kindergarten
laidoff librarians library lockdown lunchroom manuscript math maths memo memos midterm midterms multitask
officemate onboarding oncall onsite orderlies overnights overworked papers pep phd practicum preschool
presentations presidential quizzes radiology rehearse relievers roster rota sabbatical schoolwork schoolyard
slideshow sorority spanish spreadsheet spreadsheets staffed staffing strike superintendent syllabus
symposium tardy taskforce teachers telework temp temping timecard timesheets toured touring transcripts
tribunal undergrad understaffed varsity webinar webinars weekdays workbook workforce workmate workmates
workplace worksheet worksheets workweek yearbook
`;

/** At home, in town, outside. */
const PLACES = `
acre acres aisle aisles amphitheater apartments arboretum auditorium avenue backstage backwoods balcony
ballroom bandstand barbershop baseline basin bathhouse bathrooms bayou beaches bedrooms bleacher boardwalk
boathouse boulevard brewery brook bungalow bushes butchery cabin cabins campground campsite campuses canal
canyon carport carwash casino cellar cemetery chateau churchyard cinemas clubhouse coastal coastline
coffeehouse coliseum community condos convent cornfield cottages courtyard cove creek crosswalk dam
dealership den dock docks dojo doorbell dormroom drugstore dunes embassy escalator fairground fairgrounds
farm farms firepit firestation foothills footpath fort foyer frontyard gallery gazebo ghetto glacier
golfcourse greenhouse guesthouse gymnasium hallways hangar harbor hilltop homestead hospice hostel hotel
hotels houseboat houses inn inns islands isle kennel kiosk kitchenette lagoon lakes lakeside landmark
laundrette laundromat laundromats lighthouse loft lookout mailroom mainstreet malls mansion marina
marsh meadow meadows monastery monument motel motels mountaintop newsstand nightclub oceanfront
orchard outback outhouse outskirts overpass parkway parlor pasture pathway pavilion penthouse pier pizzeria
playhouse playroom plaza pond ponds poolside porches prairie precinct rainforest ravine rectory reservoir
restroom restrooms ridge rink riverside rooftop rotary roundhouse sanctuary sauna seashore seaside sewage
shack shantytown shipyard shore shoreline sidewalk sidewalks skatepark skyline skyscraper slums spa speedway
stables stairwell station stations steakhouse steeple stoop studio studios suburb suburban suburbia summit
sunroom supermarkets synagogue tabernacle tavern terrace theatre timberland townhall townhouse trailhead
treehouse trench tropics underpass vicarage villa vineyard volcano walkway waterfall waterfront waterside
wharf wilderness windmill winery woodland yards yurt
`;

/** Nature, pets, weather. */
const NATURE = `
acorns alligator ape avalanche badger bats beaver beavers beehive beetle beetles bison bloom blossom
blossomed blossoms bluebird bluejay boar bobcat boulder buffalo bulldog bumblebee buzzard buzzards camel
canary carp caterpillar catfish chameleon cheetah chick chicks chinchilla claw clawed claws cloudburst
clover cobra cobweb cobwebs cockatoo cocker cockroach cockroaches cocoon collie colt comet cougar coyote
coyotes crane critterville crocodile cub cubs dachshund daisies daisy dalmatian dandelion dandelions deluge
dew dogwalker dogwood dolphin dolphins dove doves dragonfly drought duckling ducklings dune eagles
earthquake earthquakes earthworm elk falcon fawn feather feathers ferret ferrets fin finch fireant firefly
flock foal foliage fox foxes gale gator gecko gerbil gerbils giraffe gnat gnats goldfinch goose gopher
gorilla grasshopper grizzly groundhog gull gulls habitat hare hawk hawks hedge hedgehog heron hibiscus hippo
hive hogs hoof hooves hornet horsefly horsie huskie husky hydrangea hydrangeas hyena iceberg icicle icicles
iguana ivy jackal jaguar jay jellyfish kangaroo kitties kittycat koala leaf leaves leeches leopard lice
lilies lily lions lizard lizards llama locust lynx magnolia magpie mammal marigold marigolds meerkat mildewy
minnow monsoon moonlight moonlit moose moss moth moths mule nest nests newfie nightfall ostrich otter otters
ox panda panther peacock pelican penguins peonies peony petal petals petting pheasant pigeons piglet
pinecone pitbull plant platypus ponies porcupine porpoise puma quail rainbows raindrops rainfall raptor
raven ravens reef reptile retriever rhino roach roaches roadrunner rose rosebush rottweiler salamander sand
sandstorm scorpion seagull seagulls seashell seashells seaweed shadows shark sharks shrub shrubs skies slug
slugs smog snails sniffer snowball snowfall snowflake snowflakes snowplow spaniel sparrow sparrows spiderweb
spiderwebs stag starfish starling stork stormfront strays sunbeam sunflower sunflowers suns sunup swan swans
tarantula tempest termite termites thistle thorn thorns thunderbolt thunderclouds ticks tide tides tigers
toads tortoise tree trees tsunami twig twigs twister undergrowth vines violet vulture vultures walrus
waterfalls web webs weed whirlpool wildfire wildfires wildflower wildflowers wildlife willow wolves
woodpecker woodpeckers yak yellowjacket yellowjackets zebra zoomed
`;

/** Traffic, cars, travel. */
const ROADS = `
accelerator airbag airline airlines asphalt backseats barge barricade beeped beeping bicyclist bicyclists
bikelane billboards blowout boating braked braking bumps cab cabs carfull carsick carsickness chassis
chauffeured clutch convertible dashcam dmv driver drivers fenderbender flattire gearbox glovebox gridlocked
guardrail handbrake highbeams honk honked honking hydroplaned ignition interstate itinerary jaywalker
jaywalking layover legroom licence limo monorail motorhome offramp onramp overheated overpasses passports
pileup railcar ramp rearview rerouted roadblock roadtrip roadtrips seatbelts shuttle skid skidded slowpokes
spaceship speed speedometer spun stopsign submarine sunvisor swerved swerving tailgated tailgater tailgaters
tanker taxis throttle tram trams tripped truckful turnpike unicycle voyage wreckage
`;

/** Sports, pastimes, telly, computers. */
const PASTIMES = `
acrobat aerobics anime apps archery aria artsy astrology athletic athletics autograph backflip badminton
ballads bassist beading bestseller blogs bookworm boxing bullseye burpees cartoonist cheerleaders climber
clubbing collage comedies commercials crafting crafts crafty croquet crossstitch dancers darts discos discus
dj doodle doodled doodles doodling dramas duet encore etchings fairytale fanatic fencing fiction fielder
finale flick flicks folklore fumble gambling gamer gaming geocaching ghosts gladiator gymnastic hackathon
hangman headlining hiphop hobbies hopscotch horoscope icefishing idol improv irish journaling judo karate
kickball kickboxing mahjong martial meditate meditated meditating meditation meme memes monologue musicals
novelist olympic olympics origami paintball parasailing parkour percussion photo photography pilates player
poker pom premiere prologue pushup pushups quarterbacks rafting rap rapper rec reels reggae rehearsed
ringtone rugby rummy scavenger scorpions screenplay scuba situps skit snooker snorkel snorkeling snowboard
snowboarding soprano sporty spotlight squats standup storytelling streamed sumo swimmers taekwondo tango
tarot tempo throwback trekking tryout tryouts unicorn unicorns upload uploads vampire vampires video volley
walkie waltz warmup weightlifting winger wrestle
`;

/** Family, love and the house. */
const FAMILY = `
babyproof baptized bathed bestie besties bff bibs births boyfriends bride brides bridesmaids brotherly
brunette buddies burglar childlike childrens christened clan curfew deceased divorces elope eloped ex exes
fatherhood fiances firstborn fling flirted flirting flowergirl friendships furbaby genealogy getaway giggle
godchild godkids grandmas grandparenting grandpas groom groomsman groomsmen grounded hangout hitched
homecooked hosted houseguest houseguests housewarming hubbies kiddies kin kissing lullabies marriages
matrimony mens momming mommying motherhood mothering motherinlaw motherly nag nagged nagging nappies nappy
nephews nieces orphan pals parental parenthood parenting playmate playmates preemie preteen quadruplets
quarrel quarreled roomie roomies sibling siblings slumber sonogram spanked stepbrother stepdaughter
stepfather stepmother stepsister stepson swaddle swaddled teens teethed teether tiff triplet twinning
widowed womans womens
`;

/** House, chores, things around. */
const HOUSE = `
ac autopilot bookclub ceilings clothesline clutter declutter decor defrost defrosted deodorant dishrag
dishtowel duster dustpan flyswatter handsoap housework hvac landline laundered leaked mailboxes nightlight
packing pests remodel remodeled remodeling renovation renovations septic smoking soapy streetlight
streetlights tampon washcloth washroom weatherproof yardwork zip
`;

/** Faith and thanks. */
const FAITH = `
almighty angelic apostle archangel baptist bethlehem blasphemy buddha buddhist catholics chaplain christ
christian christians churchgoer clergy crucifix devilish devotion devotional devout diocese disciple
episcopal eucharist evangelical exorcism fasting forgiveness goddess godly godsend godspeed graces gracias
halo hanukkah hebrew hellfire hindu holiness islam jehovah jesus jewish judaism koran kosher kwanzaa
lutheran martyr mecca messiah methodist ministry monk monks mormon moses mosque muslim namaste nativity noel
omen pagan parish passover pentecost pilgrim pilgrimage praising prayerful presbyterian prophecy protestant
psalm psalms purgatory quran ramadan redeemer redemption reverence sabbath sacrament sacrilege sanctified
satan savior scripture scriptures shabbat sinner sinners spirituality superstition superstitious testament
testimony torah unholy vatican voodoo worshipped yuletide
`;

/** Cries and mild swearing, short forms, slang. */
const CRIES = `
aargh abso ack af agh ahem ahh ahhh aight aint alrighty amirite aw aww awww awwww aye bah bahaha banzai
bazinga bejesus betcha biatch blarg blech bleh bloomin bollocks boo boohoo booya bro bros brr brrr btdt
bullcrap bullshit bummer bupkis bwahaha cheerio chillax cmon cowabunga crapola cray dammit damn damnit
darnit dawg deets doh dudes duh dyk eeek eek eep eesh egad egads ehh ew eww ewww facepalm fave faves feck
ffs flippin fml fomo foo fr frfr frick fricking fro fuck fucked fuckin fucking gaah gah gahh gawd gee geeze
giddyup goddam goshdarn goshdarnit grrr gtg guap gurl hahah hahahaha harrumph heckin hehehe hellish heya
highkey hiss hmph hoo hoorah hoot humph hurrah icymi idc idgaf idunno ikr ily innit irl itsy jeebus jeeze
jfc jfyi kablam kaboom kapow kewl kms kthx ktnx lawd lawdy lmaoo lmbo lmfaooo lolololol lolz lowkey mama mic
mkay mmhmm mmk mmm mmmm muah mwah nada nbd nerd nuff ofc oi omgosh oml ooh oohh ooof oooh oopsies oopsy ow
owie oww oy oyvey pff pfft pfftt poof pow ppl pssh pst puhlease rekt rizz rly roflmao ruff sayonara shhh
shiesty shit shite shitload shits shitshow shiz shoo shrug shrugs sis sksksk slay smdh smfh sorryyy soz
srsly sry sshh stan stfu suckage sucked sucking sucks tada tadaa tata tbf tbqh tfw thankee thanx thnx thot
tia tldr tmi tsk ttfn ttyl uff ugg uggg uggh ummm unf uwu vibin vibing wahey waow welp whatev whatevs
whattup whoo whoopie whoopsie wooo woooo wooooo woops wowser wowsers wowzers wtf wth wyd yada yas yass yasss
yeesh yeesss yeet yessir yessss yippie yowch yowie yummers zoinks zonk zounds zowie
`;

/** Words of telling: verbs of daily life. */
const DOINGS = `
ached added applauded awoke babbled banged barged begged bellowed bickered bickering blab blared blaring
blew blinked blinking blow bonded bopped bouncing bragged braided bustling buzz cackled cackling calmed
caressed cartwheel catnap chatter chattered chattering chill chilled chilling choked choking chomped clap
clapped clapping clench clicked clobbered clung coasting coax coaxed collided complain complaints
complimented compliments consoled cooed cooing cooped crackling creaked creeping crept cringed crouched
curled cursing cuss cussed cussing dabbled darted dawned daydream daydreamed decorated devour doze drenching
drifted drifting drummed drumming eavesdropping embraced exclaimed fainted fanned fawned fawning feasted
fetching flailing flapped flapping flicker flickering flinched floating flopped flourished flung fluttered
fluttering fretted fretting frolicked fussed fussing gabbed galloped gambled gape gasped gasping glanced
glare glared glaring gleamed glided gloat gloated gloating gobbling gripe griped groomed growl growled
growling grunt grunted grunting gulp gulped gurgled gush gushed gushing guzzled guzzling hankering harass
harassed harassing haunt haunting heaved hiccuped hissed hissing hobbled hobbling hoisted holler hollered
hollering hopped hopping hovered hovering howl huddled huff huffed huffing hurled hush hushed
hyperventilating inhale insisted jabbered jabbering jolted journeyed juggle kicked killing kneeling knelt
knock lazed leaning leapt lick licked licking licks lighten limps linger lingered lingering loiter loitered
loitering loll lurch lurched marched marveled marveling meander meandered meandering melted memorized mimed
mingled mingling mocked mocking mumbled mumbling munches murmur narrowed nearing nibble nibbled nip nod
nodded nodding nudge nudged numbing ogled ogling oinking overate overdid overheard overheat overthink
overthinking overthought paced pacing paddled pamper pampered panted panting paraded patted patting pecked
pedaled peek peep peeped penned perched persevered pester pestered pestering play plead pleaded pleading
pled plod plodding ploughed plowed plunged poked poking pounced pounded pounding primped prowl prowled
prowling puff puffed puffing purr quack quacking quipped quiver quivered quivering recite recited recline
reek reeked reeking reeks rejuvenated reveled rewarding ribbed roam roamed roaming roar roared roaring
romped rooting rumbled rumbling rummaged rummaging rustled rustling sagged sagging sashayed saunter
sauntered savor savored savoring scamper scampered scampering scoff scoffed scold scolded scolding scooted
scooting scorched scour scoured scouring scowl scowled scowling screech screeched screeching scribble
scrutinized seething shimmied shooed shoved shoveled shoveling shoving shriek shrieked shrieking shrugged
shrugging shuffled shuffling sit sits skulking slam slamming slap slapped slapping slip slouched slumped
slurring smack smacked smirked snap snapped snapping snarled sneakily sneered snicker snickered sniffs
snooped snooping snort snorted snorting snuggle snuggling soak soaks soar soared soaring socialize
socialized socializing soothe soothed soothing spewed spilled spilling spilt spinning splashed splattered
splurging sprawled sprinted sprouted squabbled squabbling squatted squeal squealed squealing squint squinted
squinting squirmed squirming stalked stalking stammered stampede steaming stomped stomping stooped stormed
strained straining strangle strangled stroked strut strutted strutting stuttered suck sunbathe sunbathed
swagger swaggered swarm swarmed swarming swayed swaying swerve swinging swirl swirled swirling swung tapping
taunted taunting teased teasing thawed thawing thrashed thrive thriving thudding tickle tickling tinker
tiptoed tiptoeing topple toppled torment traipsed trample trampled trampling treading trekked tremble
trickle trickled tripping trolled trolling trot trotted trotting trudge trudged trudging tucked tug tugged
tugging tumble tumbled tumbling twirl twirled twirling unwound uprooted vent vented venting waddle waddled
waddling wag wailing waken waltzed waltzing warbled weave weaved weaving wept wheezed whimpering whip
whipped whipping whirled whisper whispered whispering whizzing wiggle wiggled wiggling wilted wink winked
winking wobbled wobbling wolfed worries wrestled wriggled wriggling yank yanked yanking yap yapped yell
yelled yelling yells yelp yelped yodel yodeled zigzag zigzagged zipped zipping zoned
`;

/** Nouns of telling. */
const NOUNS = `
abyss ado adulting night nights shift shifts shoe shoes gym afterglow aftermath afterthought airspace ambiance antics apocalypse aroma ashtray
ashtrays aura babble backdrop badluck balm banter bellyache blooper blunder blur bonanza brawl breakup
brilliance bubble bubbles bushel calamity candybar carnage cataclysm catastrophe charade chitchat clamor
clatter cliche climax clutches coincidences comeback commotion condolences congrats congratulations conquest
conundrum conversation craze creativity daredevil daze debacle dedication delirium destiny discomfort
disgrace distraction distractions downfall drudgery dynamite earful enigma entertainment epiphany etiquette
extravaganza fable faceplant favourite fib finesse fireball flair flashback flurry foe folly foolishness
gaffe gamble glamour glitch glitches gloom gobbledygook goodbyes goosebumps groove haircuts handshake
happenings headstart heartthrob hilarity hodgepodge hogwash homage hood hoopla horrors hubbub hype hysteria
inferno ingenuity insanity instincts intuition jabber jackhammer joyride jumble kicker knack labyrinth
letdown limelight loneliness loyalty lunacy makeover malarkey manners mayhem meaning melodrama milestone
mindset mischief misfit mishap mishaps mojo monotony mumbo muse name namesake nature nightlife nightmares
normalcy nugget obstacle oddity odor odors outburst outings pastime payback perfume peril perk perks
persistence phobia pigsty pinnacle pizazz pleasantries pleasantry plight posse potion predicament punchline
quirk quirks ragtag rampage rebel riddance riddle robbery ruckus rumble ruse rut sass savvy scuffle shambles
shenanigan shindig showdown sightings silliness slapstick slaughter smackdown smarts snafu solace solitude
somersault spanner spark sparkle spectacle splendor spree stardom stench stigma stillness stormcloud
superpower superpowers sweatshop task teamwork temperament theatrics tidbit toil trait tranquility travesty
tribute trickery trifecta upheaval uproar utopia vacay vendetta vengeance villain vocation wasteland
weekender whiff whirl willpower wits wonderland wormhole yesteryear
`;

/** Small words. */
const MANNERS = `
abruptly absurdly adoringly aka amid amidst amongst anew apropos aside astonishingly aswell bitterly boldly
bravely brutally busily carelessly casually cautiously clumsily comically cozily crazily cutely daintily
dearly delicately deliciously delightfully densely diligently disgustingly dreadfully dumbly earnestly
effortlessly elegantly energetically eternally extraordinarily fabulously faithfully famously fashionably
fervently fiercely fondly foolishly forcefully freakishly freshly furiously generously gingerly gloomily
gloriously gracefully graciously gravely greedily gruesomely haphazardly hastily helplessly hesitantly
honorably horrifically hungrily hurriedly hysterically idiotically idly impatiently impressively impulsively
innocently instinctively intently ironically irresistibly irritably jealously joyously keenly lamely lazily
leisurely longingly lovingly loyally lustily luxuriously magically magnificently majestically marvelously
meekly mercifully merrily mightily mindlessly miraculously modestly morbidly naively narrowly nobly noisily
nonchalantly ominously onward outrageously overwhelmingly painlessly painstakingly passionately pathetically
patiently peacefully perpetually phenomenally pitifully playfully pleasingly politely powerfully prettily
profoundly quaintly recklessly refreshingly regretfully relentlessly religiously respectfully restlessly
rhythmically righteously royally rudely ruthlessly savagely scarily selfishly selflessly senselessly
serenely shakily shamelessly sheepishly shockingly shyly silently singlehandedly skillfully sloppily slyly
smartly smugly snugly softly solemnly soothingly sorely spectacularly speedily squarely sternly stiffly
stoically strenuously stubbornly stunningly stylishly sulkily superbly sweetly swiftly tastefully tearfully
tediously tenderly tensely terrifically thoughtfully thusly tidily tirelessly tragically triumphantly
truthfully unabashedly undeniably understandably uneasily unequivocally unforgettably unknowingly
unquestionably vainly valiantly vehemently vicariously viciously visibly vividly warily warmly weakly
weirdly wickedly wishfully wistfully wondrously worriedly worryingly zealously
`;

/** People, places and things of every day besides. */
const BESIDES = `
uniform pants jeans sock socks shirt trousers feel achey afterschool airheaded allotment alpaca alpacas arvo bakesale bakesales beatboxing beefy betta biopsy
blizzardy bloat bloodwork boiled booing bookfair bossy boys brainy bratty break breaks brekkie burly
canaries cartwheeling carwashes chanting chiggers chubby classwork cockatiel cockatiels coldfront
colonoscopy colour colours condescending courteous crouching ct cuppa darlin decaffeinated defrosting ditzy
drippy eighties eulogy evacuation faff faffing favour fidgeting finches fixin flashflood flashfloods flavour
flavours flirty foggier frostbitten frugal geeky goslings gran gravesite gravestone gritty gumption guppies
gust hailstones hayfever hearse heckling heifer hometown honeybun honour honoured hormone humour hunched
icestorm icestorms katydids ladybug ladybugs lanky leaping mammogram marvellous middleaged midweek minivan
mourner mourners muggier nans neighbourhood newts nineties nitpicky nosy obituary ordination ornery
overcaffeinated overflowed overflowing ovulation pallbearer persnickety petite pickin pierced playgroup
polarvortex pottering punctual pyjamas quarterfinal queueing rainier rapping reclining revival sawdust
schoolbus semifinal semifinals seventies skidding sleepaway sleety slimy slouching slush slushy sniffly
snobbish snowier soggy spacey spitup sprawling squall squalls squatting staffroom stingy stocky stumped
sunblock sunrays sweetpea tadpole tadpoles tailgates talkative tattooed teatime teenaged telly thaws
thrashing toasting toothless trimester undercaffeinated weeknight weeknights wellies wheezy woodchuck
woodchucks wrinkly yawny yodeling yonder
`;

const TABLES = [
  PEOPLE,
  NAMES_CALLED,
  VERDICTS,
  MOODS,
  BODY,
  FOOD,
  CLOTHES,
  JOBS,
  PLACES,
  NATURE,
  ROADS,
  PASTIMES,
  FAMILY,
  HOUSE,
  FAITH,
  CRIES,
  DOINGS,
  NOUNS,
  MANNERS,
  BESIDES,
  ...WEEK,
];

let daily: LongList | undefined;

/** Whether a word is one of daily life; the lists are taken apart when first asked. */
function isDaily(word: string): boolean {
  daily ??= new LongList(TABLES.join(" "));
  return daily.has(word);
}

/** "hairdressers": one of daily life, or what is hers. */
const isSeveral = (word: string): boolean => word.endsWith("s") && isDaily(word.slice(0, -1));

/** Whether everybody uses a word beside what is bought and sold: one of no trade, of the day told, or of daily life. */
export const isCommon = (word: string): boolean =>
  isEveryday(word) || LIFE.has(word) || isDaily(word) || isSeveral(word);

/** Words everybody uses that may turn a fact round, count, or tell of another: never passed over beside one. */
export const TURNS_FACT = wordSet(
  "abort aborted aborting aborts unable unwilling unavailable untrue unreal null incorrect incorrectly uncertain uncertainty unclear " +
    "doubtful unread unknown unsuccessful unobtainable unlike unset unsettled unauthorized unofficial discard discarded discarding discards dispose " +
    "disposed disposes disposing destroys ruin ruining ruins damage damages damaging donates donation donations exclude excluded " +
    "excludes exclusion excepted excepting excepts exception scarce scarcely seldom seem seeming seemingly appear appears appeared " +
    "apparent suggest suggested suggesting suggests guessed guesses guessing considered considers contemplate contemplated " +
    "contemplates contemplating threaten threatened threatening threatens prepare prepared prepares preparing prevent prevented " +
    "preventing prevents misplace misplaced misplaces misplacing misprint misread misreads misunderstood theft swaps lends gift gifts dozen " +
    "thousands millions billion billions zero zeros double doubles halftime percents percentage partition postpones postponing discontinue discontinued " +
    "question questionable questioned questions predictions forecasts bids compete competed competes temptation tempted undo undid imitation replica similar " +
    "identical another whether present presents handshake bob stan appraisal appraised verbal verbally draft drafts rumor rumors estimate estimates night nights day days week weeks month months year years hour hours minute minutes supposedly allegedly hypothetically",
);
