import type { NewFact } from "../books/facts.ts";
import { pieceLabel, profitOf } from "../books/piece.ts";
import { confirmation, type Decision, type Desk } from "../decide/decision.ts";
import { piecesOf } from "../decide/echo.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import { percentOf, show } from "../money.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { phrases } from "../notes/words/words.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    share: { pieces?: Mention[]; with?: string; percent?: string };
  }
}

const HALF = "50";

/** A share of a profit is help on the piece: it is recorded as spending, and fixed from then on. */
export const share = defineVerb({
  kind: "share",
  example: "split the profit on #2 with dad",
  page: "deals",
  reads: {
    says: [
      {
        say: phrases(
          "split_…_profit split_…_profits share_…_profit shared_…_profit splitting_…_profit gets_a_third gets_a_quarter go_halves going_halves went_halves splitting_…_profits split_…_money",
        ),
        with: ["named"],
        without: ["loan", "number"],
      },
    ],
    slots: { pieces: "pieces", percent: "percent" },
    needs: ["pieces"],
    absorbs: phrases("split share profit half with gave give"),
    // The rows of deals tell who shares; what they leave names nobody.
    judge: () => ({ kind: "anotherPerson" }),
  },

  decide(reading, desk) {
    const fit = {
      allows: (piece: { gone: string | null }) => piece.gone === "sold",
    };
    const need = { fit, question: "is it about", unknown: "refuse", lacks: "not sold yet" } as const;
    const settled = settlePieces(reading, desk, need);
    if (settled.kind !== "settled") return settled;
    return shareOut(reading, settled.pieces, desk);
  },
});

/** Shown before it is recorded, piece by piece; pieces that made nothing are passed over. */
function shareOut(reading: ReadingOf<"share">, numbers: readonly number[], desk: Desk): Decision {
  const { percent = HALF } = reading;
  const who = reading.with ?? "partner";
  const pieces = piecesOf(desk.books, { pieces: [...numbers] });
  const earning = pieces.filter((piece) => (profitOf(piece) ?? 0) > 0);
  if (earning.length === 0) return { kind: "refuse", why: "There is no profit to share there." };
  const shares = earning.map((piece) => ({ piece, amount: percentOf(percent, profitOf(piece)!) }));
  const told = shares.map(({ amount }) => show(amount)).join(" + ");
  const confirm = `share ${told}`;
  if (desk.confirmed.includes(confirm)) {
    const day = reading.date ?? desk.today;
    const facts = shares.map(
      ({ piece, amount }): NewFact => ({
        kind: "spend",
        day,
        pieces: [piece.number],
        amount,
        data: { what: `share for ${who}`, category: "help" },
      }),
    );
    return { kind: "record", facts: facts.filter((fact) => fact.amount !== 0) };
  }
  const lines = shares.map(
    ({ piece, amount }) => `${pieceLabel(piece)}: ${show(amount)} of ${show(profitOf(piece)!)}`,
  );
  const passed = pieces.length > earning.length ? ["The others made nothing to share."] : [];
  const prompt = [`${percent}% of the profit for ${who}:`, ...lines, ...passed, "Record that as help?"].join(
    "\n",
  );
  return { kind: "ask", ask: confirmation(prompt, { label: `Yes, ${told}`, confirm }) };
}
