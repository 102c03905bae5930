import { defineVerb } from "./verb.ts";

export const goal = defineVerb({
  kind: "goal",
  example: "goal 100 pieces this year",
  help: "what you aim for in a month or a year",
  reads: {},
});
