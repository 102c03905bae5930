import * as z from "zod";
import { checkNotGone } from "../books/check.ts";
import type { FactRules } from "../books/rules.ts";
import { costLine, dayWords, subjectOf } from "../decide/echo.ts";
import { hereBut } from "../decide/pieces/fits.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import { phrases } from "../notes/words/words.ts";
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
          ...phrases(
            "started started_on starting starting_on start start_on began begun beginning started_work_on started_working_on starting_work_on starting_to_work_on dug_into tore_into dove_into dived_into diving_into digging_into jumped_into cracked_into tearing_into kicked_off broke_ground_on commenced commenced_work_on day_one_on day_one_of",
          ),
          ...["started", "starting"].flatMap((verb) =>
            phrases("tearing_into digging_into diving_into cracking_into in_on messing_with").map(
              (on) => `${verb} ${on}`,
            ),
          ),
          ...phrases(
            "got_my_hands_dirty_with got_my_hands_dirty_on got_going_on getting_going_on get_going_on got_cracking_on got_rolling_on got_started_on getting_started_on made_a_start_on got_a_start_on set_to_work_on got_to_work_on went_to_work_on",
          ),
          ...[],
          ...phrases("started_in_on made_inroads_on began_with begin_with began_on"),
        ],
      },
      {
        say: phrases(
          "got_stuck_into getting_stuck_into got_stuck_in_on cracked_on_with cracking_on_with crack_on_with got_on_with getting_on_with set_about",
        ),
        with: ["piece"],
        without: ["duration", "number"],
      },
      {
        say: phrases("in_progress is_in_progress underway is_underway under_way is_under_way"),
        with: ["piece"],
        without: ["number"],
        light: true,
      },
      { say: ["working on", "workin on", "work on"], without: ["duration"], light: true },
    ],
    slots: { pieces: "pieces" },
    bears: [
      "everyday words",
      "ours to do",
      "at work",
      "standing pieces",
      "any count",
      "things beside",
      "of pieces",
      "not a part",
    ],
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
