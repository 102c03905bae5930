import { existsSync } from "node:fs";
import { loadEnvFile } from "node:process";

/** The private settings file of the folder that a command is started in; the guided setup writes it. */
export const ENVIRONMENT_FILE = ".env";

/**
 * The environment with what the folder's own file adds to it. What is set outside the file wins, an empty value
 * included; a folder without the file is no fault.
 */
export function readEnvironment(): Record<string, string | undefined> {
  if (existsSync(ENVIRONMENT_FILE)) loadEnvFile(ENVIRONMENT_FILE);
  return process.env;
}
