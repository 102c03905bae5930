import { PREPOSITIONS } from "./links.ts";
/*
 * What people tell of their day beside a note, by kind: a clause of its own that holds nothing else is passed over
 * ("the baby is asleep so here goes, 45 min sanding the desk"). No word here says anything of money, of a piece's
 * state, of a deal, or of what is still to come; words that do so beside a listed one are rows (`rows/chatter.ts`).
 */

import { wordSet } from "./words.ts";

/** Family and what they are up to. */
const FAMILY =
  "laws splash pool law laws grandkid grandkids grandbaby grandbabies newborn infant twins triplets preschooler kindergartner tween " +
  "youngest eldest oldest hubs missus babysit babysat babysitter babysitting sitter daycare diaper diapers " +
  "nursery stroller potty bottle naptime bedtime storytime playdate playdates sleepover recess homework " +
  "carpool reunion visiting visited visit overnighter relatives inlaw godson goddaughter godmother nap " +
  "napping naps napped asleep awake teething giggles giggled tantrum tantrums meltdown squeals bath " +
  "bathtime lullaby snuggles snuggled cuddle cuddled cuddles diapered burped toddling crawling graduated " +
  "graduation graduate prom homecoming engaged engagement wedding bridal shower pregnant";

/** Health, and how tired one is. */
const HEALTH =
  "sniffles sniffle sneezing sneezed sneeze cough coughing coughed fever flu migraine migraines allergies " +
  "allergy pollen sinus sinuses congested dentist toothache tooth teeth doctor doctors physical therapy " +
  "therapist chiropractor ankle ankles wrist wrists elbow elbows calf calves ribs spine sciatica arthritis " +
  "tendonitis vertigo dizzy dizziness nausea nauseous queasy stomach tummy belly tired tiring tuckered " +
  "pooped beat wiped drained zonked frazzled fried exhausted exhausting exhaustion sluggish groggy foggy " +
  "yawning yawned insomnia slept sleepless snoring snored limping limped cramp cramps cramping blister " +
  "blisters blistered bandage bruised sunburn sunburned sunburnt sweating sweaty stiff achy aching " +
  "feverish contagious medicine meds aspirin ibuprofen vitamins surgery checkup appointmentless physio yoga " +
  "gym workout jog jogged jogging walk walks stroll strolled hike hiked hiking swim swam swimming treadmill " +
  "steps diet dieting calories energy stamina oldish hangover hungover";

/** Eating and drinking. */
const FOOD =
  "brewed brewing brew pot truckload sundae cone dumplings ramen sushi cereal marinade leftovers lunchbox picnic chili stew soup soups gumbo casserole lasagna spaghetti noodles pasta meatloaf brisket barbecue bbq " +
  "roast potluck cookout leftovers takeout skillet pancakes waffles omelet omelette eggs bacon " +
  "sausage biscuits gravy toast oatmeal cereal yogurt smoothie bagel bagels muffin muffins croissant pastry " +
  "pastries danish bread sourdough dough baked baking bake cinnamon vanilla chocolate candy cupcake " +
  "cupcakes brownie brownies pies cobbler pudding popcorn chips pretzels salsa guacamole burrito burritos " +
  "nachos enchiladas tamales quesadilla fries hotdog hotdogs steak chicken turkey ham meatballs salmon tuna " +
  "shrimp salad salads lettuce tomato tomatoes potato potatoes carrots corn beans rice cheese butter jam " +
  "jelly honey sugar lemonade cocoa latte lattes espresso mocha cappuccino decaf caffeine caffeinated mug " +
  "mugs cup cups sip sipping sipped cider bourbon whiskey margarita margaritas cocktail cocktails kombucha " +
  "delicious yummy yum tasty scrumptious starving starved famished stuffed simmering simmer simmered " +
  "boiling grilling grilled grill burnt burned burning meal meals dinnertime lunchtime suppertime munching " +
  "munched nibbling crumbs dessert desserts appetite recipe recipes cookoff lunch lunches dinner dinners " +
  "breakfast brunch supper snack snacks coffee coffees tea pizza tacos donut donuts doughnut doughnuts " +
  "sandwich sandwiches burger beer beers wine soda";

/** Church, school, work. */
const DUTIES =
  "preacher deacon judgement judgment honor roll honors potluck camp detention church mass sermon preacher pastor priest choir hymn hymns potlucks congregation bible prayer prayers " +
  "prayed praying worship vespers rosary volunteer volunteering volunteered scouts scout school class " +
  "classes classroom semester finals exam exams essay thesis professor principal tutor tutoring pta recital " +
  "recitals rehearsal rehearsals marching orchestra fundraiser work shift shifts overtime boss coworkers " +
  "colleague colleagues office meetings commute commuting clocked cubicle deadline deadlines payroll " +
  "paperwork inbox zoom conference training vacation staycation retired retirement nightshift graveyard " +
  "daylong weeklong laidback slammed swamped hectic nonstop productive unproductive lazing lounging lounged " +
  "loafing dawdled dawdling procrastinating procrastinated procrastinator workday";

/** Telephone, television, music, reading. */
const PASTIMES =
  "binge phone phones cellphone charger battery ringing rang buzzing buzzed voicemail voicemails scrolling " +
  "scrolled selfie selfies streaming binge binged bingeing binging netless episode episodes series sitcom " +
  "sitcoms documentary documentaries thriller mystery mysteries whodunit westerns cartoon cartoons rerun " +
  "reruns remote audiobook audiobooks podcast podcasts radio stereo playlist album albums jazz blues polka " +
  "bluegrass oldies motown karaoke singing sang humming hummed hum whistling whistled whistle dancing " +
  "danced guitar fiddle banjo ukulele drums trumpet records vinyl tune tunes melody lyrics chorus concert " +
  "concerts theater matinee movie movies film films novel novels chapter chapters reading crossword " +
  "crosswords sudoku puzzle puzzles jigsaw knitting knitted crochet crocheting quilting scrapbook " +
  "scrapbooking bingo fishing fished fish camping camped campfire kayaking canoeing bonfire gossip " +
  "gossiping gossiped gossipy news newspaper headlines gameshow quiz trivia videogame videogames";

/** Cars, roads and traffic. */
const ROADS =
  "traffic gridlock detour detours roadwork potholes pothole congestion construction lane lanes " +
  "intersection roundabout stoplight speeding speeder cop cops sirens siren ambulance parade commute tire " +
  "tires windshield wipers blinker muffler mechanic engine radiator dashboard odometer gps backroads scenic " +
  "hitchhiker trucker truckers semi semis tractor deer raccoon possum skunk armadillo turtle roadkill train " +
  "trains railroad crossing ferry tollbooth airport flight flights plane luggage";

/** Animals. */
const ANIMALS =
  "chewed chewing slippers knocking knocked cage aquarium goldfish litter catnip zoomies critters critter varmint puppy puppies pups doggo doggy mutt hound beagle poodle terrier shepherd labrador lab corgi pug " +
  "chihuahua kitten kittens kitty cats tabby hamster guinea bunny bunnies rabbit rabbits hen hens rooster " +
  "chickens goat goats sheep lamb cow cows pony horses donkey parrot parakeet goldfish vet leash kibble " +
  "treats paws paw tail tails wagging wagged fur furball drool drooling drooled drools shedding sheds " +
  "slobber slobbery barking barked barks meowing meowed purring purred howling howled squirrel squirrels " +
  "chipmunk crickets cicadas mosquito mosquitoes mosquitos flies fly wasps wasp bees bee hornets ants ant " +
  "spider spiders snake bird birds robin robins cardinal hummingbird hummingbirds geese ducks owl crow " +
  "crows butterfly butterflies fireflies";

/** What one feels, and cries out. */
const FEELINGS =
  "gods goodness crazy heck hell hallelujah happy happier happiest delighted delight thrilled overjoyed ecstatic giddy elated tickled pleased proud " +
  "prouder grateful thankful blessed content contented cheerful cheery chipper merry jolly joyful joyous " +
  "gleeful optimistic energized inspired motivated pumped psyched jazzed stoked hyped hyper stressed " +
  "stressful stress anxious anxiety worried worrywart grumpy cranky crabby grouchy moody blah meh blue " +
  "gloomy glum sad saddened sadly heartbroken heartbreaking teary tearful tears weepy weeping misty bawling " +
  "bawled sobbing sobbed sob nostalgic sentimental homesick lonely bored boring annoyed annoying irritated " +
  "irritating frustrated frustrating frustration aggravating aggravated fuming furious livid embarrassed " +
  "embarrassing mortified ashamed guilty jealous envious amazed amazing astonished astonishing shocked " +
  "shocking stunned speechless flabbergasted gobsmacked floored bewildered baffled confused confusing " +
  "puzzled generous charitable kind kindness kindly sweetheart sweethearts darling darlings dear dearest " +
  "angel angels saint saints lifesaver softie sap sucker pushover hoarder packrat addict addicted obsessed " +
  "obsession weakness smitten swoon swooning swooned goodness gracious heavens mercy golly gosh jeez " +
  "jeepers crikey blimey yowza yowzer yippee yahoo yeehaw yeehawing wahoo huzzah hooray woohooo whee whew " +
  "phooey fiddlesticks shucks drat dagnabbit dangit doggone dadgum crud crap cripes criminy sheesh grief " +
  "mamma mia ay caramba lordy lord jiminy holy moly moley cow smokes guacamole bananas nuts bonkers cuckoo " +
  "wowee whoopee bravo kudos hallelujah praise glory bless blessing blessings karma fate serendipity kismet " +
  "vibes vibe mood moods giggling chuckled chuckling chuckle laughing laughed laughs grinning grinned grin " +
  "smiling smiles smiled smirk beaming beamed cringe cringing blushing blushed";

/** Weather and seasons. */
const WEATHER =
  "hailstorm hailstorms dodged dodging mercury retrograde hallmark moon cloud nine storm storms windchill sizzling steamy drizzle thunderclap heatwaves dust dusty rained rains rainy raining rainstorm downpour drizzling drizzly drizzled sprinkling sprinkled misting " +
  "soaked drenched sopping puddles muddy thunder thundering thunderstorm thunderstorms lightning hail " +
  "hailing hailed sleet sleeting blizzard flurries snowed snowing snowy snowstorm snowman icy frost frosty " +
  "frosted freezing frozen froze chilly chillier nippy brisk crisp cold colder coldest windy windier gusty " +
  "gusts breezy breeze sunny sunnier sunniest sunshine sunset sunsets sunrise sunlight overcast cloudy " +
  "clouds foggy haze hazy humid humidity muggy sticky sweltering scorching scorcher roasting melting " +
  "blazing blazes broiling blistering hot hotter hottest heatwave heat toasty balmy warm warmer warmest " +
  "warmth mild temperature temperatures degrees forecast weatherman meteorologist tornado tornadoes " +
  "hurricane flooding flooded floods autumn autumnal springtime summertime wintertime winter winters wintry " +
  "season seasonal equinox solstice outdoors outside gorgeous glorious dreary drab";

/** Luck, pride, and how it looks. */
const LUCK =
  "drumroll worm charm auctioneer peace patience lucky luckier luckiest luckily luck fortune fortunate unlucky jinxed charm charmed charming streak " +
  "winning jackpot lottery miracle miracles miraculous providence fluke whim hunch brag bragging braggy " +
  "boast boasting humble humblebrag showoff genius genie wizard magician magic magical champ champion " +
  "rockstar superstar legend legendary hero heroes warrior beast machine unstoppable crushing nailed " +
  "nailing slaying slayed rocking rocked smashing stunner stunning beauty beauties beautiful beautifully " +
  "beauteous gorgeously lovely lovelier loveliest dreamy adorable cuter cutest cute prettier prettiest " +
  "handsome dapper snazzy spiffy swanky posh ritzy glam glamorous elegant exquisite divine heavenly " +
  "dazzling dazzled sparkly shimmering glowing glow radiant immaculate spotless pristine swell dandy keen " +
  "nifty groovy rad gnarly bodacious stellar splendid marvelous magnificent majestic fantastic fabulous " +
  "phenomenal spectacular sensational incredible unbelievable unreal ridiculous ridiculously outrageous " +
  "absurd whopping massive monstrous humongous ginormous eyesore hideous hideously ghastly fugly ugliest " +
  "uglier tacky gaudy garish goofy quirky kooky retro classy trendy chic showstopper masterpiece " +
  "eyecatching racket nuisance headache hassle chore drag doozy";

/** Pressed for time, and how one comes to write. */
const HASTE =
  "hurry hurrying hurried rush rushing rushed hustle hustling scrambling scrambled scatterbrained scattered " +
  "forgetful absentminded frantic frantically quickie quick brief briefly shortly typing typed texting " +
  "thumbs autocorrect typos typo spelling jotting jotted scribbling rambling ramble rambled babbling " +
  "blabbing chatterbox chatty chatting chatted chat chats yapping yakking gabbing yammering daydreaming " +
  "procrastination multitasking juggling juggled whirlwind marathon sprint nonstop jampacked bedlam chaos " +
  "chaotic madness madhouse zoo circus pandemonium hullabaloo shenanigans adventure adventures escapade " +
  "saga ordeal odyssey fiasco kerfuffle";

/** Sports and games. */
const SPORTS =
  "soccer football baseball basketball softball volleyball hockey tennis pickleball golf golfing golfed " +
  "bowling bowled lacrosse gymnastics wrestling track tournament tournaments championship playoffs playoff " +
  "inning innings overtime touchdown touchdowns homerun homer dunk goalie umpire referee coach " +
  "coaches coaching dugout bleachers stadium tailgating halftime scoreboard scored team teams league " +
  "leagues cheerleading cheering cheered mascot medal trophy races racing raced runner runners bike biking " +
  "biked cycling skating skated skateboard surfing surfed skiing skied sledding sledded";

/** Holidays and parties. */
const FEASTS =
  "birthday birthdays bday anniversary anniversaries holiday holidays festive celebration celebrations " +
  "celebrating celebrate celebrated party parties partying confetti balloons fireworks firework sparklers " +
  "costume costumes pumpkin pumpkins carving caroling carols carolers ornaments tinsel stocking stockings " +
  "santa reindeer elf elves mistletoe eggnog gingerbread feast feasts feasting champagne bubbly pinata " +
  "valentine valentines sweetie shamrock parade parades parading festival festivals fair fairs carnival " +
  "rodeo circus picnic picnics picnicking barbecues cookouts campout honeymoon funeral baptism christening " +
  "communion quinceanera bachelorette";

/** Chores and the house. */
const CHORES =
  "laundry loads shower showered sewer oven jelly wi fi dust brushes knocking dishes fridge freezer stove microwave lightbulb gutters sprinkler sprinklers hose laundry dishes dishwasher vacuuming vacuumed vacuum mopping mopped sweeping swept dusting dusted tidying " +
  "tidied tidy decluttering decluttered cleaning scrubbing ironing ironed folding folded gardening garden " +
  "gardens weeding weeded weeds mowing mowed mow lawn lawns grass raking raked hedges pruning pruned " +
  "watering watered planting planted roses tulips daffodils lilacs blooming bloomed blooms compost " +
  "composting mulching seeds seedlings errands errand chores plumbing plumber leak leaky leaking toilet " +
  "faucet furnace thermostat fuse breaker outage blackout electrician wifi internet router laptop printer " +
  "roofers roofer fireplace firewood chimney mailbox mailman mailwoman mail garbage recycling groceries " +
  "grocery shopping bills budget";

/** Verbs and small words of telling a day. */
const TELLING =
  "ran drew drawing something everything guess whoever itchy hands feet arms legs back knees eyes ears nose smell smells looking tell quick note notes hello week weeks month months year years stayed staying stay woke waking wake overslept oversleeping sleeping dozed dozing snoozed snoozing " +
  "lounge sat sitting stood standing strolling wandered wandering wander waved waving wave hugged hugging " +
  "hugs hug kissed kisses greeted sneaked snuck caved caving resisted resist splurged " +
  "splurge treated treating treat treats indulged indulge deserved relaxed relaxing unwinding unwind " +
  "breathe breathing breather puttering puttered tinkering tinkered fiddling fiddled piddling piddled " +
  "goofing goofed messing messed fooling managed manage survived surviving survive endured suffered " +
  "suffering struggled struggling conquered tackled tackling braved weathered bundled layered sheltered hid " +
  "hiding hibernating hibernated wondering wondered wonder pondering pondered reminiscing reminisced " +
  "remembering remembered remember recalled miss enjoyed enjoying enjoyment enjoy loved loving adored " +
  "adoring admired admiring listening listened listen watching watched gazing gazed staring stared peeking " +
  "peeked glancing noticed sunbathing sunning basking basked goes living dying born grew growing grown " +
  "aging older wiser younger young youth youthful reporting report reports confess confessing confession " +
  "admit admitting admittedly swear swearing vow bet beginning middle meanwhile whole entire evenings " +
  "mornings afternoons noontime midday dawn dusk twilight daybreak bright early late wee flew flies whizzed " +
  "breezed crawled dragged dragging forever moments lifetime ages eternity oldtimer town village " +
  "neighborhood folks folk crowd crowds packed busy busier quiet quieter peaceful serene cozy cozier calm " +
  "calmer difference enough worse worst better best hardest easiest toughest rough roughest tough " +
  "treacherous miserable misery awful dreadful horrendous atrocious";

/** Words that tell of the day and do nothing else. */
export const LIFE: ReadonlySet<string> = wordSet(
  [
    FAMILY,
    HEALTH,
    FOOD,
    DUTIES,
    PASTIMES,
    ROADS,
    ANIMALS,
    FEELINGS,
    WEATHER,
    LUCK,
    HASTE,
    SPORTS,
    FEASTS,
    CHORES,
    TELLING,
  ].join(" "),
);

/** What is said of anybody: how they felt and were. All that is passed over of a buyer, or of "it". */
export const MOOD: ReadonlySet<string> = wordSet([FEELINGS, LUCK].join(" "));

/** Words between clauses that chatter may begin or end with, beside the marks. */
export const CHAT_JOINTS = wordSet("and but so then anyway anyways anyhow because though although yet also");

/** Marks between clauses. */
export const CHAT_MARKS = wordSet(", . ; ! : - – — … ( )");

/** After these "so" means how much. */
export const BEFORE_SO_MUCH = wordSet(
  "is are was were am im its be been feel feels felt look looks looked ever not and get got",
);

/** Who may be a buyer or a seller, or the piece itself: of them only moods are passed over. */
export const NOT_US = wordSet(
  "he she they it them that this these those one ones hes shes theyre its buyer buyers seller sellers customer customers guy guys lady ladies man woman dude girl boy kid couple people person somebody someone who client deal sale listing payment check money cash",
);

/** What a slot, a standing note or another table may want of a clause of its own. */
export const STAYS = wordSet(
  "monthly weekly daily yearly annually biweekly autopay tax taxes speaking split splitting halves profit profits price priced whatever",
);

/** Behind one of ours, and before: who writes. */
export const WRITES = wordSet("here again speaking texting typing writing");
export const BEFORE_WRITER = wordSet("its it this");

/** What a slot opens with: no stretch that begins so is passed over. */
export const OPENS_SLOT = wordSet("via all_from all", PREPOSITIONS);

/**
 * Words that turn a note round, and turn nothing but what is told where a word of life stands beside them and nobody
 * else is spoken of ("havent slept", "could hear the rain"). Conditions and hopes always turn it.
 */
export const HARMLESS_HEDGES = wordSet(
  "not didnt dont doesnt hasnt havent hadnt wont cant couldnt isnt arent wasnt werent never nobody no_one noone nothing without instead_of " +
    "would wouldnt should could will ill might gonna going_to need needs want want_to wanted wanna have_to has_to need_to gotta trying trying_to lets let_me " +
    "think thinking guess believe i_believe i_guess says said told tells heard called texted messaged coming comes meeting meet heading running_late late lost soon later almost nearly about around over under",
);

/** Words that mean nothing in a note, but may tell of a deal that did not come about. */
export const TRADES = wordSet(
  "sell buy pick_up grab get_rid_of deliver move bring fetch haul load show delivered pickup on_pickup local_pickup deal firm obo sale for_sale piece pieces item furniture each_way",
);

/** Words of life that may as well be said of a deal: beside them a denial or a wish counts. */
export const VAGUE_LIFE: ReadonlySet<string> = wordSet(`${TELLING} work shift visit present battery phone`);

/** Before a word of life they only point at it: "this heat", "that storm". */
export const POINTS_AT = wordSet("that this these those");

/** Before somebody: whom a piece went to or came from. */
export const BEFORE_BUYER = wordSet("for to from");

/** Who comes may be who bought: "came by and got the desk". */
export const COMES = wordSet(
  "came come comes stopped stops showed shows arrived drove walked swung dropped popped called texted wandered strolled",
);

/** Joints over which the one who does something stays the same. */
export const SAME_SUBJECT = wordSet("and then");

/** The one who writes. */
export const US = wordSet("i we im ive weve my our me");

/* Alternatives of rows, where several rows or many words share them. */

export const PLACES_OF_LIFE =
  "work|church|school|mass|bed|the_gym|gym|practice|the_beach|the_lake|the_park|the_movies|the_doctor|the_dentist|the_vet|the_bank|the_library|the_airport|the_office|the_in_laws|grandmas|moms|moms_house|my_moms|my_sisters|daycare|class|lunch|dinner|breakfast|brunch|town|downtown|the_grocery_store|the_post_office|soccer|soccer_practice|baseball|choir|choir_practice|rehearsal|yoga|vacation|a_wedding|a_party|a_funeral|a_game|the_game|the_wedding|the_party|bible_study";

export const BODY =
  "back|knee|knees|hand|hands|arm|arms|leg|legs|foot|feet|shoulder|shoulders|neck|finger|fingers|thumb|thumbs|wrist|wrists|elbow|elbows|hip|hips|head|eyes|lungs|muscles|bones|body|toe|toes";

export const FEASTS_COMING =
  "christmas|xmas|thanksgiving|easter|halloween|new_years|new_year|winter|summer|spring|autumn|holidays|holiday|fair|market_season|season|wedding_season|storm|rain|snow|cold_front|hurricane|weekend|birthday|anniversary|school|graduation|reunion|party|game|parade";

export const WET =
  "rain|snow|storm|hail|sleet|pour|freeze|flood|thunder|be_hot|be_cold|be_nice|be_windy|be_rainy|be_sunny|warm_up|cool_off|clear_up|drizzle";

export const SORE =
  "sore|tired|exhausted|a_long|a_late|a_hot|a_busy|hurt|ache|feel_it|feeling_it|feeling_this|sleep|nap|crash|celebrate|dream_of|hear_about_it|fat|rich|famous|up_late";

export const CALLED =
  "called|calls|phoned|texted|rang|facetimed|visited|stopped_by|came_over|came_by|dropped_by|popped_in|is_visiting|is_here|is_over|is_home|keeps_calling|wont_stop_calling|wont_stop_texting";

export const LIKED =
  "loved|liked|adored|enjoyed|been_proud|been_so_proud|been_thrilled|approved|gone_nuts|gone_crazy|smiled|cried|laughed|fainted|died|been_jealous|flipped";

export const JUDGED =
  "great|good|nice|amazing|awesome|perfect|fine|beautiful|beautifully|gorgeous|lovely|adorable|stunning|cute|pretty|fantastic|terrific|wonderful|fabulous|incredible|better|fair|reasonable|worth_it|a_steal|a_bargain|okay|decent|solid|haunted|cursed|heavy|well|nicely|amazing|sharp|like_new|brand_new";

/** Between a thing and one more of them, and what one more begins with. */
export const JOINS_ONE_MORE = wordSet("and & plus +");
export const COUNTS_ONE_MORE = wordSet("a an another some two three");
