import type { Clause, Tok } from "../clause.ts";
import { saysOneOf, tokenBefore } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import { couldCount } from "../interpreting/price-parts.ts";
import type { ReadingFields } from "../reading.ts";
import { centsIn } from "../slots/money.ts";
import { BEFORE_PRICE, WHOSE } from "../words/links.ts";
import { METHODS } from "../words/methods.ts";
import { BESIDE_GONE, HOLDS } from "../words/verbs.ts";
import { couldBeCountAlone, isRestOfPrice } from "./buying.ts";

/** "guy sold me a desk for 40" is a purchase told backwards: asked, never guessed. */
export function judgeSale(fields: ReadingFields["sell"], clause: Clause): Trouble | null {
  const { tokens, head } = clause;
  const at = head ? tokens.indexOf(head) : tokens.length;
  const [before, behind] = [tokenBefore(tokens, at)?.text, tokens[at + 1]];
  const next = behind?.text;
  // "they sold, 100" is of pieces spoken of, as "it sold": somebody who sells says what.
  const isOfPieces = before === "they" && (behind?.kind !== "word" || BEFORE_PRICE.has(next!));
  const isNamed = tokens.some(({ kind }) => kind === "piece");
  const isBuyer = tokenBefore(tokens, at)?.roles.actor === "buyer";
  const isOther = before === "he" || before === "she" || (before === "they" && (!isOfPieces || isNamed));
  // "he paid 50 for the lamp" may be what he owes for another piece.
  if (isOther && (!isBuyer || /^paid\b/.test(head?.text ?? ""))) return { kind: "anotherPerson" };
  // "guy sold me a desk"; but "guy handed me 50 for the bench" is what a row says of a buyer.
  const isToUs = next === "me" || next === "us";
  if (isToUs && !isBuyer) return { kind: "anotherPerson" };
  if (fields.price === undefined && /\bgone$/.test(head?.text ?? "") && tokens.some(isMore(head)))
    return { kind: "unknown" };
  methodOfFee(fields, clause);
  if (isKnownSum(clause)) fields.isKnownSum = true;
  if (tokens.some(({ roles }) => roles.whole)) fields.whole = true;
  const asked = fields.price === undefined && tokens.find(({ roles }) => roles.asking);
  if (asked) askedFor(fields, asked);
  // "paid 50 got 20 back for desk": change, and no sale.
  if (head?.text === "got" && tokens.some(({ text }) => text === "back")) return { kind: "twoNumbers" };
  // "took 25 from guy for bench to hold it" is a deposit, or the price.
  const isDoubtful =
    (fields.owed ?? 0) > (fields.price ?? Number.POSITIVE_INFINITY) ||
    saysOneOf(clause, HOLDS) ||
    isAskingPrice(clause) ||
    couldBeCountAlone(fields, clause) ||
    (fields.owed !== undefined && (isOneAndOther(tokens) || tokens.some(isCountOfOthers))) ||
    isRestOfPrice(clause) ||
    isBesideDeposit(clause);
  return isDoubtful ? { kind: "twoNumbers" } : null;
}

function askedFor(fields: ReadingFields["sell"], token: Tok): void {
  const is = token.roles.asking!;
  if (is === "unsaid") return;
  const cents = token.amount ? centsIn(token) : null;
  fields.atAsking = true;
  if (is !== "at")
    fields.beside = { is, ...(cents === null ? { percent: token.percent ?? "0" } : { cents }) };
}

/** "got the 30 for the trunk", "she came by with her 25 for the desk" */
const isKnownSum = ({ tokens }: Clause): boolean =>
  tokens.some(({ kind }, at) => kind === "amount" && WHOSE.has(tokens[at - 1]?.text ?? ""));

/** "sold one nightstand 60 and the other 50": the other is a piece as well, and no rest of the price. */
const isOneAndOther = (tokens: readonly Tok[]): boolean =>
  tokens.some(({ kind, text }) => kind === "piece" && /^(?:one|1) /.test(text)) &&
  tokens.some(({ roles, text }) => roles.owed && /\b(?:other|last)\b/.test(text));

/** "sold one chair 45, 3 to go" */
const isCountOfOthers = (token: Tok): boolean =>
  token.roles.owed === true &&
  token.amount !== undefined &&
  couldCount(token) &&
  /\b(?:to go|left|more)$/.test(token.text);

/** "gone home": with any more words it is no piece that is gone. */
const isMore =
  (head: Tok | undefined) =>
  (token: Tok): boolean =>
    token !== head && token.kind === "word" && !BESIDE_GONE.has(token.text);

/** "sold dresser 165 transfer fee 4.95": the fee says how it was paid. */
function methodOfFee(fields: ReadingFields["sell"], { tokens }: Clause): void {
  if (fields.fee === undefined || fields.method !== undefined) return;
  const named = tokens.find(({ text }) => /^\w+ fees?$/.test(text));
  const method = named ? METHODS[named.text.split(" ")[0]!] : undefined;
  if (method !== undefined) fields.method = method;
}

/** "sold dresser 150 plus the deposit": the price is more than the number. */
function isBesideDeposit({ tokens }: Clause): boolean {
  return tokens.some(({ text }, at) => {
    if (text !== "deposit" && text !== "deposits") return false;
    let before = at - 1;
    while (/^(?:the|a|her|his|their)$/.test(tokens[before]?.text ?? "")) before -= 1;
    return /^(?:plus|\+|and|&|minus|less|after)$/.test(tokens[before]?.text ?? "");
  });
}

/** "sold desk listed 120": what it was listed at is not what it sold for. */
function isAskingPrice({ tokens }: Clause): boolean {
  return tokens.some((token, at) => {
    if (token.text !== "listed") return false;
    const next = tokens[at + 1];
    const after = next?.text === "at" || next?.text === "for" ? tokens[at + 2] : next;
    return after?.kind === "amount";
  });
}
