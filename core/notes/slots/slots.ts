import type { Clause } from "../clause.ts";
import type { Slot } from "../grammar.ts";
import { HINTS, maskOf } from "../tokens/sign-bits.ts";
import type { Fill } from "./filled.ts";
import { fee, money } from "./money.ts";
import { buyer, loan, method, place, source, stream } from "./names.ts";
import { pieces } from "./pieces.ts";
import { category, what } from "./spending.ts";
import { labor, miles, minutes, percent, until } from "./times.ts";

/** What a slot begins from: any one of these signs or hints, as bits. */
export interface Cues {
  signs: number;
  hints: number;
}

const PLACES = HINTS.preposition | HINTS.on | HINTS.place;

const CUES: Readonly<Partial<Record<Slot, Cues>>> = {
  until: { signs: 0, hints: HINTS.until },
  minutes: { signs: maskOf(["duration"]), hints: 0 },
  miles: { signs: maskOf(["miles"]), hints: 0 },
  percent: { signs: maskOf(["percent"]), hints: 0 },
  loan: { signs: maskOf(["loan"]), hints: 0 },
  labor: { signs: maskOf(["labor"]), hints: 0 },
  fee: { signs: 0, hints: HINTS.fee },
  method: { signs: 0, hints: HINTS.method },
  buyer: { signs: 0, hints: HINTS.preposition },
  source: { signs: 0, hints: PLACES },
  place: { signs: 0, hints: PLACES },
  money: { signs: maskOf(["number"]), hints: HINTS.day },
};

/** A slot that is not listed begins from anything. */
const ANYTHING: Cues = { signs: -1, hints: -1 };

export const cuesOf = (slot: Slot): Cues => CUES[slot] ?? ANYTHING;

/** Whether a slot has anything to begin from in this clause. Told from its signs, without a search. */
export function hasCue(cues: Cues, { signs }: Clause): boolean {
  return cues === ANYTHING || (signs.mask & cues.signs) !== 0 || (signs.hints & cues.hints) !== 0;
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
