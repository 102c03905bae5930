import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Fact, newPiecesOf, recordedInPlaceOf } from "../../core/books/facts.ts";
import { foldFacts } from "../../core/books/fold.ts";
import type { BooksInHand } from "../../core/books/hand.ts";
import { statementOf } from "../../core/books/statement.ts";
import { addDays } from "../../core/calendar.ts";
import type { Desk } from "../../core/decide/decision.ts";
import { canMend, type MendTo, mendFieldsOf } from "../../core/mending/fields.ts";
import { decideMend } from "../../core/mending/mend.ts";
import { runsOf, SEED } from "../runs.ts";
import { histories, Teller } from "./histories.ts";
import { modelProblem, modelStatement } from "./model.ts";

const RUNS = runsOf({ short: 50, long: 2500 });
const TIMEOUT_MS = 120_000 + RUNS * 400;

/** One correction: which standing fact, and what of it, from a few plain numbers. */
const mends = fc.array(
  fc.record({
    which: fc.nat(40),
    what: fc.nat(20),
    amount: fc.nat(20_000),
    back: fc.integer({ min: -20, max: 30 }),
  }),
  { minLength: 3, maxLength: 8 },
);
type Mend = Parameters<Parameters<typeof mends.map>[0]>[0][number];

function folded(facts: readonly Fact[]): BooksInHand {
  const result = foldFacts(facts);
  if (result.kind === "impossible") throw new Error(result.problem.kind);
  return result.books;
}

/** What a correction wants: a removal, or one field of those that the kind has. */
function wish(
  fact: Fact,
  { what, amount, back }: Mend,
  today: string,
): { to: MendTo } | { removed: true } | null {
  const fields = mendFieldsOf(fact.kind) ?? [];
  const field = fields[what % (fields.length + 1)];
  if (field === undefined) return { removed: true };
  const day = addDays(fact.day, back);
  const others = fact.pieces.map((number) => ({ number, count: 1 })).slice(0, 1 + (amount % 2));
  const to: Partial<Record<keyof MendTo, unknown>> = {
    amount,
    date: day > today ? today : day,
    minutes: amount % 500,
    miles: String(amount % 90),
    percent: String(amount % 30),
    method: "check",
    buyer: "neighbor",
    source: "curb",
    fee: amount % 900,
    owed: amount % 4_000,
    paid: amount % 3_000,
    received: 0,
    name: "sideboard",
    traits: ["oak"],
    pieces: "made" in fact.data ? [{ name: fact.data.made[0]!.name, count: 1 + (amount % 3) }] : others,
  };
  return { to: { [field]: to[field] } as MendTo };
}

/** The history with the correction made, as a person would have noted it in the first place; null: refused. */
function mended(
  standing: Fact[],
  mend: Mend,
  today: string,
  ids: { next: number; piece: number },
): Fact[] | null {
  const fact = standing.at(-1 - (mend.which % standing.length))!;
  const wanted = wish(fact, mend, today);
  if (!wanted || ("to" in wanted && !canMend(fact.kind, wanted.to))) return null;
  const none = () => undefined;
  const past = {
    ...{ person: 1, replied: null, touched: () => null, newest: none, before: none, isToday: () => true },
    echo: (each: Fact) => each.kind,
    wordsOf: () => [],
    nameOf: () => "Robin",
  };
  const desk: Desk = {
    books: folded(standing),
    today,
    nextPiece: ids.piece,
    confirmed: ["take out", "theirs"],
    past,
  };
  const decision = decideMend({ kind: "mend", of: { fact: fact.id }, ...wanted, text: "", line: 0 }, desk);
  if (decision.kind !== "act" || decision.effect.kind !== "amend") return null;
  const { voids, facts } = decision.effect;
  const replaced = facts.map((each) => {
    const before = standing.find(({ id }) => id === each.replaces)!;
    return recordedInPlaceOf(before, each.fact, { id: ids.next++, author: 1, note: ids.next });
  });
  for (const each of replaced) for (const number of each.pieces) ids.piece = Math.max(ids.piece, number + 1);
  return [...standing.filter(({ id }) => !voids.includes(id)), ...replaced];
}

/** The same history noted anew from the first note on: other ids, places and messages, in the same order. */
function fromScratch(facts: readonly Fact[]): Fact[] {
  const ordered = [...facts].sort((a, b) => a.place - b.place || a.id - b.id);
  const places = new Map(ordered.map((fact, index) => [fact.place, index + 1]));
  return ordered.map((fact, index) => {
    const id = index + 1;
    const repeat = fact.repeat === undefined ? {} : { repeat: places.get(fact.repeat) ?? fact.repeat };
    const data =
      fact.kind === "repeat" && "of" in fact.data
        ? { ...fact.data, of: places.get(fact.data.of)! }
        : fact.data;
    return { ...fact, ...repeat, data, id, place: id, note: id, root: id } as Fact;
  });
}

describe("corrections at random places", () => {
  it(
    "give the books of the corrected history told from scratch, as the model has them too",
    () => {
      let made = 0;
      let removed = 0;
      const property = fc.property(histories, mends, (steps, wishes) => {
        const teller = new Teller();
        let standing: Fact[] = [];
        for (const step of steps) {
          const told = teller.tell(step, standing);
          if (told?.added && step.does === "add" && foldFacts(told.facts).kind === "folded")
            standing = told.facts;
        }
        const highest = Math.max(0, ...standing.flatMap(newPiecesOf));
        const ids = { next: 100_000, piece: highest + 1 };
        for (const mend of wishes) {
          if (standing.length === 0) break;
          const next = mended(standing, mend, teller.today, ids);
          if (!next) continue;
          made += 1;
          if (next.length < standing.length) removed += 1;
          standing = next;
          expect(modelProblem(standing)).toBeNull();
        }
        const on = { through: addDays(teller.today, 40), currency: "USD" };
        const ours = statementOf(folded(standing), on);
        expect(ours).toEqual(statementOf(folded(fromScratch(standing)), on));
        expect(ours).toEqual(modelStatement(standing, on.through));
      });
      fc.assert(property, { seed: SEED, numRuns: RUNS, endOnFailure: false });
      // A run in which hardly anything is corrected would prove little.
      expect(made).toBeGreaterThan(RUNS);
      expect(removed).toBeGreaterThan(RUNS / 10);
    },
    TIMEOUT_MS,
  );
});
