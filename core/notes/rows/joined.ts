import { type Head, type Tok, textOf } from "../clause.ts";
import { type Roles, rolesOf } from "../tokens/roles.ts";
import { NO_ROLES, wordToken } from "../tokens/token.ts";
import { language } from "../verbs.ts";
import type { Fired } from "./table.ts";

/** Words with one meaning given by a row: one token in place of those of its bracket, of the same shape as any. */
export function joined(
  tokens: readonly Tok[],
  { from, to }: Pick<Fired, "from" | "to">,
  roles: Roles<Head> = NO_ROLES,
  text = textOf(tokens.slice(from, to)),
): Tok {
  return wordToken("word", text, tokens[from]!.from, tokens[to - 1]!.to, roles);
}

export const PASSING = rolesOf<Head>({ plain: true });

/** "settled at 140 for the desk, he left 40": says a deposit, as no other word does. */
export function meaning(
  word: "deposit" | "bought" | "sold" | "listed" | "drove" | "refunded",
  tokens: readonly Tok[],
  fired: Pick<Fired, "from" | "to">,
): Tok {
  const heads = language().lexer.lexicon.entry(word)?.said?.heads;
  // What was done reads so to the tables behind: "hit the yard sales" is no aside any more.
  const text = word === "drove" || (word === "bought" && tokens[fired.from]!.unknown) ? word : undefined;
  return joined(tokens, fired, rolesOf<Head>(heads ? { heads } : {}), text);
}

/** "threw the desk on swapboard for 145" says a listing, "lamp went to the church, no charge" a gift, as no other word does. */
export function saidBy(verb: string, tokens: readonly Tok[], fired: Pick<Fired, "from" | "to">): Tok {
  const heads = language().lexer.lexicon.entry(verb)?.said?.heads;
  return joined(tokens, fired, rolesOf<Head>(heads ? { heads } : {}), verb);
}
