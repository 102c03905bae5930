import { rowsOf } from "./row.ts";
import { SHARES } from "./shares.ts";
import { tableOf } from "./table.ts";
import { TRADES } from "./trades.ts";

const IN =
  "got|get|received|collected|collect|took|picked_up|brought|dropped_off|handed_over|handed_me|sent|sent_me|gave|gave_me|paid|paid_me|pays|brought_by|coughed_up|ponied_up|forked_over|recd|dropped_by|dropped_round|brought_round|popped_round|brung|stumped_up|bunged_me|slipped_me";
const OWED = "owed|owes|owe|owing|outstanding";
const REST = "other|last|remaining|outstanding|final|rest|remainder|balance";
const CAME =
  "came|came_by|came_back|came_over|stopped_by|swung_by|dropped_by|drove_up|showed_up|pulled_up|back";

/** A price that stays owed. "unpaid": it never comes; "none": what only looks like a deal. */
const OWING = rowsOf<"none" | "unpaid">({
  // Our own debts are no deal with a buyer.
  "none: i paid the rest on the desk 75":
    "^ [i|we|ive finally|just|still|never? paid|pay|gave|sent|sent_in|brought] … " + REST + "|" + OWED,
  "none: teo took the desk home, 150, still owes me all of it":
    "^ <new>|<person> [took|grabbed|got <art>? <piece>] home|today|now* ,|for|at|-* $ ,|and|but|.|-* he|she|they|still* owes|owe",
  // Whoever brought the piece took in its price.
  "none: son delivered the bookcase and collected 65 cash":
    "^ … [delivered|dropped_off|dropped|brought|took|hauled|handed|ran <art>? <piece>] … collected|got $",
  // It never comes.
  "unpaid: he never paid the 50 on the hutch":
    "^ !i|we|ive … [never|wont|cant|didnt|isnt|aint|will_not|refuses_to|refused_to|not_going_to|not_gonna gonna|going_to|ever|even|be|actually* paid|pay|paying|settled|settle|pays] !!today|tonight|till|until|yet|tomorrow",
  "unpaid: never got the other 50 for the desk":
    "[never|didnt|not gonna|going_to|ever? got|get|saw|see|seen|seeing|received|collected] <art>? " +
    REST +
    "|$|paid|money|payment|what|my",
  "unpaid: the 40 owed on the bench is never coming":
    "[" +
    REST +
    "|" +
    OWED +
    "|money|payment|$] … never|wont|not|isnt came|come|coming|comes|going_to|gonna|showed|arrived|paid|cleared",
  "unpaid: check for the desk bounced":
    "check|checks|chk|cheque|payment|transfer|card … [bounced|nsf|no_good|unpaid|reversed|declined|returned|bad|came_back|no_funds|insufficient_funds|didnt_clear|never_cleared|didnt_go_through|never_went_through|never_came_through|wont_clear]",
  "unpaid: bad check on #4, 120":
    "[bounced|bad|nsf|returned on? <art>? check|checks|chk|payment] !fee|fees|charge|charges",
  "unpaid: writing off the 30 she owes on the lamp":
    "[writing|wrote|write|written off|down] … " + OWED + "|" + REST + "|left|never",
  "unpaid: mel never came through with the 60":
    "[never|didnt|wont|hasnt_ever came|come|coming through|thru|up with] <art>|that|other|last|his|her|their* $",
  "unpaid: writing off the 50 for the hutch":
    "^ i|we|im|were|just|am|are* [writing|wrote|write off <art>|that|his|her|their $] for|on|from",
  "unpaid: wrote the 30 on the lamp off": "[writing|wrote|write <art>? $] … off",
  "unpaid: buyer of the hutch stiffed me on the last 60":
    "[stiffed|stiffing|skipped_out|ran_out|skipping_out|welched me|us? on|with] … " + REST + "|$|" + OWED,
  "unpaid: lady stiffed me 40 for the chairs": "[stiffed me|us] … $|rest|<piece>",
  "unpaid: gave up on the 25 owed for #3":
    "[gave_up|giving_up|give_up|forget|forgetting|forgave|forgiving|dropping|eating|ate|letting_go|let_go|letting_slide] … " +
    OWED +
    "|" +
    REST,
  "unpaid: dropped the last 20 on the bookcase":
    "[dropped !off|by|in|over|round|around|it] … " + OWED + "|" + REST,
  "unpaid: let the guy off the last 20 on the bookcase":
    "[let|letting <art>? <person>|him|her|them off|slide|go]",
  "unpaid: wardrobe: last 50 unpaid for good": "[unpaid for_good|forever]",
});

/**
 * The rest of a price comes in. "collect": so it does; "collect part": the amounts in brackets are the whole that was owed;
 * "collect or sell": the price, or the rest of it; "collect or buy": the other pieces, or their money.
 */
const RESTS = rowsOf<"collect" | "collect part" | "collect or sell" | "collect or buy">({
  "collect or buy: picked up the rest of the chairs 40":
    "got|picked_up|took|brought|grabbed <art>? [rest|remainder of <art>?] <piece> !!money",
  "collect part: got another 20 on the desk he still owes 10": IN + " … $ … [he|she|they|still* owes|owe $]",
  "collect or buy: picked up final 150 for the dresser": "[picked_up|grabbed] … " + REST + " $",
  "collect part: 50 of the 80 owed on the hutch came in": "$ [of <art>? $] " + OWED,
  "collect: got what was owed on the desk, 50": IN + "|settled … [" + OWED + "] !him|her|them",
  "collect: owed money for #4 arrived: 35":
    "[" + OWED + "] … came|arrived|landed|cleared|showed_up|in|paid|settled|collected",
  "collect: got the balance on the dresser, 75":
    IN + " … [" + REST + " half|payment|money|cash|check|installment|bit|part? of|for|on|from]",
  "collect: received remaining 90 for buffet yesterday":
    IN + " … [" + REST + " half|payment|money|cash|check|installment|bit|part? ,|:? $]",
  "collect: 75 on the dresser, he paid the balance":
    IN + " … [rest|remainder|balance|other_half|last_half|second_half] ;",
  "collect: other 50 came for hutch":
    "[" + REST + "] … came|comes|arrived|landed|cleared|showed_up|paid|collected|received|is_in|is_here",
  "collect: final payment on the wardrobe 100 check":
    "[final|last|second|2nd|remaining payment|half|installment] of|on|for|from",
  "collect: got the 30 from tom":
    "got|received|collected [the|that|his|her|their $] from|off my|our|the? <new>|<person>|<kin>",
  "collect: denise came by with the other 125":
    CAME + " [with|w <art>? " + REST + " half|payment|money|cash|check|part? ,|:? $]",
  "collect: he came by with the 50 he owed me":
    CAME + " [with|w <art>? $ he|she|they still? owed|owes|owe me|us?]",
  "collect: he showed up with the balance":
    CAME + " [with|w <art>? rest|remainder|balance|other_half|last_half|second_half]",
  "collect: rest of the money for the dresser, 60": `^ [<art>? ${REST} of <art>? money|payment|balance|price|cash] on|for|from`,
  "collect: final 35 for the trunk": "^ <art>? [final|last|remaining|other $] for|on|from <art>? <piece> ;",
  "collect: 20 more on the trunk, all paid now": "[$ more on|for|toward] … all? paid",
  "collect: lady brought by the 25 she was short on the bench": `${IN} … [$ he|she|they was|were short|shy]`,
  "collect: buyer settled up on the bookcase 30 cash": "[settled|squared up]",
  "collect: the neighbor paid up 50":
    "^ <art>? <person>|<kin>|<someone>|<new> [paid|payed up|me_back|us_back]",
  "collect or sell: paid in full now, 45 for the bench": "[paid in_full|off now|today|finally?]",
  "collect: pete paid me the 45 finally": "paid_me|gave_me|sent_me [the $] !for|on|to|down|deposit",
  "collect: dresser lady paid her 20":
    "^ <art>? !<kin> <person>|<new>|<piece> <person>? finally|just? paid|paid_me|gave_me|sent_me [his|her|their $]",
  "collect: collected 40 from mike": "[collected|collecting] $",
  "collect or sell: the 40 for the desk finally came":
    "[$ for|on|from] … <piece> finally|just? came|arrived|landed|cleared",
  "collect or sell: she finally coughed up the 35 for the vanity":
    "<someone>|<person>|<new> finally|just? coughed_up|ponied_up|forked_over [the|that|my $] for|on",
  "collect or sell: got my 25 for the chairs": "got|received|collected [my|our $] for|from <art>? <piece>",
});

/**
 * Deals that whole clauses tell, in whatever order; the part in brackets is what gives them away, and every other word
 * has to complete it.
 */
export const deals = tableOf([...OWING, ...SHARES, ...TRADES, ...RESTS]);

export type Dealt = Exclude<(typeof deals.rows)[number][1], "none">;
