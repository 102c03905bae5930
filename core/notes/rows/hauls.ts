import type { TurnEffect } from "./afterwards.ts";
import { rowsOf } from "./row.ts";

/** Where one buys, and sells nothing. */
const SALES =
  "yard_sale|yard_sales|garage_sale|garage_sales|estate_sale|estate_sales|flea_market|flea_markets|thrift_store|thrift_stores|tag_sale|tag_sales|rummage_sale|rummage_sales|church_sale|moving_sale|barn_sale|swap_meet|auction|auctions";
const WENT =
  "hit|hit_up|went_to|made_it_to|raided|cruised|browsed|toured|stopped_at|stopped_by|swung_by|ran_to|been_to|checked_out|went_around|drove_around|made_the_rounds_of";
const SOME =
  "<art>|some|few|two|three|couple|of|all|bunch|local|neighborhood|community|big|a_couple_of|a_few";
const WHEN =
  "early|today|again|together|earlier|finally|already|first_thing|this_morning|this_afternoon|<day>|and|so|,|:|-|.|;";
const NTH = "first|second|third|fourth|fifth|next|last|other|another|final|1st|2nd|3rd|4th|one_more";
const GOT = "got|found|bought|grabbed|picked_up|scored|snagged";

/** What was found where one buys: the place says that it was bought. */
export const HAULS = rowsOf<TurnEffect>({
  "bought: hit the yard sales, a table 60 and a bench 15": `^ <art>|<kin>|and|&|i|we|me|just|ok|so* [${WENT}] ${SOME}* ${SALES} ${WHEN}* <art>? #? <piece> ,|for|at|-|:|(* $`,
  "bought: estate sale finds: a table 60": `^ <art>|my|our|todays? ${SALES} <day>? [finds|find|scores|score|treasures|loot|pickups|purchases|buys] ${WHEN}* <art>? #? <piece> ,|for|at|-|:|(* $`,
  "bought: second yard sale, 2 stools for 40": `^ [<art>|and|then|at|from|ok|so* ${NTH}] ${SALES} today|of_the_day? ,|:|-|.* <art>? #? <piece> ,|for|at|-|:|(* $`,
  "word: next yard sale, got a lamp 4": `^ [<art>|and|then|at|from|ok|so* ${NTH}] ${SALES} ,|:|-|.* i|we? ${GOT}`,
  "bought: yard sale number two: 2 stools 40": `^ ${SALES} [number|no? <numbered>] ,|:|-* <art>? #? <piece> ,|for|at|-|:|(* $`,
  "word: out with the wife this morning, bought a bench 15":
    "^ i|we|was|were|just|so* [out|out_and_about|went_out|shopping|went_shopping|thrifting|junking|picking|driving_around|running_around|running_errands with <art>|my|our|all* <kin>|<person>|kids|girls|boys|family and? <kin>?] ,|and|-|today|this_morning|this_afternoon|earlier|yesterday|<day>*",
  "word: grabbed a bench off the curb on the way to a service call, free":
    "<~buy> … <piece> … [on_the_way|on_my_way|on_our_way|on_way home|to|back|from|in|over|into|out|there !get|pick|collect|fetch|see|look|us|me <word>? <word>? <word>?] ,|$|;|.|free|no|for|-",
  "word: my husband came home with a rocking chair, says he paid 20 for it":
    "<ours>|<kin>|he|she … <piece> ,|and|-* [says|said|told_me|swears he|she|they|that|only*] paid|got $",
  "word: bought a stool 4, didn't buy the table":
    "<~buy> <art>? <piece> ,|for|at|-* $ [,|but|and|.|-* i|we? didnt|did_not|passed_on|left|skipped|passed_up buy|get|take|want|bother_with? the|that|their <piece>] ;",
  "word: customer wanted a different color so another quart 18 for the nightstand": `^ [he|she|they|buyer|<art>|<person>|<kin>* asked_for|wanted|wants|requested|prefers|changed <word>? <word>? <word>? <word>? <word>? so] i|we|had_to|${GOT}|ordered|new|<art>|another|<trait>* <supply>|<container> … $`,
  "word: bought bench 20, comes with 2 chairs":
    "<~buy> <art>? <piece> ,|for|at* $ [,|and|-|.* it|which|that* comes|came with] #|<art>? <piece> ;",
  "word: just left the estate sale on maple i got the oak desk for 60": `^ i|we|im|just|ok|so|well* [left|leaving|back_from|home_from|got_back_from|came_from|coming_from|got_home_from] <art>? ${SALES} … ${GOT}`,
  "word: mom found a cedar chest at the church sale, 35, she paid cash":
    "<~buy> … <piece> … $ [,|-|.|;|and* he|she|they paid|payed|used in|with|by?] <method> ;",
  // Why a thing was bought is no offer.
  "word: carol asked for new knobs so knobs 15 for the hutch": `^ [he|she|they|buyer|<art>|<person>|<new>|<kin>* asked_for|wanted|wants|asked_about|requested|prefers|prefered|insisted_on <art>|new|<trait>|<opinion>|<plain>|different|more* <supply>|<part> <part>? on_it|for_it|instead|too? so|,|and|-*] i|we|had_to|${GOT}|ordered|new|<art>|<trait>* <supply>|<part> … $`,
  "word: new knobs on the hutch 15, the old ones were stripped":
    "<supply> … $ … [,|-|.|;|(|cause|because|since* the|its|old|original* <oldone>|<part>|<supply> <part>? was|were|are|is|had|got|kept|looked >]",
  "bought: haggled an armoire down from 80 to 55":
    "^ i|we|<kin>|my|just* [haggled|bargained|negotiated] a|an|another|some <piece>",
  // What a seller takes, or what we bring him down to, is what we paid: the piece is any.
  "bought: offered 55 for an armoire and he took it": `^ i|we? [offered|bid|gave_him|gave_her] $ for|on a|an|another|some <piece> and|,|so|-|.* he|she|they|guy|lady|seller took|accepted|agreed|went_for it|that|the_offer|to_it? ;`,
  "word: offered 55 for an armoire and he took it": `^ i|we? offered|bid $ for|on a|an|another|some <piece> [and|,|so|-|.* he|she|they|guy|lady|seller took|accepted|agreed|went_for it|that|the_offer|to_it?] ;`,
});
