import { earmarked } from "../../core/books/month.ts";
import { statusOf } from "../../core/books/piece.ts";
import type { Button } from "../../core/reply.ts";
import type { Ledger } from "../../db/ledger.ts";
import { createMemory } from "../../db/memory.ts";
import type { OutboxBody, Said } from "../../db/outbox.ts";
import { STEPS } from "./composing.ts";
import { openQuestions } from "./questions.ts";
import type { Turn } from "./turn.ts";

/** How far a chat's buttons were looked through: by which age of the books, which row, and which notes being asked about. */
interface Tidied {
  age: number;
  row: number;
  asked: string;
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
  const isConcerned = concernedSince(turn, [...asked].join());
  const edited = new Set<number>();
  for (const said of ledger.outbox.lately(chat)) {
    const { id, body } = said;
    if (body.kind === "file") continue;
    // Newest first: what a message shows now is said by its last edit.
    const outbox = body.kind === "edit" ? body.outbox : id;
    if (edited.has(outbox)) continue;
    if (body.kind === "edit") edited.add(outbox);
    const { text, buttons } = body.reply;
    if (!buttons || buttons.length === 0 || !isConcerned(said)) continue;
    const isUsed = outbox === pressed?.id && isOnce(buttons);
    const left = isUsed ? [] : leftOf(turn, buttons, asked);
    if (left === buttons) continue;
    const reply = left.length > 0 ? { text, buttons: left } : { text };
    ledger.outbox.queue({ chat, body: { kind: "edit", outbox, reply } });
  }
}

/**
 * Which rows the books may have overtaken since the chat was last tidied. After notes that only add to the books these
 * are the ones said since, those about the pieces of the notes, and those of which the books do not tell.
 */
function concernedSince(turn: Turn, asked: string): (said: Said) => boolean {
  const { ledger, chat } = turn;
  const chats = tidied.get(ledger) ?? new Map<string, Tidied>();
  const before = chats.get(chat);
  tidied.set(ledger, chats);
  chats.set(chat, { age: ledger.age, row: ledger.outbox.lately(chat)[0]?.id ?? 0, asked });
  const isSame = before?.asked === asked && !turn.closed && turn.pressed === null;
  const touched = isSame ? ledger.touchedSince(before.age) : null;
  if (!before || touched === null) return () => true;
  return ({ id, body }) => {
    const { pieces, isOfPieces } = subjectsOf(body);
    return id > before.row || !isOfPieces || pieces.some((piece) => touched.includes(piece));
  };
}

const subjects = new WeakMap<OutboxBody, { pieces: number[]; isOfPieces: boolean }>();

/** The pieces that the buttons of a reply are about; `isOfPieces`: nothing else but a note makes one of them stale. */
function subjectsOf(body: OutboxBody): { pieces: readonly number[]; isOfPieces: boolean } {
  const known = subjects.get(body);
  if (known) return known;
  const buttons = body.kind === "file" ? [] : (body.reply.buttons ?? []);
  const parts = buttons.flat().map(({ press }) => partsOf.get(press));
  const of = {
    pieces: parts.flatMap(({ kind, moreNumber }) => (kind === "n" ? [moreNumber] : [])),
    isOfPieces: parts.every(({ kind }) => kind === "n" || kind === "u"),
  };
  subjects.set(body, of);
  return of;
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
