import { mattersOf } from "../../core/decide/matters.ts";
import { readMessage } from "../../core/notes/read.ts";
import type { Reading } from "../../core/notes/reading.ts";
import type { Steps } from "../../core/steps.ts";
import type { Note } from "../../db/notes.ts";
import { heard, lookForCautions } from "./cautioning.ts";
import { closeQuestion } from "./questions.ts";
import { decideAll } from "./recording.ts";
import { type ConversationDeps, newTurn, type Turn } from "./turn.ts";

/** A message of more lines than this is handled in slices. */
export const LINES_WHOLE_MAX = 25;
/** A slice is ended after so many milliseconds, so that nothing else waits for longer. */
const SLICE_MS = 50;
/** No note is longer than a message of the chat. */
const LINE_LENGTH_MAX = 4096;
/** So many lines of one message are asked about; the next are sent back. */
const ASKED_MAX = 10;
/** So many lines that were not recorded are told with their words; of the others, where they stand. */
const REFUSED_TOLD_MAX = 10;

type OnLedger = Pick<ConversationDeps, "ledger">;

/** The stored notes that are not handled to their end, oldest first, each with the first line that is left. */
export function unfinishedNotes({ ledger }: OnLedger): { note: Note; from: number }[] {
  return Object.entries(ledger.settings.get("longNotes") ?? {}).flatMap(([id, from]) => {
    const note = ledger.note(Number(id));
    return note ? [{ note, from }] : [];
  });
}

/** Keeps from which line a stored note is to be handled; null: all of it is. Inside a transaction. */
export function keepPlace({ ledger }: OnLedger, note: number, from: number | null): void {
  const { [note]: _, ...others } = ledger.settings.get("longNotes") ?? {};
  ledger.settings.set("longNotes", from === null ? others : { ...others, [note]: from });
}

/**
 * Handles a stored note of many lines from where it stands, a slice of lines in a transaction each, and lets
 * everything else go first in between. What is done is marked with each slice, so that a process that dies goes on
 * behind it. `finish` says what came of all of it, in the last transaction. Ends early where `isStopping`.
 */
export async function goOnWithLong(
  deps: ConversationDeps,
  { note, from: begun }: { note: Note; from: number },
  { finish, isStopping }: { finish: (turn: Turn) => void; isStopping: () => boolean },
): Promise<void> {
  const { ledger, log } = deps;
  const { id, author: person, chat, said, text } = note;
  const lines = text.split(/\r\n|\r|\n/);
  const turn = newTurn(deps, { person, chat, note: id, said, lines: lines.length });
  let from = begun;
  if (from > 0) turn.spoken.push(`The first ${from} lines were handled before I was stopped.`);
  while (!isStopping()) {
    try {
      from = ledger.transaction(() => takeSlice(turn, lines, { from, finish }));
    } catch (error) {
      log.error("note failed", { why: error instanceof Error ? error.message : String(error), chat });
      ledger.transaction(() => giveUp(turn, lines, from));
      return;
    }
    if (from >= lines.length) return;
    await letOthers();
  }
}

/**
 * Goes through work a slice of steps at a time, and lets everything else go first in between. Null where it was to
 * stop before the end.
 */
export async function inTurns<T>(steps: Steps<T>, isStopping: () => boolean): Promise<T | null> {
  for (let slices = 1; !isStopping(); slices += 1) {
    const end = performance.now() + SLICE_MS;
    do {
      const step = steps.next();
      if (!step.done) continue;
      // Behind long work comes more of it, as its recording: in a turn of its own.
      if (slices > 1) await letOthers();
      return step.value;
    } while (performance.now() < end);
    await letOthers();
  }
  return null;
}

/** Everything else that waits goes first. */
export const letOthers = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** Handles lines until the slice's time is over; gives the first line that is left. */
function takeSlice(
  turn: Turn,
  lines: readonly string[],
  { from, finish }: { from: number; finish: (turn: Turn) => void },
): number {
  const end = performance.now() + SLICE_MS;
  let line = from;
  do {
    line = takeLines(turn, lines, line);
  } while (line < lines.length && performance.now() < end);
  keepPlace(turn, turn.note, line < lines.length ? line : null);
  if (line >= lines.length) {
    shortenRefused(turn);
    finish(turn);
  }
  return line;
}

/** Handles one line, with the next ones where they go on about "it"; gives the line after them. */
function takeLines(turn: Turn, lines: readonly string[], from: number): number {
  const readings = [...readingsOf(turn, lines, from)];
  let line = from + 1;
  for (; line < lines.length; line++) {
    const next = readingsOf(turn, lines, line);
    if (next[0]?.follows !== true) break;
    readings.push(...next);
  }
  heard(turn, lines.slice(from, line).join("\n"), readings, from);
  const asked = turn.asked.length;
  if (readings.length > 0)
    decideAll(turn, mattersOf(readings, turn.today, turn.ledger.books), { root: turn.root });
  for (const { id, text } of turn.asked.splice(Math.max(asked, ASKED_MAX))) {
    closeQuestion(turn, id);
    turn.refused.push({ text, line: from, why: "I would have to ask about it: send it by itself." });
  }
  lookForCautions(turn);
  return line;
}

function readingsOf(turn: Turn, lines: readonly string[], line: number): Reading[] {
  const text = lines[line]!;
  if (text.length <= LINE_LENGTH_MAX)
    return readMessage(text, turn.today).map((reading) => ({ ...reading, line }));
  const why = `It is ${text.length.toLocaleString("en-US")} letters long, too long for a note.`;
  turn.refused.push({ text: text.slice(0, 60), line, why });
  return [];
}

/** A page of refusals helps nobody: the others are told by where they stand. */
function shortenRefused(turn: Turn): void {
  const others = turn.refused.splice(REFUSED_TOLD_MAX);
  if (others.length === 0) return;
  const shown = others.slice(0, 40).map(({ line }) => line + 1);
  const more = others.length > shown.length ? ` and ${others.length - shown.length} more` : "";
  turn.spoken.push(`Not recorded either, lines ${shown.join(", ")}${more}.`);
}

function giveUp(turn: Turn, lines: readonly string[], from: number): void {
  const { ledger, note, chat } = turn;
  keepPlace(turn, note, null);
  ledger.setNoteState(note, "failed", `at line ${from + 1}`);
  const text = [
    `Line ${from + 1} or one soon after it went wrong on my side.`,
    `The ${from} lines before it are handled. Please send the others again, from: ${lines[from]?.slice(0, 60)}`,
  ].join("\n");
  ledger.outbox.queue({ chat, body: { kind: "text", reply: { text } }, about: note });
}
