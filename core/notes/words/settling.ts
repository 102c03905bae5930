/* What a message about somebody or something on the books may say, each word with what it tells. */

import { withPresents } from "./tenses.ts";
import { wordSet } from "./words.ts";

/**
 * "later": it is paid another day. "paid": money came in. "payer": the one who paid, nobody by name. "all": all that was still to come; "half" of it;
 * "more" of what came before. "owed": it is a part of that, or all of it. "fetched": the piece left with its buyer.
 * "from": whose the money was. "down": it is put on a piece. "never": it will not come. "out": they want the piece no more; "wants": a wish alone.
 * "back": their money goes back to them; "kept": it stays with us. "comes": when they come; "moved": on another day than they had said. "theirs": somebody who came for the one named.
 * "total": what is told is the whole price; "less": so much was taken off it; "short": so much was missing; "had": they had no more than that with them; "forgiven": what is missing need not come; "week": some day of the next one; "waits": it has not left yet; "agreed": for what it is to go. "aside": nothing of it.
 */
export type Says =
  | ("paid" | "payer" | "all" | "half" | "more" | "owed" | "fetched" | "from" | "down" | "never")
  | (
      | "out"
      | "wants"
      | "back"
      | "kept"
      | "theirs"
      | "comes"
      | "moved"
      | "aside"
      | "total"
      | "less"
      | "short"
      | "had"
      | "forgiven"
      | "week"
      | "waits"
      | "later"
      | "agreed"
    );

const SAYS: Readonly<Partial<Record<Says, ReadonlySet<string>>>> = {
  paid: wordSet(
    "paid pay pays paying payed pd gave gives sent sends handed brought brings got get received collected came settled squared dropped dropped_off mailed slipped slid paid_up settled_up squared_up came_through came_in paid_off with_the_money paid_me wired cleared coughed ponied forked shelled chipped give gived payed_up paid_back brung stumped stumped_up coughed_up bunged",
  ),
  payer: wordSet("he she they shes hes theyre hed shed theyd hell shell theyll buyer guy lady dude couple"),
  half: wordSet("half"),
  all: wordSet(
    "rest other remaining outstanding remainder balance last final all full whole up off settled squared paid_up settled_up squared_up paid_off good even square cleared",
  ),
  more: wordSet("another more additional extra again"),
  fetched: wordSet(
    "picked picks took takes taken grabbed loaded hauled fetched home gone left_with carried collected picked_up took_home drove_off hauled_off sold bought delivered take scooped snagged nabbed snatched swiped claimed loaded_up carried_off",
  ),
  from: wordSet("from with"),
  down: wordSet("put down put_down deposited added adds adding"),
  never: wordSet("never wont isnt not forget forgetting forgive forgave forgiving"),
  out: wordSet(
    "no_show noshow no_showed out backed flaked bailed ghosted cancelled canceled changed doesnt dont didnt mind backed_out flaked_out bailed_out passed disappeared vanished ditched bowed_out stood reneged quit no_longer welched welshed weaseled wimped chickened cried_off pulled_out dropped_out fell_through fell_out withdrew withdrawn withdrawing backed_off opted opted_out",
  ),
  wants: wordSet("want wants"),
  back: wordSet("back refunded returned gave_back sent_back mailed refund returning refunding reimbursed"),
  kept: wordSet("kept keeping keep forfeited forfeit stays"),
  theirs: wordSet(
    "husband wife son daughter brother sister mom dad partner friend boy girl kid boyfriend girlfriend nephew niece cousin hubby neighbor buddy driver mover movers helper roommate father mother",
  ),
};

const BY_WORD = new Map<string, Says[]>();
for (const [says, words] of Object.entries(SAYS))
  for (const word of withPresents(words)) BY_WORD.set(word, [...(BY_WORD.get(word) ?? []), says as Says]);

/** What a word tells by itself; nothing for most. */
export const saysOf = (word: string): readonly Says[] => BY_WORD.get(word) ?? [];

/** What else stands in such a message. */
export const BESIDE_SETTLING = wordSet(
  "came_back popped_back is_back was_back are_back both early drove drove_over walked over_here called_for in_hand turned done all_done done_deal em let have given straight right pulled_up pulled_in rolled_up rolled_in rolled swung pulled through_with did been popped popped_round popped_over popped_by nipped quid the a an and then gonna im only but plus pickup fine smooth smoothly great i we me us his her hers him them their theirs it that this of on for to by in at is was are be has had just finally now today here over through deposit money payment bit part with_it for_it of_it anymore any longer after deal thing going ever even came stopped stopped_by came_by swung_by dropped_by showed showed_up turned_up this_morning this_afternoon this_evening tonight already up available sale for_sale back_up w instead cant do cant_do make go to_go left still coming come show no_show noshow called texted messaged emailed twenties hundreds fives tens bills toward towards so what mine when who as bout abt about far round around away handover hand_over said already done yall yes yep well ok okay eventually apologies sadly unfortunately turned_up up_front finally holding lol oh yay also my mornin",
);

/** Of money as often as of whoever comes. */
export const COMES_OR_GOES = wordSet("back returned");

/** Before "back" of money, and behind "returned" of it. */
export const GOES_BACK = wordSet(
  "gave give gives giving given sent send sends sending handed hand mailed slid slipped shot tossed zapped passed got get gets had wants want wanted asked let deposit money all half em returned refunded refund went",
);
export const RETURNED = wordSet("his her their the it all half em deposit money him");

/** Between an unknown verb and what was sent in that way: "wired me the 10". */
export const BEFORE_SUM = wordSet("me us over the his her their another");

/** A thing that was lent is here again. */
export const COMES_HOME = wordSet("back home returned brought dropped");

/** What else stands in such a message. */
export const BESIDE_HOME = wordSet(
  "the my our a got have has had is was are came gave picked up off from by it i we he she they again just finally now today did me us and returns uncle aunt cousin mr mrs",
);

/** Whoever came and paid has paid all that was to pay: nobody else, and no part of it. */
export const CAME_AND_PAID =
  /\b(?:came|been|here|back|returned|showed up|turned up)\b.*\b(?:paid|payed|settled|squared)\b(?! (?:his|her|their|my|the|half|some|part)\b)/i;

/** Whoever was to come is here, or was. */
export const HAS_COME =
  /\b(?:came|been|here|showed|turned up|(?:swung|stopped|dropped) by|arrived|pulled (?:up|in)|rolled (?:up|in))\b/i;

/** So much is still to be paid. */
export const STILL_TO_PAY =
  /\d(?: bucks| dollars)?(?: (?:is|are|was))?(?: still)? (?:left|to go|to come|outstanding|remaining|due)\b/i;

/** Of which nothing may have been read: who has come, or comes another day. */
export const TELLS_VISIT = new RegExp(
  `${HAS_COME.source}|\\b(?:can['’]?t|cannot|won['’]?t|till?|until|instead)\\b`,
  "i",
);

/** They would like it so, and nobody has said yes. */
export const ASKS_FOR = wordSet("wants want wanted asks ask asked asking hoping hopes would could can");

/** It is gone by these only where it is said to whom. */
export const TO_WHOM = wordSet("sold bought");

/** That a piece left. */
export const PIECE_LEFT = wordSet(
  "gone picked_up went left took taken out_the_door has delivered take let sold",
);

/** How a question begins that has no mark. */
export const OPENS_ASKING =
  /^(?:has|have|had|did|does|do|is|was|were|are|what|whats|when|who|whose|how|where|which|why|any|can|could|show|list|will|tell)\b/i;

/** Both, or all, of those who owe something. */
export const BOTH_OF_THEM = /\bboth(?: of (?:them|em))?\b/i;
export const ALL_OF_THEM = /\b(?:everybody|everyone|they all|all of (?:them|em))\b/i;

/** Between a payment and the piece that it is for. */
export const PAID_FOR_EACH = wordSet("for on toward towards the her his their cash");

/** Between payments that share a line. */
export const BETWEEN_PAYMENTS = /\s*(?:[,;&+]|\band\b|\bthen\b|\balso\b)[\s,]*(?:(?:and|then|also) )*/;

/** Who brought it took in what was left to pay. */
export const BROUGHT_AND_PAID =
  /\b(?:delivered|dropped|took|brought|hauled|ran|handed)\b[^.;]*\b(?:collected|took in|(?:came|got) (?:home|back) with|got|(?:he|she|they) (?:paid|gave|handed)(?: (?:him|her|them|me|us))?) (?:the |my |his |her )?\$?\d/i;

/** It is put on a piece that stays here. */
export const PUTS_TOWARD = /\b(?:towards?|still (?:holding|on hold)|deposit)\b/i;

/** So much came beside what was put down before. */
export const BESIDE_DEPOSIT =
  /\b(?:another|the other|the remaining|the last) \$?\d[\d,.]*(?! (?:down|deposit|toward))|\b\d[\d,.]* more\b(?! (?:down|toward))/i;

/** A piece was fetched, told of itself. */
export const IS_FETCHED =
  /\b(?:was|were|is|been|got|just|being)\b[^,.;\d]*\b(?:collected|fetched|picked up|taken|loaded up)\b/i;
