/* What a bare answer to a question of the bot may be. */

import { wordSet } from "./words.ts";

/** A yes in its own words. */
export const YES = wordSet(
  "yes yep yeah yup ya yea ok okay sure y correct right yes_please sure_thing sounds_good do_it go_ahead thats_right ok_yes yes_it_is yes_it_was",
);

/** What an answer opens with and says nothing by. */
export const OPENS_ANSWER = wordSet(
  "oh right sorry yeah yes yep ok okay um uh uhh umm hmm hm well so ah ahh oops whoops duh haha lol shoot sry forgot i it that was were they " +
    "them he she paid for got just only thats its",
);

/** Who made it less: "she talked me down to 120". */
export const HAGGLED = wordSet(
  "talked haggled beat knocked bargained negotiated wore got down price came settled agreed landed ended up at on to for us her him guy buyer lady",
);

/** "about an hour": near enough, where nobody counts the minutes. */
export const NEARLY = wordSet(
  "about around like roughly maybe approx approximately probably near nearly close to some",
);

/** Words beside a choice that name nobody else: "gave him all of it back". */
export const AROUND_CHOICE = wordSet(
  "thats its what i we him her them they his their the my me just already money deposit guy lady buyer to of it that this in is was for so back",
);

/** A no. */
export const NO = wordSet("no nope nah n no_thanks no_thank_you not_that");

/** What goes with a price that is asked for a piece: "110 firm now" tells of no cost. */
export const OF_ASKING = wordSet("firm now obo negotiable asking");

/** The question is dropped. */
export const NEVER_MIND = wordSet(
  "never_mind nevermind nvm nevermind forget_it forget_that cancel cancel_it cancel_that skip skip_it drop_it nm dont_bother leave_it",
);

/** "it was 35" and the like, where an amount was asked for, is the amount and no correction. */
export const SAYS_AMOUNT =
  /^\s*(?:(?:it|that|they|i|he|she)\s+)?(?:was|were|cost|costs|paid|gave)\s+(?:me\s+)?/i;

/** Money is given, by whoever does it: "gave the fella 45", "she handed me 110". */
export const GIVES = wordSet("paid pay pd payed gave give handed slipped forked shelled coughed spent");

/** It is taken: "she took 20 for it", "took 90". */
export const TAKES_FOR = wordSet("took accepted");

/** What a buyer does with "it": "she took it for 75". */
export const TAKES_IT = wordSet("took bought grabbed snagged got takes buys");
export const IT = wordSet("it them both all");

/** A piece is let go for it: "they let me have it for 5", "let it go for 90". */
export const LETS_GO = wordSet("let");

/** It is what something cost: "ran me 8", "set me back 12", "he charged me 40". */
export const COSTS_ME = wordSet("cost costs ran set charged");

/** It is what something brought. */
export const BRINGS = wordSet("fetched brought went ended");

/** It is what somebody wanted; only where that was paid did it cost that. */
export const WANTED_FOR = wordSet("wanted asked");

/** What stands beside any of these and says nothing more of the amount. */
export const AROUND_PAYING = wordSet(
  "i we he she they who me us him her them it that this which for the a an my old and but so just only over back out up in of was were it's have had go with to all both think",
);

/** Behind an amount: for what was spoken of. */
export const FOR_THAT =
  /^(\S+)\s+for(?:\s+(?:it|them|that|this|all of (?:it|them)|both|the (?:two|three|four|lot|pair|set|bunch|whole thing)))?\b/i;

/** "wanted 25 so i paid that" */
export const PAID_THAT =
  /[\s,]+(?:so|and)\s+(?:i|we)\s+(?:paid|gave|did)(?:\s+(?:it|that|him|her|them))*\s*[.!]*$/i;

/** What joins a clause to the one before. */
export const LEADS_ON = /^[\s,;.–—-]*(?:(?:and|but|so|which)\s+)*/i;

/** "they gave it to me", "didnt cost a thing": nothing was paid. */
export const WAS_GIVEN = /\b(?:gave|given|handed) (?:it|them|that) (?:to|over to) (?:me|us)\b/i;

/** Beside these nothing is sure. */
export const UNSURE_OF_IT = wordSet(
  "not wasnt isnt never maybe might may if should could would hardly almost",
);

/** "came with the armoire", "free with it", "thrown in": nothing was paid for it. */
export const CAME_ALONG =
  /^\s*(?:it\s+)?(?:was\s+)?(?:free|came|thrown\s+in|included|a\s+freebie)\s+(?:in\s+)?with\b/i;

/** "15 off" says what came off, and no amount that was asked for. */
export const COMPARED = wordSet("off cheaper less more same");

/** Words that turn an amount into another one, or into none. */
export const TURNS_AMOUNT: ReadonlySet<string> = new Set([
  ...COMPARED,
  ...wordSet("than not no or tomorrow next"),
]);

/** No name of anything: the person does not know either. */
export const UNKNOWN_TO_THEM =
  /^(?:idk|dunno|not sure|unsure|no idea|(?:i )?(?:dont|don't|do not) know|unknown|\?+)[.!?]*$/;

/** Before what a thing is called. */
export const BEFORE_CALLED = /^(?:a|an|the|my|for|on|from)\s+/;

/** Before the piece that a cost was for. */
export const FOR_WHICH = /^\s*(?:for|on)\s+/i;

/** "3 for 24": how many, and for how much. */
export const SO_MANY_FOR = /^\s*(.{1,20}?)\s+for\s+(.{1,30})$/i;

/** "6 each". */
export const FOR_EACH = /\b(?:each|apiece|ea)\b/i;

/** The day of an answer, where that is another than the note's. */
export const SAYS_TODAY = wordSet("today tdy tonight now just_now this_morning this_afternoon this_evening");

/** Before a piece that is on the books already. */
export const OF_KNOWN = wordSet("the that this my");

/** What became of a part of a deposit. */
export const DEPOSIT_DEEDS = wordSet("gave refunded returned sent kept only");

/** "last 3 notes" is no answer, whatever was asked. */
export const ASKS_FOR_NOTES = /^\s*(?:my |the )?(?:last|latest|recent|today'?s)\b.*\bnotes?\s*$/i;

/** Between the answers to several questions: "2h, and the chest was 90". */
export const BETWEEN_ANSWERS = /\s*(?:[,;.]\s+(?:and\s+)?|\s+and\s+(?!an? (?:half|quarter)\b|half\b))(?=\S)/;

/** "show me more", "the rest please": the rows that were not shown. */
export const ASKS_MORE =
  /^\s*(?:(?:show|see|tell)(?: me)? )?(?:the |some )?(?:more|rest|next(?: (?:10|ten))?|keep going|go on)(?: of (?:it|them))?(?: please| pls)?\s*[.?!]*\s*$/i;

/** "Paid it", "just sent it": tells something, and asks nothing. */
export const PAID_IT =
  /^\s*(?:(?:i|we|ive|just|already|ok|and)\s+)*(?:paid|sent|settled) (?:it|that|them|this)(?: (?:all|off|today|in|already|now))*[\s.!]*$/i;
