import { counted } from "../answers/wording.ts";
import type { Piece } from "../books/books.ts";
import { pieceLabel } from "../books/piece.ts";
import { daysBetween } from "../calendar.ts";
import { show } from "../money.ts";
import type { Answered } from "./answered.ts";
import type { Desk } from "./desk.ts";
import { leftOver } from "./left-over.ts";
import { narrowed, type Refusal } from "./narrowing.ts";
import { historyFor, middleOf, TELLING_MIN } from "./own-history.ts";
import type { Parts } from "./parts.ts";
import { piecesOf } from "./read-pieces.ts";
import type { Features } from "./rule.ts";
import { cut, restOf } from "./words-of-answers.ts";

/** "Anything sitting too long": what is listed for longer than pieces here usually are. */
export interface SittingQuestion {
  kind: "sitting";
  pieces: readonly Readonly<Piece>[];
  yesNo: boolean;
}

/** A question of what does not sell; null where it is none. */
export function readSitting(parts: Parts, f: Features, desk: Desk): SittingQuestion | Refusal | null {
  const { amounts, limits, orders, groups, periods } = parts;
  if (!f.has("tooLong") || [amounts, limits, orders, groups, periods].some((list) => list.length > 0))
    return null;
  const found = narrowed(parts, "profit", desk);
  if ("kind" in found) return found;
  const fault = leftOver(parts, [
    ...(["tooLong", "which", "list", "have", "sat", "listed", "unsold", "daysListed", "asking"] as const),
  ]);
  if (fault) return fault;
  const pieces = piecesOf(
    desk,
    found.map(({ filter }) => filter),
  ).filter(({ gone, listed }) => !gone && listed !== null);
  return { kind: "sitting", pieces, yesNo: parts.yesNo };
}

/** Days where too few sales tell how long is usual. */
const USUAL_GUESSED = 30;

/** The longest listed first, with what they are held against. */
export function answerSitting(desk: Desk, { pieces, yesNo }: SittingQuestion): Answered {
  const days = historyFor(desk, null, []).sales.flatMap(({ daysListed }) => daysListed ?? []);
  const own = days.length >= TELLING_MIN ? middleOf(days) : null;
  const usual = own ?? USUAL_GUESSED;
  const since = (piece: Readonly<Piece>): number => daysBetween(piece.listed!, desk.today);
  const all = [...pieces].sort((a, b) => since(b) - since(a) || a.number - b.number);
  const long = all.filter((piece) => since(piece) > usual);
  const over = `over ${counted(usual, "day")} (${own === null ? "a guess, too few sales to tell" : "half of yours sold within that"})`;
  const lineOf = (piece: Readonly<Piece>): string =>
    `${pieceLabel(piece)}: ${counted(since(piece), "day")}${piece.listPrice === null ? "" : ` at ${show(piece.listPrice)}`}`;
  const lines = long.map(lineOf);
  const [longest] = all;
  const none = longest ? [`Longest: ${lineOf(longest)}`] : ["Nothing is listed."];
  const opens = yesNo ? (long.length > 0 ? "Yes. " : "No. ") : "";
  const head =
    long.length > 0 ? `Listed ${over}: ${counted(long.length, "piece")}` : `Nothing listed ${over}`;
  return {
    understood: true,
    measure: "days listed",
    value: yesNo ? (long.length > 0 ? "yes" : "no") : String(long.length),
    rows: long.map((piece) => ({
      label: pieceLabel(piece),
      number: piece.number,
      value: String(since(piece)),
    })),
    period: null,
    text: [`${opens}${head}`, ...(long.length > 0 ? cut(lines) : none)].join("\n"),
    ...restOf(lines),
    of: { pieces: long.slice(0, 1).map(({ number }) => number), isList: true },
  };
}
