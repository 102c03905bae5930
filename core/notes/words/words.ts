/** A list of words or phrases as a set: blanks part them, "_" stands for a blank within one. */
export const wordSet = (words: string): ReadonlySet<string> =>
  new Set(words.split(" ").map((word) => word.replaceAll("_", " ")));
