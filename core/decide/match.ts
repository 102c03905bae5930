import type { Books, Piece } from "../books/books.ts";
import { statusOf } from "../books/piece.ts";
import { isSetName } from "../notes/furniture.ts";
import type { Mention } from "../notes/reading.ts";
import { isNearSpelling } from "../notes/spelling.ts";
import { SAME_THINGS } from "../notes/words/same.ts";

/** For which pieces a verb makes sense: those it `allows`, and of these first those it `prefers`. */
export interface Fit {
  allows(piece: Readonly<Piece>): boolean;
  prefers?(piece: Readonly<Piece>): boolean;
}

/** What a mention may mean on the books. Piece numbers, lowest first. */
export type Match =
  | { kind: "found"; pieces: number[] }
  /** Any of these groups; `sure: false` where even a single group is only a guess. */
  | { kind: "several"; groups: number[][]; sure: boolean }
  | { kind: "too few"; pieces: number[] }
  /** Pieces of that name exist, but the verb fits none of them. */
  | { kind: "unfit"; pieces: number[] }
  | { kind: "no such number"; number: number }
  /** Number and name mean different pieces; where the number is none, only those of the name. */
  | { kind: "at odds"; pieces: number[]; named: number[] }
  | { kind: "none" };

/** Matches one mention to the books, leaving out the pieces that the note has already named. */
export function matchMention(mention: Mention, books: Books, fit: Fit, taken: ReadonlySet<number>): Match {
  if (mention.number !== undefined)
    return atOdds(mention, books, fit) ?? matchNumber(mention.number, books, fit);
  const pieces = [...books.pieces.values()].filter((piece) => !taken.has(piece.number));
  const fitting = pieces.filter((piece) => fit.allows(piece));
  if (mention.name === undefined) return matchTraits(mention, fitting, fit);
  for (const level of levels) {
    const allowed = fitting.filter((piece) => level.matches(mention, piece));
    if (allowed.length === 0) continue;
    const preferred = fit.prefers ? allowed.filter((piece) => fit.prefers!(piece)) : allowed;
    return pick(mention, preferred.length > 0 ? preferred : allowed, level.sure);
  }
  const unfit = pieces.filter((piece) => levels[0]!.matches(mention, piece));
  return unfit.length > 0 ? { kind: "unfit", pieces: numbersOf(unfit) } : { kind: "none" };
}

/** "the white one": whatever is white, of those that the verb fits. */
function matchTraits(mention: Mention, fitting: readonly Readonly<Piece>[], { prefers }: Fit): Match {
  const allowed = mention.traits ? fitting.filter((piece) => isSubset(mention.traits, wordsOf(piece))) : [];
  if (allowed.length === 0) return { kind: "none" };
  const preferred = prefers ? allowed.filter((piece) => prefers(piece)) : allowed;
  return pick(mention, preferred.length > 0 ? preferred : allowed, true);
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
  if (piece && levels.some(({ matches }) => matches(named, piece))) return null;
  const others = [...books.pieces.values()].filter(
    (other) => fit.allows(other) && levels[0]!.matches(named, other),
  );
  if (!piece && others.length === 0) return null;
  const numbers = piece && fit.allows(piece) ? [piece.number] : [];
  return { kind: "at odds", pieces: numbers, named: numbersOf(others) };
}

interface Level {
  matches(mention: Mention, piece: Readonly<Piece>): boolean;
  /** Whether a single piece found this way is taken without asking. */
  sure: boolean;
}

/** From the closest likeness to the loosest; the first level at which anything fits decides. */
const levels: readonly Level[] = [
  {
    sure: true,
    matches: (mention, piece) => piece.name === mention.name && isSubset(mention.traits, piece.traits),
  },
  // "kitchen table" said of a table with the trait "kitchen", and the other way round.
  { sure: true, matches: (mention, piece) => sameSet(wordsOf(mention), wordsOf(piece)) },
  {
    sure: true,
    matches: (mention, piece) =>
      mention.name !== undefined &&
      isNearSpelling(mention.name, piece.name) &&
      isSubset(mention.traits, piece.traits),
  },
  // Less is said than the books know: "table" of an "end table". It may be another table: asked.
  {
    sure: false,
    matches: (mention, piece) =>
      headOf(mention.name) === headOf(piece.name) && isSubset(wordsOf(mention), wordsOf(piece)),
  },
  // More is said of the piece than the books know: an office chair is not just any chair, asked.
  {
    sure: false,
    matches: (mention, piece) =>
      headOf(mention.name) === headOf(piece.name) && isSubset(wordsOf(piece), wordsOf(mention)),
  },
  // Another word for the same thing: a bookcase is a bookshelf to some.
  {
    sure: false,
    matches: (mention, piece) =>
      SAME_THINGS.some((names) => names.has(mention.name ?? "") && names.has(piece.name)) &&
      isSubset(mention.traits, piece.traits),
  },
  // A white chair is no green chair, and a footstool hardly a stool; yet it may be what is meant.
  {
    sure: false,
    matches: (mention, piece) =>
      mention.name !== undefined &&
      (mention.name === piece.name || (piece.name.length > 3 && mention.name.endsWith(piece.name))),
  },
];

function pick(mention: Mention, candidates: readonly Readonly<Piece>[], sure: boolean): Match {
  const groups = isSetName(mention.name ?? "")
    ? setGroups(mention, candidates)
    : countGroups(mention, candidates);
  if (groups === "too few") return { kind: "too few", pieces: numbersOf(candidates) };
  if (groups.length === 1 && sure) return { kind: "found", pieces: groups[0]! };
  return { kind: "several", groups, sure };
}

/** A set's name means all of it that is left; a smaller count than that is one of two readings. */
function setGroups(mention: Mention, candidates: readonly Readonly<Piece>[]): number[][] {
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

function countGroups(mention: Mention, candidates: readonly Readonly<Piece>[]): number[][] | "too few" {
  if (mention.plural) return [numbersOf(candidates)];
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

/** Pieces alike in name, traits, lot, state and list price stand for each other; one bought alone is like no other. */
function alikeClasses(candidates: readonly Readonly<Piece>[]): Readonly<Piece>[][] {
  const classes = new Map<string, Readonly<Piece>[]>();
  for (const piece of candidates) {
    const lot = piece.lot === null ? `alone ${piece.number}` : `lot ${piece.lot}`;
    const key = [piece.name, piece.traits.join(" "), lot, statusOf(piece), piece.listPrice].join("|");
    classes.set(key, [...(classes.get(key) ?? []), piece]);
  }
  return [...classes.values()];
}

function numbersOf(pieces: readonly Readonly<Piece>[]): number[] {
  return pieces.map((piece) => piece.number).sort((a, b) => a - b);
}

function wordsOf(thing: { name?: string; traits?: readonly string[] }): string[] {
  return [...(thing.traits ?? []), ...(thing.name?.split(" ") ?? [])];
}

function headOf(name: string | undefined): string | undefined {
  return name?.split(" ").at(-1);
}

function isSubset(small: readonly string[] | undefined, large: readonly string[]): boolean {
  return (small ?? []).every((word) => large.includes(word));
}

function sameSet(a: readonly string[], b: readonly string[]): boolean {
  return isSubset(a, b) && isSubset(b, a);
}
