import type { Reading } from "../../notes/reading.ts";
import { SEVERAL_SAID } from "../../notes/words/pieces.ts";
import type { Looking } from "../decision.ts";
import { pricedFor } from "../pieces/each.ts";
import { mentionsOf } from "../pieces/mentioned.ts";
import { hereOf } from "./unnamed.ts";

/** "sanded it 40 min" of what was spoken of last and is not on the books: the reading of that; null where it means none of it. */
export function ofAwaited(reading: Reading, { talk, books }: Looking): Reading | null {
  const [first, ...others] = talk?.replied ? [] : (talk?.awaited ?? []);
  const said = mentionsOf(reading);
  const isOther = said.some(({ it, half, other, place }) => !it || half || other || place !== undefined);
  if (!first || reading.kind === "buy" || isOther) return null;
  const isIt = reading.follows === true || said.length > 0;
  // "listed 60" where nothing else is here.
  const isOpen = reading.missing?.includes("pieces") === true && hereOf(books).length === 0;
  if (!isIt && !isOpen) return null;
  const [counted] = said;
  const isOne = others.length === 0 && (first.count ?? 2) === 1;
  if (counted?.count !== undefined && others.length > 0) return null;
  if (counted?.count === undefined && !isOne && !SEVERAL_SAID.test(reading.text)) return null;
  const { set: _, ...one } = first;
  const meant = counted?.count === undefined ? [first, ...others] : [{ ...one, count: counted.count }];
  const pieces = meant.map((mention) => ({ ...mention, awaited: true as const }));
  const { follows: __, one: ___, missing = [], ...rest } = reading;
  const left = missing.filter((field) => field !== "pieces");
  return { ...rest, pieces, ...pricedFor(reading, pieces), missing: left } as Reading;
}
