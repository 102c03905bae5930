import { describe, expect, it } from "vitest";
import { printReading, readMessage } from "../../../core/notes/read.ts";

const read = (note: string) => readMessage(note, "2026-08-12").map(printReading) as Record<string, unknown>[];

/** Notes in which a number or a word could be taken for something else: they are asked about, never guessed at. */
const ASKED = [
  "bought desk 1.2.3",
  "bought desk 45,50",
  "bought desk one fifty",
  "bought desk 2O",
  "bought desk l5",
  "bought screws.75",
  "bought desk 40ish",
  "bought desk like 40",
  "bought desk ~40",
  "bought desk a couple hundred",
  "bought chairs 2/15",
  "bought 4 chairs @ 15",
  "bought desk on the 28",
  "bought desk $40 + $5 tax",
  "bought dresser 30 and nightstand",
  "bought lamp desk 15",
  "bought hinges and desk 40",
  "sold desk at 5",
  "sold desk 2 times",
  "sold desk 90 after fees",
  "sold desk for a buck fifty",
  "sold desk 90 over the weekend",
  "sold desk 90 last month",
  "sold desk 90 christmas",
  "sold the stools 30 each",
  "sold each desk for 40",
  "sold 8 lamp",
  "sold #4 to #6 120",
  "sold desk 90 12/32",
  "lady bought the hutch 220",
  "neighbor bought the desk for 90",
  "guy sold me a desk for 40",
  "paint dresser 20",
  "paint is 20 a can",
  "returned paint 20",
  "made 40 on desk",
  "hold desk 90 for sam",
  "hold desk friday",
  "deposit 20 back on desk",
  "desk fell through kept 20 refunded 20",
  "took 10% off desk",
  "raised desk by 20",
  "drove 12 miles one way",
  "drove 24",
  "drove 30 km",
  "no 35 miles",
  "goal 50 a month",
  "set aside 20 for tax",
  "nudge me at 6",
  "undo the dresser",
  "NS on desk",
  "gonna keep the desk",
  "sold desk 60 i think",
  "bought desk 40 or so",
];

/** Notes with words that look like more than they are, and what they come to. */
const SETTLED: readonly (readonly [string, Record<string, unknown>])[] = [
  ["sold desk..90", { price: "90.00" }],
  ["sold dresser - 45", { price: "45.00" }],
  [
    "sold both the couch and loveseat 300",
    {
      pieces: [
        { name: "couch", count: 1 },
        { name: "loveseat", count: 1 },
      ],
    },
  ],
  ["sold 3 desks each 40", { price: "120.00" }],
  ["bought 4 bar stools 15/each", { price: "60.00", pieces: [{ name: "bar stool", count: 4 }] }],
  ["bought 4 chairs 15 a chair", { price: "60.00", pieces: [{ name: "chair", count: 4 }] }],
  ["sold desk 90 fees were 3.20", { price: "90.00", fee: "3.20" }],
  ["sold desk 90 to lady at 5th street", { price: "90.00", buyer: "lady at 5th street" }],
  ["bought dresser 40 from guy with the blue truck", { kind: "buy", source: "guy with the blue truck" }],
  ["bought desk 20, missing a drawer", { kind: "buy", price: "20.00" }],
  ["bought dresser 30 for my booth", { kind: "buy", price: "30.00" }],
  ["bought 3 shelves for hutch 10", { pieces: [{ name: "shelf", count: 3 }] }],
  ["bought from estate sale dresser 40", { source: "estate sale", pieces: [{ name: "dresser", count: 1 }] }],
  ["bought bookcase, 3 shelf, 25", { price: "25.00", pieces: [{ name: "bookcase", count: 1 }] }],
  ["got 85 for the lamp", { kind: "sell", price: "85.00" }],
  ["got 40 down for desk", { kind: "hold", deposit: "40.00" }],
  ["gas for picking up desk 20", { kind: "spend", amount: "20.00" }],
  ["desk went to the dump", { kind: "retire", how: "scrapped" }],
  ["30 min each on both nightstands", { kind: "work", minutes: 60 }],
  ["7 each way to get desk", { kind: "drive", miles: "14" }],
];

describe("traps", () => {
  it.each(ASKED)("asked: %s", (note) => {
    for (const reading of read(note)) expect(reading.kind === "unclear", JSON.stringify(reading)).toBe(true);
  });

  it.each(SETTLED)("settled: %s", (note, fields) => {
    const readings = read(note);
    expect(readings).toHaveLength(1);
    expect(readings[0]).toMatchObject(fields);
  });

  it("a name is no slip of a word: buyers keep theirs", () => {
    for (const name of ["stan", "mary", "carl", "dale", "bess", "hank", "Stanley", "Marla"])
      expect(read(`sold desk 90 to ${name}`)).toEqual([
        { kind: "sell", buyer: name.toLowerCase(), pieces: [{ name: "desk", count: 1 }], price: "90.00" },
      ]);
  });

  it.each(["gold desk 60", "cold desk 60", "told him 60 for the desk", "bold desk 60", "fold up desk 60"])(
    "ordinary words are not corrected into verbs: %s",
    (note) => expect(read(note)[0]!["kind"]).toBe("unclear"),
  );
});
