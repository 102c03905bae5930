import { progressTo } from "../answers/pace.ts";
import type { Goal } from "../books/books.ts";
import { amountText } from "../money.ts";
import type { Answered } from "./answered.ts";
import type { Desk } from "./desk.ts";
import { leftOver } from "./left-over.ts";
import type { Refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import type { Features } from "./rule.ts";
import { COUNTABLE } from "./words/plain.ts";

/*
 * "Will i make 30 pieces this year", "on track for 300 this month": how near it is, whether or not it is a goal.
 */

/** So many pieces or so much money by the end of the running month or year. */
export interface TargetQuestion {
  kind: "target";
  goal: Goal;
  /** How many there are still to go is asked. */
  asksNeed: boolean;
}

const AIMS =
  /\b(?:will (?:i|we)|can (?:i|we)|am i going to|are we going to|gonna|on (?:track|pace)|how far (?:am i |are we )?from|how (?:many more|close)|close to|(?:hit|reach) my|behind on)\b/;

/** A question about something to reach by the end of the month or year, or null. */
export function readTarget(parts: Parts, f: Features, { today }: Desk): TargetQuestion | Refusal | null {
  const { said, amounts, periods, marks } = parts;
  const [only, more] = amounts;
  if (
    !only ||
    more ||
    !AIMS.test(said) ||
    f.loan ||
    parts.items.length > 0 ||
    f.has("owe", "payoff", "interest")
  )
    return null;
  const per = periods.length === 0 ? "year" : perOf(periods[0]!.period.name, marks[periods[0]!.at]!.text);
  if (per === null || periods.length > 1) return null;
  const next = marks[only.at + 1];
  const isBare = f.has("howMany") && !f.has("earn", "net", "money");
  const isNext =
    !only.money &&
    next !== undefined &&
    (COUNTABLE.has(next.text) || next.senses.flags.has("generic") || next.senses.cues.includes("sale"));
  const isPieces = isNext || (isBare && !only.money);
  const isMoney = only.money || f.has("earn", "net") || /\b(?:hit|reach|make|clear)\b/.test(said);
  if (!isPieces && !isMoney) return null;
  const used = new Set([only.at, ...(isNext ? [only.at + 1] : []), ...parts.groups.map(({ at }) => at)]);
  marks.forEach(({ text }, at) => {
    if (
      /^(?:will|gonna|am i going to|are we going to|can|how far|from|close|close to|many|more|going to|hit|reach|to hit|to reach)$/.test(
        text,
      )
    )
      used.add(at);
  });
  const fault = leftOver(
    parts,
    ["goal", "pace", "earn", "net", "sold", "money", "howMany", "loanPaid", "miles", "extra", "unsold"],
    { used },
  );
  if (fault) return fault;
  const goal = {
    day: today,
    per,
    pieces: isPieces ? only.cents / 100 : null,
    amount: isPieces ? null : only.cents,
  } as const;
  return { kind: "target", goal, asksNeed: f.has("howMany") || /\bhow far\b/.test(said) };
}

function perOf(name: string, text: string): Goal["per"] | null {
  if (/^this year$|so far$/.test(text) || /^\d{4}(?: so far)?$/.test(name)) return "year";
  return /^this month$/.test(text) ? "month" : null;
}

/** Yes or no, or how much is still to go, and the pace. */
export function answerTarget({ books, today }: Desk, { goal, asksNeed }: TargetQuestion): Answered {
  const { onTrack, need, lines } = progressTo(books, today, goal);
  const text = lines.join("\n");
  if (asksNeed)
    return {
      understood: true,
      value: goal.pieces === null ? amountText(need) : String(need),
      period: null,
      text,
    };
  return {
    understood: true,
    value: onTrack ? "yes" : "no",
    period: null,
    text: `${onTrack ? "Yes" : "No"}. ${text}`,
  };
}
