import { defineVerb } from "./verb.ts";

export const terms = defineVerb({
  kind: "terms",
  example: "loan rate 6.8%",
  help: "a loan's rate, its days in a year, or the order of payments",
  reads: {},
});
