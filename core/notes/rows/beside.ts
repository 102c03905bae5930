import { AT_HOME, PRIVATE_PLACE } from "./elsewhere.ts";
import type { OwnerEffect } from "./hands.ts";
import { rowsOf } from "./row.ts";

/** Behind a piece: somebody who is known by it. */
export const FOLK =
  "lady|ladies|guy|guys|man|woman|couple|person|people|dude|girl|kid|buyer|customer|client|collector|dealer|shopper";

/** On the way somewhere, where nobody buys. */
const UNDERWAY =
  "on_her_way|on_his_way|on_their_way|on_the_way|on_my_way|on_our_way|walking|driving|biking|riding|cycling|coming|heading|jogging";
const BOUND_FOR = `${PRIVATE_PLACE}|bus|train|errands|office|shift|run|jog`;

/** What stands beside a piece: which it was not, streets and spots, who is told by it, what a stream costs, how it was paid. */
export const BESIDE = rowsOf<OwnerEffect>({
  "underway: husband picked up a dresser for 30 on his way home from work": `$|<place>|<piece>|<person>|off [${UNDERWAY} home|back* from|to|after <art>|his|her|their? ${BOUND_FOR}]`,
  "underway: paid 9 for gas on the way": `<supply> … [${UNDERWAY} home|back|there|over*] ;`,
  "underway: on the way back got sandpaper 7": `^ [${UNDERWAY} home|back|there|over* ,?] i|we|got|picked_up|bought|grabbed|paid|stopped|spent|<supply>`,
  "underway: dad grabbed a bookcase for 25 on his way home": `$|<place>|<piece>|<person>|off [${UNDERWAY} home|back] ;`,
  "underway: got a hutch 45 off a lady moving out":
    "from|off|off_of|to <art>? <trait>|<opinion>|<plain>* <person>|<new> [moving|relocating|downsizing|clearing|emptying out|house|away|abroad|overseas|across|cross_country|interstate|home|town|his|her|their|the|attic|garage|basement*] !to",
  "underway: sent 200 to the loan while dinner burned":
    "$|loan [while|as|when <art>? dinner|supper|lunch|breakfast|coffee|toast|laundry|pasta|rice|soup|food <any> <any>? lol?] ;",
  "underway: got two stools at the thrift store on my lunch break, 24 for the pair":
    "$|<place>|<piece>|<person>|<supply>|loan [on|during|over my|our|his|her|their lunch|lunch_break|lunch_hour|break|coffee_break|smoke_break|tea_break|route|bus_route|mail_route|shift|rounds|commute|morning_walk|dog_walk|morning_run|day_off|days_off]",
  "underway: sent 150 to the loan on tea break":
    "$|<place>|<piece>|<person>|<supply>|loan [on|during lunch_break|coffee_break|smoke_break|tea_break|dinner_break]",
  "underway: son found a stool on the walk home from class, free": `<~buy> … [on his|her|their|the|my|our walk|drive|ride|run|trip home|back* from|to|after? <art>? ${BOUND_FOR}?]`,
  "word: i decided to keep the bench for our hallway": `keep|keeping|kept|keeps … <piece> [for|in the|my|our|her|his|their ${AT_HOME}|office|room|place]`,
  // Which pieces it was not, where our own stand, what was fetched.
  "word: sold desk 140 not the chair":
    "<piece> … [,|but? without|minus|but_not|not|except|excluding|and_not|no <art>? <piece>]",
  "word: fabric 38 for the chairs and not for the rocker":
    "for|on|of <art>? <piece> [,|and|but* not|rather_than|instead_of for|on|of? <art>? <piece>]",
  "word: sold desk out of the truck 140": "<sell> … [off|out|out_of|from of? <art>? <ownspot>] !loan|<new>",
  "word: 19 miles dropping off the armoire":
    "<miles> [dropping_off|delivering|hauling|returning|picking_up|fetching|taking|bringing|getting|moving|to_drop_off|to_deliver|to_haul] <art>? <trait>* <piece>",
  "word: tolls 6.50 getting hutch":
    "<supply> $? [getting|fetching|grabbing|hauling|picking_up|pickup_of|delivering|dropping_off|returning|moving|to_get|to_fetch|to_grab|to_pick_up|to_haul|to_deliver|to_move|going_to_get|driving_to_get] <art>? <piece>",
  "word: sold desk 140 off 5th street":
    "[on|off|at|near|from|by|down|across|over|around|to? <art>? <rank> st|street|ave|avenue|av|rd|road|dr|drive|ln|lane|blvd|boulevard|ct|court|pl|place|hwy|highway|pkwy|terrace|circle|way]",
  "word: sold desk 140 on 5th and main":
    "[on|off|at|near|from|by|down|over <rank> and|& <rank>|<new>|<trait>]",
  "word: sold desk 140 on elm street":
    "[on|off|at|near|by|down <art>? <new> st|street|ave|avenue|av|rd|road|dr|drive|ln|lane|blvd|boulevard|ct|court|pl|place|hwy|highway|pkwy|terrace|circle|way]",
  "buyer: sold mom the desk 140": "<sell> <art>? [<kin>|<person>] <art> <piece>",
  "word: bought dresser 40 yard sale on elm":
    "<place> [on|off|near|down|over_on|out_on|up_on|in <art>? <new> <new>?]",
  // Somebody told by a piece, or by what they did.
  "name: sold all 6 dining chairs for 210 to the wine bar": `<sell> … <piece> … to the|a|an|our|that [<word>? !and|&|plus|then|with|<verb> <word>? <piece>] !${FOLK}|in|from|at|near|by`,
  "left: refunded 10 to the desk lady": `<refund> $? back? to <art>? [<piece> ${FOLK}] !!<piece>`,
  "left: gave the desk lady 10 back": `gave|handed|sent|paid <art>? [<piece> ${FOLK}] $ back !!<piece>`,
  "name: sold desk to the dresser lady 60": `to|for|from|with <art>? [<piece> ${FOLK}]`,
  "word: refunded 18 to the woman who bought the chair":
    "<refund> … <person> [who|that bought|got|took|has|purchased|ordered] <art>? <piece>",
  "word: girl who wanted the vanity got cold feet":
    "^ so|well|and|ok* <art>? <person> [who|that wanted|was_buying|was_getting|was_after|had|reserved|put_money_on|was_holding] <art>? <piece>",
  "word: lamp sold 40, she wrote me a check":
    ", [she|he|they|who wrote|handed|gave|cut me|us? a|an|the?] <method>",
  "name: sold dresser to the guy who bought the desk 60":
    "<person> [who|that|with|whod <word>? <art>? <piece>]",
  // What a stream costs is no income.
  "cost: workshop ticket 50":
    "[<stream> cost|costs|order|ticket|tickets|art|supplies|fee|fees|signup|registration|materials|booth|table] <art>? $",
  "supply: bought a length of oak for the desk lid, 38":
    "^ <~buy>|got|grabbed|cut|paid|spent? $|for|on* <art>? some|two|three|four|#? [length|lengths|board|boards|plank|planks|strip|strips|sheet|scrap|bit|offcut? of? oak|pine|poplar|walnut|maple|cherry|birch|cedar|mahogany|beech|ash] for !$",
  "cost: the dump charged me 12":
    "^ <art>? [dump|landfill|transfer_station|recycling_center|junkyard] charged|charges|hit|dinged me|us? for_it? $",
  "cost: ads cost me 20": "^ <art>? [<stream>] cost_me|cost_us $",
  "cost: signed up for workshop 120": "[signed_up|registered|enrolled for|in|to <art>? <word>? <stream>]",
  "cost: bought ads for the booth 30": "bought|ordered|paid_for|buying|took <art>? [<stream>]",
  "word: pulled the sectional off the curb w my brother, free":
    "^ [pulled|dragged|hauled|rescued|saved] <art>? <trait>|<opinion>* <piece> off|from|out_of <art>? curb|alley|dumpster|trash|roadside",
  "cost: bought him a burger 11.50":
    "bought|got|grabbed him|her|them|everybody|everyone|us <art>? [!<piece>|for|at <word>] $",
  "name: bunk bed sold to a mom of three, 155": "to|for <art>? [mom|dad|grandma|couple|family of #]",
  "word: had to give nell 20 back on the dresser":
    "^ had_to|have_to|gotta|i|we* give|hand|send [<new>|<person>|<kin>] $ back",
  // The way of paying, and what only looks like it.
  "word: sold dresser 60 by phone":
    "[by accident|text|phone|hand|lunch|dinner|noon|email|mail|surprise|myself|itself|chance|luck|weight|appointment|then|now|far|end_of_day|eod]",
  "word: sold desk 90 by porch pickup":
    "[by|via|thru|through <word>? pickup|pick_up|delivery|dropoff|drop_off|courier|shipping|mail]",
  // How a cost was paid, told behind it.
  "word: stain 9 on the business card":
    "on|with|using|used|to|by|via|through <art>? [business|company|shop|work|joint|personal|household] card|debit|credit !for|<supply>",
  "word: paint for dresser 31.20, used the card":
    "[,|-|and? used|using|with? my|the|a|our business|company|shop|work|joint|personal?] <method>",
  "word: paint 12, put it on the card":
    "$|<piece>|<supply> … [,|-|.|;|and|so* i|we|just|all|had_to|also* put|putting|charged|stuck|threw|ran it|that|this|them|those|these|all|everything|both* on|to|through|onto my|the|our?] business|company|work? <method>",
  "by card: paint 12, charged it":
    "<supply>|$ … [,|-|.|;|and|so* i|we|just|all* charged it|that|this|them|those|everything] ;",
  "by check: paint 12, wrote a check":
    "<supply>|$ … [,|-|.|;|and|so* i|we|just|had_to* wrote_a_check] for_it|them? ;",
  "word: paint 12, i paid cash for it":
    "<supply>|$ … [,|-|.|;|and|so* i|we|just* paid|payed|used with|in|by?] <method> for? it|that|them|those|everything? ;",
  "word: paint 12, paid cash for it":
    "<supply>|$ … ,|-|.|;|and|so* i|we|just* paid|payed|used with|in|by? <method> [for it|that|them|those|everything] ;",
  "word: sold desk 60 gift card": "[gift|business|library|report|get_well|thank_you|birthday card]",
  "word: sold desk 140 no cash": "[no|not|without cash|card|check|transfer]",
  // "got" that only says that it is so.
  "word: got the desk all done":
    "[got|have|had] <art>? <piece> totally|completely|fully|finally* <~finish>|ready !$|for|at",
  "word: got the desk done at last":
    "[got|have|had] <art>? <piece> totally|completely|fully|finally* <~finish>|ready at_last|at_long_last",
  "word: got the desk and the bench done":
    "[got|have|had] the|my|our|both? <piece> ,|and|&|plus the|my|our|a? <piece> totally|completely|fully|finally* <~finish>|ready !$|for|at",
  "word: got the desk, the bench and a stool done":
    "[got|have|had] the|my|our|both? <piece> ,|and|& the|my|our? <piece> ,? and|&|plus the|my|our|a? <piece> totally|completely|fully|finally* <~finish>|ready !$|for|at",
});
