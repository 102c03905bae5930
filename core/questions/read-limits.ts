import type { Filter } from "./query.ts";
import type { Reading } from "./reading.ts";
import type { Cue } from "./words/cues.ts";

/** What an amount behind these is of. */
const LIMITED: readonly (readonly [Cue, NonNullable<Filter["of"]>])[] = [
  ["soldFor", "proceeds"],
  ["sold", "proceeds"],
  ["price", "price"],
  ["paid", "price"],
  ["bought", "price"],
  ["cost", "cost"],
  ["asking", "asking"],
  ["listed", "asking"],
];

/** The amounts that are held against each thing: "over 100", of what stands before it. */
export function limitsOf(reading: Reading): Filter[] {
  return reading.parts.limits.map(({ limit, cents, at }) => {
    const of = limited(reading, at);
    return { dimension: limit, values: [String(cents)], ...(of ? { of } : {}) };
  });
}

/** "profit on pieces that i paid over 50 for": the amount is of what stands right before it. */
function limited({ parts, measure }: Reading, at: number): Filter["of"] {
  const before = parts.marks.slice(0, at).findLast(({ senses }) => !senses.flags.has("filler"));
  const said = LIMITED.find(([cue]) => before?.senses.cues.includes(cue));
  return said && said[1] !== measure && measure !== "count" ? said[1] : undefined;
}
