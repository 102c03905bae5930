const UNIT = "(week|month|quarter|year)";
const ASKS = "(?:am i|are we|is this \\w+|was i|were we|did i|did we|have i|have we|is \\w+)";
const GOING = "(?: (?:doing|going|running|still|now|currently|way|already|any|even))*";
const END = "[.?! ]*$";
/** A stretch of time, whatever of it is said first: "where i was last month". */
const THEN =
  "(?: (?:where|what|how) (?:i|we) (?:was|were|made|did|stood)(?: at)?(?: in)?)? (?=(?:(?:the )?(?:last|previous|prior)|jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec|q[1-4]|20\\d\\d)\\w*\\b)";
const ABOVE =
  "(?:ahead of|up on|up from|up over|up compared to|up against|above|beating|beat|topping|topped|outpacing|past)";
const BELOW =
  "(?:behind|below|down on|down from|down over|down compared to|trailing|short of|lagging(?: behind)?)";
const COMPARES =
  "(?:compare|compared|comparing|stack up|stacking up|measure up|hold up|shape up|shaping up|look compared|looking compared)";
const MONTH = "(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*";
const DEED = "((?:did|have) (?:i|we) \\w+ (?:more|fewer|less)(?: (?!in\\b)\\w+){0,2})";
const FIGURE =
  "((?:is|are) (?:my |our )?(?:profits?|sales|spending|costs|fees|income|takings|revenue))(?: going)?";
const WAY = "(?:am i|are we) (?:doing )?(?:up or down|down or up|better or worse)";
const PRICED =
  "^((?:so )?(?:what|how much|whats)\\b.*\\b)(?:would|will|could|do) (i|we) (.+?) (?:if|when|once)";
const SELLS = "(?:(?:i|we) (?:let|sell|sold) )?(.{2,30}?) (?:sells?|goes|go)";

/**
 * Two stretches of time side by side, and what a piece would make at a price, in the words that say so plainly: "am i
 * ahead of last month" asks for nothing before it.
 */
export const REWRITES_OF_SIDES: readonly (readonly [from: RegExp, to: string])[] = (
  [
    // "Did i sell more than last month": this one is the other side.
    [`^${DEED} than (?:i did |we did )?last ${UNIT}${END}`, "$1 this $2 than last $2"],
    [`^${DEED} than (?:i did |we did )?(?:in )?(${MONTH})${END}`, "$1 this month than $2"],
    [`^${DEED} than (?:i did |we did )?(?:in )?(20\\d\\d)${END}`, "$1 this year than $2"],
    [`^${FIGURE} up (?:on|from|over|compared to|vs|versus|against)${THEN}`, "$1 more than "],
    [`^${FIGURE} down (?:on|from|over|compared to|vs|versus|against)${THEN}`, "$1 less than "],
    [`^(${ASKS})${GOING} ${ABOVE}${THEN}`, "$1 doing better than "],
    [`^(${ASKS})${GOING} ${BELOW}${THEN}`, "$1 doing worse than "],
    [`^(?:doing )?(better|worse) than${THEN}`, "am i doing $1 than "],
    [`^(?:ahead of|beating)${THEN}`, "am i doing better than "],
    [`^behind${THEN}`, "am i doing worse than "],
    [
      `^(?:so )?(?:hows|how is|how does|how did|how has|whats|is) this ${UNIT}(?: been)? ${COMPARES}(?: (?:to|with|against|vs) (?:the )?(?:last|before|last one|one before|previous one|last ${UNIT}))?${END}`,
      "compare this $1 to last $1",
    ],
    [`^${WAY}${END}`, "up down compare this month to last month"],
    [`^${WAY} (?:for )?this ${UNIT}${END}`, "up down compare this $1 to last $1"],
    [
      `^${WAY}(?: this ${UNIT})? (?:on|from|over|than|vs|versus|against|compared to) last ${UNIT}${END}`,
      "up down compare this $2 to last $2",
    ],
    [`${PRICED} ${SELLS} (?:at|for) (\\$?\\d[\\d.,]*)${END}`, "$1would $2 $3 on $4 at $5"],
    [`${PRICED} ${SELLS}(?: (?:at|for) [a-z ]+)?${END}`, "$1would $2 $3 on $4 at list price"],
  ] as const
).map(([from, to]) => [new RegExp(from), to]);
