import type { Fact } from "../../core/books/facts.ts";
import { type Problem, problemText } from "../../core/books/problem.ts";
import { showDay } from "../../core/calendar.ts";
import { cautionsFor, type Given, notedOf } from "../../core/cautions.ts";
import { decide, followUp, verbOf } from "../../core/decide/decide.ts";
import type { Matter } from "../../core/decide/decision.ts";
import type { Reading } from "../../core/notes/reading.ts";
import type { Recorded } from "../../db/ledger.ts";
import { fixNote, undoNote } from "./amending.ts";
import { answerQuestion, setNudge } from "./asking.ts";
import { openQuestion } from "./questions.ts";
import { deskOf, type Turn } from "./turn.ts";

/** Which message the facts belong to, and which one is answered by undo in a reply. */
export interface Belonging {
  /** The first revision of the message that the facts are a part of. */
  root: number;
  replyRoot?: number | undefined;
}

/** Decides matters one by one, in order: the clear ones are recorded, the others asked or refused. */
export function decideAll(turn: Turn, matters: readonly Matter[], belonging: Belonging): void {
  const queue = [...matters];
  for (let matter = queue.shift(); matter; matter = queue.shift()) {
    const pieces = decideOne(turn, matter, belonging);
    if (pieces) queue.unshift(...followUp(matter, pieces));
  }
}

/** The pieces that were recorded, for what waits for "it"; null where nothing was. */
function decideOne(turn: Turn, matter: Matter, belonging: Belonging): number[] | null {
  const { reading } = matter;
  switch (reading.kind) {
    case "ask":
      answerQuestion(turn, reading);
      return null;
    case "undo":
      undoNote(turn, belonging.replyRoot);
      return null;
    case "fix":
      fixNote(turn, reading, belonging.replyRoot);
      return null;
    case "nudge":
      setNudge(turn, reading);
      return null;
    default:
      return decideFact(turn, matter, belonging);
  }
}

function decideFact(turn: Turn, matter: Matter, belonging: Belonging): number[] | null {
  const { reading, said } = matter;
  const decision = decide(matter, { ...deskOf(turn), today: said });
  switch (decision.kind) {
    case "refuse":
      refuse(turn, matter, decision.why);
      return null;
    case "ask":
      openQuestion(turn, matter, decision.ask, belonging.root);
      return null;
    case "record": {
      const { person: author, note } = turn;
      const result = turn.ledger.record({ note, author, facts: decision.facts, root: belonging.root });
      if (result.kind === "impossible") {
        refuse(turn, matter, impossibleText(turn, result));
        return null;
      }
      keepOutcome(turn, result.facts, reading);
      if (decision.ask) {
        const asked: Matter = { reading: decision.ask.reading, said, confirmed: [], waiting: [] };
        openQuestion(turn, asked, decision.ask.ask, belonging.root);
      }
      return result.facts.flatMap((fact) => fact.pieces);
    }
  }
}

/** Notes what was recorded, in the verb's words, with what stood `before` and a caution where one is due. */
export function keepOutcome(
  turn: Turn,
  facts: readonly Fact[],
  { text }: Pick<Reading, "text">,
  before: readonly string[] = [],
): void {
  turn.changed = true;
  const isOne = facts.length === 1;
  for (const fact of facts) {
    const [first, ...more] = echoOf(turn, fact);
    const old = isOne && before.length > 0 ? [`Before: ${before.join("; ")}`] : [];
    turn.recorded.push({
      fact,
      text,
      lines: [first ?? fact.kind, ...old, ...more, ...cautionOf(turn, fact, text)],
    });
  }
  if (!isOne && before.length > 0) turn.spoken.push(["Before:", ...before].join("\n"));
}

/** What the fact's verb says of it, on the books as they stand. */
export function echoOf(turn: Turn, fact: Fact): string[] {
  const echo = fact.kind === "sent" ? undefined : verbOf(fact.kind)?.echo;
  if (!echo) return [];
  return (echo as (of: object) => string[])({ fact, books: turn.ledger.books, today: turn.today });
}

/** At most one caution, remembered so that it is not said too often. */
function cautionOf(turn: Turn, fact: Fact, text: string): string[] {
  const { settings, books } = turn.ledger;
  const days = settings.get("cautionsGiven") ?? {};
  const given: Given[] = Object.entries(days).map(([name, day]) => {
    const [group, piece] = name.split("#") as [string, string | undefined];
    return { group, piece: piece === undefined ? null : Number(piece), day };
  });
  const [caution] = cautionsFor(notedOf(fact, { text, books, given }));
  if (!caution) return [];
  const name = caution.piece === null ? caution.group : `${caution.group}#${caution.piece}`;
  settings.set("cautionsGiven", { ...days, [name]: fact.day });
  return [caution.line];
}

function refuse(turn: Turn, matter: Matter, why: string): void {
  const { text, line } = matter.reading;
  turn.refused.push({ text, line, why });
  for (const waiting of matter.waiting) {
    turn.refused.push({
      text: waiting.text,
      line: waiting.line,
      why: "It goes with the one before: send both again.",
    });
  }
}

/** Why the books cannot take it; a fact that stands in the way is named. */
export function impossibleText(turn: Turn, result: Extract<Recorded, { kind: "impossible" }>): string {
  const { fact, problem } = result;
  const standing = turn.ledger.factById(fact.id);
  if (!standing) return problemWords(turn, problem);
  const [said] = echoOf(turn, standing);
  const needs =
    problem.kind === "no such piece" || problem.kind === "no such loan" || problem.kind === "no loan";
  const why = needs ? "It needs this one. Undo it first." : problemWords(turn, problem);
  return `In the way: ${said}\n${why}`;
}

/** A problem in plain words, its days as replies show them. */
export function problemWords(turn: Turn, problem: Problem): string {
  const text = problemText(problem, turn.ledger.books);
  return text.replace(/\b\d{4}-\d{2}-\d{2}\b/g, (day) => showDay(day, turn.today));
}
