import type { Instant } from "../../core/calendar.ts";

const formats = new Map<string, Intl.DateTimeFormat>();

/** The local time of an instant in an IANA time zone, "18:05"; times of a day compare as strings. */
export function timeOfInstant(instant: Instant, zone: string): string {
  let format = formats.get(zone);
  if (!format) {
    format = new Intl.DateTimeFormat("en-GB", {
      timeZone: zone,
      hour: "2-digit",
      minute: "2-digit",
      hourCycle: "h23",
    });
    formats.set(zone, format);
  }
  return format.format(instant);
}
