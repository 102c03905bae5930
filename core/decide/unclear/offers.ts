import type { Books } from "../../books/books.ts";
import { listPriceOf } from "../../books/shares.ts";
import type { Day } from "../../calendar.ts";
import { type Cents, show } from "../../money.ts";
import { lexed } from "../../notes/lexed.ts";
import { comingDay } from "../../notes/quantities/days.ts";
import { readMessage } from "../../notes/read.ts";
import type { Reading, ReadingOf } from "../../notes/reading.ts";
import { anyOf, couldOf, isFor, tellsNoFact } from "../../notes/unclear.ts";
import {
  ACCEPTED,
  AGREES,
  AROUND_TAKEN,
  COMES_FOR_IT,
  COUNTERS,
  DECLINED,
  HOUR_SAID,
  MET_AT,
  NO,
  OFFERED,
  PROMISED_SUM,
  PUT_DOWN,
  SAYS_OFFER,
  SOLD_ALREADY,
  STILL_TO_PAY,
  THEY_TOOK,
  TOOK_MONEY,
} from "../../notes/words/offers.ts";
import { saysAny, wordsIn } from "../../notes/words/words.ts";
import { sumsSaid } from "../deals/sums-said.ts";
import {
  type Ask,
  type Choice,
  type Effect,
  type Looking,
  readingsOn,
  recordedPieces,
  type Said,
} from "../decision.ts";
import { byNumbers, mentionsOf } from "../pieces/mentioned.ts";
import { askWhich, type Deciding, type Standing, standingOf } from "./whole.ts";

/*
 * What somebody offered for a listed piece is no sale, and is not forgotten either: it waits as a question. "took it"
 * answers it, and until then the offered price stands beside the asking price where a sale tells none (offered.ts).
 */

/** A lower part of the asking price is hardly offered: "wants 20 off". */
const OFFERED_LEAST = 0.2;

/** Two prices at the most: what was offered, and what was asked in return. */
const PRICES_MAX = 2;

/**
 * The question whether an offer was taken, with the sale and the hold at its price on buttons; null where a message
 * tells of none for pieces that are listed, or that it was turned down.
 */
export function askOfOffer(
  reading: Reading,
  standing: readonly Standing[],
  desk: Looking,
  deciding: Deciding,
): Ask | null {
  if (!tellsOffer(reading) || isDeclined(reading)) return null;
  const sale = standing.flatMap(({ reading: each }) => (each.kind === "sell" ? [each] : []))[0];
  const pieces = sale ? recordedPieces(deciding.decide(sale, desk)) : spokenFor(desk);
  const asked = askingFor(pieces, desk.books);
  if (asked === null) return null;
  // "he said 90, i said 110, we met at 100": what stood at the end.
  const sums = sumsSaid(withoutPromise(reading.text).split(MET_AT).at(-1)!);
  const [down = 0, rest = 0] = sums;
  // "slid me 40 for the desk, says he'll bring the other 100": a deposit, and what is to come.
  if (sums.length === 2 && down < rest && down + rest === asked) {
    const { text, line } = reading;
    const held: Reading = { kind: "hold", deposit: down, pieces: byNumbers(pieces), text, line };
    return askWhich(`${show(down)} of ${show(asked)} put down?`, standingOf([held], desk, deciding));
  }
  const said = sums.filter((each) => each >= asked * OFFERED_LEAST && each <= asked);
  // "listed 325, wants it for 280": what it is listed at is no offer beside another price.
  const prices = said.length > 1 ? said.filter((each) => each < asked) : said;
  const price = prices.at(-1);
  if (price === undefined || prices.length > PRICES_MAX) return null;
  const { text, line } = reading;
  const name = sale?.buyer ?? offererIn(text);
  const buyer = name === undefined ? {} : { buyer: name };
  const at = { pieces: byNumbers(pieces), ...buyer, text, line };
  const day = comingIn(text, desk.today);
  const until = day === null ? {} : { until: day };
  const isAgreed = saysAny(text, THEY_TOOK) || saysAny(text, ACCEPTED);
  const could = (isAgreed ? [price] : prices.reverse()).flatMap((each): Reading[] => [
    { kind: "hold", agreed: each, ...until, ...at },
    // "i took it, cash": what else is told of the sale stays with it.
    { ...sale, kind: "sell", price: each, ...at },
  ]);
  const offered = could.flatMap((each) => standingOf([each], desk, deciding));
  if (offered.length === 0) return null;
  const choices = askWhich("", offered).choices.slice(0, -1);
  // The first hold is at the price that was named last.
  const accepts = choices.find(
    ({ effect }) => effect.kind === "instead" && effect.readings[0]?.kind === "hold",
  );
  if (accepts) accepts.words = [...(accepts.words ?? []), ...ACCEPTED];
  const prompt = isAgreed
    ? `Agreed at ${show(price)}. Sold, or still to be fetched?`
    : `An offer of ${show(price)} is no sale yet. Taken?`;
  return { prompt, wants: "choice", choices: [...choices, NOT_TAKEN], offer: { pieces: [...pieces], price } };
}

/** The reading of a message that tells of an offer for pieces that are listed; undefined: none does. */
export function offerIn(
  readings: readonly Reading[],
  desk: Looking,
  deciding: Deciding,
): Reading | undefined {
  return readings.find(
    (each) => tellsOffer(each) && askOfOffer(each, standingOf(couldOf(each), desk, deciding), desk, deciding),
  );
}

/** "she'll send 100 now" is no price beside one that was offered. */
function withoutPromise(text: string): string {
  const left = text.replace(PROMISED_SUM, "");
  return sumsSaid(left).length > 0 ? left : text;
}

/** "Dana says she'll take it for 240": who offers; undefined: nobody who is named at its beginning. */
function offererIn(text: string): string | undefined {
  const [first, second] = lexed(text);
  const isName = first?.kind === "word" && first.unknown === true && first.to - first.from === 1;
  return isName && SAYS_OFFER.has(second?.text ?? "") ? /^\W*([\w'’]+)/.exec(text)?.[1] : undefined;
}

/** "… picking up saturday": the day on which they come for it. */
function comingIn(text: string, today: Day): Day | null {
  const clauses = text.split(/[,;.!]+\s|\s(?:and|but)\s/).filter((clause) => saysAny(clause, COMES_FOR_IT));
  return clauses.map((clause) => dayIn(clause, today)).find((day) => day !== null) ?? null;
}

const NOT_TAKEN: Choice = { label: "Not taken", words: ["no", ...DECLINED], effect: { kind: "drop" } };

/** Whether a message tells of an offer that was turned down with it. */
export const isDeclined = (reading: Reading): boolean =>
  tellsOffer(reading) && (saysAny(reading.text, DECLINED) || NO.has(wordsIn(reading.text).at(-1) ?? ""));

/** "sold for 225, they wanted something off" is none: it is gone. */
export const tellsOffer = (reading: Reading): boolean =>
  reading.kind === "unclear" &&
  !saysAny(reading.text, SOLD_ALREADY) &&
  (isFor(reading, "offer") || saysAny(reading.text, OFFERED));

/**
 * What says that an offer was taken: "took it", "im fine with 260", "took it. hes coming thursday, put 40 down", or a
 * deposit of nobody else; the hold at the offered price, with what is told of it. Null where a text says no such thing.
 * Money alone is for what was spoken of last: it takes an offer only while that is `isLatest`.
 */
export function acceptedOffer(ask: Ask, { text, today, readings }: Said, isLatest: boolean): Effect | null {
  const { offer } = ask;
  const held = offer && readingsOn(ask).find((each) => each.kind === "hold");
  if (!offer || !held) return null;
  // "took the 15": the money, and not only the offer.
  const isMoney = isLatest && TOOK_MONEY.test(text) && sumsSaid(text).join() === `${offer.price}`;
  const sale = isMoney && readingsOn(ask).find((each) => each.kind === "sell" && each.price === offer.price);
  if (sale) return { kind: "instead", readings: [{ ...sale, text }] };
  const paid = isLatest ? paidIn(readings, offer.price) : null;
  if (paid) return { kind: "instead", readings: [{ ...paid, pieces: held.pieces ?? [], text }] };
  const deposit = isLatest ? depositIn(readings) : null;
  const { price, rest } = takenAt(text, offer.price) ?? { price: deposit && offer.price, rest: "" };
  if (price === null) return null;
  const told = deposit ?? (rest === "" ? [] : readMessage(rest, today));
  const [only, ...more] = told.filter((each) => !saysNothing(each) && !isAppointment(each));
  const until = dayIn(rest, today);
  const agreed: Reading = { ...held, agreed: price, ...(until ? { until } : {}), text };
  if (!only) return { kind: "instead", readings: [agreed] };
  // "50 deposit coming tonight": held without it.
  if (isToPay(only) && more.length === 0) return { kind: "instead", readings: [agreed] };
  const left = leftIn(rest, price);
  if (left !== null && told.every(({ kind }) => kind === "unclear"))
    return { kind: "instead", readings: [{ ...agreed, deposit: left } as Reading] };
  if (!isOfIt(only)) return null;
  const { missing: _, follows: __, ...fields } = only as ReadingOf<"hold"> | ReadingOf<"sell">;
  const at = { pieces: held.pieces ?? [], text };
  const whole: Reading =
    fields.kind === "hold"
      ? { ...held, ...fields, agreed: fields.agreed ?? price, ...at }
      : { ...fields, price, ...at };
  return { kind: "instead", readings: [whole, ...more] };
}

/** "he gave me 280 and took it", of an offer of just that; null: nobody paid it. */
function paidIn(readings: readonly Reading[], price: Cents): ReadingOf<"sell"> | null {
  const [first, ...others] = readings;
  const isLeft = first?.kind === "unclear" && first.left !== undefined;
  const sale = (isLeft ? [] : couldOf(first)).find((each) => each.kind === "sell" && each.price === price);
  const isOfNone = sale !== undefined && mentionsOf(sale).every(({ it }) => it === true);
  if (sale?.kind !== "sell" || !isOfNone || !others.every(saysNothing)) return null;
  const { missing: _, ...whole } = sale;
  return whole;
}

/** "he put 40 down": a deposit of nobody who is named, on nothing else. */
function depositIn(readings: readonly Reading[]): Reading[] | null {
  const [first, ...rest] = readings;
  const held = (first && !isToPay(first) ? anyOf(first) : []).find(
    (each) => each.kind === "hold" && each.deposit !== undefined && !each.buyer,
  );
  return held && isOfIt(held) ? [held, ...rest] : null;
}

/** "picks it up saturday, left 20": what was put down, in cents; null where another sum may be meant, or none. */
function leftIn(text: string, price: Cents): Cents | null {
  const [left, ...others] = sumsBesideHours(text);
  return left !== undefined && others.length === 0 && left < price && saysAny(text, PUT_DOWN) ? left : null;
}

/** Money that is promised is not put down yet: "50 deposit tonight". */
const isToPay = (reading: Reading): boolean =>
  tellsNoFact(reading) && saysAny(reading.text, PUT_DOWN) && saysAny(reading.text, STILL_TO_PAY);

/** "left 20, comes at 5": an hour is no sum. */
export const sumsBesideHours = (text: string): Cents[] => sumsSaid(text.replace(HOUR_SAID, ""));

/** The day on which they come. */
function dayIn(text: string, today: Day): Day | null {
  const said = lexed(text).find(({ kind }) => kind === "day")?.said;
  return said ? comingDay(said, today) : null;
}

/** "coming at 5" is nothing to record; "left 20, coming saturday" is. */
const isAppointment = (reading: Reading): boolean =>
  tellsNoFact(reading) && sumsBesideHours(reading.text).length === 0;

/** The price at which a text says that an offer was taken, and what is told behind that; null: it says no such thing. */
function takenAt(text: string, offered: Cents): { price: Cents; rest: string } | null {
  const [first = "", rest = ""] = cutBehind(text);
  if (isTaken(first, offered)) return { price: offered, rest };
  // "told him 85 and he's in"
  const [price, ...others] = sumsSaid(first);
  const isCounter = wordsIn(first).every((word) => COUNTERS.has(word) || /^\d/.test(word));
  if (price === undefined || others.length > 0 || !isCounter || rest === "") return null;
  const [second = "", behind = ""] = cutBehind(rest);
  return isTaken(second, price) ? { price, rest: behind } : null;
}

/** "took it", "ok, took it", "accepted the 280", "im fine with 280" of an offer of 280. */
function isTaken(said: string, price: Cents): boolean {
  const prices = sumsSaid(said);
  const all = wordsIn(said.replace(/['’]/g, "")).filter((word) => !/^\d/.test(word));
  const words = all.filter((word) => !AROUND_TAKEN.has(word));
  const isAtIt = prices.length > 0 && words.every((word) => AGREES.has(word));
  const isSaid = ACCEPTED.has(all.join(" ")) || ACCEPTED.has(words.join(" "));
  return prices.every((each) => each === price) && (isSaid || isAtIt);
}

/** A clause that the mark or "and" behind it cuts off. */
const cutBehind = (text: string): string[] => {
  const [first = "", ...rest] = text.split(/\s*[,;.!—–-]+\s+|\s+and\s+/);
  return [first, text.slice(first.length).replace(/^(?:[\s,;.!—–-]|and\s)+/, "")].slice(0, rest.length + 1);
};

/** What is told behind it is of the same deal: a hold, or a sale without a price of its own. */
function isOfIt(reading: Reading): boolean {
  const isOpen = mentionsOf(reading).every(({ it }) => it === true);
  return isOpen && (reading.kind === "hold" || (reading.kind === "sell" && reading.price === undefined));
}

const saysNothing = (reading: Reading): boolean => reading.kind === "unclear" && !/\d/.test(reading.text);

/** What pieces that are here are listed at together, in cents; null where they are not listed, or there is none. */
/** What was spoken of last, where that is for sale; else what the offer before was made for: "i countered with 180". */
function spokenFor({ talk, books }: Looking): readonly number[] {
  const spoken = talk?.replied ?? talk?.latest ?? [];
  return askingFor(spoken, books) === null ? (talk?.offers?.[0]?.pieces ?? spoken) : spoken;
}

function askingFor(numbers: readonly number[], books: Books): Cents | null {
  const pieces = numbers.map((number) => books.pieces.get(number)!);
  const isHere = pieces.every(({ gone, listed, hold }) => gone === null && listed !== null && hold === null);
  return pieces.length > 0 && isHere ? listPriceOf(pieces) : null;
}
