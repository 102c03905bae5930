/*
 * What is said around a number that is not the price: what a piece is listed at, what it cost, what was put down for it or
 * is left to pay, and what was noted by mistake. Each is looked for in the words around one number, which stands there as "num", with the piece
 * right behind it as "piece".
 */

import { wordSet } from "./words.ts";

/**
 * What a sum of the books may be: "wrote" of a note, "was" of what others asked and "thought" of what somebody would have,
 * which no books know, "tried" of what was offered on the way, "named" of a number right behind its piece, "owing" of what a part came in of; "between" lies between two prices, "share" is that of one of several, "usual" what is paid else.
 */
export type Known =
  | "listed"
  | "cost"
  | "down"
  | "rest"
  | "wrote"
  | "was"
  | "between"
  | "share"
  | "thought"
  | "tried"
  | "named"
  | "owing"
  | "usual";

export const KNOWN_BY: Readonly<Record<Exclude<Known, "named">, RegExp>> = {
  listed:
    /\b(?:ask(?:ed|ing)?|sought|want(?:ed|ing)|hop(?:ed|ing)|list(?:ed|ing)?|posted|advertised|priced|tagged|marked|tag|sticker|sign|price|originally|original|initially|first|instead|rather than|from|over|under|above|below|than|up (?:for|at)|(?:had|got|have|put) (?:it|them|her|him) (?:\w+ )?(?:at|for)|had num|had an? num|num (?:up |posted |marked )?on (?:it|them)|(?:was|were|been|sat|stood|stuck)(?: \w+)? (?:at )?num|started(?: \w+)? (?:at|with)|haggled|talked|bargained|knocked|beat|too much|the num on the|num piece)\b/,
  cost: /\b(?:(?:i|we|id|wed|ive|weve|had|only|just|originally)(?: had| only| just)* (?:paid|gave|given|spent|sunk|bought)|paid num for|paid num (?:originally|back)|(?:got|bought|picked up|found) (?:it |them |that )?(?:for|at) num|cost|costs|stood (?:me|us)|set (?:me|us) back|ran (?:me|us)|num (?:in|into)(?: it| them| that| total)?$|in (?:it|them) for|num piece)\b/,
  down: /\b(?:deposit|down|already|before|earlier|on top of|added to|plus|put|left|gave|given|(?:her|his|their|the) num)\b/,
  rest: /\b(?:remaining|remainder|rest|balance|other|left|last|final|more|still|extra|another|difference)\b/,
  wrote:
    /\b(?:typed|wrote|written|put|entered|noted|logged|recorded|texted|said|told|hit|pressed|had|keyed|typo|instead of|not)\b/,
  was: /\b(?:asked|wanted|was|were|started|tag|tagged|sticker|sign|marked|priced|regular|regularly|reg|normal|normally|usual|usually|retails?|originally|original|supposed|meant|should|instead of|new|from|rang|list|ticketed)\b/,
  between:
    /\b(?:over|under|above|below|less|more|off|short|shy|extra|cheaper|lower|higher|difference|up|minus|on top)\b/,
  share: /\bnum (?:each|apiece|ea|per \w+|an? \w+|for each(?: one)?)\b/,
  thought:
    /\b(?:thought|reckon(?:s|ed)?|figured?|guess(?:ed)?|bet|hoped|hoping|expect(?:ed|ing)?|dream(?:ed|t)?|(?:could|can|should|would|might) (?:have )?(?:get|got|go|asked?|said|say|fetch|bring|brought)|(?:id|hed|shed|theyd|wed|would|could) have (?:said|asked|put|gone|tried|wanted|guessed|listed|tagged|priced|gotten|got)|(?:id|hed|shed|theyd|wed) (?:say|said|ask|put|go|try|do|take))\b/,
  tried:
    /\b(?:offer(?:ed|s|ing)?|bid|opened|start(?:ed|ing)|began|countered|said|wanted|tried|lowballed|begged|pushed|asked|asks|came in)\b/,
  owing: /^of (?:the|his|her|their|that) num\b/,
  usual: /\b(?:usual|usually|normal|normally|regular|last time|last month)\b/,
};

/** Too much was handed over, and the rest handed back. */
export const GIVES_CHANGE = /\b(?:gave|handed|give)\b.*\b(?:back|change)\b/i;

/** Where haggling ended. */
export const MET_AT_LAST =
  /\b(?:landed|settled|met|agreed|shook|compromised|ended up|wound up|split (?:it|the difference)|held|stuck|finally|in the end)\b/;

/** What came off a price. */
export const COMES_OFF = /\b(?:less|minus|off|under|below|short|shy|cheaper|lower|knocked)\b/;

/** A part of a price that has not been paid. */
export const STILL_OWED = /\b(?:outstanding|owe[sd]?|owing|due|later|follow|come|still|pending|unpaid)\b/;

/** Behind a part of a price: when it is to be paid, and that it has been. */
export const TO_COME =
  /^(?:(?:more|comes?|coming|paid|is|will be|due|by (?:check|card|transfer)) )*(?:(?:in|within) (?:\S+ )*(?:days?|weeks?|months?)|(?:on |by |at )?(?:the )?(?:next|tomorrow|payday|month end|end of)|when|once|after)\b/;
export const PAID_AT_ONCE =
  /^(?:(?:cash|check|card|transfer|paid|in cash) )*(?:now|today|tonight|up front|so far|first|down|already|this (?:morning|afternoon|evening)|in hand|on (?:him|her|them))\b/;

/** A part of another sum. */
export const OF_THE_SUM = /\bof (?:that|it|which)\b/;

/** It is said so, and needs no sum of parts. */
export const OWES = /\bowe[sd]?\b/;

/** How a part was paid. */
export const PAID_BY = /\b(?:cash|check|cheque|card|transfer)\b/;

/** What came of a price, which is hardly the whole of it where the rest is owed. */
export const CAME_OF_IT = /\b(?:paid|gave|got|handed|put|brought|received|dropped|took)\b/i;

/** What may stand between the prices of several pieces, told in their order: not "12 for the two". */
export const IN_A_ROW =
  /^(?!.*\bfor the num\b)(?:(?:one|the|an?|first|second|other|another|for|at|num|brought|fetched|went|got|sold|was) ?)*$/;

/** What tells of a part of one price. */
export const PART_OF_ONE =
  /\b(?:cash|check|cheque|card|transfer|half|other|rest|remaining|remainder|balance|more|ones|fives|tens|twenties|bills)\b/;

/** Words of a deal that was haggled over: nothing else comes of what they tell. */
export const HAGGLED_OVER =
  /\b(?:haggled|talked|bargained|knocked|beat|argued|chewed|worked|negotiated|brought|got (?:me|us|it) down)\b/;

/** "just paid 15 of it": a part of the price. */
export const PART_PAID = /\bnum (?:of|so far|now|today|up front|down|first|already)\b/;

/** Somebody else: what they paid, we did not. */
export const THEIR_DOING = /\b(?:he|she|they|shes|hes|theyre|hed|shed|theyd|guy|lady|buyer|who)\b/;

/** What may stand around such a number beside these words, without a mark between. */
export const AROUND_KNOWN = wordSet(
  "i we he she it they you thats somebody someone everybody people id wed hed shed theyd ive weve hes shes theyre its me us him her them his their our my " +
    "have has had having was were is are been be being get getting got go going goes went do did done " +
    "at for on in into to from up down off over under above below of with as by back out around about top " +
    "the a an that this which what one only just about originally at_first first before already still more all full whole real " +
    "asking_price list_price list price tag sticker ask bid mark number figure label " +
    "even though yet then when ended start started starting begin began sitting sat stood stuck up_there online " +
    "bucks dollars dollar total today earlier too much way a_lot lot high instead rather than supposed meant should normally usually " +
    "regular regularly reg normal usual retail retails new store stores shop sells sell going_rate rang " +
    "week weeks day days month months forever deposit remaining remainder rest balance other left last final extra another difference put given gave give paid cost costs spent sunk bought picked found " +
    "asked asking wanted wanting hoped hoping listed posted advertised priced tagged marked ticketed haggled talked bargained knocked beat argued " +
    "chewed worked negotiated brought typed wrote written entered noted logged recorded texted said told hit pressed keyed typo mistake accident slipped " +
    "stupid stupidly wrongly accidentally by_accident by_mistake added plus short shy less cheaper lower higher not " +
    "minus tax taxes sales half ones fives tens twenties bills hand far came come received follow owe owes owed owing outstanding due later pending unpaid until till " +
    "arrived offered offers offering bid opened countered lowballed begged pushed landed settled met agreed shook compromised split held stuck sign register receipt rang each apiece per seat works work comes makes altogether together told so difference " +
    "thought think thinks reckon reckons reckoned figure figured guess guessed bet would could might expect expected expecting dream dreamed dreamt says say said never try tried gone go gotten top fetch bring brought fetched",
);

/** We were paid: beside what it is listed at. */
export const GOT_FOR_IT = /\b(?:got|took|accepted|settled|ended up with|landed)\b/;

/** Something changed hands. */
export const CHANGED_HANDS =
  /\b(?:paid|pays|cash|took|taken|takes|gone|left with|drove off|loaded|grabbed|sold|home|handed|transferred|gave|truck|van|car|trailer)\b/;

/** Before or behind what is left out, where it goes with it. */
export const JOINS_KNOWN = wordSet(
  ", ; - . and but so though tho although because cause cuz since when while after yet then even",
);

/** "two at 20 each and one at 25": so many at a price, and no price by itself. */
export const SO_MANY_AT =
  /\b(?:each|apiece|a piece|(?:one|two|three|four|five|six|[1-9]) (?:at|for) (?:\$|\d))/i;
