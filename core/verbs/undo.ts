import { defineVerb } from "./verb.ts";

export const undo = defineVerb({
  kind: "undo",
  example: "undo",
  help: "takes back your last note",
  reads: {},
});
