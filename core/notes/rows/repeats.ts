import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";

/** How often a note repeats, in the part in brackets; "from": the day or month from which it does;
 * "stop": it is to repeat no longer. */
export type RepeatEffect = "week" | "month" | "year" | "from" | "stop";

const ROWS: readonly Row<RepeatEffect>[] = [
  [
    "^ [stop|cancel|end|quit|pause|no_more <art>? monthly|weekly|yearly|recurring|repeating|standing|automatic?] <supply>|<stream>|loan|grad|<new>",
    "stop",
    "stop the storage",
  ],
  ["[on|by? the? <day> of? every|each|the month|mo]", "month", "250 to the loan on the 5th each month"],
  ["[every|each|per month|mo|mth on|by? the? <day>]", "month", "storage 60 every month on the 1st"],
  ["[every|each month]", "month", "storage 60 every month"],
  ["[every|each the? <monthday>]", "month", "storage 60 every 1st"],
  ["[monthly]", "month", "storage 60 monthly"],
  ["[once a month]", "month", "storage 60 once a month"],
  ["[a|per month|mo from|starting|beginning|on]", "month", "storage 60 a month from june"],
  ["<supply>|<stream>|loan … $ [a|per month|mo|mth]", "month", "storage 60 a month"],
  ["[every|each <weekday>]", "week", "ads 15 every friday"],
  ["[on <weekday> every|each week]", "week", "ads 15 on friday every week"],
  ["[every|each week|wk on? <weekday>?]", "week", "ads 15 every week"],
  ["[weekly]", "week", "ads 15 weekly"],
  ["<supply>|<stream>|loan … $ [a|per week|wk]", "week", "ads 15 a week"],
  ["[every|each year|yr on? <day>?]", "year", "permit 40 every year"],
  ["[yearly|annually]", "year", "permit 40 yearly"],
  ["<supply>|<stream>|loan … $ [a|per year|yr]", "year", "permit 40 a year"],
  [
    "[from|starting|beginning|as_of|effective|since in|on|from? the? <month>|<day>]",
    "from",
    "storage is 65 from june",
  ],
  ["[starting|beginning|from next <span>|month|week|year]", "from", "storage 60 every month from next month"],
];

export const repeats = tableOf(ROWS);
