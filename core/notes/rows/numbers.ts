import { HELD } from "./agreed.ts";
import { COUNTS } from "./counts.ts";
import { LAMENTED, NOBODY } from "./laments.ts";
import { MEASURES } from "./measures.ts";
import { NO_PRICES } from "./no-prices.ts";
import { AGAIN, type NumberEffect, OWED } from "./owed.ts";
import { rowsOf } from "./row.ts";
import { tableOf } from "./table.ts";

const WANTED = "asked|asking|wanted|hoping_for|hoped_for|was_asking|holding_out_for";

/** What keeps a part of what a buyer pays. */
const TAKER =
  "<art>? booth|app|site|mall|shop|store|market|auction|consignment|consigner|platform|website|card|bank|processor card|people|company|reader|machine|terminal|processor|folks?";
const TAKES = "takes|took|keeps|kept|charges|charged|gets|got|keep|take|skimmed|skims";

const PRICE = "asking|list|ask|asking_price|list_price|listing_price|full_price|full_asking";
/** What a piece was listed at, in whatever words. */
const ASKED =
  "what|that|the|my|our|its|full|i|we|it|they|was|were|had|have|id|wed* asking|asked|list|listed|listing|ask|asking_price|list_price|listing_price|price|posted|wanted|advertised";
const SOLD = "<~sell>|went|go|gone|took|got";

const ROWS = rowsOf<NumberEffect>({
  "down: mom took a 40 deposit for the desk off a guy":
    "[took|collected|accepted|received|takes] a|the|his|her? $ deposit|down|down_payment",
  // What it was before, what was asked, what it is worth.
  "passing: donated 3 chairs worth 60": "<verb> … [worth $]",
  "beside: refunded 15 of the 90": "$ [of <art>? $]",
  "beside: listed 120 sold 100 desk": `[${WANTED}|listed|posted for|at|was? $] ,|but|and? sold|went for? $`,
  "passing: bought desk 30, it was 150 new":
    "[it|they|that|these|those|<piece>? was|were|is|are|cost|costs|sold_for|retailed_for|retails_for|goes_for|runs $ new|brand_new|retail|at_retail|in_the_store|in_stores|in_store|when_new|back_then|back_in_the_day|in_its_day]",
  "passing: listed table 80, same as the one i sold for 120":
    "[just|exactly|almost|pretty_much|about? like|similar_to|same_as|identical_to the|a|that? one|ones|last_one|other_one|last_time that|which|i|we|she|he|they|<kin>|<person>|<new>|my|just|had* sold|listed|got|bought|paid|went|posted|flipped <any>? last_year|last_month|last_week|before|online|in_june? for|at? $]",
  "beside: bought armoire tagged 80 for 50":
    "<~buy>|<~sell>|got|paid … [was|they|were|it|i|had|he|she|for? was|were|had? asking|tagged|priced|marked|ticketed|retails|retail at|for|it? $]",
  // "bought trunk 20, finished it, listed it 70" is a listing of ours.
  "beside: had the bench up for 60 and it went for 50":
    "had <art>? <piece> [listed|up|posted|priced|tagged|marked at|for? $] ,|but|and? it|they? sold|went",
  "beside: bought desk 50, they had it listed 80":
    "<~buy>|<~sell>|got|paid … [was|were|they|he|she|had was|were|had? it? listed at|for|it? $]",
  "beside: bought desk listed at 80 for 50": "<~buy>|<~sell>|got <art>? <piece> [listed at|for $]",
  "beside: paint 12 normally 20":
    "<supply>|<list> … $ ,? [was|reg|regular|regularly|originally|normally|usually|retail|retails|down|marked_down|reduced|marked|discounted for|from|at|down? from? $]",
  "passing: paint 14 after 20% off": "$ [after <art>? <percent> off|discount|coupon]",
  "beside: posted vanity at 140 on two sites": "[on # sites|boards|apps|pages|groups|places|sheets]",
  "beside: workshop 80 cash two students":
    "<stream> … [# students|people|kids|folks|attendees|participants|clients|customers]",
  "beside: desk now 140 was 165": "<list>|now … $ [was|from|previously $] ;",
  "beside: the hutch is now 225, was 260":
    "<list>|<reprice>|now|is_now|down_to … $ [,? it? was|were|used_to_be|formerly|previously|instead_of|originally at? $]",
  "passing: listed desk with 2 photos":
    "[with|w|and # photos|pics|pictures|photo|pic|likes|views|tags|keywords]",
  "beside: sold chest 95 she haggled from 110":
    "<~buy>|<~sell> … $ … [haggled|talked|negotiated|came_down from $]",
  "beside: haggled an armoire down from 80 to 55":
    "haggled|bargained|negotiated|talked|knocked|got … [down? from $] to $",
  "beside: bought buffet 85, 15 less than he wanted":
    "<~buy>|paid … $ [,|-|;|(* $ less|under|below|cheaper than? what? he|she|they|seller|<art>? <person> wanted|asked|was_asking|were_asking|had_it_at )?]",
  // A share of the whole price.
  "vague: bought lamp and clock 40, clock was 30 of that":
    "$ … <piece> was|is|were|for|at? [$ of_that|of_it|of_which|of_them] ;",
  // Of a receipt what is not the shop's: how much is left is not said.
  "vague: receipt 23.40, 13.40 of that groceries, rest paint":
    "$ … [$ of_that|of_it|of_which|was|were|is|for* groceries|lunch|dinner|mine|personal|for_home|for_the_house|snacks|food|ours]",
  "beside: sofa was 260, now it's hers for 230":
    "!<previous> <piece> [was|were $ ,|but|and|now*] its|theyre|gone|sold|went hers|his|theirs|now|for|at* $",
  "beside: bought bench for 15, it was on sale from 30":
    "<~buy>|got|paid … $ … [,|-|.|and|but* it|that|they|which|this? was|were|is|are|been|had_been|just|it_was|that_was|they_were|on|a* on_sale|on_clearance|sale|clearance|reduced|marked|marked_down|discounted|knocked_down|cut|slashed|dropped|special|offer down? from $]",
  // What it all comes to.
  "beside: paint 14, brush 6, total 20 for desk":
    "<supply>|<buy> $ … <supply> $ … [,|-|:|.|so|thats|that_is|that_makes|it_is|for|a|comes_to|all|in* total|total_of|in_total|=|equals|makes|altogether|in_all|all_told|sum|totals|totaling|adds_up_to|came_to|comes_to of|is|was|:|=? $]",
  // The one so long, the other so long.
  "vague: 30 and 45 min on desk and dresser":
    "^ [#|<time> and|&|+|/|, <time>] on|for|with <art>? <piece> and|&|, <art>? <piece> ;",
  "beside: she came with 90 instead of 100 for the desk, i took it":
    "had|with|brought $ [instead of $] for|on <art>? <piece> ,|.|-|and|but|so* i|we took|let|sold|accepted|gave|caved",
  "whole: sold desk 150 total including the 40 deposit":
    "<sell>|$ … [including|includes|incl|counting <art>|what|he|she|they|already|$* deposit|deposits|down|down_payment|put_down|put|left]",
  "whole: they got the table, 190 total with the deposit":
    "$ total|in_total|altogether|all_told|all_in|in_all|in_the_end [with <art>? $? deposit|deposits|down_payment]",
  "whole: sold the trunk 90 all in, deposit included":
    "$ in_the_end|all_in|total|altogether? [with|and|, <art>? $? deposit|deposits|down_payment included|counted|counted_in]",
  "passing: cot sold to my sister in law at a discount, 40":
    "[at a|an <opinion>|<trait>? discount|loss|steal|markdown|bargain]",
  "vague: sanded 3 of the 4 chairs, 20 min a chair": "<piece> … [<time> a|an|per <piece>]",
  "off asking: sold the dresser for 20 under asking": `${SOLD} … for|at|took|got|, [$ less|under|below|lower|off|cheaper|shy than|of? ${ASKED} it|them|price?] !!$`,
  "off asking: sold the dresser for 10 percent off": `<sell>|went|go|gone … for|at|,? [<percent>|half less|off|lower|under|below|cheaper than|of? ${ASKED}? it|them|price?] !!$`,
  "over asking: sold the dresser for 20 over asking": `${SOLD} … for|at|took|got|, [$|<percent> more|over|above|extra|higher|past than? ${ASKED} it|them|price?] !!$`,
  "over asking: got asking price plus 10 for the dresser": `${SOLD} … for|at* [full|my|our|the* ${PRICE} plus|and|+|with an|another|extra? $|<percent> more|extra|on_top?] !!$`,
  "of asking: got 90% of asking for the dresser": `${SOLD} … for|at? [<percent>|half of? ${ASKED} it|them|price?] !!$`,
  "beside asking: sold the dresser for 60 more than i paid": `${SOLD} … for|at [$ less|more|over|under|above|below than? what? i|we* paid|gave|cost|bought|spent me|it|for|on*] !!$`,
  "asking: sold the hutch at asking":
    "<~sell>|went|gone|took|paid|got … [at|for the|my|full* asking|list|ask|listing price?] !$",
  "asking: got full asking for the hutch":
    "<~sell>|went|gone|took|paid|got … [full|my|our|the asking|list|ask price?] !$",
  "asking: sold it full price":
    "<~sell>|went|gone|took|paid|got … [at|for? full_price|asking_price|list_price|the_full_price|my_price|our_price|its_price|what_i_asked|what_i_was_asking] !$|down",
  "asking: sold at that": "^ <sell> it|them? [at|for that|that_price] ;",
  // What came off a sale, before what it came to.
  "passing: sold the dresser, knocked 20 off so 165":
    "<sell> <art>? <piece>? ,|-|and|.* [i|we|just|but|had_to* knocked|took|shaved|dropped|cut|came|gave|went|came_down|lopped|knocked_off|took_off him|her|them|it|buyer|the_price? off|down|by|to? $ off|down|less? ,|so|and|for|at|got|sold_for|it|its|that|thats|was|ended_up_at*] $ !off|less",
  // How far off somebody lives.
  "passing: a guy two streets over bought it for 100":
    "[#|a streets|blocks|doors|houses|towns|farms|street|block|door over|down|away|up]",
  "passing: sanded the crib an hour before dinner":
    "<time> [right? before|after <art>? dinner|lunch|breakfast|supper|bed|bedtime|church|school|work|nap|coffee]",
  // Times that are no work.
  "passing: hauled 3 loads, 88 miles total, 40 in gas":
    "^ [hauled|made|did|took|ran # loads|trips|runs|stops|rounds]",
  "passing: it sold within the hour for 60": "<sell> … [within|in_under|in_less_than <art>? <time>]",
  "passing: no more storage, saved 60": "[saved|saving|saves me|us? $]",
  "passing: bought desk 40 15 min ago": "[<time> ago]",
  "passing: sold couch 180 after 2 weeks":
    "!!coat|coats <~buy>|<~sell>|got|paid … [after|within|in|took|only|just|lasted|under like|about|under|barely|maybe* <time>|<span>]",
  "passing: raised the desk to 150, three people messaged in ten minutes":
    "<list>|<reprice> … [in|within|in_under <time>]",
  "passing: sold couch 180 3 days later":
    "<~buy>|<~sell>|<buyer>|got|took|grabbed|snagged|paid|<list>|<reprice> … [<span>|<time> later]",
  "passing: ten minutes later a lady bought the desk for 140":
    "[<span>|<time> later] <art>|some|this? <person>|<new>|i|we|it|sold|bought",
  "drove: drove it over 9 miles":
    "[drove|took|ran|hauled|brought|delivered it|them|<piece>? over|up|down|out] <miles>",
  "passing: sanded desk 2h let dry 24h":
    "[dry|dries|dried|drying|cure|cures|cured|curing|set|sit|soak|soaked|wait|waited|let|lets it|dry|sit|cure|set|soak|time? for|about|is|of|in? <time>|<span>]",
  "vague: primed desk 2h dry": "<time> [dry|drying|cure|curing time|between_coats?]",
  "passing: drove 24 miles, 12 each way": "<miles> [, <eachway>]",
  "passing: drove 30 miles, 15 there 15 back":
    "<miles> [,|(|-? # there|out|over|up|down ,|and|&|+? # back|home )?]",
  "passing: drove 22 miles (11 and 11)": "<miles> [,|(|- # and|&|+|plus # )?] ;",
  // What somebody takes of a sale.
  "fee: bench is gone! 85, and the site took 7.65 of it": `<~sell> .|!|;? … $ ,|-|.|and|but* [${TAKER} ${TAKES} out?] $ of_it|of_that|of_this? !!fee|fees|cut|commission`,
  "fee: desk sold 150 by card, they took 2.30": `<~sell> … $ ,|by|via|on|with|in|paid* card|debit|credit|credit_card|debit_card ,|-|.|and|but|so* [<art>? they|it|reader|bank|app|site|company|processor|machine|terminal ${TAKES} me?] $ of_it|of_that? !!fee|fees|cut|commission`,
  "beside: ray got the hutch. 210 on top of the 50 he already gave me":
    "$ [on_top_of|in_addition_to|besides|added_to <art>? $ he|she|they|buyer|<new>|<person> already|had|has|has_already|had_already* gave|given|left|put|put_down|paid|sent|dropped me|us|down|in|already|before|as|for|it* <art>? deposit?]",
  "fee: sold coffee table 55, 5 of it went to fees":
    "<sell> … $ … $ [of_it|of_that? went_to|goes_to|lost_to|out_in card? fee|fees|processing]",
  "fee: sold dresser 165, 4.80 went to the site": `<sell> … $ … $ [of_it|of_that? went_to|goes_to ${TAKER}]`,
  "passing: sold rocking chair for 5 less than asking, 45":
    "[$ less|under|over|more|below|above than? asking|list_price|listed|full_price]",
  "passing: sold lamp 30 and paid 2 in fees":
    "<sell> … $ and|,|-|.|but|&* [paid|cost_me|lost] $ in? card|site|app? fee|fees",
  "fee: mirror sold for 150 at the consignment shop, they keep 30 of that as their fee":
    "<sell> … $ … ,|-|and|but|.* [they|app|site|platform|booth|mall|shop|store took|take|takes|kept|keep|keeps|charge|charged] $ of_that|of_it|of_this? as|for|in their|the|its|a fee|fees|commission",
  // What is left after fees is no fee.
  "net: sold desk 140, got 126 after fees":
    "<sell> … $ … [$ after|net_of|minus|less|before <art>? fees|fee|shipping|costs|cut|commission]",
  "net: sold desk 140, 126 net": "<sell> … $ … [$ net]",
  "net: sold desk 140 netted 126": "<sell> … $ … [net|netted|cleared|kept|pocketed $]",
  "net: sold desk 140 less fees 126": "<sell> … $ … [less|minus|after fees|fee $]",
  // An amount that may not be written down as it stands.
  "vague: sold desk 90 something": "[$ something|some|odd|ballpark|max|tops|minimum]",
  "vague: ads 15 daily": "[$ daily|nightly|quarterly]",
  "vague: gas 80 half": "[$ half|halves|+] ;",
  "passing: sold desk full ask 185":
    "[full|asking|the_full|my|our|the ask|asking|asking_price|list_price|full_ask|full_price at|of|for?] $",
  "vague: bought desk 40 plus tax": "[$ plus|+|before|without tax|taxes]",
  "vague: sold desk 90 sales tax 6.30": "[sales? tax|taxes $]",
  "amount: sold that one for 40": "that|this [one for|at $]",
  "vague: bought 2 lamps one for 20": "[one for|at $]",
  "vague: bought 2 at 20 lamps": "# at|@ [<several>]",
  "vague: 3 yards fabric 10/yd":
    "[$ / yd|yard|ft|foot|gal|gallon|sheet|can|qt|quart|lb|oz|inch|mile|mi|hr|hour|box|pack|bag|roll|tube|piece|pc]",
  "passing: sandpaper 120 and 220, 11 total":
    "sandpaper|sanding_disc|sanding_discs|sanding_pad|sanding_pads|sanding_sponge|steel_wool|discs|paper [<grit> ,|and|&|/? <grit>? ,|and|&|/? <grit>?] ,|-? $",
  "passing: 120 and 220 sandpaper 9":
    "^ [<grit> ,|and|&|/? <grit>? ,|and|&|/? <grit>] sandpaper|sanding_disc|sanding_discs|sanding_pad|sanding_pads|discs|paper $",
  "vague: sandpaper 220": "sandpaper|sanding_disc|sanding_discs|sanding_pad|sanding_pads [<grit>] ;",
  "passing: sold dresser 48 inch 6 drawer 165":
    "<piece> … [# drawer|drawers|tier|tiers|door|doors|leg|legs] $",
  "vague: bought 5 drawer 40": "<buy> … [# drawer|tier|shelf|door|leg|piece|pc $] ;",
  "vague: bought lamp 20 got second one free":
    "<buy> … $ … [second|2nd|another|other|got|one one|another? free]",
  // What has only been started has no time from before.
  "passing: started the chest, 40 min so far": "<~start> … ,|-? <time> [so_far|already|now|in_all]",
  "so far: dresser took 5h so far":
    "[is|are|at|took|taken|taking|needed|up? at|to|about? <time> so_far|already|now|total|altogether|in_all|in_total|all_told|all_together|all_in|combined]",
  "so far: an hour on both nightstands combined":
    "<time> on|for|with|doing|<labor>* <art>? <piece> [so_far|already|now|total|altogether|in_all|in_total|all_told|all_together|all_in|combined] ;",
  "so far: thats 10h in the desk all together":
    "<time> on|for|with|in|into <art>? <piece> [so_far|already|now|total|altogether|in_all|in_total|all_told|all_together|all_in|combined]",
  "vague: dresser is at 5 hours": "<piece> [is|are|is_at at? <time>]",
  "vague: sanded 2h dresser then desk":
    "<time> on|sanding|painting|<labor>|<art>* <piece> [,|and* then on? <art>? <piece>] ;",
  "passing: bed frame sold as queen but its 54 wide so its a full":
    "<sell> … [its|it_is|thats|measures|measured|only|just* $ wide|across|long|deep|tall|high|in_diameter]",
  "passing: vanity mirror has 8 bulbs, 2 out":
    "<supply> ,|-|and* [$ out|missing|broken|bad|dead|burnt|cracked|loose|bent] ;",
  "passing: desk sold as a 48 but measures 46 wide": "<sell> [as a|an $] !for|cash|,",
  "vague: painted desk 2 coats 1h each": "<coats> [<time> each|apiece|ea]",
  "vague: sanded desk 1h each day": "<time> [each|apiece|ea per|day|coat|piece|drawer|side?]",
  "vague: sanded desk 2h every night": "<time> [per|every|a day|coat|piece|drawer|side|night|morning|week]",
  "passing: sold desk 138 no fees": "[no|without|zero|minus_any fee|fees]",
  "passing: sold desk 160 paid in full": "$ … [paid|paid_me in_full|up_front]",
  "passing: spent 40 min on first coat, hall tree":
    "<time> … on|for? [<art>? first|second|third|1st|2nd|3rd|last|final|base|top? coat|coats]",
});

/** Tried when everything before has passed a number over. */
const LAST = rowsOf<NumberEffect>({
  // The bot's own number without its sign, where no number of money can stand.
  "piece: dresser 47 finished": "[<piece> #] done|finished|is|started|all_done",
  "piece: started desk 12":
    "started|starting|finished|keeping|scrapped|donated|trashed|working_on <art>? [<piece> #] ;",
  "passing: finished the desk over the lunch hour":
    "[<art>? lunch|happy|rush|dinner|witching|golden|cocktail|magic hour]",
  "passing: sold the dresser 140 between two meetings":
    "[two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fifteen|twenty|thirty <opinion>|<plain>|<trait>? <lives>]",
  // Deposits beside a sale.
  "deposit: sold lamp 20 down": "<sell> … [$ deposit|down] !$",
  "passing: nobody wants the dresser at 180 so now it's 155": `${NOBODY} ${LAMENTED} <art>? <piece>|it [at|for $] so|,|and|;|.|-`,
  "deposit: dresser going to ruth for 160, 40 down today":
    "going|goes|went to <art>? <person>|<new> … for|at $ ,|and|-|with [<art>? $ deposit|down] !$",
  "deposit: sold lamp deposit 20": "<sell> … [deposit|down|deposit_of $]",
});

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
