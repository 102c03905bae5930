import * as z from "zod";
import { checkNotGone } from "../books/check.ts";
import type { FactRules } from "../books/rules.ts";
import { costLine, dayWords, subjectOf } from "../decide/echo.ts";
import { hereBut } from "../decide/fits.ts";
import { settlePieces } from "../decide/pieces.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    start: { pieces?: Mention[] };
  }
}

const rules: FactRules<"start"> = {
  data: z.strictObject({}),
  apply(books, fact) {
    const problem = checkNotGone(books, fact.pieces);
    if (problem) return problem;
    for (const number of fact.pieces) books.piece(number).started ??= fact.day;
    return null;
  },
};

export const start = defineVerb({
  kind: "start",
  example: "started the desk",
  page: "notes",
  listed: (_, pieces) => `started ${pieces}`,
  story: () => "started",
  books: rules,
  goesOn: { pieces: "alike", carries: () => ({}) },
  byItsDay: true,
  reads: {
    says: [
      {
        say: [
          "started",
          "started on",
          "starting",
          "starting on",
          "start",
          "start on",
          "began",
          "begun",
          "beginning",
          "started work on",
          "started working on",
          "starting work on",
          "starting to work on",
          "dug into",
          "tore into",
          ...["dove into", "dived into", "diving into", "digging into", "jumped into", "cracked into"],
          ...["tearing into", "kicked off", "broke ground on", "commenced", "commenced work on"],
          ...["started", "starting"].flatMap((verb) =>
            ["tearing into", "digging into", "diving into", "cracking into", "in on", "messing with"].map(
              (on) => `${verb} ${on}`,
            ),
          ),
          ...["got my hands dirty with", "got my hands dirty on"],
          ...["got going on", "getting going on", "get going on", "got cracking on", "got rolling on"],
          ...["got started on", "getting started on", "made a start on", "got a start on", "set to work on"],
          ...["got to work on", "went to work on"],
          ...[],
          ...["started in on", "made inroads on", "began with", "begin with", "began on"],
        ],
      },
      {
        say: [
          "got stuck into",
          "getting stuck into",
          "got stuck in on",
          "cracked on with",
          "cracking on with",
          "crack on with",
          "got on with",
          "getting on with",
          "set about",
        ],
        with: ["piece"],
        without: ["duration", "number"],
      },
      {
        say: ["in progress", "is in progress", "underway", "is underway", "under way", "is under way"],
        with: ["piece"],
        without: ["number"],
        light: true,
      },
      { say: ["working on", "workin on", "work on"], without: ["duration"], light: true },
    ],
    slots: { pieces: "pieces" },
    bears: ["at work", "standing pieces", "any count", "things beside", "of pieces", "not a part"],
    needs: ["pieces"],
    absorbs: ["working on", "now", "work on"],
  },

  offered: (_, names) => `Started ${names}`,

  decide(reading, desk) {
    const fit = hereBut((piece) => piece.started !== null);
    const settled = settlePieces(reading, desk, { fit, question: "did you start", unknown: "add" });
    if (settled.kind !== "settled") return settled;
    const day = reading.date ?? desk.today;
    return { kind: "record", facts: [{ kind: "start", day, pieces: settled.pieces, data: {} }] };
  },
  echo({ fact, books, today }) {
    const first = `${subjectOf(books, fact)} started${dayWords(fact, today)}`;
    return [first, costLine(books, fact)];
  },
});
