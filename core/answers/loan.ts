import { defineAnswer } from "./answer.ts";

export const loan = defineAnswer({
  about: "loan",
  example: "loan?",
  asks: {},
  answer: () => ({ text: "" }),
});
