import type { Day } from "../calendar.ts";
import { firstDayOf, lastDayOf, monthOf, showMonth } from "../calendar.ts";
import type { MilesAtRate, MilesDriven, OwnerRates } from "../mileage.ts";
import { addMiles, drivesOf, showMiles } from "../mileage.ts";
import { show } from "../money.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { reply } from "./wording.ts";

export const miles = defineAnswer({
  about: "miles",
  example: "how many miles",
  asks: {
    phrases: [
      "miles",
      "mileage",
      "how many miles",
      "how far … drive",
      "how far … driven",
      "how far have i driven",
      "how much … drive",
      "how much … driven",
      "miles … drive",
      "miles driven",
      "how many miles … {month}",
      "how many miles … {year}",
      "total miles",
      "miles … {month}",
      "miles … {year}",
      "miles did i drive",
      "my mileage",
      "mileage … {month}",
      "mileage … {year}",
      "how much mileage",
      "what … mileage",
      "what … miles",
    ],
    whole: ["miles", "mileage", "total miles"],
  },
  answer: answerMiles,
});

function answerMiles({ question, books, today, currency, mileageRates }: Asked): Answer {
  const span = spanOf(question.month, question.year, today);
  const driven = addMiles(drivesOf(books.facts, span), mileageRates);
  if (driven.byRate.length === 0) {
    return reply([`${span.name}: no miles logged.`, 'A note adds them: "drove 24 miles"']);
  }
  const month = addMiles(drivesOf(books.facts, { from: firstDayOf(monthOf(today)), through: today }));
  const isYear = question.month === undefined && span.through === today;
  return reply([
    `${span.name}: ${showMiles(driven.miles)} miles`,
    ...(currency === "USD" ? valueLines(driven, mileageRates) : []),
    isYear ? `${showMonth(monthOf(today))} so far: ${showMiles(month.miles)} miles` : null,
    "Miles do not change the profit.",
  ]);
}

interface Span {
  name: string;
  from: Day;
  through: Day;
}

function spanOf(month: string | undefined, year: string | undefined, today: Day): Span {
  const asked = year ?? today.slice(0, 4);
  const span =
    month === undefined
      ? { name: asked, from: `${asked}-01-01`, through: `${asked}-12-31` }
      : { name: showMonth(month), from: firstDayOf(month), through: lastDayOf(month) };
  return span.through < today ? span : { ...span, name: `${span.name} so far`, through: today };
}

/** The value of miles, a line for each rate where there are several. */
function valueLines(driven: MilesDriven, ownerRates: OwnerRates): string[] {
  const [first] = driven.byRate;
  const several = driven.byRate.length > 1;
  const atOne = first && !several ? `, ${first.rate.cents} cents a mile` : "";
  return [
    `Worth ${show(driven.value)}${atOne}`,
    ...(several ? driven.byRate.map(rateLine) : []),
    ...driven.byRate
      .filter(({ rate }) => !rate.own)
      .flatMap(({ rate }) => standInLine(rate.year, ownerRates)),
  ];
}

function rateLine({ rate, miles: driven, value }: MilesAtRate): string {
  return `  ${showMiles(driven)} miles at ${rate.cents} cents: ${show(value)}`;
}

function standInLine(year: string, ownerRates: OwnerRates): string {
  const whose = year in ownerRates ? "your" : "the";
  return `No rate known for this year: ${whose} ${year} one used`;
}
