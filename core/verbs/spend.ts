import { defineVerb } from "./verb.ts";

export const spend = defineVerb({
  kind: "spend",
  example: "paint 12.50 for dresser",
  help: "money spent, on a piece or on the shop",
  reads: {},
});
