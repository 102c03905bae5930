import type { Cursor, Part } from "../tokens/token.ts";
import {
  ABOUT_HOUR,
  BEFORE_HALF,
  BETWEEN_HOURS_OPEN,
  HOURS,
  MINUTES,
  PAST_HOUR,
  QUARTERS,
  TO_HOUR,
} from "../words/units.ts";
import { smallNumberAt } from "./spelled.ts";

/* Times of day, and how long it went on from one to another. */

function clockText(hour: number, minute: number, half: string | undefined): string | null | undefined {
  if (minute > 59 || hour > 24) return undefined;
  if (half) {
    if (hour < 1 || hour > 12) return undefined;
    const turned = (hour % 12) + (half[0] === "p" ? 12 : 0);
    return `${String(turned).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
  }
  if (hour === 24) return undefined;
  // Without am or pm only 13:00 on, 0:00 and "08:15" say which half of the day.
  return hour > 12 || hour === 0
    ? `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`
    : null;
}

export function clockAt({ norms, at }: Cursor): Part | null {
  const word = norms[at]!;
  if (word === "noon") return { kind: "clock", at: "12:00", words: 1 };
  if (word === "midnight") return { kind: "clock", at: "00:00", words: 1 };
  const spoken = spokenHourAt(norms, at);
  if (spoken) return clockOf(spoken);
  const typed = /^(\d{1,2})(?::(\d{2}))?(am|pm|a|p)?$/.exec(word);
  if (!typed) return null;
  let words = 1;
  let half: string | undefined = typed[3];
  const next = norms[at + 1] ?? "";
  if (!half && /^(?:am|pm)$/.test(next)) {
    half = next;
    words = 2;
  } else if (!half && /^[ap]$/.test(next) && norms[at + 2] === "." && norms[at + 3] === "m") {
    half = next;
    words = norms[at + 4] === "." ? 5 : 4;
  }
  if (!half && !typed[2]) return next === "oclock" ? { kind: "clock", at: null, words: 2 } : null;
  const text = clockText(Number(typed[1]), Number(typed[2] ?? 0), half);
  if (text === undefined) return null;
  const leading = !half && word.startsWith("0") ? word.padStart(5, "0") : text;
  return { kind: "clock", at: leading, words };
}

interface Hour {
  /** Since midnight or noon. */
  minutes: number;
  half: string | undefined;
  /** It is a time of day whatever stands around it: "9:30", "half past two". */
  isTyped: boolean;
  words: number;
}

const HALF_DAY = 12 * 60;

function clockOf({ minutes, half, words }: Hour): Part {
  const at = clockText(Math.floor(minutes / 60) || 12, minutes % 60, half);
  return at === undefined ? { kind: "clock", at: null, words } : { kind: "clock", at, words };
}

/** "2", "two", "2pm": the hour of a clock at a place, and the half of the day where it is said. */
function plainHourAt(norms: readonly string[], at: number): Omit<Hour, "isTyped"> | null {
  const typed = /^(\d{1,2})(am|pm|a|p)?$/.exec(norms[at] ?? "");
  const small = typed ? { value: Number(typed[1]), words: 1 } : smallNumberAt(norms, at);
  if (!small || small.value < 1 || small.value > 12) return null;
  const next = norms[at + small.words];
  const apart = typed?.[2] === undefined && (next === "am" || next === "pm") ? next : undefined;
  const half = (typed?.[2] ?? apart)?.[0];
  return { minutes: (small.value % 12) * 60, half, words: small.words + (apart ? 1 : 0) };
}

/** "quarter past eight", "a quarter to 9 pm", "half past six", "ten after two": a time of day in words. */
function spokenHourAt(norms: readonly string[], at: number): Hour | null {
  const article = norms[at] === "a" ? 1 : 0;
  const part = QUARTERS[norms[at + article] ?? ""];
  const count = part === undefined && article === 0 ? smallNumberAt(norms, at) : null;
  const minutes = part === undefined ? count?.value : part * 60;
  const link = at + article + (count?.words ?? 1);
  const isPast = PAST_HOUR.has(norms[link] ?? "");
  // "at half two": half past it.
  const isHalf = norms[at] === "half" && BEFORE_HALF.has(norms[at - 1] ?? "");
  const halved = isHalf ? plainHourAt(norms, link) : null;
  if (halved) return { ...halved, minutes: halved.minutes + 30, isTyped: true, words: 1 + halved.words };
  // "from 10 to 4" is no ten to four.
  const isTo = part === 0.25 && TO_HOUR.has(norms[link] ?? "");
  if (minutes === undefined || minutes < 1 || minutes > 59 || !(isPast || isTo)) return null;
  const hour = plainHourAt(norms, link + 1);
  if (!hour) return null;
  const all = (hour.minutes + (isPast ? minutes : HALF_DAY - minutes)) % HALF_DAY;
  return { minutes: all, half: hour.half, isTyped: true, words: link + 1 + hour.words - at };
}

/** "9:30", "2pm", "noon", "quarter past two", "nine thirty": an hour of a clock, whatever half of the day. */
function hourAt(norms: readonly string[], at: number): Hour | null {
  const word = norms[at] ?? "";
  if (word === "noon" || word === "midnight")
    return { minutes: 0, half: word === "noon" ? "p" : "a", isTyped: true, words: 1 };
  const spoken = spokenHourAt(norms, at);
  if (spoken) return spoken;
  const typed = /^(\d{1,2}):(\d{2})(am|pm|a|p)?$/.exec(word);
  if (typed) {
    const hour = plainHourAt([`${typed[1]}${typed[3] ?? ""}`, norms[at + 1] ?? ""], 0);
    return hour && { ...hour, minutes: hour.minutes + Number(typed[2]), isTyped: true };
  }
  const hour = plainHourAt(norms, at);
  const more = hour && !/^\d/.test(word) ? smallNumberAt(norms, at + hour.words) : null;
  if (hour && more && more.value >= 10)
    return { ...hour, minutes: hour.minutes + more.value, isTyped: false, words: hour.words + more.words };
  return hour && { ...hour, isTyped: false };
}

/** "8", "quarter past eight", "seven thirty" as a time of one half of the day; null where that is no time. */
export function timeOfDay(words: readonly string[], half: "a" | "p"): string | null {
  const hour = hourAt(words, 0);
  if (hour?.words !== words.length) return null;
  return clockText(Math.floor(hour.minutes / 60) || 12, hour.minutes % 60, hour.half ?? half) ?? null;
}

/** How long it is from one time of day to another, both as said; null where one is none. */
export function minutesBetween(from: string, to: string): number | null {
  const [start, end] = [from, to].map((text) => hourAt(text.split(" "), 0));
  if (!start || !end) return null;
  const minutes = (end.minutes - start.minutes + HALF_DAY) % HALF_DAY;
  return minutes === 0 || minutes > SITTING_MAX ? null : minutes;
}

/** Nobody works longer than that at one go, and prices start and end too: "started at 12 ended at 8". */
const SITTING_MAX = 6 * 60;

const RANGE_LINK = /^(?:to|till|til|until|thru|-|→)$/;

/** The two ends of "2-4pm" as one word, or of "2 to 4pm" as several. */
function endsAt({ norms, at }: Cursor): { from: Hour; to: Hour; words: number } | null {
  const [one = "", other] = /^\d/.test(norms[at]!) ? norms[at]!.split(/[-–]/) : [norms[at]!];
  const from = other === undefined ? hourAt(norms, at) : hourAt([one], 0);
  if (!from) return null;
  if (other !== undefined) {
    const to = hourAt([other, norms[at + 1] ?? ""], 0);
    return to && { from, to, words: to.words };
  }
  const link = norms[at + from.words] ?? "";
  const isBetween = norms[at - 1] === "between" && link === "and";
  const to = isBetween || RANGE_LINK.test(link) ? hourAt(norms, at + from.words + 1) : null;
  return to && { from, to, words: from.words + 1 + to.words };
}

/** Whether an hour stands behind a word that opens two: "from two to four", "from about seven to nine". */
export function isHoursOpen(norms: readonly string[], at: number): boolean {
  if (at === 0) return false;
  const before = norms[at - 1]!;
  return (
    BETWEEN_HOURS_OPEN.has(before) || (ABOUT_HOUR.has(before) && BETWEEN_HOURS_OPEN.has(norms[at - 2] ?? ""))
  );
}

/** "2-4pm", "9:30-11", "2pm to noon", "from two to four": how long it went on, as minutes on a time of day. */
export function clockRangeAt(cursor: Cursor): Part | null {
  const { norms, at } = cursor;
  const ends = endsAt(cursor);
  if (!ends) return null;
  const { from, to, words } = ends;
  const next = norms[at + words] ?? "";
  const isClock = from.half !== undefined || to.half !== undefined || from.isTyped || to.isTyped;
  if (!isClock && !isHoursOpen(norms, at)) return null;
  // "worked 2 to 3 hours": nobody knows how long.
  if (HOURS.has(next) || MINUTES.has(next)) return null;
  const isAcross = from.half !== undefined && to.half !== undefined && from.half !== to.half;
  const minutes = (to.minutes - from.minutes + HALF_DAY) % HALF_DAY;
  const isLong = isAcross && to.minutes >= from.minutes;
  return minutes === 0 || isLong ? null : { kind: "clock", at: null, minutes, words };
}
