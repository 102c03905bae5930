import type { Month } from "../calendar.ts";
import type { Cents } from "../money.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    ask: { about?: Question; month?: Month; year?: string; pieces?: Mention[]; price?: Cents };
  }
}

export const ask = defineVerb({
  kind: "ask",
  example: "how much this month",
  page: "slips",
  reads: { says: [], slots: {}, bears: ["dated in passing", "things beside", "corrects"], dateless: true },
});
