import { defineAnswer } from "./answer.ts";

export const month = defineAnswer({
  about: "month",
  example: "month",
  asks: {},
  answer: () => ({ text: "" }),
});
