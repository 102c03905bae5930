import { defineAnswer } from "./answer.ts";

export const miles = defineAnswer({
  about: "miles",
  example: "how many miles",
  asks: {},
  answer: () => ({ text: "" }),
});
