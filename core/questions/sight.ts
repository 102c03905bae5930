import type { FactKind } from "../books/facts.ts";
import { isOwnersAlone } from "../books/fold.ts";
import type { MeasureName, Query } from "./query.ts";
import type { ViewQuestion } from "./views.ts";

/** What tells of the month and the loan however it is cut. */
const ALWAYS: ReadonlySet<MeasureName> = new Set(["net", "income", "paid", "interest"]);
/** What tells of single pieces where something narrows it, and of the whole month where nothing does. */
const WHOLE: ReadonlySet<MeasureName> = new Set([
  "profit",
  "proceeds",
  "received",
  "spent",
  "fees",
  "price",
  "hourly",
  "margin",
  "return on cost",
]);

/** Whether a figure tells of the month and the loan, which may be the owner's alone to see. */
export function isOwnersQuery({ measure, filters, order, by, list }: Query): boolean {
  if (ALWAYS.has(measure)) return true;
  const isOfPieces = filters.length > 0 || order?.of === "piece" || by === "piece" || list;
  return WHOLE.has(measure) && !isOfPieces;
}

const MONEY_VIEWS: ReadonlySet<string> = new Set(["month", "year", "recap", "loan", "pace", "tax"]);

export function isOwnersView({ about }: ViewQuestion): boolean {
  return MONEY_VIEWS.has(about);
}

/** Whether a list of notes is one of payments and income alone. */
export function isOwnersKinds(kinds: ReadonlySet<string> | null): boolean {
  return kinds !== null && [...kinds].some(isOwnersAlone);
}

/** Whether a fact tells of the loan or of other income. */
export function isOwnersFact(kind: FactKind): boolean {
  return isOwnersAlone(kind);
}
