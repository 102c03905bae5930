import type { TurnEffect } from "./afterwards.ts";
import { rowsOf } from "./row.ts";

const PAPERS =
  "photos|photo|photoshoot|pictures|picture|pics|pic|video|listing|ad|post|posting|description|writeup|write_up|measurements|paperwork|invoice|receipt|research|pricing|sketch|sketches|drawing|plan|plans|estimate|quote|listing_photos|shopping|story|stories|page|spreadsheet|thread|album|folder|file|chat|conversation|list|notes|checklist|budget";
const SIDES =
  "left|right|front|back|top|bottom|inside|outside|one|other|far|near|first|second|third|upper|lower|inner|outer|rear|under|north|south";
const HALVES =
  "side|sides|half|halves|end|ends|panel|panels|section|sections|edge|edges|corner|corners|face|faces|portion|part|parts";
/** Where what is dropped off is given away. */
const GIVEN_AT = "donation|donations|thrift|charity|dump|landfill|tip|shelter|church|consignment";

/** Plans and denials, a part of the work, and verbs that with what stands beside them say something else. */
export const OTHER_SENSES = rowsOf<TurnEffect>({
  "other: ran 3 miles this morning":
    "^ i|we|just|finally* [ran|running] <miles> !to|for|over|out|picking|to_get|getting|delivering",
  "doubt: keep the change 5": "^ [keep|kept|keeps the|her|his|their|your change] $",
  // Plans.
  "intention: meaning to drop the dresser to 160":
    "[meaning|itching|aching|dying|raring|aiming|angling|debating|contemplating|considering|threatening|tempted|inclined|leaning|toying|supposed|scheduled|slated|itchin|keen|eager|anxious to|with|toward|towards|whether_to|whether] <verb>|<light>|drop|list|sell|buy|lower|cut|give|toss|keep|finish|start|raise|mark|put|dropping|listing|selling|buying|lowering|giving|tossing|keeping|finishing",
  "word: gave her 15 back on the desk to keep the peace":
    "gave|gave_back|refunded|returned|sent|knocked|took|handed … $ … [to|just keep|make the|her|him|them|everyone|everybody|things|it peace|happy|sweet|quiet|friendly|civil|right|good]",
  "word: sold the bench 65 at the door":
    "<sell>|<hold>|<collect>|<refund> … [at|by the|my|our|her|his front? door|gate]",
  "word: keeping one of the stools for my own kitchen":
    "keep|keeping|kept … <piece> [for|in my|our own <any>]",
  "word: keeping the stool, other two still need doing":
    "<retire>|<sell>|<finish>|<list> … [,|.|;|-|and|but|i|we|still|have|got* <art>? other|others|remaining|rest|last # ones|one|of_them? still|yet|both|all* need|needs|to_do|to_go|left_to_do|waiting <word>? <word>?] ;",
  "word: sold the desk 140, dropped it off on the way to church":
    ",|.|!|and|then|& i|we|just* [dropped|dropping it|them|her|him off at? my|her|his|their|the*] !!$",
  // How a piece was finished, and not for how long it was worked on.
  "word: finished the desk, painted it navy":
    "<~finish> !!<time> with? <art>? <trait>* <piece>? [,|-|and|.|!* <labor> <labor>|and* it|them <art>? <trait>|<opinion>|<plain>|and|with|<part>*] ;",
  // "he'll" and "she'd", whose mark is gone by now.
  "offer: he'll take the dresser for 150":
    "[hell|shell|theyll|wholl|itll|youll|hed|shed|theyd|youd|whod take|buy|pay|give|give_me|do|go|pick|grab|sell|list|let|part|want|get|have|trade|drop|come|send|bring|accept|settle|split|swap]",
  "intention: considering donating the desk": "[considering|contemplating <verb>|<light>]",
  "denial: came close to buying a dresser for 40":
    "[close_to|verge_of|point_of|edge_of|about_to <verb>|<light>]",
  "offer: she wants me to hold the desk with 20 down":
    "[wants|wanted|asked|asks|asking|begged|begs|needs|would_like|like me|us to hold|save|keep|reserve|set_aside|put_aside]",
  "intention: listing armoire at 300 when done":
    "[listing|posting|uploading|selling|dropping|putting|relisting|marking|reposting … when|once|after|as_soon_as|soon_as|until|unless <any>* <any>* <any>*] ;",
  "doubt: 2h on the armoire to go":
    "<time> … <piece> [to_go|left|remaining|still_to_go|yet_to_go|more_to_go|left_to_go|to_do|outstanding|needed] ;",
  "intention: autopay 200 for the loan set up":
    "[autopay|auto_pay|automatic_payment|automatic|auto_payment|auto_draft|auto_debit|direct_debit|standing_order|recurring … set_up|setup|scheduled|is_set|enrolled|turned_on|activated|starts|starting|begins]",
  "intention: set up a 200 autopay on the loan":
    "[set_up|setup|scheduled|scheduling|enrolled|signed_up|turned_on|setting_up … autopay|auto_pay|automatic_payment|auto_payment|auto_draft|auto_debit|direct_debit|standing_order]",
  "intention: loan rate going to 6%":
    "[rate|interest|apr is|s|was|are? going|headed|moving|about|supposed|changing|jumping|rising|climbing|creeping|set|expected|due to|up|down|go|be|back|rise|jump|drop*] <percent>",
  // Denials.
  "doubt: thought I sold the bench for 80":
    "^ i|we|really|honestly|always* [thought|figured|assumed|could_have_sworn] i|we|id|wed|i_had <verb>",
  "denial: no way I sold the dresser for 90":
    "[no_way|aint_no_way|as_if|like_hell|no_chance|not_like|its_not_like|fat_chance|in_what_world|not_that|imagine_if|no_way_in_hell|there_is_no_way|theres_no_way] i|we|he|she|they|id|anybody|anyone <any>? <verb>|<light>",
  "denial: the dresser is anything but sold at 180":
    "[anything_but|far_from|nowhere_near|nowhere_close_to|not_even_close_to|not_remotely|by_no_means|not_at_all|a_long_way_from|miles_from|not_anywhere_near] <sell>|<~finish>|<list>|<buy>|<~sell>|paid",
  "other: sold my soul for 180 on that dresser":
    "[sold|selling|sell my|his|her|our|their|your soul|kidney|kidneys|heart|blood|plasma|body|dignity]",
  "offer: turned down 110 for the desk":
    "[turned|shot|knocked|waved|laughed|batted|swatted down|away|off <art>|his|her|their|an|offer|bid|of|for|from|lowball|cash|measly|<person>|him|them*] $ !off",
  "denial: no deposit on the desk":
    "^ so|still|well|ok* [no|without|zero deposit|deposits|hold|holds|down_payment|refund|refunds|sale|sales on|for|from|to|yet]",
  "offer: no, 150 is too low":
    "[$ is|was|s? way|just|a_bit|kinda|far|really? too_low|too_high|too_much|too_little|not_enough|his_offer|her_offer|their_offer|my_floor]",
  "doubt: 10 of it was a tip":
    "^ [$ of_it|of_that|of_this|of_which|of_those for|on|was|went|goes|to|is|in] !!loan|loans",
  "intention: minimum payment on the loan 110":
    "^ [minimum|min|monthly payment|pmt] on|for|of|due <art>? loan|<loan> is|of|was|due? $ ;",
  "intention: loan minimum payment 110":
    "!!paid|sent|made loan|<loan>|<pay> … [minimum|min|monthly payment|pmt|due is|of|was|s|due? $] ;",
  // Part of the work, or none.
  "other: finished the armoire photos": `<~finish> <art>? [<piece> ${PAPERS}] !are|is|were|was|tomorrow|next|taken|done|up|to|later|tonight|still`,
  "other: finished the photos of the armoire": `<~finish> [<art>|my|our|all|both* <word>? ${PAPERS}|price_tag|tag|sign|write|label of|for|on|about|up* <art>? <piece>]`,
  "part: finished work for today on the armoire":
    "<~finish> [my|the|our|a|todays|for|early|some|this|that|last* work|shift|hour|hours|day|step|stage|phase|round|session|lunch|dinner|breakfast|coffee|errands|morning|evening|week one|two|three|four|#|for|up|of|today|tonight|the_day|now|then|,* on|with|in|of|to? <art>? <piece>]",
  "part: finished off the paint on the armoire":
    "<~finish> off|up [<art>|last|rest|end|of|that|this* <supply>] on|for|of|from <art>? <piece>",
  "part: done with the armoire for today":
    "<~finish> … <piece> [for now|today|tonight|the_day|the_night|the_week|a_bit|the_moment|a_while|the_evening|the_weekend] ;",
  "part: finished the armoire left side": `<~finish> <art>? <piece> [s? ${SIDES} ${HALVES}]`,
  "labor: finished the right side of the armoire": `<~finish> <art>? [${SIDES} ${HALVES} of|on] <art>? <piece>`,
  "other: finished paying for the armoire":
    "<~finish> [paying|waiting|looking|shopping|arguing|haggling|writing|talking|reading|researching|measuring|planning|pricing|listing|posting|emptying|wrapping|packing|negotiating|searching|hunting|thinking|fighting|bidding|scrolling|texting|messaging|chatting|staging|organizing|unwrapping|clearing|arranging|driving|lugging|hauling for|about|on|up|at|with|over|out|to|off*] <art>? <piece>",
  // What stands in an advertisement, and how that is getting on.
  "doubt: desk post in review 120": `<piece>|<supply> [ad|post|listing|posting is|was|still|now|under|in* review|rejected|denied|flagged|removed|pending|scheduled|draft|drafted|processing|saved|expired|live|active at|for|on? $]`,
  "doubt: desk ad in review 120":
    "<supply> [is|was|still|now|under|in* back_up|up_again|went_live|live_again|review|rejected|denied|flagged|pending|still_up|expired|live|active|still at|for|on? $]",
  "doubt: the desk is still at 120":
    "^ <art>? <piece>|<supply>|price|asking|asking_price|<list> [on|of|for? <art>? <piece>? post|ad|listing|price|tag? is|s|are? still|stays|stay|remains|sits at|on|for|up|listed|live|active|sitting|asking|priced* $]",
  // A buyer who only tries it, or pays for something else.
  "doubt: dana picked up the hutch to try it":
    "picked_up|took|grabbed|collected|got|has|borrowed <art>? <piece> [to try|test|see|measure|borrow|show|inspect|think|store|compare it|if|how|them|him|her|whether|out|for|about|on|with|<kin>*]",
  "doubt: dana picked up the hutch on approval":
    "picked_up|took|grabbed|collected|got|has <art>? <piece> [on approval|trial|loan|consignment|spec|a_trial|a_trial_basis|trial_basis|test]",
  "extra: dana paid 20 for delivery of the hutch":
    "<buyer>|<new>|<person>|he|she|they paid|gave|sent|handed|threw_in me|us? $ [for|toward|towards delivery|delivering|hauling|shipping|gas|assembly|transport|moving|gas_money|the_delivery|the_trip|the_drive] of|on? <art>? <piece>?",
  "extra: ed paid 110 for the desk and 20 for delivery":
    "<buyer>|<new>|<person>|he|she|they paid|gave|sent|handed me|us? $ … <piece> and|plus|,|& $ [for|toward|towards delivery|delivering|hauling|shipping|gas|assembly|transport|moving|gas_money|the_delivery|the_trip|the_drive]",
  // Verbs of another sense.
  "own deposit: paid 20 of the 60 for the desk":
    "^ i|we|just* paid|put|gave|sent $ [<grain>] for|on|toward|towards <art>? <piece>",
  "doubt: sold the desk to myself for 50": "<sell> … [to myself|ourselves|us]",
  "doubt: sold the desk for dad 110": "<sell> <art>? <piece> [for <kin>]",
  "doubt: sold a desk for teo 110": "<sell> a|an <piece> [for <new>|<person>]",
  "other: 2h on the phone about the desk":
    "[<time> on|in the|my? phone|call|couch|line|app|internet|computer|emails|texts]",
  "other: wasted 2h on the desk buyer":
    "<time> on|with|for|at [<art>? <piece> buyer|buyers|seller|customer|people|guy|lady]",
  "other: desk was out in the rain 2h":
    "<piece> [is|was|were|been|sat|stood|left|stayed* out|outside|outdoors in|under|on? the? rain|sun|snow|cold|heat|yard|driveway|truck for? <time>]",
  "intention: 2 more hours and the desk is done":
    "^ [another|just|only|about|maybe* <moretime>] and|then|till|until|before|&|, <art>? <piece>|it|its|thats is|will_be|s? <~finish>|done|ready",
  "doubt: took 5 drawers off the dresser": "^ i|we|just* took|pulled [# <supply>] ;",
  "net: site sent me 140 for the dresser":
    "^ [<art>? site|the_site|app|the_app|the_booth|the_mall|website|platform|booth|mall|auction_house|consignment sent|sent_me|paid|paid_me|gave|gave_me|deposited me|us?] $ for",
  "other: dana bailed me out with the truck": "[bailed|helped|bailing|helping me|us|him|her|them out]",
  "other: list of things for the desk": "^ my|a|the? [list|lists of|to|for]",
  "doubt: dropped dresser off, 180": `[dropped|dropping] <art>? <piece>|it|them off|round|over ,|and|-|.|for|at|with|i|we|he|she|got|collected* !${GIVEN_AT} <any>? <any>? <any>? $`,
  "doubt: dropped the dresser at the buyers house, 180": `[dropped|dropping] <art>? <piece>|it|them off|at|by|over|round <art>|at|to|with|his|her|their* !${GIVEN_AT} buyer|buyers|<theirs>|<new>|<person>|<kin>|house|place|door|apartment|home|hers|shop`,
  "doubt: took 10 off the desk drawers":
    "[took|shaved|cut|knocked|trimmed|sawed|pulled $ off <art>? <supply>] ;",
  "other: took 20 off my time on the dresser":
    "[took|shaved|cut|knocked|saved|trimmed|dropped $ off|from|of my|our|the|his|her? time|hours|minutes|work|schedule|drive|trip|estimate|commute|hair]",
  "word: started the car to get the desk, 12 miles":
    "[started|starting|start|started_up|warmed_up <art>|my|our* car|truck|van|engine|motor|heater|vehicle|pickup|suv|minivan] to|for|and|so|,",
  "other: started a list for the desk": `[started|starting|start|began|opened|created|made|making <art>|another|new|my|our* ${PAPERS}|bidding|auction|rumor|fight|argument|search|hunt for|about|on|of|with|over] <art>? <piece>`,
  "other: posted about the armoire, 300 likes":
    "[posted|wrote|blogged|tweeted|bragged|talked|posting|shared|ranted|joked about] <art>? <piece>",
  "doubt: renewed the desk listing 120":
    "[renewed|refreshed|updated|edited|reposted|bumped|extended <art>? <piece> listing|ad|post|posting]",
  "other: found 40 in the desk drawer":
    "[found|finding|discovered <art>? $ bill|bucks|dollars|cash|coin|note? in|inside|under|behind|underneath|beneath|stuck|taped|tucked|between|on]",
  "denial: taught a workshop for free, 120 value":
    "<stream> … [for_free|free|pro_bono|unpaid|for_nothing|as_a_favor|no_charge|volunteer]",
  "other: armoire took 2h drive":
    "[took|was|spent|lost|wasted|its|a|about* <time> of|a|in|sitting|stuck? drive|ride|drives|wait|detour|stuck|lost|waiting|in_traffic|traffic|in_line|on_hold]",
  "other: painted my truck 300":
    "[painted|washed|fixed|waxed|cleaned|repaired|detailed|vacuumed] my|our|his|her|their|moms|dads truck|car|van|trailer|house|nails|fence|deck|hair|bathroom|kitchen|bedroom|boat|bike|shed|porch",
});
