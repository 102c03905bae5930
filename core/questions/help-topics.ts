/** One page of help: a few lines, each an example to copy or one plain sentence. */
export interface HelpTopic {
  name: string;
  /** Words that ask for it, in "help …" and in "how do i …". */
  asked: RegExp;
  lines: readonly string[];
}

/** The pages of help, the more telling words first: each at most twelve lines with its title. */
export const HELP_TOPICS: readonly HelpTopic[] = [
  {
    name: "questions",
    asked: /\b(?:questions?|ask|asking|answers?|find out|look up|search)\b/,
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
      "chart of profit by month",
      "In your own words: what I don't know, I name.",
    ],
  },
  {
    name: "slips",
    asked:
      /\b(?:slips?|delete|remove|undo|mistakes?|wrong|fix|edit|change|correct|mend|take back|cancel|void)\b/,
    lines: [
      "undo  (takes back your last note)",
      "make that 35  (its amount)",
      "paint on the 3rd was 14 not 12",
      "delete the drive",
      "#8 was a mistake",
      'Or edit the message itself, or reply "undo" to it.',
      "Nothing is lost: old notes are only set aside.",
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
    asked:
      /\b(?:deals?|trades?|swaps?|barter|owed|owes|owe|collect|every month|repeat|standing|share|split)\b/,
    lines: [
      "sold hutch 200, 50 still owed",
      "got the other 50 for the hutch",
      "traded #1 plus 20 for a dresser",
      "storage 60 every month",
      "stop the storage",
      "Ask: who owes me",
    ],
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
    asked:
      /\b(?:costs?|spend|spending|expenses?|materials?|supplies|gas|storage|hours|time|work|miles|drive|driving|mileage)\b/,
    lines: [
      "paint 12.50 for dresser",
      "knobs 6x2.50 for #4",
      "gas 20",
      "2.5h sanding dresser",
      "drove 24 miles for #4",
      "What names no piece is a cost of the shop.",
      "Ask: how much on paint this year",
    ],
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
];

/** The page that a message asks for: "help deposits", "how do i delete a note"; null where it asks for none. */
export function helpTopicFor(text: string): HelpTopic | null {
  const said = text
    .trim()
    .toLowerCase()
    .replace(/[’']/g, "")
    .replace(/[?.!]+$/, "");
  const topic =
    /^\/?(?:help|halp)(?: me)?(?: with| on| about| for)? (.{1,60})$/.exec(said)?.[1] ??
    /^(?:how (?:do|can|would|should) (?:i|we|you)|how to|whats the way to|can i|help me) (.{1,80})$/.exec(
      said,
    )?.[1];
  if (topic === undefined || /^(?:doing|know|make money)\b/.test(topic)) return null;
  return HELP_TOPICS.find(({ asked }) => asked.test(topic)) ?? null;
}

/** A page as it is shown. */
export function helpText({ name, lines }: HelpTopic): string {
  return [`Help, ${name}:`, ...lines].join("\n");
}

/** All topics in a line or two. */
export function topicNames(): string {
  return HELP_TOPICS.map(({ name }) => name).join(", ");
}
