import { movedLines } from "../../core/answers/lines.ts";
import { statusOf } from "../../core/books/piece.ts";
import { folded, PHONE_LINES, rowsOf } from "../../core/phone.ts";
import type { Button, Reply } from "../../core/reply.ts";
import { askAgain, openQuestions } from "./questions.ts";
import { seesMoney } from "./sight.ts";
import { talliedLine, tallyOf } from "./tally.ts";
import { figuresNow, type Turn } from "./turn.ts";

/** A block with more facts than this is told by their number, not one by one. */
const FACTS_LISTED_MAX = 20;
const SAID_LENGTH_MAX = 60;

/** A turn's reply, and what does not fit under it and goes out as a message of its own. */
interface Composed {
  /** Null where nothing is to be said. */
  reply: Reply | null;
  aside: Reply | null;
}

/** Puts the turn's reply together, the fact first, then what it moved, then what is asked and what waits. */
export function composeReply(turn: Turn, caution: string | null): Composed {
  const isNext = askNext(turn);
  const waiting = turn.tellsWaiting ? waitingLine(turn) : null;
  const body = [...recordedLines(turn), ...turn.spoken, ...refusedLines(turn)];
  if (turn.changed && seesMoney(turn.ledger, turn.person))
    body.push(...movedLines(turn.before, figuresNow(turn), saysWhatIsOwed(turn)));
  const last = [...questionLines(turn, isNext), ...(waiting ? [waiting] : [])];
  const all = [...body, ...(caution ? [caution] : []), ...last];
  const isRoomy = rowsOf(all.join("\n")) <= PHONE_LINES;
  const lines = isRoomy ? all : [...body, ...last];
  const aside = isRoomy || !caution ? null : { text: caution };
  const text = lines.join("\n");
  if (text === "") return { reply: null, aside };
  const buttons = buttonsOf(turn);
  return { reply: buttons.length > 0 ? { text, buttons } : { text }, aside };
}

/** Where this turn asked nothing but closed something, the next one in the queue is asked; whether one was. */
function askNext(turn: Turn): boolean {
  if (turn.asked.length > 0 || !turn.closed) return false;
  const next = openQuestions(turn).find((question) => question.prompt === null);
  if (next) askAgain(turn, next);
  return next !== undefined;
}

/** A statement's own line has the balance already. */
function saysWhatIsOwed({ recorded }: Turn): boolean {
  return recorded.length === 1 && recorded[0]?.fact.kind === "statement";
}

function recordedLines({ recorded }: Turn): string[] {
  const [only] = recorded;
  if (recorded.length === 1 && only) return only.lines.flatMap(folded);
  if (recorded.length > FACTS_LISTED_MAX) return [talliedLine(tallyOf({ recorded }))];
  // What was changed beside other notes is told with what stood before, too.
  return recorded.flatMap(({ lines }) => lines.filter((line, at) => at === 0 || line.startsWith("Before:")));
}

function refusedLines(turn: Turn): string[] {
  const alone =
    turn.refused.length === 1 && turn.recorded.length === 0 && turn.lines === 1 && turn.asked.length === 0;
  if (alone) return turn.refused.map(({ why }) => why);
  return turn.refused.map(({ text, line, why }) => {
    const where = turn.lines > 1 ? `Line ${line + 1} ` : "";
    return `${where}"${shortened(text)}" is not recorded: ${why}`;
  });
}

/** `isNext`: the question is about another note than the one just answered or dropped. */
function questionLines(turn: Turn, isNext: boolean): string[] {
  const [first, ...more] = turn.asked;
  if (!first) return [];
  const many =
    isNext || first.isReleased === true || turn.lines > 1 || turn.recorded.length > 0 || more.length > 0;
  const waits = first.waits?.map((text) => `"${shortened(text)}" waits for this:`);
  const about = waits ?? (many ? [`About "${shortened(first.text)}":`] : []);
  const later = more.length > 0 ? [`${more.length} more to ask after this.`] : [];
  return [...about, first.ask.prompt, ...later];
}

/** "1 note still waiting: sold dresser 190": what was asked before and has no answer yet. */
function waitingLine(turn: Turn): string | null {
  const now = new Set(turn.asked.map(({ id }) => id));
  const open = openQuestions(turn).filter((question) => !now.has(question.id));
  const [newest] = open;
  if (!newest) return null;
  const notes = open.length === 1 ? "1 note" : `${open.length} notes`;
  return `${notes} still waiting: ${shortened(newest.matter.reading.text)}`;
}

function shortened(text: string): string {
  const line = text.replace(/\s+/g, " ").trim();
  return line.length > SAID_LENGTH_MAX ? `${line.slice(0, SAID_LENGTH_MAX - 1)}…` : line;
}

function buttonsOf(turn: Turn): Button[][] {
  const [asked] = turn.asked;
  const choices = (asked?.ask.choices ?? []).map(({ label }, index) => [
    { label, press: `q:${asked!.token}:${index}` },
  ]);
  const undo = undoButton(turn);
  const next = asked ? [] : nextButtons(turn);
  const last = [...(undo ? [undo] : []), ...next];
  return [...choices, ...turn.buttons, ...(last.length > 0 ? [last] : [])];
}

function undoButton(turn: Turn): Button | null {
  const [first] = turn.recorded;
  // A correction is taken back by a button of its own.
  return first && !turn.mended ? { label: "Undo", press: `u:${first.fact.root}` } : null;
}

/** The states of a piece in which a next step can be taken by its button. */
export const STEPS: Readonly<Record<string, { label: string; of: readonly string[] }>> = {
  start: { label: "Start it", of: ["bought"] },
  finish: { label: "It's finished", of: ["started"] },
  list: { label: "List it", of: ["finished"] },
  sell: { label: "Sold", of: ["listed", "held"] },
};

/** The likely next step with the one piece that the note was about. */
function nextButtons(turn: Turn): Button[] {
  const [only] = turn.recorded;
  if (turn.recorded.length !== 1 || only?.fact.pieces.length !== 1) return [];
  const piece = turn.ledger.books.pieces.get(only.fact.pieces[0]!);
  if (!piece) return [];
  const status = statusOf(piece);
  return Object.entries(STEPS)
    .filter(([, { of }]) => of.includes(status))
    .map(([act, { label }]) => ({ label, press: `n:${act}:${piece.number}` }));
}
