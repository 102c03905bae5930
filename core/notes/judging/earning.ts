import type { Clause } from "../clause.ts";

/** "paid 15 for ads" is money out: a stream pays only where it stands before the verb, or after "from". */
export function isPaidForStream({ tokens, head }: Clause): boolean {
  if (!head || !/^paid(?! me| us)/.test(head.text)) return false;
  const next = tokens[tokens.indexOf(head) + 1]?.text;
  if (next === "me" || next === "us") return false;
  const stream = tokens.findIndex(({ roles }) => roles.stream !== undefined);
  return stream > tokens.indexOf(head) && tokens[stream - 1]?.text !== "from";
}
