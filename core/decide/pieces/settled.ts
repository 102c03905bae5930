import type { Piece } from "../../books/books.ts";
import { labelOf, numbersLabel } from "../../books/label.ts";
import { isSetName } from "../../notes/mentions/furniture.ts";
import { pluralOf } from "../../notes/mentions/plural.ts";
import type { Mention, Reading } from "../../notes/reading.ts";
import { type Ask, type Choice, type Decision, type Desk, NEVER_MIND } from "../decision.ts";
import { areAwaited } from "./awaited.ts";
import { anotherOne, buyFirst, meaning, type PieceNeed, type WithPieces, withoutPiece } from "./choices.ts";
import { alikeClasses, type Fit, type Match, matchMention } from "./match.ts";
import { aPiece, isOne, nameWith, wordsOf } from "./mention-words.ts";
import { describe, tooFew, unfit } from "./unfit.ts";

type Settled = { kind: "settled"; pieces: number[] };

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
    if (mayBeAwaited(mention, desk))
      return { kind: "ask", ask: hereOrAwaited(reading, index, match.pieces, desk) };
    for (const number of match.pieces) taken.add(number);
  }
  return { kind: "settled", pieces: [...taken] };
}

/** "sanded the desk" right behind the purchase of another desk, of which it is asked what that cost. */
function mayBeAwaited(mention: Mention, { talk }: Desk): boolean {
  const { replied, awaited = [] } = talk ?? {};
  const isNamed = mention.number === undefined && mention.name !== undefined;
  return isNamed && !replied && areAwaited([mention], awaited, { isSurely: true });
}

function hereOrAwaited(reading: WithPieces, index: number, pieces: number[], desk: Desk): Ask {
  const mention = reading.pieces![index]!;
  const all = [...reading.pieces!];
  all[index] = { ...mention, awaited: true };
  const [it, label] = isOne(mention) ? ["the one", "The new one"] : ["those", "The new ones"];
  const known = meaning(reading, index, pieces, labelOf(desk.books, pieces));
  const coming: Choice = {
    label,
    words: ["new", "the new one", "the new ones", "that one", "new one"],
    effect: { kind: "settle", change: { pieces: all } as Partial<Reading> },
  };
  const prompt = `Is that ${known.label}, or ${it} I still asked about?`;
  return { prompt, wants: "pieces", mention: index, choices: [coming, known, NEVER_MIND] };
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
  if (mention.allBut) return { kind: "refuse", why: "I find nothing here besides that. Name the pieces." };
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

/** "the other one", "the white one" of nothing that is known: whatever is here, where that is little. */
function whichAtAll(reading: WithPieces, index: number, { books }: Desk, need: PieceNeed): Ask {
  const here = [...books.pieces.values()].filter((piece) => piece.gone === null && need.fit.allows(piece));
  // One of those that are alike stands for all of them; of several it is rather meant than of a piece alone.
  const alike = alikeClasses(here).sort((a, b) => b.length - a.length);
  const isOne = reading.pieces![index]!.count === 1 && alike.length <= OFFERED_MAX;
  const choices = isOne
    ? alike.map(([piece]) => meaning(reading, index, [piece!.number], labelOf(books, [piece!.number])))
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
