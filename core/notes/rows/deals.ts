import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";

/**
 * Deals that whole clauses tell, in whatever order; the part in brackets is what gives them away, and every other word
 * has to complete it. "none": it only looks like one. "collect": the rest of a price comes in; "collect part": the amounts
 * in brackets are the whole that was owed; "collect or sell": the price, or the rest of it; "collect or buy": the
 * other pieces, or their money. "unpaid": it never comes.
 * "share": of a profit. "commission": the amount in brackets is what was kept of somebody else's piece. "trade": what was
 * given stands before what was got; "trade back": behind it.
 */
type DealEffect =
  | "none"
  | "collect"
  | "collect part"
  | "collect or sell"
  | "collect or buy"
  | "unpaid"
  | "share"
  | "commission"
  | "trade"
  | "trade back";

const IN =
  "got|get|received|collected|collect|took|picked_up|brought|dropped_off|handed_over|handed_me|sent|sent_me|gave|gave_me|paid|paid_me|pays|brought_by|coughed_up|ponied_up|forked_over|recd|dropped_by";
const OWED = "owed|owes|owe|owing|outstanding";
const REST = "other|last|remaining|final|rest|remainder|balance";
const CAME =
  "came|came_by|came_back|came_over|stopped_by|swung_by|dropped_by|drove_up|showed_up|pulled_up|back";
const PROFIT = "profit|profits|earnings|gains|made|earned";
const SPLIT =
  "split|splits|splitting|share|shared|sharing|divvy|divvied|divvying|divide|divided|dividing|halve|halved|halving";
const PART = "half|a_third|third|quarter|a_quarter|<percent>|50/50|fifty_fifty|halves|1/3|1/2|1/4";
const KEPT =
  "keeping|kept|keep|keeps|i_keep|i_kept|i_get|i_got|we_keep|we_kept|my_cut|our_cut|my_share|our_share|my_part|my_commission|commission|for_me|for_us|got_to_keep|my|our";
const TOOK = "got|took|received|accepted|picked_up|scored|getting|taking";
const TRADED = "traded|trade|trading|swapped|swap|swapping|bartered|exchanged|exchange";

export type Dealt = Exclude<DealEffect, "none">;

const ROWS: readonly Row<DealEffect>[] = [
  // Our own debts are no deal with a buyer.
  [
    "^ [i|we|ive finally|just|still|never? paid|pay|gave|sent|sent_in|brought] … " + REST + "|" + OWED,
    "none",
    "i paid the rest on the desk 75",
  ],
  [
    "^ <new>|<person> [took|grabbed|got <art>? <piece>] home|today|now* ,|for|at|-* $ ,|and|but|.|-* he|she|they|still* owes|owe",
    "none",
    "teo took the desk home, 150, still owes me all of it",
  ],
  // It never comes.
  [
    "^ !i|we|ive … [never|wont|cant|didnt|will_not|refuses_to|refused_to|not_going_to|not_gonna ever|even|be|actually? paid|pay|paying|settled|settle|pays] !!today|tonight|till|until|yet|tomorrow",
    "unpaid",
    "he never paid the 50 on the hutch",
  ],
  [
    "[never|didnt ever? got|get|saw|see|seen|received|collected] <art>? " +
      REST +
      "|$|paid|money|payment|what|my",
    "unpaid",
    "never got the other 50 for the desk",
  ],
  [
    "[" +
      REST +
      "|" +
      OWED +
      "|money|payment|$] … never|wont|not|isnt came|come|coming|comes|going_to|gonna|showed|arrived|paid|cleared",
    "unpaid",
    "the 40 owed on the bench is never coming",
  ],
  [
    "check|checks|chk|cheque|payment|transfer|card … [bounced|nsf|no_good|unpaid|reversed|declined|returned|bad|didnt_clear|never_cleared|didnt_go_through|never_went_through|never_came_through|wont_clear]",
    "unpaid",
    "check for the desk bounced",
  ],
  [
    "[bounced|bad|nsf|returned on? <art>? check|checks|chk|payment] !fee|fees|charge|charges",
    "unpaid",
    "bad check on #4, 120",
  ],
  [
    "[writing|wrote|write|written off|down] … " + OWED + "|" + REST + "|left|never",
    "unpaid",
    "writing off the 30 she owes on the lamp",
  ],
  ["[writing|wrote|write <art>? $] … off", "unpaid", "wrote the 30 on the lamp off"],
  [
    "[stiffed|stiffing|skipped_out|ran_out|skipping_out|welched me|us? on|with] … " + REST + "|$|" + OWED,
    "unpaid",
    "buyer of the hutch stiffed me on the last 60",
  ],
  ["[stiffed me|us] … $|rest|<piece>", "unpaid", "lady stiffed me 40 for the chairs"],
  [
    "[gave_up|giving_up|give_up|forget|forgetting|forgave|forgiving|dropping|eating|ate|letting_go|let_go|letting_slide] … " +
      OWED +
      "|" +
      REST,
    "unpaid",
    "gave up on the 25 owed for #3",
  ],
  ["[dropped !off] … " + OWED + "|" + REST, "unpaid", "dropped the last 20 on the bookcase"],
  [
    "[let|letting <art>? <person>|him|her|them off|slide|go]",
    "unpaid",
    "let the guy off the last 20 on the bookcase",
  ],
  ["[unpaid for_good|forever]", "unpaid", "wardrobe: last 50 unpaid for good"],
  // A share of what it made.
  [SPLIT + " … [" + PROFIT + "|proceeds|money]", "share", "splitting the lamp money with dad, half each"],
  [
    "[" + PROFIT + "] … " + SPLIT + "|goes_to|go_to|" + PART + "|is|to",
    "share",
    "profit on both chairs split with mom",
  ],
  ["[" + PROFIT + "] : " + PART, "share", "desk profit: half to dad"],
  [PART + " … [" + PROFIT + "]", "share", "half the profit on #4 goes to mom"],
  [
    "[went|go|going halves|halfsies|50/50|fifty_fifty|half_and_half|in_half]",
    "share",
    "went halves with my sister on the armoire",
  ],
  [
    "[share|cut|part of|on|for|from] … <percent>|half|a_third|a_quarter",
    "share",
    "dad's share of the desk is 25%",
  ],
  ["<percent>|half|third|quarter … [share|cut of|on|for|from]", "share", "25% share of the desk for dad"],
  // Somebody else's piece, sold for a cut.
  [
    "<sell>|consigned … <theirs> … [" + KEPT + " <percent>? of|is|was|:|share|cut? $]",
    "commission",
    "sold mom's lamp 40, keeping 10",
  ],
  [
    "<sell>|consigned … his|her|their|<person>|<theirs> <piece> … [" +
      KEPT +
      " <percent>? of|is|was|:|share|cut? $]",
    "commission",
    "sold her hutch 200, kept 30",
  ],
  [
    "<sell>|consigned|sold <art>? <piece> … for <art>? <kin>|<person>|<theirs>|<new> … [" +
      KEPT +
      " <percent>? of|is|was|:|share|cut? $]",
    "commission",
    "sold a chair for my sister 30, i keep 5",
  ],
  [
    "<sell>|consigned … <theirs>|his|her|their|<person> … [$ commission|for_me|for_us|is_mine|was_mine|was_my_cut|is_my_cut|my_cut]",
    "commission",
    "sold mom's lamp 40, 10 for me",
  ],
  [
    "[commission of|is|was? $] on|for|from … <theirs>|<person>|his|her|their",
    "commission",
    "commission 15 on aunt june's table",
  ],
  [
    "[$ commission|cut|finders_fee] for|on|from selling|sold|<theirs>|<person>|his|her|their",
    "commission",
    "got 12 commission for selling his mirror",
  ],
  [
    "[$] for selling … <theirs>|<person>|his|her|their",
    "commission",
    "got 15 for selling the neighbors desk",
  ],
  [
    "[made|earned|got $] for|from? selling … <theirs>|<person>|his|her|their",
    "commission",
    "made 15 selling moms lamp",
  ],
  [
    "<sell> … <theirs>|his|her|their … [got|kept|keep|keeping|i_keep|i_get|my_cut|my_share|for_me is|was|of? <percent>]",
    "commission",
    "sold the neighbors sofa 200 and got 20%",
  ],
  ["[$ commission] , sold … <theirs>|<person>", "commission", "10 commission, sold a friend's bench"],
  // One piece for another.
  ["my|our [two|three|four] for his|her|their <piece>", "none", "swapped chairs, my two for his rocker"],
  [
    "[gave|gave_up|giving|handed_over] <art>|<numbered> <piece>? and|plus|+|& $ for|to_get|and_got <art>? <piece>",
    "trade",
    "gave the lamp and 15 for a trunk",
  ],
  [
    "gave|gave_up|giving|handed_over <art>? <piece> for <art>? <piece> ,? [even|even_up|straight_up|straight_across|no_cash]",
    "trade",
    "gave up the mirror for a trunk, even",
  ],
  [
    "gave <art>? <person>|<new>|<someone>|him|them|her <art>? [<piece> and|plus|+|& $ ,|and|&* i|we? got|took|received] <art>? <piece>",
    "trade",
    "gave bob the lamp and 15, got a trunk",
  ],
  [
    TOOK + " <art>? <piece> [for my|our] <piece> and|plus|+|& $",
    "trade back",
    "got a hutch for my desk and 40",
  ],
  [
    TOOK + " … <piece> … [in|as <art>? trade|swap|exchange] ,|and|&|.* i|we? gave",
    "trade back",
    "took the desk in trade, gave the bench plus 20",
  ],
  ["^ [trade|swap|traded|swapped :|,|-|!*] <art>? <piece> out", "trade", "trade: chair out, table in"],
  [
    "gave|gave_up|giving … <piece> … for|to_get … <piece> … [in|as <art>? even|straight|fair? trade|swap|exchange]",
    "trade",
    "gave #5 plus forty for a tall dresser in a trade",
  ],
  [
    TOOK + " … <piece> … [in|as <art>? trade|swap|exchange for]",
    "trade back",
    "took a vanity in trade for the armoire",
  ],
  [
    TOOK + " … <piece> … for … <piece> … [<art>|in|as? even|straight|fair? trade|swap|exchange]",
    "trade back",
    "got a bookcase for the bench, even trade",
  ],
  [
    "[did|made|doing <art>? even|straight|fair? trade|swap :|,|-] <art>? <piece>",
    "trade",
    "did a trade: lamp for mirror",
  ],
  [
    "^ [even|straight|fair|a? traded_up|traded|swapped|swap_deal|swap|trade|deal up? with|w? <new>|<person>? today? ,|:|-|!*] … <piece> … for|4|into|to_get|and_got|got|toward|towards … <piece>",
    "trade",
    "swap: desk for hutch",
  ],
  [
    "[" +
      TRADED +
      " in|up|away|off?] … <piece> … for|4|into|to_get|and_got|got|toward|towards|+|i_got … <piece>",
    "trade",
    "bartered the trunk for a side table",
  ],
  [
    "gave <art>? <person>|<someone>|him|them|her <art>? <piece> [and|, he|she|they gave me|us <art>?] <piece>",
    "trade",
    "gave the neighbor my bench and he gave me a trunk",
  ],
  [
    "^ [for <art>?] <piece> i|we got|took|received <art>? <piece>",
    "trade",
    "for the hutch i got a pie safe and 35 cash",
  ],
  [
    "gave|handed <art>|<kin>? !me|us <person>|<new>|<someone>|him|them|her my|our|the <piece> and|plus|+|&* $? [for his|her|their|a|an|the] <piece>",
    "trade",
    "gave teo my desk and 30 for his armoire",
  ],
  [
    "^ … took|got|grabbed|has my|our|the <piece> [and|,|&* he|she|they? gave|handed|left me|us] <art>? <piece>",
    "trade",
    "teo took the desk and gave me a trunk",
  ],
  [
    "gave|handed me|us <art>|his|her|their? <piece> [in|as? <art>? exchange|trade|swap|return|payment for my|our|the] <piece>",
    "trade back",
    "she gave me a nightstand in exchange for the mirror",
  ],
  [
    "<person>|<new>|<someone>|he|she|they gave|handed me|us <art>|his|her|their? <piece> [for my|our] <piece>",
    "trade back",
    "dana gave me a nightstand for my mirror",
  ],
  [
    TOOK + " <art>|his|her|their? <piece> [as|for|in payment|pay for|on] my|our|the? <piece>",
    "trade back",
    "took a lamp as payment for the bench",
  ],
  [
    "my|our <piece> [plus|+|and|& $ for|= his|her|their] <piece>",
    "trade",
    "my desk plus 15 for his file cabinet",
  ],
  [
    "<piece> [was|were|is|been|got|has_been|just* " + TRADED + " for|4] <art>? <piece>",
    "trade",
    "desk got traded for a lamp",
  ],
  [
    "let <art>? <piece> go [in|as <art>? trade|swap|exchange] for <art>? <piece>",
    "trade",
    "let the hutch go in trade for a buffet",
  ],
  [
    "let <art>? <piece> go [for|4 a|an|his|her|their] <piece>",
    "trade",
    "let the desk go for a buffet and 50",
  ],
  [
    "^ <art>|my|our? <piece> for <art>|his|her|their? <piece> ,|-|. [in|as|<art>* even|straight|fair|equal trade|swap|exchange|up|across?]",
    "trade",
    "the bench for a plant stand, fair trade at 45",
  ],
  // The rest of a price comes in.
  [
    "got|picked_up|took|brought|grabbed <art>? [rest|remainder of <art>?] <piece> !!money",
    "collect or buy",
    "picked up the rest of the chairs 40",
  ],
  [
    IN + " … $ … [he|she|they|still* owes|owe $]",
    "collect part",
    "got another 20 on the desk he still owes 10",
  ],
  ["[picked_up|grabbed] … " + REST + " $", "collect or buy", "picked up final 150 for the dresser"],
  ["$ [of <art>? $] " + OWED, "collect part", "50 of the 80 owed on the hutch came in"],
  [IN + "|settled … [" + OWED + "]", "collect", "got what was owed on the desk, 50"],
  [
    "[" + OWED + "] … came|arrived|landed|cleared|showed_up|in|paid|settled|collected",
    "collect",
    "owed money for #4 arrived: 35",
  ],
  [
    IN + " … [" + REST + " half|payment|money|cash|check|installment|bit|part? of|for|on|from]",
    "collect",
    "got the balance on the dresser, 75",
  ],
  [
    IN + " … [" + REST + " half|payment|money|cash|check|installment|bit|part? ,|:? $]",
    "collect",
    "received remaining 90 for buffet yesterday",
  ],
  [
    IN + " … [rest|remainder|balance|other_half|last_half|second_half] ;",
    "collect",
    "75 on the dresser, he paid the balance",
  ],
  [
    "[" + REST + "] … came|comes|arrived|landed|cleared|showed_up|paid|collected|received|is_in|is_here",
    "collect",
    "other 50 came for hutch",
  ],
  [
    "[final|last|second|2nd|remaining payment|half|installment] of|on|for|from",
    "collect",
    "final payment on the wardrobe 100 check",
  ],
  [
    "got|received|collected [the|that|his|her|their $] from|off my|our|the? <new>|<person>|<kin>",
    "collect",
    "got the 30 from tom",
  ],
  [
    CAME + " [with|w <art>? " + REST + " half|payment|money|cash|check|part? ,|:? $]",
    "collect",
    "denise came by with the other 125",
  ],
  [
    CAME + " [with|w <art>? rest|remainder|balance|other_half|last_half|second_half]",
    "collect",
    "he showed up with the balance",
  ],
  [
    `^ [<art>? ${REST} of <art>? money|payment|balance|price|cash] on|for|from`,
    "collect",
    "rest of the money for the dresser, 60",
  ],
  [
    "^ <art>? [final|last|remaining|other $] for|on|from <art>? <piece> ;",
    "collect",
    "final 35 for the trunk",
  ],
  ["[$ more on|for|toward] … all? paid", "collect", "20 more on the trunk, all paid now"],
  [
    `${IN} … [$ he|she|they was|were short|shy]`,
    "collect",
    "lady brought by the 25 she was short on the bench",
  ],
  ["[settled|squared up]", "collect", "buyer settled up on the bookcase 30 cash"],
  [
    "^ <art>? <person>|<kin>|<someone>|<new> [paid|payed up|me_back|us_back]",
    "collect",
    "the neighbor paid up 50",
  ],
  ["[paid in_full|off now|today|finally?]", "collect or sell", "paid in full now, 45 for the bench"],
  ["paid_me|gave_me|sent_me [the $] !for|on|to|down|deposit", "collect", "pete paid me the 45 finally"],
  [
    "^ <art>? !<kin> <person>|<new>|<piece> <person>? finally|just? paid|paid_me|gave_me|sent_me [his|her|their $]",
    "collect",
    "dresser lady paid her 20",
  ],
  ["[collected|collecting] $", "collect", "collected 40 from mike"],
  [
    "[$ for|on|from] … <piece> finally|just? came|arrived|landed|cleared",
    "collect or sell",
    "the 40 for the desk finally came",
  ],
  [
    "<someone>|<person>|<new> finally|just? coughed_up|ponied_up|forked_over [the|that|my $] for|on",
    "collect or sell",
    "she finally coughed up the 35 for the vanity",
  ],
  [
    "got|received|collected [my|our $] for|from <art>? <piece>",
    "collect or sell",
    "got my 25 for the chairs",
  ],
];

export const deals = tableOf(ROWS);
