import { TO_WORK } from "../words/labors.ts";
import type { TurnEffect } from "./afterwards.ts";
import { rowsOf } from "./row.ts";

/** What is meant to be done, however it is said; "decided to" tells of what was done as often, and stands in no row. */
const MEANT =
  "intend|intends|intending|intended|aim|aims|aiming|i_mean|we_mean|means|meaning|propose|proposes|proposing|ought|inclined|prepared|determined|resolved|keen|itching|dying|raring|bound|destined|liable|likely|eager|anxious|poised|gearing_up|all_set|am_set|im_set|are_set|is_set|readying|preparing|angling|fancy|mulling|contemplating|hankering|vow|vowed|vowing|swear|swore|pledge|pledged|promise|promised|promising|committed|commit|obliged|contracted|slated|due|scheduled|mind|half_a_mind|good_mind|intention|idea|goal|target|objective|decision|instinct|urge|temptation|next_step|next_move|next_job|thought_is|shall";
const DOINGS =
  "<~list>|<~reprice>|<~retire>|<~sell>|<~buy>|<~finish>|<~start>|<~refund>|<pay>|<~hold>|<~fix>";
const DOING =
  "lowering|dropping|reducing|cutting|raising|marking|knocking|bumping|slashing|taking|listing|relisting|posting|uploading|selling|putting|finishing|starting|buying|picking_up|refunding|paying|donating|scrapping|giving|going|goes|sells|drops|comes_down|becomes";
const TO_COME =
  "donate|toss|scrap|trash|junk|dump|burn|chuck|bin|pitch|keep|give|list|sell|drop|lower|cut|scrap|part_out|part_with|donating|tossing|scrapping|trashing|junking|dumping|burning|chucking|binning|pitching|keeping|giving|dropping|lowering|parting";
const LATER =
  "in_a_day|in_a_few_days|in_a_couple_days|in_a_couple_of_days|in_a_few|in_a_bit|in_a_while|in_a_few_weeks|in_a_couple_weeks|in_a_couple_of_weeks|in_a_week|in_a_month|in_a_fortnight|a_week_from|a_month_from|down_the_road|down_the_line|before_long|one_of_these_days|at_some_point|some_day|any_day_now|next_time|next_week|next_weekend|next_month|next_year|later|later_on|soon|tonight|tomorrow|tmrw|after_work|after_the|this_weekend|after_dinner|in_the_morning";

const KEEPS = "keep|keeping|kept|hanging_on_to|hanging_onto|hung_onto|holding_onto";

/** Somebody who works for money, and how it is said what is wanted for work that is still to be done. */
const HAND = "<new>|<person>|<kin>|<supply>|guy|lady|dude|he|she|they";
const WILL =
  "will|ll|is|s|are|gonna|going_to|can|could|would|d|hed|shed|theyd|hell|shell|theyll|hes|shes|theyre|said|says|offered|to";
const WORKS = `${TO_WORK}|do|doing|make|making|redo|redoing|haul|hauling|deliver|delivering|weld|welding|rewire|cut|upholster|<labor>`;
const WANTS =
  "wants|want|asks|asking|charges|charge|charging|is_charging|would_charge|will_charge|quoted|quotes|quoted_me|asks_for";

/** Plans with unusual verbs, and days that are still to come, beside what is being done. */
export const PLANNED = rowsOf<TurnEffect>({
  "intention: i intend to lower the hutch to 190": `[${MEANT} is|was|are|strongly|fully|still|now? to also|just|finally|probably|maybe|then? ${DOINGS}]`,
  "intention: we shall drop the hutch to 190": `[i|we shall|must|ought_to also|just|finally|then|now? ${DOINGS}]`,
  "intention: i am wondering whether to lower the hutch to 190": `[considering|weighing|wondering|debating|deciding|pondering|mulling|thinking|unsure|question|question_is whether|if|about_whether to|i|we* ${DOINGS}]`,
  "intention: uploading the wardrobe tonight for 210": `[${DOING} … ${LATER}]`,
  "intention: lowering the hutch to 190 in two weeks": `[${DOING} … in <span>]`,
  "intention: lowering the hutch to 190 starting monday": `[${DOING} … starting|beginning|effective|as_of|as_from|from|come|by|this|next] !today <weekday>`,
  "intention: lowering the hutch to 190 once school is out": `[${DOING} … when|once|if|until|unless|as_soon_as|in_case|assuming] !!sold|paid|bought|came|left|gone`,
  "intention: thinking about letting joan hold the desk with 20 down":
    "[thinking|thinkin|considering|debating|mulling|planning|wondering|tempted|might|may|maybe about|of|on|if|whether|to? letting|let|having|asking|ask|telling|tell|making|getting|get <art>? <any> <word>?] hold|save|keep|take|have|buy|pay|put",
  "intention: tom wants to put 20 down on the desk":
    "[wants|want|wanted|would_like|like|hoping|hopes|offered|offers|willing|ready|trying to put|leave|give|send|pay|drop|drop_off|bring] me|us? $ … down|deposit|on|for|to_hold|toward|towards",
  "intention: vanity to 50, then i donate it": `[then|next i|we just|probably|finally? ${TO_COME}]`,
  "intention: vanity to 50, otherwise im keeping it": `[otherwise|or|or_else|after_that|after_this|unless|before i|we|im|ill|well|were just|probably|finally|have_to|gonna|going_to? ${TO_COME}]`,
  // Where or for what it is kept for now: no fate.
  "doubt: kept the desk behind the couch": `${KEEPS} <art>? <piece>|it|them|both [as|behind|under|underneath|beside|next_to|near|against|in|inside|at|out|outside|on|by|over|up_in|back_in] !$|hand|hold|mind|<day>`,
  // Work that somebody is to do, with a price.
  "service: jim is gonna do the glass, he wants 40": `!!bought|got|picked_up|grabbed|paid|sold ^ [<art>? <any>? ${HAND} ${WILL} ${WILL}* ${WORKS}] … for|at|${WANTS} me? $ <day>? ;`,
  "service: ben wants 60 to sand the desk": `^ [<art>? <any>? ${HAND} ${WANTS}] $ to ${WORKS}`,
  "service: the welder asks 30 for the base": `^ [<art>? <any>? ${HAND} ${WANTS}] $ for <art>? <part>`,
  "service: getting the seat redone, she charges 60": `^ getting|having|get <art>? <any> <any>? <done>|redone|done|rebuilt [,|-|.|;|and|but* <art>? ${HAND} ${WANTS}] me? $`,
});
