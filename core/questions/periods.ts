import type { Day } from "../calendar.ts";
import {
  addDays,
  addMonths,
  firstDayOf,
  lastDayOf,
  monthName,
  monthOf,
  showDate,
  showMonth,
} from "../calendar.ts";
import { dayNumber, daySpan, pad, phraseLength, type Span } from "./named-days.ts";
import type { Period } from "./query.ts";
import { spanAt } from "./spans.ts";
import { wholeUnit } from "./units.ts";
import { AFTER, BEFORE, EVER, MONTH_NAMES, ONWARD, SINCE, UNTIL } from "./words/periods.ts";

/** A period found in the words of a question: how many words it took. */
export interface PeriodFound {
  period: Period;
  words: number;
}

/**
 * The period that the words say from `at` on, read to its longest; null where they say none. A month without a
 * year is the latest that has begun by `today`; what runs on ends today.
 */
export function periodAt(words: readonly string[], at: number, today: Day): PeriodFound | null {
  const ever = phraseLength(words, at, EVER);
  // "Since the start of september" is no whole time.
  if (ever > 0 && words[at + ever] !== "of")
    return { period: { from: null, to: null, name: "ever" }, words: ever };
  const turned = turnedAt(words, at, today);
  if (turned) return turned;
  const span = spanAt(words, at, today);
  if (!span) return null;
  return rangeFrom(words, at, span, today, false) ?? { period: periodOf(span), words: span.words };
}

function periodOf({ from, to, name }: Span): Period {
  return { from, to, name };
}

/** "since june", "before may", "between june and august", "from june to august", "until august". */
function turnedAt(words: readonly string[], at: number, today: Day): PeriodFound | null {
  const between = phraseLength(words, at, ["between", "anywhere between", "in between"]);
  if (between > 0) {
    const span = spanAt(words, at + between, today);
    const range = span ? rangeFrom(words, at + between, span, today, true) : null;
    return range ? { ...range, words: range.words + between } : null;
  }
  const since = phraseLength(words, at, SINCE);
  if (since > 0) {
    const span = spanAt(words, at + since, today);
    if (!span) return null;
    const range = rangeFrom(words, at + since, span, today, words[at] === "from");
    if (range) return { ...range, words: range.words + since };
    if (words[at] === "from") return null;
    // "Since summer began"
    const began = /^(?:began|begun|started|kicked)$/.test(words[at + since + span.words] ?? "") ? 1 : 0;
    return {
      period: { from: span.from, to: today, name: `since ${nameOfStart(span)}` },
      words: since + span.words + began,
    };
  }
  return momentAt(words, at, today) ?? edgeAt(words, at, today);
}

const MOMENTS: readonly string[] = ["the end of", "end of", "as of"];

/** "At the end of june", "as of the 3rd": how things stood then. */
function momentAt(words: readonly string[], at: number, today: Day): PeriodFound | null {
  const taken = phraseLength(words, at, MOMENTS);
  const span = taken > 0 ? spanAt(words, at + taken, today) : null;
  if (!span) return null;
  const name = words[at] === "as" ? `as of ${span.name}` : `end of ${span.name}`;
  return { period: { from: null, to: span.to, name, moment: true }, words: taken + span.words };
}

/** An end alone: "before june", "up to august", "after the 3rd". */
function edgeAt(words: readonly string[], at: number, today: Day): PeriodFound | null {
  const before = phraseLength(words, at, BEFORE);
  const after = phraseLength(words, at, AFTER);
  const until = phraseLength(
    words,
    at,
    UNTIL.filter((word) => !["to", "-", "–", "and"].includes(word)),
  );
  const taken = before || after || until;
  const span = taken > 0 ? spanAt(words, at + taken, today) : null;
  if (!span) return null;
  const whole = taken + span.words;
  if (before > 0)
    return {
      period: { from: null, to: addDays(span.from, -1), name: `before ${nameOfStart(span)}` },
      words: whole,
    };
  if (after > 0)
    return { period: { from: addDays(span.to, 1), to: today, name: `after ${span.name}` }, words: whole };
  return { period: { from: null, to: span.to, name: `up to ${span.name}` }, words: whole };
}

function nameOfStart(span: Span): string {
  return span.isDay || span.from.slice(8) !== "01" ? showDate(span.from) : span.name;
}

/** What follows a stretch: "… to august", "… till now", "… onwards". `open`: "and" and "on" count too. */
function rangeFrom(
  words: readonly string[],
  at: number,
  start: Span,
  today: Day,
  open: boolean,
): PeriodFound | null {
  const next = at + start.words;
  const onward = phraseLength(words, next, ONWARD);
  const isOn = onward === 1 && words[next] === "on";
  if (onward > 0 && (open || !isOn))
    return {
      period: { from: start.from, to: today, name: `since ${nameOfStart(start)}` },
      words: start.words + onward,
    };
  const until = phraseLength(words, next, open ? UNTIL : UNTIL.filter((word) => word !== "and"));
  if (until === 0) return null;
  const end = spanAt(words, next + until, today) ?? sameMonthDay(words, next + until, start);
  if (!end) return null;
  const from = dayOfLater(
    words.slice(at, next),
    start,
    words.slice(next + until, next + until + end.words),
    end,
  );
  return { period: joined(from, end), words: start.words + until + end.words };
}

/** "between the 5th and 20th of august": a day without its month is of the month said behind it. */
function dayOfLater(said: readonly string[], start: Span, behind: readonly string[], end: Span): Span {
  const day = dayNumber(said.at(-1));
  const isMonth = (word: string): boolean => word in MONTH_NAMES;
  if (day === null || !start.isDay || !end.isDay || said.some(isMonth) || !behind.some(isMonth)) return start;
  const same = daySpan(`${monthOf(end.from)}-${pad(day)}`, start.words);
  return same && same.from <= end.to ? same : start;
}

/** "june 5 to 20". */
function sameMonthDay(words: readonly string[], at: number, start: Span): Span | null {
  const day = start.isDay ? dayNumber(words[at]) : null;
  return day === null ? null : daySpan(`${monthOf(start.from)}-${pad(day)}`, 1);
}

/** From the first day of one to the last of the other, a month without a year taking the other's. */
function joined(start: Span, end: Span): Period {
  let from = start.from;
  let to = end.to;
  if (start.loose && !end.loose && from.slice(0, 4) !== to.slice(0, 4))
    from = `${to.slice(0, 4)}${from.slice(4)}`;
  if (end.loose && !start.loose && to < from) to = lastDayOf(addMonths(monthOf(to), 12));
  if (from > to) from = firstDayOf(addMonths(monthOf(from), -12));
  const isWhole = from.slice(8) === "01" && to === lastDayOf(monthOf(to));
  const name = isWhole
    ? `${monthName(monthOf(from))} to ${showMonth(monthOf(to))}`
    : `${showDate(from)} to ${showDate(to)}`;
  return { from, to, name };
}

/** The same stretch a year before, of whole months: "november" in "this november and last november". */
export function yearBefore({ from, to, name }: Period): Period {
  if (from === null || to === null) return { from, to, name };
  const first = firstDayOf(addMonths(monthOf(from), -12));
  const last = lastDayOf(addMonths(monthOf(to), -12));
  const before = name.replace(/\d{4}/, (year) => String(Number(year) - 1)).replace(/ so far$/, "");
  return { from: first, to: last, name: before };
}

/** The running month up to today: what a bare "how much did i make" asks for. */
export function thisMonth(today: Day): Period {
  return periodOf(wholeUnit("this", "month", 0, today));
}
