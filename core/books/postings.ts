import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";

export type Account =
  | "cash"
  | "unsold pieces"
  | "deposits held"
  | "buyers owe"
  | "sales"
  | "deposits kept"
  | "refunds"
  | "cost of pieces sold"
  | "selling fees"
  | "overhead"
  | "written off"
  | "personal use"
  | "other income"
  | "loan"
  | "loan interest"
  | "opening balances";

/** One leg of a fact: cents, debit positive, credit negative. The legs of a fact sum to zero. */
export interface Posting {
  fact: number;
  day: Day;
  account: Account;
  cents: Cents;
  piece: number | null;
  /** Which one of the account: the loan's name, the overhead's category, the income's stream; else null. */
  detail: string | null;
}
