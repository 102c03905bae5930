import type { SettingsReader } from "../db/settings.ts";

/** The IANA name of the time zone that this machine is set to. */
export function machineZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
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
  if (Intl.supportedValuesOf("timeZone").includes(value)) return true;
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
  return Intl.supportedValuesOf("timeZone").filter((zone) => zone.toLowerCase().split("/").at(-1) === city);
}
