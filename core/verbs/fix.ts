import { defineVerb } from "./verb.ts";

export const fix = defineVerb({
  kind: "fix",
  example: "make that 35",
  help: "corrects the amount of your last note",
  reads: {},
});
