import { FEASTS_COMING, PLACES_OF_LIFE, SORE, WET } from "../words/chatter.ts";
import { rowsOf } from "./row.ts";

/** Told of the day: the words in brackets say nothing of the fact, whatever they deny, wish or lose. */
export type ChatterEffect = "chat";

/** What people did beside the deal, where they go, and what the day will bring. */
export const DOINGS = rowsOf<ChatterEffect>({
  // How long it is lent.
  "chat: lent uncle ray the clamps for the weekend":
    "<lent>|let|borrowed|borrowing … [for|over|till|until|til|thru <art>? the_weekend|next_weekend|next_week|next_month|weekend|week|month|day|night|summer|party|wedding|shoot|photo_shoot|job|project|show|move|bit|while|few_days|couple_days|couple_of_days|<span>|<day>]",
  "chat: hit two yard sales, bought a rocker 15":
    "^ [i|we? hit|hit_up|did|checked_out|browsed|raided|cruised|went_to|made_it_to #|two|three|four|a_few|a_couple|a_couple_of|some|all_the <place> today|yesterday|this_morning?] ,|and|so|-|;",
  "chat: she's back, left 30 down on the desk": "^ [shes|hes|theyre back|here again|today|now?] ,",
  "chat: hey bot, sold the crib 40":
    "^ [hey|hi|hello|hiya|howdy|yo|ok|okay|morning|evening|good_morning|good_evening|dear|thanks|thank_you my|little|dear|sweet? bought|bot|you|ledger|robot again|there?] ,|.|!|;|-|:",
  // What is to become of it, should that not help.
  "chat: crib now 50, last chance before i donate it":
    "<~reprice>|<~list>|to|at|now … $|it|<piece> … [last_drop|last_chance|last_call|last_try|last_week|one_last_try|final_drop|one_more_week|another_week|one_more_try? before|otherwise|or|or_else|after_that|after_this|then|and_then i|we|im|ill|well|were|it just|probably|finally|have_to|gonna|going_to|all|goes|its|gets? donate|toss|scrap|trash|junk|dump|burn|chuck|bin|pitch|keep|give|donating|tossing|scrapping|trashing|junking|dumping|keeping|giving|to|donated|tossed|scrapped it|them|this|that|this_thing|the_thing|the_dump|charity|donation|the_curb|<piece>|<place>? away|out|for_myself|for_ourselves|myself|to_charity?] ;",
  "chat: lent uncle ray the clamps, remind me lol":
    ", [somebody|someone|bot|please|pls? remind me later|lol|haha|please|pls|ok|again*] ;",
  "chat: keeping the crib, wife's already got it in the bedroom":
    "^ [wifes|hubbys|moms|<kin>|she|shes|he|hes has|s|already|just|now* has|got|put|moved|using it|them in|on|by|at|up|next_to the|our|my|her|his|a >] ;",
  "chat: the last 30 for the crib, square":
    "^ [and|so|were|all|now* square|squared_up|squared_away|all_even|even_steven now|again?] ;",
  "chat: crib was 25, found another five in my shirt":
    "$ … [,|.|and* i|we? found|had|there_was another|an_extra|one_more|extra $ in|stuck_in|under|inside|down|in_my_pocket|in_my_hand|in_my_purse my|the|his|her|a? <any>? <any>?] ;",
  "chat: hold the crib till friday, that's payday":
    "<~hold>|hold|holds|till|til|until|deposit|down … <day> [,|.|-|; thats|its|which_is|when|is <art>|my|her|his|their? payday|pay_day|day_off|birthday|paycheck|when_she_gets_paid|when_he_gets_paid|when_they_get_paid|she_gets_paid|he_gets_paid|they_get_paid day?] ;",
  "chat: crib to 25 so it goes before christmas":
    "[so|hoping|hopefully|that* it|they|this|that ll|will|can|is|s? goes|go|sells|sell|moves|move|gone|sold|clears before|by|ahead_of|in_time_for|over <art>|my? <any> <any>?] ;",
  "chat: glue 5 for the crib, receipt's somewhere in my bag":
    "^ [my|the? receipt|receipts is|s|was|are? somewhere|in|on|under|lost|gone|here|filed|saved|kept >] ;",
  "chat: glue 5 for the crib, lost the receipt":
    "^ [i|we? lost|have|got|kept|saved|filed|cant_find|couldnt_find|misplaced|tossed|threw_out the|my|that|no? receipt|receipts|slip again|already|somewhere|though|sorry?] ;",
  "chat: sold the crib 40, first day back is chaos":
    "^ [first day|week|night|shift|morning back|here|off|on >] ;",
  "chat: gave it one more week, sold the crib 40":
    "^ [i|we|ill|im|gonna* gave|giving|give it|them|this|<piece> one_more|another|a|a_couple_more|a_few_more|till|until|one|two_more week|weeks|month|days|weekend|chance|<day> >] ;",
  // The end of the day's work, and of none on anything that is named.
  "chat: 35 min on the crib while the kids watched a movie":
    "[while|whilst|as <art>? <kin>|kids|kid|boys|girls|baby|babies|twins|toddler|toddlers|little_one|little_ones|hubby|dog|dogs|cat|cats|grandkids|grandbaby|rain|snow|storm|wash|laundry|roast|soup|bread|cookies|dinner|lunch >] ;",
  "chat: zero done today, sold the crib 40":
    "^ [zero|nothing|nada|zilch|zip|no_work|not_much|not_a_lot|nothing_much got|gets|is|was? done|accomplished|happened|happening today|tonight|this_week|all_day|yet|here|again*] ,|.|;|!",
  "chat: bedtime, done for today":
    "^ [ok|okay|alright|well|bedtime|bed|night|,|im|we|were|all|so|and* done|finished|spent|toast|lights_out for today|tonight|the_day|the_night|the_evening|the_week|the_weekend] ;",
  // When it came, against what was hoped of it.
  "chat: sold the crib 40, two days later than i had hoped":
    "[,|and|but* <span>|just|only|much|way|far|even|well|little|bit|day|week|month|a|one|some* later|sooner|earlier|longer|faster|quicker|slower|ahead than|of i|we|id|it|she|he|they|ive? had|was|were|have|first|originally|ever|ever_have? expected|planned|hoped|thought|imagined|figured|wanted|feared|usual|promised|schedule|before|ever|dared|guessed hope|to_hope|it_would|possible?] ;",
  "chat: sold the crib 40 as promised":
    "[as|just_as|like|exactly_as|same_as i|we|id? had? promised|planned|arranged|discussed|expected|hoped|intended|advertised|predicted|suspected|feared|foretold|usual|always|instructed|requested you|her|him|them|mom|dad|it_would?] ;",
  "chat: choir got cancelled, sold the crib 40":
    "[since|because|as|bc|after|so|and* <art>? practice|rehearsal|choir|church|school|class|game|games|match|meeting|recital|lesson|lessons|soccer|football|baseball|softball|swim|swimming|dance|piano|band|bingo|bowling|golf|tennis|pickleball|yoga|party|flight|dinner|brunch|lunch|playdate|camp|scouts|daycare|preschool|work|shift|concert|parade|picnic|fair|trip|dentist|service|vbs|study practice|game|class|lesson|lessons|meeting|group|shift|study|appointment? is|was|got|gets|were|has_been|been|getting cancelled|canceled|called_off|postponed|rained_out|snowed_out|moved|delayed again|today|tonight|last_minute|for_snow|on_me|on_us?] ,|.|;|!|so|and|-",
  // Wishes and plans of the day.
  "chat: hope you had a good weekend, sold the crib 40":
    "^ [hope|hoping|trust youre|you|yall|everyones|everyone|everybody are|is|had|have|having|all|a|an|doing|feeling* well|good|great|nice|fun|lovely|fine|okay|ok|safe|healthy|better|warm|dry day|night|week|weekend|time|holiday|one|trip|vacation|out_there|too|and_well|today?] ;",
  "chat: hope all is well, sold the crib 40":
    "^ [hope|hoping|trust all_is_well|alls_well|the_family_is_well|this_finds_you_well|the_kids_are_well|mom_is_well|moms_well] ;",
  "chat: happy easter, sold the crib 40":
    "^ [have|happy|merry a? good|great|nice|lovely|blessed|wonderful|super|safe|fun? day|night|evening|weekend|week|morning|afternoon|one|birthday|easter|christmas|xmas|halloween|thanksgiving|new_year|new_years|holidays|anniversary|<day> everyone|everybody|yall|to_all|to_me|to_you|to_us|bot?] ;",
  "chat: gotta run, sold the crib 40":
    "^ [i|we|well? gotta|have_to|need_to|got_to|time_to|off_to|better run|jet|dash|go|eat|cook|sleep|rest|nap|scoot|skedaddle|feed_the_dog|feed_the_dogs|feed_the_kids|feed_the_cat|walk_the_dog|make_dinner|cook_dinner|fix_dinner|make_lunch|start_dinner|fold_laundry|do_laundry|do_the_dishes|mow|mow_the_lawn|pray|stretch|ice_my_back|take_a_nap|take_a_bath|take_a_shower|go_home|go_to_bed|get_home|get_the_kids|get_to_bed|get_some_sleep|celebrate|relax|lie_down|sit_down|put_my_feet_up|get_up_early|get_up|work_early|work_late now|tonight|tomorrow|early|soon|later|again|today?] ;",
  "chat: about to fall asleep, sold the crib 40":
    "^ [im|i_am? gonna|about_to|going_to eat|sleep|nap|pass_out|fall_asleep|fall_over|keel_over|cry|scream|celebrate|brag|vent|take_a_nap|take_a_bath|take_a_shower|lie_down|make_dinner|go_to_bed now|tonight|well?] ;",
  "chat: running late for church, sold the crib 40": `!!<miles> ^ [i|we|im|just? going|went|headed|heading|off|back|came|got|getting|ran|running|on_my_way|on_our_way|stopped|swung|late|early|running_late|driving|walked|walking by|out|home|back|over|up|in? to|from|for|at|through|after|before ${PLACES_OF_LIFE} now|early|late|today|tonight|this_morning|earlier|with_the_kids|with_mom|again?] ;`,
  "chat: on the way to work i bought a stool 9": `[on the|my|our? way back|home|over|up? to|from|home_from ${PLACES_OF_LIFE}]`,
  "chat: got desk 25 on the way home":
    "[on the|my|our? way home|in|out|back lol|haha|today|tonight|again|though|tho?] ;",
  "chat: 2 hours on the crib after dropping hubby at the airport":
    "[after|before|while|between|from|despite|besides|without dropping|picking_up|taking|driving|running|getting|putting|leaving|feeding|walking|bathing|settling|seeing|fetching|collecting|moving|making|promising|cleaning|washing <art>? <kin>|kids|kid|dog|dogs|cat|cats|chickens|goats|cows|horses|hubby|baby|twins|boys|girls|everyone|everybody|myself|breakfast|lunch|dinner|supper|coffee|beds|dishes|laundry >] ;",
  "chat: 2 hours on the crib before the thunder started":
    "[before|after|as|when|once|since|because <art>? rain|thunder|storm|snow|sun|wind|fever|heat|game|movie|show|kids|baby|twins|guests|company|power|service|church|school|shift|fog|music|party|rush|traffic|roosters|rooster|mosquitoes|bugs|furnace|<kin> started|starts|began|begins|broke|hit|ended|ends|finished|quit|stopped|came|went|left|woke|returned|let up|down|out|over|in|on|home|back|up* >] ;",
  "chat: took 20 off the crib, mama needs the garage back":
    ", [i|we|<kin>|mama|hubby just|really? need|needs|want|wants the|my|our|her|his|some? garage|space|room|floor|driveway|basement|porch|shed|workshop|hallway|corner back|again|for_the_car|for_christmas|for_company?] ;",
  "chat: crib to 200 ahead of the holiday weekend":
    "[ahead_of|before|just_before|right_before|in_time_for|just_in_time_for|in_honor_of <art>|my? christmas|xmas|easter|thanksgiving|halloween|mothers_day|fathers_day|holiday|long|busy|big|fair|market|birthday|labor_day|memorial_day|graduation|wedding|summer|spring|winter|fall|back_to_school weekend|rush|holidays|season|break|crowd|party?] ;",
  "chat: started the crib, wish me patience":
    "[wish|wished me|us|myself luck|patience|strength|courage|well|stamina|godspeed|fortitude]",
  "chat: paid 300 to the loan from the waiting room":
    "[in|at|from|inside <art>? <any>? <any>? waiting_room|waiting_rooms|waiting_area]",
  "chat: paid 300 to the loan straight from my paycheck":
    "loan|loans … [straight|right|directly? from|out_of|off my|our|his|her|this|the|todays paycheck|paycheque|check|pay|wages|wage|tips|pension|bonus|refund] ;",
  "chat: sold the crib 40 on the way home from the eye doctor":
    "[on the|my|our? way|drive|walk back|home|over from >] ;",
  "chat: the cat threw up on the drop cloth, sold the crib 40":
    "^ [<art>? <kin>|cat|dog|puppy|kitten|baby|toddler|kid|kids|son|daughter|boys|girls threw_up|puked|barfed|threw_a_fit|threw_a_tantrum|pooped|peed >] ;",
  "chat: started the crib with zero enthusiasm":
    "[and|with* zero|no enthusiasm|energy|patience|motivation|interest|shame|regrets|clue|chill|sleep|coffee|help|fuss|rush|hurry|fanfare|ceremony] ;",
  "chat: you will not believe it, sold the crib 40":
    "[you|yall|youll will_not|wont|would_not|wouldnt|never|will_never believe|guess it|this|that|what_happened|how_fast|who] ,|.|!|:|-",
  "chat: paid 300 to the loan before it burns a hole in my pocket":
    "[before|so_that? it|they|this burns|burn|burned|burnt a_hole_in|holes_in my|our pocket|pockets] ;",
  "chat: on the way home i bought a stool 9": "[on the|my|our? way home|in|out|over|there] $|<~buy>|;|i|we",
  "chat: gonna be sore tomorrow, sold the crib 40": `^ [i|we|im|ill|well|will|gonna|going_to|were will|am|are|be|going_to|gonna* so|really|pretty|very? ${SORE} tomorrow|tonight|later|for_days|for_a_week|all_week|good|well|night|day|evening|one|like_a_baby|like_a_rock|like_a_log|it|in_the_morning*] ;`,
  "chat: supposed to rain, sold the crib 40": `^ [its|it|forecast|radio|weatherman|news|looks|they? supposed|about|gonna|going|might|may|will|should|could|says|said|calls|calling|like|is|call* to|for|its|gonna* ${WET} >] ;`,
  "chat: since the fair is coming up i dropped the crib to 40": `[<art>? ${FEASTS_COMING} is|are|was|will|its? almost|nearly|finally|just|all|soon? be|back? coming_up|coming|arriving|around_the_corner|almost_here|here|over|nearly_here|on_its_way|starting|starts|started|almost_over]`,
  "chat: company coming for dinner, sold the crib 40":
    "^ [company|guests|relatives|in_laws|inlaws|grandkids|grandbabies|mom|dad|sister|brother|everyone|family is|are? all? coming_over|coming_to_town|coming_to_visit|coming_for_dinner|coming_for_lunch|coming_to_dinner|coming_home|coming|visiting|in_town to_dinner|for_dinner|for_lunch|for_the_weekend|tonight|tomorrow|soon|next_week|<day>|this_weekend?] ;",
  "chat: family here, sold the crib 40":
    "^ [company|guests|relatives|in_laws|inlaws|grandkids|grandbabies|everyone|family is|are? all? here today|tonight?] ;",
  "chat: might be getting sick, sold the crib 40":
    "[think|might|may|could|must|im|feel be|im|i|like? coming_down_with|getting|catching something|a_cold|the_flu|sick|old|too_old|soft]",
  // Losses, falls and gifts of the day.
  "chat: got the kids to bed, sold the crib 40":
    "^ [i|we|just|finally? put|putting|got|getting|tucked <art>? kids|kid|baby|babies|twins|toddler|dog|dogs|little_one|girls|boys down|in|to|up|off|out|to_bed|to_sleep|to_school|for_a_nap|for_the_night|on_the_bus|fed|bathed|dressed|early|already*] ;",
  "chat: my phone died at the worst moment, sold the crib 40":
    "^ [my|our|the phone|battery|internet|wifi|tv|computer|laptop|car|oven|fridge|washer|dryer|furnace|ac|air_conditioner|power|alarm|radio|mower just|almost|has|is? died|quit|froze|crashed|broke|went_out|dead|out|on_the_fritz|wont_start|wont_charge|acted_up|acting_up|conked_out|blew_up|kept_ringing|kept_buzzing|rang|went_off at_the_worst_moment|at_the_worst_time|again|on_me|this_morning|halfway|today|all_day?] ;",
  "chat: had coffee with my sister, sold the crib 40":
    "^ [i|we|just|<kin>? burned|burnt|spilled|spilt|dropped|skipped|forgot|missed|made|cooked|fixed|ate|had|having|eating|making|cooking my|the|our|some|a|his|her? first|second|big|nice|quick|late|early|hot? dinner|lunch|breakfast|supper|brunch|toast|coffee|tea|cookies|cake|pie|soup|stew|chili|pizza|tacos|sandwich|snack|roast|phone|toe|bus|church|nap|beer|pancakes|waffles|ice_cream with|for|on|over|after|at? <art>|<kin>|<new>|friend|friends|family|neighbor|neighbors* today|tonight|earlier?] ;",
  "chat: dinner burned while i was at it, sold the crib 40":
    "^ [<art>? dinner|lunch|supper|roast|coffee|toast|pizza|breakfast|cake|chicken|chili|soup|bread is|was|are|got|went|almost|nearly? burned|burnt|cold|ready|late|delicious|waiting|calling|in_the_oven|on_the_stove|simmering|burning|overcooked|amazing|terrible ,? while|when|as|after|typical|again|figures|naturally|of_course? >] ;",
  "chat: gas gets worse all the time, 47 today":
    "gas|diesel|lumber|parking|paint|wood|fabric [prices? is|are|gets|keeps|keep just? getting_worse|worse|insane|crazy|nuts|unreal|brutal|out_of_control|bonkers|ridiculous|a_racket|robbery|highway_robbery|too_much all_the_time|every_day|every_week|lately|these_days?]",
  // What is said of the deal, the weather of the day and the drying paint.
  "chat: could be worse, sold the crib 40":
    "^ [could|couldnt be|have_been|get worse|better|prettier|cuter|hotter|colder] ;",
  "chat: would do it again, 52 miles for the crib":
    "^ [would|id|wouldnt|wouldve happily|gladly? do it|that|this again|over|all_over_again|in_a_heartbeat|tomorrow] ;",
  "chat: never doing that again, stripped the crib 3 hours":
    "^ [never|not doing|trying|attempting it|that|this again|ever_again|twice|by_hand_again] ;",
  "chat: should have bought two, bought one lamp 6":
    "^ [i? should|shouldve|could|couldve have? bought|gotten|grabbed|taken two|both|more|them_all|another|the_set|them_both|the_pair] ;",
  "chat: didnt want to let it go but the crib sold 40":
    "[didnt|hated|hate|did_not want? to? let|letting|see|seeing|part_with|parting_with it|her|him|this_one|that_one go?] but|;",
  "chat: you should have seen the line, sold the crib 40":
    "^ [you|yall should|shouldve have? seen|been_there|heard|smelled|felt >] ;",
  "chat: can i just say, sold the crib 40":
    "[can_i_just|can_i|let_me_just|i_just_want_to|just_wanna|just_want_to|have_to|gotta say|brag|vent|add] ;",
  "chat: note to the bot i drove 38 miles for the crib":
    "^ [quick|little? reminder|note|memo|notes|message to|for the? bot|bought|self|ledger|books|record|file that?]",
  "chat: let me see i spent 19.80 on primer":
    "^ [let_me|lets|let_us see|think|look|check_my_notes here|now?] i|we|<verb>|,|so|the|it|my",
  "chat: forgot to tell you before the road trip, sold the crib 40":
    "^ [i|we|totally|completely|plumb? forgot to tell|mention|say|note|log|text|put|add|write you|this|it|that|in|down* before|on|during|from|after|since|last the|my|our|this? <any>? road_trip|trip|vacation|weekend|holiday|holidays|party|visit|game|church|dinner|lunch|bed|work|week|night|month|<day>] ;",
  "chat: wait till you hear this, sold the crib 40":
    "^ [wait till|til|until you|yall hear|see this|that|it] ;",
  "chat: second coat drying, 30 min on the crib":
    "^ [first|second|third|final|last|another|the coat|coats|paint|stain|glue|poly is|are? drying|curing|setting] ;",
  "chat: waiting on paint to dry, sold the crib 20":
    "[waiting|while|watching on|for|the|my* paint|stain|glue|finish|poly|varnish|primer|it to? dry|dried|dries|drying|set|sets|cure|cured] !<piece>",
  "chat: third times the charm, the crib finally sold 95":
    "^ [second|third times|time the|a|is_the|is_a charm] ;",
  "chat: early bird gets the worm, bought a crib 10": "^ [early bird >] ;",
  "chat: he drove a hard bargain but the crib went for 85": "^ [he|she|they drove|drives a hard bargain]",
  "chat: beautiful day for yard sales, bought a bench 15":
    "^ [beautiful|lovely|nice|perfect|gorgeous|good|great|bad day|morning|weekend|weather for <art>? <place>] ,|so|and|-",
  "chat: slow day at the flea, sold a crib 10":
    "^ [slow|busy|beautiful|lovely|nice|perfect|gorgeous|good|great|bad|long|dead|rough|decent day|morning|night|afternoon] at|in|,|so|but|:|-",
  "chat: went down a rabbit hole online, bought a crib 14":
    "^ [went|fell|going|down|wandered down a|another|the* rabbit hole online|again?] ;",
  "chat: alarm didnt go off, sold the crib 40": "[alarm|timer|phone didnt|never go_off|went_off|ring|rang] ;",
  "chat: crib sold 225 cash, came down a bit":
    "[i|we? came|come|had_to_come down a_bit|a_little|a_hair|a_touch|a_smidge on_price|on_the_price|in_price|but_whatever?] !$|to",
});
