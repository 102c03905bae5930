import { resolve } from "node:path";
import * as z from "zod";
import { isZone } from "./zone.ts";

const LOG_LEVELS = ["trace", "debug", "info", "warn", "error", "fatal", "silent"] as const;
export type LogLevel = (typeof LOG_LEVELS)[number];

interface EverySetting {
  /** Where the ledger lives, as an absolute path. */
  directory: string;
  /** An IANA name; absent: asked of the owner in the first chat and stored. */
  zone?: string;
  /** An ISO 4217 code of a currency with two decimals. */
  currency: string;
  level: LogLevel;
}

export interface TelegramSettings extends EverySetting {
  mode: "telegram";
  token: string;
  /** Without a slash at its end. */
  apiRoot: string;
  /** The owner's Telegram id; absent: whoever opens the pairing link first. */
  owner?: string;
}

export type Settings = ({ mode: "terminal" } & EverySetting) | TelegramSettings;

export const API_ROOT = "https://api.telegram.org";

/**
 * Reads the settings from an environment. A setting that is malformed comes back as a sentence that names it,
 * says what is wrong and gives one value that would work; no sentence repeats the value, since a token may
 * have been pasted into the wrong place. An empty value counts as none. `isTerminal`: a person reads the log.
 */
export function readSettings(
  environment: Record<string, string | undefined>,
  { isTerminal = false } = {},
): { kind: "settings"; settings: Settings } | { kind: "refused"; problems: string[] } {
  // Parsed once: code made for it would take longer than it saves.
  const parsed = schema.safeParse(environment, { jitless: true });
  if (!parsed.success) {
    return { kind: "refused", problems: parsed.error.issues.map((issue) => issue.message) };
  }
  const { BOT_TOKEN, TELEGRAM_API_ROOT, OWNER_ID, DATA_DIR, TIME_ZONE, CURRENCY, LOG_LEVEL } = parsed.data;
  const every: EverySetting = {
    directory: resolve(DATA_DIR ?? "data"),
    currency: CURRENCY ?? "USD",
    // At a terminal the log shares the screen with what a person must see.
    level: LOG_LEVEL ?? (BOT_TOKEN && !isTerminal ? "info" : "warn"),
    ...(TIME_ZONE ? { zone: TIME_ZONE } : {}),
  };
  if (!BOT_TOKEN) return { kind: "settings", settings: { mode: "terminal", ...every } };
  const apiRoot = TELEGRAM_API_ROOT ?? API_ROOT;
  const owner = OWNER_ID ? { owner: OWNER_ID } : {};
  return {
    kind: "settings",
    settings: { mode: "telegram", token: BOT_TOKEN, apiRoot, ...owner, ...every },
  };
}

function setting<T extends z.ZodType>(schema: T) {
  const trimmed = (value: unknown) =>
    typeof value === "string" && value.trim() !== "" ? value.trim() : undefined;
  return z.preprocess(trimmed, schema.optional());
}

function text(isFit: (value: string) => boolean, problem: string) {
  return z.string().refine(isFit, problem);
}

const schema = z.object({
  BOT_TOKEN: setting(
    text(
      (value) => /^\d{1,20}:[\w-]{1,200}$/.test(value),
      "BOT_TOKEN is not in the form that Telegram gives out: digits, a colon, then letters and digits, as in BOT_TOKEN=123456789:AbCdEf-GhIjKl_MnOpQr",
    ),
  ),
  TELEGRAM_API_ROOT: setting(
    text(
      isApiRoot,
      `TELEGRAM_API_ROOT must be an http or https address without a query, as in TELEGRAM_API_ROOT=${API_ROOT}`,
    ).transform((value) => value.replace(/\/{1,10}$/, "")),
  ),
  OWNER_ID: setting(
    text(
      (value) => /^[1-9]\d{0,15}$/.test(value),
      "OWNER_ID must be a person's numeric Telegram id, as in OWNER_ID=123456789; leave it out to get a pairing link",
    ),
  ),
  DATA_DIR: setting(
    text((value) => !value.includes("\0"), "DATA_DIR must be a folder, as in DATA_DIR=./data"),
  ),
  TIME_ZONE: setting(
    text(
      isZone,
      "TIME_ZONE must be a time zone's IANA name (region and city), as in TIME_ZONE=America/Chicago",
    ),
  ),
  CURRENCY: setting(
    z
      .string()
      .transform((value) => value.toUpperCase())
      .refine(isCurrency, "CURRENCY must be the code of a currency in use, as in CURRENCY=USD")
      .refine(
        (value) => !isCurrency(value) || decimalsOf(value) === 2,
        "CURRENCY must have two decimals (whole cents); this one has another number, CURRENCY=USD would work",
      ),
  ),
  LOG_LEVEL: setting(
    z
      .string()
      .transform((value) => value.toLowerCase())
      .pipe(z.enum(LOG_LEVELS, `LOG_LEVEL must be one of ${LOG_LEVELS.join(", ")}, as in LOG_LEVEL=info`)),
  ),
});

function isApiRoot(value: string): boolean {
  if (!URL.canParse(value)) return false;
  const url = new URL(value);
  const isPlain = url.search === "" && url.hash === "" && url.username === "" && url.password === "";
  return isPlain && (url.protocol === "https:" || url.protocol === "http:");
}

function isCurrency(value: string): boolean {
  return Intl.supportedValuesOf("currency").includes(value);
}

/** The decimals that a currency is counted in, as CLDR (the Unicode locale data behind Intl) has them. */
function decimalsOf(currency: string): number | undefined {
  return new Intl.NumberFormat("en-US", { style: "currency", currency }).resolvedOptions()
    .maximumFractionDigits;
}
