import { counted } from "../answers/wording.ts";
import type { Piece } from "../books/books.ts";
import { costOf, pieceLabel } from "../books/piece.ts";
import { amountText, type Cents, show } from "../money.ts";
import type { Answered } from "./answered.ts";
import type { Desk } from "./desk.ts";
import { leftOver } from "./left-over.ts";
import { narrowed, type Refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import { piecesOf } from "./read-pieces.ts";
import type { Features } from "./rule.ts";
import type { Cue } from "./words/cues.ts";
import { cut } from "./words-of-answers.ts";

/** "How much would i make on the hutch at 150": the profit of pieces at a price, their list prices where none is said. */
export interface WouldMake {
  kind: "would make";
  pieces: readonly Readonly<Piece>[];
  /** For all of them together. */
  price: Cents | null;
  /** The price is what leaves so much: "what price makes 100 on the bench". */
  isGoal: boolean;
}

const TAKES: readonly Cue[] = [
  ...(["money", "which", "have", "earn", "net", "ends", "unsold", "takes", "got"] as const),
  ...(["asking", "listed", "fullPrice", "sold", "soldFor", "sale", "gone", "soldFor"] as const),
];

/** A question of what pieces that are still here would make; null where it is none. */
export function readWouldMake(parts: Parts, f: Features, desk: Desk): WouldMake | Refusal | null {
  const { said, amounts, orders, groups, periods, limits, besideAt } = parts;
  const isSupposed = /\b(?:would|will|could|if)\b/.test(said) && !/\bshould\b/.test(said);
  const isAtPrice =
    (f.has("asking", "fullPrice") || / at list$/.test(said)) &&
    / at\b/.test(said) &&
    !/\b(?:did|was|were|made)\b/.test(said);
  const isGoal = said.startsWith("what price makes ");
  if (!f.piece || !(isGoal || (f.has("earn", "net") && (isSupposed || isAtPrice)))) return null;
  if (f.loan || f.has("suppose", "payoff", "average", "median", "hourly", "howMany")) return null;
  const others = [orders, groups, periods, limits, besideAt, amounts.slice(1)];
  if (others.some((list) => list.length > 0)) return null;
  const found = narrowed(parts, "profit", desk);
  if ("kind" in found) return found;
  const ifs = parts.marks.flatMap(({ text }, at) => (/^(?:if|when|once)$/.test(text) ? [at] : []));
  const fault = leftOver(parts, isGoal ? [...TAKES, "price"] : TAKES, {
    used: new Set([...ifs, ...amounts.map(({ at }) => at)]),
  });
  if (fault) return fault;
  const all = piecesOf(
    desk,
    found.map(({ filter }) => filter),
  );
  const pieces = all.filter(({ gone }) => !gone);
  if (pieces.length === 0 || (isGoal && pieces.length > 1)) return null;
  const price = amounts[0]?.cents ?? null;
  return { kind: "would make", pieces, isGoal, price: isGoal ? price! + costOf(pieces[0]!) : price };
}

/** The profit at that price, or at the list prices of those that have one. */
export function answerWouldMake({ pieces, price, isGoal }: WouldMake): Answered {
  const known = pieces.filter(({ listPrice }) => price !== null || listPrice !== null);
  const cost = known.reduce((sum, piece) => sum + costOf(piece), 0);
  const prices = price ?? known.reduce((sum, { listPrice }) => sum + (listPrice ?? 0), 0);
  const [only] = pieces;
  const names = pieces.length === 1 ? pieceLabel(only!) : counted(pieces.length, "piece");
  const at = pieces.length > 1 && price === null ? "list price" : show(prices);
  const rows = pieces.map((piece) => ({
    label: pieceLabel(piece),
    number: piece.number,
    value: piece.listPrice === null ? null : amountText(piece.listPrice - costOf(piece)),
  }));
  const lines = pieces.map((piece) =>
    piece.listPrice === null
      ? `${pieceLabel(piece)}: not listed, cost ${show(costOf(piece))} so far`
      : `${pieceLabel(piece)}: ${show(piece.listPrice - costOf(piece))} at ${show(piece.listPrice)}`,
  );
  const isOfEach = pieces.length > 1 && price === null;
  const head = isGoal
    ? `${names}: sell at ${show(prices)} for ${show(prices - cost)} profit (cost ${show(cost)} so far)`
    : `Profit at ${at}, ${names}: ${show(prices - cost)} (cost ${show(cost)})`;
  return {
    understood: true,
    measure: isGoal ? "price" : "profit",
    value: known.length === 0 ? null : amountText(isGoal ? prices : prices - cost),
    ...(isOfEach ? { rows } : {}),
    period: null,
    text: known.length === 0 ? cut(lines).join("\n") : [head, ...(isOfEach ? cut(lines) : [])].join("\n"),
    of: { pieces: pieces.map(({ number }) => number) },
  };
}
