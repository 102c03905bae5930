/** A local date, "YYYY-MM-DD", in the ledger's time zone. Days compare as strings. */
export type Day = string;
/** A local month, "YYYY-MM". */
export type Month = string;
/** An instant: milliseconds since 1970-01-01T00:00:00Z. */
export type Instant = number;

/** Milliseconds in a day of 24 hours: for stretches of time, never to step from one local day to the next. */
export const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;

/** Whether `text` is a day that exists: "2024-02-29" is one, "2026-02-29" is not. */
export function isDay(text: string): boolean {
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && dayOfNumber(numberOfDay(text)) === text;
}

/** Days since 1970-01-01 of a day; the inverse of `dayOfNumber`. */
function numberOfDay(day: Day): number {
  return Date.UTC(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8, 10))) / DAY_MS;
}

function dayOfNumber(dayNumber: number): Day {
  return new Date(dayNumber * DAY_MS).toISOString().slice(0, 10);
}

/** The day so many calendar days later; before it where `days` is negative. */
export function addDays(day: Day, days: number): Day {
  // No month is shorter than 28 days: within them only the last two digits change.
  const dayOfMonth = Number(day.slice(8)) + days;
  if (dayOfMonth >= 1 && dayOfMonth <= 28) return day.slice(0, 8) + String(dayOfMonth).padStart(2, "0");
  return dayOfNumber(numberOfDay(day) + days);
}

/** Calendar days from one day to another (dates are counted, not hours). */
export function daysBetween(from: Day, to: Day): number {
  return numberOfDay(to) - numberOfDay(from);
}

/** 0 for Sunday … 6 for Saturday. */
export function weekdayOf(day: Day): number {
  return (((numberOfDay(day) + 4) % 7) + 7) % 7;
}

export function monthOf(day: Day): Month {
  return day.slice(0, 7);
}

/** The month so many months later; before it where `months` is negative. */
export function addMonths(month: Month, months: number): Month {
  const index = Number(month.slice(0, 4)) * 12 + Number(month.slice(5, 7)) - 1 + months;
  return `${String(Math.floor(index / 12)).padStart(4, "0")}-${String((index % 12) + 1).padStart(2, "0")}`;
}

export function firstDayOf(month: Month): Day {
  return `${month}-01`;
}

export function lastDayOf(month: Month): Day {
  return addDays(firstDayOf(addMonths(month, 1)), -1);
}

/** The same day of the month so many months later; that month's last where it is shorter. */
export function sameDayIn(day: Day, months: number): Day {
  return dayInMonth(addMonths(monthOf(day), months), Number(day.slice(8)));
}

/** A day of a month by its number, its last day where the month is shorter. */
export function dayInMonth(month: Month, day: number): Day {
  const last = lastDayOf(month);
  return Number(last.slice(8)) < day ? last : addDays(firstDayOf(month), day - 1);
}

/** 365, or 366 in a leap year of the Gregorian calendar. */
export function daysInYear(year: number): 365 | 366 {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 366 : 365;
}

const MONTH_NAMES = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];
const WEEKDAY_NAMES = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];

/** The first three letters of each weekday, in the order of `weekdayOf`. */
export const WEEKDAYS: readonly string[] = WEEKDAY_NAMES.map((name) => name.toLowerCase());

/** A day's weekday as a person reads it: "Sat". */
export function weekdayName(day: Day): string {
  return WEEKDAY_NAMES[weekdayOf(day)]!;
}

/** A month as a person reads it: "May 2026". */
export function showMonth(month: Month): string {
  return `${monthName(month)} ${month.slice(0, 4)}`;
}

/** A month's name without its year: "May". */
export function monthName(month: Month): string {
  return MONTH_NAMES[Number(month.slice(5, 7)) - 1]!;
}

/** A day as a person reads it beside `today`: "Sat May 9", with the year where it is another. */
export function showDay(day: Day, today: Day): string {
  const month = monthName(monthOf(day)).slice(0, 3);
  const text = `${WEEKDAY_NAMES[weekdayOf(day)]} ${month} ${Number(day.slice(8, 10))}`;
  return day.slice(0, 4) === today.slice(0, 4) ? text : `${text}, ${day.slice(0, 4)}`;
}

/** A day with its year and without its weekday: "May 9, 2026". */
export function showDate(day: Day): string {
  return showDay(day, "").slice(4);
}

/** How long ago, in days: "today", "1 day", "12 days". */
export function showDays(days: number): string {
  if (days === 0) return "today";
  return days === 1 ? "1 day" : `${days} days`;
}

/** What tells of one time zone how many minutes it is ahead of UTC at an instant. */
export interface ZoneClock {
  zone: string;
  minutesAhead(instant: Instant): number;
}

let clock: ZoneClock | null = null;

/**
 * Hands in a clock for one zone, or takes it back. Formats, which know every zone, bring along the calendars of all
 * languages: seven megabytes that a zone with a clock of its own does without.
 */
export function handInClock(of: ZoneClock | null): void {
  clock = of;
}

/** The local day of an instant in an IANA time zone: the one place where an instant becomes a day. */
export function dayOfInstant(instant: Instant, zone: string): Day {
  return clock?.zone === zone ? toldBy(clock, instant).slice(0, 10) : formatIn(zone, "day").format(instant);
}

/** The local time of an instant in an IANA time zone, "18:05"; times of a day compare as strings. */
export function timeOfInstant(instant: Instant, zone: string): string {
  return clock?.zone === zone ? toldBy(clock, instant).slice(11, 16) : formatIn(zone, "time").format(instant);
}

const toldBy = (of: ZoneClock, instant: Instant): string =>
  new Date(instant + of.minutesAhead(instant) * MINUTE_MS).toISOString();

/** A local time of day as a person says it: "18:30" is "6:30 pm", "18:00" is "6 pm". */
export function showTime(time: string): string {
  const [hour, minute] = time.split(":") as [string, string];
  const twelve = Number(hour) % 12 || 12;
  return `${twelve}${minute === "00" ? "" : `:${minute}`} ${Number(hour) < 12 ? "am" : "pm"}`;
}

const PARTS = {
  day: { year: "numeric", month: "2-digit", day: "2-digit" },
  time: { hour: "2-digit", minute: "2-digit", hourCycle: "h23" },
} as const;

/** Kept once made: making a format costs far more than using it, and every note needs one. */
const formats = new Map<string, Intl.DateTimeFormat>();

function formatIn(zone: string, part: keyof typeof PARTS): Intl.DateTimeFormat {
  const key = `${part} ${zone}`;
  let format = formats.get(key);
  if (!format) {
    // Canadian English writes days as ISO 8601 does.
    format = new Intl.DateTimeFormat("en-CA", { timeZone: zone, ...PARTS[part] });
    formats.set(key, format);
  }
  return format;
}
