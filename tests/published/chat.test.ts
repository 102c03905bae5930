import { expect } from "vitest";
import type { Statement } from "../../core/books/statement.ts";
import { addDays, type Day } from "../../core/calendar.ts";
import { type Chat, openChat } from "../bot/conversation/chat.ts";
import { publishedTable, rowIds } from "./table.ts";

/** Notes by day, through the whole bot; then the statement of the last day's evening. */
function statementAfter(
  notes: readonly (readonly [day: Day, ...notes: string[]])[],
  through?: Day,
): Statement {
  return withChat(notes, through, (chat) => chat.statement());
}

function withChat<T>(
  notes: readonly (readonly [day: Day, ...notes: string[]])[],
  through: Day | undefined,
  look: (chat: Chat) => T,
): T {
  const chat = openChat({ start: `${notes[0]![0]}T15:00:00Z` });
  try {
    for (const [day, ...texts] of notes) {
      chat.at(`${day}T15:00:00Z`);
      for (const text of texts) chat.say(text);
    }
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
    if (through) chat.at(`${through}T22:00:00Z`);
    return look(chat);
  } finally {
    chat.end();
  }
}

const OPENED = "2026-01-31";
const [SALE, HANDED_OVER] = ["2026-03-01", "2026-03-31"] as const;

/** Three pieces sold together for one price, each listed at its own. */
function soldTogether(listed: readonly [string, string, string], price: string): string[] {
  const [desk, chair, lamp] = listed;
  const { pieces } = statementAfter([
    ["2026-03-02", "free desk curb", "free chair curb", "free lamp curb"],
    ["2026-03-03", `listed desk ${desk}`, `listed chair ${chair}`, `listed lamp ${lamp}`],
    ["2026-03-04", `sold desk, chair and lamp together ${price}`],
  ]);
  return pieces.map(({ proceeds }) => proceeds);
}

publishedTable(
  {
    title: "B, notes in and a statement out",
    part: "a piece's profit and the month",
    ids: rowIds("B", 1, 14),
  },
  ({ row }) => {
    row(
      "B-01",
      "US Education Department, Direct Loan Servicing, How can I calculate the amount of interest on my own? (dl.ed.gov, archived 7 May 2009); its factor is rounded first, a cent less",
      () => {
        const { loans } = statementAfter([
          [OPENED, "loan 9500 at 8.25%", "loan 365.25 days"],
          [addDays(OPENED, 32), "paid loan 160"],
        ]);
        expect(loans).toMatchObject([
          { interestPaid: "68.67", principal: "9408.67", accruedInterest: "0.00" },
        ]);
      },
      "interest before principal",
    );
    row(
      "B-02",
      "aie.org, Managing your money, Daily Interest Calculator, example scenario",
      () => {
        const { loans } = statementAfter([
          [OPENED, "loan 8600 at 8.5%", "loan 365.25 days"],
          [addDays(OPENED, 28), "paid loan 150"],
        ]);
        expect(loans).toMatchObject([{ interestPaid: "56.04", principal: "8506.04", balance: "8506.04" }]);
      },
      "interest before principal",
    );
    row(
      "B-03",
      "aspireservicingcenter.com, Ways to pay, Billing, example of 10,000 at 6.80 %",
      () => {
        const { loans } = statementAfter([[OPENED, "loan 10000 at 6.8%"]], addDays(OPENED, 30));
        expect(loans).toMatchObject([{ accruedInterest: "55.89", principal: "10000.00" }]);
      },
      "daily interest",
    );
    row(
      "B-04",
      "Hummelbrunner, Contemporary Business Mathematics, demand loan of 20,000 at a changing rate: 185.08 due on 31 December (as asked at wizedu.com, question 374656)",
      () => {
        const toSeptember: [Day, ...string[]][] = [
          ["2012-04-01", "loan 20000 at 7%"],
          ["2012-06-10", "paid loan 1000"],
          ["2012-08-01", "loan rate 9%"],
          ["2012-09-20", "paid loan 400"],
        ];
        const [owed] = statementAfter(toSeptember).loans;
        // The 400 do not reach the interest: what is missing is carried, and earns none by itself.
        expect(owed).toMatchObject({
          principal: "19268.49",
          interestPaid: "668.49",
          accruedInterest: "29.71",
        });
        const { loans } = statementAfter(
          [
            ...toSeptember,
            // A demand loan adds it to what earns interest, as a lender's statement would say.
            ["2012-09-20", `loan balance ${owed!.balance}`],
            ["2012-11-01", "loan rate 8%"],
            ["2012-11-15", "paid loan 1200"],
          ],
          "2012-12-31",
        );
        expect(loans).toMatchObject([{ accruedInterest: "185.08" }]);
      },
      "unpaid interest carried",
      "changes of a loan's terms",
    );
    row(
      "B-05",
      "IRS, Understanding Taxes, Module 14: Self-Employment Income and the Self-Employment Tax, example, printed in dollars",
      () => {
        const text = withChat([["2026-03-02", "workshop 21657"]], undefined, (chat) => chat.say("tax").text);
        expect(text).toMatch(/Self-employment tax about 3,060\.04\b/);
        expect(text).toMatch(/half of it, 1,530\.02\b/);
      },
      "self-employment tax",
    );
    row(
      "B-06",
      "homeworksource.com, problem 987315, declining balance method (8,550 at 3.25 %); it rounds once at the end: 6,827.755",
      () => {
        const first = addDays(OPENED, 61);
        const second = addDays(first, 132);
        const { loans } = statementAfter(
          [
            [OPENED, "loan 8550 at 3.25%"],
            [first, "paid loan 304"],
            [second, "paid loan 1590"],
          ],
          addDays(second, 46),
        );
        expect(Math.abs(Number(loans[0]!.balance) - 6_827.755)).toBeLessThan(0.01);
      },
      "interest before principal",
    );
    row(
      "B-07",
      "a student-loan servicer's page How payments are applied, example of two loans of 3,000 and 2,000 (read in a copy of 2020)",
      () => {
        const { loans } = statementAfter([
          [OPENED, "first loan 3000 at 5%", "second loan 2000 at 6%", "split payments over all loans"],
          [OPENED, "paid loan 50"],
        ]);
        expect(loans.map(({ principal }) => principal)).toEqual(["2970.00", "1980.00"]);
      },
      "a payment over several loans",
    );
    row(
      "B-08",
      "computed by the order of 34 CFR 685.211(a)(1), interest before principal, and of a servicer's default, the highest rate for the rest",
      () => {
        const { loans } = statementAfter([
          [OPENED, "first loan 5000 at 6.8%", "second loan 7500 at 4.5%"],
          [addDays(OPENED, 30), "paid loan 500"],
        ]);
        expect(loans.map(({ interestPaid, principal }) => [interestPaid, principal])).toEqual([
          ["27.95", "4555.69"],
          ["27.74", "7500.00"],
        ]);
      },
      "a payment over several loans",
    );
    row(
      "B-09",
      "FASB ASC 606-10-55-284, Example 38, case A: paid on 1 March, handed over on 31 March",
      () => {
        const paid = statementAfter([[SALE, "free desk curb", "deposit 1000 on desk"]]);
        expect(paid).toMatchObject({
          depositsHeld: "1000.00",
          months: [{ proceeds: "0.00", cashIn: "1000.00" }],
        });
        const sold = statementAfter([
          [SALE, "free desk curb", "deposit 1000 on desk"],
          [HANDED_OVER, "sold desk 1000"],
        ]);
        expect(sold).toMatchObject({
          depositsHeld: "0.00",
          months: [{ proceeds: "1000.00", cashIn: "1000.00", flipProfit: "1000.00" }],
        });
      },
      "deposits",
    );
    row(
      "B-10",
      "FASB ASC 606-10-55-256, Example 33: 100 over prices of 50, 25 and 75, printed 33, 17 and 50",
      () => {
        const shares = soldTogether(["50", "25", "75"], "100");
        expect(shares).toEqual(["33.33", "16.67", "50.00"]);
        expect(shares.map((share) => Math.round(Number(share)))).toEqual([33, 17, 50]);
      },
      "one price over several pieces",
    );
    row(
      "B-11",
      "Wild, Principles of Financial Accounting, 24th edition, chapter 10, multiple choice 1, in dollars of a thousand",
      () => expect(soldTogether(["175", "70", "105"], "326")).toEqual(["163.00", "65.20", "97.80"]),
      "one price over several pieces",
    );
    row("B-12", "tutorialsmagnet.com, Preparing a retail income statement, in hundredths", () => {
      // Sales 1,066.00 less 82.00 given back; cost 527.00; selling 90.00, general 84.00: 283.00 is left.
      const { months, pieces } = statementAfter([
        ["2026-03-02", "bought table 527", "storage rent 84"],
        ["2026-03-05", "sold table 1066 fee 90"],
        ["2026-03-09", "refunded 82 on table"],
      ]);
      expect(months).toMatchObject([
        { proceeds: "984.00", costOfSold: "527.00", fees: "90.00", overhead: "84.00", flipProfit: "283.00" },
      ]);
      expect(pieces).toMatchObject([{ proceeds: "984.00", profit: "367.00" }]);
    });
    row(
      "B-13",
      "tutorialsmagnet.com, Merchandising: computing income statement amounts, in hundredths",
      () => {
        const { months } = statementAfter([
          ["2026-03-02", "bought table 555", "storage rent 86"],
          ["2026-03-05", "sold table 1279 fee 88"],
          ["2026-03-09", "refunded 39 on table", "refunded 29 on table"],
        ]);
        expect(months).toMatchObject([{ proceeds: "1211.00", costOfSold: "555.00", flipProfit: "482.00" }]);
      },
    );
    row(
      "B-14",
      "tizzit.co, Reach your revenue goal: 20 % of 3,125 set aside",
      () => {
        const { months } = statementAfter([["2026-03-02", "set aside 20% for tax", "workshop 3125"]]);
        expect(months).toMatchObject([{ otherIncome: "3125.00", taxSetAside: "625.00", forLoan: "2500.00" }]);
      },
      "tax set aside",
    );
  },
);
