import type { TurnEffect } from "./afterwards.ts";
import { rowsOf } from "./row.ts";

const HE =
  "he|she|they|guy|lady|buyer|couple|dude|woman|man|kid|someone|somebody|this|one|first|at_first|finally|<art>|<person>|<new>";
const COMPLAINED =
  "says|said|told_me|complained|messaged|texted|called|claims|claimed|noticed|found|saw|discovered|pointed_out|reported|emailed|wrote";
const GIVES_BACK = "gave|give|sent|send|handed|paid|mailed|returned|slipped";
const THEIRS = "is|was|s|officially|all|now|finally* hers|his|theirs";
const GONE =
  "took|sold|gone|paid|loaded|left|grabbed|bought|drove_off|went_home|carried|deal_done|done|hauled";
const AND = ",|-|.|and|but|so|then|;";
const DOWN_TO = "talked|haggled|bargained|knocked|beat|argued|worked|got|brought|chewed";

/** Who came for one of a pair, and has both. */
const CAME =
  "came|came_in|stopped|stopped_by|showed_up|drove_out|wanted|only_wanted|just_wanted|asked|asked_about|messaged|was_only_after|was_after|was_here|were_here";
const FOR_ONE = "for|about|by|to|see|look|at|get|only|just|buy|over|out|here|in";
const ENDED =
  "ended_up_taking|ended_up_with|ended_up_loving|ended_up_liking|ended_up_buying|ended_up_getting|wound_up_with|wound_up_taking|left_with|took|bought|loved|liked|got|grabbed|went_home_with|walked_out_with|drove_off_with|loaded_up";

/**
 * What was asked and offered before a price stood: the last figure that was settled is the price, those before it are
 * passed by. Where nothing says that the piece changed hands, an offer stays an offer.
 */
export const HAGGLED = rowsOf<TurnEffect>({
  "word: guy talked my wife down on the hutch to 210, comes saturday": `[${DOWN_TO} me|us|my|our|the|<kin>* down|down_on] on? <art>? <piece> to $`,
  "word: lady says a drawer sticks so i gave her 15 back on the dresser": `^ [${HE}* ${COMPLAINED} <word>? <word>? <word>? <word>? <word>? <word>? <word>? ${AND}*] i|we? had_to|just? ${GIVES_BACK} <word>? $ back`,
  "word: mirror lady says it hangs crooked, sent her 5 back": `^ <art>? <piece> [lady|guy|man|woman|buyer|couple|girl|dude|customer|people ${COMPLAINED} <word>? <word>? <word>? <word>? <word>? <word>? ${AND}*] i|we? had_to|just? ${GIVES_BACK} <word>? $ back`,
  "word: she complained about a scratch on the desk so i sent her 15 back": `^ [${HE}* ${COMPLAINED} <word>? <word>? <word>? <word>? <word>?] <piece> ${AND}* i|we? had_to|just? ${GIVES_BACK} <word>? $ back`,
  "sold: sideboard went 240 cash":
    "<piece> just|finally|both|all* [went] $ !over|under|more|less|up|down|to|higher|lower|percent",
  "word: that woman still wanted the bench, 75, already picked up": `^ [${HE}* still|really|just* wanted|came_for|was_after] <art>? <piece> ${AND}* $ <method>? ${AND}* already|all? picked_up|collected|${GONE}`,
  "sold: that woman still wanted the bench, 75, already picked up": `^ ${HE}* still|really|just* wanted|came_for|was_after <art>? <piece> ${AND}* $ <method>? [${AND}* already|all? picked_up|collected|${GONE}]`,
  "word: she found woodworm in the desk, refunded 30": `^ [${HE}* ${COMPLAINED} <word>? <word>? <word>? <word>? <word>?] <piece> ${AND}* i|we? had_to|just? refunded $`,
  "word: desk sold for 225, they wanted something off because of the scratch": `<sell> … $ [${AND}* ${HE}* wanted|asked_for|asked_me_for|begged_for|got something|a_bit|a_little|some|bit|little|money|few off|less >]`,
  "sold: 3 people messaged, first one paid 35 for the chair":
    "[first|second|third|last|next one|1 paid|paid_me|gave_me|handed_me] $ for|on <art>? <piece>",
  "word: trunk's 75 sign came down to 65":
    "<piece> $ [sign|sticker|tag] came_down|came_down_to|dropped_to|went_down_to|said|says",
  "word: guy came with 100 for the chest, i took it and he drove off with it": `had|with|brought $ … for|on <art>? <piece> [${AND}* i|we took|accepted it|that|the_money|the_offer|her_offer|his_offer? ${AND}* shes|hes|theyre|its|it|he|she|they|is|are|was* gone|drove_off|drove|left|went|walked_off|out|off with|home|it|them|away*] ;`,
  "sold: she just sent the 95 by transfer so the mirror is officially hers": `^ [${HE}* just|finally? sent|paid|gave|handed|wired me|us? the|her|his?] $ <any>? <any>? <any>? so|and|,|now* <art>? <piece> ${THEIRS}`,
  "word: she just sent the 95 by transfer so the mirror is officially hers": `sent|paid|gave|handed|wired|me|us|the … $ <any>? <any>? <any>? so|and|,|now* <art>? <piece> [${THEIRS} now?] ;`,
  "sold: she haggled us down from 85 to 70 for the table, cash": `^ [${HE}* ${DOWN_TO} me|us down from|off|by? $? to] $ for|on|of <art>? <piece> ${AND}* ${HE}|it|for|in|paid* <method>|${GONE}`,
  "sold both: they came for one chair and ended up loving both, sold them for 80 together": `${CAME} ${FOR_ONE}* one|1? <piece> [${AND}* ${HE}* ${ENDED} both|both_of_them|two|the_pair|<ofthem> ${AND}* i|we? sold|sold_them|sold_both|let_them_go|let_both_go|gave_them|gave_them_both|paid|paid_me|gave_me them|both|me? for|at?] $`,
  "sold both: the couple came for one chair and left with both for 80": `${CAME} ${FOR_ONE}* one|1? <piece> [${AND}* ${HE}* ${ENDED} both|both_of_them|two|the_pair|<ofthem> ,|-|;? for|at?] $`,
  "bought: found a dresser on a driveway and talked her down to 45": `found|spotted|there_was|there_is|came_across|curb|driveway|yard_sale|estate_sale|garage_sale|thrift_store … [${AND}* i|we? ${DOWN_TO} him|her|them|it|the_guy|the_lady|seller down? to] $`,
  "word: desk sold 140, older gentleman wanted it for his porch":
    "<sell> … $ … [,|.|-|;|(|who|that* <art>? <trait>|<plain>|<opinion>* he|she|they|<person>|gentleman|who wanted|needed|wants|needs|bought|is_using|will_use it|them|this|one for|in|as his|her|their|the|a|an <word> <word>?] ;",
  "word: bought a dresser 45, its in the van now":
    "[,|-|.|and|- its|theyre|it_is|they_are|now? in|inside|on the|my? van|truck|car|trailer|garage|shop|shed|trunk|pickup now|already|finally|today?] ;",
});
