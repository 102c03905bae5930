import type { FactKind } from "../books/facts.ts";
import { costOf } from "../books/piece.ts";
import { addDays, type Day, showDay } from "../calendar.ts";
import type { Reading, ReadingOf } from "../notes/reading.ts";
import { whyOf } from "../notes/unclear.ts";
import { bears } from "../notes/verbs.ts";
import { BESIDE_DEPOSIT, BROUGHT_AND_PAID } from "../notes/words/settling.ts";
import { verbs } from "../verbs/list.ts";
import type { Verb } from "../verbs/verb.ts";
import {
  backedOutOf,
  collectedOf,
  depositBack,
  type Fetched,
  fetchedOf,
  isHolder,
  isPastBuyer,
  owedCameIn,
  refundedTo,
  soldFetched,
} from "./deals/fetched.ts";
import { withProceeds } from "./deals/proceeds.ts";
import {
  type Ask,
  type Choice,
  confirmation,
  type Decision,
  type Looking,
  type Matter,
  NEVER_MIND,
  newMatter,
} from "./decision.ts";
import { besideAsked, likelyStanding, resortOf, wholeOr, withLikely } from "./likely/last-resort.ts";
import { askMissing } from "./missing.ts";
import { here } from "./pieces/fits.ts";
import { foundBy } from "./pieces/match.ts";
import { mentionsOf } from "./pieces/mentioned.ts";
import { deskOfItsDay } from "./pieces/own-day.ts";
import { whichOrNone } from "./pieces/settled.ts";
import { asBefore } from "./talk/as-before.ts";
import { ofDescribed } from "./talk/described.ts";
import { withAllItsParts, withItsPart, withoutPart } from "./talk/of-parts.ts";
import { talkedOf, withSpokenOf } from "./talk/talk.ts";
import {
  nextOfTwo,
  nextSpokenOf,
  refundedInFull,
  soldAtAsking,
  soldUnnamed,
  tradedIt,
  withAllOfIt,
  withAskingPrice,
} from "./talk/unnamed.ts";
import { isDeposit, isNewPrice, isNewWork, withNewPart } from "./unclear/fitting-sums.ts";
import { goneOn, pricedInOrder, withFinish } from "./unclear/going-on.ts";
import { byTheSame, householdQuestion, paidToTheSame } from "./unclear/household.ts";
import { besideKnownSums } from "./unclear/known-sums.ts";
import { askOfOffer, isDeclined, offerIn } from "./unclear/offers.ts";
import { dayOfBefore, orBefore, restOfHeld } from "./unclear/or-before.ts";
import { askOfList, askWhich, type Deciding, labelOfWhole, standingOf } from "./unclear/whole.ts";

const verbByKind = new Map<string, Verb>(verbs.map((verb) => [verb.kind, verb as unknown as Verb]));

/** The verb of a kind of note or fact; undefined for what no note says: "unclear", "sent". */
export function verbOf(kind: Reading["kind"] | FactKind): Verb | undefined {
  return verbByKind.get(kind);
}

/**
 * Decides one reading: facts to record, one question, or a refusal in plain words. In this order, so that
 * the same thing is always said first: not understood, something missing, an old day, and the verb's own rules.
 */
export function decide(matter: Matter, desk: Looking): Decision {
  const { reading } = matter;
  const verb = verbOf(reading.kind);
  if (reading.kind === "unclear" || !verb?.decide) return decideUnclear(reading, desk);
  const missing = askMissing(reading);
  if (missing) {
    const known = withProceeds(
      withAllOfIt(withAskingPrice(missing, reading, desk), reading, desk),
      reading,
      desk,
    );
    return { kind: "ask", ask: withSpokenOf(known, reading, desk, deciding) };
  }
  if (isOfNothing(reading))
    return { kind: "ask", ask: withSpokenOf(whichOrNone(reading), reading, desk, deciding) };
  if (reading.longAgo && reading.date && !matter.confirmed.includes("long ago")) {
    const day = showDay(reading.date, desk.today);
    const prompt = `${day} is long ago. Is that the day you mean?`;
    return {
      kind: "ask",
      ask: { ...confirmation(prompt, { label: `Yes, ${day}`, confirm: "long ago" }), wants: "day" },
    };
  }
  const household = householdQuestion(matter, desk);
  if (household) return { kind: "ask", ask: household };
  const itsDesk = verb.byItsDay ? deskOfItsDay(reading, desk) : desk;
  return doneBy(reading.by, verb.decide(reading as never, { ...itsDesk, confirmed: matter.confirmed }));
}

/** "fabric 30 for it", and nothing that it could be. */
function isOfNothing(reading: Reading): boolean {
  return (
    reading.follows === true &&
    bears(reading.kind, "piece or none") &&
    !("pieces" in reading && reading.pieces)
  );
}

/** What is recorded says who of the household did it. */
function doneBy(by: string | undefined, decision: Decision): Decision {
  if (decision.kind !== "record" || by === undefined) return decision;
  return { ...decision, facts: decision.facts.map((fact) => ({ ...fact, by })) };
}

/** What becomes of a reading by itself, nothing of it settled yet. */
export function decideWhole(reading: Reading, desk: Looking, confirmed: string[] = []): Decision {
  return decide({ ...newMatter(reading, desk.today), confirmed }, desk);
}

/** "Sold #2 desk 140.00": a reading on a button. */
export function wholeLabel(reading: Reading, desk: Looking): string {
  return labelOfWhole(reading, decideWhole(reading, desk), desk, deciding);
}

/** The readings that a message is by what stood before it, where it says little by itself; null where nothing fits. */
export function onward(reading: Reading, desk: Looking): readonly Reading[] | null {
  const on = goneOn(reading, desk, deciding);
  return on ? withFinish(reading, on, desk) : pricedInOrder(reading, desk, deciding);
}

/** What a message of several sums says beside those that the books know; null where that settles nothing. */
export const besideKnown = (
  text: string,
  readings: readonly Reading[],
  desk: Looking,
  read: (rest: string) => readonly Reading[],
): readonly Reading[] | null =>
  besideKnownSums(text, readings, desk, {
    read,
    meant: (reading) => meant(newMatter(reading, desk.today), desk).reading,
    deciding,
  });

const deciding: Deciding = { decide: decideWhole, verbOf };

/**
 * An unclear note is asked about with the whole readings that it may be, each tried against the books; where none
 * stands it is only explained.
 */
function decideUnclear(reading: Reading, desk: Looking): Decision {
  const unclear = reading.kind === "unclear" ? reading : null;
  const why = unclear?.why ?? "I could not read that as a note.";
  const [dayless, ...dated] = why === whyOf({ kind: "whichDay" }) ? (unclear?.could ?? []) : [];
  if (dayless && decideWhole(dayless, desk).kind !== "refuse")
    return { kind: "ask", ask: askDay(dayless, dated, desk) };
  const told = why === whyOf({ kind: "net" }) ? overCost(unclear?.could ?? [], desk) : (unclear?.could ?? []);
  const isSoFar = why === whyOf({ kind: "so far" });
  const could = withItsPart(isSoFar ? withNewPart(told, desk, deciding) : told, unclear?.left ?? [], desk);
  const standing = standingOf(could, desk, deciding, unclear?.byBooks);
  if (isDeclined(reading)) return { kind: "refuse", why: whyOf({ kind: "denial" }) };
  const offer = askOfOffer(reading, standing, desk, deciding);
  if (offer) return { kind: "ask", ask: offer };
  if (standing.length === 0)
    return (
      (unclear && lastResort(unclear, desk)) ?? {
        kind: "refuse",
        why: OF_CHOICES.has(why) ? whyOf({ kind: "unknown" }) : why,
      }
    );
  const left = standing.length === 1 ? (unclear?.left ?? []) : [];
  if (unclear?.rest?.length) return { kind: "ask", ask: askOfList(promptOf(why, []), standing, unclear) };
  const isTold = unclear !== null && !unclear.isCorrected;
  const all = isTold ? withLikely(standing, likelyStanding(unclear, desk, deciding)) : standing;
  return { kind: "ask", ask: askWhich(promptOf(why, unclear?.left ?? []), all, { left }) };
}

/** "trunk sold, 50 profit": that over what it cost, or the price itself. */
function overCost(could: readonly Reading[], { books }: Looking): readonly Reading[] {
  const [only, ...others] = could;
  if (only?.kind !== "sell" || only.price === undefined || others.length > 0) return could;
  const numbers = foundBy(only.pieces ?? [], books, here) ?? [];
  const cost = numbers.reduce((sum, number) => sum + costOf(books.pieces.get(number)!), 0);
  return cost > 0 ? [{ ...only, price: only.price + cost }, only] : could;
}

/** The question in the place of a refusal, of what is recognised in it; null where nothing speaks for any reading. */
export const lastResort = (reading: Reading, desk: Looking): Decision | null =>
  resortOf(reading, desk, deciding);

/** A question with what the words may tell instead. */
export const withBeside = (ask: Ask, reading: Reading, desk: Looking): Ask =>
  besideAsked(ask, reading, desk, deciding);

/** The reading of a message that tells of an offer for pieces that are listed; undefined: none does. */
export const offerOf = (readings: readonly Reading[], desk: Looking): Reading | undefined =>
  offerIn(readings, desk, deciding);

/** Whether any of some whole readings can be, as the books are. */
export const canStand = (readings: readonly Reading[], desk: Looking): boolean =>
  standingOf(readings, desk, deciding).length > 0;

/** What a message tells of pieces that it does not name but describes; null where it tells nothing of such. */
export const describedIn = (
  text: string,
  readings: readonly Reading[],
  desk: Looking,
): readonly Reading[] | null => ofDescribed(text, readings, desk, deciding);

/** A message of which no part can be read, as one; the readings as they are where a part can. */
export const orLikely = (text: string, readings: readonly Reading[], desk: Looking): readonly Reading[] =>
  wholeOr(text, readings, desk, deciding);

/** "sold desk 90 the other day": the whole note, once its day is said. */
function askDay(reading: Reading, dated: readonly Reading[], { today }: Looking): Ask {
  const on = (label: string, date: Day): Choice => ({
    label,
    effect: { kind: "instead", readings: [{ ...reading, date }] },
  });
  // "last weekend": its days.
  const days = dated.flatMap(({ date }) => (date === undefined ? [] : [on(showDay(date, today), date)]));
  const near = days.length > 0 ? days : [on("Yesterday", addDays(today, -1)), on("Today", today)];
  return {
    prompt: "Which day was that? Like sat or 3/14.",
    wants: "day",
    choices: [...near, NEVER_MIND],
    first: [reading],
  };
}

/** What asks for one of several readings, and says nothing where none of them stands. */
const OF_CHOICES: ReadonlySet<string> = new Set([whyOf({ kind: "eitherOf" }), whyOf({ kind: "newOrOld" })]);

/** Why it is asked; how to say it otherwise is not needed beside buttons that do. */
function promptOf(why: string, left: readonly string[]): string {
  if (left.length > 0) return `I don't know "${left.join(" ")}". Is it this?`;
  return /^[^.?!]+[.?!]/.exec(why)?.[0] ?? why;
}

/**
 * The matter as the books and the talk leave it: the one reading of an unclear note that can be, the piece that "it"
 * means. The same matter where they settle nothing.
 */
export function meant(said: Matter, desk: Looking): Matter {
  const matter = meantBy(said, desk);
  const reading = asBefore(matter.reading, desk);
  return reading === matter.reading ? matter : { ...matter, reading };
}

function meantBy(matter: Matter, desk: Looking): Matter {
  const { reading } = matter;
  const fetched = fetchedAlone(reading, desk);
  if (fetched) return { ...matter, ...fetched };
  const settled =
    soldFetched(reading, desk) ??
    backedOutOf(reading, desk) ??
    depositBack(reading, desk) ??
    paidOf(reading, desk);
  if (settled) return { ...matter, reading: settled };
  const paid = paidToTheSame(reading, desk);
  if (paid) return { ...matter, reading: paid };
  const ours = byTheSame(reading, desk);
  if (ours) return { ...matter, reading: talkedOf(ours, desk, deciding) };
  const redated = dayOfBefore(reading, desk);
  if (redated) return { ...matter, reading: redated };
  const doubted = orBefore(reading, desk);
  if (doubted) return { ...matter, reading: doubted };
  if (reading.kind === "unclear") {
    const only = onlyStanding(reading, desk);
    const whole =
      only.reading &&
      (soldAtAsking(only.reading, desk) ??
        refundedInFull(only.reading, desk) ??
        soldUnnamed(only.reading, desk) ??
        talkedOf(only.reading, desk, deciding));
    return { ...matter, ...only, ...(whole ? { reading: whole } : {}) };
  }
  const byBooks =
    soldAtAsking(reading, desk) ??
    refundedInFull(reading, desk) ??
    refundedTo(reading, desk) ??
    soldUnnamed(reading, desk) ??
    tradedIt(reading, desk) ??
    nextOfTwo(reading, desk, verbOf(reading.kind)) ??
    nextSpokenOf(reading, desk, verbOf(reading.kind));
  const given =
    byBooks ??
    talkedOf(withoutPart(reading, desk) ?? withAllItsParts(reading, desk) ?? reading, desk, deciding);
  return given === reading ? matter : { ...matter, reading: given };
}

/** A payment, or an amount for what is on hold or for nothing named, that is just the rest of a held piece's price. */
function fetchedAlone(reading: Reading, desk: Looking): Fetched | null {
  if (reading.kind === "collect") return fetchedOf(reading, desk);
  // "desk gone, another 100 from him"
  const isBeside =
    reading.kind === "sell" &&
    !reading.whole &&
    (BESIDE_DEPOSIT.test(reading.text) || BROUGHT_AND_PAID.test(reading.text));
  if (reading.kind !== "buy" && !isBeside) return null;
  if (reading.kind === "buy" && !reading.missing?.includes("pieces")) return restOfHeld(reading, desk);
  const fetched = fetchedOf(reading, desk);
  return fetched?.confirmed.includes("whole price") ? fetched : null;
}

/** "ann paid 25": what she still owes, where that can be. */
function paidOf(reading: Reading, desk: Looking): Reading | null {
  const sold = reading.kind === "unclear" ? reading.could?.find(({ kind }) => kind === "sell") : reading;
  const came = sold && owedCameIn(sold, desk);
  if (came) return came;
  if (reading.kind !== "unclear" || !reading.byBooks) return collectedOf(reading, desk);
  const paid = (reading.could ?? []).flatMap((each) => collectedOf(each, desk) ?? []);
  return paid[0] ?? null;
}

function onlyStanding(
  reading: ReadingOf<"unclear">,
  desk: Looking,
): Partial<Pick<Matter, "reading" | "confirmed">> {
  const { could = [], left = [] } = reading;
  const [only] = could;
  const isPassed =
    left.length > 0 &&
    could.length === 1 &&
    left.every((word) => desk.talk?.passed?.has(`${only!.kind} ${word}`));
  const counted = countedOf(could, desk);
  if (counted) return { reading: counted, confirmed: [] };
  // "nell picked it up": the name is known by the deposit.
  if (only && isNumbered(only, desk)) return { reading: only, confirmed: [] };
  const byBooks = reading.byBooks || isHolder(left, could, desk) || isPastBuyer(left, could, desk);
  if (!byBooks && !isPassed && !desk.talk?.replied) return {};
  const standing = standingOf(could, desk, deciding, byBooks);
  const [first, ...others] = standing;
  if (!first || !isNewWork(reading, first.reading, desk, deciding)) return {};
  // "lamp to 22" of a lamp that is listed: its new price.
  const isPriced =
    reading.byBooks === true &&
    standing.every((each) => PRICINGS.has(each.reading.kind)) &&
    (reading.why !== whyOf({ kind: "cutOrPrice" }) || isNewPrice(first.reading, desk, deciding));
  const isOnly =
    (byBooks || isPassed) && (others.length === 0 || isPriced || isDeposit(first.reading, desk, deciding));
  if (!isOnly && !isNextStep(reading, first.reading, desk)) return {};
  return { reading: first.reading, confirmed: first.confirmed };
}

/** Kinds of note that only say what is asked for a piece. */
const PRICINGS: ReadonlySet<Reading["kind"]> = new Set(["reprice", "list"]);

/** "sold 4 for 160" behind the purchase of six of a kind: four of them. */
function countedOf(could: readonly Reading[], desk: Looking): Reading | null {
  const { talk, books } = desk;
  const [first] = could;
  const [mention, ...others] = first ? mentionsOf(first) : [];
  const spoken = (talk?.replied ?? talk?.latest ?? []).map((number) => books.pieces.get(number)!);
  const isOfKind = spoken.every(({ name, gone }) => name === spoken[0]!.name && gone === null);
  const isCounted = mention?.it === true && (mention.count ?? 0) > 1 && others.length === 0;
  return isCounted && isOfKind && spoken.length >= mention.count! ? talkedOf(first!, desk, deciding) : null;
}

/** "bench 2 listed 45" where #2 is a bench: the number is the piece's, and not the price. */
function isNumbered(reading: Reading, desk: Looking): boolean {
  const mentions = mentionsOf(reading);
  const isSaid = mentions.some(({ number, name }) => number !== undefined && name !== undefined);
  return isSaid && !reading.text.includes("#") && decideWhole(reading, desk).kind === "record";
}

/** "armoire 180" in reply to its message: the likeliest by the books, where that is a listing of a piece not listed. */
function isNextStep({ left }: ReadingOf<"unclear">, first: Reading, { talk, books }: Looking): boolean {
  if (left || first.kind !== "list") return false;
  const replied = talk?.replied ?? [];
  return replied.length > 0 && replied.every((number) => books.pieces.get(number)?.listed === null);
}
