import { defineVerb } from "./verb.ts";

export const loan = defineVerb({
  kind: "loan",
  example: "loan 14250 at 5.5%",
  help: "a loan, what is owed and its rate",
  reads: {},
});
