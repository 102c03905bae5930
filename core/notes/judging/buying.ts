import type { Clause } from "../clause.ts";
import { placeBefore, says } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import { wholeOf } from "../quantities/amounts.ts";
import type { Mention, ReadingFields } from "../reading.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { GOODS } from "../words/goods.ts";
import { SPENT_ON } from "../words/links.ts";
import {
  ANOTHER,
  BEHIND_REMAINDER,
  BESIDE_REST,
  FOR_NOTHING,
  PAYS_FOR,
  REMAINDERS,
  RESTS,
  WHAT_FOR,
} from "../words/money.ts";
import { FREE_PLACES } from "../words/places.ts";

/** What a purchase as said may be instead; null where it is one. */
export function judgeBuy(fields: ReadingFields["buy"], clause: Clause): Trouble | null {
  if (isFreeForOthers(clause)) return { kind: "noVerb" };
  // "bought everything but the desk": nobody knows what that was.
  if (fields.pieces?.some(({ allBut }) => allBut)) return { kind: "unknown" };
  if (isAskedFor(clause)) return { kind: "intention" };
  if (isNoGift(clause)) return { kind: "unknown" };
  if (isOffPrice(clause)) return { kind: "cutOrPrice" };
  if (isWhatBecameOfIt(fields, clause)) return { kind: "unknown" };
  if (isForSomethingElse(clause)) return { kind: "twoKinds" };
  if (isCostOfSomething(clause)) return { kind: "loneNumber" };
  if (isMoneyFound(fields, clause)) return { kind: "loneNumber" };
  if (isMethodFetched(clause)) return { kind: "unknown" };
  if (goodsIn(fields, clause) !== null || isPaidForUnlisted(fields, clause)) return { kind: "pieceOrCost" };
  if (couldBeCountAlone(fields, clause) || isRestOfPrice(clause)) return { kind: "twoNumbers" };
  if (
    fields.price === undefined &&
    (clause.tokens.some(({ text }) => FOR_NOTHING.has(text)) || isFind(fields, clause))
  )
    fields.price = 0;
  if (fields.price === 0 && fields.source === undefined && says(clause, /^(?:curb|curbside)/))
    fields.source = "curb";
  if (clause.signs.has("percent") && says(clause, /^(?:off|discount)$/)) return { kind: "unclaimed" };
  // "bought trunk 40 with a lamp thrown in"
  if (fields.price && (fields.pieces?.length ?? 0) > 1 && says(clause, /^(?:thrown|tossed|chucked) in$/))
    return { kind: "priceOfBoth" };
  return null;
}

/** "grabbed a dresser off the curb": it cost nothing; "bought a lamp off the curb" did. */
const isFind = ({ source }: ReadingFields["buy"], { head, tokens }: Clause): boolean =>
  FREE_PLACES.has(source ?? "") &&
  !/^(?:bought|buy|buying|paid|purchased)\b/.test(head?.text ?? "") &&
  !tokens.some(({ kind, text }) => kind === "amount" || PAYS_FOR.has(text));

/** "let me have the desk for 28" asks for it; "she let me have it" tells of it. */
export function isAskedFor({ tokens, head }: Clause): boolean {
  if (!head || !/^let (?:me|us) have$/.test(head.text)) return false;
  return !tokens.slice(0, tokens.indexOf(head)).some(({ kind, roles }) => kind === "word" && !roles.filler);
}

/** "desk free today" may be given away; "free desk", or one that came from somewhere, was got. */
export function isFreeForOthers({ tokens, head }: Clause): boolean {
  if (head?.text !== "free") return false;
  const at = tokens.indexOf(head);
  // "threw in a free lamp": we did, where nobody else is named.
  if (/^(?:threw|tossed)/.test(tokens.slice(0, at).find(({ kind }) => kind === "word")?.text ?? ""))
    return true;
  const before = tokens.slice(0, at).some((token) => token.kind === "piece");
  return (
    before &&
    !tokens.some(({ text }) => text === "gave me" || text === "gave us") &&
    !tokens.some((token) => token.roles.place !== undefined || /^(?:from|off|got)$/.test(token.text))
  );
}

/** "desk cost me 40 to fix": what was done to it, and not the piece. */
export function isCostOfSomething({ tokens, head }: Clause): boolean {
  if (!head || !/^(?:cost|ran|set me)/.test(head.text)) return false;
  const amount = tokens.findIndex(({ kind }) => kind === "amount");
  return /^(?:to|in|for|on)$/.test(tokens[amount + 1]?.text ?? "");
}

/** "gave a guy 30 for a ride to get the stool", "spent 20 on a shelf for the hutch": what was paid for is no piece to sell. */
export function isForSomethingElse({ tokens, head }: Clause): boolean {
  if (!head || !PAYS_FOR.has(head.text)) return false;
  const amount = tokens.findIndex(({ kind }) => kind === "amount");
  const thing = tokens.findIndex(
    ({ text }, at) => at > amount && ANOTHER.has(text) && SPENT_ON.has(tokens[at - 1]!.text),
  );
  const what = thing < 0 ? -1 : tokens.findIndex(({ text }, at) => at > thing && WHAT_FOR.has(text));
  return what >= 0 && tokens.slice(what).some(({ kind }) => kind === "piece");
}

/** "bought a coke 2": what was bought that is seldom a piece to sell; null where there is no such thing. */
export function goodsIn({ pieces }: { pieces?: Mention[] }, { tokens }: Clause): string | null {
  if (pieces === undefined)
    return tokens.find(({ kind, text }) => kind === "word" && GOODS.has(text))?.text ?? null;
  return pieces.find(({ name }) => name !== undefined && GOODS.has(name))?.name ?? null;
}

/** "paid 45 for gym membership": what no list has may be paid for without being a piece; bought, it is one. */
const isPaidForUnlisted = ({ pieces }: ReadingFields["buy"], { tokens, head }: Clause): boolean =>
  pieces?.[0]?.name !== undefined &&
  PAYS_FOR.has(head?.text ?? "") &&
  !tokens.some(({ kind }) => kind === "piece");

/** "lamp got ruined": what became of it, and no purchase. */
export function isWhatBecameOfIt({ price, source }: ReadingFields["buy"], { tokens, head }: Clause): boolean {
  if (head?.text !== "got" || price !== undefined || source !== undefined) return false;
  const piece = tokens.findLastIndex(({ kind }) => kind === "piece");
  return piece >= 0 && piece < tokens.indexOf(head);
}

/** "took the desk 10 off": off its price, where nobody is named whom it was taken off. */
export function isOffPrice({ tokens, head }: Clause): boolean {
  if (head?.text !== "took") return false;
  const next = tokens[tokens.findLastIndex(({ text }) => text === "off" || text === "off of") + 1];
  return next === undefined || next.kind !== "word";
}

/** "buyer gave me the desk back", "gave me a discount on the desk": only what is handed over at once is got. */
export function isNoGift({ tokens, head }: Clause): boolean {
  if (!head || !/^gave (?:me|us)$/.test(head.text)) return false;
  const from = tokens.indexOf(head) + 1;
  const next = tokens
    .slice(from)
    .find(({ text }) => !/^(?:a|an|the|my|some|this|that|his|her|their|free)$/.test(text));
  return next?.kind !== "piece" || tokens.some(({ text }) => text === "back");
}

/** "found 20 in a drawer", "won 50": money came, and nothing was bought. */
export function isMoneyFound({ pieces }: { pieces?: Mention[] }, { head, signs }: Clause): boolean {
  const isLucky = head !== undefined && /^(?:found|won|scored|rescued)$/.test(head.text);
  return isLucky && pieces === undefined && !signs.has("pronoun");
}

/** "the remaining 110 for the dresser", "paid in full 190": money for a piece that was settled before. */
export function isRestOfPrice({ tokens, signs }: Clause): boolean {
  if ((signs.hints & HINTS.rest) === 0) return false;
  return tokens.some(({ text, kind }, at) => {
    if (text === "full") return tokens[at - 1]?.text === "in";
    // "mike paid the rest of #5 75"
    if (REMAINDERS.has(text) && BEHIND_REMAINDER.has(tokens[at + 1]?.text ?? "")) return true;
    if (kind !== "amount") return false;
    const before = placeBefore(tokens, at - 1, BESIDE_REST);
    return before >= 0 && RESTS.has(tokens[before]!.text);
  });
}

/** A number up to this may count pieces as well as money. */
const SMALL_COUNT_MAX = 12;

/** "sold 12", "scored 2 goals": a small number with no piece beside it is as likely how many as how much. */
export function couldBeCountAlone({ pieces }: { pieces?: Mention[] }, { tokens, signs }: Clause): boolean {
  if (pieces !== undefined || signs.has("pronoun")) return false;
  return tokens.some(({ kind, amount }) => {
    const whole = kind === "amount" && !amount?.money ? wholeOf(amount?.exact ?? null) : null;
    return whole !== null && whole <= SMALL_COUNT_MAX;
  });
}

/** "picked up the check for the desk 90": what was fetched is the money. */
function isMethodFetched({ tokens }: Clause): boolean {
  return tokens.some((token, at) => {
    if (token.roles.method === undefined) return false;
    return /^(?:the|my|her|his|their)$/.test(tokens[at - 1]?.text ?? "");
  });
}
