import { SITES } from "./places.ts";
/* Words that turn what a verb means, and words that only look like verbs. */

import { phrases, wordSet } from "./words.ts";

/** "scored 2 goals", "3 left", "10 change": counted things, no verbs, but for "3000 left on the loan". */
export const COUNTED = wordSet("goals left change");

/** What was thrown in cost nothing by itself. */
export const THROWS = wordSet("threw tossed");

/** A deposit was given back. */
export const GIVEN_BACK =
  /^(?:(?:deposit |(?:was|were|got) )?(?:refunded|returned)|deposit back|(?:was )?(?:given|handed) back|went(?: back)?|refund|refunding|gave back|gave|returning|sent back|sent|paid back|gave (?:him|her|them) back)$/;

/** It was kept. */
export const KEPT =
  /^(?:(?:kept|keeping|keep)(?: (?:her|his|their|the) deposit(?: of)?)?|stays|(?:hanging|hung|holding|held) on ?to|pocketed|pocketing|(?:deposit )?forfeited)$/;

/** Behind a piece that somebody does not want: nothing that is done to it. */
export const AFTER_REFUSAL = wordSet(
  "anymore any after now so and but because bc cuz since today either period then",
);

/** Behind "to": what somebody is to do with a piece, or that it came to us. */
export const TO_DO_WITH_IT = wordSet(
  "sell fix hold store watch borrow use move haul try photograph refinish me us",
);

/** Behind "gave": that it was for nothing, or to whom. */
export const GIVEN_AWAY = wordSet("to away free for_free for_nothing freebie as as_freebie as_a_freebie");

/** All that was paid goes back. */
export const IN_FULL = wordSet("full in_full all all_of_it everything whole whole_thing the_whole_thing");

/** It may be called their money as well. */
export const ALL_OF_IT: ReadonlySet<string> = new Set([
  ...IN_FULL,
  "money",
  "money back",
  "her money",
  "his money",
]);

/** What is left of a deposit of which a part is told. */
export const THE_REST = wordSet("rest the_rest remainder balance difference other_half");

/** Money that somebody would have back, and has not yet. */
export const STILL_WANTED = wordSet("want wants wanted asking asks asked owe owes owed");

/** Between a piece and what became of it. */
export const BEFORE_RETURNED = wordSet("was is got just been today");
/** Between a piece and that it is here again. */
export const BEHIND_BACK = wordSet("in at here home now and so today again already");
export const BRINGS_BACK = wordSet(
  "brought bring brings took take taking carried sent hauled returned returning",
);
export const BEFORE_BACK = wordSet("is was its s now already got");

/** No more reminders. */
export const NUDGES_OFF =
  /^(?:off|stop .*|quit .*|cancel .*|no more .*|no nudges|mute|mute nudges|turn off.*|never|disable|pause|pause .*|quit|dont|anymore)$/;

/** Which half of the day an hour is of. */
export const MORNINGS = /\b(?:mornings?|breakfast|sunrise)$/;
export const EVENINGS = /\b(?:evenings?|nights?|nightly|tonight|afternoons?|supper|dinner|bedtime)$/;

/** A price went up by what is said. */
export const RAISES = /^(?:raised?|upped|bumped(?: up)?|increased|marked up)$/;

export const WENT_UP = /^(?:went|gone|goes|is|are) up$/;

/** The words themselves say that the number is the new price. */
export const SETS_PRICE = wordSet(
  "now is_now are_now price_is_now now_only now_at changed change changed_price changed_the_price new_price price_change price_to price_at price_on price_down_to price_now went_down_to price_went_down_to price_went_up_to set_price repriced reprice",
);

/** "sold on hold" is no sale. */
export const HOLDS = wordSet("hold to_hold holding to_holding");

/** What somebody was paid for who helped. */
export const HELPING =
  /^(?:help|helping|move|moving|haul|hauling|shift|shifting|lug|lugging|load|loading|work|lifting|deliver|delivery|carry|carrying)\b/;

/** What a person does behind whose name it stands: no noun of a piece. */
export const SOMEBODY_DID =
  /^(?:(?:cant|wont) (?:make it|come)|(?:isnt|not) going to make it|back|flaked|bailed|ghosted|cancel|never|no show|no call|noshow|didnt|did not|stood|changed|refund|return|gave|brought|took|put|deposit|hold|kept|keeping|tipped|paid|picked$)/;

/** Beside "gone" where it is all that is said. */
export const BESIDE_GONE = wordSet("all now finally already just today and yay woohoo");

/** A buyer had it, or we did. */
export const FETCHED = wordSet("picked pickd collected fetched");

/** What somebody does with money for a piece, and nobody says that it is a deposit. */
export const PUT_DOWN = wordSet("left put");

/** Where a piece is put to be seen by buyers. */
export const BOARDS = wordSet("list sale", SITES);

/** What a payment is told by, beside a balance. */
export const PAYS_BALANCE = wordSet("paid sent payment bank checking savings account");

/** "found its new people", "went to a good home": somebody has it now. */
export const FOUND_A_HOME: readonly string[] = [
  ...phrases("its a her his their").flatMap((whose) =>
    ["", "new ", "good "].flatMap((which) =>
      phrases("home owner people person family human forever_home").map(
        (who) => `found ${whose} ${which}${who}`,
      ),
    ),
  ),
  "found its buyer",
  // "the desk got a new home, 80" bought one.
  ...["got", "has", "gets"].flatMap((got) =>
    phrases("home owner family forever_home").map((who) => `${got} a new ${who}`),
  ),
  ...phrases("a_new_home a_good_home its_new_home its_new_owner its_forever_home").map(
    (home) => `went to ${home}`,
  ),
];
