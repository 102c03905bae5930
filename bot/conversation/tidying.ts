import { earmarked } from "../../core/books/month.ts";
import { statusOf } from "../../core/books/piece.ts";
import type { Button } from "../../core/reply.ts";
import type { Ledger } from "../../db/ledger.ts";
import { createMemory } from "../../db/memory.ts";
import { STEPS } from "./composing.ts";
import { openQuestions } from "./questions.ts";
import type { Turn } from "./turn.ts";

/** How far a chat's buttons were looked through, and what those that are left are about. */
interface Tidied {
  /** The books' age, the newest row, the notes that were asked about. */
  age: number;
  row: number;
  asked: string;
  /** The pieces; `isOfPieces`: the books tell all that can make one of the buttons stale. */
  pieces: Set<number>;
  isOfPieces: boolean;
}

const tidied = new WeakMap<Ledger, Map<string, Tidied>>();

/**
 * Takes away the buttons in this chat that are used up, or that the books have overtaken. Those further back than the
 * latest rows stay: a press there is answered all the same.
 */
export function tidyButtons(turn: Turn): void {
  const { ledger, chat } = turn;
  if (!turn.changed && !turn.closed && turn.pressed === null) return;
  const pressed = turn.pressed === null ? null : ledger.outbox.messageOf(chat, turn.pressed);
  const asked = new Set(openQuestions(turn).map(({ note }) => note));
  const chats = tidied.get(ledger) ?? new Map<string, Tidied>();
  tidied.set(ledger, chats);
  const rows = ledger.outbox.lately(chat);
  const now = { age: ledger.age, row: rows[0]?.id ?? 0, asked: [...asked].join() };
  const before = chats.get(chat);
  const isAdded = before !== undefined && isOnlyAddedTo(turn, before, now.asked);
  const about = isAdded ? before : { pieces: new Set<number>(), isOfPieces: true };
  chats.set(chat, { ...now, pieces: about.pieces, isOfPieces: about.isOfPieces });
  const edited = new Set<number>();
  for (const { id, body } of rows) {
    if (isAdded && id <= before.row) break;
    if (body.kind === "file") continue;
    // Newest first: what a message shows now is said by its last edit.
    const outbox = body.kind === "edit" ? body.outbox : id;
    if (edited.has(outbox)) continue;
    if (body.kind === "edit") edited.add(outbox);
    const { text, buttons } = body.reply;
    if (!buttons || buttons.length === 0) continue;
    const isUsed = outbox === pressed?.id && isOnce(buttons);
    const left = isUsed ? [] : leftOf(turn, buttons, asked);
    noteSubjects(chats.get(chat)!, left);
    if (left === buttons) continue;
    const reply = left.length > 0 ? { text, buttons: left } : { text };
    ledger.outbox.queue({ chat, body: { kind: "edit", outbox, reply } });
  }
}

/**
 * Whether the books were only added to since a chat was tidied, by notes about none of the pieces that its buttons are
 * about: then only what was said since may be stale.
 */
function isOnlyAddedTo({ ledger, closed, pressed }: Turn, before: Tidied, asked: string): boolean {
  if (closed || pressed !== null || !before.isOfPieces || before.asked !== asked) return false;
  const touched = ledger.touchedSince(before.age);
  return touched !== null && !touched.some((piece) => before.pieces.has(piece));
}

/** What can make a button stale beside its note and its piece: a question closed, a loan, a day, a setting. */
const OTHERWISE: ReadonlySet<string | undefined> = new Set(["q", "l", "rs", "nl", "nw", "nx"]);

function noteSubjects(about: Tidied, buttons: readonly Button[][]): void {
  for (const row of buttons)
    for (const { press } of row) {
      const { kind, moreNumber } = partsOf.get(press);
      if (kind === "n") about.pieces.add(moreNumber);
      else if (OTHERWISE.has(kind)) about.isOfPieces = false;
    }
}

/** The buttons that are not stale; nearly always all of them. */
function leftOf(turn: Turn, buttons: Button[][], asked: ReadonlySet<number>): Button[][] {
  if (!hasStale(turn, buttons, asked)) return buttons;
  return buttons
    .map((row) => row.filter(({ press }) => !isStale(turn, press, asked)))
    .filter((row) => row.length > 0);
}

function hasStale(turn: Turn, buttons: readonly Button[][], asked: ReadonlySet<number>): boolean {
  for (const row of buttons) for (const { press } of row) if (isStale(turn, press, asked)) return true;
  return false;
}

/** Whether any one press uses up all the buttons of a message: those that lead a newcomer, set a goal, or name the piece of a picture. */
function isOnce(buttons: readonly Button[][]): boolean {
  return buttons.flat().every(({ press }) => /^(?:[zgl]|p[fx]):/.test(press));
}

/** What a press says, in shape for being looked at after every note. */
const partsOf = createMemory((press: string) => {
  const [kind, what = "", more = ""] = press.split(":");
  return { kind, what, whatNumber: Number(what), moreNumber: Number(more) };
}, true);

/** Whether pressing a button could only be answered with a regret. */
function isStale(turn: Turn, press: string, asked: ReadonlySet<number>): boolean {
  const { ledger } = turn;
  const { kind, what, whatNumber, moreNumber } = partsOf.get(press);
  switch (kind) {
    case "q":
      return ledger.questions.byToken(what)?.closed !== null;
    case "u":
      return !asked.has(whatNumber) && !ledger.hasStandingFacts(whatNumber);
    case "n": {
      const piece = ledger.books.pieces.get(moreNumber);
      return !piece || STEPS[what]?.of.includes(statusOf(piece)) !== true;
    }
    case "nl":
    case "nw":
    case "nx":
      return isSettled(turn, kind, whatNumber);
    case "l":
      return what === "loan" && ledger.books.loans.size > 0;
    case "rs":
      return earmarked(ledger.books, turn.today) !== whatNumber;
    default:
      return false;
  }
}

/** A piece of the daily message that is gone, listed meanwhile, resting or left out. */
function isSettled({ ledger, today }: Turn, kind: "nl" | "nw" | "nx", number: number): boolean {
  const piece = ledger.books.pieces.get(number);
  const left = ledger.settings.get("leftOutPieces") ?? [];
  const until = ledger.settings.get("piecesWaiting")?.[number];
  if (!piece || piece.gone || left.includes(number) || (until !== undefined && until > today)) return true;
  return kind !== "nx" && statusOf(piece) !== "finished";
}
