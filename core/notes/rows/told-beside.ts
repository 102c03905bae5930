import type { TurnEffect } from "./afterwards.ts";
import { COMES, HOW } from "./fates.ts";
import { LAMENTED, NOBODY } from "./laments.ts";
import { rowsOf } from "./row.ts";

const ERRAND =
  "picking|dropping|hauling|running|looking|hunting|chasing|driving|checking|scouting|shopping|scouring|grabbing|fetching|delivering|moving|carting|sourcing|junking|thrifting|hitting|visiting|collecting|lugging|browsing|going|bouncing|getting|taking|returning|schlepping|doing|making";
const WARES =
  "stuff|things|junk|errands|errand|furniture|sales|sale|yard_sales|garage_sales|estate_sales|estate_sale|thrift_stores|thrift_shops|flea_markets|auctions|stores|store|hardware_store|pieces|loads|supplies|deliveries|delivery|deals|town|curbs|everything|pickups|drop_offs|runs|rounds|finds|trash|the_dump|orders";
const GIVES =
  "<~retire>|throwing|getting_rid_of|putting|leaving|giving|tossing|pitching|chucking|dumping|ditching|trashing|setting|donating|clearing_out|cleaning_out|unloading|about_to_toss|about_to_throw|going_to_throw|gonna_throw|gonna_toss|going_to_toss|fixing_to_throw|fixing_to_toss|ready_to_toss|ready_to_throw";
const TAKES =
  "took|got|grabbed|snagged|nabbed|scooped|scored|brought|hauled|saved|rescued|claimed|picked|asked_for|carried|loaded|had|ended_up_with|brought_home|took_home|hauled_home|gave|handed|let";
const WHO =
  "someone|somebody|they|he|she|people|this|some|<art>|<person>|<kin>|<new>|<place>|school|church|office|hotel|work|landlord|folks|tenants|students|couple";
const ALONG = "so|and|,|then|but|-|.*";

/** One of us brings a piece to somebody. */
const BROUGHT = "<ours>|<kin>|i|we delivered|dropped|dropped_off|took|brought|hauled|ran|handed|handed_over";

/** What comes in for it there. */
const TOOK_IN =
  "collected|got|took_in|came_home_with|came_back_with|brought_back|brought_home|brought_me_back|brought_me|brought_us|was_paid|got_paid";

/** What is told beside a note and is none of it: errands of a drive, who was rid of what we took, whom it was told, which piece still waits. */
export const TOLD_BESIDE = rowsOf<TurnEffect>({
  "word: foam 16, should be enough for the ottoman":
    "<supply> … [should|ought_to|will|itll|theyll|that_will|thatll|must do|cover|be_enough|be_plenty|suffice|be_fine for?] <art>? <piece>",
  "word: casters 12, going on the ottoman":
    "<supply> … [going|to_go|meant|destined|headed|bound] on|onto|for|in <art>? <piece>",
  "word: steel wool 6, rust on the bench legs":
    "<supply> $ [,|-|: some|lots_of|a_lot_of|bad|heavy|surface? rust|rusty|rot|mildew|grime|splinters|woodworm on|in|at] <art>? <piece>",
  "word: drove 41 miles today picking stuff up": `<miles> … [${ERRAND} up|off|out|around|round|over|at|for|to|through|all|by|some|a|the|my|our|old|few|bunch|of* ${WARES} up|off|around|out|away|back|home|all_over|all_day|all_morning|around_town|in_town|today*] ;`,
  "word: someone was throwing out a desk, grabbed it": `^ so|well|yeah|and|hey|ok|okay* [${WHO} <word>? <word>? <word>? <word>? was|were|is|are|were_just ${GIVES} out|away|off|up?] <art>? <piece> … <~buy>|${TAKES}`,
  "word: somebody put a dresser out and i grabbed it": `^ so|well|yeah|and|hey|ok|okay* [${WHO} <word>? <word>? <word>? put|put_a|put_the|left|set|threw|tossed|stuck|dumped] <art>? <piece> out|by|on|at|away|near|next … <~buy>|${TAKES}`,
  "bought: she was tossing a mirror so i took it for free": `was|were|is|are|put|put_a|left|set|threw|tossed|stuck|dumped … <piece> … [${ALONG} i|we? just|went|simply|asked_and* ${TAKES} it|them|that_one|those|that|em up|home|in|away|off|for_myself*] ,|-|it|was|all* free|for_free|for_nothing|no_charge|at_no_charge|for_no_money`,
  "bought: my buddy was getting rid of a desk and he gave it to me for free": `was|were|is|are … <piece> … [${ALONG} he|she|they|<person>|<new>|who just|then* gave|handed|let|offered it|them|to|me|us|have|take*] free|for_free|for_nothing|no_charge|at_no_charge|for_no_money`,
  "word: 2 hours on the desk, he fixed the door":
    "<time> … [,|-|.|;|and|so|then* <art>|our|his|her? he|she|they|<kin>|<ours>|<person>|<new>|i|we fixed|did|redid|rehung|hung|reglued|tightened|straightened|got|fit|replaced|patched|made|freed the|a|all|both|one|its|that|his|her* <plain>? <part>|door|doors|drawer|drawers|top|legs|leg|hinges|knobs|seat|back back|on|off|in|to|up|down|right|again|open|shut|slide|close|work|working|closing|sliding|done|fixed|too|first|stuck|apart*] ;",
  "word: two chairs sold, 35 each, remaining two still listed":
    "<sell>|<hold> … [,|-|.|;|and|but* <art>? remaining|other|last|others #|ones|one|pair|pieces? is|are|was|were|s|still|both|all|just* listed|here|up|up_for_sale|for_sale|available|left|unsold|to_go|there|sitting_here] ;",
  "word: trashed the lamp but the desk came out great": `<~retire>|<sell>|<buy>|<~list>|<reprice>|<hold>|<finish>|<start> … <piece>|$ … [,|and|but|though|tho|while|.|;|-* <art>|other* <piece> ${COMES}|cleaned_up|polished_up|is_coming_along|coming_along ${HOW}] ,|.|;|!|and|but|so|though|-? !$`,
  "word: she gave me 110 for the desk and then asked me to lift it":
    "gave_me|gave_us|paid_me|paid_us|handed_me|handed_us|<sell> … $ for|on|cash <art>? <piece>? [,|and|then|but|.* !!$|not|deposit|discount|less|refund|money|back|lower asked|asks|wanted|made|had me|us|for|a|an|the|if|i|help|my|some|to* <any>? <any>? <any>? <any>? <any>? <any>?] ;",
  "word: back where i started": "[back|right_back|still? where i|we started|began|was|were|left_off]",
  "word: listed the desk 150 and texted my sister":
    "<list>|<finish>|<sell>|<reprice>|<hold> … [,|and|then|-|.* i|we|just|also* texted|told|called|messaged|emailed|sent|showed|phoned|facetimed|bragged_to|let my|our|the? <kin>|friend|friends|family|bestie|everybody|everyone|neighbor|neighbors|roommate know|see|a|an|the|some|about|all|pic|pics|picture|pictures|photo|photos|link|news|it|right_away|already*] ;",
  "word: sold the desk 40 and the chair i havent touched":
    "<sell>|<buy>|<work>|<finish>|<list>|<time>|$ … [,|and|but|though|.|-* <art>? <piece> i|we just|still* havent|have_not|hvnt|didnt|did_not|aint|never|hadnt even|really|quite* touched|touch|started|start|started_on|gotten_to|got_to|get_to|looked_at|begun|finished|done|sold|listed yet|at_all|though|tho|today|any*] ;",
  "word: finished the desk but i have not touched the lamp yet":
    "<sell>|<buy>|<work>|<finish>|<list>|<time>|$ … [,|and|but|though|.|-* i|we just|still* havent|have_not|hvnt|didnt|did_not|aint|never|hadnt even|really|quite* touched|touch|started|start|started_on|gotten_to|got_to|get_to|looked_at|begun|finished|done|sold|listed on? <art>? <piece> yet|at_all|though|tho|today|any*] ;",
  "word: desk reserved for ana, hutch is still available":
    "<hold>|<sell>|<finish>|<list>|reserved|$ … [,|and|but|though|.|-|&* <art>|other|others? <piece>|one|ones|rest is|are|was|s|still|just|all|both* still|here|available|up|for_sale|listed|on_the_market|unsold|there|left|open|sitting_here|sitting|not_sold|around still|here|there|for_now|in_the_garage|in_the_shop|with_me|though|tho*] ;",
  "word: finished the desk, dresser is still 190":
    "<finish>|<list>|<reprice>|<hold> … [,|and|but|though|.|-* <art>? <piece> is|are|s|just* still|stays|stay|remains|remain up|listed|there|here|at|for|on|sitting|asking* $] ;",
  "bought: my aunt sold me her sideboard for 60":
    "^ [<ours> sold me|us her|his|their|this|that*] <art>? <piece>",
  "bought: 8 for a plant stand":
    "^ so|just|only* $ [for] a|an|another|this|some <piece> !!<sell>|<list>|<hold>",
  "drove: sold the desk 140 then delivered it 9 miles":
    "[delivered|brought|hauled|ran|carried|took|dropped|transported|moved] it|them|em|<piece> over|to|out|up|down|across|off|home|round|around|by|<art>|his|her|their|my|<person>|<new>|<kin>|place|house|apartment|shop|store|town* <miles>",
  // Who brought it came home with its price.
  "word: dad dropped the desk off at their place, got 110 cash":
    "<ours>|<kin>|i|we [dropped|dropped_off|delivered] <art>? <piece> … ,|and … got|collected <art>? $ <method> !!dump|scrap|landfill",
  "word: husband dropped the dresser off at her place, she paid him 175":
    "<ours>|<kin> [dropped|dropped_off|delivered|took|brought|hauled] <art>? <piece> … ,|and he|she|they|buyer|guy|lady paid|gave|handed him|her|them|me|us? $",
  "sold: husband dropped the dresser off at her place, she paid him 175":
    "<ours>|<kin> dropped|dropped_off|delivered|took|brought|hauled <art>? <piece> … [,|and* he|she|they|buyer|guy|lady paid|gave|handed him|her|them|me|us?] <art>? $ !!dump|scrap",
  "sold: my son delivered the bookcase and collected 65 cash": `${BROUGHT} <art>? <piece> … [and|,|then|-|.* ${TOOK_IN}] <art>? $ <method>|for_it? ; !!dump|scrap|landfill`,
  "sold: my son delivered the bookcase and collected 65 cash while i was out": `${BROUGHT} <art>? <piece> … [and|,|then|-|.* ${TOOK_IN}] <art>? $ <method>|for_it? ,|.|this|today|yesterday|while !!dump|scrap|landfill`,
  "word: son dropped the bookcase off at ruths, she paid him 65":
    "<ours>|<kin> dropped|dropped_off|delivered|took|brought|hauled <art>? <piece> off|over|out* [at|to|with <new>] ,|and",
  // What nobody wants at its price, and what was only seen on a drive.
  "word: nobody wants the dresser at 180 so now it's 155": `^ so|ok|well* [${NOBODY} ${LAMENTED}] <art>? <piece>|it <grain>`,
  "word: went and looked at a credenza, 18 miles":
    "^ !!$ … [looked_at|saw|checked_out|viewed a|an|another <piece>] ,|-|and … <miles>",
  "sold: wife handed off the desk while i was working, 130 cash":
    "<ours>|<kin>|i|we [handed_off|handed_over] <art>? <piece> … ,|for|- $ <method>? ;",
  "sold: mom handed the desk over to a young couple, 110 cash":
    "[handed] <art>? <piece> over to <art>|some? <person>|<new> … ,|for|-? $ <method>?",
  "sold: ray has the cabinet now, 130": "^ [<new>|<person> has|have] <art>? <piece> now|already|as_of_today",
  "word: vanity came back she hated it, gave her 175 back":
    "<refund>|<fallthrough> … [he|she|they|buyer|lady|guy|<person>|<new> just|really|absolutely|kinda|sorta* hated|disliked|didnt_like|did_not_like|wasnt_happy_with|wasnt_crazy_about|regretted|couldnt_stand it|them|that|the_color|the_colour|the_size|the_smell|the_finish|the_style|the_look|the_height|how_it_looked|how_it_fit]",
});
