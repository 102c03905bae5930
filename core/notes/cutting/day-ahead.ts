import { type Tok, tokenBefore } from "../clause.ts";

/** "monday:", "sat, oct 10 -": where what follows a day that stands in front of its notes begins; else the place itself. */
export function headingDayEnd(tokens: readonly Tok[], from: number): number {
  const before = tokenBefore(tokens, from);
  // "monday: …, tuesday: …": behind a comma only where nothing else can be meant.
  const isBehindComma = before?.kind === "mark" && before.text === ",";
  if (before && !isBehindComma && !(before.kind === "mark" && ENDS_NOTE.has(before.text))) return from;
  let at = from;
  while (tokens[at]?.kind === "day")
    at += tokens[at + 1]?.text === "," && tokens[at + 2]?.kind === "day" ? 2 : 1;
  const mark = tokens[at];
  const isHeading =
    at > from &&
    at + 1 < tokens.length &&
    mark!.kind === "mark" &&
    (isBehindComma ? mark!.text === ":" : BEHIND_DAY.has(mark!.text));
  return isHeading ? at + 1 : from;
}

const ENDS_NOTE: ReadonlySet<string> = new Set([".", ";"]);
const BEHIND_DAY: ReadonlySet<string> = new Set([":", "-"]);
