import type { Fact } from "../books/facts.ts";
import { mainAmountOf } from "../decide/main-amount.ts";
import type { Cents } from "../money.ts";
import type { Tok } from "../notes/clause.ts";
import { MEASURES } from "../notes/clause.ts";
import { lexed } from "../notes/lexed.ts";
import { readPart } from "../notes/read.ts";
import type { Mention, Reading } from "../notes/reading.ts";
import { centsIn } from "../notes/slots/money.ts";
import { anyOf, isWholeNote } from "../notes/unclear.ts";
import { bears } from "../notes/verbs.ts";
import { REASON_JOINT, RIGHT_AS_IS, TURNS_REASON } from "../notes/words/misnoted.ts";
import { saysAny } from "../notes/words/words.ts";
import type { MendTo } from "./fields.ts";
import { factsMeant, isMeant, isOfWhat } from "./meant.ts";
import type { LookingBack } from "./misnoted-facts.ts";

/*
 * A correction and what is told beside it: why the note was wrong, how that came about. "sorry desk was 100, he talked me
 * down": the part that corrects something is decided alone, where the others tell no fact of their own.
 */

/** What a message corrects, and whether it can be nothing else. */
export interface Corrected {
  readings: readonly Reading[];
  isSure: boolean;
}

/** `isMarked`: said as a correction, whatever its parts are. */
type Telling = LookingBack & { isMarked: boolean };

/** More parts than these are a story. */
const PARTS_MAX = 6;

/**
 * What the parts of a message correct, where all the others only say why; null where that cannot be told. `correct` decides
 * a part alone.
 */
export function besideReasons(
  text: string,
  correct: (part: string) => Corrected | null,
  desk: Telling,
): Corrected | null {
  const ends = [...[...text.matchAll(REASON_JOINT)].map(({ index }) => index), text.length];
  if (ends.length < 2 || ends.length > PARTS_MAX) return null;
  const partOf = (from: number, to: number): string =>
    text.slice(from === 0 ? 0 : ends[from - 1], ends[to - 1]).replace(EDGES, "");
  const find = (isSureOnly: boolean): Corrected | null => {
    const made: Corrected[] = [];
    const reasons: string[] = [];
    for (let from = 0; from < ends.length; ) {
      let to = from === 0 ? ends.length - 1 : ends.length;
      let one: Corrected | null = null;
      while (to > from && !one) {
        const found = correct(partOf(from, to));
        if (found && (found.isSure || !isSureOnly)) one = found;
        else to -= 1;
      }
      if (one) made.push(one);
      else reasons.push(partOf(from, from + 1));
      from = one ? to : from + 1;
    }
    const readings = made.flatMap((one) => one.readings);
    const [first, ...others] = readings;
    if (!first || (!isSureOnly && others.length > 0)) return null;
    const changes = readings.flatMap((reading) => changesOf(reading, desk));
    if (!reasons.every((part) => isReason(part, changes, desk))) return null;
    const proven = isSureOnly ? [] : byDifference(first, reasons, desk);
    return proven.length === 1 ? { readings: proven, isSure: true } : { readings, isSure: isSureOnly };
  };
  return find(true) ?? find(false);
}

/** Of what a message may correct that of which a reason tells the difference: "couch was 135, the guy was five short". */
function byDifference(reading: Reading, reasons: readonly string[], desk: LookingBack): Reading[] {
  const told = new Set(reasons.flatMap((part) => lexed(part).map(inHundredths)));
  return anyOf(reading).filter((each) => {
    const changes = changesOf(each, desk);
    return changes.length === 1 && changes.every((change) => told.has(differenceOf(change)));
  });
}

/** The number of a token; -1 where it has none. */
const inHundredths = (token: Tok): number =>
  token.kind === "amount"
    ? (centsIn(token) ?? -1)
    : token.kind === "duration"
      ? (token.minutes ?? 0) * 100
      : token.kind === "miles"
        ? Number(token.miles) * 100
        : -1;

const EDGES = /^[\s,;!?.:–—-]+|[\s,;!.:–—-]+$/g;

/** A fact, and what becomes of it: its amount, miles or minutes, in hundredths; it goes. */
interface Change {
  fact: Fact;
  value?: number | undefined;
  isOut: boolean;
}

/** What a correction may change. */
function changesOf(reading: Reading, desk: LookingBack): Change[] {
  return anyOf(reading).flatMap((each): Change[] => {
    if (each.kind === "fix" || each.kind === "undo") {
      const newest = desk.past.newest();
      const isOut = each.kind === "undo";
      return newest ? [{ fact: newest, value: isOut ? undefined : hundredths(each), isOut }] : [];
    }
    if (each.kind !== "mend") return [];
    const value = hundredths(each.to ?? {});
    const isOut = each.removed === true;
    const facts = factsMeant(each.of ?? {}, { ...desk, confirmed: [] }, desk.past);
    return facts.map((fact) => ({ fact, value, isOut }));
  });
}

const hundredths = ({ amount, miles, minutes }: MendTo): number | undefined =>
  amount ?? (miles === undefined ? minutes && minutes * 100 : Number(miles) * 100);

/** Whether a part of a message tells no fact beside what is corrected: no other value, no other piece, nothing that turns it. */
function isReason(part: string, changes: readonly Change[], { books, today, isMarked }: Telling): boolean {
  if (part === "") return true;
  if (saysAny(part, TURNS_REASON)) return false;
  const known = new Set(changes.flatMap(valuesOf));
  const isOfIt = (mention: Mention): boolean =>
    changes.some(({ fact }) => fact.pieces.some((number) => isMeant(mention, books.pieces.get(number)!)));
  const tokens = lexed(part);
  const less = new Set(changes.map(differenceOf));
  // "it was the stain that was 12, the hinges 15": of another thing; "a ten was stuck to the envelope": why it was more.
  const isOther = ({ roles, text }: Tok): boolean =>
    roles.supply !== undefined && !changes.some(({ fact }) => isOfWhat(fact, text));
  const isOfMore = (token: Tok): boolean => token.kind === "amount" && !less.has(inHundredths(token));
  if (tokens.some(isOfMore) && tokens.some(isOther)) return false;
  for (const token of tokens) {
    if (token.each) return false;
    if (MEASURES.has(token.kind) && !known.has(inHundredths(token))) return false;
    if (token.kind === "piece" && !isOfIt(token.mention!) && !saysAny(part, RIGHT_AS_IS)) return false;
  }
  const isOut = changes.every(({ isOut }) => isOut);
  return readPart(part, today).every(
    (reading) =>
      // "bought bench for 15, it was on sale from 30": the first tells a fact of its own.
      (isMarked || !isWholeNote(reading) || bears(reading.kind, "corrects")) &&
      anyOf(reading).every((each) => {
        if (each.kind === "ask" || bears(each.kind, "corrects") || known.has(numberOf(each))) return true;
        // "they fetched it": a sale, whatever it came to.
        if (each.missing !== undefined && reading.kind === "unclear") return each.kind !== "sell";
        // "take the sale off, he backed out"
        return isOut && each.kind === "fallthrough" && each.refunded === undefined;
      }),
  );
}

/** What a fact came to, in hundredths. */
function wasOf({ amount, data }: Fact): number {
  const { miles, minutes } = data as { miles?: string; minutes?: number };
  return amount ?? (miles === undefined ? (minutes ?? 0) * 100 : Number(miles) * 100);
}

/** What somebody knocked off, or put on top. */
const differenceOf = ({ fact, value }: Change): number => Math.abs(wasOf(fact) - (value ?? wasOf(fact)));

const valuesOf = (change: Change): number[] => {
  const was = wasOf(change.fact);
  return [was, change.value ?? was, differenceOf(change)];
};

/** The one number of a note; -1 where it has none. */
function numberOf(reading: Reading): number {
  const { cut } = reading as { cut?: Cents };
  const main = mainAmountOf(reading);
  const said = cut ?? (main === null ? undefined : (reading as unknown as Record<string, unknown>)[main]);
  return typeof said === "number" ? said : -1;
}
