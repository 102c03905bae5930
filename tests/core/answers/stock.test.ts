import { describe, expect, it } from "vitest";
import { Ledger } from "../../books/ledger.ts";
import { linesOf } from "./asking.ts";

const TODAY = "2026-05-31";

/** A shop floor with a piece in each state. */
function floor(): Ledger {
  const ledger = new Ledger();
  ledger.buy("2026-05-01", ["dresser"], 3_000);
  ledger.buy("2026-05-02", ["desk"], 2_000);
  ledger.add("start", "2026-05-03", { pieces: [2], data: {} });
  ledger.buy("2026-05-04", ["hutch"], 4_000);
  ledger.add("finish", "2026-05-21", { pieces: [3], data: {} });
  ledger.buy("2026-05-05", ["bench"], 1_500);
  ledger.add("finish", "2026-05-30", { pieces: [4], data: {} });
  ledger.buy("2026-05-06", ["stool"], 500);
  ledger.add("list", "2026-05-10", { pieces: [5], amount: 4_000, data: {} });
  ledger.add("reprice", "2026-05-20", { pieces: [5], amount: 3_500, data: {} });
  ledger.buy("2026-05-07", ["lamp"], 700);
  ledger.add("list", "2026-05-12", { pieces: [6], amount: 2_500, data: {} });
  ledger.add("hold", "2026-05-29", {
    pieces: [6],
    amount: 1_000,
    data: { buyer: "neighbor", until: "2026-05-30" },
  });
  ledger.buy("2026-05-08", ["crate"], 300);
  ledger.add("retire", "2026-05-09", { pieces: [7], data: { how: "scrapped" } });
  return ledger;
}

describe("the lists of pieces", () => {
  const books = floor().books();

  it("unlisted: finished ones nobody listed, oldest first, with days and money tied up", () => {
    expect(linesOf(books, TODAY, "unlisted")).toEqual([
      "2 finished, not listed, 55.00 tied up",
      "#3 hutch: 10 days, 40.00",
      "#4 bench: 1 day, 15.00",
    ]);
  });

  it("listed: with the price, what it was, how long, and held ones marked", () => {
    expect(linesOf(books, TODAY, "listed")).toEqual([
      "2 listed, asking 60.00",
      "#5 stool: 35.00 (was 40.00), 21 days",
      "#6 lamp: 25.00, 19 days, held",
    ]);
  });

  it("held: for whom, what deposit, and past its day", () => {
    expect(linesOf(books, TODAY, "held")).toEqual([
      "1 on hold, 10.00 in deposits",
      "#6 lamp: 10.00, for neighbor, until Sat May 30, past",
    ]);
  });

  it("unsold: cost tied up and age, oldest first", () => {
    const lines = linesOf(books, TODAY, "unsold");
    expect(lines[0]).toBe("6 unsold, 117.00 tied up");
    expect(lines[1]).toBe("#1 dresser: 30.00, 30 days, bought");
    expect(lines).toHaveLength(7);
  });

  it("pieces: by status, then the latest gone", () => {
    expect(linesOf(books, TODAY, "pieces")).toEqual([
      "6 unsold",
      "Held:",
      "  #6 lamp: cost 7.00, asking 25.00",
      "Listed:",
      "  #5 stool: cost 5.00, asking 35.00",
      "Finished:",
      "  #3 hutch: cost 40.00",
      "  #4 bench: cost 15.00",
      "Started:",
      "  #2 desk: cost 20.00",
      "Bought:",
      "  #1 dresser: cost 30.00",
      "Latest gone:",
      "  #7 crate: scrapped Sat May 9, -3.00",
    ]);
  });

  it("cuts a long list and says how much is left out", () => {
    const ledger = new Ledger();
    for (let count = 0; count < 30; count++) ledger.buy("2026-05-01", ["chair"], 100);
    const lines = linesOf(ledger.books(), TODAY, "unsold");
    expect(lines).toHaveLength(21);
    expect(lines.at(-1)).toBe("and 11 newer, 11.00");
  });
});
