import { type Figures, figuresOf } from "../../core/answers/lines.ts";
import type { Fact } from "../../core/books/facts.ts";
import { type Day, dayOfInstant, type Instant } from "../../core/calendar.ts";
import { type Calls, callsOf } from "../../core/cautions.ts";
import type { Ask, Looking, Matter } from "../../core/decide/decision.ts";
import type { Button } from "../../core/reply.ts";
import type { Ledger } from "../../db/ledger.ts";
import type { OutboxBody } from "../../db/outbox.ts";
import type { Log } from "../log.ts";

/** What the conversation needs of the process around it. */
export interface ConversationDeps {
  ledger: Ledger;
  /** ISO 4217 code. */
  currency: string;
  /** The ledger's time zone now: it may be changed by chat. */
  zone(): string;
  now(): Instant;
  log: Log;
}

/** A fact just recorded, with the clause that said so. */
export interface Outcome {
  fact: Fact;
  text: string;
  /** What is said of it, the understood first. */
  lines: string[];
}

/** One message or press being handled: what came of it so far. */
export interface Turn extends ConversationDeps {
  person: number;
  chat: string;
  /** The note's row id. */
  note: number;
  /** The first revision of the message: `note` itself unless it was edited. */
  root: number;
  /** When it was said, and the local day of that. */
  said: Instant;
  today: Day;
  /** Lines in the message as sent: what is not understood is listed with its line where there are several. */
  lines: number;
  recorded: Outcome[];
  /** The notes as typed, a line each, with the kinds that they were read as. */
  heard: { text: string; line: number; kinds: readonly string[]; root: number }[];
  /** How much of these was looked at for cautions, and what they call for. */
  looked: { recorded: number; heard: number; calls: Calls };
  /** `isRead`: what it says is known, and cannot be. */
  refused: { text: string; line: number; why: string; isRead?: true }[];
  /**
   * Questions opened in this turn, oldest first. `waits`: the notes that wait for the answer from now on;
   * `isReleased`: of a note that had waited.
   */
  asked: { id: number; token: string; ask: Ask; text: string; waits?: string[]; isReleased?: true }[];
  /** Whole answers and other words, each a block of its own. */
  spoken: string[];
  /** Buttons beside those of a question. */
  buttons: Button[][];
  files: Extract<OutboxBody, { kind: "file" }>[];
  /** Notes that waited for one that is settled now: decided at the end of the turn, each for its own message. */
  released: { matter: Matter; root: number }[];
  /** A question was closed, so that the next one in the queue may be asked. */
  closed: boolean;
  /** An earlier note was corrected, which an undo takes back by itself. */
  mended: boolean;
  /** The reply ends with what still waits for an answer. */
  tellsWaiting: boolean;
  /** The reply speaks of the books as changed, and ends with what that moved. */
  changed: boolean;
  /** The bot's message whose button was pressed, by the chat's own id; null for a message. */
  pressed: string | null;
  /** What takes long is left for `goOn`, which ends the turn. */
  isLeft: boolean;
  /** A step that the newcomer was led to is done: the next may follow. */
  leadOn: boolean;
  /** The money figures before anything came of the message. */
  before: Figures;
}

/** A turn in which nothing has come of the message yet. Written out: spread together it would be a table and no shape. */
export function newTurn(
  deps: ConversationDeps,
  of: Pick<Turn, "person" | "chat" | "note" | "said" | "lines">,
): Turn {
  return {
    ledger: deps.ledger,
    currency: deps.currency,
    zone: deps.zone,
    now: deps.now,
    log: deps.log,
    person: of.person,
    chat: of.chat,
    note: of.note,
    root: deps.ledger.note(of.note)?.root ?? of.note,
    said: of.said,
    today: dayOfInstant(of.said, deps.zone()),
    lines: of.lines,
    recorded: [],
    heard: [],
    looked: { recorded: 0, heard: 0, calls: callsOf([]) },
    refused: [],
    asked: [],
    spoken: [],
    buttons: [],
    files: [],
    released: [],
    closed: false,
    mended: false,
    tellsWaiting: false,
    changed: false,
    pressed: null,
    isLeft: false,
    leadOn: false,
    before: figuresNow(deps),
  };
}

/** The figures looked at last: what a note leaves is mostly what the next one finds. */
const figured = new WeakMap<Ledger, { age: number; day: Day; figures: Figures }>();

/** The money figures as of the moment of the reply, whenever the message was said. */
export function figuresNow({
  ledger,
  now,
  zone,
}: Pick<ConversationDeps, "ledger" | "now" | "zone">): Figures {
  const day = dayOfInstant(now(), zone());
  const last = figured.get(ledger);
  if (last?.age === ledger.age && last.day === day) return last.figures;
  const figures = figuresOf(ledger.books, day);
  figured.set(ledger, { age: ledger.age, day, figures });
  return figures;
}

/** What deciding may look at, as the books stand now. */
export function deskOf(turn: Turn): Looking {
  return { books: turn.ledger.books, today: turn.today, nextPiece: turn.ledger.nextPiece };
}
