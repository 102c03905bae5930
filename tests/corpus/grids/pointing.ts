import type { ContextCase } from "../context.ts";
import { type Cell, filled, type Told } from "./cells.ts";

/*
 * Every verb, in several forms, with every way to point at a piece, over books in which there is one of it, several alike,
 * several told apart, a pair, a set, a lot. Which pieces may be meant follows from the books and the way of pointing.
 */

/** What stands on the books, piece by piece in the order of their numbers; `gone`: those sold already. */
interface Shelf {
  name: string;
  bought: readonly string[];
  /** The noun that is pointed at, and the numbers of the pieces that bear it. */
  noun: string;
  ours: readonly number[];
  count: number;
  gone?: readonly number[];
  /** The pieces of the last note. */
  spoken: readonly number[];
  /** The colour of each of ours that has one. */
  colours?: Readonly<Record<string, number>>;
}

const SHELVES: readonly Shelf[] = [
  { name: "one", bought: ["bought dresser 30"], noun: "dresser", ours: [1], count: 1, spoken: [1] },
  {
    name: "one among others",
    bought: ["bought lamp 5", "bought dresser 30"],
    noun: "dresser",
    ours: [2],
    count: 2,
    spoken: [2],
  },
  {
    name: "one of a colour",
    bought: ["bought lamp 5", "bought white dresser 30"],
    noun: "dresser",
    ours: [2],
    count: 2,
    spoken: [2],
    colours: { white: 2 },
  },
  {
    name: "two alike",
    bought: ["bought 2 dressers 60"],
    noun: "dresser",
    ours: [1, 2],
    count: 2,
    spoken: [1, 2],
  },
  {
    name: "two bought apart",
    bought: ["bought dresser 30", "bought another dresser for 45"],
    noun: "dresser",
    ours: [1, 2],
    count: 2,
    spoken: [2],
  },
  {
    name: "two, one in hand",
    bought: ["bought 2 stools 20", "1h on #2"],
    noun: "stool",
    ours: [1, 2],
    count: 2,
    spoken: [2],
  },
  {
    name: "two, one gone",
    bought: ["bought 2 benches 20", "sold #1 60"],
    noun: "bench",
    ours: [2],
    count: 2,
    gone: [1],
    spoken: [],
  },
  {
    name: "two colours",
    bought: ["bought white dresser 30", "bought black dresser 45"],
    noun: "dresser",
    ours: [1, 2],
    count: 2,
    spoken: [2],
    colours: { white: 1, black: 2 },
  },
  {
    name: "a pair",
    bought: ["bought a pair of nightstands 40"],
    noun: "nightstand",
    ours: [1, 2],
    count: 2,
    spoken: [1, 2],
  },
  {
    name: "a pair among others",
    bought: ["bought desk 20", "bought a pair of nightstands 40"],
    noun: "nightstand",
    ours: [2, 3],
    count: 3,
    spoken: [2, 3],
  },
  {
    name: "a set of four",
    bought: ["bought a set of 4 chairs 60"],
    noun: "chair",
    ours: [1, 2, 3, 4],
    count: 4,
    spoken: [1, 2, 3, 4],
  },
  {
    name: "four, one gone",
    bought: ["bought 4 chairs 60", "sold #1 20"],
    noun: "chair",
    ours: [2, 3, 4],
    count: 4,
    gone: [1],
    spoken: [],
  },
  {
    name: "a lot of two kinds",
    bought: ["bought dresser and lamp 48"],
    noun: "dresser",
    ours: [1],
    count: 2,
    spoken: [1, 2],
  },
];

/** The groups of pieces that may be meant; none: nothing on the books is so pointed at. */
type Groups = readonly (readonly number[])[];

interface Way {
  said: string;
  groups: (shelf: Shelf) => Groups | null;
  /** More than one piece is meant, so a question about the amount of each is fair. */
  many?: true;
}

const singles = (numbers: readonly number[]): Groups => numbers.map((number) => [number]);
const pairsOf = (numbers: readonly number[]): Groups =>
  numbers.flatMap((one, at) => numbers.slice(at + 1).map((other) => [one, other]));
const all = ({ ours }: Shelf): Groups => [ours];
const anyOne = ({ ours }: Shelf): Groups => singles(ours);
const ofColour =
  (colour: string) =>
  ({ colours }: Shelf): Groups =>
    colours?.[colour] ? [[colours[colour]]] : [];
/** Null: the way of pointing makes no sense over these books. */
const where =
  (fits: (shelf: Shelf) => boolean, groups: (shelf: Shelf) => Groups) =>
  (shelf: Shelf): Groups | null =>
    fits(shelf) ? groups(shelf) : null;
const isTwo = ({ ours }: Shelf): boolean => ours.length === 2;
const isSeveral = ({ ours }: Shelf): boolean => ours.length > 1;
const isOnePieceSpoken = ({ spoken }: Shelf): boolean => spoken.length === 1;
const isAllSpoken = ({ spoken, ours }: Shelf): boolean => String(spoken) === String(ours);
const notSpoken = ({ ours, spoken }: Shelf): Groups =>
  singles(spoken.length === 1 ? ours.filter((number) => number !== spoken[0]) : ours);

const WAYS: readonly Way[] = [
  { said: "the {n}", groups: anyOne },
  { said: "{n}", groups: anyOne },
  { said: "my {n}", groups: anyOne },
  { said: "that {n}", groups: anyOne },
  { said: "this {n}", groups: anyOne },
  { said: "a {n}", groups: anyOne },
  { said: "1 {n}", groups: anyOne },
  { said: "one {n}", groups: anyOne },
  { said: "it", groups: where(isOnePieceSpoken, ({ spoken }) => [spoken]) },
  { said: "#{first}", groups: ({ ours }) => [[ours[0]!]] },
  { said: "{n} #{first}", groups: ({ ours }) => [[ours[0]!]] },
  { said: "one", groups: where((shelf) => isSeveral(shelf) || !!shelf.gone, anyOne) },
  { said: "one of them", groups: where(isSeveral, anyOne) },
  { said: "one of the {ns}", groups: where(isSeveral, anyOne) },
  { said: "one of my {ns}", groups: where(isSeveral, anyOne) },
  { said: "the last one", groups: where(({ gone, ours }) => !!gone && ours.length === 1, all) },
  { said: "the last {n}", groups: where(({ gone, ours }) => !!gone && ours.length === 1, all) },
  { said: "the other", groups: where((shelf) => isTwo(shelf) || !!shelf.gone, notSpoken) },
  { said: "the other one", groups: where((shelf) => isTwo(shelf) || !!shelf.gone, notSpoken) },
  { said: "the other {n}", groups: where((shelf) => isTwo(shelf) || !!shelf.gone, notSpoken) },
  { said: "another {n}", groups: where((shelf) => isSeveral(shelf) && !!shelf.gone, anyOne) },
  { said: "another one", groups: where((shelf) => isSeveral(shelf) && !!shelf.gone, anyOne) },
  { said: "the pair", groups: where((shelf) => isTwo(shelf) && isAllSpoken(shelf), all), many: true },
  { said: "both", groups: where(isTwo, all), many: true },
  { said: "both {ns}", groups: where(isTwo, all), many: true },
  { said: "both of them", groups: where(isTwo, all), many: true },
  { said: "the pair of {ns}", groups: where(isTwo, all), many: true },
  { said: "the two {ns}", groups: where(isTwo, all), many: true },
  { said: "the {ns}", groups: where(isSeveral, all), many: true },
  { said: "{ns}", groups: where(isSeveral, all), many: true },
  { said: "all the {ns}", groups: where(isSeveral, all), many: true },
  { said: "all of them", groups: where((shelf) => isSeveral(shelf) && isAllSpoken(shelf), all), many: true },
  { said: "them", groups: where((shelf) => isSeveral(shelf) && isAllSpoken(shelf), all), many: true },
  { said: "the set", groups: where(({ name }) => name === "a set of four", all), many: true },
  { said: "all 4 {ns}", groups: where(({ ours }) => ours.length === 4, all), many: true },
  {
    said: "2 {ns}",
    groups: where(isSeveral, ({ ours }) => pairsOf(ours)),
    many: true,
  },
  {
    said: "two of the {ns}",
    groups: where(
      ({ ours }) => ours.length > 2,
      ({ ours }) => pairsOf(ours),
    ),
    many: true,
  },
  {
    said: "two of them",
    groups: where(
      ({ ours }) => ours.length > 2,
      ({ ours }) => pairsOf(ours),
    ),
    many: true,
  },
  {
    said: "a couple of the {ns}",
    groups: where(
      ({ ours }) => ours.length > 2,
      ({ ours }) => pairsOf(ours),
    ),
    many: true,
  },
  {
    said: "the rest of the {ns}",
    groups: where((shelf) => isSeveral(shelf) && !!shelf.gone, all),
    many: true,
  },
  { said: "the rest", groups: where((shelf) => isSeveral(shelf) && !!shelf.gone, all), many: true },
  { said: "the remaining {ns}", groups: where((shelf) => isSeveral(shelf) && !!shelf.gone, all), many: true },
  { said: "the other {ns}", groups: where((shelf) => isSeveral(shelf) && !!shelf.gone, all), many: true },
  { said: "the other 3", groups: where(({ ours, gone }) => ours.length === 3 && !!gone, all), many: true },
  { said: "the white one", groups: ofColour("white") },
  { said: "the black one", groups: where(({ name }) => name === "two colours", ofColour("black")) },
  { said: "the white {n}", groups: ofColour("white") },
  { said: "white {n}", groups: ofColour("white") },
  { said: "my white {n}", groups: ofColour("white") },
  { said: "the {n}, the white one", groups: where(({ colours }) => !!colours, ofColour("white")) },
  { said: "{n} (white)", groups: where(({ colours }) => !!colours, ofColour("white")) },
  {
    said: "the second {n}",
    groups: where(
      (shelf) => shelf.ours.length > 1 && !shelf.gone,
      ({ ours }) => [[ours[1]!]],
    ),
  },
  {
    said: "2nd {n}",
    groups: where(
      (shelf) => shelf.ours.length > 1 && !shelf.gone,
      ({ ours }) => [[ours[1]!]],
    ),
  },
  {
    said: "second {n}",
    groups: where(
      (shelf) => shelf.ours.length > 1 && !shelf.gone,
      ({ ours }) => [[ours[1]!]],
    ),
  },
  {
    said: "the first {n}",
    groups: where(
      (shelf) => shelf.ours.length > 1 && !shelf.gone,
      ({ ours }) => [[ours[0]!]],
    ),
  },
];

/** A verb in several forms; `ready`: what each piece needs before it, `isReady` where some have it already. */
interface Verb extends Told {
  kind: string;
  ready?: string;
  forms: readonly string[];
  /** Only of one piece. */
  alone?: true;
  /** Over shelves of which no piece is begun. */
  fresh?: true;
}

export const VERBS: readonly Verb[] = [
  {
    kind: "sell",
    ready: "listed #{number} 90",
    wants: { amount: "150.00" },
    forms: [
      "sold {x} 150",
      "sold {x} for 150 cash",
      "{x} sold for 150",
      "{x} went for 150",
      "{x} gone, 150",
      "{x} is gone, 150",
      "got 150 for {x}",
      "sold {x} to amy for 150",
      "amy took {x} for 150",
      "let {x} go for 150",
      "amy bought {x}, 150",
    ],
  },
  {
    kind: "list",
    wants: { amount: "165.00" },
    forms: [
      "listed {x} 165",
      "listed {x} at 165",
      "{x} listed at 165",
      "{x} is up for 165",
      "put {x} up for 165",
      "posted {x} for 165",
      "asking 165 for {x}",
      "{x} for sale, 165",
    ],
  },
  {
    kind: "finish",
    wants: {},
    forms: [
      "finished {x}",
      "{x} done",
      "{x} is done",
      "done with {x}",
      "{x} is finished",
      "wrapped up {x}",
      "got {x} done",
      "finally finished {x}",
    ],
  },
  {
    kind: "start",
    wants: {},
    fresh: true,
    forms: ["started {x}", "started on {x}", "began {x}", "started working on {x}"],
  },
  {
    kind: "work",
    wants: { minutes: 120 },
    forms: [
      "2h on {x}",
      "worked 2h on {x}",
      "sanded {x} 2h",
      "spent 2 hours sanding {x}",
      "2 hours of sanding on {x}",
      "put 2 hours into {x}",
      "{x} 2h sanding",
      "worked on {x} for 2 hours",
    ],
  },
  {
    kind: "spend",
    wants: { amount: "9.00" },
    forms: [
      "paint 9 for {x}",
      "paint for {x} 9",
      "9 on paint for {x}",
      "bought paint for {x}, 9",
      "spent 9 on paint for {x}",
      "got paint for {x} for 9",
    ],
  },
  {
    kind: "hold",
    ready: "listed #{number} 90",
    wants: { deposit: "40.00", buyer: "amy" },
    forms: [
      "40 down on {x} from amy",
      "amy put 40 down on {x}",
      "holding {x} for amy, 40 down",
      "40 deposit on {x} from amy",
      "amy left a 40 deposit on {x}",
      "{x} on hold for amy, 40 deposit",
    ],
  },
  {
    kind: "reprice",
    ready: "listed #{number} 90",
    wants: { listPrice: "80.00" },
    forms: [
      "dropped {x} to 80",
      "lowered {x} to 80",
      "{x} now 80",
      "{x} is 80 now",
      "{x} down to 80",
      "marked {x} down to 80",
      "cut {x} to 80",
    ],
  },
  {
    kind: "retire",
    wants: {},
    forms: [
      "keeping {x}",
      "donated {x}",
      "gave {x} to my sister",
      "trashed {x}",
      "threw {x} out",
      "kept {x}",
      "{x} broke, tossed it",
      "gave away {x}",
    ],
  },
  {
    kind: "refund",
    ready: "sold #{number} 90",
    wants: { amount: "20.00" },
    forms: ["refunded 20 on {x}", "gave back 20 on {x}", "gave amy 20 back on {x}"],
  },
];

/** Whether what is said is a sentence: a subject without a noun of its own reads oddly in some forms. */
function isSayable(form: string, { said, many }: Way): string | null {
  if (said === "it" && form === "{x} broke, tossed it") return "it broke, tossed it: two pronouns";
  if (many && /^\{x\} (is|broke)/.test(form)) return "a plural subject with a singular verb";
  if (/^\{x\}/.test(form) && (said === "them" || said === "{n}, the white one")) return "no subject";
  if (/^a |^another|^one$|^1 /.test(said) && /^\{x\} (done|now|down|2h|on)/.test(form)) return "no telegram";
  return null;
}

/** All cells of the grid. */
export function pointing(): Cell[] {
  return SHELVES.flatMap((shelf) =>
    VERBS.flatMap((verb) =>
      WAYS.flatMap((way) => verb.forms.flatMap((form) => cellOf(shelf, verb, way, form) ?? [])),
    ),
  );
}

function cellOf(shelf: Shelf, verb: Verb, way: Way, form: string): Cell | null {
  const groups = way.groups(shelf);
  if (!groups || isSayable(form, way)) return null;
  // What is gone was sold, so it can be what money was given back on.
  if (verb.kind === "refund" && shelf.gone) return null;
  if (verb.fresh && (shelf.name === "two, one in hand" || shelf.gone)) return null;
  const { noun, ours, gone } = shelf;
  const words = { n: noun, ns: noun === "bench" ? "benches" : `${noun}s`, first: String(ours[0]) };
  const ready = verb.ready
    ? Array.from({ length: shelf.count }, (_, at) => at + 1)
        .filter((number) => !gone?.includes(number))
        .map((number) => filled(verb.ready!, { number: String(number) }))
    : [];
  // What stood ready last is spoken of last.
  if (ready.length > 0 && isOnlyBySpoken(way)) return null;
  const [facts, ...or] = groups.map((pieces) => [{ kind: verb.kind, ...verb.wants, pieces: [...pieces] }]);
  return {
    id: `${shelf.name} | ${form} | ${way.said}`,
    class: `${verb.kind} pointing`,
    on: "2026-05-09",
    before: [...shelf.bought, ...ready],
    line: filled(form, { x: filled(way.said, words) }),
    facts: facts ?? [],
    ...(or.length > 0 ? { or } : {}),
    ask: groups.length === 1 && !way.many ? false : "either",
  } satisfies ContextCase;
}

const isOnlyBySpoken = ({ said }: Way): boolean =>
  /^(it|them|all of them|the (pair|set|other|rest|remaining)\b.*)$/.test(said);
