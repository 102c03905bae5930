import { defineVerb } from "./verb.ts";

export const refund = defineVerb({
  kind: "refund",
  example: "refunded 25 on the desk",
  help: "money given back after a sale",
  reads: {},
});
