import type { Day } from "../calendar.ts";
import { addDays, addMonths, monthName, monthOf, sameDayIn, showDate } from "../calendar.ts";
import { mondayOf, monthSpan, phraseLength, type Span } from "./named-days.ts";
import { quarterSpan } from "./seasons.ts";
import { ways } from "./words/ways.ts";

/*
 * Stretches of time by their unit: the running one, the one before, so many of them up to today.
 */

/** The weekend of the running week, or of the one before. */
export function weekendSpan(which: "this" | "last", words: number, today: Day): Span {
  const saturday = addDays(mondayOf(today), which === "this" ? 5 : -2);
  return { from: saturday, to: addDays(saturday, 1), name: `${which} weekend`, words };
}

/** The running week, month, quarter or year, or the one before it. */
export function wholeUnit(which: "this" | "last", unit: string, words: number, today: Day): Span {
  const back = which === "this" ? 0 : 1;
  const year = Number(today.slice(0, 4));
  switch (unit) {
    case "day":
      return { from: addDays(today, -back), to: addDays(today, -back), name: `${which} day`, words };
    case "week": {
      const monday = addDays(mondayOf(today), -7 * back);
      return { from: monday, to: addDays(monday, 6), name: `${which} week`, words };
    }
    case "month": {
      const span = monthSpan(addMonths(monthOf(today), -back), words);
      return back === 0 ? { ...span, to: today, name: `${span.name} so far` } : span;
    }
    case "quarter": {
      const first = addMonths(monthOf(today), -3 * back);
      return quarterSpan(Number(first.slice(0, 4)), Math.ceil(Number(first.slice(5)) / 3), words);
    }
    default:
      return {
        from: `${year - back}-01-01`,
        to: back === 0 ? today : `${year - 1}-12-31`,
        name: back === 0 ? `${year} so far` : String(year - 1),
        words,
      };
  }
}

/** Up to today, today included; months and years back by the calendar. */
export function rolling(count: number, unit: string, words: number, today: Day): Span {
  const name = `last ${count} ${unit}${count === 1 ? "" : "s"}`;
  const months = unit === "month" ? count : unit === "quarter" ? 3 * count : unit === "year" ? 12 * count : 0;
  if (months === 0) {
    const days = unit === "week" ? 7 * count : count;
    return { from: addDays(today, 1 - days), to: today, name, words };
  }
  return { from: addDays(sameDayIn(today, -months), 1), to: today, name, words };
}

/** "The same time last month", "this time last year": as far into it as today is into the running one. */
export function sameDaysAt(words: readonly string[], at: number, today: Day): Span | null {
  const taken = phraseLength(words, at, SAME_DAYS);
  const unit = words[at + taken + 1] ?? "";
  if (taken === 0 || !/^(?:last|previous|prior)$/.test(words[at + taken] ?? "")) return null;
  const back = { week: 0, month: 1, quarter: 3, year: 12 }[unit];
  if (back === undefined) return null;
  const whole = wholeUnit("last", unit, 0, today);
  const to = back === 0 ? addDays(today, -7) : sameDayIn(today, -back);
  const day = showDate(to).replace(/, \d{4}$/, "");
  const name =
    unit === "month"
      ? `${monthName(monthOf(to))} 1 to ${Number(to.slice(8))}, ${to.slice(0, 4)}`
      : `${whole.name} to ${day}`;
  return { from: whole.from, to, name, words: taken + 2 };
}
const SAME_DAYS: readonly string[] = [
  ...ways("|at", "|the", "same", "time|days|day|stretch|point|period|dates", "|of|in", "|the"),
  ...ways("|at", "this", "time|point|day|moment", "|of|in", "|the"),
];
