import { pino } from "pino";
import type { LogLevel } from "./settings.ts";

/** What a log line may hold beside its event: chosen plain values, never a whole error, update or context. */
export type LogFields = Record<string, string | number | boolean | null | undefined>;

export interface Log {
  debug(event: string, fields?: LogFields): void;
  info(event: string, fields?: LogFields): void;
  warn(event: string, fields?: LogFields): void;
  error(event: string, fields?: LogFields): void;
}

/** Whatever has the shape of a bot token, wherever it stands (in an address, a message, a stack). */
const TOKEN_SHAPE = /\d{3,20}:[\w-]{30,200}/g;

/** Returns a function that blanks the secrets, and whatever looks like a bot token, in a text. */
export function blanker(secrets: readonly string[]): (text: string) => string {
  const forms = secrets
    .flatMap((secret) => [secret, encodeURIComponent(secret)])
    .filter((form) => form !== "");
  return (text) =>
    forms
      .reduce((blanked, form) => blanked.replaceAll(form, "[token]"), text)
      .replace(TOKEN_SHAPE, "[token]");
}

/**
 * The log on standard error, written at once so that a crash loses none; secrets are blanked. JSON lines, or in
 * a terminal lines for people.
 */
export function openLog(
  level: LogLevel,
  secrets: readonly string[] = [],
  to: { write(line: string): void } = standardError(process.stderr.isTTY === true),
): Log {
  const blank = blanker(secrets);
  const logger = pino({ level, base: null, timestamp: pino.stdTimeFunctions.isoTime }, to);
  const write =
    (at: "debug" | "info" | "warn" | "error") =>
    (event: string, fields: LogFields = {}) => {
      const blanked = Object.entries(fields).map(([name, value]) => [
        name,
        typeof value === "string" ? blank(value) : value,
      ]);
      logger[at](Object.fromEntries(blanked), blank(event));
    };
  return { debug: write("debug"), info: write("info"), warn: write("warn"), error: write("error") };
}

function standardError(isTerminal: boolean): { write(line: string): void } {
  const to = pino.destination({ dest: 2, sync: true });
  return isTerminal ? { write: (line) => void to.write(readable(line)) } : to;
}

/** A JSON line of the log as a person reads it: the time, how bad it is where it is bad, the event, its fields. */
export function readable(line: string): string {
  const { level, time, msg, stack: _, ...fields } = JSON.parse(line) as Record<string, unknown>;
  const clock = new Date(String(time)).toTimeString().slice(0, 8);
  const grade = Number(level) >= 50 ? "error: " : Number(level) >= 40 ? "warning: " : "";
  const told = Object.entries(fields).map(([name, value]) => `${name} ${String(value)}`);
  return `${clock} ${grade}${[String(msg), ...told].join(" · ")}\n`;
}

/** An error in one line fit for the log: its name and message and those of its causes, no payload, no stack. */
export function failureText(error: unknown, depth = 3): string {
  if (!(error instanceof Error)) return String(error).slice(0, 300);
  const inner: unknown = "error" in error ? error.error : error.cause;
  const own = `${error.name}: ${error.message}`.replace(TOKEN_SHAPE, "[token]").slice(0, 300);
  return inner instanceof Error && depth > 0 ? `${own} (${failureText(inner, depth - 1)})` : own;
}
