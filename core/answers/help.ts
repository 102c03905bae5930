import type { Kind } from "../notes/reading.ts";
import { verbs } from "../verbs/list.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { answers } from "./list.ts";
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

/** Which kinds stand together; a kind that no group names joins the last. A group with a topic has a page of its own. */
const GROUPS: readonly { title: string; kinds: readonly Kind[]; topic?: RegExp }[] = [
  {
    title: "Text me what happened",
    kinds: ["buy", "start", "finish", "list", "reprice", "hold", "fallthrough", "sell", "refund", "retire"],
  },
  {
    title: "Costs, work, loan",
    kinds: ["spend", "work", "drive", "loan", "pay", "statement", "terms", "income"],
  },
  { title: "Deals", topic: /\bdeals?\b/, kinds: ["collect", "trade", "share", "repeat"] },
  { title: "Slips", topic: /\bslips?\b/, kinds: ["undo", "fix", "mend"] },
  { title: "Slips and wishes", kinds: ["undo", "fix", "goal", "taxrate", "nudge"] },
];

function answerHelp({ question: { text } }: Asked): Answer {
  const page = GROUPS.find(({ topic }) => topic?.test(text.toLowerCase()));
  if (page) {
    const members = verbs.filter(({ kind }) => page.kinds.includes(kind));
    return reply([`${page.title}:`, ...members.map(({ example }) => example)]);
  }
  const grouped = new Set(GROUPS.flatMap(({ kinds }) => kinds));
  const lines = GROUPS.flatMap(({ title, kinds, topic }, index) => {
    if (topic) return [];
    const last = index === GROUPS.length - 1;
    const members = verbs.filter(
      ({ kind }) => kinds.includes(kind) || (last && !grouped.has(kind) && kind !== "ask"),
    );
    return [`${title}:`, ...packed(members.map(({ example }) => example))];
  });
  const questions = answers.filter(({ about }) => about !== "help").map(({ example }) => example);
  // "waiting" is no question about the books: the conversation takes it, and asks what it still has to be told.
  const asked = packed([...questions, "waiting"]);
  return reply([...lines, "Ask:", ...asked, "Also: help deals, help slips, export, settings, backup"]);
}

/** How wide a line of several examples may be on a phone. */
const LINE_LENGTH_MAX = 46;

/** Examples side by side where they fit: each goes to the first line with room for it. */
function packed(examples: readonly string[]): string[] {
  const lines: string[] = [];
  for (const example of examples) {
    const roomy = lines.findIndex((line) => line.length + example.length + 3 <= LINE_LENGTH_MAX);
    if (roomy === -1) lines.push(example);
    else lines[roomy] += ` · ${example}`;
  }
  return lines;
}
