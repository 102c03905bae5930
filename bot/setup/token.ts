import { GrammyError } from "grammy";
import { readSettings } from "../settings.ts";
import { createClient } from "../telegram/bot.ts";
import type { Dialogue } from "./dialogue.ts";

const CHECK_SECONDS_MAX = 20;

const HOW_TO_MAKE_A_BOT = [
  "A bot of your own, made in Telegram on your phone:",
  "",
  "  - In the search of Telegram, find BotFather: the one with the blue check mark.",
  "  - Open it and press Start. Send it:  /newbot",
  "  - It asks for a name. Send any, like:  Yard Ledger",
  "  - It asks for a username, which has to end in bot. Send one, like:  yard_ledger_27_bot",
  "    (Taken already? Try another number.)",
  '  - It answers "Done!" with a token: digits, a colon, then letters.',
  "",
  "  The token is the key to your bot. Show it to nobody.",
] as const;

export interface CheckedToken {
  token: string;
  /** The bot's name on Telegram, without the "@". */
  username: string;
}

type Check = { kind: "known"; username: string } | { kind: "unknown" } | { kind: "unreachable" };

/** Leads to a bot's token and checks it with Telegram; one that is on file already may be kept. */
export async function askToken(
  { say, ask }: Dialogue,
  { known, apiRoot }: { known: string | undefined; apiRoot: string },
): Promise<CheckedToken> {
  if (known) say("A token is on file already.");
  else say(...HOW_TO_MAKE_A_BOT);
  let answer = known ?? "";
  for (let isFirst = true; ; isFirst = false) {
    if (!known || !isFirst) answer = (await ask("Paste the token here and press Enter:")) || answer;
    const token = answer.trim();
    if (readSettings({ BOT_TOKEN: token }).kind === "refused" || token === "") {
      say("That is no token: it looks like 123456789:AbCdEf… Copy all of it and paste it again.");
      continue;
    }
    const check = await checkToken(token, apiRoot);
    if (check.kind === "known") {
      say(`Telegram knows it: your bot is @${check.username}.`);
      return { token, username: check.username };
    }
    if (check.kind === "unknown") say("Telegram does not know that token. Copy it again from BotFather.");
    else say("Telegram cannot be reached. See that this computer is online, then press Enter.");
  }
}

async function checkToken(token: string, apiRoot: string): Promise<Check> {
  const signal = AbortSignal.timeout(CHECK_SECONDS_MAX * 1000);
  try {
    const { username } = await createClient({ token, apiRoot }).api.getMe(signal as never);
    return { kind: "known", username };
  } catch (error) {
    const isRefused = error instanceof GrammyError && (error.error_code === 401 || error.error_code === 404);
    return { kind: isRefused ? "unknown" : "unreachable" };
  }
}
