import { rowsOf } from "./row.ts";
import { tableOf } from "./table.ts";

/** "word": what looks like a day is none. "wide": a time that is no one day, and is asked about. "place": a
 * market that is named for its day. */
export type DayEffect = "word" | "wide" | "place";

const ROWS = rowsOf<DayEffect>({
  // What came in over the month is of it, whichever day it was.
  // For what time it is: noted today.
  "word: gas 41 this week":
    "<stream>|<supply>|<pay>|loan|loans … [for? this_week|this_month] !on|<day>|<weekday>|so|already",
  // Names that hold a day.
  "word: bought dresser 40 from sun city": "[<sunsat> city|valley|beach|porch|set|screen]",
  "place: bought desk 40 at the sunday market today":
    "at|from|to* the|a|this* [first|second|third|last|1st|2nd? <day> market|flea|flea_market|swap|swap_meet|bazaar|auction|trade_days|trade_day] … <day>|today|yesterday|this_morning",
  "place: yesterday bought desk 40 at first monday trade days":
    "<day>|today|yesterday|this_morning … [first|second|third|last|1st|2nd? <day> market|flea|flea_market|swap|swap_meet|bazaar|auction|trade_days|trade_day]",
  "wide: bought desk 40 first monday trade days":
    "[first|second|third|last|1st|2nd? <day> trade_days|trade_day|market|swap_meet|bazaar]",
  "wide: bought dresser 40 at the sunday market":
    "at|from the|a|this? [first|second|third|last|1st|2nd? <day> market|flea|flea_market|swap|swap_meet|bazaar|auction|trade_days|trade_day]",
  "word: sold desk 140 to the couple from sunday":
    "<sell> … to the|that|this <person>|<trait>|<opinion>* couple|lady|guy|woman|man|girl|family|kid|<person> [from <weekday>]",
  "wide: sold desk to someone on 5th 140": "<person>|<someone>|guy|lady [on <rank>]",
  "word: sold dresser 175 10/10 buyer": "[<outof> buyer|seller|experience|condition|customer]",
  "wide: sold desk 140 after the 3rd": "<sell>|<buy> … $ [after|since|around|before <day>]",
  "word: bought sun faded chair 40":
    "[<sunsat>] faded|bleached|damaged|burned|burnt|worn|room|porch|tan|lamp|rotted|dried|roasted",
  "word: bought desk 40 it sat in a barn":
    "it|they|that|which|had|has|just|who|there [<sunsat> in|at|on|for|out|outside|there|around|under|by|all|down|here|unused|empty|through >]",
  "word: sold the desk 40 at the end of the driveway":
    "[end|beginning|middle|start|last of <art>? driveway|drive|line|street|road|lane|hall|block|aisle|rope|row|table|bed|counter|bar|dock|yard|tether|hallway|alley]",
  "word: sold the desk 40 as the sun came up":
    "[<sunsat>] is|was|came|comes|went|goes|rose|rises|set|shone|shines|shining|beating|blazing|peeking|up|finally|dipped|hit|beats|tea|tan|hat|hats|shine",
  "word: sold the desk 40, not bad for a monday": "for|like|such|quite|another|just a|another? [<weekday>] ;",
  "word: sat with the stool for 35 minutes": "^ i|we|just? [<sunsat>] with|down|at|in|on|there|here",
  "word: bought desk 40, desk sat in a barn":
    "<piece> … [, <art>? <piece> <sunsat> in|at|out|outside|around|unused|there >]",
  "wide: sold desk 60 early may":
    "[early|late|mid|beginning_of|end_of|middle_of|start_of|around|sometime_in|back_in|in <month>]",
  "wide: bought desk 40 march": "$ [<month>] ;",
  "wide: bought desk 40 mothers day":
    "<verb> … [mothers|fathers|valentines|presidents|veterans|columbus|memorial|labor|new_years|christmas|boxing|tax day|eve]",
  "wide: bought desk 40 black friday": "[black|cyber|good|easter <day>]",
  "wide: sold desk first of the month 60":
    "[first|start|beginning|middle|end|last of|day !back|here|there|off|on <art>? month|week|year|last? month|week|year|of?]",
  "wide: sold desk 140 earlier in the week":
    "[earlier|later|sometime|some_time|one_day|some_day|back in|during|this <art>? week|month|year|summer|spring|winter|fall|season]",
  "wide: sold desk 60 the night before": "<verb> … [the night|day|morning|evening|week|weekend before|after]",
  "wide: sold desk 60 over the summer":
    "[over|during|this|last|the <art>? summer|winter|spring|holidays|holiday|break|vacation]",
  "wide: sold desk 60 two days before": "[<span> before|after|earlier|prior]",
  "wide: sold desk 60 fri night before last": "[<day> night|morning|afternoon|evening before_last|before]",
});

export const days = tableOf(ROWS);
