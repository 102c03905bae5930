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
}

/** What the bot has said of its own accord, by day. */
export function openReminders({ db }: Connection): Reminders {
  const write = rowWriter(db, reminders, "keep");
  const one = db
    .select({ claimed: reminders.claimed })
    .from(reminders)
    .where(and(eq(reminders.day, sql.placeholder("day")), eq(reminders.kind, sql.placeholder("kind"))))
    .prepare();
  return {
    claim: (day, kind, now) => write.run({ day, kind, claimed: now }) !== null,
    has: (day, kind) => one.get({ day, kind }) !== undefined,
  };
}
