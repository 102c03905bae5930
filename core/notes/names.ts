import type { Tok } from "./clause.ts";
import { NO_ROLES, tokenOf } from "./token.ts";

const TAKES_NAME = /^(?:from|to|for|off|at|off of)$/;
const ARTICLE = /^(?:the|a|an|my|our|this|that|some|his|her|their)$/;
/** Words that carry a name on: "lady in the red truck", "guy who wants two". */
const CARRIES_ON =
  /^(?:with|w|in|on|at|from|of|near|down|across|who|thats|by|behind|next|over|off|named|called)$/;
const ENDS =
  /^(?:for|until|till|til|thru|through|via|today|fee|fees|minus|each|plus|and|then|but|because|bc|so)$/;

function isWordOfName(token: Tok | undefined): boolean {
  return token !== undefined && token.kind === "word" && !ENDS.test(token.text) && !token.roles.method;
}

/** Where the description of a person or place that begins at `first` ends. */
function endOfName(tokens: readonly Tok[], first: number): number {
  let at = first + 1;
  while (at < tokens.length) {
    if (!CARRIES_ON.test(tokens[at]!.text)) {
      const follows =
        CARRIES_ON.test(tokens[at - 1]!.text) || ARTICLE.test(tokens[at - 1]!.text) || at - 1 > first;
      if (!follows || !isWordOfName(tokens[at]) || tokens[at]!.roles.heads?.some((head) => !head.light))
        break;
      at += 1;
      continue;
    }
    let next = at + 1;
    while (ARTICLE.test(tokens[next]?.text ?? "")) next += 1;
    const word = tokens[next];
    const described = word?.kind === "piece" && /^(?:with|w|in|near|by|behind)$/.test(tokens[at]!.text);
    if (!word || (word.kind !== "word" && !described) || word.roles.method || ENDS.test(word.text)) break;
    at = next + 1;
  }
  return at;
}

/** A name follows a preposition, or begins the clause: "the lady with the twins backed out". */
function takesName(tokens: readonly Tok[], at: number): boolean {
  const token = tokens[at]!;
  return token.kind === "mark" || TAKES_NAME.test(token.text) || /^(?:and|then|so|but)$/.test(token.text);
}

/** The words of a name are that and nothing else: the truck in "lady in the red truck" is no spending. */
export function withNames(tokens: Tok[]): Tok[] {
  for (let at = -1; at + 1 < tokens.length; at += 1) {
    if (at >= 0 && !takesName(tokens, at)) continue;
    let first = at + 1;
    while (ARTICLE.test(tokens[first]?.text ?? "")) first += 1;
    const token = tokens[first];
    if (token?.kind !== "word" || !(token.roles.person || token.roles.place) || token.roles.pronoun) continue;
    const end = endOfName(tokens, first);
    for (let inside = first + 1; inside < end; inside += 1) {
      const { text, from, to } = tokens[inside]!;
      tokens[inside] = tokenOf("word", text, { from, to }, NO_ROLES);
    }
    at = Math.max(at, end - 1);
  }
  return tokens;
}
