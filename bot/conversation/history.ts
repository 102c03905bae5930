import { earmarked } from "../../core/books/month.ts";
import { type Choice, NEVER_MIND, newMatter } from "../../core/decide/decision.ts";
import {
  asksWhetherSent,
  dryRunText,
  type HistoryPlan,
  historyFacts,
  planning,
  sentFact,
} from "../../core/history.ts";
import { readBareMention } from "../../core/notes/bare.ts";
import type { Steps } from "../../core/steps.ts";
import type { Prepared } from "../../db/ledger.ts";
import type { Note } from "../../db/notes.ts";
import { impossibleText } from "./outcome.ts";
import { openQuestion } from "./questions.ts";
import { type ConversationDeps, newTurn, type Turn } from "./turn.ts";

/** A file of past pieces that is to be offered, or recorded where it is known whether its profit was `sent`. */
interface Wanted {
  note: Note;
  file: number;
  sent: boolean | null;
  /** The bot's message whose button was pressed. */
  pressed: string | null;
}

/** Keeps that a file of past pieces, by its stored note, is to be offered (`sent` null) or recorded. */
export function leaveHistory(turn: Turn, { file, sent }: Pick<Wanted, "file" | "sent">): void {
  const { settings } = turn.ledger;
  const wanted = { file, sent, pressed: turn.pressed };
  settings.set("pastWaiting", { ...settings.get("pastWaiting"), [turn.note]: wanted });
  turn.isLeft = true;
}

/** What was left of files of past pieces, oldest first. */
export function historiesLeft({ ledger }: Pick<ConversationDeps, "ledger">): Wanted[] {
  return Object.entries(ledger.settings.get("pastWaiting") ?? {}).flatMap(([id, wanted]) => {
    const note = ledger.note(Number(id));
    return note ? [{ note, ...wanted }] : [];
  });
}

/**
 * Offers or records a file of past pieces, a little at each step: read, folded and laid aside with nothing written,
 * then recorded in one transaction, all or nothing, in which it is also no more left. `finish` ends its turn.
 */
export function* handleHistory(
  deps: ConversationDeps,
  wanted: Wanted,
  finish: (turn: Turn) => void,
): Steps<void> {
  const { ledger, log } = deps;
  const { note } = wanted;
  try {
    for (let isDone = false; !isDone; ) {
      const plan = yield* planOf(begin(deps, wanted), wanted.file);
      const prepared = yield* prepare(deps, wanted, plan);
      isDone = ledger.transaction(() => {
        if (!ledger.settings.get("pastWaiting")?.[note.id]) return true;
        const turn = begin(deps, wanted);
        if (wanted.sent === null) offer(turn, plan);
        // Something was recorded meanwhile, as standing notes are: once more, on the books as they are.
        else if (!record(turn, { plan, prepared, sent: wanted.sent })) return false;
        noMoreLeft(deps, note);
        finish(turn);
        return true;
      });
    }
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    log.error("file of past pieces failed", { why, chat: note.chat });
    ledger.transaction(() => {
      noMoreLeft(deps, note);
      ledger.setNoteState(note.id, "failed", why.slice(0, 200));
      const text = "That went wrong on my side: nothing of the file is in the books. Please send it again.";
      ledger.outbox.queue({ chat: note.chat, body: { kind: "text", reply: { text } }, about: note.id });
    });
  }
}

function begin(deps: ConversationDeps, { note, sent, pressed }: Wanted): Turn {
  const { id, author: person, chat, said } = note;
  const turn = newTurn(deps, { person, chat, note: id, said, lines: 1 });
  const isAnswer = sent !== null;
  return Object.assign(turn, { pressed, closed: isAnswer, tellsWaiting: isAnswer && pressed === null });
}

function noMoreLeft({ ledger }: ConversationDeps, { id }: Note): void {
  const { [id]: _, ...others } = ledger.settings.get("pastWaiting") ?? {};
  ledger.settings.set("pastWaiting", others);
}

function planOf({ ledger, today }: Turn, file: number): Steps<HistoryPlan> {
  const { books, settings } = ledger;
  const earlier = (settings.get("pastNotes") ?? []).filter((note) => ledger.hasStandingFacts(note));
  return planning(ledger.note(file)?.text ?? "", {
    today,
    pieces: books.pieces.values(),
    before: earlier.flatMap((note) => ledger.note(note)?.text ?? []),
    mentionOf: readBareMention,
  });
}

/** Null where nothing is to be recorded. */
function* prepare(
  { ledger }: ConversationDeps,
  { note, file, sent }: Wanted,
  plan: HistoryPlan,
): Steps<Prepared | null> {
  if (sent === null || plan.problems.length > 0) return null;
  const facts = historyFacts(plan, ledger.nextPiece);
  return yield* ledger.prepare({ note: file, author: note.author, facts });
}

/** Says what the file would record, and asks. Nothing is recorded yet. */
function offer(turn: Turn, plan: HistoryPlan): void {
  const prompt = dryRunText(plan, turn.today);
  if (plan.problems.length > 0 || plan.rows.length === 0) {
    turn.spoken.push(prompt);
    return;
  }
  const choice = (label: string, words: string[], sent: boolean): Choice => ({
    label,
    words,
    effect: { kind: "history", note: turn.note, sent },
  });
  const choices = asksWhetherSent(plan)
    ? [choice("Yes, already sent", ["yes"], true), choice("No, still to send", ["no"], false)]
    : [choice("Record it", ["yes"], false)];
  const reading = { kind: "unclear", text: "file of past pieces", line: 0 } as const;
  const matter = newMatter(reading, turn.today);
  openQuestion(turn, matter, { prompt, wants: "choice", choices: [...choices, NEVER_MIND] }, turn.note);
}

/** Records what was prepared: all of it or nothing. False where the books have changed since. */
function record(
  turn: Turn,
  { plan, prepared, sent }: { plan: HistoryPlan; prepared: Prepared | null; sent: boolean },
): boolean {
  if (!prepared) {
    turn.spoken.push(dryRunText(plan, turn.today));
    return true;
  }
  const { ledger, person: author, today } = turn;
  const before = earmarked(ledger.books, today);
  const result = ledger.recordPrepared(prepared);
  if (!result) return false;
  if (result.kind === "impossible") {
    turn.spoken.push(`Nothing recorded. ${impossibleText(turn, result)}`);
    return true;
  }
  const { note, root } = result.facts[0]!;
  const fact = sentFact(plan, { declaredSent: sent, added: earmarked(ledger.books, today) - before });
  if (fact) ledger.record({ note, author, facts: [fact] });
  ledger.settings.set("pastNotes", [...(ledger.settings.get("pastNotes") ?? []), root]);
  turn.changed = true;
  const told = sent ? " Their profit counts as sent." : "";
  turn.spoken.push(`Recorded ${plan.pieces} past pieces, ${plan.soldPieces} of them sold.${told}`);
  return true;
}
