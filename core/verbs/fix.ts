import type { Cents } from "../money.ts";
import { judgeFix } from "../notes/judging/fixing.ts";
import { phrases } from "../notes/words/words.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    /** One of them: what the newest note has in its place. */
    fix: {
      amount?: Cents;
      minutes?: number;
      miles?: string;
      percent?: string;
      /** Told without a word that corrects: of the note right before it, or a fact of its own. */
      isTold?: true;
      /** The id of the fact, where it is another than the newest. */
      fact?: number;
    };
  }
}

/** Words that correct what was just said. */
const CORRECTING = phrases(
  "i_mean should_say that_should_say it_should_say should_read that_should_read was_supposed_to_say supposed_to_say should_have_said shouldve_said meant_to_type make_that make_it meant i_meant meant_to_say i_meant_to_say meant_to_put should_be should_have_been should_of_been shouldve_been shoulda_been was_supposed_to_be supposed_to_be that_should_be it_should_be change_that_to change_it_to change_to correction correct_that_to fix_that_to fix fix_it_to fix_to it_was_actually was_actually actually_it_was no_it_was",
);

/** Words that correct what was just said where nothing else is named. */
const NO_BUT = phrases(
  "no nope no_wait wait_no wait actually sorry it_was that_was whoops woops my_bad typo wrong_amount wrong_number wrong_price price_was my_mistake mistake sorry_it_was oops_it_was it_shouldve_been that_shouldve_been oops no_make_that no_actually it_cost that_cost",
);

export const fix = defineVerb({
  kind: "fix",
  example: "make that 35",
  page: "slips",
  reads: {
    says: [
      {
        say: CORRECTING,
        with: ["number"],
        without: ["piece", "loan", "supply", "stream"],
      },
      ...(["duration", "miles", "percent"] as const).map((measure) => ({
        say: CORRECTING,
        with: [measure],
        without: ["piece", "loan", "supply", "stream", "labor", "number", "tax"] as const,
      })),
      {
        say: phrases(
          "that_was it_was make_that make_it should_be that_should_be it_should_be i_meant meant actually no oops sorry wrong_day wrong_date date_was the_date_was day_was wait no_wait it_happened that_happened",
        ),
        with: ["day"],
        without: ["named", "number", "piece", "loan", "supply", "stream", "duration", "miles", "unknown"],
        light: true,
      },
      {
        say: NO_BUT,
        with: ["number"],
        without: ["piece", "named", "loan", "supply", "stream", "duration", "miles"],
        light: true,
      },
      ...(["duration", "miles", "percent"] as const).map((measure) => ({
        say: NO_BUT,
        with: [measure],
        without: ["piece", "named", "loan", "supply", "stream", "labor", "number", "tax"] as const,
        light: true as const,
      })),
    ],
    slots: { amount: "money", minutes: "minutes", miles: "miles", percent: "percent" },
    bears: ["corrects"],
    absorbs: phrases(
      "no nope wait actually sorry oops should_be meant i_meant make_that it_was not no_wait typo my_bad mistake said",
    ),
    whole: true,
    judge: judgeFix,
  },
});
