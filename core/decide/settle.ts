import type { Reading } from "../notes/reading.ts";
import type { Effect, Matter } from "./decision.ts";
import { mattersOf } from "./matters.ts";

/**
 * The matters that go on after a question about one was answered: the same one with a change or a yes, or
 * others in its place (what waited for it now waits for the last of them).
 */
export function settle(matter: Matter, effect: Extract<Effect, { kind: "settle" | "instead" }>): Matter[] {
  if (effect.kind === "settle") {
    const reading = { ...matter.reading, ...effect.change } as Reading;
    const confirmed = effect.confirm ? [...matter.confirmed, effect.confirm] : matter.confirmed;
    return [{ ...matter, reading, confirmed }];
  }
  const matters = mattersOf(effect.readings, matter.said);
  if (matter.amends !== undefined) for (const next of matters) next.amends = matter.amends;
  const last = matters.at(-1);
  if (last) {
    last.waiting.push(...matter.waiting);
    last.confirmed = effect.confirm ? [...matter.confirmed, effect.confirm] : matter.confirmed;
    if (matter.after) last.after = matter.after;
  }
  return matters;
}
