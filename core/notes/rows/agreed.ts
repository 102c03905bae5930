import type { NumberEffect } from "./owed.ts";
import { type Row, rowsOf } from "./row.ts";

/*
 * What a hold tells beside its deposit: the price that was agreed on, or what of it is still to pay ("owed").
 * "down": the word before money that was left for a piece, where no verb of a hold says so.
 */

const H = "<~hold>|put|left|gave_me";
const HOLDING = "hold|held|holding|reserved|reserve|reserving|spoken_for";
const WHO = "we|they|he|she|i|you|both|<person>";
const AGREES =
  "agreed|agrees|agree|settled|shook|shook_hands|said_yes|said_ok|said_okay|landed|accepted|is_good|was_good|ok_with";
const TO = "on|to|at|upon|for|pay|paying|a|the|price|of";
const SAID = "final|full|total|sale|sales|selling|whole";
const IN_ALL = "total|in_total|altogether|all_told|in_all|all_in|for_it|for_everything|for_all";
const ALL_OF_THEM = "pair|set|both|both_of_them|all_of_them|all_of_it|whole_thing|lot|<ofthem>";
const OPENS = ",|-|(|.|;|!|/|so|and|but|with|at|for|a|an|the|our|is|was|it|its|thats|price";
const REST = "balance|rest|remaining|remainder|remaining_balance|other|other_half|last|final|leaves|leaving";
const OWES =
  "owes|owe|owing|pays|brings|bringing|paying|will_pay|will_bring|gonna_pay|gonna_bring|to_pay|to_bring";
const WHEN = "at|on|upon|when|once|by|this|next|due|still|left";
const PICKUP =
  "pickup|pick_up|picking_up|collection|delivery|he|she|they|gets|picks|collects|fetches|comes|grabs|it|up|them|<day>|tomorrow|later|payday|next_week|next_month";
const LATER = "<day>|tomorrow|later|payday|next_week|next_month";
const STILL_DUE =
  "due|left_to_go|left_to_pay|to_be_paid|left|remaining|to_go|to_come|still_due|still_owed|owed|owing|outstanding|to_pay|more|more_due|more_to_come";
const NOW = "now|today|down|up_front|deposit|holding|earnest|earnest_money|down_payment";
const OF_DEPOSITS = "in|deposit|deposits|held|so_far";

/** Verbs of who has money put on a piece, and of us who take it. */
const PUTS =
  "sent|sent_me|left|left_me|put|gave|gave_me|gave_us|paid|paid_me|handed|handed_me|dropped|dropped_off|wired|took|got|has|have|made";

/** When money that was only spoken of is to come. */
const TO_COME =
  "coming|on_its_way|on_the_way|to_come|to_follow|follows|later|later_on|tonight|tomorrow|tmrw|soon|after_work|after_dinner|in_a_bit|next_week|this_weekend";
const COMING = "coming|come|comes|arriving|arrive|arrives";
const PAYING =
  "sending|bringing|dropping_off|dropping|giving|putting|leaving|paying|wiring|transferring|mailing";
const PAY = "send|bring|drop_off|drop|give|put|leave|pay|wire|transfer|mail";
const DOES = "gets|get|comes|come|arrives|arrive|sees|see|can|is|are|has|have|picks|pick|finishes|finish";
/** Words that may stand around what is to come: "coming over tonight", "when she gets off work". */
const ANY = "<any>? <any>? <any>? <any>?";

/** A deposit said before: its verb first, or its money. */
const DEPOSIT = [`!!loan|loans ${H} … $`, `!!loan|loans $ ${NOW}`] as const;

/** A row for each way in which a deposit is said, with a note of each. */
const behindDeposit = (
  pattern: string,
  effect: NumberEffect,
  notes: readonly [verbFirst: string, moneyFirst: string],
): Row<NumberEffect>[] => DEPOSIT.map((deposit, at) => [`${deposit} … ${pattern}`, effect, notes[at]!]);

export const HELD: readonly Row<NumberEffect>[] = [
  ...rowsOf<NumberEffect>({
    // The price that was agreed on.
    "agreed: hold the desk for ben, agreed on 150": `${H} … [${OPENS}* ${WHO}* ${AGREES} ${TO}* $ ${IN_ALL}? )?]`,
    "agreed: took a 50 deposit on the dresser, agreed on 225 total": `$ ${NOW} … [${OPENS}* ${WHO}* ${AGREES} ${TO}* $ ${IN_ALL}? )?]`,
    "agreed: agreed at 100 for both chairs, he put 20 down": `[${OPENS}* ${WHO}* ${AGREES} ${TO}* $ ${IN_ALL}?] … deposit|down|put|left|gave_me $`,
    "agreed: she said yes 170, sent 40 to hold it": `^ [${OPENS}* ${WHO}* ${AGREES} ${TO}* $ ${IN_ALL}?] … sent|sent_me|paid|paid_me $ to_hold`,
    "agreed: agreed 100 for both chairs, 20 down": `[${OPENS}* ${WHO}* ${AGREES} ${TO}* $ ${IN_ALL}?] … $ deposit|down|now|up_front`,
    // What somebody brought us down to.
    "agreed: ruth talked me down to 160 on the dresser, put 40 down": `[talked|haggled|beat|knocked|got|brought me|us|it|price down? to|at $] on|for <art>? <piece> ,|-|.|;|and|so|but <any>? ${PUTS} <art>? $`,
    "agreed: made a deal with ruth on the dresser, 160, she gave me 40": `deal|agreement … <piece> [,|-|:|at|for $] ,|-|.|;|and|so <any>? ${PUTS} <art>? $`,
    // With somebody who is named between, and what was sent to have it held.
    "agreed: lena agreed on 110 for the desk and sent 20 to hold it": `[${OPENS}* ${WHO}* ${AGREES} ${TO}* $ ${IN_ALL}?] … … ,|-|.|;|and|so|but … ${PUTS} <art>? $ … deposit|down|to_hold|to_save|to_keep|to_reserve|toward|towards`,
    "agreed: agreed on 110 for the desk with the lady down the street, 20 down": `[${OPENS}* ${WHO}* ${AGREES} ${TO}* $ ${IN_ALL}?] … … ,|-|.|;|and <art>? $ deposit|down|now|today|up_front`,
    "agreed: held the bench for tina, final price 85": `${H} … [${OPENS}* ${SAID} price of|is|was|:? $ )?]`,
    "agreed: desk held for ben, 150 agreed": `${H} … [,|-|(|at|for* $ agreed|agreed_on|agreed_price|as_agreed|was_agreed )?]`,
    "agreed: hold the trunk for sam, we said 95, 15 down": `${H} … [,|-|(|.|;|!|/|so|and* ${WHO} said $ ${IN_ALL}?] … $ deposit|down`,
    "agreed: desk on hold for 150, ben put 40 down": `${HOLDING} … [for|at? $ for|on? <art>? ${ALL_OF_THEM}?] ,|-|and|with|.* <any>* put|left|paid|gave_me|took $ down|deposit? ;`,
    "agreed: reserved the desk for ben at 150, 40 down": `${HOLDING} … [for|at? $ for|on? <art>? ${ALL_OF_THEM}?] ,|-|and|with* <art>? $ deposit|down`,
    "agreed: reserved the vanity for ana at 180, deposit 40": `${HOLDING} … [for|at? $ for|on? <art>? ${ALL_OF_THEM}?] ,|-|and|with* <art>? deposit|deposit_of|down_payment of? $`,
    "agreed: deposit 45 of 165 on desk": `${H} $ [of|out_of <art>? $]`,
    "agreed: 45 down of 165 on the desk": `$ ${NOW} [of|out_of <art>? $]`,
    // "60 total now" may be all that was put down.
    "vague: another 20 down on the desk, 60 total": `another|second|more|extra … $ … [$ ${IN_ALL} now|so_far?]`,
    "vague: ben put another 20 down on the desk, 60 total": `${H} … another|second|more|extra … $ … [$ ${IN_ALL} now|so_far?]`,
  }),
  ...behindDeposit(`[$ ${IN_ALL} now|so_far|already]`, "vague", [
    "put 20 down on the desk, 60 total now",
    "20 down on the desk, 60 total so far",
  ]),
  ...behindDeposit("[,|-|and* total|all|both deposits|deposit|down of|is|now|so_far|:* $]", "vague", [
    "deposit 20 on lamp, total deposits 65",
    "20 down on lamp, total deposits 65",
  ]),
  ...behindDeposit("[,|-|and|a|total|total_of|now|makes|thats* $ in|of deposits|deposit]", "vague", [
    "deposit 20 on lamp, total of 65 in deposits now",
    "20 down on lamp, thats 65 in deposits",
  ]),
  ...rowsOf<NumberEffect>({
    "agreed: desk at 150, 40 down": "^ <art>? <piece> [at|for $] ,|-|and|with* <art>? $ down|deposit",
  }),
  // Of two amounts the one that is the whole.
  ...behindDeposit(`[,|-|(|.|;|!|/|so|and* ${WHO} said $ ${IN_ALL}? )?]`, "agreed", [
    "deposit 15 on the trunk, we said 95",
    "15 down on the trunk, we said 95",
  ]),
  ...behindDeposit(
    `[,|-|(|.|;|!|/|so|and|for|at|she|he|they|shes|hes|theyre|is|will|pays|pay|paying* $ ${IN_ALL} )?] !${OF_DEPOSITS}`,
    "agreed",
    ["desk deposit 40 cash, 150 total", "40 deposit on the desk, 150 in all"],
  ),
  ...behindDeposit(
    `[,|-|(|.|;|!|/|so|and|for|at|a* total|total_of|total_is :? $ )?] !${OF_DEPOSITS}`,
    "agreed",
    ["desk deposit 40, total 150", "40 down on the desk, total 150"],
  ),
  ...behindDeposit(`[,|-|(|.|;|!|/|so|and|the|a* ${SAID}? price of|is|was|:? $ )?]`, "agreed", [
    "deposit 40 for the desk, price 150",
    "40 down on the desk, price is 150",
  ]),
  ...behindDeposit("<piece> <method>? [of|out_of|toward|towards $]", "agreed", [
    "deposit 40 on desk of 150",
    "40 down on the desk out of 150",
  ]),
  ...behindDeposit("[,|-|.|;|and* selling|going|its|it_is it|to_him|to_her* for|at $]", "agreed", [
    "put 40 down on the desk, selling for 150",
    "took 40 deposit on the desk, selling for 150",
  ]),
  ...behindDeposit(`[,|-|and|for* $ for|on <art>? ${ALL_OF_THEM}]`, "agreed", [
    "hold both chairs for kim, deposit 20, 90 for the pair",
    "20 deposit on both chairs, 90 for the pair",
  ]),
  // What of it is still to pay.
  ...behindDeposit(
    `[,|-|(|.|;|!|/|so|and|with* he|she|they|will|still* ${OWES} me|us|still|the|his|her|another* ${REST}? $ <method>? ${WHEN}* ${PICKUP}* )?]`,
    "owed",
    [
      "she put 30 down on the mirror and owes 60 at pickup",
      "40 deposit on the desk, he pays the other 110 friday",
    ],
  ),
  ...behindDeposit(
    `[,|-|(|.|;|!|/|so|and|with|a|the|his|her|their* ${REST} of|is|:|will_be|due* $ <method>? ${STILL_DUE}? ${WHEN}* ${PICKUP}* )?]`,
    "owed",
    ["put 50 down on the dresser, balance of 200 at pickup", "50 down on the dresser, rest of 200 on pickup"],
  ),
  ...behindDeposit(
    `[,|-|(|.|;|!|/|so|and|with|plus|then|a|the|his|her|their* ${REST}|another? $ ${STILL_DUE} in|by? <method>? ${WHEN}* ${PICKUP}* )?]`,
    "owed",
    ["deposit 40 on desk, 110 due at pickup", "desk: 40 deposit, 110 remaining"],
  ),
  ...behindDeposit(
    `[,|-|(|.|;|!|/|so|and|with|plus|then|the|his|her|their* ${REST}? $ <method>? ${WHEN} ${PICKUP} ${PICKUP}* )?]`,
    "owed",
    ["hold dresser, deposit 50 and 200 at pickup", "dresser on hold, 50 down and 200 on pickup"],
  ),
  ...rowsOf<NumberEffect>({
    "owed: ben reserved the desk, 40 now 110 friday": `${H} … $ now|today|down|up_front [,|and|then* <art>? ${REST}? $ ${LATER}]`,
    "passing: ben reserved the desk, 40 now 110 friday": `<~hold> … $ [now|today|up_front] ,|and|then* <art>? ${REST}? $ ${LATER}`,
    // A deposit that is still to come is none: the piece is held without it.
    "passing: hold the desk for dana at 150, 50 deposit coming tonight": `<~hold> … [,|-|and|with|but|;|.* <art>|his|her|their? $ deposit|down|down_payment is|will|to|be|gonna|going_to|still* ${COMING}|${TO_COME} ${ANY}] ;`,
    "passing: hold the desk for dana, 50 deposit when she gets paid": `<~hold> … [,|-|and|with|but|;|.* <art>|his|her|their? $ deposit|down|down_payment when|once|after|as_soon_as he|she|they ${DOES} ${ANY}] ;`,
    "passing: hold the desk for kim, she is bringing 40 tomorrow": `<~hold> … [,|-|and|but|;|.* <someone> will|ll|gonna|going_to|said|says|promised|to|he|she|they|hell|shell|hed|shed|theyll|is|are|s* ${PAYING} <art>|me|us|off|over|by|down|another* $ deposit|down|down_payment? ${ANY}] ;`,
    "passing: hold the desk for kim, shell send 40 tonight": `<~hold> … [,|-|and|but|;|.* <someone>? will|ll|gonna|going_to|promised|hell|shell|hed|shed|theyll to|he|she|they|me* ${PAY} <art>|me|us|off|over|by|down|another* $ deposit|down|down_payment? ${ANY}] ;`,
    // Money that was left, behind the price agreed on.
    "passing: settled at 140 for the desk, he left 40": `${AGREES} … $ … [,|-|and|.*] <any>? left|put|gave_me|dropped|paid $ deposit|down? !for|toward|towards`,
    "down: settled at 140 for the desk, he left 40": `${AGREES} … $ … ,|-|and|.* <any>? [left|put|gave_me|dropped|paid] $ ;`,
    "down: mom took 35 from hank for the vanity to hold it":
      "[took|got|collected|accepted|received] <art>? $ <method>? from … to_hold|to_keep|to_save|to_reserve|as_a_deposit|as_deposit",
    "down: settled at 140 for the desk, he left 40 down": `${AGREES} … $ … ,|-|and|.* <any>? [left|put|gave|gave_me|dropped|paid] $ down|deposit ;`,
    "down: ben left 40 on the desk, another 110 to come": `<new>|<person>|he|she|they [left|put|gave_me] $ on|for|toward|towards <art>? <piece> … ${REST}|another? $ ${STILL_DUE}`,
    "down: jo put 20 on the lamp and will pay the remaining 45 saturday": `<new>|<person>|he|she|they [left|put|gave_me] $ on|for|toward|towards <art>? <piece> … ${REST}|${OWES} $`,
    "agreed: nell wants the hutch at 220, put 40 down":
      "wants|want|wanted|taking|is_taking|will_take|takes|take|buying|is_buying|getting|is_getting|gets|get <art>? <piece>|it|them [at|for $ ,|and|-|.|so|he|she|they|has|already|just*] put|left|left_me|gave|gave_me|paid|sent|sent_me|put_down|dropped|wired a? $",
    "down: nell is taking the hutch at 220, left 40":
      "wants|want|wanted|taking|takes|take|buying|getting|gets|get|gonna|will <art>? <piece>|it|them … ,|and|-|.* <someone>? [left|put|gave|gave_me|sent|sent_me|dropped_off|put_down] $ !for|deposit|down|on",
    "owed: ben gave 40 on the desk, other 110 friday": `gave|paid|sent|brought $ on|for|toward|towards <art>? <piece> [,|-|and|with|he|she|they|will|ll|still* ${OWES}? <art>|me|us|his|her* ${REST}|another? $ <method>? on|by|this|next? ${LATER}]`,
    "down: guy dropped off 35 cash so id save the desk for him":
      "gave|left|dropped|dropped_off|sent|paid|handed|gave_me|sent_me … $ <method>? [so|so_that id|ill|i|we|i_would|we_would|i_will|wed|could|would|will* hold|save|keep|reserve] <art>? <piece>|it",
    "passing: layaway on the desk, 30 today and 30 every week after":
      "layaway|installments|on_layaway … ,|-? $ today|now|down|first … [,|and|then|plus* $ every|a|per|each week|month|friday|payday|paycheck|<span>|<day> after|until|till|thereafter|more|then*]",
    "down: ben gave 40 on the desk, other 110 friday": `<new>|<person>|he|she|they [gave|paid|sent|brought] $ on|for|toward|towards <art>? <piece> … ${REST}|another? $ ${LATER}`,
  }),
];
