import type { RepeatedNote, Standing } from "../../books/books.ts";
import { amountOnDay, standingOn } from "../../books/standing.ts";
import { type Day, monthName, weekdayName } from "../../calendar.ts";
import { type Cents, show } from "../../money.ts";
import type { Reading, ReadingOf } from "../../notes/reading.ts";
import { type Choice, type Decision, type Desk, NEVER_MIND } from "../decision.ts";

/** "storage 60.00", "250.00 to the grad loan": what a standing note records, in few words. */
export function repeatedWords(note: RepeatedNote, amount: Cents): string {
  const name = standingName(note);
  return note.kind === "pay" ? `${show(amount)} to ${name}` : `${name} ${show(amount)}`;
}

/** What a standing note is about: "storage", "ads", "the grad loan". */
export function standingName(note: RepeatedNote): string {
  if (note.kind === "spend") return note.what;
  if (note.kind === "income") return note.stream;
  return `the ${note.loan && note.loan !== "loan" ? `${note.loan} loan` : "loan"}`;
}

/** "storage 60.00 every month on the 5th", at the amount in force on a day. */
export function standingWords(standing: Readonly<Standing>, day: Day): string {
  return `${repeatedWords(standing.note, amountOnDay(standing, day))} every ${standing.every} ${onWords(standing)}`;
}

function onWords({ every, first, day }: Readonly<Standing>): string {
  if (every === "week") return `on ${weekdayName(first)}`;
  const number = day ?? Number(first.slice(8));
  if (every === "year") return `on ${monthName(first.slice(0, 7)).slice(0, 3)} ${number}`;
  return `on the ${ordinal(number)}`;
}

function ordinal(number: number): string {
  const teen = number % 100 >= 11 && number % 100 <= 13;
  const ending = teen ? "th" : (["th", "st", "nd", "rd"][number % 10] ?? "th");
  return `${number}${ending}`;
}

/** What a standing note records on one of its days, as a reading like any other. */
export function readingOn(standing: Readonly<Standing>, day: Day): Reading {
  const amount = amountOnDay(standing, day);
  const by = standing.by === null ? {} : { by: standing.by };
  return {
    ...standing.note,
    ...by,
    amount,
    date: day,
    text: repeatedWords(standing.note, amount),
    line: 0,
  } as Reading;
}

type Meant = { kind: "settled"; standing: Readonly<Standing> } | Exclude<Decision, { kind: "record" }>;

/** Which standing note is spoken of: by what it records, by its amount, or the only one; else the question which. */
export function standingMeant(reading: ReadingOf<"repeat">, desk: Desk): Meant {
  const going = standingOn(desk.books.standing.values(), desk.today);
  const picked = going.find(({ place }) => desk.confirmed.includes(`standing ${place}`));
  if (picked) return { kind: "settled", standing: picked };
  const fitting = going.filter((standing) => isMeant(standing, reading.of ?? {}, desk.today));
  const [only, ...others] = fitting;
  if (only && others.length === 0) return { kind: "settled", standing: only };
  if (!only) return { kind: "refuse", why: noneText(going, desk.today) };
  const choices = fitting.map(
    (standing): Choice => ({
      label: standingWords(standing, desk.today),
      effect: { kind: "settle", confirm: `standing ${standing.place}` },
    }),
  );
  return { kind: "ask", ask: { prompt: "Which one?", wants: "choice", choices: [...choices, NEVER_MIND] } };
}

function noneText(going: readonly Readonly<Standing>[], today: Day): string {
  if (going.length === 0) return "No standing note is on the books.";
  return ["No standing note like that. There are:", ...going.map((each) => standingWords(each, today))].join(
    "\n",
  );
}

type Of = NonNullable<ReadingOf<"repeat">["of"]>;

function isMeant({ note, ...standing }: Readonly<Standing>, of: Of, today: Day): boolean {
  const isSame = (said: string | undefined, is: string | undefined) =>
    said === undefined || (is !== undefined && (is.includes(said) || said.includes(is)));
  const name = note.kind === "spend" ? note.what : note.kind === "income" ? note.stream : "loan";
  return (
    (of.kind === undefined || of.kind === note.kind) &&
    isSame(of.what, name) &&
    isSame(of.stream, note.kind === "income" ? note.stream : undefined) &&
    isSame(of.loan, note.kind === "pay" ? (note.loan ?? "loan") : undefined) &&
    (of.amount === undefined || of.amount === amountOnDay({ note, ...standing }, today))
  );
}
