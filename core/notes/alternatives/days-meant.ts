import { addDays, type Day, weekdayOf } from "../../calendar.ts";
import type { Clause, Tok } from "../clause.ts";
import { pastDay } from "../quantities/days.ts";
import { WEEKDAYS } from "../words/calendar.ts";

const WEEK = 7;

/** The days that a vague time of a clause may be, likeliest first; none where they are too many to say. */
export function daysMeant({ tokens, today }: Clause): Day[] {
  const said = tokens.filter(({ kind }) => kind === "day");
  if (said.length > 0) return [...new Set(said.flatMap((token) => dayOf(token, said, today)))];
  const wide = tokens.find(({ roles }) => roles.vagueTime === true)?.text ?? "";
  const words = wide.split(" ");
  if (words.some((word) => word.startsWith("weekend"))) return weekendBefore(today);
  const days = words.flatMap((word) => WEEKDAYS[word] ?? []);
  return [...new Set(days.map((day) => latest(day, today)))];
}

/** "sat a week ago": a week before sat, or that sat itself. */
function dayOf(token: Tok, all: readonly Tok[], today: Day): Day[] {
  if (token.said?.form === "either")
    return token.said.days.flatMap((said) => dayOf({ ...token, said }, all, today));
  const found = pastDay(token.said!, today);
  if (!("day" in found)) return [];
  const isAgo = ({ said }: Tok): boolean => said?.form === "ago" && said.days % WEEK === 0;
  if (isAgo(token) && all.length > 1) return [];
  const weeks = token.said?.form === "weekday" && all.some(isAgo);
  return weeks ? [addDays(found.day, -WEEK), found.day] : [found.day];
}

const latest = (weekday: number, today: Day): Day =>
  addDays(today, -((weekdayOf(today) - weekday + WEEK) % WEEK));

/** Its saturday and its sunday; on one of them the days so far. */
function weekendBefore(today: Day): Day[] {
  const [saturday, sunday] = [latest(6, today), latest(0, today)];
  return saturday < sunday
    ? [saturday, sunday]
    : [saturday, addDays(saturday, 1)].filter((day) => day <= today);
}
