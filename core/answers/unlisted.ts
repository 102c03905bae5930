import { defineAnswer } from "./answer.ts";

export const unlisted = defineAnswer({
  about: "unlisted",
  example: "what's unlisted",
  asks: {},
  answer: () => ({ text: "" }),
});
