import { booksBefore } from "../../core/books/change.ts";
import type { Fact, NewFact } from "../../core/books/facts.ts";
import { postedBy } from "../../core/books/posted.ts";
import { type Choice, type Effect, NEVER_MIND, newMatter } from "../../core/decide/decision.ts";
import { piecesOf } from "../../core/decide/echo.ts";
import { mainAmountOf, withMainAmount } from "../../core/decide/main-amount.ts";
import { isDepositDoubted } from "../../core/decide/selling.ts";
import { asNew } from "../../core/mending/changed.ts";
import { notTheAmount } from "../../core/mending/newest.ts";
import { plainMiles } from "../../core/mileage.ts";
import { type Cents, show } from "../../core/money.ts";
import { readBareMoney } from "../../core/notes/bare.ts";
import { readMessage } from "../../core/notes/read.ts";
import type { ReadingOf } from "../../core/notes/reading.ts";
import type { Question } from "../../db/questions.ts";
import { echoOf, impossibleText, keepOutcome, saidOf } from "./outcome.ts";
import { openQuestion, openQuestions } from "./questions.ts";
import { mayChange, notYours } from "./rights.ts";
import type { Turn } from "./turn.ts";
import { factsOf, lastRoot } from "./undoing.ts";

/** What an answer that corrects an amount does: to a fact, or to what is still asked about. */
export type Fixing = Extract<Effect, { kind: "fix" | "change" }>;
/** A small number may be of the pieces or the fee instead: that changes another thing than the amount. */
type FixChoice = Choice & { effect: Fixing | Extract<Effect, { kind: "instead" }> };

/** How to correct the one amount of a message, recorded or still asked about; null where that is asked or refused. */
export function fixingOf(turn: Turn, reading: ReadingOf<"fix">, replyRoot?: number): Fixing | null {
  const root = replyRoot ?? lastRoot(turn);
  if (root !== null && !mayChange(turn, root)) {
    turn.spoken.push(notYours(turn, root));
    return null;
  }
  const choices = root === null ? [] : fixesOf(turn, root, reading, replyRoot === undefined);
  const [only, ...others] = choices;
  if (!only) {
    const { text, line } = reading;
    turn.refused.push({ text, line, why: "There is no amount of yours to change." });
    return null;
  }
  if (others.length === 0 && only.effect.kind !== "instead") return only.effect;
  const prompt = `Which amount is ${show(reading.amount!)}?`;
  const matter = newMatter(reading, turn.today);
  openQuestion(turn, matter, { prompt, wants: "choice", choices: [...choices, NEVER_MIND] }, turn.note);
  return null;
}

/** Everything in a message that the amount could be. */
function fixesOf(turn: Turn, root: number, reading: ReadingOf<"fix">, own: boolean): FixChoice[] {
  const { amount = 0, each } = reading;
  const facts = factsOf(turn, root, own).filter(isFixable);
  const questions = openQuestions(turn).filter(({ note }) => note === root);
  return [
    ...facts.flatMap((fact) =>
      factChoices(turn, fact, each ? amount * Math.max(1, fact.pieces.length) : amount, each),
    ),
    ...questions.flatMap((question) => questionChoices(question, amount)),
  ];
}

function isFixable(fact: Fact): boolean {
  return fact.amount !== undefined || fact.kind === "drive";
}

function factChoices(turn: Turn, fact: Fact, amount: Cents, isEach = false): FixChoice[] {
  const choice = (label: string, words: string[], cents: Cents): FixChoice => ({
    label,
    words,
    effect: { kind: "fix", fact: fact.id, amount: cents },
  });
  const all = choice(`${show(amount)} in all`, ["in all", "all", "whole"], amount);
  if (isEach) return [choice(saidOf(turn, fact), [], amount)];
  const count = eachCount(turn, fact);
  const other = count > 1 ? null : notTheAmount(fact, amount);
  if (other) return [other, all];
  const deposit = depositIn(turn, fact);
  if (count > 1) {
    const sum = amount * count;
    return [choice(`${show(amount)} each, ${show(sum)} in all`, ["each"], sum), all];
  }
  if (deposit > 0 && isAboutDeposit(turn, fact, { amount, deposit })) {
    const sum = amount + deposit;
    return [all, choice(`${show(amount)} today, ${show(sum)} in all`, ["rest", "the rest", "today"], sum)];
  }
  return [choice(saidOf(turn, fact), [], amount)];
}

/**
 * By the rule of a sale: a new price is the whole price, unless a sale at it would be asked about or the old one
 * was said as what came beside the deposit.
 */
function isAboutDeposit(
  turn: Turn,
  fact: Fact,
  { amount, deposit }: { amount: Cents; deposit: Cents },
): boolean {
  const said = wordsOf(turn, fact).flatMap((text) => [
    readBareMoney(text),
    ...readMessage(text, turn.today).map((reading) =>
      reading.kind === "sell" ? reading.price : reading.kind === "fix" ? reading.amount : null,
    ),
  ]);
  if (said.some((cents) => cents != null && cents + deposit === fact.amount)) return true;
  const folded = booksBefore(turn.ledger.books, fact);
  if (folded.kind === "impossible") return true;
  const { books } = folded;
  const desk = { books, today: fact.day, nextPiece: turn.ledger.nextPiece, confirmed: [] };
  return isDepositDoubted(amount, piecesOf(books, fact), desk);
}

/** Everything that was said of a fact: the note, its answer, an edit, a fix. */
function wordsOf(turn: Turn, fact: Fact): string[] {
  const first = turn.ledger.factById(fact.place) ?? fact;
  const ids = [...new Set([fact.root, first.note, fact.note])];
  return ids.flatMap((id) => turn.ledger.note(id)?.text ?? []);
}

/** How many pieces an "each" price was for; 1 where the price was for the whole. */
function eachCount(turn: Turn, fact: Fact): number {
  if (fact.pieces.length < 2) return 1;
  // The price may have come in the note, in its answer, in an edit or in a fix: all of their words are looked at.
  const texts = wordsOf(turn, fact);
  const together = texts.map((text) => `${texts[0]} ${text}`);
  const readings = [...texts, ...together].flatMap((text) => readMessage(text, turn.today));
  return readings.some((reading) => reading.each) ? fact.pieces.length : 1;
}

/** What of a sale's price was a deposit: the same words could then mean the whole price or the rest. */
function depositIn(turn: Turn, fact: Fact): Cents {
  if (fact.kind !== "sell" || (fact.data.deposit ?? "applied") !== "applied") return 0;
  return postedBy(turn.ledger.books, fact, "deposits held");
}

function questionChoices(question: Question, amount: Cents): FixChoice[] {
  const { reading } = question.matter;
  if (mainAmountOf(reading) === null) return [];
  const change = withMainAmount(reading, amount);
  return [{ label: reading.text, effect: { kind: "change", question: question.id, change } }];
}

/** Replaces one fact by the same with another amount, and says before and after. */
export function fixFact(turn: Turn, id: number, amount: Cents): void {
  const fact = turn.ledger.standingFact(id);
  if (!fact) {
    turn.spoken.push("That note is gone. Nothing changed.");
    return;
  }
  const [before] = echoOf(turn, fact);
  const facts = [{ fact: withAmount(fact, amount), replaces: fact.id }];
  const result = turn.ledger.amend({ note: turn.note, author: turn.person, voids: [fact.id], facts });
  if (result.kind === "impossible") {
    turn.spoken.push(`Nothing changed. ${impossibleText(turn, result)}`);
    return;
  }
  keepOutcome(turn, result.facts, "", [before ?? fact.kind]);
}

/** "Not for the armoire": the cost stays, and belongs to no piece. */
export function makeOverhead(turn: Turn, id: number): void {
  const fact = turn.ledger.standingFact(id);
  if (fact?.kind !== "spend" || fact.pieces.length === 0) {
    turn.spoken.push("That has changed since. Nothing was done.");
    return;
  }
  const facts = [{ fact: { ...asNew(fact), pieces: [] }, replaces: fact.id }];
  const result = turn.ledger.amend({ note: turn.note, author: turn.person, voids: [fact.id], facts });
  if (result.kind === "impossible") turn.spoken.push(`Nothing changed. ${impossibleText(turn, result)}`);
  else keepOutcome(turn, result.facts, "");
}

/** The same fact with its main amount changed: of a drive, its miles. */
function withAmount(fact: Fact, amount: Cents): NewFact {
  const same = asNew(fact);
  if (same.kind === "drive") return { ...same, data: { miles: plainMiles(amount) } };
  return { ...same, amount } as NewFact;
}
