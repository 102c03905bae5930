import { defineVerb } from "./verb.ts";

export const fallthrough = defineVerb({
  kind: "fallthrough",
  example: "buyer backed out of desk, refunded 30",
  help: "a buyer who is gone, and what became of the deposit",
  reads: {},
});
