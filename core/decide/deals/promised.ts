import { PAID_NOW, PROMISED } from "../../notes/words/dealt.ts";

/** Whether all that a message tells of money or a piece is still to come: "she'll take it friday", "putting 50 down tomorrow". */
export const isPromised = (text: string): boolean =>
  PROMISED.test(text) && !PAID_NOW.test(text.replace(PROMISED, ""));
