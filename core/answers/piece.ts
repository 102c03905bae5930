import type { Books, Piece } from "../books/books.ts";
import { numbersLabel } from "../books/label.ts";
import { lotOf, lotTotals } from "../books/lot.ts";
import { costOf, pieceLabel, proceedsOf, profitOf, statusOf } from "../books/piece.ts";
import type { Day } from "../calendar.ts";
import { daysBetween, showDay } from "../calendar.ts";
import { showMinutes } from "../decide/echo.ts";
import { addMiles, drivesOfPiece, showMiles } from "../mileage.ts";
import { anHour, show } from "../money.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { showAge } from "./stock.ts";
import { storyOf } from "./story.ts";
import { counted, LIST_LINES_MAX, reply, signed } from "./wording.ts";

/** A longer story keeps its beginning and its end. */
const STORY_LINES_MAX = 12;

export const piece = defineAnswer({
  about: "piece",
  example: "how's the dresser doing",
  asks: {
    phrases: [
      "where … {piece}",
      "wheres … {piece}",
      "how … {piece} doing",
      "hows … {piece}",
      "how … {piece}",
      "show … {piece}",
      "what … {piece} cost",
      "how much … {piece}",
      "profit … {piece}",
      "what did i pay for … {piece}",
      "what have i spent on … {piece}",
      "what did i spend on … {piece}",
      "profit on … {piece}",
      "make on … {piece}",
      "made on … {piece}",
      "what did i make on … {piece}",
      "how much … in … {piece}",
      "whats … {piece}",
      "where … {piece}",
      "status … {piece}",
      "what about … {piece}",
      "tell me about … {piece}",
      "how many hours … {piece}",
      "how long … {piece}",
      "did … {piece} sell",
      "is … {piece} sold",
      "is … {piece} listed",
      "when did … {piece}",
      "when … {piece}",
      "what … {piece}",
      "look up … {piece}",
      "find … {piece}",
      "see … {piece}",
      "{piece} … status",
      "{piece} … history",
      "pull up … {piece}",
      "did i list … {piece}",
      "did i sell … {piece}",
      "is … {piece}",
      "how … {piece} do",
      "who … {piece}",
      "how much did i sell … {piece}",
      "info on … {piece}",
      "check … {piece}",
    ],
    whole: ["{piece}", "{piece} profit", "{piece} status", "{piece} cost", "{piece} history", "{piece} info"],
  },
  answer: answerPiece,
});

function answerPiece(asked: Asked): Answer {
  const pieces = asked.pieces.flatMap((number) => asked.books.pieces.get(number) ?? []);
  if (pieces.length === 0) return noPiece(asked);
  const told =
    pieces.length === 1
      ? wholeStory(asked, pieces[0]!)
      : pieces.slice(0, LIST_LINES_MAX).map((each) => briefLine(each, asked.today));
  const more = pieces.length > LIST_LINES_MAX ? [`and ${pieces.length - LIST_LINES_MAX} more`] : [];
  return { ...reply([...told, ...more]), pictures: pieces.map(({ number }) => number) };
}

function noPiece({ question, books }: Asked): Answer {
  if (books.pieces.size === 0) {
    return reply(["No pieces on the books yet.", 'A note adds one: "bought dresser 30"']);
  }
  const [mention] = question.pieces ?? [];
  const said = mention?.number !== undefined ? `#${mention.number}` : mention?.name;
  return reply([
    said ? `No piece like "${said}" on the books.` : "Which piece?",
    `Say its name or number: "show #${Math.max(...books.pieces.keys())}". "pieces" lists them.`,
  ]);
}

function briefLine(each: Readonly<Piece>, today: Day): string {
  const profit = profitOf(each);
  const state = each.gone ? `${each.gone} ${showDay(each.goneOn!, today)}` : statusOf(each);
  const asking = !each.gone && each.listPrice !== null ? `, asking ${show(each.listPrice)}` : "";
  const money = profit === null ? `cost ${show(costOf(each))}` : signed(profit);
  return `${pieceLabel(each)}: ${state}${asking}, ${money}`;
}

function wholeStory(
  { books, today, currency, mileageRates }: Asked,
  each: Readonly<Piece>,
): (string | null)[] {
  return [
    `${pieceLabel(each)}: ${stateOf(each, today)}`,
    ...moneyLines(each),
    timeLine(each, today),
    ...holdLines(each, today),
    milesLine(books, each, currency === "USD" ? mileageRates : null),
    lotLine(books, each),
    ...shortened(storyOf(books, each.number, today)).map((line) => `  ${line}`),
  ];
}

/** The piece's state and since when, or what it is waiting at. */
function stateOf(each: Readonly<Piece>, today: Day): string {
  if (each.gone) return `${each.gone === "given" ? "given away" : each.gone} ${showDay(each.goneOn!, today)}`;
  const price = each.hold?.agreed ?? each.listPrice;
  const asking = price === null ? "" : ` at ${show(price)}`;
  const status = statusOf(each);
  return status === "listed" ? `listed${asking}, ${showAge(each.listed!, today)}` : `${status}${asking}`;
}

function moneyLines(each: Readonly<Piece>): string[] {
  const profit = profitOf(each);
  const cost = `Cost ${show(costOf(each))} (price ${show(each.price)}, spent ${show(each.materials)})`;
  if (profit === null) return [cost, ...(each.fees === 0 ? [] : [`Fees ${show(each.fees)}`])];
  const parts = [
    each.sold ? `sold ${show(each.sales)}` : null,
    each.depositsKept === 0 ? null : `deposits kept ${show(each.depositsKept)}`,
    each.owed === 0 ? null : `still owed ${show(each.owed)}`,
    each.refunds === 0 ? null : `refunds ${show(-each.refunds)}`,
    each.fees === 0 ? null : `fees ${show(-each.fees)}`,
  ].filter((part) => part !== null);
  const hourly = anHour(profit, each.minutes);
  return [
    `Profit ${signed(profit)}${hourly === null ? "" : `, ${show(hourly)} an hour`}`,
    parts.length < 2 ? `Brought in ${show(proceedsOf(each))}` : `Brought in: ${parts.join(", ")}`,
    each.gone === "kept" ? `${cost}, yours now` : cost,
  ];
}

function timeLine(each: Readonly<Piece>, today: Day): string {
  const end = each.goneOn ?? today;
  const days = daysBetween(each.bought, end);
  const span = days === 0 ? spanOfToday(each) : `${counted(days, "day")} ${spanWords(each)}`;
  return each.minutes === 0 ? `${span}, no time logged` : `${span}, ${showMinutes(each.minutes)} of work`;
}

function spanWords(each: Readonly<Piece>): string {
  if (each.sold) return "from buying to sale";
  return each.gone ? "on hand" : "since buying";
}

/** What came and went within a day, or came today, has no days to count. */
function spanOfToday(each: Readonly<Piece>): string {
  if (each.sold) return "Bought and sold the same day";
  return each.gone ? "Gone the day it came" : "Bought today";
}

function holdLines(each: Readonly<Piece>, today: Day): string[] {
  if (!each.hold || each.gone) return [];
  const { buyer, until, agreed } = each.hold;
  const words = [
    buyer ? ` for ${buyer}` : "",
    agreed === null ? "" : ` at ${show(agreed)}`,
    until ? ` until ${showDay(until, today)}${until < today ? " (past)" : ""}` : "",
    each.deposit === 0 ? "" : `, deposit ${show(each.deposit)}`,
  ];
  return [`On hold${words.join("")}`];
}

/** Miles are worth something to the tax answer and are in no profit. */
function milesLine(books: Books, each: Readonly<Piece>, rates: Asked["mileageRates"] | null): string | null {
  const driven = addMiles(drivesOfPiece(books.facts, each.number), rates ?? {});
  if (driven.miles.isZero()) return null;
  const worth = rates === null ? "" : `, worth ${show(driven.value)} (not in profit)`;
  return `${showMiles(driven.miles)} miles${worth}`;
}

function lotLine(books: Books, each: Readonly<Piece>): string | null {
  if (each.lot === null) return null;
  const members = lotOf(books, each.number);
  const { cost, profit } = lotTotals(members);
  const name = `${each.set ? "Set" : "Lot"} ${numbersLabel(members.map(({ number }) => number))}`;
  const gone = members.filter((member) => member.gone).length;
  return `${name}: cost ${show(cost)}, ${gone} of ${members.length} gone${profit === null ? "" : `, profit ${signed(profit)}`}`;
}

function shortened(story: readonly string[]): string[] {
  if (story.length <= STORY_LINES_MAX) return [...story];
  const head = Math.ceil((STORY_LINES_MAX - 1) / 2);
  const tail = STORY_LINES_MAX - 1 - head;
  return [...story.slice(0, head), `… ${story.length - head - tail} more notes …`, ...story.slice(-tail)];
}
