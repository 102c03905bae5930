import { dueAtPickup } from "./books/agreed.ts";
import type { Books, Piece } from "./books/books.ts";
import { costOf, pieceLabel, statusOf } from "./books/piece.ts";
import type { Day } from "./calendar.ts";
import { daysBetween, showDay, showDays } from "./calendar.ts";
import { owingPieces, owingWords, salesOwing } from "./decide/deals/owing.ts";
import type { Cents } from "./money.ts";
import { show } from "./money.ts";
import { suggestPrice } from "./past-sales.ts";
import type { Button, Reply } from "./reply.ts";

/** What the daily message may look at. Pure data: the same day on the same books gives the same words. */
export interface NudgeView {
  books: Books;
  today: Day;
  /** Numbers of pieces that the owner asked to leave out for good. */
  leftOut: readonly number[];
  /** The first day on which a piece is mentioned again, by piece number. */
  waits: Readonly<Record<number, Day>>;
  /** The first day on which the bot speaks up again; null: not snoozed. */
  snoozedUntil: Day | null;
  /** What standing notes recorded since the last message, oldest first. */
  byItself?: readonly ByItself[];
  /** The notes that still wait for an answer, as said, oldest first. */
  openQuestions: readonly string[];
}

/** A fact that a standing note recorded, and what is said of it. */
export interface ByItself {
  fact: number;
  text: string;
}

/** Money owed for so long is brought up: common practice, no source. */
const OWED_DAYS = 7;
/** A listing is due for a word after this many days at one price without a sale: common practice, no source. */
const LISTED_DAYS = 14;
/** A piece counts as not started for a month after this many days: common practice, no source. */
const UNSTARTED_DAYS = 30;
/** How long "wait" waits. */
const WAIT_DAYS = 3;
/** The most lines of each part: a phone held in one hand. */
const LINES_MAX = { unlisted: 5, other: 3 };
const QUESTION_LENGTH_MAX = 60;

/** What is mentioned together: one piece, or the unlisted (or unstarted, …) pieces of one set. */
interface Matter {
  piece: Readonly<Piece>;
  pieces: readonly Readonly<Piece>[];
  /** Days that it has waited. */
  days: number;
}

/**
 * The daily message, or null where there is nothing to say: finished pieces that are not listed (oldest
 * first, with buttons), listings without a sale, holds past their day, pieces not started, open questions.
 * Presses: "ui:<fact>" takes back what a standing note recorded, "nl:<piece>" list it, "nw:<piece>:<days>" wait, "nx:<piece>" leave it out; a set is pressed by
 * the lowest of the numbers mentioned and means all of them.
 */
export function nudgeFor(view: NudgeView): Reply | null {
  if (view.snoozedUntil !== null && view.today < view.snoozedUntil) return null;
  const unlisted = mattersOf(view, "finished", (piece) => piece.finished);
  const stale = mattersOf(view, "listed", (piece) => pricedOn(view.books, piece)).filter(
    ({ days }) => days >= LISTED_DAYS,
  );
  const unstarted = mattersOf(view, "bought", (piece) => (piece.minutes > 0 ? null : piece.bought)).filter(
    ({ days }) => days >= UNSTARTED_DAYS,
  );
  const byItself = view.byItself ?? [];
  const overdue = overdueLines(view);
  const parts = [
    byItselfPart(byItself),
    part("Owed for a week or more:", owedLines(view), LINES_MAX.other),
    unlistedPart(unlisted),
    part(
      "Listed two weeks, no sale:",
      stale.map((matter) => staleLine(view, matter)),
      LINES_MAX.other,
    ),
    part("Hold past its day:", overdue, LINES_MAX.other),
    part("Not started for a month:", unstarted.map(unstartedLine), LINES_MAX.other),
    part("Waiting for your answer:", view.openQuestions.map(shortened), LINES_MAX.other),
  ].filter((text) => text !== null);
  if (parts.length === 0) return null;
  const first = firstThing(overdue.length > 0, { unlisted, stale, unstarted });
  if (first !== null) parts.unshift(first);
  const buttons = [
    ...byItself.slice(0, LINES_MAX.other).map(undoButton),
    ...unlisted.slice(0, LINES_MAX.unlisted).map(unlistedButtons),
    ...leaveOutButtons(stale),
    ...leaveOutButtons(unstarted),
  ];
  return buttons.length > 0 ? { text: parts.join("\n\n"), buttons } : { text: parts.join("\n\n") };
}

/**
 * What to do first, in one line, where there is more than one thing to choose from: a buyer who is late, then
 * the finished piece with the most money in it, the listing that has waited longest, the piece not started.
 */
function firstThing(
  isOverdue: boolean,
  { unlisted, stale, unstarted }: Record<"unlisted" | "stale" | "unstarted", readonly Matter[]>,
): string | null {
  if (Number(isOverdue) + unlisted.length + stale.length + unstarted.length < 2) return null;
  if (isOverdue) return "First: ask whether the buyer still comes.";
  const costOfMatter = ({ pieces }: Matter) => sum(pieces.map(costOf));
  const [richest] = [...unlisted].sort((a, b) => costOfMatter(b) - costOfMatter(a));
  if (richest) return `First: list ${labelOf(richest)}.`;
  if (stale[0]) return `First: a new price for ${labelOf(stale[0])}.`;
  return unstarted[0] ? `First: start ${labelOf(unstarted[0])}.` : null;
}

/** Pieces of a status with the day they wait since, longest first; the pieces of a set make one matter. */
function mattersOf(
  view: NudgeView,
  status: "bought" | "finished" | "listed",
  since: (piece: Readonly<Piece>) => Day | null,
): Matter[] {
  const groups = new Map<number, Readonly<Piece>[]>();
  for (const piece of view.books.pieces.values()) {
    if (statusOf(piece) !== status) continue;
    const key = piece.set && piece.lot !== null ? piece.lot : piece.number;
    groups.set(key, [...(groups.get(key) ?? []), piece]);
  }
  const matters: Matter[] = [];
  for (const pieces of groups.values()) {
    const days = pieces.map(since).filter((day) => day !== null);
    const oldest = days.reduce<Day | null>((a, b) => (a === null || b < a ? b : a), null);
    if (oldest === null || days.length < pieces.length || pieces.some((piece) => isHushed(view, piece)))
      continue;
    pieces.sort((a, b) => a.number - b.number);
    matters.push({ piece: pieces[0]!, pieces, days: daysBetween(oldest, view.today) });
  }
  return matters.sort((a, b) => b.days - a.days || a.piece.number - b.piece.number);
}

function isHushed(view: NudgeView, piece: Readonly<Piece>): boolean {
  const until = view.waits[piece.number];
  return view.leftOut.includes(piece.number) || (until !== undefined && view.today < until);
}

/** The day of the latest list price: of the listing, or of a reprice since. */
function pricedOn(books: Books, piece: Readonly<Piece>): Day | null {
  if (piece.listed === null) return null;
  const story = new Set(books.story.get(piece.number) ?? []);
  const repriced = books.facts.filter((fact) => fact.kind === "reprice" && story.has(fact.id));
  return [piece.listed, ...repriced.map((fact) => fact.day)].sort().at(-1)!;
}

function byItselfPart(byItself: readonly ByItself[]): string | null {
  return part(
    "Recorded by itself:",
    byItself.map(({ text }) => text),
    LINES_MAX.other,
  );
}

function undoButton({ fact, text }: ByItself): Button[] {
  return [{ label: `Undo ${text}`, press: `ui:${fact}` }];
}

/** What standing notes recorded, as a message of its own. */
export function standingReply(byItself: readonly ByItself[]): Reply {
  return { text: byItselfPart(byItself) ?? "", buttons: byItself.slice(0, LINES_MAX.other).map(undoButton) };
}

/** Who owes since a week or longer, the longest first. */
function owedLines(view: NudgeView): string[] {
  const sales = salesOwing(view.books).reverse();
  return sales.flatMap((sale) => {
    const days = daysBetween(sale.day, view.today);
    if (days < OWED_DAYS || owingPieces(view.books, sale).some((piece) => isHushed(view, piece))) return [];
    return [`${owingWords(view.books, sale)}, ${showDays(days)}`];
  });
}

function unlistedPart(matters: readonly Matter[]): string | null {
  if (matters.length === 0) return null;
  const lines = matters.map(
    (matter) => `${labelOf(matter)}: ${showDays(matter.days)}, ${show(sum(matter.pieces.map(costOf)))} in it`,
  );
  const text = part("Finished, not listed yet:", lines, LINES_MAX.unlisted);
  if (matters.length === 1) return text;
  return `${text}\nTied up: ${show(sum(matters.flatMap(({ pieces }) => pieces.map(costOf))))}`;
}

function staleLine(view: NudgeView, matter: Matter): string {
  const asked = sum(matter.pieces.map((piece) => piece.listPrice ?? 0));
  const suggested = matter.pieces.map((piece) => suggestPrice(view.books, piece, costOf(piece)));
  const line = `${labelOf(matter)} at ${show(asked)}: ${showDays(matter.days)}`;
  return suggested.every((price) => price !== null) ? `${line}, try ${show(sum(suggested))}` : line;
}

function overdueLines(view: NudgeView): string[] {
  const lines: { until: Day; text: string }[] = [];
  for (const piece of view.books.pieces.values()) {
    const until = piece.hold?.until ?? null;
    if (statusOf(piece) !== "held" || until === null || until >= view.today || isHushed(view, piece))
      continue;
    const buyer = piece.hold?.buyer ? ` for ${piece.hold.buyer}` : "";
    const due = dueAtPickup([piece]);
    const rest = due === null ? "" : `, ${show(due)} at pickup`;
    const text = `${pieceLabel(piece)}${buyer}: was till ${showDay(until, view.today)}${rest}`;
    lines.push({ until, text });
  }
  return lines.sort((a, b) => (a.until < b.until ? -1 : 1)).map(({ text }) => text);
}

function unstartedLine(matter: Matter): string {
  return `${labelOf(matter)}: bought ${showDays(matter.days)} ago`;
}

function part(title: string, lines: readonly string[], linesMax: number): string | null {
  if (lines.length === 0) return null;
  const left = lines.length - linesMax;
  return [title, ...lines.slice(0, linesMax), ...(left > 0 ? [`and ${left} more`] : [])].join("\n");
}

function unlistedButtons({ piece }: Matter): Button[] {
  return [
    { label: `List #${piece.number}`, press: `nl:${piece.number}` },
    { label: `Wait ${WAIT_DAYS} days`, press: `nw:${piece.number}:${WAIT_DAYS}` },
    { label: "Leave out", press: `nx:${piece.number}` },
  ];
}

/** One row for a whole part, so that the buttons stay fewer than the lines. */
function leaveOutButtons(matters: readonly Matter[]): Button[][] {
  const row = matters
    .slice(0, LINES_MAX.other)
    .map(({ piece }) => ({ label: `Leave out #${piece.number}`, press: `nx:${piece.number}` }));
  return row.length > 0 ? [row] : [];
}

function labelOf({ piece, pieces }: Matter): string {
  return pieces.length === 1 ? pieceLabel(piece) : `${pieceLabel(piece)} (${pieces.length} pieces)`;
}

function shortened(text: string): string {
  const line = [...text.replace(/\s+/gu, " ").trim()];
  return line.length > QUESTION_LENGTH_MAX
    ? `${line.slice(0, QUESTION_LENGTH_MAX - 1).join("")}…`
    : line.join("");
}

function sum(amounts: readonly Cents[]): Cents {
  return amounts.reduce((a, b) => a + b, 0);
}
