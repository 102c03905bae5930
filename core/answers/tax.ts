import { defineAnswer } from "./answer.ts";

export const tax = defineAnswer({
  about: "tax",
  example: "how much tax do i owe",
  asks: {},
  answer: () => ({ text: "" }),
});
