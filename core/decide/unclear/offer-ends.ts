import type { Cents } from "../../money.ts";
import { lexed } from "../../notes/lexed.ts";
import type { Mention, Reading, ReadingOf } from "../../notes/reading.ts";
import { couldOf, isRefused } from "../../notes/unclear.ts";
import {
  ACCEPTED,
  AROUND_NO,
  COMES_FOR_IT,
  DECLINED,
  MET_AT,
  NO,
  OUR_PRICE,
  PUT_DOWN,
  THEY_TOOK,
} from "../../notes/words/offers.ts";
import { saysAny, wordsIn } from "../../notes/words/words.ts";
import { sumsSaid } from "../deals/sums-said.ts";
import { mentionsOf } from "../pieces/mentioned.ts";
import { isDeclined, sumsBesideHours, tellsOffer } from "./offers.ts";

/** What was said of an offer, and what was asked in return: more prices settle nothing. */
const PRICES_MAX = 2;

/**
 * The readings of a message in which an offer has taken in what became of it: "asked if id do 60, um no", "she'll take it
 * for 240, picking up saturday", "wanted it for 40, met at 50, he paid cash", which is a sale at 50.
 */
export function withOfferEnds(readings: readonly Reading[], message: string): readonly Reading[] {
  const kept: Reading[] = [];
  for (const reading of readings) {
    const before = kept.at(-1);
    const ended = before?.kind === "unclear" && tellsOffer(before) ? endedBy(before, reading) : null;
    if (ended) kept[kept.length - 1] = ended;
    else kept.push(reading);
  }
  const [only, ...others] = kept;
  const isBeside = only && others.length === 0 && tellsOffer(only) && saysAny(message, DECLINED);
  return isBeside ? [{ ...only, text: message }] : kept;
}

/** An offer with what the clause behind it says became of it; null where that is something else. */
function endedBy(offer: ReadingOf<"unclear">, behind: Reading): Reading | null {
  const text = `${offer.text}, ${behind.text}`;
  if (onlyDeclines(behind) || onlyComes(behind)) return { ...offer, text };
  const sale = saleOfIt(behind);
  const price = sale ? agreedIn(offer.text) : null;
  if (!sale || price === null) return null;
  const { missing: _, pieces: __, ...told } = sale;
  const pieces = piecesIn(offer.text);
  const whose = pieces.length > 0 ? { pieces } : { missing: ["pieces"] as const, follows: true, one: true };
  const sold = { ...told, ...whose, price, text } as Reading;
  // "i countered with 50, he took it": agreed, and perhaps not paid yet.
  if (saysAny(behind.text, THEY_TOOK) && sale.method === undefined) return { ...offer, could: [sold], text };
  return sumsSaid(offer.text).length === 1 || MET_AT.test(offer.text) || behind.kind === "unclear"
    ? sold
    : { ...offer, could: [sold], text };
}

/** One offer and a no: nothing that was paid, agreed on or asked in return stands beside it. */
export function isOnlyDeclined(readings: readonly Reading[], message: string): boolean {
  const [only, ...others] = withOfferEnds(readings, message);
  const prices = sumsSaid(message.replace(OUR_PRICE, ""));
  const isSettled = [ACCEPTED, PUT_DOWN].some((words) => saysAny(message, words));
  return only !== undefined && others.length === 0 && prices.length === 1 && !isSettled && isDeclined(only);
}

function onlyDeclines({ kind, text }: Reading): boolean {
  const words = wordsIn(text);
  if (kind !== "unclear" || /\d/.test(text)) return false;
  return (
    saysAny(text, DECLINED) ||
    (words.some((word) => NO.has(word)) && words.every((word) => AROUND_NO.has(word) || NO.has(word)))
  );
}

/** "picking up saturday", "coming tomorrow at 6": when they come for it. */
const onlyComes = (reading: Reading): boolean =>
  isRefused(reading) && sumsBesideHours(reading.text).length === 0 && saysAny(reading.text, COMES_FOR_IT);

/** "sold", "he paid it", "he took it, cash": a sale that names neither a piece nor a price; null where it is none. */
function saleOfIt(reading: Reading): ReadingOf<"sell"> | null {
  const sale = [reading, ...couldOf(reading)].find((each) => each.kind === "sell");
  const isOpen = sale?.kind === "sell" && sale.price === undefined && mentionsOf(sale).every(({ it }) => it);
  const isWhole = reading.kind !== "unclear" || (couldOf(reading).length === 1 && !reading.left?.length);
  return isOpen && isWhole && !/\d/.test(reading.text) ? sale : null;
}

/** The price that a story of offers ends with, in cents; null where it tells none, or too many. */
function agreedIn(text: string): Cents | null {
  const sums = sumsSaid(text.split(MET_AT).at(-1)!);
  return sums.length <= PRICES_MAX ? (sums.at(-1) ?? null) : null;
}

const piecesIn = (text: string): Mention[] =>
  lexed(text).flatMap(({ kind, mention }) => (kind === "piece" && mention && !mention.it ? [mention] : []));
