import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";

const GONE_WRONG =
  "misread|mistyped|miscounted|miscalculated|mismeasured|misheard|misremembered|confused|jumbled|goofed|messed|screwed|botched|mixed_up|mixing_up";
const CROSSED = "mixed|flipped|transposed|swapped|switched|crossed|reversed|mixing|turned";
const NOTED = "put|said|wrote|typed|had|logged|entered|noted|recorded|texted|told_you";
const READ_OR_NOTED = `${NOTED}|read|looked|got|heard|saw|used|hit|pressed|copied|grabbed|picked|clicked|was_looking|tapped`;
const SAID_SO =
  "says|said|say|shows|showed|reads|is_saying|tells_me|told_me|saying|reminded_me|corrected_me|swears|tells";
const PAPER =
  "receipt|reciept|receipts|tag|sticker|odometer|gps|maps|map|app|bill|invoice|bank|register|slip|label|ticket|phone|stub";
const ADDED =
  "tax|taxes|shipping|delivery|discount|coupon|tip|rebate|sale|fee|fees|lunch|break|breaks|way_back|way_home|drive_home|ride_home|trip_home|return|return_trip|ride_back|trip_back|drive_back|cleanup|setup";

/**
 * What is said of a note that was noted wrong. "slip": how that came about, or that it is to be changed; "found", "proof": where the
 * right value comes from; "added": what it leaves in or out; "then": that it is told of the purchase; "listing",
 * "held": of a listing, of a hold; "wait": that it corrects something; "late": that it is told only now; "old": what stands in
 * the note; "out": it is to go; "maybe": so too, where the books hold what is named; "undo": what was said last is; "again": it may have been noted before.
 */
const ROWS: readonly Row<
  | "slip"
  | "found"
  | "proof"
  | "added"
  | "then"
  | "late"
  | "wait"
  | "listing"
  | "held"
  | "old"
  | "out"
  | "maybe"
  | "undo"
  | "again"
>[] = [
  [
    "[fat_fingers|fat_finger|fat_fingered|fatfingered|big_thumbs|fat_thumbs|autocorrect|auto_correct|typo|brain_fart|brainfart|butterfingers|stupid_phone|dumb_phone|silly_me|dyslexia|wrong_button|thumbs_too_big|senior_moment|speech_to_text|voice_to_text|voice_text|dictation]",
    "slip",
    "ugh fat fingers. 65",
  ],
  ["[it|siri|phone heard me|it|that wrong i|we? said|meant]", "slip", "it heard me wrong i said fifty"],
  ["[my bad|mistake|fault|error|goof|oops|typo]", "slip", "its for the dresser my bad"],
  [
    "[im|i_am|i_was|was an|a|so|such|just|all* idiot|dummy|moron|confused|thinking_of]",
    "wait",
    "i was confused, it was 20",
  ],
  [
    "i|we|my [cant|cannot|can_not|dont type|read|count|add|spell|math|do_math|remember_right today|tonight|right|good|lol?]",
    "slip",
    "i cant type today, 65",
  ],
  [
    "[i|we lied|misspoke|mispoke|mis_spoke|goofed|was_wrong|had_that_wrong|had_it_wrong|got_that_wrong|got_it_wrong|said_it_wrong|said_that_wrong about? that|it|this?]",
    "slip",
    "i lied it was 3 hours",
  ],
  [
    `[i|we|it|you|phone|siri|must|have|got|get|gotten|had* ${GONE_WRONG} up? the|my|our|those|these|that|this|them|em|it|him|her|two|up* numbers|digits|names|pieces|notes|tag|receipt|line|number|price|miles|figures|tickets|amounts|prices|things|days|dates|amount|one|two? around|up|backwards?]`,
    "slip",
    "misread the tag, 65",
  ],
  [
    `[i|we|it|must|have|got|get|had* ${CROSSED} up? the|my|our|those|these|two|up* numbers|digits|names|pieces|notes|figures|tickets|amounts|prices|tags|days|dates|receipts around|up|backwards?]`,
    "slip",
    "tips were 53 i flipped the digits",
  ],
  [
    `[i|we|must|have|got|get|had* them|em|those|these|it|things* ${CROSSED} up|around|backwards]`,
    "slip",
    "got them mixed up, its for the dresser",
  ],
  [
    `[i|we|must|have|got|get|had* ${CROSSED} them|em|those|these up|around]`,
    "slip",
    "mixed em up, i drove 42",
  ],
  ["[i|we transposed it|that|them|em?]", "slip", "i transposed it, tips were 53"],
  [
    "[i|we? got|had|have|put|typed|did the|my|those|that|them|em|it|this* numbers|digits|names|pieces|order|figures? backwards|backward|reversed|the_wrong_way|wrong_way_round|upside_down|switched_around]",
    "slip",
    "had the numbers backwards, 53",
  ],
  [
    `[i|we|it|you|phone|siri|mustve|must_have* ${READ_OR_NOTED} at|it|that|me|this|in|down|on* the|a|my? wrong receipt|line|number|name|tag|one|piece|column|amount|price|key|button|guy|person|day|date|note|page|total|row|digit]`,
    "slip",
    "i had the wrong receipt",
  ],
  [
    "[i|we|it|you|phone|siri|mustve|must_have* read|typed|wrote|heard|put|entered|logged|copied|noted at|it|that|me|this|in|down|on* wrong]",
    "slip",
    "i typed that wrong. 65",
  ],
  [
    "^ [wrong key|button|line|receipt|number|name|tag|column|amount|price|total|guy|person|piece|one|item|day|date|buyer|customer|lady|side ,|.|!|-|:?]",
    "slip",
    "wrong name its dana",
  ],
  [
    "[wrong key|button|line|receipt|number|name|tag|column|amount|price|piece|one ,|.|!|-|:?] ;",
    "slip",
    "its for dana wrong name",
  ],
  [
    "[i|we? hit|pressed|tapped send|enter|return too|to? early|soon|fast|quick]",
    "slip",
    "i hit send too early",
  ],
  [
    "^ [hang|hold|wait on|up|a_sec|a_second|a_minute ,|.|!?] !<piece>",
    "wait",
    "hold up the sander rang up at 49",
  ],
  [
    "[not what|whatever|the_one|the_amount|how|where i|we? put|said|wrote|typed|had|logged|entered|sent|texted|noted? down|earlier|before?]",
    "slip",
    "paint was 15 not whatever i put",
  ],
  [
    "[can|could|would|will|pls|please you|u|ya|please|pls* fix|correct|update|adjust|edit|amend|redo that|it|this|those|them|please|pls|for_me|me*] ;",
    "slip",
    "its up for 160, can u fix",
  ],
  [
    "^ [pls|please|just? change|correct|update|adjust|edit|amend that|it|this|them|those please|pls|for_me|thanks|thx?] ;",
    "slip",
    "thats a buffet not a hutch, change it",
  ],
  ["[so fix it|that|this please|pls?] ;", "slip", "odometer says 28.5 so fix that"],
  [
    "^ [can|could|would|will you|u|ya please|pls?] !believe|imagine|guess|tell|show|remind|see|help|take|do|accept|consider|go|sell|deliver|throw|come|meet|let|knock|pay|hold <any>",
    "slip",
    "can you change the gas to 18",
  ],
  [
    "[would|will|could|can|wouldja|wouldya|willya ya|you|u please|pls?] ;",
    "slip",
    "move the paint to the dresser would ya",
  ],
  [
    "^ [correction|correcting|quick_fix|small_fix|one_fix|a_fix|quick_correction|one_correction|small_correction|fyi_correction|need_to_fix|gotta_fix|have_to_fix on|for|to|of|:|,|-? ]".replace(
      " ]",
      "]",
    ),
    "slip",
    "correction on the hutch, 65",
  ],
  [
    "^ [fix|correct|update|amend|edit|adjust the|that|my] … sale|price|listing|deposit|drive|cost|note|entry|amount|date|paid|its|it_is|to|should_be",
    "slip",
    "fix the desk sale its 155",
  ],
  ["[make] the|that|my <supply>|sale|drive|deposit|listing|trip", "slip", "could you make the gas 22"],
  [
    "^ [put|move|shift|switch|charge|stick|file it|that|this|the|that* <supply>? over|over_to? to|on|onto|under|for|with|against] <art>? <piece>",
    "slip",
    "put it under the dresser",
  ],
  ["[more like] $|<time>|<miles>", "wait", "more like 90 min tbh"],
  ["[sorry|oops|i|totally|just* forgot] ;", "wait", "12.96 with tax sorry forgot"],
  ["its|it_is|is|was|it|them|<piece>|got|its_only [up for|at|on]", "listing", "its up for 160 not 150"],
  [
    "[i|we? forgot to text|log|note|put|say|mention|tell|enter|record|add|write|send it|that|this|you|down|in*]",
    "late",
    "sold the desk on the 1st i forgot to text",
  ],
  [
    "[meant to text|log|note|say|mention|tell|enter|record|write it|that|this|you|down|in*] !$",
    "late",
    "sold the desk on the 1st, meant to tell you",
  ],
  ["[double|doubling it|that|them]", "wait", "double that, it was 36 round trip"],
  ["[put|left|gave|puts|leaves|put_me] … down", "held", "nell put 15 down not 10"],
  ["[turns|turned out that?]", "found", "turns out its pine"],
  [`[the|my|that|a? ${PAPER} <supply>? ${SAID_SO} its|it_is|that|it_was?]`, "proof", "receipt says 15.27"],
  [
    `<supply>|the [receipt|reciept|receipts|bill|invoice for|from|on? ] <supply>`.replace(" ]", "]"),
    "found",
    "the receipt for paint says 15.27",
  ],
  [
    `[i|we|just|so|ok|and|was|were|am|been* looked|looking|checked|checking|found|finding|rechecked|double_checked|going|went|goin|reread|dug|recounted|remeasured at|over|through|back|up|out|again|thru|around* the|my|our|all? <supply>? ${PAPER}|notes|list|numbers|math|books|paperwork|messages|records tonight|today|again|now|and|,|:*]`,
    "proof",
    "looked at the reciept, we paid 35 for the desk not 30",
  ],
  [
    "[i|we|was|were* going|went|goin|looking back? over|through|thru stuff|things|everything|it_all tonight|today|again|now|and|,*]",
    "proof",
    "so i was going over stuff tonight and the knobs were 16",
  ],
  [
    "^ [i|we|just* checked|rechecked|double_checked|recounted|remeasured again?] ,|its|it_is|it_was|and",
    "proof",
    "just checked, 13.40",
  ],
  ["[<supply> receipt|receipts|reciept]", "wait", "gas receipt 22"],
  [
    `^ [my|the|our? <kin>|she|he|they ${SAID_SO}|thinks its|it_is|it_was|that|thats_a|no?]`,
    "found",
    "dad says it was 75",
  ],
  [
    `[with|w|w/|plus|after|before|minus|counting|including|included|forgot|forgetting|not_counting|didnt_count|without|incl|add|adding|and|left_out the|my|our|in|all|a? ${ADDED} in|both_ways|included|and_all|too?]`,
    "added",
    "12.79 with tax sorry",
  ],
  [
    "[once|when|cuz|because|since they|she|he|it added|rang up? the|in|it? tax|taxes]",
    "added",
    "13.10 once they added tax",
  ],
  [
    "[thats|that_is|that_was|its|was just|only? one way|direction|side so? double|doubled? it|that|them?]",
    "added",
    "thats one way so double it, 36",
  ],
  ["[so|and|double|double_it|doubled|both ways|both_ways|round|there_and_back]", "added", "36 both ways"],
  [
    "[when|the_day i|we bought|got|picked|grabbed|purchased it|that|them|her|him? up? back_then?]",
    "then",
    "lamp was only 6 when i bought it",
  ],
  [
    `i|we|ive|weve|id|shoot|oops|crap|think|thought [${NOTED} it|that|down|in|as|as_a* <art>? <piece>|<method>|<miles>|<time>|$ for|on|as|by? <art>? <supply>|<piece>|<kin>? listing|sale|drive|deposit|purchase?] … but|meant|its|it_was|it_is|should|should_be|really|actually|supposed|shouldve`,
    "old",
    "i said desk but meant the dresser",
  ],
  [
    `i|we|ive|id [${NOTED} it|that|down|in|as|as_a* <art>? <piece>|<method>|<miles>|<time>|$ for|on|as|by? <art>? <supply>|<piece>? listing|sale|drive|deposit|purchase?] .|,|! its|it_was|it_is|thats|meant|should_be|i_meant|but`,
    "old",
    "oh shoot i said desk. its for the dresser",
  ],
  [
    `,|.|but|though|and|tho i|we think|thought? [${NOTED} <art>? <piece>|<method>|<miles>|<time>|$] ;`,
    "old",
    "paid by transfer, i put cash",
  ],
  [`i|we think|thought? [${NOTED} <method>] ;`, "old", "the desk was paid cash i think i put transfer"],
  [
    "[siri|phone|it|dictation|autocorrect heard|put|typed|wrote|changed|made it|that|me? to? $]",
    "old",
    "siri heard fifteen, its fifty",
  ],
  ["^ [the|that $ for|on] <supply>", "old", "the 18 for knobs is 19.50"],
  [
    `^ [said|put|wrote|typed|had <art>? <piece>|<method>] !back|up|down|on|in|out|away|at|to`,
    "old",
    "said desk meant dresser",
  ],
  ["[remember|recall that|the|my? $|<supply> ?|,|.*]", "old", "remember the 18? its 19.50"],
  [
    "^ please|pls|just|so|and|nope|no|oops|wait|ok|then|nvm|never_mind* [delete|remove|erase|scratch|nix|void|undo|cancel|strike|disregard|ignore|forget|forget_about the|that|those|my|what|it|this|about|both]",
    "out",
    "nix the paint",
  ],
  [
    "^ please|pls|just|so|and|nope|no|oops|wait|ok|then|nvm|never_mind* [drop|lose|kill|wipe|yank|pull|toss|dump|ditch|get_rid_of|get_rid the|that|those|my|of|it|this|both|one]",
    "maybe",
    "kill the paint note",
  ],
  [
    "^ please|pls|just|so|and|nope|no|oops|wait|ok|then|nvm|never_mind* [delete|remove|erase|void] <new>|<supply>|<piece>|sale|deposit|listing|drive|hold|payment",
    "out",
    "remove teos deposit",
  ],
  [
    "[forget|ignore|pretend|disregard that? i|we said|put|wrote|sent|never? that|it|anything|this? about|on]",
    "out",
    "forget i said that about the paint",
  ],
  ["[remove|delete|erase it|that|them|this] ;", "out", "the gas wasnt for the shop remove it"],
  [
    "please|pls|just|so|and|nope|no|oops|wait|ok|then|nvm|never_mind* [take|pull|get|leave] !!$ … out|off",
    "out",
    "take the drive out i rode with dad",
  ],
  ["[take|pull|get|leave the|that|my? $ … out|off|back_out|back_off]", "maybe", "take the 20 back out"],
  [
    "[logged|entered|put|in|recorded|noted|listed|there|sent|counted … twice|two_times|double|2_times|2x]",
    "maybe",
    "put the desk in twice",
  ],
  [
    `[i|we* already|alredy ${NOTED}|told|did|have|got|in|on|down|counted* that|it|this|those|the? one|there|in|down|earlier|on|yesterday|before|already|today* ] ;`.replace(
      " ]",
      "]",
    ),
    "again",
    "oops already had that one down",
  ],
  [
    "^ [thats|that_is|that_one_is|that_ones|it_is|its already in|on|down|logged|there|entered|recorded|noted there|the? books|list?] ;",
    "again",
    "thats already in there",
  ],
  [
    "^ please|pls|no|nope|oops|wait|nvm|never_mind|so|just|actually|ok|sorry* [delete|remove|erase|scratch|nix|void|undo|cancel|strike|disregard|ignore|forget|forget_about|take|take_back|pull|drop|lose|kill|pretend|get_rid_of the|that|my|it|this|i|about* last|latest|newest|what|thing|one|note|entry|text|message|thing|didnt|never* i|we|just* said|sent|put|typed|wrote|say|texted|told_you|logged|entered|have|off|out|back* that|it|this|anything|one? out|off|back?] ;",
    "undo",
    "take back the last thing i said",
  ],
  [
    "^ [no|nope|oops|wait|lol|sorry|ok|actually* that|it|this_one|that_one|this? never|didnt|did_not happen|happened|actually_happen lol|haha|sorry|actually|oops?] ;",
    "undo",
    "that never happened",
  ],
];

export const misnoted = tableOf(ROWS);
