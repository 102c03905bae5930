import { type Cell, filled } from "./cells.ts";

/* Purchases and costs as people tell them: several at once, from whom, haggled, described, free, and what goes into them. */

const TODAY = "2026-06-13";
const STOCK: readonly string[] = [
  "@at 2026-06-01T15:00:00Z",
  "bought dresser 35",
  "bought desk 50",
  "bought hutch 80",
  "bought mirror 12",
  "bought plant stand 6",
  "bought vanity 60",
  "bought nightstand 10",
  "listed hutch 240",
  `@at ${TODAY}T15:00:00Z`,
];
const [DRESSER, DESK, HUTCH, MIRROR, STAND, VANITY, NIGHTSTAND, NEXT] = [1, 2, 3, 4, 5, 6, 7, 8];

type Fact = Record<string, unknown>;

/** A line with what it has to leave recorded; none: nothing may be. */
interface Said {
  grid: string;
  line: string;
  facts: readonly Fact[];
  before?: readonly string[];
}

const sums = (amount: number): string => amount.toFixed(2);
const buys = (name: string, amount: number, more: Fact = {}): Fact => ({
  kind: "buy",
  name,
  amount: sums(amount),
  ...more,
});
const costs = (amount: number, pieces: readonly (number | undefined)[] = [], more: Fact = {}): Fact => ({
  kind: "spend",
  amount: sums(amount),
  pieces,
  ...more,
});

/** Each line with each of the words to be put in for {x}. */
function each(lines: readonly string[], words: readonly string[]): string[] {
  return lines.flatMap((line) => words.map((x) => filled(line, { x })));
}

/* Several pieces, each with its price. */

const PAIRS: readonly string[] = [
  "an oak table for 60 and a little bench for 15",
  "an oak table for sixty and a little bench for fifteen",
  "an oak table 60 and a bench 15",
  "an oak table 60, a bench 15",
  "oak table 60, bench 15",
  "oak table 60 and bench 15",
  "oak table 60 bench 15",
  "oak table for $60, bench for $15",
  "an oak table for 60 bucks and a bench for 15 bucks",
  "a table (60) and a bench (15)",
  "a table - 60, a bench - 15",
  "table: 60, bench: 15",
  "a table at 60 plus a bench at 15",
  "a table for 60 & a bench for 15",
  "an old table for 60 then a bench for 15",
];
const FINDERS: readonly string[] = [
  "i got {x}",
  "got {x}",
  "bought {x}",
  "picked up {x}",
  "grabbed {x}",
  "found {x}",
  "came home with {x}",
  "we scored {x}",
  "ended up with {x}",
  "went to a few yard sales and got {x}",
  "wife and i hit the yard sales, {x}",
  "hit the yard sales early, {x}",
  "yard sale haul: {x}",
  "estate sale finds: {x}",
  "good morning at the yard sales, got {x}",
];
const OF_TWO: readonly { said: string; wants?: Fact }[] = [
  { said: "" },
  { said: " at an estate sale", wants: { source: "estate sale" } },
  { said: " from a guy who is moving" },
  { said: ", both cash", wants: { method: "cash" } },
  { said: " yesterday", wants: { day: "2026-06-12" } },
  { said: ", 75 total" },
  { said: ", so 75 all in" },
  { said: ", both need work" },
  { said: ", the bench is missing a slat" },
  { said: ", good day" },
];

function pairs(): Said[] {
  const facts = (more?: Fact): Fact[] => [buys("table", 60, more), buys("bench", 15, more)];
  return [
    ...each(FINDERS, PAIRS).map((line) => ({ grid: "pairs", line, facts: facts() })),
    ...OF_TWO.flatMap(({ said, wants }) =>
      each(["got {x}", "bought {x}"], PAIRS.slice(0, 6)).map((line) => ({
        grid: `pairs${said}`,
        line: `${line}${said}`,
        facts: facts(wants),
      })),
    ),
    ...each(
      ["got {x}", "wife and i hit the yard sales, {x}", "my wife found {x}", "bought {x} yesterday"],
      [
        "a table 60, a bench 15 and a rocking chair 20",
        "table 60, bench 15, rocking chair 20",
        "a table for 60, a bench for 15 and a rocking chair for 20",
        "a table 60 and a bench 15 and a rocking chair 20",
      ],
    ).map((line) => ({ grid: "three", line, facts: [...facts(), buys("rocking chair", 20)] })),
  ];
}

/* Several alike, for one price or so much each. */

const SEVERAL: readonly { said: string; name: string; count: number }[] = [
  { said: "2 stools", name: "stool", count: 2 },
  { said: "two side tables", name: "side table", count: 2 },
  { said: "a pair of lamps", name: "lamp", count: 2 },
  { said: "4 dining chairs", name: "dining chair", count: 4 },
  { said: "a set of 4 chairs", name: "chair", count: 4 },
  { said: "three old stools", name: "stool", count: 3 },
];
const PRICES: readonly { said: string; each?: true; of?: 2 }[] = [
  { said: "10 apiece", each: true },
  { said: ", 10 apiece", each: true },
  { said: "10 each", each: true },
  { said: "at 10 each", each: true },
  { said: "for 10 each", each: true },
  { said: "for 10 a piece", each: true },
  { said: "10 bucks each", each: true },
  { said: "$10 ea", each: true },
  { said: "at 10 dollars apiece", each: true },
  { said: "for 40" },
  { said: "40 for all of them" },
  { said: "for 40 total" },
  { said: ", 40 for the lot" },
  { said: "40 all together" },
  { said: ", paid 40 for everything" },
  { said: "40 for the pair", of: 2 },
  { said: ", 40 for both", of: 2 },
  { said: "for 40 the pair", of: 2 },
];
const BEHIND_SEVERAL: readonly string[] = [
  "",
  " from a coworker's garage",
  " at a yard sale",
  ", they all need refinishing",
];

function several(): Said[] {
  const facts = (name: string, count: number, isEach?: true): Fact[] => [
    buys(name, isEach ? 10 * count : 40, {
      pieces: Array.from({ length: count }, (_, at) => NEXT! + at),
    }),
  ];
  return [
    ...SEVERAL.flatMap(({ said, name, count }) =>
      PRICES.filter(({ of }) => of === undefined || of === count).flatMap((price, at) =>
        each(["got {x}", "found {x}"], [said]).map((line, verb) => ({
          grid: `several ${price.said}`,
          line: `${line} ${price.said}${BEHIND_SEVERAL[(at + verb) % BEHIND_SEVERAL.length]}`.replace(
            " ,",
            ",",
          ),
          facts: facts(name, count, price.each),
        })),
      ),
    ),
    ...each(
      [
        "found {x} for the table, 10 apiece",
        "found {x} to go with the table 10 apiece",
        "got {x} for the kitchen table at 10 each",
        "bought {x} from a customer whose panel i was swapping, 10 each",
        "got {x} 10 each from a customer whose panel i was swapping, theyre moving",
        "picked up {x}, he wanted 15 apiece, got them for 10 each",
        "{x} from the neighbor, 10 each, bought them all",
      ],
      ["4 matching chairs", "4 chairs"],
    ).map((line) => ({ grid: "several told", line, facts: facts("chair", 4, true) })),
    ...each(
      ["second yard sale, {x}", "yard sale number two: {x}", "next yard sale, got {x}", "last stop {x}"],
      ["2 stools for 40", "2 stools 40", "a pair of stools for 40"],
    ).map((line) => ({ grid: "next sale", line, facts: facts("stool", 2) })),
  ];
}

/* From whom, with what is told of them. */

const FROM: readonly string[] = [
  "from a guy who is moving",
  "from a guy who's moving out of state",
  "from a lady who is downsizing",
  "from a customer whose panel i was swapping",
  "from a customer while i was fixing her sink",
  "from a coworker's garage",
  "out of a coworker's garage",
  "from my neighbor's garage",
  "from the neighbor across the street",
  "from some guy two streets over",
  "from a couple who were moving",
  "from an old lady cleaning out her basement",
  "from a friend of my wife",
  "from the folks next door, they are moving",
  "off a guy at work",
  "from a widow selling her husband's things",
  "from a church that was closing",
  "from a motel that's remodeling",
  "from a customer's attic",
  "from a client who was getting rid of it",
  "off a lady i did a job for",
  "from my boss",
  "from somebody in the building who was moving out",
  "from a guy i met at the dump",
  "from a woman whose mother passed",
];

const fromWhom = (): Said[] =>
  each(
    [
      "bought an armoire for 40 {x}",
      "got an armoire {x} for 40",
      "picked up armoire {x}, 40",
      "armoire 40 {x}, bought it this morning",
    ],
    FROM,
  ).map((line) => ({ grid: "from", line, facts: [buys("armoire", 40)] }));

/* What was asked, and what was paid. */

const HAGGLED: readonly string[] = [
  "nice armoire, she wanted 80 but i talked her down, bought it for 55",
  "armoire, wanted 80 but i talked her down, bought it for 55",
  "she wanted 80 for an armoire but i talked her down, bought it for 55",
  "armoire marked 80 got it for 55",
  "armoire was marked 80, got it for 55",
  "bought an armoire, marked 80 got it for 55",
  "she asked 80 for the armoire, gave her 55",
  "he was asking 80 for an armoire, i gave him 55",
  "got an armoire for 55, she was asking 80",
  "bought armoire 55, he wanted 80",
  "bought an armoire 55 (she wanted 80)",
  "bought an armoire for 55, down from 80",
  "bought an armoire for 55 instead of 80",
  "asking price was 80 but i got the armoire for 55",
  "armoire was 80, talked him down to 55 and bought it",
  "bought an armoire, was 80, paid 55",
  "armoire, asking 80, paid 55",
  "offered 55 for an armoire and he took it",
  "got him down from 80 to 55 on an armoire",
  "haggled an armoire down from 80 to 55",
  "tag said 80, paid 55 for the armoire",
  "armoire was priced at 80 but she let me have it for 55",
  "talked a guy down from 80 to 55 on an armoire, bought it",
  "bought an armoire for 55 after he wanted 80",
  "paid 55 for an armoire, they wanted 80",
  "guy wanted 80 for his armoire, ended up paying 55",
  "armoire priced 80, paid 55 cash",
  "picked up an armoire for 55. sticker was 80",
  "they wanted 80 for the armoire, i offered 55 and they took it",
  "my wife talked her down to 55 on an armoire, she had 80 on it",
  "got an armoire for 55, it was marked 80",
  "bought armoire 55 tag said 80",
];
const NOT_HAGGLED: readonly string[] = [
  "she wanted 80 for the armoire so i passed",
  "he is asking 80 for an armoire",
  "offered 55 on an armoire, she said no",
  "offered her 55 for an armoire, waiting to hear back",
  "armoire marked 80, left it there",
  "talked him down to 55 on an armoire but didn't buy it",
  "bob got an armoire for 55, she was asking 80",
];

/* What a piece is like. */

const LIKE: readonly string[] = [
  "missing a shelf",
  "missing one drawer",
  "missing a knob or two",
  "mirror's fine",
  "the mirror is fine",
  "needs a leg glued",
  "just needs a leg glued",
  "one drawer sticks",
  "two drawers stick",
  "comes with a key",
  "came with the key",
  "no key",
  "key included",
  "drawers are solid",
  "top is scratched",
  "legs are wobbly",
  "needs new knobs",
  "has a broken hinge",
  "two of the knobs are gone",
  "back panel is loose",
  "solid oak",
  "real wood",
  "heavy as hell",
  "veneer is chipping on one side",
  "water ring on top",
  "smells like smoke",
  "with the mirror",
  "with the original mirror",
  "with all its shelves",
  "no mirror",
  "just needs paint",
  "needs some love",
  "in good shape",
  "a bit beat up",
  "the cat scratched it up",
  "one leg is short",
  "has 6 drawers",
  "with 3 drawers",
  "needs a new back",
  "hinges are shot",
  "glass is cracked",
  "drawer pulls are missing",
  "somebody painted it purple",
  "looks like it's from the 50s",
  "dovetail drawers",
  "a little water damage",
  "the door hangs crooked",
  "shelf is broken",
  "lost a caster",
  "will need a new top",
];

const described = (): Said[] => [
  ...each(
    [
      "bought an armoire for 40, {x}",
      "got an armoire 40 {x}",
      "armoire 40 at a yard sale, bought it, {x}",
      "picked up an armoire, 40. {x}",
    ],
    LIKE,
  ).map((line) => ({ grid: "like", line, facts: [buys("armoire", 40)] })),
  ...each(
    ["bought an armoire, {x}, 40", "got an armoire for 40 {x}, and a bench for 15"],
    LIKE.slice(0, 14),
  ).map((line) => ({
    grid: "like within",
    line,
    facts: [buys("armoire", 40), ...(line.includes("bench") ? [buys("bench", 15)] : [])],
  })),
];

/* What cost nothing. */

const FREE: readonly string[] = [
  "grabbed a bench off the curb, free",
  "grabbed a bench off the curb on the way to a service call, free",
  "grabbed a bench off the curb on the way to a service call",
  "grabbed a bench off the curb on my way home",
  "picked up a bench off the curb on the way to work",
  "free bench off the curb",
  "free bench, just needs a leg glued",
  "free bench from a neighbor, she was moving",
  "scored a free bench",
  "got a bench for free",
  "got a bench for nothing",
  "got a free bench from a customer",
  "neighbor gave me a bench",
  "neighbor gave us a bench for free",
  "the neighbor gave us a bench, no charge",
  "a customer gave me a bench, no charge",
  "a customer gave me a bench, didn't want anything for it",
  "coworker gave me an old bench",
  "my son brought home a bench somebody gave him, no charge",
  "son came home with a bench somebody gave him, no charge",
  "my dad found a bench on the curb",
  "found a bench by the dumpster, free",
  "found a bench on the curb, just needs a leg glued",
  "picked a bench out of the trash",
  "snagged a bench off the curb, free",
  "bench from the curb, free, grabbed it this morning",
  "got a bench, it was free",
  "took a bench off a lady's hands for free",
  "a guy i work with gave me a bench for free",
  "curb find: bench",
  "curb find, a bench, free",
  "bench off the curb, no charge, needs a leg",
  "somebody left a bench on the curb so i grabbed it",
  "lady down the street was giving away a bench, took it",
  "got a bench free off the curb, missing a slat",
];

/* What goes into pieces and the shop. */

const SUPPLIES: readonly string[] = [
  "sandpaper",
  "sandpaper and tack cloths",
  "ratchet straps",
  "drop cloths and rags",
  "moving blankets",
  "wood glue",
  "a box of gloves",
  "a gallon of mineral spirits",
  "brushes and rollers",
  "painters tape",
];
const FOR_SHOP: readonly string[] = [
  "{x} 21.35 for the shop, not for one piece",
  "{x} 21.35 for the shop",
  "{x} 21.35 they were on sale",
  "{x} 21.35, on sale",
  "{x}, 21.35, general shop stuff",
  "bought {x} 21.35, not for any one piece",
  "picked up {x} for 21.35 for the shop",
  "spent 21.35 on {x}",
  "needed more {x}, 21.35",
  "ran out of {x}, 21.35",
  "21.35 for {x} at the hardware store",
  "restocked {x} 21.35",
  "{x} came to 21.35 with tax",
];
const ON_PIECES: readonly { said: string; facts: readonly Fact[] }[] = [
  ...[
    "one quart of white for the dresser and the nightstand 22",
    "one quart of white 22 for the dresser and the nightstand",
    "a quart of white for the dresser and nightstand, 22",
    "bought a quart of white for both the dresser and the nightstand 22",
    "22 for a quart of white, for the dresser and the nightstand",
    "2 cans of black for the dresser and the nightstand 22",
    "a can of primer for the dresser and the nightstand, 22",
    "knobs for the dresser and the nightstand 22 total",
    "paint for the dresser and the nightstand, 22 for both",
  ].map((said) => ({ said, facts: [costs(22, [DRESSER, NIGHTSTAND])] })),
  ...[
    "wood filler and a new handle for the dresser 11.60 total",
    "wood filler and a new handle for the dresser, 11.60",
    "wood filler and a handle 11.60 for the dresser",
    "filler and screws for the dresser 11.60 altogether",
    "new handle and some wood filler for the dresser came to 11.60",
    "got wood filler and a handle for the dresser, 11.60 all in",
    "11.60 for wood filler and a new handle for the dresser",
  ].map((said) => ({ said, facts: [costs(11.6, [DRESSER])] })),
  ...[
    "carol asked for new knobs so knobs 15 for the hutch",
    "carol wanted new knobs so knobs for the hutch 15",
    "buyer wants brass knobs so brass knobs 15 for the hutch",
    "knobs 15 for the hutch, carol asked for new ones",
    "carol wants different knobs on the hutch, knobs 15",
    "the lady asked for new knobs so i bought knobs 15 for the hutch",
    "knobs for the hutch 15 because carol wanted new ones",
    "knobs 15 for the hutch since the old ones were ugly",
    "new knobs on the hutch 15, the old ones were stripped",
  ].map((said) => ({ said, facts: [costs(15, [HUTCH])] })),
  ...[
    "had the mirror on the vanity replaced 38",
    "had the mirror on the vanity replaced, 38",
    "got the mirror on the vanity replaced for 38",
    "had the vanity mirror replaced 38",
    "had a new mirror cut for the vanity 38",
    "new mirror for the vanity 38",
    "paid a guy 38 to replace the mirror on the vanity",
    "38 to have the mirror on the vanity replaced",
    "had new glass put in the vanity 38",
    "had the vanity reupholstered 38",
    "replaced the mirror on the vanity, 38",
    "had somebody fix the drawers on the vanity, 38",
  ].map((said) => ({ said, facts: [costs(38, [VANITY])] })),
  ...[
    "had a key cut for the desk 6",
    "got a key made for the desk, 6",
    "key for the desk 6",
    "new leg for the desk 6",
    "replacement drawer pull for the desk 6",
    "screws and brackets for the desk 6",
  ].map((said) => ({ said, facts: [costs(6, [DESK])] })),
];
const OF_SHOP: readonly { said: string; facts: readonly Fact[] }[] = [
  ...[
    "dump fee 12, old mattress",
    "dump fee 12 for an old mattress",
    "dump fee 12, old mattress and some junk",
    "dump run 12, old mattress",
    "took an old mattress to the dump 12",
    "paid 12 at the dump, old mattress",
    "12 dump fee for the old mattress somebody left",
    "dump fee for the junk from the estate sale 12",
    "landfill fee 12",
  ].map((said) => ({ said, facts: [costs(12)] })),
  ...[
    "rented a trailer to get it all home 29",
    "rented a trailer to get it all home, 29",
    "rented a trailer 29 to get it all home",
    "rented a trailer for 29 to haul everything",
    "rented a trailer for the day, 29",
    "rented a trailer, 29",
    "trailer rental 29",
    "trailer rental 29 to get it all home",
    "had to rent a trailer, 29",
    "had to rent a trailer to get it home 29",
    "rented a van for 29 to bring it all back",
    "rented a truck to move it all 29",
    "29 to rent a trailer",
    "paid 29 for a trailer to get it all home",
    "my wife rented a trailer, 29",
    "rented a sander for the day 29",
  ].map((said) => ({ said, facts: [costs(29)] })),
  ...[
    "rented out the trailer for 29",
    "rented my trailer to bob for 29",
    "rented the trailer out to a neighbor, 29",
    "got 29 for renting out the trailer",
  ].map((said) => ({ said, facts: [{ kind: "income", amount: "29.00" }] })),
];

const costsTold = (): Said[] => [
  ...each(FOR_SHOP, SUPPLIES).map((line) => ({ grid: "supplies", line, facts: [costs(21.35)] })),
  ...ON_PIECES.map(({ said, facts }) => ({ grid: "on pieces", line: said, facts })),
  ...OF_SHOP.map(({ said, facts }) => ({ grid: "of the shop", line: said, facts })),
];

/* Several sold. */

const SOLD: readonly { said: string; method?: string }[] = [
  { said: "sold mirror 45 and plant stand 22 cash both", method: "cash" },
  { said: "sold the mirror 45, plant stand 22, both cash", method: "cash" },
  { said: "sold mirror 45 & plant stand 22, all cash", method: "cash" },
  { said: "mirror sold 45 cash, plant stand 22 cash", method: "cash" },
  { said: "sold the mirror for 45 and the plant stand for 22" },
  { said: "mirror went for 45 and the plant stand for 22" },
  { said: "sold mirror (45) and plant stand (22)" },
  { said: "sold both, mirror 45, plant stand 22" },
  { said: "two sales today: mirror 45, plant stand 22" },
  { said: "mirror 45 and plant stand 22, both sold" },
  { said: "sold the mirror for 45 plus the plant stand for 22 to the same lady" },
  { said: "good day, sold mirror 45 and plant stand 22" },
  { said: "wife sold the mirror 45 and the plant stand 22" },
  { said: "sold the mirror and the plant stand, 45 and 22" },
  { said: "sold mirror 45, plant stand 22, 67 total" },
];

/* What goes on from the purchase before. */

const GOING_ON: readonly { said: string; facts: readonly Fact[] }[] = [
  ...[
    "plus a wardrobe 60 there",
    "plus a wardrobe 60",
    "and a wardrobe for 60",
    "also a wardrobe for 60",
    "also got a wardrobe there for 60",
    "and a wardrobe 60 at the same place",
    "same sale, wardrobe 60",
    "oh and a wardrobe 60",
    "then a wardrobe 60 from the next house",
    "got a wardrobe too, 60",
    "plus wardrobe 60 from the same people",
    "and a wardrobe 60 from them",
    "another yard sale, wardrobe 60",
    "next stop wardrobe 60",
    "wardrobe 60 there too",
  ].map((said) => ({ said, facts: [buys("wardrobe", 60)] })),
  ...[
    "second yard sale, 2 wardrobes for 60",
    "plus 2 wardrobes for 60",
    "plus 2 wardrobes 30 each",
    "and two wardrobes, 30 apiece",
  ].map((said) => ({ said, facts: [buys("wardrobe", 60, { pieces: [9, 10] })] })),
  ...[
    "they threw in a wardrobe for free",
    "plus a free wardrobe",
    "and she threw in a wardrobe",
    "and a wardrobe for nothing",
    "wardrobe was free",
  ].map((said) => ({ said, facts: [buys("wardrobe", 0)] })),
];

/* What looks alike and is no purchase of ours, or none yet. */

const NONE: readonly string[] = [
  "bob bought a bench for 15",
  "bob got an oak table for 60 and a bench for 15",
  "a lady at the yard sale got the bench for 15",
  "the guy ahead of me got the bench for 15 and the table for 60",
  "didn't buy the bench, 15 was too much",
  "almost bought a bench for 15",
  "didn't get the table for 60 or the bench for 15",
  "wife wanted a bench for 15 but we passed",
  "going to buy a bench for 15 tomorrow",
  "might get 4 chairs, 10 apiece",
  "thinking of getting an oak table for 60 and a bench for 15",
  "they want 60 for the oak table and 15 for the bench",
  "saw an oak table for 60 and a bench for 15 at a yard sale",
  "knobs are 15 at the hardware store",
  "trailer rental would be 29",
  "need to rent a trailer, 29",
  "carol asked for new knobs, would be 15",
  "hit the yard sales, nothing good, a bench for 15 but it was rotten",
  "hit the yard sales with bob, he got a bench 15",
  "neighbor wants to give me a bench for free",
  "neighbor gave bob a bench",
  "there's a free bench on the curb on elm",
  "they offered me a bench for 15",
  "should have bought the bench for 15",
];

/** All of them. */
export function lots(): Cell[] {
  const told: Said[] = [
    ...pairs(),
    ...several(),
    ...fromWhom(),
    ...HAGGLED.map((line) => ({ grid: "haggled", line, facts: [buys("armoire", 55)] })),
    ...NOT_HAGGLED.map((line) => ({ grid: "not haggled", line, facts: [] })),
    ...described(),
    ...FREE.map((line) => ({ grid: "free", line, facts: [buys("bench", 0)] })),
    ...costsTold(),
    ...SOLD.map(({ said, method }) => ({
      grid: "sold",
      line: said,
      facts: [
        { kind: "sell", pieces: [MIRROR], amount: "45.00", ...(method ? { method } : {}) },
        { kind: "sell", pieces: [STAND], amount: "22.00", ...(method ? { method } : {}) },
      ],
    })),
    ...GOING_ON.map(({ said, facts }) => ({
      grid: "going on",
      line: said,
      facts,
      before: [...STOCK, "bought bench 12 at a yard sale"],
    })),
    ...NONE.map((line) => ({ grid: "none", line, facts: [] })),
  ];
  return told.map(({ grid, line, facts, before = STOCK }) => ({
    id: `${grid} | ${line}`,
    class: `lots ${grid}`,
    on: TODAY,
    before: [...before],
    line,
    facts: [...facts],
    ask: facts.length === 0 ? "either" : false,
  }));
}
