import { handInClock, type Instant } from "../core/calendar.ts";
import type { SettingsReader } from "../db/settings.ts";

const OWN_TZ = process.env["TZ"];
let machine: string | undefined;

/** The IANA name of the time zone that this machine is set to. */
export function machineZone(): string {
  machine ??= underOwnZone(() => Intl.DateTimeFormat().resolvedOptions().timeZone);
  return machine;
}

/** Whether a zone is in force only since the machine is set to it: nobody said which. */
export function isMachines(zone: string): boolean {
  return zone === machine;
}

let known: readonly string[] | undefined;

/** Every zone by the name that the engine knows it by. */
function zones(): readonly string[] {
  known ??= Intl.supportedValuesOf("timeZone");
  return known;
}

let lived: string | null = null;

/**
 * Has this process live in a zone: its days are told by the engine's own local time from then on. Names of which the
 * system's rules for TZ might think otherwise, such as "Etc/GMT+5", are left to the formats.
 */
export function liveIn(zone: string): void {
  if (zone === lived) return;
  lived = zone;
  const isPlain = /^[A-Za-z]+(?:[/_-][A-Za-z]+)+$/.test(zone);
  const isLived = isPlain && zones().includes(zone) && isHeeded();
  if (isLived) process.env["TZ"] = zone;
  const minutesAhead = (instant: Instant) => -new Date(instant).getTimezoneOffset();
  handInClock(isLived ? { zone, minutesAhead } : null);
}

/** Whether the engine's local time goes by TZ, also where that changes: told by two zones that have no summer time. */
function isHeeded(): boolean {
  const aheadIn = (zone: string) => {
    process.env["TZ"] = zone;
    return -new Date(0).getTimezoneOffset();
  };
  return aheadIn("Asia/Tokyo") === 540 && aheadIn("Pacific/Honolulu") === -600;
}

function underOwnZone<T>(look: () => T): T {
  const inForce = process.env["TZ"];
  putTz(OWN_TZ);
  const seen = look();
  putTz(inForce);
  return seen;
}

function putTz(zone: string | undefined): void {
  if (zone === undefined) delete process.env["TZ"];
  else process.env["TZ"] = zone;
}

/** The zone whose days count: the environment's, else the one set by chat, else the machine's. */
export function zoneInForce(given: string | undefined, settings: SettingsReader): string {
  return given ?? settings.get("timeZone") ?? machineZone();
}

/** A zone's name with the capitals it is known by: "america/chicago" is "America/Chicago". */
export function zoneNamed(zone: string): string {
  const known = new Intl.DateTimeFormat("en-US", { timeZone: zone }).resolvedOptions().timeZone;
  // An older name of a place is kept as it was given; only its capitals are put right.
  return known.toLowerCase() === zone.toLowerCase() ? known : zone;
}

/** Whether this machine knows the time zone; offsets such as "+05:00" are none, since they know no summer. */
export function isZone(value: string): boolean {
  // Older names are none of these, and valid all the same; to try one takes a start a while.
  if (zones().includes(value)) return true;
  try {
    new Intl.DateTimeFormat("en-US", { timeZone: value });
    return /^[A-Za-z]/.test(value);
  } catch {
    return false;
  }
}

/** What people in the United States call their zones, and the city that stands for each. */
const SPOKEN: Readonly<Record<string, string>> = {
  eastern: "America/New_York",
  central: "America/Chicago",
  mountain: "America/Denver",
  arizona: "America/Phoenix",
  pacific: "America/Los_Angeles",
  alaska: "America/Anchorage",
  hawaii: "Pacific/Honolulu",
};

/** The zones that a city or an everyday name may mean: "los angeles", "central time". Empty where none is known. */
export function zonesCalled(words: string): string[] {
  const plain = words
    .toLowerCase()
    .replace(/\b(?:time|zone)\b/g, "")
    .replace(/[\s_]+/g, " ")
    .trim();
  const spoken = SPOKEN[plain];
  if (spoken) return [spoken];
  if (plain === "") return [];
  const city = plain.replaceAll(" ", "_");
  return zones().filter((zone) => zone.toLowerCase().split("/").at(-1) === city);
}
