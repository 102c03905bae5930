import { type Clause, isAmount, MEASURES, placeAfter, placeBefore, type Tok } from "../clause.ts";
import { type Draft, draft } from "../interpreting/draft.ts";
import { goodsIn } from "../judging/buying.ts";
import { unpricedIn } from "../judging/spending.ts";
import { decimalText, wholeOf } from "../quantities/amounts.ts";
import type { Mention } from "../reading.ts";
import { centsIn } from "../slots/money.ts";
import { isLoanName } from "../slots/names.ts";
import { INTENDED, NO_SALE, PRICE_TO, SALE_SAID } from "../words/deals.ts";
import { LABOR_NAMES } from "../words/labors.ts";
import { ARTICLES_WIDE, BEFORE_AGREED, PRICED_BY } from "../words/links.ts";
import { ASKS_FOR, FOR_NOTHING } from "../words/money.ts";
import { PIECE_PARTS } from "../words/parts.ts";
import { as, changed, eachIn, type Held, itself, type Offer } from "./held.ts";

/*
 * Words that do not say which kind of note it is: the kinds that the thing and its number may make.
 */

/** Words of a sale that say too little to record one: "accepted 140 for the desk". */
const isSaleSaid = ({ tokens }: Clause): boolean => tokens.some(({ text }) => SALE_SAID.has(text));

/** "desk 165 to 140", "#3 to 55": the price behind "to" is the new one. */
const isLowered = ({ tokens }: Clause): boolean =>
  tokens.at(-1)?.text === "now" ||
  tokens.some(
    ({ kind }, at) =>
      kind === "amount" &&
      at > 1 &&
      /^(?:amount|piece)$/.test(tokens[at - 2]!.kind) &&
      PRICE_TO.has(tokens[at - 1]!.text),
  );

/** "45 at the thrift for a side table": where it was bought, if it was. */
function sourceIn({ tokens }: Clause): { source?: string } {
  const place = tokens.find(({ kind, roles }) => kind === "word" && roles.place && !roles.person);
  return place ? { source: place.roles.place! } : {};
}

/** "promo for the settee 8": words that nobody listed, before the piece that they were for. */
function costFor(held: Held, amount: number): Draft[] {
  const { tokens } = held.clause;
  const to = tokens.findIndex(({ text }) => text === "for" || text === "on");
  const isNamed = to > 0 && tokens[placeAfter(tokens, to + 1, ARTICLES_WIDE)]?.kind === "piece";
  const words = isNamed
    ? tokens.slice(0, to).filter((token) => token.kind === "word" && !isFilling(token))
    : [];
  const isThing = words.every(({ roles }) => !roles.hedge && !roles.person && !roles.heads && !roles.method);
  const isOurs = !tokens.some(({ text, each }) => each || text === "from");
  if (words.length === 0 || !isThing || !isOurs) return [];
  return [as("spend", { what: words.map(({ text }) => text).join(" "), category: "other", amount }, held)];
}

/** "mirror for the vanity 15", "new mirror for it, 15": a part of it, or a piece of its own. */
function partOrPiece(held: Held, price: number): Draft[] {
  const [part, link, whole, last, ...more] = held.clause.tokens.filter(
    (token) => token.kind !== "mark" && (token.text === "for" || !isFilling(token) || token.roles.pronoun),
  );
  const isIt = whole?.roles.pronoun !== undefined;
  const isOf = link?.text === "for" && (whole?.kind === "piece" || isIt) && last?.kind === "amount";
  const own = part?.kind === "piece" ? part.mention : undefined;
  if (!isOf || !own || more.length > 0 || own.number !== undefined || (own.count ?? 1) > 1) return [];
  const pieces = isIt ? undefined : [whole.mention!];
  const cost = as("spend", { what: part!.text, category: "materials", amount: price }, { ...held, pieces });
  return [isIt ? { ...cost, takesBefore: true } : cost, as("buy", { price }, { ...held, pieces: [own] })];
}

const isFilling = ({ roles }: Tok): boolean => roles.filler === true;

export const boughtListedSold: Offer = (held) => {
  const [price, other] = held.amounts;
  const each = eachIn(held);
  if (held.pieces && each !== null)
    return (["list", "sell"] as const).map((kind) => as(kind, { price: each, each: true }, held));
  // "yard sale: bookcase 10, mirror free"
  const isFree = held.clause.tokens.some(({ text }) => FOR_NOTHING.has(text));
  if (held.pieces && price === undefined && isFree)
    return [as("buy", { price: 0, ...sourceIn(held.clause) }, held)];
  if (!held.pieces || price === undefined) return [];
  if (isLowered(held.clause))
    return [
      as("reprice", { price: other ?? price }, held),
      ...(other === undefined ? [as("list", { price }, held)] : []),
    ];
  if (isSaleSaid(held.clause)) return [as("sell", { price }, held), as("hold", { deposit: price }, held)];
  const part = partOrPiece(held, price);
  if (part.length > 0) return part;
  const cost = costFor(held, price);
  const isNew = held.pieces.every(({ number }) => number === undefined);
  return [
    ...cost,
    ...(isNew && cost.length === 0 ? [as("buy", { price, ...sourceIn(held.clause) }, held)] : []),
    as("list", { price }, held),
    as("sell", { price }, held),
  ];
};

export const payOrBalance: Offer = (held) => {
  const [amount] = held.amounts;
  if (amount === undefined) return [];
  const loan = held.made?.fields["loan"] ?? loanIn(held.clause);
  const named = loan ? { loan } : {};
  const rate = rateIn(held.clause);
  return [
    ...(rate ? [as("loan", { balance: amount, rate, ...named }, { ...held, pieces: undefined })] : []),
    as("pay", { amount, ...named }, { ...held, pieces: undefined }),
    as("statement", { balance: amount, ...named }, { ...held, pieces: undefined }),
  ];
};

/** "loan is 4200 at 5", "car loan 8200 4.5": what a number behind "at" or an amount may be, where no loan costs more. */
function rateIn({ tokens }: Clause): string | null {
  const isBehind = (last: Tok | undefined) => last?.kind === "amount" || PRICED_BY.has(last?.text ?? "");
  const token = tokens.find(({ kind }, at) => kind === "amount" && isBehind(tokens[at - 1]));
  const cents = token ? centsIn(token) : null;
  const isRate = cents !== null && cents > 0 && cents <= RATE_CENTS_MAX && token !== tokens.find(isAmount);
  return isRate ? decimalText(token!.amount!.exact!) : null;
}

const RATE_CENTS_MAX = 40_00;

function loanIn({ tokens }: Clause): string | undefined {
  const at = tokens.findIndex(({ text }) => text === "loan");
  const before = tokens[at - 1];
  return before && isLoanName(before) ? before.text : undefined;
}

/** "drove 24" */
export const drivenMiles: Offer = (held) => {
  const miles = held.clause.tokens.find(({ kind }) => kind === "miles")?.miles;
  return miles === undefined ? [] : [as("drive", { miles }, held)];
};

/** "she gave me 10 for gas": money that came in, or what somebody's money was spent on. */
export const inOrOut: Offer = (held) => {
  const { clause, amounts, made } = held;
  const [amount] = amounts;
  const what = clause.tokens.findLast(({ kind, roles }) => kind === "word" && (roles.supply || roles.labor));
  if (amount === undefined || made?.kind === "income") return itself(held);
  const income = as("income", { amount, stream: what?.text ?? "help" }, { ...held, pieces: undefined });
  return made?.kind === "spend" ? [income, made] : [income];
};

/** "paid 25": the newest note's amount, perhaps. */
export const correction: Offer = (held) => {
  const isPaid = held.clause.tokens.some(({ text }) => /^(?:paid|pd|payed)$/.test(text));
  return isPaid && held.amounts.length === 1
    ? [as("fix", { amount: held.amounts[0] }, { ...held, pieces: undefined, made: undefined })]
    : [];
};

const NEW_WORDS_MAX = 3;

/** "cedar chips 11.99": a thing that nobody listed and what it cost, and nothing else. */
function costOfNew(held: Held): Draft[] {
  const { tokens } = held.clause;
  const said = tokens.slice(placeAfter(tokens, 0, ARTICLES_WIDE));
  const [amount] = held.amounts;
  const words = said.slice(0, -1);
  const isThing = words.every(({ unknown, roles }) => unknown || roles.trait) && words.at(-1)?.unknown;
  if (!isThing || words.length > NEW_WORDS_MAX || said.at(-1)?.kind !== "amount" || amount === undefined)
    return [];
  return [as("spend", { what: words.map(({ text }) => text).join(" "), category: "other", amount }, held)];
}

/** Words that nobody knows around a thing and one measure: the notes that such a thing and measure make. */
export const byWhatItHolds: Offer = (held) => {
  const { clause, pieces, amounts } = held;
  const [measure, ...others] = clause.tokens.filter(({ kind }) => MEASURES.has(kind));
  if (!measure || others.length > 0) return [];
  if (measure.kind === "miles") return drivenMiles(held);
  if (measure.kind === "duration") return pieces ? [as("work", { minutes: measure.minutes }, held)] : [];
  if (clause.signs.has("loan")) return payOrBalance(held);
  const supply = clause.tokens.find(({ roles }) => roles.supply !== undefined && !roles.heads);
  if (supply && amounts.length === 1)
    return [as("spend", { what: supply.text, category: supply.roles.supply, amount: amounts[0] }, held)];
  if (!pieces) return costOfNew(held);
  const offered = boughtListedSold(held);
  // "finished the desk 40": it has a verb, and is no purchase.
  return held.made ? offered.filter(({ kind }) => kind !== "buy") : offered;
};

/** "almost bought a dresser 40", "bob wants 60 to sand desk": nothing of it is a sale. */
function isNoSale({ made, clause }: Held): boolean {
  const { head } = made?.clause ?? {};
  const isPurchase = made?.kind === "buy" && head?.roles.heads?.some(({ light }) => !light) === true;
  return isPurchase || clause.signs.has("labor") || clause.tokens.some(({ text }) => NO_SALE.has(text));
}

const HANDED = /^(?:gave|handed|paid|sent|slipped)$/;

/** "bob sold me a dresser 40": what was sold to us was bought. */
export const theirsOrOurs: Offer = (held) => {
  const { tokens } = held.clause;
  const at = tokens.findIndex(({ text }) => text === "me" || text === "us");
  // "he handed me 150" is money, and nothing that was sold to us.
  const isSold = at > 0 && tokens[at - 1] === held.clause.head && !HANDED.test(tokens[at - 1]!.text);
  const isToUs = held.made?.kind === "sell" && isSold;
  return isToUs ? [as("buy", { price: held.made!.fields["price"] }, held)] : itself(held);
};

/** "returned sander 59": what was bought is taken back out of the books. */
export const takenBack: Offer = ({ clause, amounts }) => {
  const bought = clause.tokens.filter(({ roles }) => roles.supply !== undefined);
  if (bought.length !== 1) return [];
  const [amount] = amounts;
  const of = { kind: "spend", what: bought[0]!.text, ...(amount === undefined ? {} : { amount }) };
  return [draft("mend", { of, removed: true }, clause)];
};

/** "asking 80 for the trunk": what it is listed at, where nobody else asks. */
const isOurAsking = ({ tokens, signs }: Clause): boolean =>
  !signs.has("person") && tokens.some(({ text }) => ASKS_FOR.has(text));

const AGREES = /^(?:agreed|agrees|settled|said (?:yes|ok|okay|sure|deal))\b/;

/** "agreed to 250", "a price of 250 was agreed": and not to split it, or to come at 5. */
function isAgreedPrice({ text, roles }: Tok, at: number, tokens: readonly Tok[]): boolean {
  if (roles.hedge !== "intention" || !AGREES.test(text)) return false;
  if (tokens[at + 1]?.text === "price") return true;
  const [behind, before] = [
    placeAfter(tokens, at + 1, BEFORE_AGREED),
    placeBefore(tokens, at - 1, BEFORE_AGREED),
  ];
  return tokens[behind]?.kind === "amount" || tokens[before]?.kind === "amount";
}

/** "she agreed to 250 for the dresser": what it is held at, or has gone for; null where nobody agreed. */
function asAgreed(held: Held): Draft[] | null {
  const { clause, amounts, pieces, made } = held;
  const [price, ...others] = amounts;
  if (!clause.tokens.some(isAgreedPrice) || price === undefined || others.length > 0 || made?.kind === "buy")
    return null;
  const offered = [as("hold", { agreed: price }, held), as("sell", { price }, held)];
  return pieces ? offered : offered.map((each) => ({ ...each, takesBefore: true }));
}

/** "coming to see the vanity at 6" */
const isHour = ({ kind, amount }: Tok, at: number, tokens: readonly Tok[]): boolean => {
  const hour = kind === "amount" && !amount?.money ? wholeOf(amount?.exact ?? null) : null;
  return hour !== null && hour <= 12 && /^(?:at|around|about|by)$/.test(tokens[at - 1]?.text ?? "");
};

/** What was only planned or offered: what its own words say, else the sale that it would be. */
export const asSale: Offer = (held) => {
  const agreed = asAgreed(held);
  if (agreed) return agreed;
  const down = held.clause.tokens.find(
    ({ kind }, at, all) => kind === "amount" && all[at + 1]?.text === "down",
  );
  if (down && held.pieces) return [as("hold", { deposit: centsIn(down) ?? undefined }, held)];
  if (held.made && held.made.kind !== "buy") return [held.made];
  if (held.clause.tokens.some(isHour)) return [];
  const [price] = held.amounts;
  const meant = held.clause.tokens.flatMap(({ text }) => INTENDED[text] ?? [])[0];
  if (meant && !held.made && held.pieces && held.amounts.length === 1) return [as(meant, { price }, held)];
  if (isNoSale(held)) return itself(held);
  if (!held.pieces && price !== undefined && isOurAsking(held.clause))
    return [{ ...as("list", { price }, held), takesBefore: true }];
  return held.pieces && held.amounts.length === 1
    ? [...(isOurAsking(held.clause) ? [as("list", { price }, held)] : []), as("sell", { price }, held)]
    : held.made
      ? [held.made]
      : [];
};

/** "jim is gonna do the glass, he wants 40": what it will have cost, for the piece that is named or spoken of. */
export const serviceToCome: Offer = (held) => {
  const { tokens } = held.clause;
  const [amount, ...others] = held.amounts;
  if (amount === undefined || others.length > 0) return [];
  const at = tokens.findIndex(({ roles }) => roles.hedge === "service");
  const isPart = ({ text, roles }: Tok): boolean => PIECE_PARTS.has(text) && !roles.heads;
  const part = tokens.slice(at + 1).find(isPart) ?? tokens.slice(0, Math.max(0, at)).find(isPart);
  const work = tokens
    .slice(Math.max(0, at))
    .flatMap(({ text }) => LABOR_NAMES.get(text.split(" ").at(-1)!) ?? []);
  const what = part?.text ?? work[0] ?? "help";
  const spent = as("spend", { what, category: "help", amount }, held);
  return [held.pieces ? spent : { ...spent, takesBefore: true }];
};

/** "bought a coke 2": what it cost the shop, or a piece. */
export const costOrPiece: Offer = (held) => {
  const goods = held.made && goodsIn(held.made.fields, held.clause);
  const amount = held.made?.fields["price"] as number | undefined;
  const pieces = held.made?.fields["pieces"] as Mention[] | undefined;
  const [piece] = pieces ?? [];
  const what = goods ?? (piece?.name && [...(piece.traits ?? []), piece.name].join(" "));
  // "bought desk and a coke 42": what each was of it is not said.
  if (!what || amount === undefined || (pieces && pieces.length > 1)) return itself(held);
  const cost = as("spend", { what, category: "other", amount }, { ...held, pieces: undefined });
  if (!pieces) return [cost];
  // "paid 45 for gym membership": what no list has is as likely a piece.
  return goods ? [cost, held.made!] : [held.made!, cost];
};

/** "paint 12 and primer": for both, or for the first alone. */
export const forAllOrOne: Offer = (held) => {
  const others = unpricedIn(held.clause);
  const what = held.made?.fields["what"];
  if (held.made?.kind !== "spend" || what === undefined || others.length === 0) return itself(held);
  return [changed(held.made, { what: [what, ...others].join(" and ") }), held.made];
};
