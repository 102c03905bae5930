import { readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import * as z from "zod";
import type { Instant } from "../core/calendar.ts";

/** A poll waits for half a minute at most; a handler and a fetched file may take as long again. */
const SILENCE_MS_MAX = 120_000;
const TROUBLE_MS_MAX = 120_000;

const heartbeat = z.object({
  /** When the bot last came back from asking for updates, with all earlier ones handled. */
  polled: z.number(),
  /** Since when notes or replies cannot be stored; null while they can. */
  troubleSince: z.number().nullable(),
});
type Heartbeat = z.infer<typeof heartbeat>;

type Health = { kind: "well" } | { kind: "unwell"; why: string };

/** Leaves a sign of life in the data directory, whole or not at all. Throws where the disk does. */
export function beat(directory: string, sign: Heartbeat): void {
  const path = pathIn(directory);
  writeFileSync(`${path}.new`, JSON.stringify(sign), { mode: 0o600 });
  renameSync(`${path}.new`, path);
}

/** Whether the bot on a data directory takes in updates and stores what comes of them. */
export function healthIn(directory: string, now: Instant): Health {
  let sign: Heartbeat;
  try {
    sign = heartbeat.parse(JSON.parse(readFileSync(pathIn(directory), "utf8")));
  } catch {
    return { kind: "unwell", why: "no sign of life in the data directory" };
  }
  return healthOf(sign, now);
}

function healthOf(sign: Heartbeat, now: Instant): Health {
  const silentMs = now - sign.polled;
  if (silentMs > SILENCE_MS_MAX) {
    return { kind: "unwell", why: `no updates asked for since ${Math.round(silentMs / 1000)} seconds` };
  }
  if (sign.troubleSince !== null && now - sign.troubleSince > TROUBLE_MS_MAX) {
    return { kind: "unwell", why: "notes or replies cannot be stored" };
  }
  return { kind: "well" };
}

function pathIn(directory: string): string {
  return join(directory, "heartbeat.json");
}
