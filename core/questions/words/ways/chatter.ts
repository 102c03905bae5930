import { waysOf } from "../../plainer.ts";

/** What is said before and behind a question and asks nothing. */
export const OF_CHATTER = waysOf({
  "break down spending by category => spending by category":
    "^ break_down|break_out|breakdown|breakdown_of|split_up|split_out|itemize|itemise|a_breakdown_of the|my|our|all? x:5 p:by|per => $x $p",
  "you remember who bought the hutch => who bought the hutch":
    "^ do_you|you|u? remember|recall|happen_to_know|know =what|who|when|where|how|which =>",
  "cant recall where i got the trunk => where i got the trunk":
    "^ i|ive? forgot|forget|forgotten|cant_recall|cant_remember|cannot_recall|cannot_remember|dont_remember|dont_recall|lost_track_of|not_sure|no_idea|no_clue|unsure =what|who|when|where|how|which =>",
  "hey did mom get the lamp => did mom get the lamp":
    "^ hey|hi|hello|yo|oh|um|uh|well|ok|okay|so , =<asks> =>",
  "good morning. what was my profit on lamps => what was my profit on lamps":
    "^ hey|hi|yo|ok|so? good? morning|afternoon|evening|night|day ,, =<asks> =>",
  "any idea what i made in july => what i made in july":
    "^ so|hey|ok? any|got_any|do_you_have_any|have_any|have_you_any idea|clue|guess|notion of|on|about|as_to? ,? =<asks> =>",
  "may net... be gentle => may net":
    ", pretty_please|be_gentle|go_easy_on_me|dont_laugh|dont_judge|no_judgment|be_honest|lay_it_on_me|give_it_to_me_straight|if_its_not_too_much_trouble|if_you_dont_mind|cheers|much_appreciated|appreciate_it $ =>",
  "ok im in the garage, whats next => whats next":
    "^ ok|so|hey? im|i_am|were|we_are in|at|out_in|back_in|out|standing_in|sitting_in|here_in the|my|our? garage|shop|barn|truck|van|car|store|house|kitchen|driveway|workshop|shed ,, =<asks> =>",
  "who backed out... no wait who has the mirror reserved => who has the mirror reserved":
    "^ w:12 ,? no_wait|wait_no|scratch_that|actually_no|no_actually|nvm|nevermind|never_mind|hold_on ,? =<asks> =>",
  "gas and storage sept, one number => gas and storage sept total":
    ", as|in? one|a_single number|figure|total|sum $ => total",
  "quick one: profit on lamps => profit on lamps":
    "^ omg|lol|bored|ugh|wow|man|dang|geez|ok_so|okay_so|alright|right|listen|dude|bro|hon|honey|random|random_question|dumb_question|stupid_question|silly_question|serious_question|quick_one|quick_q|question|honestly|seriously|heads_up|sorry|jw|just_wondering|just_curious|curious|cant_remember|i_forget|i_forgot|remind_me|real_talk , =<any> =>",
  "im bored, hows june => hows june": "^ im|i_am|were|we_are so|just|a_bit|feeling|getting? w:1 ,, =<any> =>",
  "how long will the van take you think => how long will the van take":
    "you|do_you|ya|would_you|d_you reckon|think|figure|guess|say|suppose $ =>",
  "slowest seller of them all, in days => slowest seller, in days":
    "b:best|worst|slowest|fastest|quickest|biggest|smallest|highest|lowest|longest|cheapest|priciest w:2? of|out_of all_of? them|em|these|those|the_lot|the_bunch|my_pieces all? => $b $w",
  "how many tips did i get altogether, counting each one => how many tips did i get altogether":
    ", counting|count each|every|each_and_every one|single_one|single_note|note|of_them? $ =>",
  "best month so far, which was it => best month so far":
    "^ a:1 q:20 , and|so? which|what one|ones|day|month|week|kind? <be> <that> $ => $a $q",
});
