import type { Fact } from "../books/facts.ts";
import { labelOf } from "../books/label.ts";
import { showDay } from "../calendar.ts";
import type { Looking } from "../decide/decision.ts";
import { mentionLabel } from "../decide/pieces/mention-words.ts";
import { byNumbers } from "../decide/pieces/mentioned.ts";
import { type Cents, show } from "../money.ts";
import { lexed } from "../notes/lexed.ts";
import { mayCorrect, misnotedIn } from "../notes/misnoted/misnoted.ts";
import { type Misnoted, raise } from "../notes/misnoted/misnoted-said.ts";
import { withForWhom } from "../notes/passed-over/for-whom.ts";
import { withPutRight } from "../notes/passed-over/put-right.ts";
import { readMessage, readPart } from "../notes/read.ts";
import type { Reading, ReadingOf } from "../notes/reading.ts";
import { partedIn } from "../notes/settling.ts";
import { anyOf, couldOf, eitherOf, isFor, isRefused, tellsNoFact, whyOf } from "../notes/unclear.ts";
import { bears } from "../notes/verbs.ts";
import {
  CORRECTS_NOTHING,
  COST_TO_DO,
  NOT_GOT,
  NOT_OLD,
  OF_A_SUM,
  OF_MORE_NOTES,
  POINTING,
  SAID_ANEW,
  WORTH,
} from "../notes/words/mending.ts";
import { MAKES_THE, MARKS, NAMES_OLD, NUMBERS_SAID, OF_NOW, OLD_PHRASES } from "../notes/words/misnoted.ts";
import { saysAny, wordsIn } from "../notes/words/words.ts";
import { ofEach } from "./amounts.ts";
import type { MendTo } from "./fields.ts";
import { isMeant } from "./meant.ts";
import { meansAny } from "./mend.ts";
import { correctedBy, type Found, hasValue } from "./misnoted-facts.ts";
import { OFFERED_MAX, takenOut } from "./misnoted-out.ts";
import { mendOfRestated, untilThat } from "./newest.ts";
import { ofSeveral } from "./of-several.ts";
import type { Past } from "./past.ts";
import { besideReasons, type Corrected } from "./reasons.ts";

/*
 * A message that corrects what is noted, in whatever words: the note that it is about is the one on the books that has all
 * that is told of it.
 */

type Mend = ReadingOf<"mend">;

/** The readings of a message that corrects a note on the books; null where it corrects none. */
export function ofMisnoted(text: string, readings: readonly Reading[], desk: Looking): Corrected | null {
  const { past, today } = desk;
  const several = past && ofSeveral(text, readings, { ...desk, past });
  if (several) return { readings: several, isSure: true };
  const unit =
    past && readings.every((reading) => isFor(reading, "eachOfUnknown"))
      ? ofEach(text, { ...desk, past })
      : null;
  if (unit) return { readings: [unit], isSure: true };
  const again = past && saidOfMeasure(text, readings, desk, past);
  if (again) return { readings: [again], isSure: true };
  const same = past && orSameCost(text, readings, desk, past);
  if (same) return same;
  if (!past || !mayCorrect(text) || saysAny(text, CORRECTS_NOTHING) || OF_A_SUM.test(text)) return null;
  // "he says it was worth 28"
  if (COST_TO_DO.test(text) || (saysAny(text, WORTH) && past.before()?.kind !== "trade")) return null;
  // "took the desk back, she said the color was off, refunded her 110": why it came back corrects nothing.
  const [only, ...more] = readings;
  if (only?.kind === "refund" && only.returned && !only.missing && more.length === 0) return null;
  // "paint 24 - wait 26 - for the desk": put right within it, and no earlier note's.
  const told = lexed(text);
  if (withPutRight(told) !== told) return null;
  if (withForWhom(told) !== told) return null;
  const whole = wholly(text, readings, desk, past, false);
  const isMarked = saysAny(text, MARKS);
  const mayHaveParts = isMarked || NAMES_OLD.test(text) || (text.match(NUMBERS_SAID)?.length ?? 0) > 1;
  if (whole?.isSure || !mayHaveParts) return whole;
  const alone = (part: string): Corrected | null => {
    const read = readPart(part, today);
    if (read.length > 0 && read.every((reading) => isCorrection(reading, desk)))
      return { readings: read, isSure: true };
    const isDoubted = read.length === 1 && couldOf(read[0]).some((each) => isCorrection(each, desk));
    return wholly(part, read, desk, past, isMarked) ?? (isDoubted ? { readings: read, isSure: false } : null);
  };
  return besideReasons(text, alone, { ...desk, past, isMarked }) ?? whole;
}

/** "mom did those two hours", "did those two hours on thursday": of the hours that are noted already, and no more of them. */
function saidOfMeasure(
  text: string,
  [only, ...others]: readonly Reading[],
  desk: Looking,
  past: Past,
): Reading | null {
  const isMeasured = only?.kind === "work" || only?.kind === "drive";
  if (!isMeasured || others.length > 0 || !saysAny(text, POINTING)) return null;
  const newest = past.before();
  const isSame =
    (newest?.kind === "work" && only.kind === "work" && newest.data.minutes === only.minutes) ||
    (newest?.kind === "drive" && only.kind === "drive" && newest.data.miles === only.miles);
  const points = lexed(text).some(
    ({ kind }, at, all) => (kind === "duration" || kind === "miles") && POINTING.has(all[at - 1]?.text ?? ""),
  );
  return isSame && points ? mendOfRestated(only, desk) : null;
}

/** "knobs 12, those are for the dresser" behind the very same cost of today: that one, or another. */
function orSameCost(
  text: string,
  [only, ...others]: readonly Reading[],
  desk: Looking,
  past: Past,
): Corrected | null {
  if (only?.kind !== "spend" || only.missing || others.length > 0) return null;
  const fact = past.before();
  const isSame = fact?.kind === "spend" && fact.amount === only.amount && fact.data.what === only.what;
  const told = isSame ? lexed(text) : [];
  if (!isSame || withForWhom(told) === told) return null;
  const at = { text, line: 0 };
  const to = { pieces: only.pieces ?? [] };
  const label = `${past.echo(fact)}: now ${only.pieces ? saidOf(to, desk) : "of no piece"}`;
  const mend: Mend = { kind: "mend", of: { fact: fact.id }, to, label, ...at };
  return {
    readings: [{ kind: "unclear", why: whyOf({ kind: "newOrOld" }), could: [mend, only], ...at }],
    isSure: false,
  };
}

/** It corrects what the books have. */
export const isCorrection = (reading: Reading, desk: Looking): boolean =>
  reading.kind === "fix" ||
  (reading.kind === "undo" && !saysAny(reading.text, OF_MORE_NOTES)) ||
  (reading.kind === "mend" && meansAny(reading, desk));

/** How much more than was noted is rather something else. */
const FAR = 1.5;

/** What a message that tells nothing else corrects; `isMarked`: said as a correction, in words that stand beside it. */
function wholly(
  text: string,
  readings: readonly Reading[],
  desk: Looking,
  past: Past,
  isMarked: boolean,
): Corrected | null {
  const { today } = desk;
  const isBought = readings.length > 1 && readings[0]!.kind === "buy";
  if (isBought && text.includes(" when ")) return thenMore(text, desk);
  const said = misnotedIn(text, desk.books.buyers, today);
  if (!said) return null;
  if (isMarked) raise(said, "likely");
  // "the grad payment was 175", "grad was 175": of that loan, and of no note of anything else.
  const words = wordsIn(text);
  said.loan = [...desk.books.loans.keys()].find((name) => words.includes(name));
  if (said.loan && said.kinds.length === 0 && !said.what && said.now.pieces.length === 0)
    said.kinds = ["pay"];
  // "no work on the dresser today", "they said it sold for 300": nothing has happened, and nothing is corrected.
  // That it did not happen is what takes a note out that says it did.
  const isNamed = said.out !== undefined && said.isNoun && !said.kinds.includes("hold");
  const takesBack =
    said.undoes > 0 ||
    said.isAgain ||
    said.isOfTalk ||
    said.out === "denied" ||
    isNamed ||
    (said.out !== undefined && said.what !== undefined);
  const isOpen = takesBack || said.isProven || said.old.amount !== undefined;
  if (!isOpen && readings.some(tellsNoFact)) return null;
  // "seller paid 400 for this dresser, had the receipt"
  const isOthers = readings.length > 0 && readings.every((reading) => isFor(reading, "other"));
  if (isOthers && !takesBack && said.old.amount === undefined) return null;
  // "drove 24 no 26 miles": it takes itself back, and no note before it.
  if (said.now.miles !== undefined && said.now.amount !== undefined) return null;
  const isRange = (reading: Reading): boolean => isFor(reading, "range");
  if (!takesBack && !said.out && !said.isProven && readings.some(isRange)) return null;
  const isWhole = readings.length > 0 && readings.every(isNoted);
  const at = { text, line: 0 };
  if (said.out || said.undoes || said.isAgain) {
    // "scratch the bench sale he changed his mind": a sale is named, and nothing scrapped.
    // "returned those casters, got all my money back": to the shop, where nobody had borrowed them.
    const isNote = isWhole && !isNamed && !readings.every(({ kind }) => kind === "lent");
    const out = isNote ? null : takenOut(said, desk, past, at);
    return out && { readings: out, isSure: true };
  }
  // "put the paint on the dresser, 17": of the paint, and not of what the dresser was bought for.
  const isOfThing =
    said.now.pieces.length + said.old.pieces.length > 0 &&
    !said.kinds.includes("buy") &&
    lexed(text).some(({ roles }) => roles.supply);
  const found = mayBeAny(said, isWhole)
    ? correctedBy(said, desk, past, isWhole).filter(
        (one) => mayBe(one, said, readings, isWhole, desk) && !(isOfThing && one.fact.kind === "buy"),
      )
    : [];
  const [only, ...others] = found;
  if (!only) return said.old.amount === undefined ? null : withoutOld(text, said.old.amount, desk);
  const anew =
    others.length === 0 && said.left.length === 0 ? (pricedAnew(only, text) ?? soldBelow(only, text)) : null;
  if (anew) return { readings: [{ ...anew, ...at }], isSure: true };
  const asMend = ({ fact, to: now = {} }: Found): Mend => {
    const to = untilThat(fact, now, text, today) ?? now;
    return { kind: "mend", of: { fact: fact.id }, to, ...at };
  };
  const isAllTaken = said.left.length === 0 && (said.now.name === undefined || only.to!.buyer !== undefined);
  // "would you take 65 for it? nope": asked, whatever it may correct.
  const isPlain = !said.isTurned || said.sense === "sure";
  const isRetold = said.isNoun || isToldOfThing(said) || isOnce(only, said, desk);
  const isAgain = isListedAnew(only, said, readings, past);
  // "sorry, 28 for the end table" behind its sale for 30
  const isOfSale = isDoubted(said) && isJustNow(only.fact, "sell", past);
  const tellsOther = (reading: Reading): boolean =>
    saysOther(reading) && !(isOfSale && isFor(reading, "noVerb"));
  // "desk was more like 90 min" right behind an hour on it
  const isThing = said.now.pieces.length > 0 || said.what !== undefined || said.loan !== undefined;
  const isPaid = said.kinds.includes("pay") || said.what !== undefined;
  const isToldNow = said.isTold ? isThing : isDoubted(said) && isPaid && !saysAny(text, SAID_ANEW);
  const isJust = isToldNow && hasValue(said.now) && isJustNow(only.fact, only.fact.kind, past);
  const isAtOnce = said.isProven || isRetold || isAgain || isJust || !readings.some(tellsOther);
  // "make the hutch 200" of one bought for 60: hardly that.
  const { fact, to } = only;
  const isFar = MAKES_THE.test(text) && to!.amount !== undefined && to!.amount > FAR * (fact.amount ?? 0);
  const isDone = !isFar && (isAgain || isJust || isSaid(only, said, isWhole, readings, desk));
  if (isAllTaken && isPlain && isAtOnce && others.length === 0 && isDone)
    return {
      readings: [asMend(only)],
      isSure: said.sense === "sure" || isAgain || isJust || isOnce(only, said, desk) || isCalled(said),
    };
  // "drawer was broken so i sent dana 25 back": money that went back, and no other price.
  if (said.sense !== "sure" && readings.some(({ kind }) => kind === "refund")) return null;
  const mends = found.map(
    (one): Mend => ({
      ...asMend(one),
      label: `${past.echo(one.fact)}: now ${saidOf(one.to!, desk)}`,
    }),
  );
  const could = [...mends, ...(said.sense === "sure" && !isWhole ? [] : readings.flatMap(notesIn))].slice(
    0,
    OFFERED_MAX,
  );
  // "the price of the desk at the other shop is 110 not 120": with words left over it is asked, however it points.
  const why = whyOf({ kind: others.length > 0 || said.left.length > 0 ? "eitherOf" : "newOrOld" });
  return { readings: [{ kind: "unclear", why, could, ...at }], isSure: false };
}

/** "put the desk at 80 instead of 95", "desk now 80 instead of 95", "make the desk 80": what it is to cost from now on; null where that is noted wrong. */
function pricedAnew({ fact, to }: Found, text: string) {
  const isPrice = (fact.kind === "list" || (fact.kind === "reprice" && !fact.data.cut)) && to?.amount;
  const isAnew = isPrice && ((saysAny(text, OF_NOW) && saysAny(text, OLD_PHRASES)) || MAKES_THE.test(text));
  return isAnew ? { kind: "reprice" as const, pieces: byNumbers(fact.pieces), price: to.amount! } : null;
}

/** "didn't get 95 for the rocker, got 88": what it went for, and no other asking price. */
function soldBelow({ fact, to }: Found, text: string) {
  const isAsking = (fact.kind === "list" || fact.kind === "reprice") && to?.amount && NOT_GOT.test(text);
  return isAsking ? { kind: "sell" as const, pieces: byNumbers(fact.pieces), price: to.amount! } : null;
}

/** "desk was 35 when i bought it, sold it 140": what it cost, and what came of it; null where the first part corrects nothing. */
function thenMore(text: string, desk: Looking): Corrected | null {
  for (const { said, after } of partedIn(text, desk.today)) {
    const first = ofMisnoted(said, readMessage(said, desk.today), desk);
    if (first?.isSure) return { readings: [...first.readings, ...after], isSure: true };
  }
  return null;
}

/** "bought dresser 40 plus tax", "got paid 45 to fix a chair": it is a note of its own as well, whatever it may correct. */
function saysOther(reading: Reading): boolean {
  if (reading.kind !== "unclear") return reading.kind !== "ask" && !bears(reading.kind, "corrects");
  return !isFor(reading, "unknown") && !isFor(reading, "loneNumber");
}

/** "sold the desk for 140 not 150", which it was listed at: a note of its own. */
function withoutOld(text: string, old: Cents, { books, today }: Looking): Corrected | null {
  const rest = text.replace(NOT_OLD, "");
  const [note, ...others] = rest === text ? [] : readMessage(rest, today);
  if (!note || others.length > 0 || !isNoted(note)) return null;
  const [mention] = note.kind === "sell" ? (note.pieces ?? []) : [];
  const anew: Corrected = { readings: [eitherOf([note], { text, line: 0 }, "newOrOld")], isSure: false };
  if (!mention) return anew;
  const isAsked = [...books.pieces.values()].some(
    (piece) => piece.gone === null && piece.listPrice === old && isMeant(mention, piece),
  );
  return isAsked ? { readings: [{ ...note, text }], isSure: true } : anew;
}

const isNoted = (reading: Reading): boolean =>
  reading.kind === "unclear"
    ? isForBooks(reading)
    : reading.kind !== "ask" && !reading.missing && !bears(reading.kind, "corrects");

/** "the last two stools went, 35": a sale, if they are ours; "dropping the hutch 25": a cut or a price. */
const isForBooks = ({ byBooks, could = [] }: ReadingOf<"unclear">): boolean =>
  byBooks === true &&
  ((could.length === 1 && could[0]!.kind === "sell" && !could[0]!.missing) ||
    could.every(({ kind }) => kind === "reprice"));

/** The notes that a reading may be, and no corrections. */
function notesIn(reading: Reading): readonly Reading[] {
  return reading.kind === "ask" || bears(reading.kind, "corrects") ? [] : anyOf(reading);
}

/** Whether it may be about any note at all, before the books are gone through for one. */
const mayBeAny = (said: Misnoted, isWhole: boolean): boolean =>
  (said.now.date !== undefined && said.kinds.some(isOnceOnly)) ||
  !(said.isLate || (isWhole && said.sense === "none" && !isCalled(said)));

/** Whether a message that says little of a correction may be about that note. */
function mayBe(
  one: Found,
  said: Misnoted,
  readings: readonly Reading[],
  isWhole: boolean,
  desk: Looking,
): boolean {
  if (isOnce(one, said, desk)) return true;
  if (said.isLate) return false;
  const isOfKind = readings.some(({ kind }) => kind === one.fact.kind);
  // "it had a scratch when i bought it, gave 10 back"
  if (said.isThen && isWhole && !isOfKind) return false;
  if ((said.sense === "sure" && (said.isProven || !isWhole || isOfKind)) || isCalled(said)) return true;
  const isNamed = said.now.who !== undefined || said.isNoun;
  if (readings.some(({ kind }) => kind === "ask")) return said.now.who !== undefined && said.isTold;
  if (said.sense === "none") return !isWhole && isNamed && (said.isTold || said.points);
  return !isWhole || isOfKind;
}

/** Whether that is said well enough to be done. */
function isSaid(
  one: Found,
  said: Misnoted,
  isWhole: boolean,
  readings: readonly Reading[],
  desk: Looking,
): boolean {
  // A whole purchase may be one more, whatever is said beside it.
  const isPurchase = isWhole && readings.some(({ kind }) => kind === "buy");
  if (isPurchase && said.old.amount === undefined && !said.isThen && !said.points && !said.isNoun)
    return false;
  // "whoops, 145 for the dresser listing": a note is called by its name.
  if (isDoubted(said) && (said.isNoun || isToldOfThing(said))) return true;
  if (said.sense === "sure" || isOnce(one, said, desk) || isCalled(said)) return true;
  if (isWhole) return false;
  const isNamed = said.now.who !== undefined || said.isNoun;
  return said.sense === "likely" || (isNamed && said.isTold && said.sense !== "none");
}

/** What a piece is only once: sold, finished. A second time it is told of the first, unless one of that name is still here. */
function isOnce({ fact, to }: Found, said: Misnoted, { books }: Looking): boolean {
  const { kinds, now } = said;
  if (!isOnceOnly(fact.kind) || !kinds.includes(fact.kind)) return false;
  if (to!.date !== undefined) return true;
  const isHere = [...books.pieces.values()].some(
    (piece) => piece.gone === null && now.pieces.some((mention) => isMeant(mention, piece)),
  );
  return fact.kind === "sell" && now.pieces.length > 0 && !isHere && isDoubted(said);
}

/** "no i mean listed the bench at 40" right behind its listing: that one, at another price. */
function isListedAnew({ fact }: Found, said: Misnoted, readings: readonly Reading[], past: Past): boolean {
  const [only, ...others] = readings.filter((reading) => !isRefused(reading));
  return isDoubted(said) && only?.kind === "list" && others.length === 0 && isJustNow(fact, "list", past);
}

/** Noted just now, in the last message. */
const isJustNow = (fact: Fact, kind: Fact["kind"], past: Past): boolean =>
  fact.kind === kind && fact.root === past.touched() && past.isToday(fact);

const isDoubted = ({ sense }: Misnoted): boolean => sense === "sure" || sense === "likely";

/** "sorry the sanding was 3h": what a thing came to that both know. */
const isToldOfThing = (said: Misnoted): boolean => isDoubted(said) && said.isTold && said.what !== undefined;

const isOnceOnly = (kind: string): kind is "sell" | "finish" => kind === "sell" || kind === "finish";

function saidOf(to: MendTo, { books, today }: Looking): string {
  if (to.date !== undefined) return showDay(to.date, today);
  if (to.amount !== undefined) return show(to.amount);
  if (to.miles !== undefined) return `${to.miles} miles`;
  if (to.minutes !== undefined) return `${to.minutes} min`;
  if (to.pieces)
    return to.pieces
      .map((mention) =>
        mention.number === undefined ? mentionLabel(mention) : labelOf(books, [mention.number]),
      )
      .join(" and ");
  const [value] = Object.values(to);
  return String(value);
}

/** "that hold is for dana", "the deposit from nell was 15", "those knobs came to 21.60 with tax": a note is called by its name, and told what it was. */
const isCalled = ({ isNoun, isTold, points, now, what, sense }: Misnoted): boolean =>
  isNoun ? isTold && (points || now.who !== undefined) : points && what !== undefined && sense !== "none";
