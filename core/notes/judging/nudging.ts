import type { Clause, Tok } from "../clause.ts";
import { claim, claimWords, freeTokens, says } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import { timeOfDay } from "../quantities/clocks.ts";
import { comingDay, daysUntil } from "../quantities/days.ts";
import type { ReadingFields } from "../reading.ts";
import { EVENINGS, MORNINGS, NUDGES_OFF } from "../words/verbs.ts";

/** Longer than a year is no snooze: "nudge off" says that. */
const SNOOZE_DAYS_MAX = 366;

/** A snooze in days: "3 days", "a week", "till monday". */
function snoozeDays(clause: Clause): number | null {
  const span = clause.tokens.find((token) => token.kind === "span");
  if (span) {
    claim(span);
    return span.days!;
  }
  if (claimWords(clause, /^(?:week|a week)$/)) return 7;
  if (claimWords(clause, /^(?:day|a day)$/)) return 1;
  const day = clause.tokens.find((token) => token.kind === "day");
  const coming = day?.said ? comingDay(day.said, clause.today) : null;
  if (!day || !coming) return null;
  claim(day);
  const days = daysUntil(coming, clause.today);
  return days > 0 ? days : null;
}

/** "every evening at quarter past eight", "nightly at 9": the half of the day is said elsewhere; null where it is not. */
function hourMeant(clause: Clause, token: Tok): string | null {
  const half = says(clause, MORNINGS) ? "a" : says(clause, EVENINGS) ? "p" : null;
  return half && timeOfDay(token.text.split(" "), half);
}

/** When the daily reminder comes, that it does not, or for how many days it rests. */
export function judgeNudge(fields: ReadingFields["nudge"], clause: Clause): Trouble | null {
  const clock = clause.tokens.find((token) => token.kind === "clock");
  if (clock) {
    claim(clock);
    const at = clock.at ?? hourMeant(clause, clock);
    if (at === null) return { kind: "clockUnsaid" };
    fields.at = at;
    return null;
  }
  const days = snoozeDays(clause);
  if (days !== null) {
    if (days > SNOOZE_DAYS_MAX) return { kind: "tooMuch" };
    fields.days = days;
    return null;
  }
  const [hour] = freeTokens(clause, "amount");
  if (hour) {
    claim(hour);
    const at = hourMeant(clause, hour);
    if (at === null) return { kind: "clockUnsaid" };
    fields.at = at;
    return null;
  }
  if (says(clause, NUDGES_OFF)) {
    claimWords(clause, NUDGES_OFF);
    fields.off = true;
    return null;
  }
  return { kind: "clockUnsaid" };
}
