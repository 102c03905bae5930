import { CALLED, JUDGED } from "../words/chatter.ts";
import type { ChatterEffect } from "./doings.ts";
import { rowsOf } from "./row.ts";

/** Denials that deny nothing, opinions that sound like doubts, thanks, cries and openers. */
export const OPINIONS = rowsOf<ChatterEffect>({
  // Denials that deny nothing of the note.
  "chat: nothing like a sunny saturday, sold the crib 40":
    "^ [nothing|nothin like|beats|says|quite_like <art>? <plain>|<new>|<opinion>|<trait>* <day>|<plain>|<new>|<opinion>|<trait>] ;",
  "chat: nothing good on tv, sold the crib 40":
    "^ [nothing|not much|a_lot? new|else|exciting|fancy|special|on_tv|good_on_tv|to_report|going_on|happening here|today|otherwise|at_home|at_work?] ;",
  "chat: no better feeling, sold the crib 40":
    "^ [no better feeling|place|weather|sound|smell|time_than_now|way_to_spend|place_like_home >] ;",
  "chat: no rest for the weary, sold the crib 40":
    "^ [no rest|sleep|coffee|power|heat|internet|wifi|school|church|traffic|complaints|regrets|shame|lie|cap|biggie|wonder|sweat|rush|pressure|clouds|breeze|air|lunch|dinner|breakfast|appetite|energy|voice|filter for? the? weary|wicked|left|today|tonight|again|in_sight|at_all|last_night?] ;",
  "chat: never a dull moment, sold the crib 40":
    "^ [never better|a_dull_moment|a_dull_day|gets_old|fails|too_late|too_old|ceases_to_amaze_me|been_happier|been_prouder|been_so_tired|been_so_happy|been_so_proud|been_better|felt_better|felt_so_old|slept_better|a_quiet_day|a_quiet_moment|met_a_nicer_person|met_nicer_people|met_such_nice_people] ;",
  "chat: not gonna lie, sold the crib 40":
    "^ [im? not gonna_lie|going_to_lie|to_brag|to_complain|complaining|bragging|that_anyone_asked|that_you_asked|that_anyone_cares|that_im_counting|that_it_matters|that_i_mind|that_i_need_more|my_finest_hour|my_best_day|my_day|my_best_work|a_cloud|a_cloud_in_the_sky|for_nothing|feeling_great|feeling_well|feeling_good|feeling_it|feeling_so_hot|feeling_myself|much_sleep|a_morning_person|a_fan|getting_any_younger|as_young_as_i_was|as_young_as_i_used_to_be|too_tired|too_hot|too_cold|too_shabby|enough_coffee|enough_sleep|ashamed|surprised|a_drop_of_rain|a_soul] ;",
  "chat: didnt sleep a wink, sold the crib 40":
    "^ [i|we? didnt|havent|barely|hardly even|really|get? sleep|sleep_a_wink|slept|eat|eaten|ate|nap|rest|rested|stop_all_day|stopped_all_day|sit_down|sat_down|feel_well|feel_great|feel_good|feel_like_cooking|want_to_get_up|want_to_get_out_of_bed|get_much_sleep|any_sleep|much_sleep|enough_sleep|had_my_coffee|had_coffee|had_breakfast|had_lunch|had_a_day_off|have_breakfast|have_lunch|have_coffee|have_my_coffee all_day|all_night|yet|today|since_breakfast|since_lunch|last_night|much|well|at_all?] ;",
  "chat: dont tell my wife, sold the crib 40":
    "^ [i? dont tell|ask|judge|mind|worry|laugh|get_me_started|be_jealous|be_mad|miss_the_cold|miss_winter|feel_great|feel_well|feel_good|sleep|sleep_much|get_out_much <art>? <kin>|me|about_it|anyone|how|why|either|too_hard|boss?] ;",
  "chat: keep forgetting to tell you, sold the crib 40":
    "^ [i|we|so? keep|kept|always|almost|nearly|totally|completely|plumb forget|forgetting|forgot to? tell|telling|say|saying|mention|mentioning|write|text|texting|log|logging|note|send|put you|it|this|that|down|about|all*] ;",
  "chat: before i forget, sold the crib 40":
    "[before i|we|it forget|forgets|slips|crash|pass_out|lose_it|head_out|head_to_bed|go_to_bed|fall_asleep|sleep|collapse|slips_my_mind|lose_track again?] ;",
  "chat: cant remember if i told you, sold the crib 40":
    "^ [i? cant|dont|couldnt|didnt remember|recall|know if|whether i|we|ive told|said|mentioned|sent|texted|wrote you|this|it|that|yet|already*] ;",
  "chat: sold the crib 40 without a hitch":
    "[without a|any|my|much? hitch|fuss|drama|trouble|incident|complaint|issue|issues|problem|problems|coffee|sleep|lunch|breakfast|glasses|breaking_a_sweat|haggling|hassle]",
  "chat: sold the crib 40 instead of watching tv":
    "[instead of sleeping|resting|napping|cooking|cleaning|church|laundry|dinner|lunch|tv|watching_tv|studying|relaxing|going_out|going_to_bed|doing_dishes|doing_laundry]",
  "chat: lost power, sold the crib 40":
    "^ [i|we|just? lost power|internet|wifi|my|our|track|sleep|weight|an_hour voice|mind|keys|glasses|temper|patience|appetite|marbles|way|of_time|over_it|again|today|last_night?] ;",
  // Opinions that sound like doubts.
  "chat: finished the bench i think it turned out great": `[i|we? think|thought|reckon|bet|figure it|they|that|she|he|this|its|theyre|hes|shes turned_out|came_out|come_out|looks|look|looked|is|was|are|were|feels? so|really|pretty|very|just|too|quite|real|absolutely* ${JUDGED}]`,
  "chat: sold the crib 40, not bad if i say so myself":
    "[if i_do_say_so|i_do_say_so_myself|i_say_so_myself|i_may_say_so|you_ask_me|you_can_believe_it|that_makes_sense|you_know_what_i_mean|you_only_knew|only_you_knew]",
  "chat: who would have thought, sold the crib 40":
    "^ [who would|could|wouldve|knew have? thought|guessed|believed|think|guess|imagined|known it|that|this?] ;",
  "chat: told you so, sold the crib 40": "[told you|ya|yall|myself|him|them so|id_do_it|i_would|i_could]",
  "chat: like dad always says, sold the crib 40":
    "[like|as <art>? <kin>|<new>|<person> always|often? says|said|say|used_to_say|put_it|told_me|taught_me] ;",
  "chat: mom says hi, sold the crib 40":
    "[<kin> says|said|sends hi|hello|hey|howdy|her_love|his_love|their_love|im_crazy|im_nuts|i_have_a_problem|enough_already|dinner_is_ready]",
  "chat: mom called, sold the crib 40": `^ [<art>? <kin> just? ${CALLED} again|to_help|to_help_out|to_say_hi|to_visit|for_dinner|for_lunch|for_coffee|with_the_kids|tonight|today|earlier|just_now|in_the_middle|while_i_worked|from_work|from_college?] ;`,
  "chat: bought a piano bench 18 and our son helped me haul it inside":
    "!!him|her|them [<art>? <kin>|<person>|<new> helped|helping|gave me|us|out|a_hand? to? load|carry|haul|lift|move|unload|drag|get|bring|fit|tie|strap|wrap|with it|them|everything|in|inside|up|out|home|into|down|over|onto|on|the|my|our|truck|van|car|house|garage|trailer|basement*] ;",
  "chat: credenza done, pics taken, listed 325 on the board":
    "[pics|photos|pictures|photo|pic are|were|all? taken|done|snapped|shot|edited|up|uploaded|ready|took_forever] ;",
  "chat: got the last coat on and the hutch is done":
    "[finally|just? got|put|slapped|brushed|rolled|laid the|a? last|final|second|third|top|clear* coat|coats on? finally|today?] and|,|so … <~finish>",
  // Thanks, cries and openers.
  "chat: happy to report that the crib is listed at 40":
    "[i|we|im|i_am|am? happy|glad|pleased|proud|sorry|sad|thrilled|excited|delighted|ashamed|embarrassed|honored|relieved|here|regret|hate|loath|pains_me|grieves_me to report|say|announce|tell_you|share|admit|confess|inform_you|let_you_know that?]",
  "chat: i must say, sold the crib 40": "^ [i_must|must|i_have_to|i_gotta say|admit|confess that?]",
  "chat: well, i never! the crib sold for 40": "^ [well|why|oh? i_never] ,|.|!|;",
  "chat: new hardware makes such a difference on the buffet, 52":
    "[makes|made|make|making such|all|quite|a|the|huge|big|my|her|his|our* difference|day|week|morning|weekend]",
});
