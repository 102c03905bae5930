import { setMaxListeners } from "node:events";
import type { Instant } from "../core/calendar.ts";
import type { Head, Outbox, OutboxRow } from "../db/outbox.ts";
import { failureText, type Log } from "./log.ts";

/** What came of handing one outbox row to a chat. */
export type Sending =
  /** `message`: the chat's own id of it; null where there is none, as for an edit. */
  | { kind: "sent"; message: string | null }
  /** Try again: after `afterSeconds` where the chat said so, else after a wait that grows with each try. */
  | { kind: "later"; afterSeconds?: number; why: string }
  /** The chat will never take it. `unreachable`: it takes nothing at all, as from a bot that was blocked. */
  | { kind: "never"; why: string; unreachable?: true };

/** Hands rows to one kind of chat. Whatever the network or the chat can do comes back as a value. */
export interface Courier {
  send(row: OutboxRow, signal: AbortSignal): Promise<Sending>;
}

interface Sender {
  /** There may be something new to send: call it after every commit that queues. */
  wake(): void;
  /** Ends after the sends in hand, given `milliseconds` before they are broken off (and sent again later). */
  stop(milliseconds: number): Promise<void>;
  /** Since when the outbox itself has failed, as on a full disk; null while it works. */
  failingSince(): Instant | null;
}

interface SenderDeps {
  outbox: Outbox;
  courier: Courier;
  now: () => Instant;
  log: Log;
  /** Called before a chat's oldest row is sent: it may put the rows that wait for that chat into fewer. */
  join?: (chat: string, waiting: number) => void;
  /** Called when a chat would not take anything. */
  onUnreachable?: (chat: string) => void;
  /** Milliseconds of a clock that nobody can set. */
  elapsed?: () => number;
}

const WAIT_SECONDS_MAX = 60;
/** Whatever a chat asks for, it is tried again within the hour. */
const ASKED_SECONDS_MAX = 3600;
/** A wait left over from before a restart: the clock may have been set back since. */
const LEFT_OVER_MS_MAX = 600_000;
const LOOK_AGAIN_MS = 30_000;
const BUG_TRIES_MAX = 4;

/** Seconds to wait after the n-th try in vain (from 1): 1, 2, 4 … 60. */
export function waitSeconds(tries: number): number {
  return Math.min(2 ** Math.min(tries - 1, 10), WAIT_SECONDS_MAX);
}

/** A courier that throws has a bug with this row: it is tried a few times, then it must not hold the chat up. */
function bugSending(row: OutboxRow): (error: unknown) => Sending {
  return (error) => ({ kind: row.tries < BUG_TRIES_MAX ? "later" : "never", why: failureText(error) });
}

/**
 * The one place that drains the outbox: rows of one chat in order, one at a time, each chat in a line of its
 * own, so that a send that hangs holds up nobody else. Where the ledger cannot be written (a full disk), a row
 * that was sent is remembered until it can be marked, so that it is not sent over and over.
 */
export function startSender(deps: SenderDeps): Sender {
  const { outbox, courier, now, log, join, onUnreachable } = deps;
  const waits = createWaits(deps.elapsed ?? (() => performance.now()), now);
  const alarm = createAlarm();
  const breakOff = new AbortController();
  // One send in each chat listens to it at a time, however many chats there are.
  setMaxListeners(0, breakOff.signal);
  const unmarked = new Map<number, Sending>();
  const inHand = new Map<string, Promise<void>>();
  let isStopping = false;
  let failures = 0;
  let failingSince: Instant | null = null;

  function mark(row: OutboxRow, sending: Sending): void {
    switch (sending.kind) {
      case "sent":
        outbox.markSent(row.id, sending.message, now());
        log.debug("sent", { row: row.id });
        return;
      case "later": {
        if (breakOff.signal.aborted) return;
        const tries = row.tries + 1;
        const seconds = Math.min(sending.afterSeconds ?? waitSeconds(tries), ASKED_SECONDS_MAX);
        waits.set(row.id, seconds * 1000);
        outbox.putOff(row.id, now() + seconds * 1000, tries);
        log.warn("send put off", { row: row.id, tries, seconds, why: sending.why });
        return;
      }
      case "never":
        outbox.giveUp(row.id, sending.why, sending.unreachable === true);
        if (sending.unreachable) onUnreachable?.(row.chat);
        log.error("send given up", { row: row.id, why: sending.why });
    }
  }

  /** What cannot be told together is told apart. */
  function joinWaiting(chat: string, waiting: number): void {
    try {
      join?.(chat, waiting);
    } catch (error) {
      log.error("not joined", { why: failureText(error) });
    }
  }

  async function sendHead({ chat, waiting }: Head): Promise<void> {
    joinWaiting(chat, waiting);
    const row = outbox.headOf(chat);
    if (!row) return;
    const sending = unmarked.get(row.id) ?? (await courier.send(row, breakOff.signal).catch(bugSending(row)));
    if (sending.kind !== "later") unmarked.set(row.id, sending);
    mark(row, sending);
    unmarked.delete(row.id);
  }

  /** The ledger itself failed: all chats wait a little, and longer each time. */
  function onFailure(error: unknown): void {
    failures++;
    failingSince ??= now();
    log.error("the outbox failed", { why: failureText(error) });
  }

  async function sendOne(head: Head): Promise<void> {
    try {
      await sendHead(head);
      failures = 0;
      failingSince = null;
    } catch (error) {
      onFailure(error);
      await alarm.rest(waitSeconds(failures) * 1000, "whatever comes");
    } finally {
      inHand.delete(head.chat);
      alarm.ring();
    }
  }

  /** Starts a send in each chat whose oldest row may go; gives the milliseconds until the next one may. */
  function sendDue(): number {
    let next = LOOK_AGAIN_MS;
    for (const head of outbox.heads()) {
      if (inHand.has(head.chat)) continue;
      const milliseconds = waits.left(head.id, head.notBefore);
      if (milliseconds > 0) next = Math.min(next, milliseconds);
      else inHand.set(head.chat, sendOne(head));
    }
    return next;
  }

  async function drain(): Promise<void> {
    while (!isStopping) {
      try {
        await alarm.rest(sendDue());
      } catch (error) {
        onFailure(error);
        await alarm.rest(waitSeconds(failures) * 1000, "whatever comes");
      }
    }
    await Promise.all(inHand.values());
  }

  const drained = drain();
  return {
    wake: () => alarm.ring(),
    failingSince: () => failingSince,
    async stop(milliseconds) {
      isStopping = true;
      alarm.end();
      const timer = setTimeout(() => breakOff.abort(), milliseconds);
      await drained;
      clearTimeout(timer);
    },
  };
}

/**
 * How long rows still wait. Counted on a clock that nobody can set: by the wall clock, one set back by a day
 * would make a day of five seconds.
 */
function createWaits(elapsed: () => number, now: () => Instant) {
  const until = new Map<number, number>();
  return {
    set: (row: number, milliseconds: number) => void until.set(row, elapsed() + milliseconds),
    left(row: number, notBefore: Instant | null): number {
      if (notBefore === null) return 0;
      const known = until.get(row) ?? elapsed() + Math.min(notBefore - now(), LEFT_OVER_MS_MAX);
      const left = known - elapsed();
      if (left > 0) until.set(row, known);
      else until.delete(row);
      return left;
    },
  };
}

/** Rests that end early when the alarm rings, unless told to sleep through; none at all once it has ended. */
function createAlarm() {
  const resting = new Set<{ wakes: boolean; finish: () => void }>();
  let isRung = false;
  let isOver = false;
  const finishAll = (isFit: (rest: { wakes: boolean }) => boolean) => {
    for (const rest of [...resting]) if (isFit(rest)) rest.finish();
  };
  return {
    ring() {
      isRung = true;
      finishAll(({ wakes }) => wakes);
    },
    end() {
      isOver = true;
      finishAll(() => true);
    },
    async rest(milliseconds: number, through?: "whatever comes"): Promise<void> {
      const wakes = through === undefined;
      if (isOver || (wakes && isRung)) {
        isRung = false;
        return;
      }
      await new Promise<void>((resolve) => {
        const rest = { wakes, finish };
        const timer = setTimeout(finish, milliseconds);
        resting.add(rest);
        function finish() {
          clearTimeout(timer);
          resting.delete(rest);
          resolve();
        }
      });
      if (wakes) isRung = false;
    },
  };
}
