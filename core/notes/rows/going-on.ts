import { INTEREST, LAMENTED, NOBODY, SCARCE } from "./laments.ts";
import { rowsOf } from "./row.ts";
import { tableOf } from "./table.ts";

/**
 * "next": the same was done to the piece named, at that price. How a line goes on from what was said before it. Of the newest note: "again": once more as it was; "more": one more,
 * or as many as the number in brackets, with a value of its own, "paid more" only of a payment, "sold more" of a sale; "other": the same of another piece; "too": its verb
 * alone, its amount asked. Of the one piece spoken of: "listed", "at asking", "lowered", "cut", "sold", "took". The part in brackets says so, and
 * every other word has to be a value, a piece or nothing. "numbered": the part in brackets is the bare number of a piece.
 */
export type GoingOn =
  | ("again" | "next" | "more" | "paid more" | "sold more" | "other" | "too")
  | ("listed" | "lowered" | "cut" | "sold" | "took" | "at asking")
  | "numbered";

const ROWS = rowsOf<GoingOn>({
  "cut: another 10 off":
    "^ [and|then|so|now|took|knocked|dropped* another|one_more $ off|less it|that|now|today*] ;",
  "cut: 10 more off": "^ [and|then|so|now|took|knocked|dropped* $ more off|less it|that|now|today*] ;",
  "again: same again": "^ [then|oh|plus* the? same|same_thing|same_one|ditto again]",
  "again: ditto": "^ [same|same_thing|ditto] <day>|<method>? ;",
  "more: another 2 for 30": "^ [then|oh|plus* another # more? for|at?] $",
  "more: another can 14": "^ [and|then|oh|plus* another|one_more <container> for|at?] $ ;",
  "more: 2 more for 30": "^ [then|oh|plus* # more|others for|at?] $",
  "sold more: last two 70 cash":
    "^ [and|then|oh|plus|sold|just* the? last|other|remaining # ,? is|are|gone|sold|went? ,|for|at*] $",
  "more: and one more, 30":
    "^ [and|then|oh|plus* another|another_one|one_more|the_last_one|last_one ,|for|at?] $|<time>",
  "paid more: put another 75 on it":
    "^ [then|oh|plus|i|we* put|paid|sent|threw|added|gave another|an_extra $ to|on|at|toward|towards|into it|that] ;",
  "paid more: sent 40 more to it":
    "^ [then|oh|plus|i|we* put|paid|sent|threw|added|gave? $ more to|on|at|toward|towards|into? it|that? today?] ;",
  "other: same for the bench":
    "^ [then|oh|plus* the? same|same_thing|ditto again? for|with|on|to] <art>? <piece>",
  "other: ditto desk": "^ [ditto] <art>? <piece>",
  "next: and another chair, this one was 12":
    "^ [and|then|oh|plus|also*] <onemore> ,|for|at|was|is|cost|it|this|that|one* !<eachof> $ <method>? for|this|that|one|time|again* ;",
  "next: same guy also had a mirror, 12":
    "^ [same|the_same guy|lady|seller|place|sale|house|people|trip also? had|was_selling|sold_me|also_had] <art>? <piece> ,|for|at|was* $ <method>? ;",
  "next: plus a footstool off the same table for 3":
    "^ and|plus|also|then* <art>? <piece> [from|off|at|on the? same|that? place|sale|guy|lady|man|woman|seller|house|stall|booth|spot|pile|trip|<piece>] ,|for|at|was* $ <method>? ;",
  "next: next stop wardrobe 60":
    "^ [and|then|at|the|another|next|last* stop|house|place] ,|:? <art>? <piece> ,|for|at|was* $ <method>? ;",
  "next: plus a wardrobe 60 there":
    "^ and|plus|also|then|oh* <art>? <piece> ,|for|at|was* $ <method>? [there|from_them|from_her|from_him|from_there too|as_well|also?] ;",
  "next: and a mirror for 10":
    "^ [and|plus|also|then] <art>? <piece> ,|for|at|was* $ <method>? ,? same|the_same? place|sale|guy|seller|lady|spot|trip? ;",
  "too: and the desk too": "^ <art>? <piece> [too|as_well|also] ;",
  "too: again today": "^ [again|once_more today?] ;",
  "listed: relisted at 195": "^ [relisted|reposted|re_listed|listed_again it? for|at?] $ ;",
  "listed: its on flipspot now, 120":
    "^ [its|it_is|theyre on|up_on|live_on <new> now|already|finally? ,|for|at*] $ ;",
  "listed: put it on flipspot 95": "^ [put|threw|stuck|posted|got it|them|both on|up_on <new> ,|for|at*] $ ;",
  "listed: put them on flipspot 95 for the pair":
    "^ [put|threw|stuck|posted|got it|them|both on|up_on|up <new>? ,|for|at*] $ for the pair|two|both|set ;",
  "listed: asking 120 for it": "^ [asking] $ for|on? it|them|that? now|today? ;",
  "sold: they both went, 90":
    "^ [they|both|it|that_one|this_one both|all? finally|just|already? went|sold|left ,|for|at*] $ <method>? ;",
  "sold: they both went, 90 for the two":
    "^ [they|both|it|that_one|this_one both|all? finally|just|already? went|sold|left ,|for|at*] $ for the two|pair|both|lot|set ;",
  "lowered: now 200":
    "^ so|and|but* [its|it_is|price_is? now|now_at|down_to|dropped_to|lowered_to|cut_to|reduced_to|marked_down_to] $ ;",
  "lowered: no bites in a week so down to 185": `^ [so|and|but|still? ${SCARCE}? ${INTEREST} yet|still|so_far|at_all|in|for|all|over? <art>? <span>|week|weeks|month? ,|.|so|:* now? its|it_is|price_is? now|now_at|at|down_to|dropped_to|lowered_to|went_to|went_down_to|coming_down_to|trying|trying_at?] $ now? ;`,
  "lowered: nobody wants it so now its 210": `^ [${NOBODY} is|was|has|ever|even|really* ${LAMENTED} about|at|on|for* it|them|this|that? anymore|yet|at_all? ,|so|:* now? its|it_is|price_is? now|now_at|at|down_to|dropped_to|lowered_to?] $ now? ;`,
  "lowered: went down to 85 on it":
    "^ [so|and|but|i|we|had_to|just|finally* went|came|gone|dropped|knocked|brought|marked|took|cut|moved|lowered|reduced it|that|this|them|the_price|price|one* down_to] $ on|for? it|that|this|this_one|that_one|them? now? ;",
  "lowered: down to 85 on it now":
    "^ [so|and|but? down_to|dropped_to] $ on|for it|that|this|this_one|that_one|them now? ;",
  "lowered: 85 now": "^ $ [now] ;",
  "sold: 200 and its gone": "^ $ <method>? [,? and? its|it_is gone|sold] ;",
  "sold: they went together, 110 even":
    "^ [they|both|it|that_one|this_one|the_pair|the_set both|all? finally|just|already? went|sold|left together|as_a_pair|as_a_set|as_a_lot|in_one_go ,|for|at*] $ <method>? even|total|altogether? ;",
  "lowered: back up to 180": "^ [its|it_is? back|up|back_up|up_again to|at] $ ;",
  "lowered: it's 65 now": "^ so|and|but* its|it_is|theyre|price_is at|for? $ [now] ;",
  "lowered: now its 210": "^ so|and|but* [now its|it_is|theyre|price_is at|for|down_to?] $ ;",
  "sold: gone! 90":
    "^ [its|it_is|thats|this_ones|this_one_is|that_ones|that_one_is|finally|and? gone ,|!|.|for|at*] $ <method>? ;",
  "took: took 200": "^ [they|he|she|i|we? took] $ ;",
  "at asking: full price, cash":
    "^ [at|for|got* full_price|asking_price|list_price|full_ask|full_asking|asking ,? <method>?] ;",
  "numbered: 1 done": "^ [#] is|all* done|finished|started ;",
  "numbered: 30 min on 2": "<time> <labor>? on|for [#] ;",
});

export const goingOn = tableOf(ROWS);
