import type { Day } from "../calendar.ts";
import type { Books, Goal } from "./books.ts";

/** The latest goal of each sort: pieces or amount, a month or a year. */
export function goalsInForce(books: Pick<Books, "goals">, today: Day): Goal[] {
  const set = books.goals.filter((goal) => goal.day <= today);
  const latest = (per: Goal["per"], what: "pieces" | "amount"): Goal[] => {
    const goal = set.findLast((each) => each.per === per && each[what] !== null);
    return goal ? [{ ...goal, pieces: null, amount: null, [what]: goal[what] }] : [];
  };
  return [
    ...latest("month", "pieces"),
    ...latest("month", "amount"),
    ...latest("year", "pieces"),
    ...latest("year", "amount"),
  ];
}
