import type { Clause, Tok } from "../clause.ts";
import { placeBefore, says, saysOneOf, tokenBefore } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";
import { measuresIn } from "../slots/spending.ts";
import { ARTICLES_WIDE, IS, PLUS, SPENT_ON } from "../words/links.ts";
import { AT_PRICE, MONEY_BACK } from "../words/money.ts";
import { HELPERS, SELLING_HANDS } from "../words/people.ts";
import { SUPPLY_VERBS, VEHICLES } from "../words/supplies.ts";
import { HELPING } from "../words/verbs.ts";
import { OF_SHOP_TOKEN } from "../words/whom.ts";

/** Words that are work as much as supplies, right before a piece: "paint dresser 20" could be minutes. */
function isWorkOnPiece({ tokens, head, signs }: Clause): boolean {
  return !head && signs.has("piece") && tokens.some(isWorkBeforePiece);
}

function isWorkBeforePiece({ kind, roles, text }: Tok, at: number, tokens: readonly Tok[]): boolean {
  if (kind !== "word" || roles.service || !SUPPLY_VERBS.has(text)) return false;
  let next = at + 1;
  while (/^(?:the|my|a|an)$/.test(tokens[next]?.text ?? "")) next += 1;
  return tokens[next]?.kind === "piece";
}

/** "dresser 30 missing knobs": the number stands with the piece. */
function isPriceOfPiece({ tokens, signs }: Clause): boolean {
  if (!signs.has("piece")) return false;
  const supply = tokens.findIndex((token) => token.kind === "word" && token.roles.supply !== undefined);
  return tokens.some(
    (token, at) => token.kind === "piece" && tokens[at + 1]?.kind === "amount" && at < supply,
  );
}

/** "paid guy 25 for the end table" may have bought it; "paid cousin 40 to help move it" did not. */
function isPaidForPiece(clause: Clause): boolean {
  const { tokens, signs } = clause;
  if (!signs.has("helper") || !signs.has("piece") || signs.has("labor") || signs.has("supply")) return false;
  return !says(clause, HELPING) && tokens.some((token) => HELPERS.has(token.text));
}

/** "paid neighbor 40" may have bought something; kin and friends are paid for a hand. */
function isPaidForNothingSaid(clause: Clause): boolean {
  return (
    !says(clause, HELPING) &&
    !clause.signs.has("labor") &&
    clause.tokens.every(({ text }) => !HELPERS.has(text) || SELLING_HANDS.has(text))
  );
}

/** "6 knobs at 2.50": the price of one, or of all six? */
const isPriceOfOne = ({ tokens }: Clause): boolean => tokens.some(isSuppliesAtPrice);

function isSuppliesAtPrice({ roles }: Tok, at: number, tokens: readonly Tok[]): boolean {
  const link = tokens[at + 1]?.text ?? "";
  if (roles.supply === undefined || !AT_PRICE.has(link)) return false;
  const count = tokenBefore(tokens, at)?.text === "of" ? tokens[at - 2] : tokenBefore(tokens, at);
  const isNumber = count?.kind === "amount" && !count.amount?.money && count.amount?.exact?.digits !== 1;
  const measured = count?.kind === "grain" ? measuresIn(count) : null;
  const isMeasured = measured !== null && measured.count !== 1 && (link === "at" || !measured.isCounted);
  const isCounted = isMeasured || (link === "at" && isNumber);
  const price = tokens[at + 2];
  return isCounted && price?.kind === "amount" && !price.each && !price.amount?.factors;
}

/** "returned the sander got 59 back", "rebate 15 on paint": money that came back was not spent. */
const isMoneyBack = ({ tokens }: Clause): boolean => tokens.some(saysMoneyBack);

const saysMoneyBack = ({ text }: Tok, at: number, tokens: readonly Tok[]): boolean =>
  MONEY_BACK.has(text) || (text === "back" && tokenBefore(tokens, at)?.kind === "amount");

/** "lamp and paint 40": one amount for a piece and a supply. */
function isBoughtTogether({ tokens, signs }: Clause): boolean {
  if (!signs.has("piece")) return false;
  return tokens.some((token, at) => {
    if (!PLUS.has(token.text)) return false;
    const rest = tokens.slice(at + 1, at + 4);
    // "paint, for the desk", "paint, 17 for the desk"
    if (SPENT_ON.has(rest[0]?.text ?? "")) return false;
    const after = rest.find((next) => next.kind === "amount" || next.kind === "piece" || next.roles.supply);
    const before = tokens[at - 1];
    const isPair = (a: typeof token | undefined, b: typeof token | undefined) =>
      a?.kind === "piece" && b?.roles.supply !== undefined && b.kind === "word";
    return isPair(before, after) || isPair(after, before);
  });
}

/** "bolts #2 2.10": their size, or the piece that they are for; null where no number stands behind them. */
export function sizeOrPiece({ tokens, what }: Clause): number | null {
  const next = what && tokens[tokens.indexOf(what.at(-1)!) + 1];
  return next?.kind === "grain" && next.value ? next.value : null;
}

const NOTHING: readonly string[] = [];

/** "gas 20 tolls", "paint 12 and primer": things behind the amount, of which nobody says what they cost. */
export function unpricedIn({ tokens }: Clause): readonly string[] {
  const amount = tokens.findLastIndex(({ kind }) => kind === "amount");
  if (amount < 0 || amount === tokens.length - 1) return NOTHING;
  const things = tokens.filter((_, at) => at > amount && isUnpriced(tokens, at));
  return things.map(({ text }) => text);
}

/** A supply right behind an amount, or joined to what stands before it. */
function isUnpriced(tokens: readonly Tok[], at: number): boolean {
  const { kind, text, roles, claimed } = tokens[at]!;
  const isThing = kind === "word" && roles.supply !== undefined && !roles.heads && !claimed;
  if (!isThing || text.endsWith("ing") || VEHICLES.has(text)) return false;
  const before = tokens[placeBefore(tokens, at - 1, ARTICLES_WIDE)]!;
  return before.kind === "amount" || PLUS.has(before.text);
}

const isOfShop = ({ text }: Tok): boolean => text === OF_SHOP_TOKEN;

/** What spending on hands, "spent 18", and words that are also work come to. */
export function judgeSpending(fields: ReadingFields["spend"], clause: Clause): Trouble | null {
  if (fields.pieces === undefined && clause.tokens.some(isOfShop)) fields.forShop = true;
  if (isWorkOnPiece(clause)) return { kind: "unclaimed" };
  if (isMoneyBack(clause)) return { kind: "moneyBack" };
  if (fields.pieces === undefined && sizeOrPiece(clause) !== null) return { kind: "eitherOf" };
  if (isBoughtTogether(clause)) return { kind: "twoKinds" };
  if (fields.what !== undefined && unpricedIn(clause).length > 0) return { kind: "priceOfBoth" };
  if (isPriceOfOne(clause)) return { kind: "twoNumbers" };
  if (clause.head?.text.startsWith("gave") && says(clause, /^off$/)) return { kind: "cutOrPrice" };
  if (!clause.head && isPriceOfPiece(clause)) return { kind: "noVerb" };
  // "paint is 20 a can" tells a price, not a purchase.
  if (!clause.head && saysOneOf(clause, IS)) return { kind: "noVerb" };
  if (isPaidForPiece(clause)) return { kind: "anotherPerson" };
  if (clause.signs.has("helper"))
    for (const token of clause.tokens) if (HELPERS.has(token.text)) token.claimed = true;
  if (fields.category === "help" && fields.what === undefined && !isPaidForNothingSaid(clause))
    fields.what = "help";
  // "paid 40" alone could be a loan payment, a purchase or help.
  if (
    fields.what === undefined &&
    fields.pieces === undefined &&
    /^(?:paid|pd|payed)$/.test(clause.head?.text ?? "")
  )
    return { kind: "loneNumber" };
  if (fields.what === undefined) delete fields.category;
  return null;
}
