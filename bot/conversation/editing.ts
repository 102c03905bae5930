import type { Fact, NewFact } from "../../core/books/facts.ts";
import { inFoldOrder } from "../../core/books/facts.ts";
import { foldFacts } from "../../core/books/fold.ts";
import { problemText } from "../../core/books/problem.ts";
import { decide, followUp, mattersOf, verbOf } from "../../core/decide/decide.ts";
import type { Matter } from "../../core/decide/decision.ts";
import { readMessage } from "../../core/notes/read.ts";
import { decideAll, echoOf, impossibleText, keepOutcome } from "./recording.ts";
import type { Turn } from "./turn.ts";

type Redone = { kind: "facts"; facts: NewFact[] } | { kind: "unusable"; why: string };

/** An edited message is a correction: what it recorded is voided, and what it says now stands in its place. */
export function editNote(turn: Turn, text: string, root: number): void {
  const { ledger } = turn;
  const standing = ledger.standingFactsOf(root);
  const readings = readMessage(text, turn.today);
  if (standing.length === 0) {
    for (const question of ledger.questions.allOpen(turn.person)) {
      if (question.note === root) ledger.questions.close(question.id, turn.now());
    }
    decideAll(turn, mattersOf(readings, turn.today), { root });
    return;
  }
  const redone = redo(turn, standing, mattersOf(readings, turn.today));
  if (redone.kind === "unusable") {
    turn.spoken.push(`Your edit changed nothing in the books. ${redone.why}`);
    return;
  }
  const before = standing.map((fact) => echoOf(turn, fact)[0]);
  const facts = redone.facts.map((fact, index) => ({
    fact,
    ...(standing[index] ? { replaces: standing[index].id } : {}),
  }));
  const voids = standing.map((fact) => fact.id);
  const result = ledger.amend({ note: turn.note, author: turn.person, voids, facts });
  if (result.kind === "impossible") {
    turn.spoken.push(`Your edit changed nothing in the books. ${impossibleText(turn, result)}`);
    return;
  }
  keepOutcome(turn, result.facts, { text });
  turn.recorded.at(-1)?.lines.splice(1, 0, `Before: ${before.join("; ")}`);
}

/** Decides the new words on the books as they stood before the message first recorded anything. */
function redo(turn: Turn, standing: readonly Fact[], matters: readonly Matter[]): Redone {
  const [first] = standing as [Fact];
  const earlier = turn.ledger.books.facts.filter((fact) => inFoldOrder(fact, first) < 0);
  const numbers = standing.filter((fact) => fact.kind === "buy").map((fact) => [...fact.pieces]);
  const done: Fact[] = [];
  let nextPiece = turn.ledger.nextPiece;
  const queue = [...matters];
  if (queue.length === 0)
    return { kind: "unusable", why: 'It says nothing now. To take the note back, send "undo".' };
  for (let matter = queue.shift(); matter; matter = queue.shift()) {
    const books = foldFacts([...earlier, ...done]);
    if (books.kind === "impossible")
      return { kind: "unusable", why: problemText(books.problem, turn.ledger.books) };
    if (matter.reading.kind !== "unclear" && !verbOf(matter.reading.kind)?.decide) {
      return { kind: "unusable", why: `"${matter.reading.text}" is no note to put in its place.` };
    }
    const decision = decide(matter, { books: books.books, today: turn.today, nextPiece });
    if (decision.kind === "refuse") return { kind: "unusable", why: decision.why };
    if (decision.kind === "ask")
      return { kind: "unusable", why: `It leaves a question: ${decision.ask.prompt}` };
    for (const fact of decision.facts) {
      const kept = fact.kind === "buy" ? (numbers.shift() ?? []) : [];
      const pieces =
        fact.kind === "buy" ? fact.pieces.map((_, index) => kept[index] ?? nextPiece++) : fact.pieces;
      const id = Number.MAX_SAFE_INTEGER - 1000 + done.length;
      done.push({
        ...fact,
        pieces,
        id,
        place: id,
        author: turn.person,
        note: turn.note,
        root: first.root,
      } as Fact);
      queue.unshift(...followUp(matter, pieces));
    }
  }
  return {
    kind: "facts",
    facts: done.map(
      ({ kind, day, pieces, amount, data }) =>
        ({ kind, day, pieces, data, ...(amount === undefined ? {} : { amount }) }) as NewFact,
    ),
  };
}
