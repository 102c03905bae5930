import { defineVerb } from "./verb.ts";

export const work = defineVerb({
  kind: "work",
  example: "2.5h sanding dresser",
  help: "hours you put in",
  reads: {},
});
