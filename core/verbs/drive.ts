import { defineVerb } from "./verb.ts";

export const drive = defineVerb({
  kind: "drive",
  example: "drove 24 miles",
  help: "miles driven for the trade",
  reads: {},
});
