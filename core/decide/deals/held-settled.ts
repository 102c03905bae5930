import { goingPrice } from "../../books/agreed.ts";
import type { Books, Piece } from "../../books/books.ts";
import { depositOf } from "../../books/shares.ts";
import type { Cents } from "../../money.ts";
import type { Mention, Reading, ReadingOf } from "../../notes/reading.ts";
import type { Told } from "../../notes/settling.ts";
import { anyOf, eitherOf } from "../../notes/unclear.ts";
import {
  ASKS_FOR,
  CAME_AND_PAID,
  HAS_COME,
  PUTS_TOWARD,
  type Says,
  STILL_TO_PAY,
} from "../../notes/words/settling.ts";
import { saysAny } from "../../notes/words/words.ts";
import type { Talk } from "../decision.ts";
import { held } from "../pieces/fits.ts";
import { foundBy } from "../pieces/match.ts";
import { NEAR_LEAST } from "./near-asking.ts";
import { offeredOther } from "./offered.ts";
import { sumsSaid } from "./sums-said.ts";

/* What becomes of a piece that is held for somebody who is spoken of: they are out, or they pay, and take it. */

export type Pieces = readonly Readonly<Piece>[];

/** What every reading of such a message holds. */
export type Place = Pick<Reading, "text" | "line" | "date"> & { pieces: Mention[]; method?: string };

/** "sol is out, gave him his 25 back", "kept her deposit", "kept 20, gave her 30 back" */
export function backsOut({ says, amounts }: Told, pieces: Pieces, at: Place): Reading[] {
  const deposit = depositOf(pieces);
  // "gave 10 of the 40 back, kept 30": the whole of it is only named.
  const isWithin = amounts.length > 1 && amounts.every((each) => each <= deposit);
  const whole = isWithin ? amounts.indexOf(deposit) : -1;
  // "kept the 40, my son turned 9": nothing but what was done names the first, and the other is none of it.
  const isOfDeed = whole === 0 && amounts.length === 2 && !NAMES_SUM.some((each) => says.has(each));
  if (isOfDeed) return [];
  const [amount, other, ...others] = amounts.filter((_, at) => at !== whole);
  if (others.length > 0) return [];
  // "wants her 50 back": it has not gone back yet.
  const isBack = says.has("back") && !says.has("wants");
  const isKept = says.has("kept");
  const lost: Reading = { kind: "fallthrough", ...at };
  if (!isBack && !isKept) return amount === undefined || says.has("back") ? [lost] : [];
  if (other !== undefined || (isBack && isKept)) {
    // The word that comes first says what the first amount is; the rest of it is the other.
    if (amount === undefined || amount + (other ?? deposit - amount) !== deposit) return [];
    if (other === undefined && !says.has("all")) return [];
    // "gave him 30 of the 40, kept the 10", where "he paid 40, kept 10, …" tells nothing of what went back.
    const first = [...says].find((each) => SPLITS.has(each) && (each !== "paid" || whole !== 0));
    const isFirstKept = isKept && first === "kept";
    return [{ ...lost, refunded: isFirstKept ? deposit - amount : amount }];
  }
  const sum = amount ?? (says.has("half") ? Math.floor(deposit / 2) : deposit);
  return [{ ...lost, ...(isBack ? { refunded: sum } : { kept: sum }) }];
}

const SPLITS: ReadonlySet<Says> = new Set(["back", "kept", "paid"]);

const NAMES_SUM: readonly Says[] = ["paid", "down", "from"];

const OF_MONEY: readonly Says[] = ["fetched", "paid", "from", "down"];

/** "priya picked it up, paid the other 300": sold; "another 35 from the neighbor": more of a deposit. */
export function paysForHeld(
  { who, says, amounts }: Told,
  pieces: Pieces,
  paid: Place,
  { books, talk }: { books: Books; talk?: Pick<Talk, "offers"> },
): Reading[] {
  const [amount, ...others] = amounts;
  const at = { ...(who === undefined ? {} : { buyer: who }), ...paid };
  const deposit = depositOf(pieces);
  const going = goingPrice(books, pieces);
  if (says.has("short") || says.has("had")) return paysLess({ says, amounts }, at, going, deposit);
  if (says.has("agreed") || (isOnlyLess(says, amounts) && !saysAny(paid.text, ASKS_FOR))) {
    const agreed = agreedPrice({ says, amounts }, going, deposit);
    return agreed === null ? [] : [{ kind: "hold", agreed, ...at }];
  }
  // "only had 100, so she owes me 25", "took 100 from amy, she'll bring the 25 next week"
  const [left] = others;
  const isOwing = (says.has("owed") || says.has("later")) && others.length === 1 && amount !== undefined;
  // "another 30 toward the desk, still owes 70"
  const isPut = !says.has("fetched") && (says.has("more") || says.has("down") || PUTS_TOWARD.test(paid.text));
  if (isOwing && isPut && amount + left! + deposit === going)
    return [{ kind: "hold", deposit: amount, ...at }];
  if (isOwing && amount + left! + deposit === going)
    return [{ kind: "sell", price: going, owed: left!, ...at }];
  const isHere = HAS_COME.test(paid.text);
  const hasCome = CAME_AND_PAID.test(paid.text);
  // "she came tonight": and took it, as likely as not.
  const isVisit = isHere && !hasCome && amount === undefined && [...says].every((each) => VISITS.has(each));
  if (isVisit && deposit > 0 && going !== null)
    return [eitherOf([{ kind: "sell", price: going, whole: true, ...at }], paid)];
  // "she's been, 120 more"
  if (!OF_MONEY.some((each) => says.has(each)) && !(isHere && amount !== undefined)) return [];
  const isFetched = says.has("fetched");
  // "125 left from amy": it is still to come.
  if (!isFetched && STILL_TO_PAY.test(paid.text)) return [];
  // "took it, still owes 20"
  const isLeft = isFetched && says.has("owed") && !says.has("paid") && others.length === 0;
  if (isLeft && amount !== undefined && going !== null && amount + deposit < going)
    return [{ kind: "sell", price: going, owed: amount, ...at }];
  // "put another 30 on it, thats 70 now"
  if (!isFetched && (says.has("more") || says.has("down")) && amount !== undefined && others.length === 1)
    if (amount + deposit === others[0]) return [{ kind: "hold", deposit: amount, ...at }];
  // "took the desk home, pays me friday": all of it is owed.
  if (says.has("later"))
    return isFetched && going !== null && amount === undefined
      ? [{ kind: "sell", price: going, owed: going - deposit, ...at }]
      : [];
  if (others.length > 0 || says.has("total") || says.has("less")) {
    const isPaidLess = says.has("less") && says.has("paid") && others.length > 0;
    const price =
      (isFetched || isPaidLess) && !says.has("waits") ? wholePrice({ says, amounts }, deposit, going) : null;
    return price === null ? [] : [{ kind: "sell", price, whole: true, ...at }];
  }
  const isRest = says.has("all") || (amount === undefined && hasCome && !says.has("half"));
  const more: Reading[] = amount === undefined ? [] : [{ kind: "hold", deposit: amount, ...at }];
  // "paid 70 but hasnt picked it up yet"
  if (says.has("waits")) return more;
  const isWhole = going !== null && (amount === undefined || amount + deposit === going);
  const isMore = says.has("more") || says.has("down");
  // Just what is left to pay.
  const isAllOfIt = isFetched || isRest || (amount !== undefined && (isHere || !isMore));
  if (isWhole && isAllOfIt)
    // "picked it up" of what was offered for less: which of the two was paid is asked.
    return amount === undefined && offeredOther(talk?.offers, pieces, going) !== null
      ? [{ kind: "sell", missing: ["price"], ...at }]
      : [{ kind: "sell", price: going, ...at }];
  if (amount === undefined) return [];
  // "he sent 50 after all" of a piece at 250, for which nothing was put down yet
  if (!isFetched && !hasCome && deposit === 0 && going !== null && amount * 2 < going) return more;
  const sale: Reading = { kind: "sell", price: amount, fetched: true, ...at };
  // "picked it up, 8 more" of what nobody has put a price on
  const isBeside = going === null && isFetched && isMore;
  if (isBeside) return [{ ...sale, price: amount + deposit, whole: true }];
  if (isFetched || isRest) return [sale];
  if (!isMore) return [...more, sale];
  const total = amount + deposit;
  // "she came! 110 more" of 120 that were left to pay, "another 125" of just that, or more than is to pay at all
  const isNearAll = going !== null && (total >= going || (isHere && total >= going * NEAR_LEAST));
  return isNearAll ? [{ ...sale, price: total, whole: true }, ...more] : more;
}

/** What is told of who was here, "came" being said of money as well. */
const VISITS: ReadonlySet<Says> = new Set(["payer", "aside", "paid"]);

/** "gave amy 10 off": nothing else, so that is how it was agreed. */
const isOnlyLess = (says: Told["says"], amounts: readonly Cents[]): boolean =>
  says.has("less") && amounts.length === 1 && !OF_MONEY.some((each) => says.has(each) && each !== "paid");

/** "was 10 short, said fine", "only had 100, owes me 20": sold for less, or the rest is owed. */
function paysLess(
  { says, amounts }: Pick<Told, "says" | "amounts">,
  at: object & Place,
  going: Cents | null,
  deposit: Cents,
): Reading[] {
  const [amount, ...others] = amounts;
  if (amount === undefined || going === null) return [];
  const missing = says.has("short") ? amount : going - deposit - amount;
  // "only had 120" of which as much was left to pay: that, or no more in all
  if (missing === 0)
    return [amount, going].map((price): Reading => ({ kind: "sell", price, whole: true, ...at }));
  if (missing < 0 || missing >= going - deposit || others.some((each) => each !== missing)) return [];
  const owed: Reading = { kind: "sell", price: going, owed: missing, ...at };
  const isOwed = others.length > 0 || says.has("owed") || says.has("later");
  if (isOwed) return [owed];
  const less: Reading = { kind: "sell", price: going - missing, whole: true, ...at };
  if (says.has("forgiven") || says.has("never"))
    // With what was put down, or in all?
    return says.has("short") || deposit === 0 ? [less] : [less, { ...less, price: amount }];
  const more: Reading = { kind: "hold", deposit: going - deposit - missing, ...at };
  return [less, owed, more];
}

/** "agreed on 150", "asked for 10 off, said ok": for what it is to go; null where that is no likely price. */
function agreedPrice(
  { says, amounts }: Pick<Told, "says" | "amounts">,
  going: Cents | null,
  deposit: Cents,
): Cents | null {
  const [amount, ...others] = amounts;
  if (amount === undefined || others.length > 0) return null;
  const agreed = says.has("less") ? (going ?? 0) - amount : amount;
  return agreed > deposit && agreed > (going ?? 0) / 2 ? agreed : null;
}

/** What several amounts make of the price: "20 down + 70 now = 90", "knocked 10 off so she paid 60"; null where unsure. */
function wholePrice(
  { says, amounts }: Pick<Told, "says" | "amounts">,
  deposit: Cents,
  going: Cents | null,
): Cents | null {
  const down = amounts.length > 1 && deposit > 0 ? amounts.indexOf(deposit) : -1;
  const [one, two, ...others] = amounts.filter((_, at) => at !== down);
  if (one === undefined || others.length > 0) return null;
  if (two === undefined) {
    if (says.has("less") && down < 0) return going === null || one >= going ? null : going - one;
    if (says.has("total") || one === going) return one >= deposit ? one : null;
    return down < 0 ? null : one + deposit;
  }
  const [small, large] = [Math.min(one, two), Math.max(one, two)];
  if (!says.has("less")) return small + deposit === large ? large : null;
  if (small + large === going) return large;
  return small + large + deposit === going ? large + deposit : null;
}

/**
 * "picked up the desk, rosa only had 60": a sale of what is held, without a price, beside an amount that nobody could
 * place is no sale at the price agreed on. Null where there is no such thing.
 */
export function paidOtherwise(text: string, readings: readonly Reading[], books: Books): Reading[] | null {
  const sale = readings.flatMap(saleUnpriced)[0];
  const isLeft = readings.some((reading) => reading.kind === "unclear" && /\d/.test(reading.text));
  if (!sale || !isLeft) return null;
  if (!foundBy(sale.pieces ?? [], books, held)) return null;
  const prices = sumsSaid(text);
  const { missing: _, ...told } = { ...sale, text };
  const could = prices.reverse().map((price): Reading => ({ ...told, price }));
  return could.length === 0 ? null : [eitherOf(could, { text, line: 0 }, "twoNumbers")];
}

function saleUnpriced(reading: Reading): ReadingOf<"sell">[] {
  const told = /\d/.test(reading.text) ? [reading] : anyOf(reading);
  return told.flatMap((each) => (each.kind === "sell" && each.price === undefined ? [each] : []));
}
