import { DateTime } from "luxon";
import type { Log, LogFields } from "../../../bot/log.ts";
import type { Schedule } from "../../../bot/schedule/schedule.ts";
import { startSchedule } from "../../../bot/schedule/schedule.ts";
import type { Instant } from "../../../core/calendar.ts";
import type { Ledger } from "../../../db/ledger.ts";
import type { OutboxBody } from "../../../db/outbox.ts";
import { ledgerWithOwner, opensLedger } from "../../db/ledgers.ts";

/** The zone that the schedule is tried in, and an instant of it. */
export const ZONE = "America/Chicago";
export const local = (text: string) => DateTime.fromISO(text, { zone: ZONE }).toMillis();

/** A log that keeps what went wrong. */
export function keepingLog(): Log & { failures: { event: string; fields: LogFields | undefined }[] } {
  const failures: { event: string; fields: LogFields | undefined }[] = [];
  const keep = (event: string, fields?: LogFields) => void failures.push({ event, fields });
  return { failures, debug: () => {}, info: () => {}, warn: keep, error: keep };
}

/** A bot that does nothing but keep its schedule, on a real ledger, with a clock that the test sets. */
export class Simulation {
  readonly directory: string;
  readonly log = keepingLog();
  ledger: Ledger;
  now: Instant;
  zone: string;
  wakes = 0;
  heardAll = true;
  #schedule: Schedule | null = null;

  constructor(zone: string, now: Instant) {
    const { ledger, directory } = ledgerWithOwner();
    this.ledger = ledger;
    this.directory = directory;
    this.zone = zone;
    this.now = now;
  }

  /** Starts the schedule, which looks at once. */
  start(): void {
    this.#schedule = startSchedule({
      ledger: this.ledger,
      zone: () => this.zone,
      now: () => this.now,
      currency: "USD",
      log: this.log,
      heardAll: () => this.heardAll,
      wake: () => {
        this.wakes += 1;
      },
    });
  }

  at(now: Instant): void {
    this.now = now;
    this.#schedule!.tick();
  }

  stop(): void {
    this.#schedule?.stop();
    this.#schedule = null;
  }

  /** The process ends and another one takes over. */
  restart(): void {
    this.stop();
    this.ledger.close();
    this.ledger = opensLedger(this.directory);
    this.start();
  }

  /** Everything ever queued, in order. */
  queued(): { key: string | null; chat: string; body: OutboxBody }[] {
    const rows = this.ledger.connection.sqlite
      .prepare<[], { key: string | null; chat: string; body: string }>(
        "select key, chat, body from outbox order by id",
      )
      .all();
    return rows.map((row) => ({ ...row, body: JSON.parse(row.body) as OutboxBody }));
  }

  keys(start = ""): string[] {
    return this.queued()
      .flatMap(({ key }) => key ?? [])
      .filter((key) => key.startsWith(start));
  }

  textOf(key: string): string {
    const row = this.queued().find((each) => each.key === key);
    if (row?.body.kind !== "text") throw new Error(`no text ${key}`);
    return row.body.reply.text;
  }
}
