import { eq, sql } from "drizzle-orm";
import * as z from "zod";
import { isDay } from "../core/calendar.ts";
import type { Connection } from "./connection.ts";
import { createMemory } from "./memory.ts";
import { settings } from "./schema.ts";
import { rowWriter } from "./statements.ts";

const day = z.string().refine(isDay);
const clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/);

/** What the owner may change by chat, and what the bot must remember across a restart. Unset reads as null. */
const shapes = {
  /** An IANA name, as the owner answered. */
  timeZone: z.string().min(1),
  /** Local time of the daily nudge, "18:00". */
  nudgeAt: clock,
  nudgeOff: z.boolean(),
  /** The first day on which the nudge speaks again. */
  snoozedUntil: day,
  /** Pieces never to be nudged about again. */
  leftOutPieces: z.array(z.number().int().positive()),
  /** Piece number to the first day on which it may be nudged about again. */
  piecesWaiting: z.record(z.string(), day),
  /** The notes of the last list that a member was shown, by member id: what its letters stand for that day. */
  notesShown: z.record(z.string(), z.strictObject({ day, facts: z.array(z.number().int().positive()) })),
  /** The messages whose file of past pieces was recorded. */
  pastNotes: z.array(z.number().int().positive()),
  /** The newest fact that a standing note recorded and the daily message told. */
  standingTold: z.number().int(),
  /** Whether the owner hears of what members log at all. */
  tellOwner: z.boolean(),
  /** Whether members are told the month, the loan and what is due to it. */
  membersSeeMoney: z.boolean(),
  /** The last note that the owner was told of, of those that members sent. */
  toldThrough: z.number().int(),
  /** Year to cents a mile as a plain decimal, beside the built-in table. */
  mileageRates: z.record(z.string(), z.string()),
  /** The release that last found the derived books to be what the facts give, or made them so. */
  derivedBy: z.string().min(1),
  /** Instant of the last update that came from the chat server. */
  lastSeenUpdateAt: z.number().int(),
  /** The day on which each caution was last given, by its name and piece or message. */
  cautionsGiven: z.record(z.string(), day),
  /** Words from no list that were passed over beside a verb, and how often. */
  wordsPassed: z.record(z.string(), z.number().int().positive()),
  /** The pieces that a member's last question was about, by member id: what "it" may mean that day. */
  askedOf: z.record(
    z.string(),
    z.strictObject({ note: z.number().int(), day, pieces: z.array(z.number().int().positive()) }),
  ),
  /**
   * A member's last question, by member id, and how many of its rows were shown: for "more" and "and in june?"; and what
   * was told of that day, for "it" and "those" in the next one: the pieces, and those of the answer before, or the loan.
   */
  lastQuestion: z.record(
    z.string(),
    z.strictObject({
      day,
      question: z.string(),
      shown: z.number().int().nonnegative(),
      note: z.number().int().optional(),
      of: z
        .strictObject({
          note: z.number().int(),
          pieces: z.array(z.number().int().positive()),
          before: z.array(z.number().int().positive()).optional(),
          loan: z.literal(true).optional(),
        })
        .optional(),
    }),
  ),
  /** Notes of many lines that are not handled to their end: the first line that is left, by note id. */
  longNotes: z.record(z.string(), z.number().int().nonnegative()),
  /**
   * Files of past pieces to be offered (`sent` null) or recorded, each by the note of its file, and the message whose
   * button said so: by the note that asks for it.
   */
  pastWaiting: z.record(
    z.string(),
    z.strictObject({
      file: z.number().int().positive(),
      sent: z.boolean().nullable(),
      pressed: z.string().nullable(),
    }),
  ),
  /** The day on which this ledger was put in place from a copy: earlier copies may well hold more. */
  restoredOn: day,
  /** The day on which each caution was called for that waits for a later note of its piece. */
  cautionsWaiting: z.record(z.string(), day),
  /** The chat in which the owner talks: where the bot speaks first. */
  ownerChat: z.string(),
  /** The figures of the latest recaps as they were told, by month; cents and counts. */
  recapsTold: z.record(
    z.string(),
    z.object({
      profit: z.number().int(),
      income: z.number().int(),
      flipped: z.number().int(),
      paid: z.number().int(),
    }),
  ),
  /** Chats that would take nothing the last time: what was not sent is told when the person is back. */
  unreachedChats: z.array(z.string()),
  /** What a newcomer has been led to so far; unset: nobody was greeted yet. */
  led: z.array(z.enum(["loan", "zone", "goal", "asleep"])),
  /** What an invitation's code is put behind: the start of a link, or of a command to the bot. */
  inviteLink: z.string(),
} as const;

type SettingKey = keyof typeof shapes;
type SettingValue<K extends SettingKey> = z.infer<(typeof shapes)[K]>;

export interface SettingsReader {
  get<K extends SettingKey>(key: K): SettingValue<K> | null;
}

export interface Settings extends SettingsReader {
  set<K extends SettingKey>(key: K, value: SettingValue<K>): void;
  unset(key: SettingKey): void;
}

/** When the daily message comes, "18:00" until the owner says otherwise. Local time. */
export function nudgeTime(settings: SettingsReader): string {
  return settings.get("nudgeAt") ?? "18:00";
}

/** The settings of a ledger, each checked by its shape going in and coming out. */
export function openSettings(connection: Connection, isKept = false): Settings & { forget(): void } {
  const { db } = connection;
  const write = rowWriter(connection, settings, { replace: settings.key });
  // Prepared once: every note and every look of the schedule asks for several.
  const byKey = db
    .select()
    .from(settings)
    .where(eq(settings.key, sql.placeholder("key")))
    .prepare();
  const values = createMemory((key: SettingKey) => byKey.get({ key })?.value ?? null, isKept);
  return {
    forget: values.forget,
    get<K extends SettingKey>(key: K) {
      const value = values.get(key);
      return value === null ? null : (shapes[key].parse(JSON.parse(value)) as SettingValue<K>);
    },
    set(key, value) {
      const stored = JSON.stringify(shapes[key].parse(value));
      values.forget();
      write.run({ key, value: stored });
    },
    unset(key) {
      values.forget();
      db.delete(settings).where(eq(settings.key, key)).run();
    },
  };
}
