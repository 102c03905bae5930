import { afterEach, expect, test } from "vitest";
import type { FactOf, NewFact } from "../../../core/books/facts.ts";
import { examineFile } from "../../../db/doctor.ts";
import { Simulation } from "./simulation.ts";

const CHICAGO = "America/Chicago";
let sim: Simulation | null = null;
afterEach(() => {
  sim?.stop();
  sim = null;
});

function begin(now: string, zone = CHICAGO): Simulation {
  sim = new Simulation(zone, Date.parse(now));
  sim.ledger.transaction(() => sim!.ledger.settings.set("ownerChat", "home"));
  return sim;
}

let messages = 0;
function noted(of: Simulation, fact: NewFact): number {
  return of.ledger.transaction(() => {
    const note = of.ledger.addNote({
      chat: "home",
      message: `set ${++messages}`,
      text: fact.kind,
      author: of.ledger.members.owner()!.id,
      said: of.now,
      handled: of.now,
    });
    const recorded = of.ledger.record({ note, author: of.ledger.members.owner()!.id, facts: [fact] });
    if (recorded.kind !== "recorded") throw new Error(recorded.problem.kind);
    return recorded.facts[0]!.place;
  });
}

const storage = (first: string, more: object = {}): NewFact => ({
  kind: "repeat",
  day: first,
  pieces: [],
  amount: 6_000,
  data: {
    every: "month",
    first,
    note: { kind: "spend", what: "storage", category: "storage" },
    ...more,
  } as FactOf<"repeat">["data"],
});
const days = (of: Simulation, kind = "spend") =>
  of.ledger.books.facts.filter((fact) => fact.kind === kind).map(({ day, amount }) => [day, amount]);

test("what is due is recorded once, after days down, restarts and a clock put back", () => {
  const bot = begin("2026-01-31T18:00:00Z");
  noted(bot, storage("2026-01-31", { day: 31 }));
  bot.start();
  expect(days(bot)).toEqual([["2026-01-31", 6_000]]);
  bot.at(Date.parse("2026-02-28T05:59:00Z"));
  expect(days(bot)).toHaveLength(1);
  bot.at(Date.parse("2026-02-28T06:00:00Z"));
  expect(days(bot)).toHaveLength(2);
  bot.restart();
  bot.at(Date.parse("2026-02-27T12:00:00Z"));
  bot.at(Date.parse("2026-02-28T12:00:00Z"));
  expect(days(bot)).toHaveLength(2);
  bot.stop();
  bot.now = Date.parse("2026-05-31T12:00:00Z");
  bot.restart();
  expect(days(bot).map(([day]) => day)).toEqual([
    "2026-01-31",
    "2026-02-28",
    "2026-03-31",
    "2026-04-30",
    "2026-05-31",
  ]);
  expect(examineFile(bot.ledger.connection.path).findings).toEqual([]);
});

test("a change of zone takes no day twice", () => {
  const bot = begin("2026-03-01T07:00:00Z");
  noted(bot, storage("2026-03-01"));
  bot.start();
  expect(days(bot)).toHaveLength(1);
  bot.zone = "America/Los_Angeles";
  bot.at(Date.parse("2026-03-01T07:30:00Z"));
  bot.zone = "Asia/Tokyo";
  bot.at(Date.parse("2026-03-01T08:00:00Z"));
  expect(days(bot)).toHaveLength(1);
});

test("the daily message tells it with an undo, and what is taken back does not come again", async () => {
  const bot = begin("2026-03-01T15:00:00Z");
  noted(bot, storage("2026-03-01"));
  bot.start();
  bot.at(Date.parse("2026-03-02T00:05:00Z"));
  const [told] = bot.queued().filter(({ key }) => key === "nudge:2026-03-01");
  expect(told?.body).toMatchObject({
    kind: "text",
    reply: {
      text: "Recorded by itself:\nStorage 60.00: shop cost, storage",
      buttons: [[{ label: "Undo Storage 60.00: shop cost, storage", press: "ui:2" }]],
    },
  });
  bot.at(Date.parse("2026-03-03T00:05:00Z"));
  expect(bot.keys("nudge:")).toEqual(["nudge:2026-03-01"]);
  const { ledger } = bot;
  ledger.transaction(() => {
    const note = ledger.addNote({
      chat: "home",
      message: "press",
      text: "ui:2",
      author: ledger.members.owner()!.id,
      said: bot.now,
      handled: bot.now,
    });
    ledger.amend({ note, author: ledger.members.owner()!.id, voids: [2], facts: [] });
  });
  bot.at(Date.parse("2026-03-03T15:00:00Z"));
  expect(days(bot)).toEqual([]);
});

test("without a daily message it is told at once", () => {
  const bot = begin("2026-03-01T15:00:00Z");
  bot.ledger.transaction(() => bot.ledger.settings.set("nudgeOff", true));
  noted(bot, storage("2026-03-01"));
  bot.start();
  bot.at(Date.parse("2026-03-01T15:00:20Z"));
  expect(bot.keys("standing:")).toEqual(["standing:2"]);
  expect(bot.textOf("standing:2")).toContain("Storage 60.00");
});

test("a payment that is more than owed is not recorded but asked about, with what is owed, and once", () => {
  const bot = begin("2026-03-01T15:00:00Z");
  noted(bot, {
    kind: "loan",
    day: "2026-02-28",
    pieces: [],
    amount: 40_000,
    data: { loan: "loan", rate: "0" },
  });
  noted(bot, {
    kind: "repeat",
    day: "2026-03-01",
    pieces: [],
    amount: 25_000,
    data: { every: "month", first: "2026-03-01", day: 1, note: { kind: "pay" } },
  });
  bot.start();
  bot.at(Date.parse("2026-04-01T15:00:00Z"));
  bot.at(Date.parse("2026-04-01T15:00:20Z"));
  expect(days(bot, "pay")).toEqual([["2026-03-01", 25_000]]);
  const asked = bot.keys("repeat:");
  expect(asked).toHaveLength(1);
  expect(bot.textOf(asked[0]!)).toContain("250.00 to the loan was due today and is not recorded.");
  expect(bot.ledger.questions.everyOpen()).toHaveLength(1);
  expect(bot.ledger.questions.everyOpen()[0]?.ask.choices[0]?.label).toBe("Pay 150.00");
  bot.at(Date.parse("2026-05-01T15:00:00Z"));
  expect(bot.keys("repeat:")).toHaveLength(2);
});

test("a change of amount and a stop touch only the days from then on", () => {
  const bot = begin("2026-01-05T15:00:00Z");
  const place = noted(bot, storage("2026-01-05"));
  bot.start();
  bot.at(Date.parse("2026-02-10T15:00:00Z"));
  noted(bot, {
    kind: "repeat",
    day: "2026-02-10",
    pieces: [],
    amount: 6_500,
    data: { of: place, from: "2026-02-10" },
  });
  bot.at(Date.parse("2026-03-10T15:00:00Z"));
  noted(bot, {
    kind: "repeat",
    day: "2026-03-10",
    pieces: [],
    data: { of: place, from: "2026-03-10", stop: true },
  });
  bot.at(Date.parse("2026-06-10T15:00:00Z"));
  expect(days(bot)).toEqual([
    ["2026-01-05", 6_000],
    ["2026-02-05", 6_000],
    ["2026-03-05", 6_500],
  ]);
});
