import { isYesNo } from "./features.ts";
import { unitOf } from "./items.ts";
import type { Mark } from "./marks.ts";
import { measures } from "./measures.ts";
import type { Limited, Parts } from "./parts.ts";
import type { Filter, LimitOf } from "./query.ts";
import type { Reading } from "./reading.ts";
import type { Cue } from "./words/cues.ts";

/** What an amount behind these is of. */
const LIMITED: readonly (readonly [Cue, LimitOf])[] = [
  ["soldFor", "proceeds"],
  ["sold", "proceeds"],
  ["sale", "proceeds"],
  ["price", "price"],
  ["paid", "price"],
  ["bought", "price"],
  ["cost", "cost"],
  ["asking", "asking"],
  ["listed", "asking"],
  ["earn", "profit"],
  ["net", "profit"],
  ["loss", "profit"],
];

/** The amounts of a question: those that each thing is held against, and the one that the whole is. */
export interface Limits {
  filters: readonly Filter[];
  against: Filter | null;
  /** The places of the words that say what they are of. */
  used: readonly number[];
}

/** "Pieces over 100", "did i make over 5000", "which months made over 800", "which pieces lost money". */
export function limitsOf(reading: Reading, isRows: boolean): Limits | Mark {
  const { parts, f } = reading;
  const filters: Filter[] = [];
  const used: number[] = [];
  let against: Filter | null = null;
  const bare = bareAmount(reading);
  used.push(...bare.map(({ at }) => at));
  for (const limited of [...parts.limits, ...bare]) {
    const filter = filterOf(reading, limited, used);
    // "Deposits older than two weeks": since when one is held, no piece's age tells.
    if (limited.unit === "days" && /^(?:deposits|owed)$/.test(reading.measure))
      return parts.marks[limited.at]!;
    // What was asked before it came down, nobody can tell.
    const isPast = /\b(?:was|were|did)\b/.test(parts.said);
    if (limited.limit === "exactly" && filter.of === "asking" && isPast) return parts.marks[limited.at]!;
    if (!isOfWhole(reading, limited, filter, isRows)) {
      // "Over 3 pieces" is held against no single one.
      if (limited.unit === "count") return parts.marks[limited.at]!;
      filters.push(filter);
    } else if (against) return parts.marks[limited.at]!;
    else against = plain(filter);
  }
  if (f.has("loss") && parts.limits.length === 0) {
    const lost: Filter = { dimension: "under", values: ["0"], of: "profit" };
    if (isRows && !f.order) against = plain(lost);
    else if (reading.list || reading.measure === "count" || isOfAny(reading)) filters.push(lost);
  }
  filters.push(...askingLimits(reading));
  return { filters, against, used };
}

/** "Sold at full price", "over asking", "what sold under asking": held against what was first asked. */
function askingLimits({ f, measure }: Reading): Filter[] {
  const values = ["10000"];
  if (f.has("overAsking")) return [{ dimension: "over", values, of: "reached" }];
  if (f.has("fullPrice")) return [{ dimension: "least", values, of: "reached" }];
  return f.has("comeDown") && measure === "count" ? [{ dimension: "under", values, of: "reached" }] : [];
}

/** "Did i lose money on anything": one of them is enough. */
function isOfAny({ parts, f }: Reading): boolean {
  return parts.yesNo && f.generic;
}

function plain({ dimension, values }: Filter): Filter {
  return { dimension, values };
}

/** "Have i cleared 2k this year": an amount alone is what is to be reached. */
function bareAmount({ parts, f }: Reading): Limited[] {
  const [only, more] = parts.amounts;
  if (!only || more || !parts.yesNo || parts.limits.length > 0 || f.has("soldFor", "price")) return [];
  const after = parts.marks[only.at + 1];
  const isCount =
    !only.money && after !== undefined && (after.senses.thing?.plural || after.senses.flags.has("generic"));
  // "Have i driven 100 miles yet"
  const of = !only.money && after ? unitOf(after) : null;
  const unit = of?.name === "miles" || of?.name === "minutes" ? of : null;
  if (unit)
    return [{ limit: "least", cents: only.cents * unit.times, at: only.at, words: 1, unit: unit.name }];
  const isSum = f.has("earn", "net", "revenue", "spent", "sale", "fees", "income");
  if (!only.money && !isCount && !isSum) return [];
  return [
    { limit: "least", cents: only.cents, at: only.at, words: 1, ...(isCount ? { unit: "count" } : {}) },
  ];
}

function filterOf(reading: Reading, { limit, cents, at, unit, words }: Limited, used: number[]): Filter {
  const { parts, measure } = reading;
  const values = [String(cents)];
  // "Over 2 hours of work" says it twice.
  if (unit === "minutes") used.push(...(parts.cues.get("minutes") ?? []));
  // "How many sold within 30 days of listing"
  if (
    unit === "days" &&
    measure === "count" &&
    reading.f.has("sold") &&
    reading.f.has("listed", "daysListed")
  )
    return { dimension: limit, values, of: "days listed" };
  if (unit === "minutes" || unit === "days" || unit === "miles")
    return { dimension: limit, values, ...(isUnitOf(unit, reading) ? {} : { of: unit }) };
  if (unit === "hourly") return { dimension: limit, values, ...(measure === "hourly" ? {} : { of: unit }) };
  // "Over 50 profit", "more than 100 in profit"
  const behind = parts.marks.findIndex(
    ({ senses, text }, next) => next >= at + words && !senses.link && text !== "of",
  );
  if (behind <= at + words + 1 && /^(?:profit|gain)$/.test(parts.marks[behind]?.text ?? "")) {
    if (measure === "profit") return { dimension: limit, values };
    used.push(behind);
    return { dimension: limit, values, of: "profit" };
  }
  const place = parts.marks
    .slice(0, at)
    .findLastIndex(({ senses }) => !senses.flags.has("filler") && (!senses.link || senses.cues.length > 0));
  const before = parts.marks[place];
  const said = LIMITED.find(([cue]) => before?.senses.cues.includes(cue));
  // "Supplies i bought over 20": what each note came to, and no piece's price.
  const isOfSupply = measure === "spent" && reading.f.supply && !reading.f.piece && !reading.f.generic;
  const isOfNotes = measures[measure].byNotes && (said?.[0] === "paid" || isOfSupply);
  if (!said || isOfNotes) return { dimension: limit, values };
  if (said[1] === measure)
    return { dimension: limit, values, ...(limit === "exactly" ? { of: said[1] } : {}) };
  used.push(place);
  // "Cost me over 50 to buy"
  const of = said[1] === "cost" && /\bto buy\b/.test(parts.said) ? "price" : said[1];
  return { dimension: limit, values, of };
}

/** Whether a measure is counted in the unit itself. */
function isUnitOf(unit: "minutes" | "days" | "miles", { measure }: Reading): boolean {
  return measures[measure].unit === unit;
}

/** Whether an amount is held against the whole (or each row) and not against single things. */
function isOfWhole(reading: Reading, { unit }: Limited, { of }: Filter, isRows: boolean): boolean {
  const { parts, f, measure } = reading;
  if (unit === "count") return (isYesNo(parts, f) || isRows) && measure === "count";
  if (unit) return of === undefined && (isYesNo(parts, f) || isRows);
  if (isRows) return of === undefined || of === "profit";
  return (
    isYesNo(parts, f) &&
    !saysSingle(parts) &&
    !f.has("soldFor") &&
    (of === undefined || of === "profit") &&
    measure !== "count"
  );
}

/** "Did any chair make over 300", "did i spend over 50 on one thing". */
function saysSingle({ said }: Parts): boolean {
  return /\b(?:any|anything|one|single|something|ever .* for)\b/.test(said);
}
