import type { Books } from "../books/books.ts";
import { factsOf, firstIndex } from "../books/exchange.ts";
import { monthRows, taxPercentOn } from "../books/month.ts";
import type { Day } from "../calendar.ts";
import { showDay } from "../calendar.ts";
import type { MilesDriven, OwnerRates } from "../mileage.ts";
import { addMiles, drivesOf, showMiles } from "../mileage.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { nextEstimatedTaxDay, selfEmploymentTax, vehicleCostCovered } from "../tax.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { noMoney, reply, signed } from "./wording.ts";
import { sumOfRows } from "./year.ts";

export const tax = defineAnswer({
  about: "tax",
  example: "how much tax do i owe",
  asks: {
    phrases: [
      "tax",
      "taxes",
      "how much tax",
      "set aside for tax",
      "owe … tax",
      "owe … taxes",
      "tax … owe",
      "what do i owe in taxes",
      "how much … tax",
      "how much … taxes",
      "what … taxes",
      "what … tax",
      "estimated tax",
      "quarterly",
      "quarterly taxes",
      "self employment tax",
      "irs",
      "the irs",
      "how much should i set aside",
      "how much do i owe in tax",
      "how much do i owe in taxes",
      "how much do i owe the irs",
      "how much tax do i owe",
      "how much do i owe for taxes",
      "what … owe … taxes",
      "how much … owe … taxes",
      "how much … owe … tax",
      "tax bill",
      "when … taxes due",
      "when are taxes due",
    ],
    whole: ["tax", "taxes", "tax so far", "tax estimate", "quarterly taxes"],
  },
  answer: answerTax,
});

/** A year's net in cents as the books have it, and as the tax view has it. */
interface TaxYear {
  /** Flip profit and other income, less what buyers came to owe: on the cash basis that counts once it is paid. */
  booksNet: Cents;
  /** How much more buyers owe at the end than at the start: below zero, more of it was paid than came to be owed. */
  buyersOwe: Cents;
  /** What pieces given in trades were worth: barter counts as a sale. */
  traded: Cents;
  /** Vehicle spending that the mileage rate stands in for, as it lowered `booksNet`. */
  vehicle: Cents;
  miles: MilesDriven;
  /** `booksNet` with the miles at the standard rate in place of that vehicle spending. */
  net: Cents;
  taxSetAside: Cents;
}

/** The tax view of a year through `today`: miles at the standard rate instead of vehicle spending. */
function taxYearOf(books: Books, year: string, today: Day, ownerRates: OwnerRates): TaxYear {
  const span = { from: `${year}-01-01`, through: `${year}-12-31` < today ? `${year}-12-31` : today };
  const sum = sumOfRows(monthRows(books, today).filter((row) => row.month.startsWith(year)));
  const { buyersOwe } = sum;
  const booksNet = sum.flipProfit + sum.otherIncome - buyersOwe;
  const traded = factsOf(books.facts, span)
    .filter(({ kind }) => kind === "trade")
    .reduce((total, { amount = 0 }) => total + amount, 0);
  const vehicle = vehicleCostCovered(books, span);
  const miles = addMiles(drivesOf(books.facts, span), ownerRates);
  return {
    booksNet,
    buyersOwe,
    traded,
    vehicle,
    miles,
    net: booksNet + vehicle - miles.value,
    taxSetAside: sum.taxSetAside,
  };
}

function answerTax({ question, books, today, currency, mileageRates }: Asked): Answer {
  if (currency !== "USD") {
    return reply(["The tax answer knows only US rules,", `and these books are kept in ${currency}.`]);
  }
  const year = question.year ?? question.month?.slice(0, 4) ?? today.slice(0, 4);
  if (year > today.slice(0, 4)) return reply([`${year} has not begun yet.`]);
  const name = year === today.slice(0, 4) ? `${year} so far` : year;
  if (!books.facts[firstIndex(books.facts, ({ day }) => day >= year)]?.day.startsWith(year))
    return noMoney(books, `Tax ${name}`);
  const view = taxYearOf(books, year, today, mileageRates);
  return reply([
    `Tax ${name}, an estimate:`,
    ...netLines(view),
    ...owedLines(view),
    ...tradeLines(view),
    ...selfEmploymentLines(view.net, year),
    setAsideLine(view.taxSetAside, taxPercentOn(books, today)),
    `Next estimated tax is due ${showDay(nextEstimatedTaxDay(today), today)}`,
    "An estimate, no advice:",
    "ask a licensed tax preparer.",
  ]);
}

function setAsideLine(taxSetAside: Cents, percent: string): string {
  if (taxSetAside === 0 && percent === "0") return 'Nothing set aside: "set aside 20% for tax"';
  return `Set aside so far ${show(taxSetAside)} (${percent}% now)`;
}

/**
 * Few who file as one person keep accrual books: on the cash basis income counts in the year it is received (IRS
 * Publication 334, cash method).
 */
function owedLines({ buyersOwe }: TaxYear): string[] {
  if (buyersOwe === 0) return [];
  if (buyersOwe > 0)
    return [`  ${show(buyersOwe)} that buyers owe is left out:`, "  it counts once it is paid (cash basis)"];
  return [
    `  ${show(-buyersOwe)} less is owed by buyers than`,
    "  before: what was paid is in it (cash basis)",
  ];
}

/** Barter is income at the fair market value of what is received (IRS Topic 420); the worth given stands in for it. */
function tradeLines({ traded }: TaxYear): string[] {
  if (traded === 0) return [];
  return [
    `  trades count as sales, ${show(traded)}: what you`,
    "  gave stands for the value of what you got",
  ];
}

/** Both ways to count driving, side by side. */
function netLines({ booksNet, vehicle, miles, net }: TaxYear): string[] {
  const rates = [...new Set(miles.byRate.map(({ rate }) => rate.cents))].join(" and ");
  const standIns = new Set(miles.byRate.filter(({ rate }) => !rate.own).map(({ rate }) => rate.year));
  return [
    `Net with vehicle costs ${signed(booksNet)}`,
    `  vehicle costs in it ${show(vehicle)}`,
    `Net with miles instead ${signed(net)}`,
    `  ${showMiles(miles.miles)} miles worth ${show(miles.value)}${rates ? ` (${rates} cents)` : ""}`,
    ...[...standIns].map((year) => `  no newer rate known: that of ${year} used`),
  ];
}

function selfEmploymentLines(net: Cents, year: string): string[] {
  const estimate = selfEmploymentTax({ year, profit: net });
  if (estimate.total === 0) return ["Self-employment tax 0.00", "  (it starts at 400.00 of net earnings)"];
  const cap = estimate.capYear === year ? [] : [`  with the ${estimate.capYear} figures, the latest known`];
  return [
    `Self-employment tax about ${show(estimate.total)}`,
    `  half of it, ${show(estimate.half)}, lowers taxed income`,
    ...cap,
    "  Income tax comes on top.",
  ];
}
