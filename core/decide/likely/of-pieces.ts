import { goingPrice } from "../../books/agreed.ts";
import type { Books, Piece } from "../../books/books.ts";
import { depositOf, owedByBuyers } from "../../books/shares.ts";
import type { Cents } from "../../money.ts";
import type { Mention, Reading } from "../../notes/reading.ts";
import type { TurnTold } from "../../notes/rows/telling.ts";
import type { Gathered } from "../../notes/second-look/gathered.ts";
import { STILL_OWED } from "../../notes/words/mending.ts";
import { BETWEEN, GIVEN_TO_US, KEEPS, type Tells, tellsOf } from "../../notes/words/telling.ts";
import { byNumbers } from "../pieces/mentioned.ts";

/* What may be told of pieces on the books, by how they stand and by what the words tell. */

/** A reading, and how much speaks for it. */
export interface Likely {
  reading: Reading;
  weight: number;
}

export const likely = (weight: number, reading: object): Likely => ({ weight, reading: reading as Reading });

type Pieces = readonly Readonly<Piece>[];

/** What is at hand for a reading: what was said, of which pieces, and what these are to bring. */
interface Case {
  found: Gathered;
  pieces: Pieces;
  at: { pieces: Mention[]; text: string; line: number; date?: string; by?: string };
  paid: { method?: string };
  /** What they are listed at or were agreed on, what is put down, what they cost. */
  going: Cents | null;
  deposit: Cents;
  cost: Cents;
  says: (...tells: (Tells | TurnTold)[]) => boolean;
  /** Nothing that was only said, meant or denied. */
  isDone: boolean;
}

function caseOf(found: Gathered, pieces: Pieces, books: Books | null): Case {
  const { tells, text, line, method, by, weekday } = found;
  const says = (...any: (Tells | TurnTold)[]): boolean => any.some((each) => tells.has(each));
  const isPast =
    weekday !== undefined &&
    pieces.every(({ bought }) => bought <= weekday) &&
    !says("comes", "planned", "held", "owes");
  const date = found.date ?? (isPast ? weekday : undefined);
  return {
    found,
    pieces,
    at: {
      pieces: byNumbers(pieces.map(({ number }) => number)),
      text,
      line,
      ...(date === undefined ? {} : { date }),
      ...(by === undefined ? {} : { by }),
    },
    paid: method === undefined ? {} : { method },
    going: books && goingPrice(books, pieces),
    deposit: depositOf(pieces),
    cost: pieces.reduce((sum, { price }) => sum + price, 0),
    says,
    isDone: !says("planned", "doubted", "denied"),
  };
}

/** Of pieces still here. */
export function likelyHere(found: Gathered, pieces: Pieces, { books }: { books: Books }): Likely[] {
  const one = caseOf(found, pieces, books);
  const isHeld = pieces.every(({ hold }) => hold !== null);
  // "paint went up, its 16": of a piece that was only spoken of, a supply is bought for it and nothing else.
  if (found.supply && found.mentions.length === 0 && !found.isOfIt && !isHeld) return spentOn(one);
  return [
    ...(isHeld ? [...outOf(one), ...fetchedOf(one)] : soldOf(one)),
    ...heldOf(one, isHeld),
    ...comingOf(one, isHeld),
    ...pricedOf(one),
    ...retiredOf(one),
    ...workedOf(one),
    ...spentOn(one),
  ];
}

/** "teo never turned up", "buck changed his mind, gave him 20 back and kept 20" */
function outOf({ found, at, deposit, says }: Case): Likely[] {
  // "she cant come till monday" puts it off.
  const isNever = says("denied") && says("comes", "gone") && found.until === undefined;
  // "posted his 45 back": just the deposit, and gone back already.
  const isPutBack = deposit > 0 && found.amounts.includes(deposit) && says("back") && !says("planned");
  if (isPutBack && !says("asks")) return [likely(6, { kind: "fallthrough", refunded: deposit, ...at })];
  if (!says("out") && !isNever) return [];
  if (says("still", "doubted") || (says("planned") && !says("out"))) return [];
  const [amount, other] = found.amounts;
  const isBoth = other !== undefined && amount! + other === deposit;
  const sum = amount !== undefined && amount <= deposit && (other === undefined || isBoth) ? amount : deposit;
  const isBackFirst = firstThat(found, "back") < firstThat(found, "kept");
  const shares =
    deposit === 0
      ? {}
      : says("kept") && !(says("back") && (isBackFirst || !isBoth))
        ? { kept: sum }
        : says("back")
          ? { refunded: sum }
          : {};
  const lost = (of: object): Likely => likely(6, { kind: "fallthrough", ...at, ...of });
  // Which of the two became of the deposit, only the person knows.
  if (deposit > 0 && Object.keys(shares).length === 0)
    return [lost({ refunded: deposit }), lost({ kept: deposit })];
  return [lost(shares)];
}

/** The place of the first word that tells something; -1 where none does. */
const firstThat = ({ words }: Gathered, tells: Tells): number =>
  words.findIndex((word) => tellsOf([word]).has(tells));

/** A held piece that left, or whose rest came in: the sale of its whole price, else with both totals. */
function fetchedOf({ found, at, paid, going, deposit, says, isDone }: Case): Likely[] {
  const { amounts } = found;
  if (!isDone || !says("gone", "paid", "sold", "got", "rest")) return [];
  const isWhole = going !== null && (amounts.includes(going) || amounts.includes(going - deposit));
  const isAll = going !== null && (amounts.length === 0 || isWhole);
  if (isAll) return [likely(isWhole ? 6 : 4, { kind: "sell", price: going, whole: true, ...at, ...paid })];
  return amounts.slice(0, 1).map((price) => likely(4, { kind: "sell", price, ...at, ...paid }));
}

/** The largest of the amounts that others make up, or that stands beside what is owed; else the first. */
function priceAndOwed({ amounts, tokens }: Gathered): { price: Cents; owed?: Cents } | null {
  const [first, ...others] = amounts;
  if (first === undefined) return null;
  const price = Math.max(...amounts);
  const least = Math.min(...amounts);
  const said = tokens.findLastIndex(({ text }) => STILL_OWED.has(text.split(" ")[0]!));
  if (said < 0 || others.length === 0 || least === price) return { price: first };
  const rest = others.includes(price - least) || first === price - least ? [least, price - least] : [least];
  // The one behind "owes" is what is to come.
  const behind = tokens.slice(said).find(({ kind }) => kind === "amount")?.text;
  const owed = rest.find((cents) => behind === String(cents / 100)) ?? amounts.at(-1)!;
  return { price, owed: owed < price ? owed : least };
}

/** "gave me the rest" */
const isToUs = ({ text }: Gathered): boolean => GIVEN_TO_US.test(text);

/** A piece that nobody holds, and a price. */
function soldOf({ found, at, paid, going, cost, says, isDone }: Case): Likely[] {
  const said = priceAndOwed(found);
  // "desk went for asking"
  if (going !== null && !said && says("at asking") && !says("denied", "planned"))
    return [likely(5, { kind: "sell", price: going, ...at, ...paid })];
  const owedLater = says("paid", "owes") && (says("planned", "owes") || found.until !== undefined);
  if (
    going !== null &&
    found.amounts.length === 0 &&
    !says("denied", "doubted", "kept", "scrapped") &&
    (!says("given") || isToUs(found))
  ) {
    // "lupe took the bench home, pays me friday"; "went for asking"
    if (owedLater && says("gone", "sold"))
      return [
        likely(4, { kind: "sell", price: going, owed: going, ...at, ...paid }),
        likely(3, { kind: "hold", ...at }),
      ];
    if (isToUs(found) && says("rest") && isDone)
      return [likely(5, { kind: "sell", price: going, ...at, ...paid })];
    return says("sold") && isDone ? [likely(3, { kind: "sell", price: going, ...at, ...paid })] : [];
  }
  if (!said || !isDone || says("kept")) return [];
  if (owedLater && said.owed === undefined && said.price === going)
    return [likely(5, { kind: "sell", price: going, owed: going, ...at, ...paid })];
  const isNear = going !== null && said.price >= going / 2 && said.price <= going * 1.25;
  const weight = says("sold")
    ? 5
    : says("gone")
      ? 4
      : says("paid", "owes") || isNear || said.price > cost
        ? 3
        : 2;
  const exact = said.price === going && weight < 5 ? 2 : 0;
  const { owed } = said;
  return [
    likely(weight + exact + (owed === undefined ? 0 : 1), {
      kind: "sell",
      price: said.price,
      ...(owed === undefined ? {} : { owed }),
      ...at,
      ...paid,
    }),
  ];
}

/** "nell has dibs", "guy put 20 down": kept for somebody, with what was put down, or more of it. */
function heldOf({ found, at, paid, going, deposit, says }: Case, isHeld: boolean): Likely[] {
  const { amounts, names, until, words } = found;
  const [one = 0, two = 0] = amounts;
  // "gave 30 for it and will bring the other 210"
  const isFirst = amounts.length === 2 && one + two === going && says("planned") && says("paid");
  const isDown =
    says("down") || isFirst || (words.includes("down") && says("paid", "got") && amounts.length > 0);
  // "sold as long as wade shows up with the money"
  if (says("sold") && says("on condition") && !isHeld) return [likely(4, { kind: "hold", ...at })];
  const isMore = isHeld && (says("more") || amounts.some((cents) => amounts.includes(cents + deposit)));
  // "got the 50" of what is held without anything put down yet
  const isPromised = isHeld && deposit === 0 && amounts.length === 1 && says("paid", "got", "comes");
  if (!says("held") && !isDown && !isPromised) return [];
  // Somebody who only asked for it, or none at all.
  const isPut = isDown && amounts.length > 0 && says("paid", "got", "gone");
  if (says("denied", "planned", "doubted") && !isPut) return [];
  if (isHeld && !isPromised && !(isMore && amounts.length > 0)) return [];
  const [put] = amounts.filter((cents) => going === null || cents <= going * 0.6);
  if (amounts.length > 0 && put === undefined) return [];
  const name = names[0];
  return [
    likely(isDown || isPromised || amounts.length === 0 ? 5 : 4, {
      kind: "hold",
      ...(put === undefined ? {} : { deposit: put, ...paid }),
      ...(name === undefined || isHeld ? {} : { buyer: name }),
      ...(until === undefined ? {} : { until }),
      ...at,
    }),
  ];
}

/** "she wants to pick it up sunday": kept until then, of a piece that is listed or held already. */
function comingOf({ found, pieces, at, says }: Case, isHeld: boolean): Likely[] {
  const { until, amounts, isOthers, names } = found;
  const isComing = says("comes") || (says("got") && says("planned"));
  if (until === undefined || amounts.length > 0 || !isComing || !(isOthers || names.length > 0)) return [];
  if (says("out", "asks") || !pieces.every(({ listed, hold }) => listed !== null || hold !== null)) return [];
  return [likely(isHeld ? 5 : 4, { kind: "hold", until, ...at })];
}

/** Most of a price is hardly ever taken off at once. */
const CUT_MAX = 0.6;

/** "put it in internet for 85", "brought the price down to 70" */
function pricedOf({ found, pieces, at, going, cost, says }: Case): Likely[] {
  const [price, ...others] = found.amounts;
  if (price === undefined || others.length > 0 || price === going || says("planned", "doubted")) return [];
  const isListed = pieces.every(({ listed }) => listed !== null);
  if (!isListed) {
    const weight = says("listed") ? 5 : price > cost && !says("denied", "sold", "gone") ? 3 : 0;
    return [likely(weight, { kind: "list", price, ...at })];
  }
  const isCut = going !== null && price < going * (1 - CUT_MAX);
  const weight = says("lowered") ? 5 : says("listed") && !says("denied") ? 4 : 1;
  return [likely(weight, { kind: "reprice", ...(isCut ? { cut: price } : { price }), ...at })];
}

/** Kept, given away or scrapped, with no money. */
function retiredOf({ found, at, says, pieces }: Case): Likely[] {
  if (
    found.amounts.length + found.minutes.length > 0 ||
    says("doubted") ||
    pieces.some(({ hold }) => hold !== null)
  )
    return [];
  const as = (how: string, weight: number): Likely => likely(weight, { kind: "retire", how, ...at });
  const isKept = says("kept") && (says("ours", "denied") || isOfPiece(found));
  if (isKept && !says("given", "scrapped")) return [as("kept", 5)];
  if (says("planned")) return [];
  return [
    ...(says("scrapped") ? [as("scrapped", 5)] : []),
    ...(says("given") && !says("part") && !isToUs(found) ? [as("given", says("scrapped") ? 4 : 5)] : []),
  ];
}

/** "hanging on to the lamp" keeps the lamp, "kept the receipt" none. */
function isOfPiece({ tokens }: Gathered): boolean {
  const at = tokens.findIndex(({ text }) => KEEPS.has(text.split(" ")[0]!));
  const behind = tokens.slice(at + 1).find(({ text }) => !BETWEEN.has(text));
  return at >= 0 && behind?.kind === "piece";
}

/** Begun, done, or so long at it. */
function workedOf({ found, pieces, at, says }: Case): Likely[] {
  const [minutes, ...others] = found.minutes;
  const what = found.labor === undefined ? {} : { what: found.labor };
  const isNot = says("planned", "doubted", "denied");
  if (minutes !== undefined)
    return isNot
      ? []
      : [minutes, ...others]
          .reverse()
          .map((each) => likely(5, { kind: "work", minutes: each, ...what, ...at }));
  if (found.amounts.length > 0) return [];
  const isNew = pieces.every(({ started, finished }) => started === null && finished === null);
  // Part of the work is begun, whatever is still to be done.
  if ((says("part") || (says("side") && says("finished"))) && isNew)
    return [likely(3, { kind: "start", ...at })];
  if (isNot) return [];
  const isOpen = pieces.every(({ finished }) => finished === null);
  return [
    ...(says("started") && isNew ? [likely(4, { kind: "start", ...at })] : []),
    ...(says("finished") && isOpen && !says("part", "side") ? [likely(4, { kind: "finish", ...at })] : []),
  ];
}

/** Hardly anybody is paid more for a hand. */
const HELP_MAX = 50_00;

/** What was bought for it, or done to it for money. */
function spentOn({ found, pieces, at, paid, cost, says }: Case): Likely[] {
  const { amounts, supply, labor } = found;
  if (amounts.length === 0 || says("doubted", "planned")) return [];
  const isPaid = says("spent", "paid");
  const as = (weight: number, amount: Cents, what: string, category: string): Likely =>
    likely(weight, { kind: "spend", what, category, amount, ...at, ...paid });
  if (supply)
    return amounts
      .slice(0, 2)
      .map((amount) =>
        as(
          says("sold") && pieces.some(({ gone }) => gone === null) ? 3 : 5,
          amount,
          supply.what,
          supply.category,
        ),
      );
  const amount = amounts[0]!;
  if (labor !== undefined) return [as(isPaid && !says("sold") ? 5 : 3, amount, labor, "help")];
  // "slipped him 20", "the man who cleans it took 45"
  const isHelp =
    pieces.every(({ hold }) => hold === null) &&
    found.isOthers &&
    isPaid &&
    !says("sold") &&
    amount <= Math.max(cost, HELP_MAX);
  return isHelp || (amount <= cost && isPaid && !says("denied")) ? [as(3, amount, "help", "help")] : [];
}

/** Of pieces that are sold: what is owed comes in or never does, money or the piece comes back, a late cost. */
export function likelySoldSince(found: Gathered, pieces: Pieces): Likely[] {
  const one = caseOf(found, pieces, null);
  const { at, paid, says } = one;
  const { amounts } = found;
  const owed = owedByBuyers(pieces);
  const sum = amounts.find((cents) => cents === owed) ?? amounts.find((cents) => cents < owed);
  const all: Likely[] = [];
  if (owed > 0 && !says("planned", "doubted")) {
    const isPaid = says("paid", "rest") || sum === owed;
    if (says("denied") && says("paid", "comes", "owes") && !says("still"))
      all.push(likely(5, { kind: "refund", unpaid: true, amount: sum ?? owed, ...at }));
    // "squeezed 30 outta nell on the hutch": no other money is still to come for it.
    else if (!says("denied") && (sum !== undefined || (isPaid && amounts.length === 0)))
      all.push(
        likely(sum === owed ? 6 : isPaid && !says("back") ? 5 : 4, {
          kind: "collect",
          amount: sum ?? owed,
          ...at,
          ...paid,
        }),
      );
  }
  if (says("back") && !says("planned", "doubted") && !(says("denied") && amounts.length === 0)) {
    const isReturned = says("returned");
    const amount = amounts.at(-1);
    const back = { kind: "refund", ...(amount === undefined ? {} : { amount }), ...at, ...paid };
    if (isReturned || amount === undefined) all.push(likely(5, { ...back, returned: true }));
    if (amount !== undefined) all.push(likely(isReturned ? 4 : 5, back));
  }
  return [...all, ...(found.supply ? spentOn(one) : [])];
}
