import { setMaxListeners } from "node:events";
import { type Api, GrammyError } from "grammy";
import { failureText, type Log } from "../log.ts";
import { waitSeconds } from "../sender.ts";

const TRIES_MAX = 8;
const PENDING_MAX = 50;

export interface DirectTalk {
  /** Says a line past the outbox, in the background; `then` runs once it went out or was refused. */
  say(chat: number, text: string, then?: () => Promise<unknown>): void;
  /** Runs any call in the background, once; a failure is logged. */
  once(what: string, call: () => Promise<unknown>): void;
}

/**
 * Talk that may not or cannot be stored: to strangers, to groups, and when the ledger itself fails. It is tried
 * a few times over some minutes and forgotten when the process ends.
 */
export function createDirectTalk({
  api,
  log,
  signal,
}: {
  api: Api;
  log: Log;
  signal: AbortSignal;
}): DirectTalk {
  let pending = 0;
  // Each call listens to it while it is under way.
  setMaxListeners(0, signal);

  async function insist(chat: number, text: string): Promise<void> {
    for (let tries = 1; tries <= TRIES_MAX && !signal.aborted; tries++) {
      try {
        await api.sendMessage(chat, text, {}, signal as never);
        return;
      } catch (error) {
        const isRefused = error instanceof GrammyError && error.error_code < 500 && error.error_code !== 429;
        log.warn("direct answer failed", { tries, why: failureText(error) });
        if (isRefused) return;
        const asked = error instanceof GrammyError ? error.parameters.retry_after : undefined;
        await pause((asked ?? waitSeconds(tries)) * 1000, signal);
      }
    }
  }

  async function run(what: string, work: () => Promise<unknown>): Promise<void> {
    if (pending >= PENDING_MAX) return;
    pending++;
    try {
      await work();
    } catch (error) {
      log.warn("call failed", { what, why: failureText(error) });
    } finally {
      pending--;
    }
  }

  return {
    say(chat, text, then) {
      void run("say", async () => {
        await insist(chat, text);
        await then?.();
      });
    },
    once: (what, call) => void run(what, call),
  };
}

/** Waits, or less where the signal aborts. */
export function pause(milliseconds: number, signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    if (signal.aborted) return resolve();
    const timer = setTimeout(finish, milliseconds);
    signal.addEventListener("abort", finish, { once: true });
    function finish() {
      clearTimeout(timer);
      signal.removeEventListener("abort", finish);
      resolve();
    }
  });
}
