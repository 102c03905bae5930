import { type Row, rowsOf } from "./row.ts";

/**
 * "whole": the price beside it holds the deposit. "asking": the price is what the piece was listed at. What a number is beside the amount of the note. "passing": it says nothing of money. "beside": so where another
 * amount stands in the line; alone it may be the amount after all. "amount": the amount of the note for certain,
 * whatever stands below. "vague": an amount that may not be written down as it stands. "net": what was left after fees.
 * "part paid", "half paid": what the buyer has paid of it; "owed", "half owed", "all owed": what is still to pay, "rest owed": so, beside what has been paid.
 * "extra": asked for on top of the price; "less": taken off it; "after fee": a fee of which it is not said whether
 * the price is without it; "fee": what follows is one. "miles": how far it was; "miles?": so, most likely.
 * "agreed": the price agreed on for what is held; "down": the word before money that was left for it.
 * "piece": the number of the piece. "all": how many the pieces before it are, or else those behind it.
 */
export type NumberEffect =
  /** So many are paid that much each: asked, with the sum. */
  | "hands"
  /** So many at that much each: the product. */
  | "times"
  | "passing"
  | "beside"
  | "whole"
  | "asking"
  /** The price is what the piece was listed at, and so much less or more; so much of it. */
  | "off asking"
  | "over asking"
  | "of asking"
  /** It tells the price beside something that no note says: asked. */
  | "beside asking"
  /** The price once more, where it is the same: the word "money". */
  | "again"
  | "amount"
  | "vague"
  /** A time that may hold what was noted before. */
  | "so far"
  | "net"
  | "deposit"
  | "owed"
  | "half owed"
  | "rest owed"
  | "agreed"
  | "down"
  | "drove"
  | "part paid"
  | "half paid"
  | "extra"
  | "less"
  | "after fee"
  | "fee"
  | "all owed"
  | "piece"
  | "all"
  | "miles"
  | "miles?"
  | "minutes"
  | "hours"
  /** What each of several paid, times how many they were. */
  | "heads"
  /** A payment and what was paid beyond it. */
  | "sum"
  /** What two worked, taken together. */
  | "between us"
  | "odometer"
  /** All the stretches of a drive; so many trips of the same length. */
  | "legs"
  | "trips"
  | "both ways"
  | "percent";

/** A piece that changed hands. */
const WENT = "<~sell>|bought|took|let|flipped|went|gone|got|grabbed|picked_up|left|snagged|out_the_door";
/** A sale, or somebody who had a piece of ours. */
const SALE = "<~sell>|took|takes|bought|got|grabbed|let|flipped|has|have|given";
const REST = "rest|remaining|remainder|balance|other|last|final";
const LATER =
  "later|next_week|next_month|payday|on_payday|friday|tomorrow|soon|monday|end_of_month|end_of_the_month|month_end|the_first|on_the_first|at_pickup|in_a_week|in_a_month|<span>|<day>";
const WILL = "ll|will|shell|hell|theyll|hes|shes|theyre|is|are|gonna|going_to|can|to|he|she|they|that|which";
const BRINGS = "bring|brings|bringing|pay|pays|paying|send|sends|sending|drop_off|drops_off|give|gives|get";

/** What is still owed of a price, what came in beside it, and what is more or less than it. */
export const OWED = rowsOf<NumberEffect>({
  "passing: sold the dresser 160, they took 8 in fees":
    "<sell> … $ ,|-|and|but|.* [they|app|site|platform|booth|<art>? <new>? took|take|takes|kept|keep|keeps|charged|got out?] $ in|for|as|of? fee|fees|commission|cut",
  "rest owed: sold dresser to a lady for 160, she gave me 60 and the rest tuesday": `${WENT} … $ … [he|she|they|buyer|<new>? only|just? paid|paid_me|gave|gave_me|gave_us|handed_me|sent|sent_me|put|brought|had|left <art>? $ down|cash|now|today|so_far|already|up_front|on_him|on_her|on_them? <method>? ,|and|but|so|then|with|-* he|she|they|hell|shell|theyll|will|is|gonna|to|said* bring|pay|send|give|drop_off|paying|bringing? me|us? <art>? rest|balance|remainder|other_half|difference is|was|comes|coming|due|to_come* on|by|next|this? <day>|later|tomorrow|next_week|next_month|payday|soon|tonight|this_weekend?] ;`,
  "rest owed: bench sold to dana 65, she paid 40 and owes the rest": `${WENT} … $ … [he|she|they|buyer|<new>? only|just? paid|paid_me|gave|gave_me|gave_us|handed_me|sent|sent_me|put|brought|had|left <art>? $ down|cash|now|today|so_far|already|up_front|of_it|on_her|on_him|on_them|with_her|with_him|with_them? <method>? ,|.|and|but|so|-* he|she|they|still|now* owes|owe|owing|owed me|us? <art>? rest|balance|remainder|other_half|difference|other] ;`,
  "owed: nell took the mirror for 60 but only paid half so far, owes 30":
    "<~sell>|took|bought|got|grabbed … $ … [but|and? only? paid|gave|gave_me|had half so_far|of_it|now|down|up_front? ,|and|so|-* still? owes|owe me|us? $]",
  // What is still owed of a sale, and what came in beside it.
  "beside: sold desk 200, he give me 150, 50 he bring later": `${SALE} … $ ,|.|;|-|and|but* [he|she|they|<new>|<person>? only|just? paid|paid_me|pay|pays|gave|gave_me|give|gives|give_me|gives_me|gived|gived_me|brought|bring|sent me|us? $ <method>? now|today|so_far|already|first?] ,|.|;|-|and|but|then|plus* <art>|other? $ ${WILL}* ${BRINGS}`,
  "owed: sold desk 100 cash 40 check owed":
    "<sell> … $ <method> and|plus|&|+? [$ <method>? still|is? owed|owing|outstanding|due|later] !$",
  "beside: sold #4 120 paid 70 owes 50":
    "<~sell>|bought|let|flipped|took|grabbed … [paid|paid_me|got|gave|gave_me|give|gives|give_me|gived|gived_me|pay|handed|handed_me|had|has|only_had|brought|put|cash|with $ down|cash|now|today|so_far|so|up_front|on_him|on_her|on_them|with_him|with_her|with_them?] … owes|owe|owed|owing|outstanding",
  "beside: sold bench 60, he paid 40, 20 to come":
    "<~sell> … $ … [paid|paid_me|got|gave|gave_me $ now|today|already?] ,|and|&? $ to_come|left_to_come|to_go|later",
  "beside: sold coffee table 95, 45 down 50 owed":
    "<~sell>|bought|let|flipped … $ … [$ down|cash|now|today|deposit|up_front] … owes|owe|owed|owing|outstanding",
  "half owed: sold lamp 40, half owed":
    "<~sell>|let|flipped … [<art>? half of? it? is|still? owed|owing|outstanding|unpaid|to_come]",
  "half owed: sold lamp 40, he owes me half":
    "<~sell>|let|flipped … [she|he|they|still* owes|owe me|us? half of? it?]",
  "all owed: sold the trunk for 90 all of it owed":
    "<~sell>|let|flipped … [with? all|everything|the_whole_thing|the_full_amount|it_all of? it|that? is|still? owed|owing|outstanding|unpaid|to_come]",
  "owed: sold the trunk 80 with 20 of it due friday":
    "<sell> … $ … [with|and|but? $ of_it|of_that|of_which still|is|was|to_be* due|paid|coming|comes on|by|next|this? <day>|later|tomorrow|payday|pickup]",
  "owed: sold both chairs 130, 30 owed till friday":
    "[with|and|but? <art>? other|last|remaining|rest|another|only? $ of_it|of_that|of_which|of_the_total|more? is|are|was? still|is? owed|owing|outstanding|to_come|left_to_pay|to_go|unpaid|hasnt_been_paid|not_paid_yet|not_been_paid|yet_to_come till|until|til|by|on next|this? <day>|payday|next_week|next_month]",
  "owed: sold both chairs 130, 30 owed friday":
    "[with|and|but? <art>? other|last|remaining|rest|another|only? $ of_it|of_that|of_which|of_the_total|more? is|are|was? still|is? owed|owing|outstanding|to_come|left_to_pay|to_go|unpaid|hasnt_been_paid|not_paid_yet|not_been_paid|yet_to_come next|this? <weekday>|tomorrow|payday|next_week|next_month]",
  "owed: sold desk 200, 50 still owed":
    "[with|and|but? <art>? other|last|remaining|rest|another|only? $ of_it|of_that|of_which|of_the_total|more? is|are|was? still|is? owed|owing|outstanding|to_come|left_to_pay|to_go|unpaid|hasnt_been_paid|not_paid_yet|not_been_paid|yet_to_come to? me|us?] !with|get|grab|fetch|pick|pick_up|collect|haul|see|look",
  "owed: sold chest 95 marge owes 20 still":
    "<sell> … $ ,? [<new>|<kin> still? owes|owe me|us? $ still|yet|on_it?]",
  "owed: sold desk 200, he still owes 50, paying me friday":
    "<~sell>|bought|took|let|flipped|gone … ,|.|-|and|but … [still? owes|owe|owing|still_owes|owed me|us|on_it? still|the|another|about* last|other|rest|remaining|balance? $ yet|still? ,|-|.|and|but|he|she|they|who|will|hell|shell|theyll|ll|gonna|going_to* pays|pay|paying|brings|bringing|bring|sends|sending|send me|us|it|that|the_rest? on|by|next|this|at? <day>|tomorrow|later|soon|payday|next_week|next_month|tonight|this_weekend] ;",
  "owed: sold desk 200 owes me 50 till friday":
    "<~sell>|bought|took|let|flipped … [still? owes|owe|owing|still_owes|owed me|us|on_it? still|the|another|about* last|other|rest|remaining|balance? ,|:|of? $ of? it|that|which|this? till|until|til|by|on|next next? <day>|payday|next_week|next_month]",
  "owed: sold hutch 220 owes the last 60 next week":
    "<~sell>|bought|took|let|flipped … [still? owes|owe|owing|still_owes|owed me|us|on_it? still|the|another|about* last|other|rest|remaining|balance? ,|:|of? $ of? it|that|which|this? next|this? <weekday>|tomorrow|payday|next_week|next_month]",
  "owed: sold desk 200 she owes me 50":
    "<~sell>|bought|took|let|flipped … [still? owes|owe|owing|still_owes|owed me|us|on_it? still|the|another|about* last|other|rest|remaining|balance? ,|:|of? $ of? it|that|which|this? yet|still?]",
  "all owed: sold desk 160 she owes me all of it":
    "<~sell>|let|flipped … [she|he|they|buyer|guy|lady? owes|owe|owed|still_owes me|us? all|everything|the_whole_thing|the_full_amount|it_all|all_of_it of? it? until|till|til|by? payday|pay_day|she_gets_paid|he_gets_paid|they_get_paid?]",
  "owed: sold desk 150, 30 short, will bring it tuesday": `${SALE} … $ ,|-|and|but* [he|she|they|buyer|is|was|shes|hes|theyre* $ short|shy|light ,|and|but* ${WILL}* ${BRINGS} me|us|over|by|it|the|rest* ${LATER}*]`,
  "owed: sold pew 120, she's short 20":
    "<~sell> … $ ,|-|and|but* [he|she|they|buyer|shes|hes|theyre|<new>|<person>? is|was|came_up|came? short|shy by? $] !of",
  "owed: sold the trunk for 90, shes 20 short so still owes me that":
    "<~sell> … $ ,|-|and|but* [he|she|they|buyer|shes|hes|theyre|<new>|<person>? is|was|came_up|came? $ short|shy so|and|,* still? owes|owe me|us that|it|the_rest|the_difference?]",
  "owed: sold hutch 200 but he was 30 short":
    "<~sell> … $ ,|-|and|but* [he|she|they|buyer|shes|hes|theyre|<new>|<person>? is|was|came_up|came? $ short|shy] !of",
  "owed: sold bench 60, she paid 40 and will bring the last 20":
    "<~sell> … $ … [he|she|they? will|gonna|going_to|is_bringing|bringing|brings|sending bring|pay|send|drop_off|give|get? me|us? <art>? other|last|remaining|rest $]",
  "part paid: sold the lamp 90 but she only had 60 on her":
    "<~sell>|took|bought|got|grabbed … $ … [but|and? only had|gave|paid|brought $ on|with|for her|him|them|me|us|it*]",
  "owed: sold the lamp to kim ninety, thirty of it next week":
    "<~sell>|went|took|gone … $ ,|with|and* [$ of_it|of_that next_week|next_month|later|friday|payday|tomorrow|monday|to_come|when_they_can|when_she_gets_paid|when_he_gets_paid|when_they_get_paid|when_she_can|when_he_can]",
  "owed: desk went to teo for 150, he still owes 50 of it": `${WENT} … $ … ,|.|;|!|and|but* [he|she|they|buyer|but* still? owes|owe|owed|still_owes|owing me|us? still|about* $ of_it|of_that|on_it|on_that|still|yet|more? till|until|til|by|at? payday|pickup|next_week|next_month?] !of`,
  "owed: marcus took the desk, 90 cash today, remaining 60 next week": `${SALE} … ,|.|;|-? … $ … [,|and|plus|-|.|;|&|+* <art>|his|her|their? ${REST} of? $ <method>? is|are|due|comes|coming|in|on|by|this|next* ${LATER}]`,
  "owed: marcus took the desk, paid 90 cash, will bring the other 60": `${SALE} … ,|.|;|-? … $ … [,|and|plus|-|.|;|&|+* ${WILL}|paying|pays|bringing|brings* <art>|his|her|their? ${REST} of? $ <method>? ${LATER}?] ;`,
  "part paid: sold desk 140 100 now 40 later":
    "<sell> … $ … [first? $ now|today|up_front|so_far|already|first|down|to_start|tonight] and|then|,|&|-* $|rest|the_rest",
  "part paid: hutch 240: 100 now and 140 friday":
    "<piece> for|at|:|,|-? $ ,|:|-|.* [$ now|today|up_front] and|then|,|&|-* $",
  "owed: sold desk 140, 40 due friday":
    "<sell> … $ … [pays|paying|brings|bringing? $ left? later|to_come|to_go|due|left_to_pay|still_due|next_week|next_month|payday|tomorrow on|by|at|this|next? <day>|payday|pickup?]",
  "part paid: sold desk 140 got 100 of it":
    "!!loan|loans <sell> … $ ,|-|and|but? [he|she|they|buyer|guy|lady|<new>? has|only|already? paid|paid_me|got|gave|gave_me|handed_me|handed_over|sent|put|took|received|collected me? $ so_far|of_it|of_that|already|now|today|first|up_front?] !back|,|for|cash|change|to|toward|towards|on",
  "part paid: sold desk 140 got 100 cash":
    "<sell> … $ ,? he|she|they? [got|paid|paid_me|gave_me $] cash|check|card|transfer ;",
  "part paid: sold desk 140 100 now": "<sell> … <piece> … $ [$ now|so_far|up_front|already] ;",
  "beside: marcus bought the desk 150, gave me 100, 50 to come": `${SALE} … $ ,|.|;|-|and|but* [<new>|<person>|he|she|they? paid|paid_me|gave|gave_me $ <method>?] ,|.|;|-|and|then|plus* <art>|his|her|their* ${REST}? $ to_come|to_go|later|still_to_come|owed|outstanding|${LATER}`,
  "part paid: marcus took the desk for 150, 90 now and the rest next week": `${SALE} … $ ,|.|;|-|and|but* [<new>|<person>|he|she|they? paid|paid_me|gave|gave_me|got? $ <method>? now|today|so_far|already|up_front|first] ,|.|;|-|and|then|plus* <art>|his|her|their* ${REST}|rest`,
  "owed: teo took the desk, 90 today and 60 next week": `${SALE} … ,|.|;|-? … $ now|today|up_front|first|cash ,|and|then|plus|-|.|&* [$ in|on|by|this|next? ${LATER}]`,
  "owed: desk sold for 150, got an iou for 60 of it": `${SALE} … $ … [,|-|.|and|with|plus|but|got|gave_me|left|has|wrote|a|an|his|her|in|on* iou|ious for|of|is? $ of? it|that?]`,
  "owed: sold desk 150 with 50 on an iou": `${SALE} … $ … [with|and|plus|but? $ of_it|of_that? on|in|as <art>? iou|ious|tab|credit|account] !card|cards`,
  "owed: sold the desk for 130, still waiting on 30 of it": `${SALE} … $ … [,|-|.|and|but|is|am|are|im|were|still|just* waiting|wait on|for the|his|her|their|last|other* $ of_it|of_that|from_him|from_her|from_them|to_come?] ;`,
  "owed: sold desk 150 minus 30 she'll bring later": `!!charged|charge ${SALE} … $ … [,|-|.|and|but|less|minus|with* $ ${WILL} ${WILL}* ${BRINGS} me|us|over|by|it|the|rest* ${LATER}*]`,
  "half paid: sold desk to kim 140. half now half on payday": `${SALE} … $ .|,|-|and|but* [half <method>? now|today|down|up_front|cash ,|and|&|-? half|rest|the_rest|other_half on|in|by? <day>|due|owed|${LATER}]`,
  "half paid: sold the desk to lee for 100, he gave me half, rest next week": `${WENT} … $ .|,|-|and|but* [he|she|they|buyer|who|<person>|<new>|has|have|only|just|already* paid|paid_me|gave|gave_me|gave_us|sent|sent_me|handed_me|brought|put|had|got half !<method> of_it|now|today|down|up_front|so_far|already|on_him|on_her|on_them|for_now* ,|.|-|and|but|the|then|pays|paying|will|ll|owes|other* rest|half|other_half|balance|remainder? when|once|at|on|in|by|next|this|due|later? <any>? <any>? <any>?] ;`,
  "half paid: sold desk 100, half paid now and the other half on friday": `${WENT} … $ .|,|-|and|but* [half|half_of_it is|was|has_been? paid|down|up_front now|today|already|so_far|up_front* ,|.|-|and|but|the|then|other* rest|half|other_half|balance|remainder? when|once|at|on|in|by|next|this|due|later? <any>? <any>? <any>?] ;`,
  "all owed: teo took the desk home, 150, still owes me all of it": `took|takes|bought|got|grabbed|has|have … $ … ,|.|-|and|but* [he|she|they|buyer|still* owes|owe|owed|owing me|us? all|everything|the_whole_thing|the_full_amount|it_all|all_of_it of? it?]`,
  "all owed: lupe took the bench home, pays me friday": `took|takes|got|has|grabbed|bought|picked_up <art>? <piece> home|away|today|already* ,|-|.|and|but* [he|she|they|hell|shell|theyll|hes|shes|theyre|will|ll|gonna|is|to|says* pays|paying|pay|pay_me|pays_me|paying_me me|us|for_it|up|back|the_money* on|by|next|this? ${LATER}] ;`,
  "all owed: teo took the desk on credit, 150":
    "took|takes|bought|got|grabbed|let|gave|has … [on credit|tab|a_tab|his_tab|her_tab|account|the_cuff|an_iou|a_handshake] !card|cards",
  "passing: scooped 3 chairs 4 free": "<~buy> … <piece> [4] free",
  "part paid: buyer paid 90 of 180 for the dresser":
    "<new>|<person>|he|she|they|buyer paid|gave|gave_me|sent|sent_me|handed_me|put [only|just? $] of|out_of|toward|towards <art>? $ … for|on <art>? <piece>",
  // More or less than the number beside it.
  "extra: sold desk 140 plus 20 delivery":
    "<sell> … $ [plus|+|and|&|w|with|,? <art>? $ for|in? delivery|shipping|assembly|hauling|gas_money|fuel|setup|tip|delivery_fee|delivery_charge|stairs|delivering|dropping_it_off it?]",
  "extra: sold the hutch 240, delivery 25 on top":
    "<sell> … $ [,|.|and|plus|+? delivery|shipping|assembly|hauling|gas_money|fuel|setup|stairs was|is|for? $ on_top|extra|more|too|separate|also?]",
  "extra: bought dresser 40 plus 3 tax":
    "<buy> … <piece> … $ [plus|+|and|&|w|with|,? <art>? $ for|in|sales? tip|tax|taxes|premium|buyers_premium]",
  "less: bought dresser 40 less 5":
    "<sell>|<buy> … $ [less|minus $ for? delivery|gas|tip|fuel|shipping|scratch|the_scratch?] ;",
  "after fee: sold desk 140 after they took 8 in fees":
    "<sell> … $ [after|and|,? <art>? <someone>|they|app|site|it? took|takes|take|taking|kept|keep out? <art>? $ in|for|of|as? fee|fees|cut|commission]",
  "after fee: sold desk 140 after 14 fee": "<sell> … $ [after <art>? $ fee|fees]",
});

/** The price said once more, as the amounts themselves tell. */
export const AGAIN: readonly Row<NumberEffect>[] = [
  [
    "!!loan|loans|deposit|each [the|all|that|all_the|full|whole $] !of|piece",
    "again",
    "sold desk 140, nora pays the 140 friday",
  ],
];
