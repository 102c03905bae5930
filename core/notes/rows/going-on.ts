import { INTEREST, LAMENTED, NOBODY, SCARCE } from "./laments.ts";
import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";

/**
 * "next": the same was done to the piece named, at that price. How a line goes on from what was said before it. Of the newest note: "again": once more as it was; "more": one more,
 * or as many as the number in brackets, with a value of its own, "paid more" only of a payment, "sold more" of a sale, "the other" of a sale or a listing; "other": the same of another piece; "too": its verb
 * alone, its amount asked. Of the one piece spoken of: "listed", "at asking", "lowered", "sold", "took". The part in brackets says so, and
 * every other word has to be a value, a piece or nothing. "numbered": the part in brackets is the bare number of a piece.
 */
export type GoingOn =
  | ("again" | "next" | "more" | "paid more" | "sold more" | "the other" | "other" | "too")
  | ("listed" | "lowered" | "sold" | "took" | "at asking")
  | "numbered";

const ROWS: readonly Row<GoingOn>[] = [
  ["^ [then|oh|plus* the? same|same_thing|same_one|ditto again]", "again", "same again"],
  ["^ [same|same_thing|ditto] ;", "again", "ditto"],
  ["^ [same|same_thing|ditto] <day>|<method> ;", "again", "same yesterday"],
  ["^ [then|oh|plus* another # more? for|at?] $", "more", "another 2 for 30"],
  ["^ [and|then|oh|plus* another|one_more <container> for|at?] $ ;", "more", "another can 14"],
  ["^ [and|then|oh|plus* the other one? ,|for|at?] $ <method>? ;", "the other", "and the other 20"],
  ["^ [then|oh|plus* # more|others for|at?] $", "more", "2 more for 30"],
  [
    "^ [and|then|oh|plus|sold|just* another|another_one|one_more|the_last_one|last_one ,? is|just* gone|sold|went ,|for|at*] $",
    "sold more",
    "another one gone, 28 this time",
  ],
  [
    "^ [and|then|oh|plus|sold|just* the? last|other|remaining # ,? is|are|gone|sold|went? ,|for|at*] $",
    "sold more",
    "last two 70 cash",
  ],
  [
    "^ [and|then|oh|plus|sold|just* another|another_one|one_more|the_last_one|last_one ,? for|at? the? same price|money|amount]",
    "again",
    "sold another, same price",
  ],
  [
    "^ [and|then|oh|plus* another|one_more <container>? of? <supply> ,? for|at? the? same price|money|amount|again]",
    "again",
    "another can of wax, same price",
  ],
  [
    "^ [and|then|oh|plus* another|another_one|one_more|the_last_one|last_one ,] $|<time>",
    "more",
    "and one more, 30",
  ],
  [
    "^ [then|oh|plus* another|another_one|one_more|the_last_one|last_one for|at?] $|<time>",
    "more",
    "another one 30",
  ],
  [
    "^ [then|oh|plus|i|we* put|paid|sent|threw|added|gave another|an_extra $ to|on|at|toward|towards|into it|that] ;",
    "paid more",
    "put another 75 on it",
  ],
  [
    "^ [then|oh|plus|i|we* put|paid|sent|threw|added|gave? $ more to|on|at|toward|towards|into? it|that?] ;",
    "paid more",
    "sent 40 more to it",
  ],
  [
    "^ [then|oh|plus* the? same|same_thing|ditto again? for|with|on|to] <art>? <piece>",
    "other",
    "same for the bench",
  ],
  ["^ [ditto] <art>? <piece>", "other", "ditto desk"],
  [
    "^ [and|then|oh|plus|also*] <onemore> ,|for|at|was|is|cost|it|this|that|one* !<eachof> $ <method>? for|this|that|one|time|again* ;",
    "next",
    "and another chair, this one was 12",
  ],
  [
    "^ [same|the_same guy|lady|seller|place|sale|house|people|trip also? had|was_selling|sold_me|also_had] <art>? <piece> ,|for|at|was* $ <method>? ;",
    "next",
    "same guy also had a mirror, 12",
  ],
  [
    "^ and|plus|also|then* <art>? <piece> [from|off|at|on the? same|that? place|sale|guy|lady|man|woman|seller|house|stall|booth|spot|pile|trip|<piece>] ,|for|at|was* $ <method>? ;",
    "next",
    "plus a footstool off the same table for 3",
  ],
  [
    "^ [and|plus|also|then] <art>? <piece> ,|for|at|was* $ <method>? ,? same|the_same? place|sale|guy|seller|lady|spot|trip? ;",
    "next",
    "and a mirror for 10",
  ],
  ["^ <art>? <piece> [too|as_well|also] ;", "too", "and the desk too"],
  ["^ [again|once_more today?] ;", "too", "again today"],
  ["^ [relisted|reposted|re_listed|listed_again it? for|at?] $ ;", "listed", "relisted at 195"],
  [
    "^ [its|it_is|theyre|they_are|both|both_are? up|posted|online|live|on now? ,|for|at*] $ ;",
    "listed",
    "both online now, 220",
  ],
  [
    "^ [its|it_is|theyre on|up_on|live_on <new> now|already|finally? ,|for|at*] $ ;",
    "listed",
    "its on flipspot now, 120",
  ],
  [
    "^ [put|threw|stuck|posted|got it|them|both on|up_on <new> ,|for|at*] $ ;",
    "listed",
    "put it on flipspot 95",
  ],
  [
    "^ [put|threw|stuck|posted|got it|them|both on|up_on|up <new>? ,|for|at*] $ for the pair|two|both|set ;",
    "listed",
    "put them on flipspot 95 for the pair",
  ],
  ["^ [asking] $ for|on? it|them|that? now|today? ;", "listed", "asking 120 for it"],
  [
    "^ [they|both|it|that_one|this_one both|all? finally|just|already? went|sold|left ,|for|at*] $ <method>? ;",
    "sold",
    "they both went, 90",
  ],
  [
    "^ [they|both|it|that_one|this_one both|all? finally|just|already? went|sold|left ,|for|at*] $ for the two|pair|both|lot|set ;",
    "sold",
    "they both went, 90 for the two",
  ],
  [
    "^ so|and|but* [its|it_is|price_is? now|now_at|down_to|dropped_to|lowered_to|cut_to|reduced_to|marked_down_to] $ ;",
    "lowered",
    "now 200",
  ],
  [
    `^ [so|and|but|still? ${SCARCE}? ${INTEREST} yet|still|so_far|at_all|in|for|all|over? <art>? <span>|week|weeks|month? ,|.|so|:* now? its|it_is|price_is? now|now_at|at|down_to|dropped_to|lowered_to|went_to|went_down_to|coming_down_to|trying|trying_at?] $ now? ;`,
    "lowered",
    "no bites in a week so down to 185",
  ],
  [
    `^ [${NOBODY} is|was|has|ever|even|really* ${LAMENTED} about|at|on|for* it|them|this|that? anymore|yet|at_all? ,|so|:* now? its|it_is|price_is? now|now_at|at|down_to|dropped_to|lowered_to?] $ now? ;`,
    "lowered",
    "nobody wants it so now its 210",
  ],
  [
    "^ [so|and|but|i|we|had_to|just|finally* went|came|gone|dropped|knocked|brought|marked|took|cut|moved|lowered|reduced it|that|this|them|the_price|price|one* down_to] $ on|for? it|that|this|this_one|that_one|them? now? ;",
    "lowered",
    "went down to 85 on it",
  ],
  [
    "^ [so|and|but? down_to|dropped_to] $ on|for it|that|this|this_one|that_one|them now? ;",
    "lowered",
    "down to 85 on it now",
  ],
  ["^ $ [now] ;", "lowered", "85 now"],
  ["^ $ <method>? [,? and? its|it_is gone|sold] ;", "sold", "200 and its gone"],
  [
    "^ [they|both|it|that_one|this_one|the_pair|the_set both|all? finally|just|already? went|sold|left together|as_a_pair|as_a_set|as_a_lot|in_one_go ,|for|at*] $ <method>? even|total|altogether? ;",
    "sold",
    "they went together, 110 even",
  ],
  ["^ [its|it_is? back|up|back_up|up_again to|at] $ ;", "lowered", "back up to 180"],
  ["^ so|and|but* its|it_is|theyre|price_is at|for? $ [now] ;", "lowered", "it's 65 now"],
  ["^ so|and|but* [now its|it_is|theyre|price_is at|for|down_to?] $ ;", "lowered", "now its 210"],
  [
    "^ [its|it_is|thats|this_ones|this_one_is|that_ones|that_one_is|finally|and? gone ,|!|.|for|at*] $ <method>? ;",
    "sold",
    "gone! 90",
  ],
  ["^ [they|he|she|i|we? took] $ ;", "took", "took 200"],
  [
    "^ [at|for|got* full_price|asking_price|list_price|full_ask|full_asking|asking ,? <method>?] ;",
    "at asking",
    "full price, cash",
  ],
  ["^ [#] is|all* done|finished|started ;", "numbered", "1 done"],
  ["<time> <labor>? on|for [#] ;", "numbered", "30 min on 2"],
];

export const goingOn = tableOf(ROWS);
