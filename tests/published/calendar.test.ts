import { DateTime } from "luxon";
import { expect } from "vitest";
import { accruedOn } from "../../core/books/loan.ts";
import type { Day } from "../../core/calendar.ts";
import {
  addDays,
  dayOfInstant,
  daysBetween,
  firstDayOf,
  isDay,
  lastDayOf,
  monthOf,
} from "../../core/calendar.ts";
import { Ledger } from "../books/ledger.ts";
import { publishedTable, rowIds } from "./table.ts";

const TZ = "IANA tz database 2025b, through the runtime's Intl and through npm luxon 3";
const HOUR_MS = 3_600_000;

/** The first instant of a local day, found by asking `dayOfInstant` alone; luxon must agree. */
function startOf(day: Day, zone: string): number {
  let before = Date.parse(`${addDays(day, -2)}T00:00:00Z`);
  let after = Date.parse(`${addDays(day, 2)}T00:00:00Z`);
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2);
    if (dayOfInstant(middle, zone) >= day) after = middle;
    else before = middle;
  }
  expect(after).toBe(DateTime.fromISO(day, { zone }).startOf("day").toMillis());
  return after;
}

function instant(milliseconds: number): string {
  return new Date(milliseconds).toISOString().replace(".000Z", "Z");
}

function hoursOfDay(day: Day, zone: string): number {
  return (startOf(addDays(day, 1), zone) - startOf(day, zone)) / HOUR_MS;
}

function hoursOfMonth(month: string, zone: string): number {
  const next = addDays(lastDayOf(month), 1);
  return (startOf(next, zone) - startOf(firstDayOf(month), zone)) / HOUR_MS;
}

const NEW_YORK = "America/New_York";

publishedTable(
  { title: "Y, days and months in time zones", part: "days and time zones", ids: rowIds("Y", 1, 20) },
  ({ row }) => {
    row("Y-01", TZ, () => {
      expect(instant(startOf("2026-03-01", NEW_YORK))).toBe("2026-03-01T05:00:00Z");
      expect(instant(startOf("2026-04-01", NEW_YORK))).toBe("2026-04-01T04:00:00Z");
      expect(hoursOfMonth("2026-03", NEW_YORK)).toBe(743);
    });
    row("Y-02", TZ, () => {
      expect(instant(startOf("2026-11-01", NEW_YORK))).toBe("2026-11-01T04:00:00Z");
      expect(instant(startOf("2026-12-01", NEW_YORK))).toBe("2026-12-01T05:00:00Z");
      expect(hoursOfMonth("2026-11", NEW_YORK)).toBe(721);
    });
    row("Y-03", TZ, () => {
      expect(dayOfInstant(Date.parse("2026-03-01T04:59:59Z"), NEW_YORK)).toBe("2026-02-28");
      expect(dayOfInstant(Date.parse("2026-03-01T05:00:00Z"), NEW_YORK)).toBe("2026-03-01");
    });
    row("Y-04", TZ, () => {
      expect(instant(startOf("2026-08-01", "America/Los_Angeles"))).toBe("2026-08-01T07:00:00Z");
    });
    row("Y-05", TZ, () =>
      expect(instant(startOf("2027-01-01", "America/Chicago"))).toBe("2027-01-01T06:00:00Z"),
    );
    row("Y-06", TZ, () => {
      expect(instant(startOf("2026-03-01", "America/Phoenix"))).toBe("2026-03-01T07:00:00Z");
      expect(instant(startOf("2026-04-01", "America/Phoenix"))).toBe("2026-04-01T07:00:00Z");
      expect(hoursOfMonth("2026-03", "America/Phoenix")).toBe(744);
    });
    row("Y-07", TZ, () => {
      expect(dayOfInstant(Date.parse("2027-01-01T09:59:59Z"), "Pacific/Honolulu")).toBe("2026-12-31");
      expect(instant(startOf("2027-01-01", "Pacific/Honolulu"))).toBe("2027-01-01T10:00:00Z");
    });
    row("Y-08", TZ, () => expect(hoursOfDay("2026-03-08", NEW_YORK)).toBe(23));
    row("Y-09", TZ, () => {
      expect(hoursOfDay("2026-11-01", NEW_YORK)).toBe(25);
      const twice = ["2026-11-01T05:30:00Z", "2026-11-01T06:30:00Z"];
      expect(twice.map((text) => dayOfInstant(Date.parse(text), NEW_YORK))).toEqual([
        "2026-11-01",
        "2026-11-01",
      ]);
    });
    row("Y-10", TZ, () => {
      for (const zone of ["America/Chicago", "America/Denver", "America/Los_Angeles"]) {
        expect(hoursOfDay("2026-03-08", zone)).toBe(23);
      }
    });
    row("Y-11", TZ, () => {
      expect(hoursOfDay("2026-03-29", "Europe/London")).toBe(23);
      expect(hoursOfDay("2026-10-25", "Europe/London")).toBe(25);
      expect(hoursOfMonth("2026-10", "Europe/London")).toBe(745);
    });
    row("Y-12", TZ, () => {
      expect(instant(startOf("2026-10-01", "Australia/Sydney"))).toBe("2026-09-30T14:00:00Z");
      expect(instant(startOf("2026-11-01", "Australia/Sydney"))).toBe("2026-10-31T13:00:00Z");
      expect(hoursOfMonth("2026-10", "Australia/Sydney")).toBe(743);
    });
    row("Y-13", TZ, () => {
      expect(hoursOfDay("2026-04-05", "Australia/Lord_Howe")).toBe(24.5);
      expect(hoursOfDay("2026-10-04", "Australia/Lord_Howe")).toBe(23.5);
    });
    row("Y-14", TZ, () => {
      expect(instant(startOf("2026-03-08", "America/Havana"))).toBe("2026-03-08T05:00:00Z");
      expect(hoursOfDay("2026-03-08", "America/Havana")).toBe(23);
    });
    row("Y-15", TZ, () => {
      for (let day = "2026-01-01"; day <= "2026-12-31"; day = addDays(day, 1)) {
        expect(hoursOfDay(day, "America/Sao_Paulo")).toBe(24);
      }
    });
    row("Y-16", TZ, () => {
      expect(instant(startOf("2026-05-01", "Asia/Kathmandu"))).toBe("2026-04-30T18:15:00Z");
    });
    row("Y-17", "computed", () => {
      expect(daysBetween("2026-03-01", "2026-04-01")).toBe(31);
      const hours = (startOf("2026-04-01", NEW_YORK) - startOf("2026-03-01", NEW_YORK)) / HOUR_MS;
      expect(hours / 24).toBeCloseTo(30.958333, 6);
    });
    row("Y-18", "computed", () => {
      expect([lastDayOf("2027-02"), lastDayOf("2028-02")]).toEqual(["2027-02-28", "2028-02-29"]);
      expect([isDay("2027-02-29"), isDay("2028-02-29")]).toEqual([false, true]);
    });
    row("Y-19", "computed", () => {
      const ledger = new Ledger();
      ledger.add("loan", "2026-03-07", { amount: 1_000_000, data: { loan: "loan", rate: "5.5" } });
      expect(daysBetween("2026-03-07", "2026-03-08")).toBe(1);
      expect(accruedOn(ledger.books().loans.get("loan")!, "2026-03-08")).toBe(151);
    });
    row("Y-20", "computed; a choice: the message's own time decides", () => {
      const said = Date.parse("2027-01-01T04:58:00Z");
      const handled = Date.parse("2027-01-01T05:03:00Z");
      expect([said, handled].map((at) => dayOfInstant(at, NEW_YORK))).toEqual(["2026-12-31", "2027-01-01"]);
      expect(monthOf(dayOfInstant(said, NEW_YORK))).toBe("2026-12");
    });
  },
);
