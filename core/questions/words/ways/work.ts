import { waysOf } from "../../plainer.ts";

const DUE = "{still|also|else|all|is|supposed|meant|due|scheduled|going} to? <comes>";
const FOR =
  "by|over? to_get|to_pick_up|to_collect|get|for? it|them|stuff|something|anything|a_piece|their_stuff|their_pieces|things?";
const GOAL = "to sell|make|flip|earn|do|go this|for_this|for_the? <unit>?";

/** What is still to do, who is still to come, what is still to reach. */
export const OF_WORK = waysOf({
  "whats left to do today => what should i do today":
    "^ so? what_else_is|whats_still|whats|what_is|is_there_anything|is_anything|anything_else|anything left to do|get_done => what should i do",
  "whos coming by to pick up today => pickups today": `^ so? who_all_is|who_else_is|who_is|whos|who ${DUE} ${FOR} => pickups`,
  "who still needs to pick up their stuff => pickups": `^ so? who still|else? needs|need|has|have|is|are {still|left} to? <comes> ${FOR} => pickups`,
  "is anyone coming to pick up today => any pickups today": `^ is|are? anyone|anybody|someone|somebody|any_buyers|any is|are? ${DUE} ${FOR} => any pickups`,
  "when is the nurse picking up the mirror => pickups the nurse the mirror": `^ when|what_day|what_time is|are|does|do|will|s x:3 ${DUE} ${FOR} => pickups $x`,
  "any pick ups today => any pickups today":
    "w:any|my|the|what|whats|list|show|which pick up|ups =this|today|tomorrow|on|for => $w pickups",
  "show pick ups => show pickups": "w:any|my|the|what|whats|list|show|which pick up|ups $ => $w pickups",
  "how many more do i need to sell this year => how far off my goal": `^ how_much|how_many more pieces|flips|sales? do|must|should|have|would <us> need|have|got|want|still_need? ${GOAL} $ => how far off my goal`,
  "how many more do i need to sell to hit my goal => how far off my goal": `^ how_much|how_many more pieces|flips|sales? do|must|should|have|would <us> need|have|got|want|still_need? ${GOAL} to make|hit|reach|get_to z:4 $ => how far off my goal`,
  "will i hit my goal this year => am i on track":
    "^ am_i|are_we|will_i|will_we going_to|gonna|on_track_to? make|hit|reach it|that|the_goal|my_goal this|for_this|for_the? <unit>? $ => am i on track",
  "whats been sitting too long => anything too long":
    "^ whats|what_is|what_has|anything|is_anything|has_anything|anythings just|still? been? sitting|sat {around|there|here|too_long|a_while|for_a_while|for_too_long|a_long_time|for_ages} $ => anything too long",
});
