import { titled } from "../../core/answers/wording.ts";
import type { Fact } from "../../core/books/facts.ts";
import type { Effect } from "../../core/decide/decision.ts";
import { asNew } from "../../core/mending/changed.ts";
import type { Reading } from "../../core/notes/reading.ts";
import { impossibleText, keepOutcome, saidOf } from "./outcome.ts";
import { isOwner, mayChange, notYours, tellOwner } from "./rights.ts";
import type { Turn } from "./turn.ts";

/** Changes or takes out earlier facts as decided, and says what stood before. */
export function amendFacts(
  turn: Turn,
  { voids, facts }: Extract<Effect, { kind: "amend" }>,
  reading: Reading,
): void {
  const { ledger, person, note } = turn;
  const before = voids.map((id) => ledger.factById(id)!);
  const theirs = before.find(({ author }) => author !== person);
  if (theirs && !isOwner(turn)) {
    turn.spoken.push(notYours(turn, theirs.root));
    return;
  }
  const said = before.map((fact) => saidOf(turn, fact));
  // Who noted it first stays its author: a correction changes what happened, not who told of it.
  const kept = facts.map((each) => ({
    ...each,
    as: { author: ledger.factById(each.replaces)!.author, note },
  }));
  const result = ledger.amend({ note, author: person, voids, facts: kept });
  if (result.kind === "impossible") {
    turn.refused.push({ text: reading.text, line: reading.line, why: impossibleText(turn, result) });
    return;
  }
  turn.mended = true;
  const now = result.facts.map((fact) => saidOf(turn, fact));
  tellOwner(
    turn,
    now.length > 0 ? `changed ${said.join("; ")} to ${now.join("; ")}` : `took out ${said.join("; ")}`,
  );
  const undo = { label: "Undo", press: `um:${note}` };
  // Two changes of one note are taken back together.
  if (!turn.buttons.some((row) => row.some(({ press }) => press === undo.press))) turn.buttons.push([undo]);
  const gone = said.filter((_, index) => !facts.some(({ replaces }) => replaces === voids[index]));
  const isChange = gone.length === 0;
  keepOutcome(turn, isChange ? result.facts : [], reading.text, isChange ? said : []);
  if (!isChange) turn.spoken.push(titled("Taken out", gone));
}

/** Takes back one correction: what it changed or took out stands again as it was. */
export function takeBackMend(turn: Turn, mend: number): void {
  const { ledger } = turn;
  if (!mayChange(turn, mend)) {
    turn.spoken.push(notYours(turn, mend));
    return;
  }
  const now = ledger.books.facts.filter((fact) => fact.note === mend);
  const earlier = ledger.voidedBy(mend).filter((fact) => !isReplaced(turn, fact, now));
  if (now.length === 0 && earlier.length === 0) {
    turn.spoken.push("That is taken back already.");
    return;
  }
  const said = now.map((fact) => saidOf(turn, fact));
  const facts = earlier.map((fact) => {
    const replaced = now.find(({ place }) => place === fact.place);
    return { fact: asNew(fact), ...(replaced ? { replaces: replaced.id } : {}), restores: fact };
  });
  const result = ledger.amend({
    note: turn.note,
    author: turn.person,
    voids: now.map(({ id }) => id),
    facts,
  });
  if (result.kind === "impossible") {
    turn.spoken.push(`Not taken back. ${impossibleText(turn, result)}`);
    return;
  }
  turn.changed = true;
  const again = result.facts.map((fact) => saidOf(turn, fact));
  tellOwner(turn, `took back a correction: ${[...again, ...said].join("; ")}`);
  if (said.length > 0) turn.spoken.push(titled("Taken back", said));
  if (again.length > 0) turn.spoken.push(titled("Stands again", again));
}

/** Something other than this correction's own fact stands in the place by now. */
function isReplaced({ ledger }: Turn, { place }: Fact, own: readonly Fact[]): boolean {
  return ledger.books.facts.some((fact) => fact.place === place && !own.includes(fact));
}
