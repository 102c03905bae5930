import { defineAnswer } from "./answer.ts";

export const worth = defineAnswer({
  about: "worth",
  example: "worth 40 for a dresser?",
  asks: {},
  answer: () => ({ text: "" }),
});
