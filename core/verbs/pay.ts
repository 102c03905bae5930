import { defineVerb } from "./verb.ts";

export const pay = defineVerb({
  kind: "pay",
  example: "paid loan 500",
  help: "a payment to the loan",
  reads: {},
});
