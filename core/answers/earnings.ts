import type { Books, Piece } from "../books/books.ts";
import { firstIndex } from "../books/exchange.ts";
import { newPiecesOf } from "../books/facts.ts";
import type { Account } from "../books/postings.ts";
import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";

/** What the flip profit of a span is made of, beside overhead. */
const PROFIT_ACCOUNTS: ReadonlySet<Account> = new Set<Account>([
  "sales",
  "deposits kept",
  "refunds",
  "cost of pieces sold",
  "selling fees",
  "written off",
]);

/** What one piece did to the flip profit of a span of days, in cents. */
export interface Earning {
  piece: Readonly<Piece>;
  profit: Cents;
  /** Of its profit: sales and kept deposits less refunds. */
  proceeds: Cents;
  /** Sold in the span, and not returned in it after that. */
  sold: boolean;
  /** What moved it, where it was no plain sale: "refund", "deposit kept", "returned", … */
  because: string | null;
}

/**
 * What each piece earned or cost from one day through another (both counted), the most first. Their sum less
 * the overhead is the flip profit of the span, to the cent.
 */
export function earningsOf(books: Books, { from, through }: { from: Day; through: Day }): Earning[] {
  const earnings = new Map<number, Earning>();
  for (let index = firstIndex(books.facts, ({ day }) => day >= from); index < books.facts.length; index++) {
    const fact = books.facts[index]!;
    if (fact.day > through) break;
    for (const { account, cents, piece } of books.postings.get(fact.id) ?? []) {
      if (piece === null || !PROFIT_ACCOUNTS.has(account)) continue;
      const earning = earnings.get(piece) ?? noEarning(books.pieces.get(piece)!);
      earning.profit -= cents;
      if (account === "sales" || account === "deposits kept" || account === "refunds")
        earning.proceeds -= cents;
      if (!earning.sold) earning.because = REASONS[account] ?? earning.because;
      earnings.set(piece, earning);
    }
    // A trade is a sale of the piece that it gives away.
    const isSale = fact.kind === "sell" || fact.kind === "trade";
    if (!isSale && !(fact.kind === "refund" && fact.data.returned)) continue;
    const got = fact.kind === "trade" ? newPiecesOf(fact) : [];
    for (const number of fact.pieces) {
      if (got.includes(number)) continue;
      const earning = earnings.get(number) ?? noEarning(books.pieces.get(number)!);
      earning.sold = isSale;
      earning.because = earning.sold ? null : "returned";
      earnings.set(number, earning);
    }
  }
  return [...earnings.values()].sort((a, b) => b.profit - a.profit || a.piece.number - b.piece.number);
}

function noEarning(piece: Readonly<Piece>): Earning {
  return { piece, profit: 0, proceeds: 0, sold: false, because: null };
}

const REASONS: Partial<Record<Account, string>> = {
  "deposits kept": "deposit kept",
  refunds: "refund",
  "selling fees": "fee",
  "cost of pieces sold": "spent after the sale",
  "written off": "written off",
};
