import { defineAnswer } from "./answer.ts";

export const recap = defineAnswer({
  about: "recap",
  example: "recap",
  asks: {},
  answer: () => ({ text: "" }),
});
