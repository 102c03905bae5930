import { counted } from "../answers/wording.ts";
import type { Piece } from "../books/books.ts";
import { pieceLabel } from "../books/piece.ts";
import { daysBetween } from "../calendar.ts";
import { showMinutes } from "../decide/echo.ts";
import type { Answered } from "./answered.ts";
import type { Desk } from "./desk.ts";
import { leftOver } from "./left-over.ts";
import { narrowed, type Refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import { piecesOf } from "./read-pieces.ts";
import type { Features } from "./rule.ts";
import { cut } from "./words-of-answers.ts";

/** "How long did the hutch take me": the hours that went into pieces, and the days until they were done. */
export interface TookQuestion {
  kind: "took";
  pieces: readonly Readonly<Piece>[];
}

/** A question of the work that pieces took; null where it is none. */
export function readTook(parts: Parts, f: Features, desk: Desk): TookQuestion | Refusal | null {
  const { said, amounts, limits, orders, groups, periods, besideAt } = parts;
  // "How long did the hutch take": hours of work, or the days until it was gone.
  const isOfWork = /\b(?:take|took) (?:me|us)\b(?! to\b)|\btake$/.test(said);
  if (!f.piece || !f.has("howLong") || !isOfWork || !/\bdid\b/.test(said)) return null;
  if ([amounts, limits, orders, groups, periods, besideAt].some((list) => list.length > 0)) return null;
  if (f.has("sold", "sale", "average", "median")) return null;
  const found = narrowed(parts, "minutes", desk);
  if ("kind" in found) return found;
  const fault = leftOver(parts, ["howLong", "takes", "took", "take", "minutes"]);
  if (fault) return fault;
  const pieces = piecesOf(
    desk,
    found.map(({ filter }) => filter),
  );
  return pieces.length === 0 ? null : { kind: "took", pieces };
}

/** Hours as logged, and days from the purchase until it was done and sold. */
export function answerTook({ pieces }: TookQuestion): Answered {
  const lines = pieces.map((piece) => {
    const { minutes, bought, finished, sold } = piece;
    const days = [
      finished ? `done in ${counted(daysBetween(bought, finished), "day")}` : null,
      sold ? `sold in ${counted(daysBetween(bought, sold), "day")}` : null,
    ].filter((part) => part !== null);
    const time = minutes > 0 ? `${showMinutes(minutes)} of work` : "no time logged";
    return `${pieceLabel(piece)}: ${[time, ...days].join(", ")}`;
  });
  const minutes = pieces.reduce((sum, piece) => sum + piece.minutes, 0);
  return {
    understood: true,
    measure: "minutes",
    value: minutes > 0 ? String(minutes) : null,
    ...(pieces.length > 1
      ? {
          rows: pieces.map((piece) => ({
            label: pieceLabel(piece),
            number: piece.number,
            value: String(piece.minutes),
          })),
        }
      : {}),
    period: null,
    text: [...(pieces.length > 1 ? [`Together ${showMinutes(minutes)}`] : []), ...cut(lines)].join("\n"),
    of: { pieces: pieces.map(({ number }) => number) },
  };
}
