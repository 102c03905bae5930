import type { Day } from "../calendar.ts";
import {
  addDays,
  addMonths,
  firstDayOf,
  isDay,
  lastDayOf,
  monthName,
  monthOf,
  sameDayIn,
  showDate,
  showMonth,
  weekdayOf,
} from "../calendar.ts";
import { ORDINALS, WEEKDAYS } from "./lexicon.ts";
import type { Period } from "./query.ts";
import {
  AFTER,
  BEFORE,
  EVER,
  LAST,
  MONTH_NAMES,
  ONWARD,
  SEASONS,
  SINCE,
  SMALL_NUMBERS,
  THIS,
  UNITS,
  UNTIL,
} from "./words/periods.ts";

/** A period found in the words of a question: how many words it took. */
export interface PeriodFound {
  period: Period;
  words: number;
}

/** One stretch as said, before "since" or "to" turns it: `month` where a month was said without its year. */
interface Span {
  from: Day;
  to: Day;
  name: string;
  words: number;
  loose?: { month: number };
  /** A day of a month, so that "june 5 to 20" can go on. */
  isDay?: true;
}

/** How many of the words at `at` are one of some phrases, the longest; 0 for none. */
function phraseLength(words: readonly string[], at: number, phrases: readonly string[]): number {
  let most = 0;
  for (const phrase of phrases) {
    const parts = phrase.split(" ");
    if (parts.length > most && parts.every((part, index) => words[at + index] === part)) most = parts.length;
  }
  return most;
}

const pad = (number: number): string => String(number).padStart(2, "0");

function yearAt(words: readonly string[], at: number): number | null {
  const word = words[at] ?? "";
  // Round thousands and the like are amounts sooner than years.
  if (/^(?:199\d|20[1-9]\d)$/.test(word)) return Number(word);
  return /^'\d\d$/.test(word) ? 2000 + Number(word.slice(1)) : null;
}

function monthSpan(month: string, words: number): Span {
  return { from: firstDayOf(month), to: lastDayOf(month), name: showMonth(month), words };
}

function ordinalOf(word: string | undefined): number | null {
  if (word === undefined) return null;
  const digits = /^(\d{1,2})(?:st|nd|rd|th)$/.exec(word);
  const day = digits ? Number(digits[1]) : (ORDINALS[word] ?? null);
  return day !== null && day >= 1 && day <= 31 ? day : null;
}

function dayNumber(word: string | undefined): number | null {
  if (word !== undefined && /^\d{1,2}$/.test(word)) {
    const day = Number(word);
    return day >= 1 && day <= 31 ? day : null;
  }
  return ordinalOf(word);
}

function daySpan(day: Day, words: number): Span | null {
  if (!isDay(day)) return null;
  return { from: day, to: day, name: showDate(day), words, isDay: true };
}

/** The latest month of a name that has begun by `today`. */
function latestMonth(month: number, today: Day): string {
  const year = Number(today.slice(0, 4));
  const here = `${year}-${pad(month)}`;
  return here <= monthOf(today) ? here : `${year - 1}-${pad(month)}`;
}

/** "june", "june 2026", "june 5", "5 june", "the 3rd of june", "last june". */
function monthAt(words: readonly string[], at: number, today: Day): Span | null {
  const month = MONTH_NAMES[words[at] ?? ""];
  if (month !== undefined) {
    const the = words[at + 1] === "the" ? 1 : 0;
    const day = dayNumber(words[at + 1 + the]);
    if (day !== null) return monthDay(month, day, words, at, 2 + the, today);
    const of = words[at + 1] === "of" ? 1 : 0;
    const year = yearAt(words, at + 1 + of);
    if (year !== null) return monthSpan(`${year}-${pad(month)}`, 2 + of);
    return { ...monthSpan(latestMonth(month, today), 1), loose: { month } };
  }
  const day = dayNumber(words[at]);
  const of = words[at + 1] === "of" ? 1 : 0;
  const after = MONTH_NAMES[words[at + 1 + of] ?? ""];
  if (day === null || after === undefined) return null;
  return monthDay(after, day, words, at, 2 + of, today);
}

function monthDay(
  month: number,
  day: number,
  words: readonly string[],
  at: number,
  taken: number,
  today: Day,
): Span | null {
  const year = yearAt(words, at + taken);
  if (year !== null) return daySpan(`${year}-${pad(month)}-${pad(day)}`, taken + 1);
  const here = `${today.slice(0, 4)}-${pad(month)}-${pad(day)}`;
  const before = `${Number(today.slice(0, 4)) - 1}-${pad(month)}-${pad(day)}`;
  return daySpan(here <= today ? here : before, taken);
}

/** "2026-06-03", "2026-06", "6/3", "6/3/26". */
function digitsAt(words: readonly string[], at: number, today: Day): Span | null {
  const word = words[at] ?? "";
  if (/^\d{4}-\d{2}-\d{2}$/.test(word)) return daySpan(word, 1);
  if (/^\d{4}-(?:0[1-9]|1[0-2])$/.test(word)) return monthSpan(word, 1);
  const slashed = /^(\d{1,2})\/(\d{1,2})(?:\/(\d{2}|\d{4}))?$/.exec(word);
  if (!slashed) return null;
  const [, month, day, year] = slashed as unknown as [string, string, string, string | undefined];
  if (year === undefined) return monthDay(Number(month), Number(day), [], 0, 1, today);
  const full = year.length === 2 ? `20${year}` : year;
  return daySpan(`${full}-${pad(Number(month))}-${pad(Number(day))}`, 1);
}

/** "the 3rd": the latest one not in the future. */
function dayOfMonthAt(words: readonly string[], at: number, today: Day): Span | null {
  const the = words[at] === "the" ? 1 : 0;
  const word = words[at + the];
  const day = ordinalOf(word);
  if (day === null || (the === 0 && !/\d/.test(word!))) return null;
  if (the === 0 && UNITS[words[at + 1] ?? ""]) return null;
  if (!/\d/.test(word!) && (UNITS[words[at + the + 1] ?? ""] || words[at + the + 1] === "half")) return null;
  const inMonth = monthAt(words, at + the, today);
  if (inMonth) return { ...inMonth, words: inMonth.words + the };
  for (let back = 0; back < 4; back += 1) {
    const candidate = `${addMonths(monthOf(today), -back)}-${pad(day)}`;
    if (isDay(candidate) && candidate <= today) return daySpan(candidate, the + 1);
  }
  return null;
}

function weekdayAt(words: readonly string[], at: number, today: Day): Span | null {
  const which = words[at] === "last" || words[at] === "this" || words[at] === "past" ? 1 : 0;
  const word = words[at + which] ?? "";
  const weekday = WEEKDAYS[word];
  // "on tuesdays" are all of them: no period.
  if (weekday === undefined || /days$/.test(word)) return null;
  if (/^(?:an?|every|each)$/.test(words[at - 1] ?? "")) return null;
  // "sat" and "sun" are other words too: they need one before them that only a day takes.
  const leading = /^(?:on|since|last|this|past|until|till|before|after|from)$/.test(words[at - 1] ?? "");
  if ((word === "sat" || word === "sun") && which === 0 && !leading) return null;
  const back = (weekdayOf(today) - weekday + 7) % 7;
  return daySpan(addDays(today, -(back === 0 && words[at] === "last" ? 7 : back)), which + 1);
}

function mondayOf(day: Day): Day {
  return addDays(day, -((weekdayOf(day) + 6) % 7));
}

function quarterSpan(year: number, quarter: number, words: number): Span {
  const first = `${year}-${pad(quarter * 3 - 2)}`;
  return {
    from: firstDayOf(first),
    to: lastDayOf(addMonths(first, 2)),
    name: `Q${quarter} ${year}`,
    words,
  };
}

/** "the first half of the year", "second half of 2025", "h1". */
function halfAt(words: readonly string[], at: number, today: Day): Span | null {
  const the = words[at] === "the" ? 1 : 0;
  const short = /^h([12])$/.exec(words[at] ?? "");
  const word = words[at + the];
  const ordinal = words[at + the + 1] === "half" ? (word === "last" ? 2 : ordinalOf(word)) : null;
  const half = short ? Number(short[1]) : ordinal;
  if (half !== 1 && half !== 2) return null;
  let taken = short ? 1 : the + 2;
  if (words[at + taken] === "of" || words[at + taken] === "in") taken += 1;
  const said = spanAt(words, at + taken, today);
  const year = said?.from.slice(0, 4) ?? today.slice(0, 4);
  if (said && (said.from !== `${year}-01-01` || said.to < `${year}-07-01`)) return null;
  if (!said && words[at + taken] === "the") return null;
  const [from, to] = half === 1 ? [`${year}-01-01`, `${year}-06-30`] : [`${year}-07-01`, `${year}-12-31`];
  const name = `${half === 1 ? "first" : "second"} half of ${year}`;
  return { from, to, name, words: taken + (said?.words ?? (words[at + taken - 1] === "of" ? -1 : 0)) };
}

/** "q2", "second quarter of 2026". */
function quarterAt(words: readonly string[], at: number, today: Day): Span | null {
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
function seasonAt(words: readonly string[], at: number, today: Day): Span | null {
  const which =
    words[at] === "this" || words[at] === "last" || words[at] === "the" || words[at] === "past" ? 1 : 0;
  const word = words[at + which] ?? "";
  const season = SEASONS[word];
  const leading = /^(?:in|during|over|since|for|of|this|the|last)$/.test(words[at - 1] ?? "");
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

/** "this month", "last week", "last 30 days", "past 3 months". */
function unitAt(words: readonly string[], at: number, today: Day): Span | null {
  const isThis = phraseLength(words, at, THIS);
  const isLast = phraseLength(words, at, LAST);
  const taken = isThis || isLast;
  if (taken === 0) return null;
  const which = isThis ? "this" : "last";
  const word = words[at + taken] ?? "";
  if (word === "weekend") return weekendSpan(which, taken + 1, today);
  const unit = UNITS[word];
  if (unit) return wholeUnit(which, unit, taken + 1, today);
  if (isThis) return null;
  const couple = word === "couple" ? (words[at + taken + 1] === "of" ? 2 : 1) : 0;
  const count = couple ? 2 : /^\d{1,4}$/.test(word) ? Number(word) : (SMALL_NUMBERS[word] ?? 0);
  const more = couple || 1;
  const units = UNITS[words[at + taken + more] ?? ""];
  return count > 0 && units ? rolling(count, units, taken + more + 1, today) : null;
}

/** "for the year": the running one. */
function runningUnit(words: readonly string[], at: number, today: Day): Span | null {
  const unit =
    words[at] === "the" && /^(?:for|in|of|during|on)$/.test(words[at - 1] ?? "") ? words[at + 1] : undefined;
  if (unit !== "year" && unit !== "month" && unit !== "week" && unit !== "quarter") return null;
  return wholeUnit("this", unit, 2, today);
}

function weekendSpan(which: "this" | "last", words: number, today: Day): Span {
  const saturday = addDays(mondayOf(today), which === "this" ? 5 : -2);
  return { from: saturday, to: addDays(saturday, 1), name: `${which} weekend`, words };
}

function wholeUnit(which: "this" | "last", unit: string, words: number, today: Day): Span {
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
function rolling(count: number, unit: string, words: number, today: Day): Span {
  const name = `last ${count} ${unit}${count === 1 ? "" : "s"}`;
  const months = unit === "month" ? count : unit === "quarter" ? 3 * count : unit === "year" ? 12 * count : 0;
  if (months === 0) {
    const days = unit === "week" ? 7 * count : count;
    return { from: addDays(today, 1 - days), to: today, name, words };
  }
  return { from: addDays(sameDayIn(today, -months), 1), to: today, name, words };
}

const STARTS: readonly string[] = [
  "the start of",
  "the beginning of",
  "start of",
  "beginning of",
  "the first of",
];

/** "the start of the year". */
function startAt(words: readonly string[], at: number, today: Day): Span | null {
  const taken = phraseLength(words, at, STARTS);
  if (taken === 0) return null;
  const the = /^(?:the|this)$/.test(words[at + taken] ?? "") ? 1 : 0;
  const word = words[at + taken + the] ?? "";
  if (word === "year") return daySpan(`${today.slice(0, 4)}-01-01`, taken + the + 1);
  if (word === "month") return daySpan(`${monthOf(today)}-01`, taken + the + 1);
  if (word === "week") return daySpan(mondayOf(today), taken + the + 1);
  const named = monthAt(words, at + taken, today);
  return named && !named.isDay ? { ...daySpan(named.from, 0)!, words: taken + named.words } : null;
}

/** "3 days ago", "a week ago". */
function agoAt(words: readonly string[], at: number, today: Day): Span | null {
  const word = words[at] ?? "";
  const count =
    word === "a" || word === "an" ? 1 : /^\d{1,3}$/.test(word) ? Number(word) : SMALL_NUMBERS[word];
  const unit = UNITS[words[at + 1] ?? ""];
  if (count === undefined || !unit || words[at + 2] !== "ago") return null;
  if (unit === "day" || unit === "week")
    return daySpan(addDays(today, -count * (unit === "week" ? 7 : 1)), 3);
  return null;
}

const DAY_WORDS: Readonly<Record<string, number>> = { today: 0, yesterday: 1, yday: 1, tonight: 0 };

function spanAt(words: readonly string[], at: number, today: Day): Span | null {
  const word = words[at] ?? "";
  const named = DAY_WORDS[word];
  if (named !== undefined) {
    const day = addDays(today, -named);
    return { from: day, to: day, name: named === 0 ? "today" : "yesterday", words: 1, isDay: true };
  }
  if (word === "ytd" || word === "mtd") return wholeUnit("this", word === "ytd" ? "year" : "month", 1, today);
  if (
    phraseLength(words, at, [
      "year to date",
      "month to date",
      "the year to date",
      "the year so far",
      "the month so far",
      "the week so far",
    ]) > 0
  ) {
    const skip = word === "the" ? 1 : 0;
    return wholeUnit("this", UNITS[words[at + skip]!]!, 3 + skip, today);
  }
  const found =
    runningUnit(words, at, today) ??
    halfAt(words, at, today) ??
    unitAt(words, at, today) ??
    startAt(words, at, today) ??
    digitsAt(words, at, today) ??
    agoAt(words, at, today) ??
    quarterAt(words, at, today) ??
    seasonAt(words, at, today) ??
    weekdayAt(words, at, today) ??
    monthAt(words, at, today) ??
    dayOfMonthAt(words, at, today);
  if (found) return found;
  return lastNamed(words, at, today) ?? yearSpan(words, at);
}

/** "last june", "this october": the month itself. */
function lastNamed(words: readonly string[], at: number, today: Day): Span | null {
  const isMonthOf = words[at] === "month" && words[at + 1] === "of";
  if (!isMonthOf && words[at] !== "last" && words[at] !== "this" && words[at] !== "past") return null;
  const skip = isMonthOf ? 2 : 1;
  const named = monthAt(words, at + skip, today);
  return named && !named.isDay ? { ...named, words: named.words + skip } : null;
}

function yearSpan(words: readonly string[], at: number): Span | null {
  const skip = words[at] === "year" || words[at] === "calendar" ? 1 : 0;
  const year = yearAt(words, at + skip);
  if (year === null) return null;
  return { from: `${year}-01-01`, to: `${year}-12-31`, name: String(year), words: 1 + skip };
}

/**
 * The period that the words say from `at` on, read to its longest; null where they say none. A month without a
 * year is the latest that has begun by `today`; what runs on ends today.
 */
export function periodAt(words: readonly string[], at: number, today: Day): PeriodFound | null {
  const ever = phraseLength(words, at, EVER);
  if (ever > 0) return { period: { from: null, to: null, name: "ever" }, words: ever };
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
    return {
      period: { from: span.from, to: today, name: `since ${nameOfStart(span)}` },
      words: since + span.words,
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
