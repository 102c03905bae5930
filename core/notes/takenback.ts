import { type Tok, textOf } from "./clause.ts";
import { DOUBTED, JOKES, OPENS_TAKEN_BACK, TAKEN_BACK } from "./words/doubts.ts";

/** The first word of a phrase. */
function opening(text: string): string {
  const end = text.indexOf(" ");
  return end < 0 ? text : text.slice(0, end);
}

/** "bought desk 40 scratch that 45", "2h no 3h on the desk", "sold the hutch i mean the bench 90". */
export function takesItselfBack(tokens: readonly Tok[]): boolean {
  let isNoted = false;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    const isValue = token.kind !== "word" && token.kind !== "mark";
    if (isNoted && tokens[at + 1]?.kind === "amount" && DOUBTED.has(token.text)) return true;
    if (isNoted && token.kind === "word" && OPENS_TAKEN_BACK.has(opening(token.text))) {
      const ahead = textOf(tokens.slice(at, at + 3));
      if (TAKEN_BACK.test(ahead)) return true;
      const [before, next] = [tokens[at - 1], tokens[at + 1]];
      const isCount = before?.kind === "amount" && next?.mention?.count !== undefined;
      const isAnother = before?.kind === next?.kind && before?.kind !== "word";
      if (token.text === "no" && (isCount || isAnother)) return true;
    }
    isNoted ||= isValue;
  }
  return false;
}

/** "sold desk 90, just kidding": nothing of it happened. */
export function isJoke(tokens: readonly Tok[]): boolean {
  return tokens.some(({ text }) => JOKES.has(text));
}
