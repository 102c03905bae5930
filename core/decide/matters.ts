import type { Books } from "../books/books.ts";
import type { Mention, Reading, ReadingOf } from "../notes/reading.ts";
import { isFor } from "../notes/unclear.ts";
import { bears } from "../notes/verbs.ts";
import { type Matter, newMatter } from "./decision.ts";
import { withNewLoan } from "./names/loans.ts";
import { pricedFor } from "./pieces/each.ts";
import { here } from "./pieces/fits.ts";
import { matchMention } from "./pieces/match.ts";
import { byNumbers, mentionsOf } from "./pieces/mentioned.ts";

/* A message as matters, each to be decided once the one before it is settled. */

/**
 * The matters of a message in order: a reading that follows another ("listed it") waits in the one before it.
 */
export function mattersOf(readings: readonly Reading[], said: string, books?: Books): Matter[] {
  const matters: Matter[] = [];
  const lists = listsOf(books ? withNewLoan(readings, books) : readings);
  const errands = books && lists.length > 1 ? errandsIn(lists, books) : NO_ERRANDS;
  for (const reading of lists) {
    if ([...errands.values()].includes(reading)) continue;
    const errand = errands.get(reading);
    if (errand) {
      matters.push({ ...newMatter(reading, said), waiting: [{ ...errand, follows: true } as Reading] });
      continue;
    }
    const last = matters.findLast((matter) => hasPieces(matter.reading));
    const before = matters.at(-1);
    if (before && isSameCost(reading, before.reading)) before.waiting.push(reading);
    else if (last && (reading.follows || isWorkOn(reading, last.reading))) last.waiting.push(reading);
    else matters.push(newMatter(reading, said));
  }
  return matters;
}

const NO_ERRANDS: ReadonlyMap<Reading, Reading> = new Map();

/** "18 miles for the hutch; hutch bought 45": what was done for a piece that only a later clause buys waits for it. */
function errandsIn(readings: readonly Reading[], books: Books): ReadonlyMap<Reading, Reading> {
  const errands = new Map<Reading, Reading>();
  for (let at = 0; at < readings.length - 1; at += 1) {
    const reading = readings[at]!;
    const [mention, ...others] = reading.missing ? [] : mentionsOf(reading);
    if (!mention?.name || others.length > 0 || !bears(reading.kind, "piece or none")) continue;
    const bought = readings.slice(at + 1).find((later) => !errands.has(later) && isBoughtBy(later, mention));
    if (bought && !isOnBooks(mention, books)) errands.set(bought, reading);
  }
  return errands;
}

/** A purchase of it, or what may be one: "the hutch itself was 45". */
function isBoughtBy(later: Reading, { name = "", count }: Mention): boolean {
  const bought =
    later.kind === "unclear" && isVerbless(later) ? later.could!.find(({ kind }) => kind === "buy") : later;
  if (!bought || !(bought.kind === "buy" || (bought.kind === "mend" && bought.to?.amount !== undefined)))
    return false;
  const [piece, ...others] = bought.kind === "mend" ? (bought.of?.pieces ?? []) : mentionsOf(bought);
  const isNamed =
    piece?.name &&
    (name === piece.name || name.endsWith(` ${piece.name}`) || piece.name.endsWith(` ${name}`));
  return Boolean(isNamed) && others.length === 0 && (piece!.count ?? 1) === (count ?? 1);
}

const isOnBooks = (mention: Mention, books: Books): boolean => {
  const { kind } = matchMention(mention, books, here, new Set());
  return kind !== "none" && kind !== "unfit";
};

/** "rummage sale: chair 15, 2 lamps 3 each": what has no verb in one line is asked about once, and not piece by piece. */
function listsOf(readings: readonly Reading[]): Reading[] {
  const lists: Reading[] = [];
  for (const reading of readings) {
    const first = lists.at(-1);
    if (first && isVerbless(first) && isVerbless(reading) && first.line === reading.line)
      lists[lists.length - 1] = { ...first, rest: [...(first.rest ?? []), reading] };
    else lists.push(reading);
  }
  return lists;
}

const isVerbless = (reading: Reading): reading is ReadingOf<"unclear"> =>
  reading.kind === "unclear" &&
  isFor(reading, "noVerb") &&
  reading.could !== undefined &&
  // "desk to 100 and lamp to 24": the books tell of each.
  !reading.byBooks &&
  reading.rest?.length !== 0;

/** "primer for it 14, and brass knobs, 11": for what is still to be asked of the first. */
const isSameCost = (reading: Reading, before: Reading): boolean =>
  reading.kind === "spend" &&
  reading.category === "materials" &&
  before.kind === "spend" &&
  before.follows === true &&
  !reading.pieces &&
  !before.pieces &&
  reading.line === before.line;

/** "started the desk", and on the next line "1.5h sanding". */
function isWorkOn({ kind, missing, line }: Reading, before: Reading): boolean {
  return kind === "work" && missing?.join() === "pieces" && line === before.line + 1;
}

/** What waited for "it", now that the pieces of the clause before are known (by number, in order). */
export function followUp(matter: Matter, pieces: readonly number[]): Matter[] {
  const [next, ...waiting] = matter.waiting;
  if (!next) return [];
  // The clause before was recorded without a piece: this one has only its own words to go by.
  if (pieces.length === 0) return [{ reading: next, said: matter.said, confirmed: [], waiting }];
  const mentions = byNumbers(pieces);
  const missing = next.missing?.filter((field) => field !== "pieces") ?? [];
  // "stools are done, listed them 40 each": counted now that it is known which they are.
  const isUncounted = mentionsOf(next).every(
    ({ plural, it, count }) => plural === true || (it === true && count === undefined),
  );
  const priced = isUncounted ? pricedFor({ ...next, pieces: [] } as Reading, mentions) : {};
  const reading = { ...next, pieces: mentions, ...priced, missing } as Reading;
  return [{ reading, said: matter.said, confirmed: [], waiting }];
}

function hasPieces(reading: Reading): boolean {
  return "pieces" in reading || reading.missing?.includes("pieces") === true;
}
