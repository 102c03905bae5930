import { wordSet } from "./words.ts";

/* What is still to come, told beside a fact: "finished the desk ill list it tomorrow". */

/** Who one of us is, and who anybody else is, in front of a verb. */
export const ONE_OF_US = wordSet("i im ive we weve");
export const SOMEBODY = wordSet(
  "he hes she shes they theyre it its someone somebody someones somebodys everyone everybody",
);
/** "a lady is going to", "my wife will": what stands before a noun for somebody. */
export const BEFORE_SOMEBODY = wordSet("a an the some my our his her their another");

/** Said with its subject: "ill paint it". */
export const OURS_TO_COME = wordSet("ill ima imma");
/** "hell bring it back", "itll sell": with another's. */
export const THEIRS_TO_COME = wordSet("hell shell theyll itll");

/** What says behind a subject that nothing was done yet, as the first word of a token. */
export const WILL_DO = wordSet(
  "gonna going will might supposed planning hoping hope need want should thinking think trying gotta plan able ready",
);
/** The second words of those that say so with one only: "going to", "need to", "think ill". */
export const WILL_DO_WITH = new Map<string, ReadonlySet<string>>([
  ["going", wordSet("to back")],
  ["supposed", wordSet("to")],
  ["need", wordSet("to it them")],
  ["want", wordSet("to")],
  ["plan", wordSet("to on")],
  ["planning", wordSet("to on")],
  ["hope", wordSet("to")],
  ["trying", wordSet("to")],
  ["should", wordSet("be get sell go")],
  ["able", wordSet("to")],
  ["ready", wordSet("to")],
  ["think", wordSet("ill i")],
  ["thinking", wordSet("ill i of about")],
]);
/** Between who it is and what is to come. */
export const BESIDE_WILL = wordSet(
  "is are am just still also probably prob maybe then now really only hopefully be",
);

/** What is about to be done, with a day that is to come: "listing it tomorrow", "taking monday off". */
export const ABOUT_TO = wordSet(
  "listing posting relisting putting taking going heading painting sanding starting trying coming finishing staining",
);
/** Said of a weekday as well, which might be behind us. */
export const GOING = wordSet("going coming taking heading listing posting relisting putting");
/** "one more coat tomorrow", "more on monday" */
export const MORE_OF_IT = wordSet("more one_more another_one another two_more second final last");

/** Days that are never behind us. */
export const AHEAD = wordSet(
  "tomorrow tmrw tmw tomorrow_morning tomorrow_night next_week next_weekend next_month this_weekend next_time later soon someday tonight",
);

/** Behind these no sentence begins. */
export const LEADS_INTO = wordSet(
  "if unless when whenever once until til till before after because cause cuz since while where that which who whom whose what how " +
    "why than like as said says say told tells thinks think thought hope hoping know knows guess wish bet asked asks wondering whether " +
    "the a an my our his her their its some any no another this these those of for to from at off with in on by into onto about around " +
    "i we you he she they im ive id ill not never dont didnt and_he or was were is are be been has have had is_that if_i",
);

/** What joins a sentence to the one before, and what may stand beside it. */
export const JOINS_ON = wordSet("and so but then also plus oh anyway or & though");

/** What hands over a piece or pays for it: beside one of these a deal is not over. */
export const OF_HANDOVER = wordSet(
  "deliver delivering drop dropping bring bringing meet meeting pay pays paying pick picking pickup collect collecting come coming " +
    "load loading haul hauling send sending give giving cash rest balance deposit refund refunding cancel change mind transfer " +
    "wire check owe owes ship shipping return returning hold holding keep keeping fetch get getting take taking grab grabbing delivery",
);

/** A hold that says how long it lasts: "holding it until tuesday". */
export const HOLDS = wordSet("hold holding held hold_it keep keeping on_hold saving save saved");
export const UNTIL = wordSet("til till until by thru through");

/** "its supposed to rain tomorrow" */
export const WEATHER = wordSet("rain snow storm freeze pour rains snows hot cold warm nice rainy sunny");

/** Verbs that look in the past as they do now: what stands behind "and" may be done. */
export const SAME_IN_PAST = wordSet("put cut let set hit cost split spread read quit bid shut");

/** "have it done", "get it sold": what shall be, however past its word. */
export const SHALL_BE = wordSet("have get be getting having got need want been keep");

/** What ends a plan whose end it tells: "one more coat tomorrow and its done". */
export const ITS = wordSet("its it_is it thats that_is");
export const OVER = wordSet("done ready finished good good_to_go");

/** Before a sum that is only hoped for. */
export const BEFORE_HOPED = wordSet("for to at get ask asking take another about around want wants");

/** Verbs of deals, whatever else they may say. */
export const DEALT_WITH = wordSet("bought paid got gave took sold sent left picked traded swapped");

/** How a message begins when it is spoken, before anything is told; of more words than one each. */
export const OPENINGS = wordSet(
  "ok_quick_one quick_one quick_update ok_so hey_so alright_so yeah_so so_um um uh well guess_what guess_what_happened " +
    "hi_its_me hey_its_me its_me its_me_again good_news great_news bad_news update so_anyway ok ok_then okay okay_so hey hi hello yo so yeah alright " +
    "let_me_see lets_see_here oh_hey oh_boy real_quick just_a_quick_one small_update one_more_thing turns_out it_turns_out change_of_plans",
);

/** "should be dated friday": a day of what was told, and no plan. */
export const IS_DATED = /^should be (?:dated|down|logged|recorded|entered|noted|put|marked|for|on|from)\b/;
