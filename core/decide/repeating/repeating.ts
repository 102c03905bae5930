import type { RepeatedNote } from "../../books/books.ts";
import { dayOfInstance, daysDue } from "../../books/standing.ts";
import { addDays, type Day, dayInMonth, monthOf, showDay, WEEKDAYS, weekdayOf } from "../../calendar.ts";
import { type Cents, show } from "../../money.ts";
import type { ReadingOf } from "../../notes/reading.ts";
import { type Choice, type Decision, type Desk, NEVER_MIND } from "../decision.ts";
import { settleLoan } from "../names/loans.ts";
import { repeatedWords } from "./standing.ts";

type RepeatReading = ReadingOf<"repeat">;

/** What has to be known before a standing note can be set up; null: nothing more. */
export function askFirst(reading: RepeatReading, desk: Desk): Exclude<Decision, { kind: "record" }> | null {
  const { note } = reading;
  if (note?.kind !== "spend" && note?.kind !== "pay" && note?.kind !== "income")
    return {
      kind: "refuse",
      why: "A cost, an income or a loan payment can repeat. Like: storage 60 every month",
    };
  if (note.kind === "spend" && note.pieces?.length)
    return {
      kind: "refuse",
      why: "What repeats is a cost of the shop, not of one piece. Leave the piece out.",
    };
  if (note.kind === "spend" && note.what === undefined)
    return { kind: "refuse", why: "What is it for? Like: storage 60 every month" };
  if (note.kind === "income" && note.stream === undefined)
    return { kind: "refuse", why: "What is it from? Like: ads 30 every month" };
  if (amountOfEach(reading) === undefined)
    return { kind: "ask", ask: { prompt: "How much each time?", wants: "amount", choices: [NEVER_MIND] } };
  if (isOddDay(reading)) return { kind: "refuse", why: dayText(reading) };
  if (note.kind !== "pay" || note.loan === undefined) return null;
  const settled = settleLoan(note.loan, desk);
  return settled.kind === "settled" ? null : settled.kind === "refuse" ? settled : null;
}

/** Shows when it begins and what that comes to; recorded after the tap. */
export function setUp(reading: RepeatReading, desk: Desk): Decision {
  const every = reading.every ?? "month";
  const start = reading.from ?? reading.date ?? desk.today;
  const note = noteOf(reading, desk);
  const amount = amountOfEach(reading)!;
  const schedule = scheduleFrom(start, every, reading.day);
  if (start >= desk.today || desk.confirmed.includes("from then"))
    return desk.confirmed.length > 0
      ? recordFrom(schedule, note, amount, desk)
      : askToSetUp(schedule, note, amount, desk);
  if (desk.confirmed.includes("from next"))
    return recordFrom(
      scheduleFrom(desk.today, every, reading.day ?? dayOf(schedule, every)),
      note,
      amount,
      desk,
    );
  return askFromWhen(schedule, note, amount, desk);
}

interface Schedule {
  every: "week" | "month" | "year";
  first: Day;
  day: number | null;
}

/** The first day, from a start on, that is the day said; the day of the start where none is. */
function scheduleFrom(start: Day, every: Schedule["every"], said: number | string | undefined): Schedule {
  if (every === "week") {
    const weekday = typeof said === "string" ? WEEKDAYS.indexOf(said.slice(0, 3).toLowerCase()) : -1;
    const ahead = weekday < 0 ? 0 : (weekday - weekdayOf(start) + 7) % 7;
    return { every, first: addDays(start, ahead), day: null };
  }
  const [month, monthDay] = typeof said === "string" ? said.split("-").map(Number) : [];
  const day = monthDay ?? (typeof said === "number" ? said : Number(start.slice(8)));
  const from =
    every === "year" && month ? `${start.slice(0, 4)}-${String(month).padStart(2, "0")}` : monthOf(start);
  const schedule = { every, first: dayInMonth(from, day), day };
  return schedule.first >= start ? schedule : { ...schedule, first: dayOfInstance(schedule, 1) };
}

function dayOf({ first, day }: Schedule, every: Schedule["every"]): number | string {
  if (every === "week") return WEEKDAYS[weekdayOf(first)]!;
  return every === "year" ? first.slice(5) : (day ?? Number(first.slice(8)));
}

function isOddDay({ every = "month", day }: RepeatReading): boolean {
  if (day === undefined) return false;
  if (every === "week") return typeof day === "number" || !WEEKDAYS.includes(day.slice(0, 3).toLowerCase());
  if (every === "month") return typeof day === "string" || day < 1 || day > 31;
  return typeof day === "number" || !/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.test(day);
}

function dayText({ every = "month" }: RepeatReading): string {
  if (every === "week") return "Every week goes by a weekday, like: every week on friday";
  if (every === "month") return "Every month goes by a day of the month, like: every month on the 5th";
  return "Every year goes by a date, like: every year on mar 14";
}

function amountOfEach({ amount, note }: RepeatReading): Cents | undefined {
  return amount ?? (note && "amount" in note ? note.amount : undefined);
}

function noteOf({ note }: RepeatReading, desk: Desk): RepeatedNote {
  if (note?.kind === "spend") {
    const { what = "", category = "other", method } = note;
    return { kind: "spend", what, category, ...(method ? { method } : {}) };
  }
  if (note?.kind === "income") {
    const { stream = "", method } = note;
    return { kind: "income", stream, ...(method ? { method } : {}) };
  }
  const said = note?.kind === "pay" ? note.loan : undefined;
  const settled = said === undefined ? null : settleLoan(said, desk);
  return { kind: "pay", ...(settled?.kind === "settled" ? { loan: settled.loan } : {}) };
}

function recordFrom(
  { every, first, day }: Schedule,
  note: RepeatedNote,
  amount: Cents,
  desk: Desk,
): Decision {
  const data = { every, first, note, ...(day === null ? {} : { day }) };
  return { kind: "record", facts: [{ kind: "repeat", day: desk.today, pieces: [], amount, data }] };
}

function askToSetUp(schedule: Schedule, note: RepeatedNote, amount: Cents, { today }: Desk): Decision {
  const from = showDay(schedule.first, today);
  const prompt = `${repeatedWords(note, amount)} every ${schedule.every} from ${from}. Shall I note it by myself?`;
  const yes: Choice = {
    label: "Yes, set it up",
    words: ["yes"],
    effect: { kind: "settle", confirm: "set up" },
  };
  return { kind: "ask", ask: { prompt, wants: "choice", choices: [yes, { ...NEVER_MIND, words: ["no"] }] } };
}

/** A start in the past: what has come due since then is recorded too, or only what is to come. */
function askFromWhen(schedule: Schedule, note: RepeatedNote, amount: Cents, { today }: Desk): Decision {
  const due = daysDue({ ...schedule, place: 0, note, by: null, amounts: [], stopped: null }, null, today);
  const next = dayOfInstance(schedule, due.length);
  const since = `From ${showDay(schedule.first, today)}: ${due.length} so far, ${show(due.length * amount)}`;
  const prompt = `${repeatedWords(note, amount)} every ${schedule.every}: from then, or from the next one?`;
  const choices: Choice[] = [
    { label: since, words: ["from then"], effect: { kind: "settle", confirm: "from then" } },
    {
      label: `From ${showDay(due.at(-1) === today ? today : next, today)}`,
      words: ["next", "from next"],
      effect: { kind: "settle", confirm: "from next" },
    },
    NEVER_MIND,
  ];
  return { kind: "ask", ask: { prompt, wants: "choice", choices } };
}
