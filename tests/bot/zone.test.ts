import { afterAll, expect, test } from "vitest";
import { isMachines, liveIn, machineZone } from "../../bot/zone.ts";
import { DAY_MS, dayOfInstant, handInClock, timeOfInstant } from "../../core/calendar.ts";

const tzBefore = process.env["TZ"];
afterAll(() => {
  handInClock(null);
  if (tzBefore === undefined) delete process.env["TZ"];
  else process.env["TZ"] = tzBefore;
});

/** Half days that fall on no hour, so that nights on which clocks are put forward or back are met, from 1970 to 2040. */
const INSTANTS = Array.from({ length: 800 }, (_, index) => Math.round(index * 32.03 * DAY_MS));
/** The hours around the two nights of 2026 on which most clocks are changed. */
const CHANGES = ["2026-03-08", "2026-03-29", "2026-10-25", "2026-11-01"].flatMap((day) =>
  Array.from({ length: 96 }, (_, quarter) => Date.parse(day) + quarter * 900_000),
);

/** How an instant is told in a zone, with or without living in it. */
const told = (zone: string) =>
  [...INSTANTS, ...CHANGES].map((at) => `${dayOfInstant(at, zone)} ${timeOfInstant(at, zone)}`).join("\n");

test("a process that lives in a zone tells its days and times as the formats do", () => {
  const zones = Intl.supportedValuesOf("timeZone").filter((_, index) => index % 9 === 0);
  const odd = ["Australia/Lord_Howe", "Asia/Kathmandu", "Pacific/Apia", "America/St_Johns", "US/Central"];
  for (const zone of [...zones, ...odd, "America/Chicago", "UTC", "Etc/GMT+5", "EST5EDT", "GMT"]) {
    handInClock(null);
    const byFormats = told(zone);
    liveIn(zone);
    expect(told(zone), zone).toBe(byFormats);
  }
});

test("another zone than the one lived in is told by its own rules", () => {
  liveIn("America/Chicago");
  expect(dayOfInstant(Date.parse("2026-05-10T03:00Z"), "America/Chicago")).toBe("2026-05-09");
  expect(dayOfInstant(Date.parse("2026-05-10T03:00Z"), "Europe/Lisbon")).toBe("2026-05-10");
});

test("the machine's zone stays what it was", () => {
  const own = machineZone();
  liveIn(own === "Asia/Tokyo" ? "America/Denver" : "Asia/Tokyo");
  expect(machineZone()).toBe(own);
  expect(isMachines(own)).toBe(true);
  expect(isMachines("Asia/Tokyo")).toBe(own === "Asia/Tokyo");
});
