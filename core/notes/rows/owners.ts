import { BACKED_OUT } from "../words/deals.ts";
import { NAMES_THAT_ARE_WORDS } from "../words/people.ts";
import { BUYERS, GETS, LEAVES } from "./buyers.ts";
import { EARNINGS } from "./earnings.ts";
import { HANDS, type OwnerEffect } from "./hands.ts";
import { PARTS } from "./parts.ts";
import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";

/** Houses and trades that buy, by no name. */
const HOUSES =
  "school|church|store|shop|office|hotel|motel|inn|restaurant|bakery|cafe|bar|brewery|winery|salon|spa|studio|gallery|museum|theater|library|daycare|preschool|clinic|company|firm|farm|charity|shelter|boutique|florist|antique_shop|antique_store|dealer|dealers|local|locals|regular|collector|decorator|designer|stager|contractor|realtor";
const COMES = "came|stopped|drove|swung|dropped|showed|stopped_by|came_by|came_over|swung_by|showed_up";
/** Behind a piece: somebody who is known by it. */
const FOLK =
  "lady|ladies|guy|guys|man|woman|couple|person|people|dude|girl|kid|buyer|customer|client|collector|dealer|shopper";
const ROUND_HERE =
  "next_door|across_the_street|down_the_street|down_the_road|up_the_street|up_the_road|around_the_corner|round_the_corner|across_town|in_town|downtown|nearby";
const LENT_A_HAND =
  "helped|helps|carried|loaded|unloaded|hauled|lifted|moved|delivered|pitched_in|lent_a_hand|gave_me_a_hand";
/** What is taken, without its name. */
const THE_GOODS =
  "<art>? it|them|em|everything|all|both|rest|lot|stuff|things|whole_lot|whole_thing of? it|them|those|these? all?";
/** Behind a name. */
const NOW = "finally|just|then|also|already|actually";

/** What somebody pays us for beside a piece. */
const FOR_WORK =
  "for|to|toward|towards <art>|my|the? <supply>|<labor>|<service>|help|helping|trouble|time|loading|carrying|hauling|moving|parking|tolls";

const ROWS: readonly Row<OwnerEffect>[] = [
  [
    "^ [<art>? <kin>|<person>|<new> gave|handed me|us <art>? <supply> and|plus|+|& $ for <supply>]",
    "asked",
    "dad gave me a toolbox and 20 bucks for gas",
  ],
  [
    "^ [<art>? <opinion>|<trait>|<plain>* they|he|she|<person>|<new>|<place>] paid|gave|sent me|us $ … for|from <art>? <any>? <stream>",
    "word",
    "they paid me 90 for the class",
  ],
  [
    `^ [<art>? <kin>|<person>|<new> in_law? ${LENT_A_HAND} … i|we|so|and|,* paid|gave|slid|slipped|handed|tossed|owed him|her|them] $ !back`,
    "help",
    "my nephew helped 2 hrs, gave him 20",
  ],
  [
    "^ [<art>? <kin>|<person>|<new> <labor>|worked|worked_on|did … i|we|so|and|,* paid|gave|slid|slipped|handed|tossed|owed him|her|them] $ !back",
    "help",
    "bob sanded the desk for 2 hrs, gave him 40",
  ],
  [
    `^ oh|and|so|plus|also|,* [he|she|they|buyer|<art>? <kin>|<person>|<new> gave|slipped|handed|paid|threw|tossed|sent|chipped_in me|us] $ extra|more? ${FOR_WORK}`,
    "given",
    "she gave me 10 for gas",
  ],
  [
    "[,|and|but|i|so|he|she|they* gave|had|made|got|needed|no|have him|her|them|me|<person>? change for|from|back|of <art>? $? bill?]",
    "word",
    "sold coffee table 85, gave him change for a 100",
  ],
  [
    "[,|and|but|i|so* gave|made|got|owed him|her|them|me|<person> <art>|his|her|their? change]",
    "word",
    "desk 90, i gave him his change",
  ],
  ["paid [with|w <art>? $ bill]", "word", "he paid with a 100 bill"],
  [
    "put_a|stuck|threw|tossed|slapped <art>? <piece> [on the|our|my|a board]",
    "word",
    "stuck the desk on the board 90",
  ],
  ["<supply> [rental|rentals|hire]", "word", "carpet cleaner rental 35"],
  [
    `got|received $ [from <art>? him|her|them|<person>|<kin>|<new>] ${FOR_WORK}`,
    "given",
    "got 10 from her for gas",
  ],
  ["^ [<art>? !<kin> <new>|<person>] got $ for <art>? <piece>", "worker", "bob got 40 for the desk"],
  [
    "^ [<art>? !<kin> <new>|<person>] gave|handed|sent me|us $ for <art>? <piece>|it|them|this|that|both",
    "buyer",
    "bob gave me 40 for the desk",
  ],
  [
    "^ [<art>? <kin>|<new>|<person>|<place> at|from|in|down? <art>? <place>|<plain>?] gave me|us <art>? <any>? <piece>",
    "giver",
    "bob gave me a dresser",
  ],
  ["^ [<art>? <kin>|<new>|<person>] gave me|us", "word", "bob gave me 20"],
  [
    "^ [<new>|<person> got|gets] $ for help|helping|loading|moving|hauling|carrying",
    "word",
    "kyle got 20 for helping with hutch",
  ],
  [
    "^ <new>|<person> got|gets $ for [help|helping|loading|moving|hauling|carrying]",
    "service",
    "kyle got 20 for helping with hutch",
  ],
  [
    "^ <new>|<person> took|grabbed|bought|got|picked_up <art>? <piece> [,|and|for? paid|paid_me|gave_me|gave|pd] $",
    "word",
    "kim took bench paid 40 cash",
  ],
  [
    "^ [<art>? <kin>|<person>|<new> <new>? bought|got|made|brought|treated|took me|us|everybody|everyone out? to|for? <art>? lunch|dinner|breakfast|supper|brunch|coffee|donuts|pizza|tacos|ice_cream|drinks|drink|beer|beers|burger|burgers|sandwich|sandwiches] !$",
    "word",
    "my sister bought me lunch. glue 5 for the desk",
  ],
  [
    "^ [<art>? <kin>|<person>|<new> sold|bought his|her|their <trait>|<opinion>* <supply>|<new>|<plain> for|at? $] !<piece>",
    "word",
    "my brother sold his truck for 4000, anyway i sold the bench for 35",
  ],
  ["^ [i|we was|were|got] sold", "asked", "i was sold a bad dresser for 60"],
  [
    "<kin> … bought|got|picked_up … <piece> … [for her|his|their own|new? place|house|apartment|home|room|dorm|office]",
    "worker",
    "sister bought a sofa 300 for her place",
  ],
  // Who acts: kin for the shop, anybody else a buyer.
  ["^ [<art>? <kin> <verb> her|his|their] <piece>", "worker", "my sister sold her dresser 120"],
  ["^ [<art>? <kin> <new>?] " + GETS + "|<verb>|<light>", "ours", "dad picked up a bookcase 25"],
  ["^ [<art>? <kin> <new>?] is|are <retire>", "ours", "hubby is keeping the workbench"],
  ["^ [its|it_is|this_is <art>? <kin>]", "ours", "its mom, bought desk 40"],
  ["^ [<art>? <kin> here|speaking|again|texting]", "ours", "uncle here, sold the trunk 65"],
  [
    "^ [<art>? <person>|<new>|<place> <new>|<place>|<noun>|<person>|<trait>? finally|just? " +
      COMES +
      " by|over|back|up|out|today? and|to|for?] " +
      GETS,
    "buyer",
    "mike came by and bought the hutch 200",
  ],
  [
    "^ [<art>? <person>|<new> <new>|<person>? finally|just? " +
      COMES +
      " by|over|back|up|out? for] <art>? <piece>",
    "buyer",
    "she came for the desk",
  ],
  [
    "^ [<art>? <person>|<new> finally|just? " +
      COMES +
      " by|over|up|out|early|late|today|instead|finally|already* ,|and|-? paid|paid_me|gave|gave_me|handed_me|with? the?] $",
    "buyer",
    "he came today instead, paid 200 cash",
  ],
  [`^ [<art>? <person>|<new> picked ${THE_GOODS} up] $|,`, "buyer", "greg picked it up 260 cash"],
  [`^ [<art>? <person>|<new> picked ${THE_GOODS} up] ;`, "buyer", "they picked it up"],
  [
    "^ [<art>? <person>|<new>] picked|scooped|snapped|snatched <art>? <piece> up",
    "buyer",
    "maria picked the desk up 90",
  ],
  [
    "^ !<kin> <art>? <opinion>|<trait>* <person>|<new> put|left|gave|paid|came|stopped … and|then [bought|took|grabbed|picked_up|paid_for] <art>? <piece>",
    "sold",
    "mike put 40 down on the sofa and bought the lamp for 15",
  ],
  [
    "<sell>|<hold> … ,|and|&|.|then [he|she|they|who also|then|even? bought|took|grabbed|got|picked_up] <art>? <piece>",
    "sold",
    "sold desk 90 to a couple, they also bought the lamp 15",
  ],
  [
    "^ [<art>? <opinion>|<trait>|<plain>* <person> with|w|from|in|at|down|across <art>? <any> <word>? <word>?] gave|paid|handed|pd me|us $ for <art>? <piece>",
    "buyer",
    "the lady with the blue truck gave me fifty for the rocking chair",
  ],
  [
    "^ [came|stopped|stopped_by|came_by|came_over by|over|back? and] " + GETS,
    "sold",
    "came and got the desk 120",
  ],
  [
    "^ [<art>? <opinion>|<trait>|<plain>* <person> from|with|w|at|in|down|across|by|on|over|next|named|i <art>? <any> <word>? <word>?] " +
      GETS,
    "buyer",
    "lady from church took the lamp 20",
  ],
  [
    "^ [someone_else|somebody_else|some_other_guy|some_other_lady|some_other_person|another_person|another_buyer] " +
      GETS,
    "sold",
    "someone else bought the armoire 80",
  ],
  [
    "^ [me|i|we|us and|&|with <art>? <new>|<person>|<kin>] " + GETS,
    "asked",
    "me and bob bought a dresser 40",
  ],
  ["^ [mr|mrs|ms|dr|miss|sir|mister .? <word>] " + GETS, "buyer", "mr jones bought desk 90"],
  [
    "^ [<art>? <opinion>|<trait>* <person> " + ROUND_HERE + "|upstairs|downstairs] " + GETS,
    "buyer",
    "the couple next door bought the hutch 200",
  ],
  [
    `^ [<art>? <place>|<new>|shop|store|school|church|office|hotel|restaurant|bakery|cafe|salon|dealer|business ${ROUND_HERE}] ${GETS}`,
    "buyer",
    "the shop down the street bought trunk 80",
  ],
  [`^ [<art>? <piece> ${FOLK}] !got_cold_feet ${GETS}`, "buyer", "lamp lady bought the armoire 220"],
  ["<sell>|<buy>|<list>|<finish>|<labor> … [by <art>? <kin>] !and|&", "ours", "trunk sold by dad 80"],
  [
    "<piece> … <sell>|<list> [by <art>? !<kin> <opinion>|<trait>* <person>|<new>] !and|&",
    "asked",
    "the desk was sold by the neighbor for 60",
  ],
  [
    "^ [<art>? <new>|<person>] sent|paid|wired|mailed|transferred <art>? money|cash|payment for <art>? <piece> $",
    "buyer",
    "kim sent the money for bench 40",
  ],
  [`^ [<new>|<person>|<kin>] ${NOW} ${GETS}`, "buyer", "dale already took the wardrobe 90"],
  [
    "^ [<art>? <opinion>|<trait>* <person>|<new>|<place> &|and? <new>|<person>?] " + GETS,
    "buyer",
    "bob bought the desk 120",
  ],
  [
    "^ [" + NAMES_THAT_ARE_WORDS.join("|") + "] " + GETS + " the|<piece>|it",
    "buyer",
    "joy grabbed the vanity, paid 150",
  ],
  [
    "^ [<art>? <new>|<place>|<plain> <new>|<person>?] " + BACKED_OUT + `|noshowed|${LEAVES}`,
    "buyer",
    "nurse backed out of the desk",
  ],
  [
    `^ [next_door|across_the_street|down_the_street|upstairs|downstairs] ${GETS}`,
    "buyer",
    "next door bought desk 90",
  ],
  [`^ [<art>? ${HOUSES}] ` + GETS, "buyer", "school bought desk 90"],
  [
    "^ <art>? [<piece> picked_up|collected|claimed|snatched_up] !!from|at|off|by|<place>",
    "left",
    "desk picked up 90",
  ],
  [
    "<piece> $? got|was|were|has_been|is|been|just? bought|purchased|picked_up|taken|grabbed|collected|claimed|fetched [by <art>? !<kin>|<art> <word>]",
    "buyer",
    "desk bought by mike 120",
  ],
  // What was got from a place was bought by us; at a market it may as well have been sold.
  [
    "<piece> [was|were|has_been|have_been] bought|purchased|acquired|obtained|collected|picked_up|rescued|salvaged from|off <art>? <place>",
    "word",
    "a loveseat was obtained from the curb for 5",
  ],
  [
    "<piece> [got|was|were|has_been|is|just_got|finally_got] bought|purchased|picked_up|taken|grabbed|collected|claimed|fetched|snatched_up",
    "sold",
    "desk got picked up 120",
  ],
  [GETS + " [from|off|off_of me|us]", "sold", "bought from me desk 90"],
  [GETS + " … <piece> [from|off|off_of me|us]", "sold", "pat bought desk from me 120"],
  ["took|taking [<kin>] <time> to", "ours", "took dad 90 min to paint it"],
  ["<labor> … [took|taking him|her|them] <time>", "word", "grandpa sanded it, took him 2h"],
  ["^ [<art>? <kin> <new>?] <labor>|worked|worked_on", "ours", "my brother sanded the bench 1h"],
  ["^ [<art>? <person>|<new>] <labor>|worked|worked_on|helped", "worker", "bob sanded dresser 2h"],
  [
    "[sale|deal|hold of|on|for <art>?] <piece> … fell_through|fell_thru|cancelled|canceled",
    "word",
    "sale of the vanity fell thru",
  ],
  [
    "<ofset>|<several> … [,|but? without|minus|but_not|except|excluding|no <piece>]",
    "asked",
    "sold dining set minus 1 chair 180",
  ],
  [
    "!!<time> [is|are|all* <labor> <labor>|<done>|,|up|over* and|&|,] <~finish> ,|-|;",
    "word",
    "the buffet is stained sealed and ready, calling it done",
  ],
  [
    "!!<time> [is|are|all* <labor>|<done> up|over? and|&] <~finish> ;",
    "word",
    "the hutch is painted up and done",
  ],
  [
    "[is|are|all* <labor> <labor>|<done>|,|up|over* and|&|,] <~finish> ,|- took|took_me? <time> ;",
    "word",
    "nightstands cleaned up and done, 45 min",
  ],
  [
    "^ [<art>? <kin> says|said|texted|told_me|tells_me|called that?] it|the|<piece>",
    "word",
    "mom says it sold, 75",
  ],
  [
    "^ [no|zero|not_many|still_no|few|hardly_any|barely_any|crickets|silence|nothing bites|takers|interest|nibbles|calls|messages|offers|looks|luck|action|movement|views|hits|love|inquiries|buyers|bidders? yet|at_all? on|for|about|with <art>?] <piece> !!<piece>|<supply>|<time>|<miles>|<sell>|<buy>|<~buy> ,|so|and|-|.|;* … $",
    "word",
    "no bites on the hutch so i cut it to 190",
  ],
  [
    "^ <art>? <piece> [is|was|just|still|has|been* isnt|aint|not|wasnt|hasnt|wont|never|doesnt moving|moved|selling|sell|budging|budge|sold|gone|move|going_anywhere|getting|gotten|had|seem_to_sell any|much|many|a|no? looks|bites|interest|messages|attention|offers|action|calls|views|traction|love|luck? yet|at_all|fast? so|,|and|-] !!<piece>|<supply>|<time>|<miles>|<sell>|<buy>|<~buy> … $",
    "word",
    "hutch isnt moving so down to 190",
  ],
  [
    "<pay>|paid|sent|put|threw|rolled|moved … $ [of|from|out_of <art>|my|our|that|this? <piece>? profit|profits|money|cash|proceeds|sale|sales|earnings] to|on|toward|towards|at|into|straight|straight_to … loan",
    "word",
    "put 50 from the desk sale on the loan",
  ],
  [
    "^ [<art>|my|our? <piece>? profit|profits|money|cash|proceeds|sale|sales] ,? $ ,? went|goes|to|on|straight|straight_to|toward|towards|all* … loan",
    "word",
    "desk profit 120 straight to the loan",
  ],
  [
    "^ threw|put|sent|rolled|paid [<art>|my|our? <piece>? profit|profits|money|cash|proceeds|sale|sales] ,? $ … loan",
    "word",
    "threw the desk money, 120, at the loan",
  ],
  [
    "^ [<art>? <kin> wants|wanted|loves|loved|claimed|likes|liked|fell_in_love_with] <art>? <piece> so|,|and|-|;* its|it_is|were|we_are|im|i_am|theyre|is? ours|staying|keeping|not_for_sale|not_selling|hers|his",
    "word",
    "wife wants the hutch so its ours now",
  ],
  [
    "^ <art>? <piece> [went_to <art>? <word>* ,|-? no_charge|for_free|free|for_nothing|as_a_donation|as_a_gift|free_of_charge] ;",
    "gifted",
    "lamp went to the church rummage sale, no charge",
  ],
  [
    "^ i|we|just? [handed|passed] <art>? <piece> down|on|along|over to",
    "gifted",
    "handed the lamp down to my nephew",
  ],
  [
    "^ <art>? <piece> [fell|tipped|rolled|slid|got_knocked off|over|down|out? of|off? <art>? <piece>|<word>|<place>? and] smashed|shattered",
    "word",
    "lamp fell off the bench and smashed",
  ],
  [
    "smashed|shattered|<retire> … [,|-|so|and|.* its|it_is|theyre|is garbage|trash|junk|toast|done_for|a_goner|kindling|history|firewood|in_pieces|in_the_trash|in_the_dumpster now?] ;",
    "word",
    "lamp fell off the bench and smashed, its garbage now",
  ],
  [
    "^ [<kin> says|said|insists|decided|agrees that|so?] were|we|weve|we_are keeping|keep|kept",
    "word",
    "wife says were keeping the hutch",
  ],
  [
    "^ [decided that? were|we_are|im|i_am gonna|going_to] keep|keeping",
    "word",
    "decided were gonna keep the dresser",
  ],
  [
    "<miles> [dropping|taking|running|hauling|bringing|delivering] <art>? <piece> off|over|up|down|back|out",
    "word",
    "19 miles dropping the desk off at danas",
  ],
  [
    "<miles> dropping|taking|running|hauling|bringing|delivering <art>? <piece> [off|over|up|down|back|out at|to|with? <art>|my? <new>|<person>|<kin>?] ;",
    "word",
    "19 miles dropping the desk off at danas",
  ],
  ["gifted <art>? [<new>|<kin>|<person>] <art>|both|all? <piece> !$", "word", "gifted nell the nightstands"],
  [
    "<retire> … [,|and|now|so|-* its|it_is|theyre|was|it|already|now* gone|taken already|now|in_an_hour|within_the_hour|same_day*] ;",
    "word",
    "dumped the bench, its gone",
  ],
  [
    "<retire> … <piece> ,|-|.|bc|because|cause|cuz|since? [<art>|its|his|the* legs|leg|frame|top|back|wood|veneer|seat|drawers|drawer|base|bottom|it|they is|are|was|were|had|has? too|all|so|just|completely|totally* rotted|rotten|rot|hopeless|wormy|moldy|mold|unsalvageable|unfixable|cracked|broken|shot|junk|gone|trashed|ruined|warped|a_goner|a_lost_cause|beyond_saving|beyond_repair|past_saving|full_of_worms|full_of_bugs|toast through|thru|out|away?] ;",
    "word",
    "scrapped the table, legs are rotted thru",
  ],
  [
    "<sell> <art>? <piece> [,|-|and i|we? let|letting it|her|him|them|that go for|at] $",
    "word",
    "sold the desk, let it go for 140",
  ],
  [
    "^ [nobody|no_one wants|wanted|is_asking_about|asked_about|messaged_about|is_interested_in|was_interested_in] <art>? <piece>|it|them … knocked|dropped|lowered|marked|cut|took|reduced",
    "word",
    "nobody wants the hutch, knocked 20 off it",
  ],
  // Which pieces it was not, where our own stand, what was fetched.
  [
    "<piece> … [,|but? without|minus|but_not|not|except|excluding|and_not|no <art>? <piece>]",
    "word",
    "sold desk 140 not the chair",
  ],
  [
    "<sell> … [off|out|out_of|from of? <art>? <ownspot>] !loan|<new>",
    "word",
    "sold desk out of the truck 140",
  ],
  [
    "<miles> [dropping_off|delivering|hauling|returning|picking_up|fetching|taking|bringing|getting|moving|to_drop_off|to_deliver|to_haul] <art>? <trait>* <piece>",
    "word",
    "19 miles dropping off the armoire",
  ],
  [
    "<supply> $? [getting|fetching|grabbing|hauling|picking_up|pickup_of|delivering|dropping_off|returning|moving|to_get|to_fetch|to_grab|to_pick_up|to_haul|to_deliver|to_move|going_to_get|driving_to_get] <art>? <piece>",
    "word",
    "tolls 6.50 getting hutch",
  ],
  [
    "[on|off|at|near|from|by|down|across|over|around|to? <art>? <rank> st|street|ave|avenue|av|rd|road|dr|drive|ln|lane|blvd|boulevard|ct|court|pl|place|hwy|highway|pkwy|terrace|circle|way]",
    "word",
    "sold desk 140 off 5th street",
  ],
  [
    "[on|off|at|near|from|by|down|over <rank> and|& <rank>|<new>|<trait>]",
    "word",
    "sold desk 140 on 5th and main",
  ],
  [
    "[on|off|at|near|by|down <art>? <new> st|street|ave|avenue|av|rd|road|dr|drive|ln|lane|blvd|boulevard|ct|court|pl|place|hwy|highway|pkwy|terrace|circle|way]",
    "word",
    "sold desk 140 on elm street",
  ],
  ["<sell> <art>? [<kin>|<person>] <art> <piece>", "buyer", "sold mom the desk 140"],
  [
    "<place> [on|off|near|down|over_on|out_on|up_on|in <art>? <new> <new>?]",
    "word",
    "bought dresser 40 yard sale on elm",
  ],
  // Somebody told by a piece, or by what they did.
  [
    `<sell> … <piece> … to the|a|an|our|that [<word>? !and|&|plus|then|with|<verb> <word>? <piece>] !${FOLK}|in|from|at|near|by`,
    "name",
    "sold all 6 dining chairs for 210 to the wine bar",
  ],
  [`to|for|from|with <art>? [<piece> ${FOLK}]`, "name", "sold desk to the dresser lady 60"],
  [
    "<person> [who|that|with|whod <word>? <art>? <piece>]",
    "name",
    "sold dresser to the guy who bought the desk 60",
  ],
  [
    "<sell> … [for|at full|my|the|our* list|list_price|listing_price|asking|asking_price|full_price|full_ask|ask|what_i_asked] !$",
    "word",
    "sold it for list, card",
  ],
  // What a stream costs is no income.
  [
    "[<stream> cost|costs|order|ticket|tickets|art|supplies|fee|fees|signup|registration|materials|booth|table] <art>? $",
    "cost",
    "workshop ticket 50",
  ],
  ["^ <art>? [<stream>] cost_me|cost_us $", "cost", "ads cost me 20"],
  ["[signed_up|registered|enrolled for|in|to <art>? <word>? <stream>]", "cost", "signed up for workshop 120"],
  ["paid|spent $ for|to|on <art>? [<labor>|<word>? <stream>]", "cost", "paid 60 for a refinishing class"],
  ["bought|ordered|paid_for|buying|took <art>? [<stream>]", "cost", "bought ads for the booth 30"],
  [
    "<time> … <labor> <art>? [<part>|<supply> off|off_of|out_of|from] <art>? <piece>",
    "word",
    "45 min scraping veneer off the buffet",
  ],
  [
    "^ [pulled|dragged|hauled|rescued|saved] <art>? <trait>|<opinion>* <piece> off|from|out_of <art>? curb|alley|dumpster|trash|roadside",
    "word",
    "pulled the sectional off the curb w my brother, free",
  ],
  [
    "bought|got|grabbed him|her|them|everybody|everyone|us <art>? [!<piece> <word>] $",
    "cost",
    "bought him a burger 11.50",
  ],
  ["to|for <art>? [mom|dad|grandma|couple|family of #]", "name", "bunk bed sold to a mom of three, 155"],
  [
    "^ had_to|have_to|gotta|i|we* give|hand|send [<new>|<person>|<kin>] $ back",
    "word",
    "had to give nell 20 back on the dresser",
  ],
  // The way of paying, and what only looks like it.
  [
    "[by accident|text|phone|hand|lunch|dinner|noon|email|mail|surprise|myself|itself|chance|luck|weight|appointment|then|now|far|the_way|end_of_day|eod]",
    "word",
    "sold dresser 60 by phone",
  ],
  [
    "[by|via|thru|through <word>? pickup|pick_up|delivery|dropoff|drop_off|courier|shipping|mail]",
    "word",
    "sold desk 90 by porch pickup",
  ],
  ["[gift|business|library|report|get_well|thank_you|birthday card]", "word", "sold desk 60 gift card"],
  ["[no|not|without cash|card|check|transfer]", "word", "sold desk 140 no cash"],
  // "got" that only says that it is so.
  [
    "[got|have|had] <art>? <piece> totally|completely|fully|finally* <~finish>|ready !$|for|at",
    "word",
    "got the desk all done",
  ],
  [
    "[got|have|had] <art>? <piece> totally|completely|fully|finally* <~finish>|ready at_last|at_long_last",
    "word",
    "got the desk done at last",
  ],
  [
    "[got|have|had] the|my|our|both? <piece> ,|and|&|plus the|my|our|a? <piece> totally|completely|fully|finally* <~finish>|ready !$|for|at",
    "word",
    "got the desk and the bench done",
  ],
  [
    "[got|have|had] the|my|our|both? <piece> ,|and|& the|my|our? <piece> ,? and|&|plus the|my|our|a? <piece> totally|completely|fully|finally* <~finish>|ready !$|for|at",
    "word",
    "got the desk, the bench and a stool done",
  ],
];

export const owners = tableOf([...BUYERS, ...EARNINGS, ...ROWS, ...PARTS, ...HANDS]);
