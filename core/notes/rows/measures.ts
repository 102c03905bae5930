import type { NumberEffect } from "./owed.ts";
import type { Row } from "./table.ts";

const ODOMETER = "odometer|odo|speedo|speedometer|mileage";
const LINK = "to|thru|until|till|-|→";
const RATE = "rate|interest|apr|interest_rate|loan_rate|new_rate";
const IS_NOW =
  "is|now|is_now|:|=|at|of|to|went|went_to|up|down|changed|changed_to|dropped|dropped_to|fell|rose";

/** Numbers whose measure stands elsewhere: minutes, miles by the odometer, the percents of a loan. */
export const MEASURES: readonly Row<NumberEffect>[] = [
  // The second of two stretches of work.
  [
    "<time> <labor>? on <art>? <piece> ,|and|&|then|plus|+? [<bare>] <labor>? on <art>? <piece>",
    "minutes",
    "20 min on the bench, 40 on the stool",
  ],
  [
    "<time> … ,|and|then <day> another|only? [<bare>] ;",
    "minutes",
    "monday 2 hours on the desk, tuesday 1.5",
  ],
  ["<time> … ,|and|then <day> [<bare>] more ;", "minutes", "monday 2 hours on the desk, tuesday 1.5 more"],
  // Marks and words beside a time that say nothing.
  ["^ <art>? <piece> [+] <time>", "passing", "hutch +45 min"],
  ["^ [labor|time|hours|work|worked|shop|logged :|-] <time>", "passing", "labor: 2h desk"],
  ["got|get|put|squeezed|snuck|fit [in <time>] on", "amount", "got in an hour on the desk"],
  [
    "[closes|opens|closing|opening|leaves|leaving|arrives|due|starts|ends|begins|coming|back in <time>]",
    "passing",
    "store closes in 45 min",
  ],
  // By the odometer.
  [
    `[${ODOMETER}|miles reading|readings|went|from|:|was|is|read|start|started|at* <bare> ${LINK}|then|and|, end|ended|ending|now|finish|at* <bare>]`,
    "odometer",
    "odometer 40210 to 40252",
  ],
  [`[<bare> ${LINK} <bare> on|by? the? ${ODOMETER}]`, "odometer", "40210 to 40252 on the odometer"],
  [`[${ODOMETER}|miles from|:? <readings>]`, "odometer", "odo 40210-40252 hutch pickup"],
  [`[<readings> on|by? the? ${ODOMETER}|miles]`, "odometer", "40210-40252 on the odometer"],
  [
    "[start|started|starting|begin|began|beginning|out :|at|miles|mileage? <bare> ,|-|and? end|ended|ending|finish|finished|back|stop :|at|miles|mileage? <bare>|<miles> miles?]",
    "odometer",
    "start 40210 end 40252 miles",
  ],
  // There and back, each said.
  [
    "[<miles> there|out|over|up|down ,|and|&|then|plus|+? # miles|mi? back|home|return]",
    "both ways",
    "18 miles there and 18 back for the desk",
  ],
  [
    "drove|drived [<bare> there|out|over|up|down ,|and|&|then|plus|+? <bare> back|home]",
    "both ways",
    "drove 15 there 15 back",
  ],
  ["[$ and|& some? change] !is", "vague", "primer was nineteen and change"],
  // The rate of a loan, without its sign.
  ["^ !!<pay> … loan … $ at|@ [$] ;", "percent", "loan 9200 at 6.4"],
  [
    `^ !!<pay> … loan … $ at|@ [$] on|for|since|from|as_of|,|.|<day>|and|${RATE}`,
    "percent",
    "loan 9200 at 6.4 since may 1",
  ],
  [`^ !!<pay> … loan … $ [$] ${RATE}|fixed|variable`, "percent", "grad loan 4100 6.8 apr"],
  [`^ !!<pay> … loan … ${RATE} ${IS_NOW}* [$]`, "percent", "loan rate is now 6.1"],
  [`^ !!<pay> … $ … loan at|@ [$] ;`, "percent", "i owe 7300 on the car loan at 5.9"],
  [`^ <art>? ${RATE} ${IS_NOW}? [$] on|for … loan`, "percent", "new rate 5.4 on the car loan"],
  [`^ <art>? ${RATE} on|for|of … loan ${IS_NOW}* [$] ;`, "percent", "interest on the car loan is 5.4"],
  ["new|got|took_out|took|add|added|opened … loan … $ ,|@|at? [$] ;", "percent", "got a loan 3000 7.25"],
  ["^ !!<pay> … loan : $ @|at [$] ;", "percent", "car loan: 7300 @ 5.25"],
  ["tax rate|percent|percentage|set_aside is|now|:|=|to|at* [$] ;", "percent", "tax rate 15"],
];
