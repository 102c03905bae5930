import type { TurnEffect } from "./afterwards.ts";
import { GONE } from "./dealing.ts";
import { rowsOf } from "./row.ts";

/** A sale or a hold that is still to happen, is not paid, or came to nothing. */
export const PENDING = rowsOf<TurnEffect>({
  "doubt: finished the desk in my head":
    "[only|just? in my|our|his|her head|mind|imagination|dreams|dream|sleep|fantasies] ;",
  "denial: pat never showed me the mirror": "[never|didnt showed|show|sent|texted me|us]",
  "part: finished the desk, drawers tomorrow":
    "<~finish> … [,|-|.|and|but|so|just|only|the|one|two|#* <part>|<workpart>|<supply> are|is|to_do|still|left|will_be* tomorrow|tmrw|tmw|next|later|tonight|left|to_go|remaining|still|missing|after_work|this_weekend|next_week] ;",
  "part: desk done, will put the last coat on tomorrow":
    "<~finish> … [,|-|.|and|but|so|just|only|i|we|still|ill* will|need_to|needs_to|have_to|has_to|gotta|gonna|going_to|ill? put|do|add|apply|give|get|have it|on? <art>|one|its? last|final|second|third|more|another|top|clear? coat|coats|wax|varnish|poly|sealer|touchups|touch_ups]",
  "unpaid: sold the desk 140, she forgot her wallet":
    "<sell>|<buyer> … [forgot|left|lost|misplaced|didnt_have|didnt_bring|hadnt his|her|their|the|any|enough wallet|purse|cash|money|checkbook|card|at_home|in_the_car?] ;",
  // A sale that is still to happen.
  "pending: sold desk tentatively 140":
    "<sell> … [pending|sale_pending|is_pending|pending_pickup|tentatively|provisionally <word>?]",
  "unpaid: sold desk 140 owes me": "<sell> … [owes me|us|money*] ;",
  "unpaid: sold desk 140 unpaid":
    "<sell>|<buyer> … [unpaid|not_paid|hasnt_paid|not_yet_paid|awaiting|waiting_on|waiting_for|no_money_yet|yet_to_pay payment|money|cash|check|transfer|yet?]",
  "unpaid: mike took it at 200, wiring it friday":
    "<buyer> … $ … [she|he|they|buyer|guy|lady|theyll|shell|hell|will|to|gonna|going_to? pays|pay|paying|pays_me|payment|to_pay|will_pay|pay_me|send|sends|sending|wiring|transferring it|me|the|rest|money|cash|check? on|by|this|next? <day>|later|tomorrow|tmrw|tonight|soon|friday|pickup|payday|next_week|monday]",
  "unpaid: sold desk 140 transferring it friday":
    "<sell> … [she|he|they|buyer|guy|lady|theyll|shell|hell|shes|hes|theyre? is|are|will|to|gonna|going_to|has|have|still* pays|pay|paying|pays_me|payment|to_pay|will_pay|pay_me|send|sends|sending|wiring|transferring it|me|the|rest|money|cash|check? on|by|this|next? <day>|later|tomorrow|tmrw|tonight|soon|friday|pickup|payday|next_week|monday]",
  "pending: sold desk 140 pickup tomorrow":
    "<sell> … [pickup|pick_up|picking_up|picks_up|picking_it_up|picks_it_up|collecting|collects|fetching|comes|coming|they_come|come|comes_by|coming_by|getting_it|gets_it|grabbing_it|is_coming|for_pickup|to_be_picked_up|pickup_is|delivery|delivering|deliver on|by|this|is|at|next|around? <day>|<clock>|later|tomorrow|tmrw|tonight|soon|next_week|this_weekend|next_weekend|after_work]",
  "pending: kinda sold desk 60":
    "[basically|kinda|kind_of|sorta|sort_of|half|virtually|just_about|practically|pretty_much|as_good_as|more_or_less|nearly|almost|technically|mostly|all_but|supposedly|semi|about] <sell>",
  "pending: sold desk 60 fingers crossed":
    "<sell> … [in_theory|hypothetically|theoretically|fingers_crossed|hopefully|in_my_dreams|in_principle|on_paper|knock_on_wood|god_willing|supposedly|conditionally|subject_to <word>*]",
  "pending: sold desk 60 assuming he shows":
    "<sell> … [assuming|provided|as_long_as|so_long_as|unless|if|once|when|contingent <word>* <word>]",
  "unpaid: sold desk 60 partially paid":
    "<sell> … [deposit_only|partial|partially_paid|part_paid|paid_half|half_paid|paid_part|half_now|half_down|installments|in_installments|layaway|on_layaway|lay_away|payment_plan|on_payments|on_credit|on_account|iou|on_time]",
  "word: deposit 40 on the desk, picking up next week":
    "<~hold>|deposit|deposits|down … [,|.|-|and|but|;|she|he|they|shell|hell|theyll|shes|hes|theyre|will|ill|im|gonna|going_to|is|are|buyer|to|be|wants|wanted|said|says* pick|picks|picking|pickup|picking_up|coming|comes|come|getting|gets|get|grabbing|grab|collecting|collect|fetching|back|pays|paying|pay|bringing|bring|holding|hold it|them|up|by|over|back|for|the|rest|other|til|till|until|on|in|some|cash|day|sometime|time* next_week|next_weekend|this_weekend|next_month|later|later_on|later_this_week|soon|tonight|after_work|in_a_few_days|in_a_couple_days|in_a_couple_of_days|when_they_can|when_she_can|when_he_can|this_week|end_of_the_month|in_the_morning|on_payday|payday|at_pickup] ;",
  "intention: friday im dropping the desk to 130":
    "^ [<weekday> im|i_am|we_are|were|ill_be|well_be] <~list>|<~reprice>|<~retire>|<~sell>|<~buy>|<~finish>|<~start>|<pay>",
  "intention: im listing the desk 140 on friday":
    "^ [im|i_am|we_are|ill_be|well_be] <~list>|<~reprice>|<~retire>|<~sell>|<~buy>|<~finish>|<pay> … on|this|by? <weekday> ;",
  "pending: sold the desk 150 but she cant get it til friday":
    "<sell> … [,|but|and|.* he|she|they|hes|shes|theyre|buyer|guy|lady|<new>|<person>* isnt|aint|not|cant|cannot|wont|couldnt|doesnt|dont|is_not|are_not|arent picking|pick|coming|come|getting|get|here|grab|grabbing|make|collect|be|able|to* it|them|up|here|out|by|over* till|til|until|before|for|on <day>|later|next_week|next_weekend|this_weekend|payday|after_work|a|the|few|couple|days|while]",
  "denial: bought sofa 40 but it smelled so i left it there":
    "<buy> … [,|.|-|but|and|so* it|i|we|so|then* left|leaving|ditched|abandoned it|that|them there|behind|at_the|on_the|where_it_was <any>?] ;",
  "other: took the desk listing down":
    "took|taking|pulled|pulling <art>? <piece> [listing|ad|post|posting down|off]",
  "word: posted armoire 240 fingers crossed":
    "<list>|<reprice> … [,|-|.|!* fingers_crossed|wish_me_luck|hopefully_it_sells|hope_it_sells|hope_it_goes|lets_see|we_will_see|well_see|here_goes|here_goes_nothing] ;",
  "other: 12 hrs on my feet im dead":
    "^ <time> [on|at|in|of my|the? feet|road|work|car|hospital|shift|driving|traffic|clock|office|school]",
  "word: the lady was not happy with the desk, so i refunded her 25":
    "[<art>? <person>|he|she|they|buyer? was|were|is|isnt|wasnt|werent not|un* happy|thrilled|satisfied|pleased|impressed|unhappy|disappointed with|about] <art>? <piece>|it|them",
  "word: finished the desk, which took another hour": "[,|-? which that?] took|needed <time>",
  "word: promised the desk to the same man for next week":
    "<~hold> … for [next_week|next_weekend|next_month] ;",
  "fetch: left a deposit of 50 for the desk and will fetch it on saturday":
    "<~hold>|deposit|deposits|down … [,|and|;|who|she|he|they* will|shall|to|is|are|going_to|gonna|wants_to|plans_to|hell|shell|theyll fetch|collect|fetching|collecting|come|coming|pick|grab|get|be_back|back it|them|up|for|by* on|this?] <day>",
  "fetch: hold desk for amy, 40 down, gets it sat":
    "<~hold>|deposit|deposits|down … [,|.|;|-|and|who|she|he|they|shes|hes* gets|fetches|collects|grabs|picks|comes|getting|fetching it|them|up|for|by|back* on|this?] <day>",
  "intention: gone to get the desk 90":
    "[gone|off|out to get|fetch|pick_up|see|buy|look|look_at|grab|collect|haul|deliver]",
  "denial: sold desk 90, she said no":
    "<sell>|<buy>|<hold> … [she|he|they|buyer|lady|guy|seller|wife|husband|mom|dad then|just? said|says|told_me no|nope|nah|never_mind|forget_it]",
  "denial: sold desk 90, nope": "<sell>|<buy> … , [nope|nah|psych|not] ;",
  "unpaid: sold desk 90, no cash yet":
    "<sell> … [no|without_the cash|money|payment|check|dough yet|so_far|still|though?] ;",
  "denial: sold desk 90, ran off":
    "<sell> … [ran|runs|took|drove|walked off|out_on_me|off_with_it|off_without_paying|away] ;",
  // What became of it afterwards.
  "denial: sold desk 140 but she backed out":
    "<~sell>|<~buy>|<pay>|<hold> … [but|and|then|buyer|seller|guy|lady|she|he|they|it|who|deal|sale|check|payment? has|just|then? " +
    GONE +
    "]",
  "denial: sold desk 60 got scammed":
    "<sell>|<buy> … [got|get|was|its|it_was|is|total|a? scammed|scam|fake_check|bad_check|fake_money|counterfeit|stiffed|ripped_off|robbed]",
  "denial: loan payment 110 reversed":
    "<pay>|<loan>|loan … [reversed|failed|bounced|returned|declined|rejected|didnt_go_through|did_not_go_through|cancelled|canceled|scheduled|pending|processing] !fee|fees|charge|charges",
  "denial: desk aint sold 90":
    "[aint|not|isnt|wasnt|never|hasnt|havent|didnt|no_longer|not_yet|still_not|still_hasnt been|yet|get|gotten?] <sell>|<buy>|<~finish>|<list>",
  "intention: found someone who wants the trunk for 75":
    "[found|got|have|has someone|somebody|a_guy|a_lady|a_person|people who|that|wanting|to want|wants|buy|buys|take|takes?]",
  "other: the sun got to the bench, 30":
    "[sun|light|heat|water|rain|dog|cat|kids|mice|bugs|termites got|gets to|into|at <art>?] <piece>",
  "doubt: glue 7 for bench and oak": "<piece> [and|& <trait>] ;",
  "other: got the sander back from dad": "[got|took|getting <art>? <supply> back]",
  "doubt: got the rocker back 90":
    "[got|took|getting <art>? <piece> back] !!refunded|refund|gave|gave_back|returned|paid_back|sent",

  "intention: found a buyer for the desk 60":
    "[found|got|have|has|lined_up|found_me|think_i_have|might_have <art>? buyer|taker|bite|interest|someone_interested|somebody_interested for|on?]",
});
