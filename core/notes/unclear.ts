import type { Clause } from "./clause.ts";
import type { Trouble } from "./grammar.ts";
import { builtFrom } from "./instead.ts";
import type { ReadingOf } from "./reading.ts";

/** What an unclear note says for itself: one sentence a person can act on. */
const WHY: Readonly<Record<Trouble["kind"], string>> = {
  twoNumbers:
    "There is more than one number that could be the amount. Send the note again with just the one.",
  decimals: "An amount has at most two decimals.",
  negative: "An amount can't be below zero. Say what happened with the amount as it is.",
  large: "That number is too large for one note (1,000,000.00 at most).",
  tooMuch: "That is more than such a note can mean. Send it again with the right number.",
  range: "That could be either amount. Send it again with the one that is right.",
  vagueAmount: "That amount could be read in more than one way. Send it again in digits.",
  eachOfUnknown: "How many were there? Say the number of pieces with the price of each.",
  future: "That day is still to come. Send the note again when it has happened.",
  unrealDay: "There is no such day. Say it like 3/14 or yesterday.",
  vagueTime: "Which day was that? Say it like yesterday, sat or 3/14.",
  intention: "That sounds like a plan. Send it once it has happened.",
  offer: "An offer is not a sale yet. Send it once it has happened.",
  appointment: "That sounds like an appointment. Send it once it has happened.",
  denial: "That sounds like something that did not happen, so nothing is recorded.",
  doubt: "That sounds unsure. Send it again once you know.",
  noVerb: "Was it bought, listed or sold? Add the word.",
  loneNumber: "What is that number? Add what it was for.",
  cutOrPrice: 'Is that the new price, or how much came off? Say "to" or "by".',
  raiseBy: "Say the new price.",
  loanAlone: "Is that a payment, the balance, or a new loan? Add the word.",
  botWord: "That is a word for the bot itself. Send it alone, as its own message.",
  anotherPerson: "Who did that is not clear. Say what you bought, sold or paid yourself.",
  question: 'That question is not one I know. Send "help" for what you can ask.',
  clashingWord: "That short form means two things. Write the word out.",
  twoKinds: "That mixes a piece and something else. Say each with its own amount.",
  unknown: 'I could not make out what happened. Send "help" to see how notes are written.',
  percentUnsaid: "Is that a percent? Add the sign.",
  clockUnsaid: "Say the time with am or pm.",
  goalUnsaid: "Is the goal in pieces or in dollars? Say which.",
  undoMore: "Undo takes back your last note. To take back another one, reply to it with undo.",
  notMoney: "That does not look like an amount of money.",
  imperative: "Has that happened? If so, say it in the past.",
  priceOfBoth:
    "Is that price for all of them together? Say each with its own price, or name them before the price.",
  twoNouns: 'Is that one piece or two? Put "and" between two.',
  unclaimed: "There is a number there that I could not place. Say what it is for, or leave it out.",
};

export function whyOf(trouble: Trouble): string {
  return WHY[trouble.kind];
}

/** Words to the bot itself; the conversation takes them when they are the whole message. */
const BOT_WORDS: ReadonlySet<string> = new Set([
  "start",
  "export",
  "backup",
  "invite",
  "members",
  "settings",
  "setup",
  "restore",
  "stop",
  "about",
  "status",
]);

export function isBotWord(norms: readonly string[]): boolean {
  // A word and a mark or two: anything longer is no command.
  if (norms.length > 3) return false;
  const words = norms.filter((norm) => /[a-z0-9]/.test(norm));
  return words.length === 1 && BOT_WORDS.has(words[0]!);
}

export function unclear(trouble: Trouble, place: { text: string; line: number }): ReadingOf<"unclear"> {
  const instead = trouble.instead ?? [];
  return { kind: "unclear", why: whyOf(trouble), ...(instead.length > 0 ? { instead } : {}), ...place };
}

/** Whole notes that would have worked, built from what was typed. */
export function insteadOf(trouble: Trouble, clause: Clause): string[] {
  return builtFrom(trouble, clause);
}
