import { GrammyError, HttpError } from "grammy";
import { failureText } from "../log.ts";
import type { Sending } from "../sender.ts";

/**
 * What a failed call to Telegram means: it refused for good, it asks to wait, or the network failed. Anything
 * else is a bug and is thrown on.
 */
export function sendingOfFailure(error: unknown): Exclude<Sending, { kind: "sent" }> {
  const why = failureText(error);
  if (error instanceof HttpError) return { kind: "later", why };
  if (!(error instanceof GrammyError)) throw error;
  const { error_code: code, parameters } = error;
  if (code === 429) return { kind: "later", afterSeconds: parameters.retry_after ?? 5, why };
  // 401: the token was withdrawn, which the polling reports; the replies wait for a new one.
  if (code === 401 || code === 409 || code >= 500) return { kind: "later", why };
  const isGone = code === 403 || /chat not found/i.test(error.description);
  return { kind: "never", why, ...(isGone ? { unreachable: true as const } : {}) };
}

/** An edit that changes nothing is refused by Telegram, and is as good as done. */
export function isUnchanged(error: unknown): boolean {
  return error instanceof GrammyError && /message is not modified/i.test(error.description);
}

/** A message that can be changed no more: it is gone, too old, or not the bot's own. */
export function isRefusedEdit(error: unknown): boolean {
  return error instanceof GrammyError && error.error_code === 400 && !isUnchanged(error);
}
