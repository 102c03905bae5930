import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { DateTime } from "luxon";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { makeFile } from "../../../bot/files/make.ts";
import { addDays, timeOfInstant } from "../../../core/calendar.ts";
import { listBackups } from "../../../db/backups.ts";
import { addNote, buy, clearLedgers, record, sell } from "../../db/ledgers.ts";
import { decodePng } from "../pictures/pixels.ts";
import { local, Simulation, ZONE } from "./simulation.ts";

let simulation: Simulation;

/** A dresser finished on May 2 and a stool sold on May 10. */
beforeEach(() => {
  simulation = new Simulation(ZONE, local("2026-05-20T12:00"));
  const { ledger } = simulation;
  record(ledger, buy(ledger, 3000, "2026-05-01"));
  record(ledger, { kind: "finish", day: "2026-05-02", pieces: [1], data: {} });
  record(ledger, buy(ledger, 1000, "2026-05-03", "stool"), sell(2, 2500, "2026-05-10"));
});

afterEach(() => {
  simulation.stop();
  clearLedgers();
});

const set = (change: () => void) => simulation.ledger.transaction(change);

test("the nudge is queued at six, not before, to the owner, and wakes the sender", () => {
  simulation.start();
  simulation.at(local("2026-05-20T17:59:59"));
  expect(simulation.keys()).toEqual([]);
  simulation.at(local("2026-05-20T18:00"));
  expect(simulation.queued()).toMatchObject([{ key: "nudge:2026-05-20", chat: "1001" }]);
  expect(simulation.textOf("nudge:2026-05-20")).toContain("#1 dresser: 18 days, 30.00 in it");
  expect(simulation.wakes).toBe(1);
  simulation.at(local("2026-05-20T18:01"));
  expect(simulation.keys()).toHaveLength(1);
  expect(simulation.wakes).toBe(1);
});

test("down at the hour: sent on coming back that day; back the day after: that one is gone", () => {
  simulation.now = local("2026-05-20T23:40");
  simulation.start();
  expect(simulation.keys()).toEqual(["nudge:2026-05-20"]);
  simulation.at(local("2026-05-22T08:00"));
  expect(simulation.keys()).toEqual(["nudge:2026-05-20"]);
});

test("the owner's own hour, off, and snooze", () => {
  set(() => simulation.ledger.settings.set("nudgeAt", "07:30"));
  simulation.now = local("2026-05-20T07:29");
  simulation.start();
  expect(simulation.keys()).toEqual([]);
  simulation.at(local("2026-05-20T07:30"));
  expect(simulation.keys()).toEqual(["nudge:2026-05-20"]);
  set(() => simulation.ledger.settings.set("nudgeOff", true));
  simulation.at(local("2026-05-21T09:00"));
  set(() => {
    simulation.ledger.settings.set("nudgeOff", false);
    simulation.ledger.settings.set("snoozedUntil", "2026-05-24");
  });
  for (const day of ["2026-05-22", "2026-05-23", "2026-05-24"]) simulation.at(local(`${day}T20:00`));
  expect(simulation.keys()).toEqual(["nudge:2026-05-20", "nudge:2026-05-24"]);
});

test("a piece left out or made to wait is not named", () => {
  set(() => simulation.ledger.settings.set("piecesWaiting", { "1": "2026-05-22" }));
  simulation.start();
  simulation.at(local("2026-05-20T18:00"));
  simulation.at(local("2026-05-21T18:00"));
  expect(simulation.keys()).toEqual([]);
  simulation.at(local("2026-05-22T18:00"));
  expect(simulation.keys()).toEqual(["nudge:2026-05-22"]);
  set(() => simulation.ledger.settings.set("leftOutPieces", [1]));
  simulation.at(local("2026-05-23T18:00"));
  expect(simulation.keys()).toEqual(["nudge:2026-05-22"]);
});

test("a day with nothing to say is over at its hour: a piece finished later waits for tomorrow", () => {
  set(() => simulation.ledger.settings.set("leftOutPieces", [1]));
  simulation.start();
  simulation.at(local("2026-05-20T18:00"));
  set(() => simulation.ledger.settings.set("leftOutPieces", []));
  simulation.at(local("2026-05-20T20:00"));
  expect(simulation.keys()).toEqual([]);
  simulation.at(local("2026-05-21T18:00"));
  expect(simulation.keys()).toEqual(["nudge:2026-05-21"]);
});

test("open questions are repeated, another member's with the name", () => {
  const { ledger } = simulation;
  set(() => {
    const other = ledger.members.add({ user: "1002", name: "Sasha", role: "member", joined: 1 });
    for (const [person, text] of [
      [1, "sold dresser 190"],
      [other, "bought desk"],
    ] as const) {
      const reading = { kind: "unclear" as const, text, line: 0 };
      const matter = { reading, said: "2026-05-20", confirmed: [], waiting: [] };
      const ask = { prompt: "?", wants: "choice" as const, choices: [] };
      ledger.questions.open({
        person,
        chat: "home",
        note: addNote(ledger, text, person),
        matter,
        ask,
        asked: 1,
      });
    }
  });
  simulation.start();
  simulation.at(local("2026-05-20T18:00"));
  expect(simulation.textOf("nudge:2026-05-20")).toMatch(
    /Waiting for your answer:\nsold dresser 190\nSasha: bought desk$/,
  );
});

test("the chat where the owner talks comes before the owner's own", () => {
  set(() => simulation.ledger.settings.set("ownerChat", "terminal"));
  simulation.now = local("2026-05-20T18:00");
  simulation.start();
  expect(simulation.queued()[0]?.chat).toBe("terminal");
});

test("on the first at nine: last month told and drawn, once, and the picture can be made", async () => {
  simulation.start();
  simulation.at(local("2026-06-01T08:59"));
  expect(simulation.keys("recap")).toEqual([]);
  simulation.at(local("2026-06-01T09:00"));
  simulation.restart();
  simulation.at(local("2026-06-30T23:59"));
  expect(simulation.keys("recap")).toEqual(["recap:2026-05", "recap picture:2026-05"]);
  expect(simulation.textOf("recap:2026-05")).toMatch(/^May 2026: \+15\.00, 1 flipped\n/);
  const body = simulation.queued().find(({ key }) => key === "recap picture:2026-05")!.body;
  if (body.kind !== "file") throw new Error("no file");
  expect(body.caption).toMatch(/^May 2026: 1 piece flipped, flip profit 15\.00 USD\./);
  const { name, bytes } = await makeFile(simulation.ledger, body.make);
  expect(name).toBe("month-2026-05.png");
  expect(decodePng(bytes).width).toBe(1080);
});

test("down on the first: told on coming back; a month without entries is not told", () => {
  simulation.now = local("2026-06-03T06:00");
  simulation.start();
  expect(simulation.keys("recap")).toEqual(["recap:2026-05", "recap picture:2026-05"]);
  simulation.at(local("2026-07-01T10:00"));
  expect(simulation.keys("recap")).toHaveLength(2);
});

test("while nobody is owner nothing is said and no day is used up", () => {
  set(() => simulation.ledger.members.remove(1, 1));
  simulation.now = local("2026-05-20T18:00");
  simulation.start();
  expect(simulation.keys()).toEqual([]);
  set(() => simulation.ledger.members.add({ user: "1001", name: "Robin", role: "owner", joined: 2 }));
  simulation.at(local("2026-05-20T18:01"));
  expect(simulation.keys()).toEqual(["nudge:2026-05-20"]);
});

test("each local day has its copy, made at the first look after midnight and not again", () => {
  simulation.start();
  expect(listBackups(simulation.directory).map(({ day }) => day)).toEqual(["2026-05-20"]);
  simulation.at(local("2026-05-20T23:59"));
  simulation.at(local("2026-05-21T00:00:10"));
  simulation.at(local("2026-05-21T00:00:30"));
  expect(listBackups(simulation.directory).map(({ day }) => day)).toEqual(["2026-05-20", "2026-05-21"]);
});

test("a failed backup is told that day, once, and tried again each hour", () => {
  // A file where the folder of copies should be: nothing can be written there.
  writeFileSync(join(simulation.directory, "backups"), "");
  simulation.start();
  for (const time of ["12:30", "13:30", "14:30"]) simulation.at(local(`2026-05-20T${time}`));
  expect(simulation.keys("backup failed")).toEqual(["backup failed:2026-05-20"]);
  expect(simulation.textOf("backup failed:2026-05-20")).toMatch(/^Today's backup failed: /);
  expect(simulation.log.failures.filter(({ event }) => event === "backup failed")).toHaveLength(3);
  simulation.at(local("2026-05-21T00:10"));
  expect(simulation.keys("backup failed")).toEqual(["backup failed:2026-05-20", "backup failed:2026-05-21"]);
});

test("a job that throws is logged and holds back no other", () => {
  vi.spyOn(simulation.ledger.settings, "get").mockImplementationOnce(() => {
    throw new Error("disk");
  });
  simulation.now = local("2026-05-20T18:00");
  simulation.start();
  expect(simulation.log.failures).toMatchObject([
    { event: "the schedule failed", fields: { job: "backup" } },
  ]);
  expect(simulation.keys()).toEqual(["nudge:2026-05-20"]);
});

test("it looks by itself, and no more once stopped", () => {
  vi.useFakeTimers();
  try {
    simulation.start();
    simulation.now = local("2026-05-20T18:00");
    vi.advanceTimersByTime(60_000);
    expect(simulation.keys()).toEqual(["nudge:2026-05-20"]);
    simulation.stop();
    simulation.now = local("2026-05-21T18:00");
    vi.advanceTimersByTime(600_000);
    expect(simulation.keys()).toHaveLength(1);
  } finally {
    vi.useRealTimers();
  }
});

test("on the days when clocks change, an hour that is skipped or comes twice still gives one nudge", () => {
  set(() => simulation.ledger.settings.set("nudgeAt", "02:30"));
  // Chicago, March 14, 2027: 01:59 is followed by 03:00. November 7: 01:00 to 01:59 comes twice.
  simulation.now = local("2027-03-14T01:59");
  simulation.start();
  expect(simulation.keys("nudge")).toEqual([]);
  simulation.at(simulation.now + 60_000);
  expect(timeOfInstant(simulation.now, ZONE)).toBe("03:00");
  expect(simulation.keys("nudge")).toEqual(["nudge:2027-03-14"]);
  set(() => simulation.ledger.settings.set("nudgeAt", "01:30"));
  const firstHalfPastOne = local("2027-11-07T00:30") + 3_600_000;
  simulation.at(firstHalfPastOne);
  simulation.at(firstHalfPastOne + 3_600_000);
  expect(timeOfInstant(simulation.now, ZONE)).toBe("01:30");
  expect(simulation.keys("nudge")).toEqual(["nudge:2027-03-14", "nudge:2027-11-07"]);
});

test("a journey across the date line neither repeats a day nor loses the next", () => {
  simulation.zone = "Pacific/Auckland";
  simulation.now = DateTime.fromISO("2026-05-21T18:30", { zone: "Pacific/Auckland" }).toMillis();
  simulation.start();
  simulation.zone = "Pacific/Honolulu";
  const landed = DateTime.fromISO("2026-05-20T20:00", { zone: "Pacific/Honolulu" }).toMillis();
  simulation.at(landed);
  simulation.at(landed + 24 * 3_600_000);
  expect(simulation.keys("nudge")).toEqual(["nudge:2026-05-21", "nudge:2026-05-20"]);
  expect(addDays("2026-05-20", 1)).toBe("2026-05-21");
});
