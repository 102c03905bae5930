import { defineVerb } from "./verb.ts";

export const reprice = defineVerb({
  kind: "reprice",
  example: "dropped dresser to 160",
  help: "a new asking price",
  reads: {},
});
