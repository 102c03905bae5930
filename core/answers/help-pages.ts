import { PHONE_COLUMNS } from "../phone.ts";
import { verbs } from "../verbs/list.ts";
import type { Page } from "../verbs/verb.ts";

/** The pages of notes; each verb says on which its example stands. */
const PAGES: readonly { topic: Page; title: string }[] = [
  { topic: "notes", title: "Text me what happened:" },
  { topic: "costs", title: "Costs, work and the loan:" },
  { topic: "deals", title: "Deals:" },
  { topic: "slips", title: "Slips and wishes:" },
];

/** What the bot's own words mean, a line each. */
const WORDS: readonly string[] = [
  "#4: a piece's number, the bot gives it",
  "lot: pieces bought for one price",
  "set: pieces kept and sold as one",
  "hold: kept for a buyer",
  "deposit: owed until the piece is sold",
  "shop cost, overhead: for no one piece",
  "profit: sales less cost, fees, refunds",
  "due to the loan: earned, not sent yet",
  "paid ahead: sent before it was earned",
  "to earn back: spent before earning",
  "statement: what the lender says is owed",
  "flipped: sold, and not come back",
];

/**
 * The page of the help on a topic, as in "help costs"; null where there is none of that name. `questions`: an
 * example for each question that is answered; "waiting" is no question about the books, the conversation takes it.
 */
export function helpPage(topic: string, questions: readonly string[]): string | null {
  const lines = pageLines(topic.toLowerCase(), questions);
  return lines.length === 0 ? null : lines.join("\n");
}

export function pageLines(topic: string, questions: readonly string[] = []): string[] {
  if (/^words?$/.test(topic)) return ["Words:", ...WORDS];
  if (/^(?:questions?|ask(?:ing)?)$/.test(topic)) return ["Ask:", ...packed([...questions, "waiting"])];
  const page = PAGES.find((each) => each.topic === topic || each.topic === `${topic}s`);
  if (!page) return [];
  const members = verbs.filter((verb) => verb.page === page.topic && verb.kind !== "ask");
  return [page.title, ...packed(members.map(({ example }) => example))];
}

/** Examples side by side where they fit a line of a phone: each goes to the first line with room for it. */
function packed(examples: readonly string[]): string[] {
  const lines: string[] = [];
  for (const example of examples) {
    const roomy = lines.findIndex((line) => line.length + example.length + 3 <= PHONE_COLUMNS);
    if (roomy === -1) lines.push(example);
    else lines[roomy] += ` · ${example}`;
  }
  return lines;
}
