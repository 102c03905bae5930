import type { Choice } from "../../core/decide/decision.ts";
import { NEVER_MIND, newMatter } from "../../core/decide/decision.ts";
import { asksWhetherSent, dryRunText, historyFacts, planHistory } from "../../core/history.ts";
import { readBareMention } from "../../core/notes/bare.ts";
import { impossibleText } from "./outcome.ts";
import { openQuestion } from "./questions.ts";
import type { Turn } from "./turn.ts";

function planOf(turn: Turn, csv: string) {
  const { books, settings } = turn.ledger;
  const earlier = (settings.get("pastNotes") ?? []).filter(
    (note) => turn.ledger.standingFactsOf(note).length > 0,
  );
  return planHistory(csv, {
    today: turn.today,
    pieces: books.pieces.values(),
    before: earlier.flatMap((note) => turn.ledger.note(note)?.text ?? []),
    mentionOf: readBareMention,
  });
}

/** A file of past pieces: says what it would record, and asks. Nothing is recorded yet. */
export function offerHistory(turn: Turn, csv: string): void {
  const plan = planOf(turn, csv);
  const prompt = dryRunText(plan, turn.today);
  if (plan.problems.length > 0 || plan.rows.length === 0) {
    turn.spoken.push(prompt);
    return;
  }
  const record = (label: string, words: string[], sent: boolean): Choice => ({
    label,
    words,
    effect: { kind: "history", note: turn.note, sent },
  });
  const choices = asksWhetherSent(plan)
    ? [record("Yes, already sent", ["yes"], true), record("No, still to send", ["no"], false)]
    : [record("Record it", ["yes"], false)];
  const reading = { kind: "unclear", text: "file of past pieces", line: 0 } as const;
  const matter = newMatter(reading, turn.today);
  openQuestion(turn, matter, { prompt, wants: "choice", choices: [...choices, NEVER_MIND] }, turn.note);
}

/** Records a file that was offered: all of it or nothing. Its text is that of the stored note. */
export function recordHistory(turn: Turn, note: number, declaredSent: boolean): void {
  const csv = turn.ledger.note(note)?.text ?? "";
  const plan = planOf(turn, csv);
  if (plan.problems.length > 0) {
    turn.spoken.push(dryRunText(plan, turn.today));
    return;
  }
  const { books, nextPiece, settings } = turn.ledger;
  const facts = historyFacts(plan, { declaredSent, nextPiece, on: { books, today: turn.today } });
  const result = turn.ledger.record({ note, author: turn.person, facts });
  if (result.kind === "impossible") {
    turn.spoken.push(`Nothing recorded. ${impossibleText(turn, result)}`);
    return;
  }
  settings.set("pastNotes", [...(settings.get("pastNotes") ?? []), turn.ledger.note(note)?.root ?? note]);
  turn.changed = true;
  const sent = declaredSent ? " Their profit counts as sent." : "";
  turn.spoken.push(`Recorded ${plan.pieces} past pieces, ${plan.soldPieces} of them sold.${sent}`);
}
