import { and, eq, sql } from "drizzle-orm";
import type { Day, Instant } from "../core/calendar.ts";
import type { Connection } from "./connection.ts";
import { reminders } from "./schema.ts";
import { rowWriter } from "./statements.ts";

export interface Reminders {
  /** Takes a local day for one kind ("nudge", "recap", …); false where it was taken before. */
  claim(day: Day, kind: string, now: Instant): boolean;
  /** Whether a day was taken for a kind. */
  has(day: Day, kind: string): boolean;
  /** The latest day taken for a kind; null: none. */
  last(kind: string): Day | null;
}

/** What the bot has said of its own accord, by day. */
export function openReminders(connection: Connection): Reminders {
  const { db } = connection;
  const write = rowWriter(connection, reminders, "keep");
  const one = db
    .select({ claimed: reminders.claimed })
    .from(reminders)
    .where(and(eq(reminders.day, sql.placeholder("day")), eq(reminders.kind, sql.placeholder("kind"))))
    .prepare();
  const latest = db
    .select({ day: sql<Day | null>`max(${reminders.day})` })
    .from(reminders)
    .where(eq(reminders.kind, sql.placeholder("kind")))
    .prepare();
  return {
    claim: (day, kind, now) => write.run({ day, kind, claimed: now }) !== null,
    last: (kind) => latest.get({ kind })?.day ?? null,
    has: (day, kind) => one.get({ day, kind }) !== undefined,
  };
}
