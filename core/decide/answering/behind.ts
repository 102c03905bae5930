import { show } from "../../money.ts";
import { readBareMoney } from "../../notes/bare.ts";
import { readMessage } from "../../notes/read.ts";
import type { Reading } from "../../notes/reading.ts";
import { bears } from "../../notes/verbs.ts";
import { LEADS_ON } from "../../notes/words/replies.ts";
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
  const text = next.text.replace(LEADS_ON, "");
  const said = { text, today: matter.said, readings: readMessage(text, matter.said) };
  const effect = takeAnswer({ matter, ask }, said);
  if (effect?.kind !== "settle" && effect?.kind !== "instead") return null;
  const value = toldFor(effect, ask.wants);
  if (value === undefined) return null;
  // Who else did it may have paid it, too.
  if (matter.reading.by !== undefined) return { effect, isSure: false };
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
  const isAlone = paid.rest === text.trim();
  // "picked up a bench, 19 miles, 28 bucks": of a purchase that says no price.
  if (!first) return !isAlone || readBareMoney(text) !== null;
  return paid.isSaid || (!isAlone && !("price" in reading || "amount" in reading));
}

/**
 * The matters that a question becomes with what the next clause tells, which is taken out of those behind; or the question
 * with that on its first button.
 */
export function toldNext(
  matter: Matter,
  ask: Ask,
  next: Matter[],
): { isSure: true; matters: Matter[] } | { isSure: false; ask: Ask } | null {
  const [waiting, ...others] = matter.waiting;
  const behind = waiting ?? next[0]?.reading;
  const told = toldBehind(matter, ask, behind);
  if (!told) return toldAside(matter, ask);
  const rest = waiting ? { ...matter, waiting: others } : matter;
  if (told.isSure || behind!.kind === "unclear") if (!waiting) next.shift();
  return told.isSure
    ? { isSure: true, matters: settle(rest, told.effect) }
    : { isSure: false, ask: withTold(ask, told.effect, behind!.text) };
}

/** "sold a cot 40 cash, cost me 10", "… and it was free": what the clause itself says at its end of a piece that it takes for bought. */
function toldAside(matter: Matter, ask: Ask): { isSure: true; matters: Matter[] } | null {
  const { text, line } = matter.reading;
  const [, tail] = ask.first
    ? (/(?:[,;.–—]|\band\b)\s+((?:(?![,;.–—]\s|\band\b).)+)$/i.exec(text) ?? [])
    : [];
  const told = tail ? toldBehind(matter, ask, { kind: "unclear", text: tail, line }) : null;
  return told?.isSure ? { isSure: true, matters: settle(matter, told.effect) } : null;
}

/** The question with what the next clause may tell as its first button. */
function withTold(ask: Ask, effect: Told, text: string): Ask {
  const value = toldFor(effect, ask.wants);
  const choice: Choice = { label: typeof value === "number" ? show(value) : String(value), effect };
  return { ...ask, prompt: `${ask.prompt}\nIs that "${text.trim()}"?`, choices: [choice, ...ask.choices] };
}
