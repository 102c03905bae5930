import { HELD } from "./agreed.ts";
import { MEASURES } from "./measures.ts";
import { type NumberEffect, OWED } from "./owed.ts";
import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";

const WANTED = "asked|asking|wanted|hoping_for|hoped_for|was_asking|holding_out_for";

/** Before how much it is by now. */
const MAKES = "makes|making|thats|that_makes|that_is|for|its|now";

const ROWS: readonly Row<NumberEffect>[] = [
  [
    `<time> … [,|-|and|so* ${MAKES} <time> so_far|total|altogether|in_all|all_told|overall|in_total now*]`,
    "passing",
    "45 more min on the desk, makes 3h so far",
  ],
  [
    "<time> … [,|-|and|so* that? brings|bringing|makes|making it|us|that|the_total? to|at? <time> now|total|altogether?]",
    "passing",
    "2h sanding the table, brings it to 6 hours",
  ],
  [
    "<time> … [,|-|and|so* <time> between_us|combined|between_the_two_of_us|between_both_of_us]",
    "vague",
    "2 hours on the table with dad, so 4 hours between us",
  ],
  [
    `<time> … [,|-|and|so* ${MAKES} <time> now|on_it|in_it]`,
    "passing",
    "30 min on the desk, thats 4 hours now",
  ],
  [
    `<supply> … ,|-|and|so* [${MAKES} $ so_far|in_it|into_it|in_it_now|in_it_so_far]`,
    "passing",
    "paint 12 for the desk, makes 40 so far",
  ],
  [
    `<supply> … ,|-|and|so* [${MAKES} $ in|into <art>? <piece> now|so_far|total?]`,
    "passing",
    "12 on paint, thats 40 in the desk now",
  ],
  [
    "to|by [# girls|guys|kids|ladies|women|men|students|sisters|brothers|people|friends]",
    "passing",
    "sold desk to 2 girls 140",
  ],
  [
    "^ !i|we|ive <word> [gave_us|gave_me|gave|handed_me|paid_me|left $ down] ;",
    "deposit",
    "pete gave us 20 down",
  ],
  ["^ !i|we|ive <word> [put|left $ on|down|for] <art>? <piece>", "deposit", "bob put 20 on desk"],
  [
    "^ !i|we|ive <art>? <person>|<new> [put|left $ on] it|them|this ;",
    "deposit",
    "the teacher left 20 on it",
  ],
  ["[#] free <trait>|<plain>|<opinion>* <several>", "all", "grabbed 4 free chairs"],
  [
    "paid|pd|gave|slipped|handed|tipped [# guys|men|boys|kids|friends|neighbors|teens|people|helpers|students|movers|nephews|cousins <eachof>]",
    "hands",
    "paid two guys 30 each to move the hutch",
  ],
  [
    "paid|pd|gave|slipped|handed [both|the guys|men|boys|kids|friends|neighbors|teens|people|helpers|students <eachof>]",
    "vague",
    "paid the guys 30 each to move the hutch",
  ],
  ["[$ each_way|one_way|per_trip|per_crossing]", "vague", "tolls 2.50 each way"],
  [
    "<time> [wait|waited|waiting|dry|drying|to_dry|cure|curing|dry_time|drying_time for|between|about? <time>|<span>]",
    "passing",
    "painted dresser 1h dry 24h",
  ],
  [
    "<verb> … [# doors|door|houses|house|blocks|streets|floors|towns|miles down|over|up|away|from_me|from_us|from_here|below|above]",
    "beside",
    "sold desk to the neighbor 2 doors down 140",
  ],
  ["[<time>] epoxy|glue|resin|filler", "passing", "5 min epoxy 7"],
  ["^ <day>? [miles|mileage|mi :? <bare>] ;", "miles", "miles 24"],
  ["^ [miles|mileage|mi :? <bare>] for|to|<day>|,", "miles", "mileage 24 for the hutch"],
  ["drove|drived [<bare>] ;", "miles?", "drove 24"],
  [
    "drove|drived [<bare>] <day>|,|.|to|out|over|there|back|total|today|roundtrip|round_trip|yesterday",
    "miles?",
    "drove 24 to get dresser",
  ],
  ["drove|drived [<bare>] for <art>? <piece>", "miles?", "drove 24 for dresser"],
  ["$ [4] the|my|our|this|that|a|an", "passing", "screws 11.42 4 the desk"],
  ["<supply> [4] the|my|our|this|that|a|an <trait>* <piece> $", "passing", "screws 4 the desk 11.42"],
  ["[half|a|couple? a? dozen of?] <supply>", "passing", "half a dozen clamps 42"],
  [
    "[half|quarter of? a|an? <container> of?] <trait>|<plain>* <supply>",
    "passing",
    "half a gallon of stripper 26",
  ],
  ["[<span> of|worth_of?] <supply> $", "passing", "3 months of storage 180"],
  ["<~buy> [# things|items] :|,|-", "passing", "bought 3 things: stool 5, mirror 12"],
  [
    "rent|storage|storage_rent|space_rent … on|for the|my|our unit|space|booth|stall|locker|spot|lot [$] ;",
    "amount",
    "paid rent on the unit 85",
  ],
  ["parking|meter|garage $ [for|, <time>]", "passing", "parking 12.75 for two hours"],
  ["^ drove <miles> ,|and? [<time>] ;", "passing", "drove 24 miles 40 min"],
  ["<supply> [,? # <container> ,?] $", "passing", "paint 2 cans 24"],
  ["<supply> [, half? a? dozen|half_dozen ,?] $", "passing", "knobs, half a dozen, 21 bucks"],
  ["<supply> [,? <ofthem> ,?] $", "passing", "knobs, eight of them, 20"],
  ["[size #] <supply>", "passing", "size 10 screws 4"],
  ["^ [# x|×] <supply>", "vague", "3 x paint 12"],
  ["<~buy>|<sell> … [$ of $] ;", "vague", "bought dresser 40 of 50"],
  // Addresses, rooms, ranks.
  [
    "at|on|from|near|off|to|in [# <word> st|street|ave|avenue|rd|road|dr|drive|ln|lane|blvd|ct|court|pl|hwy|highway|pkwy|terrace|circle]",
    "passing",
    "picked up desk 40 at 1420 maple ave",
  ],
  [
    "at|on|from|near|off|to|in [# <word> <word> st|street|ave|avenue|rd|road|dr|drive|ln|lane|blvd|ct|court|pl|hwy|highway|pkwy|terrace|circle]",
    "passing",
    "picked up desk 40 at 1420 old mill rd",
  ],
  [
    "in|at|from|to|for|of|by|near|the apt|apartment|unit|booth|suite|room|space|aisle|row|exit|gate|building|bldg|stall|spot|lot|locker [#]",
    "passing",
    "sold desk 90 to the guy in booth 14",
  ],
  [
    "[on|off|near|at|from|along|by|down route|rt|highway|hwy|interstate #]",
    "passing",
    "bought desk 40 off route 9",
  ],
  [
    "sandpaper|unit|storage_unit|po_box|mailbox|steel_wool|pencil|brush|filter|bit|blade|stain|color|shade|size|size_of|part|model|locker|check|lot|row [<number>|<numbered>]",
    "passing",
    "sandpaper no. 2 8",
  ],
  [
    "[at|on|by|near? <art>? corner of? <any> and|& <any>]",
    "passing",
    "bought footstool at the corner of 9th and vine 6",
  ],
  ["$ … at|on [<house> <new>]", "beside", "sold desk 140 at 412 elm"],
  ["at|on [<house> <new>] for $", "beside", "bought desk at 412 elm for 40"],
  // Sizes, grits, ages, how many of something that is no piece.
  ["[<size>] <piece>", "passing", "bought 24x36 mirror 12"],
  [
    "[about|over|like|some|maybe? # people|guys|offers|messages|texts|calls|dogs|cats|kids|times|buyers|customers|folks|lookers|emails|likes|views|comments|questions|stops|flights|floors|stairs|steps|blocks|houses|sales|stores|trips|tries|weekends|days|nights asked|looked|messaged|called|offered|later?] !premium",
    "beside",
    "sold desk 90 after 10 people asked",
  ],
  ["gave|handed|paid … $ … for <art> [$] <piece>", "amount", "gave him a 50 for the 30 dollar desk"],
  ["<art> [$] <piece>", "beside", "deposit 30 on the 150 couch"],
  ["<several> … [for|at? all|all_of # of? them?]", "all", "sold the stools 65 all 3"],
  ["<several> … <eachof> ,? [<ofthem>]", "all", "sold the end tables at 25 each, 3 of them"],
  ["$ [for|,? the # of_them?] ;", "passing", "sold desk + chair, 130 the two"],
  ["<piece> … $ [for|,? <ofthem>] ;", "all", "pair of lamps sold 40 for both"],
  [
    "[as_agreed|as_we_agreed|like_we_agreed|what_we_agreed_on|for_what_we_agreed|for_what_we_agreed_on|at_the_agreed_price|for_the_agreed_price|at_the_price_we_agreed_on] !$",
    "passing",
    "kim picked up the dresser, as agreed",
  ],
  ["^ <sell> [one|another_one|another|something] for|at|,? $", "passing", "sold one for 45"],
  // What it was before, what was asked, what it is worth.
  ["<verb> … [worth $]", "passing", "donated 3 chairs worth 60"],
  ["$ [of <art>? $]", "beside", "refunded 15 of the 90"],
  [
    `<~sell> … [${WANTED} for|at|was? $ ,|but|and? got|took|accepted] $`,
    "beside",
    "sold the hutch, asked 250 got 210",
  ],
  [
    `[${WANTED}|listed|posted for|at|was? $ ,|but|and? got|took|accepted] $`,
    "beside",
    "asked 90 got 75 for the vanity",
  ],
  [
    `[${WANTED}|listed|posted for|at|was? $] ,|but|and? sold|went for? $`,
    "beside",
    "listed 120 sold 100 desk",
  ],
  [
    `[${WANTED} $] for <art>? <piece> ,|but|and? got|took|accepted $`,
    "beside",
    "wanted 100 for the desk, got 85, sold",
  ],
  [
    "^ [<art>? <person>|they|he|she|seller|owner wanted|wants|asked|was_asking|were_asking $ for] <art>? <piece> ,|but|and* i|we? got|paid|took|snagged|grabbed|gave it|them|her|him for? $",
    "beside",
    "seller wanted 80 for the highboy, got it for 55",
  ],
  [
    "<~buy>|paid $ [,|-|but|,? he|she|they|seller|it? asking|asked|wanted|was_asking|were_asking was|price? $]",
    "beside",
    "paid 35 asking was 50, sideboard",
  ],
  [
    "<~buy>|<~sell>|got|paid … [it|they|that was|were $ new|retail|in_the_store|in_stores|in_store]",
    "beside",
    "bought desk 30, it was 150 new",
  ],
  [
    "<~buy>|<~sell>|got|paid … [was|they|were|it|i|had|he|she|for? was|were|had? asking|tagged|priced|marked|ticketed|retails|retail at|for|it? $]",
    "beside",
    "bought armoire tagged 80 for 50",
  ],
  // "bought trunk 20, finished it, listed it 70" is a listing of ours.
  [
    "had <art>? <piece> [listed|up|posted|priced|tagged|marked at|for? $] ,|but|and? it|they? sold|went",
    "beside",
    "had the bench up for 60 and it went for 50",
  ],
  [
    "<piece> [was|were|is listed|up|posted|priced|tagged|marked at|for? $] ,|but|and* it|they? sold|went",
    "beside",
    "dresser was listed at 200, sold for 175",
  ],
  [
    "<~buy>|<~sell>|got|paid … [was|were|they|he|she|had was|were|had? it? listed at|for|it? $]",
    "beside",
    "bought desk 50, they had it listed 80",
  ],
  ["<~buy>|<~sell>|got <art>? <piece> [listed at|for $]", "beside", "bought desk listed at 80 for 50"],
  [
    "<~buy>|<~sell>|got|paid … [they|was|i|he|she? asked|wanted|wants for? $]",
    "beside",
    "bought desk 40 they wanted 60",
  ],
  [
    "<supply>|<list> … $ ,? [was|reg|regular|regularly|originally|normally|usually|retail|retails|down|marked_down|reduced|marked|discounted for|from|at|down? from? $]",
    "beside",
    "paint 12 normally 20",
  ],
  ["$ [after <art>? <percent> off|discount|coupon]", "passing", "paint 14 after 20% off"],
  ["[on # sites|boards|apps|pages|groups|places|sheets]", "beside", "posted vanity at 140 on two sites"],
  [
    "<stream> … [# students|people|kids|folks|attendees|participants|clients|customers]",
    "beside",
    "workshop 80 cash two students",
  ],
  ["<list>|now … $ [was|from|previously $] ;", "beside", "desk now 140 was 165"],
  [
    "<list>|<reprice>|now|is_now|down_to … $ [,? it? was|were|used_to_be|formerly|previously|instead_of|originally at? $]",
    "beside",
    "the hutch is now 225, was 260",
  ],
  ["[with|w # photos|pics|pictures|photo|pic]", "beside", "listed desk at 140 with 2 photos"],
  [
    "<~buy>|<~sell> … $ … [haggled|talked|negotiated|came_down from $]",
    "beside",
    "sold chest 95 she haggled from 110",
  ],
  ["<piece> [was|were|marked|tagged $] ,? got|bought|paid", "beside", "footstool was 10 got it for 6"],
  ["<~buy>|<~sell>|got|paid … [down from $]", "beside", "sold desk 90, down from 110"],
  ["<~buy>|<~sell>|got|paid … [instead of $]", "beside", "sold desk 90 instead of 110"],
  [
    "<~buy>|<~sell>|got|paid … [reg|regular|regularly|originally|normally|usually|new $]",
    "beside",
    "bought lamp 10 regularly 40",
  ],
  [
    "<sell>|$ … [including|includes|incl|counting <art>|what|he|she|they|already|$* deposit|deposits|down|down_payment|put_down|put|left]",
    "whole",
    "sold desk 150 total including the 40 deposit",
  ],
  [
    "$ total|in_total|altogether|all_told|all_in|in_all|in_the_end [with <art>? $? deposit|deposits|down_payment]",
    "whole",
    "they got the table, 190 total with the deposit",
  ],
  [
    "$ [with|and|, <art>? $? deposit|deposits|down_payment included|counted|counted_in]",
    "whole",
    "dresser went to pete for 150, deposit included",
  ],
  [
    "$ in_the_end|all_in|total|altogether [with|and|, <art>? $? deposit|deposits|down_payment included|counted|counted_in]",
    "whole",
    "sold the trunk 90 all in, deposit included",
  ],
  [
    "<~sell>|went|gone|took|paid|got … [at|for the|my|full* asking|list|ask|listing price?] !$",
    "asking",
    "sold the hutch at asking",
  ],
  [
    "<~sell>|went|gone|took|paid|got … [full|my|the asking|list|ask price?] !$",
    "asking",
    "got full asking for the hutch",
  ],
  [
    "<~sell>|went|gone|took|paid|got … [at|for? full_price|asking_price|list_price|the_full_price|what_i_asked|what_i_was_asking] !$",
    "asking",
    "sold it full price",
  ],
  ["^ <sell> it|them? [at|for that|that_price] ;", "asking", "sold at that"],
  // How far off somebody lives.
  [
    "[#|a streets|blocks|doors|houses|towns|farms|street|block|door over|down|away|up]",
    "passing",
    "a guy two streets over bought it for 100",
  ],
  [
    "<time> [right? before|after <art>? dinner|lunch|breakfast|supper|bed|bedtime|church|school|work|nap|coffee]",
    "passing",
    "sanded the crib an hour before dinner",
  ],
  // Times that are no work.
  [
    "^ [hauled|made|did|took|ran # loads|trips|runs|stops|rounds]",
    "passing",
    "hauled 3 loads, 88 miles total, 40 in gas",
  ],
  ["<sell> … [within|in_under|in_less_than <art>? <time>]", "passing", "it sold within the hour for 60"],
  ["[<time> ago]", "passing", "bought desk 40 15 min ago"],
  [
    "<~buy>|<~sell>|got|paid … [after|within|in|took|only|just|lasted|under <time>|<span>]",
    "passing",
    "sold couch 180 after 2 weeks",
  ],
  ["<~buy>|<~sell>|got|paid|<list> … [<span>|<time> later]", "passing", "sold couch 180 3 days later"],
  [
    "[dry|dries|dried|drying|cure|cures|cured|curing|set|sit|soak|soaked|wait|waited|let|lets it|dry|sit|cure|set|soak|time? for|about|is|of|in? <time>|<span>]",
    "passing",
    "sanded desk 2h let dry 24h",
  ],
  ["<time> [dry|drying|cure|curing time|between_coats?]", "vague", "primed desk 2h dry"],
  ["<miles> [, <eachway>]", "passing", "drove 24 miles, 12 each way"],
  [
    "<miles> [,|(|-? # there|out|over|up|down ,|and|&|+? # back|home )?]",
    "passing",
    "drove 30 miles, 15 there 15 back",
  ],
  ["<miles> [,|(|- # and|&|+|plus # )?] ;", "passing", "drove 22 miles (11 and 11)"],
  // What somebody takes of a sale.
  [
    "<sell> … $ … $ [of_it|of_that? went_to|goes_to|lost_to|out_in fee|fees]",
    "fee",
    "sold coffee table 55, 5 of it went to fees",
  ],
  [
    "[$ less|under|over|more|below|above than? asking|list_price|listed|full_price]",
    "passing",
    "sold rocking chair for 5 less than asking, 45",
  ],
  ["<sell> … $ and|,|&? [paid|cost_me|lost] $ in? fee|fees", "passing", "sold lamp 30 and paid 2 in fees"],
  [
    "<sell> … $ ,|-|and|but? [<art>? booth|app|site|mall|shop|store|market|auction|consignment|consigner|platform takes|took|keeps|kept|charges|charged|gets|got|keep|take out?] $ !!fee|fees|cut|commission",
    "fee",
    "sold lamp 40 booth took 4",
  ],
  // What is left after fees is no fee.
  [
    "<sell> … $ … [$ after|net_of|minus|less|before <art>? fees|fee|shipping|costs|cut|commission]",
    "net",
    "sold desk 140, got 126 after fees",
  ],
  ["<sell> … $ … [$ net]", "net", "sold desk 140, 126 net"],
  ["<sell> … $ … [net|netted|cleared|kept|pocketed $]", "net", "sold desk 140 netted 126"],
  ["<sell> … $ … [less|minus|after fees|fee $]", "net", "sold desk 140 less fees 126"],
  // An amount that may not be written down as it stands.
  ["[$ something|some|odd|ballpark|max|tops|minimum]", "vague", "sold desk 90 something"],
  ["[$ daily|nightly|quarterly]", "vague", "ads 15 daily"],
  ["[$ half|halves] ;", "vague", "gas 80 half"],
  ["[$ +] ;", "vague", "paint 12+"],
  ["$ [after tax|taxes|coupon|coupons|discount|discounts|everything]", "passing", "paint 12 after coupon"],
  ["[$ plus|+|before|without|w|with tax|taxes]", "vague", "bought desk 40 plus tax"],
  ["[sales? tax|taxes $]", "vague", "sold desk 90 sales tax 6.30"],
  ["that|this [one for|at $]", "amount", "sold that one for 40"],
  ["[one for|at $]", "vague", "bought 2 lamps one for 20"],
  ["# at|@ [<several>]", "vague", "bought 2 at 20 lamps"],
  [
    "[$ / yd|yard|ft|foot|gal|gallon|sheet|can|qt|quart|lb|oz|inch|mile|mi|hr|hour|box|pack|bag|roll|tube|piece|pc]",
    "vague",
    "3 yards fabric 10/yd",
  ],
  [
    "sandpaper|sanding_disc|sanding_discs|sanding_pad|sanding_pads|sanding_sponge|steel_wool|discs|paper [<grit> ,|and|&|/? <grit>? ,|and|&|/? <grit>?] ,|-? $",
    "passing",
    "sandpaper 120 and 220, 11 total",
  ],
  [
    "^ [<grit> ,|and|&|/? <grit>? ,|and|&|/? <grit>] sandpaper|sanding_disc|sanding_discs|sanding_pad|sanding_pads|discs|paper $",
    "passing",
    "120 and 220 sandpaper 9",
  ],
  ["sandpaper|sanding_disc|sanding_discs|sanding_pad|sanding_pads [<grit>] ;", "vague", "sandpaper 220"],
  [
    "<piece> … [# drawer|drawers|tier|tiers|door|doors|leg|legs] $",
    "passing",
    "sold dresser 48 inch 6 drawer 165",
  ],
  ["<buy> … [# drawer|tier|shelf|door|leg|piece|pc $] ;", "vague", "bought 5 drawer 40"],
  [
    "<buy> … $ … [second|2nd|another|other|got|one one|another? free]",
    "vague",
    "bought lamp 20 got second one free",
  ],
  // What has only been started has no time from before.
  ["<~start> … ,|-? <time> [so_far|already|now|in_all]", "passing", "started the chest, 40 min so far"],
  [
    "[is|are|at|took|taken|taking|needed|up? at|to|about? <time> so_far|already|now|total|altogether|in_all|in_total]",
    "vague",
    "dresser took 5h so far",
  ],
  ["<piece> [is|are|is_at at? <time>]", "vague", "dresser is at 5 hours"],
  ["<coats> [<time> each|apiece|ea]", "vague", "painted desk 2 coats 1h each"],
  ["<time> [each|apiece|ea per|day|coat|piece|drawer|side?]", "vague", "sanded desk 1h each day"],
  [
    "<time> [per|every|a day|coat|piece|drawer|side|night|morning|week]",
    "vague",
    "sanded desk 2h every night",
  ],
  ["[no|without|zero|minus_any fee|fees]", "passing", "sold desk 138 no fees"],
  ["$ … [paid|paid_me in_full|up_front]", "passing", "sold desk 160 paid in full"],
  [
    "<time> … on|for? [<art>? first|second|third|1st|2nd|3rd|last|final|base|top? coat|coats]",
    "passing",
    "spent 40 min on first coat, hall tree",
  ],
];

/** Tried when everything before has passed a number over. */
const LAST: readonly Row<NumberEffect>[] = [
  // The bot's own number without its sign, where no number of money can stand.
  ["[<piece> #] done|finished|is|started|all_done", "piece", "dresser 47 finished"],
  [
    "started|starting|finished|keeping|scrapped|donated|trashed|working_on <art>? [<piece> #] ;",
    "piece",
    "started desk 12",
  ],
  // Deposits beside a sale.
  ["<sell> … [$ deposit|down] !$", "deposit", "sold lamp 20 down"],
  ["<sell> … [deposit|down|deposit_of $]", "deposit", "sold lamp deposit 20"],
];

export const numbers = tableOf([...MEASURES, ...HELD, ...ROWS, ...OWED, ...LAST]);
