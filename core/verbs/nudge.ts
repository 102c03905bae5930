import { defineVerb } from "./verb.ts";

export const nudge = defineVerb({
  kind: "nudge",
  example: "nudge at 6:30pm",
  help: "when the daily reminder comes, or that it does not",
  reads: {},
});
