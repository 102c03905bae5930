import { rowsOf } from "./row.ts";

const GONE_WRONG =
  "misread|mistyped|miscounted|miscalculated|mismeasured|misheard|misremembered|confused|jumbled|goofed|messed|screwed|botched|mixed_up|mixing_up";
const CROSSED = "mixed|flipped|transposed|swapped|switched|crossed|reversed|mixing|turned";
/** How something came to be in the notes. */
export const NOTED = "put|said|wrote|typed|had|logged|entered|noted|recorded|texted|told_you";
const READ_OR_NOTED = `${NOTED}|read|looked|got|heard|saw|used|hit|pressed|copied|grabbed|picked|clicked|was_looking|tapped`;

/**
 * That a note is wrong. "slip": how that came about, or that it is to be changed; "wait": that it corrects something;
 * "listing", "held": of a listing, of a hold; "late": that it is told only now.
 */
export const MISWRITTEN = rowsOf<"slip" | "wait" | "listing" | "held" | "late" | "owes">({
  "slip: ugh fat fingers. 65":
    "[fat_fingers|fat_finger|fat_fingered|fatfingered|big_thumbs|fat_thumbs|autocorrect|auto_correct|typo|brain_fart|brainfart|butterfingers|stupid_phone|dumb_phone|silly_me|dyslexia|wrong_button|thumbs_too_big|senior_moment|speech_to_text|voice_to_text|voice_text|dictation]",
  "slip: its for the dresser my bad": "[my bad|mistake|fault|error|goof|oops|typo]",
  "wait: i was confused, it was 20":
    "[im|i_am|i_was|was an|a|so|such|just|all* idiot|dummy|moron|confused|thinking_of]",
  "slip: i cant type today, 65":
    "i|we|my? [cant|cannot|can_not|dont|couldnt|could_not type|read|count|add|spell|math|do_math|subtract|remember_right my|own|the|this|that|it|a|tag|receipt|writing|handwriting|math|screen|today|tonight|right|good|lol|anymore*] ;",
  "slip: i lied it was 3 hours":
    "[i|we lied|misspoke|mispoke|mis_spoke|goofed|was_wrong|had_that_wrong|had_it_wrong|got_that_wrong|got_it_wrong|said_it_wrong|said_that_wrong about? that|it|this?]",
  "slip: misread the tag, 65": `[i|we|it|you|phone|must|have|got|get|gotten|had* ${GONE_WRONG} up? the|my|our|those|these|that|this|them|em|it|him|her|two|up* numbers|digits|names|pieces|notes|tag|receipt|slip|bill|label|pump|meter|scale|screen|sticker|line|number|price|miles|figures|tickets|amounts|prices|things|days|dates|amount|one|two? around|up|backwards?]`,
  "slip: tips were 53 i flipped the digits": `[i|we|it|must|have|got|get|had* ${CROSSED} up? the|my|our|those|these|two|up* numbers|digits|names|pieces|notes|figures|tickets|amounts|prices|tags|days|dates|receipts around|up|backwards?]`,
  "slip: got them mixed up, its for the dresser": `[i|we|must|have|got|get|had* them|em|those|these|it|things* ${CROSSED.replace("|turned", "")} up|around|backwards]`,
  "slip: mixed em up, i drove 42": `[i|we|must|have|got|get|had* ${CROSSED} them|em|those|these up|around]`,
  "slip: i transposed it, tips were 53": "[i|we transposed it|that|them|em?]",
  "slip: had the numbers backwards, 53":
    "[i|we? got|had|have|put|typed|did the|my|those|that|them|em|it|this* numbers|digits|names|pieces|order|figures? backwards|backward|reversed|the_wrong_way|wrong_way_round|upside_down|switched_around]",
  "slip: i had the wrong receipt": `[i|we|it|you|phone|mustve|must_have* ${READ_OR_NOTED} at|it|that|me|this|in|down|on* the|a|my? wrong receipt|line|number|name|tag|one|piece|column|amount|price|key|button|guy|person|day|date|note|page|total|row|digit]`,
  "slip: i typed that wrong. 65":
    "[i|we|it|you|phone|mustve|must_have* read|typed|wrote|heard|put|entered|logged|copied|noted at|it|that|me|him|her|them|this|in|down|on|the|my|this|receipt|reciept|tag|sticker|price|bill|label|ticket|scale|odometer|math|maths|numbers|write|writed|did|do* wrong|wrongly]",
  "slip: ines owes 50 not 60, did the math wrong":
    "[i|we? did|do|done|write|writed|read|made|make|got|had the|my|a* math|maths|addition|sum|sums|numbers|write|mistake|wrong|error wrong|wrongly|backwards|off]",
  "slip: sorry i write wrong, primer it was 8": "[i|we? write|writed|wrote|type|typed it|that? wrong]",
  "slip: i made a mistake, the desk was 35":
    "[i|we? made|make a|an|my? mistake|error|boo_boo|oopsie|typo|slip]",
  "slip: sold it to della not nell, getting names mixed up":
    "[i|we|keep|was|just* getting|got|get|gettin my|the|our|these? names|numbers|pieces|days|dates|people|folks|receipts|tickets mixed_up|mixed|confused|crossed|wrong|backwards|muddled]",
  "owes: dana owes 20 not 30, did the math wrong":
    "[what|how_much|the|part? <new>|<person>|he|she|they|<any>? owes|owed|owe|owing|still_owes me|us|only|just|still|part|is|was|amount|should|be|to|him|her* $]",
  "slip: wrong name its dana":
    "^ [wrong key|button|line|receipt|number|name|tag|column|amount|price|total|guy|person|piece|one|item|day|date|buyer|customer|lady|side ,|.|!|-|:?]",
  "slip: its for dana wrong name":
    "[wrong key|button|line|receipt|number|name|tag|column|amount|price|piece|one ,|.|!|-|:?] ;",
  "slip: i hit send too early": "[i|we? hit|pressed|tapped send|enter|return too|to? early|soon|fast|quick]",
  "wait: hold up the sander rang up at 49":
    "^ [hang|hold|wait on|up|a_sec|a_second|a_minute ,|.|!?] !<piece>",
  "slip: paint was 15 not whatever i put":
    "[not what|whatever|the_one|the_amount|how|where i|we? put|said|wrote|typed|had|logged|entered|sent|texted|noted? down|earlier|before?]",
  "slip: its up for 160, can u fix":
    "[can|could|would|will|pls|please you|u|ya|please|pls* fix|correct|update|adjust|edit|amend|redo that|it|this|those|them|please|pls|for_me|me*] ;",
  "slip: thats a buffet not a hutch, change it":
    "^ [pls|please|just? change|correct|update|adjust|edit|amend that|it|this|them|those please|pls|for_me|thanks|thx?] ;",
  "slip: he talked me down to 145 actually, fix the sale":
    "[please|pls|so|can_you? change|fix|correct|update|adjust the|that|my sale|price|listing|deposit|note|entry|drive|cost|amount|payment|number|total please|pls|thanks?] ;",
  "wait: he haggled me to 145 at the last second, fix the sale": "[at|in? the? last second|minute|moment]",
  "listing: meant 230 on the drop": "on|for|of|with [the|that drop|cut|markdown|price_drop|reduction] ;",
  "slip: odometer says 28.5 so fix that": "[so fix it|that|this please|pls?] ;",
  "slip: can you change the gas to 18":
    "^ [can|could|would|will you|u|ya please|pls?] !believe|imagine|guess|tell|show|remind|see|help|take|do|accept|consider|go|sell|deliver|throw|come|meet|let|knock|pay|hold <any>",
  "slip: move the paint to the dresser would ya":
    "[would|will|could|can|wouldja|wouldya|willya ya|you|u please|pls?] ;",
  "slip: correction on the hutch, 65":
    "^ [correction|correcting|quick_fix|small_fix|one_fix|a_fix|quick_correction|one_correction|small_correction|fyi_correction|need_to_fix|gotta_fix|have_to_fix on|for|to|of|:|,|-? ]".replace(
      " ]",
      "]",
    ),
  "slip: fix the desk sale its 155":
    "^ [fix|correct|update|amend|edit|adjust the|that|my] … sale|price|listing|deposit|drive|cost|note|entry|amount|date|paid|its|it_is|to|should_be",
  "slip: could you make the gas 22": "[make] the|that|my <supply>|sale|drive|deposit|listing|trip",
  "slip: put it under the dresser":
    "^ [put|move|shift|switch|charge|stick|file it|that|this|the|that* <supply>? over|over_to? to|on|onto|under|for|with|against] <art>? <piece>",
  "wait: more like 90 min tbh": "[more like] $|<time>|<miles>",
  "wait: 12.96 with tax sorry forgot": "[sorry|oops|i|totally|just* forgot] ;",
  "listing: its up for 160 not 150": "its|it_is|is|was|it|them|<piece>|got|its_only [up for|at|on]",
  "late: sold the desk on the 1st i forgot to text":
    "[i|we? forgot to text|log|note|put|say|mention|tell|enter|record|add|write|send it|that|this|you|down|in*]",
  "late: sold the desk on the 1st, meant to tell you":
    "[meant to text|log|note|say|mention|tell|enter|record|write it|that|this|you|down|in*] !$",
  "wait: double that, it was 36 round trip": "[double|doubling it|that|them]",
  "held: nell put 15 down not 10": "[put|left|gave|puts|leaves|put_me] … down",
});
