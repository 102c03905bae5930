import type { Clause } from "../clause.ts";

/** "desk free today" may be given away; "free desk", or one that came from somewhere, was got. */
export function isFreeForOthers({ tokens, head }: Clause): boolean {
  if (head?.text !== "free") return false;
  const at = tokens.indexOf(head);
  const before = tokens.slice(0, at).some((token) => token.kind === "piece");
  return (
    before &&
    !tokens.some((token) => token.roles.place !== undefined || /^(?:from|off|got)$/.test(token.text))
  );
}
