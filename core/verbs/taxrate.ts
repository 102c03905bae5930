import { defineVerb } from "./verb.ts";

export const taxrate = defineVerb({
  kind: "taxrate",
  example: "set aside 20% for tax",
  help: "what part of the profit to keep for tax",
  reads: {},
});
