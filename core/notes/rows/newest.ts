import { BACKED_OUT } from "../words/deals.ts";
import { rowsOf } from "./row.ts";
import { tableOf } from "./table.ts";

const COUPON = "coupon|discount|rebate|voucher";
const OFF = "never_mind|nevermind|nvm|nope|no|oh|ugh|well|sorry|scratch_that|actually";

/** What was bought, or part of it, taken back to the shop. */
const WE_WHO = "just|i|we|dad|mom|also|and*";
const SOME_OF = "the|my|a|an|one|extra|wrong|spare|unused|leftover|other|half|$|of*";
const THEN = ",|and|-|for|.|;|so|i|we|they|store|shop*";
const SELLER =
  "the|my|a? he|she|they|seller|lady|guy|owner|man|woman|dude|old_man|old_lady then|also|even|just?";
const SHOP = "the? store|shop|hardware_store|they";

/**
 * What a whole line makes of the newest note, the part in brackets being all that it says beside pieces. Its amount was
 * so much "more" or "less"; "half" of it was for the piece behind it; it was for that piece "also"; it is "split" over
 * the pieces said; it was "bought", or it "went", for so much less, or of its amount so much is "owed"; what was sold is "undone", or its "buyer" was another; what is held goes for another price, as "agreed"; its amount
 * "is" the one before what it comes of.
 */
const ROWS = rowsOf<
  | ("more" | "less" | "half" | "also" | "split" | "undone" | "buyer" | "agreed" | "is" | "fee" | "priced")
  | ("bought" | "went" | "owed")
>({
  "half: half of that was for the stool":
    "^ [half of? that|thats|those|it|its|the|them|this <supply>? is|was|were|went|goes|go? for|on|to|with] <art>? <piece> ;",
  "also: used it on the vanity too":
    "^ [i|we? used|put|also? some|it|that|the_rest|rest? of? it|that? on|for|in] <art>? <piece> too|as_well|also ;",
  "also: that was for the vanity too":
    "^ [that|it|those|this was|were|is|goes|went for|on] <art>? <piece> too|as_well|also split|share|divide? it|that? half_and_half|evenly? ;",
  "split: split it between the desk and the vanity":
    "^ [split|divide|share|spread it|that|those|them|this|the? <supply>? evenly|equally|up|half_and_half|50/50? between|across|over|among|on|with|for|to]",
  "buyer: it was joe who bought it, mixed them up":
    "^ [it_was|that_was|it|that was? the|my|a? <new>|<person>|<kin> who|that bought|took|got|grabbed|purchased|picked_up it|that|them? >] ;",
  "agreed: the agreed price was 240 not 250":
    "^ [no|nope|wait|actually|sorry|oops|well|ok|and* the|our* we|he|she|they|you|both|ive? agreed|agreed_on|agreed_to|agreed_at|settled_on|settled_at price|on|to|at|was|is|for|a|of|should_be* $ total|in_total|all_in|altogether? not|instead_of? $?] ;",
  "agreed: no we said 240":
    "^ [no|nope|wait|actually|sorry|oops|well* we|i|she|he|they said $ total|in_total|all_in|altogether|for_it? not|instead_of? $?] ;",
  "is: paid 35, she took 5 off":
    "^ [paid|it_was|only|was|just? $ ,? he|she|they|seller|the|lady|guy|so|because|cause|since* took|knocked|shaved|gave|threw me|us? $|a|bit|little|some|something|the_rest* off|back|down] ;",
  "is: 125, he threw in a five":
    "^ $ ,? [he|she|they|we|i|it|but|because|cuz|cause|since|as|so* threw|tossed|chipped|kicked|rounded|forgot|left_out|missed|added in|up|down|out|it|him|her|the|a|an|another|extra|more|sales|with|$|tax|tip|change|bucks|dollars*] ;",
  "priced: ok 70": "^ [ok|okay|fine|alright|all_right|well $] ;",
  "fee: card, and the reader took 3.90":
    "^ by|paid|with|on|it|was* <method>? ,? [and|but|minus|so* the|that|my? reader|site|app|platform|processor|machine|bank|they|it took|kept|keeps|takes|charged|charges|skimmed|ate me|us? $ of_it|of_that|in_fees|for_it|off_the_top?] ;",
  "more: add 5 to that": "^ [add $ to|on that|it|the_price|the_total] ;",
  "more: plus 2 tax": "^ [add|plus|and the? $ for|in? the? tax|sales_tax] ;",
  "more: add 2.50 tax to it": "^ [add $ tax to|on that|it] ;",
  "more: 5 more than that": "^ [it_was|that_was? $ more_than that|it|i_said] ;",
  "more: it was 5 more": "^ [it_was|that_was $ more] ;",
  "less: 2 less than that": "^ [it_was|that_was? $ less_than that|it|i_said] ;",
  "less: it was 5 less": "^ [it_was|that_was $ less] ;",
  "less: returned two of the pulls, got 8.10 back": `^ [${WE_WHO} returned|took_back|brought_back ${SOME_OF} <supply> ${THEN} got|gave|refunded me|us? a? $ back|refund|refunded|credit|store_credit?] ;`,
  "less: returned one of the brackets, 3 refunded": `^ [${WE_WHO} returned|took_back|brought_back ${SOME_OF} <supply> ${THEN} $ back|refund|refunded|credit|store_credit] ;`,
  "less: brought the varnish back and they gave me 22": `^ [${WE_WHO} took|brought ${SOME_OF} <supply> back ${THEN} got|gave|refunded me|us? a? $ back|refund|refunded|credit|store_credit?] ;`,
  "less: store refunded me 9 for the wrong knobs": `^ [${SHOP} refunded me|us? $ for|on ${SOME_OF} <supply>] ;`,
  "less: the store gave me 8.20 back for two knobs": `^ [${SHOP} gave me|us? $ back for|on ${SOME_OF} <supply>] ;`,
  "less: minus the 5 coupon": `^ [minus|less the|a|my? $ for|with|from? a|the|my? ${COUPON}] ;`,
  "less: 5 off with the coupon": `^ [$ off|less with|from|for a|the|my? ${COUPON}] ;`,
  "bought: seller knocked 5 off": `^ [${SELLER} knocked|took|gave|shaved|came_down|dropped me|us|the_price|it? $ off|back|less for|because|since|it|cash* >?] ;`,
  "bought: seller knocked off 5": `^ [${SELLER} knocked|took|shaved off $ for|because|since|it|cash* >?] ;`,
  "bought: got 5 off": "^ [i|we? got|haggled|talked_off|knocked|saved $ off_it|off|off_that] ;",
  "went: it went for 20 less":
    "^ [it|that|he|she|they|but|actually|only* went_for|sold_for|went|sold|paid|was for? $ less|under|below than|what|asking|the|i|we|said|list|price|that|noted*] ;",
  "went: 20 under asking": "^ [$ under|below|less_than asking|list|the_asking_price|list_price] ;",
  "owed: she only had 120 so she owes 30":
    "^ [well|so|actually|turns_out|but|oh|and* he|she|they only had|paid|gave|brought me? $ with|on|him|her|them|so|and|but|cash|,* he|she|they|still* owe|owes me? $ still?] ;",
  "undone: never mind, she changed her mind at the door": `^ [${OFF}* the? she|he|they|buyer|guy|lady ${BACKED_OUT} at_the_door|last_minute|at_the_last_minute|after_all|again|in_the_end|on_me?] ;`,
  "undone: didn't happen, deal fell apart":
    "^ [it|that|sale|deal? didnt|did_not|never happen|happened|go_through|close ,|.|-? the|that? sale|deal|it|she|he|they fell_through|fell_apart|fell|backed_out|flaked|bailed through|apart?] ;",
  "undone: sale fell through":
    "^ [the|that|this? sale|deal fell_through|fell_apart|fell_thru|is_off|didnt_work_out|didnt_go_through|fell through|apart?] ;",
  "undone: didn't happen": `^ [${OFF}* it|that|this|sale|deal|the_sale? didnt|did_not|never happen|happened|go_through|close after_all?] ;`,
});

export const newest = tableOf(ROWS);
