import { readMessage } from "../../notes/read.ts";
import { TURNS_AMOUNT } from "../../notes/words/replies.ts";
import { saysAny } from "../../notes/words/words.ts";
import type { Effect, Said } from "../decision.ts";
import { type Asked, takeBare } from "./answer.ts";

/** An answer in the first words of a text, and the words that it leaves over. */
export interface PartAnswer {
  effect: Extract<Effect, { kind: "settle" }> & { change: object };
  left: string;
}

/** Longer texts are no answer with a word beside it. */
const WORDS_MAX = 8;

/**
 * "55 the other day": a value that answers, and words that nobody knows. It is offered, never taken. Null where the
 * words hold another number, or turn the first into another.
 */
export function answerWithin(asked: Asked, { text, today }: Pick<Said, "text" | "today">): PartAnswer | null {
  const words = text.trim().split(/\s+/);
  if (words.length > WORDS_MAX || saysAny(text, TURNS_AMOUNT)) return null;
  for (let count = words.length - 1; count >= 1; count -= 1) {
    const left = words.slice(count).join(" ");
    if (/\d/.test(left)) return null;
    const value = words.slice(0, count).join(" ").replace(/,$/, "");
    const effect = takeBare(asked, { text: value, today, readings: readMessage(value, today) });
    if (effect?.kind === "settle" && effect.change)
      return { effect: { ...effect, change: effect.change }, left };
  }
  return null;
}
