import { rowsOf } from "./row.ts";
import { tableOf } from "./table.ts";

/** How often a note repeats, in the part in brackets; "from": the day or month from which it does; "to come": the next such month;
 * "stop": it is to repeat no longer; "known": one that stands already is spoken of. */
export type RepeatEffect = "week" | "month" | "year" | "from" | "to come" | "stop" | "known";

const ROWS = rowsOf<RepeatEffect>({
  "stop: stop paying the storage":
    "^ [stop|cancel|end|quit|pause|halt|no_more|dont|do_not|no_longer record|recording|repeat|repeating|log|logging|count|counting|charge|charging|do|doing|paying|adding|noting <art>? monthly|weekly|yearly|recurring|repeating|standing|automatic?] <supply>|<stream>|loan|grad|<new>|$",
  "stop: stop the storage":
    "^ [stop|cancel|end|quit|pause|no_more <art>? monthly|weekly|yearly|recurring|repeating|standing|automatic?] <supply>|<stream>|loan|grad|<new>",
  "stop: stop the 250 to the loan":
    "^ [stop|end|quit|pause|halt <art>? monthly|weekly|yearly|recurring|repeating|standing|automatic?] $",
  "known: the monthly storage is 65 now":
    "<art> [monthly|weekly|yearly|recurring|standing] <supply>|<stream>|loan|payment|<new> … is|goes|went|costs|are",
  "known: raise the storage to 65":
    "^ [raise|lower|increase|bump] <art>? <supply>|<stream>|loan|monthly|weekly … to $",
  "known: change the loan payment to 300 each month":
    "^ [change|update|set] <art>? storage|storage_unit|unit|rent|booth|booth_rent|phone|internet|insurance|membership|subscription|<stream>|loan_payment|loan_payments|payment|payments|monthly|weekly … to $",
  "month: storage 60 on the last day of every month": "[on? the? last|first day? of? every|each|the month]",
  "month: storage 60 at the end of each month":
    "[on|at? the? end|start|beginning|middle of? every|each|the? month]",
  "month: storage 60 a month": "<supply>|<stream>|loan|payment … $ [<amonth>|per_month|per_mo|a_mo] ;",
  "week: ads 15 a week": "<supply>|<stream>|loan|payment … $ [<aweek>|per_week|per_wk|a_wk] ;",
  "known: storage went up to 65":
    "^ <art>? loan? <supply>|<stream>|payment|payments [went|goes|go|is_going|has_gone|was_raised|is|are up|down? to] $",
  "known: storage is now 65":
    "^ <art>? <supply>|<stream>|loan_payment|loan_payments|payment|payments [is|are now] $",
  "known: storage is 65 now":
    "^ <art>? <supply>|<stream>|loan_payment|loan_payments|payment|payments is|are $ [now|from_now_on|going_forward]",
  "month: storage 85/mo": "<supply>|<stream>|loan|payment … $ [/ mo|month|mth|mnth on? the? <monthday>?]",
  "week: booth rent 40/wk": "<supply>|<stream>|loan|payment … $ [/ wk|week on? <weekday>?]",
  "year: insurance 120/yr": "<supply>|<stream>|loan|payment … $ [/|a|per yr|year]",
  "month: storage unit 60 a month on the 1st": "$ [<amonth>|per_month|per_mo|a_mo on|by the? <day>]",
  "month: storage 60 a month from june":
    "$ [<amonth>|per_month|per_mo|a_mo] starting|beginning|from|as_of|effective",
  "week: ads 15 a week on friday": "$ [<aweek>|per_week|per_wk|a_wk on|by <weekday>]",
  "week: booth rent 45 weekly on sat": "[weekly on <weekday>]",
  "month: phone 25 each month": "<eachof> [month|mo]",
  "week: phone 25 each week": "<eachof> [week|wk]",
  "year: phone 25 each year": "<eachof> [year|yr]",
  "from: stop storage after this month": "[after this week|month|year]",
  "month: 250 to the loan on the 5th each month": "[on|by? the? <day> of? every|each|the month|mo]",
  "month: storage 60 every month on the 1st": "[every|each|per month|mo|mth on|by? the? <day>]",
  "month: storage 60 every month": "[every|each month]",
  "month: storage 60 every 1st": "[every|each the? <monthday>]",
  "month: storage 60 monthly": "[monthly]",
  "week: ads 15 every friday": "[every|each <weekday>]",
  "week: ads 15 on friday every week": "[on <weekday> every|each week]",
  "week: ads 15 every week": "[every|each week|wk on? <weekday>?]",
  "week: ads 15 weekly": "[weekly]",
  "year: permit 40 every year": "[every|each year|yr on? <day>?]",
  "year: permit 40 yearly": "[yearly|annually]",
  "to come: storage 60 monthly starting december": "[starting|beginning|start in|on|from? the? <month>]",
  "from: storage is 65 from june":
    "[from|starting|beginning|as_of|effective|since in|on|from? the? <month>|<day>]",
  "from: storage 60 every month from next month": "[starting|beginning|from next <span>|month|week|year]",
});

export const repeats = tableOf(ROWS);
