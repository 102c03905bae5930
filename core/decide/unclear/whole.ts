import type { Books, Piece } from "../../books/books.ts";
import { labelOf } from "../../books/label.ts";
import { depositOf } from "../../books/shares.ts";
import { show } from "../../money.ts";
import type { Mention, Reading, ReadingOf } from "../../notes/reading.ts";
import { couldOf } from "../../notes/unclear.ts";
import { TELLS_ONE_MORE } from "../../notes/words/pieces.ts";
import type { Verb } from "../../verbs/verb.ts";
import { type Fetched, fetchedOf } from "../deals/fetched.ts";
import { isDepositDoubted } from "../deals/selling.ts";
import { isAnother } from "../deals/whom.ts";
import type { Ask, Choice, Decision, Desk, Looking } from "../decision.ts";
import { cannotBe, recordedPieces } from "../decision.ts";
import { inAll, type WithPieces } from "../pieces/choices.ts";
import { held, here } from "../pieces/fits.ts";
import { foundBy } from "../pieces/match.ts";
import { mentionLabel } from "../pieces/mention-words.ts";
import { mentionsOf } from "../pieces/mentioned.ts";
import { talkedOf } from "../talk/talk.ts";

/** What deciding lends to this file: it decides the readings that an unclear one may mean. */
export interface Deciding {
  decide(reading: Reading, desk: Looking, confirmed?: string[]): Decision;
  verbOf(kind: Reading["kind"]): Verb | undefined;
}

/** A whole reading that the books can take, at once or after a question of its own. */
export interface Standing {
  reading: Reading;
  label: string;
  /** Odd things that the books answer by themselves. */
  confirmed: string[];
  /** What is told beside it. */
  more?: readonly Reading[];
  /** Something is still to be asked of it. */
  asks?: boolean;
}

/** Buttons beside "None of these". */
export const OFFERED_MAX = 3;

/** The words that pick a reading of that kind: "sold" after "desk 95". */
const PICKED_BY: Partial<Record<Reading["kind"], readonly string[]>> = {
  buy: ["bought", "bought it", "i bought it", "buy", "paid that", "what i paid", "cost me that"],
  list: [
    "listed",
    "listed it",
    "i listed it",
    "list",
    "asking",
    "what im asking",
    "asking that",
    "asking price",
  ],
  sell: [
    "sold",
    "sold it",
    "i sold it",
    "it sold",
    "its sold",
    "it's sold",
    "sell",
    "sold for that",
    "got that",
  ],
  hold: ["hold", "on hold", "held", "deposit"],
  reprice: ["now", "new price", "the new price"],
};

export const NONE_OF_THESE: Choice = {
  label: "None of these",
  words: ["none", "none of these", "none of them", "neither", "no"],
  effect: { kind: "drop" },
};

/** Those of the readings that can be, likeliest by the books first; what cannot be is left out. */
export function standingOf(
  could: readonly Reading[],
  desk: Looking,
  deciding: Deciding,
  isFetched = false,
): Standing[] {
  const sale = isFetched
    ? could.map((option) => fetchedOf(option, desk)).find((each) => each !== null)
    : null;
  const options = sale
    ? [sale]
    : could.map((option) => restOf(option, desk) ?? { reading: option, confirmed: [] });
  const rated = options
    .flatMap((each) => bothTotals(each, desk))
    .flatMap(({ reading: option, confirmed }, index) => {
      const reading = talkedOf(option, desk, deciding);
      const decision = deciding.decide(reading, desk, confirmed);
      if (cannotBe(decision)) return [];
      const label = labelOfWhole(reading, decision, desk, deciding);
      const asks = decision.kind === "ask" ? 2 : 0;
      return [
        {
          reading,
          label,
          confirmed,
          asks: asks > 0,
          rating: asks + unlikeliness(reading, decision, desk) + index * 0.4,
        },
      ];
    });
  const labels = new Set<string>();
  return rated
    .sort((a, b) => a.rating - b.rating)
    .filter(({ label }) => !labels.has(label) && labels.add(label))
    .map(({ rating: _, ...standing }) => standing);
}

/** "took 100 from dana" for a piece that she left a deposit for: the rest beside it, or the whole price. */
function bothTotals(option: Fetched | (Pick<Fetched, "confirmed"> & { reading: Reading }), desk: Looking) {
  const { reading, confirmed } = option;
  if (reading.kind !== "sell" || reading.price === undefined || reading.whole || confirmed.length > 0)
    return [option];
  const pieces = foundBy(reading.pieces ?? [], desk.books, held)?.map(
    (number) => desk.books.pieces.get(number)!,
  );
  if (!pieces) return [option];
  const { price } = reading;
  const deposit = depositOf(pieces);
  const isTheirs = pieces.every(({ hold }) => !isAnother(reading.buyer, hold?.buyer));
  if (!isTheirs || !isDepositDoubted(price, pieces, { ...desk, confirmed })) return [option];
  const totals = price >= deposit ? [price + deposit, price] : [price + deposit];
  return totals.map((total) => ({ confirmed, reading: { ...reading, price: total, whole: true as const } }));
}

/** "credenza's gone, 150 cash" where just that is left to pay beside its deposit: the sale at its whole price. */
function restOf(option: Reading, desk: Looking): Fetched | null {
  const fetched = option.kind === "sell" ? fetchedOf(option, desk) : null;
  return fetched?.confirmed.includes("whole price") ? fetched : null;
}

/** A question whose buttons are whole readings; pressing one records it. */
export function askWhich(
  prompt: string,
  standing: readonly Standing[],
  aside: { left?: readonly string[] } = {},
): Ask {
  const choices = standing.slice(0, OFFERED_MAX).map(({ reading, label, more = [] }): Choice => {
    const left = aside.left ?? [];
    return {
      label,
      words: [...(standing.length === 1 ? ["yes"] : []), ...pickedBy(reading)],
      effect: {
        kind: "instead",
        readings: [reading, ...more],
        ...(left.length > 0 ? { passed: [...left] } : {}),
      },
    };
  });
  return { prompt, wants: "choice", choices: [...choices, NONE_OF_THESE] };
}

/** The words that pick a reading, those of a cut apart from those of a new price. */
function pickedBy(reading: Reading): readonly string[] {
  if (reading.kind !== "reprice") return PICKED_BY[reading.kind] ?? [];
  const { cut, price } = reading;
  const said = (cents: number) => [show(cents), show(cents).replace(/\.00$/, "")];
  if (cut !== undefined)
    return ["off", "less", "by", ...said(cut).flatMap((sum) => [`${sum} off`, `by ${sum}`, `${sum} less`])];
  return [...(PICKED_BY.reprice ?? []), "to", ...said(price ?? 0).map((sum) => `to ${sum}`)];
}

/** Buttons for a whole list, beside "One by one" and "None of these". */
const LISTS_MAX = 2;

/** Whether all of a list was bought, listed or sold; the last resort asks of each by itself. */
export function askOfList(prompt: string, standing: readonly Standing[], list: ReadingOf<"unclear">): Ask {
  const { rest = [], ...first } = list;
  const all = standing.slice(0, LISTS_MAX).map(({ reading, label }): Choice => {
    const others = rest.map((each) => alike(each, reading));
    const words = PICKED_BY[reading.kind] ?? [];
    return {
      label: `${label}, and ${rest.length} more`,
      words: [...words, ...words.map((word) => `${word} all`), "all"],
      effect: { kind: "instead", readings: [reading, ...others] },
    };
  });
  const apart: Choice = {
    label: "One by one",
    words: ["one by one", "each", "separately"],
    effect: { kind: "instead", readings: [first, ...rest].map((each) => ({ ...each, rest: [] }) as Reading) },
  };
  return { prompt, wants: "choice", choices: [...all, apart, NONE_OF_THESE] };
}

/** One of a list, read as the first was, on its day and from its place. */
function alike(each: Reading, first: Reading): Reading {
  const same = couldOf(each).find(({ kind }) => kind === first.kind);
  if (!same) return each;
  const shared = Object.entries(first).filter(([field]) => SHARED.has(field));
  return { ...Object.fromEntries(shared), ...same } as Reading;
}

/** What is said of a list once, and holds for all of it. */
const SHARED: ReadonlySet<string> = new Set(["date", "source", "by", "method", "buyer", "place"]);

/** "Sold #2 desk 140.00": a reading in words of the books. */
export function labelOfWhole(
  reading: Reading,
  decision: Decision,
  { books }: Pick<Desk, "books">,
  { verbOf }: Deciding,
): string {
  const offered = verbOf(reading.kind)?.offered as ((of: Reading, names: string) => string) | undefined;
  const pieces = recordedPieces(decision);
  const said = reading.kind === "buy" || pieces.length === 0 ? reading : inAll(reading as WithPieces, pieces);
  return offered?.(said, namesFor(reading, decision, books)) ?? reading.text;
}

function namesFor(reading: Reading, decision: Decision, books: Books): string {
  const pieces = reading.kind === "buy" ? [] : recordedPieces(decision);
  if (pieces.length > 0) return labelOf(books, pieces);
  const found = reading.kind === "buy" ? null : foundBy(mentionsOf(reading), books, here);
  if (found) return labelOf(books, found);
  const names = mentionsOf(reading).map(mentionLabel).join(" and ");
  return names === "" && reading.missing?.includes("pieces") ? "it" : names;
}

/** How unlikely the books make a reading: 0 where it is just what comes next for its pieces. */
function unlikeliness(reading: Reading, decision: Decision, { books }: Pick<Desk, "books">): number {
  const isOneMore = TELLS_ONE_MORE.test(reading.text);
  if (reading.kind === "buy") return isKnown(reading.pieces ?? [], books) && !isOneMore ? 2 : 0;
  const pieces = recordedPieces(decision);
  const known = pieces.flatMap((number) => books.pieces.get(number) ?? []);
  const isListed = known.length > 0 && known.every((piece) => piece.listed !== null);
  // Hardly anybody puts down most of the price.
  const asked = known.reduce((sum, { listPrice }) => sum + (listPrice ?? 0), 0);
  if (reading.kind === "hold" && asked > 0 && (reading.deposit ?? 0) > asked / 2) return 1;
  const order = (reading.kind === "sell" && !isListed) || (reading.kind === "list" && isListed) ? 1 : 0;
  return order + distance(reading, known);
}

function isKnown(mentions: readonly Mention[], books: Books): boolean {
  return mentions.some(({ name }) =>
    [...books.pieces.values()].some((piece) => piece.gone === null && piece.name === name),
  );
}

/** How far the new or paid price is from what the pieces are listed at, else from what they cost; 2 at most. */
function distance(reading: Reading, pieces: readonly Readonly<Piece>[]): number {
  const sum = (of: (piece: Readonly<Piece>) => number | null) =>
    pieces.reduce((total, piece) => total + (of(piece) ?? 0), 0);
  const listed = sum((piece) => piece.listPrice);
  const cut = "cut" in reading && reading.cut !== undefined ? listed - reading.cut : undefined;
  const price =
    cut ?? ("price" in reading ? reading.price : "agreed" in reading ? reading.agreed : undefined);
  const cost = sum((piece) => piece.price);
  const beside = listed > 0 ? listed : cost;
  if (price === undefined || beside <= 0 || pieces.length === 0) return 0;
  // Any price above cost is as likely as another where none is listed.
  if (listed === 0 && price >= cost) return 0;
  return price <= 0 ? 2 : Math.min(2, Math.abs(Math.log(price / beside)));
}
