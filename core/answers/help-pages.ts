import { PHONE_COLUMNS } from "../phone.ts";
import { verbs } from "../verbs/list.ts";
import type { Page } from "../verbs/verb.ts";

/** One page of help: a few lines, each an example to copy or one plain sentence. */
export interface HelpPage {
  name: string;
  title?: string;
  /** Words that ask for it, in "help ..." and in "how do i ...". */
  asked: RegExp;
  /** The verbs whose examples stand on it, before its own lines. */
  verbs?: Page;
  /** The examples of the views stand on it. */
  views?: true;
  lines: readonly string[];
}

/** What the bot's own words mean, a line each. */
const WORDS: readonly string[] = [
  "#4: a piece's number, the bot gives it",
  "lot: one price for several; set: as one",
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

/** The pages of help, the more telling words first: each at most twelve lines with its title. */
export const HELP_PAGES: readonly HelpPage[] = [
  {
    name: "questions",
    asked: /\b(?:questions?|ask|asking|find out|look up|search)\b/,
    lines: [
      "how much did i make in may",
      "profit on dressers this year",
      "paint since june · and in may?",
      "best source",
      "profit by kind",
      "may vs june",
      "how many chairs are left",
      "who bought #21",
      "last 5 notes",
      "What I don't know, I name.",
      "More: help answers",
    ],
  },
  {
    name: "slips",
    title: "Slips and wishes:",
    asked:
      /\b(?:slips?|delete|remove|undo|mistakes?|wrong|fix|edit|change|correct|mend|take back|cancel|void)\b/,
    verbs: "slips",
    lines: [
      "paint on the 3rd was 14 not 12",
      "delete the drive",
      "Or edit the message, or reply undo.",
      "Nothing is lost: the old note is kept.",
    ],
  },
  {
    name: "deposits",
    asked: /\b(?:deposits?|holds?|hold|reserve|reserved|down payments?|buyer backs|backs out|backed out)\b/,
    lines: [
      "deposit 45 on desk from neighbor",
      "hold hutch till friday",
      "sold desk 165  (the whole price)",
      "buyer backed out of desk, refunded 45",
      "buyer backed out of desk, kept 45",
      "Ask: what's on hold, whose deposits",
      "A deposit is not earned until the sale.",
    ],
  },
  {
    name: "deals",
    title: "Deals:",
    asked:
      /\b(?:deals?|trades?|swaps?|barter|owed|owes|owe|collect|every month|repeat|standing|share|split)\b/,
    verbs: "deals",
    lines: ["sold hutch 200, 50 still owed", "stop the storage", "Ask: who owes me"],
  },
  {
    name: "buying",
    asked: /\b(?:buy|buying|bought|purchases?|pieces?|lots?|sets?|free|found)\b/,
    lines: [
      "bought dresser 30 cash from yard sale",
      "got 2 chairs 22 at estate sale",
      "free desk off the curb",
      "bought dining set 4 pieces 84",
      "Each piece gets a number: #4",
      "Ask: should i buy this dresser for 60",
    ],
  },
  {
    name: "selling",
    asked: /\b(?:sell|selling|sold|sales?|refunds?|returns?|fees?|listing|list|price)\b/,
    lines: [
      "listed #4 190 on board",
      "dropped #4 to 160",
      "sold #4 150 cash to neighbor",
      "sold #4 150 fee 4.50",
      "refunded 25 on #4",
      "#4 came back, gave back 150",
      "keeping #4 · donated #5 · trashed #7",
      "Ask: what should i ask for #4",
    ],
  },
  {
    name: "costs",
    title: "Costs, work and the loan:",
    asked:
      /\b(?:costs?|spend|spending|expenses?|materials?|supplies|gas|storage|hours|time|work|miles|drive|driving|mileage)\b/,
    verbs: "costs",
    lines: ["knobs 6x2.50 for #4", "No piece named: a cost of the shop.", "Ask: how much on paint this year"],
  },
  {
    name: "loans",
    asked: /\b(?:loans?|debts?|interest|lender|payoff|balance)\b/,
    lines: [
      "loan 14250 at 5.5%",
      "paid loan 500",
      "loan balance 9871.14  (the statement)",
      "new loan grad 4100 6.8%",
      "Ask: loan? · which loan first",
      "what if i send 300 more a month",
      "how much a month to be rid of it by december 2028",
      "Payoff days are estimates; the statement is right.",
    ],
  },
  {
    name: "income",
    asked: /\b(?:income|tips|ads|streams?|workshop)\b/,
    lines: ["ads 240", "tips 35", "workshop 120", "Ask: tips this year, income by stream"],
  },
  {
    name: "tax",
    asked: /\b(?:tax|taxes|irs|deduct\w*)\b/,
    lines: ["set aside 20% for tax", "Ask: tax", "An estimate and no advice: ask a licensed preparer."],
  },
  {
    name: "goals",
    asked: /\b(?:goals?|target|pace|track)\b/,
    lines: ["goal 100 pieces this year", "goal 800 a month", "Ask: on track?"],
  },
  {
    name: "reminders",
    asked: /\b(?:remind\w*|nudge|daily|snooze|quiet|message)\b/,
    lines: [
      "nudge at 6:30pm",
      "nudge off",
      "snooze 3 days",
      "Once a day, only when there is something to say.",
    ],
  },
  {
    name: "photos",
    asked: /\b(?:photos?|pictures?|pics?|images?|charts?|graphs?)\b/,
    lines: [
      "Send a photo with the note as its caption,",
      "or reply with one to the piece's message.",
      "show #4  (its story and photos)",
      "chart of profit by month · loan chart",
    ],
  },
  {
    name: "family",
    asked: /\b(?:family|members?|invite|wife|husband|partner|people|someone else|share access)\b/,
    lines: ["invite  (a link for one person)", "members", "remove NAME", "Ask: what did dad note this week"],
  },
  {
    name: "files",
    asked: /\b(?:files?|export|backups?|backup|spreadsheet|csv|import|excel|workbook|restore)\b/,
    lines: [
      "export  (a workbook and tables)",
      "backup  (the latest copy)",
      "Send a .csv of past pieces to bring them in.",
    ],
  },
  {
    name: "answers",
    title: "Ask:",
    asked: /\banswers?\b/,
    views: true,
    lines: [],
  },
  { name: "notes", title: "Text me what happened:", asked: /^notes?$/, verbs: "notes", lines: [] },
  { name: "words", title: "Words:", asked: /^words?$/, lines: WORDS },
];

/** The page that a message asks for: "help deposits", "how do i delete a note"; null where it asks for none. */
export function helpPageFor(text: string): HelpPage | null {
  const said = text
    .trim()
    .toLowerCase()
    .replace(/[’']/g, "")
    .replace(/[?.!]+$/, "");
  const asksForQuestions =
    /^(?:what|which) (?:questions |kinds? of questions |things |all )?(?:(?:can|could|may) (?:i|we) ask(?: you)?|can you answer)(?: for me)?$/;
  if (asksForQuestions.test(said)) return HELP_PAGES.find(({ name }) => name === "questions")!;
  const topic =
    /^\/?(?:help|halp)(?: me)?(?: with| on| about| for)? (.{1,60})$/.exec(said)?.[1] ??
    /^(?:how (?:do|can|would|should) (?:i|we|you)|how to|whats the way to|can i|help me) (.{1,80})$/.exec(
      said,
    )?.[1];
  if (topic === undefined || NO_TOPIC.test(topic)) return null;
  const named = HELP_PAGES.find(({ name }) => name === topic || name === `${topic}s`);
  return named ?? HELP_PAGES.find(({ asked }) => asked.test(topic)) ?? null;
}

/** What no page tells of: how one is, and the handwork itself. */
const NO_TOPIC =
  /^(?:doing|know|make money|be)\b|^(?:strip|sand|clean|paint|prime|stain|restore|repair|refinish|reupholster|glue|wax|seal|oil)\b|^(?:get|take|remove)\b.*\b(?:smells?|odou?rs?|stains?|scratch(?:es)?|rust|paint|varnish|wax|mold|dents?|rings|stickers?)\b|^fix (?:a|an|the|my|this|that) (?:wobbly|broken|loose|cracked|scratched|chipped|stuck|squeaky|torn|bent|warped)\b/;

/** Whether it is asked how something is done that stands in no book. */
export function asksHandwork(text: string): boolean {
  const said = text.trim().toLowerCase().replace(/[’']/g, "");
  const topic =
    /^(?:how (?:do|can|would|should) (?:i|we|you)|how to|whats the way to|whats the best way to) (.{1,80})$/.exec(
      said,
    )?.[1];
  return topic !== undefined && NO_TOPIC.test(topic) && !/^(?:doing|know|make money|be)\b/.test(topic);
}

/** A page as it is shown; `views`: an example of each view, for the page that lists them. */
export function helpText(page: HelpPage, views: readonly string[] = []): string {
  return pageLines(page, views).join("\n");
}

/** The lines of a page by name, its title first. */
export function linesOfPage(name: string): string[] {
  return pageLines(HELP_PAGES.find((page) => page.name === name)!, []);
}

function pageLines(
  { name, title, verbs: shown, views: isOfViews, lines }: HelpPage,
  views: readonly string[],
): string[] {
  const examples = verbs.flatMap(({ page, kind, example }) =>
    page === shown && kind !== "ask" ? [example] : [],
  );
  // "waiting" is no question about the books: the conversation takes it.
  const all = isOfViews ? [...views, "waiting"] : examples;
  return [title ?? `Help, ${name}:`, ...packed(all), ...lines];
}

/** All pages in a line or two. */
export function pageNames(): string {
  return HELP_PAGES.map(({ name }) => name).join(", ");
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
