import { defineAnswer } from "./answer.ts";

export const unsold = defineAnswer({
  about: "unsold",
  example: "what's unsold",
  asks: {},
  answer: () => ({ text: "" }),
});
