import type { NewFact } from "../books/facts.ts";
import type { HistoryPlan, HistoryRow } from "./plan.ts";

/** Whether the dry run has to ask where the profit went: only a profit can have been sent. */
export function asksWhetherSent(plan: HistoryPlan): boolean {
  return plan.problems.length === 0 && plan.profit > 0;
}

/**
 * The facts of a plan without problems, in the order of the file, numbering the new pieces from `nextPiece`:
 * each row a buy, its materials that same day, and its sale. `declaredSent`: the profit had already gone to
 * the loan, so one more fact, on the day of the last sale, takes it out of what is earmarked.
 */
export function historyFacts(
  plan: HistoryPlan,
  how: { declaredSent: boolean; nextPiece: number },
): NewFact[] {
  if (plan.problems.length > 0) throw new Error("a plan with problems records nothing");
  const facts: NewFact[] = [];
  let next = how.nextPiece;
  for (const row of plan.rows) {
    const pieces = Array.from({ length: row.count }, () => next++);
    facts.push(...rowFacts(row, pieces));
  }
  if (how.declaredSent && plan.profit > 0 && plan.lastSale) {
    facts.push({ kind: "sent", data: {}, day: plan.lastSale, pieces: [], amount: plan.profit });
  }
  return facts;
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
