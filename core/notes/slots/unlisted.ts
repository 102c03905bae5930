import type { Clause, Tok } from "../clause.ts";
import { claim, freeTokens } from "../clause.ts";
import { strongHeadsOf } from "../heads.ts";
import { COUNT_WORDS } from "../mentions/counts.ts";
import { unlistedMention } from "../mentions/mentions.ts";
import { wholeOf } from "../quantities/amounts.ts";
import type { Mention } from "../reading.ts";
import { isEveryday } from "../words/everyday.ts";
import { NO_NOUN_AFTER, NO_NOUN_IN_LISTING, NO_NOUNS } from "../words/names.ts";
import { SOMEBODY_DID } from "../words/verbs.ts";
import { beforeArticles } from "./names.ts";

export function isUnlistedNoun(token: Tok): boolean {
  if (token.kind !== "word" || token.claimed || NO_NOUNS.has(token.text)) return false;
  if (token.unknown) return token.text.length > 1;
  const { trait, opinion, heads, filler } = token.roles;
  return (trait === true || opinion === true) && !heads && !filler;
}

/** The word before a place, articles aside. */
function wordBefore(tokens: readonly Tok[], at: number): string {
  return tokens[beforeArticles(tokens, at - 1)]?.text ?? "";
}

/** The first run of words that nobody listed, after the verb where there is one there, else before it. */
function unlistedRun(clause: Clause): { run: Tok[]; count: number | null } | null {
  const { tokens, head } = clause;
  const from = head ? tokens.indexOf(head) + 1 : 0;
  const isListing = head !== undefined && strongHeadsOf(head).some(({ kind }) => kind === "list");
  // Before "backed out" or "refunded" stands whoever did it, not a piece.
  const before = head && SOMEBODY_DID.test(head.text) ? 0 : Math.max(0, from - 1);
  for (const [start, end] of [
    [from, tokens.length],
    [0, before],
  ] as const) {
    for (let at = start; at < end; at += 1) {
      if (!isUnlistedNoun(tokens[at]!)) continue;
      let to = at;
      while (to < end && isUnlistedNoun(tokens[to]!)) to += 1;
      const run = tokens.slice(at, to);
      const behind = wordBefore(tokens, at);
      // "paid 45 sales tax" buys no such thing, "paid 45 for a whatnot" does.
      const isPaidFor = tokens[at - 1]?.kind === "amount" && head !== undefined && PAID.test(head.text);
      const named =
        !NO_NOUN_AFTER.has(behind) && !isPaidFor && !(isListing && NO_NOUN_IN_LISTING.has(behind));
      // "makes 3h": without a verb beside it, a word that everybody uses is no piece's name.
      const isName = head !== undefined || !isEveryday(run.at(-1)!.text);
      if (named && isName && run.some((token) => token.unknown)) {
        let link = at - 1;
        while (/^(?:of|the|my|our)$/.test(tokens[link]?.text ?? "")) link -= 1;
        const several = COUNT_WORDS.get(tokens[link]?.text ?? "");
        if (several !== undefined) return { run, count: several };
        const before = tokens[at - 1];
        const whole =
          before?.kind === "amount" && !before.amount?.money && !before.each
            ? wholeOf(before.amount?.exact ?? null)
            : null;
        return { run, count: whole };
      }
      at = to;
    }
  }
  return null;
}

const PAID = /^(?:paid|pay|paying)\b/;

const UNLISTED_WORDS_MAX = 4;

export function unlisted(clause: Clause, taking = false): Mention[] {
  const found = unlistedRun(clause);
  if (!found || found.run.length > UNLISTED_WORDS_MAX) return [];
  const plural = /[^s]s$/.test(found.run.at(-1)!.text);
  // "picked up 2 weathervanes" counts them; "20 whatnot" would be a slip or a price.
  const counted =
    found.count !== null &&
    found.count >= 1 &&
    (plural || (found.count <= 12 && freeTokens(clause, "amount").length > 1));
  const mention = unlistedMention(found.run, counted ? found.count : null);
  if (!mention) return [];
  if (taking) {
    claim(...found.run);
    if (counted) claim(clause.tokens[clause.tokens.indexOf(found.run[0]!) - 1]!);
  }
  return [mention];
}
