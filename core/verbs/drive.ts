import * as z from "zod";
import { checkPieces } from "../books/check.ts";
import type { FactRules } from "../books/rules.ts";
import { decimalShape } from "../books/shapes.ts";
import { shareOfMiles } from "../books/shares.ts";
import { dayWords, namesOf } from "../decide/echo.ts";
import { ever } from "../decide/fits.ts";
import { settlePieces } from "../decide/pieces.ts";
import { showMiles } from "../mileage.ts";
import { WideDecimal } from "../money.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    drive: { miles?: string; pieces?: Mention[] };
  }
}

const rules: FactRules<"drive"> = {
  mends: ["miles", "date", "pieces"],
  alone: true,
  data: z.strictObject({ miles: decimalShape }),
  apply(books, fact) {
    const problem = checkPieces(books, fact.pieces);
    if (problem) return problem;
    for (const number of fact.pieces) {
      books.addMiles(number, shareOfMiles(fact.data.miles, fact.pieces.length));
    }
    return null;
  },
};

export const drive = defineVerb({
  kind: "drive",
  example: "drove 24 miles",
  page: "costs",
  listed: ({ data }, pieces) =>
    `drove ${showMiles(new WideDecimal(data.miles))} miles${pieces ? ` for ${pieces}` : ""}`,
  story: ({ fact }) => `drove ${showMiles(shareOfMiles(fact.data.miles, fact.pieces.length))} miles`,
  books: rules,
  goesOn: { pieces: "same", carries: ({ data: { miles } }) => ({ miles }) },
  reads: {
    says: [
      { with: ["miles"], without: ["number", "duration"] },
      {
        say: [
          "drove",
          "drive",
          "driving",
          "drived",
          "drove to",
          "drove out to",
          "drove over to",
          "drove up to",
          "drove down to",
          "drove home",
          "drove out",
          "drove back",
          "mileage",
          "round trip",
          "trip",
          "miles",
        ],
        with: ["miles"],
        without: ["number"],
      },
      {
        say: ["driven", "were driven", "clocked", "racked up"],
        with: ["miles"],
        without: ["number"],
        light: true,
      },
      { say: ["drove", "drove to", "drove out", "drove out to"], without: ["miles"] },
      {
        say: ["delivered", "dropped off", "hauled", "fetched"],
        with: ["miles"],
        without: ["number"],
        light: true,
      },
      {
        say: ["dropped … off", "drop … off", "ran … over"],
        with: ["miles"],
        without: ["number", "duration"],
      },
      {
        say: ["ran", "took", "brought", "carried", "taking", "bringing", "running"],
        with: ["miles"],
        without: ["number", "duration"],
        light: true,
      },
      {
        say: ["went", "went to", "went to the dump", "went to dump", "put"],
        with: ["miles"],
        without: ["number"],
        light: true,
      },
    ],
    slots: { miles: "miles", pieces: "pieces" },
    bears: ["any count", "dated in passing", "things beside", "of pieces", "piece or none"],
    main: "miles",
    needs: ["miles"],
    absorbs: [
      ...["fetching", "collecting", "fetch", "retrieving"],
      "went",
      "drove",
      "pick up",
      "pick … up",
      "pick",
      "picked up",
      "picking up",
      "get",
      "grab",
      "to get",
      "deliver",
      "delivering",
      "dropping off",
      "drop off",
      "dropped off",
      "drop",
      "look at",
      "looked at",
      "see the",
      "buy",
      "mileage",
      "trip",
      "collect",
      "haul",
      "moving",
      "check out",
      "checked out",
      "meet",
      "to look at",
      "estimate",
      "pickup",
      "to the dump",
      "delivery",
      "deliveries",
      "errands",
    ],
  },

  offered: ({ miles }, names) => `Drove ${miles ?? "some"} miles${names ? ` for ${names}` : ""}`,

  decide(reading, desk) {
    const need = { fit: ever, question: "was it for", unknown: "add or leave out" } as const;
    const settled = settlePieces(reading, desk, need);
    if (settled.kind !== "settled") return settled;
    const day = reading.date ?? desk.today;
    return {
      kind: "record",
      facts: [{ kind: "drive", day, pieces: settled.pieces, data: { miles: reading.miles! } }],
    };
  },
  echo({ fact, books, today }) {
    const pieces = fact.pieces.length > 0 ? ` for ${namesOf(books, fact)}` : "";
    return [`Drove ${fact.data.miles} miles${pieces}${dayWords(fact, today)}`];
  },
});
