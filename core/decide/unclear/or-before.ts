import { type Fact, factsOfDay } from "../../books/facts.ts";
import { canMend } from "../../mending/fields.ts";
import { factsMeant } from "../../mending/meant.ts";
import type { Past } from "../../mending/past.ts";
import type { Mention, Reading, ReadingOf } from "../../notes/reading.ts";
import { couldOf, eitherOf, isFor } from "../../notes/unclear.ts";
import { ANOTHER_ONE, SAME } from "../../notes/words/again.ts";
import { JOINS_BOTH, SUMS_UP } from "../../notes/words/links.ts";
import {
  ACTUALLY,
  BEFORE_POINTING,
  COST_TOLD,
  FEE_ELSEWHERE,
  PAID_FOR,
  RAN_TO,
  SAID_ANEW,
  SALE_FEE,
} from "../../notes/words/mending.ts";
import { ONE_MORE_SAID, POINTS_OUT, WITH_PARTS } from "../../notes/words/pieces.ts";
import { FETCHED } from "../../notes/words/verbs.ts";
import { saysAny, wordsIn } from "../../notes/words/words.ts";
import { type Fetched, fetchedOf } from "../deals/fetched.ts";
import type { Looking } from "../decision.ts";
import { UNNAMED_LOAN } from "../names/loans.ts";
import { held, here } from "../pieces/fits.ts";
import { foundBy, matchMention } from "../pieces/match.ts";
import { mentionsOf } from "../pieces/mentioned.ts";

/*
 * Notes that read as something new and, by the books, are rather about something noted before: asked, with both.
 */

const WHYS: Readonly<Partial<Record<Reading["kind"], "newOrOld" | "loanOrCost">>> = {
  mend: "newOrOld",
  pay: "loanOrCost",
};

/** The note with the other thing that the books make of it; null where they make nothing else of it. */
export function orBefore(reading: Reading, desk: Looking): Reading | null {
  if (reading.asNew) return null;
  const told = feeOfSale(reading, desk) ?? toldBefore(reading, desk);
  if (told) return told;
  const several = withItsPart(reading, desk) ?? tooLittleForBoth(reading, desk);
  if (several) {
    return eitherOf(several, reading, "priceOfBoth");
  }
  const before =
    paymentOf(reading, desk) ??
    costBefore(reading, desk) ??
    priceBefore(reading, desk) ??
    measureBefore(reading, desk) ??
    sameBefore(reading, desk) ??
    saleOfHeld(reading, desk);
  if (!before) return null;
  const asNew: Reading = { ...reading, asNew: true };
  if (before === reading) return eitherOf([asNew], reading, "toldAgain");
  return eitherOf([before, asNew], reading, WHYS[before.kind] ?? "anotherPerson");
}

/** Of a price, no fee is more. */
const FEE_MOST = 0.3;

/** "fee 4.35", "card, fee 4.35" right behind a sale without a fee: what that cost. */
function feeOfSale(reading: Reading, { past }: Looking): Reading | null {
  if (reading.kind !== "spend" || reading.category !== "fees" || reading.pieces || reading.date) return null;
  const { what = "", amount: fee = 0, method, text, line } = reading;
  // "had a 5 fee at the flea market gate" is of no sale.
  const isAlone = SALE_FEE.test(what) && !FEE_ELSEWHERE.test(text);
  const sale = isAlone ? past?.before() : undefined;
  if (sale?.kind !== "sell" || sale.data.fee || sale.root !== past!.touched()) return null;
  if (fee > (sale.amount ?? 0) * FEE_MOST) return null;
  const to = { fee, ...(method ? { method } : {}) };
  return { kind: "mend", of: { fact: sale.id }, to, text, line };
}

/** "oh the paint was 16": a thing that both know. */
function pointsOut(text: string): boolean {
  const words = wordsIn(text);
  const first = words.find((word) => !BEFORE_POINTING.has(word));
  return POINTS_OUT.has(first ?? "") && words.at(-1) !== first;
}

/** "oh the paint was 16", "knobs were 18 total" of the one paint that was noted today: another price for it. */
function toldBefore(reading: Reading, { past, ...desk }: Looking): Reading | null {
  const mend = isFor(reading, "newOrOld")
    ? couldOf(reading).find(({ kind }) => kind === "mend")
    : costBefore(reading, { ...desk, ...(past ? { past } : {}) });
  const isOfIt = pointsOut(reading.text) || saysAny(reading.text, SUMS_UP);
  if (!past || mend?.kind !== "mend") return null;
  const [fact, ...others] = factsMeant(mend.of ?? {}, { ...desk, confirmed: [] }, past);
  // "stripper was 19.50" right behind "stripper 18"
  const isJust =
    reading.kind === "spend" && fact?.root === past.touched() && !saysAny(reading.text, ANOTHER_ONE);
  if (!fact || !(isOfIt || isJust)) return null;
  return others.length === 0 && past.isToday(fact) && canMend(fact.kind, mend.to ?? {}) ? mend : null;
}

/** "desk paint was 13.50" where paint for the desk is on the books: another price for it, or more of it? */
function costBefore(reading: Reading, { past, ...desk }: Looking): Reading | null {
  if (reading.kind !== "spend" || !past || !saysAny(reading.text, COST_TOLD) || reading.amount === undefined)
    return null;
  const { what, pieces, amount, text, line } = reading;
  const of = { kind: "spend" as const, ...(what ? { what } : {}), ...(pieces ? { pieces } : {}) };
  if (!what || factsMeant(of, { ...desk, confirmed: [] }, past).length === 0) return null;
  return { kind: "mend", of, to: { amount }, text, line };
}

/** "the desk ran me 35" where a desk is held at another price: what it rather cost, or another desk? */
function priceBefore(reading: Reading, { past, ...desk }: Looking): Reading | null {
  if (reading.kind !== "buy" || !past || !(saysAny(reading.text, RAN_TO) || isFreeNow(reading))) return null;
  const { pieces, price: amount, source, text, line, missing } = reading;
  if (pieces?.length !== 1 || amount === undefined || source !== undefined || missing?.length) return null;
  const of = { kind: "buy" as const, pieces };
  if (factsMeant(of, { ...desk, confirmed: [] }, past).length === 0) return null;
  return { kind: "mend", of, to: { amount }, text, line };
}

/** "didn't pay anything for the lamp, it was free": of a lamp that both know. */
const isFreeNow = ({ price, pieces: [only] = [], text }: ReadingOf<"buy">): boolean =>
  price === 0 && only?.name !== undefined && text.toLowerCase().includes(`the ${only.name}`);

/**
 * "spent 12 on paint" right behind that cost, "paid 15 for the bench" of one bought today for just that: the note itself, as
 * it may be told once more.
 */
function sameBefore(reading: Reading, { past, ...desk }: Looking): Reading | null {
  const isPurchase = reading.kind === "buy" && saysAny(reading.text, PAID_FOR);
  if (!past || past.replied !== null || !(isPurchase || reading.kind === "spend")) return null;
  if (saysAny(reading.text, ANOTHER_ONE) || saysAny(reading.text, SAME)) return null;
  const { kind, pieces } = reading;
  const what = reading.kind === "spend" ? reading.what : undefined;
  const amount = reading.kind === "spend" ? reading.amount : reading.price;
  // "same again" names nothing of it.
  const [thing = ""] = what?.split(" ") ?? [];
  if (reading.kind === "spend" && !reading.text.toLowerCase().includes(thing || " ")) return null;
  const of = { kind, ...(what ? { what } : {}), ...(pieces ? { pieces } : {}) };
  const day = reading.date ?? desk.today;
  // Nearly every cost is told once: the books are gone through for its thing only where one came to as much that day.
  if (!factsOfDay(desk.books.facts, day).some((fact) => fact.amount === amount)) return null;
  const touched = past.touched();
  const isSame = (fact: Fact): boolean =>
    fact.amount === amount && (isPurchase || fact.root === touched) && past.isToday(fact);
  return factsMeant(of, { ...desk, confirmed: [] }, past).some((fact) => fact.day === day && isSame(fact))
    ? reading
    : null;
}

/** "van 150" where a loan of that name is on the books: sent to it, or spent on the van? */
function paymentOf(reading: Reading, { books }: Looking): Reading | null {
  if (reading.kind !== "spend" || reading.what === undefined || reading.pieces) return null;
  const { what: loan, amount, date, text, line, missing } = reading;
  if (loan === UNNAMED_LOAN || !books.loans.has(loan) || amount === undefined || missing?.length) return null;
  return { kind: "pay", amount, loan, text, line, ...(date ? { date } : {}) };
}

const WITH_PART = new RegExp(
  `\\bw(?:ith|/)? (?:the |its |a |an |matching )*(${[...WITH_PARTS].join("|")})\\b`,
  "i",
);

/** "sold dresser with mirror 210" where a mirror is here as a piece of its own: with that one, or with a part of the dresser? */
function withItsPart(reading: Reading, { books }: Looking): Reading[] | null {
  if (!IS_OF_PART.has(reading.kind)) return null;
  const name = WITH_PART.exec(reading.text)?.[1]?.toLowerCase();
  const mentions = mentionsOf(reading);
  if (name === undefined || mentions.length === 0 || mentions.some((mention) => mention.name === name))
    return null;
  const part = { name, count: 1 };
  const match = matchMention(part, books, here, new Set());
  if (match.kind === "none" || match.kind === "unfit") return null;
  const both = { ...reading, pieces: [...mentions, part], asNew: true } as Reading;
  return [both, { ...reading, asNew: true }];
}

const IS_OF_PART: ReadonlySet<Reading["kind"]> = new Set(["sell", "list", "hold", "reprice"]);

/** Of what both are listed at. */
const LITTLE = 0.6;

/** "sold the table, bookshelf 60" of a table listed at 210, "desk listed, table 210" of one that is: hardly both for that. */
function tooLittleForBoth(reading: Reading, { books }: Looking): Reading[] | null {
  const { kind, price, pieces = [] } = reading as Reading & { price?: number; pieces?: Mention[] };
  if (
    !(kind === "sell" || kind === "list") ||
    price === undefined ||
    pieces.length !== 2 ||
    !namesByComma(reading.text)
  )
    return null;
  const numbers = foundBy(pieces, books, here) ?? [];
  const asked = numbers.map((number) => books.pieces.get(number)!.listPrice ?? 0);
  const isListed = kind === "list" && (asked[0]! > 0 || asked[1]! > 0);
  if (numbers.length !== 2 || !(isListed || price < LITTLE * (asked[0]! + asked[1]!))) return null;
  const last = { ...reading, pieces: [pieces[1]!], asNew: true } as Reading;
  return [last, { ...reading, asNew: true }];
}

/** Two names with nothing but a comma between, and the price behind. */
const namesByComma = (text: string): boolean =>
  /^[^\d]*,/.test(text) && !/[&+]/.test(text) && !saysAny(text, JOINS_BOTH);

/**
 * "18 miles" in reply to a drive, "2h" to a work: what it rather was, or another one? "12 each way" right behind a drive of
 * 24 miles may be that drive.
 */
function measureBefore(reading: Reading, { past }: Looking): Reading | null {
  if (!past || saysAny(reading.text, SAID_ANEW)) return null;
  const { kind, text, line } = reading;
  if (kind !== "drive" && kind !== "work") return null;
  const fact = past.newest((each) => each.kind === kind);
  if (past.replied === null) return fact && isMeasureAgain(reading, fact, past) ? reading : null;
  if (!fact) return null;
  const to = kind === "drive" ? { miles: reading.miles } : { minutes: reading.minutes };
  return { kind: "mend", of: { fact: fact.id }, to, text, line } as Reading;
}

/** Of nothing but the measure that was noted just now. */
function isMeasureAgain(reading: Reading, { kind, data, root }: Fact, past: Past): boolean {
  if (past.touched() !== root || !/^(?:a |so |thats |that's |about )*\d/i.test(reading.text)) return false;
  if (reading.kind === "drive" && kind === "drive")
    return reading.miles === data.miles && mentionsOf(reading).length === 0;
  return (
    reading.kind === "work" && kind === "work" && reading.minutes === data.minutes && saysNoPiece(reading)
  );
}

const saysNoPiece = (reading: Reading): boolean => mentionsOf(reading).every(({ it }) => it === true);

/** "bought the buffet wednesday actually": another day of the note that stands; null where there is no one such note. */
export function dayOfBefore(reading: Reading, { past, ...desk }: Looking): Reading | null {
  const { kind, date, missing = [], text, line } = reading;
  const pieces = mentionsOf(reading);
  const isOpen = missing.includes("price") && pieces.length > 0;
  if (!past || !date || !isOpen || !saysAny(text, ACTUALLY)) return null;
  const of = { kind, pieces };
  const [fact, ...others] = factsMeant(of, { ...desk, confirmed: [] }, past);
  return fact && others.length === 0
    ? { kind: "mend", of: { fact: fact.id }, to: { date }, text, line }
    : null;
}

/** "picked up both lamps, 25" of pieces that are on hold: they were fetched from us, or others bought. */
function saleOfHeld(reading: Reading, desk: Looking): Reading | null {
  const sale = fetchedHeld(reading, desk);
  return sale && (fetchedOf(sale, desk)?.reading ?? sale);
}

/** "picked up the desk, 110 cash" of just what is left to pay for the desk on hold: its sale, and no other desk. */
export function restOfHeld(reading: Reading, desk: Looking): Fetched | null {
  if (reading.asNew || saysAny(reading.text, ONE_MORE_SAID)) return null;
  const sale = fetchedHeld(reading, desk);
  const fetched = sale?.kind === "sell" && sale.price !== undefined ? fetchedOf(sale, desk) : null;
  return fetched?.confirmed.includes("whole price") ? fetched : null;
}

/** A purchase that was rather fetched from us, as a sale: all that it names is on hold. */
function fetchedHeld(reading: Reading, desk: Looking): Reading | null {
  if (reading.kind !== "buy" || reading.source !== undefined || !saysAny(reading.text, FETCHED)) return null;
  const mentions = mentionsOf(reading);
  const isHeld = mentions.every(
    (mention) => matchMention(mention, desk.books, held, new Set()).kind === "found",
  );
  if (mentions.length === 0 || !isHeld) return null;
  return {
    ...reading,
    kind: "sell",
    missing: reading.missing?.filter((field) => field !== "count") ?? [],
  } as Reading;
}
