import type { Day } from "../calendar.ts";
import { showDay } from "../calendar.ts";
import { show } from "../money.ts";
import { quoted } from "./cells.ts";
import { asksWhetherSent } from "./facts.ts";
import type { HistoryPlan, HistoryProblem } from "./plan.ts";

const SHOWN_MAX = 10;

/** The dry run for a phone: what would be recorded, row by row what is wrong, and what is asked. */
export function dryRunText(plan: HistoryPlan, today: Day): string {
  const parts: string[] = [];
  if (plan.problems.length > 0) {
    const rows = plan.problems.length === 1 ? "One thing is" : `${plan.problems.length} things are`;
    parts.push(["Nothing is recorded yet.", `${rows} wrong:`, ...problemLines(plan.problems)].join("\n"));
  }
  if (plan.rows.length > 0) parts.push(totalLines(plan, today).join("\n"));
  if (plan.cautions.length > 0) parts.push(["Worth a look:", ...problemLines(plan.cautions)].join("\n"));
  if (plan.again > 0 && plan.rows.length > 0)
    parts.push(`Left out, recorded from a file before: ${plan.again === 1 ? "1 row" : `${plan.again} rows`}`);
  if (plan.profit < 0) parts.push("Their loss takes nothing from what is due to the loan.");
  if (plan.ignored.length > 0)
    parts.push(`Columns left out: ${plan.ignored.slice(0, SHOWN_MAX).map(quoted).join(", ")}`);
  if (plan.problems.length > 0) parts.push("Fix the file and send it again: it is all or nothing.");
  else if (asksWhetherSent(plan))
    parts.push(`Has this profit (${show(plan.profit)}) already gone to the loan?`);
  else parts.push("Record it?");
  return parts.join("\n\n");
}

function totalLines(plan: HistoryPlan, today: Day): string[] {
  const pieces = plan.pieces === 1 ? "1 piece" : `${plan.pieces} pieces`;
  return [
    plan.problems.length > 0 ? `The other rows: ${pieces}` : `This would record ${pieces}`,
    `${plan.soldPieces} sold, ${plan.pieces - plan.soldPieces} unsold`,
    `From ${showDay(plan.from!, today)} to ${showDay(plan.to!, today)}`,
    `Spent ${show(plan.spent)}, sold for ${show(plan.proceeds)}`,
    `Profit of the sold ones ${show(plan.profit)}`,
  ];
}

function problemLines(problems: readonly HistoryProblem[]): string[] {
  const lines = problems.slice(0, SHOWN_MAX).map(({ row, why }) => (row === 0 ? why : `Row ${row}: ${why}`));
  return problems.length > SHOWN_MAX ? [...lines, `and ${problems.length - SHOWN_MAX} more`] : lines;
}
