import { expect, test } from "vitest";
import type { NudgeView } from "../../core/nudge.ts";
import { nudgeFor } from "../../core/nudge.ts";
import { suggestPrice } from "../../core/past-sales.ts";
import { Ledger } from "../books/ledger.ts";

const TODAY = "2026-05-20";

function nudge(ledger: Ledger, more: Partial<NudgeView> = {}) {
  const view = { leftOut: [], waits: {}, snoozedUntil: null, openQuestions: [] };
  return nudgeFor({ books: ledger.books(), today: TODAY, ...view, ...more });
}

/** A dresser finished 12 days ago and a desk finished today, 30.00 and 20.00 spent. */
function workshop(): Ledger {
  const ledger = new Ledger();
  const [dresser] = ledger.buy("2026-05-01", ["dresser"], 3000);
  const [desk] = ledger.buy("2026-05-02", ["desk"], 1500);
  ledger.add("spend", "2026-05-03", {
    pieces: [desk!],
    amount: 500,
    data: { what: "paint", category: "materials" },
  });
  ledger.add("finish", "2026-05-08", { pieces: [dresser!] });
  ledger.add("finish", TODAY, { pieces: [desk!] });
  return ledger;
}

test("finished pieces that nobody listed come oldest first, with days, money and buttons", () => {
  const reply = nudge(workshop());
  expect(reply?.text).toBe(
    [
      "First: list #1 dresser.",
      "",
      "Finished, not listed yet:",
      "#1 dresser: 12 days, 30.00 in it",
      "#2 desk: today, 20.00 in it",
      "Tied up: 50.00",
    ].join("\n"),
  );
  expect(reply?.buttons?.map((row) => row.map(({ press }) => press))).toEqual([
    ["nl:1", "nw:1:3", "nx:1"],
    ["nl:2", "nw:2:3", "nx:2"],
  ]);
});

test("a listed, held or sold piece is not among the unlisted", () => {
  const ledger = workshop();
  ledger.add("list", TODAY, { pieces: [1], amount: 19000, data: {} });
  ledger.add("hold", TODAY, { pieces: [2], data: { until: "2026-05-25" } });
  expect(nudge(ledger)).toBeNull();
});

test("a piece left out is never named, one that waits is named again on its day", () => {
  expect(nudge(workshop(), { leftOut: [1] })?.text).not.toContain("#1");
  const waiting = { waits: { 1: "2026-05-21", 2: "2026-05-20" } };
  expect(nudge(workshop(), waiting)?.text).toBe("Finished, not listed yet:\n#2 desk: today, 20.00 in it");
});

test("snoozed: silence until the day itself", () => {
  expect(nudge(workshop(), { snoozedUntil: "2026-05-21" })).toBeNull();
  expect(nudge(workshop(), { snoozedUntil: "2026-05-20" })).not.toBeNull();
});

test("nothing to say: silence", () => {
  expect(nudge(new Ledger())).toBeNull();
});

test("many pieces are cut to a phone's length and the rest counted", () => {
  const ledger = new Ledger();
  for (let index = 0; index < 9; index++) {
    const [piece] = ledger.buy("2026-04-01", ["stool"], 1000);
    ledger.add("finish", `2026-05-1${index}`, { pieces: [piece!] });
  }
  const reply = nudge(ledger);
  expect(reply?.text.split("\n")).toHaveLength(10);
  expect(reply?.text).toContain("and 4 more");
  expect(reply?.text).toContain("Tied up: 90.00");
  expect(reply?.buttons).toHaveLength(5);
});

test("a set is one line and one row of buttons, left out whole by any of its pieces", () => {
  const ledger = new Ledger();
  const chairs = ledger.buy("2026-05-01", ["chair", "chair", "chair", "chair"], 4000, { set: true });
  ledger.add("finish", "2026-05-10", { pieces: chairs });
  const reply = nudge(ledger);
  expect(reply?.text).toBe("Finished, not listed yet:\n#1 chair (4 pieces): 10 days, 40.00 in it");
  expect(reply?.buttons).toHaveLength(1);
  expect(nudge(ledger, { leftOut: [3] })).toBeNull();
});

test("a listing of two weeks is named with a price from the owner's own sales; a reprice starts it anew", () => {
  const ledger = new Ledger();
  for (const price of [12000, 14500, 16000]) {
    const [sold] = ledger.buy("2026-01-05", ["desk"], 2000);
    ledger.add("sell", "2026-02-01", { pieces: [sold!], amount: price, data: {} });
  }
  const [desk] = ledger.buy("2026-03-01", ["desk"], 2500);
  ledger.add("list", "2026-05-06", { pieces: [desk!], amount: 18000, data: {} });
  expect(nudge(ledger)?.text).toBe("Listed two weeks, no sale:\n#4 desk at 180.00: 14 days, try 145.00");
  expect(nudge(ledger, { today: "2026-05-19" })).toBeNull();
  ledger.add("reprice", "2026-05-10", { pieces: [desk!], amount: 17000, data: {} });
  expect(nudge(ledger)).toBeNull();
  expect(nudge(ledger, { today: "2026-05-24" })?.text).toContain("at 170.00: 14 days, try 145.00");
});

test("without sales of its kind the usual share of the list price is suggested, never at or under cost", () => {
  const ledger = new Ledger();
  const [bench] = ledger.buy("2026-01-05", ["bench"], 2000);
  ledger.add("list", "2026-01-10", { pieces: [bench!], amount: 10000, data: {} });
  ledger.add("sell", "2026-02-01", { pieces: [bench!], amount: 9000, data: {} });
  const [hutch] = ledger.buy("2026-03-01", ["hutch"], 5000);
  ledger.add("list", "2026-04-01", { pieces: [hutch!], amount: 22000, data: {} });
  const books = ledger.books();
  expect(suggestPrice(books, books.pieces.get(hutch!)!, 5000)).toBe(19500);
  expect(suggestPrice(books, books.pieces.get(hutch!)!, 19500)).toBeNull();
});

test("holds past their day, pieces not started for a month, and open questions have a line each", () => {
  const ledger = new Ledger();
  const [hutch] = ledger.buy("2026-05-01", ["hutch"], 2000);
  ledger.add("hold", "2026-05-10", { pieces: [hutch!], data: { buyer: "neighbor", until: "2026-05-15" } });
  ledger.buy("2026-04-20", ["bench"], 1000);
  const [sanded] = ledger.buy("2026-04-01", ["table"], 1000);
  ledger.add("work", "2026-04-20", { pieces: [sanded!], data: { minutes: 60 } });
  const long = `sold ${"very ".repeat(30)}nice dresser 190`;
  const reply = nudge(ledger, { openQuestions: ["sold dresser 190", long] });
  const lines = reply?.text.split("\n") ?? [];
  expect(lines.slice(0, 2)).toEqual(["First: ask whether the buyer still comes.", ""]);
  expect(lines.slice(2, 9)).toEqual([
    "Hold past its day:",
    "#1 hutch for neighbor: was till Fri May 15",
    "",
    "Not started for a month:",
    "#2 bench: bought 30 days ago",
    "",
    "Waiting for your answer:",
  ]);
  expect(lines[9]).toBe("sold dresser 190");
  expect(lines[10]).toHaveLength(60);
  expect(reply?.buttons).toEqual([[{ label: "Leave out #2", press: "nx:2" }]]);
});

test("a hold past its day tells what is left to pay of the price agreed on", () => {
  const ledger = new Ledger();
  const [hutch] = ledger.buy("2026-05-01", ["hutch"], 2000);
  const data = { until: "2026-05-15", agreed: 9_000 };
  ledger.add("hold", "2026-05-10", { pieces: [hutch!], amount: 2_000, data });
  expect(nudge(ledger)?.text).toContain("#1 hutch: was till Fri May 15, 70.00 at pickup");
});

test("on its own day a hold is not past", () => {
  const ledger = new Ledger();
  const [hutch] = ledger.buy("2026-05-01", ["hutch"], 2000);
  ledger.add("hold", "2026-05-10", { pieces: [hutch!], data: { until: TODAY } });
  expect(nudge(ledger)).toBeNull();
  expect(nudge(ledger, { today: "2026-05-21" })?.text).toContain("was till Wed May 20");
});
