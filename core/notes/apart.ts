import type { Tok } from "./clause.ts";
import { NO_ROLES, wordToken } from "./token.ts";

/** Words that several meanings share are taken apart: "should be", "it was", "undo the last". */
export function apart(tokens: readonly Tok[]): Tok[] {
  return tokens.flatMap((token) => {
    const { kind, text, roles } = token;
    const isThing = roles.supply || roles.labor || roles.stream || roles.place || roles.noun || roles.method;
    if (kind !== "word" || !text.includes(" ") || isThing) return [token];
    return text.split(" ").map((word) => wordToken("word", word, token.from, token.to, NO_ROLES));
  });
}
