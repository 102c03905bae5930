import { ASKS_MORE } from "../../core/notes/words/replies.ts";
import type { Answered } from "../../core/questions/answered.ts";
import type { Button } from "../../core/reply.ts";
import type { Turn } from "./turn.ts";

interface LastQuestion {
  question: string;
  shown: number;
  note?: number;
  of?: { note: number; pieces: number[]; before?: number[]; loan?: true };
}

/** What a person asked last that day, and how many of its rows they have seen; null where they asked nothing. */
export function lastQuestion({ ledger, person, today }: Turn): LastQuestion | null {
  const last = ledger.settings.get("lastQuestion")?.[person];
  return last?.day === today ? last : null;
}

/** Keeps a question for "more" and for what is asked right behind it, with what its answer tells of. */
export function keepQuestion(turn: Turn, question: string, shown: number, told?: Answered["of"]): void {
  const { ledger, person, note, today: day } = turn;
  const { settings } = ledger;
  const before = lastQuestion(turn)?.of;
  const isOfSomething = told && (told.loan || (told.pieces.length > 0 && told.pieces.length <= PIECES_KEPT));
  const of = isOfSomething
    ? {
        note,
        pieces: [...told.pieces],
        ...(before && !told.loan ? { before: before.pieces } : {}),
        ...(told.loan ? { loan: told.loan } : {}),
      }
    : before;
  settings.set("lastQuestion", {
    ...settings.get("lastQuestion"),
    [person]: { day, question, shown, note, ...(of ? { of } : {}) },
  });
}

/** Of more pieces than this nobody says "those". */
const PIECES_KEPT = 30;

/** Whether a message asks for the rows that were not shown. */
export const asksMore = (text: string): boolean => ASKS_MORE.test(text);

/** The most bytes of data that a press comes back with. */
const PRESS_MAX = 60;

/** Shows the next rows. It holds its question where that is short enough, else it is about the last one. */
export function moreButton(question: string, shown: number): Button {
  const press = `more:${shown}:${question}`;
  const isShort = press.length <= PRESS_MAX && /^[\x20-\x7e]+$/.test(press);
  return { label: "More", press: isShort ? press : `more:${shown}` };
}
