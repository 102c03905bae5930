import { MISWRITTEN, NOTED } from "./miswritten.ts";
import { rowsOf } from "./row.ts";
import { tableOf } from "./table.ts";
import { UNNOTED } from "./unnoted.ts";

const SAID_SO =
  "says|said|say|shows|showed|reads|is_saying|tells_me|told_me|saying|reminded_me|corrected_me|swears|tells";
const PAPER =
  "receipt|reciept|receipts|tag|sticker|odometer|gps|maps|map|app|bill|invoice|bank|register|slip|label|ticket|phone|stub";
const ADDED =
  "tax|taxes|shipping|delivery|discount|coupon|tip|rebate|sale|fee|fees|lunch|break|breaks|way_back|way_home|drive_home|ride_home|trip_home|return|return_trip|ride_back|trip_back|drive_back|cleanup|setup";

/**
 * What a note that was noted wrong should have. "found", "proof": where the right value comes from; "added": what it leaves in
 * or out; "then": that it is told of the purchase; "old": what stands in the note; "wait": that it corrects something.
 */
const RIGHTED = rowsOf<"found" | "proof" | "added" | "then" | "old" | "wait">({
  "found: turns out its pine": "[turns|turned out that?]",
  "proof: receipt says 15.27": `[the|my|that|a? ${PAPER} <supply>? ${SAID_SO} its|it_is|that|it_was?]`,
  "found: the receipt for paint says 15.27":
    "<supply>|the [receipt|reciept|receipts|bill|invoice for|from|on?] <supply>",
  "proof: looked at the reciept, we paid 35 for the desk not 30": `[i|we|just|so|ok|and|was|were|am|been* looked|looking|checked|checking|found|finding|rechecked|double_checked|going|went|goin|reread|dug|recounted|remeasured at|over|through|back|up|out|again|thru|around* the|my|our|all? <supply>? ${PAPER}|notes|list|numbers|math|books|paperwork|messages|records tonight|today|again|now|and|,|:*]`,
  "proof: i am sorry, the stain cost 13.40 and not 31.40; i read the receipt without my glasses": `[i|we* read|misread|held|had|saw|copied|picked_up|looked_at the|my|a|wrong|other* ${PAPER}|line|envelope|column|number|figure|digits without|upside_down|upside|down|backwards|in|by|the|my|dark|glasses|specs|mistake|wrong*]`,
  "found: sorry, the varnish was 12.80 and not 21.80. my eyes are not what they were":
    "[my|the eyes|eyesight|glasses|odometer|handwriting|memory|dial|print is|are|was|were not|isnt|arent|hard|small|bad|tiny|failing|going|terrible|faded* what|to_read|at|night|they|it|were|was|used_to_be|anymore*]",
  "proof: so i was going over stuff tonight and the knobs were 16":
    "[i|we|was|were* going|went|goin|looking back? over|through|thru stuff|things|everything|it_all tonight|today|again|now|and|,*]",
  "proof: just checked, 13.40":
    "^ [i|we|just* checked|rechecked|double_checked|recounted|remeasured again?] ,|its|it_is|it_was|and",
  "wait: gas receipt 22": "[<supply> receipt|receipts|reciept]",
  "proof: dad says it was 75": `^ oh|wait|hm|hmm|hold_on|so|ok|actually* [my|the|our? <kin> ${SAID_SO}|thinks its|it_is|it_was|that|thats_a|no?]`,
  "found: he says it was 75": `^ oh|wait|hm|hmm|hold_on|so|ok|actually* [she|he|they ${SAID_SO}|thinks its|it_is|it_was|that|thats_a|no?]`,
  "added: 12.79 with tax sorry": `[with|w|w/|plus|after|before|minus|counting|including|included|forgot|forgetting|not_counting|didnt_count|without|incl|add|adding|and|left_out the|my|our|in|all|a? ${ADDED} in|both_ways|included|and_all|too?]`,
  "added: 13.10 once they added tax":
    "[once|when|cuz|because|since they|she|he|it added|rang up? the|in|it? tax|taxes]",
  "added: thats one way so double it, 36":
    "[thats|that_is|that_was|its|was just|only? one way|direction|side so? double|doubled? it|that|them?]",
  "added: 36 both ways": "[so|and|double|double_it|doubled|both ways|both_ways|round|there_and_back]",
  "then: lamp was only 6 when i bought it":
    "[when|the_day i|we bought|got|picked|grabbed|purchased it|that|them|her|him? up? back_then?]",
  "old: i said desk but meant the dresser": `i|we|ive|weve|id|shoot|oops|crap|think|thought [${NOTED} it|that|down|in|as|as_a* <art>? <piece>|<method>|<miles>|<time>|$ for|on|as|by? <art>? <supply>|<piece>|<kin>? listing|sale|drive|deposit|purchase?] … make_that|make_it|make|but|meant|its|it_was|it_is|should|should_be|really|actually|supposed|shouldve`,
  "old: oh shoot i said desk. its for the dresser": `i|we|ive|id [${NOTED} it|that|down|in|as|as_a* <art>? <piece>|<method>|<miles>|<time>|$ for|on|as|by? <art>? <supply>|<piece>? listing|sale|drive|deposit|purchase?] .|,|! its|it_was|it_is|thats|meant|should_be|i_meant|but|receipt|tag|slip|bill|odometer|label|sticker`,
  "old: paid by transfer, i put cash": `,|.|but|though|and|tho i|we think|thought? [${NOTED} <art>? <piece>|<method>|<miles>|<time>|$] ;`,
  "old: lamp sold for 18, typed 81":
    "$|<time>|<miles> ,|.|-|but|and|my_bad|my|bad|oops|sorry* i|we? [typed|wrote|entered|put|said|had|texted $|<time>|<miles>] ;",
  "old: the desk was paid cash i think i put transfer": `i|we think|thought? [${NOTED} <method>] ;`,
  "old: phone heard fifteen, its fifty":
    "[phone|it|dictation|autocorrect heard|put|typed|wrote|changed|made it|that|me? to? $]",
  "old: the 18 for knobs is 19.50": "^ [the|that $ for|on] <supply>",
  "old: wrong table. the 95 was for the end table":
    "[the|that $] was|is|were|goes|belongs|went|shouldve_been|should_be for|on|to|with <art>? <piece>",
  "old: buyer was della, idk why i put nell":
    "[idk|dunno|dont_know|no_idea|not_sure|donno why|how|where i|we put|said|wrote|typed|had|got <any>] ;",
  "old: said desk meant dresser": `^ [said|put|wrote|typed|had <art>? <piece>|<method>] !back|up|down|on|in|out|away|at|to|<done>`,
  "old: remember the 18? its 19.50": "[remember|recall that|the|my? $|<supply> ?|,|.*]",
});

/** What is said of a note that was noted wrong. */
export const misnoted = tableOf([...MISWRITTEN, ...RIGHTED, ...UNNOTED]);
