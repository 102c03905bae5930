import type { Kind } from "../reading.ts";
import { standFor } from "./words.ts";

/** What people call an earlier note, each to its kind. */
export const KIND_NOUNS = standFor<Kind>({
  sell: "sale sales sold",
  buy: "purchase bought buy",
  drive: "drive trip miles mileage drove",
  pay: "payment",
  hold: "deposit hold",
  refund: "refund",
  list: "listing listed",
  trade: "trade swap",
  income: "income tip",
  reprice: "cut",
  statement: "statement",
  work: "work hours minutes",
});
