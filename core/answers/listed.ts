import { defineAnswer } from "./answer.ts";

export const listed = defineAnswer({
  about: "listed",
  example: "what's listed",
  asks: {},
  answer: () => ({ text: "" }),
});
