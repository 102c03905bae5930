import type { Kind } from "../notes/reading.ts";
import { verbs } from "../verbs/list.ts";
import type { Answer } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { answers } from "./list.ts";
import { reply } from "./wording.ts";

export const help = defineAnswer({
  about: "help",
  example: "help",
  asks: {},
  answer: answerHelp,
});

/** Which kinds stand together; a kind that no group names joins the last. */
const GROUPS: readonly { title: string; kinds: readonly Kind[] }[] = [
  {
    title: "Text me what happened",
    kinds: ["buy", "start", "finish", "list", "reprice", "hold", "fallthrough", "sell", "refund", "retire"],
  },
  {
    title: "Costs, work, loan",
    kinds: ["spend", "work", "drive", "loan", "pay", "statement", "terms", "income"],
  },
  { title: "Slips and wishes", kinds: ["undo", "fix", "goal", "taxrate", "nudge"] },
];

function answerHelp(): Answer {
  const grouped = new Set(GROUPS.flatMap(({ kinds }) => kinds));
  const lines = GROUPS.flatMap(({ title, kinds }, index) => {
    const last = index === GROUPS.length - 1;
    const members = verbs.filter(
      ({ kind }) => kinds.includes(kind) || (last && !grouped.has(kind) && kind !== "ask"),
    );
    return [`${title}:`, ...packed(members.map(({ example }) => example))];
  });
  const questions = answers.filter(({ about }) => about !== "help").map(({ example }) => example);
  return reply([...lines, "Ask:", ...packed(questions), "Also: export · backup · settings · invite"]);
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
