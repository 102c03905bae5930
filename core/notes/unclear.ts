import type { Trouble } from "./grammar.ts";
import type { Reading, ReadingOf } from "./reading.ts";
import { BOT_WORDS } from "./words/bot.ts";

/** What an unclear note says for itself: one sentence a person can act on. */
const WHY: Readonly<Record<Trouble["kind"], string>> = {
  twoNumbers: "Two numbers could be the amount. Which one is it?",
  decimals: "An amount has at most two decimals.",
  negative: "An amount can't be below zero. Say what happened with the amount as it is.",
  large: "That number is too large for one note (1,000,000.00 at most).",
  tooMuch: "That is more than such a note can mean. Send it again with the right number.",
  range: "That could be either amount. Send it again with the one that is right.",
  vagueAmount: "That amount could be read in more than one way. Send it again in digits.",
  eachOfUnknown: "How many were there? Say it with the price of each.",
  future: "That day is still to come. Send it when it has happened.",
  unrealDay: "There is no such day. Say it like 3/14 or yesterday.",
  whichDay: "Which day was that?",
  vagueTime: "Which day was that? Say it like yesterday, sat or 3/14.",
  intention: "Not done yet? Send it once it is.",
  offer: "An offer is no sale yet. Send it when it is sold.",
  asking: "Is that what you ask for it?",
  service: "Not done yet? Send it once it is paid.",
  appointment: "Send it when they have come.",
  denial: "So it did not happen: nothing is recorded.",
  doubt: "That sounds unsure. Send it again once you know.",
  noVerb: "Bought, listed or sold?",
  loneNumber: "What is the number for?",
  timeOrCost: "Minutes of work, or what it cost?",
  cutOrPrice: 'Is that the new price, or how much came off? Say "to" or "by".',
  raiseBy: "Say the new price.",
  loanAlone: "A payment, the balance, or a new loan?",
  botWord: "That is a word for the bot itself. Send it alone, as its own message.",
  anotherPerson: "Did you buy it, or did they buy it from you?",
  question: 'I cannot answer that one. "help" shows what to ask.',
  clashingWord: "That short form means two things. Write the word out.",
  twoKinds: "A piece and something else: what did each cost?",
  unknown: 'I do not know what that means. "help" shows what to text.',
  milesUnsaid: "Are those miles?",
  gone: "Is it gone for good?",
  backAndKept: "What went back, and what was kept?",
  moneyBack: "Money that came back is no spending: it changes what was bought.",
  shareOfPrice: "Is that much of the price the fee?",
  percentUnsaid: "Is that a percent? Add the sign.",
  clockUnsaid: "Say the time with am or pm.",
  goalUnsaid: "Is the goal in pieces or in dollars? Say which.",
  undoMore: "Undo takes back your last note. To take back another one, reply to it with undo.",
  imperative: "Has that happened? If so, say it in the past.",
  priceOfBoth:
    "Is that price for all of them together? Say each with its own price, or name them before the price.",
  twoNouns: 'One piece or two? Put "and" between two.',
  eitherOf: "Which of these is it?",
  loanOrCost: "Sent to the loan, or a cost of the shop?",
  newOrOld: "A new note, or a change to an earlier one?",
  toldAgain: "I have that already. Is it one more?",
  left: "There is something in it that I do not know.",
  buyer: "That sounds like a sale.",
  pending: "That is not through yet.",
  unpaid: "Was that paid?",
  deposit: "Is that a deposit, or the price?",
  "own money": "Is that their own money, or the shop's?",
  "own deposit": "Is that your own down payment? Send it again with what was paid.",
  net: "Was that the price, the fee, or what was left?",
  "part paid": "Is the rest still owed?",
  extra: "Is that part of the price?",
  "money in": "Did that come in, or did you spend it?",
  less: "Was that taken off the price?",
  "after fee": "Was that the fee, or what was left after it?",
  "so far": "Is that all of the time on it so far, or only what is new?",
  part: "A part of the work is not the piece. Say the time: 45 min sanding the desk.",
  other: "That is about somebody else's piece or work.",
  pieceOrCost: "A piece to sell, or a cost of the shop?",
  unclaimed: "I do not know what the number is for.",
  unreadNumber: "I can't read that number. Send it again, like: gas 31.75",
};

export function whyOf(trouble: Trouble): string {
  return WHY[trouble.kind];
}

/** It has not happened, or nobody is sure that it has. */
export const NOT_DONE = ["intention", "offer", "service", "appointment", "denial", "doubt"] as const;

/** Reasons that hold whatever was said before: it has not happened, or nobody is sure that it has. */
const NO_FACT: ReadonlySet<string> = new Set([...NOT_DONE, "pending" as const].map((kind) => WHY[kind]));

/** Whether a line was found to tell no fact, and not only too little of one. */
export const tellsNoFact = (reading: Reading): boolean =>
  reading.kind === "unclear" && reading.why !== undefined && NO_FACT.has(reading.why);

export function isBotWord(norms: readonly string[]): boolean {
  // A word and a mark or two: anything longer is no command.
  if (norms.length > 3) return false;
  const words = norms.filter((norm) => /[a-z0-9]/.test(norm));
  return words.length === 1 && BOT_WORDS.has(words[0]!);
}

/** What an unclear reading could be, likeliest first. */
export const couldOf = (reading: Reading | undefined): readonly Reading[] =>
  reading?.kind === "unclear" ? (reading.could ?? NONE) : NONE;
const NONE: readonly Reading[] = [];

/** A reading, or all that an unclear one could be. */
export const anyOf = (reading: Reading): readonly Reading[] =>
  reading.kind === "unclear" ? couldOf(reading) : [reading];

/** Nothing is known that it could be. */
export const isRefused = (reading: Reading): boolean => reading.kind === "unclear" && !reading.could;

/** It is unclear for just that reason. */
export const isFor = (reading: Reading, kind: Trouble["kind"]): boolean =>
  reading.kind === "unclear" && reading.why === WHY[kind];

/** It says all that a note of its kind needs. */
export const isWholeNote = ({ kind, missing }: Reading): boolean => kind !== "unclear" && !missing;

/** What is one of these, which only the person knows. */
export const eitherOf = (
  could: readonly Reading[],
  { text, line }: { text: string; line: number },
  kind: Trouble["kind"] = "eitherOf",
): ReadingOf<"unclear"> => ({ kind: "unclear", why: WHY[kind], could: [...could], text, line });

/** A line that is no note at all. */
export function unclear(
  trouble: Trouble,
  { text, line }: { text: string; line: number },
): ReadingOf<"unclear"> {
  return { kind: "unclear", why: whyOf(trouble), text, line };
}
