import { defineVerb } from "./verb.ts";

export const ask = defineVerb({
  kind: "ask",
  example: "how much this month",
  reads: { says: [], slots: {}, dateless: true },
});
