import { type Cell, filled, HE, type Pronouns, SHE, THEY } from "./cells.ts";

/*
 * People beside the note: kin who came over and did something, what helpers are paid, what others say, who sold and who
 * bought with more words than a name, who drove and carried. What must not turn stands below them.
 */

const TODAY = "2026-05-09";

const SHOP: readonly string[] = [
  "@at 2026-03-20T15:00:00Z",
  "bought dresser 35",
  "bought desk 50",
  "bought hutch 60",
  "bought lamp 8",
  "listed dresser 150",
  "listed lamp 45",
  "new loan student 9000 5%",
  `@at ${TODAY}T15:00:00Z`,
];

interface Kin extends Pronouns {
  kin: string;
  by: string;
}

const KIN: readonly Kin[] = [
  { kin: "my son", by: "son", ...HE },
  { kin: "uncle", by: "uncle", ...HE },
  { kin: "my wife", by: "wife", ...SHE },
  { kin: "grandpa", by: "grandpa", ...HE },
  { kin: "my sister", by: "sister", ...SHE },
  { kin: "dad", by: "dad", ...HE },
  { kin: "my brother in law", by: "brother in law", ...HE },
  { kin: "mom", by: "mom", ...SHE },
];

/** Others, as they are told of, and what of it may be kept as their name. */
interface Other extends Pronouns {
  other: string;
  names: readonly string[];
}

const OTHERS: readonly Other[] = [
  { other: "a coworker", names: ["coworker"], ...HE },
  { other: "a neighbor two doors down", names: ["neighbor two doors down", "neighbor"], ...HE },
  { other: "this lady in the next town", names: ["lady in the next town", "lady"], ...SHE },
  { other: "a guy from work", names: ["guy from work", "guy"], ...HE },
  { other: "the lady down the street", names: ["lady down the street", "lady"], ...SHE },
  { other: "an old couple", names: ["old couple", "couple"], ...THEY },
  { other: "a guy i work with", names: ["guy i work with", "guy"], ...HE },
  { other: "some college kid", names: ["college kid", "kid"], ...HE },
  { other: "my wife's boss", names: ["wife's boss", "wifes boss", "boss"], ...HE },
  { other: "a friend of my sister", names: ["friend of my sister", "friend of sister", "friend"], ...SHE },
  { other: "my buddy dean", names: ["buddy dean", "dean"], ...HE },
  { other: "the old man across the road", names: ["old man across the road", "old man", "man"], ...HE },
];

interface Row {
  class: string;
  before?: readonly string[];
  wants: Record<string, unknown>[];
  or?: Record<string, unknown>[][];
  openers?: readonly string[];
  ways: readonly string[];
  tails?: readonly string[];
  ask?: Cell["ask"];
  /** The fact says which of the kin did it. */
  by?: boolean;
  /** The field that holds the name of the other. */
  names?: "source" | "buyer";
  /** Each of the others, and not one after the other. */
  each?: boolean;
}

const CAME: readonly string[] = [
  "{kin} came over and ",
  "{kin} stopped by and ",
  "{kin} ran in and ",
  "{kin} swung by after work and ",
  "{kin} had the day off so {he} ",
  "{kin} got bored and ",
  "{kin} came by, {he} ",
  "{kin} was here this morning and ",
  "{kin} surprised me and ",
  "{kin} went out to the garage and ",
  "{kin} came home early and ",
  "{kin} had some time and ",
  "so {kin} came out and ",
  "{kin} woke up early and ",
];
const AFTER: readonly string[] = [
  "",
  " today",
  ", saved me a trip",
  " while i was at work",
  ", bless {him}",
  ", {hes} good at that",
  " so i could rest",
];
const GONE = { kind: "sell", pieces: [1], amount: "140.00" };
const BENCH = { kind: "buy", pieces: [5], amount: "20.00", name: "bench" };

const ROWS: readonly Row[] = [
  {
    class: "kin came and worked",
    wants: [{ kind: "work", pieces: [3], minutes: 120 }],
    by: true,
    openers: [...CAME, "{kin} "],
    ways: [
      "worked 2 hours on the hutch doors",
      "worked on the hutch 2 hours",
      "sanded the hutch for 2 hours",
      "spent 2 hours on the hutch",
    ],
    tails: [...AFTER, " {he} fixed the door", ", {he} got the drawers to slide", " {he} did the doors"],
  },
  {
    class: "kin came and spent",
    wants: [{ kind: "spend", pieces: [2], amount: "9.75", category: "materials" }],
    by: true,
    openers: CAME,
    ways: [
      "got hinges for the desk 9.75",
      "picked up sandpaper 9.75 for the desk",
      "bought paint for the desk, 9.75",
      "grabbed knobs for the desk, 9.75",
    ],
    tails: AFTER,
  },
  {
    class: "kin came and bought",
    wants: [BENCH],
    by: true,
    openers: [
      "{kin} ran in and ",
      "{kin} went to the church sale and ",
      "{kin} had the day off so {he} ",
      "{kin} saw a yard sale and ",
      "{kin} pulled over and ",
      "{kin} got bored and ",
      "{kin} went out early and ",
      "{kin} came through, {he} ",
    ],
    ways: ["got a bench for 20", "picked up a bench 20", "bought a bench, 20 cash", "found a bench for 20"],
    tails: [...AFTER.slice(0, 4), ", {he} loves it", " for me"],
  },
  {
    class: "kin came and listed",
    wants: [{ kind: "list", pieces: [2], amount: "120.00" }],
    by: true,
    openers: CAME,
    ways: ["listed the desk for 120", "put the desk up for 120", "posted the desk at 120"],
    tails: [...AFTER, ", {his} pictures are better than mine", ", {he} took good pictures"],
  },
  {
    class: "kin came and finished",
    wants: [{ kind: "finish", pieces: [3] }],
    openers: CAME,
    ways: ["finished the hutch", "got the hutch done", "finished up the hutch"],
    tails: AFTER,
  },
  {
    class: "kin came and sold",
    wants: [GONE],
    by: true,
    openers: [
      "{kin} was home and ",
      "{kin} knew a guy and ",
      "{kin} met the buyer and ",
      "{kin} stayed home and ",
    ],
    ways: ["sold the dresser for 140", "sold the dresser 140 cash", "got 140 for the dresser"],
    tails: AFTER,
  },
  {
    class: "kin came and drove",
    wants: [{ kind: "drive", miles: "24" }],
    by: true,
    openers: CAME.slice(0, 6),
    ways: ["drove 24 miles for the hutch", "drove 24 miles to get the hutch"],
    tails: AFTER,
  },
  {
    class: "a helper paid",
    wants: [{ kind: "spend", pieces: [1], amount: "15.00", category: "help" }],
    ways: [
      "{kin} helped so i gave {him} 15 for the dresser",
      "{kin} helped me with the dresser, gave {him} 15",
      "{kin} helped me move the dresser so i gave {him} 15",
      "paid {kin} 15 to help move the dresser",
      "gave {kin} 15 for helping with the dresser",
      "gave {kin} 15 for {his} help on the dresser",
      "slipped {kin} 15 for helping me sand the dresser",
      "{kin} sanded the dresser so i paid {him} 15",
      "{kin} carried the dresser up with me, slipped {him} 15",
      "threw {kin} 15 for the help with the dresser",
      "{other} helped me load the dresser, gave {him} 15",
      "{other} helped carry the dresser in so i tossed {him} 15",
      "paid {other} 15 to help with the dresser",
      "gave {other} 15 for helping me carry the dresser",
      "had {kin} help with the dresser, paid {him} 15",
      "{kin} came over to help with the dresser so i gave {him} 15",
    ],
    tails: ["", " cash", " today", ", {he} earned it"],
  },
  {
    class: "a helper paid for what was done",
    before: ["{kin} worked on the hutch 2 hours"],
    wants: [{ kind: "spend", pieces: [3], amount: "25.00", category: "help" }],
    or: [[{ kind: "spend", pieces: [], amount: "25.00", category: "help" }]],
    ways: ["gave {him} 25 for it", "gave {him} 25 for {his} help", "paid {him} 25", "paid {kin} 25 for it"],
    tails: ["", " cash", ", {he} earned it"],
    ask: "either",
  },
  {
    class: "kin say what it was",
    before: ["{kin} picked up a bench 20"],
    wants: [{ mend: true, facts: [{ ...BENCH, amount: "28.00" }] }],
    ways: [
      "{he} says it was 28",
      "oh wait {he} says it was 28 for the bench",
      "{kin} says it was 28",
      "{he} said the bench was 28",
      "{kin} told me it was actually 28",
      "{he} just told me the bench was 28",
      "{kin} says the bench was 28 not 20",
    ],
  },
  {
    class: "bought of somebody",
    wants: [{ ...BENCH, method: "cash" }],
    names: "source",
    each: true,
    ways: [
      "got a bench off {other}{tail}, twenty bucks cash",
      "bought a bench from {other}{tail} for 20 cash",
      "bench 20 cash from {other}{tail}, picked it up",
      "picked up a bench from {other}{tail} 20 cash",
      "bought a bench 20 cash off {other}{tail}",
    ],
    tails: ["", " at break", " after my shift", " on my lunch break", " this morning", " on the way home"],
  },
  {
    class: "bought of somebody, with more behind",
    wants: [BENCH],
    names: "source",
    each: true,
    ways: [
      "bought a bench from {other} for 20",
      "got a bench 20 off {other}",
      "bought a bench off {other}, 20",
    ],
    tails: [
      ", super nice",
      ", {he} was moving",
      " who was moving out",
      ", {kin} helped me load it",
      ", {he} helped me load it",
      ", {he} threw in a drink",
      " and {kin} came along",
      ", {kin} knows {him}",
    ],
  },
  {
    class: "all of one sale",
    wants: [
      { kind: "buy", amount: "20.00", name: "bench", source: "yard sale" },
      { kind: "buy", amount: "5.00", name: "stool", source: "yard sale" },
    ],
    ways: ["bought a bench 20 and a stool 5", "bench 20, stool 5", "got a bench for 20, a stool for 5"],
    tails: [
      ", all bought at the same yard sale",
      ", both from the same yard sale",
      ", all at one yard sale",
      ", both at a yard sale",
      " all from a yard sale",
      ", bought both at the same yard sale",
    ],
  },
  {
    class: "sold to somebody",
    wants: [GONE],
    names: "buyer",
    each: true,
    ways: [
      "sold the dresser to {other} for 140",
      "sold the dresser 140 to {other}",
      "dresser sold to {other}, 140",
      "sold the dresser for 140 cash to {other}",
      "{other} bought the dresser for 140",
      "{other} came by and picked up the dresser, 140",
    ],
    tails: [
      "",
      ", pics monday",
      ", {kin} helped load it",
      ", {he} loved it",
      ", {his} husband came along",
      " after my shift",
      ", {kin} delivered it",
      " at break",
    ],
  },
  {
    class: "sold to nobody told of",
    wants: [{ ...GONE, buyer: null, by: null }],
    ways: ["sold the dresser 140", "sold the dresser for 140", "dresser sold 140"],
    tails: [
      ", pics monday",
      ", pics tomorrow",
      ", more stuff tomorrow",
      ", {kin} delivered it",
      ", {kin} helped me load it",
      ", {kin} helped load",
      ", my buddy helped carry it out",
      ", neighbor kid helped me carry it",
      ", borrowed {kin}s truck to drop it off",
      ", loaded it with {kin}",
      ", on to the next one",
      ", garage looks empty",
      ", back hurts now",
    ],
  },
  {
    class: "by phone",
    wants: [{ ...GONE, buyer: "amy" }],
    ways: [
      "sold the dresser to amy by phone for 140",
      "sold the dresser 140 to amy by phone",
      "sold the dresser to amy over the phone, 140",
    ],
    tails: ["", ", cash"],
  },
  {
    class: "bought, and helped",
    wants: [BENCH],
    ways: ["bought a bench 20", "bought a bench for 20 at a yard sale", "picked up a bench 20 cash"],
    tails: [
      ", {kin} helped me load it",
      ", {kin} helped load",
      ", neighbor kid helped carry it in",
      ", had {kin} help me load it",
      ", borrowed {kin}s truck",
      " with {kin}s truck",
      ", the seller helped me load it",
      ", {kin} held the door",
      ", {kin} drove",
      ", {other} helped me get it in the van",
      " thanks to {kin}",
    ],
  },
  {
    class: "given to kin in a list",
    wants: [
      { kind: "retire", pieces: [4], how: "given" },
      { kind: "finish", pieces: [2] },
    ],
    ways: [
      "gave the lamp to {kin}, finished the desk",
      "finished the desk, gave the lamp to {kin}",
      "gave the lamp to {kin} and finished the desk",
      "gave {kin} the lamp, finished the desk",
      "finished the desk and gave {kin} the lamp",
      "let {kin} have the lamp, finished the desk",
    ],
    tails: ["", ", all today", " lol", ", {he} loves it"],
  },
];

const NOT: readonly (Omit<Row, "class" | "wants"> & { wants?: Row["wants"] })[] = [
  {
    ways: [
      "{kin} came over but didn't get to the hutch",
      "{kin} was going to come over and work 2 hours on the hutch",
      "{kin} will stop by and pick up sandpaper 8 for the desk tomorrow",
      "{kin} wants 15 for helping with the dresser",
      "i owe {kin} 15 for helping with the dresser",
      "{kin} wouldn't take the 15 for helping with the dresser",
      "{kin} offered to come over and sand the hutch 2 hours",
      "asked {kin} to list the desk for 120",
      "{kin} should have listed the desk for 120",
      "{kin} saw a bench for 20",
      "{kin} came over and we talked about the hutch for 2 hours",
      "{kin} stopped by and said 120 for the desk",
      "{kin} says i should ask 120 for the desk",
      "{kin} thinks 120 for the desk",
      "my buddy said 40 for the lamp",
      "{other} said 40 for the lamp",
      "{other} said {he}'d give me 100 for the dresser",
      "{other} told me the hutch is worth 200",
      "{kin}s coworker wants the lamp for 20",
      "{kin}s boss is interested in the dresser at 120",
      "{other} wants the dresser for 120, pics monday",
      "my buddy ran in and got a bench for 20",
      "{other} came over and bought a bench 20",
      "{other} bought paint for the desk 12",
      "{kin} tried to sell the dresser for 140",
      "{kin} almost sold the dresser for 140",
      "{kin} and {other} talked about the dresser, 140",
      "{kin} found out the dresser sold for 140 at the antique mall",
      "{kin} might come over and finish the hutch",
      "{kin} came over to finish the hutch but ran out of time",
      "gave {kin} the day off",
      "{kin} never got to the hutch, 2 hours of tv",
    ],
    ask: "either",
  },
  {
    before: ["{kin} picked up a bench 20"],
    ways: ["{he} says it was worth 28", "{he} says {he} saw one for 28", "{he} said 28 would be fair"],
    ask: "either",
  },
];

/** Each opener, way and tail, of one after the other, or of each of them; a tail stands behind where its way has no place. */
function cellsOf({
  class: kind,
  before = [],
  wants,
  or = [],
  ways,
  openers = [""],
  tails = [""],
  ...row
}: Row): Cell[] {
  let at = 0;
  return openers.flatMap((opener) =>
    ways.flatMap((way) =>
      tails.flatMap((tail) => {
        at += 1;
        return (row.each ? OTHERS : [OTHERS[at % OTHERS.length]!]).map((other, place): Cell => {
          const kin = KIN[(at + place) % KIN.length]!;
          const isOthers = !/\{kin\}/.test(`${opener}${way}${before.join()}`);
          const { names, ...who } = other;
          const told = { ...(isOthers ? who : kin), other: who.other, kin: kin.kin, tail: ` ${tail}` };
          const text = `${opener}${way}${way.includes("{tail}") ? "" : tail}`;
          const facts = wants.map((each) => (row.by ? { ...each, by: kin.by } : each));
          const named = row.names
            ? names.map((name) => [{ ...facts[0], [row.names!]: name }, ...facts.slice(1)])
            : [facts];
          return {
            id: `${kind} | ${way} | ${opener}${tail} | ${kin.kin} ${other.other}`,
            class: kind,
            on: TODAY,
            before: [...SHOP, ...before.map((note) => filled(note, told))],
            line: filled(text, told)
              .replace(/ +(?=[ ,])/g, "")
              .trim(),
            facts: named[0]!,
            or: [...named.slice(1), ...or],
            ask: row.ask ?? false,
          };
        });
      }),
    ),
  );
}

/** Each way to tell of people beside a note, and what must not turn into one. */
export function people(): Cell[] {
  return [...ROWS, ...NOT.map((row): Row => ({ class: "nothing yet", wants: [], ...row }))].flatMap(cellsOf);
}
