import type { Kind } from "../reading.ts";
import { BECAUSE } from "./doubts.ts";
import { standFor, wordSet } from "./words.ts";

/** Words of a correction that tell nothing of the note. */
export const SKIPPED: ReadonlySet<string> = new Set(
  (
    "the a an my our note notes entry entries expense cost costs thing one ones amount price from on for of at in with i it we this please pls oh oops " +
    "hmm hm oof ugh no nope wait sorry actually really and ok okay hey um uh just only all total purchase's record by as was were is are , . ! - : ; hours hour time " +
    "morning afternoon evening earlier before under off out books list ledger records about saying date day method correction correct correcting typo"
  ).split(" "),
);
/** How a note came to be there. */
export const ENTERED = wordSet("put had logged noted entered wrote recorded take pull leave");
/** "that sale", "those knobs": they point at something noted. */
export const POINTING: ReadonlySet<string> = new Set(["that", "those", "these", "this"]);
/** What a thing is worth corrects nothing that was paid. */
export const WORTH = wordSet("worth valued appraised");
/** The newest note. */
export const LAST: ReadonlySet<string> = new Set(["last", "latest", "newest", "recent", "previous"]);
/** Words before the newest that count back from it: "second to last", "the note before last". */
export const BACK: Readonly<Record<string, number>> = {
  second: 2,
  "2nd": 2,
  next: 2,
  third: 3,
  "3rd": 3,
  fourth: 4,
  penultimate: 2,
};
/** Words for a field of a note that is a name. */
export const FIELDS: Readonly<Record<string, "buyer" | "source">> = {
  buyer: "buyer",
  buyers: "buyer",
  customer: "buyer",
  customers: "buyer",
  source: "source",
  seller: "source",
};
/** Between such a word and the name: "buyer was iris". */
export const IS_NAMED = wordSet("was is name named called");
/** Behind the piece that something was for: "the buffet trip". */
export const TRIPS = wordSet("trip run job project pickup delivery");
/** Somebody or something as in a note before. */
export const SAME_AS_BEFORE = wordSet("same");
/** Behind them stands what it was. */
export const OLD: ReadonlySet<string> = new Set(["not", "instead", "rather"]);
/** Between a piece and its new name. */
export const RENAMING: ReadonlySet<string> = new Set(["to", "as", "the", "a", "an", "into", "my", "it"]);
/** Words before a value alone that correct the newest note: "i paid 25", "it took 2 hours". */
export const VALUE_TOLD = wordSet(
  "more_like was_more_like it_was_more_like its_more_like was i_paid cost_me it_cost_me it_cost i_gave it_took took_me it_took_me closer_to it_was_closer_to was_closer_to its_closer_to exactly it_was_exactly i_spent it_came_to came_to no_i_mean no_i_meant nope_i_mean nope_i_meant scratch_that strike_that looked_again i_looked_again checked_again i_checked_again double_checked turns_out_it_was turned_out_to_be ended_up_being it_ended_up_being",
);
/** The same before a time or miles alone. */
export const MEASURE_TOLD = wordSet("its it_is ended_up_at ended_up came_out_to");
/** Behind a value: how well it is known ("to be exact", "if i'm honest"), or what is in it. */
export const OPENS_EXACT = wordSet("to if with");
export const EXACT = wordSet("exact precise honest honestly picky strict truthful fair accurate penny");
export const BESIDE_EXACT = wordSet(
  "be being im i_am were we_are you youre want the a number figure total about it completely totally really perfectly super",
);
/** What is put on top of a price: "plus 3 tax". */
export const EXTRAS = wordSet("tax taxes");
/** Words of what a note came to in the end: "plus tax so 21.35 all in". */
export const TOTAL_SAID = wordSet(
  "plus with so it was the that thats its came comes come to out says said hm receipt total altogether all in told up ended rang and after including ran me",
);
/** Those that tell so. */
export const TELLS_TOTAL = wordSet("receipt total altogether");
/** Those that tell so beside what was put on top. */
export const COMES_TO = wordSet("with after so was came comes all up out");
/** Beside "only" and a value: "it took only 1h". */
export const TOLD_OF_VALUE = wordSet("took cost paid gave gave_me me us got had handed handed_me for");
/** What is said behind something to be taken out: "it was a mistake", "delete it". */
export const EXCUSES: ReadonlySet<string> = new Set(
  "it that this was is were a an my mistake wrong typo error delete remove undo scratch erase drop cancel please pls oops sorry and so , . ! twice double duplicate the note them".split(
    " ",
  ),
);

/** Behind what is taken out, these tell why. */
export const OPENS_REASON = wordSet("as that_was it_was thats its i we", BECAUSE);

/** What is said of a listing. */
export const LISTING = wordSet("listed unlist delist");
export const SELLING: ReadonlySet<string> = new Set(["sold", "went"]);
/** Words that open a correction of what was just said. */
export const OPENERS: ReadonlySet<string> = new Set([
  ..."no nope nah oops ops wait actually sorry correction rather meant mean".split(" "),
  ...["it was", "that was", "no it was", "actually it was", "it was actually", "was actually", "should be"],
  ...["that should be", "it should be", "should have been", "make that", "make it", "i meant", "no wait"],
  ...["wait no", "no actually", "no make that", "oops it was", "my bad", "i mean", "was supposed to be"],
  ..."wrong only".split(" "),
]);
/** Words that open the newest note told anew. */
export const REDOES = wordSet("no nope nah oops wait no_wait wait_no no_actually actually sorry");
/** Beside them it is told of one more: "wait also gas 15". */
export const ONE_MORE_NOTE = wordSet("also another more extra forgot forgot_to_log too as_well plus");
/** Those that may stand behind the value: "the hutch, sorry", "25 i mean". */
export const BEHIND = wordSet("sorry actually oops i mean meant my_bad i_mean i_meant rather instead");
/** Behind them: how it came to be wrong. */
export const EXCUSED = wordSet(
  "lol haha hah lmao oops ugh duh sigh fat fingers fat_fingers thumbs typo autocorrect keyboard phone my bad glasses again tired brain_fart darn",
);
/** Before the piece that something was for. */
export const FOR_IT = wordSet("for on");
/** Between a piece and what was done to it: "the vanity that we sold". */
export const IN_CLAUSE = wordSet("i we he she they that which who actually i_actually");
/** Before the name that is another one: "to lena not ana". */
export const BEFORE_NAME = wordSet("to from at for of");
/** Behind somebody who is pointed out: "it was joe who bought it". */
export const WHO = wordSet("who that who_bought who_took who_got that_bought");
/** Before what we did. */
export const US = wordSet("i we");
/** Behind whoever of the household it was: "mom did, not me". */
export const NOT_US = wordSet("not me us i the a that");
/** Before "me" where it was somebody else, and before whoever it was. */
export const NOT_BY = wordSet("by not wasnt isnt that it was");
/** Behind the piece that something was for as well. */
export const ALSO = wordSet("too as_well also and");
/** How the newest note came to be wrong: "i read it wrong, it was 45". */
export const MISREAD = wordSet("wrong wrongly misread mistyped misheard misremembered");
export const BESIDE_MISREAD = wordSet(
  "i we read typed wrote heard remembered got had it that the tag sticker receipt price number one",
);
/** What was wrong of the newest note. */
export const WRONG_ONES = wordSet("piece one item thing");
export const OPENS_WRONG_ONE = /^\W*(?:(?:oops|no|sorry|ugh|wait|ah)\W+)*wrong (?:one|piece|item|thing)\b/i;
/** Who was wrong of it. */
export const WRONG_PEOPLE = wordSet("guy lady person buyer name woman man customer dude");
/** Words between such an opening and the value. */
export const LINKS: ReadonlySet<string> = new Set(
  "oh ah hm hmm um uh ok well it its it's it’s thats that's i they he she was were is are been be there really just by the a an my and in".split(
    " ",
  ),
);
/** What was left out of the newest note. */
export const FORGOTTEN: ReadonlySet<string> = new Set(["forgot", "forgotten", "left", "left out"]);
/** What says that a fee came with the note before. */
export const ADDS_FEE = wordSet(
  "there_was was minus less plus with and took charged had add forgot forgot_to_put left_off",
);
/** Words beside it. */
export const BESIDE_FEE = wordSet(
  "there a the an in of oh also they he she it me for platform selling site app that sale on to put say mention was off it_was one too as_well",
);
/** What is not paid yet. */
export const STILL_OWED = wordSet("owes owe owed still_owes still_owed owing");
/** The price that was said. */
export const POINTING_BACK = wordSet("it that which this");
/** What is to come of it, where it is said that it is a part. */
export const STILL_TO_COME = wordSet("comes coming due later to_come next_week is_coming comes_later");
/** Words beside it. */
export const BESIDE_OWED = wordSet(
  "she he they still only just gave paid got me us i and but so far of that on it the now oh also is by till until next week month comes coming due later to come",
);
/** How it was paid is told behind them. */
export const HOW_PAID = wordSet(
  "got got_paid paid_me received collected paid payed pays pd gave_me gave_us handed_me handed_us wrote_me",
);
export const BESIDE_FORGOTTEN: ReadonlySet<string> = new Set(
  "out to about add mention say include".split(" "),
);
/** How money came over: "teo gave 25 not 20". */
export const HANDED_OVER = wordSet(
  "gave gave_me gave_us left left_me paid paid_me put sent sent_me handed handed_me",
);
/** What was noted did not happen. */
export const UNDONE: ReadonlySet<string> = new Set(
  "not isnt wasnt arent werent didnt hasnt havent never isn't wasn't didn't hasn't".split(" "),
);
/** Words beside them. */
export const STILL_NOT = wordSet("after all yet actually quite even really end up end_up");
/** How a piece stands. */
export const STILL_THERE = wordSet("still still_here still_there still_have");
/** What was put down on a piece, and the hold that it is on. */
export const DEPOSIT = wordSet("deposit deposits");
/** What a loan stands at. */
export const BALANCE = wordSet("balance");
export const HOLD = wordSet("hold holds reservation");
/** Verbs as they stand behind "didn't": "didn't sell after all". */
export const DENIED_VERBS = standFor<Kind>({
  sell: "sell selling",
  buy: "buy get getting buying",
  list: "list post",
  finish: "finish",
  start: "start",
  drive: "drive",
  pay: "pay",
});
/** What somebody did, behind their name: "mom did". */
export const ACTED = wordSet(
  "did bought sold paid it that got found grabbed picked up picked_up picked_it_up",
);

/** Before "was", for what has just been told. */
export const IT_WAS = wordSet("it that this");

/** What was wrong of the note just told. */
export const TOLD_OF_IT = wordSet("it_was that_was");

/** What a thing came to, told of one that may be noted already: "paint was 16". */
export const COST_TOLD = wordSet("was were came_to ran ran_me totaled totalled rang_up");
/** The same of a piece: "the desk ran me 35". */
export const RAN_TO = wordSet("cost_me cost_us ran_me ran_us run_me set_me_back set_us_back knocked_me_back");
/** What was given for a thing that may be here already: "paid 15 for the bench". */
export const PAID_FOR = wordSet("paid gave");
/** Before the thing that is pointed at: "oh the paint was 16". */
export const BEFORE_POINTING = wordSet("oh hm hmm hmmm no oops actually wait and");
/** Of a time or a way, that it is another one. */
export const SAID_ANEW = wordSet("drove went did worked put spent another more again plus extra also back");
/** That it was another day. */
export const ACTUALLY = wordSet("actually really not_today");
/** What only a drive was: "it was 24 miles round trip". */
export const TRIP_TOLD = wordSet("round_trip each_way one_way both_ways there_and_back to_get_it");

/** What is still to come of a price changes it not. */
export const REST_TO_COME = wordSet("bring bringing brings owes owe owing later payday rest_later");

/** "undo that and the one before", "delete both": of more notes than the last. */
export const OF_MORE_NOTES = wordSet("both before");

/** "dana is good for the 30", "saw one like it in town, it was 60 not 10": of what is to come, or of another's. */
export const CORRECTS_NOTHING = wordSet(
  "good_for saw_one seen_one one_like_it one_just_like_it offered said_ok said_okay said_yes said_sure said_fine",
);

/** "both went for 300, the vanity was 220 of that", "got 5 off": a part of what is told there, or less than that. */
export const OF_A_SUM = /\d (?:of (?:it|that|this|which|them|those)|off|short|under)\b/i;

/** "didn't get 95 for it": what was asked, and not reached. */
export const NOT_GOT = /\b(?:(?:did|could)n'?t|never|(?:did|could) not)(?: \w+)? (?:get|got|fetch|bring)\b/i;

/** "not 150": what it was not. */
export const NOT_OLD = /,?\s+(?:and\s+)?not\s+(?:for\s+)?\$?[\d.,]*\d(?:\s+bucks)?/i;

/** A line of a list spoken of by its letter, and the words behind it of which it becomes something else. */
export const REMOVES_LETTER =
  /^(?:please\s+)?(?:remove|delete|undo|scratch|drop|take out|take back)\s+([a-j])$/;
export const CHANGES_LETTER =
  /^([a-j])\s+(?:was|were|is|should be|should have been|cost|=)\s+(?:really\s+|actually\s+)?(.+)$/;

/** Behind these a note is meant, and nothing that is screwed on. */
export const OF_BOOKS = wordSet("delete cancel undo note entry record books typed logged");

/** "the armchair one was 65": the note, and not the piece. */
export const THE_NOTE = /\w one (?:was|is|came|should)\b/i;

/** A fee that is a sale's, and what tells of another. */
export const SALE_FEE = /^(?:card |sale |selling )?fees?$/;
export const FEE_ELSEWHERE = /\b(?:at|for|from|to|gate)\b/i;

/** "the mirror cost me 20 to fix": what was done to it, and not what it was bought for. */
export const COST_TO_DO =
  /\b(?:cost|ran|set) (?:me |us )?(?:back )?\$?\d[\d.]* to (?:fix|repair|redo|replace|refinish|reglass|reupholster|recover|move|haul)\b/i;

/*
 * What a correction opens with: sounds of doubt, who says so, how it came to be wrong, where it was looked up. None of it
 * tells what is corrected.
 */
const DOUBT =
  "(?:oh|no|nope|nah|wait|oops|whoops|sorry|hang on|hold on|my bad|ugh|argh|hmm*|ah|um|uh|actually|correction|ok|okay|well|shoot|and|so|just)";
const BETWEEN = "[\\s,.:;!-]+";
export const DOUBTS_AHEAD = new RegExp(`^(?:${DOUBT}${BETWEEN})+`);
/** Somebody says so: who it is stands in the brackets. */
export const SAID_SO = new RegExp(
  `^(?:my |our |the )?([a-z]+(?:[ -]in[ -]law)?) (?:says|said|is saying|tells me|swears|(?:just )?(?:told me|corrected me|reminded me|said))(?: that)?${BETWEEN}`,
);
export const ACCORDING_TO = new RegExp(
  `^(?:according to|by) (?:my |our |the )?([a-z]+(?:[ -]in[ -]law)?)${BETWEEN}`,
);
/** How it came to be wrong, and where it was looked up. */
export const WHY_WRONG = new RegExp(
  `^(?:(?:i )?(?:misread|misheard|mistyped|miscounted|fat fingered)(?: (?:it|that|this))?|(?:i )?(?:just )?(?:typed|wrote|got|read|put|heard|noted|entered|logged)(?: (?:it|that|this))?(?: down)? wrong|i was wrong|i made a mistake|(?:i )?(?:just )?(?:re ?checked|double checked|checked|looked)(?: it)?(?: again| up)?|(?:i )?(?:just )?(?:looked at|looking at|found|checked)(?: (?:the|my))?(?: \\w+)? (?:receipt|slip|notes)(?: now| again)?|turns out(?: that)?|i forgot(?: to add)?(?: the)? tax|(?:undo|scratch|cancel|erase|delete|remove) (?:that|it|this)(?: one)?(?=[ ,.;:!-]+(?:it|that) (?:was|should)))${BETWEEN}`,
);
/** Of what others say only that it was so, and no offer: "she says it was 6", never "she says 60". */
export const WAS_SO = /\b(?:was|were|wasnt|should have|shouldve|meant|not|did|undo)\b/;
