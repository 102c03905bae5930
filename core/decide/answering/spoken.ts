import { percentOf } from "../../money.ts";
import { readMessage } from "../../notes/read.ts";
import type { Reading } from "../../notes/reading.ts";
import { couldOf } from "../../notes/unclear.ts";
import { BEFORE_PRICE } from "../../notes/words/links.ts";
import { AROUND_CHOICE, DEPOSIT_DEEDS, HAGGLED, NEARLY, OPENS_ANSWER } from "../../notes/words/replies.ts";
import type { Ask, Choice, Said, Wanted } from "../decision.ts";

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

/** "she talked me down to 120": what is left of it is the price. */
export function behindHaggling(text: string, wants: Wanted): string | null {
  const words = text.trim().split(/\s+/);
  const at = words.findIndex((word) => /^\$?\d/.test(word));
  const before = words.slice(0, Math.max(0, at)).map(plainly);
  const isHaggled = before.some((word) => HAGGLED.has(word)) && BEFORE_PRICE.has(before.at(-1) ?? "");
  const isOther = before.some(
    (word) => !HAGGLED.has(word) && !OPENS_ANSWER.has(word) && !AROUND_CHOICE.has(word),
  );
  return wants === "price" && isHaggled && !isOther ? words.slice(at).join(" ") : null;
}

/** What becomes of half of a sum that a choice would give back whole: "gave him half back". */
export function halfOf({ choices, wants }: Ask, text: string): Partial<Reading> | null {
  const said = bare(text.split(/[,;.!]+/)[0] ?? "")
    .split(" ")
    .filter((word) => !DEPOSIT_DEEDS.has(word))
    .join(" ")
    .trim();
  const sums = choices.flatMap(({ effect }) =>
    effect.kind === "settle" && effect.change && "refunded" in effect.change
      ? [effect.change.refunded ?? 0]
      : [],
  );
  const all = Math.max(0, ...sums);
  return wants === "refunded" && said === "half" && all > 0
    ? ({ refunded: percentOf("50", all) } as Partial<Reading>)
    : null;
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
    (each) =>
      each.kind === reading.kind ||
      (each.kind === "unclear" && couldOf(each).every(({ kind }) => kind === reading.kind)),
  );
  return isReason ? only : null;
}
