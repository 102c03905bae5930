/*
 * More words of daily life, by the week of whoever writes: what `daily.ts` says of its words holds of these too.
 */

/** Children, nursery and school run. */
const KIDS = `
abuela aftercare auntie aunties bedtimes bedwetting binky carpooling carpools chaperone chaperoned
chaperoning cousins daycares dropoff dropoffs feedings fingerpainting footies formulas godfather grammy
gramps inlaws jammies lactation latchkey mamaw meemaw meltdowns monkeybars nanas naptimes nonna nonno
nursling onesie onesies papaw pawpaw peepaw pickups pjamas principals rivalry sippy sleepovers snacktime
stepchildren swaddling tantruming tardies tattled tattling timeout timeouts truancy uncles valedictorian
`;

/** Matches, training, the gym. */
const SPORTS = `
backstroke birdies bogey bogeys breaststroke bunt buzzer caddie caddied catchers cleats cooldown creatine
crosscountry dribble dribbled dugouts dumbbells electrolytes faceoff fairway fartlek freestyle halftimes
handstand hiit homeruns hydrated infield jiujitsu jogs kettlebell kettlebells kickoff kickoffs kneepads laps
layup leaguers linesman lunges marathons mouthguard nationals offside outfield overtimes pedometer
pickleballs pompom pompoms puck pucks racquet racquetball rebound rebounds referees regionals relays
scrimmage scrimmages shinguards sideline sidelines softballs stepcount strikeout strikeouts
teeball teed trampoline umpires volleyed
`;

/** Telephones, screens, games. */
const SCREENS = `
antivirus arcades beeper bingos blackjack blogger bunco canasta captcha chatbot clickbait cosplay
cribbage crime dialup doomscroll doomscrolled doomscrolling emoji emojis euchre fandom fanfic faxes firewall
flipphone gif gifs glitched glitching glitchy groupchat groupchats hashtag hashtags hotspot influencer
influencers infomercial infomercials kdrama kdramas lagging laggy livestream livestreaming livestreams login
logins malware manga mixtape mixtapes nonogram notifications pager passcode pinochle popup popups reboot
rebooted rebooting robocall robocaller robocalls scammers screenshot screenshots screentime soaps solitaire
spam spammed spammers spams sudokus telemarketer telemarketers telenovela telenovelas telethon touchscreen
trivias username usernames vlog vlogger vlogs
`;

/** Illness, doctors, how one looks after oneself. */
const HEALTH = `
acupuncture adenoids allergist allergists anesthesiologist antacid antacids aromatherapy audiologist bangs
bifocals biopsies bp bronchiolitis buzzcut cardiologist cardiology chickenpox chiropractors colic
colicky collagen croup csection cupping dentist dilated echinacea eeg ekg elderberry endocrinologist
endoscopy er ers eye eyes flushot flushots gastro gestational glaucoma glucose goatee hematologist
hotflash hotflashes hottub icepack icepacks jab jabbed jabs labwork lasik lozenge lozenges melatonin
menopausal microblading midwives multivitamin multivitamins neurology nicu norovirus oncology palliative
pedicure pedicures perimenopause pinkeye pms probiotic probiotics pulmonologist referrals reiki retina
rheumatologist roseola rsv sideburns sinusitis steamroom stye thrush tonsil turmeric updo urgentcare
urinalysis urologist watchful whooping
`;

/** Dogs, cats and other pets. */
const PETS = `
aquariums beagles budgies dewormed deworming distemper doberman dobermann doxie floof floofs fluffball
frenchie goldendoodle greyhounds grooming guppy heartworm kenneled koi labradoodle litterbox macaw maltese
mastiff microchip microchipped mutts neutered neutering parakeets peepad pinscher pomeranian puppers rabies
schnauzer schnauzers shih siamese spayed spaying tomcat tomcats tortie tzu vets whippet worming yorkie
zoomie
`;

/** Farm, fields and stock. */
const FARM = `
acreage alfalfa apiary atv atvs backhoe baler baling barley barnyard beekeeper beekeeping calving cidery
composted creamery dozer eggshell eggshells ewe ewes farmstand farrier farriers farrowing fenceline fencerow
foaling fourwheeler furrow furrows gelding geldings gobbler gourd gourds guineas harrow harrowing harvest
harvested harvesting harvests hatched hatching hatchling hatchlings haying hayride hayrides henhouse
honeycomb irrigated irrigating irrigation kindling lambed lambing lambs manure mares milked milker milking
paddock paddocks plough plow plowing posthole pullet pullets rams roost roosting scarecrow seedling silage
skidsteer sow sowed sowing sows soybean soybeans stallion stallions sugarcane tilled tilling tractors
turkeys utv woodpile
`;

/** Garden, weeds and what eats them. */
const GARDEN = `
aphid aphids armadillos azalea azaleas beefsteak beetroot begonia begonias cacti cactus centipede centipedes
chigger chives cicada collard collards crabgrass crocus crocuses cukes cutworm daffodil daylilies daylily
deerfly dragonflies earwig earwigs endive fern ferns fertilized fertilizer fertilizing gardenias geranium
geraniums honeysuckle hornworms hosta hostas hyacinth hyacinths impatiens junebug junebugs kohlrabi lilac
mayflies mayfly mealybugs millipede moles mossy mulched okra opossum orchid orchids pansies petunia petunias
poisonivy possums raccoons ragweed rhododendron rhododendrons romaine rosebushes rutabaga sagebrush
silverfish skunks snapdragon snapdragons snowpeas stinkbug stinkbugs succulent succulents sumac tulip vole
voles whitefly wisteria zinnia zinnias
`;

/** What a car needs. */
const CARS = `
antifreeze emissions jumpstart minivan minivans moonroof sparkplug sparkplugs sunroof towed windshields
`;

/** Feasts, church and other houses of prayer. */
const FEASTS = `
acolyte acolytes babyshower baptisms biblestudy bridalshower caroler casseroles chanukah choirpractice
choirs christenings cornucopia deacons diwali diya dreidel dreidels eggnogs eid fasted foodbank foodpantry
friendsgiving fruitcake fruitcakes galentines gingerbreads goblin goblins handbell handbells hashanah iftar
igloo imam juneteenth kippur lenten leprechaun leprechauns mardigras masjid matzah matzo maundy missionaries
missions mistletoes mitzvah novena novenas parishes prayermeeting purim retreats rosaries rosh seder shabbos
skeletons snowangels snowmen soupkitchen suhoor sundayschool trickortreat trickortreaters trickortreating
vbs vestry werewolf witches yom youthgroup
`;

/** Shifts, offices, lectures. */
const SHIFTS = `
agendas allnighter allnighters alumna alumni alumnus apprenticeship barback bartended bartending bookmobile
breakroom bursar busing calendars capstone commencement coworking crewmate crewmates cubicles dishwashing
dissertations dogsit dogsitting dogwalking enrolling flashcard flashcards foremen foundry hazing hivis
hostessing housesit housesitting hybrid juniors linecook linecooks nannied nannying nightshifts notebooks
offboarding onboarded petsit petsitting picket picketed picketing ppe punchclock refinery registrar rostered
rushhour scaffolding scrum scrums seniors sororities sprints steeltoes storytimes subbed subbing swingshift
swingshifts syllabi teleworking trucking tutored tutors valedictory waitressed waitressing
watercooler wfh worksite
`;

/** What one does with one's time. */
const LEISURE = `
bingohall birder birders birdwatching blackbird cardinals chickadee chickadees crochets egret embroidering
embroidery knitters medicaid medicare memoirs needlepoint nuthatch osprey owls pensioner pensioners quilters
scrapbooks seniorcenter shuffleboard teadance teadances titmouse whist wrens
`;

/** Papers, offices, and what breaks in a house. */
const ERRANDS = `
affidavit aircon alderman arbitration bailiff blackouts brochure brochures broker brownout caucus caucuses
census chimneys cityhall clogged clogs councilman councilmember councilwoman custody divorced divorcing
executor flyers hoa hoas inauguration junkmail juryduty landlords magistrate mailcarrier mayors mediation
mediator meterman openhouse ordinance ordinances pamphlet pamphlets plumbers polling postman powercut
powercuts realtor realtors recyclables roofing runoff runoffs selectman subpoena tenant tenants unclog
unclogged unclogging zoning
`;

/** In and around a house, a shop, a town. */
const PLACES = `
airports alcove alleyway alleyways attics backroad backyards bagboy balconies basements breezeway breweries
busstop busstops byway byways cabbie carpark carparks cemeteries checkout checkouts club cobblers coffeeshop
commuter commuters conveniencestore cornerstore corridors craftroom crawlspace creekside crematorium
culdesac decks dentists dirtroad distillery doorsteps drawbridge drivethru driveways drycleaner drycleaners
drycleaning ensuite feed fishmonger fishmongers foodcourt foodtruck funerals galleries gameroom garagedoor
gasstation gasstations graveyards greengrocer grocer grocers guestroom jailhouse lakefront lakehouse
limousine lobbies loo mancave mortuary mudroom multiplex nook nooks observatory parkinggarage parkinglot
parkinglots patios patisserie pavements pergola pergolas planetarium redeye restarea reststop
rideshare rideshares riverbank riverbanks rollercoaster rollercoasters roundabouts salon salons selfcheckout
sewingroom sideyard spareroom splashpad splashpads staircases store stores streetcars sunporch taproom
tearoom tearooms teashop trolleys truckstop truckstops tsa veranda verandah vestibule waterpark waterparks
wineries zoos
`;

/** Weather, sky and hours. */
const WEATHER = `
aurora barometric blackice blizzards bluster blustery cyclone cyclones dewpoint dewy downpours drizzles
dustbowl duststorm duststorms eclipse eclipses floodwater floodwaters fogged fogs graupel heatindex humidex
landslide meltwater meteor meteors midafternoon midmorning moonrise mudslide mudslides noonish noreaster
noreasters sleets smoggy smoky squally stargazing starlit starry sundown thaw tropical typhoon typhoons uv
whiteout
`;

/** Assent, greetings, how one calls people. */
const SAID = `
abracadabra afaik affirmative amigos brah brb chica chillaxing chillin compadre deadass dearie deary dokie
donezo dudette eureka flex flexing girlie girlies goated gotcha gotchu heehee homies humbug hunny laddie
lulz luv matey mhm nocap okeydoke okeydokie oofda pardner presto psh pshaw rah rightio righto righty sighs
simp sugarplum sweetcheeks teehee toots ughh uhhuh vibey voila yesiree zap
`;

/** How tired one is. */
const WORN = `
airsick bleary bloodshot bushed gassy headachey headachy hoarse knackering lightheaded ouchy overbooked
overeating overextended overscheduled oversleep overstimulated parched phlegm phlegmy pulsing shivery
soreness stiffness underslept
`;

/** Complaints. */
const GRIPES = `
aggravation aggro annoyances bellyached bellyaching botheration bothersome cantankerous crotchety curmudgeon
curmudgeonly exasperation faffed grouse grousing grumbly hassled hassles hassling huffy irksome kvetch
kvetched kvetching miffed narky nuisances omnishambles palaver pesky ranty rigamarole rigmarole snappish
snippy stroppy tetchy trainwreck vexing whinge whinged whinging
`;

/** How something is done. */
const HOW = `
anywho anywhoo begrudgingly briskly candidly cheerily coincidentally compulsively crabbily crankily doggedly
drowsily dutifully feverishly figuratively gleefully glumly grudgingly grumpily lastly messily obsessively
predictably stealthily thirdly timidly unsurprisingly
`;

/** Idling about. */
const IDLING = `
ambled ambling cannonball catnapped cozied cozying dawdle dillydallied dillydally dillydallying fidgeted
frolicking gallivanted gallivanting hiccupped hunkered hunkering lollygag lollygagged lollygagging mosey
moseyed moseying nestled paddling plodded pottered pranced prancing robe romping schlep schlepping slog
slogged slogging splashing traipsing
`;

/** Cooking. */
const KITCHEN = `
airfryer barbecued bento boilover braised broiled burny carryout charred crispy doggiebag doggybag
frosting inedible kneaded kneading lunchboxes marinated marinating mealprep mealprepping microwaved mushy
overcooked potlucking preheated preheating reheated sauteed singed slowcooker sprinkles takeouts undercooked
whisked whisking
`;

/** Travel and pets' nicknames. */
const AWAY = `
backpacked backpackers backpacking bamboozled boop booped boops borked catto chonk chonky derp derpy doggos
excursion excursions furbabies furkid furkids glamped glamping granddog granddogs grandpup grandpups
itineraries kittehs pupper roadtripping sightsee sightseeing smol snorkeled snowbird snowbirding snowbirds
sploot staycations sunbed sunbeds zipline ziplining
`;

/** The words of a week, to be put behind those of `daily.ts`. */
export const WEEK: readonly string[] = [
  KIDS,
  SPORTS,
  SCREENS,
  HEALTH,
  PETS,
  FARM,
  GARDEN,
  CARS,
  FEASTS,
  SHIFTS,
  LEISURE,
  ERRANDS,
  PLACES,
  WEATHER,
  SAID,
  WORN,
  GRIPES,
  HOW,
  IDLING,
  KITCHEN,
  AWAY,
];
