/**
 * Past pieces from a CSV: `planHistory` reads it, `dryRunText` says what would be recorded and asks whether the
 * profit has already gone to the loan, `historyFacts` gives the facts to record, all or nothing.
 */
export { dryRunText } from "./history/dry-run.ts";
export { asksWhetherSent, historyFacts, sentFact } from "./history/facts.ts";
export type { HistoryDesk, HistoryPlan, HistoryProblem, HistoryRow } from "./history/plan.ts";
export { planHistory, planning } from "./history/plan.ts";
