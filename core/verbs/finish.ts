import * as z from "zod";
import { checkNotGone } from "../books/check.ts";
import type { FactRules } from "../books/rules.ts";
import { costLine, dayWords, subjectOf } from "../decide/echo.ts";
import { hereBut } from "../decide/fits.ts";
import { settlePieces } from "../decide/pieces.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    finish: { pieces?: Mention[] };
  }
}

const rules: FactRules<"finish"> = {
  data: z.strictObject({}),
  apply(books, fact) {
    const problem = checkNotGone(books, fact.pieces);
    if (problem) return problem;
    for (const number of fact.pieces) books.piece(number).finished = fact.day;
    return null;
  },
};

export const finish = defineVerb({
  kind: "finish",
  example: "finished dresser",
  page: "notes",
  upon: "started",
  listed: (_, pieces) => `finished ${pieces}`,
  story: () => "finished",
  books: rules,
  goesOn: { pieces: "alike", carries: () => ({}) },
  byItsDay: true,
  reads: {
    says: [
      {
        say: [
          "finished",
          "finished up",
          "finish",
          "finishing",
          "completed",
          "complete",
          "done with",
          "all done with",
          "all done",
          "all finished",
          "all finished with",
          "finished with",
          "wrapped up",
          "wrapped … up",
          "all finished up",
          "done w",
          "all done w",
          "finished up with",
          "is all done",
          "are all done",
          "is finished",
          "are finished",
          "is complete",
        ],
        without: ["labor"],
      },
      {
        say: [
          ...["knocked out", "polished off", "buttoned up", "put a bow on", "called it done on"],
          ...["put the finishing touches on", "put finishing touches on", "finishing touches on"],
          ...["calling … done", "declaring … done", "declared … done"],
          ...["calling … finished", "pronounced … done", "considering … done"],
          ...["calling it done on", "calling it good on", "called it good on", "calling it quits on"],
          ...["thats a wrap", "put a fork in"],
          ...[
            "thats it for",
            "that does it for",
            "thats a wrap on",
            "put a wrap on",
            "a wrap on",
            "thats all for",
          ],
          ...["is wrapped up", "is all wrapped up", "all wrapped up", "stick a fork in", "through with"],
        ],
        with: ["piece"],
        without: ["labor", "duration", "number"],
      },
      {
        say: [
          "done",
          "ready",
          "ready to list",
          "all set",
          "is done",
          "are done",
          "is ready",
          "are ready",
          "cured",
        ],
        with: ["piece"],
        without: ["duration", "labor"],
        light: true,
      },
      {
        say: ["is done", "are done", "done", "all done", "ready"],
        with: ["pronoun"],
        without: ["number", "duration", "unknown"],
        light: true,
      },
      {
        say: ["done", "all done", "all set", "ready"],
        without: ["named", "number", "duration", "labor", "supply", "unknown", "loan", "stream", "miles"],
        light: true,
      },
    ],
    slots: { pieces: "pieces" },
    bears: ["at work", "standing pieces", "things beside", "of pieces", "not a service", "not a part"],
    needs: ["pieces"],
    absorbs: ["done", "finished", "ready"],
  },

  offered: (_, names) => `Finished ${names}`,

  decide(reading, desk) {
    const fit = hereBut(
      (piece) => piece.finished !== null,
      (piece) => piece.started !== null,
    );
    const settled = settlePieces(reading, desk, { fit, question: "is finished", unknown: "add" });
    if (settled.kind !== "settled") return settled;
    const day = reading.date ?? desk.today;
    return { kind: "record", facts: [{ kind: "finish", day, pieces: settled.pieces, data: {} }] };
  },
  echo({ fact, books, today }) {
    const first = `${subjectOf(books, fact)} finished${dayWords(fact, today)}`;
    return [first, costLine(books, fact)];
  },
});
