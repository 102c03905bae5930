import type { TurnEffect } from "./afterwards.ts";
import { rowsOf } from "./row.ts";

const LINK = ",|.|!|-|(|but|and|though|tho|only|just|still|so|then*";
const MONEY = "money|cash|payment|check|cheque|funds|transfer|rest|balance";
const WHO =
  "he|she|they|hell|shell|theyll|hes|shes|theyre|buyer|guy|lady|customer|<person>|<kin>|<new>|wholl|who";
const WILL = "ll|will|is|are|s|to|gonna|going_to|said|says|wants|promised|promises|plans|has|needs";
const SAYS = "said|says|promised|promises|swears|swore|claims|vowed|assured_me|told_me|tells_me";
const FETCHES =
  "pick|picks|picking|picks_up|pick_up|picking_up|picks_it_up|picking_it_up|pickup|collect|collects|collecting|collection|fetch|fetches|fetching|grab|grabs|grabbing|comes|come|coming|gets|getting|get_it";
const PAYING = "pay|pays|paying|brings_the_money|brings_cash|settles|settle_up|settles_up|pays_cash|pay_cash";
const THING = "it|them|up|by|over|here|for_it|then|in|full|cash*";
const WHEN =
  "on|this|next|at|by|after|around|<day>|<clock>|tomorrow|later|tonight|soon|payday|next_week|this_weekend|morning|afternoon|evening|night|work|after_work*";
const IN_TIME =
  "<day>|tomorrow|tmrw|tonight|later|soon|payday|next_week|next_month|this_weekend|when|once|after|as_soon_as|if|whenever";
const NOT_THROUGH =
  "failed|fails|failing|declined|got_declined|was_declined|rejected|got_rejected|bounced|reversed|stuck|frozen|isnt_working|not_working|didnt_work|wont_work|doesnt_work|wouldnt_work|wasnt_working|wont_go_through|didnt_go_through|not_going_through|wouldnt_go_through|hasnt_gone_through|hasnt_come_through|never_came|never_arrived|never_came_through|didnt_come_through|is_down|was_down|acting_up|is_acting_up|wont_load|wont_send|not_sending|isnt_sending|on_hold|under_review|flagged|being_weird|pending|didnt_arrive|isnt_there|not_there|not_showing|isnt_showing";
const ASKED =
  "invoice|bill|payment_request|money_request|cash_request|request|requests|reminder|payment_link|link|qr_code|invoice_and_all";

/** When the rest of a held piece's price comes. */
export const REST_ON =
  "[,|.|and|;|-|with|w|he|she|they|who|will|to|is|hell|shell|theyll|hes|shes|theyre|gonna|going_to|said* brings|bring|bringing|pays|pay|paying|sends|send|sending|drops_off|has|have|get|gets|getting? <art>? bal|balance|rest|remainder|other_half $? due|owed|comes|coming|is_due|when|once|together|in? he|she|they? picks|gets|collects|fetches|grabs? it|them|up* on|at|by|this|next?] <day>";

/** How it is said behind a sale that its money has not come, and of a part that it is all there is. */
export const NOT_COME = rowsOf<TurnEffect>({
  "fetch: priya put 50 down on the desk, she'll bring the rest by friday": `<buyer> … $ down|down_on|deposit|down_for … ${REST_ON}`,
  // Taken back in the same breath.
  "doubt: listed the desk 40, then took it down":
    "<~list>|<~reprice>|put … $ … [,|.|and|but|then|so|later|i|we|have|had|wife|site|app|page|they|<art>|<kin>* took|taken|pulled|yanked|put|changed|set|switched|raised|lowered|brought|moved it|them|that|<art>? <piece>? listing|ad|post|price? down|off|again|back !to|$]",
  "doubt: posted the desk 40, deleted it right away":
    "<list>|<~reprice>|put … $ … [,|.|and|but|then|so|later|i|we|have|had* deleted|removed|unlisted|withdrew|withdrawn|cancelled|canceled it|them|that|<art>? <piece>? listing|ad|post?]",
  "doubt: donated the desk, they would not take it":
    "donated|gave|gifted|dropped … <piece> … [,|.|and|but|so|-* they|he|she|<person>|church|shop|store|<place> refused|refused_to|declined|wouldnt|didnt|did_not|would_not|couldnt|wont|cant|turned take|accept|want|have? it|them down|away?]",
  "doubt: paid 300 to the loan, the bank has not taken it though":
    "paid|sent|transferred … loan … [,|.|and|but|-* <art>? bank|payment|transfer|money|lender|it bounced|failed|hasnt|has_not|didnt|did_not|never|wont|couldnt <word>* though|yet?]",
  // Fetched and paid for on a day to come.
  "unpaid: sold dresser 180, he picks up and pays tomorrow after my shift": `<~sell>|<buyer> … [${LINK} ${WHO}? ${WILL}* ${FETCHES} ${THING} ${WHEN} ,|and|&|then|to* ${PAYING} me|us|${THING} ${WHEN}]`,
  "unpaid: sold dresser 180, she will pay and pick up after work tomorrow": `<~sell>|<buyer> … [${LINK} ${WHO}? ${WILL}* ${PAYING} me|us|${THING} ${WHEN} ,|and|&|then|when|once|he|she|they* ${FETCHES} ${THING} ${WHEN}]`,
  "unpaid: sold dresser 140, invoice sent": `<~sell>|<buyer> … [${LINK} <art>|his|her|their|<method>|payment|money* ${ASKED} was|is|been|has|just|already* sent|out|to_follow|follows|emailed|mailed|texted|going_out|coming|pending|went_out|due|outstanding] !paid`,
  "unpaid: sold dresser 140, sent her an invoice": `<~sell>|<buyer> … [${LINK} i|we|just* sent|emailed|mailed|texted|sending|gave|wrote|requested|asked_for him|her|them|the_buyer|buyer|out|over* <art>|<method>|payment|money* ${ASKED}|payment <any>? <any>?] ;`,
  "unpaid: sold dresser 140, billed her": `<~sell>|<buyer> … [${LINK} i|we|just* billed|invoiced|billing|invoicing|will_bill|will_invoice him|her|them|the_buyer|it|for_it*] ;`,
  "unpaid: sold dresser 140, payment failed": `<~sell>|<buyer> … [${LINK} <art>|his|her|their|my|bank|mobile|online* ${MONEY}|<method>|<new>|card|app|wire|payment_app is|has|was|still|just|got* ${NOT_THROUGH} though|yet|again|today|rn|for_now*]`,
  "unpaid: sold dresser 140, forgot to take the money": `<~sell>|<buyer> … [${LINK} i|we|and* forgot|forget|forgetting|neglected|never|didnt|failed to? get|take|collect|ask_for|grab|took|got|collected|asked_for|ask_him_for|ask_her_for|pick_up the|his|her|their|my|any* ${MONEY}|paid]`,
  "unpaid: sold the desk 140, her mom is bringing the cash after church": `<~sell>|<buyer> … [${LINK} ${WHO} ${WILL}* drop_off|drop|drops|dropping|dropping_off|drops_off|mail|mails|mailing|leave|leaving|bring|brings|bringing|send|sends|sending|hand_over|give|wire|wires|wiring|transfer|transfers|transferring|pay|pays|paying|swing_by_with|comes_with|coming_with|come_with|comes_by_with|come_by_with|come_back_with me|us|over|off|by|round* the|a|my|his|her|their* ${MONEY} <any>? <any>? <any>?] ;`,
  "unpaid: sold the bench to jen for 60, she'll pay us friday after church": `<~sell>|<buyer> … [${LINK} ${WHO}? ${WILL}* pay|pays|paying|settle|settles|settling me|us|up|for|it|the|rest|money|back|that* on|by|this|next? ${IN_TIME} when|once|after|as_soon_as|if? <any>? <any>? <any>? <any>?]`,
  "unpaid: sold the bench to jen for 60, she says she'll have the cash on friday": `<~sell>|<buyer> … [${LINK} ${WHO}? ${SAYS}? he|she|they|hell|shell|theyll|ll|will|gonna|going_to|to* have|has|get|gets|got <art>|my|his|her|our? ${MONEY} on|by|this|next|for_me|for_us* ${IN_TIME} <any>? <any>? <any>?]`,
  "unpaid: sold the bench for 60 but the money comes next week": `<~sell>|<buyer> … [${LINK} <art>|his|her|their? ${MONEY} will|is|should* come|comes|coming|arrive|arrives|land|lands|clear|clears in|through|here? on|by|this|next? ${IN_TIME}]`,
  "unpaid: sold dresser 140, trusting he pays": `<~sell>|<buyer> … [${LINK} trusting|trust|hoping|hope|believing|praying|betting|counting_on|banking_on|relying_on|trusted him|her|them|that|buyer|he|she|they|<new>|will|to|ll|for* pay|pays|paying|come_through|comes_through|is_good_for_it|good_for_it|the_money|payment]`,
  "unpaid: sold dresser 140, he swears hes good for it": `<~sell>|<buyer> … [${LINK} ${WHO} ${SAYS} me|us|he|she|they|hed|shed|theyd|hell|shell|theyll|ll|d|will|would|to|that|is|hes|shes* pay|pays|paying|good_for_it|settle|send_it|bring_it|get_it_to_me <any>? <any>? <any>?] ;`,
  "unpaid: sold dresser 140 on trust": `<sell> … [${LINK} on trust|faith|his_word|her_word|their_word|good_faith|a_promise|promise] ;`,
  "unpaid: sold both chairs 110, only one paid for": `<~sell>|<buyer> … <several> … [${LINK} only|just one|half|some|# of_them|was|is|are|got|has_been|so_far* paid_for|paid]`,
  "pending: lady bought both, 260, dresser now and desk saturday": `<~sell>|<buyer> … $ [${LINK} <art>? <piece> now|today|tonight ,|and|&* <art>? <piece> on? <day>|later|tomorrow|next_week|this_weekend]`,
  // Money for a hold that is only spoken of.
  "intention: 50 deposit coming tonight":
    "$ [deposit|down|down_payment is|will|to|be|gonna|going_to|still* coming|come|comes|arriving|on_its_way|on_the_way|to_come|to_follow|tonight|tomorrow|tmrw|later|soon|after_work]",
  "intention: deposit 50 when she gets off work":
    "deposit|down_payment|down … [when|once|as_soon_as he|she|they gets|get|comes|come|arrives|arrive|sees|see|can|is|are|has|have|finishes|finish]",
  "intention: deposit on the desk 20 coming":
    "<~hold>|deposit|deposits … $|<piece> [,|-|is|its|still* coming|on_its_way|on_the_way|to_come|to_follow|promised|pending|owed|not_here_yet|in_the_mail on|by? tomorrow|tonight|later|soon|<day>?] ;",
  "intention: deposit desk 20 he said":
    "<~hold>|deposit|deposits … $|<piece> [,|-|so* he|she|they|buyer|guy|lady|<new> said|says|claims|promised|promises|swears] ;",
  "intention: deposit on the desk 20 by check tonight":
    "deposit|deposits … $ … [by|via|with|through <method>|<new> tonight|tomorrow|later|soon|next_week|when_home|after_work]",
  // Who paid is not said: no purchase of ours, where the books hold the piece.
  "word: desk paid for, 110":
    "^ <art>? <piece> [is|was|are|got|has_been|have_been|fully|all|already|just|now* paid for|up|off|in_full|in_advance|upfront|up_front|already|fully* ,|-|:?] $|<method>",
  // A part of what is to be paid.
  "deposit: ed paid first 60 for the desk":
    "<buyer>|<person>|<new>|he|she|they paid|gave|sent|put|handed|paid_me|gave_me|sent_me [<art>? first|initial|opening|another|further|second|third|next|additional|more|extra] $ for|on|toward|towards|down",
  "deposit: ed paid 60 so far for the desk":
    "<buyer>|<person>|<new>|he|she|they paid|gave|sent|put|handed|paid_me|gave_me|sent_me $ … [so_far|already|to_start|to_begin|for_now|for_starters|for_a_start|as_a_start|to_begin_with|to_start_with|up_to_now|at_first|first]",
  "doubt: ed paid only 60 for the desk":
    "<buyer>|<person>|<new>|he|she|they paid|gave|sent|put|handed|paid_me|gave_me|sent_me [just|only] $ for|on|toward|towards",
});
