import { dayOfInstant } from "../../core/calendar.ts";
import { greetingFor } from "../conversation/commands.ts";
import { type ConversationDeps, createConversation } from "../conversation/conversation.ts";
import { beginLead } from "../conversation/leading.ts";
import { failureText } from "../log.ts";
import { ownerAtMachine } from "../members.ts";
import { startSchedule } from "../schedule/schedule.ts";
import { recordStanding } from "../schedule/standing.ts";
import { openDelivery, TERMINAL_CHAT } from "./delivery.ts";
import { type Choices, missedChoice } from "./screen.ts";

/**
 * The chat at a terminal: a line is a message, a letter presses a choice, "quit" or the end of input ends it.
 * Without a terminal (piped input) it takes a note a line and ends with the input.
 */
export async function runTerminal(deps: ConversationDeps): Promise<void> {
  const isChat = process.stdin.isTTY === true && process.stdout.isTTY === true;
  const chat = openChat(deps);
  // Not loaded where the chat is another one.
  const { createInterface } = await import("node:readline");
  const lines = createInterface({
    input: process.stdin,
    output: isChat ? process.stdout : undefined,
    prompt: "> ",
  });
  const schedule = isChat
    ? startSchedule({ ...deps, wake: () => void chat.show().then(() => lines.prompt(true)) })
    : null;
  if (isChat) chat.greet();
  // Without a schedule, what is due by now is recorded before the first line.
  else
    recordStanding({
      ...deps,
      today: dayOfInstant(deps.now(), deps.zone()),
      now: deps.now(),
      chat: TERMINAL_CHAT,
    });
  await chat.show();
  if (isChat) lines.prompt();
  for await (const line of lines) {
    if (isChat && /^\s*(?:quit|exit|bye)\s*$/i.test(line)) break;
    if (line.trim() !== "") await chat.hear(line);
    if (isChat) lines.prompt();
  }
  lines.close();
  schedule?.stop();
}

function openChat(deps: ConversationDeps) {
  const { ledger, now } = deps;
  const conversation = createConversation(deps);
  const person = ledger.transaction(() => ownerAtMachine(ledger, now()));
  let choices: Choices = new Map();
  let messages = 0;
  const print = (text: string) => process.stdout.write(`${text}\n\n`);
  const delivery = openDelivery({ ledger, print, now });
  const show = async () => {
    choices = (await delivery.show()) ?? choices;
  };
  return {
    show,
    greet() {
      if (ledger.books.facts.length === 0) {
        ledger.transaction(() => beginLead({ ledger }));
        print(greetingFor(deps.zone()));
      } else print(`Welcome back. "help" shows what to text, "quit" leaves.`);
    },
    async hear(line: string) {
      const said = now();
      const message = `line-${said}-${++messages}`;
      const missed = missedChoice(line, choices);
      if (missed !== null) return print(missed);
      const pressed = choices.get(line.trim().toLowerCase());
      try {
        if (pressed) conversation.press({ person, chat: TERMINAL_CHAT, message, press: pressed, said });
        else conversation.hear({ person, chat: TERMINAL_CHAT, message, text: line, said });
      } catch (error) {
        deps.log.error("note not stored", { why: failureText(error) });
        print(`Nothing was recorded: the ledger could not be written. Please type it again: ${line.trim()}`);
        return;
      }
      await show();
    },
  };
}
