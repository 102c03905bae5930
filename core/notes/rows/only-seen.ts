import type { TurnEffect } from "./afterwards.ts";
import { rowsOf } from "./row.ts";

const LOOKED =
  "spied|spotted|noticed|eyed|eyeing|eyeballed|eyeballing|ogled|ogling|considered|considering|contemplated|contemplating|debated|debating|browsed|browsing|admired|admiring|priced|pricing|compared|comparing|researched|researching|bookmarked|wishlisted|window_shopped|inspected|skipped|declined|refused|tempted|drooling|dreaming|eyes|wanting|craving|checked_out|checking_out|scoped_out|scoping_out|priced_out|pricing_out|looked_at|looking_at|looked_into|looking_into|looked_for|looking_for|hunting_for|hunted_for|shopping_for|shopped_for|thinking_about|thinking_of|thought_about|thought_of|thinking_on|mulling_over|mulled_over|walked_past|walked_by|walked_away_from|passed_on|passed_up|passing_on|put_back|left_behind|came_across|asked_about|asking_about|inquired_about|watched|watching|window_shopping_for|got_quoted|was_quoted";
const LISTS =
  "to_buy|to_get|to_order|to_pick_up|need_to_buy|need_to_get|need_to_order|have_to_buy|have_to_get|gotta_buy|gotta_get|should_buy|should_get|still_need|still_needed|need|needs|needed|want|wanted|wants|shopping|shopping_list|wish_list|wishlist|want_list|buy_list|buying_list|materials_list|supply_list|parts_list|list_to_buy|list_of_things_to_buy|things_to_get|things_to_buy|stuff_to_get|stuff_to_buy|must_buy|must_get|next_time|next_trip|in_cart|in_my_cart|in_the_cart|cart|quote|quoted|estimate|estimated|budget|budgeted";
const LINK = ",|.|-|(|but|and|so|then|though|tho|i|we|he|she|they|just|ended_up|had_to";

/** What was only seen, wished for, put back or said no to. */
export const ONLY_SEEN = rowsOf<TurnEffect>({
  // Supplies that nobody bought.
  "offer: spied paint 12": `[${LOOKED} <art>|at|on|by|up|over|some|more|new|about|of* <trait>|<new>|<plain>|<opinion>*] <supply> !!bought|got|grabbed|picked_up|ordered|paid|spent|after_all|went_with`,
  "offer: saw paint for 12":
    "[saw <art>|some|more|new* <trait>|<new>|<plain>|<opinion>*] !blade|blades|horse|horses|guide|stand|bench|bits|bit|oil|table|dust|case|set|kit|fence|track|handle|belt|bag|bags|rental|sharpening|repair|attachment|chain|teeth <supply> !!bought|got|grabbed|picked_up|ordered|paid|spent|after_all",
  "intention: need: paint 12, hinges 9": `^ [my|our|the|still* ${LISTS} :|- <any>* <any>* <any>* <any>* <any>*] ;`,
  "intention: shopping list paint 12 brushes 8":
    "^ [my|our|the|on* shopping_list|wish_list|wishlist|buy_list|to_buy|to_buy_list|things_to_buy|things_to_get|stuff_to_buy|stuff_to_get|still_to_buy|still_to_get|must_buy|in_my_cart|in_the_cart <any>* <any>* <any>* <any>* <any>*] ;",
  "offer: price of paint 12":
    "[price|prices|cost|costs|retail|sticker_price|going_rate of|for|on <art>|some|a|good|new|can|gallon|quart|box* of?] <supply> is|at|was? $",
  "offer: hinges worth 9":
    "^ <art>? <supply> [worth|valued_at|retails_for|retailing_at|listed_at|priced_at|sells_for|goes_for|normally_goes_for|usually_goes_for] $",
  "denial: no knobs 15 too dear":
    "^ [no|zero|not|never|nope_on|didnt_buy|did_not_buy|didnt_get|did_not_get|didnt_need|couldnt_find|out_of_stock <art>|any|the|more* <trait>?] <supply> $",
  "denial: hinges 9, left them": `<supply> $ [${LINK}* left|skipped|ditched|refused|declined|returned it|them|that|those|there|behind right|there|behind|back|on_the_shelf*] ;`,
  "denial: paint 20 put back": `<supply> $ [${LINK}* put|set|placed|hung it|them|that|those? right|straight? back] ;`,
  "denial: knobs 15, passed on them": `<supply> $ [${LINK}* passed|walked|walked_away|backed_out|balked|decided_against|changed_my_mind|said_no|said_nope|said_forget_it it|them|that|up|on|away|out*] ;`,
  "doubt: hinges were 9 but i had some": `<supply> … $ [but|tho|though|,|-|and|- i|we|turns_out|luckily|dad|mom* already? had|have|found|still_had|still_have|used|borrowed some|one|ones|them|it|plenty|enough|a|mine|what|leftover|leftovers|spare|spares|extra <any>* <any>*] ;`,
  "doubt: hinges 9 but they gave them to me": `<supply> … $ [but|tho|though|,|-|and|they|he|she|dad|mom|<art>|<place>|<person>|<new>|just* gave|gifted|comped|let it|them|that|those|me|us* to|have* me|us|them|it|for_free|free|for_nothing|on_the_house*] ;`,
  "doubt: paint by 12": "<supply> [by|noon|midnight|oclock #] ;",
  "doubt: paint 12 noon": "<supply> [# noon|midnight|oclock] ;",
  "intention: bought chair 20 and paint 12 still to get":
    "<supply> $ [still_to|yet_to|left_to|need_to|needs_to|still_need_to|have_to|still_have_to|gotta|still_gotta|want_to|going_to|gonna get|buy|come|order|pick_up|find|grab|fetch|pay]",
  // Pieces that nobody bought.
  "offer: got eyes on a chair 40":
    "[got|had|have|ive_got|has|took|caught|keeping|put <art>|my|our|some|first|good|second|quick|closer|hot|line* eye|eyes|look|peek|glimpse|glance|lead|tip|wind|sight|photo|photos|pic|pics|picture|pictures|quote|quotes|dibs|heart|heart_set|sights|view|alert|notification|ping|feelers on|at|of|about|for] <art>? <any>? <piece>",
  "offer: got talked out of a chair 40":
    "[got|was|were|getting|been talked|outbid|beat|beaten|sniped|scooped|argued|priced|haggled|cheated|scammed out_of|out|on|to|of|off*] <art>? <any>? <piece>",
  "denial: picked up chair for 20 but put it back": `<~buy> … [but|and|then|so|,|i|we|just|ended_up* put|set|hung|slid|placed it|them|that|her|him right|straight? back] !together|up|in_place|where`,
  "denial: bought a chair 20 and took it right back": `<buy> … [${LINK}* took|brought|sent|carried it|them|that right|straight back <word>*]`,
  "doubt: found a chair online 40":
    "found … <piece> … [online|on_the_internet|on_the_app|on_an_app|on_a_site]",
  "doubt: found a chair for 40, message sent": `found … <piece> … [${LINK}|ive|already* message|messaged|messages|email|emailed|text|texted|inquiry|inquired|offer|asked him|her|them|seller|the_seller|about|it|if|sent|out|in*] ;`,
  "doubt: found chair for 40 need to pick up": `found … <piece> … [${LINK}|just|still|only* need|needs|have|gotta|got|going|go|want|hope|hoping|trying|planning to? pick|pick_up|get|fetch|see|look|check|grab|collect|haul|load|message|ask|call|buy|go <any>* <any>*] ;`,
  "other: bought a seat on the bus 5":
    "[<~buy>|booked|reserved|paid_for <art>? seat|seats|bed|berth|stall|booth|table|stand|bench|chair on|at|in <art>? bus|train|plane|flight|ferry|boat|coach|subway|cab|restaurant|show|game|theater|theatre|concert|hostel|hotel|diner|stadium|cafe]",
});
