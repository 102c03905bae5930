import { type Bot, GrammyError, HttpError } from "grammy";
import type { Instant } from "../../core/calendar.ts";
import { failureText, type Log } from "../log.ts";
import { waitSeconds } from "../sender.ts";
import { ALLOWED_UPDATES } from "./bot.ts";
import type { CatchingUp } from "./catching-up.ts";
import { within } from "./deadline.ts";
import { pause } from "./direct.ts";

/** How long a poll waits at the server for an update, and how long until a poll without answer is broken off. */
const POLL_SECONDS = 30;
const POLL_SECONDS_MAX = 45;
const CONFLICT_MS_MAX = 90_000;
const CONFLICT_PAUSE_MS = 5000;
const START_UP_WAIT_SECONDS_MAX = 15;

export type PollingEnd =
  | { kind: "stopped" }
  /** Another program polls with the same token. */
  | { kind: "conflict" }
  /** Telegram does not know the token. */
  | { kind: "refused" };

export interface PollingDeps {
  bot: Bot;
  stopping: AbortSignal;
  now: () => Instant;
  log: Log;
  /** Called when Telegram has answered a poll; the updates before it are handled by then. */
  onPolled(): void;
  /** Told of each poll, so that it is known when all that waited has been handled. */
  catchingUp: CatchingUp;
  /** Called once, when the bot's own name is known and the first poll is on its way, which would wait for it else. */
  onStarted(username: string): void;
  /** Called once, when Telegram first says that another program polls with the same token. */
  onConflict(): void;
  /** Called once, where Telegram cannot be reached at the start. */
  onUnreachable(): void;
  conflict?: { milliseconds: number; pauseMilliseconds: number };
}

/** Polls until told to stop, through whatever the network does. Resolves with why it ended; rejects on a bug. */
export async function poll(deps: PollingDeps): Promise<PollingEnd> {
  const { bot, stopping, now, log } = deps;
  const limit = deps.conflict ?? { milliseconds: CONFLICT_MS_MAX, pauseMilliseconds: CONFLICT_PAUSE_MS };
  let conflictSince: Instant | null = null;
  let lastConflict: Instant = Number.NEGATIVE_INFINITY;
  superviseCalls(deps);
  while (!stopping.aborted) {
    try {
      await bot.init(stopping as never);
      await bot.start({ allowed_updates: ALLOWED_UPDATES, timeout: POLL_SECONDS });
    } catch (error) {
      if (stopping.aborted) break;
      if (!(error instanceof GrammyError || error instanceof HttpError)) throw error;
      const code = error instanceof GrammyError ? error.error_code : 0;
      if (code === 401 || code === 404) return { kind: "refused" };
      log.warn("polling interrupted", { code, why: failureText(error) });
      if (code === 409) {
        if (lastConflict === Number.NEGATIVE_INFINITY) deps.onConflict();
        // Two pollers may throw each other out for ever: only a quiet stretch ends a conflict.
        if (now() - lastConflict > limit.milliseconds) conflictSince = now();
        lastConflict = now();
        if (now() - (conflictSince ?? now()) >= limit.milliseconds) return { kind: "conflict" };
      }
      await pause(limit.pauseMilliseconds, stopping);
    }
  }
  return { kind: "stopped" };
}

/** Ends the polling without a further call: what was not confirmed comes again, and is known by its key. */
export async function stopPolling(bot: Bot): Promise<void> {
  if (bot.isRunning()) await bot.stop();
}

/**
 * Stands between grammY and Telegram. Polls are reported, broken off when the connection has died unnoticed,
 * and not made at all once stopping: grammY's stop would confirm an update that may not be stored yet. Calls
 * at start are tried again at short intervals, where grammY would wait up to twenty minutes after an outage.
 */
function superviseCalls(deps: PollingDeps): void {
  const { bot, stopping, log, onPolled, onStarted, catchingUp } = deps;
  let isReachable = true;
  let isStarted = false;
  const start = () => {
    if (!stopping.aborted) onStarted(bot.botInfo.username);
  };
  bot.api.config.use(async (call, method, payload, signal) => {
    if (method === "getMe" || method === "deleteWebhook") {
      return patiently(() => call(method, payload, signal), deps);
    }
    if (method !== "getUpdates") return call(method, payload, signal);
    if (stopping.aborted) return { ok: true, result: [] as never };
    catchingUp.asking();
    // While something may wait, the answer comes at once; else the poll waits for what comes.
    const asked = catchingUp.isDone() ? payload : { ...payload, timeout: 0 };
    if (!isStarted) setImmediate(start);
    isStarted = true;
    try {
      const answer = await within(POLL_SECONDS_MAX, signal as never, (either) => call(method, asked, either));
      if (answer.ok) catchingUp.answered((answer.result as unknown[]).length);
      else catchingUp.failed();
      if (answer.ok) onPolled();
      if (answer.ok && !isReachable) log.info("Telegram answers again");
      isReachable = answer.ok;
      return answer;
    } catch (error) {
      catchingUp.failed();
      if (isReachable && !stopping.aborted)
        log.warn("Telegram cannot be reached", { why: failureText(error) });
      isReachable = false;
      throw error;
    }
  });
}

async function patiently<T extends { ok: boolean }>(
  call: () => Promise<T & { error_code?: number; parameters?: { retry_after?: number } }>,
  { stopping, log, onUnreachable }: Pick<PollingDeps, "stopping" | "log" | "onUnreachable">,
): Promise<T> {
  for (let tries = 1; ; tries++) {
    let asked: number | undefined;
    try {
      const answer = await call();
      const code = answer.ok ? 0 : (answer.error_code ?? 0);
      if (stopping.aborted || (code !== 429 && code < 500)) return answer;
      asked = answer.parameters?.retry_after;
    } catch (error) {
      if (stopping.aborted) throw error;
      if (tries === 1) onUnreachable();
      log.info("Telegram cannot be reached", { tries, why: failureText(error) });
    }
    await pause((asked ?? Math.min(waitSeconds(tries), START_UP_WAIT_SECONDS_MAX)) * 1000, stopping);
  }
}
