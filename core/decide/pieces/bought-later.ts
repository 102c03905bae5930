import type { Books } from "../../books/books.ts";
import type { Problem } from "../../books/problem.ts";
import { type Day, showDay } from "../../calendar.ts";
import type { Reading } from "../../notes/reading.ts";
import { bears } from "../../notes/verbs.ts";
import { type Ask, type Choice, NEVER_MIND } from "../decision.ts";

/**
 * The question for what was done, by the day told, before its piece was bought: for no piece where that can be, the
 * purchase on that day as well, or today. Null where another problem stands in the way.
 */
export function boughtLater(
  reading: Reading,
  problem: Problem,
  { books, today }: { books: Books; today: Day },
  labelOf: (reading: Reading) => string,
): Ask | null {
  const { date } = reading;
  if (problem.kind !== "not bought yet" || date === undefined) return null;
  const { number, bought } = problem;
  const purchase = books.facts.find(({ kind, pieces }) => kind === "buy" && pieces.includes(number));
  const { text, line } = reading;
  const instead = (label: string, readings: Reading[]): Choice => ({
    label,
    effect: { kind: "instead", readings },
  });
  const day = showDay(date, today);
  const { date: _, ...undated } = reading as Reading & { date?: Day };
  const { pieces: __, ...alone } = reading as Reading & { pieces?: unknown };
  const choices: Choice[] = [];
  if (bears(reading.kind, "piece or none"))
    choices.push(instead(labelOf(alone as Reading), [{ ...alone, asNew: true } as Reading]));
  if (purchase)
    choices.push(
      instead(`Bought on ${day} too`, [
        { kind: "mend", of: { fact: purchase.id }, to: { date }, text, line },
        reading,
      ]),
    );
  if (bought <= today) choices.push(instead("It was today", [undated as Reading]));
  const name = books.pieces.get(number)?.name ?? "piece";
  const prompt = `#${number} ${name} was bought on ${showDay(bought, today)}, after ${day}. Which is it?`;
  return { prompt, wants: "choice", choices: [...choices, NEVER_MIND] };
}
