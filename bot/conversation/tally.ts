import type { FactKind } from "../../core/books/facts.ts";
import type { Turn } from "./turn.ts";

/** How many facts of each kind were recorded. */
export type Tally = Record<string, number>;

/** What a block is said to hold where its kind alone does not say it; one and several where they differ. */
const DONE: Partial<Record<FactKind, string | readonly [one: string, several: string]>> = {
  buy: "bought",
  spend: "spending",
  start: "started",
  finish: "finished",
  list: "listed",
  reprice: "repriced",
  hold: "held",
  fallthrough: "fell through",
  sell: "sold",
  refund: ["refund", "refunds"],
  retire: "retired",
  pay: ["loan payment", "loan payments"],
  collect: "paid later",
  trade: ["trade", "trades"],
  repeat: ["standing note", "standing notes"],
  loan: ["loan", "loans"],
  terms: "loan terms",
  statement: ["loan statement", "loan statements"],
  drive: ["drive", "drives"],
  goal: ["goal", "goals"],
  taxrate: "tax percent",
  sent: "sent before",
};

/** "Recorded 38 notes: 12 bought, 9 sold, 16 spending, 1 drive". */
export function talliedLine(tally: Tally): string {
  const total = Object.values(tally).reduce((sum, count) => sum + count, 0);
  const kinds = Object.entries(tally)
    .sort((a, b) => b[1] - a[1])
    .map(([kind, count]) => {
      const word = DONE[kind as FactKind] ?? kind;
      return `${count} ${typeof word === "string" ? word : word[count === 1 ? 0 : 1]}`;
    });
  return `Recorded ${total} notes: ${kinds.join(", ")}`;
}

/** What a turn recorded. */
export function tallyOf({ recorded }: Pick<Turn, "recorded">): Tally {
  return addedUp(recorded.map(({ fact }) => ({ [fact.kind]: 1 })));
}

export function addedUp(tallies: readonly Tally[]): Tally {
  const sum: Tally = {};
  for (const tally of tallies)
    for (const [kind, count] of Object.entries(tally)) sum[kind] = (sum[kind] ?? 0) + count;
  return sum;
}

/** Whether the turn's reply tells of recorded facts and of nothing else, so that it may be told as a number. */
export function isTellable({ recorded, refused, asked, spoken, files, buttons }: Turn): boolean {
  const others = [refused, asked, spoken, files, buttons];
  return recorded.length > 0 && others.every(({ length }) => length === 0);
}
