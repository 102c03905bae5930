import type { Tok } from "../clause.ts";
import { isHereAgain } from "../judging/refunding.ts";
import type { Mention, Reading } from "../reading.ts";
import { unfinished } from "../rows/unfinished.ts";
import { unitsOf } from "../rows/units.ts";
import { couldOf, isFor, isRefused } from "../unclear.ts";
import { DENIES, WANTS, WORKS } from "../words/lived.ts";
import { PIECE_PARTS } from "../words/parts.ts";
import { OF_SOMEBODY_ELSE, PUTS_OR_HOLDS } from "../words/visits.ts";
import { saysAny } from "../words/words.ts";
import { leadsOf, ofPiece } from "./leading.ts";
import { isBesideDeal, isBesideDealOf } from "./of-deals.ts";
import { besideIn, isBesideDeed, OURS, tellsWhy, turnsDeed } from "./of-ours.ts";
import { withoutVisits } from "./of-visits.ts";
import { isDeed, isEnd, isTold, type Stretch, stretchesOf } from "./told.ts";

/*
 * Where a line is not read as it stands, what it tells in passing is left out; that counts only where the rest is whole.
 */

/** The readings of a line without what it tells in passing, where those are whole and its own are not. */
export function withoutTold(readings: Reading[], lexed: () => Tok[], read: Read): Reading[] {
  const isOpen = readings.some((one) => one.kind === "unclear" && !one.byBooks);
  const isAsked = readings.length > 1 && readings.some(({ kind }) => kind === "unclear");
  if (!isOpen && !isAsked) return readings;
  const tokens = lexed();
  if (tokens.length > TOKENS_MAX) return readings;
  if (isOpen) return cameBack(besideTold(tokens, read) ?? ledUpTo(tokens, read), tokens) ?? readings;
  // "sold the dresser 150, he bought a boat": the facts beside it stand as they were read.
  const made = wholeWithout(tokens, tellingsIn(tokens)(isTold), read);
  return made?.length === readings.filter(({ kind }) => kind !== "unclear").length ? made : readings;
}

type Read = (tokens: Tok[]) => Reading[];

/** The hold that a line tells beside when somebody comes for it, where it is not read so as it stands; null where that is not all it tells. */
export function heldForVisit(readings: readonly Reading[], lexed: () => Tok[], read: Read): Reading[] | null {
  if (!readings.some(isOfVisit)) return null;
  const tokens = lexed();
  const kept = tokens.length > TOKENS_MAX ? null : withoutVisits(tokens);
  // "lady wants the chest, 20 down, picking up sat": what she would put down, maybe.
  const isWished = kept?.some(isWish) && !kept.some(isGiving);
  const made =
    kept && kept.length > 0 && !isWished ? read(kept.map((token) => ({ ...token }))).map(putDown) : [];
  return made.length > 0 && made.every((one) => one.kind === "hold" && (isWhole(one) || one.follows === true))
    ? made
    : null;
}

const isWish = ({ text, roles }: Tok): boolean => roles.hedge !== undefined && WANTS.has(text);
const isGiving = ({ text }: Tok): boolean => text.split(" ").some((word) => PUTS_OR_HOLDS.has(word));

/** "left 20 on the trunk" of who comes back for it: that was no price. */
const putDown = (reading: Reading): Reading =>
  (isFor(reading, "deposit") && couldOf(reading).find(({ kind }) => kind === "hold")) || reading;

/**
 * "joan offered 80 for the bookcase, I said ok, she put 20 down": what somebody puts down is for the price told before it,
 * whatever that was by itself; null where the two are of different pieces or people.
 */
export function agreedWithDeposit(readings: readonly Reading[]): Reading | null {
  const [told, hold, ...others] = readings;
  if (told?.kind !== "unclear" || hold?.kind !== "hold" || others.length > 0) return null;
  if (hold.deposit === undefined || hold.agreed !== undefined || !AGREEABLE.some((kind) => isFor(told, kind)))
    return null;
  const price = couldOf(told).find((each) => each.kind === "hold" || each.kind === "sell");
  const sum = price?.kind === "hold" ? price.agreed : price?.kind === "sell" ? price.price : undefined;
  if (sum === undefined || sum <= hold.deposit || saysAny(`${told.text} ${hold.text}`, OF_SOMEBODY_ELSE))
    return null;
  const { pieces, buyer } = price as { pieces?: Mention[]; buyer?: string };
  const isSame = hold.follows === true || JSON.stringify(hold.pieces) === JSON.stringify(pieces);
  // "tom offered 100, nell put 20 down": hers is for no price of his.
  const isOne = hold.buyer === undefined || hold.buyer === buyer;
  if (!pieces || !isSame || !isOne) return null;
  const who =
    hold.buyer ??
    buyer ??
    couldOf(told)
      .map((each) => ("buyer" in each ? each.buyer : undefined))
      .find(Boolean);
  const { follows: _, missing: __, ...kept } = hold;
  return { ...kept, pieces, agreed: sum, ...(who === undefined ? {} : { buyer: who }) };
}

/** What such a price may be by itself. */
const AGREEABLE = ["offer", "intention", "noVerb", "left", "unclaimed", "twoNumbers"] as const;

/** Not understood, or held on the day on which somebody comes. */
const isOfVisit = (reading: Reading): boolean =>
  reading.kind === "unclear"
    ? !reading.byBooks || isFor(reading, "deposit")
    : reading.kind === "hold" && reading.date !== undefined;

/** "dresser's back, didn't go up their stairs, refunded the 170": what is left out may say that the piece is here again. */
function cameBack(made: Reading[] | null, tokens: readonly Tok[]): Reading[] | null {
  if (!made?.some(({ kind }) => kind === "refund") || !isHereAgain(tokens)) return made;
  return made.map((one) => (one.kind === "refund" && !one.unpaid ? { ...one, returned: true } : one));
}

/** What tokens say without what is told beside it; null where that is nothing whole. */
function besideTold(tokens: Tok[], read: Read): Reading[] | null {
  const toldIn = tellingsIn(tokens);
  const without = (told: readonly Stretch[]): Reading[] | null => wholeWithout(tokens, told, read);
  const strict = toldIn(isTold);
  const made = without(strict);
  // "sold the desk 120, it won't fit through her door"
  const last = made?.at(-1)?.kind ?? "";
  const isDenied = DEALT.has(last) && strict.some((one) => deniesMore(tokens, one, last));
  if (made && !isDenied) return made;
  const told = toldIn(isBesideDeed);
  const deeds = without(told);
  const beside = deeds ? [...told, ...besideIn(tokens)] : told;
  const isOurs = deeds?.every(
    ({ kind }) => OURS.has(kind) && !beside.some((one) => turnsDeed(kind, tokens, one)),
  );
  if (isOurs) return deeds!;
  const deals = without(toldIn(isBesideDeal));
  if (deals?.every((one) => DEALT.has(kindOf(one)))) return deals;
  for (const ended of ENDED_KINDS) {
    const over = without(toldIn(isBesideDealOf(ended)));
    if (over?.every(({ kind }) => kind === ended)) return over;
  }
  return null;
}

/** What tokens say behind what only leads up to it. */
function ledUpTo(tokens: Tok[], read: Read): Reading[] | null {
  for (const { rest, named } of leadsOf(tokens, stretchesOf(tokens))) {
    const told = read(rest.map((token) => ({ ...token })));
    const made = wholeOf(told, named) ?? wholeOf(besideTold(rest, read) ?? [], named);
    if (made) return made;
  }
  return null;
}

/** Readings that are whole once the piece named before them is theirs; else null. */
function wholeOf(told: readonly Reading[], named: Mention | null): Reading[] | null {
  const [said, ...others] = told;
  const first = said && named ? goingOn(said) : said;
  const own = first && named ? ofPiece(first, named) : first;
  if (!own) return null;
  // "the loveseat came with cat hair, cleaner 12 and fabric 20": both are for it.
  const all = [own, ...others.map((each) => (named && isCostToo(each, own) ? ofPiece(each, named)! : each))];
  return all.every(isWhole) ? all : null;
}

const isCostToo = (reading: Reading, first: Reading): boolean =>
  first.kind === "spend" && reading.kind === "spend" && !reading.pieces && reading.category === "materials";

/** "I came down to 68": the one note that it is of the piece spoken of. */
function goingOn(reading: Reading): Reading {
  const { back } = reading;
  const isOne = back && "isEither" in back && !back.isEither && back.could.length === 1;
  return isOne && isRefused(reading) ? back.could[0]! : reading;
}

/** The readings of the tokens without some stretches, where each is whole; else null. */
function wholeWithout(tokens: readonly Tok[], told: readonly Stretch[], read: Read): Reading[] | null {
  if (told.length === 0) return null;
  const kept = tokens
    .filter((_, at) => !told.some(({ from, to }) => at >= from && at < to))
    .map((token) => ({ ...token }));
  while (kept.length > 0 && isEnd(kept.at(-1)!)) kept.pop();
  while (kept.length > 0 && isEnd(kept[0]!)) kept.shift();
  const made = kept.length > 0 ? read(kept) : [];
  if (made.length === 0 || !made.every(isWhole)) return null;
  const [named, ...others] = namedBefore(tokens, told);
  if (!named || !made.some(isOfIt)) return made;
  const own = made.map((each) => (isOfIt(each) ? ofPiece(each, named) : each));
  return others.length === 0 && own.every((each) => each !== null) ? own : null;
}

/** "a man saw the crib and bought it": the pieces that are told of before any verb of the rest. */
function namedBefore(tokens: readonly Tok[], told: readonly Stretch[]): Mention[] {
  const verb = tokens.findIndex(
    (token, at) => isDeed(token) && !told.some(({ from, to }) => at >= from && at < to),
  );
  const before = told.flatMap(({ from, to }) => (to <= verb ? tokens.slice(from, to) : []));
  return before.flatMap(({ mention }) => (mention && !mention.it ? [mention] : []));
}

/** It names no piece, and needs one. */
const isOfIt = (reading: Reading): boolean =>
  reading.follows === true ||
  reading.missing?.includes("pieces") === true ||
  (reading.kind === "unclear" && couldOf(reading).every(isOfIt));

/** What a reading records, where the books tell too. */
const kindOf = (reading: Reading): string => couldOf(reading)[0]?.kind ?? reading.kind;

const isWhole = (reading: Reading): boolean =>
  reading.kind === "unclear" ? reading.byBooks === true : reading.kind !== "ask" && !reading.missing;

/** What is denied behind one of these may be the deal. */
const DEALT: ReadonlySet<string> = new Set([
  "sell",
  "hold",
  "buy",
  "trade",
  "fallthrough",
  "refund",
  "collect",
  "retire",
]);

/** Of these it may be told what they come to. */
const ENDED_KINDS = ["sell", "fallthrough"] as const;

/** Whether something is denied that is no part of a piece: "the lid doesn't close" tells how it is. */
function deniesMore(tokens: readonly Tok[], { said, to }: Stretch, kind: string): boolean {
  const words = tokens.slice(said, to);
  const at = words.findIndex(({ text }) => DENIES.has(text));
  // "bought a trunk 14, won't lock"
  const isOfIt = at === 0 && kind === "buy" && WORKS.has(words[1]?.text ?? "");
  return at >= 0 && !isOfIt && !PIECE_PARTS.has(words[at - 1]?.text ?? "");
}

/** Beyond, a line is a list of notes. */
const TOKENS_MAX = 60;

type Telling = (tokens: readonly Tok[], stretch: Stretch, isGoingOn: boolean) => boolean;

/** Which stretches of a line are told in passing, by what tells so. */
function tellingsIn(tokens: readonly Tok[]): (tells: Telling) => Stretch[] {
  const stretches = stretchesOf(tokens);
  const turns = unfinished
    .fired(tokens, unitsOf([...tokens]))
    .filter(({ effect }) => effect !== "word" && effect !== "labor" && effect !== "other");
  return (tells) => {
    const told: Stretch[] = [];
    for (const stretch of stretches) {
      // "done while waiting for the plumber": beside a deed of ours a reason turns nothing.
      const isWhy = tells !== isTold && tellsWhy(tokens, stretch);
      const isTurned = turns.some(
        ({ from, to }) => from < stretch.to && to > stretch.from && !(isWhy && from >= stretch.said),
      );
      const isGoingOn = told.at(-1)?.to === stretch.from;
      if (!isTurned && tells(tokens, stretch, isGoingOn)) told.push(stretch);
    }
    return told;
  };
}
