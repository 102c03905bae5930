import { type Cell, filled } from "./cells.ts";
import { factOf, KINDS, type Kind, SHOP, TODAY } from "./kinds.ts";

/*
 * On which day a note was, told beside it in people's own way, and what is put right of it in the next breath or after
 * another note.
 */

type Fields = Record<string, unknown>;

/** What each kind is called behind its note, and what is said of it once more: with {n} its right number, {o} the old. */
interface Called {
  /** The deed as somebody tells it of a day gone by. */
  past: string;
  /** What stands behind "the". */
  thing?: string;
  numbers?: readonly string[];
  days?: readonly string[];
}

const CALLED: Readonly<Record<string, Called>> = {
  sell: {
    past: "sold the dresser for 150",
    thing: "dresser",
    numbers: ["the dresser sold for {n}", "dresser went for {n} not {o}", "the dresser sale was {n}"],
    days: ["the dresser sold {d}", "the dresser sale was {d}", "the dresser went {d}, not today"],
  },
  list: {
    past: "listed the chair at 60",
    thing: "chair",
    numbers: [
      "the chair is listed at {n} not {o}",
      "the chair is up at {n} not {o}",
      "the chair listing is {n}",
    ],
    days: ["the chair listing was {d}", "the chair went up {d}"],
  },
  finish: {
    past: "finished the desk",
    thing: "desk",
    days: ["the desk was done {d}", "the desk was finished {d}"],
  },
  start: {
    past: "started the stool",
    thing: "stool",
    days: ["the stool was started {d}", "i started the stool {d}, not today"],
  },
  work: {
    past: "did 2 hours on the desk",
    thing: "desk",
    numbers: ["the desk was {n} not {o}", "it was {n} on the desk not {o}", "{n} on the desk, not {o}"],
    days: ["the 2 hours on the desk were {d}", "the desk work was {d}"],
  },
  spend: {
    past: "bought paint for the desk, 12",
    thing: "paint",
    numbers: [
      "the paint was {n}",
      "paint was {n} not {o}",
      "the paint for the desk was {n}",
      "the desk paint was {n}",
    ],
    days: ["the paint was {d}", "that paint was {d}", "the paint for the desk was {d}"],
  },
  buy: {
    past: "bought a mirror for 8",
    thing: "mirror",
    numbers: ["the mirror was {n}", "mirror was {n} not {o}", "paid {n} for the mirror not {o}"],
    days: ["the mirror was {d}", "got the mirror {d}, not today", "bought the mirror {d} actually"],
  },
  hold: {
    past: "took a 40 deposit on the trunk from amy",
    thing: "deposit",
    numbers: [
      "amy put {n} down not {o}",
      "amy's deposit was {n}",
      "the deposit was {n} not {o}",
      "the trunk deposit was {n}",
    ],
    days: ["the deposit was {d}", "amy's deposit was {d}"],
  },
  reprice: {
    past: "dropped the hutch to 180",
    thing: "hutch",
    numbers: ["the hutch is {n} not {o}", "hutch should be {n}", "dropped the hutch to {n} not {o}"],
    days: ["the price drop was {d}", "dropped the hutch {d}, not today"],
  },
  fallthrough: {
    past: "gave rita her 20 back on the lamp",
    thing: "lamp",
    days: ["rita backed out {d}, not today"],
  },
  pay: {
    past: "paid 200 on the loan",
    thing: "payment",
    numbers: ["the loan payment was {n}", "the payment was {n} not {o}", "paid {n} on the loan not {o}"],
    days: ["the loan payment was {d}", "the payment was {d}"],
  },
  drive: {
    past: "drove 24 miles",
    thing: "drive",
    numbers: ["the drive was {n}", "the drive was {n} not {o}", "drove {n} not {o}"],
    days: ["the drive was {d}", "that drive was {d}"],
  },
  retire: { past: "gave the clock to my sister", thing: "clock", days: ["the clock was {d}"] },
  income: {
    past: "got a 15 tip",
    thing: "tip",
    numbers: ["the tip was {n}", "tip was {n} not {o}"],
    days: ["the tip was {d}", "that tip was {d}"],
  },
  refund: {
    past: "gave bob 10 back on the bench",
    thing: "refund",
    numbers: ["the refund was {n}", "gave bob {n} back not {o}", "bob's refund was {n}"],
    days: ["the refund was {d}", "bob's refund was {d}"],
  },
  statement: {
    past: "loan balance was 8900",
    thing: "balance",
    numbers: ["the balance is {n} not {o}", "the loan balance is {n} not {o}"],
  },
};

/** Days as said, with the day each is. */
const DAYS: readonly (readonly [string, string])[] = [
  ["monday", "2026-05-04"],
  ["yesterday", "2026-05-08"],
  ["tuesday", "2026-05-05"],
  ["thursday", "2026-05-07"],
  ["friday", "2026-05-08"],
  ["wednesday", "2026-05-06"],
  ["sunday", "2026-05-03"],
];
const WEEKDAYS = DAYS.filter(([said]) => said !== "yesterday");

const DEEDS = [
  "sell",
  "list",
  "finish",
  "start",
  "work",
  "spend",
  "buy",
  "reprice",
  "drive",
  "retire",
  "pay",
];

/** Behind a note; those of `DEEDS` only where something was done. */
const BEHIND: readonly string[] = [
  ", that was {d}",
  " that was {d}",
  ". that was {d}",
  "\nthat was {d}",
  ", this was {d}",
  ". this was on {d}",
  " this was {d}",
  ", that was on {d} actually",
  ", it was {d}",
  ", happened {d}",
  ", that was back on {d}",
  " ({d})",
  " (that was {d})",
  ", this is from {d}",
  ", from {d}",
  " from {d}",
  " - that was {d}",
  "... that was {d}",
  ", that was {d} btw",
  ", that was {d} not today",
  ", that was {d} morning",
  ", that was {d} night",
  ", this was {d}, i forgot to log it",
  ", that was {d}, sorry",
  ", that was {d} i forgot",
  ", {d} that was",
  ", was {d}",
  ", all of that was {d}",
  ", that one was {d}",
  ", back on {d}",
  ", this happened {d}",
  ", on {d} that was",
  ", that was {d} already",
  ", should be dated {d}",
  ", put it on {d}",
  ", i think that was {d}",
  ", that was {d} after work",
  ", forgot to say that was {d}",
  ", but that was {d}",
  ", and that was {d}",
];
const DONE_BEHIND: readonly string[] = [
  ", did this on {d}",
  ", did that {d}",
  ", i did that on {d}",
  ", did it {d}",
  ". did this {d}",
];
const FRONT: readonly string[] = [
  "catching up: {a} {d}",
  "catching up, {a}, that was {d}",
  "catching up. {d} {a}",
  "catching up from {d}: {a}",
  "{d}: {a}",
  "{d} - {a}",
  "from {d}: {a}",
  "on {d} {a}",
  "so {d} {a}",
  "{d} i {a}",
  "on {d} i {a}",
  "{d} we {a}",
  "{d} my wife {a}",
  "forgot to log: {a} on {d}",
  "forgot to log this, {a} {d}",
  "forgot this one, {a} {d}",
  "forgot: {a} on {d}",
  "late entry: {a}, {d}",
  "late but {a} on {d}",
  "oh and {d} {a}",
  "oh and {d} i {a}",
  "also {d} i {a}",
  "for {d}: {a}",
  "one from {d}: {a}",
  "this is from {d}, {a}",
  "this was {d}, {a}",
  "this was {d}: {a}",
  "i forgot, {a} {d}",
  "almost forgot, {a} on {d}",
  "didn't write it down but {a} on {d}",
  "ok so {d} i {a}",
  "back on {d} i {a}",
  "{d} night i {a}",
  "{d} after work i {a}",
  "i {a} {d}",
  "i {a} on {d} and forgot to tell you",
  "never logged this, {a} {d}",
  "i {a} back on {d}",
  "should have told you, {a} {d}",
  "a few days late, {a} on {d}",
];

const named = (kind: Kind): Called => CALLED[kind.kind]!;

function cell(
  marks: readonly string[],
  line: string,
  facts: Cell["facts"],
  before: readonly string[] = [],
): Cell {
  return {
    id: [...marks, line].join(" | "),
    class: marks[0]!,
    on: TODAY,
    before: [...SHOP, ...before],
    line,
    facts,
    ask: false,
  };
}

/** Each kind with its day told beside it. */
export function dated(): Cell[] {
  let turn = 0;
  const next = (days: typeof DAYS): readonly [string, string] => days[turn++ % days.length]!;
  return KINDS.flatMap((kind) => [
    ...[...BEHIND, ...(DEEDS.includes(kind.kind) ? DONE_BEHIND : [])].flatMap((tail) =>
      [kind.note, kind.also]
        .filter((note) => !/today/.test(note))
        .map((note) => {
          const [said, day] = next(/\{d\} (night|morning|after)|on \{d\}/.test(tail) ? WEEKDAYS : DAYS);
          return cell([kind.kind, `behind ${tail}`], note + filled(tail, { d: said }), [
            factOf(kind, { day }),
          ]);
        }),
    ),
    ...FRONT.filter((way) => kind.kind !== "statement" || !/ (i|we|wife) \{a\}|^i /.test(way)).map((way) => {
      const [said, day] = next(/\{d\} (night|morning|after)|on \{d\}/.test(way) ? WEEKDAYS : DAYS);
      return cell([kind.kind, `front ${way}`], filled(way, { d: said, a: named(kind).past }), [
        factOf(kind, { day }),
      ]);
    }),
  ]);
}

const SEVERAL: readonly string[] = [
  "{d} {a}, {e} {b}",
  "{a} {d}, {b} {e}",
  "{a} on {d} and {b} on {e}",
  "{d}: {a}. {e}: {b}",
  "{d}: {a}, {e}: {b}",
  "{d}: {a}\n{e}: {b}",
  "catching up: {a} {d}, {b} {e}",
  "catching up. {d} {a}. {e} {b}",
  "{a} {d}\n{b} {e}",
  "{a}, that was {d}. {b}, that was {e}",
  "{d} i {a} and {e} i {b}",
  "on {d} i {a}, then {e} {b}",
  "{a} {d} then {b} {e}",
  "{a} ({d}), {b} ({e})",
  "{d}\n{a}\n{e}\n{b}",
  "{d} {a} and {b} {e}",
  "{a}. that was {d}. {b}. that was {e}",
];
const BOTH: readonly string[] = [
  "{d}: {a}, {b}",
  "{d} i {a} and {b}",
  "{a} and {b}, both {d}",
  "{d}:\n{a}\n{b}",
  "{a}, {b}, all {d}",
];
const ONE: readonly string[] = [
  "{a} {d}, {b} today",
  "{d} {a}, today {b}",
  "{a} {d}. today {b}",
  "{a}, that was {d}. today {b}",
];

/** Two kinds, each on its day, both on one, or one today. */
export function eachDated(): Cell[] {
  let turn = 0;
  return KINDS.flatMap((one, i) =>
    KINDS.filter((other) => other !== one && other.kind !== "statement" && one.kind !== "statement").flatMap(
      (other, k) => {
        const ways = [...SEVERAL, ...BOTH, ...ONE];
        return [0, 9, 18].map((step) => {
          const way = ways[(i * 7 + k * 3 + step) % ways.length]!;
          const [d, first] = WEEKDAYS[turn++ % WEEKDAYS.length]!;
          const [e, second] = WEEKDAYS[(turn + 2) % WEEKDAYS.length]!;
          const days = SEVERAL.includes(way)
            ? [first, second]
            : BOTH.includes(way)
              ? [first, first]
              : [first, TODAY];
          const line = filled(way, { a: named(one).past, b: named(other).past, d, e });
          return cell([`${one.kind} ${other.kind}`, `each ${way}`], line, [
            factOf(one, { day: days[0] }),
            factOf(other, { day: days[1] }),
          ]);
        });
      },
    ),
  );
}

const OPENERS = [
  "",
  "no ",
  "no wait ",
  "oh wait ",
  "oops ",
  "sorry ",
  "hang on ",
  "hold on ",
  "my bad ",
  "ugh ",
  "hm ",
  "actually ",
  "correction: ",
  "ok ",
  "wait no ",
  "no, ",
  "wait, ",
];
const TELLERS = [
  "",
  "",
  "",
  "she says ",
  "my wife says ",
  "he says ",
  "my son says ",
  "wife just told me ",
  "i misread it, ",
  "i misread that, ",
  "misheard, ",
  "just checked, ",
  "checked again and ",
  "wife just corrected me, ",
  "turns out ",
  "i typed it wrong, ",
  "fat fingered that, ",
  "i was wrong, ",
  "according to my wife ",
  "i wrote it down wrong, ",
  "i got that wrong, ",
];
const OF_RECEIPTS = [
  "looked at the receipt, ",
  "receipt says ",
  "looking at the receipt ",
  "i forgot the tax, ",
  "i forgot to add tax, ",
  "found the receipt, ",
];
const TAILS = [
  "",
  "",
  "",
  " sorry",
  ", my bad",
  ", she says",
  ", misread it",
  ", wrote it down wrong",
  ", typo",
  " actually",
  " lol",
  ", thanks",
  ", she just told me",
  ", my mistake",
  ", i read it wrong",
  ", had the wrong number",
];
const OF_TAX = [
  ", looked at the receipt",
  ", i forgot the tax",
  " with tax",
  ", forgot tax",
  " i forgot the tax",
];

const NUMBER_FORMS = [
  "it was {n}",
  "it's {n}",
  "make it {n}",
  "{n}",
  "{n} not {o}",
  "should be {n}",
  "it was {n} for the {x}",
  "the {x} was {n}",
  "that was {n}",
  "not {o}, {n}",
  "{n} for the {x}",
  "it was {n} not {o}",
  "i meant {n}",
  "the {x} should be {n}",
  "{n}, not {o}",
  "it should have been {n}",
  "make that {n}",
];
const DAY_FORMS = [
  "it was {d}",
  "that was {d}",
  "the {x} was {d}",
  "{d} not today",
  "i mean {d}",
  "the {x} was actually {d}",
  "should be {d}",
  "put it on {d}",
  "that was on {d}",
  "make it {d}",
  "it was {d} not today",
  "that was {d}, not today",
  "i did that {d}",
  "this was {d}",
  "the {x} was on {d}",
  "change it to {d}",
];
const PIECE_FORMS = [
  "it was the {p}",
  "that was the {p}",
  "the {p} not the {o}",
  "i meant the {p}",
  "it was the {p} not the {o}",
  "not the {o}, the {p}",
  "undo that, it was the {p}",
  "undo that it was the {p}",
  "should be the {p}",
  "that should be the {p}",
  "it was actually the {p}",
  "wrong one, it was the {p}",
];
const FOR_FORMS = [
  "it was for the {p}",
  "that was for the {p}",
  "the {x} was for the {p}",
  "that's for the {p}",
  "for the {p} not the {o}",
];

function* turns<T>(all: readonly T[], step: number): Generator<T> {
  for (let at = 0; ; at += step) yield all[at % all.length]!;
}

/** Each kind put right at once: by an opener, whoever says so or why, what it is, and what is added. */
export function inTheNextBreath(): Cell[] {
  const openers = turns(OPENERS, 5);
  const days = turns(DAYS, 1);
  const isCost = ({ kind }: Kind): boolean => ["spend", "buy"].includes(kind);
  return KINDS.flatMap((kind) => {
    const { number, other } = kind;
    const called = named(kind);
    const mended = (what: string, way: string, line: string, more: Fields): Cell => ({
      ...cell(
        [`${kind.kind} ${what}`, way],
        line,
        [{ mend: true, facts: [factOf(kind, more)] }],
        [kind.note],
      ),
    });
    const cells: Cell[] = [];
    const said = (
      forms: readonly string[],
      rounds: number,
      make: (form: string, way: string) => Cell,
      ofMoney: boolean,
    ): void => {
      const tellers = turns(ofMoney ? [...TELLERS, ...OF_RECEIPTS] : TELLERS, ofMoney ? 8 : 4);
      const tails = turns(ofMoney ? [...TAILS, ...OF_TAX] : TAILS, 5);
      for (let round = 0; round < rounds; round += 1)
        for (const form of forms) {
          const teller = tellers.next().value as string;
          const opener = openers.next().value as string;
          const tail = teller === "" ? (tails.next().value as string) : "";
          cells.push(make(form, `${opener}${teller}${form}${tail}`));
        }
    };
    if (number) {
      const forms = NUMBER_FORMS.filter(
        (form) => isCost(kind) || !form.includes("{x}") || !/sell|list|reprice|work/.test(kind.kind),
      );
      said(
        forms,
        2,
        (_, way) =>
          mended(
            "number",
            way,
            filled(way, { n: number.now, o: number.was, x: called.thing ?? "" }),
            number.wants,
          ),
        isCost(kind),
      );
    }
    said(
      DAY_FORMS.filter((form) => !/did/.test(form) || DEEDS.includes(kind.kind)),
      2,
      (_, way) => {
        const [d, day] = days.next().value as readonly [string, string];
        return mended("day", way, filled(way, { d, x: called.thing ?? "" }), { day });
      },
      false,
    );
    const o = /the (\w+)/.exec(kind.note)?.[1] ?? "";
    if (other)
      said(
        [...PIECE_FORMS, ...(["spend", "work"].includes(kind.kind) ? FOR_FORMS : [])],
        1,
        (form, way) => {
          const one = mended("piece", way, filled(way, { p: other.name, o, x: called.thing ?? "" }), {
            pieces: [other.piece],
          });
          return form.startsWith("undo")
            ? { ...one, ask: "either", or: [[{ removed: true, was: [{ kind: kind.kind }] }]] }
            : one;
        },
        false,
      );
    return cells;
  });
}

/** What can be put right beside a number, a day and a piece. */
const OTHERWISE: readonly { before: string; facts: Fields; lines: readonly string[] }[] = [
  {
    before: "bought 2 crates 10",
    facts: { kind: "buy", pieces: [10, 11, 12], amount: "10.00" },
    lines: [
      "it was 3 not 2",
      "3 crates not 2",
      "there were 3",
      "no 3 of them",
      "make it 3 crates",
      "sorry 3 crates",
      "it was 3 crates",
      "she says there were 3",
      "oops it was 3 crates not 2",
      "no wait 3 crates",
      "i miscounted, 3 crates",
      "my wife says it was 3 crates",
      "three crates not two",
    ],
  },
  {
    before: "sold the dresser for 150 to amy",
    facts: { kind: "sell", pieces: [1], amount: "150.00", buyer: "rosa" },
    lines: [
      "it was rosa not amy",
      "sorry it was rosa",
      "rosa not amy",
      "the buyer was rosa",
      "no the buyer was rosa not amy",
      "sold it to rosa not amy",
      "her name is rosa not amy",
      "oops rosa, not amy",
      "to rosa not amy",
      "it was to rosa",
      "buyer is rosa, sorry",
      "wait it was rosa, not amy",
      "my wife says it was rosa not amy",
    ],
  },
  {
    before: "amy put 40 down on the trunk",
    facts: { kind: "hold", pieces: [7], deposit: "40.00", buyer: "rosa" },
    lines: [
      "it was rosa not amy",
      "rosa not amy",
      "that was rosa not amy",
      "her name is rosa not amy",
      "sorry it was rosa",
      "i meant rosa",
      "no it was rosa",
      "oops rosa not amy",
      "the deposit was from rosa",
      "it was from rosa not amy",
      "my wife says it was rosa",
    ],
  },
  {
    before: "sold the dresser for 150 check",
    facts: { kind: "sell", pieces: [1], amount: "150.00", method: "cash" },
    lines: [
      "it was cash",
      "cash not check",
      "she paid cash",
      "no she paid cash",
      "it was cash not check",
      "oops cash",
      "sorry it was cash not a check",
      "that was cash",
      "my wife says it was cash",
      "he paid cash not check",
      "i meant cash",
      "make it cash",
      "should be cash",
    ],
  },
  {
    before: "paint 12 for the desk check",
    facts: { kind: "spend", pieces: [2], amount: "12.00", method: "cash" },
    lines: [
      "it was cash",
      "cash not check",
      "i paid cash",
      "no i paid cash",
      "it was cash not check",
      "oops paid cash",
      "sorry it was cash not a check",
      "that was cash",
      "my wife says she paid cash",
      "the paint was cash",
      "i meant cash",
      "make it cash",
      "should be cash",
    ],
  },
  {
    before: "paint 12 for the desk",
    facts: { kind: "spend", pieces: [2], amount: "12.00", category: "tools" },
    lines: [
      "that's tools not materials",
      "put that under tools",
      "should be tools",
      "that was tools",
      "it's tools",
      "category is tools",
      "make it tools",
      "tools not materials",
      "that should be under tools",
      "change the category to tools",
      "that goes under tools",
      "no that's tools",
    ],
  },
  {
    before: "paint 20 for the desk",
    facts: { kind: "spend", pieces: [2], amount: "12.00" },
    lines: [
      "twelve not twenty",
      "sorry twelve not twenty",
      "it was twelve not twenty",
      "no twelve",
      "i said twenty but it was twelve",
      "twelve, i misread it",
      "oops twelve not twenty",
      "twelve dollars not twenty",
      "it was only twelve",
      "just twelve",
      "12 bucks not 20",
      "that was supposed to be 12",
    ],
  },
  {
    before: "paint 13 for the desk",
    facts: { kind: "spend", pieces: [2], amount: "14.50" },
    lines: [
      "no wait 14.50",
      "sorry 14.50 i forgot the tax",
      "14.50 with tax",
      "14.50 i forgot the tax",
      "it was 14.50 with tax",
      "make it 14.50, she says",
      "14.50 actually, looked at the receipt",
      "the receipt says 14.50",
      "looked at the receipt it was 14.50",
      "forgot the tax, 14.50",
      "with tax it was 14.50",
      "it came to 14.50 with tax",
      "14.50 after tax",
      "i misread it, 14.50",
      "with tax it came to 14.50",
    ],
  },
];

export function otherwise(): Cell[] {
  return OTHERWISE.flatMap(({ before, facts, lines }) =>
    lines.map((line) =>
      cell([`${facts["kind"]} otherwise`, before], line, [{ mend: true, facts: [facts] }], [before]),
    ),
  );
}

const BACK = [
  "{c}",
  "no {c}",
  "wait {c}",
  "oh wait {c}",
  "oh and {c}",
  "sorry, {c}",
  "my wife says {c}",
  "actually {c}",
  "about before, {c}",
  "just checked, {c}",
  "going back, {c}",
  "correction: {c}",
  "oops {c}",
];
const BETWEEN = [
  "started the stool",
  "worked 1 hour on the lamp",
  "bought a rug for 11",
  "listed the clock at 33",
];

/** Put right after another note, by what it was. */
export function afterAnother(): Cell[] {
  const ways = turns(BACK, 1);
  const between = turns(BETWEEN, 1);
  const days = turns(DAYS, 1);
  return KINDS.flatMap((kind) => {
    const { numbers = [], days: dayForms = [] } = named(kind);
    const { number } = kind;
    const back = (what: string, form: string, words: Record<string, string>, more: Fields): Cell[] =>
      [0, 1, 2, 3].map(() => {
        const way = ways.next().value as string;
        let after = between.next().value as string;
        if (kind.kind === "start") after = "listed the clock at 33";
        const line = filled(way, { c: filled(form, words) });
        return cell(
          [`${kind.kind} ${what} after another`, way],
          line,
          [{ mend: true, facts: [factOf(kind, more)] }],
          [kind.note, after],
        );
      });
    return [
      ...(number
        ? numbers.flatMap((form) => back("number", form, { n: number.now, o: number.was }, number.wants))
        : []),
      ...dayForms.flatMap((form) => {
        const [d, day] = days.next().value as readonly [string, string];
        return back("day", form, { d }, { day });
      }),
    ];
  });
}

/** A day of something still to come, behind a note of today. */
const AHEAD: Readonly<Record<string, readonly string[]>> = {
  hold: [
    "her husband comes with a truck sunday",
    "picking it up sunday",
    "she comes back monday",
    "pickup is tuesday",
    "they'll get it sunday",
    "coming for it friday",
    "will pay the rest monday",
    "she gets paid friday",
    "her brother is coming by sunday with a van",
    "he'll be back sunday",
    "pickup sunday",
    "she can't come before sunday",
    "her son gets it monday",
    "she's coming monday with her dad's truck",
    "they pick it up on sunday",
    "getting it monday after work",
    "she wants it delivered monday",
    "delivering it sunday",
    "rest due sunday",
    "the rest comes sunday",
    "till sunday",
    "until monday",
    "by tuesday she has to pick it up",
    "has until sunday",
  ],
  work: [
    "more tomorrow",
    "back at it monday",
    "will finish it sunday",
    "the rest on monday",
    "should be done by tuesday",
  ],
  start: [
    "should be done by tuesday",
    "hope to finish it sunday",
    "will paint it monday",
    "needs to be done by friday",
  ],
  finish: ["listing it tomorrow", "will list it monday", "photos sunday", "taking pictures tomorrow"],
  list: [
    "if it doesn't sell by friday it goes to 50",
    "somebody is coming to look monday",
    "a guy wants to see it sunday",
  ],
  reprice: ["going lower on monday if nobody bites", "somebody comes to look sunday"],
  pay: ["next one is due friday", "more on friday", "next payment monday"],
  spend: ["painting it tomorrow", "will paint monday", "starting on it sunday"],
  buy: ["cleaning it up sunday", "will start on it monday", "starting on it tomorrow"],
  drive: ["more tomorrow", "same again monday"],
};

export function ahead(): Cell[] {
  return KINDS.flatMap((kind) =>
    (AHEAD[kind.kind] ?? []).flatMap((tail) =>
      [`${kind.note}, ${tail}`, `${kind.also}. ${tail}`, `${kind.note} ${tail}`].map((line) => ({
        ...cell([`${kind.kind} ahead`, tail], line, [factOf(kind, { day: TODAY })]),
        // Said without a mark between, a deal and a day may be taken for a question.
        ask: kind.kind === "hold" && line.includes(", ") ? (false as const) : ("either" as const),
      })),
    ),
  );
}

/** Of "it", on another day than the note before. */
const IT: readonly { before: string; piece: number; lines: readonly (readonly [string, Fields])[] }[] = [
  {
    before: "finished the desk on monday",
    piece: 2,
    lines: [
      ["listed it {d} for 150", { kind: "list", amount: "150.00" }],
      ["{d} listed it for 150", { kind: "list", amount: "150.00" }],
      ["listed it for 150 {d}", { kind: "list", amount: "150.00" }],
      ["put it up {d} for 150", { kind: "list", amount: "150.00" }],
      ["sold it {d} for 150", { kind: "sell", amount: "150.00" }],
      ["sold it for 150 on {d}", { kind: "sell", amount: "150.00" }],
      ["it sold {d} for 150", { kind: "sell", amount: "150.00" }],
      ["{d} i put 2 hours into it", { kind: "work", minutes: 120 }],
      ["took it to the dump {d}", { kind: "retire" }],
      ["touch up paint for it {d}, 6", { kind: "spend", amount: "6.00" }],
      ["and listed it {d}, 150", { kind: "list", amount: "150.00" }],
      ["then {d} i listed it at 150", { kind: "list", amount: "150.00" }],
    ],
  },
  {
    before: "bought a mirror for 8 on sunday",
    piece: 10,
    lines: [
      ["started it {d}", { kind: "start" }],
      ["cleaned it up {d}, 1 hour", { kind: "work", minutes: 60 }],
      ["{d} i did 2 hours on it", { kind: "work", minutes: 120 }],
      ["finished it {d}", { kind: "finish" }],
      ["listed it {d} for 40", { kind: "list", amount: "40.00" }],
      ["sold it {d} for 35", { kind: "sell", amount: "35.00" }],
      ["got paint for it {d}, 6", { kind: "spend", amount: "6.00" }],
      ["amy put 20 down on it {d}", { kind: "hold", deposit: "20.00" }],
      ["gave it away {d}", { kind: "retire" }],
    ],
  },
  {
    before: "started the stool on monday",
    piece: 6,
    lines: [
      ["finished it {d}", { kind: "finish" }],
      ["{d} i did 2 hours on it", { kind: "work", minutes: 120 }],
      ["sanded it {d} for 2 hours", { kind: "work", minutes: 120 }],
      ["{d} 2 hours of sanding", { kind: "work", minutes: 120 }],
      ["done with it {d}", { kind: "finish" }],
      ["it was done {d}", { kind: "finish" }],
      ["listed it {d} for 30", { kind: "list", amount: "30.00" }],
    ],
  },
];

export function ofIt(): Cell[] {
  return IT.flatMap(({ before, piece, lines }) =>
    lines.flatMap(([form, fact]) =>
      [DAYS[1]!, DAYS[2]!, DAYS[3]!, DAYS[5]!].map(([d, day]) =>
        cell(
          [`${fact["kind"]} of it`, form],
          filled(form, { d }),
          [{ ...fact, pieces: [piece], day }],
          [before],
        ),
      ),
    ),
  );
}
