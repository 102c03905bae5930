/* What stands before, within and behind the name of a person, a place or a loan. */

import { ARTICLES } from "./filler.ts";
import { wordSet } from "./words.ts";

/** What stands around a name in the words of its row. */
export const NAME_AROUND =
  /^(?:(?:its|it is|this is|by|the|a|an|my|our|some|this|went|gone|left|going|with|to) )+| (?:here|speaking|again|texting)$| (?:finally|just|came|stopped|drove|swung|dropped|showed|picked|paid|gave|sent|handed|left(?= (?:me|us)\b)|waited|loved|liked|walked|saw|called|texted|messaged|haggled|wanted|looked|measured|rode|fell in|decided)\b.*$/g;

/** Behind a name, what is told of them: "from megan shes coming sunday". */
export const SAID_OF_THEM = wordSet(
  "hes shes theyre hell shell theyll because cause cuz since until till while after before if so",
);

/** Somebody without a name. */
export const NOBODY_NAMED = wordSet(
  "he she they hes shes theyre theyve hell shell theyll hed shed theyd someone somebody who buyer person pays paying",
);

/** A name follows a preposition, or begins the clause: "the lady with the twins backed out". */
export const TAKES_NAME = wordSet("from to for off at off_of and then so but");

/** What may stand before a name. */
export const BEFORE_NAMES: ReadonlySet<string> = new Set([
  ...ARTICLES,
  "this",
  "that",
  "some",
  "his",
  "her",
  "their",
]);

/** What may end where somebody is placed: "the lady with the truck". */
export const PLACING = wordSet("with in from on at down across near behind");

/** Words that carry a name on: "lady in the red truck", "guy who wants two". */
export const CARRIES_ON = wordSet("w of who thats by next over off named called", PLACING);

/** Words that no name goes past. */
export const ENDS_NAME = wordSet(
  "for until till til thru through via today fee fees minus each plus and then but because bc so lol lmao haha hahaha omg was were",
);

/** Somebody who may be called by name behind it. */
export const SOMEBODY_NAMED = wordSet(
  "guy lady man woman dude girl boy kid fella feller fellow chap bloke gent gentleman gal person someone somebody customer buyer student teen teenager young_man young_lady young_woman old_man",
);

/** Others who may be told by more words. */
export const ALSO_NAMED = wordSet("couple neighbor neighbour family mom dad");

/** What somebody is like who does something: "a young fellow gave me 110". */
export const LIKE_SOMEBODY = wordSet(
  "young younger old older elderly nice sweet kind lovely friendly polite grumpy gruff little tall funny picky strange weird odd rude cute pregnant retired local random newlywed young_married soft_spoken cheerful chatty quiet busy nervous rich local_college college",
);

/** Between somebody and the name, with one that says so: "by the name of". */
export const BEFORE_GIVEN_NAME = wordSet("named called name goes by the of is who whose whos");
export const IS_CALLED = wordSet("named called name goes");

/** Behind somebody and the name, without a word between: "girl lina she left 30", "this guy marcus put 40 down". */
export const SAID_OF_NAMED = wordSet(
  "he she put puts left leaves gave gives paid pays sent handed dropped wired bought buys took takes grabbed wants wanted got gets picked came comes has",
);

/** What a person or a place may be described by, though it is a piece: "lady with the dresser". */
export const DESCRIBES = wordSet("with w in near by behind");

/** Words that no source or buyer goes past. */
export const ENDS_SOURCE = wordSet("by sold now cuz gave paid pays owes will half me us gave_me", ENDS_NAME);

/** Whoever they are, another sentence begins: "sold desk 140 to mike he owes me 40". */
export const SUBJECTS = wordSet("he she they i we");

/** Who did not, where a sale has not come about. */
export const BUYERS_SAID = wordSet("he she they buyer guy lady nobody");

/** Prepositions within a name, or at its end: "lady at the yellow house". */
export const JOINS_NAME = wordSet("at on in with from to");

/** A name ends before these where a piece follows. */
export const ENDS_BEFORE_PIECE = wordSet("on at from to");

/** What is left off before and behind a name. */
export const DETERMINERS = wordSet("the a an my our this that some");

/** Which place of one kind: "all at the same yard sale". */
export const WHICH_PLACE = wordSet("same one");

/** When and on what way, behind a name and one of the first words: "off a coworker at break". */
export const BEFORE_OCCASION = wordSet("at on over during by");
export const OCCASIONS = wordSet(
  "break lunch lunch_break noon night dawn dusk shift way weekend phone text email closing",
);
/** No name goes on behind these. */
export const DATES_NAME = wordSet("after before during");

/** What no name ends with. */
export const DANGLES = wordSet("who whos that which whose on in at with from to of by down near");

/** Words that are no buyer and no source. */
export const NO_NAMES = wordSet(
  "loan sale free parts now today asking full half lot everything delivery shipping cheap double less more he she they we i",
);
/** Nor are they alone. */
export const NO_NAMES_ALONE = wordSet(
  "his hers theirs mine ours same next car truck van trailer suv vehicle apartment house condo trip vacation wedding",
);

/** From whom or where a piece came. */
export const WHENCE = wordSet("from at off off_of outta out_of");

/** To whom it went. */
export const WHOM = wordSet("to for from");

/** Where it happened. */
export const WHERE = wordSet("on in at via");

/** Behind these, what an income is from. */
export const WHICH_STREAM = wordSet("from for");

/** Words around a loan that name none. */
export const NO_LOAN_NAMES = wordSet(
  "new the my our this_month this_week this_year each_month the_month again already a an to on toward towards for of at balance payment payments rate extra is now this that all old from into in and principal interest owe owed still left pay paid made make sent send put add added opened open statement says uses use using has with remaining current got took out another split over across big only one called named took_out gets company people folks servicer office lender place",
);

/** How it begins to be told out of what a loan was paid. */
export const WHENCE_PAID = wordSet("out from of off with using");

/** Words that elsewhere say nothing and name a loan: "new loan shop 6000". */
export const LOAN_NAMES = wordSet("shop house home garage work business family");

/** Words that are never the noun of a piece. */
export const NO_NOUNS = wordSet(
  "piece pieces pc pcs set lot bunch group dozen x something anything everything stuff someone principal interest payment money day night morning week yesterday trip deposit loan money dollars bucks wow what who how why when where",
);

/** "listed 175 & im tired": what stands behind these tells of somebody, or joins something on. */
export const NO_NOUN_AFTER = wordSet(
  "from to at in off with w by via every im i is are was were be been feel feeling so very too and & but he she they it who",
);

/** Behind these, in a listing, stands the place where it is shown. */
export const NO_NOUN_IN_LISTING = wordSet("on via");

/** A name follows. */
export const BEFORE_SOMEBODY = wordSet("with w to from give gave giving for traded swapped");

/** In whose company something was done. */
export const WITH = wordSet("with w");
