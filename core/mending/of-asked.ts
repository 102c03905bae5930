import type { Books, Piece } from "../books/books.ts";
import type { Fact, FactKind } from "../books/facts.ts";
import { newPiece } from "../books/made.ts";
import { verbOf } from "../decide/decide.ts";
import type { Ask, Looking, Matter } from "../decide/decision.ts";
import { mainAmountOf, withMainAmount } from "../decide/main-amount.ts";
import { mentionsOf } from "../decide/pieces/mentioned.ts";
import { orBefore } from "../decide/unclear/or-before.ts";
import { type Cents, show } from "../money.ts";
import { readBareMoney } from "../notes/bare.ts";
import { mayCorrect } from "../notes/misnoted/misnoted.ts";
import type { Mention, Reading, ReadingOf } from "../notes/reading.ts";
import { anyOf, couldOf } from "../notes/unclear.ts";
import { canMend, type MendTo } from "./fields.ts";
import { factsMeant, isMeant, ofItsOwn } from "./meant.ts";
import { asMeasure, valuesOf } from "./newest.ts";
import type { Past } from "./past.ts";

/*
 * A note that is still asked about is corrected like a recorded one: it stands among the facts as whatever it may be,
 * and what a message makes of that is made of the note. Nothing here is folded or written.
 */

/** A note that waits for its answer, as far as a correction needs it. */
export interface Waiting {
  matter: Pick<Matter, "reading" | "said">;
  ask: Ask;
  /** Its message. */
  note: number;
}

/** A desk on which what is asked about stands as well, and what stands of it there. */
export interface AsIfRecorded {
  desk: Looking & { past: Past };
  facts: readonly Fact[];
}

/** The first of the numbers that nothing recorded has. */
const FIRST = 2 ** 52;

/** Whether a message may correct what is asked about: whole notes of other kinds, in words that correct nothing, do not. */
export function mayCorrectAsked(text: string, readings: readonly Reading[], asked: Waiting): boolean {
  const isOther = (reading: Reading): boolean =>
    isRecorded(reading) &&
    !reading.missing &&
    !reading.back &&
    readingsOf(asked).every(({ kind }) => kind !== reading.kind);
  return mayCorrect(text) || readings.length === 0 || !readings.every(isOther);
}

/** The desk as it would be, were what is asked about on the books; null where it is no note. */
export function asIfRecorded(asked: Waiting, desk: Looking & { past: Past }): AsIfRecorded | null {
  const { books, past } = desk;
  const before = books.facts.reduce(
    (place, fact) => (fact.note <= asked.note ? Math.max(place, fact.place) : place),
    0,
  );
  const pieces = new Map(books.pieces);
  const facts = readingsOf(asked).flatMap((reading, index): Fact[] => {
    if (!isRecorded(reading)) return [];
    const at = { id: FIRST + index, place: before + 0.5 - index / 100, author: past.person };
    const fact = factOf(reading, asked, at, pieces);
    return fact ? [fact] : [];
  });
  if (facts.length === 0) return null;
  const all: Books = { ...books, facts: [...books.facts, ...facts], pieces };
  const own = (fact: Fact | undefined) => fact === undefined || fact.note <= asked.note;
  const newest = (fits: (fact: Fact) => boolean = () => true) => {
    const recorded = past.newest(fits);
    return (own(recorded) ? facts.find(fits) : undefined) ?? recorded;
  };
  const isOf = (fact: Fact) => facts.includes(fact);
  const asIf: Past = {
    ...past,
    newest,
    before: (isLast) => (own(past.newest()) ? facts[0] : past.before(isLast)),
    isToday: (fact) => isOf(fact) || past.isToday(fact),
    echo: (fact) => (isOf(fact) ? asked.matter.reading.text : past.echo(fact)),
  };
  return { desk: { ...desk, books: all, past: asIf }, facts };
}

/** What the note may be, likeliest first. */
function readingsOf({ matter, ask }: Waiting): Reading[] {
  const { reading } = matter;
  if (reading.kind !== "unclear") return [reading];
  const offered = ask.choices.flatMap(({ effect }) =>
    effect.kind === "instead" ? effect.readings.slice(0, 1) : [],
  );
  return offered.length > 0 ? offered : [...couldOf(reading)];
}

/** Of a kind that records a fact: no correction, no question. */
const isRecorded = ({ kind }: Reading): boolean => verbOf(kind)?.books !== undefined;

/** A reading written out as the fact that it would be, on all pieces that its names may mean. */
function factOf(
  reading: Reading,
  { matter, note }: Waiting,
  at: Pick<Fact, "id" | "place" | "author">,
  pieces: Map<number, Piece>,
): Fact | null {
  const { kind, text: _, line: __, date, by, missing: ___, ...data } = reading as ReadingOf<"sell">;
  const mentions = mentionsOf(reading);
  const numbers = mentions.flatMap((mention) => {
    const known = [...pieces.values()].filter((piece) => isMeant(mention, piece)).map(({ number }) => number);
    const { count = 1 } = mention;
    if (reading.kind !== "buy" && known.length > 0) return count > 1 ? known.slice(0, count) : known;
    if (mention.it) return known;
    const number = FIRST + pieces.size;
    const { name = "piece", traits = [] } = mention;
    pieces.set(
      number,
      newPiece({ numbers: [number], made: [{ name, traits }], day: matter.said, cost: 0 }, 0, 0),
    );
    return [number];
  });
  const main = mainAmountOf(reading);
  const amount = main === null ? undefined : (data as unknown as Record<string, Cents | undefined>)[main];
  const fact = {
    ...{ ...at, kind, day: date ?? matter.said, note, root: note },
    pieces: numbers,
    ...(typeof amount === "number" ? { amount } : {}),
    ...(by === undefined ? {} : { by }),
    data: { ...data, ...(reading.kind === "buy" ? { made: madeOf(mentions) } : {}) },
  };
  return fact as unknown as Fact;
}

const madeOf = (mentions: readonly Mention[]) =>
  mentions.map(({ name = "piece", traits = [] }) => ({ name, traits }));

/** What a message makes of what is asked about: changed, or taken back; null where it is about something else. */
export function madeOfAsked(
  readings: readonly Reading[],
  { desk, facts }: AsIfRecorded,
): MendTo | "removed" | null {
  const [said, ...others] = readings;
  if (!said || others.length > 0) return null;
  const isOf = (fact: Fact | undefined) => fact !== undefined && facts.includes(fact);
  if (said.kind === "fix") {
    const { amount, minutes, miles, date } = said;
    const to = valuesOf({ amount, minutes, miles, date });
    const isAbout = said.fact === undefined && isOf(desk.past.newest());
    // "no, 8" behind "bought lamp 5, sold dresser 190", which dresser being asked: which amount?
    const isPart = desk.books.facts.some((fact) => fact.root === facts[0]!.root && !isOf(fact));
    return isAbout && !said.each && !isPart && facts.some(({ kind }) => canMend(kind, to)) ? to : null;
  }
  // "actually just list it at 150" behind a sale that is asked about is a note of its own.
  if (isRecorded(said) && facts.every(({ kind }) => kind !== said.kind)) return null;
  const doubted = said.kind === "mend" ? said : (orBefore(said, desk) ?? said);
  const [mend, ...mends] = anyOf(doubted).filter((each) => each.kind === "mend");
  // "wait, the bench": of which of several notes it is, is asked where one of them stands already.
  const isStanding = ({ of }: ReadingOf<"mend">) => facts.every(({ id }) => id !== of?.fact);
  if (!mend || (mend.to?.pieces && mends.some(isStanding))) return null;
  const { of = {}, to = {}, removed } = asMeasure(mend, { ...desk });
  const meant = factsMeant(of, { ...desk, confirmed: [] }, desk.past);
  const able = removed ? meant : meant.filter(({ kind }) => canMend(kind, to));
  const [first] = to.amount === undefined ? able : ofItsOwn(able, of);
  if (!isOf(first)) return null;
  return removed ? "removed" : to;
}

/** A note that is asked about with what a correction makes of it; null where it cannot be made of it. */
export function withChange(reading: Reading, to: MendTo): Reading | null {
  if (reading.kind !== "unclear") return changedIn(reading, to);
  const could = couldOf(reading).flatMap((each) => changedIn(each, to) ?? []);
  const text = textWith(reading, to);
  const isToldAnew = text !== reading.text;
  if (could.length === 0) return isToldAnew ? { ...reading, text } : null;
  return { ...reading, text, could, ...(isToldAnew ? {} : { isCorrected: true as const }) };
}

function changedIn(reading: Reading, to: MendTo): Reading | null {
  const { amount, more, name, traits, pieces, also, ...fields } = to;
  if (more !== undefined || !isRecorded(reading) || !canMend(reading.kind as FactKind, to)) return null;
  if (amount !== undefined && mainAmountOf(reading) === null) return null;
  const old = mentionsOf(reading);
  const now = piecesNow(old, to);
  if (now === null) return null;
  const given = [...Object.keys(fields), ...(now === old ? [] : ["pieces"])];
  const missing = reading.missing?.filter((field) => !given.includes(field));
  const { follows: _, ...rest } = reading;
  const changed = {
    ...(now === old ? reading : { ...rest, pieces: now }),
    ...fields,
    ...(missing ? { missing } : {}),
    text: textWith(reading, to),
  } as Reading;
  return amount === undefined ? changed : ({ ...changed, ...withMainAmount(changed, amount) } as Reading);
}

/** The pieces that it is of now; null where that cannot be told. */
function piecesNow(
  old: readonly Mention[],
  { name, traits, pieces, also }: MendTo,
): readonly Mention[] | null {
  const [first, ...others] = old;
  if (also) return [...old, also];
  if (name !== undefined || traits !== undefined) {
    if (!first || others.length > 0) return null;
    return [{ ...first, ...(name === undefined ? {} : { name }), ...(traits ? { traits } : {}) }];
  }
  if (pieces === undefined) return old;
  if (pieces.length === 0) return null;
  const [counted, ...more] = pieces;
  if (!counted!.it) return pieces;
  // "three of them" tells of a count, and not which.
  return first && others.length === 0 && more.length === 0 && counted!.count
    ? [{ ...first, count: counted!.count }]
    : null;
}

const FIGURES = /\$?\d[\d,]*(?:\.\d+)?/g;

/** The words with the new amount in the place of the old one; as they are where that is not to be seen. */
function textWith(reading: Reading, { amount }: MendTo): string {
  const { text } = reading;
  const figures = text.match(FIGURES) ?? [];
  const [only, ...others] = figures.length > 1 ? figures.filter((said) => isOld(said, reading)) : figures;
  if (amount === undefined || only === undefined || others.length > 0) return text;
  return text.replace(only, show(amount).replace(/\.00$/, "").replaceAll(",", ""));
}

function isOld(said: string, reading: Reading): boolean {
  const of = couldOf(reading)[0] ?? reading;
  const main = mainAmountOf(of);
  return main !== null && (of as unknown as Record<string, unknown>)[main] === readBareMoney(said);
}
