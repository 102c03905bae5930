import type { Clause, Tok } from "../clause.ts";
import { turnedRoles } from "../tokens/roles.ts";
import { ARTICLES_WIDE, JOINS_PIECES } from "../words/links.ts";

/** The first piece and those joined to it; one that other words bring in ("sold the desk after the dresser") is doubted. */
export function withoutMentioned({ tokens }: Clause, pieces: readonly Tok[]): readonly Tok[] {
  if (pieces.length < 2) return pieces;
  return pieces.filter((piece, place) => {
    if (place === 0) return true;
    const between = tokens.slice(tokens.indexOf(pieces[place - 1]!) + 1, tokens.indexOf(piece));
    if (between.some(joins) || between.every(isPartOfName)) return true;
    piece.kind = "word";
    piece.roles = turnedRoles({ hedge: "doubt" });
    return false;
  });
}

const joins = ({ kind, text }: Tok): boolean => kind === "mark" || JOINS_PIECES.has(text);

const isPartOfName = ({ kind, text, roles, unknown }: Tok): boolean =>
  kind !== "word" ||
  unknown === true ||
  ARTICLES_WIDE.has(text) ||
  roles.trait !== undefined ||
  roles.opinion !== undefined ||
  roles.method !== undefined ||
  roles.heads !== undefined;
