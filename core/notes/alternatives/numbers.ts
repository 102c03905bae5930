import { AMOUNT_CENTS_MAX, type Cents } from "../../money.ts";
import { type Clause, MEASURES, type Tok } from "../clause.ts";
import { sizeOrPiece } from "../judging/spending.ts";
import { wholeOf } from "../quantities/amounts.ts";
import type { Kind, Mention } from "../reading.ts";
import { centsIn } from "../slots/money.ts";
import { measuresIn } from "../slots/spending.ts";
import { language } from "../verbs.ts";
import { LABOR_NAMES } from "../words/labors.ts";
import { AT_PRICE } from "../words/money.ts";
import { daysMeant } from "./days-meant.ts";
import { as, changed, itself, type Offer } from "./held.ts";
import { NEARLY_ALL } from "./prices.ts";

/*
 * Several numbers, a number said in two ways, or several days: the reading with each of them.
 */

/** "6 knobs at 2.50": what all of them cost, and what one of them would be. */
function ofOneAndAll({ tokens, what }: Clause): number[] | null {
  const measured = tokens.find((token) => token.kind === "grain" && measuresIn(token) !== null);
  const amounts = tokens.filter(({ kind }) => kind === "amount");
  const [count, price, ...more] = measured ? [measured, ...amounts] : amounts;
  const link = tokens[tokens.indexOf(price!) - 1]?.text ?? "";
  if (!what || !count || !price || more.length > 0 || !AT_PRICE.has(link)) return null;
  const times = measured ? measuresIn(measured)!.count : wholeOf(count.amount?.exact ?? null);
  const cents = centsIn(price);
  if (times === null || cents === null || count.amount?.money) return null;
  return times * cents > AMOUNT_CENTS_MAX ? [cents] : [times * cents, cents];
}

const CENTS = /^\d{2}$/;

/** "gas 18..50": dollars and cents with one mark too many between; null where two numbers stand otherwise. */
function slippedDecimals({ tokens, spans }: Clause): Cents | null {
  const at = tokens.findIndex(({ kind }) => kind === "amount");
  const [dollars, mark, again, cents, ...rest] = tokens.slice(Math.max(0, at));
  if (!dollars || !mark || !again || cents?.kind !== "amount" || !CENTS.test(cents.text)) return null;
  const isMarks = mark.text === again.text && (mark.text === "." || mark.text === ",");
  const isTight = spans[dollars.to - 1]!.end + 2 === spans[cents.from]!.start;
  const whole = wholeOf(dollars.amount?.exact ?? null);
  const isOnly = !rest.some(({ kind }) => kind === "amount");
  return at >= 0 && isMarks && isTight && isOnly && whole !== null ? whole * 100 + Number(cents.text) : null;
}

/** Each amount of the clause as the one that was asked for. */
export const eitherAmount: Offer = (held) => {
  const { made } = held;
  if (!made) return [];
  const slipped = slippedDecimals(held.clause);
  const amounts = slipped === null ? (ofOneAndAll(held.clause) ?? held.amounts) : [slipped, ...held.amounts];
  const field = ["price", "amount", "balance"].find((name) => made.needs.includes(name));
  if (!field || amounts.length < 2) return [];
  const each = [...new Set(amounts)].slice(0, 3).map((cents) => ({
    ...made,
    fields: {
      ...made.fields,
      ...(made.fields["pieces"] || !held.pieces || !isOfPieces(made.kind) ? {} : { pieces: held.pieces }),
      [field]: cents,
    },
  }));
  const numbered = made.kind === "buy" || !made.wantsPieces ? null : pieceNumbered(held.clause);
  const net = Math.min(...held.amounts);
  const gross = Math.max(...held.amounts);
  // "sold credenza 150 and 138 hit my account"
  if (made.kind === "sell" && amounts.length === 2 && net < gross && net >= gross * NEARLY_ALL)
    each.splice(1, 0, changed(each[0]!, { [field]: gross, fee: gross - net }));
  const several = numbered && made.kind !== "list" ? severalCounted(numbered.mention) : null;
  return numbered
    ? [
        ...(several
          ? [{ ...made, fields: { ...made.fields, pieces: [several], [field]: numbered.cents } }]
          : []),
        { ...made, fields: { ...made.fields, pieces: [numbered.mention], [field]: numbered.cents } },
        ...each,
      ]
    : each;
};

/** Tips are of no piece, whatever stands beside them. */
const isOfPieces = (kind: Kind): boolean =>
  language()
    .grammars.get(kind)
    ?.fields.some(({ name }) => name === "pieces") === true;

/** No more than this are counted without a word for them. */
const SEVERAL_MAX = 12;

/** "sold 4 for 160": so many of those spoken of. */
const severalCounted = ({ number = 0, name }: Mention): Mention | null =>
  name === undefined && number > 1 && number <= SEVERAL_MAX ? { it: true, count: number } : null;

/** "bench 2 listed 45", "sold 3 for 45": the first of two numbers may be a piece's own. */
function pieceNumbered({ tokens }: Clause): { mention: Mention; cents: number } | null {
  const [first, second, ...more] = tokens.filter(({ kind }) => kind === "amount");
  if (!first || !second || more.length > 0 || first.each || second.each) return null;
  const pieces = tokens.filter(({ kind }) => kind === "piece");
  // "paint 7 for mirror 2": the number stands behind its piece.
  const isBehind = tokens[tokens.indexOf(second) - 1] === pieces[0] && !second.amount?.money;
  const [numeral, price] = isBehind ? [second, first] : [first, second];
  const number = wholeOf(numeral.amount?.exact ?? null);
  const cents = centsIn(price);
  const before = tokens[tokens.indexOf(numeral) - 1];
  if (numeral.amount?.money || number === null || number < 1 || cents === null || pieces.length > 1)
    return null;
  if (pieces.length === 0) return { mention: { number, count: 1 }, cents };
  const { plural, number: own, count } = pieces[0]!.mention!;
  const isItsNumber = before === pieces[0] && !plural && own === undefined && count === 1;
  return isItsNumber ? { mention: { ...pieces[0]!.mention!, number }, cents } : null;
}

/** What the talk and the books may know: "took about 2 hours" is of the piece spoken of. */
const NAMED_BY_BOOKS: ReadonlySet<string> = new Set(["count", "pieces"]);

/** "two fifty" is either of two amounts. */
export const eitherSpoken: Offer = (held) => {
  const { made, clause, pieces } = held;
  // "paid two guys 30 each": what both got.
  const hands = clause.tokens.find(({ roles, amount }) => roles.hedge === "vague" && amount?.factors);
  const sum = hands && centsIn(hands);
  if (sum) return [as("spend", { what: "help", category: "help", amount: sum }, held)];
  // "about an hour on the desk"
  const isNear = clause.tokens.some(({ roles, text }) => roles.hedge === "vague" || text === "~");
  const isWhole = made?.needs.every((field) => NAMED_BY_BOOKS.has(field) || made.fields[field] !== undefined);
  if (made && isNear && isWhole) return [made];
  const token = clause.tokens.find(({ amount }) => amount?.either !== undefined);
  const field = ["price", "amount", "balance"].find((name) => made?.needs.includes(name));
  if (!token || !made || !field) return [];
  const named = made.fields["pieces"] || !pieces ? {} : { pieces };
  return token.amount!.either!.map((cents) => ({
    ...made,
    fields: { ...made.fields, ...named, [field]: cents },
  }));
};

/** Nobody tells a longer time in minutes without saying so. */
const BARE_MINUTES_MAX = 600;

/** "sanded the desk 45": how long it took, or what somebody took for it. */
export const timeOrCost: Offer = (held) => {
  const { clause, amounts } = held;
  const number = clause.tokens.find(({ kind }) => kind === "amount")?.amount;
  const labor = clause.tokens.find(({ roles }) => roles.labor);
  if (!number || !labor || amounts.length !== 1) return [];
  const what = LABOR_NAMES.get(labor.text) ?? labor.text;
  const minutes = number.money ? null : wholeOf(number.exact ?? null);
  const isTime = minutes !== null && minutes > 0 && minutes <= BARE_MINUTES_MAX;
  return [
    ...(isTime ? [as("work", { minutes, what }, held)] : []),
    as("spend", { what, category: "help", amount: amounts[0] }, held),
    // "refinished desk 90": such a desk, perhaps.
    ...(clause.tokens[clause.tokens.indexOf(labor) + 1]?.kind === "piece"
      ? [as("list", { price: amounts[0] }, held)]
      : []),
  ];
};

export const cutOrPrice: Offer = (held) => {
  const [amount] = held.amounts;
  if (amount === undefined || (!held.pieces && !held.made)) return [];
  const both = [as("reprice", { price: amount }, held), as("reprice", { cut: amount }, held)];
  return held.pieces ? both : both.map((each) => ({ ...each, takesBefore: true }));
};

export const newPrice: Offer = (held) =>
  held.amounts.length === 1 ? [as("reprice", { price: held.amounts[0] }, held)] : [];

/** "last weekend", "fri or sat", "sunday market": each day that it may have been. */
export const eachDay: Offer = ({ made, clause }) => {
  const isOpen = made?.needs.some((field) => field !== "count" && made.fields[field] === undefined);
  const isLeft = ({ kind, claimed }: Tok): boolean => !claimed && MEASURES.has(kind);
  if (!made?.dated || isOpen || clause.tokens.some(isLeft)) return [];
  return daysMeant(clause).map((date) => {
    const { date: _, ...fields } = made.fields;
    return { ...made, fields: date === clause.today ? fields : { ...fields, date } };
  });
};

/** "bolts #2 2.10": for the piece of that number, where there is one, or so big. */
export const ofPieceOrSize: Offer = (held) => {
  const number = sizeOrPiece(held.clause);
  if (number === null || !held.made) return itself(held);
  return [changed(held.made, { pieces: [{ number, count: 1 }] }), held.made];
};
