import { Decimal } from "decimal.js";
import type { Piece } from "../books/books.ts";
import { proceedsOf, profitOf } from "../books/piece.ts";
import { daysBetween } from "../calendar.ts";
import { anHour, type Cents, roundHalfUp, show } from "../money.ts";
import { pluralOf } from "../notes/mentions/plural.ts";
import type { Desk } from "./desk.ts";
import { isOfKind } from "./filters.ts";
import { salePriceOf } from "./ledger-index.ts";
import { singularOf } from "./lexicon.ts";

/** Fewer sales of a kind than this say little: the wider kind speaks for it, and the answer says so. */
export const TELLING_MIN = 5;

/** One sold piece as far as advice goes by it. Cents, whole minutes and days; null: not known. */
export interface Sale {
  price: Cents;
  /** What it brought in less materials and fees: what would be left at a price paid of nothing. */
  margin: Cents;
  profit: Cents;
  minutes: number | null;
  daysToSell: number;
  daysListed: number | null;
  /** Sale price ÷ first list price, in ten-thousandths. */
  reached: number | null;
}

/** The sales that speak for a kind: the narrowest cut that has enough of them. */
export interface OwnHistory {
  sales: readonly Sale[];
  /** "walnut dressers", "dressers", "pieces". */
  name: string;
  /** How many there are of what was asked, where that was too few. */
  tooFew: { name: string; prices: readonly Cents[] } | null;
}

function saleOf(desk: Desk, piece: Readonly<Piece>): Sale {
  const price = salePriceOf(desk.books, desk.index, piece) ?? 0;
  const first = piece.firstListPrice;
  return {
    price,
    margin: proceedsOf(piece) - piece.materials - piece.fees,
    profit: profitOf(piece) ?? 0,
    minutes: piece.minutes > 0 ? piece.minutes : null,
    daysToSell: daysBetween(piece.bought, piece.sold!),
    daysListed: piece.firstListed === null ? null : daysBetween(piece.firstListed, piece.sold!),
    reached: first ? roundHalfUp(new Decimal(price).times(10_000).div(first)) : null,
  };
}

/** Own sales of a kind with traits; of the kind alone, then of all pieces, where there are fewer than five. */
export function historyFor(desk: Desk, kind: string | null, traits: readonly string[]): OwnHistory {
  const sold = [...desk.books.pieces.values()].filter((piece) => piece.gone === "sold");
  const ofKind = kind === null ? sold : sold.filter((piece) => isOfKind(piece, kind));
  const plural = kind === null ? "pieces" : pluralOf(kind);
  const cuts = [
    {
      name: [...traits, plural].join(" "),
      pieces: ofKind.filter((piece) => traits.every((trait) => piece.traits.includes(trait))),
    },
    { name: plural, pieces: ofKind },
    { name: "pieces", pieces: sold },
  ];
  const chosen = cuts.find(({ pieces }) => pieces.length >= TELLING_MIN) ?? cuts.at(-1)!;
  const narrower = cuts.slice(0, cuts.indexOf(chosen));
  // "No oak desks sold", where a plain desk was, would be half of it.
  const few = narrower.find(({ pieces }) => pieces.length > 0) ?? narrower[0];
  const tooFew = few
    ? { name: few.name, prices: few.pieces.map((piece) => salePriceOf(desk.books, desk.index, piece) ?? 0) }
    : null;
  return { sales: chosen.pieces.map((piece) => saleOf(desk, piece)), name: chosen.name, tooFew };
}

/** A quartile of whole amounts, between two neighbours in proportion and half up; 0.5 is the median. */
export function quantile(amounts: readonly number[], at: number): number {
  const sorted = [...amounts].sort((a, b) => a - b);
  const place = new Decimal(sorted.length - 1).times(at);
  const below = place.floor().toNumber();
  const next = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return roundHalfUp(new Decimal(next - sorted[below]!).times(place.minus(below)).plus(sorted[below]!));
}

/** The middle of what is known; null where nothing is. */
export function middleOf(amounts: readonly (number | null)[]): number | null {
  const known = amounts.filter((amount) => amount !== null);
  return known.length === 0 ? null : quantile(known, 0.5);
}

/** What an hour usually brings: the median over all sold pieces with time logged, in cents; null without any. */
export function usualHour(desk: Desk): Cents | null {
  // Of all pieces only these two are asked for: working out their sales as well takes ten times as long.
  const sold = [...desk.books.pieces.values()].filter(({ gone }) => gone === "sold");
  return middleOf(sold.map((piece) => anHour(profitOf(piece) ?? 0, piece.minutes)));
}

/** Sales that are few enough to be told one by one. */
const TOLD_MAX = 3;

/** "Only 2 walnut dressers sold (140.00, 175.00): going by all 14 sold". */
export function thinWords({ tooFew, name, sales }: OwnHistory): string | null {
  if (!tooFew) return null;
  const all = name === "pieces" ? `all ${sales.length} sold` : `${sales.length} ${name}`;
  const { prices } = tooFew;
  const count = prices.length;
  const what = count === 1 ? singularOf(tooFew.name) : tooFew.name;
  const told = count <= TOLD_MAX ? ` (${prices.map(show).join(", ")})` : "";
  const few = count === 0 ? `No ${tooFew.name} sold yet` : `Only ${count} ${what} sold${told}`;
  return `${few}: going by ${all}`;
}
