import type { Books } from "../../core/books/books.ts";
import type { Fact } from "../../core/books/facts.ts";
import { dayOfInstant, type Instant } from "../../core/calendar.ts";
import { type Offer, readingsOn, type Talk } from "../../core/decide/decision.ts";
import { awaitedIn } from "../../core/decide/pieces/awaited.ts";
import { ever, here } from "../../core/decide/pieces/fits.ts";
import { foundBy } from "../../core/decide/pieces/match.ts";
import { mentionsOf } from "../../core/decide/pieces/mentioned.ts";
import { mentionsSaid } from "../../core/notes/bare.ts";
import type { Mention, Reading } from "../../core/notes/reading.ts";
import { couldOf } from "../../core/notes/unclear.ts";
import type { Question } from "../../db/questions.ts";
import type { Turn } from "./turn.ts";

/** A word passed over this often beside a verb is no longer asked about. */
const PASSED_TIMES = 2;

/** What was spoken of before this note: the message replied to, this person's last piece, words learnt. */
export function talkOf(turn: Turn, replyRoot: number | undefined): Talk {
  const replied = replyRoot === undefined ? undefined : piecesOfMessage(turn, replyRoot);
  const last = lastOfPieces(turn);
  const waiting = newestWaiting(turn, last);
  const awaited = waiting ? awaitedIn(waiting) : [];
  const latest = awaited.length > 0 ? undefined : latestPieces(turn, last, waiting);
  return {
    ...(replied ? { replied } : {}),
    ...(awaited.length > 0 ? { awaited } : {}),
    ...(latest ? { latest } : {}),
    // Looked for only where a note speaks of several.
    get several() {
      return latest && severalWith(turn, latest);
    },
    get run() {
      return latest && runOf(turn, latest);
    },
    // Read out of the questions only where a deal asks for it.
    get offers() {
      return offersOf(turn);
    },
    passed: new Set(wordsPassed(turn)),
  };
}

/** What was offered for pieces, or told of them in a note that waits, and is neither taken nor turned down yet: to whomever it was told. */
const offersOf = ({ ledger }: Turn): Offer[] =>
  ledger.questions
    .everyOpen()
    .flatMap(({ ask, matter }) => ask.offer ?? toldIn([matter.reading, ...readingsOn(ask)], ledger.books))
    .reverse();

/** The first price that readings tell of pieces that are here, of a sale or a hold. */
function toldIn(readings: readonly Reading[], books: Books): Offer[] {
  for (const reading of readings) {
    const price =
      reading.kind === "sell" ? reading.price : reading.kind === "hold" ? reading.agreed : undefined;
    const pieces = price === undefined ? null : foundBy(mentionsOf(reading), books, here);
    if (price !== undefined && pieces) return [{ pieces, price, isTold: true }];
  }
  return [];
}

/** The pieces of a message, where it is about the same ones throughout. */
function piecesOfMessage(turn: Turn, root: number): number[] | undefined {
  const facts = turn.ledger.standingFactsOf(root).filter(({ pieces }) => pieces.length > 0);
  const asked = turn.ledger.settings.get("askedOf")?.[turn.person];
  const [first, ...others] = facts.map(({ pieces }) => pieces);
  if (!first) return asked?.note === root ? asked.pieces : undefined;
  return others.every((pieces) => pieces.join() === first.join()) ? first : undefined;
}

/** What this person recorded of pieces last, and the note of today that was asked about some. */
interface LastOfPieces {
  fact: Fact | undefined;
  asked: { note: number; pieces: number[] } | undefined;
}

function lastOfPieces(turn: Turn): LastOfPieces {
  const fact = newestFact(turn, ({ pieces }) => pieces.length > 0);
  const asked = turn.ledger.settings.get("askedOf")?.[turn.person];
  return { fact, asked: asked?.day === turn.today ? asked : undefined };
}

/**
 * The pieces of this person's last recorded note or question, where that was today. Where a newer note of other pieces
 * still waits, those: "it" is hardly what was spoken of before.
 */
function latestPieces(
  turn: Turn,
  { fact, asked }: LastOfPieces,
  waiting: Question | undefined,
): number[] | undefined {
  const named = waiting ? mentionsIn(waiting.matter.reading) : [];
  if (named.length > 0) return piecesNamed(named, turn);
  if (asked && asked.note > (fact?.note ?? 0)) return asked.pieces;
  if (!fact) return undefined;
  return isOfToday(turn, fact) ? fact.pieces : undefined;
}

/** The note that was told today, since anything was recorded or asked of a piece, and waits for an answer. */
function newestWaiting(turn: Turn, { fact, asked }: LastOfPieces): Question | undefined {
  const { ledger, person } = turn;
  const since = Math.max(fact?.note ?? 0, asked?.note ?? 0);
  const open = ledger.questions.allOpen(person).filter((question) => spokenAt(question) > since);
  const [newest] = open.sort((a, b) => spokenAt(b) - spokenAt(a));
  return newest && isSaidToday(turn, ledger.note(spokenAt(newest))?.said ?? newest.asked)
    ? newest
    : undefined;
}

/** The last note that a question is about, or that waits behind it. */
const spokenAt = ({ note, matter }: Question): number =>
  Math.max(note, ...(matter.after ?? []).map(({ root }) => root));

/** Notes that tell the same one after the other are hardly more. */
const ALIKE_MAX = 12;

/**
 * "bought a desk 30 and a lamp 5", "desk is done" and "lamp is done": what "those" means behind notes that tell the same of
 * several pieces, in the order told.
 */
function severalWith(turn: Turn, latest: readonly number[]): number[] | undefined {
  const several = piecesOf(toldAlike(turn, latest, isOneRun));
  return several.length > latest.length ? several : undefined;
}

/** "table is done" and "all six chairs are done": what each of the notes was about that told the same one after the other. */
function runOf(turn: Turn, latest: readonly number[]): number[][] | undefined {
  const run = toldAlike(turn, latest, () => true).map(({ pieces }) => pieces);
  return run.length > 1 && new Set(run.flat()).size === run.flat().length ? run : undefined;
}

function toldAlike(
  turn: Turn,
  latest: readonly number[],
  goesOn: (fact: Fact, before: Fact) => boolean,
): Fact[] {
  const told: Fact[] = [];
  // The newest first, up to one of another kind or day.
  newestFact(turn, (fact) => {
    const [last] = told;
    const isOther = last
      ? fact.kind !== last.kind || told.length === ALIKE_MAX || !goesOn(last, fact)
      : fact.pieces.join() !== latest.join();
    if (isOther || fact.pieces.length === 0 || !isOfToday(turn, fact)) return true;
    told.unshift(fact);
    return false;
  });
  return told;
}

/** Of one message, or of a piece each: two lamps bought behind a desk are "them" by themselves, and no purchase goes on from another. */
const isOneRun = (fact: Fact, before: Fact): boolean =>
  fact.root === before.root ||
  (fact.kind !== "buy" && fact.pieces.length === 1 && before.pieces.length === 1);

/** The pieces that facts are about, each once. */
export const piecesOf = (facts: readonly { pieces: readonly number[] }[]): number[] => [
  ...new Set(facts.flatMap(({ pieces }) => pieces)),
];

/** The pieces that a reading names, or the likeliest that an unclear one may be. */
function mentionsIn(reading: Reading): Mention[] {
  const [first] = couldOf(reading);
  return mentionsOf(first ?? reading).filter(({ it }) => !it);
}

const piecesNamed = (mentions: readonly Mention[], { ledger }: Turn): number[] | undefined =>
  foundBy(mentions, ledger.books, ever) ?? undefined;

/** Whether a fact was noted today, whatever day it is of. */
export function isOfToday(turn: Turn, { note }: Fact): boolean {
  const said = turn.ledger.note(note)?.said;
  return said !== undefined && isSaidToday(turn, said);
}

const isSaidToday = (turn: Turn, said: Instant): boolean => dayOfInstant(said, turn.zone()) === turn.today;

/** What this person recorded last and still stands. */
export function newestFact(
  { ledger, person }: Turn,
  fits: (fact: Fact) => boolean = () => true,
): Fact | undefined {
  return ledger.newestFact((fact) => fact.author === person && fits(fact)) ?? undefined;
}

/** Keeps what a question was about, for an "it" after it. */
export function keepAsked({ ledger, person, note, today }: Turn, pieces: number[]): void {
  const { settings } = ledger;
  settings.set("askedOf", { ...settings.get("askedOf"), [person]: { note, day: today, pieces } });
}

/** "desk needs a knob" records nothing, and yet the desk is what is spoken of from now on. */
export function keepNamed(turn: Turn, text: string): void {
  const named = piecesNamed(mentionsSaid(text), turn);
  if (named?.length === 1) keepAsked(turn, named);
}

/** Counts words from no list that were passed over beside a verb. */
export function passOver({ ledger }: Turn, kind: string, words: readonly string[]): void {
  const counts = { ...ledger.settings.get("wordsPassed") };
  for (const word of words) counts[`${kind} ${word}`] = (counts[`${kind} ${word}`] ?? 0) + 1;
  ledger.settings.set("wordsPassed", counts);
}

/** The words learnt, each behind its verb: "sell zorp". */
export function wordsPassed({ ledger }: Turn): string[] {
  const counts = Object.entries(ledger.settings.get("wordsPassed") ?? {});
  return counts.filter(([, times]) => times >= PASSED_TIMES).map(([name]) => name);
}
