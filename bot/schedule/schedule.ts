import { dirname } from "node:path";
import type { Day, Instant } from "../../core/calendar.ts";
import { dayOfInstant, timeOfInstant } from "../../core/calendar.ts";
import { decide, verbOf } from "../../core/decide/decide.ts";
import type { Matter } from "../../core/decide/decision.ts";
import { nudgeFor } from "../../core/nudge.ts";
import type { BackupResult } from "../../db/backup.ts";
import { backUp } from "../../db/backup.ts";
import { listBackups } from "../../db/backups.ts";
import type { Ledger } from "../../db/ledger.ts";
import { ownersChat } from "../../db/members.ts";
import { nudgeTime } from "../../db/settings.ts";
import type { Log } from "../log.ts";
import { failureText } from "../log.ts";
import { membersTold } from "./members-told.ts";
import { monthRetelling, tellMonths } from "./months.ts";
import { keepStanding, markTold, untold } from "./standing.ts";

export interface ScheduleDeps {
  ledger: Ledger;
  /** The ledger's IANA time zone, asked anew each time: the owner may change it. */
  zone: () => string;
  now: () => Instant;
  /** ISO 4217 code. */
  currency: string;
  log: Log;
  /** Called after a commit that queued something. */
  wake?: () => void;
  /** Makes the night's copy beside the bot, where copying would hold it up. */
  copyAside?: (today: Day) => Promise<BackupResult>;
  /** Whether everything that waited to be heard has been handled: what is told of days and months waits for it. */
  heardAll?: () => boolean;
}

export interface Schedule {
  /** Does what is due now. Never throws: what fails is logged and tried again at a later tick. */
  tick(): void;
  /** Everything that waited to be heard has been: what was due and waited for that is done now. */
  caughtUp(): void;
  stop(): void;
}

const TICK_MS = 20_000;
const BACKUP_RETRY_MS = 3_600_000;
/** Where messages may wait, the first copy comes after the first look at them. */
const FIRST_COPY_MS = 1000;
/** A small ledger is copied and checked sooner than another process is begun. */
const FACTS_COPIED_AT_ONCE = 300;

/**
 * What the bot says of its own accord: the daily message, the month's recap, the nightly backup's failure.
 *
 * A plain interval asks the database "is it due, and did nobody do it yet?". The claim on the day commits with
 * the queued message, so neither a restart nor a slept-through hour nor a clock put back repeats or loses one;
 * a timer aimed at an hour would have to be aimed anew after each of these. Three ticks a minute, so that a
 * late tick cannot step over the last minute of a day. After a night without a line, notes sent before midnight
 * come in first.
 */
export function startSchedule(deps: ScheduleDeps): Schedule {
  const backup = nightlyBackup(deps);
  const retelling = monthRetelling();
  const copy = () => attempt(deps, "backup", backup);
  let isWithheld = false;
  const tell = () => {
    isWithheld = deps.heardAll?.() === false;
    if (isWithheld) return;
    attempt(deps, "standing notes", keepStanding);
    attempt(deps, "recap", tellMonths);
    attempt(deps, "recap again", retelling);
    attempt(deps, "nudge", nudge);
    attempt(deps, "members told", tellOfMembers);
  };
  const tick = () => {
    copy();
    tell();
  };
  const mayWait = deps.heardAll?.() === false;
  const first = mayWait ? setTimeout(tick, FIRST_COPY_MS).unref() : undefined;
  if (mayWait) tell();
  else tick();
  const timer = setInterval(tick, TICK_MS).unref();
  return {
    tick,
    caughtUp: () => isWithheld && tell(),
    stop() {
      clearTimeout(first);
      clearInterval(timer);
    },
  };
}

export interface Moment {
  instant: Instant;
  today: Day;
  /** "18:05" */
  time: string;
  /** Where the owner talks; null: nobody is owner yet. */
  chat: string | null;
}

/** A job gives whether it queued anything. */
export type Job = (deps: ScheduleDeps, moment: Moment) => boolean;

function attempt(deps: ScheduleDeps, name: string, job: Job): void {
  try {
    if (job(deps, momentOf(deps))) deps.wake?.();
  } catch (error) {
    deps.log.error("the schedule failed", { job: name, why: failureText(error) });
  }
}

function momentOf({ ledger, zone, now }: ScheduleDeps): Moment {
  const instant = now();
  const chat = ownersChat(ledger);
  return { instant, today: dayOfInstant(instant, zone()), time: timeOfInstant(instant, zone()), chat };
}

/**
 * One message a local day, at the set hour or, where the bot was down then, on coming back that day. A day on
 * which there is nothing to say is taken too: a piece finished later that evening waits for tomorrow.
 */
function nudge({ ledger }: ScheduleDeps, { instant, today, time, chat }: Moment): boolean {
  const { settings, reminders } = ledger;
  if (chat === null || settings.get("nudgeOff") || time < nudgeTime(settings)) return false;
  if (reminders.has(today, "nudge")) return false;
  return ledger.transaction(() => {
    if (!reminders.claim(today, "nudge", instant)) return false;
    const byItself = untold(ledger, today);
    const reply = nudgeFor({
      books: ledger.books,
      today,
      byItself,
      leftOut: settings.get("leftOutPieces") ?? [],
      waits: settings.get("piecesWaiting") ?? {},
      snoozedUntil: settings.get("snoozedUntil"),
      openQuestions: openQuestions(ledger),
    });
    if (!reply) return false;
    markTold(ledger, byItself);
    return ledger.outbox.queue({ chat, body: { kind: "text", reply }, key: `nudge:${today}` }) !== null;
  });
}

/** Once a day, at the hour of the daily message and without a sound: what members noted. */
function tellOfMembers({ ledger }: ScheduleDeps, { today, time, chat }: Moment): boolean {
  const { settings } = ledger;
  if (chat === null || settings.get("tellOwner") === false || time < nudgeTime(settings)) return false;
  const told = membersTold(ledger, today);
  if (!told) return false;
  const key = `members:${today}`;
  return ledger.transaction(() => {
    const body = { kind: "text" as const, reply: { text: told.text }, silent: true as const };
    if (ledger.outbox.queue({ chat, body, key }) === null) return false;
    settings.set("toldThrough", told.through);
    return true;
  });
}

/** The owner's as typed; another member's with the name, since only that person can answer it. */
function openQuestions(ledger: Ledger): string[] {
  const owner = ledger.members.owner();
  const waiting = ledger.questions.everyOpen().filter(({ matter }) => !isOvertaken(ledger, matter));
  return waiting.map(({ person, matter }) => {
    const name = person === owner?.id ? undefined : ledger.members.byId(person)?.name;
    return name ? `${name}: ${matter.reading.text}` : matter.reading.text;
  });
}

/** Whether later notes have settled what a note is still asked about: as the books stand, it would be refused. */
function isOvertaken({ books, nextPiece }: Ledger, matter: Matter): boolean {
  const { kind } = matter.reading;
  if (kind === "unclear" || !verbOf(kind)?.decide) return false;
  return decide(matter, { books, nextPiece, today: matter.said }).kind === "refuse";
}

/** The first tick of a local day that has no copy yet makes it; one that fails is told once and tried hourly. */
function nightlyBackup({ ledger, log, copyAside, wake }: ScheduleDeps): Job {
  let doneOn: Day | null = null;
  let notBefore: Instant = 0;
  let isInHand = false;
  /** Keeps what came of it; gives whether that is told. */
  const settle = (result: BackupResult, { instant, today, chat }: Moment): boolean => {
    if (result.kind === "made") {
      doneOn = today;
      // So that a lost -wal never takes more than a day's notes with it.
      ledger.connection.sqlite.pragma("wal_checkpoint(truncate)");
      log.info("backup made", { day: today });
      return false;
    }
    notBefore = instant + BACKUP_RETRY_MS;
    log.error("backup failed", { day: today, why: result.why });
    if (chat === null) return false;
    const text = `Today's backup failed: ${result.why}\nYour books are not touched. I try again every hour.`;
    const body = { kind: "text" as const, reply: { text } };
    return ledger.transaction(
      () => ledger.outbox.queue({ chat, body, key: `backup failed:${today}` }) !== null,
    );
  };
  const settleLater = async (copying: Promise<BackupResult>, moment: Moment): Promise<void> => {
    isInHand = true;
    try {
      if (settle(await copying, moment)) wake?.();
    } catch (error) {
      log.error("the schedule failed", { job: "backup", why: failureText(error) });
    } finally {
      isInHand = false;
    }
  };
  return (_, moment) => {
    const { instant, today } = moment;
    // A clock that was put back would hold the next try up, so a wait longer than the hour is none.
    const isWaiting = instant < notBefore && notBefore - instant <= BACKUP_RETRY_MS;
    if (doneOn === today || isWaiting || isInHand) return false;
    const there = copyOf(ledger, today);
    if (there) return settle(there, moment);
    if (!copyAside || ledger.books.facts.length <= FACTS_COPIED_AT_ONCE) {
      const { connection } = ledger;
      return settle(backUp(connection, dirname(connection.path), today), moment);
    }
    void settleLater(copyAside(today), moment);
    return false;
  };
}

/** The day's copy where it is there: a restart need not make it again. */
function copyOf({ connection }: Ledger, today: Day): BackupResult | null {
  try {
    const backup = listBackups(dirname(connection.path)).find(({ day }) => day === today);
    return backup ? { kind: "made", backup } : null;
  } catch (error) {
    // The folder of copies itself cannot be looked into.
    return { kind: "failed", why: failureText(error) };
  }
}
