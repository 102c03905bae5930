import type { Fact } from "../../core/books/facts.ts";
import { NEVER_MIND, newMatter } from "../../core/decide/decision.ts";
import { amountsMeant, type FixChoice, type Fixing, withAmount } from "../../core/mending/amounts.ts";
import { asNew } from "../../core/mending/changed.ts";
import { type Cents, show } from "../../core/money.ts";
import type { ReadingOf } from "../../core/notes/reading.ts";
import { echoOf, impossibleText, keepOutcome, saidOf } from "./outcome.ts";
import { openQuestion, openQuestions } from "./questions.ts";
import { mayChange, notYours } from "./rights.ts";
import { deskOf, type Turn } from "./turn.ts";
import { factsOf, lastRoot } from "./undoing.ts";

/** How to correct the one amount of a message, recorded or still asked about; null where that is asked or refused. */
export function fixingOf(turn: Turn, reading: ReadingOf<"fix">, replyRoot?: number): Fixing | null {
  const root = replyRoot ?? lastRoot(turn);
  if (root !== null && !mayChange(turn, root)) {
    turn.spoken.push(notYours(turn, root));
    return null;
  }
  const choices = root === null ? [] : choicesIn(turn, root, reading, replyRoot === undefined);
  const [only, ...others] = choices;
  if (!only) {
    const { text, line } = reading;
    turn.refused.push({ text, line, why: "There is no amount of yours to change." });
    return null;
  }
  const isDoubted = replyRoot === undefined && (isOfRefused(turn) || isFarMore(turn, only.effect));
  if (others.length === 0 && only.effect.kind !== "instead" && !isDoubted) return only.effect;
  const prompt = `Which amount is ${show(reading.amount!)}?`;
  const matter = newMatter(reading, turn.today);
  openQuestion(turn, matter, { prompt, wants: "choice", choices: [...choices, NEVER_MIND] }, turn.note);
  return null;
}

/** So many times what was noted is hardly a slip of it: "1099 total" is a form. */
const FAR_TIMES = 20;

function isFarMore({ ledger }: Turn, effect: FixChoice["effect"]): boolean {
  const before = effect.kind === "fix" ? ledger.factById(effect.fact)?.amount : undefined;
  return effect.kind === "fix" && before !== undefined && effect.amount >= before * FAR_TIMES;
}

/** The message right before told a sum that was not recorded: "actually 80" may be of that one. */
function isOfRefused({ ledger, note, person }: Turn): boolean {
  const before = ledger.note(note - 1);
  return before?.state === "unclear" && before.author === person && /\d/.test(before.text);
}

function choicesIn(turn: Turn, root: number, reading: ReadingOf<"fix">, own: boolean): FixChoice[] {
  const questions = openQuestions(turn).filter(({ note }) => note === root);
  const message = {
    facts: factsOf(turn, root, own),
    asked: questions.map(({ id, matter }) => ({ question: id, reading: matter.reading })),
    wordsOf: (fact: Fact) => wordsOf(turn, fact),
    echo: (fact: Fact) => saidOf(turn, fact),
  };
  return amountsMeant(reading, message, deskOf(turn));
}

/** Everything that was said of a fact: the note, its answer, an edit, a fix. */
export function wordsOf({ ledger }: Turn, fact: Fact): string[] {
  const first = ledger.factById(fact.place) ?? fact;
  const ids = [...new Set([fact.root, first.note, fact.note])];
  return ids.flatMap((id) => ledger.note(id)?.text ?? []);
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
