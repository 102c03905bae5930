import { show } from "../../money.ts";
import { readMessage } from "../../notes/read.ts";
import type { Reading } from "../../notes/reading.ts";
import { bears } from "../../notes/verbs.ts";
import type { Ask, Choice, Effect, Matter, Wanted } from "../decision.ts";
import { mentionsOf } from "../pieces/mentioned.ts";
import { settle } from "../settle.ts";
import { takeAnswer } from "./answer.ts";
import { paidTold } from "./paid.ts";

/*
 * What a clause leaves open is often told by the next one: "drove 14 miles for a wardrobe, gave the fella 45". What
 * surely is the answer is taken as one; what may be, is offered first.
 */

type Told = Extract<Effect, { kind: "settle" | "instead" }>;

const MEASURES: ReadonlySet<Wanted> = new Set(["minutes", "miles"]);
const MONEY: ReadonlySet<Wanted> = new Set(["price", "amount", "balance"]);

/** What the next clause of a message makes of a question about the one before; null where it is something of its own. */
export function toldBehind(
  matter: Pick<Matter, "reading" | "said">,
  ask: Ask,
  next: Reading | undefined,
): { effect: Told; isSure: boolean } | null {
  const isMeasure = MEASURES.has(ask.wants);
  if (!next || !isOpen(next) || !(isMeasure || MONEY.has(ask.wants))) return null;
  // A price of one would leave the others without any.
  if (ask.first && mentionsOf(matter.reading).length > 1) return null;
  const text = next.text.replace(/^[\s,;.–—-]+/, "");
  const said = { text, today: matter.said, readings: readMessage(text, matter.said) };
  const effect = takeAnswer({ matter, ask }, said);
  if (effect?.kind !== "settle" && effect?.kind !== "instead") return null;
  const value = toldFor(effect, ask.wants);
  if (value === undefined) return null;
  return { effect, isSure: isMeasure || value === 0 || isSurely(text, matter.reading, ask) };
}

/** It says nothing by itself, or only of what stands before it. */
const isOpen = ({ kind, missing, follows }: Reading): boolean =>
  kind === "unclear" || bears(kind, "corrects") || missing?.includes("pieces") === true || follows === true;

function toldFor(effect: Told, wants: Wanted): unknown {
  const told = effect.kind === "settle" ? effect.change : effect.readings[0];
  return (told as Record<string, unknown> | undefined)?.[wants];
}

/** Its words say that it was paid; "it was 35" says so where the clause before has no money of its own. */
function isSurely(text: string, reading: Reading, { first }: Ask): boolean {
  const paid = paidTold(text);
  if (!paid) return false;
  return (
    paid.side !== null ||
    (paid.rest !== text.trim() && (!first || !("price" in reading || "amount" in reading)))
  );
}

/** The question with what the next clause may tell as its first button. */
export function withTold(ask: Ask, effect: Told): Ask {
  const value = toldFor(effect, ask.wants);
  const choice: Choice = { label: typeof value === "number" ? show(value) : String(value), effect };
  return { ...ask, choices: [choice, ...ask.choices] };
}

/** The matters that a question becomes with what the next clause tells, which is taken out of those behind; or the question with that on a button. */
export function toldNext(
  matter: Matter,
  ask: Ask,
  next: Matter[],
): { isSure: true; matters: Matter[] } | { isSure: false; ask: Ask } | null {
  const [waiting, ...others] = matter.waiting;
  const behind = waiting ?? next[0]?.reading;
  const told = toldBehind(matter, ask, behind);
  if (!told) return null;
  if (!told.isSure) return { isSure: false, ask: withTold(ask, told.effect) };
  if (waiting) return { isSure: true, matters: settle({ ...matter, waiting: others }, told.effect) };
  next.shift();
  return { isSure: true, matters: settle(matter, told.effect) };
}
