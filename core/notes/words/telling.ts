/*
 * What single words tell of a message that nobody could read as a whole, in whatever form and order they stand: only ever
 * for what is offered.
 */

import type { Kind } from "../reading.ts";
import { formsOf, standFor, wordSet } from "./words.ts";

/**
 * "sold", "gone" (it left, with whom or where to is open), "out" (a buyer wants it no more), "comes" (somebody turns up),
 * "denied", "back", "kept", "ours" (for whom it is kept), "given", "scrapped", "listed", "lowered", "held", "down" (money on a piece), "more" of it,
 * "paid", "rest", "owes", "started", "finished", "part" of the work or one "side", "served" (done by somebody for money), "traded", "got", "free", "spent", "corrects", "removes",
 * "planned" (not done yet), "doubted" (an offer, a thought, somebody else's), "asks" for it, "helps" somebody, "aims" at a sum.
 */
export type Tells =
  | (
      | "sold"
      | "gone"
      | "out"
      | "comes"
      | "denied"
      | "back"
      | "kept"
      | "ours"
      | "given"
      | "scrapped"
      | "listed"
    )
  | (
      | "lowered"
      | "held"
      | "down"
      | "more"
      | "paid"
      | "rest"
      | "owes"
      | "started"
      | "finished"
      | "part"
      | "got"
    )
  | (
      | "free"
      | "spent"
      | "corrects"
      | "removes"
      | "planned"
      | "doubted"
      | "still"
      | "side"
      | "served"
      | "traded"
      | "asks"
      | "helps"
      | "aims"
    );

const TELLS: Readonly<Record<Tells, ReadonlySet<string>>> = {
  sold: wordSet(
    "sell sold sale sells seld flog shift offload unload rehome deal buyer bought_it_off let_go went_for gone_for new_home new_owner got_rid go_for go_together went_together cashed sealed haggled had_it_off off_me full_price off_my_hands shook",
  ),
  gone: wordSet(
    "gone go went left leave move take took taken collect scoop grab haul carry load loaded fetch pick picked home drove out_the_door loaded_up whisk snap snapped claim has have walk",
  ),
  out: wordSet(
    "flake bail ghost cancel cancelled back_out backed pass passed ditch renege disappear vanish withdraw withdrew noshow no_show no_shows no_showed cold_feet cry_off cried_off pull_out pulled_out drop_out dropped_out changed_mind mind stand_up stood_up stood_me_up out no_longer anymore bottle bottled blew_me_off blew_off fell_through fall_through fell_apart nothing_came wriggled",
  ),
  comes: wordSet(
    "come came show shew appear turn turn_up turned_up pick_up arrive take took taking collect want materialize materialise pay paid",
  ),
  denied: wordSet(
    "not never no nobody none nope didnt doesnt dont isnt wasnt werent arent hasnt havent hadnt wont wouldnt couldnt cant cannot aint didn doesn isn wasn hasn won nothing_came",
  ),
  back: wordSet("back return refund reimburse repay bring_back came_back send_back knock_back unhappy"),
  kept: wordSet(
    "keep kept keepin retain hang_onto hanging_on hang_on_to hanging_on_to holding_on_to hold_onto stays_here stays_with staying_put not_for_sale part_with taking_it_home nick nab claimed_it",
  ),
  ours: wordSet(
    "myself ourselves ours mine our_place my_place the_house my_room our_room dorm lounge den us",
  ),
  given: wordSet(
    "donate present_for a_present as_a_present as_a_gift give gave gived gift handed charity shelter church hospice library nursery school pantry refugee refugees gave_away give_away for_nothing giveaway",
  ),
  scrapped: wordSet(
    "dump the_tip landfill curb kerb skip junk trash bin rubbish burn burnt burned firewood kindling bonfire chuck toss scrap rotten rot toast beyond_repair recycling recycle smashed woodworm termites bedbugs mold moldy",
  ),
  listed: wordSet(
    "list post online internet ad ads advert advertise advertisement advertized website site web newsletter newspaper paper notice board window booth up_for for_sale on_sale live put_up back_up stick stuck ask asking up app stall shop store",
  ),
  lowered: wordSet(
    "drop lower reduce cut slash mark knock knocked come_down came_down down_to brought_her_to brought_it_to brought_them_to took_it_to went_down go_down going_down price cheaper discount trim shave now",
  ),
  held: wordSet(
    "hold held dibs aside to_keep spoken_for pending reserve deposit downpayment down_payment layaway save_it saving promise promised earmark mark_as marking put_aside set_aside put_by first_refusal bespoke take_off_the_market taken_off",
  ),
  down: wordSet(
    "deposit downpayment down_payment put_down earnest holding to_hold to_keep non_refundable advance",
  ),
  more: wordSet("more another add added extra other additional top_up topped_up"),
  paid: wordSet(
    "pay paid payed pd settle square squared give gave gived bring brought send sent wire wired hand handed drop dropped slip slipped cough coughed fork forked clear cleared received receive got cash cashed money transfer transferred",
  ),
  rest: wordSet(
    "rest balance remaining remainder other outstanding all what_she_owed what_he_owed what_they_owed owed difference up full half",
  ),
  owes: wordSet("owe owes owed owing still_due short payday iou on_credit credit tab on_tick later"),
  started: wordSet(
    "start begin began begun crack crack_on cracked_on tackle commence get_going got_going stuck_in get_stuck dive dove dig dug on_it got_to_work under_way underway work_on working_on strip stripped",
  ),
  finished: wordSet("finish done complete ready wrap wrapped all_set good_to_go polished_off turned_out"),
  part: wordSet("coat undercoat"),
  side: wordSet("half top side drawer leg front back_side inside most"),
  got: wordSet(
    "buy buyed bought get got gotten grab pick picked find found score scored snag snagged rescue rescued take took haul hauled salvage salvaged acquire land landed nab nabbed bag bagged had_that_away come_home brought_home let_me_have threw_out went_back throwing_out put_out left_out new another scoop scooped purchase",
  ),
  free: wordSet(
    "free nothing gratis curb kerb bins trash no_charge zero giveaway skip threw_out throwing_out put_out",
  ),
  spent: wordSet(
    "spend spent spended cost costed costs charge charged bill billed set_me_back ran_me threw shell shelled fork pay paid payed need took take slip slipped buy bought got",
  ),
  corrects: wordSet(
    "mean meant wrong typo oops instead should_be shoulda_been shouldve_been should_have_been should_of_been shud_be actually correct correction mistake mistaken misread mistyped typed meaning rather sorry error haggled supposed_to_be make_that make_it change_the change_it change_that read_it read_the",
  ),
  removes: wordSet(
    "undo remove delete scratch_that scratch_it scratch_the ignore forget ditch erase nevermind never_mind nvm take_that take_it_off take_off take_out take_it_out take_it_back back_out get_rid sent_twice in_twice thru_twice through_twice duplicate didnt_mean unsell un_sell wipe disregard strike_that strike_the reverse void",
  ),
  planned: wordSet(
    "will gonna going_to goin_to about_to tomorrow tmrw tmr tonight this_weekend next soon later_today want need coming comes plan planning fixing_to fixin intend bout_to ill id hell shell theyll swing wait waiting meet meeting meets appointment dry",
  ),
  doubted: wordSet(
    "try tried trying offer offered offers might maybe may if would should could think thinking thought hope hoping wish probably perhaps says said say asked asks ask anyone quote quoted saw seen dream lowball bid bidding consider considering like_mine like_ours just_like another_like almost nearly idk unsure guess wonder interested counter countered turned_down sounds remind unless shouldve couldve wouldve should_of would_of could_of in_case",
  ),
  served: wordSet(
    "deliver delivery haul help fix repair clean weld reupholster refinish recover cane glue sharpen transport mover rental rent tow charged chargin bill wire_up rewire upholsterer upholstery welder carpenter handyman labor labour dip sandblast",
  ),
  traded: wordSet("trade swap exchange barter even_swap swop"),
  asks: wordSet("ask"),
  helps: wordSet("help helper helpers"),
  aims: wordSet("goal target aim shoot"),
  still: wordSet("still yet late running reschedule rescheduled push pushed moved_to"),
};

const SINGLE = new Map<string, Tells[]>();
const PHRASES: { phrase: string; tells: Tells }[] = [];
for (const [tells, words] of Object.entries(TELLS) as [Tells, ReadonlySet<string>][])
  for (const word of words)
    if (word.includes(" ")) PHRASES.push({ phrase: ` ${word} `, tells });
    else SINGLE.set(word, [...(SINGLE.get(word) ?? []), tells]);

/** What the words of a text tell, each once. */
export function tellsOf(words: readonly string[]): Set<Tells> {
  const told = new Set<Tells>();
  const text = ` ${words.join(" ")} `;
  for (const word of words)
    for (const form of formsOf(word)) for (const tells of SINGLE.get(form) ?? []) told.add(tells);
  for (const { phrase, tells } of PHRASES) if (text.includes(phrase)) told.add(tells);
  return told;
}

/** Before the way in which money came: "via zorp". */
export const SENT_BY = wordSet("via thru through");

/** Before what is named. */
export const BETWEEN = wordSet("the a an this that my our on to onto in");

/** Whoever something goes to or comes from. */
export const SOMEBODY = wordSet("him her them me us");

/** Before the name of somebody whom nobody knows. */
export const BEFORE_NAME = wordSet("for from to by with named called w");

/** Before what something was bought for. */
export const BEFORE_THING = wordSet("for on new");

/** Somebody who did it, and who paid us. */
export const OF_THEM = wordSet("he hes help helped helping helper she they gave_me");

/** "let me have", "gave us", "i rescued it": it came to us. */
export const CAME_TO_US = wordSet("me us i we ours for_free");

/** What is kept stands behind one of these. */
export const KEEPS = wordSet(
  "kept keep keeps keeping keepin hang hangs hanging hold holds holding nick nicked nicking nab nabbed nabbing retain retained retaining",
);

/** So much in each: "500 a month". */
export const A_PERIOD = /\b(?:a|an|per|each|every) (month|year)\b/i;

/** Where one thing ends and another may begin. */
export const BETWEEN_TOLD =
  /[.;!]+\s+|,\s+(?:(?:and|then|also|so|but|plus)\s+)?|\s+(?:and|then|also|so|but|plus)\s+/i;

/** "Could you …, please?": asked of the bot, and said all the same. */
export const POLITE =
  /^(?:(?:please|pls|kindly|(?:can|could|would|will) (?:you|u|ya)(?: (?:please|pls|kindly))?)\s+)+/i;

/** What somebody did is in their own words a thing of the earlier notes: which kind a word names. */
export const NOTE_NAMES = standFor<Kind>({
  sell: "sale sold sell unsell",
  drive: "drive trip miles",
  list: "listing price",
  hold: "deposit hold",
  pay: "pmt payment loan",
  work: "work hours minutes",
  finish: "finished done",
  buy: "bought purchase",
  refund: "refund",
});

/** "gave me the rest": nothing of ours was given away. */
export const GIVEN_TO_US = /\b(?:gave|give|gives|handed|hands) (?:me|us)\b/i;
