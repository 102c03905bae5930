import { existsSync, readFileSync } from "node:fs";
import { loadEnvFile } from "node:process";
import { readSettings } from "./settings.ts";

/** The private settings file of the folder that a command is started in; the guided setup writes it. */
export const ENVIRONMENT_FILE = ".env";

/**
 * The bot's token may stand in a file of its own, as containers hand out secrets: it is read where BOT_TOKEN itself
 * is not set. A file that cannot be read, or has nothing in it, comes back as a sentence; no sentence repeats it.
 */
export function withToken(
  environment: Record<string, string | undefined>,
): { environment: Record<string, string | undefined> } | { problem: string } {
  const { BOT_TOKEN, BOT_TOKEN_FILE } = environment;
  if (BOT_TOKEN?.trim() || !BOT_TOKEN_FILE?.trim()) return { environment };
  try {
    const token = readFileSync(BOT_TOKEN_FILE.trim(), "utf8").trim();
    if (token !== "") return { environment: { ...environment, BOT_TOKEN: token } };
    return { problem: "BOT_TOKEN_FILE names a file with nothing in it; it must hold the bot's token alone." };
  } catch {
    return {
      problem:
        "BOT_TOKEN_FILE names a file that cannot be read, as in BOT_TOKEN_FILE=/run/secrets/bot_token it must hold the bot's token alone.",
    };
  }
}

/**
 * The environment with what the folder's own file adds to it. What is set outside the file wins, an empty value
 * included; a folder without the file is no fault.
 */
export function readEnvironment(): Record<string, string | undefined> {
  if (existsSync(ENVIRONMENT_FILE)) loadEnvFile(ENVIRONMENT_FILE);
  return process.env;
}

/** What a tool needs of the settings: nothing of the chat's can stand in its way. */
export function toolSettings(): ReturnType<typeof readSettings> {
  const { DATA_DIR, TIME_ZONE, CURRENCY } = readEnvironment();
  return readSettings({ DATA_DIR, TIME_ZONE, CURRENCY });
}
