import { percentOf } from "../../money.ts";
import type { Clause } from "../clause.ts";
import type { Draft } from "../interpreting/draft.ts";
import { isAtSum } from "../judging/holding.ts";
import { PUT_DOWN } from "../words/verbs.ts";
import { amountOf, as, changed, type Held, itself, type Offer } from "./held.ts";

/*
 * A sale with money beside its price: a deposit, a rest, a fee, something extra. What may be meant, likeliest first.
 */

export const soldOrHeld: Offer = (held) => {
  const { made, clause } = held;
  const deposit = amountOf(clause, "deposit");
  const hold = as("hold", deposit ? { deposit } : {}, held);
  return made && made.kind === "sell" ? [hold, made] : [hold];
};

/** Sold and all of it owed, or on hold. */
export const owedOrHeld: Offer = (held) => {
  const { made } = held;
  // "bought the desk 50, paid 30 and owe the rest": ours it is; what we owe is kept nowhere.
  if (made?.kind === "buy" && made.fields["price"] !== undefined) return [changed(made, { owed: undefined })];
  if (made?.kind !== "sell" || made.fields["price"] === undefined) return soldOrHeld(held);
  const owed = changed(made, { owed: made.fields["owed"] ?? made.fields["price"] });
  return [owed, { ...as("hold", {}, held), ...(made.takesBefore ? { takesBefore: true } : {}) }];
};

/** "hold desk for ben at 150", "hold desk 20 for bob": what was put down, or what it goes for. */
function depositOrAgreed(made: Draft, clause: Clause): Draft[] {
  const { deposit, agreed } = made.fields;
  const none = changed(made, { deposit: undefined });
  if (agreed !== undefined) return [made, none];
  const price = changed(none, { agreed: deposit });
  return isAtSum(clause) ? [price, made, none] : [made, price, none];
}

export const depositOrPrice: Offer = (held) => {
  // "nell left 50 on the dresser"
  if (held.made?.kind === "hold" && PUT_DOWN.has(held.clause.head?.text ?? ""))
    return [held.made, as("sell", { price: held.made.fields["deposit"] }, held)];
  // "hold desk 20 for bob"
  if (held.made?.kind === "hold") return depositOrAgreed(held.made, held.clause);
  const deposit = amountOf(held.clause, "deposit") ?? 0;
  const hold = as("hold", { deposit }, held);
  const price = held.made?.fields["price"] as number | undefined;
  return price === undefined ? [hold, as("sell", { price: deposit }, held)] : [hold, held.made!];
};

export const priceAndNet: Offer = (held) => {
  const { made, clause } = held;
  const net = amountOf(clause, "net");
  const price = made?.fields["price"] as number | undefined;
  if (!made || net === undefined) return [];
  // "trunk sold, 50 profit": what it cost, the books know.
  if (price === undefined) return [changed(made, { price: net })];
  const withFee = (fee: number): Draft => changed(made, { fee });
  return net < price ? [withFee(price - net), withFee(net)] : [made];
};

/** "half now half later": what a share that a row has set aside comes to. */
function shareOf({ tokens }: Clause, hedge: string, price: number | undefined): number | undefined {
  const percent = tokens.find(({ roles, percent }) => roles.hedge === hedge && percent)?.percent;
  return percent === undefined || price === undefined ? undefined : percentOf(percent, price);
}

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
export const owedOrNot: Offer = (held) => {
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
  const { pieces, buyer } = made.fields as { pieces?: unknown; buyer?: string };
  const kept = as("hold", { pieces, ...(buyer ? { buyer } : {}), agreed: price, deposit: beside }, held);
  return [changed(made, { owed: rest }), ...(fee ? [changed(made, { fee })] : [kept]), made];
};

/** "100 now 40 later": of 140, or of 100. */
const sumOrItself: Offer = (held) => {
  const { price, owed } = (held.made?.fields ?? {}) as { price?: number; owed?: number };
  if (price === undefined || owed === undefined) return itself(held);
  return [changed(held.made!, { price: price + owed }), held.made!];
};

/** No fee takes more than the rest of it. */
export const NEARLY_ALL = 0.75;

export const withExtra: Offer = (held) => {
  const said = priceAnd(held, "extra");
  // "140 + 20 for delivery" is added up already.
  if (!said) return itself(held);
  return [changed(said.made, { price: said.price + said.beside }), said.made];
};

export const withLess: Offer = (held) => {
  const said = priceAnd(held, "less");
  if (!said || said.beside >= said.price) return [];
  const { made, price, beside } = said;
  return [
    changed(made, { price: price - beside }),
    made.kind === "sell" ? changed(made, { fee: beside }) : made,
  ];
};

export const feeInOrOff: Offer = (held) => {
  const said = priceAnd(held, "after fee");
  if (!said) return [];
  const { made, price, beside: fee } = said;
  return [changed(made, { price: price + fee, fee }), changed(made, { fee })];
};
