import type { Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { wholeOf } from "../quantities/amounts.ts";
import type { TokenKind } from "../tokens/token.ts";
import { saysOneMore } from "../words/again.ts";
import { MONTHS } from "../words/calendar.ts";
import { isCommon } from "../words/daily.ts";
import { ARTICLES_WIDE, THEY } from "../words/links.ts";
import { BLEMISHES, HURTS, PIECE_PARTS, SERVICES, SPARES, THINGS, WORK_PARTS } from "../words/parts.ts";
import { HOUSEHOLD, isOwner } from "../words/people.ts";
import { ALIKE, WITH_PARTS, WORN_OUT_TRAITS } from "../words/pieces.ts";
import { OWN_SPOTS, SITES } from "../words/places.ts";
import { CONTAINERS, GRITS } from "../words/supplies.ts";
import { addBits, BITS_MAX, type Bits, bitsOf, noBits } from "./bits.ts";

type Test = (token: Tok) => boolean;

/** No picture or table top is given in less: "6x2" of a thing is a count and a price. */
const SIDE_MIN = 10;
/** A bare number below is no address. */
const HOUSE_MIN = 100;

export const isVerb: Test = (token) => headsOf(token).some(({ light }) => !light);
const always: Test = () => true;
const role =
  (name: "labor" | "person" | "place" | "trait" | "opinion" | "stream" | "method"): Test =>
  ({ roles }) =>
    roles[name] !== undefined;
const oneOf =
  (words: ReadonlySet<string>): Test =>
  ({ text }) =>
    words.has(text);
const spelled =
  (pattern: RegExp): Test =>
  ({ text }) =>
    pattern.test(text);

const wholeNumber: Test = ({ amount: said, each }) =>
  said!.money !== true && !each && wholeOf(said!.exact) !== null;
/** "5th", bare: a street as often as a day. */
const rank: Test = ({ text }) => text.charCodeAt(0) <= NINE && /^\d{1,3}(?:st|nd|rd|th)$/.test(text);
const NINE = 57;
/** "2x4": the cut of a board. */
const board: Test = ({ text }) => text[1] === "x" && /^[1-6]x(?:[2-8]|10|12)$/.test(text);

/** What a "<name>" may be, by the kind of token; a kind of note stands for its verbs besides. */
const CLASSES: Readonly<Partial<Record<TokenKind, Readonly<Record<string, Test>>>>> = {
  word: {
    word: always,
    supply: ({ roles }) => roles.supply !== undefined && !roles.heads,
    helper: ({ roles }) => roles.supply === "help" && !roles.heads,
    labor: role("labor"),
    person: role("person"),
    /** Whom an earlier row found to be the one who buys. */
    buyer: ({ roles }) => roles.actor === "buyer",
    /** One of ours who acts, as an earlier row found. */
    ours: ({ roles }) => roles.actor === "ours",
    kin: oneOf(HOUSEHOLD),
    /** Somebody else's: "moms lamp", "the neighbors". */
    theirs: ({ text }) => isOwner(text),
    someone: oneOf(THEY),
    place: role("place"),
    trait: role("trait"),
    opinion: role("opinion"),
    stream: role("stream"),
    method: role("method"),
    site: oneOf(SITES),
    /** What may be the name of a site. */
    sitename: ({ unknown, text }) => unknown === true && !text.endsWith("s"),
    new: ({ unknown, text }) => unknown === true && text !== "loan" && text !== "loans",
    art: oneOf(ARTICLES_WIDE),
    container: oneOf(CONTAINERS),
    rank,
    ownspot: oneOf(OWN_SPOTS),
    boards: ({ text }) => text[1] === "x" && /^[1-6]x(?:[2-8]|10|12)s$/.test(text),
    month: ({ text }) => MONTHS[text] !== undefined,
    part: ({ text, roles }) => PIECE_PARTS.has(text) && !roles.heads,
    things: oneOf(THINGS),
    hurt: oneOf(HURTS),
    /** Of daily life, and several: "students", "cats". */
    lives: ({ text, roles }) =>
      text.endsWith("s") &&
      !(roles.supply || PIECE_PARTS.has(text)) &&
      (roles.plain === true || isCommon(text) || isCommon(text.slice(0, -1))),
    blemish: oneOf(BLEMISHES),
    workpart: oneOf(WORK_PARTS),
    service: oneOf(SERVICES),
    done: ({ text, unknown, roles }) =>
      SERVICES.has(text) || roles.labor === true || (unknown === true && text.endsWith("ed")),
    plain: ({ roles }) => roles.plain === true && roles.filler !== true,
    light: (token) => headsOf(token).length > 0,
    verb: isVerb,
  },
  piece: {
    piece: always,
    several: ({ mention }) => mention!.plural === true || (mention!.count ?? 1) > 1,
    numbered: ({ mention }) => mention!.number !== undefined,
    theirs: ({ mention }) => mention!.traits?.some(isOwner) === true,
    /** "replacement mirror": not for sale by itself. */
    spare: ({ mention }) => mention!.traits?.some((trait) => SPARES.has(trait)) === true,
    cart: ({ mention }) => mention!.name === "cart" && mention!.traits === undefined,
    /** One like it, and not the one. */
    comp: ({ mention }) => mention!.traits?.some((trait) => ALIKE.has(trait)) === true,
    /** "the old one" */
    oldone: ({ mention }) => mention!.name === undefined && mention!.traits?.includes("old") === true,
    /** "old mattress": fit for the dump. */
    junk: ({ mention }) => mention!.traits?.some((trait) => WORN_OUT_TRAITS.has(trait)) === true,
    /** "new mirror": what goes into another. */
    newpart: ({ mention }) =>
      WITH_PARTS.has(mention!.name ?? "") && mention!.traits?.includes("new") === true,
    /** "the other one" */
    other: ({ mention }) => mention!.other === true,
    /** "last dresser": the one before, or the last of several. */
    previous: ({ text }) => text.includes(" ") && /^(?:last|previous|prior) /.test(text),
    /** "another chair" */
    onemore: ({ text, mention }) => mention!.name !== undefined && saysOneMore(text),
    /** "3 of them" */
    ofthem: ({ mention }) => mention!.it === true && mention!.count !== undefined,
    /** What may be a part of another one: a shelf, a mirror. */
    inpiece: ({ mention }) => WITH_PARTS.has(mention!.name ?? ""),
    ofset: ({ mention }) => mention!.set === true,
  },
  amount: {
    $: always,
    "#": wholeNumber,
    /** "25 each" before what it is each of. */
    eachof: ({ each }) => each === true,
    size: ({ amount: said }) =>
      said!.factors?.every(({ digits, scale }) => scale === 0 && digits >= SIDE_MIN) === true,
    /** A number that is no price of a small thing: a house's. */
    house: (token) => wholeNumber(token) && (wholeOf(token.amount!.exact) ?? 0) >= HOUSE_MIN,
    grit: oneOf(GRITS),
    /** "40210-40252": what an odometer showed. */
    readings: ({ text }) => text.includes("-") && /^\d{3,6}-\d{3,6}$/.test(text),
    board,
    /** A number that is not of money, nor of each of something. */
    bare: ({ amount: said, each }) =>
      !each && said!.exact !== null && !said!.flaw && !said!.money && !said!.factors,
  },
  day: {
    day: always,
    weekday: ({ said }) => said?.form === "weekday",
    monthday: ({ said }) => said?.form === "dayOfMonth",
    /** Words that are days as often as not. */
    sunsat: ({ text }) => text === "sun" || text === "sat",
    /** "9/10": how good it was, more often than a day. */
    outof: spelled(/^\d+\/10$/),
    rank,
  },
  span: {
    span: always,
    /** "60 a month": how often, where no time passes. */
    amonth: ({ text }) => text === "a month" || text === "one month",
    aweek: ({ text }) => text === "a week" || text === "one week",
  },
  /** Several people, and no number that stands beside another. */
  grain: {
    grain: always,
    party: ({ text }) => !/(?:\d|each|apiece)$/.test(text),
    coats: spelled(/coats?$/),
    gritty: spelled(/grits?$/),
    yards: spelled(/(?:yards?|yds?|met(?:er|re)s?)$/),
  },
  miles: { miles: always, eachway: ({ text }) => text.endsWith("way") },
  duration: { time: always, moretime: ({ text }) => text.includes("more") },
  clock: { clock: always },
  percent: { percent: always },
  number: { number: always },
};

const NAMES = new Set(["any", ...Object.values(CLASSES).flatMap((tests) => Object.keys(tests))]);

/** "<sell>" is a verb that says a sale alone, "<~sell>" also one that may say something else. */
function verbTest(name: string): Test {
  const isLoose = name.startsWith("~");
  const kind = isLoose ? name.slice(1) : name;
  return (token) =>
    headsOf(token).some((head) => head.kind === kind && (isLoose || !head.light) && head.tails === null);
}

/** The classes that rows name, each with its place. */
const KNOWN = new Map<string, number>();

/** The place of a class among all that rows name. */
export function placeOf(text: string): number {
  const name = text.startsWith("<") ? text.slice(1, -1) : text;
  const known = KNOWN.get(name);
  if (known !== undefined) return known;
  if (KNOWN.size === BITS_MAX) throw new Error("rows name more classes than there are bits");
  KNOWN.set(name, KNOWN.size);
  return KNOWN.size - 1;
}

export const isClass = (text: string): boolean => text === "$" || text === "#" || text.startsWith("<");

/** What a token may be, each with the bit of that class, and the bits of what any such token is. */
interface Placed {
  always: Bits;
  tests: readonly { bits: Bits; test: Test }[];
}

function placed(testOf: (name: string) => Test | undefined): Placed {
  const all = [...KNOWN].flatMap(([name, place]) => {
    const test = testOf(name);
    return test ? [{ place, bits: bitsOf([place]), test }] : [];
  });
  return {
    always: bitsOf(all.flatMap(({ place, test }) => (test === always ? [place] : []))),
    tests: all.filter(({ test }) => test !== always),
  };
}

/** By the kind of token; made when the first token is looked at, by when every row has named its classes. */
const TESTS = new Map<TokenKind, Placed>();
let verbTests: Placed | undefined;

function testsOf(kind: TokenKind): Placed {
  const known = TESTS.get(kind);
  if (known) return known;
  const tests = placed((name) => (name === "any" ? always : CLASSES[kind]?.[name]));
  TESTS.set(kind, tests);
  return tests;
}

/** The classes that a token is in. */
export function bitsOfToken(token: Tok): Bits {
  const bits = noBits();
  addPassed(bits, testsOf(token.kind), token);
  if (headsOf(token).length === 0) return bits;
  verbTests ??= placed((name) => (NAMES.has(name) ? undefined : verbTest(name)));
  addPassed(bits, verbTests, token);
  return bits;
}

function addPassed(into: Bits, { always: all, tests }: Placed, token: Tok): void {
  addBits(into, all);
  for (let at = 0; at < tests.length; at += 1) if (tests[at]!.test(token)) addBits(into, tests[at]!.bits);
}
