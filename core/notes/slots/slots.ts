import type { Clause } from "../clause.ts";
import type { Slot } from "../grammar.ts";
import { HINTS } from "../signs.ts";
import type { Fill } from "./filled.ts";
import { fee, money } from "./money.ts";
import { buyer, loan, method, place, source, stream } from "./names.ts";
import { pieces } from "./pieces.ts";
import { category, what } from "./spending.ts";
import { labor, miles, minutes, percent, until } from "./times.ts";

/** Whether a slot has anything to begin from in this clause. Told from its signs, without a search. */
export function hasHintOf(slot: Slot, { signs }: Clause): boolean {
  switch (slot) {
    case "until":
      return (signs.hints & HINTS.until) !== 0;
    case "minutes":
      return signs.has("duration");
    case "miles":
    case "percent":
    case "loan":
    case "labor":
      return signs.has(slot);
    case "fee":
      return (signs.hints & HINTS.fee) !== 0;
    case "method":
      return (signs.hints & HINTS.method) !== 0;
    case "buyer":
      return (signs.hints & HINTS.preposition) !== 0;
    case "source":
    case "place":
      return (signs.hints & (HINTS.preposition | HINTS.on | HINTS.place)) !== 0;
    case "money":
      return signs.has("number") || (signs.hints & HINTS.day) !== 0;
    default:
      return true;
  }
}

/** Every slot by name. */
export const slots: Readonly<Record<Slot, Fill>> = {
  pieces,
  bought: pieces,
  money,
  fee,
  method,
  source,
  buyer,
  until,
  minutes,
  labor,
  miles,
  percent,
  loan,
  what,
  category,
  stream,
  place,
};
