import { defineAnswer } from "./answer.ts";

export const best = defineAnswer({
  about: "best",
  example: "best flips",
  asks: {},
  answer: () => ({ text: "" }),
});
