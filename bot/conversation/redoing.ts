import { booksWithout, changeFacts } from "../../core/books/change.ts";
import type { Fact, NewFact } from "../../core/books/facts.ts";
import type { BooksInHand } from "../../core/books/hand.ts";
import type { Problem } from "../../core/books/problem.ts";
import { problemWords } from "../../core/books/problem.ts";
import { toldNext } from "../../core/decide/answering/behind.ts";
import { decide, meant, verbOf } from "../../core/decide/decide.ts";
import { type Ask, type Effect, type Matter, newMatter, type Talk } from "../../core/decide/decision.ts";
import { followUp } from "../../core/decide/matters.ts";
import { settle } from "../../core/decide/settle.ts";
import { asNew } from "../../core/mending/changed.ts";
import type { Mention, Reading } from "../../core/notes/reading.ts";
import type { Steps } from "../../core/steps.ts";
import { type NumbersKept, numbersKept } from "./numbers-kept.ts";
import type { Turn } from "./turn.ts";

/** A clause that has to be asked about before it can be recorded. */
export interface Asked {
  matter: Matter;
  ask: Ask;
}

/** Facts not written yet are numbered from here: beyond any id ever given, with room for whatever a message holds. */
const FIRST_ID = 2 ** 52;

export type Redone =
  /** `said`: the clause of each fact. */
  { kind: "redone"; facts: NewFact[]; said: string[]; asked: Asked[] } | { kind: "unusable"; why: string };

/** A message being decided anew, on the books as they stood before it first recorded anything. */
interface Redoing {
  turn: Turn;
  standing: readonly Fact[];
  /** The books of what was recorded before the message, and of `done`. */
  books: BooksInHand;
  done: Fact[];
  /** The clause of each of these. */
  said: string[];
  /** Why what is done cannot stand. */
  problem: Problem | null;
  numbers: NumbersKept;
  nextPiece: number;
  /** What it leaves open. */
  asked: Asked[];
}

/** Decides the new words of a message, one matter at each step; nothing is written yet. */
export function* redo(turn: Turn, standing: readonly Fact[], matters: readonly Matter[]): Steps<Redone> {
  const { books, nextPiece } = turn.ledger;
  const place = Math.min(...standing.map((fact) => fact.place));
  const folded = booksWithout(books, turn.ledger.standingFactsSince(place));
  if (folded.kind === "impossible")
    return { kind: "unusable", why: problemWords(folded.problem, turn.ledger.books, turn.today) };
  const numbers = numbersKept(standing, matters);
  const before = { books: folded.books, done: [], said: [], problem: null };
  const redoing: Redoing = { turn, standing, ...before, numbers, nextPiece, asked: [] };
  const queue = [...matters];
  if (queue.length === 0)
    return { kind: "unusable", why: 'It says nothing now. To take the note back, send "undo".' };
  for (let matter = queue.shift(); matter; matter = queue.shift()) {
    const step = redoOne(redoing, matter, queue);
    if (step.kind === "unusable") return step;
    if (step.kind === "ask") redoing.asked.push({ matter, ask: step.ask });
    else queue.unshift(...step.next);
    yield;
  }
  const { done, said, asked } = redoing;
  return { kind: "redone", facts: done.map(asNew), said, asked };
}

/** Whether nothing that stands would go without a fact of its kind to take its place. */
export function isCovered(standing: readonly Fact[], facts: readonly NewFact[]): boolean {
  const left = facts.map((fact) => fact.kind);
  return standing.every(({ kind }) => {
    const index = left.indexOf(kind);
    if (index >= 0) left.splice(index, 1);
    return index >= 0;
  });
}

type Step = { kind: "unusable"; why: string } | { kind: "ask"; ask: Ask } | { kind: "on"; next: Matter[] };

function redoOne(redoing: Redoing, asSaid: Matter, next: Matter[]): Step {
  const { turn, books, problem, nextPiece, standing } = redoing;
  if (problem) return { kind: "unusable", why: problemWords(problem, turn.ledger.books, turn.today) };
  const desk = { books, today: asSaid.said, nextPiece, talk: talkOfStanding(standing) };
  const matter = meant(asSaid, desk);
  const { reading } = matter;
  if (reading.kind !== "unclear" && !verbOf(reading.kind)?.decide)
    return { kind: "unusable", why: `"${reading.text}" is no note to put in its place.` };
  const decision = decide(matter, desk);
  if (decision.kind === "act")
    return { kind: "unusable", why: `"${reading.text}" is no note to put in its place.` };
  if (decision.kind === "refuse") return { kind: "unusable", why: decision.why };
  if (decision.kind === "ask") {
    const told = toldNext(matter, decision.ask, next);
    if (told?.isSure) return { kind: "on", next: told.matters };
    if (reading.kind === "unclear") return { kind: "unusable", why: decision.ask.prompt };
    const effect = answeredBefore(redoing, matter.reading, decision.ask);
    return effect ? { kind: "on", next: settle(matter, effect) } : { kind: "ask", ask: decision.ask };
  }
  const facts = decision.facts.map((fact) => keep(redoing, fact, reading.text));
  if (decision.ask) answerAgain(redoing, decision.ask);
  return {
    kind: "on",
    next: followUp(
      matter,
      facts.flatMap((fact) => fact.pieces),
    ),
  };
}

/** A note that is corrected is still about the pieces that it was about, where it names none. */
function talkOfStanding(standing: readonly Fact[]): Talk {
  const [first, ...others] = standing;
  const isOne =
    first && first.pieces.length > 0 && others.every(({ pieces }) => `${pieces}` === `${first.pieces}`);
  return isOne && first.kind !== "buy" ? { replied: first.pieces } : {};
}

/** The rate of a loan that was told in an answer holds for the loan as it is now; else it is asked again. */
function answerAgain(redoing: Redoing, { reading, ask }: { reading: Reading; ask: Ask }): void {
  const told = redoing.standing.find((fact) => fact.kind === "terms" && cameOfAnswer(redoing.turn, fact));
  if (told?.kind === "terms" && reading.kind === "terms" && reading.loan && reading.date) {
    const data = { ...told.data, loan: reading.loan };
    keep(redoing, { kind: "terms", day: reading.date, pieces: [], data }, reading.text);
  } else redoing.asked.push({ matter: newMatter(reading, redoing.turn.today), ask });
}

/** The fact as it would be recorded after the others, new pieces with the numbers that they had. */
function keep(redoing: Redoing, fact: NewFact, text: string): Fact {
  const { turn, done, said, standing } = redoing;
  const made = "made" in fact.data ? fact.data.made : [];
  const numbers = redoing.numbers.take(made).map((kept) => kept ?? redoing.nextPiece++);
  const pieces = [...fact.pieces.slice(0, fact.pieces.length - made.length), ...numbers];
  const id = FIRST_ID + done.length;
  const of = { author: turn.person, note: turn.note, root: standing[0]!.root };
  const whole = { ...fact, pieces, id, place: id, ...of } as Fact;
  done.push(whole);
  said.push(text);
  const changed = changeFacts(redoing.books, { removed: [], added: [whole] });
  if (changed.kind === "impossible") redoing.problem ??= changed.problem;
  return whole;
}

type Settling = Extract<Effect, { kind: "settle" | "instead" }>;

/**
 * What was answered when the message first came holds: which piece was meant, what one added for it cost, what
 * was owed on a loan that it had to begin with.
 */
function answeredBefore(redoing: Redoing, reading: Reading, ask: Ask): Settling | null {
  const { turn, standing, numbers, done } = redoing;
  const traded = ask.wants === "worth" ? standing.find((fact) => fact.kind === "trade") : undefined;
  if (traded?.amount !== undefined) return { kind: "settle", change: { worth: traded.amount } };
  const [first, ...rest] = ask.first ?? [];
  const begun = standing.find((fact) => fact.kind === "loan");
  const isBegun = done.some((fact) => fact.kind === "loan");
  if (first?.kind === "loan" && begun && !isBegun && cameOfAnswer(turn, begun)) {
    const loan = { ...first, loan: begun.data.loan, balance: begun.amount ?? 0, missing: [] };
    return { kind: "instead", readings: [loan, ...rest] };
  }
  const bought = standing.find((fact) => fact.kind === "buy" && numbers.hasAny(fact.pieces));
  if (first?.kind === "buy" && bought && cameOfAnswer(turn, bought)) {
    const pieces = first.pieces?.map((mention) => ({
      ...mention,
      count: mention.count ?? bought.pieces.length,
    }));
    const price = bought.amount ?? 0;
    return {
      kind: "instead",
      readings: [{ ...first, ...(pieces ? { pieces } : {}), price, missing: [] }, ...rest],
    };
  }
  const meant = new Set(standing.filter((fact) => fact.kind === reading.kind).flatMap((fact) => fact.pieces));
  for (const { effect } of ask.choices) {
    if (effect.kind !== "settle" || !effect.change || !("pieces" in effect.change)) continue;
    const mentions = (effect.change as { pieces?: Mention[] }).pieces ?? [];
    if (mentions.every(({ number }) => number === undefined || meant.has(number))) return effect;
  }
  return null;
}

/** Whether a fact was first recorded by an answer to its message, not by the message itself. */
function cameOfAnswer({ ledger }: Turn, fact: Fact): boolean {
  const first = ledger.factById(fact.place) ?? fact;
  return ledger.note(first.note)?.root !== fact.root;
}
