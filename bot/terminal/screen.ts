import type { Reply } from "../../core/reply.ts";

/** What a letter typed at the terminal presses. */
export type Choices = ReadonlyMap<string, string>;

const LETTERS = "abcdefghijklmnopqrstuvwxyz";

/** A reply as text, its buttons as lettered choices (a bare number is an amount, so never numbers). */
export function showReply(reply: Reply): { text: string; choices: Choices } {
  const buttons = (reply.buttons ?? []).flat().slice(0, LETTERS.length);
  const choices = new Map(buttons.map(({ press }, index) => [LETTERS[index]!, press]));
  const labels = buttons.map(({ label }, index) => `  ${LETTERS[index]}) ${label}`);
  return { text: [reply.text, ...labels].join("\n"), choices };
}

/** What to say to a single letter that stands for no choice: it is a slip, and never a note. Null for all else. */
export function missedChoice(line: string, choices: Choices): string | null {
  const letter = line.trim().toLowerCase();
  if (!/^[a-z]$/.test(letter) || choices.has(letter)) return null;
  if (choices.size === 0) return "There is nothing to choose now.";
  return `There is no choice ${letter}. Now it is ${[...choices.keys()].join(" or ")}.`;
}
