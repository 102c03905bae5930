import { AFTERWARDS, type TurnEffect } from "./afterwards.ts";
import { DEALING } from "./dealing.ts";
import { ELSEWHERE } from "./elsewhere.ts";
import { HAGGLED } from "./haggled.ts";
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
import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";
import { TOLD_BESIDE } from "./told-beside.ts";

/** What somebody else's is or does, what was only looked at, and whose money it was. */
const OF_OTHERS: readonly Row<TurnEffect>[] = [
  // Somebody else's.
  [
    "picked_up|took|grabbed|got|hauled … <piece> … [to haul|dump|junk away|off|it|them?]",
    "other",
    "picked up an old couch to haul away for 40",
  ],
  ["[comp|comps|competitor|competitors|competition|competing|rival] … <sell>", "other", "comp sold desk 120"],
  ["<piece> [like ours|mine|this|this_one|that|that_one|it|the_one]", "other", "desk like ours sold for 120"],
  [
    "[just|exactly|almost|a_lot|kinda|pretty_much|very* like|similar_to|same_as|identical_to ours|mine|this|this_one|that|that_one|it|them|the_one that|which|they|she|he|someone|somebody* just|has|is|was|had|have|recently* <verb>|<light>|up|priced]",
    "other",
    "sis sent me a pic of a dresser just like ours that sold for 400",
  ],
  [
    "[their|his|her|neighbors|somebodys|someones|his_own|friends] <piece> <sell>",
    "other",
    "her desk sold for 120",
  ],
  ["<sell> <art>? [<theirs>] <piece>", "other", "sold the neighbors sofa 200"],
  [
    "[saw|spotted|noticed|eyed|looked_at|stopped_to_look_at|went_to_look_at|went_to_see|came_to_look_at|went_and_looked_at] <art>? <trait>|<opinion>|<new>* <piece> and|then|so|, … <~buy>|ended_up|wound_up|paid|took_it|paying",
    "word",
    "looked at a hutch and bought it for 75",
  ],
  [
    "[talked|haggled|knocked|negotiated|bargained] <art>? <piece> down_to|down $ and|,|so* i|we|finally? bought|grabbed|got|picked_up|snagged|purchased it|them|that",
    "word",
    "haggled the trunk down to 30 and bought it",
  ],
  [
    "got|talked|haggled|knocked|negotiated|bargained <art>? <piece> [down_to|down] $ and|,|so* i|we|finally? bought|grabbed|got|picked_up|snagged|purchased it|them|that",
    "word",
    "got the buffet down to 50 and bought it",
  ],
  [
    "[talked|haggled|negotiated|bargained <art>? <person>|seller|him|her|them|owner|price|it? down|a_bit|a_little|some|hard?] and|so|, … got|bought|paid|took|brought|grabbed",
    "word",
    "talked the seller down and got the desk for 55",
  ],
  [
    "<sell> … [,|but|and|.* he|she|they|buyer|guy|lady|<new>|<person>? talked|haggled|beat|knocked|bargained|negotiated|got|wore me|us|it|price|the_price* down? to|at] $",
    "word",
    "sold desk, she talked me down to 120",
  ],
  [
    "[saw|seen|spotted|noticed|eyeing|eyed|looked_at|looking_at|passed_on|passed_up <art>? <piece>] !!after_all",
    "offer",
    "saw hutch 90 yard sale",
  ],
  [
    "[talked|talk|got|negotiated|haggled|bargained <art>? <piece>|him|her|them|guy|seller|it down]",
    "offer",
    "talked desk down to 40",
  ],
  [
    "<retire> … [for_now|for_a_while|awhile|a_while|until|till|til|a_bit <day>?]",
    "intention",
    "keeping desk for now",
  ],
  // Money of one of ours, and not the shop's.
  [
    "<kin> … $ … [of|from|out_of his|her|their own? own|money|paycheck|pay|pocket|wallet|savings|check|account money|pocket?]",
    "own money",
    "mom put 200 of her own on my loan",
  ],
  // The owner's own deposit.
  [
    "[put|left|gave|paid|placed|made <art>? $? <art>? deposit|down|down_payment of? $? down? on|for] a|an|another <piece>",
    "own deposit",
    "put 20 deposit on a dresser",
  ],
  ["<buy> … $ … [put|paid|left|gave? deposit|down $]", "own deposit", "bought desk 40 deposit 10"],
  ["<buy> … $ … [put|paid|left|gave? $ deposit|down]", "own deposit", "bought desk 40 put 10 down"],
  [
    "^ i|we|ive [finally|just? paid|pay|gave|sent <art>? rest|balance|remainder|other_half|last|remaining|other]",
    "own deposit",
    "i paid the rest on the desk 40",
  ],
];

/** Words that belong to a deal, a place or a reason, and tell of no fact. */
const BESIDE: readonly Row<TurnEffect>[] = [
  ["<piece> is|was|its [<art>? done? deal]", "other", "desk is a done deal"],
  [
    "working_on|work_on|started|worked_on <art>? <piece> [price|pricing|listing|ad|photos|pictures|description|paperwork|deal|buyer]",
    "other",
    "working on dresser price",
  ],
  [
    "[backed|pulled|backing out|up? of|into|out_of <art>? driveway|garage|spot|parking|lot|alley|space]",
    "other",
    "backed out of the driveway",
  ],
  [
    "[refinanced|refinancing|refi|refied|consolidated|consolidating|deferred|deferment|forbearance]",
    "other",
    "refinanced loan 9000 at 4%",
  ],
  ["<retire> … <piece> [with|w|along_with <art>? <piece>]", "doubt", "gave away chair with desk"],
  [
    "<piece> [deal|sale|listing|ad|pickup|delivery|photos|paperwork] is|is_all? <~finish>",
    "other",
    "desk deal is done",
  ],
  // A reason, where nothing else was said of it.
  [
    "<retire> … <piece>|it|them !!<piece> !!<part> !!only|just|but [,|- >] ;",
    "word",
    "tossed the dresser, mold",
  ],
];

/*
 * Where rows of two tables begin with the same words, the one of the earlier line turns them; tables of one line may
 * change places. A line is told what has to come before the next.
 */
export const unfinished = tableOf(
  [
    // "came close to buying a dresser": no part of the work, and no plan.
    [OTHER_SENSES, ONLY_SEEN],
    // "ben wants 60 to sand the desk" is no cost yet; "kept the desk behind the couch" is about one piece.
    [PLANNED, HAGGLED],
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
