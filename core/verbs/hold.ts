import { defineVerb } from "./verb.ts";

export const hold = defineVerb({
  kind: "hold",
  example: "deposit 45 on desk transfer",
  help: "a piece kept for a buyer, with or without a deposit",
  reads: {},
});
