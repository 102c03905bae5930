import type { Fact } from "../../core/books/facts.ts";
import { canStand } from "../../core/decide/decide.ts";
import { readingsOn } from "../../core/decide/decision.ts";
import { mentionsOf } from "../../core/decide/pieces/mentioned.ts";
import type { Mention, Reading } from "../../core/notes/reading.ts";
import type { Question } from "../../db/questions.ts";
import { closeQuestion, openQuestions, releaseAfter } from "./questions.ts";
import { deskOf, type Turn } from "./turn.ts";

/** A note that says what an open question asked for closes it: at most one question for each fact. */
export function closeSettled(turn: Turn, facts: readonly Fact[]): void {
  const asked = new Set(turn.asked.map(({ id }) => id));
  let open = openQuestions(turn).filter(({ id, note }) => !asked.has(id) && note !== turn.root);
  for (const fact of facts) {
    const settled = open.find((question) => isSettledBy(turn, question, fact));
    if (settled) {
      closeQuestion(turn, settled.id);
      open = open.filter((question) => question !== settled);
      // What took a purchase for granted, or waited for it, goes on now that it is told.
      if (settled.ask.first) turn.released.push({ matter: settled.matter, root: settled.note });
      else releaseAfter(turn, settled.matter, fact.pieces);
    }
  }
  if (facts.every(({ pieces }) => pieces.length === 0)) return;
  for (const question of open.slice(0, MOOT_MAX))
    if (isMoot(turn, question)) closeQuestion(turn, question.id);
}

/** So many of the newest are looked at: each costs as much as a note. */
const MOOT_MAX = 3;

/** Whether nothing that a question offers can be any more: chairs were to be listed, and are sold by now. */
function isMoot(turn: Turn, { ask }: Question): boolean {
  if (ask.first || ask.offer) return false;
  const offered = readingsOn(ask);
  const isOnlyOffering = ask.choices.every(
    ({ effect }) => effect.kind === "instead" || effect.kind === "drop",
  );
  return offered.length > 0 && isOnlyOffering && !canStand(offered, deskOf(turn));
}

function isSettledBy(turn: Turn, { matter, ask }: Question, fact: Fact): boolean {
  // Held without a word of the price: what was offered may still be the one that is paid.
  if (ask.offer && fact.kind === "hold" && fact.data.agreed === undefined) return false;
  const offered = ask.choices.flatMap(({ effect }) =>
    effect.kind === "instead" ? effect.readings.slice(0, 1) : [],
  );
  const candidates = matter.reading.kind === "unclear" ? offered : [ask.first?.[0] ?? matter.reading];
  return candidates.some((wanted) => isSaidBy(turn, wanted, fact));
}

function isSaidBy(turn: Turn, wanted: Reading, fact: Fact): boolean {
  if (wanted.kind !== fact.kind) return false;
  const mentions = mentionsOf(wanted);
  if (mentions.length === 0)
    return hasNoPieces(wanted) && fact.pieces.length === 0 && isSameAmount(wanted, fact);
  return mentions.every((mention) => fact.pieces.some((number) => isPiece(turn, mention, number)));
}

/** It is not the piece that it asks for. */
function hasNoPieces({ missing = [] }: Reading): boolean {
  return missing.length > 0 && !missing.includes("pieces");
}

function isSameAmount(wanted: Reading, fact: Fact): boolean {
  const amount = "amount" in wanted ? wanted.amount : undefined;
  return amount === undefined || amount === fact.amount;
}

function isPiece({ ledger }: Turn, { number, name, traits = [] }: Mention, piece: number): boolean {
  if (number !== undefined) return number === piece;
  const meant = ledger.books.pieces.get(piece);
  return meant !== undefined && meant.name === name && traits.every((trait) => meant.traits.includes(trait));
}
