import * as z from "zod";
import { checkPieces } from "../books/check.ts";
import type { FactRules } from "../books/rules.ts";
import { decimalShape } from "../books/shapes.ts";
import { shareOfMiles } from "../books/shares.ts";
import { dayWords, namesOf } from "../decide/echo.ts";
import { ever } from "../decide/pieces/fits.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import { showMiles } from "../mileage.ts";
import { WideDecimal } from "../money.ts";
import { phrases } from "../notes/words/words.ts";
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
        say: phrases(
          "drove drive driving drived drove_to drove_out_to drove_over_to drove_up_to drove_down_to drove_home drove_out drove_back mileage round_trip trip miles",
        ),
        with: ["miles"],
        without: ["number"],
      },
      {
        say: phrases(
          "driven were_driven clocked racked_up logged burned motored trekked cruised schlepped tooled_around",
        ),
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
        say: phrases("ran took brought carried taking bringing running"),
        with: ["miles"],
        without: ["number", "duration"],
        light: true,
      },
      {
        say: phrases("went went_to went_to_the_dump went_to_dump put"),
        with: ["miles"],
        without: ["number"],
        light: true,
      },
    ],
    slots: { miles: "miles", pieces: "pieces" },
    bears: ["everyday words", "any count", "dated in passing", "things beside", "of pieces", "piece or none"],
    main: "miles",
    needs: ["miles"],
    absorbs: phrases(
      "fetching collecting fetch retrieving went drove pick_up pick_…_up pick picked_up picking_up get grab to_get deliver delivering dropping_off drop_off dropped_off drop look_at looked_at see_the buy mileage trip collect haul moving check_out checked_out meet to_look_at estimate pickup handoff hand_off handover meetup meet_up dropoff to_the_dump delivery deliveries errands",
    ),
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
