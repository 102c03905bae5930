import { amountText } from "../money.ts";
import type { Clause } from "./clause.ts";
import type { Trouble } from "./grammar.ts";
import { pluralOf } from "./lexicon.ts";
import type { Mention } from "./reading.ts";
import { centsOfToken } from "./slots/money.ts";

function sayMention({ name, count, traits, number, plural }: Mention): string {
  if (number !== undefined) return `#${number}`;
  const noun = [...(traits ?? []), name ?? "piece"].join(" ");
  if (count !== undefined && count > 1) return `${count} ${pluralOf(noun)}`;
  return plural ? pluralOf(noun) : noun;
}

/** Cents as a person types them: "30", "12.50". */
function sayCents(cents: number): string {
  return amountText(cents).replace(/\.00$/, "");
}

interface Said {
  what: string;
  amount: string;
  single: boolean;
}

/** The piece and the amount typed, with stand-ins where there was none. */
function saidIn(clause: Clause): Said {
  const mentions = clause.tokens
    .filter((token) => token.kind === "piece")
    .map((token) => sayMention(token.mention!));
  const amounts = clause.tokens.filter((token) => token.kind === "amount").map(centsOfToken);
  const usable = amounts.find((found): found is { cents: number } => "cents" in found && found.cents > 0);
  return {
    what: mentions.length > 0 ? mentions.join(" and ") : "dresser",
    amount: usable ? sayCents(usable.cents) : (digitsOf(clause) ?? "30"),
    single: mentions.every((mention) => !mention.startsWith("#")),
  };
}

/** The digits of an amount that may not stand as typed: "-45" → "45", "19.995" → "19.99". */
function digitsOf(clause: Clause): string | null {
  const typed = clause.tokens.find(
    (token) => token.kind === "amount" && /^-?\d{1,6}(?:\.\d+)?$/.test(token.text),
  );
  return typed ? typed.text.replace("-", "").replace(/(\.\d\d)\d+$/, "$1") : null;
}

/** Notes that would have worked for each trouble, from the words typed. Each is a whole line that reads as itself. */
export function builtFrom(trouble: Trouble, clause: Clause): string[] {
  const { what, amount, single } = saidIn(clause);
  const three = [
    ...(single ? [`bought ${what} ${amount}`] : []),
    `listed ${what} ${amount}`,
    `sold ${what} ${amount}`,
  ];
  switch (trouble.kind) {
    case "noVerb":
      return three;
    case "cutOrPrice":
      return [`dropped ${what} to ${amount}`, `dropped ${what} by ${amount}`];
    case "raiseBy":
      return [`raised ${what} to ${amount}`];
    case "loanAlone":
      return [`paid loan ${amount}`, `loan balance ${amount}`, `new loan ${amount} at 5.5%`];
    case "eachOfUnknown":
      return [countedEach(clause, amount)];
    case "percentUnsaid":
      return ["set aside 20% for tax"];
    case "clockUnsaid":
      return ["nudge at 6:30pm"];
    case "goalUnsaid":
      return ["goal 800 a month", "goal 100 pieces this year"];
    case "undoMore":
      return ["undo"];
    case "loneNumber":
      return [`bought dresser ${amount}`, `spent ${amount} on paint`, `sold dresser ${amount}`];
    case "botWord":
    case "question":
      return ["help"];
    default:
      return verbatim(clause, what, amount);
  }
}

/** "listed 2 nightstands 55 each", in the verb typed. */
function countedEach({ tokens }: Clause, amount: string): string {
  const said = tokens.map(({ text }) => text).join(" ");
  const verb = /\b(?:buy|bought|got|picked up|grabbed)\b/.test(said)
    ? "bought"
    : /\b(?:list|listed|listing|posted)\b/.test(said)
      ? "listed"
      : "sold";
  const named = tokens.find(({ mention }) => mention?.name !== undefined)?.mention?.name;
  return `${verb} 2 ${pluralOf(named ?? "chair")} ${amount} each`;
}

/** The kind of note the words lean to, as one that would have worked. */
function verbatim(clause: Clause, what: string, amount: string): string[] {
  if (clause.signs.has("percent")) return ["set aside 20% for tax"];
  if (clause.signs.has("duration")) return [`worked 2h on ${what}`];
  const text = clause.tokens.map((token) => token.text).join(" ");
  if (/\b(?:buy|bought|got|picked up|grabbed)\b/.test(text)) return [`bought ${what} ${amount}`];
  if (/\b(?:list|listed|listing|posted|asking)\b/.test(text)) return [`listed ${what} ${amount}`];
  if (/\b(?:loan)\b/.test(text)) return [`paid loan ${amount}`];
  if (/\b(?:drove|drive|miles|mi)\b/.test(text)) return ["drove 24 miles"];
  return [`sold ${what} ${amount}`];
}
