import type { Books, Piece } from "./books/books.ts";
import type { Fact } from "./books/facts.ts";
import type { Day } from "./calendar.ts";
import { daysBetween } from "./calendar.ts";
import type { Doing, Hazard, Trigger } from "./cautions/hazard.ts";
import { HAZARDS } from "./cautions/hazards.ts";
import { plainWords } from "./cautions/plain.ts";
import type { Cents } from "./money.ts";
import { percentOf, show } from "./money.ts";

type NotedPiece = Pick<Piece, "number" | "name" | "traits" | "listPrice">;

/** What cautions look at: a fact just recorded, or a note as typed, whatever was made of it. */
export interface Noted {
  /** The words, as typed. */
  text: string;
  /** The message that it belongs to: its first revision's row id. */
  root: number;
  /** The kind of the fact; of a note as typed the kinds it was read as. */
  kinds: readonly string[];
  /** The words may say what was done, where the kinds do not: for a note as typed. */
  asTyped?: true;
  pieces: readonly NotedPiece[];
  /** The category of money spent. */
  spentOn?: string;
  /** Cents of a buyer's deposit kept when the sale fell through. */
  kept?: Cents;
}

/**
 * Cautions by name, and on which day: "crib#7" for piece 7, "crib@12" for message 12 while its piece is not known,
 * "lifting" for the ledger.
 */
export type Named = Readonly<Record<string, Day>>;

/** What is remembered; each is asked for only where it matters, as the first grows with the ledger. */
export interface Memory {
  /** What was said. */
  given(): Named;
  /** What waits for a later note of its piece. */
  waiting(): Named;
}

/** One line to say, and what is to be remembered from now on. */
export interface Caution {
  hazard: string;
  line: string;
}

/** What the notes of a message call for, as far as they were looked at. */
export interface Calls {
  called: Called[];
  /** The pieces that stay: what waits for one of these may be said now. */
  numbers: Set<number>;
}

interface Called {
  hazard: Pick<Hazard, "id" | "line" | "of" | "weight">;
  /** Numbers of the pieces it is about; none: the piece is not known, or it is no piece's. */
  pieces: readonly number[];
  root: number;
  /** Called for by the words of a note alone. */
  asTyped: boolean;
}

/** Days until a caution of the trade comes again: the next season has other buyers and other cans. */
const YEAR_DAYS = 365;
/** A message whose pieces are not known after this many days is no longer remembered. */
const MESSAGE_DAYS = 60;
/** What nobody will use again harms nobody. */
const THROWN_AWAY = /\b(?:trash\w*|dump\w*|scrap\w*|toss\w*|junk\w*|burn\w*)\b/;

/** Looks at notes of a message, behind those looked at `before`: a long one is gone through in parts. */
export function callsOf(noted: readonly Noted[], before?: Calls): Calls {
  const { called, numbers } = before ?? { called: [], numbers: new Set() };
  // What is to be done with a piece before it goes is no use once it is gone.
  const staying = noted.filter(({ kinds }) => !kinds.some((kind) => kind === "sell" || kind === "retire"));
  for (const { pieces } of staying) for (const { number } of pieces) numbers.add(number);
  addCalled(called, noted);
  return { called, numbers };
}

/**
 * At most one caution for a message: the worst that is due. Those of its pieces that were called for and not said
 * wait for a later note of the piece. What is remembered from now on comes back only where it has changed.
 */
export function cautionFor(
  { noted, day, before }: { noted: readonly Noted[]; day: Day; before?: Calls },
  memory: Memory,
): { caution: Caution | null; given?: Named; waiting?: Named } {
  const { called, numbers } = callsOf(noted, before);
  const waiting = numbers.size > 0 ? memory.waiting() : {};
  const all = [...called, ...waitingFor(numbers, waiting)];
  if (all.length === 0) return { caution: null };
  const given = memory.given();
  const due = all.flatMap((each) => dueOf(each, day, given));
  const [worst] = due.sort((a, b) => a.hazard.weight - b.hazard.weight);
  const said = saidNow(worst, called, given);
  return {
    caution: worst ? { hazard: worst.hazard.id, line: worst.hazard.line } : null,
    ...(said.length > 0 ? { given: withSaid(given, said, day) } : {}),
    ...waitingAfter(memory, { due, said, day }),
  };
}

function withSaid(given: Named, said: readonly string[], day: Day): Named {
  const isKept = ([name, on]: [string, Day]) => !name.includes("@") || daysBetween(on, day) <= MESSAGE_DAYS;
  const kept = Object.entries(given).filter(isKept);
  return Object.fromEntries([...kept, ...said.map((name) => [name, day] as const)]);
}

function waitingAfter(
  memory: Memory,
  { due, said, day }: { due: readonly Called[]; said: readonly string[]; day: Day },
): { waiting?: Named } {
  const left = due.flatMap(pieceNames).filter((name) => !said.includes(name));
  const before = memory.waiting();
  if (left.length === 0 && !said.some((name) => before[name] !== undefined)) return {};
  const kept = Object.entries(before).filter(
    ([name, on]) => !said.includes(name) && daysBetween(on, day) <= YEAR_DAYS,
  );
  return { waiting: Object.fromEntries([...kept, ...left.map((name) => [name, day] as const)]) };
}

/** Adds every hazard that the notes call for, each once, with all its pieces. */
function addCalled(called: Called[], noted: readonly Noted[]): void {
  const worded = noted.map((each) => ({
    each,
    words: plainWords(each.text),
    named: each.pieces.map(namedAs),
  }));
  const hazards = possibleIn(
    worded.flatMap(({ words, named }) => [words, ...named.map(([, piece]) => piece)]),
  );
  for (const { each, words, named } of worded) {
    const deposit = keptTooMuch(each);
    if (deposit) called.push(deposit);
    if (each.kinds.every((kind) => kind === "retire") && THROWN_AWAY.test(words)) continue;
    for (const hazard of hazards) {
      const pieces = piecesOf(hazard, { words, named, noted: each });
      if (!pieces) continue;
      const same = called.find((other) => other.hazard.id === hazard.id);
      // A note as typed says again what its facts said; only a fact brings more pieces.
      if (!same) called.push({ hazard, pieces, root: each.root, asTyped: each.asTyped === true });
      else if (!each.asTyped) {
        same.pieces = [...new Set([...same.pieces, ...pieces])];
        same.asTyped = false;
      }
    }
  }
}

const namedAs = ({ number, traits, name }: NotedPiece): [number, string] => [
  number,
  plainWords([...traits, name].join(" ")),
];

/**
 * The hazards of which something may hold in some texts. All of them are looked through at once, a line each, beyond
 * which no pattern looks: most patterns fit nowhere in three hundred lines, and need not be tried with each.
 */
function possibleIn(texts: readonly string[]): Hazard[] {
  const lines = [...new Set(texts)].join("\n");
  const isPossible = ({ words, piece }: Trigger) =>
    (!piece || piece.test(lines)) && (!words || words.test(lines));
  return HAZARDS.filter(({ when }) => when.some(isPossible));
}

/** The pieces that a hazard is about in a note; null where nothing calls for it. `named`: the words of each piece. */
function piecesOf(
  { when, of }: Hazard,
  { words, named, noted }: { words: string; named: readonly [number, string][]; noted: Noted },
): number[] | null {
  const isFor = (piece: string) => when.some((trigger) => holds(trigger, { words, piece, noted }));
  const own = named.filter(([, piece]) => isFor(piece));
  if (own.length > 0) return of === "piece" ? own.map(([number]) => number) : [];
  // The words may describe the one piece better than its name on the books does.
  if (named.length > 1 || !isFor(words)) return null;
  return of === "piece" ? named.map(([number]) => number) : [];
}

function holds(
  { words, piece, doing, spentOn }: Trigger,
  on: { words: string; piece: string; noted: Noted },
): boolean {
  // The patterns last: most notes need none of them.
  if (spentOn && on.noted.spentOn !== spentOn) return false;
  if (doing && !isDone(doing, on)) return false;
  return (!piece || piece.test(on.piece)) && (!words || words.test(on.words));
}

/** Where a note as typed was not understood, its words say what is being done. */
function isDone(
  { kinds, words }: Doing,
  { words: said, noted: { kinds: read, asTyped } }: { words: string; noted: Noted },
): boolean {
  const isUnread = asTyped === true && read.every((kind) => kind === "unclear");
  return isUnread ? words.test(said) : read.some((kind) => (kinds as readonly string[]).includes(kind));
}

/** What earlier notes of these pieces called for and nobody has said yet. */
function waitingFor(numbers: ReadonlySet<number>, waiting: Named): Called[] {
  return Object.keys(waiting).flatMap((name) => {
    const [, id, number] = /^(.*)#(\d+)$/.exec(name) ?? [];
    const hazard = HAZARDS.find((each) => each.id === id);
    if (!hazard || !numbers.has(Number(number))) return [];
    return [{ hazard, pieces: [Number(number)], root: 0, asTyped: false }];
  });
}

/** What is left of a call once everything said before is taken off; empty where nothing is. */
function dueOf(called: Called, day: Day, before: Named): Called[] {
  const { hazard, pieces, root, asTyped } = called;
  const last = before[hazard.id];
  const isYearOld = last === undefined || daysBetween(last, day) >= YEAR_DAYS;
  if (hazard.of === "trade") return isYearOld ? [{ ...called, pieces: [] }] : [];
  if (before[messageName(called)] !== undefined && root > 0) return [];
  // A piece not known yet: once a day, as the next message may well be about the same one.
  if (pieces.length === 0) return (asTyped ? last !== day : isYearOld) ? [called] : [];
  const left = pieces.filter((number) => before[`${hazard.id}#${number}`] === undefined);
  return left.length > 0 ? [{ ...called, pieces: left }] : [];
}

function messageName({ hazard, root }: Called): string {
  return `${hazard.id}@${root}`;
}

function pieceNames({ hazard, pieces }: Called): string[] {
  return pieces.map((number) => `${hazard.id}#${number}`);
}

/** The names under which this message's cautions are remembered as said. */
function saidNow(worst: Called | undefined, called: readonly Called[], before: Named): string[] {
  // Said when the message was asked about: its pieces are known only now.
  const known = called.filter((each) => before[messageName(each)] !== undefined).flatMap(pieceNames);
  if (!worst) return known;
  if (worst.pieces.length > 0) return [...known, ...pieceNames(worst)];
  return [...known, worst.hazard.id, ...(worst.hazard.of === "piece" ? [messageName(worst)] : [])];
}

/** The most that the default sales law lets a seller keep of a deposit (UCC 2-718(2)(b)): cents. */
export function keptDepositMax(price: Cents): Cents {
  return Math.min(percentOf("20", price), 50_000);
}

/** A buyer's money kept beyond that: the price is what the pieces are listed at. */
function keptTooMuch({ kept = 0, pieces, root }: Noted): Called | null {
  if (kept === 0) return null;
  const price = pieces.reduce((sum, piece) => sum + (piece.listPrice ?? 0), 0);
  const most = keptDepositMax(price);
  if (price === 0 || kept <= most) return null;
  const line = `Unless agreed, a US seller may keep at most ${show(most)} of it; check local rules.`;
  return {
    hazard: { id: "kept deposit", of: "piece", weight: 1, line },
    pieces: pieces.map(({ number }) => number),
    root,
    asTyped: false,
  };
}

/** What cautions look at, from a fact on the books and the words that recorded it. */
export function notedOf(fact: Fact, { text, books }: { text: string; books: Books }): Noted {
  const kept = (books.postings.get(fact.id) ?? [])
    .filter(({ account }) => account === "deposits kept")
    .reduce((sum, { cents }) => sum - cents, 0);
  return {
    text,
    root: fact.root,
    kinds: [fact.kind],
    pieces: fact.pieces.flatMap((number) => books.pieces.get(number) ?? []),
    ...(fact.kind === "spend" ? { spentOn: fact.data.category } : {}),
    ...(kept > 0 ? { kept } : {}),
  };
}
