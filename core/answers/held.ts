import { defineAnswer } from "./answer.ts";

export const held = defineAnswer({
  about: "held",
  example: "what's on hold",
  asks: {},
  answer: () => ({ text: "" }),
});
