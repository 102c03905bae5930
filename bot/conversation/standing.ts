import type { Fact } from "../../core/books/facts.ts";
import { standingOn } from "../../core/books/standing.ts";
import { dayOfInstant, showDay } from "../../core/calendar.ts";
import { readingOn, standingWords } from "../../core/decide/repeating/standing.ts";
import { claimDue, dueThrough, recordInstance } from "../standing.ts";
import { echoOf, impossibleText, keepOutcome } from "./outcome.ts";
import { isOwner, notYours } from "./rights.ts";
import type { Turn } from "./turn.ts";

/** What a standing note that was just set up is due by now, recorded as a part of the message that set it up. */
export function recordFirst(turn: Turn, setUp: Fact): void {
  if (setUp.kind !== "repeat" || !("note" in setUp.data)) return;
  const { ledger, person: author, note } = turn;
  const today = dayOfInstant(turn.now(), turn.zone());
  for (const due of dueThrough(ledger, today)) {
    if (due.standing.place !== setUp.place || !claimDue(ledger, due, turn.now())) continue;
    const kept = recordInstance(ledger, due, { note, author, root: setUp.root, today });
    if (kept.kind === "recorded") keepOutcome(turn, kept.facts, "");
    else {
      const why = kept.kind === "ask" ? kept.ask.prompt : kept.why;
      turn.spoken.push(
        `${readingOn(due.standing, due.day).text} of ${showDay(due.day, today)} is not recorded: ${why}`,
      );
    }
  }
}

/** Takes back one instance, in whatever version it stands; the standing note goes on. */
export function takeBackInstance(turn: Turn, place: number): void {
  const { ledger, person, note } = turn;
  const fact = ledger.factAt(place);
  if (!fact) {
    turn.spoken.push("That is taken back already.");
    return;
  }
  // The place came with a button: only what a standing note recorded, and only for whom it may be changed.
  if (fact.repeat === undefined || (fact.author !== person && !isOwner(turn))) {
    turn.spoken.push(notYours(turn, fact.root));
    return;
  }
  const [said] = echoOf(turn, fact);
  const result = ledger.amend({ note, author: person, voids: [fact.id], facts: [] });
  if (result.kind === "impossible") {
    turn.spoken.push(`Not taken back. ${impossibleText(turn, result)}`);
    return;
  }
  turn.changed = true;
  turn.spoken.push(`Taken back: ${said ?? fact.kind}`);
}

/** The standing notes that go on, a line each. */
export function standingLines({ ledger, today }: Pick<Turn, "ledger" | "today">): string[] {
  return standingOn(ledger.books.standing.values(), today).map((each) => standingWords(each, today));
}
