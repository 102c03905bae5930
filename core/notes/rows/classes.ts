import type { Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { wholeOf } from "../quantities/amounts.ts";
import { MONTHS } from "../words/calendar.ts";
import { ARTICLES_WIDE, THEY } from "../words/links.ts";
import { PIECE_PARTS, SERVICES, THINGS, WORK_PARTS } from "../words/parts.ts";
import { HOUSEHOLD, isOwner } from "../words/people.ts";
import { OWN_SPOTS } from "../words/places.ts";
import { CONTAINERS, GRITS } from "../words/supplies.ts";

export type Test = (token: Tok) => boolean;

/** A class: what it takes, and its place among all classes. */
export interface Class {
  test: Test;
  place: number;
}

/** No picture or table top is given in less: "6x2" of a thing is a count and a price. */
const SIDE_MIN = 10;
/** A bare number below is no address. */
const HOUSE_MIN = 100;

export const isVerb: Test = (token) => headsOf(token).some(({ light }) => !light);
const isWord = (token: Tok): boolean => token.kind === "word";
const role =
  (name: "labor" | "person" | "place" | "trait" | "opinion" | "stream" | "noun"): Test =>
  (token) =>
    token.kind === "word" && token.roles[name] !== undefined;

/** What a "<name>" may be. */
const CLASSES: Readonly<Record<string, Test>> = {
  piece: ({ kind }) => kind === "piece",
  several: ({ kind, mention }) => kind === "piece" && (mention!.plural === true || (mention!.count ?? 1) > 1),
  numbered: ({ kind, mention }) => kind === "piece" && mention!.number !== undefined,
  supply: ({ kind, roles }) => kind === "word" && roles.supply !== undefined && !roles.heads,
  labor: role("labor"),
  person: role("person"),
  kin: ({ kind, text }) => kind === "word" && HOUSEHOLD.has(text),
  /** Somebody else's: "moms lamp", "the neighbors". */
  theirs: ({ text, mention, kind }) =>
    kind === "piece" ? (mention!.traits ?? []).some(isOwner) : kind === "word" && isOwner(text),
  someone: ({ kind, text }) => kind === "word" && THEY.has(text),
  place: role("place"),
  trait: role("trait"),
  opinion: role("opinion"),
  stream: role("stream"),
  new: ({ kind, unknown, text }) => kind === "word" && unknown === true && !/^loans?$/.test(text),
  art: ({ kind, text }) => kind === "word" && ARTICLES_WIDE.has(text),
  day: ({ kind }) => kind === "day",
  weekday: ({ kind, said }) => kind === "day" && said?.form === "weekday",
  monthday: ({ kind, said }) => kind === "day" && said?.form === "dayOfMonth",
  time: ({ kind }) => kind === "duration",
  clock: ({ kind }) => kind === "clock",
  coats: ({ kind, text }) => kind === "grain" && /coats?$/.test(text),
  eachway: ({ kind, text }) => kind === "miles" && text.endsWith("way"),
  /** "60 a month": how often, where no time passes. */
  amonth: ({ kind, text }) => kind === "span" && (text === "a month" || text === "one month"),
  aweek: ({ kind, text }) => kind === "span" && (text === "a week" || text === "one week"),
  /** "25 each" before what it is each of. */
  eachof: ({ kind, each }) => kind === "amount" && each === true,
  /** Words that are days as often as not. */
  sunsat: ({ kind, text }) => kind === "day" && (text === "sun" || text === "sat"),
  /** "9/10": how good it was, more often than a day. */
  outof: ({ kind, text }) => kind === "day" && /^\d+\/10$/.test(text),
  miles: ({ kind }) => kind === "miles",
  percent: ({ kind }) => kind === "percent",
  container: ({ kind, text }) => kind === "word" && CONTAINERS.has(text),
  span: ({ kind }) => kind === "span",
  grain: ({ kind }) => kind === "grain",
  number: ({ kind }) => kind === "number",
  size: ({ amount: said }) =>
    said?.factors?.every(({ digits, scale }) => scale === 0 && digits >= SIDE_MIN) === true,
  /** "5th", bare: a street as often as a day. */
  rank: ({ kind, text }) => (kind === "day" || kind === "word") && /^\d{1,3}(?:st|nd|rd|th)$/.test(text),
  /** A number that is no price of a small thing: a house's. */
  house: (token) => wholeNumber(token) && (wholeOf(token.amount!.exact) ?? 0) >= HOUSE_MIN,
  cart: ({ kind, mention }) => kind === "piece" && mention!.name === "cart" && mention!.traits === undefined,
  ofset: ({ kind, mention }) => kind === "piece" && mention!.set === true,
  method: ({ kind, roles }) => kind === "word" && roles.method !== undefined,
  ownspot: ({ kind, text }) => kind === "word" && OWN_SPOTS.has(text),
  grit: ({ kind, text }) => kind === "amount" && GRITS.has(text),
  /** "2x4": the cut of a board. */
  board: ({ kind, text }) => kind === "amount" && /^[1-6]x(?:[2-8]|10|12)$/.test(text),
  boards: ({ kind, text }) => kind === "word" && /^[1-6]x(?:[2-8]|10|12)s$/.test(text),
  gritty: ({ kind, text }) => kind === "grain" && /grits?$/.test(text),
  /** A number that is not of money, nor of each of something. */
  bare: ({ kind, amount: said, each }) =>
    kind === "amount" && !each && said!.exact !== null && !said!.flaw && !said!.money && !said!.factors,
  month: ({ kind, text }) => kind === "word" && MONTHS[text] !== undefined,
  part: ({ kind, text, roles }) => kind === "word" && PIECE_PARTS.has(text) && !roles.heads,
  things: ({ kind, text }) => kind === "word" && THINGS.has(text),
  workpart: ({ kind, text }) => kind === "word" && WORK_PARTS.has(text),
  service: ({ kind, text }) => kind === "word" && SERVICES.has(text),
  done: ({ kind, text, unknown, roles }) =>
    kind === "word" &&
    (SERVICES.has(text) || roles.labor === true || (unknown === true && text.endsWith("ed"))),
  plain: ({ kind, roles }) => kind === "word" && roles.plain === true && roles.filler !== true,
  word: isWord,
  any: () => true,
  light: (token) => headsOf(token).length > 0,
  verb: isVerb,
};

const amount: Test = ({ kind }) => kind === "amount";
const wholeNumber: Test = ({ kind, amount: said, each }) =>
  kind === "amount" && said!.money !== true && !each && wholeOf(said!.exact) !== null;

const KNOWN = new Map<string, Class>();

/** A class by its name: one for all the rows that name it. */
export function classOf(name: string): Class {
  let found = KNOWN.get(name);
  if (!found) {
    const inner = name.slice(1, -1);
    const test = name === "$" ? amount : name === "#" ? wholeNumber : (CLASSES[inner] ?? verbTest(inner));
    found = { test, place: KNOWN.size };
    KNOWN.set(name, found);
  }
  return found;
}

/** "<sell>" is a verb that says a sale alone, "<~sell>" also one that may say something else. */
function verbTest(name: string): Test {
  const isLoose = name.startsWith("~");
  const kind = isLoose ? name.slice(1) : name;
  return (token) =>
    headsOf(token).some((head) => head.kind === kind && (isLoose || !head.light) && head.tail.length === 0);
}

export const isClass = (text: string): boolean => text === "$" || text === "#" || text.startsWith("<");

/** How many classes rows have named so far. */
export const classCount = (): number => KNOWN.size;
