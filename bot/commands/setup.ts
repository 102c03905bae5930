import { dayOfInstant } from "../../core/calendar.ts";
import type { Ledger } from "../../db/ledger.ts";
import { openLedger } from "../../db/open.ts";
import { ENVIRONMENT_FILE, readEnvironment } from "../environment.ts";
import { telegramOwner } from "../members.ts";
import { notOpenedText } from "../not-opened.ts";
import { API_ROOT, readSettings, type Settings } from "../settings.ts";
import { type Dialogue, InputEnded, openDialogue } from "../setup/dialogue.ts";
import { writeEnvironmentFile } from "../setup/env-file.ts";
import { askLoan } from "../setup/first-loan.ts";
import { askZone } from "../setup/place.ts";
import { askToken } from "../setup/token.ts";
import { zoneInForce } from "../zone.ts";

const now = () => Date.now();

/** The settings beside the token: a malformed token on file is asked anew, anything else is refused. */
function settingsOf(environment: Record<string, string | undefined>): Settings | { why: string } {
  const read = readSettings({ ...environment, BOT_TOKEN: "" });
  return read.kind === "settings" ? read.settings : { why: read.problems.join("\n") };
}

async function lead(
  dialogue: Dialogue,
  ledger: Ledger,
  environment: Record<string, string | undefined>,
): Promise<void> {
  const { say } = dialogue;
  const apiRoot = environment["TELEGRAM_API_ROOT"] || API_ROOT;
  const known = environment["BOT_TOKEN"] || undefined;
  say("A few questions, then the bot answers on your phone. Ctrl+C stops; nothing is lost by it.", "");
  const { token, username } = await askToken(dialogue, { known, apiRoot });
  writeEnvironmentFile(ENVIRONMENT_FILE, { BOT_TOKEN: token });
  // What the file said before was loaded already, and a variable that is set is not loaded anew.
  process.env["BOT_TOKEN"] = token;
  const { TIME_ZONE } = environment;
  if (!TIME_ZONE) await askZone(dialogue, ledger.settings);
  const today = dayOfInstant(now(), zoneInForce(TIME_ZONE || undefined, ledger.settings));
  await askLoan(dialogue, ledger, { today, now: now() });
  say("", `All set. The token is kept in ${ENVIRONMENT_FILE} here, for your eyes only.`);
  const owner = telegramOwner(ledger);
  if (owner) say(`${owner.name} is the owner. Send @${username} a note from the phone.`);
  say("Next time start the bot with: npm start", "");
}

/** Gives whether the bot may be started now. */
async function setUp(): Promise<boolean> {
  const environment = readEnvironment();
  const settings = settingsOf(environment);
  if ("why" in settings) return refuse(settings.why);
  const opened = openLedger({ directory: settings.directory, now: now() });
  if (opened.kind === "locked")
    return refuse("The bot is running already. Stop it first (Ctrl+C in its window), then run setup again.");
  if (opened.kind !== "open") return refuse(notOpenedText(opened, settings.directory));
  const dialogue = openDialogue();
  try {
    await lead(dialogue, opened.ledger, environment);
    return true;
  } catch (error) {
    if (!(error instanceof InputEnded)) throw error;
    return refuse("Stopped before the end. What you answered is kept; run npm run setup to go on.");
  } finally {
    dialogue.close();
    opened.ledger.close();
  }
}

function refuse(why: string): false {
  console.error(why);
  process.exitCode = 1;
  return false;
}

// What setup ends with is the start itself, as with npm start.
if (await setUp()) await import("../main.ts");
