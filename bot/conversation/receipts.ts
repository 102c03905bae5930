import type { Fact, FactOf } from "../../core/books/facts.ts";
import { labelOf } from "../../core/books/label.ts";
import { monthOf, showDay } from "../../core/calendar.ts";
import { show } from "../../core/money.ts";
import { readMessage } from "../../core/notes/read.ts";
import type { Turn } from "./turn.ts";

const RECEIPTS_MAX = 10;
/** Words that only join the others, and the months, which are read by their own rule. */
const JOINING =
  /^(?:the|my|of|for|from|in|on|all|me|any|jan\w*|feb\w*|mar(?:ch)?|apr\w*|may|june?|july?|aug\w*|sep\w*|oct\w*|nov\w*|dec\w*)$/;

/**
 * "show paint receipts", "show receipts for august": the pictures that came with spending notes, newest first.
 * `said` is the whole message.
 */
export function showReceipts(turn: Turn, said: string): void {
  const words = said
    .toLowerCase()
    .replace(/^(?:show|find)|\breceipts?\b/g, " ")
    .split(/\s+/)
    .filter((word) => word !== "" && !JOINING.test(word));
  const month = readMessage(said, turn.today).flatMap((each) =>
    each.kind === "ask" ? (each.month ?? []) : [],
  )[0];
  const spendings = turn.ledger.books.facts
    .filter((fact): fact is FactOf<"spend"> => fact.kind === "spend")
    .filter((fact) => month === undefined || monthOf(fact.day) === month)
    .filter((fact) => words.every((word) => wordsOf(turn, fact).includes(word)))
    .reverse();
  const kept = spendings.flatMap((fact) =>
    turn.ledger.pictures.ofMessage(fact.root).map((picture) => ({ fact, picture })),
  );
  const what = words.join(" ");
  if (kept.length === 0) {
    turn.spoken.push(`No receipt${what ? ` of ${what}` : ""} kept.\nSend its photo right after the note.`);
    return;
  }
  const shown = kept.slice(0, RECEIPTS_MAX);
  const left = kept.length - shown.length;
  turn.spoken.push(
    `${kept.length === 1 ? "1 receipt" : `${kept.length} receipts`}${what ? `: ${what}` : ""}${left > 0 ? `, the newest ${shown.length}` : ""}`,
  );
  for (const { fact, picture } of shown) {
    const { file, uniqueFile } = picture;
    const caption = `${fact.data.what} ${show(fact.amount ?? 0)}, ${showDay(fact.day, turn.today)}`;
    turn.files.push({ kind: "file", make: { what: "picture", name: uniqueFile, args: { file } }, caption });
  }
}

function wordsOf({ ledger }: Turn, fact: Fact & { kind: "spend" }): string {
  return `${fact.data.what} ${fact.data.category} ${labelOf(ledger.books, fact.pieces)}`.toLowerCase();
}
