/*
 * What somebody did with a piece of ours, word by word, and what else is said beside it. Every word of such a message has
 * to be of one of these kinds, or of daily life.
 */

import type { Tells } from "./telling.ts";
import { wordSet } from "./words.ts";

/**
 * "goes": the piece is gone. "takes": somebody has it, or we have another one. "pays": money came. "puts": money is put on it. "comes": somebody came. "full":
 * at what is asked for it. "rest": what is left to pay. "more": beside what came before. "back": our money goes back.
 * "up": it is offered. "cut": for less than before. "held": it is kept for somebody. "gives": we let it go. "half": of the price. "same":
 * for what the one before went for. "awaited": they are on their way.
 */
export type Deal =
  | "goes"
  | "takes"
  | "pays"
  | "puts"
  | "comes"
  | "full"
  | "rest"
  | "more"
  | "back"
  | "up"
  | "cut"
  | "held"
  | "gives"
  | "half"
  | "same"
  | "awaited";

const DEALS: Readonly<Record<Deal, ReadonlySet<string>>> = {
  goes: wordSet(
    "went off_they_went off_he_went off_she_went off_it_went away_they_went goes_to went_to went_home went_for went_out_the_door gone gone_for sold left_with left_today left_this_morning has_a_new_home has_a_home found_a_home found_a_new_home found_its_person off_me bought_it_off_me bought_her_off_me out_the_door off_my_hands home_with",
  ),
  takes: wordSet(
    "took takes taken took_home took_it_home grabbed grabs snagged snapped_up snapped_it_up scooped scooped_up nabbed bought bought_it buys walked_off walked_off_with drove_off drove_off_with went_off_with made_off_with picked_up picked_it_up fetched fetched_it collected hauled hauled_off loaded loaded_up loaded_it_up carried_off claimed bit drove_it_home drove_home has_it has_it_now swooped_in_on got_it got_her got_him",
  ),
  pays: wordSet(
    "paid paid_me pays_me gave_me gave_us handed_me handed_over handed_me_over brought brought_me brought_the sent sent_me wired wired_me settled settled_up squared_up forked_over came_up_with coughed_up counted_out received came_in transferred arrived paid_up paid_in_full cash_in_hand in_my_account in_the_account in_my_pocket in_hand i_got i_get we_got got_me got_us took_his took_her took_their paid_for",
  ),
  puts: wordSet(
    "put put_down puts_down down left_me left_us left dropped_off dropped deposit a_deposit as_a_deposit as_deposit toward towards to_hold_it to_hold to_keep_it to_save_it up_front upfront to_secure_it earnest layaway on_layaway",
  ),
  comes: wordSet(
    "came came_back came_by came_over came_for came_for_it came_for_hers came_for_his came_round came_in_person was_here is_here showed showed_up turned_up stopped_by swung_by popped_by came_with was_by made_it here_already been_and_gone came_to_get_it came_to_get came_to_pick_it_up came_for_her came_for_him",
  ),
  half: wordSet("half the_half half_of_it half_the_price half_the_money half_up_front"),
  same: wordSet("same_money same_price same_as_before the_same for_the_same same_deal same_amount"),
  full: wordSet(
    "full full_price full_ask full_asking full_asking_price asking_price at_asking asking_the_asking list_price paid_asking what_i_asked what_i_wanted what_we_asked no_haggling didnt_haggle without_haggling never_haggled no_haggle no_questions_asked the_full_amount for_asking",
  ),
  rest: wordSet(
    "rest the_rest the_other the_remaining remaining remainder the_balance balance the_last what_was_left what_she_owed what_he_owed what_they_owed",
  ),
  more: wordSet("more another additional extra an_extra on_top"),
  back: wordSet(
    "gave_back gave_her gave_him gave_them sent_her sent_him sent_them handed_her handed_him slipped_her slipped_him knocked_off_after refunded refunded_her refunded_him returned_her returned_him",
  ),
  up: wordSet(
    "up_for up_at listed relisted posted posted_at online online_at its_up on_at asking asking_for live live_at back_up back_up_at advertised put_up put_it_up for_sale for_sale_at on_the_site listing listing_it back_on_the_market on_the_market back_online relisting relisting_it",
  ),
  cut: wordSet(
    "down_to now dropped_to dropped_it_to cut_to cut_it_to knocked_it_to knocked_down_to knocked_it_down_to lowered_to lowered_it_to marked_down_to marked_it_down_to brought_it_down_to took_it_down_to went_down_to price_is_now price_now now_at its_now reduced_to reduced_it_to slashed_to price_goes_up_to bumped_to bumped_it_to raised_to raised_it_to knocking_it_down_to dropping_it_to dropping_to price_goes_to price_drops_to",
  ),
  held: wordSet(
    "wants want wants_it wanted spoken_for spoke_for spoke_for_it claimed_dibs dibs has_dibs reserved reserved_it is_holding holding put_a_hold_on put_a_hold is_getting is_taking hold on_hold to_hold_for im_holding holding_it_for is_in_love_with loves fell_for fell_in_love_with fell_hard_for is_coming_for picking_up picking_it_up pickup on_pickup is_picking_it_up is_picking_up wants_to_come will_pick_it_up will_pick_up picks_it_up picks_up will_come will_be_back will_come_back coming coming_back coming_for_it comes hell_come shell_come theyll_come hell_be_back shell_be_back theyll_be_back hell_pick_it_up shell_pick_it_up theyll_pick_it_up i_keep_it keep_it so_i_keep_it to_keep keeping_it_for would_like id_like",
  ),
  awaited: wordSet(
    "here_in here_at here_by here_soon on_the_way on_her_way on_his_way on_their_way is_on_the_way",
  ),
  gives: wordSet(
    "beat_me_down_to talked_me_down_to haggled_me_down_to got_me_down_to came_down_to let_it_go let_her_go let_him_go let_them_go let_go let_him_have_it let_her_have_it let_them_have_it let_him_have let_her_have let_them_have let_it_go_for let_it_go_to sold_it sold_her sold_him shook_on done_deal a_deal deal",
  ),
};

/** What is said by so many words, and how many words that takes at the most. */
const BY_PHRASE = new Map<string, Deal>();
for (const [deal, list] of Object.entries(DEALS) as [Deal, ReadonlySet<string>][])
  for (const words of list) BY_PHRASE.set(words, deal);

/** What turns a message round, tells how far it went, or of another time or thing: beside these nothing is sure. */
export const TURNS_HEARD = wordSet(
  "as_good_as before_last night_before other_day day_before again nowhere_near assuming provided else own seller previous before_that last_time auction estate_sale yard_sale fair on_approval approval credit iou tab stuff loan rent rebate almost nearly partly short minus without except instead either if unless only basically wish once original originally missed lost turned_down turned_it_down would_have could_have should_have used_to supposed_to meant_to yet another_like one_like just_like gets about_to next_to maybe might plan planning trying tried thought wonder imagine pretend dream dreamt joke jk kidding wrong mistake oops actually meant supposed fee fees tip tipped change ago_i when_i before_i after_i every_time always usually normally often sometimes hopefully remind reminder trade traded swap swapped check_bounced bounced parts pieces_of too_late",
);

/** Nobody, and nothing, of what one hopes for of a listing. */
export const NO_INTEREST = wordSet("nobody noone no_one none not_one not_a_single not_even not_a crickets");

export const DEAL_WORDS_MAX = 5;
export const dealOf = (words: string): Deal | undefined => BY_PHRASE.get(words);

/** Nothing of a deal by themselves. */
export const BESIDE_DEAL = wordSet(
  "the a an theres heres there_is here_is and so then also too as_well as just already finally now today this_morning this_afternoon tonight yesterday it its that thats this is was were are be been been_and i im ive we me us my our for at on of in to with by from off all him her his hers she he they them their theirs same money cash there over here out right away straight within the_hour an_hour hour minutes later ago of_course yes yay ok okay well oh ah and_then but first last one ones price total even still sitting since because cause where who which came_true you know guess whole thing goes noon lunch lunchtime evening night minute hours minutes this_time or_best or_best_offer obo firm or_nearest_offer him_and_her in_full in_all all_together altogether together thats_it its_his its_hers its_theirs in_twenties twenties in_tens in_fives in_bills in_notes on_him on_her on_them or_so like_a_charm took_pics took_pictures took_photos photographed snapped_pics till til until when once time times day days next_week next_weekend on_the_spot the_money the_cash the_site the_garage the_driveway the_house the_shop the_porch the_phone the_lot the_table_top the_way a_bit a_while a_day a_week a_minute a_second a_few a_lot a_little the_same the_spot spot",
);

/** Whoever it is that has come for a piece; more words tell which. */
export const ANYBODY = wordSet(
  "he she they somebody someone hes shes theyre guy guys lady ladies man woman dude girl boy kid couple buyer person people movers mover driver gal fella bloke chap gentleman folks",
);

/** Of one who does this for a living, is of that place, or comes as one: "teacher", "dentist", "bar owner". */
export const OF_SOME_KIND =
  /^(?:[a-z]{2,}(?:ers?|ors?|ists?|ians?|men|man|woman|women|ladys?|lady|mom|mum|dad|moms|dads)|students?|couples?|family|families|office|church|school|cafe|restaurant|nurse|nurses|cop|vet|aunt|uncle|mother|father|son|daughter|sister|brother|husband|wife|friend|friends|roommate|boyfriend|girlfriend|mate|cousin|grandma|grandpa|nephew|niece|roomie|partner|parents|twins|bride|widow)$/;

/** "two college kids" */
export const FEW_PEOPLE = /^(?:[2-6]|two|three|four|five|six)$/;
export const SEVERAL_PEOPLE = /(?:s|people|folks|men|women)$/;

/** What somebody says of what they have bought, before the money that goes back for it. */
export const SAYS_OF_IT = wordSet(
  "says said complained complains texted wrote called claims swears reckons found noticed",
);

/** Before which a day is one to come. */
export const BEFORE_COMING = wordSet("till until til by");

/** Between somebody and what tells which one: "teacher from across the street". */
export const TELLS_WHICH = wordSet(
  "from with in next across two over at who down up of that moving named near",
);

/** What may not be a part of what somebody is called by. */
export const NOT_OF_NAME = wordSet("to for on and so its is was", TELLS_WHICH);

/** Before any piece at all, which is hardly ours. */
export const ANY_OTHER = wordSet("a an another some any similar");

/** A joint, or a laugh, before what somebody did. */
export const OPENS_DOING = wordSet("and so but haha");

/** Whose brother it was: of theirs, or any. */
export const WHOSE_KIN = wordSet("her his their a an the to");

/** Where who somebody is has been told: what they did follows. */
export const ENDS_WHO = wordSet("already just has will");

/** What a word tells beside which no deal is told. */
export const TELLS_OTHERWISE: ReadonlySet<Tells> = new Set<Tells>([
  "doubted",
  "planned",
  "denied",
  "scrapped",
  "given",
  "kept",
  "ours",
  "traded",
  "corrects",
  "removes",
  "free",
  "owes",
  "out",
  "served",
]);

const PAY = "(?:put|send|pay|give|drop|bring|leave|take|get|buy|grab|transfer|wire)";
const PAYING =
  "(?:putting|sending|paying|giving|bringing|leaving|dropping|transferring|wiring|takes|taking|gets|getting|grabs|grabbing)";
const LATER_ON =
  "(?:tomorrow|tmrw|tonight|later|soon|next week|when|once|(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?)";

/** Money that is only promised, or a piece that somebody means to take: "she'll take it", "putting 50 down tomorrow". */
export const PROMISED = new RegExp(
  `\\b(?:(?:he|she|they)['’]?ll|will|gonna|going to|wants? to|wanted to|would like to|offer(?:s|ed) to|hop(?:es|ing) to|asked to) ${PAY}\\b(?! (?:me |us )?(?:the )?(?:rest|balance|remain|other))|\\b${PAYING}\\b[^,.;]*\\b${LATER_ON}\\b|\\bdeposit (?:is )?(?:coming|to come)\\b`,
  "i",
);

/** It was paid, or put down, already. */
export const PAID_NOW =
  /\b(?:put|left|gave|sent|paid|handed|slipped|dropped|came|took|picked|brought|got)\b/i;
