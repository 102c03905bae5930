import { defineAnswer } from "./answer.ts";

export const year = defineAnswer({
  about: "year",
  example: "how am i doing this year",
  asks: {},
  answer: () => ({ text: "" }),
});
