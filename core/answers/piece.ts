import { defineAnswer } from "./answer.ts";

export const piece = defineAnswer({
  about: "piece",
  example: "how's the dresser doing",
  asks: {},
  answer: () => ({ text: "" }),
});
