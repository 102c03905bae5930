import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";

/** "word": what looks like a day is none. "wide": a time that is no one day, and is asked about. "place": a
 * market that is named for its day. */
export type DayEffect = "word" | "wide" | "place";

const ROWS: readonly Row<DayEffect>[] = [
  // What came in over the month is of it, whichever day it was.
  // For what time it is: noted today.
  [
    "<stream>|<supply>|<pay>|loan|loans … [for? this_week|this_month] !on|<day>|<weekday>|so|already",
    "word",
    "gas 41 this week",
  ],
  // Names that hold a day.
  ["[<sunsat> city|valley|beach|porch|set|screen]", "word", "bought dresser 40 from sun city"],
  [
    "at|from|to* the|a|this* [first|second|third|last|1st|2nd? <day> market|flea|flea_market|swap|swap_meet|bazaar|auction|trade_days|trade_day] … <day>|today|yesterday|this_morning",
    "place",
    "bought desk 40 at the sunday market today",
  ],
  [
    "<day>|today|yesterday|this_morning … [first|second|third|last|1st|2nd? <day> market|flea|flea_market|swap|swap_meet|bazaar|auction|trade_days|trade_day]",
    "place",
    "yesterday bought desk 40 at first monday trade days",
  ],
  [
    "[first|second|third|last|1st|2nd? <day> trade_days|trade_day|market|swap_meet|bazaar]",
    "wide",
    "bought desk 40 first monday trade days",
  ],
  [
    "at|from the|a|this? [first|second|third|last|1st|2nd? <day> market|flea|flea_market|swap|swap_meet|bazaar|auction|trade_days|trade_day]",
    "wide",
    "bought dresser 40 at the sunday market",
  ],
  [
    "<sell> … to the|that|this <person>|<trait>|<opinion>* couple|lady|guy|woman|man|girl|family|kid|<person> [from <weekday>]",
    "word",
    "sold desk 140 to the couple from sunday",
  ],
  ["<person>|<someone>|guy|lady [on <rank>]", "wide", "sold desk to someone on 5th 140"],
  ["[<outof> buyer|seller|experience|condition|customer]", "word", "sold dresser 175 10/10 buyer"],
  ["<sell>|<buy> … $ [after|since|around|before <day>]", "wide", "sold desk 140 after the 3rd"],
  [
    "[<sunsat>] faded|bleached|damaged|burned|burnt|worn|room|porch|tan|lamp|rotted|dried|roasted",
    "word",
    "bought sun faded chair 40",
  ],
  [
    "it|they|that|which|had|has|just|who|there [<sunsat> in|at|on|for|out|outside|there|around|under|by|all|down|here|unused|empty|through >]",
    "word",
    "bought desk 40 it sat in a barn",
  ],
  [
    "<piece> … [, <art>? <piece> <sunsat> in|at|out|outside|around|unused|there >]",
    "word",
    "bought desk 40, desk sat in a barn",
  ],
  [
    "[early|late|mid|beginning_of|end_of|middle_of|start_of|around|sometime_in|back_in|in <month>]",
    "wide",
    "sold desk 60 early may",
  ],
  ["$ [<month>] ;", "wide", "bought desk 40 march"],
  [
    "<verb> … [mothers|fathers|valentines|presidents|veterans|columbus|memorial|labor|new_years|christmas|boxing|tax day|eve]",
    "wide",
    "bought desk 40 mothers day",
  ],
  ["[black|cyber|good|easter <day>]", "wide", "bought desk 40 black friday"],
  [
    "[first|start|beginning|middle|end|last of|day <art>? month|week|year|last? month|week|year|of?]",
    "wide",
    "sold desk first of the month 60",
  ],
  [
    "[earlier|later|sometime|some_time|one_day|some_day|back in|during|this <art>? week|month|year|summer|spring|winter|fall|season]",
    "wide",
    "sold desk 140 earlier in the week",
  ],
  [
    "<verb> … [the night|day|morning|evening|week|weekend before|after]",
    "wide",
    "sold desk 60 the night before",
  ],
  [
    "[over|during|this|last|the <art>? summer|winter|spring|holidays|holiday|break|vacation]",
    "wide",
    "sold desk 60 over the summer",
  ],
  ["[<span> before|after|earlier|prior]", "wide", "sold desk 60 two days before"],
  [
    "[<day> night|morning|afternoon|evening before_last|before]",
    "wide",
    "sold desk 60 fri night before last",
  ],
];

export const days = tableOf(ROWS);
