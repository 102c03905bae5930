import type { Instant } from "../../core/calendar.ts";

/** The most updates that one poll gives (Bot API, getUpdates). */
const BATCH_MAX = 100;
/** A poll waits half a minute for something to come; one answered longer ago than this says nothing of now. */
const FRESH_MS = 75_000;

export interface CatchingUp {
  /** A poll is about to be made: all that the one before gave has been handled. */
  asking(): void;
  /** A poll gave so many updates. */
  answered(count: number): void;
  failed(): void;
  /** Whether nothing waits at the server, as far as can be known. */
  isDone(): boolean;
}

/**
 * Knows whether everything that waited at the server has been handled: a poll gave less than a full batch, and
 * the batch is done. An unanswered poll (no line, a machine that slept) makes it unknown again.
 */
export function createCatchingUp(now: () => Instant, onDone: () => void): CatchingUp {
  let last: { count: number; at: Instant } | null = null;
  let isDone = false;

  function done(): void {
    const isNew = !isDone;
    isDone = true;
    if (isNew) onDone();
  }

  return {
    asking() {
      if (last && last.count < BATCH_MAX) done();
    },
    answered(count) {
      last = { count, at: now() };
      if (count === 0) done();
      else isDone = false;
    },
    failed() {
      last = null;
      isDone = false;
    },
    isDone: () => isDone && last !== null && Math.abs(now() - last.at) <= FRESH_MS,
  };
}
