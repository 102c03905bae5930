import { earmarked } from "../../core/books/month.ts";
import { statusOf } from "../../core/books/piece.ts";
import type { Button, Reply } from "../../core/reply.ts";
import { createMemory } from "../../db/memory.ts";
import type { Said } from "../../db/outbox.ts";
import { STEPS } from "./composing.ts";
import { openQuestions } from "./questions.ts";
import type { Turn } from "./turn.ts";

/**
 * Takes away the buttons in this chat that are used up, or that the books have overtaken. Those further back than the
 * latest rows stay: a press there is answered all the same.
 */
export function tidyButtons(turn: Turn): void {
  const { ledger, chat } = turn;
  if (!turn.changed && !turn.closed && turn.pressed === null) return;
  const pressed = turn.pressed === null ? null : ledger.outbox.messageOf(chat, turn.pressed);
  const asked = new Set(openQuestions(turn).map(({ note }) => note));
  for (const [outbox, { text, buttons = [] }] of shownReplies(ledger.outbox.lately(chat))) {
    const isUsed = outbox === pressed?.id && isOnce(buttons);
    const left = isUsed ? [] : leftOf(turn, buttons, asked);
    if (left === buttons || buttons.length === 0) continue;
    const reply = left.length > 0 ? { text, buttons: left } : { text };
    ledger.outbox.queue({ chat, body: { kind: "edit", outbox, reply } });
  }
}

/** The buttons that are not stale; nearly always all of them. */
function leftOf(turn: Turn, buttons: Button[][], asked: ReadonlySet<number>): Button[][] {
  if (buttons.every((row) => row.every(({ press }) => !isStale(turn, press, asked)))) return buttons;
  return buttons
    .map((row) => row.filter(({ press }) => !isStale(turn, press, asked)))
    .filter((row) => row.length > 0);
}

/** What each of the bot's messages shows now, by the outbox row that sent it. `rows`: newest first. */
function shownReplies(rows: readonly Said[]): Map<number, Reply> {
  const shown = new Map<number, Reply>();
  for (const { id, body } of rows) {
    if (body.kind === "file") continue;
    const of = body.kind === "edit" ? body.outbox : id;
    if (!shown.has(of)) shown.set(of, body.reply);
  }
  return shown;
}

/** Whether any one press uses up all the buttons of a message: those that lead a newcomer, set a goal, or name the piece of a picture. */
function isOnce(buttons: readonly Button[][]): boolean {
  return buttons.flat().every(({ press }) => /^(?:[zgl]|p[fx]):/.test(press));
}

/** The same buttons are looked at after every note. */
const partsOf = createMemory((press: string) => press.split(":"), true);

/** Whether pressing a button could only be answered with a regret. */
function isStale(turn: Turn, press: string, asked: ReadonlySet<number>): boolean {
  const { ledger } = turn;
  const [kind, what = "", more = ""] = partsOf.get(press);
  switch (kind) {
    case "q":
      return ledger.questions.byToken(what)?.closed !== null;
    case "u":
      return !asked.has(Number(what)) && ledger.standingFactsOf(Number(what)).length === 0;
    case "n": {
      const piece = ledger.books.pieces.get(Number(more));
      return !piece || STEPS[what]?.of.includes(statusOf(piece)) !== true;
    }
    case "nl":
    case "nw":
    case "nx":
      return isSettled(turn, kind, Number(what));
    case "l":
      return what === "loan" && ledger.books.loans.size > 0;
    case "rs":
      return earmarked(ledger.books, turn.today) !== Number(what);
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
