import { type Tok, textOf } from "./clause.ts";
import { HINTS } from "./sign-bits.ts";
import { TAKEN_BACK } from "./words/doubts.ts";

/** "bought desk 40 scratch that 45", "2h no 3h on the desk", "sold the hutch i mean the bench 90". */
export function takesItselfBack(tokens: readonly Tok[]): boolean {
  let isNoted = false;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    const isValue = token.kind !== "word" && token.kind !== "mark";
    if (isNoted && (token.hints & HINTS.doubted) !== 0 && tokens[at + 1]?.kind === "amount") return true;
    if (isNoted && token.kind === "word" && (token.hints & HINTS.takesBack) !== 0) {
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

/** "hutch sold 1800 lol i mean 180": the line with the last amount in the place of the one before; null where it says more. */
export function withoutSlip(tokens: readonly Tok[]): Tok[] | null {
  const slip = tokens.findIndex(({ kind }) => kind === "amount");
  const meant = tokens.findLastIndex(({ kind }) => kind === "amount");
  const isOne =
    slip >= 0 && tokens.slice(slip + 1, meant).every(({ kind }) => kind === "word" || kind === "mark");
  return isOne && meant > slip + 1 ? [...tokens.slice(0, slip), ...tokens.slice(meant)] : null;
}

/** "sold desk 90, just kidding": nothing of it happened. */
export function isJoke(tokens: readonly Tok[]): boolean {
  return tokens.some(({ hints }) => (hints & HINTS.joke) !== 0);
}
