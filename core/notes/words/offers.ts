/* What becomes of an offer, in the words that people answer it with. */

import { PICKUP } from "./times.ts";
import { wordSet } from "./words.ts";

/** It was taken: the piece is theirs, and nothing was paid yet. */
export const ACCEPTED = wordSet(
  "hes_in shes_in theyre_in im_in were_in hes_ok_with_that shes_ok_with_that hes_fine_with_that shes_fine_with_that took took_it i_took_it we_took_it i_took_that taking_it im_taking_it accepted i_accepted accepted_it i_accepted_it accepted_the_offer accepted_that deal its_a_deal we_have_a_deal " +
    "done_deal agreed i_agreed we_agreed he_agreed she_agreed they_agreed agreed_to_it shook_on_it we_shook_on_it shook_hands said_yes i_said_yes he_said_yes she_said_yes they_said_yes he_says_yes she_says_yes they_say_yes " +
    "said_ok i_said_ok he_said_ok she_said_ok they_said_ok he_says_ok she_says_ok they_say_ok says_ok says_yes she_is_ok_with_it he_is_ok_with_it said_okay i_said_okay told_him_yes told_her_yes told_them_yes told_him_ok told_her_ok told_them_ok said_yes_to_that said_sure i_said_sure " +
    "going_with_it going_with_that went_with_it went_for_it works_for_me good_enough fair_enough fine_with_me ok_with_me good_with_me im_fine_with_that im_good_with_that im_ok_with_that " +
    "sounds_good close_enough ill_take_it id_take_it well_take_it i_will_take_it gave_in i_gave_in caved i_caved we_caved yes_to_that let_him_have_it let_her_have_it let_them_have_it",
);

/** It was not, or is not yet. */
export const DECLINED = wordSet(
  "declined decline declining turned_him_down turned_her_down turned_them_down turned_it_down turned_down turned_that_down said_no told_him_no told_her_no told_them_no no_way no_thanks no_thank_you nope no_deal " +
    "passed i_passed passing refused rejected laughed lol haha holding_off holding_out held_out ignored ignoring ignored_it not_taking didnt_take wont_take walked walked_away insulting insult ridiculous " +
    "too_low way_too_low too_little not_enough as_if nah no_thx never_answered didnt_answer not_budging didnt_budge stood_firm stayed_firm firm " +
    "hard_no um_no uh_no lol_no lmao_no no_lol not_happening not_interested not_a_chance no_chance hell_no never_mind_him said_nope absolutely_not i_think_not not_for_that told_him_nah told_her_nah told_them_nah lmao rofl blocked on_read rolled_my_eyes eye_roll deleted_it",
);

/** At the end of what is told of it, or of an answer of its own, and what may stand around them there: "um no", "nope lol". */
export const NO = wordSet("no nope nah passed");
export const AROUND_NO = wordSet("hard um uh lol lmao haha thanks way so i and just");

/** What we ask, said beside it: "im at 140". */
export const OUR_PRICE =
  /\b(?:i['’]?m|we['’]?re|it['’]?s|firm|still) (?:firm |still |listed )?(?:at|asking) \$?\d+/gi;

/** It was made. */
export const OFFERED = wordSet(
  "wants_it wants_the wants_to_buy offered offers offer offering would_pay will_pay would_give will_give lowballed bid countered can_do could_do would_do will_do asked_if asking_if asked_me_to asks_if lowball lowballing lowballer tried_to_get tried_getting tried_offering trying_to_get wanted_it_for bargained haggled negotiated",
);

/** Words beside those that say that it was taken. */
export const AROUND_TAKEN = wordSet(
  "ok okay well so yeah yes yep alright then finally and the for at with on his her their my to",
);

/** What is said beside the price itself: "im fine with 260". */
export const AGREES = wordSet(
  "im i we were was is am are fine good okay works cool happy accepted took taking take doing did agreed settled",
);

/** What is told of such a piece is no offer any more. */
export const SOLD_ALREADY = wordSet("sold");

/** What is asked in return, before its price: "told him 85". */
export const COUNTERS = wordSet(
  "i told said asked countered offered texted him her them back with at for we so ok it",
);

/** When they come for it: behind an offer it is taken, or soon will be. */
export const COMES_FOR_IT: ReadonlySet<string> = new Set([
  ...PICKUP,
  ...wordSet(
    "pick picks collect collects fetch get_it grabbing grab_it stopping stop_by swinging swing_by be_here be_by",
  ),
]);

/** What we asked in return was taken; the piece, or its price alone. */
export const THEY_TOOK = wordSet(
  "he_took_it she_took_it they_took_it he_took she_took they_took took_it he_took_that she_took_that he_went_for_it she_went_for_it",
);

/** Behind a name, which is then theirs who made the offer. */
export const SAYS_OFFER = wordSet(
  "says said wants wanted offered offers texted messaged wrote asked asks would will can could came tried",
);

/** An hour at which somebody comes: no money. */
export const HOUR_SAID = /\b(?:at|around|about|by) \d{1,2}(?::\d{2})? ?(?:am|pm)?\b/gi;

/** Behind these stands the price at which two met. */
export const MET_AT =
  /\b(?:(?:met|settled|landed|agreed|shook|compromised|closed|ended(?: up)?)(?: (?:in the middle|halfway|hands))? (?:at|on|for)|(?:bargained|haggled|negotiated|talked|knocked)(?: (?:it|him|her|me|us|them|down|up))*(?: from \$?[\d.]+)?(?: down)? to)\b/i;

/** Money that is left for a piece. */
export const PUT_DOWN = wordSet("left put gave sent down deposit dropped paid");

/** Money that is only spoken of: "she will put 40 down". */
export const STILL_TO_PAY = wordSet(
  "will ll gonna going_to coming to_come on_its_way on_the_way later tomorrow tonight soon when once as_soon_as " +
    "bringing sending promised promises",
);

/** "ok took the 15": the money, and with it the offer. */
export const TOOK_MONEY =
  /^\W*(?:(?:ok|okay|fine|alright|well|so|yeah|yes|gave in|in the end|and|i|we)\W+)*(?:took|ended up taking) (?:the |his |her |their |that )?(?:money|cash)?\W*\$?[\d.]+(?:\W+(?:for it|in cash|cash|in the end|done|and done))*\W*$/i;

/*
 * A sale told by how its price came about and what was done then and there: "beat my wife down on the hutch to 210, loaded
 * and paid". In what is matched a piece is "P", a sum "$", one of ours "K", anybody else "W", a way of paying "M" and a mark ",".
 */

const BUYER = "(?:he|she|they|(?:(?:a|an|the|this|some|one) (?:[a-z]+ ){0,3}?)?W)";
const BEATS =
  "(?:talked|haggled|bargained|knocked|beat|beaten|argued|worked|got|brought|chewed|wore|worn|whittled|charmed|nagged)";
const OURS = "(?:me|us|(?:(?:my|our|the) )?K)";
const OF_PIECE = "(?: (?:on|for|over|of) (?:(?:the|my|our) )?P)";
const DOWN = "(?: (?:down|off|on|to|into))";
/** What is done then; one of its words has to say that it was paid. */
const THEN =
  "(?=.* (?:paid|transferred|wired|sent|handed|loaded|drove|gone|took|M)(?: |$))(?: (?:,|and|so|then|he|she|they|W|it|its|is|was|the|in|by|with|on|me|us|up|right|straight|there|here|now|just|all|full|over|handed|M|hand|spot|money|deal|done|paid|transferred|wired|sent|loaded|took|home|him|her|them|away|off|left|drove|gone|went))+";
const ALL_THEY_HAD =
  "(?: (?:,|that|was|is|its|all|every|the|last|cent|penny|dollar|they|he|she|had|have|carried|got|in|on|with|them|him|her|it|M|paid|me|us))*";

const WAYS: readonly string[] = [
  // "lady haggled me to 150 on the dresser, paid cash"
  `(?:P , )?(?:${BUYER} )?${BEATS} ${OURS}${DOWN}*${OF_PIECE}?${DOWN}* \\$${OF_PIECE}?${THEN}`,
  // "she bargained the dresser to 150 and paid by transfer"
  `${BUYER} ${BEATS} (?:(?:the|my|our) )?P${DOWN}+ \\$${THEN}`,
  // "my husband got talked down on the hutch to 210, it's loaded and paid"
  `(?:P , )?(?:(?:i|we|${OURS}) )?(?:got|was|were) ${BEATS}${DOWN}*${OF_PIECE}?${DOWN}* \\$${OF_PIECE}?${THEN}`,
  // "down to 150 he talked me, paid cash"
  `down to \\$ ${BUYER} ${BEATS} ${OURS}${OF_PIECE}?${THEN}`,
  // "told a man 30 and it's yours, and he paid up"
  `(?:i )?(?:told|said)(?: to)?(?: ${BUYER}| him| her| them)?(?: he could have it for)? \\$(?: and)?(?: its (?:yours|his|hers|theirs)| takes it| (?:he|she|they) can have it)?(?: to ${BUYER})?(?: (?:,|and))+ (?:he|she|they)(?=.* (?:paid|handed)(?: |$))${THEN}`,
  // "they fetched it, so 70 it was, cash"
  `(?:he|she|they|W)(?: (?:fetched|collected|picked|came|for|and|got|up|it|them|himself|herself|themselves))+(?: (?:,|so|and))* (?:it was )?\\$(?: (?:it|was|is|then|in|the|end|,))* (?:M|paid)(?: paid)?`,
  // "bunk bed people just drove off with it, 190, all they had on them"
  `(?:the )?P(?: (?:W|folks|crew|lot))?(?: (?:just|now))?(?: (?:drove (?:off|away|home)|left|loaded(?: up)?|went (?:off|home|away)))(?: (?:with|it|them|a|W))* , \\$${ALL_THEY_HAD}`,
  // "one of the nightstands went to a very nice teacher, for 40"
  `(?:the )?P(?: (?:just|has|have|is))? (?:went|gone|left|off) (?:to|with) (?:(?:a|an|my|the|our) (?:[a-z]+ ){0,3}?W|an? (?:[a-z]+ ){1,3}[a-z]+)(?: (?:,|for|at))+ \\$(?: M)?`,
  // "both stools live at the corner cafe now, got 45 for the pair"
  `(?:(?:the|my) )?P (?:now )?(?:live|lives|sit|sits|stand|stands|found|have|has)(?: [a-z]+){1,6} , got \\$(?: for (?:the )?(?:pair|two|both|lot|P|it|them))?(?: M)?`,
];

/** The price is beaten down, and nothing says that it was paid: "talked me down to 150 on the desk but hasn't paid". */
export const BEATEN_DOWN = new RegExp(
  `^(?:P , )?(?:(?:${BUYER} )?${BEATS} ${OURS}|(?:(?:i|we|${OURS}) )?(?:got|was|were) ${BEATS})${DOWN}+${OF_PIECE}?${DOWN}* \\$${OF_PIECE}?(?: (?!P|\\$)\\S+)*$`,
);

/** A price that we named, and a deposit of which nobody says how much: "quoted him 165 and he left a deposit". */
export const TOLD_AND_HELD =
  /^(?:P , )?(?:i |we )?(?:told|quoted|said|offered|agreed|settled)\b(?:(?!\$).)* \$(?! (?:deposit|down)\b)(?:(?!\$).)* (?:deposit|down payment)\b(?:(?!\$).)*$/;

/** It is not through: it may wait for the buyer. */
export const NOT_THROUGH =
  /\b(?:hasnt|havent|not|no|yet|unpaid|pays|pay|will|coming|comes|back|later|hold|deposit|down payment|if|when|tomorrow|D)\b/;

export const SOLD_THERE = new RegExp(`^(?:${WAYS.join("|")})$`);

/** "paid him 50 up front for the wingback": money of ours, for work on a piece, or for another. */
export const PAID_AHEAD =
  /^(?:(?:i|we) )?(?:just )?(?:paid|gave|sent|handed|slipped|advanced) (?:him|her|them|(?:the|my|a) [a-z]+(?: [a-z]+)?|W|K) (?:a )?\$(?: M)?(?: (?:up front|upfront|in advance|down|as|a|deposit|to|start|start on|begin|ahead))+(?: (?:on|for|toward|towards))*(?: the| my)? P(?: [a-z ]+)?$/i;

/** "she asked could it be 180, i said oh go on then" of what is held for her. */
export const AGREED_TO =
  /\b(?:(?:i )?(?:said|told (?:him|her|them)|says i) (?:(?:oh|well|ok|then|and) )*(?:go on|ok|okay|fine|alright|all right|sure|yes|yeah|deal)|agreed|gave in|caved|(?:fine|ok|okay|alright|good) (?:by|with) me|settled|(?:alright|ok|okay|fine|sure|go on then) i said|\$ was fine)\b/;
export const AROUND_AGREED = wordSet(
  "W he she they him her them i we me us asked asks ask wanted wants want could would do did it its be if for at to on in off so and or but the a an oh well ok okay fine alright all right sure yes yeah go then said say says told agreed gave caved settled with by good deal end was is , tenner fiver bit less that id can",
);

/** "says he'll send 50 tonight", "40 deposit coming", "putting 50 down": money on top of an offer that is still to come. */
export const PROMISED_SUM =
  /\b(?:(?:he|she|they)['’]?ll|will|gonna|going to) (?:send|put|leave|drop|bring|give|transfer|wire)(?: me| us)? (?:a )?\$?\d[\d.]*(?: (?:down|deposit))?|\b(?:putting|sending|leaving|dropping|bringing) (?:me |us )?(?:a )?\$?\d[\d.]*(?: (?:down|deposit))?|\$?\d[\d.]* (?:deposit|down) (?:is )?(?:coming|to come)/i;

/** A sale that is told so says one of these. */
export const PAID_THERE = wordSet(
  "paid transferred wired sent handed loaded drove took gone cash card check transfer went left live lives sit sits stand stands found have has",
);

/** Without any of these a message tells no such deal. */
export const TELLS_DEAL: ReadonlySet<string> = new Set([
  ...PAID_THERE,
  ...wordSet(
    "talked haggled bargained knocked beat beaten argued chewed wore worn whittled nagged " +
      "quoted gave slipped advanced sold gone said told says agreed caved fine ok okay alright right settled sure with",
  ),
]);

/** What we do, which makes no sale: "talked her down to 40, i paid cash". */
export const WE_PAY =
  /\b(?:i|we) (?:paid|loaded|handed|took|sent|transferred|wired|drove|left)\b|\b(?:paid|sent|handed) (?:him|her|them|for)\b/i;

/** Said of anybody who was spoken of. */
export const PRONOUN = /^(?:he|she|they|him|her|them|hes|shes|theyre|hed|shed|theyd)$/;
