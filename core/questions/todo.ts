import { Decimal } from "decimal.js";
import { heldLine } from "../answers/held.ts";
import { heldPieces } from "../answers/stock.ts";
import type { Piece } from "../books/books.ts";
import { costOf, pieceLabel, statusOf } from "../books/piece.ts";
import { addDays, daysBetween, weekdayOf } from "../calendar.ts";
import { showMinutes } from "../decide/echo.ts";
import { amountText, type Cents, roundHalfUp, show } from "../money.ts";
import { suggestPrice } from "../past-sales.ts";
import type { Answered } from "./answered.ts";
import type { Desk } from "./desk.ts";
import { entriesIn } from "./ledger-index.ts";
import { leftOver } from "./left-over.ts";
import type { Refusal } from "./narrowing.ts";
import { historyFor, middleOf, type OwnHistory, quantile, TELLING_MIN } from "./own-history.ts";
import type { Parts } from "./parts.ts";
import type { Features } from "./rule.ts";
import { cues } from "./words/cues.ts";

/** Which part of the work is asked about. */
export type TodoScope = "all" | "list" | "work" | "drop";

export interface TodoQuestion {
  kind: "todo";
  scope: TodoScope;
  weekend: boolean;
}

/** "what should i do today", "what should i list next", or null. */
export function readTodo(parts: Parts, f: Features): TodoQuestion | Refusal | null {
  // "What did i drop the price on" was done already.
  const isDone =
    (/\b(?:did|have|has|had|ive|weve)\b/.test(parts.said) && f.has("priceCut")) ||
    /^(?:(?:show|list)(?: me)?(?: the| my| all)* )?price (?:drops|cuts|reductions)\b/.test(parts.said);
  if (!f.has("todo") || f.piece || f.loan || isDone) return null;
  const fault = leftOver(
    parts,
    cues("todo listed list finished started first which have asking minutes unlisted extra take"),
  );
  if (fault) return fault;
  if (parts.amounts.length > 0 || parts.limits.length > 0) return null;
  const { said } = parts;
  const weekend = parts.periods.some(({ period }) => period.name.includes("weekend"));
  return { kind: "todo", scope: scopeOf(said), weekend };
}

function scopeOf(said: string): TodoScope {
  if (/\blist|\bpost|\b(?:closest|nearest|almost|nearly) /.test(said)) return "list";
  if (/\bdrop|\blower|\bmark|\bcut/.test(said)) return "drop";
  return /\bfinish|\bstart|\bwork/.test(said) ? "work" : "all";
}

/** Something to do with one piece: the money that waits for it, and how fast it would come. */
interface Task {
  piece: Readonly<Piece>;
  act: string;
  scope: TodoScope;
  waiting: Cents;
  /** Cents a day, by own history: what the order goes by. */
  perDay: number;
  minutes: number;
  why: string;
}

/** With no time of its own a piece is taken to need this long: a guess, said as one. */
const MINUTES_GUESSED = 120;
/** Days to a sale where own history tells nothing. */
const DAYS_GUESSED = 30;
/** A hold without a day is due for a word after a week. */
const HOLD_DAYS = 7;

function taskOf(desk: Desk, piece: Readonly<Piece>, history: OwnHistory): Task | null {
  const { today } = desk;
  const usual = middleOf(history.sales.map(({ daysListed }) => daysListed)) ?? DAYS_GUESSED;
  const price =
    piece.listPrice ??
    (history.sales.length > 0
      ? quantile(
          history.sales.map((sale) => sale.price),
          0.5,
        )
      : costOf(piece));
  const task = (
    act: string,
    scope: TodoScope,
    of: { waiting: Cents; days: number; minutes?: number; why: string },
  ): Task => ({
    piece,
    act,
    scope,
    waiting: of.waiting,
    minutes: of.minutes ?? 0,
    perDay: of.waiting / Math.max(1, of.days),
    why: of.why,
  });
  switch (statusOf(piece)) {
    case "finished":
      return task("List", "list", {
        waiting: price,
        days: usual,
        why: `${show(price)} waiting, sells in ${usual} days`,
      });
    case "started":
    case "bought": {
      const whole = middleOf(history.sales.map(({ minutes }) => minutes)) ?? MINUTES_GUESSED;
      const left = Math.max(30, whole - piece.minutes);
      return task(piece.started ? "Finish" : "Start", "work", {
        waiting: price,
        days: usual + left / 60,
        minutes: left,
        why: `about ${showMinutes(left)} left, ${show(price)} waiting`,
      });
    }
    case "listed": {
      const days = daysBetween(piece.listed!, today);
      const lower =
        days > usual
          ? (suggestPrice(desk.books, piece, costOf(piece)) ?? stepDown(piece, days, usual))
          : null;
      return lower === null
        ? null
        : task(`Drop to ${show(lower)}:`, "drop", {
            waiting: lower,
            days: usual,
            why: `listed ${days} days, usual is ${usual}`,
          });
    }
    case "held":
      return heldTask(desk, piece, piece.hold?.agreed ?? price, task);
    default:
      return null;
  }
}

/** Own sales ask for no cut of what has stood for twice the usual time: one step down, if that is above its cost. */
function stepDown(piece: Readonly<Piece>, days: number, usual: number): Cents | null {
  const price = piece.listPrice ?? 0;
  const lower = price - (price % 500 || 500);
  return days > 2 * usual && lower > costOf(piece) ? lower : null;
}

function heldTask(
  { today }: Desk,
  piece: Readonly<Piece>,
  price: Cents,
  task: (act: string, scope: TodoScope, of: { waiting: Cents; days: number; why: string }) => Task,
): Task | null {
  const { since, until, buyer } = piece.hold!;
  const isDue = until === null ? daysBetween(since, today) > HOLD_DAYS : until <= today;
  if (!isDue) return null;
  const waiting = Math.max(0, price - piece.deposit);
  return task("Settle", "all", {
    waiting,
    days: 1,
    why: `held ${daysBetween(since, today)} days${buyer ? ` for ${buyer}` : ""}, ${show(waiting)} to come`,
  });
}

/** Pieces of a set are one thing to do: the first of them stands for all. */
function isFirstOfSet(piece: Readonly<Piece>, seen: Set<string>): boolean {
  if (!piece.set || piece.lot === null) return true;
  const key = `${piece.lot} ${statusOf(piece)}`;
  if (seen.has(key)) return false;
  seen.add(key);
  return true;
}

/** Things to do that a phone shows. */
const TASKS_SHOWN = 5;

/** What is to be done, the most worth first, with the reason. */
export function answerTodo(desk: Desk, { scope, weekend }: TodoQuestion): Answered {
  const seen = new Set<string>();
  const unsold = [...desk.books.pieces.values()].filter((piece) => !piece.gone && isFirstOfSet(piece, seen));
  const histories = new Map<string, OwnHistory>();
  const historyOf = (name: string): OwnHistory => {
    const kept = histories.get(name) ?? historyFor(desk, name, []);
    histories.set(name, kept);
    return kept;
  };
  const all = unsold
    .map((piece) => taskOf(desk, piece, historyOf(piece.name)))
    .filter((task) => task !== null)
    .filter((task) => scope === "all" || task.scope === scope || (scope === "list" && task.scope === "work"))
    .sort((a, b) => inOrder(scope, a, b));
  // What is still to be finished is told only where nothing is ready to be listed.
  const ready = scope === "list" ? all.filter((task) => task.scope === "list") : [];
  const tasks = ready.length > 0 ? ready : all;
  const held = scope === "all" ? heldLines(desk, tasks) : [];
  if (tasks.length === 0 && held.length > 0)
    return { understood: true, value: null, rows: [], period: null, text: held.join("\n") };
  if (tasks.length === 0)
    return { understood: true, value: null, rows: [], period: null, text: "Nothing waits for you there." };
  const isNoneReady = scope === "list" && tasks[0]!.scope === "work";
  const lines = [
    ...(isNoneReady ? ["Nothing finished is waiting to be listed; nearest to it:"] : []),
    ...tasks.slice(0, TASKS_SHOWN).map(({ act, piece, why }) => `${act} ${pieceLabel(piece)}: ${why}`),
  ];
  const more = tasks.length > TASKS_SHOWN ? [`and ${tasks.length - TASKS_SHOWN} more`] : [];
  const [first] = tasks as [Task];
  return {
    understood: true,
    value: pieceLabel(first.piece),
    rows: tasks.map(({ act, piece, waiting }) => ({
      label: `${act} ${pieceLabel(piece)}`,
      number: piece.number,
      value: amountText(waiting),
    })),
    period: null,
    text: [...lines, ...more, ...held, ...(weekend ? weekendLine(desk) : []), thinLine(desk)]
      .filter((line) => line !== null)
      .join("\n"),
  };
}

/** Days ahead in which a hold that runs out is worth a word. */
const HOLDS_AHEAD = 7;

/** What is on hold and falls due soon, or has a deposit, and is none of the tasks. */
function heldLines({ books, today }: Desk, tasks: readonly Task[]): string[] {
  const told = new Set(tasks.map(({ piece }) => piece.number));
  const soon = addDays(today, HOLDS_AHEAD);
  return heldPieces(books)
    .filter(({ number, hold, deposit }) => {
      const isSoon = hold!.until !== null && hold!.until <= soon;
      return !told.has(number) && (isSoon || deposit > 0);
    })
    .slice(0, HOLDS_SHOWN)
    .map((piece) => heldLine(piece, today).replace(": ", " on hold: "));
}

const HOLDS_SHOWN = 3;

/** Money a day first; what could be listed goes by how near it is to that. */
function inOrder(scope: TodoScope, a: Task, b: Task): number {
  const nearer = scope === "list" ? a.minutes - b.minutes : 0;
  return nearer || b.perDay - a.perDay || a.piece.number - b.piece.number;
}

function thinLine(desk: Desk): string | null {
  const sold = historyFor(desk, null, []).sales.length;
  if (sold >= TELLING_MIN) return "Order: money a day, by your own sales (estimate)";
  return `Only ${sold} sold so far: the order is a rough guess`;
}

/** How long a weekend of the last eight usually had, where time was logged. */
function weekendLine({ index, today }: Desk): string[] {
  const from = addDays(today, -56);
  let minutes = 0;
  for (const { day, units } of entriesIn(index.journals.minutes, from, today))
    if ([0, 6].includes(weekdayOf(day))) minutes += units;
  const usual = roundHalfUp(new Decimal(minutes).div(8));
  return usual === 0 ? [] : [`Your weekends had ${showMinutes(usual)} of work lately`];
}
