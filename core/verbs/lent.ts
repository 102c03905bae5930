import * as z from "zod";
import type { Books } from "../books/books.ts";
import { checkPieces } from "../books/check.ts";
import type { FactData } from "../books/facts.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { dayWords, namesOf } from "../decide/echo.ts";
import { here } from "../decide/pieces/fits.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import { judgeLending } from "../notes/judging/lending.ts";
import { phrases } from "../notes/words/words.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    /** A tool or pieces that somebody has for a while, or that came back. */
    lent: { what?: string; pieces?: Mention[]; to?: string; returned?: true };
  }
}

declare module "../books/facts.ts" {
  interface FactData {
    /** No money: where a thing is. `what` where it is none of the pieces. */
    lent: { what?: string; to?: string; returned?: true };
  }
}

/** Who has it stands before these, or within. */
const BORROWING = phrases(
  "borrowed is_borrowing has_borrowed borrowing let_…_borrow letting_…_borrow let_…_use has_my has_our still_has_my still_has_our took_home_my",
);

const rules: FactRules<"lent"> = {
  data: z.strictObject({
    what: wordsShape.optional(),
    to: wordsShape.optional(),
    returned: z.literal(true).optional(),
  }),
  apply: (books, fact) => checkPieces(books, fact.pieces),
};

const isLent = (what: string, { facts }: Books): boolean =>
  facts.some(({ kind, data }) => kind === "lent" && (data as FactData["lent"]).what?.includes(what));

export const lent = defineVerb({
  kind: "lent",
  example: "lent the sander to mom",
  page: "slips",
  listed: ({ data: { what, to, returned } }, pieces) =>
    returned ? `${what ?? pieces} came back` : `lent ${what ?? pieces}${to ? ` to ${to}` : ""}`,
  books: rules,
  reads: {
    says: [
      { say: phrases("lent lent_out loaned_out loaned lending"), without: ["loan", "number"] },
      { say: BORROWING, with: ["supply"], without: ["loan", "number"] },
      { say: BORROWING, with: ["piece"], without: ["loan", "number", "supply"] },
      { say: ["took … on loan", "on loan to", "out on loan to"], without: ["number"] },
      {
        say: phrases("came_back is_back brought_…_back gave_…_back returned"),
        with: ["supply"],
        without: ["number", "piece", "loan"],
        means: { returned: true },
      },
    ],
    slots: { what: "what", pieces: "pieces", to: "buyer" },
    absorbs: ["back", "borrowed", "came back"],
    judge: judgeLending,
  },
  offered: ({ what, to, returned }, names) => {
    const thing = what ?? names;
    return returned ? `${thing} came back` : `Lent ${thing}${to ? ` to ${to}` : ""}`;
  },
  story: ({ fact: { data } }) => (data.returned ? "came back" : `lent${data.to ? ` to ${data.to}` : ""}`),
  said: ({ data }) => data.to ?? null,

  decide(reading, desk) {
    const { what, to, returned } = reading;
    // "i returned a brush" took it back to where it was bought.
    if (returned && what && !isLent(what, desk.books))
      return { kind: "refuse", why: `By the books nobody had the ${what}.` };
    const data = { ...(what ? { what } : {}), ...(to ? { to } : {}), ...(returned ? { returned } : {}) };
    const day = reading.date ?? desk.today;
    if (!reading.pieces) return { kind: "record", facts: [{ kind: "lent", day, pieces: [], data }] };
    const settled = settlePieces(reading, desk, { fit: here, question: "did you lend", unknown: "add" });
    if (settled.kind !== "settled") return settled;
    return { kind: "record", facts: [{ kind: "lent", day, pieces: settled.pieces, data }] };
  },
  echo({ fact, books, today }) {
    const { what, to, returned } = fact.data;
    const thing = what ? `${what[0]!.toUpperCase()}${what.slice(1)}` : namesOf(books, fact);
    const whom = to ? `${returned ? " from" : " to"} ${to}` : "";
    return [`${thing} ${returned ? "came back" : "lent"}${whom}${dayWords(fact, today)}`];
  },
});
