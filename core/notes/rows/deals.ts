import { SHARES } from "./shares.ts";
import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";
import { TRADES } from "./trades.ts";

const IN =
  "got|get|received|collected|collect|took|picked_up|brought|dropped_off|handed_over|handed_me|sent|sent_me|gave|gave_me|paid|paid_me|pays|brought_by|coughed_up|ponied_up|forked_over|recd|dropped_by|dropped_round|brought_round|popped_round|brung|stumped_up|bunged_me|slipped_me";
const OWED = "owed|owes|owe|owing|outstanding";
const REST = "other|last|remaining|outstanding|final|rest|remainder|balance";
const CAME =
  "came|came_by|came_back|came_over|stopped_by|swung_by|dropped_by|drove_up|showed_up|pulled_up|back";

/** A price that stays owed. "unpaid": it never comes; "none": what only looks like a deal. */
const OWING: readonly Row<"none" | "unpaid">[] = [
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
    "check|checks|chk|cheque|payment|transfer|card … [bounced|nsf|no_good|unpaid|reversed|declined|returned|bad|came_back|no_funds|insufficient_funds|didnt_clear|never_cleared|didnt_go_through|never_went_through|never_came_through|wont_clear]",
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
];

/**
 * The rest of a price comes in. "collect": so it does; "collect part": the amounts in brackets are the whole that was owed;
 * "collect or sell": the price, or the rest of it; "collect or buy": the other pieces, or their money.
 */
const RESTS: readonly Row<"collect" | "collect part" | "collect or sell" | "collect or buy">[] = [
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

/**
 * Deals that whole clauses tell, in whatever order; the part in brackets is what gives them away, and every other word
 * has to complete it.
 */
export const deals = tableOf([...OWING, ...SHARES, ...TRADES, ...RESTS]);

export type Dealt = Exclude<(typeof deals.rows)[number][1], "none">;
