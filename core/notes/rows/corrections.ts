import { rowsOf } from "./row.ts";
import { tableOf } from "./table.ts";

/**
 * How a note speaks of an earlier one. The part in brackets parts what it speaks of from what becomes of it.
 * "remove": what follows is taken out; "unsure": it is, or something on a piece is; "mistake": what stands before is; "wrong":
 * it is, or another value is; "change": from what stands before to what
 * follows; "told": so too, where both sides say enough; "denied": only where
 * the old is said beside the new; "to": what follows, up to its "to"; "rename": what follows
 * gets the name behind it. "either": a change, or a new note; "paid", "only": the new value and what it is of both follow,
 * with "only" it may be a new note. "off": what stands before was not of the piece behind; "moved": but of another one. "none": it only looks like one. "newest": what follows becomes of the newest
 * note.
 */
export type CorrectionEffect =
  | "remove"
  | "unsure"
  | "mistake"
  | "wrong"
  | "change"
  | "told"
  | "either"
  | "denied"
  | "to"
  | "rename"
  | "paid"
  | "only"
  | "off"
  | "moved"
  | "none"
  | "newest";

const ROWS = rowsOf<CorrectionEffect>({
  "remove: get rid of the 8 paint": "^ [get_rid_of] the|that $ <any>",
  "remove: get rid of that drive from friday":
    "^ [get_rid_of] the|that|my drive|trip|sale|purchase|listing|note|entry",
  "remove: get rid of the second lamp entry": "^ [get_rid_of] <piece> note|entry|record|listing|sale ;",
  "remove: get rid of the paint from friday": "^ [get_rid_of] the|that|my <supply> from|on <day>",
  "moved: the paint wasnt for the hutch, it was for the desk":
    "<supply> [wasnt|werent|was_not|were_not|isnt|arent|is_not|are_not for|on] <art>? <piece> ,|.|but|and* it|they|that? was|were|is|are|its|theyre|thats? for|on <art>? <piece> ;",
  "off: the paint wasnt for the hutch":
    "<supply> [wasnt|werent|was_not|were_not|isnt|arent|is_not|are_not for|on] <art>? <piece> ;",
  "none: cancel the hold on the lamp":
    "^ [cancel|cancelled|canceled|lift|end|release|remove <art>? hold|reservation on|for|of] <art>? <piece>",
  "none: sale of the lamp is off": "sale|deal|hold|layaway … [is|was off|dead]",
  "rename: rename #4 sideboard": "^ [rename|relabel] <any>",
  "rename: call #4 the big hutch": "^ [call] <numbered> ;",
  "rename: call the desk a writing desk": "^ [call] <art>? <piece> <art>? <piece> ;",
  "rename: call the desk an escritoire": "^ [call] <art>? <piece> <art> <trait>|<new> ;",
  "remove: scrap the note about #8":
    "^ [scrap|trash|remove|delete|kill <art>? note|entry|record about|on|for|of|saying?] <any>",
  "remove: take the sander off the books":
    "^ [take|get|pull|drop|strike] <any> … off|out|from of? <art>? books|list|ledger|record|records",
  "remove: take out the gas": "^ please|pls? [take|strike|pull out] the|that|my <supply> ;",
  "unsure: take off the hinges": "^ please|pls? [take|strike|pull off|out] the|that|my|those <supply>",
  "remove: take out the drive of 12 miles":
    "^ please|pls? [take|strike|pull off|out] the|that|my|those drive|trip|sale|listing",
  "remove: drop the 12 miles": "^ please|pls? [drop|lose|nix|skip|ignore|forget] the|that|those|my? <miles>",
  "mistake: take the drive out":
    "^ please|pls? take|pull|leave the|that|my|those drive|trip|sale|listing|purchase|<supply> [out] ;",
  "mistake: take the gas off, that was for the mower":
    "^ please|pls? take|pull the|that|my|those drive|trip|sale|listing|purchase|<supply> [off] ,",
  "remove: unlist the trunk": "^ [unlist|delist] <any>",
  "remove: never sold the bench, remove that":
    "^ [never|didnt|did_not] <any> … , remove|delete|undo|scratch|erase it|that",
  "paid: i actually paid 65 for the hutch":
    "^ so|well|no|oh|wait? i|we? [actually|really paid|spent|gave] $ for|on",
  "newest: that was for the hutch": "^ [that|it|this|those was|is|were for|on] <art>? <piece> ;",
  "change: i put the stain on the wrong piece, it was for the bench":
    "^ i|we? put|had|logged|noted|entered|wrote|recorded? <any> … [on|under|for|to the|a wrong <piece>|piece|one|item|thing ,|.? and? it_was|they_were|that_was|it_is|thats|was|should_be|goes|belongs for|on|with|to?]",
  "change: i put 20 for gas, it was 24":
    "^ i|we? put|had|logged|noted|entered|wrote|recorded|said|typed $ for|on|as|under|down_for <any> <any>? [,|.|but|and* it_was|that_was|they_were|its|it_is|should_be|it_should_be|should_have_been|meant really|actually?] $ ;",
  "mistake: the gas was for my own car, delete it":
    "^ <art>? <supply>|<piece> [was|were|is for|on|my|our|the|own|car|truck|house|personal|mine|home|a|mistake* ,|.|so* delete|remove|scratch|undo|erase|ignore|take_out|take|drop it|that out|off?] ;",
  "mistake: that gas was personal":
    "^ <art>? <supply> [was|were personal|mine|for_me|for_myself|not_for_the_shop|not_for_the_business|for_home|for_our_house|for_my_house] ;",
  "remove: ignore the gas, that was personal": "^ [ignore|disregard|nix the|that|my] <supply>|<piece>",
  "remove: forget the gas": "^ [forget|forget_about the|that|my] <supply> !!<word> ;",
  "paid: actually paint was 14": "^ [actually] <supply> … was|were|is|cost $",
  "change: paint actually 14": "^ <art>? <supply> [actually|really] $ ;",
  "paid: make the paint 14": "^ [make] the|my|that <supply>|<labor> … $|<time> ;",
  "change: paint 12 → 14": "<supply> $ [→] $ ;",
  "paid: actually the paint was 14": "^ [actually the|my] <any> … was|were|is|cost|took $|<time>|<miles>",
  "paid: actually i paid 14 for paint": "^ [actually i|we? paid|spent|gave] $",
  "paid: i paid actually 65 for the hutch": "^ i|we? [paid|spent|gave actually|really] $ for|on",
  "only: i only drove 18 miles on sunday":
    "^ i|we [only] drove|paid|spent|worked|sanded|got|sold|did !!rest|balance|remainder|deposit",
  "change: desk went for 120 actually":
    "[went_for|sold_for|sold|cost|was|were|took] $|<time>|<miles> actually|really",
  "mistake: #8 should not be there":
    "[should|shouldnt not? be there|here|in_there|on_there|listed|recorded|in_the_books]",
  "either: the desk was sold to the neighbor": "[was|is sold] to",
  "either: the dresser came from an estate sale": "[came|was|is] from",
  "change: the bench was paid by card": "^ <art>? <piece> [was|were|got paid? by|with|in|via?] <method> ;",
  "denied: the hutch was paid by check not cash": "[was|were|got paid by|with|in|via]",
  "to: change the paint to 14":
    "^ [change|correct|fix|edit|update|amend|adjust|switch|move|set|reassign] !price|the_price|asking|the_asking|my_price|nudge|the_nudge|my_nudge|nudges|reminder|the_reminder|reminders|my_reminder <any> … to|into|as|from|onto",
  "remove: delete the drive":
    "^ please? [delete|remove|undo|scratch|strike|erase|cancel|void|take_back|take_out|ditch|reverse|strike_out|strike_off|cross_out|cross_off] !off|out|by|to|on|in|one|$|price|waiting <any>",
  "mistake: #8 was a mistake":
    "[was|is|were|are? a|an|just|all|totally? mistake|typo|duplicate|dupe|double|error|accident|bogus|test|joke]",
  "mistake: the lamp sale never happened": "[never|didnt|did_not happen|happened|exist|existed|count]",
  "mistake: #8 doesnt exist": "[doesnt|does_not exist|count|belong]",
  "mistake: the paint was entered twice":
    "[was|is|were|got entered|recorded|noted|logged|in|there twice|two_times|double]",
  "mistake: #8 isnt mine": "[isnt|is_not|wasnt mine|ours|real|there|right|a_thing]",
  "change: paint 12 was wrong, should be 10":
    "[was|is|were|are wrong|off|incorrect ,|.? it|that|and? should_be|should_have_been|shouldve_been|its|it_is|it_was|was|make_it|meant|actually]",
  "change: 45 was wrong, 54": "$ [was|is wrong|off|incorrect ,|.|;|-?] $ ;",
  "change: paint 12, should be 10": "[, should_be|should_have_been|shouldve_been|make_it|make_that]",
  "wrong: the paint is wrong": "!!deposit [is|was|were wrong|off|incorrect] ;",
  "change: paint should be 14":
    "[should|shouldve|shoulda|were_supposed|was_supposed|supposed|is_supposed have|to? be|been|say|read|cost]",
  "change: the paint was actually 14": "[was|were|is|are|cost actually|really]",
  "change: hutch actually cost 65": "[actually|really was|were|is|cost|sold_for|went_for|got|took]",
  "told: those knobs were for the desk":
    "!to !<piece> <any> [were|was|is|are|goes|go|went|belongs|belong for|on|to|with] <art>? <piece>",
  "told: that sale was yesterday": "[was|were|is|are|cost] !at|another|extra|an_extra|worth|valued",
  "told: the trade was worth 80": "trade|swap|sale|deal|it|that [was|is] worth|valued",
  "denied: the desk sold for 120 not 140":
    "[sold_for|sold_to|went_for|listed_at|listed_for|paid_by|paid_with]",
});

export const corrections = tableOf(ROWS);
