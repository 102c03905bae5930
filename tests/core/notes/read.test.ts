import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { answers } from "../../../core/answers/list.ts";
import { printReading, readMessage } from "../../../core/notes/read.ts";
import type { ReadingOf } from "../../../core/notes/reading.ts";
import { FURNITURE } from "../../../core/notes/words/furniture.ts";
import { verbs } from "../../../core/verbs/list.ts";

const TODAY = "2026-05-12";
const first = (text: string) => readMessage(text, TODAY)[0]!;
const printed = (text: string) => readMessage(text, TODAY).map(printReading);

describe("the lists", () => {
  it.each(verbs.map((verb) => [verb.kind, verb.example] as const))(
    "%s reads its own example: %s",
    (kind, example) => {
      const readings = readMessage(example, TODAY);
      expect(readings.map((reading) => reading.kind)).toEqual([kind]);
      expect(readings[0]!.missing).toBeUndefined();
    },
  );

  it.each(answers.map((answer) => [answer.about, answer.example] as const))(
    "%s is asked by: %s",
    (about, example) => {
      const readings = readMessage(example, TODAY) as ReadingOf<"ask">[];
      expect(readings.map((reading) => [reading.kind, reading.about])).toEqual([["ask", about]]);
    },
  );

  it.each([
    ["verbs", "defineVerb(", verbs.length],
    ["answers", "defineAnswer(", answers.length],
  ])("every file of core/%s that defines one is listed", (room, call, listed) => {
    const folder = new URL(`../../../core/${room}/`, import.meta.url);
    const defining = readdirSync(folder).filter((file) => {
      const text = readFileSync(new URL(file, folder), "utf8");
      return text.includes(`= ${call}`);
    });
    expect(defining.length).toBe(listed);
  });

  it("knows at least 80 kinds of furniture, singular and plural", () => {
    const names = new Set(FURNITURE.map(([name]) => name!.replace("+", "")));
    expect(names.size).toBeGreaterThanOrEqual(80);
    for (const [spelling = ""] of FURNITURE) {
      const name = spelling.replace("+", "").normalize("NFD").replace(/\p{M}/gu, "");
      expect(printed(`sold ${spelling.replace("+", " ")} 30`)).toEqual([
        { kind: "sell", pieces: [{ name, count: 1 }], price: "30.00" },
      ]);
    }
  });
});

describe("lines and clauses", () => {
  it("handles each line on its own and numbers it", () => {
    const readings = readMessage("sold desk 90\n\nwhatever this is\r\ngas 20, drove 18 miles", TODAY);
    expect(readings.map(({ kind, line }) => [kind, line])).toEqual([
      ["sell", 0],
      ["unclear", 2],
      ["spend", 3],
      ["drive", 3],
    ]);
  });

  it("keeps each clause as typed", () => {
    const readings = readMessage("Sold LAMP 20, gas 15, drove 18 Miles!", TODAY);
    expect(readings.map(({ text }) => text)).toEqual(["Sold LAMP 20", "gas 15", "drove 18 Miles"]);
  });

  it("carries pieces to it and them, and marks that it did", () => {
    const [, listed] = readMessage("finished 2 lamps and listed them for 40 each", TODAY);
    expect(listed).toMatchObject({ kind: "list", follows: true });
  });

  it("never buys again what a clause before named", () => {
    expect(printed("sold desk 90 bought it for 40")[1]).toEqual({
      kind: "buy",
      price: "40.00",
      missing: ["pieces"],
    });
  });

  it("marks a price said of each", () => {
    expect(first("sold both nightstands 60 each")).toMatchObject({ price: 12_000, each: true });
    expect(first("sold both nightstands 60")).not.toHaveProperty("each");
  });

  it("reads a day more than nine months back and marks it", () => {
    expect(first("bought desk 40 jul 1")).toMatchObject({ date: "2025-07-01", longAgo: true });
    expect(first("bought desk 40 sep 1")).not.toHaveProperty("longAgo");
  });

  it("tells sets from other counts", () => {
    expect(first("bought set of 4 chairs 80")).toMatchObject({
      pieces: [{ name: "chair", count: 4, set: true }],
    });
    expect(first("bought 4 chairs 80")).not.toMatchObject({ pieces: [{ set: true }] });
  });
});

describe("unclear notes", () => {
  it("offers the three readings of a piece and a number, as typed", () => {
    const reading = first("white dresser 30") as ReadingOf<"unclear">;
    const pieces = [{ name: "dresser", count: 1, traits: ["white"] }];
    expect(reading.could).toMatchObject([
      { kind: "buy", pieces, price: 3000 },
      { kind: "list", pieces, price: 3000 },
      { kind: "sell", pieces, price: 3000 },
    ]);
  });

  it.each([
    ["sold stool 15 20", "Two numbers"],
    ["sold vanity -45", "below zero"],
    ["bought desk 19.995", "two decimals"],
    ["bought hutch 2,500,000", "too large"],
    ["sold lamp 20 tomorrow", "still to come"],
    ["thinking of selling it for 90", "Not done yet"],
    ["offered 60", "An offer is no sale"],
    ["guy comes at 5", "when they have come"],
    ["lowered hutch 20", "how much came off"],
    ["loan 500", "payment, the balance, or a new loan"],
    ["45", "What is the number"],
    ["export", "for the bot itself"],
    ["didnt sell desk", "did not happen"],
  ])("says why: %s", (note, why) => {
    const reading = first(note) as ReadingOf<"unclear">;
    expect(reading.kind).toBe("unclear");
    expect(reading.why).toContain(why);
  });

  it.each([
    "dresser 30",
    "lowered hutch 20",
    "loan 500",
    "sold desk two fifty",
    "bob bought the desk 120",
    "sold desk 140 pickup tomorrow",
    "sold desk 140, 126 after fees",
    "sold zorply the desk 140",
  ])("every reading offered for %s is whole", (note) => {
    const { could = [] } = first(note) as ReadingOf<"unclear">;
    expect(could.length).toBeGreaterThan(0);
    for (const offered of could) {
      expect(offered.kind).not.toBe("unclear");
      expect(offered.missing, JSON.stringify(offered)).toBeUndefined();
    }
  });

  it("names the words that no reading takes up", () => {
    expect(first("sold desk 140 zorply")).toMatchObject({
      kind: "unclear",
      left: ["zorply"],
      could: [{ kind: "sell", price: 14_000 }],
    });
  });
});
