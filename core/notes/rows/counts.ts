import type { NumberEffect } from "./owed.ts";
import { rowsOf } from "./row.ts";

/** Whose miles they are. */
const OF_VAN = "business|biz|work|truck|van|shop";

/** Before how much it is by now. */
const MAKES = "makes|making|thats|that_makes|that_is|for|its|now";

/** Several pieces, before each is named with a price of its own. */
const ALL_TOLD = "<ofthem>|all|all_of_them|they|they_all|everything|these|those both|just|all*";

/** Those who pay for a class. */
const HEADS =
  "people|students|kids|ladies|women|guys|folks|attendees|participants|clients|customers|girls|adults|seats|spots|tickets";

/** Numbers that count or measure something and are no money by themselves: what it comes to by now, supplies, addresses, sizes. */
export const COUNTS = rowsOf<NumberEffect>({
  "passing: 45 more min on the desk, makes 3h so far": `<time> … [,|-|and|so* ${MAKES} <time> so_far|total|altogether|in_all|all_told|overall|in_total|on_it|in_it|now now*]`,
  "passing: 2h sanding the table, brings it to 6 hours":
    "<time> … [,|-|and|so* that? brings|bringing|makes|making it|us|that|the_total? to|at? <time> now|total|altogether?]",
  "vague: 2 hours on the table with dad, so 4 hours between us":
    "<time> … [,|-|and|so* <time> between_us|combined|between_the_two_of_us|between_both_of_us]",
  "passing: 12 on paint, thats 40 in the desk now": `<supply> … ,|-|and|so* [${MAKES} $ in|into <art>? <piece> now|so_far|total?]`,
  "heads: workshop 3 people 40 each": `<stream> had|with|for|,|-|:* [# ${HEADS} ,|-|at|@|x|for|and|paid|paying|who_paid* $? <eachof>|a_head|per_head|per_person|a_person|a_pop|a_piece|a_seat|a_spot]`,
  "passing: sold desk to 2 girls 140":
    "to|by [# girls|guys|kids|ladies|women|men|students|sisters|brothers|people|friends]",
  "deposit: pete gave us 20 down":
    "^ !i|we|ive <word> [gave_us|gave_me|gave|handed_me|paid_me|left $ down] ;",
  "down: shes putting 40 down now":
    "^ <art>? shes|hes|theyre|<person>|<new> [putting|leaving|sending|dropping] $ down|on_it|to_hold_it|as_a_deposit now|today|right_now ;",
  "down: bob put 20 on desk": "^ !i|we|ive <art>? <word> [put|left] $ on|down|for <art>? !<onemore> <piece>",
  "down: the teacher left 20 on it": "^ !i|we|ive <art>? <person>|<new> [put|left] $ on it|them|this ;",
  "all: dining set gone, all 5 pieces, 240":
    "<piece> … [,|.|!|(|for* all|the # pieces|pcs|pc|items|parts )?]",
  "all: grabbed 4 free chairs": "[#] free <trait>|<plain>|<opinion>* <several>",
  "hands: paid two guys 30 each to move the hutch":
    "paid|pd|gave|slipped|handed|tipped [# guys|men|boys|kids|friends|neighbors|teens|people|helpers|students|movers|nephews|cousins <eachof>]",
  "vague: paid the guys 30 each to move the hutch":
    "paid|pd|gave|slipped|handed [both|the guys|men|boys|kids|friends|neighbors|teens|people|helpers|students <eachof>]",
  "vague: tolls 2.50 each way": "[$ each_way|one_way|per_trip|per_crossing]",
  "passing: painted dresser 1h dry 24h":
    "<time> [wait|waited|waiting|dry|drying|to_dry|cure|curing|dry_time|drying_time for|between|about? <time>|<span>]",
  "beside: sold desk to the neighbor 2 doors down 140":
    "<verb> … [# doors|door|houses|house|blocks|streets|floors|towns|miles down|over|up|away|from_me|from_us|from_here|below|above]",
  "passing: 5 min epoxy 7": "[<time>] epoxy|glue|resin|filler",
  "miles: miles 24": `^ <day>? [${OF_VAN}? miles|mileage|mi today|total|driven|for_today|this_morning? :? <bare>] ;`,
  "miles: mileage 24 for the hutch": `^ [${OF_VAN}? miles|mileage|mi :? <bare>] for|to|<day>|,`,
  "miles: mileage for the dresser 24": `^ ${OF_VAN}? miles|mileage for|to|on collecting|fetching|delivering|picking_up|dropping_off|hauling|collect|fetch|deliver|pick_up|get? <art>? <piece> pickup|delivery|run|trip|haul|drive? :|is|was? [<bare>] ;`,
  "miles?: drove 24": "drove|drived [<bare>] ;",
  "miles?: drove 24 to get dresser":
    "drove|drived [<bare>] <day>|,|.|to|out|over|there|back|total|today|roundtrip|round_trip|yesterday",
  "miles?: drove 24 for dresser": "drove|drived [<bare>] for <art>? <piece>",
  "passing: screws 11.42 4 the desk": "$ [4] the|my|our|this|that|a|an",
  "passing: screws 4 the desk 11.42": "<supply> [4] the|my|our|this|that|a|an <trait>* <piece> $",
  "passing: half a dozen clamps 42": "[half|a|couple? a? dozen of?] <supply>",
  "passing: half a gallon of stripper 26":
    "[half|quarter of? a|an? <container> of?] <trait>|<plain>* <supply>",
  "passing: sandpaper and a quart of primer 19.40":
    "<supply> and|&|plus|+|,* [#|a|an|couple|few|another|some* <container> of?] <trait>|<plain>* <supply>",
  "passing: two cans of spray paint and a roll of tape 18":
    "[# <container> of?] <trait>|<plain>* <supply> and|&|plus|+|,* #|a|an|couple|few|another|some* <container>? of? <trait>|<plain>* <supply>",
  "passing: paint and 2 brushes 44":
    "<supply> ,? and|&|plus|+|, [#|couple|few] <trait>|<plain>* <supply> for|on? <art>? <piece>? :|-|for|was|came_to|<supply>|and|,|.|that|it|which|all* $",
  "passing: casters for the cart, 14.60 for the set of four":
    "<supply> … $ [,|for? the|a? set|<container> of #] ;",
  "passing: drawer pulls, pack of ten, 18": "<supply> [,|in? the|a? set|<container> of # ,|for?] $",
  "passing: 2 knobs, hinges and a lock 26":
    "^ [#] <supply> ,|and|&* <art>? <supply> ,|and|&|<art>* <supply>? :|for? $ ;",
  "passing: spent 41 on stain, poly and 4 brushes":
    "spent|dropped|blew|paid $ on|for … <supply> ,|and|&|plus|+* [#] <trait>|<plain>* <supply> ;",
  "passing: 3 months of storage 180": "[<span> of|worth_of?] <supply> $",
  "amount: paid rent on the unit 85":
    "rent|storage|storage_rent|space_rent … on|for the|my|our unit|space|booth|stall|locker|spot|lot [$] ;",
  "passing: sold the desk 130, an hour after i posted it":
    "!!<labor>|worked|worked_on|spent|put_in [just|only|not|even|less|than|within|in* <time>|<span> after|of|from i|we|it|he|she|they|my|the|id|i_first|first* posting|listing|relisting|posted|listed|relisted|put|putting|went|going|seeing|saw it|them|her|him|the_ad|<piece>|up|live|online|again|for_sale*]",
  "passing: 18 miles was too far for that table":
    "^ [<miles>|<time>|$ was|is|seems|felt way? too|a|so|not far|long|much|lot|steep|trek|haul|hike|worth]",
  "passing: parking 12.75 for two hours": "parking|meter|garage $ [for|, <time>]",
  "passing: drove 24 miles 40 min": "^ drove <miles> ,|and? [<time>] ;",
  "passing: paint 2 cans 24": "<supply> [,? # <container> ,?] $",
  "passing: knobs, half a dozen, 21 bucks": "<supply> [, half? a? dozen|half_dozen ,?] $",
  "times: knobs for the desk, 8 of em at 2.25 each": "<supply> … ,? [<ofthem> ,|at|for|@* <eachof>]",
  "times: spray paint for the stools, 2 cans 6.50 each": "<supply> … ,? [# <container> at|for|@? <eachof>]",
  "times: screws, 2 boxes at 3.25": "<supply> … , [# <container> at|@ $]",
  "passing: knobs, eight of them, 20": "<supply> for|on? <art>? <piece>|it|them? [, <ofthem> ,?] $",
  "passing: size 10 screws 4": "[size #] <supply>",
  "vague: 3 x paint 12": "^ [# x|×] <supply>",
  "vague: bought dresser 40 of 50": "<~buy>|<sell> … [$ of $] ;",
  "vague: listed the desk 10 more than the lamp":
    "<list>|<reprice> … [$ more|less|higher|lower|cheaper than] <art>? <piece>",
  // Addresses, rooms, ranks.
  "passing: picked up desk 40 at 1420 maple ave":
    "at|on|from|near|off|to|in [# <word> <word>? st|street|ave|avenue|rd|road|dr|drive|ln|lane|blvd|ct|court|pl|hwy|highway|pkwy|terrace|circle]",
  "passing: found a lamp by house 27 on elm, free":
    "by|at|from|near|outside|, [house|no|number # on|off? <new>?] ,|.|;|-",
  "passing: 6 hooks for the coat rack 9, needed 8 but only 6 in stock":
    "<supply> … $ … [needed|need # ,|but|and* only|they|had* #? in_stock|left|there|more?] ;",
  "passing: sold desk 90 to the guy in booth 14":
    "in|at|from|to|for|of|by|near|the apt|apartment|unit|booth|suite|room|space|aisle|row|exit|gate|building|bldg|stall|spot|lot|locker [#]",
  "passing: listed desk 140 in section 4":
    "on|in|at|to|as|under|again|, [page|section|level|lot|category|post|shelf|bay|slot|row #]",
  "passing: went through 5 sheets of sandpaper on desk":
    "ate|went_through|burned_through|used|used_up|swallowed|drank|blew_through [# of? <container> of? <supply>|sandpaper]",
  "passing: bought desk 40 off route 9":
    "[on|off|near|at|from|along|by|down route|rt|highway|hwy|interstate #]",
  "passing: sandpaper no. 2 8":
    "sandpaper|unit|storage_unit|po_box|mailbox|steel_wool|pencil|brush|filter|bit|blade|stain|color|shade|size|size_of|part|model|locker|check|lot|row [<number>|<numbered>]",
  "passing: bought footstool at the corner of 9th and vine 6":
    "[at|on|by|near? <art>? corner of? <any> and|& <any>]",
  "beside: sold desk 140 at 412 elm": "$ … at|on [<house> <new>]",
  "beside: bought desk at 412 elm for 40": "at|on [<house> <new>] for $",
  // Sizes, grits, ages, how many of something that is no piece.
  "passing: bought 24x36 mirror 12": "[<size>] <piece>",
  "beside: sold desk 90 after 10 people asked":
    "[about|over|like|some|maybe? # telephone|phone|new|different|other|more? people|guys|offers|messages|texts|calls|dogs|cats|kids|buyers|customers|folks|lookers|emails|likes|views|comments|questions|stops|flights|floors|stairs|steps|blocks|houses|sales|stores|trips|tries|weekends|days|nights asked|looked|messaged|called|offered|later?] !premium",
  "amount: gave him a 50 for the 30 dollar desk": "gave|handed|paid … $ … for <art> [$] <piece>",
  "beside: deposit 30 on the 150 couch": "<art> [$] <piece>",
  "all: sold the stools 65 all 3": "<several> … [for|at? all|all_of # of? them?]",
  "passing: sold desk + chair, 130 the two": "$ [for|,? the # of_them?] ;",
  "passing: desk 150 lamp 20 both listed":
    "<piece> … $ … <piece> … $ [<ofthem>] are|is|now|just|finally|got* <list>|<~list>|<sell>",
  "all: pair of lamps sold 40 for both": "<piece> … $ [for|,? <ofthem>] ;",
  "passing: kim picked up the dresser, as agreed":
    "[as_agreed|as_we_agreed|like_we_agreed|what_we_agreed_on|for_what_we_agreed|for_what_we_agreed_on|at_the_agreed_price|for_the_agreed_price|at_the_price_we_agreed_on] !$",
  "passing: those two are up now, 185 for the dresser and 150 for the desk": `^ [${ALL_TOLD}] are|were|have|got? <sell>|<list>|up|posted now|today|yesterday|finally? ,|:|-|!|. $ for|on <art>? <trait>* <piece>`,
  "passing: sanded for like an hr on the desk": "[for? like|bout|abt] <time>",
  "passing: free desk off the curb, one leg broke":
    "[one|1|two|2|both of?] <art>? <trait>|<plain>|<opinion>* <part> is|was|are|were|has|had|have|kept|keeps|got|came|fell|went|just|still|a|little|bit|badly|really* <hurt>|off|wobble|sticky|squeak",
  "passing: sold something for 45": "^ <sell> [something] for|at|,? $",
});
