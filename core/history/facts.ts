import type { Books } from "../books/books.ts";
import { type NewFact, recordedAs } from "../books/facts.ts";
import { foldFacts } from "../books/fold.ts";
import { earmarked } from "../books/month.ts";
import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import type { HistoryPlan, HistoryRow } from "./plan.ts";

/** Whether the dry run has to ask where the profit went: only a profit can have been sent. */
export function asksWhetherSent(plan: HistoryPlan): boolean {
  return plan.problems.length === 0 && plan.profit > 0;
}

/**
 * The facts of a plan without problems, in the order of the file, numbering the new pieces from `nextPiece`:
 * each row a buy, its materials that same day, and its sale. `declaredSent`: the profit had already gone to
 * the loan, so one more fact, on the day of the last sale, takes it out of what is earmarked: by as much as the rows
 * add to that on `on`, after tax, once and for all. A loss is evened out as well: what is past changes nothing that
 * is due, other than what was declared.
 */
export function historyFacts(
  plan: HistoryPlan,
  how: { declaredSent: boolean; nextPiece: number; on?: { books: Books; today: Day } },
): NewFact[] {
  if (plan.problems.length > 0) throw new Error("a plan with problems records nothing");
  const facts: NewFact[] = [];
  let next = how.nextPiece;
  for (const row of plan.rows) {
    const pieces = Array.from({ length: row.count }, () => next++);
    facts.push(...rowFacts(row, pieces));
  }
  const added = how.on ? addedToDue(facts, how.on) : Math.max(0, plan.profit);
  const day = plan.lastSale;
  if (day && added > 0 && how.declaredSent)
    facts.push({ kind: "sent", data: {}, day, pieces: [], amount: added });
  if (day && added < 0) facts.push({ kind: "sent", data: { loss: true }, day, pieces: [], amount: -added });
  return facts;
}

/** How much more would be due to the loan with these facts, in cents. */
function addedToDue(facts: readonly NewFact[], { books, today }: { books: Books; today: Day }): Cents {
  const id = 1 + Math.max(0, ...books.facts.map((fact) => fact.id));
  const added = facts.map((fact, index) => recordedAs(fact, { id: id + index, author: 1, note: id }, id));
  const folded = foldFacts([...books.facts, ...added]);
  // What cannot stand is refused when it is to be recorded, and named there.
  return folded.kind === "folded" ? earmarked(folded.books, today) - earmarked(books, today) : 0;
}

function rowFacts(row: HistoryRow, pieces: number[]): NewFact[] {
  const made = pieces.map(() => ({ name: row.name, traits: row.traits }));
  const day = row.bought;
  const facts: NewFact[] = [
    { kind: "buy", data: row.set ? { made, set: true } : { made }, day, pieces, amount: row.price },
  ];
  if (row.materials > 0) {
    const data = { what: "materials", category: "materials" } as const;
    facts.push({ kind: "spend", data, day, pieces, amount: row.materials });
  }
  if (row.sold) facts.push({ kind: "sell", data: {}, day: row.sold.day, pieces, amount: row.sold.price });
  return facts;
}
