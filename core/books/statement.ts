import { Decimal } from "decimal.js";
import type { Day, Month } from "../calendar.ts";
import { amountText, type Cents } from "../money.ts";
import type { Books, Loan, Piece, Status } from "./books.ts";
import { accruedOn, balanceOn } from "./loan.ts";
import { earmarked, type MonthRow, monthRows } from "./month.ts";
import { costOf, proceedsOf, profitOf, statusOf } from "./piece.ts";
import { owedByBuyers } from "./shares.ts";

/** The whole state as `books` prints it. Amounts: text with two decimals; days "YYYY-MM-DD"; unknown: null. */
export interface Statement {
  currency: string;
  through: Day;
  pieces: PieceLine[];
  months: MonthLine[];
  loans: LoanLine[];
  earmarked: string;
  depositsHeld: string;
  buyersOwe: string;
  unsoldCost: string;
}

export interface PieceLine {
  number: number;
  name: string;
  traits: readonly string[];
  status: Status;
  lot: number | null;
  bought: Day;
  started: Day | null;
  finished: Day | null;
  listed: Day | null;
  listPrice: string | null;
  sold: Day | null;
  price: string;
  materials: string;
  fees: string;
  deposit: string;
  depositsKept: string;
  proceeds: string;
  profit: string | null;
  minutes: number;
  miles: string;
  owed: string;
}

export interface MonthLine {
  month: Month;
  flipped: number;
  proceeds: string;
  costOfSold: string;
  fees: string;
  overhead: string;
  writtenOff: string;
  flipProfit: string;
  otherIncome: string;
  taxSetAside: string;
  forLoan: string;
  paidToLoan: string;
  cashIn: string;
  cashOut: string;
}

export interface LoanLine {
  name: string;
  rate: string;
  principal: string;
  accruedInterest: string;
  balance: string;
  paid: string;
  interestPaid: string;
}

/**
 * The statement of the books, pieces by number, every month, loans in the order they were opened. The books
 * are folded from the facts through the day `through`, to which interest runs.
 */
export function statementOf(books: Books, on: { through: Day; currency: string }): Statement {
  const pieces = [...books.pieces.values()].sort((a, b) => a.number - b.number);
  const unsold = pieces.filter((piece) => !piece.gone);
  return {
    currency: on.currency,
    through: on.through,
    pieces: pieces.map(pieceLine),
    months: monthRows(books, on.through).map(monthLine),
    loans: [...books.loans.values()].map((loan) => loanLine(loan, on.through)),
    earmarked: amountText(earmarked(books, on.through)),
    depositsHeld: amountText(sumOf(pieces, (piece) => piece.deposit)),
    buyersOwe: amountText(owedByBuyers(pieces)),
    unsoldCost: amountText(sumOf(unsold, costOf)),
  };
}

function sumOf(pieces: readonly Readonly<Piece>[], amount: (piece: Readonly<Piece>) => Cents): Cents {
  return pieces.reduce((sum, piece) => sum + amount(piece), 0);
}

function knownText(cents: Cents | null): string | null {
  return cents === null ? null : amountText(cents);
}

function pieceLine(piece: Readonly<Piece>): PieceLine {
  return {
    number: piece.number,
    name: piece.name,
    traits: piece.traits,
    status: statusOf(piece),
    lot: piece.lot,
    bought: piece.bought,
    started: piece.started,
    finished: piece.finished,
    listed: piece.listed,
    listPrice: knownText(piece.listPrice),
    sold: piece.sold,
    price: amountText(piece.price),
    materials: amountText(piece.materials),
    fees: amountText(piece.fees),
    deposit: amountText(piece.deposit),
    depositsKept: amountText(piece.depositsKept),
    proceeds: amountText(proceedsOf(piece)),
    profit: knownText(profitOf(piece)),
    minutes: piece.minutes,
    miles: piece.miles,
    owed: amountText(piece.owed),
  };
}

function monthLine(row: MonthRow): MonthLine {
  return {
    month: row.month,
    flipped: row.flipped,
    proceeds: amountText(row.proceeds),
    costOfSold: amountText(row.costOfSold),
    fees: amountText(row.fees),
    overhead: amountText(row.overhead),
    writtenOff: amountText(row.writtenOff),
    flipProfit: amountText(row.flipProfit),
    otherIncome: amountText(row.otherIncome),
    taxSetAside: amountText(row.taxSetAside),
    forLoan: amountText(row.forLoan),
    paidToLoan: amountText(row.paidToLoan),
    cashIn: amountText(row.cashIn),
    cashOut: amountText(row.cashOut),
  };
}

function loanLine(loan: Readonly<Loan>, through: Day): LoanLine {
  return {
    name: loan.name,
    rate: new Decimal(loan.rate).toFixed(),
    principal: amountText(loan.principal),
    accruedInterest: amountText(accruedOn(loan, through)),
    balance: amountText(balanceOn(loan, through)),
    paid: amountText(loan.paid),
    interestPaid: amountText(loan.interestPaid),
  };
}
