import { showDay } from "../calendar.ts";
import { readBareMention, readBareMoney } from "../notes/bare.ts";
import { readMessage } from "../notes/read.ts";
import type { Reading } from "../notes/reading.ts";
import { verbs } from "../verbs/list.ts";
import type { Verb } from "../verbs/verb.ts";
import {
  type Choice,
  confirmation,
  type Decision,
  type Desk,
  type Matter,
  NEVER_MIND,
  newMatter,
} from "./decision.ts";
import { askMissing } from "./missing.ts";
import { deskOfItsDay } from "./own-day.ts";

const verbByKind = new Map<string, Verb>(verbs.map((verb) => [verb.kind, verb as unknown as Verb]));

/** The verb of a kind of note; undefined for "unclear". */
export function verbOf(kind: Reading["kind"]): Verb | undefined {
  return verbByKind.get(kind);
}

/**
 * Decides one reading: facts to record, one question, or a refusal in plain words. In this order, so that
 * the same thing is always said first: not understood, something missing, an old day, and the verb's own rules.
 */
export function decide(matter: Matter, desk: Omit<Desk, "confirmed">): Decision {
  const { reading } = matter;
  const verb = verbOf(reading.kind);
  if (reading.kind === "unclear" || !verb?.decide) return decideUnclear(reading, desk.today);
  const missing = askMissing(reading);
  if (missing) return { kind: "ask", ask: missing };
  if (reading.longAgo && reading.date && !matter.confirmed.includes("long ago")) {
    const day = showDay(reading.date, desk.today);
    const prompt = `${day} is long ago. Is that the day you mean?`;
    return {
      kind: "ask",
      ask: { ...confirmation(prompt, { label: `Yes, ${day}`, confirm: "long ago" }), wants: "day" },
    };
  }
  const itsDesk = verb.byItsDay ? deskOfItsDay(reading, desk) : desk;
  return withDoer(verb.decide(reading as never, { ...itsDesk, confirmed: matter.confirmed }), reading.by);
}

/** Who of the household did it stays with every fact of the note. */
function withDoer(decision: Decision, by: string | undefined): Decision {
  if (decision.kind !== "record" || by === undefined) return decision;
  return { ...decision, facts: decision.facts.map((fact) => ({ ...fact, by })) };
}

/** An unclear note is asked about where its own words suggest notes that would work; else it is only explained. */
function decideUnclear(reading: Reading, today: string): Decision {
  const unclear = reading.kind === "unclear" ? reading : null;
  const why = unclear?.why ?? "I could not read that as a note.";
  const choices: Choice[] = [];
  for (const note of unclear?.instead ?? []) {
    const readings = readMessage(note, today);
    if (readings.every((option) => isOnlySaid(option, reading.text))) {
      choices.push({ label: note, effect: { kind: "instead", readings } });
    }
  }
  if (choices.length < 2)
    return { kind: "refuse", why: withExample(why, unclear?.instead?.[0], reading.text) };
  return { kind: "ask", ask: { prompt: why, wants: "choice", choices: [...choices, NEVER_MIND] } };
}

/** Whether a suggested note adds nothing of its own, such as a piece or an amount that was only an example. */
function isOnlySaid(option: Reading, text: string): boolean {
  if (option.kind === "unclear" || option.missing?.length) return false;
  const amounts = amountsSaid(text);
  if (amountsIn(option).some((cents) => !amounts.has(cents))) return false;
  if ("rate" in option && option.rate !== undefined && !/%|percent/i.test(text)) return false;
  const named = readBareMention(text.replace(/[^\p{L}\s#'-]+/gu, " "))?.name;
  const mentions = "pieces" in option && Array.isArray(option.pieces) ? option.pieces : [];
  const said = (name: string | undefined) => !name || name === named || text.toLowerCase().includes(name);
  return mentions.every((mention) => said(mention.name)) && !("what" in option && !said(option.what));
}

const AMOUNT_FIELDS = ["price", "amount", "balance", "cut", "deposit"] as const;

/** The amounts of a suggested note in cents, a goal's count of pieces as so many whole ones. */
function amountsIn(option: Reading): number[] {
  const fields = option as Partial<Record<(typeof AMOUNT_FIELDS)[number] | "pieces", unknown>>;
  const amounts = AMOUNT_FIELDS.map((field) => fields[field]);
  const count = typeof fields.pieces === "number" ? fields.pieces * 100 : undefined;
  return [...amounts, count].filter((amount) => typeof amount === "number");
}

/** Longest run of words that can be one amount, as in "one hundred and forty five". */
const AMOUNT_WORDS_MAX = 5;
/** A clause longer than this is no note with a word left out, and trying all its runs would take long. */
const WORDS_TRIED_MAX = 40;

/** Every amount that some run of the first words typed can be, in cents. */
function amountsSaid(text: string): Set<number> {
  const words = text
    .trim()
    .split(/\s+/, WORDS_TRIED_MAX)
    .map((word) => word.replace(/[.,!?]+$/, ""));
  const runs = words.flatMap((_, start) =>
    Array.from({ length: AMOUNT_WORDS_MAX }, (_, more) => words.slice(start, start + more + 1).join(" ")),
  );
  return new Set(runs.map(readBareMoney).filter((cents) => cents !== null));
}

/** A note that would have worked helps only where it takes up something that was typed. */
function withExample(why: string, note: string | undefined, text: string): string {
  const typed = new Set(text.toLowerCase().match(/[\p{L}\d]{2,}/gu));
  const isBuilt = note?.split(/\s+/).some((word) => typed.has(word)) && !why.includes(`"${note}"`);
  return isBuilt ? `${why}\nLike: ${note}` : why;
}

/**
 * The matters of a message in order: a reading that follows another ("listed it") waits in the one before it.
 */
export function mattersOf(readings: readonly Reading[], said: string): Matter[] {
  const matters: Matter[] = [];
  for (const reading of readings) {
    const last = matters.findLast((matter) => hasPieces(matter.reading));
    if (reading.follows && last) last.waiting.push(reading);
    else matters.push(newMatter(reading, said));
  }
  return matters;
}

/** What waited for "it", now that the pieces of the clause before are known (by number, in order). */
export function followUp(matter: Matter, pieces: readonly number[]): Matter[] {
  const [next, ...waiting] = matter.waiting;
  if (!next) return [];
  // The clause before was recorded without a piece: this one has only its own words to go by.
  if (pieces.length === 0) return [{ reading: next, said: matter.said, confirmed: [], waiting }];
  const mentions = pieces.map((number) => ({ number, count: 1 }));
  const missing = next.missing?.filter((field) => field !== "pieces") ?? [];
  const reading = { ...next, pieces: mentions, missing } as Reading;
  return [{ reading, said: matter.said, confirmed: [], waiting }];
}

function hasPieces(reading: Reading): boolean {
  return "pieces" in reading || reading.missing?.includes("pieces") === true;
}
