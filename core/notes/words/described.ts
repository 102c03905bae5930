import { wordSet } from "./words.ts";

/* What is told of a piece beside its purchase: how it is, and who sold it. */

/** Before what it lacks, has or comes with. */
export const HAS_OR_LACKS = wordSet(
  "missing lacks lacking minus lost without no has have had with w comes came coming including includes only",
);

/** Behind these another piece may be told. */
export const ALONG_WITH = wordSet("with w including includes");
export const ITS_OWN = wordSet("the its all original both matching their");

/** Before what is to be done with it. */
export const TO_BE_DONE = wordSet("needs need needing could should want wants");

/** Ahead of any of these, and of a part. */
export const BEFORE_LIKENESS = wordSet(
  "but though although it its theyre they which that is was are were just really only still definitely probably def will would might both all also even one two a the although_it and",
);

/** How a part is: what may follow it, before or in place of a word of damage. */
export const IS_LIKE = wordSet(
  "fine good great ok okay perfect solid rough bad is are was were isnt arent wasnt werent look looks looked seem seems feels smells has have needs need wont doesnt dont didnt included intact original works work",
);

/** Behind "is" and the like these tell that a part is not there. */
export const NOT_THERE = wordSet("gone off out shot trash trashed toast junk");

/** A remark on a piece may name these as well as its parts. */
export const LIKE_PARTS = wordSet(
  "ring rings stain stains paint finish varnish lacquer stripe joints dovetail dovetails grain patina rust smell odor upholstery stuffing wobble wear tear love work tlc cleaning sanding coat refinishing repair repairs fixing attention legs edge edges side sides nail nails staple staples tape sticker stickers inlay carving carvings detail details",
);

/** Who says any of these of a piece tells more than how it is. */
export const NO_LIKENESS = wordSet(
  "for to per each apiece bought sold paid pay spent cost costs price worth plus extra free charge charged offered asking wanted said says owe owes half rest tomorrow later next swap swapped traded trade today yesterday return returned refund refunded mistake wrong error actually nope sorry not if unless until maybe instead mine ours hers theirs his her him them i we my our me us",
);

/** From these one buys. */
export const FROM = wordSet("from off off_of out_of out of");

/** Behind who sold it these open what is told of them. */
export const TELLS_OF_SELLER = wordSet("who whos whose whom that thats which while when where as");
export const SELLER_AND_I = wordSet("i we my he she they");

/** What is told of who sold it with any of these may undo the purchase, or is of its price. */
export const UNDOES_PURCHASE = wordSet(
  "keep keeps keeping kept never cancelled canceled cancels bailed ghosted flaked refused refuses asks asked asking says said tomorrow later next_week " +
    "pay pays paid owe owes owed sold sell sells hold holds holding held return returned refund refunded deposit scammed lied " +
    "changed backed showed show if unless but except until instead offered offer bought buy buys might may",
);

/** Others, of whom it is told what they did with a piece before. */
export const SOMEBODY = wordSet(
  "he she they hes shes theyre somebody someone whoever owner owners seller sellers landlord tenants",
);
export const ANIMALS = wordSet("cat cats dog dogs kids toddler mice");
export const LEADS_TO_WHO = wordSet(
  "and so but because cause cuz bc since as apparently turns_out i_guess guess i_think previous last prior old former the their its his her",
);

/** What one of us does beside a purchase that is no deed of the books. */
export const KIN_DOES = wordSet(
  "helped helps loves love hates hate likes thinks approves laughed spotted rolled",
);

/** Behind a denial these say no more than how it went. */
export const BUDGES = wordSet(
  "budge want need use like care know haggle even move negotiate charge mind remember realize have believe fit",
);

/** Whose a thing is, or is not, and who does nothing. */
export const WHOSE = wordSet("his her their");
export const NOT_WHO = wordSet("him them who you your");
export const BEFORE_THEIRS = wordSet("hers all", WHOSE);

/** Before what somebody was doing: "they were tossing it". */
export const BEFORE_DOING = wordSet("was were is are just hes shes theyre");

/** "two doors down": behind a number and one more word, how far away somebody lives. */
export const AWAY = wordSet("down over up away");

/** No number is a count of what stands behind these. */
export const COUNTS_NOTHING = wordSet("before after during is are");
