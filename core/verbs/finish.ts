import { defineVerb } from "./verb.ts";

export const finish = defineVerb({
  kind: "finish",
  example: "finished dresser",
  help: "a piece that is done",
  reads: {},
});
