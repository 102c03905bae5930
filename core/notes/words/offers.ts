/* What becomes of an offer, in the words that people answer it with. */

import { wordSet } from "./words.ts";

/** It was taken: the piece is theirs, and nothing was paid yet. */
export const ACCEPTED = wordSet(
  "hes_in shes_in theyre_in im_in were_in hes_ok_with_that shes_ok_with_that hes_fine_with_that shes_fine_with_that took took_it i_took_it we_took_it i_took_that taking_it im_taking_it accepted i_accepted accepted_it i_accepted_it accepted_the_offer accepted_that deal its_a_deal we_have_a_deal " +
    "done_deal agreed i_agreed we_agreed he_agreed she_agreed they_agreed agreed_to_it shook_on_it we_shook_on_it shook_hands said_yes i_said_yes he_said_yes she_said_yes they_said_yes " +
    "said_ok i_said_ok he_said_ok she_said_ok they_said_ok said_okay i_said_okay told_him_yes told_her_yes told_them_yes told_him_ok told_her_ok told_them_ok said_yes_to_that said_sure i_said_sure " +
    "going_with_it going_with_that went_with_it went_for_it works_for_me good_enough fair_enough fine_with_me ok_with_me good_with_me im_fine_with_that im_good_with_that im_ok_with_that " +
    "sounds_good close_enough ill_take_it id_take_it well_take_it i_will_take_it gave_in i_gave_in caved i_caved we_caved yes_to_that let_him_have_it let_her_have_it let_them_have_it",
);

/** It was not, or is not yet. */
export const DECLINED = wordSet(
  "declined decline declining turned_him_down turned_her_down turned_them_down turned_it_down turned_down turned_that_down said_no told_him_no told_her_no told_them_no no_way no_thanks no_thank_you nope no_deal " +
    "passed i_passed passing refused rejected laughed lol haha holding_off holding_out held_out ignored ignoring ignored_it not_taking didnt_take wont_take walked walked_away insulting insult ridiculous " +
    "too_low way_too_low too_little not_enough as_if nah no_thx never_answered didnt_answer not_budging didnt_budge stood_firm stayed_firm firm " +
    "hard_no um_no uh_no lol_no lmao_no no_lol not_happening not_interested not_a_chance no_chance hell_no never_mind_him said_nope absolutely_not i_think_not not_for_that told_him_nah told_her_nah told_them_nah lmao rofl blocked on_read rolled_my_eyes eye_roll deleted_it",
);

/** At the end of what is told of it, or of an answer of its own, and what may stand around them there: "um no", "nope lol". */
export const NO = wordSet("no nope nah passed");
export const AROUND_NO = wordSet("hard um uh lol lmao haha thanks way so i and just");

/** What we ask, said beside it: "im at 140". */
export const OUR_PRICE =
  /\b(?:i['’]?m|we['’]?re|it['’]?s|firm|still) (?:firm |still |listed )?(?:at|asking) \$?\d+/gi;

/** It was made. */
export const OFFERED = wordSet(
  "offered offers offer offering would_pay will_pay would_give will_give lowballed bid countered can_do could_do would_do will_do asked_if asking_if asked_me_to asks_if lowball lowballing lowballer tried_to_get tried_getting tried_offering trying_to_get wanted_it_for",
);

/** Words beside those that say that it was taken. */
export const AROUND_TAKEN = wordSet(
  "ok okay well so yeah yes yep alright then finally and the for at with on his her their my to",
);

/** What is said beside the price itself: "im fine with 260". */
export const AGREES = wordSet(
  "im i we were was is am are fine good okay works cool happy accepted took taking take doing did agreed settled",
);

/** What is told of such a piece is no offer any more. */
export const SOLD_ALREADY = wordSet("sold");

/** What is asked in return, before its price: "told him 85". */
export const COUNTERS = wordSet(
  "i told said asked countered offered texted him her them back with at for we so ok it",
);

/** An hour at which somebody comes: no money. */
export const HOUR_SAID = /\b(?:at|around|about|by) \d{1,2}(?::\d{2})? ?(?:am|pm)?\b/gi;

/** Behind these stands the price at which two met. */
export const MET_AT =
  /\b(?:met|settled|landed|agreed|shook|compromised|closed|ended(?: up)?)(?: (?:in the middle|halfway|hands))? (?:at|on|for)\b/i;

/** Money that is left for a piece. */
export const PUT_DOWN = wordSet("left put gave sent down deposit dropped paid");

/** Money that is only spoken of: "she will put 40 down". */
export const STILL_TO_PAY = wordSet(
  "will ll gonna going_to coming to_come on_its_way on_the_way later tomorrow tonight soon when once as_soon_as " +
    "bringing sending promised promises",
);
