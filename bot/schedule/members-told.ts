import type { Fact } from "../../core/books/facts.ts";
import type { Day } from "../../core/calendar.ts";
import { verbOf } from "../../core/decide/decide.ts";
import type { Ledger } from "../../db/ledger.ts";

/** The most lines of the message that tells the owner what members noted. */
const LINES_MAX = 20;

/**
 * What members noted since the owner was told last, each by name, and the newest note among it; null where there
 * is nothing. What was taken back meanwhile is not told.
 */
export function membersTold(ledger: Ledger, today: Day): { text: string; through: number } | null {
  const after = ledger.settings.get("toldThrough") ?? 0;
  const names = new Map(
    ledger.members.list().map(({ id, name, role }) => [id, role === "owner" ? "" : name]),
  );
  const facts = ledger.books.facts
    .filter(({ note, author }) => note > after && names.get(author) !== "")
    .sort((a, b) => a.id - b.id);
  if (facts.length === 0) return null;
  const nameOf = (fact: Fact) =>
    names.get(fact.author) ?? ledger.members.byId(fact.author)?.name ?? "Someone";
  const lines = facts.map((fact) => `${nameOf(fact)}: ${echoLine(ledger, fact, today)}`);
  // The heading and, where not all fit, the line that says so are lines, too.
  const room = lines.length < LINES_MAX ? lines.length : LINES_MAX - 2;
  const left = lines.length - room;
  const text = ["Noted by others:", ...lines.slice(0, room), ...(left > 0 ? [`and ${left} more`] : [])];
  return { text: text.join("\n"), through: Math.max(...facts.map(({ note }) => note)) };
}

function echoLine({ books }: Ledger, fact: Fact, today: Day): string {
  if (fact.kind === "sent") return "past pieces";
  const echo = verbOf(fact.kind)?.echo as ((of: object) => string[]) | undefined;
  return echo?.({ fact, books, today })[0] ?? fact.kind;
}
