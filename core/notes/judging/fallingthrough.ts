import type { Clause, Tok } from "../clause.ts";
import { claim, freeTokens, placeAfter, says, saysOneOf } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";
import { centsOfToken } from "../slots/money.ts";
import { ARTICLES_WIDE } from "../words/links.ts";
import { AFTER_REFUSAL, GIVEN_BACK, IN_FULL, KEPT, STILL_WANTED, THE_REST } from "../words/verbs.ts";

/** The last of the words before `token` that says what became of the deposit. */
function fate(clause: Clause, pattern: RegExp): boolean {
  return clause.tokens.some((token: Tok) => token.kind === "word" && pattern.test(token.text));
}

const WANTS_NOT =
  /^(?:(?:doesnt|does not|dont|didnt|isnt|arent|wont|wont be|not|no longer|cant|decided not to) (?:going to |gonna |be )?(?:want|need|take|taking|get|getting|buy|buying)s?|decided against|lost interest in|walked on)$/;

/** Words that say it of a buyer only where somebody stands before them: "pulled out the dresser". */
const NEEDS_SOMEBODY =
  /^(?:(?:has |have )?(?:pulled out(?: of)?|gone off|gone cold on|dropped out)|let (?:me|us) down|never come for|walked on|decided against|lost interest in)$/;

/** "doesn't need it delivered", "doesn't want the desk refinished": it is wanted all the same. */
function isOfSomethingElse({ tokens, head }: Clause): boolean {
  if (!head) return false;
  const isSomebody = ({ roles }: Tok): boolean => roles.person === true || roles.actor === "buyer";
  if (NEEDS_SOMEBODY.test(head.text) && !tokens.slice(0, tokens.indexOf(head)).some(isSomebody)) return true;
  if (!WANTS_NOT.test(head.text)) return false;
  // "mom doesn't want the desk": nobody who would have bought it.
  if (tokens.some(({ roles }) => roles.actor === "ours")) return true;
  const at = placeAfter(tokens, tokens.indexOf(head) + 1, ARTICLES_WIDE);
  const next = tokens[at + 1];
  const isThing = tokens[at]?.kind === "piece" || tokens[at]?.roles.pronoun === true;
  return !isThing || !(next === undefined || next.kind === "mark" || AFTER_REFUSAL.has(next.text));
}

/** "15 back to him" */
const isBackToThem = ({ tokens }: Clause): boolean =>
  tokens.some(
    ({ text }, at) =>
      text === "back" &&
      tokens[at - 1]?.kind === "amount" &&
      /^(?:to|him|her|them)$/.test(tokens[at + 1]?.text ?? ""),
  );

/** What became of the deposit: an amount refunded or kept; kept whole is a refund of nothing. */
export function judgeFallthrough(fields: ReadingFields["fallthrough"], clause: Clause): Trouble | null {
  // "backed out of the driveway": no piece that is known, and nobody who could back out of it.
  const isSaid = clause.signs.has("piece") || clause.signs.has("person") || clause.signs.has("pronoun");
  if (fields.pieces !== undefined && !isSaid && /^back/.test(clause.head?.text ?? ""))
    return { kind: "unknown" };
  if (isOfSomethingElse(clause)) return { kind: "denial" };
  const isBack = isBackToThem(clause);
  const refunded = fate(clause, GIVEN_BACK) || isBack;
  // "kept half, 15 back to him"
  const kept = fate(clause, KEPT) && !isBack;
  const [amount, second, ...others] = freeTokens(clause, "amount");
  if (others.length > 0) return { kind: "twoNumbers" };
  if (!amount) {
    // "wants her deposit back": it has not gone back yet.
    if (saysOneOf(clause, STILL_WANTED)) return null;
    if ((refunded || kept) && says(clause, /^half$/)) fields.half = true;
    else if (refunded && !kept && saysOneOf(clause, IN_FULL)) fields.inFull = true;
    else if (kept && !refunded && !says(clause, /^(?:part|some)$/)) fields.refunded = 0;
    return null;
  }
  const isWhole = second !== undefined || saysOneOf(clause, THE_REST);
  if (refunded === kept && !(refunded && isWhole)) return { kind: second ? "twoNumbers" : "unclaimed" };
  if (second && refunded !== kept) return { kind: "twoNumbers" };
  for (const each of second ? [amount, second] : [amount]) {
    claim(each);
    const found = centsOfToken(each);
    if ("trouble" in found) return found.trouble;
    const isKept = refunded === kept ? isKeptBefore(clause, each) : kept;
    if (fields[isKept ? "kept" : "refunded"] !== undefined) return { kind: "twoNumbers" };
    fields[isKept ? "kept" : "refunded"] = found.cents;
  }
  return second ? { kind: "backAndKept" } : null;
}

/** "refunded 30, kept 20": which of them the word before an amount says, or else the one behind it. */
function isKeptBefore({ tokens }: Clause, amount: Tok): boolean {
  const isFate = ({ kind, text }: Tok) => kind === "word" && (KEPT.test(text) || GIVEN_BACK.test(text));
  const at = tokens.indexOf(amount);
  const said = tokens.slice(0, at).findLast(isFate) ?? tokens.slice(at).find(isFate);
  return said !== undefined && KEPT.test(said.text);
}
