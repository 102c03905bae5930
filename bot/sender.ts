import type { Instant } from "../core/calendar.ts";
import type { Outbox, OutboxRow } from "../db/outbox.ts";
import { failureText, type Log } from "./log.ts";

/** What came of handing one outbox row to a chat. */
export type Sending =
  /** `message`: the chat's own id of it; null where there is none, as for an edit. */
  | { kind: "sent"; message: string | null }
  /** Try again: after `afterSeconds` where the chat said so, else after a wait that grows with each try. */
  | { kind: "later"; afterSeconds?: number; why: string }
  /** The chat will never take it. */
  | { kind: "never"; why: string };

/** Hands rows to one kind of chat. Whatever the network or the chat can do comes back as a value. */
export interface Courier {
  send(row: OutboxRow, signal: AbortSignal): Promise<Sending>;
}

interface Sender {
  /** There may be something new to send: call it after every commit that queues. */
  wake(): void;
  /** Ends after the send in hand, which is given `milliseconds` before it is broken off (and sent again later). */
  stop(milliseconds: number): Promise<void>;
  /** Since when the outbox itself has failed, as on a full disk; null while it works. */
  failingSince(): Instant | null;
}

const WAIT_SECONDS_MAX = 60;
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
 * The one place that drains the outbox: one row at a time, in order within each chat, marked once sent. Where
 * the ledger cannot be written (a full disk), a row that was sent is remembered until it can be marked, so
 * that it is not sent over and over.
 */
export function startSender(deps: {
  outbox: Outbox;
  courier: Courier;
  now: () => Instant;
  log: Log;
}): Sender {
  const { outbox, courier, now, log } = deps;
  const breakOff = new AbortController();
  const unmarked = new Map<number, Sending>();
  let isStopping = false;
  let isWoken = false;
  let failingSince: Instant | null = null;
  let ring: (() => void) | undefined;

  const wake = () => {
    isWoken = true;
    ring?.();
  };

  async function rest(milliseconds: number): Promise<void> {
    if (isWoken || isStopping) return;
    await new Promise<void>((resolve) => {
      const timer = setTimeout(resolve, milliseconds);
      ring = () => {
        clearTimeout(timer);
        resolve();
      };
    });
    ring = undefined;
  }

  async function sendOne(row: OutboxRow): Promise<void> {
    const sending = unmarked.get(row.id) ?? (await courier.send(row, breakOff.signal).catch(bugSending(row)));
    if (sending.kind !== "later") unmarked.set(row.id, sending);
    mark(row, sending);
    unmarked.delete(row.id);
  }

  function mark(row: OutboxRow, sending: Sending): void {
    switch (sending.kind) {
      case "sent":
        outbox.markSent(row.id, sending.message, now());
        log.debug("sent", { row: row.id });
        return;
      case "later": {
        const tries = row.tries + 1;
        const seconds = sending.afterSeconds ?? waitSeconds(tries);
        if (breakOff.signal.aborted) return;
        outbox.putOff(row.id, now() + seconds * 1000, tries);
        log.warn("send put off", { row: row.id, tries, seconds, why: sending.why });
        return;
      }
      case "never":
        outbox.giveUp(row.id, sending.why);
        log.error("send given up", { row: row.id, why: sending.why });
    }
  }

  async function drain(): Promise<void> {
    let failures = 0;
    while (!isStopping) {
      isWoken = false;
      try {
        const row = outbox.nextUnsent(now());
        if (row) await sendOne(row);
        else await rest(Math.min(LOOK_AGAIN_MS, Math.max(0, (outbox.nextAttempt() ?? Infinity) - now())));
        failures = 0;
        failingSince = null;
      } catch (error) {
        failures++;
        failingSince ??= now();
        log.error("the outbox failed", { why: failureText(error) });
        isWoken = false;
        await rest(waitSeconds(failures) * 1000);
      }
    }
  }

  const drained = drain();
  return {
    wake,
    failingSince: () => failingSince,
    async stop(milliseconds) {
      isStopping = true;
      ring?.();
      const timer = setTimeout(() => breakOff.abort(), milliseconds);
      await drained;
      clearTimeout(timer);
    },
  };
}
