import type { Day } from "../calendar.ts";
import { addDays, addMonths, lastDayOf, monthOf } from "../calendar.ts";
import {
  dayOfMonthAt,
  daySpan,
  digitsAt,
  holidayAt,
  mondayOf,
  monthAt,
  monthSpan,
  ordinalOf,
  phraseLength,
  type Span,
  weekdayAt,
  yearAt,
} from "./named-days.ts";
import { quarterAt, seasonAt } from "./seasons.ts";
import { rolling, sameDaysAt, weekendSpan, wholeUnit } from "./units.ts";
import { LAST, SMALL_NUMBERS, THIS, UNITS } from "./words/periods.ts";

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
  if (said && said.to === lastDayOf(monthOf(said.from)) && said.from.endsWith("-01")) {
    const middle = `${monthOf(said.from)}-${half === 1 ? "15" : "16"}`;
    const name = `${half === 1 ? "first" : "second"} half of ${said.name}`;
    const [from, to] = half === 1 ? [said.from, middle] : [middle, said.to];
    return { from, to, name, words: taken + said.words };
  }
  const year = said?.from.slice(0, 4) ?? today.slice(0, 4);
  if (said && (said.from !== `${year}-01-01` || said.to < `${year}-07-01`)) return null;
  if (!said && words[at + taken] === "the") return null;
  const [from, to] = half === 1 ? [`${year}-01-01`, `${year}-06-30`] : [`${year}-07-01`, `${year}-12-31`];
  const name = `${half === 1 ? "first" : "second"} half of ${year}`;
  return { from, to, name, words: taken + (said?.words ?? (words[at + taken - 1] === "of" ? -1 : 0)) };
}

/** "the first week of june": its first seven days; "the last week of june": its last. */
function weekOfMonth(words: readonly string[], at: number, today: Day): Span | null {
  const the = words[at] === "the" ? 1 : 0;
  const isLast = words[at + the] === "last";
  const week = isLast ? 5 : ordinalOf(words[at + the]);
  if (words[at + the + 1] !== "week" || !/^(?:of|in)$/.test(words[at + the + 2] ?? "") || week === null)
    return null;
  const said = spanAt(words, at + the + 3, today);
  if (!said?.from.endsWith("-01") || monthOf(said.from) !== monthOf(said.to) || week > 5) return null;
  const last = lastDayOf(monthOf(said.from));
  const from = isLast ? addDays(last, -6) : addDays(said.from, 7 * (week - 1));
  if (from > last) return null;
  const to = isLast || addDays(from, 6) > last ? last : addDays(from, 6);
  return { from, to, name: `${words[at + the]} week of ${said.name}`, words: the + 3 + said.words };
}

/** "The first 15 days of last month", "the last two weeks of june": so much of a stretch from one of its ends. */
function edgeOfSpan(words: readonly string[], at: number, today: Day): Span | null {
  const the = words[at] === "the" ? 1 : 0;
  const end = words[at + the];
  if (end !== "first" && end !== "last") return null;
  const word = words[at + the + 1] ?? "";
  const count = /^\d{1,3}$/.test(word) ? Number(word) : (SMALL_NUMBERS[word] ?? 0);
  const unit = UNITS[words[at + the + 2] ?? ""];
  if (count === 0 || !unit || unit === "quarter" || !/^(?:of|in)$/.test(words[at + the + 3] ?? ""))
    return null;
  const said = spanAt(words, at + the + 4, today);
  if (!said || said.from === said.to) return null;
  const days = unit === "day" ? count : unit === "week" ? 7 * count : 0;
  const months = unit === "month" ? count : 12 * count;
  const [from, to] =
    end === "first"
      ? [
          said.from,
          days > 0 ? addDays(said.from, days - 1) : lastDayOf(addMonths(monthOf(said.from), months - 1)),
        ]
      : [days > 0 ? addDays(said.to, 1 - days) : `${addMonths(monthOf(said.to), 1 - months)}-01`, said.to];
  if (from < said.from || to > said.to) return null;
  const name = `${end} ${count} ${unit}${count === 1 ? "" : "s"} of ${said.name}`;
  return { from, to, name, words: the + 4 + said.words };
}

/** "Early september", "mid july", "late in august": its first ten days, the ten in the middle, and the rest. */
function partOfMonth(words: readonly string[], at: number, today: Day): Span | null {
  const part = { early: 0, mid: 1, middle: 1, late: 2 }[words[at] ?? ""];
  if (part === undefined) return null;
  const skip = /^(?:in|of)$/.test(words[at + 1] ?? "") ? 2 : 1;
  const named = monthAt(words, at + skip, today);
  if (!named || named.isDay) return null;
  const [from, to] = [
    [named.from, addDays(named.from, 9)],
    [addDays(named.from, 10), addDays(named.from, 19)],
    [addDays(named.from, 20), named.to],
  ][part] as [Day, Day];
  return { from, to, name: `${words[at]} ${named.name}`, words: skip + named.words };
}

/** "the week of october 12". */
function weekAround(words: readonly string[], at: number, today: Day): Span | null {
  const the = words[at] === "the" ? 1 : 0;
  if (words[at + the] !== "week" || words[at + the + 1] !== "of") return null;
  const said = spanAt(words, at + the + 2, today);
  if (!said || said.from !== said.to) return null;
  const monday = mondayOf(said.from);
  return { from: monday, to: addDays(monday, 6), name: `week of ${said.name}`, words: the + 2 + said.words };
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
  // "The last day i worked"
  if (unit === "day" && !isThis && /^(?:i|we|ive|weve|that|of|when)$/.test(words[at + taken + 1] ?? ""))
    return null;
  if (unit) return wholeUnit(which, unit, taken + 1, today);
  if (isThis) return null;
  const couple = word === "couple" ? (words[at + taken + 1] === "of" ? 2 : 1) : 0;
  const count = couple ? 2 : /^\d{1,4}$/.test(word) ? Number(word) : (SMALL_NUMBERS[word] ?? 0);
  const more = couple || 1;
  const units = UNITS[words[at + taken + more] ?? ""];
  return count > 0 && units ? rolling(count, units, taken + more + 1, today) : null;
}

/** "for the year", "all year": the running one. */
function runningUnit(words: readonly string[], at: number, today: Day): Span | null {
  const all = words[at] === "all" ? words[at + 1] : undefined;
  if (all === "year" || all === "month" || all === "week" || all === "quarter")
    return wholeUnit("this", all, 2, today);
  // "For the year", "hows my week going"
  const isLed =
    (words[at] === "the" && /^(?:for|in|of|during|on)$/.test(words[at - 1] ?? "")) ||
    (/^(?:the|my|our)$/.test(words[at] ?? "") && /^(?:how|hows|is|was|did|has)$/.test(words[at - 1] ?? ""));
  const unit = isLed && words[at + 2] !== "of" ? words[at + 1] : undefined;
  if (unit !== "year" && unit !== "month" && unit !== "week" && unit !== "quarter") return null;
  return wholeUnit("this", unit, 2, today);
}

/** "the month before last". */
function beforeLast(words: readonly string[], at: number, today: Day): Span | null {
  const the = words[at] === "the" ? 1 : 0;
  const unit = words[at + the];
  if (words[at + the + 1] === "before" && words[at + the + 2] === "last") {
    if (unit === "week" || unit === "weekend") {
      const monday = addDays(mondayOf(today), -14);
      const from = unit === "week" ? monday : addDays(monday, 5);
      return { from, to: addDays(monday, 6), name: `${unit} before last`, words: the + 3 };
    }
    const year = Number(today.slice(0, 4)) - 2;
    if (unit === "year")
      return { from: `${year}-01-01`, to: `${year}-12-31`, name: String(year), words: the + 3 };
  }
  if (unit !== "month" || words[at + the + 1] !== "before") return null;
  if (words[at + the + 2] === "last") return monthSpan(addMonths(monthOf(today), -2), the + 3);
  // "October versus the month before": before the one said earlier.
  const said = at === 0 ? null : monthSaid(words.slice(0, at), today);
  return said ? monthSpan(addMonths(monthOf(said.from), -1), the + 2) : null;
}

/** The last whole month that some words say. */
function monthSaid(words: readonly string[], today: Day): Span | null {
  for (let at = words.length - 1; at >= 0; at -= 1) {
    const said = spanAt(words, at, today);
    if (said?.from.endsWith("-01") && monthOf(said.from) === monthOf(said.to)) return said;
  }
  return null;
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
  if (unit === "month" && count > 0) return monthSpan(addMonths(monthOf(today), -count), 3);
  if (unit !== "day" && unit !== "week") return null;
  const day = addDays(today, -count * (unit === "week" ? 7 : 1));
  // "Sold two weeks ago" is of that week, "since two weeks ago" of its day.
  const isEdge = /^(?:since|from|to|until|till|before|after|through)$/.test(words[at - 1] ?? "");
  if (unit === "day" || isEdge) return daySpan(day, 3);
  const monday = mondayOf(day);
  return {
    from: monday,
    to: addDays(monday, 6),
    name: `${count} week${count === 1 ? "" : "s"} ago`,
    words: 3,
  };
}

const DAY_WORDS: Readonly<Record<string, number>> = { today: 0, yesterday: 1, yday: 1, tonight: 0 };

/** The stretch that the words name from `at` on, by its unit or its name; null where they name none. */
export function spanAt(words: readonly string[], at: number, today: Day): Span | null {
  const word = words[at] ?? "";
  const named = DAY_WORDS[word];
  if (named !== undefined) {
    const day = addDays(today, -named);
    return { from: day, to: day, name: named === 0 ? "today" : "yesterday", words: 1, isDay: true };
  }
  const toDate = { ytd: "year", qtd: "quarter", mtd: "month", wtd: "week" }[word];
  if (toDate) return wholeUnit("this", toDate, 1, today);
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
    sameDaysAt(words, at, today) ??
    runningUnit(words, at, today) ??
    halfAt(words, at, today) ??
    weekAround(words, at, today) ??
    weekOfMonth(words, at, today) ??
    edgeOfSpan(words, at, today) ??
    unitAt(words, at, today) ??
    startAt(words, at, today) ??
    partOfMonth(words, at, today) ??
    digitsAt(words, at, today) ??
    agoAt(words, at, today) ??
    beforeLast(words, at, today) ??
    quarterAt(words, at, today) ??
    seasonAt(words, at, today) ??
    weekdayAt(words, at, today) ??
    holidayAt(words, at, today) ??
    monthAt(words, at, today) ??
    dayOfMonthAt(words, at, today);
  if (found) return found;
  return lastNamed(words, at, today) ?? yearSpan(words, at);
}

/** "last june", "this october": the month itself. */
function lastNamed(words: readonly string[], at: number, today: Day): Span | null {
  const the = words[at] === "the" ? 1 : 0;
  const isMonthOf = words[at + the] === "month" && words[at + the + 1] === "of";
  if (!isMonthOf && words[at] !== "last" && words[at] !== "this" && words[at] !== "past") return null;
  const skip = isMonthOf ? the + 2 : 1;
  const named = monthAt(words, at + skip, today);
  return named && !named.isDay ? { ...named, words: named.words + skip } : null;
}

function yearSpan(words: readonly string[], at: number): Span | null {
  const skip = words[at] === "year" || words[at] === "calendar" ? 1 : 0;
  const year = yearAt(words, at + skip);
  if (year === null) return null;
  return { from: `${year}-01-01`, to: `${year}-12-31`, name: String(year), words: 1 + skip };
}
