import { defineVerb } from "./verb.ts";

export const start = defineVerb({
  kind: "start",
  example: "started the desk",
  help: "a piece you began work on",
  reads: {},
});
