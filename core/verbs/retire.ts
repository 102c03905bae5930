import { defineVerb } from "./verb.ts";

export const retire = defineVerb({
  kind: "retire",
  example: "donated the chair",
  help: "a piece kept, given away or scrapped",
  reads: {},
});
