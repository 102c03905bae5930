import { type Day, weekdayOf } from "../../calendar.ts";
import type { Clause, Tok } from "../clause.ts";
import { claim } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import { pastDay } from "../quantities/days.ts";
import type { Kind } from "../reading.ts";
import { slots } from "../slots/slots.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import type { AnyGrammar } from "../verbs.ts";
import { ANOTHER_TIME } from "../words/times.ts";
import type { Draft } from "./draft.ts";

/** The day of a fact: the one said, never one to come. "until friday" is a slot of its own, and claims first. */
export function fillDay(made: Draft, grammar: AnyGrammar, clause: Clause): Trouble | null {
  if ((clause.signs.hints & (HINTS.day | HINTS.until)) === 0) return null;
  const waits = grammar.fields.find(({ slot }) => slot === "until");
  if (waits) {
    const filled = slots.until(clause);
    if (filled && "trouble" in filled) return filled.trouble;
    if (filled) made.fields[waits.name] = filled.value;
  } else claimPickup(clause);
  const [first, second] = clause.tokens.filter((token) => token.kind === "day" && !token.claimed);
  if (!first) return null;
  if (second && !isSameDay(first, second, clause.today)) {
    claim(first, second);
    return { kind: "whichDay" };
  }
  if (isDeadline(clause, first)) return { kind: "vagueTime" };
  // "sold it today, she paid monday": the first is the day of it.
  if (isUnderway(clause, first) || saysToday(clause, first)) {
    claim(first);
    return null;
  }
  if (second) claim(second);
  if (!grammar.bears.has("dated in passing") && isDayToCome(clause, first)) return { kind: "vagueTime" };
  claim(first);
  const found = pastDay((second && first.said?.form === "weekday" ? second : first).said!, clause.today);
  if ("wrong" in found) return { kind: WRONG_DAYS[found.wrong] };
  made.fields["date"] = found.day;
  if (found.longAgo) made.fields["longAgo"] = true;
  return null;
}

const WRONG_DAYS = { future: "future", unreal: "unrealDay", either: "whichDay" } as const;

/** "tues 5/5": a weekday and a date that agree are one day. */
function isSameDay(a: Tok, b: Tok, today: Day): boolean {
  const forms = [a.said?.form, b.said?.form];
  const [one, other] = [pastDay(a.said!, today), pastDay(b.said!, today)];
  if (!("day" in one) || !("day" in other)) return false;
  const weekday = a.said?.form === "weekday" ? a.said : b.said?.form === "weekday" ? b.said : null;
  const dated = forms[0] === "weekday" ? other : one;
  return (
    one.day === other.day ||
    (weekday !== null && weekday.form === "weekday" && weekdayOf(dated.day) === weekday.weekday)
  );
}

/** "sold desk 90 by friday": the next one, and nothing that has happened then. */
function isDeadline({ tokens }: Clause, day: Tok): boolean {
  const isByWeekday =
    day.said?.form === "weekday" || day.said?.form === "dayOfMonth" || day.said?.form === "monthDay";
  return isByWeekday && /^(?:by|until|till|til|before)$/.test(tokens[tokens.indexOf(day) - 1]?.text ?? "");
}

/** "dropping the sofa to 220 friday": the next one; "was working on it friday", "sanding the desk friday" has been done. */
export function isUnderway(
  { tokens, head }: Clause,
  day = tokens.find(({ kind }) => kind === "day"),
): boolean {
  if (day?.said?.form !== "weekday" || day.said.which === "last" || !head || !GOES_ON.test(head.text))
    return false;
  const before = tokens[tokens.indexOf(head) - 1]?.text ?? "";
  return !BEEN.test(before) && head.roles.heads?.every(({ kind }) => ANNOUNCED.has(kind)) === true;
}

const GOES_ON = /^\w+ing\b/;
const BEEN = /^(?:was|were|been|after|by|for|ended up|finished)$/;
const ANNOUNCED: ReadonlySet<Kind> = new Set(["reprice", "list", "buy", "spend", "pay", "retire", "sell"]);

/** "today" stands with the verb, and another day behind the next mark. */
function saysToday({ tokens, head }: Clause, day: Tok): boolean {
  const today = tokens.findIndex(({ text }) => text === "today" || text === "tonight");
  const [from, to] = [tokens.indexOf(head!), today].sort((a, b) => a - b);
  const areApart = (one: number, other: number): boolean =>
    tokens.slice(one, other).some(({ kind, roles }) => kind === "mark" || roles.hedge);
  return (
    head !== undefined &&
    today >= 0 &&
    today < tokens.indexOf(day) &&
    !areApart(from!, to!) &&
    areApart(today, tokens.indexOf(day))
  );
}

/** "sold desk 90 she pays friday": the friday of the payment, and not of the sale. */
function isDayToCome({ tokens, head }: Clause, day: Tok): boolean {
  if (day.said?.form !== "weekday" || day.said.which === "last") return false;
  for (let at = tokens.indexOf(day) - 1; at >= 0; at -= 1) {
    const token = tokens[at]!;
    if (token === head || token.kind === "mark" || token.kind === "amount" || token.kind === "piece")
      return false;
    if (ANOTHER_TIME.has(token.text)) return !(isPreposition(token) && isSomebody(tokens[at + 1]));
  }
  return false;
}

const isPreposition = ({ text }: Tok): boolean => text === "to" || text === "for";

/** "to a teacher fri" is no plan of friday's. */
const isSomebody = (token: Tok | undefined): boolean =>
  token?.roles.person === true || /^(?:a|an|the|my|some|our)$/.test(token?.text ?? "");

/** "sold desk 90 pickup friday": when it is fetched is not when it was sold. */
function claimPickup({ tokens }: Clause): void {
  tokens.forEach((token, at) => {
    const next = tokens[at + 1];
    if (
      next?.kind === "day" &&
      /(?:^| )(?:pickup|pick up|picking up|picks up|picking it up|collecting)$/.test(token.text)
    )
      claim(next);
  });
}
