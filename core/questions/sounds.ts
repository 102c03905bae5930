/** Words that only a question begins with, and those that ask for something to be shown. */
const OPENERS = new Set(
  (
    "how hows howd howmuch howmany what whats whatre whatd when whens where wheres which who whos whose whom why is are was were am do does did has have any " +
    "show list should can could would will total average median tell gimme"
  ).split(" "),
);
const BEFORE = new Set("hey hi so ok okay and um uh well please pls just also yo oh hmm now".split(" "));

/** Whether a message sounds like a question: it ends with the mark or begins like one. */
export function soundsAsked(text: string): boolean {
  const line = text.trim().toLowerCase();
  if (/\?\s*$/.test(line)) return true;
  const words = line
    .replace(/[’']/g, "")
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
  const first = words.find((word) => !BEFORE.has(word));
  return first !== undefined && OPENERS.has(first);
}
