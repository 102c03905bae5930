/**
 * Phrases put together of words that stand for one another: each slot holds its alternatives, an empty one may be left
 * out. `ways("that|which", "hasnt|havent", "sold|moved")` are eight.
 */
export function ways(...slots: readonly string[]): string[] {
  const choices = slots.map((slot) => slot.split("|"));
  const all: string[] = [];
  const words: string[] = [];
  const from = (slot: number): void => {
    // Joined at the end: a string made of strings keeps its parts.
    if (slot === choices.length) all.push(words.join(" "));
    else
      for (const word of choices[slot]!) {
        if (word !== "") words.push(word);
        from(slot + 1);
        if (word !== "") words.pop();
      }
  };
  from(0);
  return all;
}

/** Phrases in running text, with commas between. */
export const phrases = (text: string): string[] => text.trim().split(/,\s+/);
