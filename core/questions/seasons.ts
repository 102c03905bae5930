import type { Day } from "../calendar.ts";
import { addMonths, firstDayOf, lastDayOf } from "../calendar.ts";
import { ordinalOf, pad, type Span, yearAt } from "./named-days.ts";
import { SEASONS } from "./words/periods.ts";

/** A quarter of a year, with how many words said it. */
export function quarterSpan(year: number, quarter: number, words: number): Span {
  const first = `${year}-${pad(quarter * 3 - 2)}`;
  return {
    from: firstDayOf(first),
    to: lastDayOf(addMonths(first, 2)),
    name: `Q${quarter} ${year}`,
    words,
  };
}

/** "q2", "second quarter of 2026". */
export function quarterAt(words: readonly string[], at: number, today: Day): Span | null {
  const short = /^q([1-4])$/.exec(words[at] ?? "");
  const the = words[at] === "the" ? 1 : 0;
  const ordinal = words[at + the + 1] === "quarter" ? ordinalOf(words[at + the]) : null;
  const quarter = short ? Number(short[1]) : ordinal;
  if (quarter === null || quarter > 4) return null;
  const taken = short ? 1 : the + 2;
  const of = words[at + taken] === "of" ? 1 : 0;
  const said = yearAt(words, at + taken + of);
  if (said !== null) return quarterSpan(said, quarter, taken + of + 1);
  const year = Number(today.slice(0, 4));
  const here = quarterSpan(year, quarter, taken);
  return here.from <= today ? here : quarterSpan(year - 1, quarter, taken);
}

/** "summer", "last winter", "summer of 2025". */
export function seasonAt(words: readonly string[], at: number, today: Day): Span | null {
  const which =
    words[at] === "this" || words[at] === "last" || words[at] === "the" || words[at] === "past" ? 1 : 0;
  const word = words[at + which] ?? "";
  const season = SEASONS[word];
  const leading = /^(?:in|during|over|since|for|of|this|the|last|vs|versus|than|or|to|with|plus|and)$/.test(
    words[at - 1] ?? "",
  );
  if (!season || (word === "fall" && which === 0 && !leading)) return null;
  const of = words[at + which + 1] === "of" ? 1 : 0;
  const said = yearAt(words, at + which + 1 + of);
  const make = (year: number, taken: number): Span => {
    const first = `${season === 12 ? year - 1 : year}-${pad(season)}`;
    const name = `${word} ${year}`;
    return { from: firstDayOf(first), to: lastDayOf(addMonths(first, 2)), name, words: taken };
  };
  if (said !== null) return make(said, which + 2 + of);
  const year = Number(today.slice(0, 4)) + 1;
  const all = [year, year - 1, year - 2, year - 3].map((each) => make(each, which + 1));
  const begun = all.filter(({ from }) => from <= today);
  // "Last summer" said in one is the one before.
  return (words[at] === "last" && begun[0]!.to >= today ? begun[1] : begun[0]) ?? null;
}
