/*
 * Ordinary words that people add for no reason. None of them says anything of money, of a piece's state or of what
 * became of a deal: only such words may stand in a note and be passed over. What turns a note round ("pending",
 * "until", "returned", "half", "never") must never stand here.
 */

/** How things look, feel and are. */
const LOOKS =
  "gorgeous stunning lovely ugly hideous pretty beautiful decent solid sturdy wobbly rickety shaky squeaky creaky scratched " +
  "dinged dented chipped cracked stained faded worn torn ripped peeling warped moldy musty smelly stinky filthy grimy greasy " +
  "sticky crusty dusty dirty clean spotless mint pristine immaculate damaged rough tough smooth shiny glossy matte heavy " +
  "bulky lightweight massive enormous gigantic giant compact tiny cute adorable quirky funky fancy elegant classy cheap cheapo " +
  "pricey expensive steep fair reasonable normal standard typical regular special rare unique weird strange odd-looking goofy " +
  "silly crazy insane wild amazing awesome fantastic excellent superb terrific incredible unbelievable wonderful fabulous bonny bonnie braw " +
  "perfect ideal great good nice fine okay alright aight ez easy-money decent bad awful terrible horrible dreadful nasty gross disgusting rank " +
  "broken busted wrecked ruined trashy junky ratty shabby tired old-looking dated outdated ancient aged older newer newish " +
  "bright dull pale bold warm cool hot cold wet damp dry soft hard stiff loose tight crooked bent lopsided uneven level " +
  "sharp flimsy fragile delicate strong weak thick thin deep shallow steep tall-ish boxy curvy sleek plain simple basic modest " +
  "legit real genuine authentic fake-looking original handmade homemade custom local imported foreign loud quiet noisy chatty " +
  "friendly sweet kind rude pushy grumpy polite patient picky happy unhappy sad glad mad angry upset thrilled stoked pumped " +
  "excited relieved surprised shocked proud pleased satisfied annoyed frustrated disappointed bummed bored tired exhausted " +
  "beat wiped sore achy sweaty hungry thirsty sleepy sick busy swamped lazy lucky unlucky blessed grateful thankful worried " +
  "nervous scared jealous embarrassed curious awkward painful brutal rough-looking smooth-running wonky sketchy shady creepy " +
  "spooky haunted bittersweet sentimental nostalgic charming timeless classic trendy stylish chic cozy comfy comfortable " +
  "pleasant boring fun funny hilarious serious obvious easy simple quick slow fast speedy instant long short early late";

/** Manner, degree and time that date nothing. */
const MANNER =
  "whopping measly mere really very super pretty quite rather fairly extremely incredibly insanely crazy-fast seriously honestly literally frankly " +
  "luckily fortunately thankfully sadly unfortunately surprisingly amazingly easily quickly slowly carefully gently roughly-made " +
  "happily gladly proudly quietly loudly randomly suddenly immediately instantly eventually finally actually naturally obviously " +
  "clearly definitely certainly surely absolutely totally completely entirely fully wholly exactly precisely simply barely hardly " +
  "super-fast somehow anyway anyways anyhow meanwhile otherwise therefore also too either-way besides plus-side overall again " +
  "already still always usually often sometimes rarely lately nowadays currently originally initially officially personally " +
  "together alone apart inside outside upstairs downstairs indoors outdoors nearby everywhere somewhere-nice here there away around " +
  "along across forward backward sideways upright alongside afterwards afterward beforehand early-ish late-ish asap stat pronto " +
  "forever ages awhile hours-long overnight daily nightly";

/** Greetings, sounds and verdicts. */
const SOUNDS =
  "yay yayy yayyy woo woohoo woot whoop hooray hurray huzzah boom bam kaching cha ching chaching ka-ching score bingo jackpot nailed " +
  "sweet nice noice dope lit sick rad epic fire lol lolol lmao lmfao rofl haha hahaha hehe heh ha hah omg omfg wow wowza whoa woah " +
  "dang darn shoot ugh argh grr meh eh hm hmm hmmm huh phew whew yikes oof ouch och aye ach nah naw nae yep yup yeah yea ya nah-worries okey dokey " +
  "okie kay heyy heyyy heyyyy hiya howdy hello hallo greetings yo sup morning gm evening gn goodnight night-all cheers thx thanks " +
  "thankyou ty tysm tyvm please plz pls sorry oops whoops oopsie fyi btw imo imho tbh ngl fwiw anyhoo folks yall guys-and-gals team " +
  "fam peeps dear dears honey hon babe sweetie buddy-boy pal mate amigo bro-code chief boss-man captain robot bot ledger";

/** Weather, seasons, the body, food, feelings as things. */
const SURROUNDINGS =
  "rain rainy raining rained rains snow snowy snowing snowed sun sunny sunshine shine wind windy breeze breezy storm stormy thunder " +
  "lightning hail ice icy freezing frozen chilly humid humidity muggy heat hot-out weather forecast cloud clouds cloudy fog foggy mud " +
  "muddy puddle puddles drizzle downpour pouring poured sweltering scorching spring summer fall autumn winter season seasons " +
  "back knee knees shoulder shoulders hand hands arm arms-hurt foot-hurts toe toes thumb finger fingers hip neck head headache muscles " +
  "body legs-hurt lungs eyes nose ears hair skin sweat blood splinter splinters bruise bruises cut-finger nap sleep coffee tea " +
  "lunch dinner breakfast brunch supper snack snacks pizza taco tacos burger burgers donut donuts sandwich ice-cream cookie cookies beer " +
  "wine soda water drink drinks drinking eating ate cooking cooked food groceries cake pie party birthday wedding anniversary baby shower " +
  "funeral holiday holidays vacation game ballgame practice soccer football baseball basketball recital concert movie movies show tv radio " +
  "podcast music song book books phone text texts photo-op picture pictures-came memory memories story stories luck joy pain relief " +
  "headaches nightmare dream-come-true hassle bother trouble struggle battle adventure journey fun-times surprise miracle blessing treat " +
  "bargain deal steal find win winner beauty gem treasure classic keeper-quality workhorse monster beast tank chunk mess disaster wreck " +
  "project projects-galore headcase lifesaver eyesore showstopper stunner cutie conversation-starter";

/** The house, the way, the car and what one does there. */
const HOME =
  "house home apartment condo place garage shed barn basement attic porch deck patio yard backyard front-yard driveway curb-side kitchen " +
  "gas-station parking-lot parking-garage truck-stop rest-stop coffee-shop bathroom bedroom livingroom living dining-area hallway hall closet laundry stairs stairway staircase step steps elevator floor floors " +
  "wall walls window windows ceiling roof door-way doorway entry entryway lobby gate fence alley street road roads highway freeway exit " +
  "corner block neighborhood town city county village country side mountain hill hills lake river beach park parking lot lots school " +
  "church office building store-front shopfront downtown uptown suburbs mall market-day traffic jam detour construction bridge truck-bed " +
  "car cars van-load suv pickup-truck wagon dolly-up bus train plane bike seatbelt trunk-space backseat hatchback tailgate " +
  "trip-there ride rides mile-long errand errands stop stops corner-store doorstep doormat room rooms space spot corner-spot storage-space " +
  "workshop-floor";

/** What people do beside the deal. */
const DOINGS =
  "mostly mainly helped helping help helps watched watching waited laughed laughing smiled smiling cried crying hugged waved chatted chatting talked " +
  "talking loved loving loves love liked likes adored enjoyed enjoying appreciated appreciate recommend recommended praised admired " +
  "thanked carried carrying lifted lifting lugged lugging dragged dragging hauled-out pushed pushing pulled-up pulling squeezed squeezing " +
  "fit fits fitted stuffed crammed loaded-up strapped wrapped tied bungeed rolled rolling climbed walked-over walking ran-over " +
  "running rushed rushing hurried parked parking arrived arriving left-early drove-by rode sat-around sitting stood-around standing slept " +
  "woke ate-out rested relaxing celebrate celebrating celebrated party-time partied singing danced dancing dancing-around sang " +
  "looks looked looking-good seems seemed smells smelled smelling feels felt feeling weighs weighed weighing took-forever took-ages " +
  "tastes sounds sounded turned-out came-out hurts hurt hurting aches aching killing-me died-laughing barked barking meowed chased " +
  "explained explaining asked-around wondered knew knows know thought-so remembered reminds reminded " +
  "surprised surprises amazed amazes worth-it deserved deserves needed-that glad-i decided deciding happened happens happening";

/** People and creatures who only stand by. */
const BYSTANDERS =
  "kids kiddo kiddos children toddler toddlers baby babies teenager teenagers grandkids dog dogs puppy pup cat cats kitten kitty pet pets " +
  "horse horses chicken chickens bird birds squirrel bug bugs spider spiders crew team helper helpers everybody everyone nobody-else " +
  "family-time friends-helped stranger strangers mailman landlord-lady roommates neighbors-dog";

/** Numbers of nothing, and words that only hold a sentence together. */
const SMALL =
  "came near collapsed thing things stuff bit lot tons ton loads bunch heap pile piles handful kind kinds sort sorts type types way ways part-time " +
  "reason reasons idea ideas plan-b point case-closed fact matter truth thought thoughts mind heart soul life world day-off days-off time " +
  "times moment minute-man second-nature today-only tonight-only while-back course sure-thing rest-easy though although however yet-another " +
  "that-said than such same such-a both-ways every each-time own himself herself themselves itself yourself myself ourselves whatever whoever " +
  "whichever anyone someone-else something-else anything everything one-more another-one else etc via-via per usual like-new as-is gonna-love " +
  "piano-lessons piano-lesson piano-practice piano-recital glitter coupon coupons overseas wobble wobbles wobbling page drying curing soaking airing-out scratch scratches dent dents ding dings gum tape-residue instead uses days far behind beside below above under between coast market recalled next-door mildew rotten rot run unload biggest smallest best worst yet dead photos touch touch-up patch todays yesterdays box boxes bag bags carry flat parade loss shelter charity lil little big huge tad wee smidge teeny ol ole ok";

/** Verdicts and asides of Britain, Australia and the South. */
const DIALECT =
  "knackered chuffed gutted cracking blinding brill ace corker cheeky sod sods robbers robbing chancer chancers timewaster time-waster time-wasters " +
  "sorted job-done happy-days result innit blimey crikey bloody ruddy proper smashing tidy lush mint-condition bonzer ripper bewdy " +
  "beaut heaps arvo-job no-worries too-easy plum plumb reckon mighty right-nice downright hallelujah lordy lawd goodness-me good-day " +
  "nice-one not-bad bless-em bless-her-heart bless-his-heart nursery charity-auction woodworm-riddled riddled worm bit-steep daylight-robbery a-steal shift lug heave ope woodworm doing-a-bit-of looks-a-treat a-treat grand-job proceeds";

const TABLES = [DIALECT, LOOKS, MANNER, SOUNDS, SURROUNDINGS, HOME, DOINGS, BYSTANDERS, SMALL];

/** Plain words and phrases: "rough-looking" is two words. */
export const PLAIN: readonly string[] = [
  ...new Set(TABLES.flatMap((table) => table.split(" ")).map((word) => word.replaceAll("-", " "))),
];
