import { defineAnswer } from "./answer.ts";

export const help = defineAnswer({
  about: "help",
  example: "help",
  asks: {},
  answer: () => ({ text: "" }),
});
