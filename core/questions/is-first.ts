import { monthOf } from "../calendar.ts";
import type { Desk } from "./desk.ts";
import { namesSame } from "./filters.ts";
import { isTime, TIMES } from "./groupings.ts";
import type { Parts } from "./parts.ts";
import type { Dimension, Filter, Grouping, Order, Period, Query } from "./query.ts";
import { piecesOf } from "./read-pieces.ts";
import type { Result } from "./result.ts";

/*
 * "Is storage my biggest cost", "was october my best month": the one thing named is looked for at the top of all.
 */

/** What is named, by what is put in order: all of it is, and one is asked about. */
const NAMED: Partial<Record<Grouping, readonly Dimension[]>> = {
  kind: ["kind"],
  source: ["source"],
  buyer: ["buyer"],
  method: ["method"],
  place: ["place"],
  person: ["person"],
  what: ["what", "category"],
  category: ["category"],
  stream: ["stream"],
  piece: ["piece", "kind"],
};

/** The order over everything, with the one that is asked about beside it; null where no one thing is. */
export function askedFirst(
  { first, items }: Parts,
  order: Order | null,
  filters: readonly Filter[],
  period: Period | null,
): Pick<Query, "filters" | "period" | "order" | "isFirst"> | null {
  if (!order || order.top !== null || !/^(?:is|are|was|were)$/.test(first)) return null;
  if (isTime(order.of)) {
    if (period?.from == null || items.length > 0) return null;
    return { filters, period: null, order, isFirst: period };
  }
  const named = filters.find(
    ({ dimension, not, values }) => NAMED[order.of]?.includes(dimension) && !not && values.length === 1,
  );
  if (!named) return null;
  const of = order.of === "what" && named.dimension === "category" ? "category" : order.of;
  return {
    filters: filters.filter((each) => each !== named),
    period,
    order: { ...order, of },
    isFirst: named,
  };
}

/** Whether what is asked about stands first, or level with it. */
export function standsFirst(desk: Desk, { isFirst, order }: Query, { rows }: Result): boolean {
  const [first] = rows ?? [];
  if (!first || !isFirst || !order) return false;
  const level = rows!.filter(({ value }) => value === first.value);
  if (!("dimension" in isFirst)) {
    const label = isTime(order.of) ? TIMES[order.of](isFirst.from!) : monthOf(isFirst.from!);
    return level.some((row) => row.label === label);
  }
  if (order.of !== "piece") return level.some((row) => namesSame(row.label, isFirst.values[0]!));
  const numbers = new Set(piecesOf(desk, [isFirst]).map(({ number }) => number));
  return level.some(({ number }) => number !== undefined && numbers.has(number));
}
