import { expect } from "vitest";
import type { Chat } from "./chat.ts";

export function sayAll(chat: Chat, notes: readonly string[]): void {
  for (const note of notes) chat.say(note);
}

/** Asks, and gives the answer: a question records nothing. */
export function askedOf(chat: Chat, question: string): string {
  const before = chat.ledger.books.facts.length;
  const { text } = chat.say(question);
  expect(chat.ledger.books.facts).toHaveLength(before);
  return text;
}
