import type { Standing } from "../core/books/books.ts";
import type { Fact, NewFact } from "../core/books/facts.ts";
import { daysDue } from "../core/books/standing.ts";
import type { Day, Instant } from "../core/calendar.ts";
import { decide } from "../core/decide/decide.ts";
import { type Ask, newMatter } from "../core/decide/decision.ts";
import { readingOn } from "../core/decide/repeating/standing.ts";
import type { Ledger } from "../db/ledger.ts";

/** A day of a standing note that nobody has taken yet. */
export interface Due {
  standing: Readonly<Standing>;
  day: Day;
}

/** What standing notes are due through a day and not taken yet, by day, the older standing note first. */
export function dueThrough(ledger: Ledger, today: Day): Due[] {
  const due = [...ledger.books.standing.values()].flatMap((standing) => {
    const after = ledger.reminders.last(keyOf(standing));
    return daysDue(standing, after, today).map((day) => ({ standing, day }));
  });
  return due.sort((a, b) => (a.day === b.day ? a.standing.place - b.standing.place : a.day < b.day ? -1 : 1));
}

/** Takes one day of one standing note; false where it was taken before, whether anything came of it or not. */
export function claimDue(ledger: Ledger, { standing, day }: Due, now: Instant): boolean {
  return ledger.reminders.claim(day, keyOf(standing), now);
}

function keyOf({ place }: Readonly<Standing>): string {
  return `repeat:${place}`;
}

/** What came of a day of a standing note. */
type Kept = { kind: "recorded"; facts: Fact[] } | { kind: "ask"; ask: Ask } | { kind: "refuse"; why: string };

/** Records one instance through the same door as a note: read, decided, and refused or asked about like any other. */
export function recordInstance(
  ledger: Ledger,
  { standing, day }: Due,
  by: { note: number; author: number; root?: number; today: Day },
): Kept {
  const { note, author, root, today } = by;
  const reading = readingOn(standing, day);
  const { books, nextPiece } = ledger;
  const decision = decide(newMatter(reading, day), { books, today, nextPiece });
  if (decision.kind === "refuse" || decision.kind === "ask") return decision;
  if (decision.kind === "act") throw new Error("a standing note corrects no other");
  const facts = decision.facts.map((fact): NewFact => ({ ...fact, repeat: standing.place }));
  const recorded = ledger.record({ note, author, facts, ...(root === undefined ? {} : { root }) });
  if (recorded.kind === "recorded") return recorded;
  // It stands first on its day, so what it needs has to be there the evening before.
  return {
    kind: "refuse",
    why: `What is on the books that day does not allow it. Send it as a note: ${reading.text}`,
  };
}
