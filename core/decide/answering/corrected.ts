import type { Reading, ReadingOf } from "../../notes/reading.ts";
import { anyOf } from "../../notes/unclear.ts";
import { language } from "../../notes/verbs.ts";
import type { Effect } from "../decision.ts";
import type { Asked } from "./answer.ts";

/** What of a note can be put right while it is still asked about. */
const FIELDS = ["pieces", "method", "date", "buyer", "source"] as const;

/**
 * "oops meant the dresser" where the newest note is still asked about: that one with its other piece, day, way of paying
 * or buyer. Null where the words correct anything else.
 */
export function correctedAnswer(
  { matter }: Pick<Asked, "matter">,
  readings: readonly Reading[],
): Effect | null {
  const [said, ...more] = readings;
  const mend = said && more.length === 0 ? mendIn(said) : null;
  const { of = {}, to = {} } = mend ?? {};
  const isOfNewest = mend && !mend.removed && Object.keys(of).join() === "back" && of.back === 1;
  const asked = matter.reading;
  const [note] = anyOf(asked);
  const grammar = note && language().grammars.get(note.kind);
  const fields = Object.keys(to) as (typeof FIELDS)[number][];
  if (!isOfNewest || !note || !grammar || fields.length === 0) return null;
  const isBorne = fields.every(
    (field) =>
      FIELDS.includes(field) && (field === "date" || grammar.fields.some(({ name }) => name === field)),
  );
  // "two of them" tells of a count, and not which.
  if (!isBorne || to.pieces?.some(({ it }) => it) || to.pieces?.length === 0) return null;
  const missing = note.missing?.filter((field) => !(fields as string[]).includes(field)) ?? [];
  const { follows: _, ...rest } = note;
  return { kind: "instead", readings: [{ ...rest, ...to, missing } as Reading] };
}

function mendIn(reading: Reading): Pick<ReadingOf<"mend">, "of" | "to" | "removed"> | null {
  if (reading.kind === "mend") return reading;
  // "it was yesterday"
  if (reading.kind === "fix" && reading.date !== undefined && reading.amount === undefined)
    return { of: { back: 1 }, to: { date: reading.date } };
  const back = reading.back && "mend" in reading.back ? reading.back.mend : null;
  return back?.kind === "mend" ? back : null;
}
