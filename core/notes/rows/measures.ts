import type { NumberEffect } from "./owed.ts";
import { rowsOf } from "./row.ts";

const ODOMETER = "odometer|odo|speedo|speedometer|mileage";
/** What all the miles were for. */
const FOR_SHOP =
  "all_business|all_for_business|all_work|all_furniture|for_business|for_work|business|work|all_biz|biz";
const OCLOCK = "<bare>|<clock>|<time>";
/** Between two stretches of a drive: where the first went. */
const LEG =
  "there|out|over|up|down|to|back|from? to|from? <art>? <word>? <word>? ,|and|&|then|plus|+ and|then?";
const LINK = "to|thru|until|till|-|→";
const RATE = "rate|apr|interest_rate|loan_rate|new_rate";
const MOVES = "is|now|is_now|went|went_to|dropped|dropped_to|fell|rose|changed|changed_to";
const IS_NOW =
  "is|now|is_now|:|=|at|of|to|went|went_to|up|down|changed|changed_to|dropped|dropped_to|fell|rose";

/** Numbers whose measure stands elsewhere: minutes, miles by the odometer, the percents of a loan. */
export const MEASURES = rowsOf<NumberEffect>({
  // The second of two stretches of work.
  "minutes: 20 min on the desk, 40 on the stool, 15 on the bench":
    "<time> <labor>? on <art>? <piece> ,|and|&|then|plus|+* <bare> <labor>? on <art>? <piece> ,|and|&|then|plus|+* [<bare>] <labor>? on <art>? <piece>",
  "minutes: sanded the desk 40 min, stool 20":
    "<labor>|worked|worked_on|spent|put … <piece> <time> ,|and|&|then* <labor>? on? <art>? <piece> [<bare>] ;",
  "minutes: desk 1 hr, bench 30 min, stool 15":
    "<piece> <time> ,|and|&* <art>? <piece> <time>|<bare> ,|and|&* <art>? <piece> [<bare>] ;",
  "minutes: desk 20 min, bench 30, stool 15":
    "<piece> <time> ,|and|&* <art>? <piece> [<bare>] ,|and|&* <art>? <piece> <bare> ;",
  "minutes: worked on the desk for an hour then the bench for 2":
    "worked_on|worked|on <art>? <piece> for <time> ,|and|&|then* <art>? <piece> for [<bare>] ;",
  // Two who worked at it.
  "between us: table: 45 min me, 45 min mom":
    "[<time> for|by|from? me|i|mine|myself ,|and|&|plus|+* <time> for|by|from? my|our? <kin>|him|her|them|<person>|<new>]",
  "between us: 2 hours dad and 1 hour me on the table":
    "[<time> for|by|from? my|our? <kin>|him|her|them|<person>|<new> ,|and|&|plus|+* <time> for|by|from? me|mine|myself]",
  // What somebody was paid for: the time is theirs.
  "passing: paid bob 40 for 2 hrs of sanding":
    "paid|pd|gave|slipped|handed|tossed|owed|tipped|sent … $ for <art>? [<time>]",
  "minutes: monday 2 hours on the desk, tuesday 1.5":
    "<time> … ,|and|then <day> another|only? [<bare>] more? ;",
  "minutes: did 20 mins on the dresser then another 40 on the desk":
    "<time> … on <art>? <trait>* <piece> ,|and|then|another|also|plus|& and|then|another|also* [<bare>] on <art>? <trait>* <piece>",
  // Marks and words beside a time that say nothing.
  "passing: labor: 2h desk": "^ [labor|time|hours|work|worked|shop|logged :|-] <time>",
  "amount: got in an hour on the desk": "got|get|put|squeezed|snuck|fit [in <time>] on",
  "passing: store closes in 45 min":
    "[closes|opens|closing|opening|leaves|leaving|arrives|due|starts|ends|begins|coming|back in <time>]",
  "vague: cleaned up the mirror frame for 20":
    "^ i|we? <labor> up|down? <art>? <any>? <piece> <part>? for [<bare>] ;",
  "passing: drove 19 miles 4 the desk": "<time>|<miles> [4] the|my|our|this|that|a|an|<piece>",
  "vague: desk pickup, 2 hours":
    "<piece> pickup|pick_up|delivery|drop_off|dropoff|viewing|appointment … ,|-? [<time>]",
  "passing: its an hour to the flea market":
    "^ [its|it_is|thats|theres|is about|only|just|like|almost* <time>] to|from|away|drive|til|till|until|before|out",
  // How often no standing note can be.
  "vague: pay the loan 120 every other friday": "[every other|second|third|fourth|few|couple <any>]",
  "vague: storage 60 every 2 weeks": "[every <span>] !<amonth>",
  "vague: storage 60 biweekly": "$ … [biweekly|bi_weekly|bimonthly|semimonthly|fortnightly]",
  "vague: three hours and change on the hutch": "[<time> and|& some|a_bit|a_little? change|then_some]",
  "passing: wasted an hour driving around":
    "[wasted|lost|blew|killed|spent <time> driving_around|driving|waiting|looking|sitting|chasing|shopping|browsing|scrolling|texting|messaging|arguing|stuck around|for|in|at|on?] !to|<piece>",
  "passing: talked 2 hours":
    "[talked|talking|chatted|slept|napped|browsed|haggled|stood|drove_around for? <time>]",
  "passing: 61 miles, desk, round trip": "<miles> … ,|( [round_trip|roundtrip|rt|there_and_back|total] )? ;",
  "passing: workshop 180, 40 of it tips":
    "<stream> … $ ,|(|-? [$ of it|that|which was|were|is|from|in? <stream>]",
  "miles: miles today 46.2 all business": `^ <day>? [total? miles|mileage today|total|driven|for_today|for_the_day|this_morning? :|is|was? <bare> today?] ,|-? ${FOR_SHOP} ;`,
  "miles: miles for the day: 35": "^ [miles|mileage for_the_day :|is|was? <bare>] ;",
  "miles: 18 biz miles": "[<bare> business|biz|work|truck|van|road|highway miles|mi]",
  // By the odometer.
  "odometer: odometer 40210 to 40252": `[${ODOMETER}|miles reading|readings|went|from|:|was|is|read|start|started|at* <bare> before|then|out? ${LINK}|then|and|, end|ended|ending|now|finish|at* <bare> after?]`,
  "odometer: 40210 to 40252 on the odometer": `[<bare> ${LINK} <bare> on|by? the? ${ODOMETER}]`,
  "odometer: odo 40210-40252 hutch pickup": `[${ODOMETER}|miles from|:? <readings>]`,
  "odometer: 40210-40252 on the odometer": `[<readings> on|by? the? ${ODOMETER}|miles]`,
  "odometer: start 40210 end 40252 miles":
    "[start|started|starting|begin|began|beginning|out :|at|miles|mileage? <house> ,|-|and? end|ended|ending|finish|finished|back|stop :|at|miles|mileage? <house>|<miles> miles?]",
  "hours: started at 9 finished at 11:30 on the buffet":
    "[started|start|began|from|in <labor>? at? <bare>|<clock>|<time> ,|-|and? finished|ended|done|quit|stopped|knocked_off|finish|end|out at|by? <bare>|<clock>|<time>]",
  "hours: been on the trunk since 9, just quit at 11": `<piece> ,? [since ${OCLOCK} ,|-|and|.|til|till|until|to|just|i|we|finally|its|it_is|now|quit|stopped|finished|done|knocked_off|called_it|gave_up|wrapped_up* at|by|around? ${OCLOCK} now?]`,
  "hours: started the armoire at 10 quit at noon": `started|began|started_on <art>? <piece> [at|around ${OCLOCK} ,|-|and|then|i? finished|ended|done|quit|stopped|knocked_off|called_it at|by|around? ${OCLOCK}]`,
  "hours: been on the bookcase 2 to 4": `^ was|been|worked on|at <art>? <piece> [from? ${OCLOCK} to|till|til|until|- ${OCLOCK}]`,
  "trips: three 6 mile trips to the dump": "[# <miles> trips|runs|loads]",
  "both ways: 8 there 8 back to get the crib":
    "^ [<bare> there|out|up|over ,|and|&|+* <bare> back|home] for|to|getting|,|;",
  // A run for its own sake, unless somebody went to get something.
  "vague: ran 3 miles this morning":
    "^ i|we|just|went|for|a* ran|run|running [<miles>] this_morning|this_afternoon|this_evening|today|before|after|with|on|lol|;|<day>|,|.",
  "miles?: 30 ish miles getting the crib": "[<bare> ish|or_so|something miles|mi]",
  "miles: drove 14 miles for the desk, 20 for the crib":
    "<miles> for|getting|to_get <art>? <piece> ,|and|&|then|plus|+* [<bare>] for|getting|to_get <art>? <piece>",
  "trips: 2 trips to the lumber yard, 5 miles each":
    "[made|did|took? # trips|runs|loads|rounds to|out|over? <art>? <word>? <word>? ,|-|at|of|x* <miles> each|apiece|a_trip|per_trip|a_run]",
  "legs: 8 mi to the store then 11 more to the mill then 6 home": `[<miles> ${LEG} <bare>|<miles> more? ${LEG} <bare>|<miles> more? back|home|there|out|over|return]`,
  "legs: drove 20 to the auction then 15 home": `drove|drived [<bare> ${LEG} <bare> more? back|home|return]`,
  // There and back, each said.
  "both ways: drove 15 there 15 back":
    "drove|drived [<bare> there|out|over|up|down ,|and|&|then|plus|+? <bare> back|home]",
  "legs: 8 miles to the mill and 8 back": `[<miles> ${LEG} <bare>|<miles> more? back|home|return]`,
  "vague: primer was nineteen and change": "[$ and|& some? change] !is",
  // A payment, and what was added to it.
  "sum: caning 40 plus a 5 tip":
    "!!<sell>|me|us <service>|<labor>|<supply>|paid|pd|gave|slipped|handed … [$ plus|and|+|&|with|,* a|an? $ tip|gratuity]",
  "sum: usual 200 plus 50 extra to the loan":
    "^ !!<sell>|<buy> … [$ plus|+|and|&|, i|we|another|an|a|extra|additional|threw_in|put_in|added|with* $ extra|extra_principal|on_top|additional|more|principal] … loan",
  "sum: 200 plus another 50 to the loan":
    "^ !!<sell>|<buy> … [$ plus|+|and|& another|an_extra|an_additional|extra|additional an? $] to|on|toward|towards|at … loan",
  "sum: paid the loan 200 plus 40 extra":
    "loan … [$ plus|+|and|&|, i|we|another|an|a|extra|additional|threw_in|threw|put_in|in|added|with* $ extra|extra_principal|on_top|additional|more|principal] ;",
  "sum: loan payment of 200 and threw in an extra 25":
    "loan … [$ plus|+|and|&|, i|we|threw_in|threw|in|put_in|put|added* an|another? extra|additional $] ;",
  // What is owed on a loan is no part of a price.
  "amount: truck loan, 8800 owed, 5.25%": "loan ,? [$ still? owed|owing|outstanding|left|to_go|remaining]",
  "amount: 7000 outstanding on the grad loan":
    "[$ still? owed|owing|outstanding|left] on|for|to <art>? <any>? loan",
  // The rate of a loan, without its sign.
  "percent: loan 9200 at 6.4": "^ !!<pay> … loan :? … $ at|@ [$] ;",
  "percent: loan 9200 at 6.4 since may 1": `^ !!<pay> … loan … $ at|@ [$] on|for|since|from|as_of|,|.|<day>|and|interest|${RATE}`,
  "percent: grad loan 4100 6.8 apr": `^ !!<pay> … loan … $ [$] interest|${RATE}|fixed|variable`,
  "percent: loan rate is now 6.1": `^ !!<pay> … loan … ${RATE} ${IS_NOW}* [$]`,
  "percent: i owe 7300 on the car loan at 5.9": `^ !!<pay> … $ … loan at|@ [$] ;`,
  "percent: new rate 5.4 on the car loan": `^ <art>? ${RATE} ${IS_NOW}? [$] on|for … loan`,
  "percent: car loan interest is now 5.4": `^ !!<pay> … loan … interest ${MOVES} ${IS_NOW}* [$]`,
  "percent: interest on the car loan is 5.4": `^ <art>? interest on|for|of … loan ${MOVES} ${IS_NOW}* [$] ;`,
  "percent: rate on the car loan 5.4": `^ <art>? ${RATE} on|for|of … loan ${IS_NOW}* [$] ;`,
  "percent: got a loan 3000 7.25": "new|got|took_out|took|add|added|opened … loan … $ ,|@|at? [$] ;",
  "percent: tax rate 15": "tax rate|percent|percentage|set_aside is|now|:|=|to|at* [$] ;",
});
