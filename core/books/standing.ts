import { addDays, addMonths, type Day, dayInMonth, monthOf } from "../calendar.ts";
import type { Cents } from "../money.ts";
import type { Standing } from "./books.ts";

/** The day of instance number `index`, from 0, counted from the first and never from the one before. */
export function dayOfInstance(
  { every, first, day }: Pick<Standing, "every" | "first" | "day">,
  index: number,
): Day {
  if (every === "week") return addDays(first, 7 * index);
  const months = every === "month" ? index : 12 * index;
  return dayInMonth(addMonths(monthOf(first), months), day ?? Number(first.slice(8)));
}

/** The days on which a standing note is due after a day (null: from its first) and up to another, oldest first. */
export function daysDue(standing: Readonly<Standing>, after: Day | null, through: Day): Day[] {
  const days: Day[] = [];
  for (let index = 0; ; index += 1) {
    const day = dayOfInstance(standing, index);
    if (day > through || isStopped(standing, day)) return days;
    if (after === null || day > after) days.push(day);
  }
}

/** The first instance on a day or after it; null where the note is stopped by then. */
export function nextDue(standing: Readonly<Standing>, from: Day): Day | null {
  for (let index = 0; ; index += 1) {
    const day = dayOfInstance(standing, index);
    if (isStopped(standing, day)) return null;
    if (day >= from) return day;
  }
}

/** What a standing note comes to on a day, in cents. */
export function amountOnDay({ amounts }: Readonly<Standing>, day: Day): Cents {
  const begun = amounts.filter(({ from }) => from <= day);
  return (begun.at(-1) ?? amounts[0]!).amount;
}

/** Standing notes that still have a day to come, oldest first. */
export function standingOn(standing: Iterable<Readonly<Standing>>, today: Day): Readonly<Standing>[] {
  return [...standing].filter((each) => !isStopped(each, today));
}

function isStopped({ stopped }: Readonly<Standing>, day: Day): boolean {
  return stopped !== null && day >= stopped;
}
