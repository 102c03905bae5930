import { heldLine } from "../answers/held.ts";
import { heldPieces } from "../answers/stock.ts";
import { counted } from "../answers/wording.ts";
import type { Piece } from "../books/books.ts";
import { pieceLabel } from "../books/piece.ts";
import { addDays, type Day, daysBetween, showDay } from "../calendar.ts";
import type { Answered } from "./answered.ts";
import type { Desk } from "./desk.ts";
import { leftOver } from "./left-over.ts";
import { narrowed, type Refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import type { Period } from "./query.ts";
import { piecesOf } from "./read-pieces.ts";
import type { Features } from "./rule.ts";
import { nameOf } from "./titles.ts";
import { cut, restOf } from "./words-of-answers.ts";

/** "Who's coming this week": the pieces that wait for their buyers, by the day that was agreed on. */
export interface PickupsQuestion {
  kind: "pickups";
  pieces: readonly Readonly<Piece>[];
  period: Period | null;
  yesNo: boolean;
  isNarrowed: boolean;
}

/** A question of who still comes for a piece; null where it is none. */
export function readPickups(parts: Parts, f: Features, desk: Desk): PickupsQuestion | Refusal | null {
  const { amounts, limits, orders, groups, periods, said } = parts;
  if (!f.has("pickups")) return null;
  const parted = groups.filter((group) => group.parted);
  if ([amounts, limits, orders, parted, periods.slice(1)].some((list) => list.length > 0)) return null;
  const found = narrowed(parts, "profit", desk);
  if ("kind" in found) return found;
  const fault = leftOver(parts, ["pickups", "which", "list", "have", "when", "who", "held", "todo", "once"]);
  if (fault) return fault;
  const filters = found.map(({ filter }) => filter);
  const held = new Set(heldPieces(desk.books));
  const meant = filters.length > 0 ? piecesOf(desk, filters).filter((piece) => !piece.gone) : [...held];
  const tomorrow = addDays(desk.today, 1);
  const period = /\btomorrow\b/.test(said)
    ? { from: tomorrow, to: tomorrow, name: "tomorrow" }
    : toCome(periods[0]?.period ?? null, desk.today);
  return {
    kind: "pickups",
    pieces: meant,
    period,
    yesNo: /^(?:any|is|are)\b/.test(said),
    isNarrowed: filters.length > 0,
  };
}

/** A weekday is the next one: nobody comes on one that is past. */
export function toCome(period: Period | null, today: Day): Period | null {
  if (!period?.from || period.from !== period.to || period.to >= today) return period;
  const isLastWeek = daysBetween(period.from, today) < 7;
  const from = addDays(period.from, 7);
  return isLastWeek && !/yesterday/.test(period.name)
    ? { from, to: from, name: showDay(from, today) }
    : period;
}

/** Who comes, the soonest first; those of no day by themselves. */
export function answerPickups(desk: Desk, asked: PickupsQuestion): Answered {
  const { pieces, period, yesNo, isNarrowed } = asked;
  const held = pieces.filter(({ hold }) => hold !== null);
  const until = (piece: Readonly<Piece>): Day | null => piece.hold!.until;
  const isRunning = period === null || (period.from !== null && period.from <= desk.today);
  const isDue = (day: Day): boolean =>
    period === null ||
    (day <= (period.to ?? day) && (day >= (period.from ?? day) || (isRunning && day < desk.today)));
  const due = held
    .filter((piece) => until(piece) !== null && isDue(until(piece)!))
    .sort((a, b) => (until(a)! < until(b)! ? -1 : 1));
  const undated = held.filter((piece) => until(piece) === null);
  const shown = period === null ? [...due, ...undated] : due;
  const when = period === null ? "" : `, ${nameOf(period, desk.today)}`;
  const lines = shown.map((piece) => heldLine(piece, desk.today));
  const opens = yesNo ? (shown.length > 0 ? "Yes. " : "No. ") : "";
  const [only] = pieces;
  const none = isNarrowed && held.length === 0 && only ? `${pieceLabel(only)}: not on hold` : `Nobody${when}`;
  const head = shown.length > 0 ? `To be picked up${when}: ${counted(shown.length, "piece")}` : none;
  const later = period === null ? [] : undated.map((piece) => `No day said: ${heldLine(piece, desk.today)}`);
  return {
    understood: true,
    measure: "count",
    value: yesNo ? (shown.length > 0 ? "yes" : "no") : String(shown.length),
    rows: shown.map((piece) => ({ label: pieceLabel(piece), number: piece.number, value: until(piece) })),
    period: period ? { from: period.from, to: period.to } : null,
    text: [`${opens}${head}`, ...cut(lines), ...later].join("\n"),
    ...restOf(lines),
    of: { pieces: shown.map(({ number }) => number), isList: true },
  };
}
