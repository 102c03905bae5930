import type { Tok } from "../clause.ts";
import { NO_ROLES, wordToken } from "./token.ts";

/** Words that several meanings share are taken apart: "should be", "it was", "undo the last". */
export function apart(tokens: readonly Tok[]): readonly Tok[] {
  if (!tokens.some(isSeveral)) return tokens;
  return tokens.flatMap((token) =>
    isSeveral(token)
      ? token.text.split(" ").map((word) => wordToken("word", word, token.from, token.to, NO_ROLES))
      : [token],
  );
}

function isSeveral({ kind, text, roles }: Tok): boolean {
  if (kind !== "word" || !text.includes(" ")) return false;
  return !(
    roles.supply ||
    roles.labor ||
    roles.stream ||
    roles.place ||
    roles.noun ||
    roles.method ||
    roles.person
  );
}
