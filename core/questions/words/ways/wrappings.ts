import { waysOf } from "../../plainer.ts";

/** Whom it is said to, where a mark parts it from the question. */
const CALLED =
  "mate|buddy|bud|pal|bro|bruh|bruv|dude|man|fam|sis|hun|hon|honey|sweetie|sweetheart|sugar|darling|darlin|dear|my_dear|love|my_love|luv|pet|boss|chief|champ|sir|maam|bot|friend|friends|yall|y_all|guys|folks|kiddo|old_chap|everyone";
const GREETS =
  "{hey|hi|hello|yo|so|ok|okay|well|um|uh|and|but|there|bot|please|pls|kindly|now|then|also|sorry|sir|maam}";
const GENTLY = "{please|pls|kindly|possibly|just|maybe|perhaps|quickly|ever|also|at_all|by_any_chance}";
/** Figures that are asked to be shown: "can i get the total". */
const FIGURE =
  "profit|profits|total|totals|balance|breakdown|sum|figure|figures|number|numbers|list|rundown|summary|count|average|tally|cost|costs|spending|sales|revenue|net";

/** How a question is put politely: what is left asks the same. */
export const OF_WRAPPINGS = waysOf({
  // Marks that are spoken.
  "wax total question mark => wax total ?": "question_mark|exclamation_mark|exclamation_point $ => ?",
  "total miles period => total miles":
    "~the|this|that|a|each|per|by|same|last|which|what|time|for full_stop|period $ =>",
  "dressers comma june comma profit => dressers , june , profit": "x:8 comma y:8 comma => $x , $y ,",
  "dressers comma profit => dressers , profit": "comma => ,",
  "where did i get that armoire, i cant recall => where did i get that armoire":
    ", its|it_has? i|ive|we? cant_recall|cant_remember|cannot_recall|cannot_remember|forget|forgot|forgotten|dont_remember|dont_recall|lost_track|slipped_my_mind|escapes_me|remind_me|remember|recall|dont_know|have_no_idea|no_idea|cant_think $ =>",
  "excuse me, how much did i make in april => how much did i make in april":
    "^ excuse_me|pardon_me|pardon|beg_pardon|begging_your_pardon|sorry_to_bother_you|sorry_to_bother|sorry_to_ask|if_i_may|if_i_may_ask|if_you_please|if_you_would|if_you_can|if_you_dont_mind|when_you_can|when_you_get_a_chance|when_you_have_a_minute|do_me_a_favor|be_a_dear|be_a_dear_and|help_me_out ,? =>",
  "whats the damage on paint, if you please => whats the damage on paint":
    ", if_you_please|if_you_would|if_you_will|if_i_may|if_i_may_ask|if_you_dont_mind_me_asking|if_you_can|when_you_can|when_you_get_a_chance|when_you_get_a_minute|when_you_have_a_minute|would_you|could_you|will_you|do_you_know|do_you_reckon|would_you_know|by_any_chance|thank_you_kindly|thanks_a_lot|thanks_a_million|thanks_much|many_thanks|ta $ =>",
  "whats the damage on paint, mate => whats the damage on paint": `,, ${CALLED} $ =>`,
  "honey, what did the lamps make => what did the lamps make": `^ {hey|hi|hello|yo|ok|okay|so|well|oh|now} ${CALLED} ,, =>`,
  "bruh how much have i dropped on paint => how much have i dropped on paint":
    "^ {hey|hi|yo|ok|okay|so|oh} bruh|bro|bruv|fam|yall|y_all|dude|guys|chief|mate|lordy|goodness|crikey|blimey =>",
  "whats the damage on paint mate => whats the damage on paint":
    "~the|my|a|an|old|our|his|her|to|from|by|for|of mate|bro|bruh|fam|luv|bruv|innit $ =>",
  "please break down profit => break down profit": "^ kindly|please|pls|plz|pretty_please ,? =>",
  "would you mind telling me how much i made in april => tell me how much i made in april": `^ ${GREETS} would_you|do_you|would_u|will_you|could_you ${GENTLY} mind|be_willing_to telling|giving|showing|saying|tell|give|show me|us? => tell me`,
  "would you kindly split the profit up by kind => split the profit up by kind": `^ ${GREETS} can|could|would|will|might|cld|wld you|u|ya|ye ${GENTLY} be_so_kind_as_to|be_so_good_as_to|be_able_to|be_good_enough_to|be_kind_enough_to|help_me|go_and|go_ahead_and? ${GENTLY} v:tell|say|show|give|work_out|figure_out|find_out|find|check|look_up|pull_up|pull|bring_up|add_up|add|sum_up|sum|total_up|total|tally_up|tally|calculate|calc|compute|break|split|divide|divvy|separate|itemize|itemise|sort|rank|order|compare|remind|run|count_up|count|let|name|explain|chart|graph|draw|plot => $v`,
  "could you list what i sold in june => list what i sold in june": `^ ${GREETS} can|could|would|will you|u|ya ${GENTLY} list =what|all|my|every|everything|which|how_many|pieces|sales|expenses|notes|unsold => list`,
  "would it be possible to see how much i made in april => show how much i made in april": `^ ${GREETS} would_it_be|is_it|itd_be possible|ok|okay|alright|too_much|too_much_trouble for_me|for_you? to ${GENTLY} see|know|get|have|find_out|ask|hear|tell_me|show_me|give_me => show`,
  "may i ask what i made on #15 => what i made on #15": `^ ${GREETS} may|might|can|could i|we ${GENTLY} ask|know|find_out|hear|inquire|enquire|learn|check|see|be_told you? about|into|for? =<asks> =>`,
  "may i see the profit of #15 => show the profit of #15": `^ ${GREETS} may|might i|we ${GENTLY} see|ask|know|find_out|hear|get|have|look_at|take_a_look_at|trouble_you_for|check for|about? => show`,
  "can i get the profit on #15 => show the profit on #15": `^ ${GREETS} can|could i|we ${GENTLY} see|check|get|have|look_at|take_a_look_at|know|trouble_you_for w:the|my|our|a? f:${FIGURE} => show $w $f`,
  "count my yard sale buys => how many yard sale buys":
    "^ count up? for_me? all|all_of? the|my|our|em|them? !everything|what|whatever|total|profit|profits|spending|expenses|costs|cash|money|earnings|revenue|income|takings|interest => how many",
});
