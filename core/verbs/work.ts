import * as z from "zod";
import { checkPieces } from "../books/check.ts";
import { shareOf } from "../books/posted.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { dayWords, namesOf, piecesOf, showMinutes } from "../decide/echo.ts";
import { ever } from "../decide/fits.ts";
import { inAll } from "../decide/piece-choices.ts";
import { settlePieces } from "../decide/pieces.ts";
import { judgeWork } from "../notes/judging/working.ts";
import { GIVEN_WORK } from "../notes/words/labors.ts";
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
        say: [
          "working on",
          "working",
          "spent",
          "put",
          "put in",
          "put another",
          "did",
          "logged",
          "finished",
          "done",
          "prep",
          "work on",
          "work",
          "started",
        ],
        with: ["duration"],
        without: ["number"],
        light: true,
      },
      {
        say: [
          ...["killed", "blew", "wasted", "sank", "sunk", "invested", "clocked", "racked up", "ground out"],
          ...["squeezed in", "snuck in", "got in", "managed", "banged out", "knocked out"],
        ],
        with: ["duration"],
        without: ["number", "miles"],
        light: true,
      },
      { say: ["burned", "burnt"], with: ["duration"], without: ["number", "miles"] },
      {
        say: [
          ...[
            "messed",
            "fiddled",
            "tinkered",
            "monkeyed",
            "futzed",
            "fussed",
            "piddled",
            "puttered",
            "toyed",
          ],
          ...["messing", "fiddling", "tinkering", "futzing", "fussing", "piddling", "puttering", "noodled"],
          ...["fought", "battled", "wrestled", "struggled", "dinked", "diddled", "goofed", "played"],
        ].flatMap((verb) => [`${verb} with`, `${verb} around with`, `${verb} on`, `${verb} around on`]),
        with: ["duration", "piece"],
        without: ["number", "miles"],
        light: true,
      },
      {
        say: [
          ...["fussed over", "slaved over", "labored over", "toiled over", "sweated over", "slogged through"],
          ...["plugged away at", "chipped away at", "pecked away at", "hammered away at", "picked at"],
          ...[
            "grafted",
            "grafted on",
            "grafted away on",
            "graft on",
            "graft",
            "beavered away on",
            "beavered away at",
          ],
          ...[
            "cracked on with",
            "got stuck into",
            "got stuck in on",
            "set about",
            "got on with",
            "pottered with",
            "pottered on",
            "faffed with",
            "faffed about with",
          ],
          ...[
            "faffing about with",
            "fiddled about with",
            "slogged at",
            "slogged on",
            "slogged away at",
            "kept at",
          ],
          ...["pegged away at", "gave … another", "give … another", "rubbing … down", "rubbed … down"],
          ...["plugged away on", "hacked away at", "toiled on", "labored on", "dabbled on", "slaved on"],
          ...["babied", "fought", "battled", "wrestled", "was at", "were at", "been at", "at it on"],
        ],
        with: ["duration", "piece"],
        without: ["number", "miles"],
        light: true,
      },
      {
        say: [
          "few hours",
          "a few hours",
          "all day",
          "all morning",
          "all afternoon",
          "all night",
          "spent all day",
          "spent the morning",
          "spent the afternoon",
          "spent the evening",
          "spent the whole day",
          "spent my morning",
          "spent my afternoon",
          "spent my day",
          "spent all morning",
          "spent all afternoon",
          "spent the day",
          "spent hours",
          "hours on",
          "whole day",
        ],
        with: ["piece"],
        without: ["number", "duration"],
        light: true,
      },
      {
        say: [
          "finished",
          "done",
          "is done",
          "are done",
          "is finished",
          "are finished",
          "all done",
          "finished up",
          "wrapped up",
          "completed",
          "done with",
          "all done with",
          "finished with",
        ],
        with: ["labor", "piece"],
        without: ["number"],
        light: true,
      },
      { with: ["labor", "piece"], without: ["number", "supply"] },
    ],
    slots: { minutes: "minutes", pieces: "pieces", what: "labor" },
    bears: ["at work", "any count", "dated in passing", "things beside", "of pieces", "not a service"],
    needs: ["minutes", "pieces"],
    absorbs: [
      "working on",
      "worked on",
      "worked",
      "working",
      "spent",
      "put in",
      "finished",
      "done",
      "started",
      "into",
      "prep",
      "work",
      "knocked out",
      "took",
      "took me",
    ],
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
