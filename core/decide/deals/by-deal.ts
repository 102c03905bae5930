import { goingPrice } from "../../books/agreed.ts";
import type { Books, Piece } from "../../books/books.ts";
import type { Fact } from "../../books/facts.ts";
import { depositOf, owedByBuyers } from "../../books/shares.ts";
import type { Cents } from "../../money.ts";
import type { Reading } from "../../notes/reading.ts";
import { eitherOf, isFor } from "../../notes/unclear.ts";
import type { Deal } from "../../notes/words/dealt.ts";
import { ALL_AS_ONE } from "../../notes/words/links.ts";
import { saysAny } from "../../notes/words/words.ts";
import type { Looking } from "../decision.ts";
import { ever, here } from "../pieces/fits.ts";
import { foundBy } from "../pieces/match.ts";
import { byNumbers } from "../pieces/mentioned.ts";
import { type Dealt, dealtIn } from "./dealt.ts";
import { isOurPurchase } from "./fetched.ts";
import { isNearAsking, NEAR_LEAST } from "./near-asking.ts";
import { isPromised } from "./promised.ts";
import { isAnother } from "./whom.ts";

/*
 * What a message tells of a deal comes to what its pieces wait for: one that is held waits for its rest, one that is listed
 * for a buyer, one that is sold for what is owed on it.
 */

/** The readings of a message that tells a deal with each of its words; null where it says anything else. */
export function byDeal(text: string, readings: readonly Reading[], desk: Looking): Reading[] | null {
  if (desk.books.pieces.size === 0 || text.includes("#") || !readings.every((reading) => isOpen(reading)))
    return null;
  if (isPromised(text)) return null;
  const dealt = dealtIn(text, desk.books, desk.today);
  if (!dealt || (dealt.deals.size === 0 && !dealt.laments) || dealt.sums.some(({ each }) => each))
    return null;
  // What it was read as for a reason stays so, but where the words of that reason are those of a deal.
  if (
    readings.some(isDoubted) &&
    !dealt.deals.has("held") &&
    !dealt.deals.has("awaited") &&
    !dealt.deals.has("full") &&
    !dealt.complains &&
    !dealt.laments
  )
    return null;
  // "sold 170 cash": of which piece is asked, where nobody is told of.
  if (!dealt.isSomebody && readings.some(({ kind }) => kind === "sell")) return null;
  if (!dealt.isSomebody && dealt.sums.length === 0 && (readings.some(isOurPurchase) || isOnlyRest(dealt)))
    return null;
  const numbers = piecesOf(dealt, desk);
  // "listed both together, 140" behind one of two
  if (numbers.length === 1 && dealt.mentions.length === 0 && saysAny(text, ALL_AS_ONE)) return null;
  const pieces = numbers.map((number) => desk.books.pieces.get(number)!);
  if (pieces.length === 0) return null;
  const told = toldOf(dealt, pieces, desk);
  if (!told) return null;
  const at = { text, line: 0 };
  const could = [told].flat().map((each) => ({ ...each, pieces: byNumbers(numbers), ...at }) as Reading);
  const deposit = depositJustTold(dealt, desk);
  if (deposit) {
    const { method } = dealt;
    const paid =
      method === undefined
        ? []
        : [{ kind: "mend", of: { fact: deposit.id }, to: { method }, ...at, text: `The deposit: ${method}` }];
    return [eitherOf([...(paid as Reading[]), ...could], at)];
  }
  return could.length > 1 ? [eitherOf(could, at)] : could;
}

/** "the hutch balance": a thing to ask for, and nothing that was done. */
const isOnlyRest = ({ deals, method }: Dealt): boolean =>
  deals.size === 1 && deals.has("rest") && method === undefined;

/** "paid cash" right behind a deposit: that was paid so, or all of it was by now; undefined where it says more. */
function depositJustTold({ deals, sums }: Dealt, { past }: Looking): Fact | undefined {
  const before = past?.before();
  const isPaidAlone = deals.size === 1 && deals.has("pays") && sums.length === 0;
  return isPaidAlone && before?.kind === "hold" && before.amount && past!.isToday(before)
    ? before
    : undefined;
}

/** Nothing was read of it, or no piece: a sale without one is asked about where nobody is told of. */
const isOpen = (reading: Reading): boolean =>
  reading.kind === "unclear"
    ? OPEN.some((kind) => isFor(reading, kind)) || isDoubted(reading)
    : reading.missing?.includes("pieces") === true;

const OPEN = [
  "unknown",
  "left",
  "unclaimed",
  "noVerb",
  "anotherPerson",
  "twoNumbers",
  "buyer",
  "deposit",
  "eitherOf",
] as const;

const isDoubted = (reading: Reading): boolean => DOUBTED.some((kind) => isFor(reading, kind));
const DOUBTED = ["intention", "offer", "appointment", "denial", "gone"] as const;

/** Those named or described; else those of whoever is told of, or that were spoken of last. */
function piecesOf(dealt: Dealt, { books, talk }: Looking): number[] {
  const { mentions, described, deals, known, buyerOf, saysBack } = dealt;
  const spoken = talk?.replied ?? talk?.latest ?? [];
  const isBack = saysBack && deals.has("back");
  if (mentions.length > 0) {
    if (
      mentions.some(
        ({ it, other, each, place, allBut }) => it || other || each || place !== undefined || allBut,
      )
    ) {
      const [only, ...more] = mentions;
      const others = only!.other && more.length === 0 ? othersThan(spoken, books) : [];
      return others.length === (only!.count ?? 1) && !only!.name ? others : [];
    }
    return mentions.length > 1 ? [] : (foundBy(mentions, books, isBack ? ever : here) ?? []);
  }
  if (described.length > 0)
    return [...described].filter((number) => books.pieces.get(number)!.gone === (isBack ? "sold" : null));
  // The one of another piece may have come for any.
  if (buyerOf) return isBack ? [...buyerOf] : [];
  if (known !== undefined) {
    const theirs = [...books.pieces.values()].filter(
      ({ hold, gone }) => gone === null && hold?.buyer === known,
    );
    const sold =
      books.facts.findLast((fact) => fact.kind === "sell" && fact.data.buyer === known)?.pieces ?? [];
    if (isBack) return [...sold];
    if (theirs.length > 0) return theirs.map(({ number }) => number);
  }
  // Of several spoken of together only they all are told by such a word.
  if (spoken.length > 0 && !talk?.awaited?.length) return spoken.length === 1 ? [...spoken] : [];
  return askedFor(dealt, books);
}

/** "she paid the full 75" with nothing spoken of before: the only piece that is listed at that. */
function askedFor({ sums }: Dealt, books: Books): number[] {
  const [sum, ...more] = sums;
  const asked = [...books.pieces.values()].filter(
    ({ gone, listPrice }) => gone === null && listPrice === sum?.cents,
  );
  return sum && more.length === 0 && asked.length === 1 ? [asked[0]!.number] : [];
}

/** The only other piece, or those of the same name, that are here beside what was spoken of. */
function othersThan(spoken: readonly number[], books: Books): number[] {
  const all = [...books.pieces.values()].filter(
    ({ gone, number }) => gone === null && !spoken.includes(number),
  );
  const names = new Set(spoken.map((number) => books.pieces.get(number)?.name));
  const alike = all.filter(({ name }) => names.has(name));
  return (alike.length > 0 ? alike : all).map(({ number }) => number);
}

type Pieces = readonly Readonly<Piece>[];

const DEPOSIT_MOST = 0.6;

function toldOf(dealt: Dealt, pieces: Pieces, desk: Looking): object | object[] | null {
  const { books } = desk;
  const { deals, method, date, until, known, who } = dealt;
  const says = (...any: Deal[]): boolean => any.some((each) => deals.has(each));
  const paidBy = method === undefined ? {} : { method };
  const at = { ...paidBy, ...(date === undefined ? {} : { date }) };
  const isHere = pieces.every(({ gone }) => gone === null);
  // "on her way with the rest": not here yet.
  if (says("awaited") && pieces.some(({ gone, hold }) => gone !== null || hold !== null)) return null;
  const going = goingPrice(books, pieces);
  const [sum, ...more] = sumsOf(dealt, pieces, going, desk);
  if (pieces.every(({ gone }) => gone === "sold")) return ofSold(dealt, pieces, sum, more.length, at);
  if (!isHere || says("back") || dealt.complains) return null;
  const isHeld = pieces.every(({ hold }) => hold !== null);
  const isDealt = says("goes", "takes", "pays", "puts", "held", "comes", "gives", "full", "half");
  if ((says("up", "cut") || dealt.laments) && !isDealt)
    return isHeld || more.length > 0 || dealt.isSomebody
      ? null
      : dated(priced(dealt, pieces, sum, going), date);
  if (says("up") || dealt.laments) return null;
  const buyer = known ?? who ?? (says("more") ? holderSpokenOf(desk) : undefined);
  const by = buyer === undefined ? {} : { buyer };
  if (isHeld) {
    // Another than who left the deposit: what becomes of that is asked.
    if (known === undefined && pieces.some(({ hold }) => isAnother(who, hold!.buyer))) return null;
    const rest = ofHeld(dealt, pieces, sum, more, going);
    return rest && { ...rest, ...at };
  }
  if (pieces.some(({ hold }) => hold !== null)) return null;
  const isGone = says("goes", "takes", "full", "gives");
  const isTheirs = !dealt.isOurs && (dealt.isTheirs || (!dealt.isSomebody && isOfDeal(desk)));
  const isPut = says("puts", "half") || (says("held", "more") && says("pays"));
  if (sum !== undefined && isPut && !isGone) {
    if (!isTheirs || going === null) return null;
    const agreed = more.length === 1 ? Math.max(sum, more[0]!) : undefined;
    const deposit = agreed === undefined ? sum : Math.min(sum, more[0]!);
    const whole = agreed ?? going;
    if (more.length > 1 || (whole !== null && deposit > whole * DEPOSIT_MOST)) return null;
    const put = { deposit, ...(agreed === undefined || agreed === going ? {} : { agreed }) };
    return { kind: "hold", ...put, ...by, ...at, ...(until === undefined ? {} : { until }) };
  }
  // "new guy, 150, cash, here in an hour": it waits for them, or they have been by now.
  const isAwaited =
    says("awaited") && !isGone && isTheirs && !says("puts", "rest", "more", "half", "pays", "comes");
  if (isAwaited && sum !== undefined && more.length === 0 && going !== null && isNearAsking(sum, going))
    return [
      { kind: "hold", ...(sum === going ? {} : { agreed: sum }), ...by, ...(until ? { until } : {}) },
      { kind: "sell", price: sum, ...by, ...at },
    ];
  if (says("puts", "rest", "more", "half", "awaited") || (says("held") && !says("goes")) || more.length > 0)
    return null;
  // Money that came, and a piece that went, are told without a buyer; one that was taken may be another that we got.
  if (!(says("goes", "gives") || (says("takes", "pays", "full") && isTheirs)) || (says("takes") && !isTheirs))
    return null;
  if (sum === undefined)
    return going !== null && says("full") ? { kind: "sell", price: going, ...by, ...at } : null;
  // What nobody had been asked for yet is asked about.
  const isLikely = going !== null && isNearAsking(sum, going);
  const sold = { kind: "sell", price: sum, ...by, ...at };
  // "gave me 50" of 90: that may be put down on it.
  return isLikely && !isGone && sum <= going * DEPOSIT_MOST
    ? [{ kind: "hold", deposit: sum, ...by, ...at }, sold]
    : isLikely
      ? sold
      : null;
}

const dated = (told: object | null, date: Dealt["date"]): object | null =>
  told && date !== undefined ? { ...told, date } : told;

/** The amounts told, for all of the pieces: a half of the price, what the ones before went for. */
function sumsOf({ sums, deals }: Dealt, pieces: Pieces, going: Cents | null, { past }: Looking): Cents[] {
  if (sums.length > 0) return sums.map(({ cents, each }) => (each ? cents * pieces.length : cents));
  if (deals.has("half") && going !== null) return [Math.round(going / 2)];
  const before = deals.has("same") ? past?.newest(({ kind }) => kind === "sell") : undefined;
  return before?.amount !== undefined && before.pieces.length === pieces.length ? [before.amount] : [];
}

/** What was told last is of a buyer, and this goes on from it. */
const isOfDeal = ({ past }: Looking): boolean => {
  const before = past?.before();
  return before?.kind === "sell" || before?.kind === "hold";
};

/** Who holds what was spoken of last. */
const holderSpokenOf = ({ talk, books }: Looking): string | undefined =>
  (talk?.latest ?? []).map((number) => books.pieces.get(number)?.hold?.buyer).find((buyer) => buyer) ??
  undefined;

/** A price at which pieces are offered from now on. */
function priced(
  { deals }: Dealt,
  pieces: Pieces,
  sum: Cents | undefined,
  going: Cents | null,
): object | null {
  if (sum === undefined) return null;
  // "listed again": at that price, or was it before?
  if (going === null)
    return deals.has("up") && pieces.every(({ listed, finished }) => listed === null && finished !== null)
      ? { kind: "list", price: sum }
      : null;
  return sum !== going && sum >= going * NEAR_LEAST && sum <= going * 1.5
    ? { kind: "reprice", price: sum }
    : null;
}

/** Of a held piece its rest came in, or more of it. */
function ofHeld(
  { deals }: Dealt,
  pieces: Pieces,
  sum: Cents | undefined,
  more: readonly Cents[],
  going: Cents | null,
): Told | null {
  const deposit = depositOf(pieces);
  const isCome = deals.has("goes") || deals.has("takes") || deals.has("comes");
  const isPaid = deals.has("pays") || deals.has("rest");
  const sold = (price: Cents): Told => ({ kind: "sell", price, whole: true });
  if (deals.has("held") && !isCome) return null;
  if (more.length > 0) {
    // "80 more, so 110 all together"
    const all = [sum!, ...more];
    const whole = Math.max(...all);
    const parts = all
      .filter((each) => each !== whole && each !== deposit)
      .reduce((total, each) => total + each, 0);
    return (isCome || isPaid) && parts + deposit === whole ? sold(whole) : null;
  }
  const isAll = deals.has("full") || deals.has("rest") || deals.has("pays");
  if (sum === undefined) return going !== null && isAll && !deals.has("more") ? sold(going) : null;
  if (going !== null && (isCome || isPaid) && (sum + deposit === going || sum === going)) return sold(going);
  const isMore = deals.has("more") || deals.has("puts");
  if (isMore && !isCome)
    return going === null || sum + deposit < going ? { kind: "hold", deposit: sum } : null;
  // "came and paid 220 more, it's his": what was put down, and that.
  const total = sum + deposit;
  const isBeside = deposit > 0 && isCome && (deals.has("more") || deals.has("rest"));
  return isBeside && going !== null && total <= going && total >= going * NEAR_LEAST ? sold(total) : null;
}

type Told = { kind: "sell"; price: Cents; whole: true } | { kind: "hold"; deposit: Cents };

/** Of a sold piece money goes back, or what is owed comes in. */
function ofSold(
  { deals, saysBack }: Dealt,
  pieces: Pieces,
  sum: Cents | undefined,
  more: number,
  at: object,
): object | null {
  if (sum === undefined || more > 0) return null;
  const brought = pieces.reduce((all, piece) => all + piece.sales - piece.refunds, 0);
  if (deals.has("back") && saysBack && !deals.has("goes"))
    return sum < brought ? { kind: "refund", amount: sum, ...at } : null;
  const owed = owedByBuyers(pieces);
  const isPaid = deals.has("pays") || deals.has("comes") || deals.has("rest") || deals.has("puts");
  return owed > 0 && sum <= owed && isPaid ? { kind: "collect", amount: sum, ...at } : null;
}
