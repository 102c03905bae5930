import { AFTERWARDS, type TurnEffect } from "./afterwards.ts";
import { DEALING, GONE } from "./dealing.ts";
import { ELSEWHERE } from "./elsewhere.ts";
import { HAGGLED } from "./haggled.ts";
import { NEEDS } from "./needs.ts";
import { NOT_COME } from "./not-come.ts";
import { ALL_BUT, AS_IT_WAS, NOT_ENDED, ONLY_MENTIONED } from "./only-mentioned.ts";
import { ONLY_SEEN } from "./only-seen.ts";
import { OTHER_SENSES } from "./other-senses.ts";
import { PLANNED } from "./plans.ts";
import { REMARKS } from "./remarks.ts";
import { RESTATED } from "./restated.ts";
import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";
import { TOLD_BESIDE } from "./told-beside.ts";

const ROWS: readonly Row<TurnEffect>[] = [
  [
    "[only|just? in my|our|his|her head|mind|imagination|dreams|dream|sleep|fantasies] ;",
    "doubt",
    "finished the desk in my head",
  ],
  ["[never|didnt showed|show|sent|texted me|us]", "denial", "pat never showed me the mirror"],
  [
    "<~finish> … [,|-|.|and|but|so|just|only|the* <part>|<workpart> are|is|to_do|still|left|will_be* tomorrow|tmrw|tmw|next|later|tonight|left|to_go|remaining|still|after_work|this_weekend|next_week] ;",
    "part",
    "finished the desk, drawers tomorrow",
  ],
  [
    "<sell>|<buyer> … [forgot|left|lost|misplaced|didnt_have|didnt_bring|hadnt his|her|their|the|any|enough wallet|purse|cash|money|checkbook|card|at_home|in_the_car?] ;",
    "unpaid",
    "sold the desk 140, she forgot her wallet",
  ],
  // A sale that is still to happen.
  [
    "<sell> … [pending|sale_pending|is_pending|pending_pickup|tentatively|provisionally <word>?]",
    "pending",
    "sold desk tentatively 140",
  ],
  ["<sell> … [owes me|us|money*] ;", "unpaid", "sold desk 140 owes me"],
  [
    "<sell>|<buyer> … [unpaid|not_paid|hasnt_paid|not_yet_paid|awaiting|waiting_on|waiting_for|no_money_yet|yet_to_pay payment|money|cash|check|transfer|yet?]",
    "unpaid",
    "sold desk 140 unpaid",
  ],
  [
    "<buyer> … $ … [she|he|they|buyer|guy|lady|theyll|shell|hell|will|to|gonna|going_to? pays|pay|paying|pays_me|payment|to_pay|will_pay|pay_me|send|sends|sending|wiring|transferring it|me|the|rest|money|cash|check? on|by|this|next? <day>|later|tomorrow|tmrw|tonight|soon|friday|pickup|payday|next_week|monday]",
    "unpaid",
    "mike took it at 200, wiring it friday",
  ],
  [
    "<sell> … [she|he|they|buyer|guy|lady|theyll|shell|hell|shes|hes|theyre? is|are|will|to|gonna|going_to|has|have|still* pays|pay|paying|pays_me|payment|to_pay|will_pay|pay_me|send|sends|sending|wiring|transferring it|me|the|rest|money|cash|check? on|by|this|next? <day>|later|tomorrow|tmrw|tonight|soon|friday|pickup|payday|next_week|monday]",
    "unpaid",
    "sold desk 140 transferring it friday",
  ],
  [
    "<sell> … [pickup|pick_up|picking_up|picks_up|picking_it_up|picks_it_up|collecting|collects|fetching|comes|coming|they_come|come|comes_by|coming_by|getting_it|gets_it|grabbing_it|is_coming|for_pickup|to_be_picked_up|pickup_is|delivery|delivering|deliver on|by|this|is|at|next|around? <day>|<clock>|later|tomorrow|tmrw|tonight|soon|next_week|this_weekend|next_weekend|after_work]",
    "pending",
    "sold desk 140 pickup tomorrow",
  ],
  [
    "[basically|kinda|kind_of|sorta|sort_of|half|virtually|just_about|practically|pretty_much|as_good_as|more_or_less|nearly|almost|technically|mostly|all_but|supposedly|semi|about] <sell>",
    "pending",
    "kinda sold desk 60",
  ],
  [
    "<sell> … [in_theory|hypothetically|theoretically|fingers_crossed|hopefully|in_my_dreams|in_principle|on_paper|knock_on_wood|god_willing|supposedly|conditionally|subject_to <word>*]",
    "pending",
    "sold desk 60 fingers crossed",
  ],
  [
    "<sell> … [assuming|provided|as_long_as|so_long_as|unless|if|once|when|contingent <word>* <word>]",
    "pending",
    "sold desk 60 assuming he shows",
  ],
  [
    "<sell> … [deposit_only|partial|partially_paid|part_paid|paid_half|half_paid|paid_part|half_now|half_down|installments|in_installments|layaway|on_layaway|lay_away|payment_plan|on_payments|on_credit|on_account|iou|on_time]",
    "unpaid",
    "sold desk 60 partially paid",
  ],
  [
    "<~hold>|deposit|deposits|down … [,|.|-|and|but|;|she|he|they|shell|hell|theyll|shes|hes|theyre|will|ill|im|gonna|going_to|is|are|buyer|to|be|wants|wanted|said|says* pick|picks|picking|pickup|picking_up|coming|comes|come|getting|gets|get|grabbing|grab|collecting|collect|fetching|back|pays|paying|pay|bringing|bring|holding|hold it|them|up|by|over|back|for|the|rest|other|til|till|until|on|in|some|cash|day|sometime|time* next_week|next_weekend|this_weekend|next_month|later|later_on|later_this_week|soon|tonight|after_work|in_a_few_days|in_a_couple_days|in_a_couple_of_days|when_they_can|when_she_can|when_he_can|this_week|end_of_the_month|in_the_morning|on_payday|payday|at_pickup] ;",
    "word",
    "deposit 40 on the desk, picking up next week",
  ],
  [
    "^ [<weekday> im|i_am|we_are|were|ill_be|well_be] <~list>|<~reprice>|<~retire>|<~sell>|<~buy>|<~finish>|<~start>|<pay>",
    "intention",
    "friday im dropping the desk to 130",
  ],
  [
    "^ [im|i_am|we_are|ill_be|well_be] <~list>|<~reprice>|<~retire>|<~sell>|<~buy>|<~finish>|<pay> … on|this|by? <weekday> ;",
    "intention",
    "im listing the desk 140 on friday",
  ],
  [
    "<sell> … [,|but|and|.* he|she|they|hes|shes|theyre|buyer|guy|lady|<new>|<person>* isnt|aint|not|cant|cannot|wont|couldnt|doesnt|dont|is_not|are_not|arent picking|pick|coming|come|getting|get|here|grab|grabbing|make|collect|be|able|to* it|them|up|here|out|by|over* till|til|until|before|for|on <day>|later|next_week|next_weekend|this_weekend|payday|after_work|a|the|few|couple|days|while]",
    "pending",
    "sold the desk 150 but she cant get it til friday",
  ],
  [
    "<buy> … [,|.|-|but|and|so* it|i|we|so|then* left|leaving|ditched|abandoned it|that|them there|behind|at_the|on_the|where_it_was <any>?] ;",
    "denial",
    "bought sofa 40 but it smelled so i left it there",
  ],
  [
    "took|taking|pulled|pulling <art>? <piece> [listing|ad|post|posting down|off]",
    "other",
    "took the desk listing down",
  ],
  [
    "<list>|<reprice> … [,|-|.|!* fingers_crossed|wish_me_luck|hopefully_it_sells|hope_it_sells|hope_it_goes|lets_see|we_will_see|well_see|here_goes|here_goes_nothing] ;",
    "word",
    "posted armoire 240 fingers crossed",
  ],
  [
    "^ <time> [on|at|in|of my|the? feet|road|work|car|hospital|shift|driving|traffic|clock|office|school]",
    "other",
    "12 hrs on my feet im dead",
  ],
  [
    "[<art>? <person>|he|she|they|buyer? was|were|is|isnt|wasnt|werent not|un* happy|thrilled|satisfied|pleased|impressed|unhappy|disappointed with|about] <art>? <piece>|it|them",
    "word",
    "the lady was not happy with the desk, so i refunded her 25",
  ],
  ["[,|-? which that?] took|needed <time>", "word", "finished the desk, which took another hour"],
  [
    "<~hold> … for [next_week|next_weekend|next_month] ;",
    "word",
    "promised the desk to the same man for next week",
  ],
  [
    "<~hold>|deposit|deposits|down … [,|and|;|who|she|he|they* will|shall|to|is|are|going_to|gonna|wants_to|plans_to fetch|collect|fetching|collecting|come|coming|pick|grab|get it|them|up|for|by* on|this?] <day>",
    "fetch",
    "left a deposit of 50 for the desk and will fetch it on saturday",
  ],
  [
    "[gone|off|out to get|fetch|pick_up|see|buy|look|look_at|grab|collect|haul|deliver]",
    "intention",
    "gone to get the desk 90",
  ],
  [
    "<sell>|<buy>|<hold> … [she|he|they|buyer|lady|guy|seller|wife|husband|mom|dad then|just? said|says|told_me no|nope|nah|never_mind|forget_it]",
    "denial",
    "sold desk 90, she said no",
  ],
  ["<sell>|<buy> … , [nope|nah|psych|not] ;", "denial", "sold desk 90, nope"],
  [
    "<sell> … [no|without_the cash|money|payment|check|dough yet|so_far|still|though?] ;",
    "unpaid",
    "sold desk 90, no cash yet",
  ],
  [
    "<sell> … [ran|runs|took|drove|walked off|out_on_me|off_with_it|off_without_paying|away] ;",
    "denial",
    "sold desk 90, ran off",
  ],
  // What became of it afterwards.
  [
    "<~sell>|<~buy>|<pay>|<hold> … [but|and|then|buyer|seller|guy|lady|she|he|they|it|who|deal|sale|check|payment? has|just|then? " +
      GONE +
      "]",
    "denial",
    "sold desk 140 but she backed out",
  ],
  [
    "<sell>|<buy> … [got|get|was|its|it_was|is|total|a? scammed|scam|fake_check|bad_check|fake_money|counterfeit|stiffed|ripped_off|robbed]",
    "denial",
    "sold desk 60 got scammed",
  ],
  [
    "<pay>|<loan>|loan … [reversed|failed|bounced|returned|declined|rejected|didnt_go_through|did_not_go_through|cancelled|canceled|scheduled|pending|processing] !fee|fees|charge|charges",
    "denial",
    "loan payment 110 reversed",
  ],
  [
    "[aint|not|isnt|wasnt|never|hasnt|havent|didnt|no_longer|not_yet|still_not|still_hasnt been|yet|get|gotten?] <sell>|<buy>|<~finish>|<list>",
    "denial",
    "desk aint sold 90",
  ],
  [
    "[found|got|have|has someone|somebody|a_guy|a_lady|a_person|people who|that|wanting|to want|wants|buy|buys|take|takes?]",
    "intention",
    "found someone who wants the trunk for 75",
  ],
  [
    "[sun|light|heat|water|rain|dog|cat|kids|mice|bugs|termites got|gets to|into|at <art>?] <piece>",
    "other",
    "the sun got to the bench, 30",
  ],
  ["<piece> [and|& <trait>] ;", "doubt", "glue 7 for bench and oak"],
  ["[got|took|getting <art>? <supply> back]", "other", "got the sander back from dad"],
  [
    "[got|took|getting <art>? <piece> back] !!refunded|refund|gave|gave_back|returned|paid_back|sent",
    "doubt",
    "got the rocker back 90",
  ],

  [
    "[found|got|have|has|lined_up|found_me|think_i_have|might_have <art>? buyer|taker|bite|interest|someone_interested|somebody_interested for|on?]",
    "intention",
    "found a buyer for the desk 60",
  ],
  // Somebody else's.
  [
    "picked_up|took|grabbed|got|hauled … <piece> … [to haul|dump|junk away|off|it|them?]",
    "other",
    "picked up an old couch to haul away for 40",
  ],
  ["[comp|comps|competitor|competitors|competition|competing|rival] … <sell>", "other", "comp sold desk 120"],
  ["<piece> [like ours|mine|this|this_one|that|that_one|it|the_one]", "other", "desk like ours sold for 120"],
  [
    "[just|exactly|almost|a_lot|kinda|pretty_much|very* like|similar_to|same_as|identical_to ours|mine|this|this_one|that|that_one|it|them|the_one that|which|they|she|he|someone|somebody* just|has|is|was|had|have|recently* <verb>|<light>|up|priced]",
    "other",
    "sis sent me a pic of a dresser just like ours that sold for 400",
  ],
  [
    "[their|his|her|neighbors|somebodys|someones|his_own|friends] <piece> <sell>",
    "other",
    "her desk sold for 120",
  ],
  ["<sell> <art>? [<theirs>] <piece>", "other", "sold the neighbors sofa 200"],
  [
    "[saw|spotted|noticed|eyed|looked_at|stopped_to_look_at|went_to_look_at|went_to_see|came_to_look_at|went_and_looked_at] <art>? <trait>|<opinion>|<new>* <piece> and|then|so|, … <~buy>|ended_up|wound_up|paid|took_it|paying",
    "word",
    "looked at a hutch and bought it for 75",
  ],
  [
    "[talked|haggled|knocked|negotiated|bargained] <art>? <piece> down_to|down $ and|,|so* i|we|finally? bought|grabbed|got|picked_up|snagged|purchased it|them|that",
    "word",
    "haggled the trunk down to 30 and bought it",
  ],
  [
    "got|talked|haggled|knocked|negotiated|bargained <art>? <piece> [down_to|down] $ and|,|so* i|we|finally? bought|grabbed|got|picked_up|snagged|purchased it|them|that",
    "word",
    "got the buffet down to 50 and bought it",
  ],
  [
    "[talked|haggled|negotiated|bargained <art>? <person>|seller|him|her|them|owner|price|it? down|a_bit|a_little|some|hard? to? $?] and|so|, … got|bought|paid|took|brought|grabbed",
    "word",
    "talked the seller down and got the desk for 55",
  ],
  [
    "<sell> … [,|but|and|.* he|she|they|buyer|guy|lady|<new>|<person>? talked|haggled|beat|knocked|bargained|negotiated|got|wore me|us|it|price|the_price* down? to|at] $",
    "word",
    "sold desk, she talked me down to 120",
  ],
  [
    "[saw|seen|spotted|noticed|eyeing|eyed|looked_at|looking_at|passed_on|passed_up <art>? <piece>] !!after_all",
    "offer",
    "saw hutch 90 yard sale",
  ],
  [
    "[talked|talk|got|negotiated|haggled|bargained <art>? <piece>|him|her|them|guy|seller|it down]",
    "offer",
    "talked desk down to 40",
  ],
  [
    "<retire> … [for_now|for_a_while|awhile|a_while|until|till|til|a_bit <day>?]",
    "intention",
    "keeping desk for now",
  ],
  // Money of one of ours, and not the shop's.
  [
    "<kin> … $ … [of|from|out_of his|her|their own? own|money|paycheck|pay|pocket|wallet|savings|check|account money|pocket?]",
    "own money",
    "mom put 200 of her own on my loan",
  ],
  // The owner's own deposit.
  [
    "[put|left|gave|paid|placed|made <art>? $? <art>? deposit|down|down_payment of? $? down? on|for] a|an|another <piece>",
    "own deposit",
    "put 20 deposit on a dresser",
  ],
  ["<buy> … $ … [put|paid|left|gave? deposit|down $]", "own deposit", "bought desk 40 deposit 10"],
  ["<buy> … $ … [put|paid|left|gave? $ deposit|down]", "own deposit", "bought desk 40 put 10 down"],
  [
    "^ i|we|ive [finally|just? paid|pay|gave|sent <art>? rest|balance|remainder|other_half|last|remaining|other]",
    "own deposit",
    "i paid the rest on the desk 40",
  ],
  // A part of the piece that was named before.
  [
    "<piece> … ,|and|then|& <labor> the|its|all? [<workpart>|<part>] !of|on|<piece>",
    "word",
    "started on the dresser, stripped the top",
  ],
  // A part of the work.
  [
    "<~finish> [<art>? first|second|third|1st|2nd|3rd|one|another|last|final|base|top|prime|primer|clear? <workpart> of|on?] <art>? <piece>",
    "labor",
    "finished first coat on dresser",
  ],
  ["<piece> [<workpart>] <~finish>", "labor", "desk drawers are done"],
  ["<~finish> <art>? [<piece> of|on <art>?] <piece>", "labor", "finished the shelf of the hall tree"],
  [
    "<~finish> [half|most|part|some|one_side|the_outside|the_inside of|on?] <art>? <piece>",
    "labor",
    "finished half of the dresser",
  ],
  [
    "[half|halfway|partly|partially|mostly|nearly|almost|about_half|not_quite|sort_of|kind_of|kinda|sorta|basically|pretty_much|practically|just_about|close_to|90_percent] <~finish>",
    "part",
    "half finished dresser",
  ],
  [
    "<piece> [half|halfway|partly|partially|mostly|nearly|almost|not_quite <~finish>]",
    "part",
    "desk almost finished",
  ],
  ["[still] <~finish>|<labor> !!<time>", "part", "still finishing dresser"],
  ["<piece> [finishing|drying|curing] ;", "part", "desk finishing"],
  [
    "<~finish> [drying|curing|soaking|airing_out|gathering|moving|loading|unloading|photographing|cleaning_out] <art>? <piece>",
    "part",
    "finished drying dresser",
  ],
  ["<~finish> [drying|curing|soaking] ;", "part", "finished drying"],
  ["<piece> is|was|its [<art>? done? deal]", "other", "desk is a done deal"],
  [
    "working_on|work_on|started|worked_on <art>? <piece> [price|pricing|listing|ad|photos|pictures|description|paperwork|deal|buyer]",
    "other",
    "working on dresser price",
  ],
  [
    "[backed|pulled|backing out|up? of|into|out_of <art>? driveway|garage|spot|parking|lot|alley|space]",
    "other",
    "backed out of the driveway",
  ],
  [
    "[refinanced|refinancing|refi|refied|consolidated|consolidating|deferred|deferment|forbearance]",
    "other",
    "refinanced loan 9000 at 4%",
  ],
  ["<retire> … <piece> [with|w|along_with <art>? <piece>]", "doubt", "gave away chair with desk"],
  [
    "<piece> [deal|sale|listing|ad|pickup|delivery|photos|paperwork] is|is_all? <~finish>",
    "other",
    "desk deal is done",
  ],
  // A reason, where nothing else was said of it.
  [
    "<retire> … <piece>|it|them !!<piece> !!<part> !!only|just|but [,|- >] ;",
    "word",
    "tossed the dresser, mold",
  ],
];

export const unfinished = tableOf([
  ...ONLY_SEEN,
  ...OTHER_SENSES,
  ...PLANNED,
  ...HAGGLED,
  ...ONLY_MENTIONED,
  ...AS_IT_WAS,
  ...RESTATED,
  ...TOLD_BESIDE,
  ...NOT_COME,
  ...AFTERWARDS,
  ...DEALING,
  ...REMARKS,
  ...NEEDS,
  ...ROWS,
  ...ALL_BUT,
  ...NOT_ENDED,
  ...ELSEWHERE,
]);
