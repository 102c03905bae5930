import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";

const COUPON = "coupon|discount|rebate|voucher";

/**
 * The amount of the newest note was so much "more" or "less"; the part in brackets is the whole line. "half": that much
 * of it was for the piece behind it.
 */
const ROWS: readonly Row<"more" | "less" | "half">[] = [
  [
    "^ [half of? that|thats|those|it|its|the|them|this <supply>? is|was|were|went|goes|go? for|on|to|with] <art>? <piece> ;",
    "half",
    "half of that was for the stool",
  ],
  ["^ [add $ to|on that|it|the_price|the_total] ;", "more", "add 5 to that"],
  ["^ [add|plus|and the? $ for|in? the? tax|sales_tax] ;", "more", "plus 2 tax"],
  ["^ [add $ tax to|on that|it] ;", "more", "add 2.50 tax to it"],
  ["^ [it_was|that_was? $ more_than that|it|i_said] ;", "more", "5 more than that"],
  ["^ [it_was|that_was $ more] ;", "more", "it was 5 more"],
  ["^ [it_was|that_was? $ less_than that|it|i_said] ;", "less", "2 less than that"],
  ["^ [it_was|that_was $ less] ;", "less", "it was 5 less"],
  [`^ [minus|less the|a|my? $ for|with|from? a|the|my? ${COUPON}] ;`, "less", "minus the 5 coupon"],
  [`^ [$ off|less with|from|for a|the|my? ${COUPON}] ;`, "less", "5 off with the coupon"],
];

export const amounts = tableOf(ROWS);
