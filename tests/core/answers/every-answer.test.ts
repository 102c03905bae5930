import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { earningsOf } from "../../../core/answers/earnings.ts";
import { figuresOf, movedLines } from "../../../core/answers/lines.ts";
import { answers } from "../../../core/answers/list.ts";
import type { Fact } from "../../../core/books/facts.ts";
import { emptyBooks, foldFacts } from "../../../core/books/fold.ts";
import { monthRows } from "../../../core/books/month.ts";
import { firstDayOf, lastDayOf } from "../../../core/calendar.ts";
import { readMessage } from "../../../core/notes/read.ts";
import type { Question } from "../../../core/notes/reading.ts";
import { histories, type Step, Teller } from "../../books/histories.ts";
import { ask, type Fields, linesOf, springLedger } from "./asking.ts";

const TODAY = "2026-04-08";
const QUESTIONS = answers.map(({ about }) => about as Question);
/** Wider lines wrap on a phone held upright; a recap is read aloud and may wrap. */
const LINE_LENGTH_MAX = 60;

/** The facts left standing by a random history, and its last day. */
function standingOf(steps: readonly Step[]): { standing: Fact[]; last: string } {
  const teller = new Teller();
  let standing: Fact[] = [];
  for (const step of steps) {
    const told = teller.tell(step, standing);
    if (told && foldFacts(told.facts).kind === "folded") standing = told.facts;
  }
  return { standing, last: teller.today };
}

function booksOf(facts: readonly Fact[]) {
  const folded = foldFacts(facts);
  if (folded.kind === "impossible") throw new Error(JSON.stringify(folded));
  return folded.books;
}

describe("every answer", () => {
  it("has its file in the list, and no two are about the same", () => {
    const files = readdirSync("core/answers").filter((file) =>
      /defineAnswer\(\{/.test(readFileSync(`core/answers/${file}`, "utf8")),
    );
    expect(files.length).toBe(answers.length);
    expect(new Set(QUESTIONS).size).toBe(answers.length);
  });

  it.each(answers.map(({ about, example }) => [example, about]))("%s asks it", (example, about) => {
    expect(readMessage(example!, TODAY)).toMatchObject([{ kind: "ask", about }]);
  });

  it.each(QUESTIONS)("%s on empty books says so with a note that would start it", (about) => {
    const { text } = ask(emptyBooks(), TODAY, about);
    expect(text).not.toBe("");
    if (about === "help") expect(text).toContain("bought dresser 30");
    else expect(text).toMatch(/"[^"]+"/);
  });

  it.each(QUESTIONS)("%s fits a phone", (about) => {
    const lines = linesOf(springLedger().books(), TODAY, about);
    expect(lines.length).toBeLessThanOrEqual(25);
    if (about === "recap") return;
    expect(lines.filter((line) => line.length > LINE_LENGTH_MAX)).toEqual([]);
  });

  it("speaks sense on random books, whatever is asked", () => {
    const fields: Fields[] = [
      {},
      { month: "2023-12" },
      { year: "2024" },
      { price: 4_000, pieces: [{ name: "dresser", count: 2 }] },
    ];
    fc.assert(
      fc.property(histories, (steps) => {
        const { standing, last } = standingOf(steps);
        const books = booksOf(standing);
        const pieces = [...books.pieces.keys()];
        for (const about of QUESTIONS) {
          for (const field of fields) {
            const { text } = ask(books, last, about, field, { pieces: pieces.slice(0, 2) });
            expect(text.trim()).not.toBe("");
            expect(text).not.toMatch(/undefined|null|NaN|Infinity|\d\.\d{3,}(?!\d|%| cents)/);
          }
        }
        for (const number of pieces) {
          expect(ask(books, last, "piece", {}, { pieces: [number] }).text).toContain(`#${number} `);
        }
        const none = {
          flipProfit: NaN,
          otherIncome: NaN,
          owed: 0,
          earmarked: NaN,
          buyersOwe: 0,
          sent: false,
        };
        expect(movedLines(none, figuresOf(books, last)).join("\n")).not.toMatch(/undefined|null|NaN/);
      }),
      { seed: 20260531, numRuns: 60 },
    );
  });

  it("lists what adds up to the month's profit to the cent", () => {
    let told = 0;
    fc.assert(
      fc.property(histories, (steps) => {
        const { standing, last } = standingOf(steps);
        const books = booksOf(standing);
        for (const row of monthRows(books, last)) {
          const span = { from: firstDayOf(row.month), through: lastDayOf(row.month) };
          const earnings = earningsOf(books, span);
          told += earnings.length;
          const sum = earnings.reduce((total, { profit }) => total + profit, 0);
          expect(sum - row.overhead).toBe(row.flipProfit);
          expect(earnings.reduce((total, { proceeds }) => total + proceeds, 0)).toBe(row.proceeds);
        }
      }),
      { seed: 20260531, numRuns: 200 },
    );
    expect(told).toBeGreaterThan(300);
  });
});
