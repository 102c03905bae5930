import { AFTERWARDS, type TurnEffect } from "./afterwards.ts";
import { DEALING } from "./dealing.ts";
import { ELSEWHERE } from "./elsewhere.ts";
import { HAGGLED } from "./haggled.ts";
import { HAULS } from "./hauls.ts";
import { NEEDS } from "./needs.ts";
import { NOT_COME } from "./not-come.ts";
import { ALL_BUT, AS_IT_WAS, NOT_ENDED, ONLY_MENTIONED } from "./only-mentioned.ts";
import { ONLY_SEEN } from "./only-seen.ts";
import { OTHER_SENSES } from "./other-senses.ts";
import { PART_DONE } from "./part-done.ts";
import { PENDING } from "./pending.ts";
import { PLANNED } from "./plans.ts";
import { REMARKS } from "./remarks.ts";
import { RESTATED } from "./restated.ts";
import { rowsOf } from "./row.ts";
import { tableOf } from "./table.ts";
import { TOLD_BESIDE } from "./told-beside.ts";

/** What somebody else's is or does, what was only looked at, and whose money it was. */
const OF_OTHERS = rowsOf<TurnEffect>({
  // Somebody else's.
  "other: picked up an old couch to haul away for 40":
    "picked_up|took|grabbed|got|hauled … <piece> … [to haul|dump|junk away|off|it|them?]",
  "other: comp sold desk 120": "[comp|comps|competitor|competitors|competition|competing|rival] … <sell>",
  "other: someone sold the same desk for 120":
    "^ [someone|somebody|another_seller] just|already|online|here* sold|sells|selling|listed|posted|lists",
  "other: desk like ours sold for 120": "<piece> [like ours|mine|this|this_one|that|that_one|it|the_one]",
  "other: sis sent me a pic of a dresser just like ours that sold for 400":
    "[just|exactly|almost|a_lot|kinda|pretty_much|very* like|similar_to|same_as|identical_to ours|mine|this|this_one|that|that_one|it|them|the_one that|which|they|she|he|someone|somebody* just|has|is|was|had|have|recently* <verb>|<light>|up|priced]",
  "other: her desk sold for 120":
    "[their|his|her|neighbors|somebodys|someones|his_own|friends] <piece> <sell>",
  "word: looked at a hutch and bought it for 75":
    "[saw|spotted|noticed|eyed|looked_at|stopped_to_look_at|went_to_look_at|went_to_see|came_to_look_at|went_and_looked_at] <art>? <trait>|<opinion>|<new>* <piece> and|then|so|, … <~buy>|ended_up|wound_up|paid|took_it|paying",
  "word: found a trunk at a church sale, they only wanted 12 for it":
    "<buy> … <piece> … [,|and|-|.|;* he|she|they|guy|lady|seller|the* only|just wanted|asked|was_asking|were_asking] $",
  "offer: saw hutch 90 yard sale":
    "[saw|seen|spotted|noticed|eyeing|eyed|looked_at|looking_at|passed_on|passed_up <art>? <piece>] !!after_all",
  "offer: talked desk down to 40":
    "[talked|talk|got|negotiated|haggled|bargained <art>? <piece>|him|her|them|guy|seller|it down]",
  "offer: got her to 22": "[got|talked|haggled|knocked him|her|them to] $ ;",
  "intention: keeping desk for now":
    "<retire> … [for_now|for_a_while|awhile|a_while|until|till|til|a_bit <day>?]",
  // Money of one of ours, and not the shop's.
  "own money: mom put 200 of her own on my loan":
    "<kin> … $ … [of|from|out_of his|her|their own? own|money|paycheck|pay|pocket|wallet|savings|check|account money|pocket?]",
  // The owner's own deposit.
  "own deposit: put 20 deposit on a dresser":
    "[put|left|gave|paid|placed|made <art>? $? <art>? deposit|down|down_payment of? $? down? on|for] a|an|another <piece>",
  "own deposit: bought desk 40 deposit 10": "<buy> … $ … [put|paid|left|gave? deposit|down $]",
  "own deposit: bought desk 40 put 10 down": "<buy> … $ … [put|paid|left|gave? $ deposit|down]",
  "own deposit: i paid the rest on the desk 40":
    "^ i|we|ive [finally|just? paid|pay|gave|sent <art>? rest|balance|remainder|other_half|last|remaining|other]",
});

/** Words that belong to a deal, a place or a reason, and tell of no fact. */
const BESIDE = rowsOf<TurnEffect>({
  "other: desk is a done deal": "<piece> is|was|its [<art>? done? deal]",
  "other: working on dresser price":
    "working_on|work_on|started|worked_on <art>? <piece> [price|pricing|listing|ad|photos|pictures|description|paperwork|deal|buyer]",
  "other: backed out of the driveway":
    "[backed|pulled|backing out|up? of|into|out_of <art>? driveway|garage|spot|parking|lot|alley|space]",
  "other: refinanced loan 9000 at 4%":
    "[refinanced|refinancing|refi|refied|consolidated|consolidating|deferred|deferment|forbearance]",
  "doubt: gave away chair with desk": "<retire> … <piece> [with|w|along_with <art>? <piece>]",
  "other: desk deal is done":
    "<piece> [deal|sale|listing|ad|pickup|delivery|photos|paperwork] is|is_all? <~finish>",
  // A reason, where nothing else was said of it.
  "word: tossed the dresser, mold":
    "<retire> … <piece>|it|them !!<piece> !!<part> !!only|just|but|free|for_free|no_charge [,|- >] ;",
});

/*
 * Where rows of two tables begin with the same words, the one of the earlier line turns them; tables of one line may
 * change places. A line is told what has to come before the next.
 */
export const unfinished = tableOf(
  [
    // "came close to buying a dresser": no part of the work, and no plan.
    [OTHER_SENSES, ONLY_SEEN],
    // "ben wants 60 to sand the desk" is no cost yet; "kept the desk behind the couch" is about one piece.
    [PLANNED, HAULS, HAGGLED],
    // "kept the desk dry", "desk reserved for ana, hutch is still available": nothing happened afterwards.
    [ONLY_MENTIONED, AS_IT_WAS, RESTATED, TOLD_BESIDE, NOT_COME],
    // "sold desk 140 and she wants her money back" is no need; "bought dresser 40 for our bedroom" is ours.
    [AFTERWARDS, PART_DONE],
    // "sold desk for 85, half cash half check" is paid; "not much done on the dresser" is no denial.
    [DEALING, REMARKS, NEEDS],
    [PENDING, OF_OTHERS, BESIDE],
    [ALL_BUT, NOT_ENDED, ELSEWHERE],
  ].flat(2),
);
