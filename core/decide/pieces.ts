import type { Piece, Status } from "../books/books.ts";
import { labelOf, numbersLabel } from "../books/label.ts";
import { statusOf } from "../books/piece.ts";
import { goneWords } from "../books/problem.ts";
import { owedByBuyers } from "../books/shares.ts";
import { showDay } from "../calendar.ts";
import { type Cents, show } from "../money.ts";
import { isSetName } from "../notes/furniture.ts";
import { pluralOf } from "../notes/plural.ts";
import type { Mention, Reading } from "../notes/reading.ts";
import { type Ask, type Choice, type Decision, type Desk, NEVER_MIND } from "./decision.ts";
import { isSeveral } from "./echo.ts";
import { type Fit, type Match, matchMention } from "./match.ts";
import { byNumbers } from "./mentioned.ts";

/** What a verb needs of its pieces. */
interface PieceNeed {
  fit: Fit;
  /** As in "Which dresser did you sell?" */
  question: string;
  /** What to offer for a piece that is not on the books: to add it first, or to record without one. */
  unknown: "add" | "add or leave out" | "refuse";
  /** Of a piece that is here and does not fit, as in "#4 desk is listed, not on hold". */
  lacks?: string;
}

type Settled = { kind: "settled"; pieces: number[] };

/** A reading whose pieces may have to be found. */
type WithPieces = Extract<Reading, { pieces?: Mention[] }>;

const CANDIDATES_SHOWN_MAX = 8;
/** Pieces offered where the words tell none of them. */
const OFFERED_MAX = 4;

/** The pieces that a reading means, in the order said, or what has to be asked first. */
export function settlePieces(reading: WithPieces, desk: Desk, need: PieceNeed): Settled | Decision {
  const taken = new Set<number>();
  const mentions = reading.pieces ?? [];
  for (const [index, mention] of mentions.entries()) {
    const match =
      repliedTo(mention, desk, need.fit, taken) ?? matchMention(mention, desk.books, need.fit, taken);
    if (match.kind !== "found") return ask(reading, index, match, desk, need);
    for (const number of match.pieces) taken.add(number);
  }
  return { kind: "settled", pieces: [...taken] };
}

/** The piece of the message replied to, where the words are its own: "the chest" in reply to one of two chests. */
function repliedTo(
  mention: Mention,
  { books, talk }: Desk,
  fit: Fit,
  taken: ReadonlySet<number>,
): Match | null {
  const { replied } = talk ?? {};
  if (!replied || mention.number !== undefined) return null;
  const allows = (piece: Readonly<Piece>) => replied.includes(piece.number) && fit.allows(piece);
  const match = matchMention(mention, books, { ...fit, allows }, taken);
  if (match.kind === "found") return match;
  const [group, ...others] = match.kind === "several" && match.trust === "likely" ? match.groups : [];
  return group && others.length === 0 ? { kind: "found", pieces: group } : null;
}

function ask(
  reading: WithPieces,
  index: number,
  match: Exclude<Match, { kind: "found" }>,
  desk: Desk,
  need: PieceNeed,
): Decision {
  const mention = reading.pieces![index]!;
  switch (match.kind) {
    case "no such number":
      return { kind: "refuse", why: `There is no #${match.number} on the books. "pieces" lists them.` };
    case "at odds":
      return { kind: "ask", ask: numberOrName(reading, index, match, desk) };
    case "several":
      return { kind: "ask", ask: whichOne(reading, index, match.groups, match.trust === "sure", desk, need) };
    case "too few":
      return { kind: "ask", ask: tooFew(reading, index, match.pieces, desk) };
    case "unfit":
      return unfit(reading, index, match.pieces, desk, need);
    case "none":
      if (mention.name === undefined) return { kind: "ask", ask: whichAtAll(reading, index, desk, need) };
      if (need.unknown === "refuse")
        return { kind: "refuse", why: `No ${wordsOf(mention)} on the books fits that. "pieces" lists them.` };
      return { kind: "ask", ask: addFirst(reading, index, desk, need.unknown === "add or leave out") };
  }
}

/** "fabric 30 for it" of nothing that is known. */
export function whichOrNone(reading: Reading): Ask {
  const { follows: _, ...rest } = reading;
  const prompt = "Which piece was it for? Say its name or number.";
  return { prompt, wants: "pieces", choices: [withoutPiece(rest as WithPieces), NEVER_MIND] };
}

function withoutPiece(reading: WithPieces): Choice {
  return {
    label: reading.kind === "drive" ? "No piece: just the miles" : "No piece: shop cost",
    words: ["shop", "no piece"],
    effect: { kind: "instead", readings: [{ ...reading, pieces: [] }] },
  };
}

/** "the other one", "the white one" of nothing that is known: whatever is here, where that is little. */
function whichAtAll(reading: WithPieces, index: number, { books }: Desk, need: PieceNeed): Ask {
  const here = [...books.pieces.values()].filter((piece) => piece.gone === null && need.fit.allows(piece));
  const isOne = reading.pieces![index]!.count === 1 && here.length <= OFFERED_MAX;
  const choices = isOne
    ? here.map(({ number }) => meaning(reading, index, [number], labelOf(books, [number])))
    : [];
  const prompt = "Which piece? Say its name or number.";
  return { prompt, wants: "pieces", mention: index, choices: [...choices, NEVER_MIND], misfit: true };
}

function whichOne(
  reading: WithPieces,
  index: number,
  groups: number[][],
  sure: boolean,
  desk: Desk,
  need: PieceNeed,
): Ask {
  const mention = reading.pieces![index]!;
  const part = wholeAndPart(groups, desk);
  if (part) return allOrPart(reading, index, part);
  const shown = groups.slice(0, CANDIDATES_SHOWN_MAX);
  const choices = shown.map((group) => meaning(reading, index, group, describe(group, desk)));
  const more = groups.length > shown.length ? ` ${groups.length - shown.length} more: say the number.` : "";
  const other: Choice[] =
    sure || need.unknown === "refuse" ? [] : [anotherOne(reading, index, desk, "Another: add it")];
  return {
    prompt: `Which ${wordsOf(mention)} ${need.question}?${more}`,
    wants: "pieces",
    mention: index,
    choices: [...choices, ...other, NEVER_MIND],
  };
}

/** Number and name disagree: a button for each, the named pieces first. */
function numberOrName(
  reading: WithPieces,
  index: number,
  { pieces, named }: { pieces: number[]; named: number[] },
  desk: Desk,
): Ask {
  const mention = reading.pieces![index]!;
  const candidates = [...named.slice(0, CANDIDATES_SHOWN_MAX), ...pieces];
  const choices = candidates.map((number) => meaning(reading, index, [number], describe([number], desk)));
  const numbered = desk.books.pieces.get(mention.number!);
  const is = numbered
    ? `#${mention.number} is ${aPiece(nameWith(numbered))}`
    : `There is no #${mention.number}`;
  return {
    misfit: true,
    prompt: `${is}, not ${aPiece(nameWith(mention))}. Which is it?`,
    wants: "pieces",
    mention: index,
    choices: [...choices, NEVER_MIND],
  };
}

function aPiece(name: string): string {
  return `${/^[aeiou]/.test(name) ? "an" : "a"} ${name}`;
}

/** The candidates where they are all the pieces of a name, alike in their words, or only some of these. */
function wholeAndPart(groups: number[][], { books }: Desk): { whole: number[]; part: number[] } | null {
  const [part, whole, ...more] = [...groups].sort((a, b) => a.length - b.length);
  if (!part || !whole || more.length > 0 || part.length === whole.length) return null;
  if (new Set(whole.map((number) => nameWith(books.pieces.get(number)!))).size > 1) return null;
  return part.every((number) => whole.includes(number)) ? { whole, part } : null;
}

function allOrPart(
  reading: WithPieces,
  index: number,
  { whole, part }: { whole: number[]; part: number[] },
): Ask {
  const mention = reading.pieces![index]!;
  const words = isSetName(mention.name ?? "") ? nameWith(mention) : pluralOf(nameWith(mention));
  const choice = (numbers: number[], label: string, said: string[]): Choice => ({
    ...meaning(reading, index, numbers, `${label}: ${numbersLabel(numbers)}`),
    words: [String(numbers.length), ...said],
  });
  return {
    prompt: `All ${whole.length} of the ${words}, or only ${part.length}?`,
    wants: "pieces",
    mention: index,
    choices: [
      choice(whole, `All ${whole.length}`, ["all", "all of it", "all of them", `all ${whole.length}`]),
      choice(part, `Only ${part.length}`, [`only ${part.length}`, `just ${part.length}`]),
      NEVER_MIND,
    ],
  };
}

function tooFew(reading: WithPieces, index: number, pieces: number[], desk: Desk): Ask {
  const mention = reading.pieces![index]!;
  const said = `${mention.count} ${pluralOf(nameWith(mention))}`;
  return {
    misfit: true,
    prompt: `You said ${said}; the books have only ${labelOf(desk.books, pieces)}.`,
    wants: "choice",
    choices: [
      { ...meaning(reading, index, pieces, `Only ${labelOf(desk.books, pieces)}`), words: ["yes", "only"] },
      { ...NEVER_MIND, words: ["no"] },
    ],
  };
}

/** All pieces of that name are gone (or not so far): by number refused, by name asked. */
function unfit(reading: WithPieces, index: number, pieces: number[], desk: Desk, need: PieceNeed): Decision {
  const mention = reading.pieces![index]!;
  const what = describeUnfit(pieces, desk, need);
  if (mention.number !== undefined || need.unknown === "refuse") {
    const isGone = pieces.every((number) => desk.books.pieces.get(number)!.gone);
    return { kind: "refuse", why: isGone ? `${what} Undo that first if it is wrong.` : what };
  }
  const [same, another, add] = isOne(mention)
    ? ["The same one", "another", `Another ${mention.name}: add it`]
    : ["The same ones", "others", `Other ${pluralOf(mention.name ?? "piece")}: add them`];
  const skip: Choice = {
    label: `${same}: skip`,
    words: ["the same", "same", "same one", "the same one", "the same ones"],
    effect: { kind: "drop" },
  };
  const choices = [...restOwed(reading, pieces, desk), anotherOne(reading, index, desk, add), skip];
  const prompt = `${what} ${same}, or ${another}?`;
  return { kind: "ask", ask: { prompt, wants: "choice", choices, misfit: true } };
}

/** "got 40 for the desk" where that much is still owed on it: the rest of its price, rather than another sale. */
function restOwed(reading: WithPieces, pieces: readonly number[], { books }: Desk): Choice[] {
  if (reading.kind !== "sell" || reading.price === undefined) return [];
  const owing = pieces.filter((number) => books.pieces.get(number)!.owed > 0);
  const owed = owedByBuyers(owing.map((number) => books.pieces.get(number)!));
  if (owing.length === 0 || owed < reading.price) return [];
  const { price, method, date, text, line } = reading;
  const rest: Reading = {
    kind: "collect",
    amount: price,
    pieces: byNumbers(owing),
    ...(method ? { method } : {}),
    ...(date ? { date } : {}),
    text,
    line,
  };
  const label = `${show(price)} of what is owed on ${labelOf(books, owing)}`;
  return [{ label, words: ["the rest", "rest", "owed"], effect: { kind: "instead", readings: [rest] } }];
}

function anotherOne(reading: WithPieces, index: number, desk: Desk, label: string): Choice {
  const readings = buyFirst(reading, index, desk);
  const words = [
    "another",
    "another one",
    "others",
    "add it",
    "add them",
    "add",
    `another ${reading.pieces![index]!.name}`,
  ];
  return { label, words, effect: { kind: "instead", readings } };
}

/** Why the verb fits none of them: what became of each, or what it lacks. Those of the same fate are told as one. */
function describeUnfit(pieces: readonly number[], desk: Desk, need: PieceNeed): string {
  const { books } = desk;
  const fates = new Map<string, number[]>();
  for (const number of pieces) {
    const fate = fateOf(books.pieces.get(number)!, desk, need, "one");
    fates.set(fate, [...(fates.get(fate) ?? []), number]);
  }
  if (fates.size > UNFIT_TOLD_MAX) {
    const states = new Set(pieces.map((number) => STATES[statusOf(books.pieces.get(number)!)]));
    return `All ${labelOf(books, pieces)} are ${[...states].join(" or ")}.`;
  }
  const told = [...fates.values()].map((numbers) => {
    const names = labelOf(books, numbers);
    const count = isSeveral(names) ? "several" : "one";
    return `${names} ${fateOf(books.pieces.get(numbers[0]!)!, desk, need, count)}.`;
  });
  return told.join(" ");
}

function fateOf(
  piece: Readonly<Piece>,
  { today }: Desk,
  { lacks }: PieceNeed,
  count: "one" | "several",
): string {
  const { gone, goneOn } = piece;
  if (!gone)
    return `${count === "one" ? "is" : "are"} ${STATES[statusOf(piece)]}${lacks ? `, ${lacks}` : ""}`;
  const day = goneOn === today ? "today" : `on ${showDay(goneOn!, today)}`;
  return `${goneWords(gone, count === "one" ? "was" : "were")} ${day}`;
}

const UNFIT_TOLD_MAX = 3;

const STATES: Record<Status, string> = {
  bought: "bought",
  started: "started",
  finished: "finished",
  listed: "listed",
  held: "on hold",
  sold: "sold",
  kept: "kept for yourself",
  given: "given away",
  scrapped: "scrapped",
};

/** Nothing of that name on the books: asks its cost, adds it, and then goes on with the note. */
function addFirst(reading: WithPieces, index: number, desk: Desk, mayLeaveOut: boolean): Ask {
  const mention = reading.pieces![index]!;
  const [buy, ...rest] = buyFirst(reading, index, desk) as [Reading, ...Reading[]];
  const free = { ...buy, price: 0, missing: [] } as Reading;
  // No piece at all, and none that was spoken of before.
  const out = mayLeaveOut ? [withoutPiece(reading)] : [];
  return {
    misfit: true,
    prompt: `No ${wordsOf(mention)} on the books. What did ${isOne(mention) ? "it" : "they"} cost? I add ${isOne(mention) ? "it" : "them"} first.`,
    wants: "price",
    choices: [
      {
        label: "It was free",
        words: ["free", "nothing"],
        effect: { kind: "instead", readings: [free, ...rest] },
      },
      ...out,
      NEVER_MIND,
    ],
    first: [buy, ...rest],
  };
}

/** The purchase that a note takes for granted, on the note's own day, and the note itself after it. */
function buyFirst(reading: WithPieces, index: number, desk: Desk): Reading[] {
  const mention = reading.pieces![index]!;
  const bought: Mention = { ...mention, count: mention.count ?? 1 };
  delete bought.plural;
  const buy: Reading = {
    kind: "buy",
    pieces: [bought],
    date: reading.date ?? desk.today,
    missing: mention.plural ? ["count", "price"] : ["price"],
    text: reading.text,
    line: reading.line,
  };
  if (mention.plural) delete bought.count;
  // Alone, the note goes on with the very piece just added; beside others, its name now finds the new one.
  const after = reading.pieces!.length === 1 ? { ...reading, follows: true as const } : reading;
  return [buy, { ...after, date: reading.date ?? desk.today }];
}

function meaning(reading: WithPieces, index: number, numbers: readonly number[], label: string): Choice {
  return {
    label,
    effect: { kind: "settle", change: changeOf(reading, withNumbers(reading, index, numbers)) },
  };
}

function changeOf(before: WithPieces, after: WithPieces): Partial<Reading> {
  const price =
    "price" in after && after.price !== (before as { price?: Cents }).price ? { price: after.price } : {};
  return { pieces: after.pieces!, ...price } as Partial<Reading>;
}

/** The reading with one of its mentions settled to these pieces. */
function withNumbers<R extends WithPieces>(reading: R, index: number, numbers: readonly number[]): R {
  const mentions = byNumbers(numbers);
  const pieces = [...(reading.pieces ?? [])];
  pieces.splice(index, 1, ...mentions);
  // A price of each waited for their count.
  const price = reading.pieces?.[index]?.plural ? wholePrice(reading, numbers) : undefined;
  return { ...reading, pieces, ...(price === undefined ? {} : { price }) };
}

/**
 * What the pieces come to together, in cents: a price said of each is that of one until the books have counted
 * them. Undefined where no price was said.
 */
export function wholePrice(
  reading: { pieces?: readonly Mention[]; price?: Cents; each?: true },
  pieces: readonly number[],
): Cents | undefined {
  const isCounted = !reading.each || !reading.pieces?.some(({ plural }) => plural);
  return reading.price === undefined || isCounted ? reading.price : reading.price * pieces.length;
}

/** What tells candidates apart on a button: number, words, and the state or price that they share. */
function describe(group: readonly number[], desk: Desk): string {
  const states = new Set(group.map((number) => stateOf(desk.books.pieces.get(number)!)));
  const [state, ...others] = states;
  const each = group.length > 1 && state?.startsWith("listed ") ? " each" : "";
  const label = labelOf(desk.books, group);
  return others.length > 0 ? label : `${label}, ${state}${each}`;
}

function stateOf(piece: Readonly<Piece>): string {
  const status = statusOf(piece);
  if (status !== "listed" || piece.listPrice === null) return STATES[status];
  return `listed ${show(piece.listPrice).replace(/\.00$/, "")}`;
}

/** A mention as said: "2 stools", "#4 desk", "small dresser". */
export function mentionLabel(mention: Mention): string {
  const { count = 1, number, name } = mention;
  if (number !== undefined) return name ? `#${number} ${nameWith(mention)}` : `#${number}`;
  return count > 1 ? `${count} ${pluralOf(nameWith(mention))}` : wordsOf(mention);
}

function wordsOf(mention: Mention): string {
  const words = nameWith(mention);
  return isOne(mention) ? words : pluralOf(words);
}

/** "tall white dresser": the traits, then the name, or the number where there is no name. */
export function nameWith({ traits = [], name, number }: Readonly<Piece> | Mention): string {
  return [...traits, name ?? (number === undefined ? "one" : `#${number}`)].join(" ");
}

function isOne(mention: Mention): boolean {
  return !mention.plural && (mention.count ?? 1) === 1;
}
