import type { Api } from "grammy";
import { failureText, type Log } from "../log.ts";

/** The menu beside the text field: the few words worth finding there, each the bot's own word with a slash. */
const COMMANDS = [
  { command: "month", description: "This month so far" },
  { command: "loan", description: "The loan: balance and what is due to it" },
  { command: "unlisted", description: "Finished pieces that are not listed yet" },
  { command: "undo", description: "Take back the last note" },
  { command: "export", description: "The books as a spreadsheet" },
  { command: "settings", description: "What is set, and how to change it" },
  { command: "help", description: "Notes and questions to try" },
] as const;

/** A command as the words that mean the same: "/month@yard_bot feb" is "month feb". Other text is itself. */
export function wordsOf(text: string): string {
  const command = /^\/([A-Za-z]\w{0,31})(?:@\w{1,64})?(?:\s+|$)/.exec(text);
  if (!command) return text;
  const word = command[1]!.toLowerCase();
  // What follows "/start" is a code from a link, never part of a note.
  if (word === "start") return "start";
  return `${word} ${text.slice(command[0].length)}`.trim();
}

/** The code behind "/start", as a pairing or invitation link sends it; null where there is none. */
export function startCode(text: string): string | null {
  return /^\/start(?:@\w{1,64})?\s+([\w-]{1,64})\s*$/.exec(text)?.[1] ?? null;
}

/** Puts the menu in place; the bot works without it, so a failure is only logged. */
export async function publishCommands(api: Api, log: Log): Promise<void> {
  try {
    await api.setMyCommands([...COMMANDS]);
  } catch (error) {
    log.warn("command menu not set", { why: failureText(error) });
  }
}
