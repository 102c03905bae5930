import type { Kind } from "../reading.ts";

/** What people call an earlier note, each to its kind. */
export const KIND_NOUNS: Readonly<Record<string, Kind>> = {
  sale: "sell",
  sales: "sell",
  sold: "sell",
  purchase: "buy",
  bought: "buy",
  buy: "buy",
  drive: "drive",
  trip: "drive",
  miles: "drive",
  mileage: "drive",
  drove: "drive",
  payment: "pay",
  deposit: "hold",
  hold: "hold",
  refund: "refund",
  listing: "list",
  listed: "list",
  trade: "trade",
  swap: "trade",
  income: "income",
  tip: "income",
  cut: "reprice",
  statement: "statement",
  work: "work",
};
