/** A list of words or phrases as a set: blanks part them, "_" stands for a blank within one. */
export const wordSet = (words: string): ReadonlySet<string> =>
  new Set(words.split(" ").map((word) => word.replaceAll("_", " ")));

/** The words of a text as typed, lower case. */
export const wordsIn = (text: string): string[] => text.toLowerCase().match(/[a-z0-9]+/g) ?? [];

/** Whether a text says any of some words or phrases. */
export function saysAny(text: string, list: ReadonlySet<string>): boolean {
  const said = ` ${wordsIn(text).join(" ")} `;
  for (const word of list) if (said.includes(` ${word} `)) return true;
  return false;
}
