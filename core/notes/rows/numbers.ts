import { HELD } from "./agreed.ts";
import { COUNTS } from "./counts.ts";
import { MEASURES } from "./measures.ts";
import { NO_PRICES } from "./no-prices.ts";
import { AGAIN, type NumberEffect, OWED } from "./owed.ts";
import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";

const WANTED = "asked|asking|wanted|hoping_for|hoped_for|was_asking|holding_out_for";

/** What keeps a part of what a buyer pays. */
const TAKER =
  "<art>? booth|app|site|mall|shop|store|market|auction|consignment|consigner|platform|website|card|bank|processor card|people|company|reader|machine|terminal|processor|folks?";
const TAKES = "takes|took|keeps|kept|charges|charged|gets|got|keep|take|skimmed|skims";

const ROWS: readonly Row<NumberEffect>[] = [
  [
    "[took|collected|accepted|received|takes] a|the|his|her? $ deposit|down|down_payment",
    "down",
    "mom took a 40 deposit for the desk off a guy",
  ],
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
    "<~buy>|paid|<place> ,? $ [,|-|but|,? <art>? he|she|they|seller|it|<person>? asking|asked|wanted|was_asking|were_asking|started|opened|started_off|had_it was|price|at|for? $]",
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
  [
    "[with|w|and # photos|pics|pictures|photo|pic|likes|views|tags|keywords]",
    "passing",
    "listed desk with 2 photos",
  ],
  [
    "<~buy>|<~sell> … $ … [haggled|talked|negotiated|came_down from $]",
    "beside",
    "sold chest 95 she haggled from 110",
  ],
  ["<piece> [was|were|marked|tagged $] ,? got|bought|paid", "beside", "footstool was 10 got it for 6"],
  ["<~buy>|<~sell>|got|paid … [down from $]", "beside", "sold desk 90, down from 110"],
  [
    "<~buy>|got|paid … $ … [,|-|.|and|but* it|that|they|which|this? was|were|is|are|been|had_been|just|it_was|that_was|they_were|on|a* on_sale|on_clearance|sale|clearance|reduced|marked|marked_down|discounted|knocked_down|cut|slashed|dropped|special|offer down? from $]",
    "beside",
    "bought bench for 15, it was on sale from 30",
  ],
  // What it all comes to.
  [
    "<supply> $ … <supply> $ … [,|-|:|.|so|thats|that_is|that_makes|it_is|for|a|comes_to|all|in* total|total_of|in_total|=|equals|makes|altogether|in_all|all_told|sum|totals|totaling|adds_up_to|came_to|comes_to of|is|was|:|=? $]",
    "beside",
    "paint 14, brush 6, total 20 for desk",
  ],
  [
    "<buy> $ … <supply> $ … [,|-|:|.|so|thats|that_is|that_makes|it_is|for|a|comes_to|all|in* total|total_of|in_total|=|equals|makes|altogether|in_all|all_told|sum|totals|totaling|adds_up_to|came_to|comes_to of|is|was|:|=? $]",
    "beside",
    "desk bought 30 paint 12 = 42",
  ],
  // The one so long, the other so long.
  [
    "^ [#|<time> and|&|+|/|, <time>] on|for|with <art>? <piece> and|&|, <art>? <piece> ;",
    "vague",
    "30 and 45 min on desk and dresser",
  ],
  ["<~buy>|<~sell>|got|paid … [instead of $]", "beside", "sold desk 90 instead of 110"],
  [
    "had|with|brought $ [instead of $] for|on <art>? <piece> ,|.|-|and|but|so* i|we took|let|sold|accepted|gave|caved",
    "beside",
    "she came with 90 instead of 100 for the desk, i took it",
  ],
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
  // What came off a sale, before what it came to.
  [
    "<sell> <art>? <piece>? ,|-|and|.* [i|we|just|but|had_to* knocked|took|shaved|dropped|cut|came|gave|went|came_down|lopped|knocked_off|took_off him|her|them|it|buyer|the_price? off|down|by|to? $ off|down|less? ,|so|and|for|at|got|sold_for|it|its|that|thats|was|ended_up_at*] $ !off|less",
    "passing",
    "sold the dresser, knocked 20 off so 165",
  ],
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
  ["[saved|saving|saves me|us? $]", "passing", "no more storage, saved 60"],
  ["[<time> ago]", "passing", "bought desk 40 15 min ago"],
  [
    "!!coat|coats <~buy>|<~sell>|got|paid … [after|within|in|took|only|just|lasted|under like|about|under|barely|maybe* <time>|<span>]",
    "passing",
    "sold couch 180 after 2 weeks",
  ],
  [
    "<~buy>|<~sell>|<buyer>|got|took|grabbed|snagged|paid|<list>|<reprice> … [<span>|<time> later]",
    "passing",
    "sold couch 180 3 days later",
  ],
  [
    "[<span>|<time> later] <art>|some|this? <person>|<new>|i|we|it|sold|bought",
    "passing",
    "ten minutes later a lady bought the desk for 140",
  ],
  [
    "[drove|took|ran|hauled|brought|delivered it|them|<piece>? over|up|down|out] <miles>",
    "drove",
    "drove it over 9 miles",
  ],
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
    `<~sell> .|!|; $ ,|-|and|but* [${TAKER} ${TAKES} out?] $ of_it|of_that|of_this? !!fee|fees|cut|commission`,
    "fee",
    "bench is gone! 85, and the site took 7.65 of it",
  ],
  [
    `<~sell> … $ [.|,|;|-|!|but|though|although|even_though* i|we|had|id|was|were|originally|really|first|only* ${WANTED} for|at? $] !more|extra|off`,
    "beside",
    "sold armoire 180. wanted 220 but he had cash",
  ],
  [
    "$ [on_top_of|in_addition_to|besides|added_to <art>? $ he|she|they|buyer|<new>|<person> already|had|has|has_already|had_already* gave|given|left|put|put_down|paid|sent|dropped me|us|down|in|already|before|as|for|it* <art>? deposit?]",
    "beside",
    "ray got the hutch. 210 on top of the 50 he already gave me",
  ],
  [
    "<sell> … $ … $ [of_it|of_that? went_to|goes_to|lost_to|out_in card? fee|fees|processing]",
    "fee",
    "sold coffee table 55, 5 of it went to fees",
  ],
  [
    `<sell> … $ … $ [of_it|of_that? went_to|goes_to ${TAKER}]`,
    "fee",
    "sold dresser 165, 4.80 went to the site",
  ],
  [
    "[$ less|under|over|more|below|above than? asking|list_price|listed|full_price]",
    "passing",
    "sold rocking chair for 5 less than asking, 45",
  ],
  [
    "<sell> … $ and|,|-|.|but|&* [paid|cost_me|lost] $ in? card|site|app? fee|fees",
    "passing",
    "sold lamp 30 and paid 2 in fees",
  ],
  [
    `<~sell> … $ ,|-|.|and|but* [${TAKER} ${TAKES} out?] $ of_it|of_that|of_this? !!fee|fees|cut|commission`,
    "fee",
    "sold lamp 40 booth took 4",
  ],
  [
    "<sell> … $ … ,|-|and|but|.* [they|app|site|platform|booth|mall|shop|store took|take|takes|kept|keep|keeps|charge|charged] $ of_that|of_it|of_this? as|for|in their|the|its|a fee|fees|commission",
    "fee",
    "mirror sold for 150 at the consignment shop, they keep 30 of that as their fee",
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
  [
    "[full|asking|the_full|my|our|the ask|asking|asking_price|list_price|full_ask|full_price at|of|for?] $",
    "passing",
    "sold desk full ask 185",
  ],
  [
    "<supply>|<~buy>|<~spend> … $ [with|w|incl|including|after <art>? sales? tax|taxes included?] ;",
    "passing",
    "paint 22 with tax",
  ],
  ["[$ plus|+|before|without tax|taxes]", "vague", "bought desk 40 plus tax"],
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
    "[is|are|at|took|taken|taking|needed|up? at|to|about? <time> so_far|already|now|total|altogether|in_all|in_total|all_told|all_together|all_in|combined]",
    "so far",
    "dresser took 5h so far",
  ],
  [
    "<time> on|for|with|doing|<labor>* <art>? <piece> [so_far|already|now|total|altogether|in_all|in_total|all_told|all_together|all_in|combined] ;",
    "so far",
    "an hour on both nightstands combined",
  ],
  [
    "<time> on|for|with|in|into <art>? <piece> [so_far|already|now|total|altogether|in_all|in_total|all_told|all_together|all_in|combined]",
    "so far",
    "thats 10h in the desk all together",
  ],
  ["<piece> [is|are|is_at at? <time>]", "vague", "dresser is at 5 hours"],
  [
    "<time> on|sanding|painting|<labor>|<art>* <piece> [,|and* then on? <art>? <piece>] ;",
    "vague",
    "sanded 2h dresser then desk",
  ],
  [
    "<sell> … [its|it_is|thats|measures|measured|only|just* $ wide|across|long|deep|tall|high|in_diameter]",
    "passing",
    "bed frame sold as queen but its 54 wide so its a full",
  ],
  [
    "<supply> ,|-|and* [$ out|missing|broken|bad|dead|burnt|cracked|loose|bent] ;",
    "passing",
    "vanity mirror has 8 bulbs, 2 out",
  ],
  ["<sell> [as a|an $] !for|cash|,", "passing", "desk sold as a 48 but measures 46 wide"],
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
  [
    "[<art>? lunch|happy|rush|dinner|witching|golden|cocktail|magic hour]",
    "passing",
    "finished the desk over the lunch hour",
  ],
  [
    "[two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fifteen|twenty|thirty <opinion>|<plain>|<trait>? <lives>]",
    "passing",
    "sold the dresser 140 between two meetings",
  ],
  // Deposits beside a sale.
  ["<sell> … [$ deposit|down] !$", "deposit", "sold lamp 20 down"],
  ["<sell> … [deposit|down|deposit_of $]", "deposit", "sold lamp deposit 20"],
];

export const numbers = tableOf([
  ...NO_PRICES,
  ...MEASURES,
  ...HELD,
  ...COUNTS,
  ...ROWS,
  ...OWED,
  ...LAST,
  ...AGAIN,
]);
