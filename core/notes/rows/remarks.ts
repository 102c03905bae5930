import type { TurnEffect } from "./afterwards.ts";
import { rowsOf } from "./row.ts";

const AND_NOW = ",|and|so|now|.|!|-|we|i|were|im|am|are|its|it|thats|that|is|finally|all*";
const DONE_WITH = "done|finished|all_done|done_with|finished_with|completed|finished_it it|that|with_it?";
const OFF_THE_LIST =
  "take|strike|cross|scratch|remove|pull it|that|them|this off|out|from of? the|our|your|my? list|stock|books|inventory|market|sale_list|for_sale_list";

const NOT_YET =
  "not_yet|not|isnt|isnt_yet|arent|aint|almost|nearly|next|up_next|after_that|afterwards|needs|need|waiting|left|to_go|has_to|wants|maybe|soon|later|halfway|not_quite|half_done|getting_there|tomorrow|still_to_go|in_progress";

/** What was done, needed, wanted or said beside a note: it takes nothing from it, or is no fact by itself. */
export const REMARKS = rowsOf<TurnEffect>({
  // What was done to it last, where it is told done in the same breath.
  "word: chairs sanded, stained, done": `^ all|both? #|<art>? <piece> :|,|is|are|was|were|all|been|now|got* [<labor> ,|and|&* <labor>? ,|and|&* <labor>? ,|and|&* <labor>? up|down?] ${AND_NOW} ${DONE_WITH} ; !!<time>`,
  "word: we painted the dresser pink and were done with it": `^ i|we|ok|so|just|finally* [<labor> ,|and|&* <labor>? ,|and|&* <labor>?] <art>? <piece> <trait>* ${AND_NOW} ${AND_NOW} ${DONE_WITH} ; !!<time>`,
  "word: we put the last coat on the dresser and now its done": `[put|did|got|gave <art>? last|final coat|coats|touches on|to] <art>? <piece> ${AND_NOW} ${AND_NOW} ${DONE_WITH} ; !!<time>`,
  "word: invoice for storage unit, 48": "^ [<art>? invoice|bill|receipt for|:|from?] <supply>",
  // What nobody could part with stays.
  "word: could not bear to part with the desk, so it stays with me": `[couldnt|cant|could_not|can_not|cannot bear_to|bring_myself_to|bring_ourselves_to|stand_to|find_it_in_me_to|face|stand? part_with|see|let|sell|give_up|lose|parting_with|selling] <art>? <piece> go|leave? ,|-|so|and|.* it|its|it_is|im|we|were|theyre|they|i|is* staying|stays|stay|keeping|keep|kept|lives`,
  // For what a cost was enough.
  "for: one tin of oil, 13.25, was enough for the whole desk":
    "<supply> … $ [,|-? was|is|just* did|does|covered|covers|coated|enough|plenty|ample for|to_do|all|all_of|over*] <art>? <piece> !!<time>",
  "for: two quarts of paint 39.90, to be charged to the desk":
    "<supply> … $ … [to_be|it|that|this|which|is|thats|its|and|.|-* charged|booked|billed|charge|book|bill|goes|going it|that|them? to|on|under|against] <art>? <piece>",
  // A piece that is kept: whose wish it is, that it is off the list, how well it stands there.
  "word: my wife wishes to keep the desk, so please take it out of the stock": `[<art>? <kin>? wants|want|wishes|wish|would_like|would_love|begs|begged|asks|asked|insists|insisted|decided|hopes to|on|for|us|me*] keep|keeping … ${OFF_THE_LIST}`,
  "word: we are keeping the desk, so please strike it from the stock": `keep|kept|keeping|stays_with_us|<retire> … [,|.|-|;|so|and|please|pls|you|we|can|may|could* ${OFF_THE_LIST} please|pls|thanks?] ;`,
  "word: kept the bench after all. perfect next to the sofa":
    "keep|kept|keeping|stays … [,|.|-|;|!|it|its|is|looks|so|very|too|just|really* cute|perfect|sweet|pretty|great|nice|lovely|good|adorable|ideal|handy|darling by|next_to|beside|under|in|on|at|near|with|over|against <art>|my|our|his|her? <any> <any>?] ;",
  "labor: 45 minutes on the lid":
    "^ spent|did|put|put_in|just? <time> [on|into <art> <part>|drawers|legs|doors|lid|seat|top today|this_morning|tonight|yesterday|so_far?] ;",
  "word: kids drew on the white desk so i took it down to 60":
    "^ [<art>? kids|kid|toddler|baby|cat|dog|puppy|<kin>|somebody|someone drew|colored|coloured|scribbled|doodled|wrote|peed|spilled|chewed|puked|threw_up|<new> on|over|up|all_over|at|juice_on|milk_on?] <art>? <piece> ,|so|and|-|.*",
  "word: spent 14 on glue for the desk, since the corner has to be pressed overnight":
    "$|<piece>|it ,|-? [since|because|cause|cuz|as <art> <any> <any>? has|have|had|needs|need to_be|be|to|to_get? <any> overnight|first|again|tomorrow|properly|right|a_day?] ;",
  "word: bought a bureau and a stool 70 for both, bureau needs new feet, drove 19 mi":
    "<~buy> … $ … [,|and|but <art>? <piece> needs|need|could_use|wants <word>* <word>] ,|;",
  "word: free rocker off the curb, needs a new seat":
    "<~buy> … <piece> … [needs|need|could_use|wants <word>* <word>] ;",
  "word: sold 3 things today: lamp 20, chair 35, mirror 15":
    "^ … <~buy>|<~sell>|<~list> [# things|pieces|items|stuff|things_today|pieces_today|more|of_them today|this_morning|tonight|yesterday|so_far? :|-]",
  "word: bought that dresser i told you about 40":
    "<~buy> … <piece> [that|which? i|we was|were|had|have|been|told|mentioned|wanted|saw|texted|looked* you|u? eyeing|wanting|watching|looking|told|talking|mentioned|seen|about|at|all_week|for_weeks|last_week|earlier|before*] $|,|;",
  "word: she took the lamp for 20 and said shed be back for the desk":
    "<buyer> … $ [,|and|but* she|he|they? said|says|mentioned|promised|wants she|he|they|shed|shes|hed|hes|theyd|theyre|shell|hell|theyll|to? be|come|comes|coming|is|will|would|back* for <art>? <piece> <day>?] ;",
  "word: desk is 80 now, we took 15 off":
    "^ <art>? <piece> is|s|now|down_to|at* $ now? [,|;|-|.|i|we|just|have|as* took|knocked|cut|shaved|dropped|lopped $ off it|that|the_price|this_morning|today?] ;",
  "word: took 10 off the desk so its 140 now":
    "^ [took|knocked|cut|shaved|dropped|lopped $ off] <art>? <piece> ,|so|and|-|.* its|it_is|thats|now|asking|down now|at|to? $",
  "word: bench done, still need to do the desk": `<piece> <~finish> [finally|now|,|but|and|;|-|.* i|we|just? still|only|just* need|needs|have|has|gotta|got|left|remains? to? do|finish|start|get_to|work_on|wax|paint|sand* <art>? <piece> left|to_go|to_do|now|next|still|tomorrow|though|tho*] ;`,
  "word: bench done, desk not quite": `<piece> <~finish> [finally|now|,|but|and|;|-|.* <art>? <piece> is|are|was|still|just|only|its* ${NOT_YET} <word>*] ;`,
  "word: done w the stool, mirror still needs wax": `<~finish> … <piece> [,|but|and|;|-* <art>? <piece> still|yet|is|isnt* ${NOT_YET} <word>* ,|and|then* <art>? <piece>? ${NOT_YET}?] ;`,
  // What somebody else was rid of, and we took.
  "word: husband brought home a table someone was throwing out":
    "<~buy> … <piece> [that|which|someone|somebody|they|he|she|people|<art>|<person>|<new>* was|were|had|is|are|wanted_to? <~retire>|throwing|getting_rid_of|putting|leaving|left out|away|behind|on|at|by|<art>|<place>*] ;",
  "word: stripped the end table 1.5 hr and it still needs stain":
    "<time> … [and|but|it|they|still|just* needs|need|could_use|wants|has_to|have_to|needs_to|need_to <word>* <word>|<coats>] ;",
  "word: last coat on the desk so its done":
    "^ [put|got|just|finally* <art>? last|final|finish|finishing|top coat|coats|touch|touches|topcoat|wax of? <supply>? on|is_on|done_on|went_on] <art>? <piece> ,|so|and|-|.|!* its|it_is|thats|thats_it|finally|now|all|that_one|this_one|is* <~finish>",
  "labor: first coat on the bed frame, 1 hr":
    "^ [<art>? first|second|third|1st|2nd|3rd|last|final|base|top? coat|coats] on <art>? <piece>",
  "word: put another 50 on the loan, thats the bench money":
    "loan|loans … [,|.|-|;|(|thats|that_was|that_is|its|from|all|which_is|which_was* the|my|of? <piece> money|profit|cash|sale|proceeds|profits )?] ;",
  "word: sent all the desk money to the loan, 85":
    "sent|put|threw|paid|put_in [all|the|my|all_of|of* <piece> money|profit|cash|proceeds|profits] to|toward|towards|at|on|onto <art>? loan|loans",
  "labor: desk first coat 25 min":
    "^ <art>? <piece> ,|-|:? [<art>? first|second|third|1st|2nd|3rd|last|final|another|base|top coat|coats of? <supply>? on?] ,|-|:? took|about? <time>",
  "labor: second coat 30 min desk":
    "^ [<art>? first|second|third|1st|2nd|3rd|last|final|base|top? coat|coats] <art>? <time>|<piece> … <time>|<piece>",
  "labor: second coat, 1 hr":
    "^ i|we|ive|weve? [put|put_on|did|applied|gave_it|gave_them|brushed_on|rolled_on|slapped_on? <art>? another|one_more|first|second|third|1st|2nd|3rd|last|final|base|top|clear|<supply>* coat|coats|<coats> of? <trait>|<plain>* <supply>? on|done|down|went_on|on_it?] <day>? ,|-|.|and? took|about? <time>",
  "labor: stain went on the desk today, an hour":
    "^ [<art>? first|second|third|last|final|top|base|another|<supply>|<trait>* coat|coats|<supply> of? <supply>?] went_on|is_on|went_down <art>? <piece>? <day>|<word>? ,|-|.? took? <time>",
  "word: quilt rack got its sanding, 25 mins":
    "<piece> [got|had|has_had <art>|its|their|another|first|second|third|last|final|good|quick|light|proper*] <labor> and|&|,|up|down|<labor>|<day>|today|tonight* ,|for|-|.|took* <time>",
  "word: dresser soaked up another 90 minutes of stripping":
    "<piece> [ate|soaked|swallowed|devoured|drank|consumed|gobbled|sucked up? another|my|about|all|of|a|good*] <time>",
  "word: table gone, 120, took less because of the scratch":
    "<~sell> … $ [,|-|.|;|but|and|so|i|we|had_to|just* took|accepted|settled_for a? bit|little|touch|lot? less than_asking|than_i_wanted|than_i_asked|than_listed?] !$",
  "labor: got the old finish off the desk, 2 hrs":
    "[got|getting|get|took|taking|take <art>|all|most|of|old|original* <trait>|<plain>|<opinion>* finish|paint|varnish|stain|poly|lacquer|wallpaper|wax|veneer|rust|gunk off|off_of] <art>? <piece>",
  "labor: primer coat done on the desk": "[<supply> coat|coats done|down|on] on <art>? <piece>",
  "word: halfway through the buffet, 2 hrs in":
    "^ [halfway|half_way|most_of_the_way|partway|part_way thru|through|done_with|into|with? <art>?] <piece> … <time>",
  "labor: did the first coat on the desk, took 50 minutes":
    "did|put|put_a|doing|got|putting [<art>? first|second|third|1st|2nd|3rd|last|final|base|top|another? coat|coats of? <supply>?] on|done_on <art>? <piece>",
  "labor: got the first coat on, took 50 min":
    "did|put|put_a|doing|got|putting [<art>? first|second|third|1st|2nd|3rd|last|final|base|top|another? coat|coats of? <supply>? on|done_on] ,|;|<time>",
  "word: the shade was another 12": "<supply> [was|were|is|cost another|an_extra|extra]",
  "word: forgot to put down the 7 i spent on wood filler":
    "^ oh|also|and|btw|,* [forgot|forget to put_down|write_down|jot_down|mark_down|put_in|enter|log|note|record|add|mention|say <art>?] $",
  "word: interest on the van loan dropped to 4.75%":
    "loan|loans [dropped|fell|rose|jumped|climbed|moved|changed|adjusted|went up|down|back? to?] <percent>",
  "word: worked on the desk 55 minutes (veneer repair)":
    "<time> [( <new>|<labor>|<supply>|<part>|<plain>|<trait>|<opinion>* )] ;",
  "labor: clean up and first coat of wax on the sideboard 1h20":
    "[<art>? first|second|third|1st|2nd|3rd|last|final|another|top|base|one coat|coats of? <supply>?] on <art>? <piece> … <time>",
  "word: the last drawer is on so the dresser is done":
    "[<art>? last|final|other <part>|<supply> is|are|went finally? on|in|back_on|back_in|attached|up] so|and|,",
  "other: done with the storage unit, stop it":
    "[<~finish> the|my|our|with* storage|storage_unit|unit|booth|phone|internet|insurance|membership|subscription|permit]",
  "doubt: loan at 6% sounds good":
    "loan … [sounds|seems|sounded|seemed so|too|pretty|like? <opinion>|<plain>|good|bad|high|low|fair|steep]",
  "labor: managed to sand the bookcase for fifty minutes":
    "managed|able|had to [sand|paint|strip|wax|stain|prime|scrape|glue|polish|scrub|oil|refinish|repair|varnish|reupholster] <art>? <piece> … <time>",
  // What was done, told beside the time and the piece.
  "labor: 50 min on the toy box, mostly filling gouges":
    "<time> … <piece> ,|-|(? mostly|mainly|just|only|all? [<labor> <art>? <trait>|<plain>|<opinion>* <new>|<supply>|<part>|<workpart> <part>?] )? ;",
  "labor: worked on the hutch 1h30 stripping the doors":
    "<piece> <time> ,|-|(? mostly|mainly|just|only|all? [<labor> <art>? <trait>|<plain>|<opinion>* <new>|<supply>|<part>|<workpart> <part>?] )? ;",
  "labor: rolled primer on the bookcase, 35 min":
    "^ [rolled|brushed|sprayed|slapped|wiped|rubbed|applied|laid|smeared|put|got <art>? first|second|third|last|final|another|some? <trait>|<opinion>|<plain>* <supply>|coat] on|onto|over <art>? <piece> … <time>",
  "labor: swapped the hinges on the cabinet 20 min":
    "^ [swapped|switched|changed|replaced out|in? <art>? <trait>|<opinion>* <part>|<supply>] on|in|of <art>? <piece> … <time>",
  "word: drove out to get #14, 45 miles":
    "drove|ran|went|rode|headed|trip|drive|run out|over|off|up|down? to [get|fetch|pick_up|see|buy|look|look_at|grab|collect|haul|deliver] <art>? <piece>",
  "labor: cut the legs down on the coffee table 25 min":
    "[cut|cutting|trimmed|trimming|shortened|shortening|leveled|evened|tightened|tightening down|off|up|out? the|its|all|loose* <part> down|off|up|out?] on|of <art>? <piece> ,? <time>",
  "word: got 2 hours in on the bookcase": "got|put|had <time> [in] on|<day>|;",
  "word: 3 hrs on the buffet w dad, mostly veneer repair, veneer was 22":
    "<time> … [,|-|(|. mostly|mainly|just|all <part>|<supply>|<word>* repair|repairs|work|prep|cleanup|touchups]",
  "denial: drove 38 miles to look at a sideboard and ended up not buying it":
    "[ended_up|wound_up|ended|wound up? not buying|not_buying|not_getting|not_taking it|them|that|anything?]",
  "word: ordered casters for 21.99, they should be here thursday":
    "<supply>|<buy>|<spend> … [,|and|. they|it|that should|will|are|is arrive|be_here|be_in|get_here|show_up|coming|arriving|shipping|be|come|here by|on|in|next|this? <day>]",
});
