import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";

/**
 * What a number is beside the amount of the note. "passing": it says nothing of money. "beside": so where another
 * amount stands in the line; alone it may be the amount after all. "amount": the amount of the note for certain,
 * whatever stands below. "vague": an amount that may not be written down as it stands. "net": what was left after fees.
 * "part paid", "half paid": what the buyer has paid of it; "owed", "half owed", "all owed": what is still to pay.
 * "extra": asked for on top of the price; "less": taken off it; "after fee": a fee of which it is not said whether
 * the price is without it. "miles": how far it was; "miles?": so, most likely.
 * "piece": the number of the piece. "all": how many the
 * pieces before it are.
 */
export type NumberEffect =
  | "passing"
  | "beside"
  | "amount"
  | "vague"
  | "net"
  | "deposit"
  | "owed"
  | "half owed"
  | "part paid"
  | "half paid"
  | "extra"
  | "less"
  | "after fee"
  | "all owed"
  | "piece"
  | "all"
  | "miles"
  | "miles?";

const ROWS: readonly Row<NumberEffect>[] = [
  ["<~buy> … $ and|then|,|& [listed $]", "amount", "bought dresser 40 and listed 180"],
  [
    "to|by [# girls|guys|kids|ladies|women|men|students|sisters|brothers|people|friends]",
    "passing",
    "sold desk to 2 girls 140",
  ],
  ["^ !i|we|ive <word> [put|left $ on|down|for] <art>? <piece>", "deposit", "bob put 20 on desk"],
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
  ["^ [miles|mileage|mi :? <bare>] ;", "miles", "miles 24"],
  ["^ [miles|mileage|mi :? <bare>] for|to|<day>|,", "miles", "mileage 24 for the hutch"],
  ["drove|drived [<bare>] ;", "miles?", "drove 24"],
  [
    "drove|drived [<bare>] <day>|,|.|to|out|over|there|back|total|today|roundtrip|round_trip|yesterday",
    "miles?",
    "drove 24 to get dresser",
  ],
  ["drove|drived [<bare>] for <art>? <piece>", "miles?", "drove 24 for dresser"],
  ["^ drove <miles> ,|and? [<time>] ;", "passing", "drove 24 miles 40 min"],
  ["<supply> [# <container>] $", "passing", "paint 2 cans 24"],
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
  ["route|rt|highway|hwy|interstate [#]", "passing", "bought desk 40 off route 9"],
  [
    "sandpaper|unit|storage_unit|steel_wool|pencil|brush|filter|bit|blade|stain|color|shade|size|size_of|part|model|locker|check|lot|row [<number>|<numbered>]",
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
    "[about|over|like|some|maybe? # people|guys|offers|messages|texts|calls|dogs|cats|kids|times|buyers|customers|folks|lookers|emails|likes|views|comments|questions|stops|flights|floors|stairs|steps|blocks|houses|sales|stores|trips|tries|weekends|days|nights asked|looked|messaged|called|offered|later?]",
    "beside",
    "sold desk 90 after 10 people asked",
  ],
  ["<art> [$] <piece> for $", "beside", "sold my $5 lamp for 40"],
  ["gave|handed|paid … $ … for <art> [$] <piece>", "amount", "gave him a 50 for the 30 dollar desk"],
  ["<art> [$] <piece>", "beside", "deposit 30 on the 150 couch"],
  ["<several> … [for|at? all|all_of # of? them?]", "all", "sold the stools 65 all 3"],
  // What it was before, what was asked, what it is worth.
  ["<verb> … [worth $]", "passing", "donated 3 chairs worth 60"],
  ["$ [of <art>? $]", "beside", "refunded 15 of the 90"],
  [
    "<~buy>|<~sell>|got|paid … [was|they|were|it|i|had|he|she|for? was|were|had? asking|tagged|priced|marked|ticketed|listed|retails|retail at|for|it? $]",
    "beside",
    "bought armoire tagged 80 for 50",
  ],
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
    "<sell> … [including|includes|incl|counting|with <art>? $ deposit|deposits]",
    "beside",
    "sold desk 150 total including the 40 deposit",
  ],
  // Times that are no work.
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
  ["[$ something|some|odd|ish|ballpark|max|tops|minimum]", "vague", "sold desk 90 something"],
  ["[$ daily|nightly|quarterly]", "vague", "ads 15 daily"],
  ["[$ half|halves] ;", "vague", "gas 80 half"],
  ["[$ +] ;", "vague", "paint 12+"],
  ["$ [after tax|taxes|coupon|coupons|discount|discounts|everything]", "passing", "paint 12 after coupon"],
  ["[$ + tax]", "vague", "bought desk 40 + tax"],
  ["[$ plus|before|without|w|with tax|taxes]", "vague", "bought desk 40 plus tax"],
  ["[sales? tax|taxes $]", "vague", "sold desk 90 sales tax 6.30"],
  ["[one for|at $]", "vague", "bought 2 lamps one for 20"],
  ["# at|@ [<several>]", "vague", "bought 2 at 20 lamps"],
  [
    "[$ / yd|yard|ft|foot|gal|gallon|sheet|can|qt|quart|lb|oz|inch|mile|mi|hr|hour|box|pack|bag|roll|tube|piece|pc]",
    "vague",
    "3 yards fabric 10/yd",
  ],
  ["sandpaper|sanding_disc|sanding_discs|sanding_pad|sanding_pads [<grit>] ;", "vague", "sandpaper 220"],
  ["<buy> … [# drawer|tier|shelf|door|leg|piece|pc $] ;", "vague", "bought 5 drawer 40"],
  [
    "<buy> … $ … [second|2nd|another|other|got|one one|another? free]",
    "vague",
    "bought lamp 20 got second one free",
  ],
  ["[<time> total|altogether|so_far|in_all|in_total|now]", "vague", "desk 3h total now"],
  [
    "[is|are|at|took|taken|taking|needed|up? at|to|about? <time> so_far|already|now|total] ",
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
  ["^ unit|locker|bay|space [#]", "passing", "unit 2 storage rent 88"],
  [
    "<time> … on|for? [<art>? first|second|third|1st|2nd|3rd|last|final|base|top? coat|coats]",
    "passing",
    "spent 40 min on first coat, hall tree",
  ],
  // What is still owed of a sale, and what came in beside it.
  [
    "<~sell>|bought|let|flipped … [paid|paid_me|got|gave|gave_me|put|cash|with $ down|cash|now|today|so_far|up_front?] … owes|owe|owed|owing|outstanding",
    "beside",
    "sold #4 120 paid 70 owes 50",
  ],
  [
    "<~sell>|bought|let|flipped … $ … [$ down|cash|now|today|deposit|up_front] … owes|owe|owed|owing|outstanding",
    "beside",
    "sold coffee table 95, 45 down 50 owed",
  ],
  [
    "<~sell>|let|flipped … [<art>? half of? it? is|still? owed|owing|outstanding|unpaid|to_come]",
    "half owed",
    "sold lamp 40, half owed",
  ],
  [
    "<~sell>|let|flipped … [she|he|they|still* owes|owe me|us? half of? it?]",
    "half owed",
    "sold lamp 40, he owes me half",
  ],
  [
    "<~sell>|let|flipped … [with? all|everything|the_whole_thing|the_full_amount|it_all of? it|that? is|still? owed|owing|outstanding|unpaid|to_come]",
    "all owed",
    "sold the trunk for 90 all of it owed",
  ],
  [
    "[with|and? <art>? other|last|remaining|rest|another? $ is|are|was? still|is? owed|owing|outstanding|to_come|left_to_pay|to_go|unpaid till|until|til|by|on|next|this* <day>|payday|next_week|next_month]",
    "owed",
    "sold both chairs 130, 30 owed till friday",
  ],
  [
    "[with|and? <art>? other|last|remaining|rest|another? $ is|are|was? still|is? owed|owing|outstanding|to_come|left_to_pay|to_go|unpaid to? me|us?]",
    "owed",
    "sold desk 200, 50 still owed",
  ],
  [
    "<sell> … $ ,? [<new>|<kin> still? owes|owe me|us? $ still|yet|on_it?]",
    "owed",
    "sold chest 95 marge owes 20 still",
  ],
  [
    "<~sell>|bought|took|let|flipped … [still? owes|owe|owing|still_owes|owed me|us|on_it? still|the|another|about* last|other|rest|remaining|balance? ,|:|of? $ of? it? till|until|til|by|on|next* <day>|payday|next_week|next_month]",
    "owed",
    "sold desk 200 owes me 50 till friday",
  ],
  [
    "<~sell>|bought|took|let|flipped … [still? owes|owe|owing|still_owes|owed me|us|on_it? still|the|another|about* last|other|rest|remaining|balance? ,|:|of? $ of? it? yet|still?]",
    "owed",
    "sold desk 200 she owes me 50",
  ],
  [
    "<~sell>|let|flipped … [she|he|they|buyer|guy|lady? owes|owe|owed|still_owes me|us? all|everything|the_whole_thing|the_full_amount|it_all|all_of_it of? it?]",
    "all owed",
    "sold desk 160 she owes me all of it",
  ],
  [
    "<sell> … $ … [half now|today|down|up_front|cash ,|and|&|-? half|rest|the_rest on? later|due|owed|next_week|<day>]",
    "half paid",
    "sold desk 140 half now half later",
  ],
  [
    "<sell> … $ … [$ now|today|up_front|so_far|already|first|down] and|then|,|&|-? $|rest|the_rest",
    "part paid",
    "sold desk 140 100 now 40 later",
  ],
  [
    "<sell> … $ … [$ later|to_come|to_go|due|left_to_pay|still_due|next_week|next_month|payday|tomorrow on|by|at|this|next? <day>|payday|pickup?]",
    "owed",
    "sold desk 140, 40 due friday",
  ],
  [
    "<sell> … $ now|today|up_front|first|down and|then|,|&|-? [$ on|this|next? <day>]",
    "owed",
    "sold desk 140, 100 today 40 friday",
  ],
  [
    "<sell> … $ ,|-|and|but? [he|she|they|buyer|guy|lady|<new>? has|only|already? paid|paid_me|got|gave|gave_me|handed_me|handed_over|sent|put|took|received|collected me? $ so_far|of_it|of_that|already|now|today|first|up_front?] !back|,|for|cash|change|to|toward|towards|on",
    "part paid",
    "sold desk 140 got 100 of it",
  ],
  [
    "<sell> … $ ,? he|she|they? [got|paid|paid_me|gave_me $] cash|check|card|transfer ;",
    "part paid",
    "sold desk 140 got 100 cash",
  ],
  ["<sell> … <piece> … $ [$ now|so_far|up_front|already] ;", "part paid", "sold desk 140 100 now"],
  // More or less than the number beside it.
  [
    "<sell> … $ [plus|+|and|&|w|with|,? <art>? $ for|in? delivery|shipping|assembly|hauling|gas_money|fuel|setup|tip|delivery_fee|delivery_charge|stairs|delivering|dropping_it_off it?]",
    "extra",
    "sold desk 140 plus 20 delivery",
  ],
  [
    "<buy> … <piece> … $ [plus|+|and|&|w|with|,? <art>? $ for|in|sales? tip|tax|taxes|premium|buyers_premium]",
    "extra",
    "bought dresser 40 plus 3 tax",
  ],
  [
    "<sell>|<buy> … $ [less|minus $ for? delivery|gas|tip|fuel|shipping|scratch|the_scratch?] ;",
    "less",
    "bought dresser 40 less 5",
  ],
  [
    "<sell> … $ [after|and|,? <someone>|they|app|site|it? took|takes|take|taking|kept|keep out? <art>? $ in|for|of|as? fee|fees|cut|commission]",
    "after fee",
    "sold desk 140 after they took 8 in fees",
  ],
  ["<sell> … $ [after <art>? $ fee|fees]", "after fee", "sold desk 140 after 14 fee"],
  // The bot's own number without its sign, where no number of money can stand.
  ["[<piece> #] done|finished|is|started|all_done", "piece", "dresser 47 finished"],
  [
    "started|starting|finished|keeping|scrapped|donated|trashed|working_on <art>? [<piece> #] ;",
    "piece",
    "started desk 12",
  ],
  // Deposits beside a sale.
  ["<sell> … [$ deposit|down]", "deposit", "sold lamp 20 down"],
  ["<sell> … [deposit|down|deposit_of $]", "deposit", "sold lamp deposit 20"],
];

export const numbers = tableOf(ROWS.map(([pattern, effect, note]) => [pattern.trim(), effect, note]));
