import { defineVerb } from "./verb.ts";

export const list = defineVerb({
  kind: "list",
  example: "listed dresser 190",
  help: "a piece you offered for sale, and at what price",
  reads: {},
});
