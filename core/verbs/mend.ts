import type { Day } from "../calendar.ts";
import { showMinutes } from "../decide/echo.ts";
import { decideMend } from "../mending/mend.ts";
import { type Cents, show } from "../money.ts";
import { phrases } from "../notes/words/words.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    mend: {
      /** The fact it speaks of, as far as said; `number` is a piece's, `back` counts notes back from the newest. */
      of?: {
        kind?: Kind;
        what?: string;
        amount?: Cents;
        /** The fee of a sale, as it was noted. */
        fee?: Cents;
        date?: Day;
        pieces?: Mention[];
        number?: number;
        back?: number;
        minutes?: number;
        miles?: string;
        /** It is of one of these kinds. */
        kinds?: Kind[];
        /** The id of the fact, once it is known. */
        fact?: number;
      };
      /** What becomes of it; `amount` is the main one of its kind. */
      to?: {
        amount?: Cents;
        /** So much is added to the amount, or taken off it. */
        more?: Cents;
        date?: Day;
        /** A hold until then. */
        until?: Day;
        percent?: string;
        minutes?: number;
        miles?: string;
        method?: string;
        buyer?: string;
        source?: string;
        /** Who of the household did it. */
        by?: string;
        fee?: Cents;
        owed?: Cents;
        agreed?: Cents;
        /** Cash of a trade, paid by us or to us. */
        paid?: Cents;
        received?: Cents;
        name?: string;
        traits?: string[];
        pieces?: Mention[];
        /** One name in the place of another: whose or of what, the note tells that has it. */
        swap?: { now: string; then: string };
        /** "it was dad who bought it": the buyer of a sale, else who of the household did it. */
        who?: string;
        loan?: string;
        how?: RetireHow;
        /** One more piece, in equal shares with the one that was said. */
        also?: Mention;
      };
      removed?: true;
      /** How it is offered, where several notes may be meant. */
      label?: string;
      /** "The paint is wrong": it is taken out, or has another value. */
      isWrong?: true;
      /** Said without a word that corrects: it is of what was said just before, or none. */
      bare?: true;
    };
  }
}

export const mend = defineVerb({
  kind: "mend",
  example: "#8 was a mistake",
  page: "slips",
  reads: {
    // These only part it from other clauses: any word of it may be of what it speaks of (notes/mends.ts).
    says: [
      { say: ["was a mistake", "were a mistake", "is a mistake", "was an error"], with: ["named"] },
      { say: ["actually cost", "actually paid"], with: ["piece", "number"] },
      { say: phrases("delete_the_last remove_the_last undo_the_last delete_the remove_the") },
    ],
    slots: {},
    bears: ["corrects"],
    absorbs: phrases("sold bought drove drive spent paid"),
    judge: () => ({ kind: "unknown" }),
  },
  offered({ to = {}, text, label }) {
    if (label !== undefined) return label;
    const value =
      to.amount !== undefined
        ? show(to.amount)
        : to.miles !== undefined
          ? `${to.miles} miles`
          : to.minutes !== undefined
            ? showMinutes(to.minutes)
            : null;
    return value === null || to.pieces ? text : `Change the earlier one to ${value}`;
  },
  decide: decideMend,
});
