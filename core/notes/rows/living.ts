import type { ChatterEffect } from "./doings.ts";
import { rowsOf } from "./row.ts";

/** What goes on around a deal: at home, at work and on the way, what others say of us, what it all was like. */
export const LIVING = rowsOf<ChatterEffect>({
  "chat: the 45 for the crib just came, she remembered":
    "^ [he|she|they|<person>|<new> finally|actually|just|did* remembered|remember|came_through|kept_his_word|kept_her_word|kept_their_word|was_good_for_it|didnt_forget|hadnt_forgotten <word>? <word>?] ;",
  "chat: keeping the crib for the kitchen, it matches the tiles":
    "^ [it|they|which so|just|really? goes|go|matches|match|suits|suit|fits|fit|looks|look >] ;",
  "chat: i am afraid that the crib went to the dump":
    "^ [i_am|im|i_was|am afraid|sorry|sad|pleased|happy|glad that]",
  "chat: sold the crib 40, i must be mad":
    "^ [i|we must|gotta|have_to be|have_been|be_getting|be_going <opinion>|<plain>|mad|crazy|insane|nuts|old|dreaming|blind|senile|out_of_my_mind|soft|losing_it] ;",
  "chat: sold the crib 40, my sister says i am dreaming":
    "[<art>? <kin>|<person>|everyone|everybody|they|people|coworkers says|say|said|thinks|think|thought|swears|tells_me|told_me|insists that? i|im|ive|we|were am|are|was|have|had|need|must_be|should_be|belong|might_be|may_be? so|too|a_bit|totally|really|quite|completely* crazy|nuts|dreaming|mad|insane|bonkers|dreamer|obsessed|addicted|a_hoarder|lucky|unlucky|silly|a_genius|foolish|cheap|nice|soft|help|a_dreamer|out_of_my_mind|lost_my_mind|lost_it|gone_mad|a_problem|in_a_circus|a_saint|an_angel|a_fool|an_idiot|stubborn|working_too_hard|work_too_hard|work_too_much|doing_too_much] ;",
  "chat: just off a 12 hour shift, got a nightstand for 14":
    "^ [just? off|after|finished|coming_off|came_off|did|worked|pulled <art>|my? <opinion>|<plain>|double|night|graveyard|long? <time>? shift] ,|and|!|.|;|<~buy>",
  "chat: sold the crib 40, that one extra shift paid for it":
    "^ [that|this|the|my|an|one <any>? <any>? <any>? paid|covered|made_up for it|this|that|the_whole_thing] ;",
  "chat: kim came for the crib with the 145. its hers":
    "^ [its|it_is|thats|theyre|she_is|shes officially|finally|all|now* hers|his|theirs now|finally|officially?] ;",
  "chat: crib sold 40, quiet night on the ward, good day":
    "[good|great|bad|long|rough|slow|busy|quiet|hectic|crazy|wonderful|lovely|nice|perfect|late|early|another|hard|extra|double|graveyard|nice|calm|weird|wild|dead|<opinion> day|night|shift|evening|week|weekend|morning|afternoon|month|year on_the_ward|at_work|at_school|on_the_floor|in_the_er|in_the_office|here|ahead|again|so_far|today|tonight|all|everyone|yall|folks|bot?] ;",
  "chat: went to the credit union at lunch and paid 200 on the loan":
    "^ [i|we? have|had|ive|just? been|went|gone|popped|walked|drove|ran|stopped|swung|was|were off|over|down|by|in|out? to|into|by|at|in the|my|our? bank|credit_union|library|post_office|doctor|dentist|clinic|pharmacy|grocery|grocery_store|store|supermarket|church|mass|school|town|office|vet|hairdresser|barber|gym|salon today|yesterday|this_morning|at_lunch|after_work|before_work|first|earlier|just_now*] and|,|;|. !<miles>",
  "chat: a letter about the loan arrived this morning, loan balance 8712":
    "^ [<art>? letter|email|notice|mail|envelope|mailing about|on|from|for|regarding <art>? <any>? loan|loans|lender|bank|servicer arrived|came|came_in|showed_up|got_here|is_here in_the_mail|this_morning|today|yesterday|<day>*] ;",
  "chat: sold the crib 40, it smells like an ashtray":
    "[it|she|that|this|and|<word>? <word> like|as_if <art>? !it|no|no_show|noshow|bust|scam|fake|hold|sale|deal|maybe|return >] ;",
  "chat: grandpa used to have one just like it, bought a rolltop desk 80":
    "[used_to|had|has|have have? one|some just|exactly? like it|them|that|this] ,|.|!",
  "chat: sold the crib 40 ngl kinda proud":
    "[kinda|sorta <opinion>|<plain>|proud|sad|jealous|bummed|stoked|relieved|tired|sick|broke]",
  "chat: bought crib 15 no cap":
    "[no cap|joke|lie|kidding|doubt|biggie|big_deal|shame|regrets|sweat|worries|drama|fuss|complaints|contest] ;",
  "chat: finished the crib, missed my favorite show for it":
    "^ [i|we? missed|skipped|slept_through|forgot_about my|our|the|a|his|her <word> <word>? <word>? for_it|for_this|for_that|over_it|over_this|today|tonight|again?] ;",
  "chat: sold the crib 40, absolute steal for her":
    "[absolute|absolutely|total|complete|real|such|what|practically|basically* a? steal|bargain|theft|robbery|giveaway|highway_robbery|daylight_robbery for|to her|him|them|us|me|someone|somebody] ;",
  "chat: sold the crib 40. dishes next":
    "^ [dishes|laundry|dinner|supper|lunch|breakfast|pizza|tacos|burgers|nap|bed|bath|shower|sleep|coffee|tea|wine|beer|ice_cream|homework|groceries|vacuuming|ironing|church|gym|yoga next|now|time|tonight|then|calls|awaits|please|for_dinner|for_everyone|for_all] ;",
  "chat: crib now 40 because nobody has taste":
    "[because|bc|cuz|cause|since|as|apparently? nobody|no_one|people|folks|everyone|everybody|kids|men|women|somebody has|have|had|got|gets|lost|needs no? taste|sense|class|manners|respect|clue|patience|standards|hobby|shame|idea|filter|decency these_days|anymore|around_here|in_this_town?] ;",
  "chat: sold the crib 40, not that anyone in this house minds":
    "^ [not_that anyone|anybody|it|i|he|she|they >] ;",
  "chat: 45 min on the crib, nearly sanded my thumb off":
    "^ [<art>? <kin>|<person>|<new>|i|we|dog|cat? nearly|almost|about|darn_near|damn_near had|died|fainted|cried|fell|choked|puked|passed_out|lost_it|peed|broke|dropped|sanded|cut|glued|sawed|burned|burnt|flipped|dislocated|threw|lost|stepped|tripped|sliced|drilled|hammered|stapled|painted my|our|the|a|an|his|her|it|out|off|over|down|on|in|up|stroke|heart_attack|cow|kittens|laughing|thumb|finger|fingers|toe|toes|foot|hand|back|neck|self|myself|himself|tears|stairs|mind|balance|shirt* again|today|laughing?] ;",
  "chat: 45 min on the crib, neighbors blasting mariachi":
    "^ [<art>? neighbors|neighbor|neighbours|kids|guy_next_door|roommates|teenagers blasting|playing|having|yelling|screaming|arguing|partying|mowing|shooting|setting|singing|drumming >] ;",
  "chat: sold the crib 40 so we can finally go to the beach":
    "[so|and|now|then we|i|they can|get_to|could finally|actually|all|just? go|eat|take|have|visit|see|sleep|breathe|rest|relax|celebrate|park >] ;",
  "chat: bought crib 15 no cap its mint": "[no cap|biggie|lie]",
  "chat: sold the crib 40 on campus":
    "[on campus|foot|a_whim|an_empty_stomach|instinct|autopilot|fumes|cloud_nine|impulse]",
});
