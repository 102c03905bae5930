import type { Says } from "../words/settling.ts";
import { rowsOf } from "./row.ts";
import { tableOf } from "./table.ts";

const RIDES = "van|truck|trailer|car|pickup|suv|dolly|wagon|minivan|flatbed|help|brother|dad|buddy";
const COMPANY =
  "friends|mates|roommates|flatmates|housemates|mates|pals|buddies|kids|parents|brothers|sisters|sons|helpers|movers|folks|family";
const DAYS = "<day>|later|tomorrow|payday|next_week|next_month|soon|tonight|when_he_can|when_she_can";
/** That it was left for the piece, behind how much. */
const PUT_DOWN =
  "that|which|he|she|they|had|hed|shed|theyd|put|put_down|left|gave|gave_me|given|down|me|us|on|it";

const ROWS = rowsOf<Says>({
  // Why, and what came before it.
  "aside: pete ghosted. sat came and went. keeping his 25":
    "[<day> has|had|just* come|came|gone|went|passed and|come|went|gone*]",
  "out: no sign of pete, his 25 stays with me": "[no sign|trace|sight|hide_nor_hair of|from?]",
  "aside: pete vanished, no call no text. i keep the 25":
    "[no call|calls|text|texts|word|news|reply|answer|message|explanation|apology|warning|notice or|and|from|since*]",
  "aside: change of plan, pete came tonight, 65 more":
    "^ [ok|oh|so|well|slight|small|big|quick|a|sudden* change_of_plan|change_of_plans|plans_changed|plan_changed|update|good_news|surprise|plot_twist]",
  "aside: pete lost his job, cant take it. gave him 10 back, kept 15":
    "[lost|losing|quit|got|was|been|is|hurt|broke|having|had his|her|their|a|an|just* job|lease|license|place|apartment|house|nerve|arm|leg|hip|laid_off|fired|evicted|let_go|transferred|sick|divorced|deployed|moving|baby|emergency away?]",
  "aside: pete bailed, his truck died. returned the 25": `[his|her|their ${RIDES}|ride|back|boss|kid|kids|plans|shift|bank|card|paycheck|hours died|broke|broke_down|is_dead|gave_out|quit|fell_through|changed|got_changed|is_sick|are_sick|got_sick|is_in_the_shop|is_at_the_shop|was_late|got_cut|went_out]`,
  "out: pete has no room for it now, gave the 25 back":
    "[has|have|had|got|with|theres* no|nowhere room|space|money|cash|to_put|way to|for|left|it|now|anymore*]",
  "aside: pete, the one with 25 down, is out": "[the one|guy|lady|person|woman|man with|who|that]",
  "aside: pete flaked, gave him his 25 back bc karma": "[because|bc|cuz|cause|since|as|so >] ;",
  // What will be is no pick-up yet.
  "wants: pete will take it friday":
    "[gonna|going_to|will|ll|can|could|might|may|should|plans|planning|hoping|ready|able|supposed|promised|wants|wanted to? take|grab|fetch|get|haul|collect|pick_up|pick|come|buy|have]",
  "later: pete took the bench home, pays me friday": `[he|she|they|hell|shell|theyll|hes|shes|theyre|will|ll|gonna|going_to|is|still|says|and|but* pays|paying|pay|owes|owe|owing|bringing|brings|sending|settling me|us|up|it|all|everything|the|rest|money|whole|thing|of|for* on|by|next|this|till|until|come* ${DAYS}]`,
  "later: pete took the bench, owes me all of it":
    "[he|she|they|and|but|still|just* owes|owe|owing me|us? all|everything|the_whole_thing|the_full_amount|it_all|for_it of? it?] ;",
  "aside: let pete take the bench, pays friday": "[let] <any>? take|have|get",
  "out: pete cried off on the bench": "[cried|crying|cry off|out]",
  "out: pete did a runner on the bench":
    "[did|done|doing|pulled a runner|bunk|disappearing_act|vanishing_act|no_show]",
  "out: pete let me down on it": "[let|left|letting|leaving me|us down|hanging|high_and_dry|in_the_lurch]",
  "out: pete got cold feet, gave his 25 back": "[got|getting|gotten|has|had cold feet]",
  "out: pete pulled out of the bench, i'm hanging on to his 25":
    "[pulled|pulling|dropped|walked|bowed|copped|wriggled|weaseled|wimped|chickened out|away of|from|on?]",
  "out: pete went quiet on the bench, keeping his 25":
    "[went|gone|going|has_gone quiet|silent|mia|cold|dark|awol|radio_silent on me|us?]",
  "out: pete is a no go on the bench, sent 25 back": "[is|was|now? a? no go|dice]",
  "aside: pete never came for it and he is not answering his phone":
    "[and|he|she|they|is|was* not|isnt|aint|wont|stopped|quit|never|doesnt|didnt answering|answer|answers|answered|replying|reply|replied|returning|responding|respond|responded|texting|picking_up to|me|my|his|her|their|the|phone|calls|texts|messages|call|text|message|back|anymore|about*]",
  "aside: pete never turned up for the bench. time waster":
    "[what|such|a|big|total|huge|complete* time_waster|timewaster|waste|time waster|of? my|time*]",
  "aside: waited in all afternoon, pete never turned up for the bench":
    "[i|we? waited|waiting|sat|stood in|around|here|out|there* all|half|most|the|my|for* day|afternoon|morning|night|evening|hour|hours|an_hour]",
  "out: pete never showed for the bench so thats back on i guess":
    "[so|thats|that|its|it|is* back on i|we|again|now* guess|suppose|reckon?] !for|with|the",
  "kept: pete pulled out of the bench, i'm hanging on to his 25":
    "[i|we|im|am|are* hanging|holding|hung|hang|hold|held|hangin on? to|onto]",
  "aside: i regret to say pete has changed his mind about the bench, so i returned his 25":
    "[i|we|im|sorry|sad|afraid|regret|regretful|happy|pleased|glad to say|inform|tell|report|announce you|that*]",
  "out: sent pete his deposit back, he found another bench":
    "[found|bought|got|has|saw|likes|liked|picked|chose <onemore> elsewhere|instead|online|already|somewhere?]",
  "never: pete never paid that 40, im done asking":
    "[im|i|we|am|are* done|tired_of|giving|sick_of|quit|stopped|through asking|chasing|waiting|texting|calling|trying|up for|on|it|him|her|them|that*]",
  "paid: pete coughed up the 40": "[coughed|coughing|ponied|forked|stumped|shelled|anted up|over|out]",
  "paid: pete made good on the 40": "[made|makes|came|come good on|with|for?]",
  "aside: pete came by with two guys and a trailer and took the bench": `[with|w <art>|his|her|their|some|two|three|couple|of|#* guys|men|friends|people|helpers|buddies|mates|kids and|& <art>? ${RIDES}]`,
  "aside: pete came for the bench with his sons van and paid the remaining 65": `[with|in|using|borrowed his|her|their|a|the|from* <theirs>|<kin>|<person>|friends|buddys|sons|dads|brothers|neighbors|big|borrowed* ${RIDES}] !$`,
  "aside: pete came with his roommates, 65 in twenties": `[with|w|and his|her|their|the|a|some|couple|few|of|two|three|four|#* ${COMPANY}|<kin>|<person>]`,
  "aside: pete fetched the bench a day early, paid the other 65":
    "[<span>|<day>|<art>|bit|little* early|late|ahead|sooner]",
  "fetched: pete's been for the bench and settled up": "[been for|round|by|over|and_got|and_gone|and]",
  "fetched: pete got the bench, he'll pay me friday":
    "[got the|that|her|his? <piece>] !back|done|finished|ready|listed|from|for|to|$",
  "aside: pete settled up, 40 in notes": "[in notes|twenties|tens|bills|coins|fives|hundreds]",
  "fetched: pete came for the bench with the 65. its his":
    "[its|it_is|thats|that_is|it his|hers|theirs now?]",
  "fetched: pete has the bench now, 65": "[has|have got?] <art>? <piece> now|home|already",
  "payer: shes back, put 30 down": "^ [she|he|they|shes|hes|theyre back] !for|from",
  "less: knocked 10 off so pete paid 60":
    "[knocked|took|gave|cut|shaved|dropped|let|lopped|taking|knocking him|her|them|it*] $ off",
  // For what it is to go, and so much less than before.
  "agreed: agreed on 150 with pete": "[agreed|agree|agrees|settled|shook|shook_hands|landed on|at|to|for]",
  "agreed: pete talked me down to 150":
    "[talked|haggled|bargained|beat|knocked|got|brought me|us|it down to]",
  "agreed: pete asked for 10 off, said ok":
    "$ [off ,|and|.|;|so|but* i|we|he|she* said|was|am|im|told? him|her|them? ok|okay|fine|yes|sure|deal|agreed]",
  "comes: pete paid 60, the rest sunday":
    "[the|his|her|their|my|other|and|with* rest|balance|remainder|remaining he|she|they|will|gonna|is|comes|come|coming|due|to_come|follows|on|by|this|next|for* <day>]",
  "short: pete was 10 short": "$ [short|shy]",
  "short: pete came, short 10": "[short|shy by|of?] $",
  "had: pete only had 100, let him have it":
    "[only|just had|has|brought|came_with|could_pay|could_do|could_bring|came_up_with with_him|with_her|on_him|on_her?] $",
  "forgiven: pete only had 100, let him have it":
    "[i|we|so|but|and* let|letting|gave him|her|them have|take|keep it|that|the|one|<piece>* for_that?] ;",
  "forgiven: pete was 10 short, said fine":
    "[i|we|so|but|said|told|thats|its|was|him|her|them* fine|ok|okay|no_worries|no_problem|close_enough|forget_it|good_enough by|with|me*] ;",
  "back: pete wanted his 25 back so i sent it":
    "[wanted|wants|asked_for|asked his|her|their|the $|money|deposit back so|and|, i|we just|have|had_to* sent|gave|did|returned|refunded|mailed it|them|him|her?]",
  "out: pete wants his 25 back":
    "[asks|asked|asking|wants|wanted|would_like|needs|needed for? his|her|their|the|all|some* money|deposit|cash|$|it back|returned]",
  "less: pete asked for 10 off, said ok": "[asked|asks|wants|wanted for? another|a|an|some?] $ off",
  "agreed: told pete 150 was fine":
    "^ told|texted … $ [is|was|works|sounds fine|ok|okay|good|great ,|for|with|by|me|us*]",
  "aside: told pete 150 was fine": "^ [told|texted] !him|her|them",
  "aside: two weeks and no word from pete, keeping his 25":
    "[<span>|days|weeks and|with|later|,* no|without word|answer|reply|sign|news|text|call|response of|from?]",
  "aside: pete hasnt answered in a week, keeping his 25":
    "[hasnt|havent|has_not|didnt|doesnt|wont|isnt|never answered|answer|answering|replied|reply|replying|texted|called|responded|responding|shown|written in|for|since|all? <span>|<day>|days|weeks|week?]",
  "fetched: pete here now loading the bench, just got the 65":
    "[here|is|are|now* loading|loading_up] <art>? <piece>|it",
  "aside: pete is out, told him i'd keep 10 and gave back 15":
    "[told|warned him|her|them? id|ill|i|we would|will|wed?] keep|kept",
  "owed: got another 60 from pete, he has 80 to go":
    "$ [to_go|left_to_go|to_pay|left_to_pay|still_to_go|still_to_pay|to_come|remaining] ;",
  "never: gave up on pete, that 40 is gone": "$ [is|was|s? gone|lost|history|toast] for_good? ;",
  "aside: pete moved away and never paid the 40":
    "[has|had|just* moved|moves|moving|skipped|left away|out_of_state|out_of_town|out|town|states|abroad]",
  "never: pete never paid the 40, calling it a loss":
    "[calling|call|called|its|thats|chalking|putting|taking it|that|as|up|to|down* a loss|write_off|writeoff|wash]",
  "out: pete doesnt have room for it anymore, gave the 25 back":
    "[doesnt|dont|didnt|wont have|got the|any|enough? room|space|money|cash|place|way for|to|it|that|the|<piece>|anymore|left|now|after_all*]",
  "owed: pete only had 100 so he owes me 25": "[so|and|but|,|he|she|they|still|now* owes|owe|owing me|us?] $",
  "later: took 100 from pete, he'll bring the 25 next week": `[hell|shell|theyll|he|she|they|will|gonna|going_to|is* bring|pay|send|give|brings|pays|bringing|paying|sending me|us|the|other|last|rest|remaining*] $ ${DAYS} ;`,
  "aside: took 100 from pete, he'll bring the 25 next week": `$ [${DAYS}] ;`,
  "total: pete picked it up, 90 total":
    "$ [total|all_in|in_all|in_total|altogether|all_told|whole_price|with_the_deposit|including_the_deposit|counting_the_deposit|counting_deposit|with_deposit|incl_deposit|including_deposit]",
  "total: pete picked it up, 20 down and 70 now, total 90":
    "[total|all_in|in_all|in_total|altogether|total_of|makes|thats|for_a_total_of|equals|=] $",
  "waits: pete paid 70 but hasnt picked up yet":
    "[hasnt|has_not|havent|not|didnt|isnt|still_hasnt|still picked_up|picked|collected|fetched|got|taken|took|here|at|in it|up|my|the|garage|shop|yet*] ;",
  "aside: knocked 10 off for the scratch so pete paid 60":
    "[for|over|because_of|bc_of|bc|due_to <art>? <opinion>|<trait>|<plain>|<new>* scratch|scratches|ding|dings|dent|chip|crack|stain|wobble|<part>]",
  "all: bench out the door with pete, price we agreed on":
    "[at|for|as|the|our|a|what|price|amount|we|i|she|he|they|had* agreed on|upon|price|to|amount*]",
  "fetched: pete's bench went home with him":
    "[went|gone|goes|left|is|are|out|just|now* out_the_door|off|home|out|away with|w]",
  "fetched: bench went with pete's brother": "[went|gone|goes|left with|w]",
  "fetched: pete has it now": "[has|have got? it|them|his|her|their|the] <piece>? now|home|already|;",
  "fetched: pete got it for 70": "[got|took|grabbed|bought it|them|that for] $",
  "paid: they finally showed up, 200 cash":
    "[showed_up|turned_up|made_it|came_by|came_over|came finally|today? with|and|,|.|!*] $ !friends|mates|roommates|flatmates|kids|people|guys|buddies",
  "paid: pete pulled up with the rest for the bench":
    "[showed_up|turned_up|came|came_by|came_over|pulled_up|pulled_in|rolled_up|swung_by finally|today? with|w] his|her|their|the? rest|remaining|last|final|balance",
  "comes: pete is coming saturday":
    "[come|comes|coming|is_coming|picks_up|picking_up|picks_it_up|picking_it_up|gets_it|getting_it|wants|wants_it|can_come|will_come|pickup|pick_up now? to|on|is|for? next? <day>]",
  "moved: pete now comes saturday":
    "[now comes|coming|is_coming|picks_up|picking_up|picks_it_up|picking_it_up|gets_it|getting_it|wants|wants_it|can_come on|for? next? <day>]",
  "moved: pete is coming sunday instead": "<day> [instead|now]",
  "moved: pete cant do monday, wants thursday":
    "[cant|cannot|cant_do|cant_make|cant_come do|make|come? it? on|in?] <day>",
  "moved: pete cant come till thursday":
    "[cant|cannot|wont|couldnt|cant_come|cant_make|cant_do come|make|get|be|pick|do|it|here|over|by|up|for|back* till|until|before <day>]",
  "week: pete cant come till next week": "[till|until|before next_week]",
  "moved: pete cant do friday, sunday works":
    "cant|cannot|cant_do|cant_make|cant_come … [<day> works|is_better|is_best|would_work|is_good|is_fine]",
  "moved: moved the pickup to wednesday":
    "[moved|changed|pushed|bumped|rescheduled|switched|move|change|push|reschedule|switch the|his|her|their? hold|pickup|pick_up|it? back|out? to|till|until|for next? <day>]",
  "moved: pickup for the bench moved to thursday":
    "pickup|pick_up|collection|handover … [moved|changed|pushed|bumped|rescheduled|switched|is|was|got|been|now* back|up|out? to|till|until|for|now next? <day>]",
  "aside: pickup for the bench moved to thursday, 9am": "[at|around|by|,* <clock>|noon|lunchtime|lunch]",
  "aside: pickup for the bench moved to thursday, im off then":
    "[i|im|we|were am|are? off|free|home|around|available|working then|that_day|by_then?]",
  "aside: pickup for the bench is now friday, tuesday didnt work":
    "[<day> didnt|doesnt|wont|wouldnt|does_not|did_not work|work_out|suit|do for|out? him|her|them|us|me?]",
  "aside: pickup for the bench changed to friday, she has the kids tuesday":
    "[i|he|she|they|we has|have|had|works|work|got|working|is|are late|nights|the|his|her|a|kids|doctor|class|church|shift|appointment* <day>?] ;",
  "fetched: pete got it this morning": "[got it|them] !back|from|for",
  "fetched: neighbor came and got the bench":
    "[came|came_by|came_over|stopped_by|swung_by and|to got|get|grabbed|collect|took|picked_up|pick_up]",
  "fetched: marcy came for the hutch":
    "[came|came_by|came_over|stopped_by|swung_by|here for] <art>? <piece>|it|them",
  "out: pete found another one, gave him the 25 back":
    "[found another|another_one|something_else|one_elsewhere|a_different_one|a_cheaper_one|one_closer|one_cheaper]",
  "out: keeping pete's 25, he never showed":
    "[never|didnt|did_not|hasnt came|come|showed|show|turned|turn|picked|called it? up? back?] !me|us",
  "out: the neighbor passed on the bench": "[passed on it|that|them?]",
  "out: pete is not coming, i kept the 25":
    "[not|isnt|aint|wont_be|wont|cant coming|come|showing|showing_up|show_up|show|gonna_make_it|going_to_make_it|making_it anymore|any_more|after_all?] !on|till|until|today|tomorrow|this|next|<day>",
  "out: pete's deal fell apart, 25 stays with me":
    "[deal|sale|it|that|his_deal|her_deal|their_deal fell_apart|fell_through|fell_thru|died|is_off|off|is_dead|dead|didnt_work_out|didnt_happen|didnt_go_through|went_south|collapsed|is_over|over]",
  "aside: pete is out, keeping the deposit like i told him i would":
    "[like|as i|we told|said|warned|promised|agreed|texted him|her|them|you|we|i|it* would|id|wed|to|was?]",
  "aside: keeping pete's 25, i warned him twice":
    "[i|we|he|she|they|and|was|were|had|did* warned|warn|told|knew|agreed_to|fair_warning|fairly_warned him|her|them|so|once|twice|before|already|enough|the|deal|that|it|rules|terms|how|goes*] ;",
  "aside: pete rang to say he has changed his mind, so i gave him the 25 back":
    "[rang|phoned|called|wrote|texted|emailed|messaged|came|came_by|stopped_by|popped_in me|us|up|in|by|over|and|just* to|and|saying|say|says|said|that say|saying|said|tell|told|me|us|that*]",
  "kept: pete is not getting his 25 back":
    "[not|never|wont|aint gonna|going_to|be* giving|give|sending|send|refunding|returning|getting|get|seeing him|her|them|his|their|the* $ back]",
  "aside: pete let me know he is out, gave him the 25 back": "[let|told|lets|tells me|us know|that*]",
  "out: pete had second thoughts, returned the 25": "[had|having|got|has second thoughts|thought]",
  "aside: pete is out, keeping 10 of the deposit for my trouble":
    "[for my|the|all* trouble|time|troubles|bother|hassle|wasted_time|wait|holding_it|wasting_my_time]",
  "owed: got 10 of the 40 she owes":
    "$ [he|she|they|that|who|which|is|was|still* owes|owed|owe|due|owing me|us?]",
  "aside: pete dropped 10 in my mailbox, 30 to go":
    "[in|at|to|through|thru|under|on|by|into|onto my|the|our* mailbox|door|doormat|porch|mat|hand|hands|house|account|mail|office|envelope|slot|garage|shop|driveway|pocket]",
  "never: pete was told to forget about the last 40":
    "[told|tell|telling|asked to|he|she|they|her|him|them|not_to|not|dont|can|could|should|just* forget|worry|skip|forget_it about|on|over?]",
  "never: writing off the 40 pete owes":
    "[writing|wrote|write|written|chalk|chalking|chalked it|that|this* off|off_as|up_as|up_to|down_as|down_to as|to|a|bad|loss|debt|it*]",
  "never: pete owes 40 and i let him slide":
    "[let|letting him|her|them|it|that|go? slide|off|go|slip|off_the_hook]",
  "never: calling it even with pete on the 40":
    "[calling|call|called it|that|us? even|square|quits|good|settled]",
  "never: gave up on pete's 40":
    "[forgave|forgiving|forgive|waived|waiving|waive|ate|eating|dropping|gave_up_on|giving_up_on|stiffed|stiffing me|us? on|it|out|of*]",
  "never: not gonna see that 40 from pete":
    "[never|not|wont|isnt|aint|doesnt|dont|will_never|not_ever gonna|going_to|be|ever|to* pay|see|get|paying|seeing|getting|paid|collect|cover me|us?]",
  "out: pete no longer wants it": "[no_longer wants|needs|interested]",
  "out: she passed": "she|he|they [passed] ;",
  "out: pete found one he likes better, gave him the 25 back":
    "[found|bought|got one|something|another elsewhere|better|cheaper|closer|bigger|smaller|nicer|somewhere_else|she|he|they|that|likes|like|liked|prefers|suits|fits|at|from|another|a|different|store|shop|better|more*]",
  "out: pete is not gonna take it, gave him the 25 back":
    "[not|isnt|aint|wont|cant|cannot|can_not|couldnt|doesnt|dont|didnt|no_longer gonna|going_to|be|want|able|to* take|taking|buy|buying|get|getting|want|need|afford|fit|swing|keep|wants|needs it|that|them|anymore|any_more|after_all*]",
  "out: gave pete the 25 back, bench is back on the market":
    "[is|its|it_is|back|goes|going|up|now* on_the_market|for_sale|up_for_sale|available|for_grabs|up_for_grabs|relisted again|now*]",
  "out: gave pete 25 back, bench too big for his room":
    "[too|not|wont|wouldnt|didnt|doesnt|cant|bigger|smaller|taller|wider big|small|tall|wide|long|heavy|large|tight|fit|fitting|short|dark|bright|than for|in|through|up|into|on* his|her|their|the|a* room|space|door|doorway|hall|hallway|stairs|stairway|car|truck|van|house|place|apartment|wall|dining_room|living_room|bedroom|kitchen|elevator|dining|living|she|he|they|thought|expected|him|her|them*]",
  "wants: pete took a picture of it":
    "[took|takes|taking|take a|some|another|the? picture|pictures|photo|photos|pic|pics|look|peek|seat|break|measurements|video|chance|card]",
  "wants: pete was here when i came home": "[came|come|coming|got|getting|drove|rode|walked home] !with",
  "wants: pete brought it back": "[brought|carried|took|bringing|hauled it|them|that|<piece> back]",
  "wants: pete cant pay the 40 today":
    "[cant|cannot|couldnt|hasnt|has_not|havent|didnt|wouldnt|yet_to|refuses_to|forgot_to be|able|to|even|yet|still* pay|paid|paying|cover|send|sent|bring|brought|get|come_up_with]",
  "wants: pete is good for the 40": "[is|s|shes|hes|theyre good for]",
  "aside: pete's 60 was taken to make it easy": "[to make it|things|that? easy|easier|simple|simpler|even]",
  "out: pete cant take it, wife said no, gave him the 25 back":
    "[his|her|their? wife|husband|wifes|husbands|mom|roommate|partner|girlfriend|boyfriend|landlord said_no|says_no|said_nope|said_no_way|said_it_wont_fit|vetoed|nixed|hated|hates|didnt_like|doesnt_like|didnt_want no|nope|it|it_wont_fit|no_way*] !to|on|for|today|tomorrow|<day>",
  "out: pete's wife changed her mind, sent the 25 back": "[changed his|her|their mind|minds about|on?]",
  "kept: pete never came back, deposit is mine now":
    "[deposit|money|that|thats|it|its is|was? mine|ours|stays|stays_with_me|stays_here]",
  "kept: pete ghosted on the bench, the 25 he put down is mine now": `$ [${PUT_DOWN}* so|,|and|-* its|it|thats|that? is|stays? mine|ours|with_me|with_us now?]`,
  "aside: pete bailed, shot him back his 25":
    "[slid|shot|tossed|zapped|passed|slipped|fired|threw|beamed him|her|them|em] right|straight? back? his|her|their|the? $|deposit|money",
  "half: dana paid me half":
    "[half of? what|the|her|his|their? he|she|they|rest|balance? owes|owed|owe? me|us?]",
  "owed: 40 of what she owes":
    "[of|toward|towards what|the|her|his he|she|they|rest|balance? owes|owed|owe|balance|rest me|us?]",
  "all: dana paid what she owed": "[what|everything|all he|she|they owes|owed|owe me|us?]",
});

/** What several words beside a name on the books tell together. */
export const settlings = tableOf(ROWS);
