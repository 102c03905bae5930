import { addDays } from "../../calendar.ts";
import { isOfWhat } from "../../mending/meant.ts";
import type { Reading } from "../../notes/reading.ts";
import { ALSO_SAID, MORE_OF_IT, SAME_ONE, SAME_WHO, SHE } from "../../notes/words/again.ts";
import { saysAny } from "../../notes/words/words.ts";
import type { Looking } from "../decision.ts";
import { here } from "../pieces/fits.ts";
import { foundBy } from "../pieces/match.ts";
import { byNumbers, mentionsOf } from "../pieces/mentioned.ts";

/** A thing that is bought anew is hardly for the piece of longer ago. */
const DAYS_MAX = 14;

/**
 * What a note leaves out and the notes before it say: whom "and she took the mirror, 35" is about, and what "more hinges, 6"
 * are for. The same reading where they say nothing of it.
 */
export function asBefore(reading: Reading, desk: Looking): Reading {
  const buyer = sameBuyer(reading, desk);
  if (buyer !== undefined) return { ...reading, buyer: buyer ?? undefined } as Reading;
  const pieces = sameUse(reading, desk);
  return pieces ? ({ ...reading, pieces: byNumbers(pieces) } as Reading) : reading;
}

/**
 * "she wants the mirror too", "and she took the mirror": who was told of last, where nobody holds the piece; of "the same guy",
 * null where nobody was named.
 */
function sameBuyer(reading: Reading, { past, books }: Looking): string | null | undefined {
  if (!past || !(reading.kind === "hold" || reading.kind === "sell")) return;
  const isSame = SAME_ONE.test(reading.text);
  const isNamed = reading.buyer !== undefined && !(isSame && SAME_WHO.has(reading.buyer.split(" ").at(-1)!));
  if (isNamed || !(isSame || SHE.test(reading.text))) return;
  const numbers = foundBy(mentionsOf(reading), books, here);
  if (!numbers || numbers.some((number) => books.pieces.get(number)!.hold)) return;
  const fact = past.newest(({ kind }) => kind === "hold" || kind === "sell");
  const isNear = fact && (isSame || past.isToday(fact) || saysAny(reading.text, ALSO_SAID));
  const who = isNear && (fact.kind === "hold" || fact.kind === "sell") ? fact.data.buyer : undefined;
  return isSame ? (who ?? null) : who;
}

/** "more hinges, 6", "new knobs, these fit": for the piece that such were for before, and that is still here. */
function sameUse(reading: Reading, { past, books, today }: Looking): number[] | undefined {
  if (!past || reading.kind !== "spend" || reading.pieces || reading.follows || !reading.what) return;
  if (!saysAny(reading.text, MORE_OF_IT)) return;
  const what = reading.what
    .split(" ")
    .filter((word) => !MORE_OF_IT.has(word))
    .join(" ");
  const fact = what === "" ? undefined : past.newest((each) => each.kind === "spend" && isOfWhat(each, what));
  const isHere = fact?.pieces.every((number) => books.pieces.get(number)!.gone === null);
  return fact && isHere && fact.pieces.length > 0 && fact.day >= addDays(today, -DAYS_MAX)
    ? [...fact.pieces]
    : undefined;
}
