import type { Fact } from "../../core/books/facts.ts";
import { problemWords } from "../../core/books/problem.ts";
import { verbOf } from "../../core/decide/decide.ts";
import { show } from "../../core/money.ts";
import type { Recorded } from "../../db/ledger.ts";
import type { Turn } from "./turn.ts";

const BEFORE_MAX = 10;

/**
 * Notes what was recorded, in the verb's words, with what stood `before`. `said`: the clause that said so, or that of
 * each fact.
 */
export function keepOutcome(
  turn: Turn,
  facts: readonly Fact[],
  said: string | readonly string[],
  before: readonly string[] = [],
): void {
  turn.changed = true;
  const isOne = facts.length === 1;
  for (const [index, fact] of facts.entries()) {
    const text = typeof said === "string" ? said : said[index]!;
    const [first, ...more] = echoOf(turn, fact);
    const isSame = before.length === 1 && before[0] === first;
    const old = isOne && before.length > 0 && !isSame ? [`Before: ${before.join("; ")}`] : [];
    turn.recorded.push({ fact, text, lines: [first ?? fact.kind, ...old, ...more] });
  }
  if (!isOne && before.length > 0) turn.spoken.push(["Before:", ...shortened(turn, before)].join("\n"));
}

/** Of a long message only what is no more said of it, and of that no page. */
function shortened({ recorded }: Turn, before: readonly string[]): readonly string[] {
  if (before.length <= BEFORE_MAX) return before;
  const now = new Set(recorded.map(({ lines }) => lines[0]));
  const gone = before.filter((line) => !now.has(line));
  const more = gone.length > BEFORE_MAX ? [`and ${gone.length - BEFORE_MAX} more`] : [];
  return gone.length > 0 ? [...gone.slice(0, BEFORE_MAX), ...more] : ["the same"];
}

/** What the fact's verb says of it, on the books as they stand. */
export function echoOf(turn: Pick<Turn, "ledger" | "today">, fact: Fact): string[] {
  if (fact.kind === "sent" && fact.data.loss)
    return [`Loss of past pieces, not taken from the loan: ${show(fact.amount ?? 0)}`];
  if (fact.kind === "sent") return [`Profit sent to the loan before: ${show(fact.amount ?? 0)}`];
  const echo = verbOf(fact.kind)?.echo;
  if (!echo) return [];
  const lines = (echo as (of: object) => string[])({ fact, books: turn.ledger.books, today: turn.today });
  const [first, ...more] = lines;
  return first !== undefined && fact.by !== undefined ? [`${first}, by ${fact.by}`, ...more] : lines;
}

/** Why the books cannot take it; a fact that stands in the way is named. */
export function impossibleText(turn: Turn, result: Extract<Recorded, { kind: "impossible" }>): string {
  const { fact, problem } = result;
  const standing = turn.ledger.factById(fact.id);
  const words = problemWords(problem, turn.ledger.books, turn.today);
  if (!standing) return words;
  const [said] = echoOf(turn, standing);
  const needs =
    problem.kind === "no such piece" || problem.kind === "no such loan" || problem.kind === "no loan";
  const why = needs ? "It needs this one. Undo it first." : words;
  return `In the way: ${said}\n${why}`;
}

/** The first line that is said of a fact. */
export function saidOf(turn: Pick<Turn, "ledger" | "today">, fact: Fact): string {
  return echoOf(turn, fact)[0] ?? fact.kind;
}
