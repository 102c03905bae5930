import { describe, expect, it } from "vitest";
import { printReading, readMessage } from "../../../core/notes/read.ts";

const read = (note: string) => readMessage(note, "2026-08-12").map(printReading) as Record<string, unknown>[];

/** Notes with one amount and numbers said by the way, and what must be left of them. */
const AMOUNTS: readonly (readonly [note: string, field: string, amount: string])[] = [
  ["sold desk 90 at 1420 maple ave", "price", "90.00"],
  ["bought lamp 8 from the guy in booth 14", "price", "8.00"],
  ["got 24x36 mirror 18", "price", "18.00"],
  ["bought desk 30 worth 90", "price", "30.00"],
  ["after 10 people asked i sold the bench for 55", "price", "55.00"],
  ["refunded 15 of the 90 on the lamp", "amount", "15.00"],
  ["sold my $5 lamp for 40", "price", "40.00"],
  ["deposit 30 on the 150 couch", "deposit", "30.00"],
  ["sold couch for 120, was asking 150", "price", "120.00"],
  ["bought armoire tagged 80 for 50", "price", "50.00"],
  ["sold desk for 90, down from 110", "price", "90.00"],
  ["sold couch 150 total including the 40 deposit", "price", "150.00"],
  ["bought desk 15 min ago for 30", "price", "30.00"],
  ["sold couch 180 after 2 weeks", "price", "180.00"],
  ["sold bookshelf 55 at 3pm", "price", "55.00"],
];

/** Notes whose only number is said by the way, or is one of two that nobody can tell apart. */
const NO_AMOUNT = [
  "bought desk at 1420 maple ave",
  "bought trunk from 1207 elm st",
  "sold 24x36 mirror",
  "refunded part of the 90 on the couch",
  "sold couch 150 plus the 40 deposit",
  "gave him a 50 for the 30 dollar desk",
  "sold desk for a little over 90",
  "knobs 2.50 each for the desk",
  "gas 12 gal at 3.20",
  "drove 10 miles twice",
  "bought lamp 12 actually it mightve been 15",
];

const MONEY = ["price", "amount", "deposit", "miles"];

describe("numbers said by the way", () => {
  it.each(AMOUNTS)("%s", (note, field, amount) => {
    const readings = read(note);
    expect(readings).toHaveLength(1);
    expect(readings[0]).toMatchObject({ [field]: amount });
    expect(readings[0]).not.toHaveProperty("missing");
  });

  it.each(NO_AMOUNT)("no amount is taken from: %s", (note) => {
    for (const reading of read(note))
      for (const field of MONEY) expect(reading, JSON.stringify(reading)).not.toHaveProperty(field);
  });

  it("a worth that is asked about stays the amount of the question", () => {
    expect(read("worth 40 for a dresser?")).toMatchObject([{ kind: "ask", about: "worth", price: "40.00" }]);
  });

  it("what is named before a colon is what every clause behind it is about", () => {
    expect(
      read("hutch: sanding 1h, paint 12, hinges 6.50").map(({ kind, pieces }) => [kind, pieces]),
    ).toEqual(["work", "spend", "spend"].map((kind) => [kind, [{ name: "hutch", count: 1 }]]));
  });

  it("a purchase told in two clauses is one", () => {
    expect(read("found a bench at the thrift store and bought it for 6")).toMatchObject([
      { kind: "buy", pieces: [{ name: "bench", count: 1 }], price: "6.00", source: "thrift store" },
    ]);
  });

  it("the same said again is no second fact", () => {
    expect(read("wrapped up the highboy, all finished")).toHaveLength(1);
    expect(read("paint 12, paint 12")).toHaveLength(2);
  });

  it("pieces nobody listed are counted like any other", () => {
    for (const [note, count, price] of [
      ["sold both thingamajigs 70", 2, "70.00"],
      ["bought pair of doodads 42", 2, "42.00"],
      ["bought 3 doodads 30 each", 3, "90.00"],
    ] as const)
      expect(read(note)).toMatchObject([{ pieces: [{ count }], price }]);
  });
});
