import type { Head, Tok } from "./clause.ts";
import { tokenBefore } from "./clause.ts";
import type { Kind } from "./reading.ts";
import { BEFORE_NOUN, TOWARDS_SOMEBODY } from "./words/links.ts";
import { FEES } from "./words/money.ts";
import { COUNTED } from "./words/verbs.ts";

/** What the cutter needs to know of the verbs. */
export interface VerbFacts {
  absorbs(kind: Kind, text: string): boolean;
  takes(kind: Kind, slot: "money" | "pieces" | "minutes" | "miles" | "fee" | "price" | "what"): boolean;
}

const NO_HEADS: readonly Head[] = [];

export function headsOf(token: Tok): readonly Head[] {
  return token.kind === "word" ? (token.roles.heads ?? NO_HEADS) : NO_HEADS;
}

const isLoan = ({ text }: Tok): boolean => text.includes("loan");

function isPurpose(tokens: readonly Tok[], at: number): boolean {
  if (at === 0) return false;
  const { kind, text: previous } = tokens[at - 1]!;
  if (kind === "amount" && COUNTED.has(tokens[at]!.text)) return !tokens.some(isLoan);
  // "bought a new drill": no loan is new.
  if (tokens[at]!.text === "new" && !tokens.some(isLoan)) return true;
  // "35 less 3 fee"
  if (tokens[at]!.text === "less" && FEES.has(tokens[at + 2]?.text ?? "")) return true;
  if (tokens[at]!.text === "set" && BEFORE_NOUN.has(previous)) return true;
  if (isAfterPayment(tokens, at) || isForTrip(tokens, at)) return true;
  if (previous === "for") return /ing(?: |$)/.test(tokens[at]!.text);
  return TOWARDS_SOMEBODY.has(previous);
}

/** "balance 6120 after todays payment": when it was told, and no payment of this note. */
export function isAfterPayment(tokens: readonly Tok[], at: number): boolean {
  return (
    tokens[at]!.text.startsWith("payment") &&
    (tokenBefore(tokens, at - 1)?.text === "after" || tokenBefore(tokens, at)?.text === "after")
  );
}

/** "gas 20 for the trip": what it was for, and no drive of its own. */
function isForTrip(tokens: readonly Tok[], at: number): boolean {
  if (tokens[at]!.text !== "trip" && tokens[at]!.text !== "drive") return false;
  let before = at - 1;
  while (before >= 0 && /^(?:the|this|that|a|my|our)$/.test(tokens[before]!.text)) before -= 1;
  return tokens[before]?.text === "for";
}

/** Whether the words at `at` say a verb here. */
export function isHead(tokens: readonly Tok[], at: number): boolean {
  return headsOf(tokens[at]!).length > 0 && !isPurpose(tokens, at);
}

export const isLight = (token: Tok): boolean => headsOf(token).every((head) => head.light);

/** The verb words of a cut so far: the first that is not light, else the first. */
export function headOf(tokens: readonly Tok[]): Tok | undefined {
  let first: Tok | undefined;
  for (let at = 0; at < tokens.length; at += 1) {
    if (!isHead(tokens, at)) continue;
    if (!isLight(tokens[at]!)) return tokens[at];
    first ??= tokens[at];
  }
  return first;
}

export function absorbs(head: Tok, token: Tok, facts: VerbFacts): boolean {
  return strongHeadsOf(head).some((said) => facts.absorbs(said.kind, token.text));
}

/** The meanings of a verb word that stand on their own, where it has any; else its light ones. */
export function strongHeadsOf(token: Tok): readonly Head[] {
  const strong = headsOf(token).filter((head) => !head.light);
  return strong.length > 0 ? strong : headsOf(token);
}

export function takesSlot(
  head: Tok | undefined,
  slot: Parameters<VerbFacts["takes"]>[1],
  facts: VerbFacts,
): boolean {
  return head !== undefined && strongHeadsOf(head).some((said) => facts.takes(said.kind, slot));
}
