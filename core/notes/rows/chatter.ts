import { BODY, CALLED, CRIES, FEELS, JUDGED, LIKED, REFRESHED } from "../words/chatter.ts";
import { type ChatterEffect, DOINGS } from "./doings.ts";
import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";

/** What people say of the day, of others and of themselves, and what they cry out. */
const ROWS: readonly Row<ChatterEffect>[] = [
  [
    "^ [i_swear|swear <art>? !<piece> <any> <any>? will|is|was|gonna|going_to|is_gonna|is_going_to* be? the|my death|end|ruin of_me|of_us?] ,|.|!|;",
    "chat",
    "i swear this job will be the death of me, sold the crib 40",
  ],
  [
    "[,|and|but|. i|we? didnt|didnt_even|did_not|dont|never even? have|had|need|needed to carry|load|lift|haggle|move|help|deliver|leave|wait|clean|fix|touch|do|drive|budge|negotiate >] ;",
    "chat",
    "sold the crib 40 and i didnt even have to carry it",
  ],
  [
    "^ [well|so|oh|ok* that|this|it|thats|its was|is? so|really|super|very|just|kinda|a|pretty* awkward|weird|fun|fast|quick|easy|painful|rough|wild|crazy|close|intense|annoying|stressful|interesting|funny|unexpected|painless one|call? but|and he|she|they paid|bought_it|showed|came] .|,|!",
    "chat",
    "well that was awkward but he paid. sold the crib 40",
  ],
  [
    "^ [well|so|oh|ok* that|this|it|thats|its was|is? so|really|super|very|just|kinda|a|pretty* awkward|weird|fun|fast|quick|easy|painful|rough|wild|crazy|close|intense|annoying|stressful|interesting|funny|unexpected|painless one|call?] .|,|!",
    "chat",
    "well that was easy. sold the crib 40",
  ],
  [
    "^ [im? standing|waiting|stuck|sitting|parked in|at|outside|by <art>? <any> <any>? at|of|in? <art>? <place>? so|and|but] <any>",
    "chat",
    "standing in line at the hardware store so before i forget, paint 13.20",
  ],
  [
    "[oh|and|also* i|we? never|forgot_to|didnt|havent|totally_forgot_to|should_have log|logged|record|recorded|write|wrote|note|noted|text|texted|tell|told|enter|entered|put|mention|mentioned|add|added|report you|u|it|this|that|these|those|about|down|in|on_here|yet|before|earlier*] ,|:|-|.",
    "chat",
    "oh i never logged this, gas 32",
  ],
  [
    "^ [so|really|super|very|im|pretty* proud of <kin>|him|her|them|us|me|myself|<person>] ,|.|!",
    "chat",
    "so proud of mom, paint 13.20",
  ],
  [
    "[just? to be_done|be_rid|get_rid|be_shut|get_it_over|get_done|get_it_done|be_over|get_it_out with|of|over it|that|them|with?] !<piece>",
    "chat",
    "let the crib go for 65 just to be done with it",
  ],
  [
    "[im|i_am|so|just|really* sick|tired|done_with of? looking|staring|messing|working|seeing|dealing|fighting at|on|with|it* it|her|that|this|them?] ;",
    "chat",
    "calling the crib done, im sick of looking at it",
  ],
  [
    "^ [took|snapped|got|grabbed some|new|the|its|good|better|a_few* pics|pictures|photos|pic|photo] ;",
    "chat",
    "took pics, sold the crib 40",
  ],
  [
    "^ [<art>? <person>|he|she|they|buyer|both_of_us|we loaded|carried|hauled|moved|lifted|wrestled it|them|that up|out|down|in? himself|herself|themselves|by_himself|by_herself|by_hand|together|upstairs|downstairs|alone] ;",
    "chat",
    "sold the crib 40, guy loaded it himself",
  ],
  [
    "[<art>? <kin>|<person>|<word> is|are|were|was|kept? driving|drives|drove me|us nuts|crazy|insane|batty|mad|bonkers|up_the_wall]",
    "chat",
    "kids are driving me nuts, paint 13.20",
  ],
  [
    "^ [<plain>|<opinion>|<trait>|<new>|bills|loan|market|laundry|paint|long|slow|<word> day] ,|.|:|!|-",
    "chat",
    "bills day.. paid 190 on the car loan",
  ],
  [
    "^ [curb_alert|curb_shopping|curb_watching|patience|persistence|early_start|waiting|haggling paid_off|pays_off]",
    "chat",
    "curb alert paid off: free rocker",
  ],
  ["^ [payday|pay_day] !on|for", "chat", "payday! 250 to the loan"],
  [
    "[and|so? thats|that_is|thats_it|that_was all|it|everything|the_lot? for|from now|today|tonight|me|us?] ;",
    "chat",
    "gloves 6.25, that's all for today",
  ],
  ["^ [too|so many|much !$ <any> <word>?] ;", "chat", "hutch is now 225, too many lowballers"],
  [
    "^ [i|we? went_to_the_dump|went_to_dump] ,|.|and",
    "chat",
    "went to the dump, fee 12, tossed the recliner",
  ],
  [
    "^ [i|we just|totally|really|instantly|kinda? fell|fell_in_love in_love|in? love? with? it|this|them|her?] ;",
    "chat",
    "wife found a buffet for 90 and i fell in love",
  ],
  // How it went, and why something was needed.
  [
    "^ [it? took|ran|was? way|much|a_lot|lot|a_bit|bit|far|a_little|little* longer|more|less|faster|quicker|harder|shorter|easier|heavier|worse|better than i|we|it? thought|expected|planned|figured|hoped|bargained_for] ;",
    "chat",
    "2h on the crib, way longer than i thought",
  ],
  [
    "^ [the|my|our? old one|ones|pair|set|can|blade|brush? died|broke|quit|gave_out|wore_out|fell_apart|went_bad|dried_out|dried_up|was|were|is|are shot|dead|junk|toast|worn_out|dull?] ;",
    "chat",
    "sander 59, old one died",
  ],
  ["^ [next one|up|item|thing? is|was?] ,|:|-|. <any>", "chat", "next one, sold the crib 40"],
  [
    "^ [im? dictating|typing|texting|writing|talking this? while|as i|im? drive|driving|walk|walking|cook|cooking|eat|eating|wait|waiting|load|loading]",
    "chat",
    "dictating while i drive, bought two chairs 20",
  ],
  [
    "^ [<art>? seller|owner|lady|man|woman|guy|couple|family|people|folks|they|he|she was|were so|very|super|really|just|such|a|the* nice|sweet|kind|lovely|friendly|nicest|sweetest|sweetheart|delight|gem lady|man|guy|person|people|couple?] ,|.|!|-|and|so",
    "chat",
    "the seller was so nice, bought the wingback for 25",
  ],
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
    "[cant|couldnt|cannot be_happier|be_prouder|be_more_pleased|be_any_happier|be_prouder_of_this_one|be_happier_with_it|be_prouder_of_it|be_prouder_of_myself|complain|sleep|resist|stop_smiling|stop_laughing|stop_sneezing|stop_looking|stop_staring|keep_up|keep_my_eyes_open|feel_my_arms|feel_my_legs|feel_my_hands|feel_my_feet|feel_my_fingers|feel_my_back|breathe|care_less|agree_more|think_straight|see_straight|get_warm|get_enough|win_them_all|beat_that|help_myself|move|stand_up|hear_myself_think|wait_for_bed|wait_for_spring|wait_for_summer|wait_for_dinner|stop_coughing|stop_yawning|stop_crying|stop_grinning|stop_humming|stop_shivering from|from_all_the|with|all_the|because_of? <art>? <new>|<plain>|<opinion>*] ;",
    "chat",
    "cant feel my arms, sold the crib 40",
  ],
  [
    "[still? cant|couldnt|cannot|can_you even|still? believe|get_over] i|we|it|the|this|that|my|our|how|someone|somebody",
    "chat",
    "cant believe i got 40 for the crib",
  ],
  [
    "^ [<kin>|we|i|<art>? <kin> used_to have|had|own|love|like? one just|exactly? like|of it|this|these|that|those|one?] ;",
    "chat",
    "grandpa used to have one just like it, bought a desk 80",
  ],
  [
    "^ [you|yall|youll|nobody|no_one|would_you|wouldnt|who never? wont|will|would|wouldnt|gonna|never|you? believe|guess|know it|this|that|what|how? heat|weather|luck|day|traffic|mess?] ;",
    "chat",
    "yall wont believe this, sold the crib 40",
  ],
  [
    "^ [call|color|consider me crazy|lucky|nuts|happy|impressed|tired|old|silly|old_fashioned]",
    "chat",
    "call me crazy, bought a dresser 45",
  ],
  [
    "^ [guess who|whos|what? is|has|s? back|at_it|up|here|in_town|tired|happy at_it|again|early|late*] ;",
    "chat",
    "guess whos back at it, bought a dresser 40",
  ],
  [
    "^ [wish|wished|wishing i|we|you|yall could_see|were_here|was_there|had_been_there|could_have_seen|was_younger|were_younger|had_a_nap|was_in_bed|was_on_vacation it|this|that|them?] ;",
    "chat",
    "wish you could see it, finished the vanity",
  ],
  [
    "^ [if i had a|another nickel|dime|dollar|penny for every|each >] ;",
    "chat",
    "if i had a nickel for every scratch, 45 min on the table",
  ],
  [
    "^ [i_should|should be|have|really|probably* cleaning|cooking|napping|sleeping|resting|in_bed|working|mowing|packing|studying|grading|folding|doing|cleaned|slept the|my|some? laundry|dishes|kitchen|house|garage|lawn|papers|taxes|homework|floors|bathroom?] ,|;|but|instead",
    "chat",
    "i should be cleaning the kitchen, instead i sanded the crib 45 min",
  ],
  [
    "^ [dont ask|even_ask how|why|me? i|we? fit|got|did|made|managed it|this|that? in|into|up|to|home? the? car|van|truck|hatchback|stairs|trunk?] ;",
    "chat",
    "dont ask how i fit it in the car, bought a desk 60",
  ],
  [
    "^ [it|this|that|something never fails|gets_old|gets_easier] ;",
    "chat",
    "it never fails, sold the crib 40",
  ],
  ["^ [knock|knocking|touch on? wood >] ;", "chat", "knock on wood the weather holds, listed the crib 40"],
  [
    `[omg|ugh|oof|ow|ouch|whew|phew|boy|man|god|lord|dang|and* my|our poor|aching|tired|old|sore|aging* ${BODY} now|today|tonight|tho|lol?] ;`,
    "chat",
    "sanded the crib 3 hours omg my arms",
  ],
  [
    `[omg|ugh|oof|ow|ouch|whew|phew|boy|man|god|lord|dang|and|but* my|our|the? poor|aching|tired|old? ${BODY} are|is|really|so|just* hurt|hurts|ache|aches|aching|burn|burns|burning|sore|tired|shot|raw|numb|toast|fried|jelly|noodles|killing_me|screaming|done_for|on_fire now|today|tonight|tho|lol?] ;`,
    "chat",
    "3 hours on the crib and boy my feet hurt",
  ],
  [
    "^ [my|our back|knees|hands|arms|feet|legs|shoulders|neck|fingers|eyes|head is|are|hurts|hurt|ache|aches|smell|smells|feel|feels|look|looks >] ;",
    "chat",
    "my hands smell like stain, 90 min on the crib",
  ],
  [
    "^ [<art>? doc|doctor|dentist|vet|teacher|coach|pastor|preacher|boss says|said|swears|thinks|told_me|told_us|went_on >] ;",
    "chat",
    "doc says my back is fine, 30 min on the crib",
  ],
  [
    "^ [gotta|have_to|got_to|must|i|gotta_just|let_me say|admit|confess|tell_you|brag|mention] ;",
    "chat",
    "gotta say, sold the crib 40",
  ],
  [
    "^ [note|quick_note|texting|typing|writing|checking_in|reporting|live|sitting|sat|lying|relaxing|resting|greetings|hello|chilling|lounging from|on|in|at|by the|my|our|a? <piece> with|and? tea|coffee|wine|beer|lemonade|a_beer|a_book|the_cat|the_dog|my_feet_up?] ;",
    "chat",
    "quick note from the couch, sold the rug 25",
  ],
  [
    "[still|only|already? half asleep|awake|frozen|melted|dead]",
    "chat",
    "still half asleep, listed the crib 40",
  ],
  [
    "[<art>? <kin>|baby|babies|grandbabies|grandkids|twins|toddler|toddlers|kiddos|little_ones is|are finally|already|both|all? down for_a_nap|for_naps|for_their_nap|for_their_naps|for_her_nap|for_his_nap|for_the_night|asleep]",
    "chat",
    "the twins are down for a nap, sold the crib 40",
  ],
  [
    "[keeps|kept|keep knocking|barking|crying|ringing|buzzing|raining|snowing|jumping|climbing|begging|chewing|bugging|interrupting|talking|coughing|sneezing|whining|yelling|singing|laughing over|on|at|in|for|me|us|my|our|the|things|stuff|everything* <supply>?] ;",
    "chat",
    "the cat keeps knocking over my brushes, sold the crib 40",
  ],
  [
    "^ [no judgement|judgment|judging|hate|laughing|teasing please|from_you|from_the_peanut_gallery?] ;",
    "chat",
    "no judgement please, bought two lamps 8",
  ],
  [
    "[ran|running|run|all? out of coffee|milk|time|steam|energy|daylight|patience|bread|eggs|sugar|ideas|breath|tea|snacks]",
    "chat",
    "ran out of coffee, sold the crib 40",
  ],
  [
    "[feeling|feel|feels|felt like a|an|the? kid|teenager|zombie|king|queen|champ|rockstar|genius|pro|new_woman|new_man|old_man|old_lady|summer|spring|fall|winter|monday again|today|already?] ;",
    "chat",
    "feeling like a kid again, bought a toy chest 10",
  ],
  [
    "^ [lunch|coffee|smoke|tea|potty break note|update|report|thoughts?] ;",
    "chat",
    "lunch break note: bought screws 4.50",
  ],
  [
    "^ [hope|hoping everyone|everybody|yall|you|all|folks|the_family|your_family are|is staying|keeping|doing warm|cool|dry|safe|well|healthy|okay|ok|good] ;",
    "chat",
    "hope everybody is staying warm, sold the crib 40",
  ],
  [
    "^ [hope the|your weekend|week|day|trip|holiday|vacation was|is|went|treated|treating good|fun|well|great|you to? you?] ;",
    "chat",
    "hope the weekend was good to you, sold the crib 40",
  ],
  [
    "[<art>? <kin> made|got|won|passed the|a|her|his|their honor_roll|team|cut|finals|playoffs|driving_test|test|spelling_bee|game|trophy|medal|award|first_tooth|deans_list] ;",
    "chat",
    "my daughter made the honor roll, sold the crib 40",
  ],
  [
    "^ [sorry|apologies|pardon for|about|my? the|my|any|this? late|delayed|long|short|double|bad|messy|typos|sloppy* text|texts|note|notes|message|delay|update|spelling|typos|silence|rambling|handwriting] ;",
    "chat",
    "sorry for the late text, sold the crib 40",
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
    `^ [<art>? <kin> just? ${CALLED} again|to_help|to_help_out|to_say_hi|to_visit|for_dinner|for_lunch|for_coffee|with_the_kids|tonight|today|earlier|just_now|in_the_middle|while_i_worked|from_work|from_college?] ;`,
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
  [
    "[finally|just? got|put|slapped|brushed|rolled|laid the|a? last|final|second|third|top|clear* coat|coats on? finally|today?] and|,|so … <~finish>",
    "chat",
    "got the last coat on and the hutch is done",
  ],
  [
    "[spent|used|gave_up my|the|our whole|entire? lunch|coffee|nap|tea? break|hour|time|lunch_hour|naptime|morning|evening|afternoon|day|night|saturday|sunday] <labor>",
    "chat",
    "spent my lunch break sanding the nightstand 35 min",
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

export const chatter = tableOf([...ROWS, ...DOINGS]);
