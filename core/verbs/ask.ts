import { defineVerb } from "./verb.ts";

export const ask = defineVerb({
  kind: "ask",
  example: "how much this month",
  help: "a question about the books",
  reads: { says: [], slots: {}, dateless: true },
});
