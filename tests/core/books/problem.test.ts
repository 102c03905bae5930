import { describe, expect, it } from "vitest";
import {
  goneWords,
  loanWords,
  type Problem,
  problemText,
  problemWords,
} from "../../../core/books/problem.ts";
import { Ledger } from "../../books/ledger.ts";

const ledger = new Ledger();
ledger.buy("2026-05-03", ["desk"], 1_000);
const without = ledger.books();
ledger.add("loan", "2026-05-03", { amount: 1_000, data: { loan: "van", rate: "5" } });
ledger.add("loan", "2026-05-03", { amount: 1_000, data: { loan: "roof", rate: "5" } });
const books = ledger.books();
const number = 1;
const NO_LOAN = 'There is no loan on the books yet. Add it: "loan 14250 at 5.5%".';

describe("the words for a problem", () => {
  const problems: [Problem, string][] = [
    [{ kind: "no such piece", number: 9 }, 'There is no piece #9 on the books. "pieces" lists them.'],
    [
      { kind: "not bought yet", number, bought: "2026-05-03" },
      "#1 desk was bought on 2026-05-03, after that day. Give a later day, or fix the buy first.",
    ],
    [
      { kind: "piece gone", number, how: "scrapped", on: "2026-05-03" },
      "#1 desk was scrapped on 2026-05-03. Undo that first if it is wrong.",
    ],
    [{ kind: "piece not sold", number }, "#1 desk is not sold, so there is nothing to give back."],
    [{ kind: "piece not listed", number }, '#1 desk is not listed yet. List it first: "listed #1 120".'],
    [
      { kind: "cut below zero", number, listPrice: 4_000 },
      "#1 desk is listed at 40.00: it cannot go down by that much. Give the new price.",
    ],
    [{ kind: "piece not held", number }, "#1 desk is not on hold."],
    [{ kind: "piece not held", number: 8 }, "#8 is not on hold."],
    [
      { kind: "deposit held", number, held: 4_500 },
      "A deposit of 45.00 is held on #1 desk. Settle that buyer first: refunded or kept?",
    ],
    [{ kind: "more than held", held: 4_500 }, "Only 45.00 is held there. Give that or less."],
    [{ kind: "more than held", held: 0 }, "No deposit is held there, so none can be refunded or kept."],
    [
      { kind: "more than brought in", number, broughtIn: 123_456 },
      "#1 desk brought in 1,234.56: no more than that can be refunded.",
    ],
    [
      { kind: "more owed than due", due: 4_500 },
      "Only 45.00 of the price is left to pay, so no more can be owed.",
    ],
    [{ kind: "nothing owed", number }, "Nothing is owed on #1 desk that day."],
    [{ kind: "more than buyers owe", owed: 4_500 }, "Only 45.00 is owed there."],
    [
      { kind: "trade below zero", cost: -4_500 },
      "That trade leaves -45.00 for what you got: more cash came back than the piece is worth.",
    ],
    [{ kind: "no such repeat" }, "That standing note is not there any more."],
    [{ kind: "no loan" }, NO_LOAN],
    [{ kind: "no such loan", name: "grad" }, 'There is no loan named "grad". On the books: van, roof.'],
    [
      { kind: "loan name taken", name: "grad" },
      'There is a loan named "grad" already. Give the new one another name: "new loan grad 4100 6.8%".',
    ],
    [
      { kind: "loan not open yet", name: "grad", opened: "2026-05-03" },
      "The grad loan is on the books only from 2026-05-03. Give that day or a later one.",
    ],
    [
      { kind: "more than owed", owed: 4_500 },
      "Only 45.00 is owed that day. Pay that, or give the statement's balance first.",
    ],
    [{ kind: "more than owed", owed: 0 }, "Nothing is owed that day."],
    [
      { kind: "below interest due", interest: 4_500 },
      "The interest due alone is 45.00 that day. Check the statement's balance.",
    ],
  ];

  it.each(problems)("%o is told in at most two short sentences", (problem, words) => {
    expect(problemText(problem, books)).toBe(words);
    expect(words.length).toBeLessThan(160);
  });

  it("where there is no loan at all say so, and not that one is missing", () => {
    expect(problemText({ kind: "no such loan", name: "grad" }, without)).toBe(NO_LOAN);
  });

  it("show its days in a reply as replies show them", () => {
    const problem: Problem = { kind: "not bought yet", number, bought: "2026-05-03" };
    const rest = "after that day. Give a later day, or fix the buy first.";
    expect(problemWords(problem, books, "2026-06-01")).toBe(`#1 desk was bought on Sun May 3, ${rest}`);
    expect(problemWords(problem, books, "2027-01-02")).toBe(`#1 desk was bought on Sun May 3, 2026, ${rest}`);
  });
});

describe("the words for", () => {
  it.each([
    ["sold", "was sold"],
    ["kept", "was kept for yourself"],
    ["given", "was given away"],
    ["scrapped", "was scrapped"],
  ] as const)("a piece that is gone, %s", (how, words) => {
    expect(goneWords(how)).toBe(words);
    expect(goneWords(how, "were")).toBe(words.replace("was", "were"));
  });

  it("a loan name it once", () => {
    expect(["loan", "grad", "student loan", "loan two", "van-loan", "sloan"].map(loanWords)).toEqual([
      "loan",
      "grad loan",
      "student loan",
      "loan two loan",
      "van-loan",
      "sloan loan",
    ]);
  });
});
