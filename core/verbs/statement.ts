import { defineVerb } from "./verb.ts";

export const statement = defineVerb({
  kind: "statement",
  example: "loan balance 9871.14",
  help: "what the lender says is owed",
  reads: {},
});
