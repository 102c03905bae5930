import type { Fact } from "../../core/books/facts.ts";
import { type Day, type Instant, showDay } from "../../core/calendar.ts";
import { newMatter } from "../../core/decide/decision.ts";
import { readingOn } from "../../core/decide/repeating/standing.ts";
import { type ByItself, standingReply } from "../../core/nudge.ts";
import type { Ledger } from "../../db/ledger.ts";
import { echoOf } from "../conversation/outcome.ts";
import { claimDue, type Due, dueThrough, recordInstance } from "../standing.ts";
import type { Moment, ScheduleDeps } from "./schedule.ts";

interface Awake {
  ledger: Ledger;
  today: Day;
  now: Instant;
  /** Where the owner talks; null: nobody is owner yet. */
  chat: string | null;
}

/** What is due is recorded at the first look of its day; where there is no daily message, it is told at once. */
export function keepStanding({ ledger }: ScheduleDeps, { instant: now, today, chat }: Moment): boolean {
  const queued = recordStanding({ ledger, today, now, chat });
  if (chat === null || !ledger.settings.get("nudgeOff")) return queued;
  const told = untold(ledger, today);
  if (told.length === 0) return queued;
  return ledger.transaction(() => {
    const reply = standingReply(told);
    markTold(ledger, told);
    const key = `standing:${told.at(-1)!.fact}`;
    return ledger.outbox.queue({ chat, body: { kind: "text", reply }, key }) !== null;
  });
}

/** What standing notes recorded since the daily message last told of it, oldest first. */
export function untold(ledger: Ledger, today: Day): ByItself[] {
  const after = ledger.settings.get("standingTold") ?? 0;
  // Those recorded while it was set up were told in that reply.
  const isOwn = ({ id, place, repeat, note }: Fact) =>
    repeat !== undefined && id === place && ledger.note(note)?.message.startsWith("repeat:") === true;
  return ledger.books.facts
    .filter((fact) => isOwn(fact) && fact.id > after)
    .map((fact) => ({ fact: fact.id, text: echoOf({ ledger, today }, fact)[0] ?? fact.kind }));
}

export function markTold(ledger: Ledger, told: readonly ByItself[]): void {
  if (told.length > 0) ledger.settings.set("standingTold", Math.max(...told.map(({ fact }) => fact)));
}

/**
 * Records what standing notes are due, each day of each in a transaction of its own that also takes its day: exactly
 * once, whatever was down when. What cannot be recorded is asked about or said. Gives whether anything was queued.
 */
export function recordStanding(awake: Awake): boolean {
  let queued = false;
  for (const due of dueThrough(awake.ledger, awake.today))
    queued = awake.ledger.transaction(() => recordOne(awake, due)) || queued;
  return queued;
}

function recordOne({ ledger, today, now, chat }: Awake, due: Due): boolean {
  if (!claimDue(ledger, due, now)) return false;
  const { standing, day } = due;
  const setUp = ledger.factAt(standing.place);
  const author = setUp?.author ?? ledger.members.owner()?.id;
  if (author === undefined) throw new Error(`nobody set up standing note ${standing.place}`);
  const reading = readingOn(standing, day);
  const where = chat ?? "nowhere";
  const message = `repeat:${standing.place}:${day}`;
  const note = ledger.addNote({ chat: where, message, text: reading.text, author, said: now, handled: now });
  const kept = recordInstance(ledger, due, { note, author, today });
  if (kept.kind === "recorded") {
    ledger.setNoteState(note, "recorded");
    return false;
  }
  ledger.setNoteState(note, kept.kind === "ask" ? "asked" : "unclear");
  if (chat === null) return false;
  const words = `${reading.text} was due ${day === today ? "today" : showDay(day, today)} and is not recorded.`;
  if (kept.kind === "refuse") {
    const reply = { text: `${words}\n${kept.why}` };
    return ledger.outbox.queue({ chat, body: { kind: "text", reply }, about: note, key: message }) !== null;
  }
  const { ask } = kept;
  const { id, token } = ledger.questions.open({
    person: author,
    chat,
    note,
    matter: newMatter(reading, day),
    ask,
    asked: now,
  });
  const buttons = ask.choices.map(({ label }, index) => [{ label, press: `q:${token}:${index}` }]);
  const reply = { text: `${words}\n${ask.prompt}`, buttons };
  const row = ledger.outbox.queue({ chat, body: { kind: "text", reply }, about: note, key: message });
  if (row !== null) ledger.questions.setPrompt(id, row);
  return true;
}
