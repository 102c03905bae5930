import { defineVerb } from "./verb.ts";

export const income = defineVerb({
  kind: "income",
  example: "tips 35",
  help: "other money that came in",
  reads: {},
});
