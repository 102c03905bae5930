const END = "[.?! ]*$";
const COME =
  "(?:coming|come|comes|picking up|pick up|picks up|pick (?:it|them|stuff|something|anything) up|picking (?:stuff|something|anything|it|them) up|collecting|collect|stopping by|stop by|to collect|to come)";
const FOR =
  "(?: by| over)?(?: to (?:get|pick up|collect)| get| for)?(?: (?:it|them|stuff|something|anything|a piece|their stuff|their pieces|things))?";
const DUE = "(?: still| also| else| all| supposed| meant| due| scheduled| going)*(?: to)?";
const LOAN = "(?:to|on|onto|at|toward|towards|into) (?:the |my |our )?loans?";
const THIS = "(?: (?:this|for this|for the) (month|year|week))?";

/** What is still to do, to come and to reach, in the words that say so plainly. */
export const REWRITES_OF_TODO: readonly (readonly [from: RegExp, to: string])[] = (
  [
    [
      `^(?:so )?(?:whats|what is|what else is|whats still|is there anything|is anything|anything|anything else) left to (?:do|get done)(?= |[.?!]|$)`,
      "what should i do",
    ],
    [`^(?:so )?(?:who is|whos|who all is|who else is|who)${DUE} ${COME}${FOR}(?= |[.?!]|$)`, "pickups"],
    [
      `^(?:so )?who (?:still |else )?(?:needs|need|has|have|is|are)(?: still| left)* (?:to )?${COME}${FOR}(?= |[.?!]|$)`,
      "pickups",
    ],
    [
      `^(?:is |are )?(?:any|anyone|anybody|someone|somebody|any buyers?)(?: is| are)?${DUE} ${COME}${FOR}(?= |[.?!]|$)`,
      "any pickups",
    ],
    [
      `^(?:when|what day|what time) (?:is|are|does|do|will|s) (.+?)${DUE} ${COME}${FOR}(?= |[.?!]|$)`,
      "pickups $1",
    ],
    [
      `\\bpick ups?\\b(?=${END}|(?: this| today| tomorrow| on| for))(?<=(?:any|my|the|what|whats|list|show|which) pick ups?)`,
      "pickups",
    ],
    [
      `^how (?:much|many) more (?:pieces |flips |sales )?(?:do|must|should|have|would) (?:i|we) (?:need|have|got|want|still need)? ?to (?:sell|make|flip|earn|do|go)${THIS}(?: to (?:make|hit|reach|get to) .+)?${END}`,
      "how far off my goal",
    ],
    [
      `^(?:am i|are we|will i|will we) (?:going to |gonna |on track to )?(?:make|hit|reach) (?:it|that|the goal|my goal)${THIS}${END}`,
      "am i on track",
    ],
    [
      `^(?:whats|what is|what has|anything|is anything|has anything|anythings?)(?: just| still)?(?: been)? (?:sitting|sat)(?: around| there| here| too long| a while| for a while| for too long| a long time| for ages)*${END}`,
      "anything too long",
    ],
    [
      `^(?:what(?:s| is) )?(?:my |the )?(average|avg|median) (?:per|a|for each|each|for a) (?:piece|flip|sale|item)${END}`,
      "$1 profit",
    ],
    [
      `^(?:i want to |i wanna |lets |please |just |can you |ok )?(?:(?:put|send|throw|move|use|apply|pay) )?(?:all(?: of)?|the whole|everything|every cent|100%)(?: (?:it|of it|the|my|our|this months|this))*(?: (?:profits?|money|earnings|month|thats due|whats due|i made))* ${LOAN}${END}`,
      "what should i send to the loan",
    ],
    [
      `^(?:(?:put|send|throw|move|apply|pay) )(?:it|that|them) all ${LOAN}${END}`,
      "what should i send to the loan",
    ],
  ] as const
).map(([from, to]) => [new RegExp(from), to]);
