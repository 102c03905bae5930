import type { Tok } from "./clause.ts";
import { isEveryday } from "./words/everyday.ts";

/** A mark, or a word that neither says a verb of the books nor turns one round. */
export function saysNothing({ kind, text, roles, unknown }: Tok): boolean {
  if (kind === "mark" || kind === "grain") return true;
  if (kind !== "word" || roles.hedge || roles.vagueTime) return false;
  if (roles.heads?.some((head) => !head.light && head.tail.length === 0)) return false;
  return !unknown || isEveryday(text);
}

/** Where the last words of a clause begin that are said in passing behind a mark: "lunch 26, starving"; past its end without. */
export function passingFrom(tokens: readonly Tok[]): number {
  let at = tokens.length;
  while (
    at > 0 &&
    tokens[at - 1]!.kind !== "mark" &&
    !tokens[at - 1]!.claimed &&
    saysNothing(tokens[at - 1]!)
  )
    at -= 1;
  return at > 0 && tokens[at - 1]!.kind === "mark" ? at : tokens.length;
}
