import type { Books, Piece } from "../../books/books.ts";
import { statusOf } from "../../books/piece.ts";
import { isHeadNoun, isSetName } from "../../notes/mentions/furniture.ts";
import type { Mention } from "../../notes/reading.ts";
import { isNearSpelling } from "../../notes/tokens/spelling.ts";
import { NEAR_THINGS, SAME_THINGS } from "../../notes/words/same.ts";
import { SIZE } from "../../notes/words/units.ts";

/** For which pieces a verb makes sense: those it `allows`, and of these only those it `prefers`, if any; the more, the earlier asked about. */
export interface Fit {
  allows(piece: Readonly<Piece>): boolean;
  prefers?(piece: Readonly<Piece>): boolean | number;
}

/** How far a likeness goes: taken without asking; asked, but of a piece that is replied to; always asked. */
type Trust = "sure" | "likely" | "odd";

/** What a mention may mean on the books. Piece numbers, lowest first. */
export type Match =
  | { kind: "found"; pieces: number[] }
  /** Any of these groups; where it is not `sure`, even a single group is only a guess. */
  | { kind: "several"; groups: number[][]; trust: Trust }
  | { kind: "too few"; pieces: number[] }
  /** Pieces of that name exist, but the verb fits none of them. */
  | { kind: "unfit"; pieces: number[] }
  | { kind: "no such number"; number: number }
  /** Number and name mean different pieces; where the number is none, only those of the name. */
  | { kind: "at odds"; pieces: number[]; named: number[] }
  | { kind: "none" };

type Pieces = readonly Readonly<Piece>[];

/** Matches one mention to the books, leaving out the pieces that the note has already named. */
export function matchMention(mention: Mention, books: Books, fit: Fit, taken: ReadonlySet<number>): Match {
  // What all but that is, the books could not tell; what is to come they do not have.
  if (mention.allBut || mention.awaited) return { kind: "none" };
  if (mention.number !== undefined)
    return atOdds(mention, books, fit) ?? matchNumber(mention.number, books, fit);
  const pieces = [...books.pieces.values()].filter((piece) => !taken.has(piece.number));
  const fitting = pieces.filter((piece) => fit.allows(piece));
  if (mention.name === undefined) return matchTraits(mention, fitting, fit);
  const level = levels.find(({ matches }) => fitting.some((piece) => matches(mention, piece)));
  if (level) {
    const closest = fitting.filter((piece) => level.matches(mention, piece));
    // "the other hutch" where there never was but one.
    if (mention.besides && pieces.filter((piece) => isOfHead(mention, piece)).length < 2)
      return pick(mention, closest, "likely");
    if (level.matches === isNamed) return matchNamed(mention, closest, fitting, fit);
    return pick(mention, preferredOf(mention, closest, fit), level.trust);
  }
  const sure = levels.filter(({ trust }) => trust === "sure");
  const unfit = sure.map(({ matches }) => pieces.filter((piece) => matches(mention, piece)));
  const [first] = unfit.filter((group) => group.length > 0);
  return first ? { kind: "unfit", pieces: numbersOf(first) } : { kind: "none" };
}

/** The numbers of the pieces that all these mentions find, in their order; null where there are none, or one is not sure. */
export function foundBy(mentions: readonly Mention[], books: Books, fit: Fit): number[] | null {
  const matches = mentions.map((mention) => matchMention(mention, books, fit, new Set()));
  const found = matches.flatMap((match) => (match.kind === "found" ? match.pieces : []));
  return found.length > 0 && matches.every(({ kind }) => kind === "found") ? found : null;
}

/** Pieces of that very name, and those that go by its head noun as well where these may be what is meant. */
function matchNamed(mention: Mention, named: Pieces, fitting: Pieces, fit: Fit): Match {
  const others = fitting.filter((piece) => !named.includes(piece) && isOfHead(mention, piece));
  const isPlain = named.some((piece) => sameSet(wordsOf(mention), wordsOf(piece)));
  // "the chest" is a cedar chest or a blanket chest.
  if (!isPlain) return pick(mention, preferredOf(mention, [...named, ...others], fit), "sure");
  const likely = fit.prefers ? others.filter((piece) => fit.prefers!(piece)) : [];
  if (likely.length === 0 || named.some((piece) => fit.prefers!(piece)))
    return pick(mention, preferredOf(mention, named, fit), "sure");
  // A table that is sold or finished, and a coffee table that is not: asked, unless that came after the other had gone.
  const rivals = named.filter(({ goneOn }) =>
    likely.some(({ bought }) => goneOn === null || goneOn >= bought),
  );
  if (rivals.length === 0) return pick(mention, likely, "sure");
  const groups = [likely, rivals].flatMap((each) => {
    const found = groupsOf(mention, each);
    return found === "too few" ? [] : found;
  });
  return groups.length > 0
    ? { kind: "several", groups, trust: "sure" }
    : { kind: "too few", pieces: numbersOf(likely) };
}

/** Those that the verb prefers, likeliest first; all that it allows where these are fewer than are said. */
function preferredOf(mention: Mention, allowed: Pieces, { prefers }: Fit): Pieces {
  if (!prefers) return allowed;
  const liking = (piece: Readonly<Piece>) => Number(prefers(piece));
  const liked = allowed.filter((piece) => liking(piece) > 0).sort((a, b) => liking(b) - liking(a));
  const count = mention.plural ? 1 : (mention.count ?? 1);
  return liked.length >= count ? liked : allowed;
}

/** "the white one": whatever is white, of those that the verb fits. */
function matchTraits(mention: Mention, fitting: Pieces, fit: Fit): Match {
  const allowed = mention.traits ? fitting.filter((piece) => isSubset(mention.traits, wordsOf(piece))) : [];
  if (allowed.length === 0) return { kind: "none" };
  return pick(mention, preferredOf(mention, allowed, fit), "sure");
}

function matchNumber(number: number, books: Books, fit: Fit): Match {
  const piece = books.pieces.get(number);
  if (!piece) return { kind: "no such number", number };
  return fit.allows(piece) ? { kind: "found", pieces: [number] } : { kind: "unfit", pieces: [number] };
}

/** "#8 hutch" where #8 is a bench: which of the two is wrong is for the person to say. */
function atOdds({ number, ...named }: Mention, books: Books, fit: Fit): Match | null {
  if (named.name === undefined) return null;
  const piece = books.pieces.get(number!);
  if (piece && levels.some(({ trust, matches }) => trust !== "odd" && matches(named, piece))) return null;
  const others = [...books.pieces.values()].filter((other) => fit.allows(other) && isNamed(named, other));
  if (!piece && others.length === 0) return null;
  const numbers = piece && fit.allows(piece) ? [piece.number] : [];
  return { kind: "at odds", pieces: numbers, named: numbersOf(others) };
}

interface Level {
  matches(mention: Mention, piece: Readonly<Piece>): boolean;
  /** Whether a single piece found this way is taken without asking. */
  trust: Trust;
}

/** That very name; or "kitchen table" said of a table with the trait "kitchen", and the other way round. */
function isNamed(mention: Mention, piece: Readonly<Piece>): boolean {
  // "the 72 inch table" of one whose size nobody noted.
  const traits = piece.traits.some(isSize) ? mention.traits : mention.traits?.filter((each) => !isSize(each));
  const isOfName = piece.name === mention.name && isSubset(traits, piece.traits);
  return isOfName || sameSet(wordsOf(mention), wordsOf(piece));
}

const isSize = (trait: string): boolean => SIZE.test(trait);

/** Less is said than the books know: "table" of an oak end table, "chair" of an armchair. */
function isOfHead(mention: Mention, piece: Readonly<Piece>): boolean {
  if (mention.name === undefined) return false;
  const isShort = headOf(mention.name) === headOf(piece.name) && isSubset(wordsOf(mention), wordsOf(piece));
  return isShort || (isTailOf(mention.name, piece.name) && isSubset(mention.traits, piece.traits));
}

/** "the rolltop" of a rolltop desk, "the wingback" of a wingback chair: the word before its noun stands for it. */
function isOfFront(mention: Mention, piece: Readonly<Piece>): boolean {
  const { name } = mention;
  if (name === undefined || name.includes(" ") || isHeadNoun(name)) return false;
  return isSubset(wordsOf(mention), wordsOf(piece));
}

/** From the closest likeness to the loosest; the first level at which anything fits decides. */
const levels: readonly Level[] = [
  { trust: "sure", matches: isNamed },
  {
    trust: "sure",
    matches: (mention, piece) =>
      isNearSpelling(mention.name!, piece.name) && isSubset(mention.traits, piece.traits),
  },
  { trust: "sure", matches: isOfHead },
  { trust: "sure", matches: isOfFront },
  // Another word for the same thing: a bookcase is a bookshelf to some.
  { trust: "sure", matches: isOneOf(SAME_THINGS) },
  // More is said of the piece than the books know: an office chair is not just any chair, asked.
  {
    trust: "likely",
    matches: (mention, piece) =>
      headOf(mention.name!) === headOf(piece.name) && isSubset(wordsOf(piece), wordsOf(mention)),
  },
  { trust: "likely", matches: isOneOf(NEAR_THINGS) },
  // A white chair is no green chair, and a footstool hardly a stool; yet it may be what is meant.
  {
    trust: "odd",
    matches: ({ name = "" }, piece) =>
      name === piece.name || name === headOf(piece.name) || isTailOf(piece.name, name),
  },
];

/** Both go by a name of one of these groups, and what else is said of the one is true of the other. */
function isOneOf(groups: readonly ReadonlySet<string>[]): Level["matches"] {
  return ({ name = "", traits }, piece) =>
    groups.some((names) => names.has(name) && names.has(piece.name)) && isSubset(traits, piece.traits);
}

function pick(mention: Mention, candidates: Pieces, trust: Trust): Match {
  const groups = groupsOf(mention, candidates);
  if (groups === "too few") return { kind: "too few", pieces: numbersOf(candidates) };
  if (groups.length === 1 && trust === "sure") return { kind: "found", pieces: groups[0]! };
  return { kind: "several", groups, trust };
}

function groupsOf(mention: Mention, candidates: Pieces): number[][] | "too few" {
  return isSetName(mention.name ?? "") ? setGroups(mention, candidates) : countGroups(mention, candidates);
}

/** A set's name means all of it that is left; a smaller count than that is one of two readings. */
function setGroups(mention: Mention, candidates: Pieces): number[][] {
  const lots = new Map<number, number[]>();
  for (const piece of candidates) {
    const lot = piece.lot ?? piece.number;
    lots.set(lot, [...(lots.get(lot) ?? []), piece.number]);
  }
  const whole = [...lots.values()];
  const count = mention.count ?? 1;
  const [only] = whole;
  if (whole.length === 1 && only && count > 1 && count < only.length) return [only, only.slice(0, count)];
  return whole;
}

function countGroups(mention: Mention, candidates: Pieces): number[][] | "too few" {
  if (mention.plural) return pluralGroups(candidates);
  const count = mention.count ?? 1;
  if (candidates.length < count) return "too few";
  if (candidates.length === count) return [numbersOf(candidates)];
  const classes = alikeClasses(candidates);
  if (classes.length === 1) {
    const numbers = numbersOf(classes[0]!);
    // "set of 4 chairs" when six are left of the set: which is meant is asked.
    return mention.set ? [numbers, numbers.slice(0, count)] : [numbers.slice(0, count)];
  }
  const wide = classes.filter((group) => group.length >= count);
  if (wide.length === 0) return [numbersOf(candidates).slice(0, count), numbersOf(candidates)];
  return wide.map((group) => numbersOf(group).slice(0, count));
}

/** All of them; where only some go by one name, these are another thing that may be meant. */
function pluralGroups(candidates: Pieces): number[][] {
  const names = [...new Set(candidates.map(({ name }) => name))];
  const several = names
    .map((name) => candidates.filter((piece) => piece.name === name))
    .filter((group) => group.length > 1 && group.length < candidates.length);
  return [candidates, ...several].map(numbersOf);
}

/** Pieces alike in name, traits, lot, state and list price stand for each other; one bought alone is like no other. */
export function alikeClasses(candidates: Pieces): Readonly<Piece>[][] {
  const classes = new Map<string, Readonly<Piece>[]>();
  for (const piece of candidates) {
    const lot = piece.lot === null ? `alone ${piece.number}` : `lot ${piece.lot}`;
    const key = [piece.name, piece.traits.join(" "), lot, statusOf(piece), piece.listPrice].join("|");
    classes.set(key, [...(classes.get(key) ?? []), piece]);
  }
  return [...classes.values()];
}

function numbersOf(pieces: Pieces): number[] {
  return pieces.map((piece) => piece.number).sort((a, b) => a - b);
}

function wordsOf(thing: { name?: string; traits?: readonly string[] }): string[] {
  return [...(thing.traits ?? []), ...(thing.name?.split(" ") ?? [])];
}

/** The noun that says what it is: "table" of "coffee table", "chest" of "chest of drawers". */
function headOf(name: string): string {
  const [kind] = name.split(" of ");
  return kind!.slice(kind!.lastIndexOf(" ") + 1);
}

const TAIL_LENGTH_MIN = 5;

/** Whether a name is written together with the other one's head: "stool" and "footstool". */
function isTailOf(tail: string, name: string): boolean {
  const head = headOf(name);
  return tail.length >= TAIL_LENGTH_MIN && tail.length < head.length && head.endsWith(tail);
}

function isSubset(small: readonly string[] | undefined, large: readonly string[]): boolean {
  return (small ?? []).every((word) => large.includes(word));
}

function sameSet(a: readonly string[], b: readonly string[]): boolean {
  return isSubset(a, b) && isSubset(b, a);
}
