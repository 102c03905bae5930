import { standFor } from "./words.ts";

/** Ways of paying, each to the one word it is recorded as. Generic only: any other word follows "via" or "by". */
export const METHODS = standFor({
  cash: "cash in_cash cash_money in_notes in_readies readies csh",
  card: "card credit_card debit_card credit debit cc",
  check: "check cheque chk personal_check",
  transfer: "transfer bank_transfer e_transfer etransfer xfer",
  app: "app phone_app payment_app pay_app banking_app mobile_pay",
});
