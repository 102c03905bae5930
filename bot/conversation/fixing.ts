import type { Fact, NewFact } from "../../core/books/facts.ts";
import { type Choice, type Effect, NEVER_MIND, newMatter } from "../../core/decide/decision.ts";
import { mainAmountOf, withMainAmount } from "../../core/decide/main-amount.ts";
import { amountText, type Cents, show } from "../../core/money.ts";
import { readMessage } from "../../core/notes/read.ts";
import type { ReadingOf } from "../../core/notes/reading.ts";
import type { Question } from "../../db/questions.ts";
import { applyEffect } from "./answering.ts";
import { echoOf, impossibleText, keepOutcome } from "./outcome.ts";
import { openQuestion, openQuestions } from "./questions.ts";
import type { Turn } from "./turn.ts";
import { factsOf, lastRoot } from "./undoing.ts";

/** Corrects the one amount of a message, recorded or still asked about; asks which where there are several. */
export function fixNote(turn: Turn, reading: ReadingOf<"fix">, replyRoot?: number): void {
  const root = replyRoot ?? lastRoot(turn);
  const choices = root === null ? [] : fixesOf(turn, root, reading.amount!, replyRoot === undefined);
  const [only] = choices;
  if (!only) {
    const { text, line } = reading;
    turn.refused.push({ text, line, why: "I see no amount of yours to correct." });
  } else if (choices.length === 1) applyFix(turn, only.effect);
  else {
    const prompt = `Which amount is ${show(reading.amount!)}?`;
    const matter = newMatter(reading, turn.today);
    openQuestion(turn, matter, { prompt, wants: "choice", choices: [...choices, NEVER_MIND] }, turn.note);
  }
}

function applyFix(turn: Turn, effect: Effect): void {
  if (effect.kind === "fix") fixFact(turn, effect.fact, effect.amount);
  else if (effect.kind === "change") changeQuestion(turn, effect);
}

/** An open question goes on with other words: as if the note had said them. */
export function changeQuestion(
  turn: Turn,
  { question: id, change }: Extract<Effect, { kind: "change" }>,
): void {
  const question = openQuestions(turn).find((open) => open.id === id);
  if (!question) {
    turn.spoken.push("That was answered already. Nothing changed.");
    return;
  }
  const { reading } = question.matter;
  applyEffect(turn, question, { kind: "settle", change });
  const amount = Object.entries(change).find(([field]) => field === mainAmountOf(reading))?.[1];
  if (turn.recorded.length === 0 && typeof amount === "number")
    turn.spoken.push(`"${reading.text}" now with ${show(amount)}.`);
}

/** Everything in a message that the amount could be. */
function fixesOf(turn: Turn, root: number, amount: Cents, own: boolean): Choice[] {
  const facts = factsOf(turn, root, own).filter(isFixable);
  const questions = openQuestions(turn).filter(({ note }) => note === root);
  return [
    ...facts.flatMap((fact) => factChoices(turn, fact, amount)),
    ...questions.flatMap((question) => questionChoices(question, amount)),
  ];
}

function isFixable(fact: Fact): boolean {
  return fact.amount !== undefined || fact.kind === "drive";
}

function factChoices(turn: Turn, fact: Fact, amount: Cents): Choice[] {
  const choice = (label: string, words: string[], cents: Cents): Choice => ({
    label,
    words,
    effect: { kind: "fix", fact: fact.id, amount: cents },
  });
  const all = choice(`${show(amount)} in all`, ["in all", "all", "whole"], amount);
  const count = eachCount(turn, fact);
  const deposit = depositIn(turn, fact);
  if (count > 1) {
    const sum = amount * count;
    return [choice(`${show(amount)} each, ${show(sum)} in all`, ["each"], sum), all];
  }
  if (deposit > 0) {
    const sum = amount + deposit;
    return [all, choice(`${show(amount)} today, ${show(sum)} in all`, ["rest", "the rest", "today"], sum)];
  }
  return [choice(echoOf(turn, fact)[0] ?? fact.kind, [], amount)];
}

/** How many pieces an "each" price was for; 1 where the price was for the whole. */
function eachCount(turn: Turn, fact: Fact): number {
  // The price may have come in the note, in its answer, in an edit or in a fix: all of their words are looked at.
  const first = turn.ledger.factById(fact.place) ?? fact;
  const ids = [...new Set([fact.root, first.note, fact.note])];
  const texts = ids.flatMap((id) => turn.ledger.note(id)?.text ?? []);
  const together = texts.map((text) => `${texts[0]} ${text}`);
  const readings = [...texts, ...together].flatMap((text) => readMessage(text, turn.today));
  return readings.some((reading) => reading.each) ? Math.max(1, fact.pieces.length) : 1;
}

/** What of a sale's price was a deposit: the same words could then mean the whole price or the rest. */
function depositIn(turn: Turn, fact: Fact): Cents {
  if (fact.kind !== "sell" || (fact.data.deposit ?? "applied") !== "applied") return 0;
  const legs = turn.ledger.books.postings.get(fact.id) ?? [];
  return legs.reduce((sum, leg) => sum + (leg.account === "deposits held" ? leg.cents : 0), 0);
}

function questionChoices(question: Question, amount: Cents): Choice[] {
  const { reading } = question.matter;
  if (mainAmountOf(reading) === null) return [];
  const change = withMainAmount(reading, amount);
  return [{ label: reading.text, effect: { kind: "change", question: question.id, change } }];
}

/** Replaces one fact by the same with another amount, and says before and after. */
export function fixFact(turn: Turn, id: number, amount: Cents): void {
  const fact = turn.ledger.books.facts.find((standing) => standing.id === id);
  if (!fact) {
    turn.spoken.push("That note does not stand any more. Nothing changed.");
    return;
  }
  const [before] = echoOf(turn, fact);
  const facts = [{ fact: withAmount(fact, amount), replaces: fact.id }];
  const result = turn.ledger.amend({ note: turn.note, author: turn.person, voids: [fact.id], facts });
  if (result.kind === "impossible") {
    turn.spoken.push(`Nothing changed. ${impossibleText(turn, result)}`);
    return;
  }
  keepOutcome(turn, result.facts, { text: "" }, [before ?? fact.kind]);
}

/** The same fact with its main amount changed: of a drive, its miles. */
function withAmount(fact: Fact, amount: Cents): NewFact {
  const { kind, day, pieces, data } = fact;
  if (kind === "drive") return { kind, day, pieces, data: { miles: plainDecimal(amount) } };
  return { kind, day, pieces, amount, data } as NewFact;
}

/** Hundredths as a plain decimal without idle zeros: "12.5". */
function plainDecimal(hundredths: number): string {
  return amountText(hundredths).replace(/\.00$|(?<=\.\d)0$/, "");
}
