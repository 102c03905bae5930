/* Short words that hold a note together, in the groups that the reading asks for. */

/** Words that end a sentence as rows see it. */
export const JOINTS = wordSet("and then but so & also");

/** Marks between what stands for itself. */
export const PARTED = wordSet(", . ; ? !");

import { wordSet } from "./words.ts";

/** What may stand between a light verb and what it takes: "got the desk", "picked me up a lamp". */
export const AFTER_VERB = wordSet("the a an my me back about out him only just like");

/** Before whoever does it, where a line begins: "so uncle came over". */
export const OPENS_SUBJECT = wordSet("so then but also and & ok okay well today yesterday update oh");

/** Words that may begin another note. */
export const AND = wordSet("plus + as_well_as", JOINTS);

/** What joins one more piece to those before it. */
export const JOINS_PIECES = wordSet(
  "and & + n plus with w or nor also then too but along_with together_with as_well_as as_well including incl both either and_then aswell",
);

/** What was named before, all of it. */
export const ALL_OF_THEM = wordSet("both all both_of_them all_of_them");

/** Marks that may end a note. */
export const SEPARATORS = wordSet(": & + - | /", PARTED);

/** Marks and words between a deal and what is told beside it. */
export const BETWEEN_CLAUSES = wordSet(", : - plus", JOINTS);

/** "sold the whole set 200", "40 as a set": what stands behind these is a noun. */
export const BEFORE_NOUN = wordSet("the a as whole entire this that my one full complete");

/** "18 miles to pick up the desk", "bought at auction": what follows is no verb of the note. */
export const TOWARDS_SOMEBODY = wordSet("to from at off via");

/** "paint 12 and brushes 6": one more of the same kind. */
export const PLUS = wordSet("and & , +");

/** "paint is 12". */
export const IS = wordSet("is are costs");

/** Prepositions that open a slot. */
export const PREPOSITIONS = wordSet("for on to from at off with w of in by");

/** What may stand before a noun that nobody listed. */
export const BEFORE_UNLISTED = wordSet("a an the my some i we also");

/** "the lamp at 40": between a piece and its price. */
export const PRICED_BY = wordSet("at for @");

/** "40 for the lamp": between a price and its piece. */
export const BEFORE_PRICED = wordSet("for on");

/** Behind prices told in the order of their things, where they end: "75 and 40 on the site". */
export const BEHIND_ROW = wordSet("respectively in on at from online");

/** Before prices in a row, and said for each of them. */
export const BEFORE_EACH = wordSet("to at for");

/** Before two numbers that are no two prices. */
export const BEFORE_ROW = wordSet("between from");

/** What may stand between "agreed" and the price. */
export const BEFORE_AGREED = wordSet("on to at upon for pay a the price of was is");

/** What may stand between such a noun and its price. */
export const BEFORE_PRICE = wordSet("for at @ by to");

/** Where a payment to a loan goes. */
export const LOANWARD = wordSet(
  "to toward towards on onto into at off against payment installment bank lender",
);

/** What stands beside an amount and the name of a loan. */
export const BESIDE_LOAN = wordSet(
  "to toward towards on onto into at for the my loan one more another an extra paid pay put sent send threw throw thrown dropped drop tossed toss chucked chuck transferred moved made payment installment bank lender of i just again and also then " +
    "minimum min usual regular monthly went through straight autopay auto took came out that it all over sent_in mailed wired off against right directly first this month week time knocked took",
);

/** What was paid, to the loan named: "paid grad 250", "the grad payment went through, 250". */
export const PAID_TO_LOAN = wordSet("paid pay sent autopay threw minimum");

/** Words around the loan that a payment was meant for. */
export const LOAN_MEANT = wordSet(
  "that it this was is were for to on the loan one should be have been went go gone supposed supposed_to meant no oops sorry wait i actually",
);

/** Of these, what tells that it was noted before. */
export const MEANT_BEFORE = wordSet("was were should meant supposed went");

/** Words of what is owed on a loan by now: "van one is at 2300". */
export const LOAN_STANDS = wordSet("is stands sits balance down");

/** What stands beside that. */
export const BESIDE_BALANCE = wordSet(
  "is at now the my loan one on to down balance stands sits statement says of it today just still only",
);

/** "the other one" of two loans. */
export const OTHER_LOAN = wordSet("other");

/** "the price", "her money". */
export const WHOSE = wordSet("the her his their my that");

/** What money was spent on follows. */
export const SPENT_ON = wordSet("on for in");

/** What may stand between a percent and its fee. */
export const FEE_JOINTS = wordSet(
  "of in for the a was is at to selling listing platform takes took keeps kept gets charges",
);

/** What a way of paying may stand behind. */
export const BY = wordSet("by in via with w");

/** "for the desk": what a sentence is about, before its verb. */
export const BEFORE_TOPIC = wordSet("for on the my");

/** Words of a row's <art>. */
export const ARTICLES_WIDE = wordSet("the a an my our this that his her their some those these your");

/** Words of a row's <someone>. */
export const THEY = wordSet("he she they somebody someone who");

/** Who stands for the person just spoken of, and for nobody else. */
export const THE_SAME = wordSet("he she they");

/** Marks that end a sentence as rows see it. */
export const CLAUSE_MARKS = wordSet(": - ( )", PARTED);

/** Marks that a gap goes over. */
export const GAP_MARKS = wordSet(", - ( ) + &");

/** Passed over at the beginning of a sentence. */
export const INTERJECTIONS = wordSet(
  "ok okay so hey hi well um uh yes yep yeah oh yay finally today just now also btw fyi update note lol morning ugh welp woohoo yay oh_well",
);

/** Words beside what goes on from a note before: "another one, 28 this time". */
export const BESIDE_GOING_ON = wordSet(
  "there here them they him her from this_time this time again too also as_well today now same the_same place sale guy seller lady spot trip pair both two set lot",
);

/** One price is for all that stand beside such a word. */
export const JOINS_BOTH = wordSet("and both all together plus");

/** Behind one sum for all that was named. */
/** What a price of several is said with. */
export const SUMS_UP = wordSet("total altogether in_all all_told in_total all_together for_both for_all");

/** A price of all of them together, and of none by itself. */
export const OF_ALL_TOGETHER = wordSet(
  "together for_the_pair for_the_set the_pair a_pair the_lot as_a_set",
  SUMS_UP,
);

/** So are all that were spoken of, where a note names none. */
export const ALL_AS_ONE = wordSet(
  "everything all_of_it as_a_bundle as_a_lot bundled for_all as_one",
  OF_ALL_TOGETHER,
);

/** What people call their one loan, whatever it was taken out for. */
export const PLAIN_LOANS = wordSet(
  "student students school college bank personal credit union business shop biz regular usual normal monthly big old main only same site website app portal",
);

/** So much to each of the loans. */
export const EACH_OF_LOANS = wordSet("each apiece ea every");
export const ALL_LOANS = wordSet("both all loans of them piece a");

/** Between what is worked on and the piece that it is on. */
export const ON_PIECE = wordSet("off out from on in inside under of into around");

/** "12 hours on the ward": what a time was spent with. */
export const SPENT_AT = wordSet("of on at");

/** Behind a fact that stands, what such a word opens is told beside it: when, where, why, and how one felt. */
export const OPENS_ASIDE = wordSet(
  "in inside outside at by from with w behind near around during after before between past across under beside along through among amid despite without past over next_to in_front_of because bc cuz cause coz since as while whilst when where which who that so like against about full_of ngl tbh lol lmao lmfao haha omg ugh whew dang damn smh fr lowkey highkey honestly frankly imo imho fwiw sry sorry thank thanks thx",
);

/** How a deal was left open, or what hangs on it: told behind no such word in passing. */
export const TERMS = wordSet(
  "handshake honor honour bet wager basis understanding strings option options condition conditions terms plan promise promises trial tab tick approval consignment guarantee warranty return returns exception exceptions draft reserve dream dreams catch proviso stipulation contingency instalments installments",
);

/** So do these, where they cannot name what a cost or a job is for. */
export const OPENS_WIDE = wordSet("on for off to");
export const WHOSE_OWN = wordSet("my his her their our");

/** These join a thing on as often ("and a vase"): they open one only where somebody is named next, or what is theirs. */
export const OPENS_OF_OWN = wordSet("and n & but then plus");
export const OWNS = wordSet(
  "i we im ive id weve my our me us his her their he she they hes shes theyre it its no what that thats now then everyone everybody nobody mom dad god the",
);

/** "to imani, who paid by transfer": says more of somebody just named. */
export const RELATIVES = wordSet("who which whose whom");
export const TELLS_OF_BUYER = wordSet("paid pays gave picked took is was left put wants");
export const BEFORE_BUYER = wordSet("to from by for");

/** Behind these stands one more thing of those before, or on which terms it was. */
export const JOINS_THINGS = wordSet(
  "and & + plus with w w/ n or nor but not without minus on for down per over under off against upon",
);
