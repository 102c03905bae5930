import type { Books } from "../../books/books.ts";
import type { Fact } from "../../books/facts.ts";
import { statusOf } from "../../books/piece.ts";
import { listPriceOf } from "../../books/shares.ts";
import { isOfWhat } from "../../mending/meant.ts";
import { mendOfNewest, mendOfRestated } from "../../mending/newest.ts";
import { amountText, type Cents } from "../../money.ts";
import { HOURS_MAX } from "../../notes/mends/mended.ts";
import type { Again, Back, Mention, Reading } from "../../notes/reading.ts";
import { eitherOf } from "../../notes/unclear.ts";
import { type AnyGrammar, language } from "../../notes/verbs.ts";
import { SAME } from "../../notes/words/again.ts";
import { TELLS_ONE_MORE } from "../../notes/words/pieces.ts";
import { saysAny } from "../../notes/words/words.ts";
import type { GoesOn } from "../../verbs/verb.ts";
import { cannotBe, type Desk, type Looking } from "../decision.ts";
import { here } from "../pieces/fits.ts";
import { foundBy, matchMention } from "../pieces/match.ts";
import { nameWith } from "../pieces/mention-words.ts";
import { byNumbers, mentionsOf } from "../pieces/mentioned.ts";
import { talkedOf } from "../talk/talk.ts";
import { hereOf, soldAtAsking } from "../talk/unnamed.ts";
import { type Deciding, standingOf } from "./whole.ts";

/*
 * Messages that only go on from what stood before them ("same again", "now 200", "30 min on 2"): the new reading is
 * made of the old note, as its verb says, with what is said now in its place.
 */

/** The reading that a message is by what stood before it; null where nothing there fits. */
export function goneOn(reading: Reading, desk: Looking, deciding: Deciding): Reading | null {
  const { back, text, line } = reading;
  if (!back) return null;
  if ("mend" in back) return mendOfNewest(back.mend, desk);
  if ("restated" in back) return mendOfRestated(reading, desk);
  if ("prices" in back) return null;
  if ("could" in back) return ofSpoken(reading, back, desk, deciding);
  const { again } = back;
  const relisted = atOwnPrice(reading, desk.books);
  if (relisted) return relisted;
  const fact = meantAgain(again, desk);
  const fields = fact && onceMore(fact, again, desk.books, deciding);
  if (!fields) return null;
  const once = { ...fields, kind: fact.kind, text, line } as Reading;
  const { count = 1, each, to } = again;
  // "another lamp, same price" of two bought together: as much as both, or as each of them.
  const now = to.pieces?.reduce((sum, { count: many = 1 }) => sum + many, 0) ?? fact.pieces.length;
  if ("price" in once && once.price !== undefined && to.amount === undefined && now !== fact.pieces.length) {
    const share = { ...once, price: Math.round((once.price * now) / fact.pieces.length) } as Reading;
    return eitherOf([share, once], reading, "priceOfBoth");
  }
  if (again.how === "next") {
    // "plus 2 chairs, 10 each": so many as are told.
    const isCounted = each && to.pieces?.every(({ plural }) => !plural) && "price" in once;
    const next = isCounted && once.price !== undefined ? { ...once, price: once.price * now } : once;
    return (!each || isCounted) && isNext(next, desk, deciding) ? next : null;
  }
  if (count === 1 && !each) return once;
  if (!("price" in once) || once.price === undefined) return null;
  // "stools too, 25 each": how many, the books say.
  if (each && to.pieces?.some(({ plural }) => plural)) return { ...once, each: true };
  const times = { ...once, price: once.price * (each && to.pieces ? now : count) };
  if (each) return times;
  // "2 more at 30": in all, or of each.
  return eitherOf([once, times], reading, "priceOfBoth");
}

/** "listed the oak dresser again, same price": the one that it was listed at itself, whatever else was listed since. */
function atOwnPrice(reading: Reading, books: Books): Reading | null {
  if (reading.kind !== "list" || !reading.missing?.includes("price")) return null;
  const [mention, ...more] = mentionsOf(reading);
  const numbers = mention && more.length === 0 ? foundBy([mention], books, here) : null;
  const price = numbers && listPriceOf(numbers.map((number) => books.pieces.get(number)!));
  return price === null ? null : { ...reading, price, missing: [] };
}

/** "short one same but 60" behind a bookcase that was finished and listed: this one is finished as well. */
export function withFinish({ back, text, line }: Reading, on: Reading, { past, books }: Looking): Reading[] {
  const isSame =
    saysAny(text, SAME) &&
    back !== undefined &&
    "again" in back &&
    back.again.how !== "next" &&
    back.again.to.pieces;
  const listing = isSame && on.kind === "list" ? past?.newest(({ kind }) => kind === "list") : undefined;
  const finished = past?.newest(
    ({ kind, pieces }) => kind === "finish" && pieces.join() === listing?.pieces.join(),
  );
  const found = listing && finished && past!.isToday(finished) ? foundBy(mentionsOf(on), books, here) : null;
  const isOpen = found?.every((number) => books.pieces.get(number)!.finished === null);
  return isOpen ? [{ kind: "finish", pieces: byNumbers(found!), text, line }, on] : [on];
}

/** "posted them, 220 and 60": one note of each piece that was spoken of, in their order; null where these are not as many. */
export function pricedInOrder(
  { back }: Reading,
  desk: Looking,
  { decide, verbOf }: Deciding,
): Reading[] | null {
  if (!back || !("prices" in back)) return null;
  const { could, prices } = back;
  const { replied, several, latest } = desk.talk ?? {};
  const spoken = [replied, several, latest].find((each) => each?.length === prices.length);
  for (const each of could) {
    const upon = verbOf(each.kind)?.upon;
    const next = hereOf(desk.books)
      .filter((piece) => statusOf(piece) === upon)
      .map(({ number }) => number);
    const pieces = spoken ?? (next.length === prices.length ? next : []);
    const { missing: _, follows: __, one: ___, ...rest } = each as Reading & { missing?: []; one?: true };
    const notes = pieces.map(
      (number, at) => ({ ...rest, pieces: byNumbers([number]), price: prices[at]! }) as Reading,
    );
    if (notes.length > 0 && notes.every((note) => decide(note, desk).kind === "record")) return notes;
  }
  return null;
}

/** "and a mirror for 10" behind a purchase, "and the other one 140" behind a listing: where it can be one more of these. */
function isNext(once: Reading, desk: Looking, deciding: Deciding): boolean {
  const isOurs = mentionsOf(once).some(
    (mention) => mention.other || matchMention(mention, desk.books, here, new Set()).kind !== "none",
  );
  return (
    "price" in once &&
    (once.kind === "buy"
      ? !isOurs || TELLS_ONE_MORE.test(once.text)
      : isOurs && !cannotBe(deciding.decide(talkedOf(once, desk, deciding), desk)))
  );
}

/** The newest note of today of the kind and thing said; where neither is, the newest, with nothing asked since. */
function meantAgain({ how, kinds, what, to }: Again, { past }: Pick<Desk, "past">): Fact | undefined {
  const isSaid = (fact: Fact): boolean =>
    (!kinds || kinds.some((kind) => kind === fact.kind)) && isOfWhat(fact, what);
  if (how === "again" && (kinds ?? what)) return past?.newest((fact) => past.isToday(fact) && isSaid(fact));
  // What is left of several, or the same of another, may be told days later.
  const isLeft = to.pieces?.some(({ other, place }) => other === true || place !== undefined) === true;
  const mayBeOld = (isLeft && how === "more") || (how === "again" && to.pieces !== undefined);
  const last = past?.before(how === "too") ?? (mayBeOld ? past?.newest() : undefined);
  // What was asked about since, and not recorded, is what "same again" means.
  return last && past?.touched() === last.root && isSaid(last) ? last : undefined;
}

/** What the books leave of what may be said of a piece: the likeliest, or each on a button. */
function ofSpoken(
  reading: Reading,
  { could, isEither }: Extract<Back, { isEither: boolean }>,
  desk: Looking,
  deciding: Deciding,
): Reading | null {
  const isOfEach = could.some(({ each }) => each);
  const together = isOfEach ? desk.talk?.several : undefined;
  const spoken = desk.talk?.replied ?? together ?? desk.talk?.latest ?? [];
  const pieces = spoken.map((number) => desk.books.pieces.get(number)!);
  const isHere =
    pieces.length > (isOfEach ? 1 : 0) &&
    pieces.every(({ name, gone }) => gone === null && (isOfEach || name === pieces[0]!.name));
  if (!isHere && could.some(({ follows }) => follows)) return null;
  const priced = could.map((each) => soldAtAsking(each, desk) ?? each);
  const standing = standingOf(priced, desk, deciding).map(({ reading }) => reading);
  const whole = standing.filter((each) => deciding.decide(each, desk).kind === "record");
  if (!isEither) return whole[0] ?? null;
  return whole.length < 2 ? null : eitherOf(whole, reading);
}

/** The fields of the new note; null where its kind does not go on so, or something was said that it has no place for. */
function onceMore(
  fact: Fact,
  { how, count, byThem, to: { pieces: named, date, ...values } }: Again,
  books: Books,
  { verbOf }: Deciding,
): object | null {
  if (fact.kind === "sent") return null;
  const goesOn = verbOf(fact.kind)?.goesOn as GoesOn | undefined;
  const grammar = language().grammars.get(fact.kind);
  if (!goesOn || !grammar || (named && fact.pieces.length === 0)) return null;
  const measure = measureOf(grammar);
  const said = saidIn(grammar, measure, values, fact, named !== undefined);
  const many = how === "again" ? fact.pieces.length : (count ?? 1);
  const asThen = goesOn.pieces === "same" ? byNumbers(fact.pieces) : alike(fact.pieces, many, books);
  const pieces = named ?? asThen;
  if (!said || !pieces) return null;
  const whom = byThem && "buyer" in fact.data ? fact.data.buyer : undefined;
  const beside = {
    ...said,
    ...(pieces.length > 0 ? { pieces } : {}),
    ...(date ? { date } : {}),
    ...(whom === undefined ? {} : { buyer: whom }),
  };
  const { method, ...carried } = stripped(goesOn.carries(fact as never));
  if (measure !== null && measure in said) return { ...carried, ...beside };
  if (how === "more") return null;
  if (how !== "too" || measure === null) return { ...carried, ...(method ? { method } : {}), ...beside };
  const { [measure]: _, ...rest } = carried;
  return { ...rest, ...beside, missing: [measure] };
}

const stripped = (fields: object): Record<string, unknown> =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));

/** The field of the one amount, time or distance of a kind. */
const measureOf = ({ main, needs }: AnyGrammar): string | null =>
  main ?? (needs.includes("minutes") ? "minutes" : null);

/** What was said, by the fields of the kind; null where it has none for it. */
function saidIn(
  { fields }: AnyGrammar,
  measure: string | null,
  { amount, ...others }: Again["to"],
  fact: Fact,
  isNamed: boolean,
): Record<string, unknown> | null {
  if (Object.keys(others).some((name) => !fields.some((field) => field.name === name))) return null;
  if (amount === undefined) return others;
  const isOfPieces = measure !== "minutes" && measure !== "miles";
  if (measure === null || !(isOfPieces || isNamed)) return null;
  const of = fact.kind === "work" ? inUnitOf(fact.data.minutes, amount) : amount;
  // "and the last one, 15" behind 20 minutes: as many of these.
  return { ...others, [measure]: measure === "miles" ? amountText(amount).replace(/\.?0+$/, "") : of };
}

/** A bare number in the unit in which the time before it was told. */
const inUnitOf = (minutes: number, amount: Cents): number =>
  Math.round((amount / 100) * (minutes % 60 === 0 && amount < HOURS_MAX ? 60 : 1));

/** So many of the same name; null where they go by several. */
function alike(numbers: readonly number[], count: number, books: Books): Mention[] | null {
  const [first, ...others] = numbers.map((number) => books.pieces.get(number)!);
  if (!first) return [];
  if (others.some((piece) => nameWith(piece) !== nameWith(first))) return null;
  const { name, traits } = first;
  return [{ name, count, ...(traits.length > 0 ? { traits: [...traits] } : {}) }];
}
