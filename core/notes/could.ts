import { percentOf } from "../money.ts";
import type { Clause, Tok } from "./clause.ts";
import { placeAfter } from "./clause.ts";
import { daysMeant } from "./days-meant.ts";
import { type Draft, draft } from "./draft.ts";
import type { Trouble } from "./grammar.ts";
import { goodsIn } from "./judging/buying.ts";
import { wholeOf } from "./quantities/amounts.ts";
import type { Kind, Mention } from "./reading.ts";
import { slippedIn } from "./slipped.ts";
import { centsIn, pieceCount } from "./slots/money.ts";
import { language } from "./verbs.ts";
import { NO_SALE, PRICE_TO, SALE_SAID } from "./words/deals.ts";
import { ARTICLES_WIDE } from "./words/links.ts";

/*
 * What an unclear clause may mean, as whole readings, likeliest first. Each is made of the person's own words; a
 * trouble that leaves nothing to offer offers nothing.
 */

/** What a clause holds, for putting a reading together. */
interface Held {
  pieces: Mention[] | undefined;
  amounts: number[];
  made: Draft | undefined;
  clause: Clause;
}

function heldIn(clause: Clause, made: Draft | undefined): Held {
  const pieces = clause.tokens.flatMap(({ kind, mention }) => (kind === "piece" && mention ? [mention] : []));
  const slipped = slippedIn(clause);
  const amounts = clause.tokens
    .filter((token) => token.kind === "amount" && token.amount !== undefined && !slipped.includes(token))
    .flatMap((token) => {
      const cents = centsIn(token);
      // "gone, 85 each" of two is 170; of nobody knows how many it is no amount.
      const count = token.each ? pieceCount(pieces) : 1;
      return cents === null || count === null ? [] : cents * count;
    });
  return { pieces: pieces.length > 0 ? pieces : undefined, amounts, made, clause };
}

/** A draft of a kind with the pieces of the clause and what the reading at hand says of day, method and people. */
function as(kind: Kind, fields: Record<string, unknown>, { clause, made, pieces }: Held): Draft {
  const grammar = language().grammars.get(kind) ?? null;
  const kept = Object.fromEntries(
    ["date", "method", "buyer", "by"].flatMap((field) => {
      const value = made?.fields[field];
      const isOfOthers =
        (field === "method" && !grammar?.fields.some(({ name }) => name === "method")) ||
        (field === "buyer" && kind !== "sell" && kind !== "hold");
      return value === undefined || isOfOthers ? [] : [[field, value]];
    }),
  );
  return draft(
    kind,
    { ...(pieces ? { pieces: pieces.map((each) => ({ ...each })) } : {}), ...kept, ...fields },
    clause,
    grammar,
  );
}

/** Amounts on the tokens that a row has set aside ("20 down", "126 after fees"). */
function amountOf(clause: Clause, hedge: string): number | undefined {
  const token = clause.tokens.find(
    ({ kind, roles, amount }) => kind === "word" && roles.hedge === hedge && amount,
  );
  return token ? (centsIn(token) ?? undefined) : undefined;
}

/** "half now half later": what a share that a row has set aside comes to. */
function shareOf({ tokens }: Clause, hedge: string, price: number | undefined): number | undefined {
  const percent = tokens.find(({ roles, percent }) => roles.hedge === hedge && percent)?.percent;
  return percent === undefined || price === undefined ? undefined : percentOf(percent, price);
}

type Offer = (held: Held) => Draft[];

const soldOrHeld: Offer = (held) => {
  const { made, clause } = held;
  const deposit = amountOf(clause, "deposit");
  const hold = as("hold", deposit ? { deposit } : {}, held);
  return made && made.kind === "sell" ? [hold, made] : [hold];
};

/** Sold and all of it owed, or on hold. */
const owedOrHeld: Offer = (held) => {
  const { made } = held;
  if (made?.kind !== "sell" || made.fields["price"] === undefined) return soldOrHeld(held);
  const owed = changed(made, { owed: made.fields["owed"] ?? made.fields["price"] });
  return [owed, as("hold", {}, held)];
};

const depositOrPrice: Offer = (held) => {
  // "hold desk 20 for bob"
  if (held.made?.kind === "hold") return [held.made, changed(held.made, { deposit: undefined })];
  const deposit = amountOf(held.clause, "deposit") ?? 0;
  const hold = as("hold", { deposit }, held);
  const price = held.made?.fields["price"] as number | undefined;
  return price === undefined ? [hold, as("sell", { price: deposit }, held)] : [hold, held.made!];
};

const priceAndNet: Offer = (held) => {
  const { made, clause } = held;
  const net = amountOf(clause, "net");
  const price = made?.fields["price"] as number | undefined;
  if (!made || net === undefined || price === undefined) return [];
  const withFee = (fee: number): Draft => changed(made, { fee });
  return net < price ? [withFee(price - net), withFee(net)] : [made];
};

/** The reading at hand with other amounts. */
const changed = (made: Draft, fields: Record<string, unknown>): Draft => ({
  ...made,
  fields: { ...made.fields, ...fields },
});

/** What the reading has as its price, and the amount that a row has set aside; null where one of them is not said. */
function priceAnd(
  { made, clause }: Held,
  hedge: string,
): { made: Draft; price: number; beside: number } | null {
  const price = made?.fields["price"] as number | undefined;
  const beside = amountOf(clause, hedge) ?? shareOf(clause, hedge, price);
  return made && price !== undefined && beside !== undefined ? { made, price, beside } : null;
}

/** "sold desk 140 paid 100": the rest is owed, or the other number is of something else. */
const owedOrNot: Offer = (held) => {
  const said = priceAnd(held, "part paid");
  if (!said) return sumOrItself(held);
  const { made, price, beside } = said;
  if (beside >= price) return [made];
  // "got 102" of 110 may as well be what was left after a fee.
  const isNearly = beside >= price * NEARLY_ALL;
  const rest = price - beside;
  // "for 150, they took 12" is hardly what was paid of it.
  const isSmall = beside <= price * (1 - NEARLY_ALL);
  const fee = isNearly ? rest : isSmall ? beside : undefined;
  return [changed(made, { owed: rest }), ...(fee ? [changed(made, { fee })] : []), made];
};

/** "100 now 40 later": of 140, or of 100. */
const sumOrItself: Offer = (held) => {
  const { price, owed } = (held.made?.fields ?? {}) as { price?: number; owed?: number };
  if (price === undefined || owed === undefined) return itself(held);
  return [changed(held.made!, { price: price + owed }), held.made!];
};

/** No fee takes more than the rest of it. */
const NEARLY_ALL = 0.75;

const withExtra: Offer = (held) => {
  const said = priceAnd(held, "extra");
  // "140 + 20 for delivery" is added up already.
  if (!said) return itself(held);
  return [changed(said.made, { price: said.price + said.beside }), said.made];
};

const withLess: Offer = (held) => {
  const said = priceAnd(held, "less");
  if (!said || said.beside >= said.price) return [];
  const { made, price, beside } = said;
  return [
    changed(made, { price: price - beside }),
    made.kind === "sell" ? changed(made, { fee: beside }) : made,
  ];
};

const feeInOrOff: Offer = (held) => {
  const said = priceAnd(held, "after fee");
  if (!said) return [];
  const { made, price, beside: fee } = said;
  return [changed(made, { price: price + fee, fee }), changed(made, { fee })];
};

/** Words of a sale that say too little to record one: "accepted 140 for the desk". */
const isSaleSaid = ({ tokens }: Clause): boolean => tokens.some(({ text }) => SALE_SAID.has(text));

/** "desk 165 to 140", "#3 to 55": the price behind "to" is the new one. */
const isLowered = ({ tokens }: Clause): boolean =>
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

const isFilling = ({ roles }: Tok): boolean => roles.filler === true;

const boughtListedSold: Offer = (held) => {
  const [price, other] = held.amounts;
  if (!held.pieces || price === undefined) return [];
  if (isLowered(held.clause))
    return [
      as("reprice", { price: other ?? price }, held),
      ...(other === undefined ? [as("list", { price }, held)] : []),
    ];
  if (isSaleSaid(held.clause)) return [as("sell", { price }, held), as("hold", { deposit: price }, held)];
  const cost = costFor(held, price);
  const isNew = held.pieces.every(({ number }) => number === undefined);
  return [
    ...cost,
    ...(isNew && cost.length === 0 ? [as("buy", { price, ...sourceIn(held.clause) }, held)] : []),
    as("list", { price }, held),
    as("sell", { price }, held),
  ];
};

const cutOrPrice: Offer = (held) => {
  const [amount] = held.amounts;
  if (amount === undefined || (!held.pieces && !held.made)) return [];
  return [as("reprice", { price: amount }, held), as("reprice", { cut: amount }, held)];
};

const newPrice: Offer = (held) =>
  held.amounts.length === 1 ? [as("reprice", { price: held.amounts[0] }, held)] : [];

const payOrBalance: Offer = (held) => {
  const [amount] = held.amounts;
  if (amount === undefined) return [];
  const loan = held.made?.fields["loan"] ?? loanIn(held.clause);
  const named = loan ? { loan } : {};
  return [
    as("pay", { amount, ...named }, { ...held, pieces: undefined }),
    as("statement", { balance: amount, ...named }, { ...held, pieces: undefined }),
  ];
};

function loanIn({ tokens }: Clause): string | undefined {
  const at = tokens.findIndex(({ text }) => text === "loan");
  const before = tokens[at - 1];
  return before?.unknown ? before.text : undefined;
}

/** "6 knobs at 2.50": what all of them cost, and what one of them would be. */
function ofOneAndAll({ tokens, what }: Clause): number[] | null {
  const [count, price, ...more] = tokens.filter(({ kind }) => kind === "amount");
  const link = tokens[tokens.indexOf(price!) - 1]?.text;
  if (!what || !count || !price || more.length > 0 || (link !== "at" && link !== "@")) return null;
  const [times, cents] = [wholeOf(count.amount?.exact ?? null), centsIn(price)];
  return times === null || cents === null || count.amount?.money ? null : [times * cents, cents];
}

/** Each amount of the clause as the one that was asked for. */
const eitherAmount: Offer = (held) => {
  const { made } = held;
  if (!made || held.amounts.length < 2) return [];
  const field = ["price", "amount", "balance"].find((name) => made.needs.includes(name));
  if (!field) return [];
  const amounts = ofOneAndAll(held.clause) ?? held.amounts;
  const each = [...new Set(amounts)].slice(0, 3).map((cents) => ({
    ...made,
    fields: {
      ...made.fields,
      ...(made.fields["pieces"] || !held.pieces ? {} : { pieces: held.pieces }),
      [field]: cents,
    },
  }));
  const numbered = made.kind === "buy" || !made.wantsPieces ? null : pieceNumbered(held.clause);
  const net = Math.min(...held.amounts);
  const gross = Math.max(...held.amounts);
  // "sold credenza 150 and 138 hit my account"
  if (made.kind === "sell" && amounts.length === 2 && net < gross && net >= gross * NEARLY_ALL)
    each.splice(1, 0, changed(each[0]!, { [field]: gross, fee: gross - net }));
  return numbered
    ? [{ ...made, fields: { ...made.fields, pieces: [numbered.mention], [field]: numbered.cents } }, ...each]
    : each;
};

/** "bench 2 listed 45", "sold 3 for 45": the first of two numbers may be a piece's own. */
function pieceNumbered({ tokens }: Clause): { mention: Mention; cents: number } | null {
  const [first, second, ...more] = tokens.filter(({ kind }) => kind === "amount");
  if (!first || !second || more.length > 0 || first.each || second.each) return null;
  const pieces = tokens.filter(({ kind }) => kind === "piece");
  // "paint 7 for mirror 2": the number stands behind its piece.
  const isBehind = tokens[tokens.indexOf(second) - 1] === pieces[0] && !second.amount?.money;
  const [numeral, price] = isBehind ? [second, first] : [first, second];
  const number = wholeOf(numeral.amount?.exact ?? null);
  const cents = centsIn(price);
  const before = tokens[tokens.indexOf(numeral) - 1];
  if (numeral.amount?.money || number === null || number < 1 || cents === null || pieces.length > 1)
    return null;
  if (pieces.length === 0) return { mention: { number, count: 1 }, cents };
  const { plural, number: own, count } = pieces[0]!.mention!;
  const isItsNumber = before === pieces[0] && !plural && own === undefined && count === 1;
  return isItsNumber ? { mention: { ...pieces[0]!.mention!, number }, cents } : null;
}

/** "two fifty" is either of two amounts. */
const eitherSpoken: Offer = ({ made, clause, pieces }) => {
  // "about an hour on the desk"
  const isNear = clause.tokens.some(({ roles }) => roles.hedge === "vague");
  const isWhole = made?.needs.every((field) => field === "count" || made.fields[field] !== undefined);
  if (made && isNear && isWhole) return [made];
  const token = clause.tokens.find(({ amount }) => amount?.either !== undefined);
  const field = ["price", "amount", "balance"].find((name) => made?.needs.includes(name));
  if (!token || !made || !field) return [];
  const named = made.fields["pieces"] || !pieces ? {} : { pieces };
  return token.amount!.either!.map((cents) => ({
    ...made,
    fields: { ...made.fields, ...named, [field]: cents },
  }));
};

/** "drove 24" */
const drivenMiles: Offer = (held) => {
  const miles = held.clause.tokens.find(({ kind }) => kind === "miles")?.miles;
  return miles === undefined ? [] : [as("drive", { miles }, held)];
};

/** "paid 25": the newest note's amount, perhaps. */
const correction: Offer = (held) => {
  const isPaid = held.clause.tokens.some(({ text }) => /^(?:paid|pd|payed)$/.test(text));
  return isPaid && held.amounts.length === 1
    ? [as("fix", { amount: held.amounts[0] }, { ...held, pieces: undefined, made: undefined })]
    : [];
};

/** "almost bought a dresser 40", "bob wants 60 to sand desk": nothing of it is a sale. */
function isNoSale({ made, clause }: Held): boolean {
  const { head } = made?.clause ?? {};
  const isPurchase = made?.kind === "buy" && head?.roles.heads?.some(({ light }) => !light) === true;
  return isPurchase || clause.signs.has("labor") || clause.tokens.some(({ text }) => NO_SALE.has(text));
}

const HANDED = /^(?:gave|handed|paid|sent|slipped)$/;

/** "bob sold me a dresser 40": what was sold to us was bought. */
const theirsOrOurs: Offer = (held) => {
  const { tokens } = held.clause;
  const at = tokens.findIndex(({ text }) => text === "me" || text === "us");
  // "he handed me 150" is money, and nothing that was sold to us.
  const isSold = at > 0 && tokens[at - 1] === held.clause.head && !HANDED.test(tokens[at - 1]!.text);
  const isToUs = held.made?.kind === "sell" && isSold;
  return isToUs ? [as("buy", { price: held.made!.fields["price"] }, held)] : itself(held);
};

/** "returned sander 59": what was bought is taken back out of the books. */
const takenBack: Offer = ({ clause, amounts }) => {
  const bought = clause.tokens.filter(({ roles }) => roles.supply !== undefined);
  if (bought.length !== 1) return [];
  const [amount] = amounts;
  const of = { kind: "spend", what: bought[0]!.text, ...(amount === undefined ? {} : { amount }) };
  return [draft("mend", { of, removed: true }, clause)];
};

/** What was only planned or offered: what its own words say, else the sale that it would be. */
const asSale: Offer = (held) => {
  const down = held.clause.tokens.find(
    ({ kind }, at, all) => kind === "amount" && all[at + 1]?.text === "down",
  );
  if (down && held.pieces) return [as("hold", { deposit: centsIn(down) ?? undefined }, held)];
  if (held.made && held.made.kind !== "buy") return [held.made];
  if (isNoSale(held)) return [];
  const [price] = held.amounts;
  return held.pieces && held.amounts.length === 1
    ? [as("sell", { price }, held)]
    : held.made
      ? [held.made]
      : [];
};

const MEASURED: ReadonlySet<string> = new Set(["amount", "duration", "miles"]);

/** "last weekend", "fri or sat", "sunday market": each day that it may have been. */
const eachDay: Offer = ({ made, clause }) => {
  const isOpen = made?.needs.some((field) => field !== "count" && made.fields[field] === undefined);
  const isLeft = ({ kind, claimed }: Tok): boolean => !claimed && MEASURED.has(kind);
  if (!made?.dated || isOpen || clause.tokens.some(isLeft)) return [];
  return daysMeant(clause).map((date) => {
    const { date: _, ...fields } = made.fields;
    return { ...made, fields: date === clause.today ? fields : { ...fields, date } };
  });
};

/** "bought a coke 2": what it cost the shop, or a piece. */
const costOrPiece: Offer = (held) => {
  const what = held.made && goodsIn(held.made.fields, held.clause);
  const amount = held.made?.fields["price"] as number | undefined;
  const pieces = held.made?.fields["pieces"] as Mention[] | undefined;
  // "bought desk and a coke 42": what each was of it is not said.
  if (!what || amount === undefined || (pieces && pieces.length > 1)) return itself(held);
  const cost = as("spend", { what, category: "other", amount }, { ...held, pieces: undefined });
  return pieces ? [cost, held.made!] : [cost];
};

const itself: Offer = ({ made }) => (made ? [made] : []);

/** Words that nobody knows around a thing and one measure: the notes that such a thing and measure make. */
const byWhatItHolds: Offer = (held) => {
  const { clause, pieces, amounts } = held;
  const [measure, ...others] = clause.tokens.filter(({ kind }) => MEASURED.has(kind));
  if (!measure || others.length > 0) return [];
  if (measure.kind === "miles") return drivenMiles(held);
  if (measure.kind === "duration") return pieces ? [as("work", { minutes: measure.minutes }, held)] : [];
  if (clause.signs.has("loan")) return payOrBalance(held);
  const supply = clause.tokens.find(({ roles }) => roles.supply !== undefined && !roles.heads);
  if (supply && amounts.length === 1)
    return [as("spend", { what: supply.text, category: supply.roles.supply, amount: amounts[0] }, held)];
  const offered = boughtListedSold(held);
  // "finished the desk 40": it has a verb, and is no purchase.
  return held.made ? offered.filter(({ kind }) => kind !== "buy") : offered;
};

const OFFERS: Partial<Record<Trouble["kind"], Offer>> = {
  left: itself,
  unknown: byWhatItHolds,
  unclaimed: byWhatItHolds,
  pieceOrCost: costOrPiece,
  buyer: itself,
  anotherPerson: theirsOrOurs,
  gone: itself,
  moneyBack: takenBack,
  intention: asSale,
  offer: asSale,
  appointment: asSale,
  doubt: itself,
  shareOfPrice: itself,
  twoKinds: itself,
  part: itself,
  pending: soldOrHeld,
  unpaid: owedOrHeld,
  deposit: depositOrPrice,
  net: priceAndNet,
  "part paid": owedOrNot,
  extra: withExtra,
  less: withLess,
  "after fee": feeInOrOff,
  noVerb: boughtListedSold,
  cutOrPrice,
  raiseBy: newPrice,
  loanAlone: payOrBalance,
  loneNumber: correction,
  milesUnsaid: drivenMiles,
  twoNumbers: eitherAmount,
  vagueAmount: eitherSpoken,
  whichDay: (held) => (held.made ? [held.made, ...eachDay(held)] : []),
};

/** What a clause in trouble may mean; `made` is what its words would be without the trouble. */
export function couldBe(trouble: Trouble, clause: Clause, made: Draft | undefined): Draft[] {
  const offer = OFFERS[trouble.kind];
  return offer ? offer(heldIn(clause, made)).slice(0, 3) : [];
}
