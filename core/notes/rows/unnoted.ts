import { NOTED } from "./miswritten.ts";
import { rowsOf } from "./row.ts";

const OPENS =
  "please|pls|just|so|and|nope|no|nah|oops|whoops|ugh|ope|crap|shoot|dang|wait|ok|okay|hey|uh|um|lol|nvm|never_mind|nevermind|sorry|my_bad|actually|well|then|oh|och|ach|aw|thats_wrong|that_was_wrong|that_is_wrong|thats_not_right|scratch_that|i|can_you|could_you|would_you|will_you|can|could|would|will|you|u|ya";
const TAKES_OUT =
  "delete|remove|erase|scratch|nix|void|undo|cancel|strike|disregard|ignore|forget|forget_about|take_back|drop|kill|scrap|dont_count|unsend|skip|scrub|ditch|bin|chuck_out|throw_out|wipe|wipe_out|rub_out|cross_out";
const MESSAGE = "message|messages|msg|text|txt|one|note|entry|thing|bit|part";
const SENT =
  "sent|send|put|typed|type|wrote|write|say|said|texted|text|told_you|tell_you|told|logged|log|entered|enter|hit|press|pressed|tap|tapped|post|posted|do|did";
const NEVER =
  "isnt|is_not|arent|are_not|wasnt|was_not|werent|hasnt|has_not|havent|have_not|hadnt|didnt|did_not|aint|not|never";
const GOT_ALL =
  "got|gave|refunded|gave_me|full|whole|all|money me|us|my|the|a|of|it|all|full|whole* $|money|refund|lot|amount|price|everything|it|all|money_back? back|refunded|refund|money_back]";
const YET = "actually|really|been|be|being|even|quite|yet|fully|officially|exactly|get|got|technically";

/**
 * That a note is to go. "out": it is; "said": so too, the newest of what is named; "maybe": so too, where the books hold what is named; "undo": what was said last is;
 * "again": it may have been noted before; "denied": what stands in the books has not happened.
 */
export const UNNOTED = rowsOf<"out" | "said" | "maybe" | "undo" | "again" | "denied">({
  "undo: undo that and the one before it": `^ ${OPENS}* [${TAKES_OUT} that|this|it and the|whatever? one|note|text|thing|last|message before|before_it|before_that it|that?] ;`,
  "undo: delete both of those": `^ ${OPENS}* [${TAKES_OUT} both|both_of? those|them|notes|of_them|of_those?] ;`,
  "undo: undo the last two": `^ ${OPENS}* [${TAKES_OUT}|take back? the|my|those? last|previous # notes|things|messages|texts|entries|ones? i? ${SENT}? back|out?] ;`,
  "undo: please ignore my last message, i was half asleep": `^ ${OPENS}* [${TAKES_OUT} that|the|my|this last|previous|latest|prior ${MESSAGE}] !#`,
  "undo: ignore what i last told you, i was confused": `^ ${OPENS}* [${TAKES_OUT} what|whatever|anything|the_last_thing|the_thing|that_thing|everything i|we just|last|accidentally? ${SENT} you|ya|u|it|that? last|just_now|earlier|by_accident|by_mistake?] !about|for|on|#`,
  "undo: oops i didn't mean to send that": `^ ${OPENS}* [i|we? didnt|did_not|never mean|meant|intend|intended to? ${SENT}? send|sent|text|enter|return|post|it|that|this|the|last|yet|lol* ${MESSAGE}?] ;`,
  "undo: that wasn't supposed to go through": `^ ${OPENS}* [that|it|this|the_last_one|last_one|that_one wasnt|was_not|isnt|shouldnt supposed|meant|have|to|be|go|went|gone|come* send|sent|post|posted|through|thru|out|there|here|in_there|happen|for_you|for_here] ;`,
  "undo: sent that by accident": `^ ${OPENS}* [i|we|that|it|this|that_one|this_one|last_one|was|got|went|just* sent|texted|entered|logged|went|an|on|by|in|that|it|this|one|out|total|complete|pure* accident|mistake|error|oversight]`,
  "undo: accidentally sent that one": `^ ${OPENS}* [i|that|it|was|got|just* accidentally|mistakenly|unintentionally sent|texted|hit_send|posted|entered|logged that|it|this|the|my* one|last|text|message|note?] ;`,
  "undo: wrong chat, ignore that": `^ ${OPENS}* [that|it|this|was|is|meant|went|sent|i|for|to|in|on|the|a|my* wrong chat|thread|convo|conversation|group|group_chat|window|app|texts|channel|screen]`,
  "undo: oops pocket text, delete it": `^ ${OPENS}* [pocket|butt|bum|cat|kid|baby|toddler|dog text|texted|dial|dialed|dialled|typed|sent|walked_on|got|grabbed|stepped_on that|it|this|my|the|phone|keyboard|that_one*]`,
  "undo: that last text was a mistake": `^ ${OPENS}* [the|my|that last|previous ${MESSAGE} was|is a|an|all|totally* mistake|accident|error|wrong|typo|nonsense|garbage|test] ;`,
  "denied: un-sell the desk, wrong thread": `^ ${OPENS}* [un_sell|unsell|un_list|un_finish|unfinish|un_buy|unbuy|un_sold|unsold <art>?] <piece>|it|that`,
  "denied: nope not finished yet, drawer still sticks": `!!$ ^ ${OPENS}* [${NEVER} ${YET}* sold|sell|selling|finished|finish|done|complete|completed|listed|posted|bought|started with|to|the|him|her|it* <piece>? yet|after_all|actually|anymore|at_all?] !for|at|coming|until|till`,
  "denied: the desk has not been sold yet": `!!$ <piece>|it|its|they|thats|that|still|one [${NEVER} ${YET}* sold|sell|selling|finished|finish|done|complete|completed|listed|posted with|to|the|him|her|it? yet|after_all|actually|anymore|at_all?] !for|at|coming|until|till`,
  "denied: never mind the table, didn't get it after all": `!!$ [${NEVER} ${YET}* get|getting|got|buy|buying|bought it|them|that|the|this* <piece>? after_all|in_the_end]`,
  "denied: turns out we didnt buy the table": `!!$ turns|turned|ended|wound|guess out|up? i|we|that* [${NEVER} ${YET}* get|getting|buy|buying|bought it|them|that|the|this* <piece>?]`,
  "denied: the table fell through, didnt buy it": `!!$ <piece> … ,|.|- we|i? [${NEVER} ${YET}* get|buy it|them|that] ;`,
  "denied: we didnt end up getting it": `!!$ [${NEVER} end_up|wind_up ${YET}* get|getting|buy|buying|selling|listing|finishing it|them|that|the|this* <piece>?]`,
  "denied: no deposit after all, just holding it": `!!$ ^ ${OPENS}* [deposit] after_all|in_the_end`,
  "again: that went thru twice, only got one":
    "[only|just i|we? got|bought|have|sent|did|need|want|meant|getting one|once|the_one of_those|of_them|of_it|desk|of_these?] ;",
  "again: i double tapped, ditch one of the gas":
    "^ i|we|you|it|that|they|those|phone|must|must_have|mustve|have|has|got|get* [double|doubled tapped|sent|clicked|posted|texted|logged|up|entry|entered|tap|hit_send that|it|this?]",
  "again: that went thru twice":
    "[went|gone|go|came|recorded|saved|counted|got|hit|tapped|pressed|texted|posted thru|through|in|out|up|it|that|them|send|me|down|as|on|there* twice|two_times|2_times|2x|double]",
  "said: forget i said that about the paint":
    "[forget|ignore|pretend|disregard that|what|whatever|anything? i|we said|put|wrote|sent|told_you|never? that|it|anything|this|you|earlier? about|on]",
  "out: nix the paint": `^ ${OPENS}* [delete|remove|erase|scratch|nix|void|undo|cancel|strike|disregard|ignore|forget|forget_about the|that|those|my|what|it|this|about|both]`,
  "maybe: kill the paint note": `^ ${OPENS}* [drop|lose|kill|wipe|yank|pull|toss|dump|ditch|get_rid_of|get_rid the|that|those|my|of|it|this|both|one]`,
  "out: remove teos deposit": `^ ${OPENS}* [delete|remove|erase|void|scrap|scratch|cancel|nix|reverse <art>?] <new>|<supply>|<piece>|sale|deposit|listing|drive|hold|payment`,
  "out: handles are too wide, took em back to the store, got my 16":
    "[took|brought|returned|sent|carried|taken the|my|those|that|them|em|it* <supply>? back? to? the? store|shop|mall|place|<place>? and|,|so|i|we* got|refunded|gave_me my|the|all|full|whole* $ back|refunded|refund?] ;",
  "out: returned the casters, too tall, got all my money back": `[took|brought|returned|sent|carried|taken back|the|my|those|that|them|em|it|some|both|all* <supply> … ,? … ,? … ${GOT_ALL} ;`,
  "out: handles went back to the store, full refund": `<supply> [went|are|were|got|sent|went_back_to|went_back … ,? … ${GOT_ALL} ;`,
  "out: the gas wasnt for the shop remove it": "[remove|delete|erase it|that|them|this] ;",
  "out: take the drive out i rode with dad":
    "please|pls|just|so|and|nope|no|oops|wait|ok|then|nvm|never_mind* [take|pull|get|leave] !!$ … out|off",
  "maybe: take the 20 back out": "[take|pull|get|leave the|that|my? $ … out|off|back_out|back_off]",
  "maybe: put the desk in twice":
    "[logged|entered|put|in|recorded|noted|listed|there|sent|counted … twice|two_times|double|2_times|2x]",
  "again: oops already had that one down":
    `[i|we* already|alredy ${NOTED}|told|did|have|got|in|on|down|counted* that|it|this|those|the? one|there|in|down|earlier|on|yesterday|before|already|today* ] ;`.replace(
      " ]",
      "]",
    ),
  "again: thats already in there":
    "^ [thats|that_is|that_one_is|that_ones|it_is|its already in|on|down|logged|there|entered|recorded|noted there|the? books|list?] ;",
  "undo: pretend i didnt say that":
    "^ please|pls|no|nope|oops|wait|nvm|never_mind|so|just|actually|ok|sorry* [delete|remove|erase|scratch|nix|void|undo|cancel|strike|disregard|ignore|forget|forget_about|take|take_back|pull|drop|lose|kill|pretend|get_rid_of the|that|my|it|this|i|about* last|latest|newest|what|thing|one|note|entry|text|message|thing|didnt|never* i|we|just* said|sent|put|typed|wrote|say|texted|told_you|logged|entered|have|off|out|back* that|it|this|anything|one? out|off|back?] ;",
  "undo: that never happened":
    "^ [no|nope|oops|wait|lol|sorry|ok|actually* that|it|this_one|that_one|this? never|didnt|did_not happen|happened|actually_happen lol|haha|sorry|actually|oops?] ;",
});
