import type { Answer } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { linesOfPage } from "./help-pages.ts";
import { reply } from "./wording.ts";

export const help = defineAnswer({
  about: "help",
  example: "help",
  asks: {
    phrases: [
      "how does … work",
      "how do i use",
      "help",
      "what can you do",
      "what can i say",
      "how do i",
      "how does this work",
      "how do you work",
      "commands",
      "what do you do",
      "what can i ask",
      "what questions can i ask",
      "what can you tell me",
      "what can you answer",
      "how to",
      "what do i type",
      "what should i type",
      "how can i",
      "what are the commands",
      "show … commands",
      "show help",
      "what can i do",
      "instructions",
      "what do you know",
      ...["type", "text", "write", "tell you", "log", "record"].map((tell) => `what can i ${tell}`),
      "what can i send",
      "how does it work",
      "how do i use",
      "who are you",
      "what are you",
      "what is this",
    ],
    whole: [
      "help",
      "commands",
      "menu",
      "instructions",
      "help me",
      "help please",
      "options",
      "halp",
      "need help",
      "i need help",
      "how to",
    ],
  },
  answer: answerHelp,
});

/** Whether words, plain and in lower case, ask for help and nothing else. */
export function asksHelp(said: string): boolean {
  const { whole = [], phrases = [] } = help.asks;
  const words = said.replace(/ you$/, "");
  return whole.includes(words) || phrases.includes(words);
}

function answerHelp(): Answer {
  return reply(helpLines());
}

/** The first page of help, and what more there is. */
export function helpLines(): string[] {
  return [...linesOfPage("notes"), ...MORE];
}

const MORE = [
  "More, each on a page of its own:",
  "help costs · help deals · help slips",
  "help questions · help words",
  "Also: export · backup · settings",
];
