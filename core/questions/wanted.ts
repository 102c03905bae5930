import { isTime } from "./groupings.ts";
import { measures } from "./measures.ts";
import type { Parts } from "./parts.ts";
import type { Grouping, MeasureName, Order, Query } from "./query.ts";
import { piecesOf } from "./read-pieces.ts";
import type { Reading } from "./reading.ts";

/*
 * How the answer is wanted: one by one, as a mean, by whom, as yes or no.
 */

/** "Which months made over 800", "did any month lose money": each row is held against the amount. */
export function isOfRows(
  group: { by: Grouping | null; order: Order | null } | null,
  { groups }: Parts,
): boolean {
  return group?.order != null && group.order.of !== "piece" && groups.some(({ parted }) => !parted);
}

/** A chart of one figure is one of its months. */
export function isPlainChart({ f, measure }: Reading, isOrdered: boolean, isBeside: boolean): boolean {
  return f.has("chart") && !isOrdered && !isBeside && !measures[measure].stock;
}

/** "what sold for less than 300", "chairs i sold for over 300": the pieces, and not what they came to. */
export function isListOfSales({ parts, f, measure }: Reading): boolean {
  // "The one that sold for 240"
  const isOfPrice = measure === "proceeds" || measure === "price" || measure === "asking";
  const isThese = parts.limits.some(({ limit }) => limit === "exactly") && !f.order && !f.by && !parts.yesNo;
  if (isThese && isOfPrice) return !f.has("money", "total", "average", "median", "who");
  const isEach = measure === "proceeds" || measures[measure].of !== undefined;
  return isEach && parts.limits.length > 0 && f.lists && !f.has("revenue");
}

/** "List the profit of every piece". */
export function asksEach({ parts, f, measure }: Reading): boolean {
  return (
    f.commands &&
    measure !== "count" &&
    /\b(?:every|each|all) (?:the |my )?pieces?\b/.test(parts.said) &&
    !f.order &&
    !f.by
  );
}

/** "What have my dressers sold for": each of them, and what they came to. */
export function asksPrices({ parts, f, measure }: Reading): boolean {
  const isOfSeveral = parts.items.some(({ mark }) => mark.senses.thing?.plural);
  return (
    measure === "proceeds" &&
    f.has("soldFor") &&
    isOfSeveral &&
    /^what/.test(parts.first) &&
    !f.has("money", "total", "average", "median", "revenue") &&
    !f.order &&
    !f.by &&
    !f.beside
  );
}

/** "The hutch", where there is but one. */
export function isOnePiece({ parts, found, desk }: Reading): boolean {
  return (
    parts.items.some(({ mark }) => mark.senses.thing?.noun && !mark.senses.thing.plural) &&
    piecesOf(
      desk,
      found.map(({ filter }) => filter),
    ).length === 1
  );
}

/** "What did #4 sell for": its price, and not what was left of it after a refund. */
export function isSalePrice(reading: Reading): boolean {
  const { f, measure, parts } = reading;
  if (measure !== "proceeds" || f.order || f.by || parts.limits.length > 0) return false;
  return (
    (f.number || isOnePiece(reading)) &&
    (f.has("soldFor", "sold") || (f.acting && f.has("paid"))) &&
    !f.has("revenue") &&
    (f.acting || !f.has("paid")) &&
    parts.periods.length === 0
  );
}

/** "whose deposits", "who owes me", "how do buyers pay": a row for each of them. */
export function byWhom({ f, measure }: Reading): Grouping | null {
  const isOfBuyers = measure === "deposits" || measure === "owed";
  if (f.has("payWays") || (measure === "count" && f.asksWay)) return "method";
  // "Who bought how many"
  if (measure === "count" && f.has("who") && f.has("howMany") && f.has("bought", "took") && !f.order)
    return "buyer";
  if (measure === "count" && f.whom !== null) return f.whom;
  if (measure === "proceeds" && f.has("who") && !f.order) return "buyer";
  return isOfBuyers && f.has("who", "whose") ? "buyer" : null;
}

/** "is oak worse than walnut", "do lamps sell faster than desks": yes where the first is less. */
export function saysLess({ said }: Parts): boolean {
  return /\b(?:worse|lower|less|smaller|fewer|cheaper|faster|quicker|sooner)\b/.test(said);
}

/** "Ever", "all time": no month is meant where none is said. */
export function saysEver({ periods }: Parts): boolean {
  return periods.some(({ period }) => period.from === null && period.to === null);
}

/** The mean that is asked for; null: the sum. */
export function aggregateOf(reading: Reading): Query["aggregate"] {
  if (reading.f.has("median")) return "median";
  if (!reading.f.has("average")) return isOfAny(reading) ? "average" : null;
  return isRate(reading) ? "rate" : "average";
}

/** Measures of pieces that are told of any one of a kind. */
const OF_ANY: ReadonlySet<MeasureName> = new Set(["profit", "proceeds", "price", "cost", "minutes"]);

/** "what does a dresser sell for", "how much do i make on a lamp": any one of them is meant, and none in particular. */
function isOfAny({ parts, measure }: Reading): boolean {
  const { marks, items, said, yesNo } = parts;
  const [only, more] = items;
  if (!only || more || yesNo || !OF_ANY.has(measure) || parts.periods.length > 0) return false;
  const { noun, plural } = only.mark.senses.thing ?? {};
  // "What does a yard sale piece run me"
  const isPiece = marks[only.at + 1]?.text === "piece";
  const isOne =
    (isPiece || (noun !== undefined && !plural)) && /(?:^| )an?$/.test(marks[only.at - 1]?.text ?? "");
  return isOne && /\b(?:do|does)\b/.test(said);
}

/** "gas per month on average": of what adds up, so much a month. */
export function isRate({ parts, f, measure }: Reading): boolean {
  return (
    f.has("average") &&
    measures[measure].adds === true &&
    // "The average sale a month" is one sale's, "average sales a month" are all of them.
    (measure !== "proceeds" || /\bsales\b/.test(parts.said) || f.has("revenue")) &&
    parts.groups.some(({ group, parted }) => parted && isTime(group)) &&
    /\b(?:(?:per|an?|each|every) (?:day|week|month|quarter|year)|daily|weekly|monthly|yearly)\b/.test(
      parts.said,
    )
  );
}
