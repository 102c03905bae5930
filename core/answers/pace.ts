import { defineAnswer } from "./answer.ts";

export const pace = defineAnswer({
  about: "pace",
  example: "am i on pace",
  asks: {},
  answer: () => ({ text: "" }),
});
