import type { Tok } from "./clause.ts";
import { BEFORE_KNOW, BEFORE_LIKE, BEHIND_KNOW, HESITATES } from "./words/filler.ts";

/**
 * The tokens of a line as it was meant, where it was spoken: "the desk is spoken for uh woman named carla", "sold it to
 * to dana". What says nothing and is said while one thinks, and a small word said twice over stand in no name.
 */
export function withoutHesitations(tokens: Tok[]): Tok[] {
  let isSpoken = false;
  for (let at = 0; at < tokens.length && !isSpoken; at += 1) isSpoken = isHesitation(tokens, at);
  if (!isSpoken) return tokens;
  const said = tokens.filter((_, at) => !isHesitation(tokens, at));
  return said.length > 0 ? said : tokens;
}

function isHesitation(tokens: readonly Tok[], at: number): boolean {
  const { kind, roles, text } = tokens[at]!;
  if (kind !== "word") return false;
  const before = at > 0 ? tokens[at - 1]! : undefined;
  if (text === "know") return before?.text === "you" && isSaidByTheWay(tokens, at - 1);
  if (text === "you") return tokens[at + 1]?.text === "know" && isSaidByTheWay(tokens, at);
  if (text === "like") return isLikeAlone(tokens, at);
  if (roles.filler !== true || roles.heads !== undefined) return false;
  return HESITATES.has(text) || before?.text === text;
}

/** "you know" of nothing that is asked or known. */
const isSaidByTheWay = (tokens: readonly Tok[], you: number): boolean =>
  !BEFORE_KNOW.has(tokens[you - 1]?.text ?? "") && !BEHIND_KNOW.has(tokens[you + 2]?.text ?? "");

/** "so like i finished it": before a number it says "about". */
const isLikeAlone = (tokens: readonly Tok[], at: number): boolean =>
  tokens[at + 1]?.kind === "word" && BEFORE_LIKE.has(tokens[at - 1]?.text ?? "");
