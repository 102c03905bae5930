import type { Books } from "../books/books.ts";
import { booksBefore } from "../books/change.ts";
import type { Fact, NewFact } from "../books/facts.ts";
import { postedBy } from "../books/posted.ts";
import { isDepositDoubted } from "../decide/deals/selling.ts";
import type { Choice, Desk, Effect } from "../decide/decision.ts";
import { piecesOf } from "../decide/echo.ts";
import { mainAmountOf, withMainAmount } from "../decide/main-amount.ts";
import { plainMiles } from "../mileage.ts";
import { type Cents, show } from "../money.ts";
import { readBareMoney } from "../notes/bare.ts";
import { lexed } from "../notes/lexed.ts";
import { readMessage } from "../notes/read.ts";
import type { Reading, ReadingOf } from "../notes/reading.ts";
import { centsIn } from "../notes/slots/money.ts";
import { asNew } from "./changed.ts";
import { isOfWhat, newestFirst } from "./meant.ts";
import { notTheAmount } from "./newest.ts";
import type { Past } from "./past.ts";

/* A corrected amount of one message ("no, 35"): which of its amounts it may be, and what each then becomes. */

/** What an answer that corrects an amount does: to a fact, or to what is still asked about. */
export type Fixing = Extract<Effect, { kind: "fix" | "change" }>;
/** A small number may be of the pieces or the fee instead: that changes another thing than the amount. */
export type FixChoice = Choice & { effect: Fixing | Extract<Effect, { kind: "instead" }> };

/** The message whose amount is corrected. */
export interface Corrected {
  /** What stands of it. */
  facts: readonly Fact[];
  /** What is still asked about it. */
  asked: readonly { question: number; reading: Reading }[];
  /** Everything that was said of a fact: the note, its answer, an edit, a fix. */
  wordsOf(fact: Fact): string[];
  /** The first line that is said of a fact. */
  echo(fact: Fact): string;
}

type Looking = Pick<Desk, "books" | "today" | "nextPiece">;

/** Everything in a message that the amount could be. */
export function amountsMeant(
  { amount = 0, each }: ReadingOf<"fix">,
  message: Corrected,
  desk: Looking,
): FixChoice[] {
  const facts = message.facts.filter(
    (fact) => fact.amount !== undefined || fact.kind === "drive" || agreedOf(fact) !== undefined,
  );
  return [
    ...facts.flatMap((fact) => {
      if (!each) return choicesOf(fact, amount, message, desk);
      const count = fact.kind === "spend" ? unitsOf(fact, message.wordsOf(fact)) : fact.pieces.length;
      return count === null ? [] : [choice(message.echo(fact), fact, amount * Math.max(1, count))];
    }),
    ...message.asked.flatMap(({ question, reading }) => changeOf(question, reading, amount)),
  ];
}

const choice = (label: string, { id }: Fact, amount: Cents, words: string[] = []): FixChoice => ({
  label,
  words,
  effect: { kind: "fix", fact: id, amount },
});

function choicesOf(fact: Fact, amount: Cents, message: Corrected, desk: Looking): FixChoice[] {
  const all = choice(`${show(amount)} in all`, fact, amount, ["in all", "all", "whole"]);
  const agreed = depositOrAgreed(fact, amount);
  if (agreed) return agreed;
  const texts = message.wordsOf(fact);
  const count = eachCount(fact, texts, desk);
  const other = count > 1 ? null : notTheAmount(fact, amount);
  if (other) return [other, all];
  if (count > 1) {
    const sum = amount * count;
    return [choice(`${show(amount)} each, ${show(sum)} in all`, fact, sum, ["each"]), all];
  }
  const deposit = depositIn(fact, desk.books);
  if (deposit > 0 && isAboutDeposit(fact, { amount, deposit }, texts, desk)) {
    const sum = amount + deposit;
    const label = `${show(amount)} today, ${show(sum)} in all`;
    return [all, choice(label, fact, sum, ["rest", "the rest", "today"])];
  }
  return [choice(message.echo(fact), fact, amount)];
}

/** Of a hold that tells both: what was put down, or the price agreed on, the nearer one first; null of any other. */
function depositOrAgreed(fact: Fact, amount: Cents): FixChoice[] | null {
  const was = agreedOf(fact);
  if (was === undefined) return null;
  const label = `${show(amount)} in all, as agreed`;
  const mend: Reading = {
    kind: "mend",
    of: { fact: fact.id },
    to: { agreed: amount },
    text: label,
    line: 0,
  };
  const price: FixChoice = { label, words: AGREED_WORDS, effect: { kind: "instead", readings: [mend] } };
  const deposit = choice(`Deposit ${show(amount)}`, fact, amount, ["deposit", "the deposit"]);
  if (fact.amount === undefined) return [price];
  return amount * 2 > fact.amount + was ? [price, deposit] : [deposit, price];
}

const agreedOf = (fact: Fact): Cents | undefined => (fact.kind === "hold" ? fact.data.agreed : undefined);

const AGREED_WORDS = ["agreed", "as agreed", "the price", "agreed price", "in all"];

/**
 * By the rule of a sale: a new price is the whole price, unless a sale at it would be asked about or the old one
 * was said as what came beside the deposit.
 */
function isAboutDeposit(
  fact: Fact,
  { amount, deposit }: { amount: Cents; deposit: Cents },
  texts: readonly string[],
  { books, today, nextPiece }: Looking,
): boolean {
  const said = texts.flatMap((text) => [
    readBareMoney(text),
    ...readMessage(text, today).map((reading) =>
      reading.kind === "sell" ? reading.price : reading.kind === "fix" ? reading.amount : null,
    ),
  ]);
  if (said.some((cents) => cents != null && cents + deposit === fact.amount)) return true;
  const folded = booksBefore(books, fact);
  if (folded.kind === "impossible") return true;
  const desk = { books: folded.books, today: fact.day, nextPiece, confirmed: [] };
  return isDepositDoubted(amount, piecesOf(folded.books, fact), desk);
}

/** How many of a supply were bought at so much each, by what was said; null where nothing was. */
export function unitsOf({ amount = 0 }: Fact, texts: readonly string[]): number | null {
  const unit = texts
    .flatMap((text) => lexed(text))
    .filter(({ kind, each }) => kind === "amount" && each === true)
    .map(centsIn)
    .find((cents) => cents !== null && cents > 0 && cents < amount && amount % cents === 0);
  return unit ? amount / unit : null;
}

/** "knobs were 3.50 each" of six noted at 4 each: what they cost in all. */
export function ofEach(text: string, { past, books }: { past: Past; books: Books }): Reading | null {
  const tokens = lexed(text);
  const [unit, ...others] = tokens.filter(({ kind }) => kind === "amount");
  const cents = unit?.each && others.length === 0 ? centsIn(unit) : null;
  if (!cents) return null;
  const what = tokens.find(({ roles }) => roles.supply !== undefined)?.text;
  const before = past.before();
  const fact =
    what === undefined
      ? before
      : newestFirst(books, (each) => each.kind === "spend" && isOfWhat(each, what))[0];
  const count = fact?.kind === "spend" ? unitsOf(fact, past.wordsOf(fact)) : null;
  if (!fact || !count) return null;
  return { kind: "mend", of: { fact: fact.id }, to: { amount: cents * count }, text, line: 0 };
}

/** How many pieces an "each" price was for; 1 where the price was for the whole. */
function eachCount(fact: Fact, texts: readonly string[], { today }: Looking): number {
  if (fact.pieces.length < 2) return 1;
  // The price may have come in the note, in its answer, in an edit or in a fix: all of their words are looked at.
  const together = texts.map((text) => `${texts[0]} ${text}`);
  const readings = [...texts, ...together].flatMap((text) => readMessage(text, today));
  return readings.some((reading) => reading.each) ? fact.pieces.length : 1;
}

/** What of a sale's price was a deposit: the same words could then mean the whole price or the rest. */
function depositIn(fact: Fact, books: Books): Cents {
  if (fact.kind !== "sell" || (fact.data.deposit ?? "applied") !== "applied") return 0;
  return postedBy(books, fact, "deposits held");
}

function changeOf(question: number, reading: Reading, amount: Cents): FixChoice[] {
  if (mainAmountOf(reading) === null) return [];
  const change = withMainAmount(reading, amount);
  return [{ label: reading.text, effect: { kind: "change", question, change } }];
}

/** The same fact with its main amount changed: of a drive, its miles. */
export function withAmount(fact: Fact, amount: Cents): NewFact {
  const same = asNew(fact);
  if (same.kind === "drive") return { ...same, data: { miles: plainMiles(amount) } };
  return { ...same, amount } as NewFact;
}
