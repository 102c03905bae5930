import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { initSync, ParsedLedger } from "@rustledger/wasm";
import { expect } from "vitest";
import { demoNotes } from "../../bot/demo/halfyear.ts";
import { tablesOf, type Value } from "../../bot/files/tables.ts";
import type { Account } from "../../core/books/postings.ts";
import type { Statement } from "../../core/books/statement.ts";
import { addMonths, type Day, firstDayOf, type Month } from "../../core/calendar.ts";
import { openChat } from "../bot/conversation/chat.ts";
import { octoberEnd, octoberNotes } from "../months/october.ts";
import { publishedTable, rowIds } from "./table.ts";

const ENGINE = "npm @rustledger/wasm 0.24, a plain-text accounting engine, run on the exported money journal";

/** Our accounts under the engine's five roots; a detail or a piece makes an account of its own below. */
const ACCOUNTS: Partial<Record<Account, string>> = {
  cash: "Assets:Cash",
  "unsold pieces": "Assets:Unsold",
  "deposits held": "Liabilities:Deposits",
  sales: "Income:Sales",
  "deposits kept": "Income:DepositsKept",
  refunds: "Income:Refunds",
  "cost of pieces sold": "Expenses:CostOfSold",
  "selling fees": "Expenses:Fees",
  overhead: "Expenses:Overhead",
  "written off": "Expenses:WrittenOff",
  "personal use": "Equity:Draw",
  "other income": "Income:Other",
  loan: "Liabilities:Loan",
  "loan interest": "Expenses:LoanInterest",
  "opening balances": "Equity:Opening",
};

interface Entry {
  day: string;
  entry: string;
  account: string;
  cents: number;
  kind: string;
}

/** The rows of the exported journal, each with the engine's name of its account. */
function entriesOf(rows: readonly Value[][], columns: readonly string[]): Entry[] {
  const at = (row: readonly Value[], heading: string) => row[columns.indexOf(heading)];
  return rows.map((row) => {
    const account = ACCOUNTS[at(row, "account") as Account];
    if (!account) throw new Error(`no account for ${at(row, "account")}`);
    const piece = at(row, "piece");
    return {
      day: String(at(row, "day")),
      entry: String(at(row, "entry")),
      account: piece === null ? account : `${account}:P${piece}`,
      cents: Number(at(row, "amount (debit +, credit -)")),
      kind: String(at(row, "kind")),
    };
  });
}

/** The journal in the engine's own language; payments to the loan are told apart by their payee. */
function sourceOf(entries: readonly Entry[]): string {
  const accounts = [...new Set(entries.map(({ account }) => account))];
  const opened = accounts.map((account) => `2000-01-01 open ${account}`);
  const byEntry = new Map<string, Entry[]>();
  for (const leg of entries) byEntry.set(leg.entry, [...(byEntry.get(leg.entry) ?? []), leg]);
  const transactions = [...byEntry.values()].map((legs) => {
    const lines = legs.map(({ account, cents }) => `  ${account}  ${(cents / 100).toFixed(2)} USD`);
    return [`${legs[0]!.day} * "${legs[0]!.kind}" "entry ${legs[0]!.entry}"`, ...lines].join("\n");
  });
  return ['option "operating_currency" "USD"', ...opened, ...transactions].join("\n");
}

/** The books as the engine adds them up: all its questions are asked of its own reading of the journal. */
class Engine {
  readonly #ledger: ParsedLedger;
  constructor(source: string) {
    const wasm = createRequire(import.meta.url).resolve("@rustledger/wasm");
    initSync({ module: readFileSync(wasm.replace(/\.js$/, "_bg.wasm")) });
    this.#ledger = new ParsedLedger(source);
  }

  errors(): string[] {
    return this.#ledger.getErrors().map(({ message }) => message);
  }

  /** The sum of the postings that a condition takes, as an amount with two decimals. */
  sum(where: string): string {
    const { rows, errors } = this.#ledger.query(`SELECT sum(number) AS total WHERE ${where}`);
    expect(errors).toEqual([]);
    return Number(rows[0]?.[0] ?? 0).toFixed(2);
  }
}

interface Kept {
  engine: Engine;
  statement: Statement;
}

/** Notes through the whole bot, exported, and read by the engine. */
function keep(notes: readonly { text: string; at: number }[], end: number): Kept {
  const chat = openChat({ start: new Date(notes[0]!.at).toISOString() });
  try {
    for (const { text, at } of notes) {
      chat.at(new Date(at).toISOString());
      chat.say(text);
    }
    chat.at(new Date(end).toISOString());
    const statement = chat.statement();
    const asked = { through: statement.through, currency: "USD", mileageRates: {}, pictures: [] };
    const journal = tablesOf(chat.ledger.books, asked).find(({ name }) => name === "money journal")!;
    const entries = entriesOf(
      journal.rows,
      journal.columns.map(({ heading }) => heading),
    );
    return { engine: new Engine(sourceOf(entries)), statement };
  } finally {
    chat.end();
  }
}

/** Kept once, as each of them is looked at by several rows. */
function once(make: () => Kept): () => Kept {
  let kept: Kept | undefined;
  return () => {
    kept ??= make();
    return kept;
  };
}

const october = once(() => {
  const at = (day: Day) => Date.parse(`${day}T18:00:00Z`);
  return keep(
    octoberNotes.map((text) => ({ text, at: at("2026-10-31") })),
    at(octoberEnd),
  );
});

const halfYear = once(() => {
  const end = Date.parse("2026-11-25T18:00:00Z");
  return keep(
    demoNotes().map(({ text, daysAgo }) => ({ text, at: end - daysAgo * 86_400_000 })),
    end,
  );
});

function within(month: Month): string {
  return `date >= ${firstDayOf(month)} AND date < ${firstDayOf(addMonths(month, 1))}`;
}

/** A sum with its sign turned: what income accounts hold is credit. */
function credit(amount: string): string {
  return (0 - Number(amount)).toFixed(2);
}

function expectSameMonths({ engine, statement }: Kept): void {
  for (const line of statement.months) {
    const during = within(line.month);
    const sum = (account: string) => engine.sum(`account ~ '^${account}' AND ${during}`);
    expect({ month: line.month, proceeds: line.proceeds }).toEqual({
      month: line.month,
      proceeds: credit(sum("Income:(Sales|DepositsKept|Refunds)")),
    });
    expect(line.costOfSold).toBe(sum("Expenses:CostOfSold"));
    expect(line.fees).toBe(sum("Expenses:Fees"));
    expect(line.overhead).toBe(sum("Expenses:Overhead"));
    expect(line.writtenOff).toBe(sum("Expenses:WrittenOff"));
    expect(line.otherIncome).toBe(credit(sum("Income:Other")));
    // The interest of the loan is no cost of the trade: the profit is all other income and expense.
    const trade = engine.sum(
      `account ~ '^(Income:(Sales|DepositsKept|Refunds)|Expenses:(CostOfSold|Fees|Overhead|WrittenOff))' AND ${during}`,
    );
    expect(line.flipProfit).toBe(credit(trade));
    expect(line.cashIn).toBe(
      engine.sum(`account ~ '^Assets:Cash' AND number > 0 AND payee != 'pay' AND ${during}`),
    );
    expect(line.cashOut).toBe(
      credit(engine.sum(`account ~ '^Assets:Cash' AND number < 0 AND payee != 'pay' AND ${during}`)),
    );
    expect(line.paidToLoan).toBe(
      credit(engine.sum(`account ~ '^Assets:Cash' AND payee = 'pay' AND ${during}`)),
    );
  }
}

function expectSamePieces({ engine, statement }: Kept): void {
  for (const piece of statement.pieces) {
    const own = (accounts: string) => Number(engine.sum(`account ~ '^(${accounts}):P${piece.number}$'`));
    const proceeds = -own("Income:Sales|Income:DepositsKept|Income:Refunds");
    const cost = own("Assets:Unsold|Expenses:CostOfSold|Expenses:WrittenOff|Equity:Draw");
    const fees = own("Expenses:Fees");
    expect([piece.number, piece.proceeds, piece.fees]).toEqual([
      piece.number,
      proceeds.toFixed(2),
      fees.toFixed(2),
    ]);
    expect((Number(piece.price) + Number(piece.materials)).toFixed(2)).toBe(cost.toFixed(2));
    const drawn = own("Equity:Draw");
    if (piece.profit !== null) expect(piece.profit).toBe((proceeds - (cost - drawn) - fees).toFixed(2));
    expect(piece.deposit).toBe((0 - own("Liabilities:Deposits")).toFixed(2));
  }
}

function expectSameBalances({ engine, statement }: Kept): void {
  expect(statement.depositsHeld).toBe(credit(engine.sum("account ~ '^Liabilities:Deposits'")));
  expect(statement.unsoldCost).toBe(engine.sum("account ~ '^Assets:Unsold'"));
  const earned = Number(
    credit(engine.sum("account ~ '^(Income|Expenses)' AND NOT account ~ 'LoanInterest'")),
  );
  const tax = statement.months.reduce((sum, month) => sum + Number(month.taxSetAside), 0);
  const sent = Number(credit(engine.sum("account ~ '^Assets:Cash' AND payee = 'pay'")));
  expect(statement.earmarked).toBe((earned - tax - sent - Number(statement.buyersOwe)).toFixed(2));
  const principal = statement.loans.reduce((sum, loan) => sum + Number(loan.principal), 0);
  // Interest left unpaid at the last payment is a debt too.
  const carried = Number(credit(engine.sum("account ~ '^Liabilities:Loan'"))) - principal;
  expect(carried).toBeGreaterThanOrEqual(0);
  const accrued = statement.loans.reduce((sum, loan) => sum + Number(loan.accruedInterest), 0);
  expect(carried).toBeLessThanOrEqual(accrued + 0.005);
}

publishedTable(
  {
    title: "G, an accounting engine over the export",
    part: "double entry of the export",
    ids: rowIds("G", 1, 6),
  },
  ({ row }) => {
    for (const [id, name, kept] of [
      ["G-01", "the month of October", october],
      ["G-02", "half a year of the demo", halfYear],
    ] as const)
      row(id, `${ENGINE}: ${name} balances`, () => {
        const { engine } = kept();
        expect(engine.errors()).toEqual([]);
        expect(engine.sum("account ~ '.'")).toBe("0.00");
      });
    for (const [id, name, kept] of [
      ["G-03", "the month of October", october],
      ["G-04", "half a year of the demo", halfYear],
    ] as const)
      row(
        id,
        `${ENGINE}: ${name}, its months and pieces`,
        () => {
          expectSameMonths(kept());
          expectSamePieces(kept());
        },
        "a piece's profit and the month",
      );
    row(
      "G-05",
      `${ENGINE}: what is held, unsold and owed`,
      () => {
        expectSameBalances(october());
        expectSameBalances(halfYear());
      },
      "deposits",
    );
    row(
      "G-06",
      `${ENGINE}: money given back, a piece given away, one kept for home`,
      () => {
        const { engine, statement } = october();
        expect(engine.sum("account ~ '^Income:Refunds'")).toBe("10.00");
        expect(engine.sum("account ~ '^Expenses:WrittenOff'")).toBe("12.50");
        expect(engine.sum("account ~ '^Equity:Draw'")).toBe("30.00");
        expect(statement.months.at(-1)).toMatchObject({ writtenOff: "12.50" });
      },
      "refunds, returns and what is given away",
    );
  },
);
