import type { Button } from "../../core/reply.ts";
import type { Turn } from "./turn.ts";

/** What a person asked last that day, and how many of its rows they have seen; null where they asked nothing. */
export function lastQuestion({
  ledger,
  person,
  today,
}: Turn): { question: string; shown: number; note?: number } | null {
  const last = ledger.settings.get("lastQuestion")?.[person];
  return last?.day === today ? last : null;
}

/** Keeps a question for "more" and for what is asked right behind it. */
export function keepQuestion(
  { ledger, person, note, today: day }: Turn,
  question: string,
  shown: number,
): void {
  const { settings } = ledger;
  settings.set("lastQuestion", { ...settings.get("lastQuestion"), [person]: { day, question, shown, note } });
}

/** Whether a message asks for the rows that were not shown. */
export function asksMore(text: string): boolean {
  return /^\s*(?:(?:show|see|tell)(?: me)? )?(?:the |some )?(?:more|rest|next(?: (?:10|ten))?|keep going|go on)(?: of (?:it|them))?(?: please| pls)?\s*[.?!]*\s*$/i.test(
    text,
  );
}

/** The most bytes of data that a press comes back with. */
const PRESS_MAX = 60;

/** Shows the next rows. It holds its question where that is short enough, else it is about the last one. */
export function moreButton(question: string, shown: number): Button {
  const press = `more:${shown}:${question}`;
  const isShort = press.length <= PRESS_MAX && /^[\x20-\x7e]+$/.test(press);
  return { label: "More", press: isShort ? press : `more:${shown}` };
}
