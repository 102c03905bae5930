import { defineAnswer } from "./answer.ts";

export const price = defineAnswer({
  about: "price",
  example: "what do dressers sell for",
  asks: {},
  answer: () => ({ text: "" }),
});
