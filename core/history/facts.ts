import type { NewFact } from "../books/facts.ts";
import type { Cents } from "../money.ts";
import type { HistoryPlan, HistoryRow } from "./plan.ts";

/** Whether the dry run has to ask where the profit went: only a profit can have been sent. */
export function asksWhetherSent(plan: HistoryPlan): boolean {
  return plan.problems.length === 0 && plan.profit > 0;
}

/**
 * The facts of a plan without problems, in the order of the file, numbering the new pieces from `nextPiece`:
 * each row a buy, its materials that same day, and its sale.
 */
export function historyFacts(plan: HistoryPlan, nextPiece: number): NewFact[] {
  if (plan.problems.length > 0) throw new Error("a plan with problems records nothing");
  let next = nextPiece;
  return plan.rows.flatMap((row) =>
    rowFacts(
      row,
      Array.from({ length: row.count }, () => next++),
    ),
  );
}

/**
 * `declaredSent`: the profit had already gone to the loan, so one more fact, on the day of the last sale, takes it out
 * of what is earmarked: by as much as the rows `added` to that, after tax, once and for all. A loss is evened out as
 * well: what is past changes nothing that is due, other than what was declared.
 */
export function sentFact(
  { lastSale: day }: Pick<HistoryPlan, "lastSale">,
  { declaredSent, added }: { declaredSent: boolean; added: Cents },
): NewFact | null {
  if (!day || added === 0 || (added > 0 && !declaredSent)) return null;
  return { kind: "sent", data: added < 0 ? { loss: true } : {}, day, pieces: [], amount: Math.abs(added) };
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
