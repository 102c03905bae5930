import type { Books, Piece } from "../../core/books/books.ts";
import type { Fact } from "../../core/books/facts.ts";
import { accruedOn, balanceOn } from "../../core/books/loan.ts";
import { monthRows } from "../../core/books/month.ts";
import { costOf, proceedsOf, profitOf, statusOf } from "../../core/books/piece.ts";
import { amountOnDay, nextDue } from "../../core/books/standing.ts";
import { addDays, type Day } from "../../core/calendar.ts";
import { verbOf } from "../../core/decide/decide.ts";
import { standingName } from "../../core/decide/repeating/standing.ts";
import type { OwnerRates } from "../../core/mileage.ts";
import { mileageRateOn, valueOfMiles } from "../../core/mileage.ts";
import type { Kind } from "../../core/notes/reading.ts";
import { taxLinesTable } from "./tax-lines.ts";

/** How a column is written: cents as an amount with two decimals, a local day as a date, a plain decimal as a number. */
export type ColumnKind = "text" | "whole" | "decimal" | "cents" | "day";

/** A value as the books have it: cents are whole, days "YYYY-MM-DD", decimals plain; null: an empty cell. */
export type Value = string | number | null;

export interface Table {
  /** The sheet's and the CSV file's name. */
  name: string;
  columns: { heading: string; kind: ColumnKind }[];
  rows: Value[][];
}

interface TablesAsked {
  through: Day;
  currency: string;
  mileageRates: OwnerRates;
  /** Every picture that was sent, with the note that it came with. */
  pictures: readonly PictureKept[];
}

export interface PictureKept {
  day: Day;
  /** The piece that it was given to. */
  piece: number | null;
  /** The root note that it belongs to, and its words. */
  root: number;
  words: string;
  /** The chat's own id of the file. */
  file: string;
  /** The file of a receipt in the folder beside the tables; null where its bytes are not here. */
  receipt: string | null;
}

/** The books as tables for a spreadsheet, each complete in itself. */
export function tablesOf(books: Books, asked: TablesAsked): Table[] {
  return [
    piecesTable(books),
    journalTable(books),
    monthsTable(books, asked.through),
    loansTable(books, asked.through),
    loanJournalTable(books),
    standingTable(books, asked.through),
    milesTable(books, asked),
    taxLinesTable(books, asked),
    picturesTable(books, asked.pictures),
  ];
}

/** A column with the value that each row's subject has in it. */
type ColumnOf<T> = [heading: string, kind: ColumnKind, value: (subject: T) => Value];

function tableOf<T>(name: string, subjects: readonly T[], columns: readonly ColumnOf<T>[]): Table {
  return {
    name,
    columns: columns.map(([heading, kind]) => ({ heading, kind })),
    rows: subjects.map((subject) => columns.map(([, , value]) => value(subject))),
  };
}

/** The pictures of pieces, and the receipts: those that came with a spending, with what and how much. */
function picturesTable(books: Books, pictures: readonly PictureKept[]): Table {
  const rows = pictures.map((picture) => {
    const facts = books.facts.filter((fact) => fact.root === picture.root);
    return { ...picture, facts, spent: facts.find((fact) => fact.kind === "spend") };
  });
  return tableOf("pictures", rows, [
    ["day", "day", ({ day }) => day],
    ["sort", "text", ({ spent }) => (spent ? "receipt" : "piece")],
    [
      "pieces",
      "text",
      ({ piece, facts }) => (piece === null ? facts.flatMap((fact) => fact.pieces) : [piece]).join(" "),
    ],
    ["what", "text", ({ spent }) => (spent?.kind === "spend" ? spent.data.what : null)],
    ["amount", "cents", ({ spent }) => spent?.amount ?? null],
    ["note", "text", ({ words }) => words],
    ["receipt", "text", ({ receipt }) => receipt],
    ["file in the chat", "text", ({ file }) => file],
  ]);
}

function piecesTable(books: Books): Table {
  const pieces = [...books.pieces.values()].sort((a, b) => a.number - b.number);
  return tableOf<Readonly<Piece>>("pieces", pieces, [
    ["number", "whole", (piece) => piece.number],
    ["name", "text", (piece) => piece.name],
    ["traits", "text", (piece) => piece.traits.join(" ")],
    ["status", "text", statusOf],
    ["lot", "whole", (piece) => piece.lot],
    ["source", "text", (piece) => piece.source],
    ["bought", "day", (piece) => piece.bought],
    ["started", "day", (piece) => piece.started],
    ["finished", "day", (piece) => piece.finished],
    ["listed", "day", (piece) => piece.listed],
    ["list price", "cents", (piece) => piece.listPrice],
    ["sold", "day", (piece) => piece.sold],
    ["price paid", "cents", (piece) => piece.price],
    ["materials", "cents", (piece) => piece.materials],
    ["cost", "cents", costOf],
    ["selling fees", "cents", (piece) => piece.fees],
    ["deposit held", "cents", (piece) => piece.deposit],
    ["deposits kept", "cents", (piece) => piece.depositsKept],
    ["owed by buyer", "cents", (piece) => piece.owed],
    ["proceeds", "cents", proceedsOf],
    ["profit", "cents", profitOf],
    ["minutes", "whole", (piece) => piece.minutes],
    ["miles", "decimal", (piece) => piece.miles],
  ]);
}

function journalTable(books: Books): Table {
  const entries = books.facts.flatMap((fact) =>
    (books.postings.get(fact.id) ?? []).map((posting) => ({ fact, posting })),
  );
  return tableOf("money journal", entries, [
    ["day", "day", ({ posting }) => posting.day],
    ["entry", "whole", ({ fact }) => fact.id],
    ["kind", "text", ({ fact }) => fact.kind],
    ["account", "text", ({ posting }) => posting.account],
    ["detail", "text", ({ posting }) => posting.detail],
    ["piece", "whole", ({ posting }) => posting.piece],
    ["amount (debit +, credit -)", "cents", ({ posting }) => posting.cents],
    ["what", "text", ({ fact }) => wordsOf(fact)],
    ["method", "text", ({ fact }) => ("method" in fact.data ? (fact.data.method ?? null) : null)],
    ["by", "text", ({ fact }) => fact.by ?? null],
  ]);
}

/** What the note said beside its pieces and its amount, as its verb knows. */
function wordsOf(fact: Fact): string | null {
  const said = verbOf(fact.kind as Kind)?.said as ((of: Fact) => string | null) | undefined;
  return said?.(fact) ?? null;
}

/** What records itself, as it stands on a day. */
function standingTable(books: Books, through: Day): Table {
  return tableOf(
    "standing notes",
    [...books.standing.values()],
    [
      ["what", "text", ({ note }) => standingName(note)],
      ["kind", "text", ({ note }) => note.kind],
      ["amount", "cents", (standing) => amountOnDay(standing, through)],
      ["every", "text", ({ every }) => every],
      ["first", "day", ({ first }) => first],
      ["next", "day", (standing) => nextDue(standing, addDays(through, 1))],
      ["stopped from", "day", ({ stopped }) => stopped],
      ["by", "text", ({ by }) => by],
    ],
  );
}

function monthsTable(books: Books, through: Day): Table {
  return tableOf("months", monthRows(books, through), [
    ["month", "text", (row) => row.month],
    ["flipped", "whole", (row) => row.flipped],
    ["proceeds", "cents", (row) => row.proceeds],
    ["cost of sold", "cents", (row) => row.costOfSold],
    ["selling fees", "cents", (row) => row.fees],
    ["overhead", "cents", (row) => row.overhead],
    ["written off", "cents", (row) => row.writtenOff],
    ["flip profit", "cents", (row) => row.flipProfit],
    ["other income", "cents", (row) => row.otherIncome],
    ["tax set aside", "cents", (row) => row.taxSetAside],
    ["for the loan", "cents", (row) => row.forLoan],
    ["paid to the loan", "cents", (row) => row.paidToLoan],
    ["cash in", "cents", (row) => row.cashIn],
    ["cash out", "cents", (row) => row.cashOut],
  ]);
}

function loansTable(books: Books, through: Day): Table {
  return tableOf(
    "loan",
    [...books.loans.values()],
    [
      ["loan", "text", (loan) => loan.name],
      ["opened", "day", (loan) => loan.opened],
      ["rate percent", "decimal", (loan) => loan.rate],
      ["days in the year", "text", (loan) => loan.days],
      ["as of", "day", () => through],
      ["principal", "cents", (loan) => loan.principal],
      ["accrued interest", "cents", (loan) => accruedOn(loan, through)],
      ["balance", "cents", (loan) => balanceOn(loan, through)],
      ["paid", "cents", (loan) => loan.paid],
      ["interest paid", "cents", (loan) => loan.interestPaid],
    ],
  );
}

/** What each entry did to a loan, with the principal after it. */
function loanJournalTable(books: Books): Table {
  const owed = new Map<string, number>();
  const entries = books.facts.flatMap((fact) => {
    const moves = new Map<string, { principal: number; interest: number }>();
    for (const { account, cents, detail } of books.postings.get(fact.id) ?? []) {
      if (account !== "loan" && account !== "loan interest") continue;
      const move = moves.get(detail ?? "") ?? { principal: 0, interest: 0 };
      move[account === "loan" ? "principal" : "interest"] += cents;
      moves.set(detail ?? "", move);
    }
    return [...moves].map(([loan, move]) => {
      const left = (owed.get(loan) ?? 0) - move.principal;
      owed.set(loan, left);
      return { fact, loan, ...move, left };
    });
  });
  return tableOf("loan journal", entries, [
    ["day", "day", ({ fact }) => fact.day],
    ["loan", "text", ({ loan }) => loan],
    ["kind", "text", ({ fact }) => fact.kind],
    ["interest paid", "cents", ({ interest }) => interest],
    ["principal paid (borrowed -)", "cents", ({ principal }) => principal],
    ["principal left", "cents", ({ left }) => left],
  ]);
}

/** A line for each drive; what miles are worth is a US figure. */
function milesTable(books: Books, { currency, mileageRates }: TablesAsked): Table {
  const drives = books.facts.flatMap((fact) => (fact.kind === "drive" ? [fact] : []));
  const columns: ColumnOf<(typeof drives)[number]>[] = [
    ["day", "day", (fact) => fact.day],
    ["miles", "decimal", (fact) => fact.data.miles],
    ["pieces", "text", (fact) => fact.pieces.map((number) => `#${number}`).join(", ")],
  ];
  const rateOf = (fact: { day: Day }) => mileageRateOn(fact.day, mileageRates).cents;
  const usColumns: typeof columns = [
    ["cents a mile", "decimal", rateOf],
    ["worth (estimate)", "cents", (fact) => valueOfMiles(fact.data.miles, rateOf(fact))],
  ];
  return tableOf("miles", drives, currency === "USD" ? [...columns, ...usColumns] : columns);
}
