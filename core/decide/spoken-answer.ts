import { readMessage } from "../notes/read.ts";
import type { Reading } from "../notes/reading.ts";
import { AROUND_CHOICE, NEARLY, OPENS_ANSWER } from "../notes/words/replies.ts";
import type { Ask, Choice, Said, Wanted } from "./decision.ts";

/*
 * Answers as people say them: a word or two before the value ("oh right, 125"), what they do to a button's words
 * ("gave him all of it back"), and why, behind a mark ("kept it, she ghosted me").
 */

const plainly = (word: string): string => word.toLowerCase().replace(/[^\p{L}\d]/gu, "");

/** "oh sorry yeah it was 145": what is left of an answer without its opening words; null where nothing opens it. */
export function withoutOpening(text: string, wants: Wanted): string | null {
  const words = text.trim().split(/\s+/);
  const isOpening = (word: string) =>
    OPENS_ANSWER.has(plainly(word)) || (wants === "minutes" && NEARLY.has(plainly(word)));
  const from = words.findIndex((word) => !isOpening(word));
  if (from <= 0) return null;
  return words.slice(from).join(" ");
}

/** The words of a choice, without whom it was given to and the like. */
const bare = (said: string): string =>
  said
    .split(/\s+/)
    .map(plainly)
    .filter((word) => word !== "" && !AROUND_CHOICE.has(word))
    .join(" ");

/** The choice whose words a text says, whoever they speak of, with or without a reason behind a mark; null: none. */
export function choiceSpoken({ choices }: Ask, { text, today }: Said, reading: Reading): Choice | null {
  const [first, ...behind] = text.split(/[,;.!]+/).map((part) => part.trim());
  const reason = behind.filter((part) => part !== "").join(", ");
  const said = bare(first ?? "");
  if (said === "" || /\d/.test(reason)) return null;
  const found = choices.filter(({ words = [] }) => words.some((each) => bare(each) === said));
  const [only] = found;
  if (!only || found.length > 1) return null;
  const told = reason === "" ? [] : readMessage(reason, today);
  const isReason = told.every(
    (each) => each.kind === reading.kind || (each.kind === "unclear" && !each.could),
  );
  return isReason ? only : null;
}
