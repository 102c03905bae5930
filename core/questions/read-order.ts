import { groupings } from "./groupings.ts";
import { measures } from "./measures.ts";
import { type Refusal, refusal } from "./narrowing.ts";
import { cutsOf, type Parts } from "./parts.ts";
import type { Grouping, MeasureName, Order } from "./query.ts";
import type { Reading } from "./reading.ts";

/** Rows by something, or something put in order. */
export function groupOf(reading: Reading): { by: Grouping | null; order: Order | null } | Refusal | null {
  const { parts, measure, f } = reading;
  const { eachItem } = parts;
  // "How many different places do i buy from"
  const isBuying = f.has("bought", "got") && !f.has("listed", "sold", "asking");
  // "Spent by who bought it": one of ours, where who bought what sold is a buyer.
  const isOurs = isOurDoing(reading);
  const groups = parts.groups.map((each) => {
    if (each.group === "place" && isBuying) return { ...each, group: "source" as const };
    // "Side money by type"
    const isOfIncome = measure === "income" && (each.group === "kind" || each.group === "source");
    if (isOfIncome) return { ...each, group: "stream" as const };
    const isOurBuyer = each.group === "buyer" && isOurs && /^who\b/.test(parts.marks[each.at]!.text);
    return isOurBuyer ? { ...each, group: "person" as const } : each;
  });
  // "Which did better" beside "or" compares and puts nothing in order.
  const isBeside = cutsOf(parts).length > 0;
  const orders = parts.orders.filter(
    ({ at }) =>
      !(
        isBeside &&
        (parts.marks[at]!.senses.flags.has("comparing") || parts.items.every((item) => item.at < at))
      ),
  );
  const parted = groups.find((group) => group.parted);
  // Rows of what stands beside each other are more than one answer can show.
  if (isBeside && parted) return refusal(parts.marks[parted.at]!);
  const named = groups.find((group) => !group.parted && group.group !== parted?.group);
  if (groups.length > 1 && parted && named && orders.length === 0) return refusal(parts.marks[named.at]!);
  if (groups.filter((group) => group.parted).length > 1) return refusal(parts.marks[groups.at(-1)!.at]!);
  const [first] = orders;
  // "Top months by pieces": what is put in order is one or the other.
  if (first && parted && named && parted.at > named.at) return refusal(parts.marks[parted.at]!);
  const wrong = groups.find(({ group }) => !isGroupOf(measure, group));
  if (wrong) return refusal(parts.marks[wrong.at]!);
  if (first) return orderOf(reading, first, parted?.group ?? named?.group ?? impliedGroup(reading));
  if (parted) return { by: parted.group, order: null };
  // "Dressers and desks, profit each"
  const kinds = reading.found.flatMap(({ filter }) => (filter.dimension === "kind" ? filter.values : []));
  if (eachItem) return { by: kinds.length > 1 ? "kind" : (eachOf(reading) ?? "piece"), order: null };
  if (!named) return null;
  // "List buyers over 1 piece"
  if (f.commands)
    return f.limit
      ? { by: null, order: { of: named.group, first: "most", top: null, known: true } }
      : { by: named.group, order: null };
  // "which kinds make money" puts kinds in order; a group that nothing asks for is refused.
  const isAny = reading.tally || (parts.yesNo && (f.limit || f.has("loss")));
  if (isAny || f.has("which") || /^(?:what|whats|which)$/.test(parts.first)) {
    const isFewest =
      f.has("loss") ||
      (measures[measure].unit === "days" && /\b(?:faster|quicker|sooner)\b/.test(parts.said));
    return { by: null, order: { of: named.group, first: isFewest ? "least" : "most", top: null } };
  }
  return refusal(parts.marks[named.at]!);
}

/** What is paid out, or counted of what is here or was bought, nobody has bought from us. */
function isOurDoing({ measure, counted }: Reading): boolean {
  if (measure === "count") return counted === "bought" || counted === "unsold";
  return measure === "price" || measure === "cost" || measure === "spent" || measure === "tied up";
}

/** "Van and school each": what several are named of that are no pieces. */
function eachOf({ found }: Reading): Grouping | null {
  const own = found.find(({ filter }) => filter.values.length > 1 && !filter.not)?.filter.dimension;
  const isGroup = /^(?:loan|stream|what|category|buyer|source|method|place|person)$/.test(own ?? "");
  return isGroup ? (own as Grouping) : null;
}

/** What an order is of where that is not said; the first that fits. */
const IMPLIED: readonly (readonly [when: (reading: Reading) => boolean, of: Grouping])[] = [
  // "Who sold the most" asks for one of ours.
  [({ f, parts }) => f.has("who") && /\bwho (?:has )?sold\b(?!.* to\b)/.test(parts.said), "person"],
  [
    ({ f, parts }) =>
      f.has("who") && /\b(?:i|we) (?:buy|get|find)s? .*\bfrom\b|\b(?:buy|bought) from\b/.test(parts.said),
    "source",
  ],
  [({ f }) => f.has("who"), "buyer"],
  // "Which place do i sell more on", "where do i list most"
  [({ f }) => f.has("where") && f.has("sold", "listed") && !f.has("bought", "got"), "place"],
  // "What do i sell the most of"
  [
    ({ f, parts, measure }) =>
      measure === "count" && !f.has("where") && /\b(?:most|least) of\b/.test(parts.said),
    "kind",
  ],
  [({ f }) => f.has("where"), "source"],
  [({ f }) => f.has("when"), "month"],
  // "June july august, which was best"
  [({ f, parts }) => f.has("which") && parts.periods.length > 1, "month"],
  // "What piece ate the most paint", "piece with the most paint"
  [
    ({ parts, measure }) =>
      measure === "spent" &&
      /\b(?:which|what|one|single) (?:pieces?|thing|item)\b|^(?:the )?pieces? (?:with|that)\b/.test(
        parts.said,
      ),
    "piece",
  ],
  // "Sells fastest: lamp, bench or dresser"
  [
    ({ parts, found }) =>
      parts.orAt.length > 0 &&
      found.some(({ filter }) => filter.dimension === "kind" && filter.values.length > 1),
    "kind",
  ],
  [({ f, measure }) => measure === "spent" && !f.piece, "what"],
  [({ measure }) => measure === "income", "stream"],
  [({ measure }) => measure === "paid" || measure === "interest", "month"],
  [() => true, "piece"],
];

function impliedGroup(reading: Reading): Grouping {
  return IMPLIED.find(([when]) => when(reading))![1];
}

function orderOf(
  { parts, measure, f }: Reading,
  said: Parts["orders"][number],
  of: Grouping,
): { by: null; order: Order } | Refusal {
  const { orders } = parts;
  const ends = orders.map(({ order, at }) => {
    // The fastest takes the fewest days, and the slowest month brings in the least.
    const isOfSales = measure === "proceeds" || measure === "count";
    if (order === "fastest") return isOfSales ? "most" : "least";
    if (order === "slowest") return isOfSales ? "least" : "most";
    if (order === "least") return "least";
    // "What do i lose the most on" looks for the least profit.
    if (order === "most") return f.has("loss") && measure === "profit" ? "least" : "most";
    const isLess = measures[measure].lessIsBetter && !/\btops?\b/.test(parts.marks[at]!.text);
    return (order === "best") === Boolean(isLess) ? "least" : "most";
  });
  if (new Set(ends).size > 1 && !orders.some(({ order }) => order === "best"))
    return refusal(parts.marks[orders[1]!.at]!);
  const top = orders.find((order) => order.top !== null)?.top ?? null;
  const first = orders.length > 1 && said.order === "best" ? ends[1]! : ends[0]!;
  // Nobody knows whether the unnamed are one customer or many.
  const isKnown = of === "buyer" || (of === "person" && (f.has("who") || /\bwho\b/.test(parts.said)));
  const skip = orders.find((order) => order.skip !== undefined)?.skip;
  return {
    by: null,
    order: {
      of,
      first: first as Order["first"],
      top,
      ...(skip === undefined ? {} : { skip }),
      ...(isKnown ? { known: true as const } : {}),
    },
  };
}

function isGroupOf(measure: MeasureName, group: Grouping): boolean {
  return groupings[group].of?.includes(measure) ?? true;
}
