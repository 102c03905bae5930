import { DAY_MS, type Instant } from "../core/calendar.ts";
import type { Ledger } from "../db/ledger.ts";
import { ownersChat } from "../db/members.ts";

/** Every write is a flush of the disk, so the time is kept to the minute. */
const WRITE_MS = 60_000;

/**
 * Remembers when the chat server was last heard, across restarts. The server keeps messages for a day: after a
 * longer silence the owner is told from when to when notes may be missing. Returns the function to call each
 * time the server was heard; it gives whether it wrote, and throws where the ledger cannot be written.
 */
export function createSilenceWatch(deps: {
  ledger: Ledger;
  zone: () => string;
  now: () => Instant;
}): () => boolean {
  const { ledger, zone, now } = deps;
  let last = ledger.settings.get("lastSeenUpdateAt");
  return () => {
    const heard = now();
    const before = last ?? heard;
    if (last !== null && heard >= last && heard - last < WRITE_MS) return false;
    ledger.transaction(() => {
      const chat = ownersChat(ledger);
      if (chat && heard - before > DAY_MS) {
        const text = silenceText({ from: before, to: heard }, zone());
        ledger.outbox.queue({ chat, body: { kind: "text", reply: { text } }, key: `silence:${before}` });
      }
      ledger.settings.set("lastSeenUpdateAt", heard);
    });
    last = heard;
    return true;
  };
}

function silenceText({ from, to }: { from: Instant; to: Instant }, zone: string): string {
  const format = new Intl.DateTimeFormat("en-US", {
    timeZone: zone,
    weekday: "short",
    month: "short",
    day: "numeric",
    hour: "numeric",
    minute: "2-digit",
    hour12: true,
  });
  // Some versions of the calendar data put a narrow space before AM and PM.
  const show = (instant: Instant) => format.format(instant).replace(/\u202f/g, " ");
  return [
    `I was out of reach from ${show(from)} to ${show(to)}.`,
    "Messages are kept for me for a day only.",
    `Notes sent between ${show(from)} and ${show(to - DAY_MS)} may be missing: please send them again.`,
  ].join("\n");
}
