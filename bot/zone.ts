import type { SettingsReader } from "../db/settings.ts";

/** The IANA name of the time zone that this machine is set to. */
export function machineZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/** The zone whose days count: the environment's, else the one set by chat, else the machine's. */
export function zoneInForce(given: string | undefined, settings: SettingsReader): string {
  return given ?? settings.get("timeZone") ?? machineZone();
}

/** Whether this machine knows the time zone; offsets such as "+05:00" are none, since they know no summer. */
export function isZone(value: string): boolean {
  try {
    new Intl.DateTimeFormat("en-US", { timeZone: value });
    return /^[A-Za-z]/.test(value);
  } catch {
    return false;
  }
}
