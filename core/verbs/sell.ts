import { defineVerb } from "./verb.ts";

export const sell = defineVerb({
  kind: "sell",
  example: "sold nightstand 60 cash",
  help: "a sale",
  reads: {},
});
