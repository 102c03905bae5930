import { DateTime } from "luxon";
import { afterEach, expect, test, vi } from "vitest";
import type { NewFact } from "../../../core/books/facts.ts";
import { addMonths, firstDayOf } from "../../../core/calendar.ts";
import type { BackupResult } from "../../../db/backup.ts";
import { buy, clearLedgers, record } from "../../db/ledgers.ts";
import { Simulation } from "./simulation.ts";

/** The days on which a copy was asked for. Real copies, a disk's work each, have tests of their own. */
const copied = vi.hoisted(() => new Set<string>());
vi.mock("../../../db/backup.ts", async (original) => ({
  ...(await original<object>()),
  backUp: (_connection: unknown, _directory: string, day: string): BackupResult => {
    copied.add(day);
    return { kind: "made", backup: { day, path: "" } };
  },
}));

afterEach(() => {
  copied.clear();
  clearLedgers();
});

/** Mulberry32: small, seeded, the same everywhere. */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const FIRST_MONTH = "2027-11";
/** Through a leap day, both changes of the clocks in either half of the world, and a turn of the year. */
const MONTHS = 14;

/** A finished piece that never sells, so that every day has something to say, and a sale in every month. */
function seed(simulation: Simulation): void {
  const { ledger } = simulation;
  record(ledger, buy(ledger, 2000, "2027-11-01"));
  record(ledger, { kind: "finish", day: "2027-11-01", pieces: [1], data: {} });
  for (let index = 0; index < MONTHS; index++) {
    const day = firstDayOf(addMonths(FIRST_MONTH, index)).replace(/01$/, "15");
    const piece = ledger.nextPiece;
    const facts: NewFact[] = [buy(ledger, 1000, day, "stool")];
    record(ledger, ...facts, { kind: "sell", day, pieces: [piece], amount: 2500, data: {} });
  }
}

/**
 * Runs the bot from November to the December a year later: it looks at odd minutes, is restarted at random
 * hours, is down for up to a day and a half, and its clock is put back now and then. Returns what another
 * calendar library says ought to have been sent.
 */
function live(
  simulation: Simulation,
  seedNumber: number,
): { days: Set<string>; months: Set<string>; nights: Set<string> } {
  const random = randomFrom(seedNumber);
  const days = new Set<string>();
  const months = new Set<string>();
  const nights = new Set<string>();
  const note = () => {
    const local = DateTime.fromMillis(simulation.now, { zone: simulation.zone });
    nights.add(local.toISODate()!);
    if (local.hour >= 18) days.add(local.toISODate()!);
    const month = local.minus({ months: 1 }).toFormat("yyyy-MM");
    if ((local.day > 1 || local.hour >= 9) && month >= FIRST_MONTH) months.add(month);
  };
  const end = DateTime.fromISO("2029-01-02T12:00", { zone: simulation.zone }).toMillis();
  simulation.start();
  note();
  while (simulation.now < end) {
    const chance = random();
    const gap =
      chance < 0.01 ? 36 * HOUR * random() : chance < 0.02 ? -3 * HOUR * random() : 240 * MINUTE * random();
    simulation.now += Math.round(gap);
    if (chance < 0.02 || random() < 0.03) simulation.restart();
    else simulation.at(simulation.now);
    note();
  }
  simulation.stop();
  return { days, months, nights };
}

test.each([
  ["America/New_York", 1],
  // Midnight itself is skipped in September and comes twice in April.
  ["America/Santiago", 2],
  // Half an hour of summer time, on the other side of the date line.
  ["Australia/Lord_Howe", 3],
])(
  "a year in %s: one nudge a day and one recap a month, whatever happens (seed %i)",
  (zone, seedNumber) => {
    const simulation = new Simulation(zone, DateTime.fromISO("2027-11-01T03:00", { zone }).toMillis());
    seed(simulation);
    const expected = live(simulation, seedNumber);
    expect(simulation.log.failures).toEqual([]);

    const nudges = simulation.keys("nudge:");
    expect(nudges).toEqual([...new Set(nudges)]);
    expect(new Set(nudges)).toEqual(new Set([...expected.days].map((day) => `nudge:${day}`)));
    expect(nudges).toContain("nudge:2028-02-29");
    expect(nudges.length).toBeGreaterThan(365);

    const recaps = simulation.keys("recap:");
    expect(recaps).toEqual([...expected.months].map((month) => `recap:${month}`));
    expect(recaps).toHaveLength(MONTHS);
    expect(simulation.keys("recap picture:")).toHaveLength(MONTHS);
    expect(copied).toEqual(expected.nights);
  },
  180_000,
);
