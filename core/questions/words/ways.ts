/**
 * Phrases put together of words that stand for one another: each slot holds its alternatives, an empty one may be left
 * out. `ways("that|which", "hasnt|havent", "sold|moved")` are eight.
 */
export function ways(...slots: readonly string[]): string[] {
  const all = slots.reduce<string[][]>(
    (begun, slot) => begun.flatMap((words) => slot.split("|").map((word) => [...words, word])),
    [[]],
  );
  // Joined at the end: a string made of strings keeps its parts.
  return all.map((words) => words.filter((word) => word !== "").join(" "));
}
