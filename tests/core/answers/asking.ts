import type { Answer, Asked } from "../../../core/answers/answer.ts";
import { answers } from "../../../core/answers/list.ts";
import type { Books } from "../../../core/books/books.ts";
import type { Question, ReadingOf } from "../../../core/notes/reading.ts";
import { Ledger } from "../../books/ledger.ts";

export type Fields = Partial<Omit<ReadingOf<"ask">, "kind" | "about">>;
export type Circumstances = Partial<Omit<Asked, "question" | "books" | "today">>;

/** The answer to a question on some books on a day. */
export function ask(
  books: Books,
  today: string,
  about: Question,
  fields: Fields = {},
  circumstances: Circumstances = {},
): Answer {
  const rule = answers.find((each) => each.about === about);
  if (!rule) throw new Error(`no answer about ${about}`);
  return rule.answer({
    question: { kind: "ask", about, text: about, line: 0, ...fields },
    books,
    today,
    currency: "USD",
    pieces: [],
    mileageRates: {},
    ...circumstances,
  });
}

/** The lines of an answer. */
export function linesOf(...asked: Parameters<typeof ask>): string[] {
  return ask(...asked).text.split("\n");
}

/**
 * An invented spring: a lot of three and a dresser from yard sales, a curb find; four sold, one held whose buyer
 * backed out; a loan, paid on the first of April; then a refund, gas, a drive and new wishes.
 */
export function springLedger(): Ledger {
  const ledger = new Ledger();
  ledger.add("loan", "2026-03-01", { amount: 1_840_000, data: { loan: "loan", rate: "6.53" } });
  ledger.buy("2026-03-02", ["desk", "chair", "mirror"], 10_000);
  ledger.buy("2026-03-03", ["dresser"], 4_000, { source: "yard sale" });
  ledger.add("spend", "2026-03-03", {
    pieces: [4],
    amount: 2_250,
    data: { what: "primer", category: "materials" },
  });
  ledger.add("spend", "2026-03-10", {
    pieces: [1],
    amount: 1_875,
    data: { what: "paint", category: "materials" },
  });
  ledger.buy("2026-03-12", ["side table"], 0);
  ledger.add("spend", "2026-03-12", {
    pieces: [5],
    amount: 999,
    data: { what: "paint", category: "materials" },
  });
  ledger.add("list", "2026-03-13", { pieces: [5], amount: 7_000, data: {} });
  ledger.add("work", "2026-03-13", { pieces: [4, 5], data: { minutes: 150, what: "sanding" } });
  ledger.add("sell", "2026-03-15", { pieces: [5], amount: 6_000, data: { fee: 500, method: "cash" } });
  ledger.add("list", "2026-03-15", { pieces: [4], amount: 22_000, data: {} });
  ledger.add("sell", "2026-03-21", { pieces: [4], amount: 21_000, data: {} });
  ledger.add("sell", "2026-03-28", { pieces: [1], amount: 14_000, data: {} });
  ledger.add("hold", "2026-03-29", { pieces: [3], amount: 3_000, data: { buyer: "neighbor" } });
  ledger.add("fallthrough", "2026-03-30", { pieces: [3], amount: 3_000, data: { kept: true } });
  ledger.add("sell", "2026-03-31", { pieces: [2], amount: 4_500, data: {} });
  ledger.add("pay", "2026-04-01", { amount: 32_209, data: {} });
  ledger.add("refund", "2026-04-05", { pieces: [5], amount: 2_000, data: {} });
  ledger.add("drive", "2026-04-05", { pieces: [3], data: { miles: "31.5" } });
  ledger.add("spend", "2026-04-06", { amount: 2_500, data: { what: "gas", category: "vehicle" } });
  ledger.add("finish", "2026-04-07", { pieces: [3], data: {} });
  return ledger;
}
