import type { Books } from "../../core/books/books.ts";
import type { Fact } from "../../core/books/facts.ts";
import type { Posting } from "../../core/books/postings.ts";
import type { Day } from "../../core/calendar.ts";
import type { Cents } from "../../core/money.ts";
import type { Category } from "../../core/notes/reading.ts";
import type { Table } from "./tables.ts";

/** A line of the form: its number, its name, and what to know about the figure. */
interface Line {
  number: string;
  name: string;
  note: string;
}

/**
 * Where spending belongs on US Schedule C (Form 1040). Lines 9, 22 and 33 to 42 as in published guides to the
 * form, 2026; 10, 11, 20b and 27 as on the form from memory. An estimate for a preparer, no advice.
 */
const OVERHEAD_LINES: Record<Category, Line> = {
  vehicle: {
    number: "9",
    name: "car and truck",
    note: "or the miles at the standard rate, not both; tolls and parking count beside them",
  },
  fees: { number: "10", name: "commissions and fees", note: "" },
  help: { number: "11", name: "contract labor", note: "" },
  storage: { number: "20b", name: "rent: other business property", note: "" },
  materials: { number: "22", name: "supplies", note: "materials that name no piece" },
  tools: { number: "22", name: "supplies", note: "small tools; big ones may belong on line 13" },
  other: { number: "27", name: "other expenses", note: "listed one by one in Part V" },
};

const PIECE_LINES = {
  opening: { number: "35", name: "inventory at the start of the year", note: "cost of unsold pieces" },
  purchases: {
    number: "36",
    name: "purchases",
    note: "pieces bought or got in trades, less the cost of those kept",
  },
  materials: { number: "38", name: "materials and supplies", note: "spent on pieces" },
  closing: { number: "41", name: "inventory at the end of the year", note: "cost of unsold pieces" },
  sold: { number: "42", name: "cost of goods sold", note: "35 + 36 + 38 - 41; goes to line 4" },
} satisfies Record<string, Line>;

const ESTIMATE = "Estimate, no tax advice: have a licensed preparer look at it.";

/** A year's spending, line by line. For other currencies than USD the same sums without the lines' numbers. */
export function taxLinesTable(
  books: Books,
  { currency, through }: { currency: string; through: Day },
): Table {
  const isUs = currency === "USD";
  const rows = yearsOf(books, through).flatMap((year) =>
    linesOfYear(books, year).map(({ line, cents }) => [
      Number(year),
      isUs ? line.number : null,
      line.name,
      cents,
      isUs ? line.note : null,
    ]),
  );
  return {
    name: "spending by tax line",
    columns: [
      { heading: "year", kind: "whole" },
      { heading: "line of Schedule C", kind: "text" },
      { heading: "name", kind: "text" },
      { heading: "amount", kind: "cents" },
      { heading: "note", kind: "text" },
    ],
    rows: isUs && rows.length > 0 ? [...rows, [null, null, null, null, ESTIMATE]] : rows,
  };
}

function yearsOf(books: Books, through: Day): string[] {
  const first = Number((books.facts[0]?.day ?? `${Number(through.slice(0, 4)) + 1}`).slice(0, 4));
  const last = Number(through.slice(0, 4));
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => String(first + index));
}

interface LineSum {
  line: Line;
  cents: Cents;
}

function linesOfYear(books: Books, year: string): LineSum[] {
  const sums = new Map<Line, Cents>();
  const add = (line: Line, cents: Cents) => sums.set(line, (sums.get(line) ?? 0) + cents);
  for (const line of Object.values(PIECE_LINES)) add(line, 0);
  for (const fact of books.facts) {
    const postedIn = fact.day.slice(0, 4);
    if (postedIn > year) continue;
    for (const posting of books.postings.get(fact.id) ?? []) {
      if (posting.account === "unsold pieces") {
        if (postedIn < year) add(PIECE_LINES.opening, posting.cents);
        add(PIECE_LINES.closing, posting.cents);
      }
      const line = postedIn === year ? lineOf(fact, posting) : null;
      if (line) add(line, posting.cents);
    }
  }
  const sumOf = (line: Line) => sums.get(line)!;
  const { opening, purchases, materials, closing, sold } = PIECE_LINES;
  add(sold, sumOf(opening) + sumOf(purchases) + sumOf(materials) - sumOf(closing));
  const order = ({ line }: LineSum) => Number.parseFloat(line.number);
  return [...sums]
    .map(([line, cents]) => ({ line, cents }))
    .sort((a, b) => order(a) - order(b))
    .filter(({ line, cents }) => cents !== 0 || line === sold);
}

/** The line that a leg adds to; null for legs that are no spending, or only move it. */
function lineOf(fact: Fact, { account, cents }: Posting): Line | null {
  if (account === "selling fees") return OVERHEAD_LINES.fees;
  if (account === "overhead") return fact.kind === "spend" ? OVERHEAD_LINES[fact.data.category] : null;
  if (fact.kind === "buy" && account === "unsold pieces") return PIECE_LINES.purchases;
  // What came in a trade was bought for the worth of what was given and the cash; that leaves at its cost.
  if (fact.kind === "trade" && account === "unsold pieces" && cents > 0) return PIECE_LINES.purchases;
  // A kept piece leaves the business at cost: purchases are less by it.
  if (fact.kind === "retire" && fact.data.how === "kept" && account === "unsold pieces")
    return PIECE_LINES.purchases;
  const isOnPiece =
    account === "unsold pieces" || account === "cost of pieces sold" || account === "written off";
  return fact.kind === "spend" && isOnPiece ? PIECE_LINES.materials : null;
}
