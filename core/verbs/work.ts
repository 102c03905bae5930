import * as z from "zod";
import { checkPieces } from "../books/check.ts";
import { shareOf } from "../books/posted.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { dayWords, namesOf, piecesOf, showMinutes } from "../decide/echo.ts";
import { inAll } from "../decide/pieces/choices.ts";
import { ever } from "../decide/pieces/fits.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import { judgeWork } from "../notes/judging/working.ts";
import { GIVEN_WORK } from "../notes/words/labors.ts";
import { phrases } from "../notes/words/words.ts";
import { splitEvenly } from "../split.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    work: { minutes?: number; pieces?: Mention[]; what?: string };
  }
}

const rules: FactRules<"work"> = {
  mends: ["minutes", "date", "pieces"],
  alone: true,
  data: z.strictObject({ minutes: z.int().nonnegative(), what: wordsShape.optional() }),
  apply(books, fact) {
    const problem = checkPieces(books, fact.pieces);
    if (problem) return problem;
    if (fact.pieces.length === 0) return null;
    const shares = splitEvenly(fact.data.minutes, fact.pieces.length);
    fact.pieces.forEach((number, index) => {
      books.piece(number).minutes += shares[index]!;
    });
    return null;
  },
};

export const work = defineVerb({
  kind: "work",
  example: "2.5h sanding dresser",
  page: "costs",
  upon: "started",
  listed: ({ data }, pieces) =>
    `${data.what ?? "work"} ${showMinutes(data.minutes)}${pieces ? ` on ${pieces}` : ""}`,
  story: (told) => `${told.fact.data.what ?? "work"} ${showMinutes(shareOf(told, told.fact.data.minutes))}`,
  books: rules,
  goesOn: { pieces: "same", carries: ({ data: { minutes, what } }) => ({ minutes, what }) },
  reads: {
    says: [
      { with: ["duration", "labor"], without: ["miles"] },
      { with: ["duration"], without: ["miles", "number"] },
      { say: ["worked on", "worked"], without: ["number"] },
      { say: ["gave", "giving"], ends: GIVEN_WORK, with: ["piece"], without: ["number", "supply"] },
      {
        say: phrases(
          "working_on working spent put put_in put_another did logged finished done prep work_on work started",
        ),
        with: ["duration"],
        without: ["number"],
        light: true,
      },
      {
        say: phrases(
          "killed blew wasted sank sunk invested clocked racked_up ground_out squeezed_in snuck_in got_in managed banged_out knocked_out cranked_out plugged_away chipped_away toiled slaved slogged grinded tinkered puttered pottered fiddled futzed fussed sweated devoted dedicated carved_out poured eked_out whiled_away",
        ),
        with: ["duration"],
        without: ["number", "miles"],
        light: true,
      },
      { say: ["burned", "burnt"], with: ["duration"], without: ["number", "miles"] },
      {
        say: phrases(
          "messed fiddled tinkered monkeyed futzed fussed piddled puttered toyed messing fiddling tinkering futzing fussing piddling puttering noodled fought battled wrestled struggled dinked diddled goofed played",
        ).flatMap((verb) => [`${verb} with`, `${verb} around with`, `${verb} on`, `${verb} around on`]),
        with: ["duration", "piece"],
        without: ["number", "miles"],
        light: true,
      },
      {
        say: phrases(
          "fussed_over slaved_over labored_over toiled_over sweated_over slogged_through plugged_away_at chipped_away_at pecked_away_at hammered_away_at picked_at grafted grafted_on grafted_away_on graft_on graft beavered_away_on beavered_away_at cracked_on_with got_stuck_into got_stuck_in_on set_about got_on_with pottered_with pottered_on faffed_with faffed_about_with faffing_about_with fiddled_about_with slogged_at slogged_on slogged_away_at kept_at pegged_away_at gave_…_another give_…_another rubbing_…_down rubbed_…_down plugged_away_on hacked_away_at toiled_on labored_on dabbled_on slaved_on babied fought battled wrestled was_at were_at been_at at_it_on",
        ),
        with: ["duration", "piece"],
        without: ["number", "miles"],
        light: true,
      },
      {
        say: phrases(
          "few_hours a_few_hours all_day all_morning all_afternoon all_night half_the_day spent_half_the_day spent_the_whole_morning spent_the_whole_afternoon spent_the_whole_evening spent_all_afternoon spent_all_evening spent_all_day spent_the_morning spent_the_afternoon spent_the_evening spent_the_whole_day spent_my_morning spent_my_afternoon spent_my_day spent_all_morning spent_all_afternoon spent_the_day spent_hours hours_on whole_day",
        ),
        with: ["piece"],
        without: ["number", "duration"],
        light: true,
      },
      {
        say: phrases(
          "finished done is_done are_done is_finished are_finished all_done finished_up wrapped_up completed done_with all_done_with finished_with",
        ),
        with: ["labor", "piece"],
        without: ["number"],
        light: true,
      },
      { with: ["labor", "piece"], without: ["number", "supply"] },
    ],
    slots: { minutes: "minutes", pieces: "pieces", what: "labor" },
    bears: [
      "everyday words",
      "ours to do",
      "at work",
      "any count",
      "dated in passing",
      "things beside",
      "of pieces",
      "not a service",
    ],
    needs: ["minutes", "pieces"],
    absorbs: phrases(
      "working_on worked_on worked working spent put_in finished done started into prep work knocked_out took took_me",
    ),
    judge: judgeWork,
  },

  offered({ minutes, what }, names) {
    return `${minutes === undefined ? "Worked" : showMinutes(minutes)}${what ? ` ${what}` : ""} on ${names}`;
  },

  decide(reading, desk) {
    const settled = settlePieces(reading, desk, { fit: ever, question: "did you work on", unknown: "add" });
    if (settled.kind !== "settled") return settled;
    const { minutes, what } = inAll(reading, settled.pieces);
    const day = reading.date ?? desk.today;
    const data = { minutes: minutes!, ...(what ? { what } : {}) };
    return { kind: "record", facts: [{ kind: "work", day, pieces: settled.pieces, data }] };
  },
  echo({ fact, books, today }) {
    const all = piecesOf(books, fact).reduce((sum, piece) => sum + piece.minutes, 0);
    const what = fact.data.what ? ` ${fact.data.what}` : "";
    const total = all > fact.data.minutes ? ` (${showMinutes(all)} in all)` : "";
    const on = `on ${namesOf(books, fact)}${dayWords(fact, today)}`;
    return [`${showMinutes(fact.data.minutes)}${what} ${on}${total}`];
  },
});
