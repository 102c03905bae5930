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
        say: phrases(
          "finished finished_up finish finishing completed complete done_with all_done_with all_done all_finished all_finished_with finished_with wrapped_up wrapped_…_up all_finished_up done_w all_done_w finished_up_with is_all_done are_all_done is_finished are_finished is_complete is_now_finished are_now_finished is_now_complete are_now_complete now_finished now_complete",
        ),
        without: ["labor"],
      },
      {
        say: phrases(
          "knocked_out banged_out cranked_out polished_off buttoned_up closed_out signed_off_on crossed_off checked_off ticked_off tied_a_bow_on put_to_bed put_…_to_bed sewed_up licked nailed_it_on done_and_dusted nothing_left_to_do_on nothing_more_to_do_on put_a_bow_on called_it_done_on put_the_finishing_touches_on put_finishing_touches_on finishing_touches_on calling_…_done called_it_done called_it_finished called_them_done declaring_…_done declared_…_done calling_…_finished pronounced_…_done considering_…_done calling_it_done_on calling_it_good_on called_it_good_on calling_it_quits_on thats_a_wrap put_a_fork_in thats_it_for that_does_it_for thats_a_wrap_on put_a_wrap_on a_wrap_on thats_all_for is_wrapped_up is_all_wrapped_up all_wrapped_up stick_a_fork_in through_with",
        ),
        with: ["piece"],
        without: ["labor", "duration", "number"],
      },
      {
        say: phrases("done ready ready_to_list all_set is_done are_done is_ready are_ready cured"),
        with: ["piece"],
        without: ["duration", "labor"],
        light: true,
      },
      {
        say: phrases("is_done are_done done all_done ready"),
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
    bears: [
      "everyday words",
      "ours to do",
      "at work",
      "standing pieces",
      "things beside",
      "of pieces",
      "not a service",
      "not a part",
    ],
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
