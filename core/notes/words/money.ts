/* What stands around amounts. */

import { wordSet } from "./words.ts";

/** What is left of a price, before the amount. */
export const RESTS = wordSet("final last remaining remainder balance other rest");

/** What is left, with what it is left of behind it. */
export const REMAINDERS = wordSet("rest remainder remaining balance");

/** Between such a word and what it is of. */
export const BEHIND_REMAINDER = wordSet("of on for from");

/** Between such a word and the amount. */
export const BESIDE_REST = wordSet("the a of was is :");

/** Money came back for what was bought. */
export const MONEY_BACK = wordSet(
  "returned returning refund refunded rebate cashback store_credit took_back",
);

/** "balance is 9,871.14 per statement" is no price of each. */
export const ACCORDING_TO = wordSet("statement lender servicer bank receipt the");

/** Nothing was paid for it: enough to say that it was got. */
export const GOT_FREE = wordSet(
  "free freebie nothing_paid no_money_paid paid_no_money cost_nothing cost_me_nothing cost_us_nothing paid_nothing didnt_cost_a_thing didnt_cost_anything " +
    "didnt_cost_me_anything didnt_cost_me_a_thing didnt_pay_anything didnt_pay_a_thing",
);

/** Nothing was paid, for it or for what was done to it. */
export const AT_NO_COST = wordSet(
  "for_free for_nothing gratis no_charge at_no_charge without_charge no_cost at_no_cost free_of_charge without_paying",
);

export const FOR_NOTHING: ReadonlySet<string> = new Set([...GOT_FREE, ...AT_NO_COST]);

/** Fees by their names. */
export const FEES = wordSet("fee fees listing_fee listing_fees selling_fee selling_fees sale_fee sale_fees");

/** "half of 40" is not 40. */
export const PARTS_OF_IT = wordSet("part some most half bit portion chunk rest third quarter");

/** Money changed hands. */
export const PAYS = wordSet("paid pd got gave took spent");

/** Before the price of one, or of all. */
export const AT_PRICE = wordSet("at @");

/** Money was given for something new, which is told behind an article; behind the last, what that was for. */
export const PAYS_FOR = wordSet("spent dropped blew gave handed paid");
export const ANOTHER = wordSet("a an another");

/** Said of money that comes on top of as much. */
export const ONE_MORE = wordSet(
  "another one_more more again extra second also too on_top separate additional yes",
);
export const WHAT_FOR = wordSet("for to");

/** A number before these counts something other than money. */
export const COUNTED_THINGS = wordSet(
  "times people guys buyers offers messages kids year years yr yrs old in inches inch feet ft foot drawer drawers door doors shelves legs percent degrees pounds lbs blocks away am pm oclock left change min_away",
);

/** "20 less than asked" is no price. */
export const LESS = wordSet("less under over below above cheaper");

/** Verbs that say money: the number beside them is an amount. */
export const SAYS_MONEY = /^(?:spent|spend|spending|paid|pd|payed|cost|blew|charged)/;

/** Supplies without a count of their own. */
export const UNCOUNTED = wordSet(
  "supplies tools materials mineral_spirits mineral spirits chemicals odds and ends finishes",
);

/** The verbs of that, and what the shop does. */
export const GIVES_BACK = wordSet("returned took_back took brought_back brought refunded gave");

/** A thing was brought back to where it was bought. */
export const TAKEN_BACK = wordSet("returned took_back brought_back exchanged return");

/** The amount before these is what came in at once. */
export const PAID_NOW = wordSet("now down up_front upfront first");

/** Before what somebody wants for a piece. */
export const ASKS_FOR = wordSet("asking wanting");

/** What stands beside these was paid for, or earned. */
export const PAYING = wordSet(
  "paid pd pay paying gave give charged charge cost costs got made earned slipped handed parking rent rented rental price priced sold bought",
);

/** Behind an amount that is said once more: "two hundred even". */
export const SAID_AGAIN = wordSet(
  "even total flat exactly exact straight altogether all_in in_all all_told all_together to_be_exact on_the_nose even_steven",
);

/** What a sale or all sales brought in, where no figure is said. */
export const PROCEEDS = wordSet(
  "profit profits proceeds earnings takings it_all all_of_it all_of_that every_cent every_penny every_dime every_last_cent every_bit every_bit_of_it " +
    "whole_thing whole_amount whole_lot",
);

/** Parts of a sum, by so many of so many. */
export const SHARES: Readonly<Record<string, readonly [number, number]>> = {
  half: [1, 2],
  third: [1, 3],
  quarter: [1, 4],
  fourth: [1, 4],
  "two thirds": [2, 3],
  "other half": [1, 2],
};

/** "half of that", "the other half": of the sum spoken of. */
export const SHARE_OF_THAT =
  /\b(?:(half|(?:a|one)[ -](?:third|quarter|fourth)|two thirds) of (?:that|it|this|the money)|(?:the )?(other half)(?: of (?:that|it))?)\b/i;
