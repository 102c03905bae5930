import { heldLine } from "../answers/held.ts";
import { dueAtPickup, goingPrice } from "../books/agreed.ts";
import type { Piece } from "../books/books.ts";
import { amountText, show } from "../money.ts";
import type { Answered } from "./answered.ts";
import type { Desk } from "./desk.ts";
import { narrowed } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import { type PickupsQuestion, toCome } from "./pickups.ts";
import { piecesOf } from "./read-pieces.ts";

/** "Has carol paid", "did carol take it": asked of somebody for whom pieces are on hold, which are all that they have of us. */
export interface HoldingQuestion {
  kind: "holding";
  pieces: readonly Readonly<Piece>[];
  asks: "paid" | "came" | "stays" | "left" | "to come";
}

const PAID = "pay|pays|paid|paying|paid me|pay me|settle|settled|settled up|settle up|give me|gave me";
const CAME =
  "pick|picked|picks|take|took|taken|takes|get|got|gotten|fetch|fetched|collect|collected|come|came|buy|bought|show|shown";
const LEFT = "back|backed|backs|flake|flaked|flakes|bail|bailed|cancel|canceled|cancelled|drop|dropped";
const BESIDE =
  "still|yet|ever|me|up|in|full|off|for|it|them|the|rest|balance|remainder|difference|other|half|all|over|by|out|and|on|money|what|owes|owed|already|this|thing|to|her|his|their|deposit|piece";
/** One of the words, and beside them none but these. */
const OF = (words: string): RegExp =>
  new RegExp(`^(?:(?:${BESIDE}) )*(?:${words})(?: (?:${words}|${BESIDE}))*$`);

/** What is asked of them, by how it opens and what is left of the words; the first that fits. */
const ASKED: readonly (readonly [opens: RegExp, words: RegExp, asks: HoldingQuestion["asks"]])[] = [
  [/^(?:did|has|have|is)$/, OF(PAID), "paid"],
  [/^(?:did|has|have)$/, OF(CAME), "came"],
  [/^(?:did|has|have|is)$/, OF(`${LEFT}|backing|flaking|bailing|canceling|cancelling|dropping`), "left"],
  [/^(?:is|does|do)$/, OF("coming|taking|want|wants|buying|picking|getting|here|interested"), "stays"],
  [
    /^(?:what|how|whats)$/,
    OF("how|does|do|much|more|have|left|pay|is|need|needs|has|whats|s|due"),
    "to come",
  ],
  [/^(?:balance|rest|remainder|remaining)$/, OF("due|left|on|of"), "to come"],
];

/** A question of what stands between us and somebody for whom a piece is on hold; null where it is none. */
export function readHolding(parts: Parts, desk: Desk): HoldingQuestion | PickupsQuestion | null {
  const { items, marks, amounts, limits, orders, groups, periods, said } = parts;
  if (!/^(?:did|has|have|is|does|do|what|how|whats) |\b(?:balance|rest|remainder)\b/.test(said)) return null;
  if ([amounts, limits, orders, groups, periods.slice(1)].some((list) => list.length > 0)) return null;
  const places = new Set(items.map(({ at }) => at));
  const words = marks
    .filter(({ period }, at) => !places.has(at) && !period)
    .map(({ text, typed, corrected }) => (corrected ? typed : text));
  const [, opener = "", rest = "on"] = /^(?:the |my )?(\S+)(?: (.+))?$/.exec(words.join(" ")) ?? [];
  const asks = ASKED.find(([opens, fits]) => opens.test(opener) && fits.test(rest))?.[2];
  if (!asks || items.length === 0 || (periods.length > 0 && asks !== "stays")) return null;
  const found = narrowed(parts, "profit", desk);
  if ("kind" in found) return null;
  const filters = found.map(({ filter }) => filter);
  const isOfBuyer = filters.some(({ dimension, not }) => dimension === "buyer" && !not);
  const pieces = piecesOf(desk, filters);
  const areHeld = pieces.length > 0 && pieces.every(({ hold, gone }) => hold !== null && gone === null);
  // "How much is left to pay on the hutch"
  const isOfDeposit = asks === "to come" && pieces.every(({ deposit }) => deposit > 0);
  if (!(isOfBuyer || isOfDeposit) || !areHeld) return null;
  const [day] = periods;
  return day
    ? { kind: "pickups", pieces, period: toCome(day.period, desk.today), yesNo: true, isNarrowed: true }
    : { kind: "holding", pieces, asks };
}

/** Yes or no, and how it stands: the deposit, how long it is held, and what is to come. */
export function answerHolding(desk: Desk, { pieces, asks }: HoldingQuestion): Answered {
  const due = pieces.map((piece) => (goingPrice(desk.books, [piece]) ?? piece.deposit) - piece.deposit);
  const toCome = due.reduce((sum, each) => sum + each, 0);
  const isPaid = pieces.every((piece) => goingPrice(desk.books, [piece]) !== null) && toCome <= 0;
  const isYes = asks === "stays" || (asks === "paid" && isPaid);
  const says = asks === "paid" ? (isPaid ? "All of it" : "Not all of it yet") : HEADS[asks];
  const lines = pieces.map((piece, at) => {
    // What was agreed on, the line tells itself.
    const isTold = due[at]! <= 0 || dueAtPickup([piece]) !== null;
    return `${heldLine(piece, desk.today)}${isTold ? "" : `, ${show(due[at]!)} to come`}`;
  });
  const isSum = asks === "to come";
  return {
    understood: true,
    value: isSum ? amountText(toCome) : isYes ? "yes" : "no",
    period: null,
    text: [isSum ? `${says}: ${show(toCome)}` : `${isYes ? "Yes" : "No"}. ${says}`, ...lines].join("\n"),
    of: { pieces: pieces.map(({ number }) => number) },
  };
}

const HEADS = {
  came: "Not yet",
  left: "Still on hold",
  stays: "Still on hold",
  "to come": "To come",
} as const;
