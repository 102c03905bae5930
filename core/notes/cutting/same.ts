import { isAmount, isPiece, type Tok } from "../clause.ts";
import { headOf } from "../heads.ts";
import { SAME_FOR, SAME_OF, SAME_TOLD, SO, TOLD_BEHIND_SO } from "../words/again.ts";
import { ARTICLES } from "../words/filler.ts";
import { AND } from "../words/links.ts";
import type { Cut } from "./cut.ts";

/* What was told of one piece and is the same of another: "dresser's done, same for the nightstand". */

/** A value that stands for another: a price, or how long. */
const isValue = (token: Tok): boolean => isAmount(token) || token.kind === "duration";

/** A part that says no more than that, as the clause before it with this piece, and these values in place of its own; null where it says anything else. */
export function saidOfAnother(part: readonly Tok[], { tokens: before }: Cut): Tok[] | null {
  const at = pieceTold(part);
  const isTold = headOf(before) !== undefined || before.some(({ kind }) => kind === "duration");
  if (at === null || !isTold || !before.some(isPiece)) return null;
  const rest = part.slice(at + 1).filter(({ text }) => !SAME_TOLD.has(text));
  const values = rest.filter(isValue);
  const old = before.filter(isValue);
  const [value, ...others] = values;
  if (others.length > 0 || (value && (old.length !== 1 || old[0]!.kind !== value.kind))) return null;
  const { from, to } = part[0]!;
  const first = before.findIndex(isPiece);
  // "sanded the desk and the bench": all that was named gives way.
  let end = first + 1;
  for (let next = end; next < before.length; next += 1) {
    if (isPiece(before[next]!)) end = next + 1;
    else if (!AND.has(before[next]!.text) && !ARTICLES.has(before[next]!.text)) break;
  }
  const placed = (token: Tok): Tok => ({ ...token, from, to });
  const again = before.toSpliced(first, end - first, part[at]!).map((token) => {
    if (token === part[at]) return token;
    return value && isValue(token) ? value : placed(token);
  });
  return [...again, ...rest.filter((token) => !isValue(token))];
}

/** "same for the bench, but 60": the value that another part says, in place of the one that was taken along; null where it says more. */
export function revalued(part: readonly Tok[], { tokens, same }: Cut): Tok[] | null {
  const [value, ...others] = part.filter(({ roles, kind }) => kind !== "mark" && !roles.filler);
  const old = tokens.filter(isValue);
  if (!same || !value || others.length > 0 || old.length !== 1 || old[0]!.kind !== value.kind) return null;
  return tokens.map((token) => (token === old[0] ? value : token));
}

/** Where the piece stands in "same goes for the desk", "so is the bench", "desk likewise"; null where nothing says that it is the same. */
function pieceTold(part: readonly Tok[]): number | null {
  let at = 0;
  const skip = (words: ReadonlySet<string>): boolean => {
    const from = at;
    while (words.has(part[at]?.text ?? "")) at += 1;
    return at > from;
  };
  skip(AND);
  skip(ARTICLES);
  const isSame = skip(SAME_TOLD);
  const isSo = !isSame && skip(SO) && skip(TOLD_BEHIND_SO);
  if (isSame && skip(SAME_OF)) skip(SAME_TOLD);
  if (isSame) skip(SAME_FOR);
  skip(ARTICLES);
  if (!part[at] || !isPiece(part[at]!)) return null;
  if (isSame || isSo) return at;
  return SAME_TOLD.has(part[at + 1]?.text ?? "") && part.length === at + 2 ? at : null;
}
