import { defineVerb } from "./verb.ts";

export const buy = defineVerb({
  kind: "buy",
  example: "bought dresser 30",
  help: "a piece, a lot or a set you bought, or got free",
  reads: {},
});
