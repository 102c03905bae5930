import type { OwnerEffect } from "./hands.ts";
import { INTEREST, SCARCE } from "./laments.ts";
import { rowsOf } from "./row.ts";

/** How a piece turned out. */
export const COMES = "came_out|came_up|came_along|came_together|turned_out";
export const HOW =
  "so|really|very|pretty|super|absolutely|just|too|all|surprisingly|quite* <word> <word>? <word>?";

/** What became of a piece beside a sale: a deal fell through, it is done, nobody wants it, it stays with us, is given away or broke. */
export const FATES = rowsOf<OwnerEffect>({
  "word: gave away the stool, bench came out lovely, finished": `<piece> [${COMES} ${HOW} ,|and|-|so|its|is|now*] <~finish>`,
  "word: sale of the vanity fell thru":
    "[sale|deal|hold of|on|for <art>?] <piece> … fell_through|fell_thru|cancelled|canceled",
  "asked: sold dining set minus 1 chair 180":
    "<ofset>|<several> … [,|but? without|minus|but_not|except|excluding|no <piece>]",
  "word: the buffet is stained sealed and ready, calling it done":
    "!!<time> [is|are|all* <labor> <labor>|<done>|,|up|over* and|&|,] <~finish> ,|-|;",
  "word: nightstands cleaned up and done, 45 min":
    "[is|are|all* <labor> <labor>|<done>|,|up|over* and|&|,] <~finish> ,|- took|took_me? <time> ;",
  "word: mom says it sold, 75":
    "^ [<art>? <kin> says|said|texted|told_me|tells_me|called that?] it|the|<piece>",
  "word: no bites on the hutch so i cut it to 190": `^ [still? ${SCARCE}? ${INTEREST} yet|at_all? on|for|about|with <art>?] <piece> !!<piece>|<supply>|<time>|<miles>|<sell>|<buy>|<~buy> ,|so|and|-|.|;* … $`,
  "word: hutch isnt moving so down to 190": `^ <art>? <piece> [,|is|was|just|still|has|had|got|gets|getting|been* isnt|aint|not|wasnt|hasnt|wont|never|doesnt|didnt|${SCARCE} moving|moved|selling|sell|budging|budge|sold|gone|move|going_anywhere|getting|gotten|had|seem_to_sell|${INTEREST} any|much|many|a|no? ${INTEREST}? yet|at_all|fast|so_far|lately|all_week|this_week? so|,|.|;|and|-] !!<piece>|<supply>|<time>|<miles>|<sell>|<buy>|<~buy> … $`,
  "word: threw the desk money, 120, at the loan":
    "^ threw|put|sent|rolled|paid [<art>|my|our? <piece>? profit|profits|money|cash|proceeds|sale|sales] ,? $ … loan",
  "word: wife wants the hutch so its ours now":
    "^ [<art>? <kin> wants|wanted|loves|loved|claimed|likes|liked|fell_in_love_with] <art>? <piece> so|,|and|-|;* its|it_is|were|we_are|im|i_am|theyre|is? ours|staying|keeping|not_for_sale|not_selling|hers|his",
  "gifted: lamp went to the church rummage sale, no charge":
    "^ <art>? <piece> [went_to|gone_to|to|off_to <art>? <word>* ,|-? no_charge|for_free|free|for_nothing|as_a_donation|as_a_gift|free_of_charge] ;",
  "gifted: bought chair 20 and gave it away":
    "<~buy> … <piece> … [,|and|then|so|but|.|&* i|we|just|later|straight_away|right_away* gave|gifted|handed|passed it|them|that|that_one|both|those|all? away|off|on|over|down|straight|right* to|away <art>? <kin>|<person>|<new>|<place>|neighbor|friend|church|shelter|charity?] ;",
  // "sold the lamp 20 and gave the bench to the church": no part of the sale.
  "gifted: sold the lamp for 20 and gave the bench to the church":
    "<verb> … ,|;|and|then|so|.|but|plus|& i|we|also|just* [gave|handed|gifted|passed] my|our|<art>? <piece> away|to|down_to|on_to|over_to|along_to !!$",
  "scrapped: sold the lamp 20 then took the bench to the dump":
    "<verb> … ,|and|then|so|.|but|plus|& i|we|also|just* [took|hauled|carried|brought|drove|dragged|dropped|ran|lugged|dumped] my|our|<art>? <piece> off|out|away|over? to|at|to_the|at_the|off_at_the <art>? dump|landfill|tip|trash|curb|dumpster|transfer_station|scrapyard|scrap_yard|junkyard|burn_pile !!$",
  "gifted: handed the lamp down to my nephew":
    "^ i|we|just? [handed|passed] <art>? <piece> down|on|along|over to",
  "word: lamp fell off the bench and smashed, its garbage now":
    "smashed|shattered|<retire> … [,|-|so|and|.* its|it_is|theyre|is garbage|trash|junk|toast|done_for|a_goner|kindling|history|firewood|in_pieces|in_the_trash|in_the_dumpster now?] ;",
  "word: wife says were keeping the hutch":
    "^ [<kin> says|said|insists|decided|agrees that|so?] were|we|weve|we_are keeping|keep|kept",
  "word: 19 miles dropping the desk off at danas":
    "<miles> [dropping|taking|running|hauling|bringing|delivering] <art>? <piece> off|over|up|down|back|out",
  "word: 21 miles taking the lamp over to danas":
    "<miles> dropping|taking|running|hauling|bringing|delivering <art>? <piece> [off|over|up|down|back|out at|to|with? <art>|my? <new>|<person>|<kin>?] ;",
  "word: gifted nell the nightstands": "gifted <art>? [<new>|<kin>|<person>] <art>|both|all? <piece> !$",
  "word: sold the desk, let it go for 140":
    "<sell> <art>? <piece> [,|-|and i|we? let|letting it|her|him|them|that go for|at] $",
});
