import { defineAnswer } from "./answer.ts";

export const pieces = defineAnswer({
  about: "pieces",
  example: "show all my pieces",
  asks: {},
  answer: () => ({ text: "" }),
});
