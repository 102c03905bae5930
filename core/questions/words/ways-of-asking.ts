import type { WayRow } from "../plainer.ts";

/** What is said before and behind a question and asks nothing. */
const CHATTER: readonly WayRow[] = [
  [
    "^ hey|hi|hello|yo|oh|um|uh|well|ok|okay|so , =<asks>",
    "",
    "hey did mom get the lamp",
    "did mom get the lamp",
  ],
  [
    "^ hey|hi|yo|ok|so? good? morning|afternoon|evening|night|day ,, =<asks>",
    "",
    "good morning. what was my profit on lamps",
    "what was my profit on lamps",
  ],
  [
    "^ so|hey|ok? any|got_any|do_you_have_any|have_any|have_you_any idea|clue|guess|notion of|on|about|as_to? ,? =<asks>",
    "",
    "any idea what i made in july",
    "what i made in july",
  ],
  [
    ", pretty_please|be_gentle|go_easy_on_me|dont_laugh|dont_judge|no_judgment|be_honest|lay_it_on_me|give_it_to_me_straight|if_its_not_too_much_trouble|if_you_dont_mind|cheers|much_appreciated|appreciate_it $",
    "",
    "may net... be gentle",
    "may net",
  ],
  [
    "^ ok|so|hey? im|i_am|were|we_are in|at|out_in|back_in|out|standing_in|sitting_in|here_in the|my|our? garage|shop|barn|truck|van|car|store|house|kitchen|driveway|workshop|shed ,, =<asks>",
    "",
    "ok im in the garage, whats next",
    "whats next",
  ],
  [
    "^ w:12 ,? no_wait|wait_no|scratch_that|actually_no|no_actually|nvm|nevermind|never_mind|hold_on ,? =<asks>",
    "",
    "who backed out... no wait who has the mirror reserved",
    "who has the mirror reserved",
  ],
  [
    ", as|in? one|a_single number|figure|total|sum $",
    "total",
    "gas and storage sept, one number",
    "gas and storage sept total",
  ],
];

/** What is left out, said behind it. */
const LEFT_OUT: readonly WayRow[] = [
  [
    ",, the|all|all_the|any|my? x:2 left_out|excluded|not_included|not_counted|taken_out|set_aside|aside|not_in_it $",
    "not $x",
    "how many sold per source, dressers left out",
    "how many sold per source not dressers",
  ],
  [
    "revenue|sales|takings|gross|proceeds|brought_in|took_in r:4? with|w|after|less|minus|net_of the|any|all? refund|refunds|return|returns taken_off|taken_out|taken_away|subtracted|deducted|out|off? $",
    "revenue $r",
    "sept revenue w the refund taken off",
    "sept revenue",
  ],
];

/** What is said of a figure as it is anyway. */
const AS_IT_IS: readonly WayRow[] = [
  [
    "v:revenue|sales|takings|gross|brought_in|bring_in|brings_in|took_in|take_in|come_in|came_in r:4? , before any|all|the|my? costs|expenses|fees|cost|anything|taxes|tax $",
    "$v $r",
    "what did oak stuff bring in, before costs",
    "what did oak stuff bring in",
  ],
];

/** One of several that the question names itself: who or how it was, with what it may have been behind or within. */
const CHOICES: readonly WayRow[] = [
  [
    "^ did i|we get|got|buy|bought|find p:4 or did? d:1 get|buy|find|it? $",
    "who found $p",
    "did i buy the vanity or did dad",
    "who found the vanity",
  ],
  [
    "^ who_did|whod|who x:4 go|went to and for_how_much|how_much|for_what $",
    "who bought $x and for how much",
    "who did the coffee table go to and for how much",
    "who bought the coffee table and for how much",
  ],
  [
    "^ did|was_it a:1 or b:1 who|that? get|got|buy|bought|find|found|pick_up|picked_up|bring_home|take|took the|my|our? p:4 $",
    "who got $p",
    "did mom or dad get the floor lamp",
    "who got floor lamp",
  ],
  [
    "^ how r:10 , <method> or <method> $",
    "how $r",
    "how did i pay for the vanity, cash or card",
    "how did i pay for the vanity",
  ],
  [
    "^ did w:3 pay in|by|with? <method> or|, <method> $",
    "how did $w pay",
    "did the doctor pay cash or card",
    "how did the doctor pay",
  ],
];

/** What would come of a sale, an offer or a purchase, however its price is told. */
const PRICES: readonly WayRow[] = [
  [
    "^ if i|we? sell|sold|let|get|list x:4 go? for|at n:<number>|list|asking , then|so? what|how_much do|would|will|did|could i|we make|clear|net|get|pocket|profit|earn|gain on|off|from? it|them|that? $",
    "how much would i make on $x at $n",
    "if i sell the mirror for 65 what do i make",
    "how much would i make on the mirror at 65",
  ],
  [
    "^ how_much|what profit|money? do|would|will? i|we? make|clear|net|get|pocket|earn|be_in_it|profit? if|when x:4 sells|sold|goes|went for|at n:<number> $",
    "how much would i make on $x at $n",
    "how much profit if the armoire sells for 200",
    "how much would i make on the armoire at 200",
  ],
  [
    "^ i|we? found|saw|spotted|theres|there_is|can_get|could_get|looking_at|eyeing a|an|this x:3 for|at n:<number> , should_i|should_we|worth_it|good_deal|good_buy|is_it_worth_it|do_i_buy_it|buy_it|grab_it|get_it|thoughts|yes_or_no buy|get|grab|take? it? $",
    "should i buy a $x for $n",
    "found a hutch for 80, should i",
    "should i buy a hutch for 80",
  ],
  [
    "^ the|my|a? w:1 offers|offered|is_offering|offering|will_give|would_give|wants_to_pay|says me? n:<number> for|on x:4 ,,? should_i|take_it|do_i_take_it|yes_or_no|good_enough|accept take|accept|do? it|that? $",
    "someone offered $n for $x should i take it",
    "nurse offers 60 for the mirror, take it?",
    "someone offered 60 for the mirror should i take it",
  ],
  [
    "^ whats|what_is|what_was? the|my? break_even|breakeven price|point|number? on|for|of x:4 $",
    "what do i have in $x",
    "whats my break even price on #28",
    "what do i have in #28",
  ],
  [
    "^ whats|what_is my|the floor price? on|for x:4 $",
    "lowest i should take for $x",
    "whats my floor on #28",
    "lowest i should take for #28",
  ],
];

/** Two words of a deed that stand apart, and questions that leave out "did". */
const DEEDS: readonly WayRow[] = [
  [
    "v:pick|put|bring|fix|throw|give|mark w:anything|something|stuff|things|pieces|furniture d:up|home|out|away|back|down",
    "$v $d $w",
    "dad pick anything up in october",
    "dad pick up anything in october",
  ],
  [
    "^ !<asks> w:1 d:pick_up|buy|sell|get|list|find|finish|bring_home|start|fix =anything|something",
    "did $w $d",
    "dad pick up anything in october",
    "did dad pick up anything in october",
  ],
];

/** Moments and stretches of time. */
const TIMES: readonly WayRow[] = [
  [
    "^ what does|did|is|was the|this|my? p:year|month|week|quarter|<month> look|looking like? so_far|now|right_now|overall? $",
    "how is the $p so far",
    "what does the year look like",
    "how is the year so far",
  ],
  [
    "when m:<month> was|is|had|came over|ended|done|through|to_an_end",
    "at the end of $m",
    "how many on hold when june was over",
    "how many on hold at the end of june",
  ],
];

/** Orders and means in words that say them plainly. */
const ORDERED: readonly WayRow[] = [
  [
    "^ what|which_ones|which|whats did|done well|good|great|the_best|real_well|really_well r:4? $",
    "best flips $r",
    "what did well in july",
    "best flips in july",
  ],
  [
    "^ how_many x:2? a|per|each|every u:<unit> do i|we d:sell|buy|list|finish|flip $",
    "average pieces $d per $u",
    "how many pieces a month do i sell",
    "average pieces sell per month",
  ],
  [
    "^ how_many x:2? do i|we d:sell|buy|list|finish|flip a|per|each|every u:<unit> $",
    "average pieces $d per $u",
    "how many do i buy a month",
    "average pieces buy per month",
  ],
  [
    "^ list|rank|show|sort|my|all|name? my|the|all? g:kinds|types|sources|buyers|customers|months|weeks|methods|places|people by r:3 $",
    "rank $g by $r",
    "kinds by profit",
    "rank kinds by profit",
  ],
  [
    "^ name my|the|all|me? r:5 $",
    "what are my $r",
    "name my top three months",
    "what are my top three months",
  ],
  [
    "^ what|how_much do|does x:6 a|per|each|every u:<unit> $",
    "how much do $x per $u on average",
    "what do i spend on storage a month",
    "how much do i spend on storage per month on average",
  ],
  [
    "^ <be> my|our|the? f:profit|profits|sales|spending|costs|fees|income|revenue up|higher this u:<unit> $",
    "is $f more this $u than last $u",
    "is spending up this month",
    "is spending more this month than last month",
  ],
];

/** One by one. */
const LISTS: readonly WayRow[] = [
  [
    "what_went_on|whats_been_going_on|what_all_happened|what_was_going_on =in|on|this|last|during|yesterday|today|over|since",
    "what happened",
    "what went on in july",
    "what happened in july",
  ],
  [
    "^ listed w:under|over|below|above n:<number> $",
    "what is listed $w $n",
    "listed under 50",
    "what is listed under 50",
  ],
  [
    "^ who|which_buyers|any_buyers|anyone|anybody? bought|buys|come_back|came_back from_me? twice|two_times|several_times|repeatedly|more_than_twice|again|a_second_time $",
    "list buyers over 1 pieces",
    "who bought twice",
    "list buyers over 1 pieces",
  ],
  [
    "^ cheapest|best|smartest|fastest|quickest way to pay|pay_off|pay_down|kill|clear off? the|my|our? loans|debt|debts|loan $",
    "which loan should i pay first",
    "cheapest way to pay off loans",
    "which loan should i pay first",
  ],
  [
    "^ what do|should|can|could|shall i|we do|work_on|get_done|tackle =this_weekend|today|tomorrow|this_week|next|now|tonight|first",
    "what should i do",
    "what do i do this weekend",
    "what should i do this weekend",
  ],
  [
    "^ q:8 , line_by_line|item_by_item|note_by_note|one_at_a_time|each_one_listed $",
    "list $q",
    "august expenses line by line",
    "list august expenses",
  ],
];

/** Ways to ask that say the same as plainer ones: they are put so before any word is looked up. */
export const WAYS_OF_ASKING: readonly WayRow[] = [
  ...CHATTER,
  ...LEFT_OUT,
  ...AS_IT_IS,
  ...PRICES,
  ...CHOICES,
  ...DEEDS,
  ...TIMES,
  ...ORDERED,
  ...LISTS,
];
