import {
  ARTICLE,
  type Beside,
  endsHere,
  follows,
  has,
  isAndAll,
  isBought,
  isIncome,
  isMade,
  isOfLoans,
  isOfOne,
  isSomebody,
  isStream,
  isTakenIn,
  OF_COUNTS,
  OF_DEEDS,
  owns,
  TAKING,
  type Turn,
} from "./beside.ts";
import type { Mark } from "./marks.ts";
import { DEED_TURNS } from "./turns-of-deeds.ts";
import { FIGURE_TURNS } from "./turns-of-figures.ts";
import { SUM_TURNS } from "./turns-of-sums.ts";

/*
 * Words that mean something else beside certain others: "sold for cash" is no price, "which have sold" is no having.
 */

const TURNS: readonly Turn[] = [
  {
    // "Sold for cash" is no price.
    of: / (?:for|at)$/,
    when: ({ mark, next }) => has(mark, "soldFor") && next?.senses.thing?.method !== undefined,
    as: { cues: ["sold"] },
  },
  {
    // "Does oak pay": what it brings, where nobody of ours pays.
    of: /^pa(?:ys?|id)$/,
    when: ({ mark, marks, at }) =>
      (mark.text !== "paid" && at === marks.length - 1 && !marks.some(isSomebody)) ||
      // "What pays more than 30 an hour"
      (marks.some((mark) => has(mark, "hourly")) &&
        !marks.slice(0, at).some(({ text }) => /\b(?:i|we)\b/.test(text))),
    as: { cues: ["earn"] },
  },
  {
    // "Is #22 paid for", "has the desk been paid"
    of: /^(?:been )?paid(?: for)?$/,
    when: ({ marks, at, first }) =>
      at === marks.length - 1 &&
      /^(?:is|are|was|has|have|isnt|hasnt)$/.test(first) &&
      marks.some(({ number, senses }) => number !== undefined || senses.thing?.noun !== undefined) &&
      !marks.some(({ text }) => /\b(?:i|we)\b/.test(text)),
    as: { cues: ["paidUp"] },
  },
  {
    // "The last truck payment", "payments to the truck" went to the loan of that name.
    of: /^payments?$/,
    when: ({ marks, at, before, next }) =>
      owns(before, "loan") ||
      (/^(?:to|on|for)/.test(next?.text ?? "") &&
        marks.slice(at + 1, at + 4).some((mark) => owns(mark, "loan"))),
    as: { cues: ["loanPaid"] },
  },
  {
    // "How much has gas run since august"
    of: /^runs?$/,
    when: ({ marks, at }) =>
      marks.slice(0, at).some(isBought) && !marks.slice(at + 1).some(({ senses }) => senses.thing),
    as: { cues: ["spent"] },
  },
  {
    // "Total chairs bought": how many.
    of: /^total$/,
    when: ({ marks, next }) =>
      Boolean(
        next?.senses.thing?.plural || (next?.senses.flags.has("generic") && !next.senses.flags.has("filler")),
      ) && marks.some((mark) => has(mark, ...OF_COUNTS)),
    as: { cues: ["howMany"] },
  },
  {
    // "Walnut pieces total profit"
    of: /^(?:(?:pieces|flips) total|total (?:pieces|flips))$/,
    when: ({ marks, at }) =>
      marks.slice(at + 1).some((mark) => has(mark, "earn", "net", "revenue", "sale", "cost", "spent")),
    as: { cues: ["total"], flags: ["generic"] },
  },
  {
    // "What did the student take home": no pay of ours.
    of: /^(?:take|took|takes) home$/,
    when: ({ marks, at }) => marks.slice(0, at).some((mark) => owns(mark, "buyer")),
    as: { cues: ["took"] },
  },
  {
    // "Outlay on inventory": on what was bought, and not on what is left of it.
    of: /^(?:inventory|stock)$/,
    when: ({ marks, before }) =>
      /(?:^| )(?:on|into)$/.test(before?.text ?? "") && marks.some((mark) => has(mark, "spent", "paid")),
    as: { flags: ["generic"] },
  },
  {
    // "How many thrift store finds do i still have": pieces, and nothing that is found
    of: /^finds$/,
    when: ({ marks }) =>
      marks.some(
        (mark) =>
          owns(mark, "person") ||
          /\b(?:fix|refinish|restor)/.test(mark.text) ||
          has(
            mark,
            "daysToSell",
            "takes",
            "hourly",
            "reached",
            "comeDown",
            "daysListed",
            "tiedUp",
            "average",
          ) ||
          has(mark, "have", "unsold", "sold", "earn", "net", "revenue", "soldFor", "listed", "asking"),
      ),
    as: { flags: ["generic"] },
  },
  {
    // "The price of the bench when i bought it", "how was #7 paid for when it sold"
    of: /^when$/,
    when: ({ marks, at, next, first }) =>
      first !== "when" &&
      /^(?:i|we|it|they|that)\b/.test(next?.text ?? "") &&
      marks.slice(0, at).some((mark) => has(mark, "price", "paid", "cost", "howPaid", "asking", "minutes")),
    as: { flags: ["filler"] },
  },
  {
    // "What brought in the most cash": money, however it was paid, where "the lowest cash sale" was paid so
    of: /^cash$/,
    when: ({ before, next }) =>
      before?.senses.order !== undefined && !has(next, "sale", "sold", "bought", "purchases"),
    as: { cues: ["money"] },
  },
  {
    // "What kind of money did i make"
    of: /^kind$/,
    when: ({ marks, at, next }) => next?.text === "of" && has(marks[at + 2], "money"),
    as: { flags: ["filler"] },
  },
  {
    // "Take from the neighbor" is what came in from a buyer.
    of: /^take from$/,
    when: ({ marks, at }) => marks.slice(at + 1, at + 3).some((mark) => owns(mark, "buyer")),
    as: { cues: ["revenue"], link: "from" },
  },
  {
    // "October take"
    of: /^take$/,
    when: ({ marks, at, before }) => before?.period !== undefined && at === marks.length - 1,
    as: { cues: ["earn"] },
  },
  {
    // "Best selling kind by count"
    of: /^count$/,
    when: ({ marks, at, before }) =>
      Boolean(before?.senses.flags.has("parted")) &&
      endsHere({ marks, at } as Beside) &&
      marks.some(({ text }) => /\bsell/.test(text)),
    as: { cues: ["howMany", "sold"] },
  },
  { of: /^age of$/, when: () => true, as: { cues: ["howLong", "had"] } },
  {
    // "Total sold to the nurse" is what she paid.
    of: /^total sold$/,
    when: ({ marks, at, next }) =>
      /^to\b/.test(next?.text ?? "") && marks.slice(at + 2, at + 4).some((mark) => owns(mark, "buyer")),
    as: { cues: ["total", "sold"] },
  },
  {
    // "Double my payment": no double dresser.
    of: /^(?:double|triple)$/,
    when: ({ marks, at }) => marks.slice(at + 1, at + 6).some((mark) => has(mark, "paid")),
    as: { flags: ["filler"] },
  },
  {
    // "Both loans", "both nightstands": all of them, as long as there are two.
    of: /^both(?: of)?$/,
    when: ({ marks, at, first }) =>
      marks
        .slice(at + 1, at + 4)
        .some((mark) => isOfLoans(mark) || (!/^who/.test(first) && mark.senses.thing?.plural === true)),
    as: { flags: ["filler"] },
  },
  {
    // "The two end tables": all of them, as long as there are so many.
    of: /^(?:the |all |all the )?(?:two|three|four|five|[2-5])$/,
    when: (beside) =>
      (follows(beside, /(?:^| )(?:the|my|our|all|those)$/) || / /.test(beside.mark.text)) &&
      beside.marks.slice(beside.at + 1, beside.at + 4).find(({ senses }) => senses.thing?.trait === undefined)
        ?.senses.thing?.plural === true,
    as: { flags: ["filler"] },
  },
  {
    // "Top kinds by number sold", "months by pieces sold": by how many.
    of: /^(?:number|pieces|items|things|units)$/,
    when: ({ mark, before, next }) =>
      has(next, ...OF_COUNTS) && (mark.text === "number" || Boolean(before?.senses.flags.has("parted"))),
    as: { cues: ["howMany"] },
  },
  {
    // "Which dressers have sold" asks for what was done, and not for what there is.
    of: /^(?:have|has)$/,
    when: ({ marks, at }) =>
      has(
        marks.slice(at + 1).find(({ senses }) => !senses.flags.has("filler") || senses.cues.length > 0),
        ...OF_DEEDS,
      ),
    as: { flags: ["filler"] },
  },
  {
    of: /^been listed$/,
    when: ({ marks, first }) => /^(?:which|what)$/.test(first) && !marks.some(({ senses }) => senses.order),
    as: { cues: ["listed"] },
  },
  {
    // "Do dressers take longer than lamps to sell"
    of: /^to sell$/,
    when: ({ marks }) =>
      marks.some(({ text }) => text === "longer than") && marks.some((mark) => has(mark, "takes")),
    as: { cues: ["daysToSell"] },
  },
  {
    // "Which lamp made more" looks for the one that made the most.
    of: /^more$/,
    when: (beside) => isOfOne(beside),
    as: { order: "most" },
  },
  { of: /^less$/, when: (beside) => isOfOne(beside), as: { order: "least" } },
  {
    // "What did the bank say": no winnings. "Hey bot" asks nothing, "how many did the robot sell" what nobody knows.
    of: /^(?:bank|bot|robot)$/,
    when: (beside) => follows(beside, ARTICLE),
    as: { unknown: true },
  },
  {
    // "A better flip than the desk": a thing, and nothing done.
    of: /^(?:flip|sell|seller)$/,
    when: (beside) =>
      follows(beside, /(?:^| )(?:an?|better|worse|my|the)$/) &&
      beside.marks.some(({ text }) => /^(?:better|worse)/.test(text)),
    as: { flags: ["generic"] },
  },
  {
    // "How many have gone to the landlord": to a buyer, and to no loan.
    of: /^(?:gone|went|go) to$/,
    when: ({ marks, at }) => {
      const whom = marks.slice(at + 1, at + 3).find((mark) => owns(mark, "buyer") || isOfLoans(mark));
      return whom !== undefined && !isOfLoans(whom);
    },
    as: { cues: ["sold"] },
  },
  {
    // "What is in the hutch, paint and all"
    of: /./,
    when: (beside) =>
      isBought(beside.mark) && isAndAll(beside) && beside.marks.some((mark) => has(mark, "cost")),
    as: { flags: ["filler"] },
  },
  {
    // "Break my spending down by month"
    of: /^(?:break|split|divide)$/,
    when: ({ at }) => at === 0,
    as: { flags: ["filler"] },
  },
  {
    // "What took the longest to fix up": by the hours in it.
    of: /^(?:to )?(?:work on|worked on|fix(?:ing)?(?: up)?|do up|refinish|restore|redo)$/,
    when: ({ marks }) => marks.some(({ text, senses }) => senses.order && /\blongest$/.test(text)),
    as: { cues: ["minutes"] },
  },
  {
    // "Dressers minus desks": one beside the other, since no dresser is a desk.
    of: /^minus$/,
    when: ({ before, next }) =>
      (before?.senses.thing?.noun !== undefined && next?.senses.thing?.noun !== undefined) ||
      (before?.period !== undefined && next?.period !== undefined) ||
      // "Workshop income minus tips"
      ((isIncome(before) || isStream(before)) && isStream(next)),
    as: { flags: ["compare"] },
  },
  {
    // "For a piece" means no average.
    of: /^a piece$/,
    when: (beside) => follows(beside, /(?:^| )(?:for|on|of|from)$/),
    as: { text: "piece", flags: ["generic"] },
  },
  {
    // "Including tips", "counting workshops"
    of: TAKING,
    when: (beside) =>
      isMade(beside) &&
      isIncome(ARTICLE.test(beside.next?.text ?? "") ? beside.marks[beside.at + 2] : beside.next),
    as: { cues: ["everything"] },
  },
  {
    // "With ads and tips", "tips thrown in", "side money too": all of them are taken in.
    of: /./,
    when: (beside) => {
      if (!isIncome(beside.mark) || !isMade(beside)) return false;
      const { marks, at, before } = beside;
      const lead = ARTICLE.test(before?.text ?? "") ? marks[at - 2] : before;
      // "June all in, tips and workshops and everything"
      const isWhole = marks.some((mark) => /^all (?:in|told)$/.test(mark.text) || has(mark, "everything"));
      if (isWhole && !/^(?:from|on|in|off|made on|made from|made off)$/.test(lead?.text ?? "")) return true;
      if (TAKING.test(lead?.text ?? "") || isTakenIn(beside)) return true;
      const other = before?.senses.flags.has("and") ? marks[at - 2] : undefined;
      return other !== undefined && (has(other, "everything") || TAKING.test(marks[at - 3]?.text ?? ""));
    },
    as: { cues: ["everything"] },
  },
];

const ALL_TURNS: readonly Turn[] = [...TURNS, ...DEED_TURNS, ...SUM_TURNS, ...FIGURE_TURNS];

/** A mark as the ones beside it have it. */
export function meantBeside(marks: readonly Mark[], at: number, first: string): Mark {
  const mark = marks[at]!;
  const beside: Beside = { marks, at, mark, before: marks[at - 1], next: marks[at + 1], first };
  const turn = ALL_TURNS.find(({ of, when }) => of.test(mark.text) && when(beside));
  if (!turn) return mark;
  const { flags = [], text = mark.text, unknown, ...senses } = turn.as;
  const { unknown: _, amount, ...known } = mark;
  return {
    ...known,
    // "The two tables": how many is no amount where it is passed over.
    ...(amount && !flags.includes("filler") ? { amount } : {}),
    text,
    senses: { cues: [], own: [], ...senses, flags: new Set(flags) },
    ...(unknown ? { unknown } : {}),
  };
}
