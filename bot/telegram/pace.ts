import type { Instant } from "../../core/calendar.ts";

/** A person may send this many updates at once, as when a month of notes is pasted … */
const BURST = 240;
/** … and one a second in the long run. */
const REFILL_MS = 1000;
/** People remembered at once; the longest silent are forgotten, which only fills their allowance again. */
const PEOPLE_MAX = 1000;

type Pace = "fine" | "too many" | "told already";

/**
 * Bounds the rate of each person's updates by when they were sent, so that notes typed over a day without
 * signal and delivered in one go are no flood.
 */
export class PaceKeeper {
  readonly #people = new Map<string, { allowance: number; at: Instant; isTold: boolean }>();

  take(person: string, at: Instant): Pace {
    const known = this.#people.get(person) ?? { allowance: BURST, at, isTold: false };
    // Either way: updates may come out of order, and the server's clock is not this one's.
    const refill = Math.abs(at - known.at) / REFILL_MS;
    const allowance = Math.min(BURST, known.allowance + refill);
    const isFine = allowance >= 1;
    this.#people.delete(person);
    this.#people.set(person, {
      allowance: isFine ? allowance - 1 : allowance,
      at,
      isTold: !isFine,
    });
    this.#forgetOldest();
    if (isFine) return "fine";
    return known.isTold ? "told already" : "too many";
  }

  #forgetOldest(): void {
    const [oldest] = this.#people.keys();
    if (this.#people.size > PEOPLE_MAX && oldest !== undefined) this.#people.delete(oldest);
  }
}
