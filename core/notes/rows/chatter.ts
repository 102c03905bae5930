import {
  CALLED,
  CRIES,
  FEASTS_COMING,
  FEELS,
  JUDGED,
  LIKED,
  PLACES_OF_LIFE,
  REFRESHED,
  SORE,
  WET,
} from "../words/chatter.ts";
import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";

/** Told of the day: the words in brackets say nothing of the fact, whatever they deny, wish or lose. */
export type ChatterEffect = "chat";

const ROWS: readonly Row<ChatterEffect>[] = [
  // What would have pleased somebody, what one could do for joy.
  [
    `[<art>? <kin>|<person> would|wouldve|wouldnt have|of? so|just|really|absolutely? ${LIKED} <art>? this|that|it|these|those|me|over|for? one|piece|thing|find|color|it?]`,
    "chat",
    "grandma would have loved this one, sold the crib 40",
  ],
  [
    "[<kin> would|will|is|was|be so|very? be? so? proud|happy|thrilled|jealous|tickled|pleased|impressed of|with|for|about? me|us|this|that|it?] ;",
    "chat",
    "dad would be proud, sold the crib 40",
  ],
  [
    `^ [i|we could|can|might|may|would|should|wanna|want_to|just? have|of|just|about|still? ${FEELS} >] ;`,
    "chat",
    "i could cry, trashed the crib",
  ],
  [
    `[could|can|would|sure|really|honestly use|kill_for|go_for|do_with <art>? more|hot|cold|strong|long|good|nice|big|second|stiff* ${REFRESHED}]`,
    "chat",
    "could use a nap, sold the crib 40",
  ],
  [
    `^ [i|we? still|really|so? need|needed|want|wanted <art>? more|hot|cold|strong|long|good|nice|big|second|stiff* ${REFRESHED} now|after_that|so_bad|badly|desperately?] ;`,
    "chat",
    "need a nap, sold the crib 40",
  ],
  [
    "[cant|couldnt|cannot be_happier|be_prouder|be_more_pleased|be_any_happier|complain|sleep|resist|stop_smiling|stop_laughing|stop_sneezing|stop_looking|stop_staring|keep_up|keep_my_eyes_open|feel_my_arms|feel_my_legs|feel_my_hands|feel_my_feet|feel_my_fingers|feel_my_back|breathe|care_less|agree_more|think_straight|see_straight|get_warm|get_enough|win_them_all|beat_that|help_myself|move|stand_up|hear_myself_think|wait_for_bed|wait_for_spring|wait_for_summer|wait_for_dinner] ;",
    "chat",
    "cant feel my arms, sold the crib 40",
  ],
  [
    "[still? cant|couldnt|cannot|can_you even|still? believe|get_over] i|we|it|the|this|that|my|our|how|someone|somebody",
    "chat",
    "cant believe i got 40 for the crib",
  ],
  // Denials that deny nothing of the note.
  [
    "^ [nothing|nothin like|beats|says|quite_like <art>? <plain>|<new>|<opinion>|<trait>* <day>|<plain>|<new>|<opinion>|<trait>] ;",
    "chat",
    "nothing like a sunny saturday, sold the crib 40",
  ],
  [
    "^ [nothing|not much|a_lot? new|else|exciting|fancy|special|on_tv|good_on_tv|to_report|going_on|happening here|today|otherwise|at_home|at_work?] ;",
    "chat",
    "nothing good on tv, sold the crib 40",
  ],
  [
    "^ [no better feeling|place|weather|sound|smell|time_than_now|way_to_spend|place_like_home >] ;",
    "chat",
    "no better feeling, sold the crib 40",
  ],
  [
    "^ [no rest|sleep|coffee|power|heat|internet|wifi|school|church|traffic|complaints|regrets|shame|lie|cap|biggie|wonder|sweat|rush|pressure|clouds|breeze|air|lunch|dinner|breakfast|appetite|energy|voice|filter for? the? weary|wicked|left|today|tonight|again|in_sight|at_all|last_night?] ;",
    "chat",
    "no rest for the weary, sold the crib 40",
  ],
  [
    "^ [never better|a_dull_moment|a_dull_day|gets_old|fails|too_late|too_old|ceases_to_amaze_me|been_happier|been_prouder|been_so_tired|been_so_happy|been_so_proud|been_better|felt_better|felt_so_old|slept_better|a_quiet_day|a_quiet_moment|met_a_nicer_person|met_nicer_people|met_such_nice_people] ;",
    "chat",
    "never a dull moment, sold the crib 40",
  ],
  [
    "^ [im? not gonna_lie|going_to_lie|to_brag|to_complain|complaining|bragging|that_anyone_asked|that_you_asked|that_anyone_cares|that_im_counting|that_it_matters|that_i_mind|that_i_need_more|my_finest_hour|my_best_day|my_day|my_best_work|a_cloud|a_cloud_in_the_sky|for_nothing|feeling_great|feeling_well|feeling_good|feeling_it|feeling_so_hot|feeling_myself|much_sleep|a_morning_person|a_fan|getting_any_younger|as_young_as_i_was|as_young_as_i_used_to_be|too_tired|too_hot|too_cold|too_shabby|enough_coffee|enough_sleep|ashamed|surprised|a_drop_of_rain|a_soul] ;",
    "chat",
    "not gonna lie, sold the crib 40",
  ],
  [
    "^ [i|we? didnt|havent|barely|hardly even|really|get? sleep|sleep_a_wink|slept|eat|eaten|ate|nap|rest|rested|stop_all_day|stopped_all_day|sit_down|sat_down|feel_well|feel_great|feel_good|feel_like_cooking|want_to_get_up|want_to_get_out_of_bed|get_much_sleep|any_sleep|much_sleep|enough_sleep|had_my_coffee|had_coffee|had_breakfast|had_lunch|had_a_day_off|have_breakfast|have_lunch|have_coffee|have_my_coffee all_day|all_night|yet|today|since_breakfast|since_lunch|last_night|much|well|at_all?] ;",
    "chat",
    "didnt sleep a wink, sold the crib 40",
  ],
  [
    "^ [i? dont tell|ask|judge|mind|worry|laugh|get_me_started|be_jealous|be_mad|miss_the_cold|miss_winter|feel_great|feel_well|feel_good|sleep|sleep_much|get_out_much <art>? <kin>|me|about_it|anyone|how|why|either|too_hard|boss?] ;",
    "chat",
    "dont tell my wife, sold the crib 40",
  ],
  [
    "^ [i|we|so? keep|kept|always|almost|nearly|totally|completely|plumb forget|forgetting|forgot to? tell|telling|say|saying|mention|mentioning|write|text|texting|log|logging|note|send|put you|it|this|that|down|about|all*] ;",
    "chat",
    "keep forgetting to tell you, sold the crib 40",
  ],
  [
    "[before i|we|it forget|forgets|slips|crash|pass_out|lose_it|head_out|head_to_bed|go_to_bed|fall_asleep|sleep|collapse|slips_my_mind|lose_track again?] ;",
    "chat",
    "before i forget, sold the crib 40",
  ],
  [
    "^ [i? cant|dont|couldnt|didnt remember|recall|know if|whether i|we|ive told|said|mentioned|sent|texted|wrote you|this|it|that|yet|already*] ;",
    "chat",
    "cant remember if i told you, sold the crib 40",
  ],
  [
    "[without a|any|my|much? hitch|fuss|drama|trouble|incident|complaint|issue|issues|problem|problems|coffee|sleep|lunch|breakfast|glasses|breaking_a_sweat|haggling|hassle]",
    "chat",
    "sold the crib 40 without a hitch",
  ],
  [
    "[instead of sleeping|resting|napping|cooking|cleaning|church|laundry|dinner|lunch|tv|watching_tv|studying|relaxing|going_out|going_to_bed|doing_dishes|doing_laundry]",
    "chat",
    "sold the crib 40 instead of watching tv",
  ],
  [
    "^ [i|we|just? lost power|internet|wifi|my|our|track|sleep|weight|an_hour voice|mind|keys|glasses|temper|patience|appetite|marbles|way|of_time|over_it|again|today|last_night?] ;",
    "chat",
    "lost power, sold the crib 40",
  ],
  [
    "^ [<art>? team|boys|girls|home_team|kids_team won|lost|played|tied again|today|tonight|last_night|in_overtime|big?] ;",
    "chat",
    "the team lost again, sold the crib 40",
  ],
  // Wishes and plans of the day.
  [
    "^ [hope|hoping|trust youre|you|yall|everyones|everyone|everybody are|is|had|have|having|all|a|an|doing|feeling* well|good|great|nice|fun|lovely|fine|okay|ok|safe|healthy|better|warm|dry day|night|week|weekend|time|holiday|one|trip|vacation|out_there|too|and_well|today?] ;",
    "chat",
    "hope you had a good weekend, sold the crib 40",
  ],
  [
    "^ [hope|hoping|trust all_is_well|alls_well|the_family_is_well|this_finds_you_well|the_kids_are_well|mom_is_well|moms_well] ;",
    "chat",
    "hope all is well, sold the crib 40",
  ],
  [
    "^ [have|happy|merry a? good|great|nice|lovely|blessed|wonderful|super|safe|fun? day|night|evening|weekend|week|morning|afternoon|one|birthday|easter|christmas|xmas|halloween|thanksgiving|new_year|new_years|holidays|anniversary|<day> everyone|everybody|yall|to_all|to_me|to_you|to_us|bot?] ;",
    "chat",
    "happy easter, sold the crib 40",
  ],
  [
    "^ [i|we|well? gotta|have_to|need_to|got_to|time_to|off_to|better run|jet|dash|go|eat|cook|sleep|rest|nap|scoot|skedaddle|feed_the_dog|feed_the_dogs|feed_the_kids|feed_the_cat|walk_the_dog|make_dinner|cook_dinner|fix_dinner|make_lunch|start_dinner|fold_laundry|do_laundry|do_the_dishes|mow|mow_the_lawn|pray|stretch|ice_my_back|take_a_nap|take_a_bath|take_a_shower|go_home|go_to_bed|get_home|get_the_kids|get_to_bed|get_some_sleep|celebrate|relax|lie_down|sit_down|put_my_feet_up|get_up_early|get_up|work_early|work_late now|tonight|tomorrow|early|soon|later|again|today?] ;",
    "chat",
    "gotta run, sold the crib 40",
  ],
  [
    "^ [im|i_am? gonna|about_to|going_to eat|sleep|nap|pass_out|fall_asleep|fall_over|keel_over|cry|scream|celebrate|brag|vent|take_a_nap|take_a_bath|take_a_shower|lie_down|make_dinner|go_to_bed now|tonight|well?] ;",
    "chat",
    "about to fall asleep, sold the crib 40",
  ],
  [
    `^ [i|we|im|just? going|went|headed|heading|off|back|came|got|getting|ran|running|on_my_way|on_our_way|stopped|swung|late|early|running_late|driving|walked|walking by|out|home|back|over|up|in? to|from|for|at|through|after|before ${PLACES_OF_LIFE} now|early|late|today|tonight|this_morning|earlier|with_the_kids|with_mom|again?] ;`,
    "chat",
    "running late for church, sold the crib 40",
  ],
  [
    `[on the|my|our? way back|home|over|up? to|from|home_from ${PLACES_OF_LIFE}]`,
    "chat",
    "on the way to work i bought a stool 9",
  ],
  [
    "[on the|my|our? way home|in|out|over|there] $|<~buy>|;|i|we",
    "chat",
    "on the way home i bought a stool 9",
  ],
  [
    `^ [i|we|im|ill|well|will|gonna|going_to|were will|am|are|be|going_to|gonna* so|really|pretty|very? ${SORE} tomorrow|tonight|later|for_days|for_a_week|all_week|good|well|night|day|evening|one|like_a_baby|like_a_rock|like_a_log|it|in_the_morning*] ;`,
    "chat",
    "gonna be sore tomorrow, sold the crib 40",
  ],
  [
    `^ [its|it|forecast|radio|weatherman|news|looks|they? supposed|about|gonna|going|might|may|will|should|could|says|said|calls|calling|like|is|call* to|for|its|gonna* ${WET} >] ;`,
    "chat",
    "supposed to rain, sold the crib 40",
  ],
  [
    `[<art>? ${FEASTS_COMING} is|are|was|will|its? almost|nearly|finally|just|all|soon? be|back? coming_up|coming|arriving|around_the_corner|almost_here|here|over|nearly_here|on_its_way|starting|starts|started|almost_over]`,
    "chat",
    "since the fair is coming up i dropped the crib to 40",
  ],
  [
    "^ [company|guests|relatives|in_laws|inlaws|grandkids|grandbabies|mom|dad|sister|brother|everyone|family is|are? all? coming_over|coming_to_town|coming_to_visit|coming_for_dinner|coming_for_lunch|coming_to_dinner|coming_home|coming|visiting|in_town|here to_dinner|for_dinner|for_lunch|for_the_weekend|tonight|tomorrow|soon|next_week|<day>|this_weekend?] ;",
    "chat",
    "company coming for dinner, sold the crib 40",
  ],
  [
    "[think|might|may|could|must|im|feel be|im|i|like? coming_down_with|getting|catching something|a_cold|the_flu|sick|old|too_old|soft]",
    "chat",
    "might be getting sick, sold the crib 40",
  ],
  // Opinions that sound like doubts.
  [
    `[i|we? think|thought|reckon|bet|figure it|they|that|she|he|this|its|theyre|hes|shes turned_out|came_out|come_out|looks|look|looked|is|was|are|were|feels? so|really|pretty|very|just|too|quite|real|absolutely* ${JUDGED}]`,
    "chat",
    "finished the bench i think it turned out great",
  ],
  [
    "[if i_do_say_so|i_do_say_so_myself|i_say_so_myself|i_may_say_so|you_ask_me|you_can_believe_it|that_makes_sense|you_know_what_i_mean|you_only_knew|only_you_knew]",
    "chat",
    "sold the crib 40, not bad if i say so myself",
  ],
  [
    "^ [who would|could|wouldve|knew have? thought|guessed|believed|think|guess|imagined|known it|that|this?] ;",
    "chat",
    "who would have thought, sold the crib 40",
  ],
  ["[told you|ya|yall|myself|him|them so|id_do_it|i_would|i_could]", "chat", "told you so, sold the crib 40"],
  [
    "[like|as <art>? <kin>|<new>|<person> always|often? says|said|say|used_to_say|put_it|told_me|taught_me] ;",
    "chat",
    "like dad always says, sold the crib 40",
  ],
  [
    "[<kin> says|said|sends hi|hello|hey|howdy|her_love|his_love|their_love|im_crazy|im_nuts|i_have_a_problem|enough_already|dinner_is_ready]",
    "chat",
    "mom says hi, sold the crib 40",
  ],
  [
    `^ [<art>? <kin> just? ${CALLED} again|tonight|today|earlier|just_now|in_the_middle|while_i_worked|from_work|from_college?] ;`,
    "chat",
    "mom called, sold the crib 40",
  ],
  [
    "[<kin> keeps|kept|keep|wont_stop asking|bugging|begging|hounding|pestering me? about|for] … <hold>",
    "chat",
    "my cousin keeps asking about it so im holding the lamp for her",
  ],
  [
    "[<art>? <kin>|<person>|<new> helped|helping|gave me|us|out|a_hand? to? load|carry|haul|lift|move|unload|drag|get|bring|fit|tie|strap|wrap|with it|them|everything|in|inside|up|out|home|into|down|over|onto|on|the|my|our|truck|van|car|house|garage|trailer|basement*] ;",
    "chat",
    "bought a piano bench 18 and our son helped me haul it inside",
  ],
  [
    "[pics|photos|pictures|photo|pic are|were|all? taken|done|snapped|shot|edited|up|uploaded|ready|took_forever] ;",
    "chat",
    "credenza done, pics taken, listed 325 on the board",
  ],
  // Losses, falls and gifts of the day.
  [
    "[almost|nearly|about? fell|falling|dozed|nodded|drifted|passed asleep|to_sleep|off_to_sleep|out_cold] ;",
    "chat",
    "almost fell asleep, sold the crib 40",
  ],
  [
    "[almost|nearly|about|just_about cried|died|fainted|tripped|fell|fell_over|fell_out|melted|froze|drowned|choked|dropped_my_coffee|dropped_my_phone|killed_me|killed_my_back|did_me_in|broke_my_back|broke_my_toe|cost_me_a_toe] ;",
    "chat",
    "nearly cried, sold the crib 40",
  ],
  [
    "[took|taking|take|had|having a|my|the|another|me? quick|short|long|nice|little|good|much_needed|whole|cold|hot? nap|walk|break|breather|bath|shower|morning_off|afternoon_off|day_off|week_off|sick_day|tumble|selfie|deep_breath|forever|ages|dog|dogs|kids|baby|stroll|vacation|bow for|out|to|with|off? a|the? walk|park|school|practice|church|vet|doctor|dentist|beach|movies|lake|zoo|dog|dogs|kids?] ;",
    "chat",
    "took the dog for a walk, sold the crib 40",
  ],
  [
    "^ [i|we|just|finally? put|putting|got|getting|tucked <art>? kids|kid|baby|babies|twins|toddler|dog|dogs|little_one|girls|boys down|in|to|up|off|out|to_bed|to_sleep|to_school|for_a_nap|for_the_night|on_the_bus|fed|bathed|dressed|early|already*] ;",
    "chat",
    "got the kids to bed, sold the crib 40",
  ],
  [
    "^ [i|we|just|finally? put|putting|got|getting|have|had <art>? pot|kettle|dinner|supper|roast|coffee|music|radio|some_music|an_old_record|laundry|chili|soup|stew|pasta|lasagna of? chili|soup|stew|coffee|tea|beans|sauce|pasta? on|in|going|started|in_the_oven|on_the_stove|brewing|simmering] ;",
    "chat",
    "put a pot of chili on, sold the crib 40",
  ],
  [
    "^ [i|we|im|was|just|finally|stayed|woke|waking|got|getting|been|stuck|caught|up|home am|been|was|got|stayed|woke|stuck|caught|all|really|so* up|home|in_traffic|in_the_rain|at_a_train|at_the_light|at_work|soaked|drenched|stuck|sunburned|sunburnt|rained_on|snowed_in|sick|a_late_start|an_early_start|no_sleep|too_much_sun|some_sun|lucky|carried_away|distracted|sidetracked|turned_around|caught early|late|at_dawn|with_the_sun|before_dawn|all_night|in_traffic|in_the_rain|in_a_storm|in_a_downpour|in_the_snow|from_work|from_church|with_the_baby|again|today|tonight|for_hours|behind_a_tractor|at_a_train|at_the_light*] ;",
    "chat",
    "stuck in traffic, sold the crib 40",
  ],
  [
    "[spent|spend|spending|wasted <art>? whole|entire|better_part_of_the|rest_of_the|all|most_of_the? morning|afternoon|evening|day|night|weekend listening|watching|talking|chatting|visiting|reading|singing|cooking|baking|gardening|laughing|relaxing|napping|daydreaming|catching_up to|at|with|in|on? >]",
    "chat",
    "spent the evening listening to old records and waxing the sideboard 2 hours",
  ],
  [
    "^ [my|our|the phone|battery|internet|wifi|tv|computer|laptop|car|oven|fridge|washer|dryer|furnace|ac|air_conditioner|power|alarm|radio|mower just|almost|has|is? died|quit|froze|crashed|broke|went_out|dead|out|on_the_fritz|wont_start|wont_charge|acted_up|acting_up|conked_out|blew_up|kept_ringing|kept_buzzing|rang|went_off at_the_worst_moment|at_the_worst_time|again|on_me|this_morning|halfway|today|all_day?] ;",
    "chat",
    "my phone died at the worst moment, sold the crib 40",
  ],
  [
    "^ [i|we|just? burned|burnt|spilled|spilt|dropped|skipped|forgot|missed|made|cooked|fixed|ate|had|having|eating|making|cooking my|the|our|some|a|his|her? first|second|big|nice|quick|late|early|hot? dinner|lunch|breakfast|supper|brunch|toast|coffee|tea|cookies|cake|pie|soup|stew|chili|pizza|tacos|sandwich|snack|roast|phone|toe|bus|church|nap|beer|pancakes|waffles|ice_cream with|for|on|over|after|at? <art>|<kin>|<new>|friend|friends|family|neighbor|neighbors* today|tonight|earlier?] ;",
    "chat",
    "had coffee with my sister, sold the crib 40",
  ],
  [
    "^ [<art>? dinner|lunch|supper|roast|coffee|toast|pizza|breakfast|cake|chicken|chili|soup|bread is|was|are|got|went|almost|nearly? burned|burnt|cold|ready|late|delicious|waiting|calling|in_the_oven|on_the_stove|simmering|burning|overcooked|amazing|terrible while|when|as|after? >] ;",
    "chat",
    "dinner burned while i was at it, sold the crib 40",
  ],
  [
    "^ [i|we|just? ran|bumped|running|bumping into my|our|an|the|some|a? old|sweet|dear|former? boss|teacher|coach|pastor|friend|friends|neighbor|neighbors|coworker|classmate|classmates|cousin|roommate|landlord|ex|preacher|priest|principal|doctor|dentist|mailman|buddy|<new> >] ;",
    "chat",
    "ran into my old boss, sold the crib 40",
  ],
  [
    "gas|diesel|lumber|parking|paint|wood|fabric [prices? is|are|gets|keeps|keep just? getting_worse|worse|insane|crazy|nuts|unreal|brutal|out_of_control|bonkers|ridiculous|a_racket|robbery|highway_robbery|too_much all_the_time|every_day|every_week|lately|these_days?]",
    "chat",
    "gas gets worse all the time, 47 today",
  ],
  // Thanks, cries and openers.
  [
    "^ [big|many|huge|special|lots_of|a_million|so_much? thanks|thank|shoutout|shout_out|kudos|hats_off|bless|god_bless to|for|you|the|my|our|her|his|him|them > about_it|about_this|about_that|about_them?] ;",
    "chat",
    "big thanks to my neighbor for telling me, sold the crib 40",
  ],
  [
    "^ [here|there|off|away i|we|it? goes|go|am|are|is|you_go again|nothing|now?] ;",
    "chat",
    "here goes, sold the crib 40",
  ],
  [
    "^ [good|great|sweet|holy|oh|what|my|dear grief|heavens|gracious|lord|god|golly|gravy|cow|moly|smokes|goodness|word|stars|lands|mercy me?] ;",
    "chat",
    "good grief, sold the crib 40",
  ],
  [
    "[happy|glad|pleased|proud|sorry|sad|thrilled|excited|delighted|ashamed|embarrassed|honored|relieved|here to report|say|announce|tell_you|share|admit|confess|inform_you|let_you_know that?]",
    "chat",
    "happy to report that the crib is listed at 40",
  ],
  [
    "^ [funny|weird|crazy|strange|wild|nuts|amazing|life how_that_works|how_it_works_out|how_things_work_out|how_things_go|how_life_works|old_world|small_world|story|day] ;",
    "chat",
    "funny how things work out, sold the crib 40",
  ],
  [
    "[makes|made|make|making such|all|quite|a|the|huge|big|my|her|his|our* difference|day|week|morning|weekend]",
    "chat",
    "new hardware makes such a difference on the buffet, 52",
  ],
  [
    "^ [it|its|is|was? was|is? as? hot|cold|dark|late|early|quiet|loud|humid|windy|wet|dry|tired|busy|happy as >] ;",
    "chat",
    "its hot as blazes, sold the crib 40",
  ],
  [
    "[nice|warm|cool|dry|hot|cold|late|early enough to|for work|be|sit|sand|paint|walk outside|out|outdoors] ;",
    "chat",
    "nice enough to work outside, sold the crib 40",
  ],
  [
    "[i|we finally|just|totally? caved|caved_in|gave_in|broke_down|bit_the_bullet|went_for_it|pulled_the_trigger|took_the_plunge|swallowed_my_pride and]",
    "chat",
    "i finally caved and lowered the crib by 40",
  ],
  [
    `^ [like|such|what|you|still|being|i|im|is|its|this|that|hes|shes|a|an|the|such|total|absolute|real* ${CRIES}] ;`,
    "chat",
    "what a sweetheart, sold the crib 40",
  ],
  [
    "[prices|price|inflation|economy|traffic|weather|heat|cold|humidity|wind|rain|bugs|mosquitoes|pollen these_days|nowadays|i_tell_you|is|are|gets|keeps|keep|just* killing_me|insane|crazy|nuts|unreal|brutal|out_of_control|bonkers|getting_worse|worse|something_else|wild|murder all_the_time|every_day|every_week|lately|these_days|out_there?] ;",
    "chat",
    "this heat is killing me, sold the crib 40",
  ],
];

export const chatter = tableOf(ROWS);
