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
    title: "Pieces",
    kinds: ["buy", "start", "finish", "list", "reprice", "hold", "fallthrough", "sell", "refund", "retire"],
  },
  { title: "Costs and work", kinds: ["spend", "work", "drive"] },
  { title: "Loan and income", kinds: ["loan", "pay", "statement", "terms", "income"] },
  { title: "Slips", kinds: ["undo", "fix"] },
  { title: "Wishes", kinds: ["goal", "taxrate", "nudge"] },
];

/** The questions worth a place on a phone screen; the rest follow by name. */
const QUESTIONS = ["month", "loan", "unlisted", "pieces", "worth"] as const;

function answerHelp(): Answer {
  const grouped = new Set(GROUPS.flatMap(({ kinds }) => kinds));
  const lines = GROUPS.flatMap(({ title, kinds }, index) => {
    const last = index === GROUPS.length - 1;
    const members = verbs.filter(
      ({ kind }) => kinds.includes(kind) || (last && !grouped.has(kind) && kind !== "ask"),
    );
    return [`${title}:`, ...paired(members.map(({ example }) => example))];
  });
  const asked = answers.filter(({ about }) => (QUESTIONS as readonly string[]).includes(about ?? ""));
  return reply(["Text me what happened:", ...lines, "Ask:", ...paired(asked.map(({ example }) => example))]);
}

/** How wide a line of two examples may be on a phone. */
const LINE_LENGTH_MAX = 46;

/** Examples two to a line where both fit. */
function paired(examples: readonly string[]): string[] {
  const lines: string[] = [];
  for (const example of examples) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + example.length + 3 <= LINE_LENGTH_MAX)
      lines[lines.length - 1] = `${last} · ${example}`;
    else lines.push(example);
  }
  return lines;
}
