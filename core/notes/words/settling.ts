/* What a message about somebody on the books may say, each word with what it tells: a buyer who owes, or one who holds. */

import { wordSet } from "./words.ts";

/** Money came in. */
export const PAID_IN = wordSet(
  "paid pay pays payed pd gave gives sent sends handed brought brings got get received collected came settled squared dropped dropped_off paid_up settled_up squared_up came_through came_in paid_off with_the_money",
);

/** The one who paid: nobody by name. */
export const PAYER = wordSet("he she they buyer guy lady");

/** All that was still to come. */
export const ALL_OF_IT = wordSet(
  "rest other remaining remainder balance last final all full whole up off settled squared paid_up settled_up squared_up paid_off good even square",
);

/** More of what came before. */
export const MORE_OF_IT = wordSet("another more additional extra again");

/** The piece left with its buyer. */
export const FETCHED = wordSet(
  "picked picks took takes grabbed loaded hauled fetched home gone left_with carried collected picked_up took_home drove_off hauled_off",
);

/** Whose the money was. */
export const FROM_THEM = wordSet("from with");

/** It will never come. */
export const NEVER_PAYS = wordSet("never wont isnt not forget forgetting forgive forgave forgiving");

/** They want the piece no more. */
export const BACKS_OUT = wordSet(
  "no_show noshow out backed flaked bailed ghosted cancelled canceled changed doesnt dont didnt mind backed_out flaked_out bailed_out",
);

/** Alone it is no more than a wish. */
export const WANTS_IT = wordSet("want wants");

/** Their money goes back to them. */
export const GIVES_BACK = wordSet("back refunded returned gave_back sent_back mailed");

/** It stays with us. */
export const KEEPS_IT = wordSet("kept keeping keep");

/** Somebody who came for the one named. */
export const FOR_THEM = wordSet("husband wife son daughter brother sister mom dad partner friend");

/** What else stands in such a message. */
export const BESIDE_SETTLING = wordSet(
  "the a an and then i we me us his her hers him them their theirs it that this of on for to by in at is was are be has had just finally now today here over through deposit money payment bit part with_it for_it of_it anymore any longer after deal thing going ever even came stopped stopped_by came_by swung_by dropped_by showed showed_up turned_up this_morning this_afternoon this_evening tonight already up available sale for_sale back_up w show no_show noshow twenties hundreds fives tens bills",
);

/** A thing that was lent is here again. */
export const COMES_HOME = wordSet("back home returned brought dropped");

/** What else stands in such a message. */
export const BESIDE_HOME = wordSet(
  "the my our a got have has had is was are came gave picked up off from by it i we he she they again just finally now today did me us and returns uncle aunt cousin mr mrs",
);
