import { isAmount, type Tok, tokenBefore } from "../clause.ts";
import type { VerbFacts } from "../heads.ts";
import { absorbs, headsOf, isHead, isLight, takesSlot } from "../heads.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { ASKS_FOR } from "../words/money.ts";
import { SUBJECTS } from "../words/names.ts";
import { hasItsOwn } from "./joints.ts";
import { isStream, isSupply, shapeOf } from "./shape.ts";

/** A mark or a word that may end a note. */
export function isSeparator(token: Tok): boolean {
  if (token.kind === "mark") return (token.hints & HINTS.markBetween) !== 0;
  return token.kind === "word" && (token.hints & HINTS.wordBetween) !== 0;
}

/** Whether a head's words are finished by words further on that hold this token ("put … on hold"). */
function isTailOf(head: Tok, tokens: readonly Tok[], at: number): boolean {
  return headsOf(head).some(({ tails }) => {
    if (!tails) return false;
    const words = tokens[at]!.text.split(" ");
    if (!words.every((word) => tails.words.has(word))) return false;
    const before = tokens[at - 1]?.text ?? "";
    return tails.all.some(
      (tail) =>
        words.every((word) => tail.includes(word)) &&
        (words[0] === tail[0] || before === tail[0] || tail.length > 1),
    );
  });
}

/** A light verb has its say when something to record stands between it and the next verb. */
function hasHadItsSay(between: readonly Tok[]): boolean {
  const thing = between.some((token) => token.kind === "piece" || isSupply(token) || isStream(token));
  return thing || between.some(isSeparator);
}

/** Parts of a line between separators, each still with at most one verb that has had its say. */
export function splitAtHeads(segment: Tok[], facts: VerbFacts): Tok[][] {
  const parts: Tok[][] = [];
  let start = 0;
  let headAt = -1;
  for (let at = 0; at < segment.length; at += 1) {
    // "chest is done asking 150 for it"
    if (headAt >= start && isDone(segment[headAt]!) && asksAt(segment, at)) {
      parts.push(segment.slice(start, at));
      start = at;
      headAt = -1;
    }
    if (!isHead(segment, at)) continue;
    if (headAt < 0) {
      // "gas 31 for 62 mile trip": the miles are the trip's.
      const from =
        tokenBefore(segment, at)?.kind === "miles" && takesSlot(segment[at], "miles", facts) ? at - 1 : at;
      if (from > start && isSaidWithoutVerb(segment.slice(start, from), segment.slice(from))) {
        parts.push(segment.slice(start, from));
        start = from;
      }
      headAt = at;
      continue;
    }
    const head = segment[headAt]!;
    const token = segment[at]!;
    if (isTailOf(head, segment, at)) continue;
    if (
      absorbs(head, token, facts) &&
      !hasItsOwn(shapeOf(segment.slice(at)), shapeOf(segment.slice(start, at)))
    )
      continue;
    const between = segment.slice(headAt + 1, at);
    if (
      isLight(head) &&
      !isLight(token) &&
      !hasHadItsSay(between) &&
      !segment.slice(start, headAt).some((t) => t.kind === "piece")
    ) {
      headAt = at;
      continue;
    }
    if (isLight(token) && !wantsOwnClause(segment, at)) continue;
    const rest = segment.slice(at + 1);
    // "listed desk sold chair 40": each verb has a piece of its own.
    const bothName = between.some((t) => t.kind === "piece") && rest.some((t) => t.kind === "piece");
    if (!bothName && headsOf(token).some((said) => !said.light && facts.absorbs(said.kind, head.text)))
      continue;
    const cut = pulledBack(segment, headAt, at);
    parts.push(segment.slice(start, cut));
    start = cut;
    headAt = at;
  }
  if (parts.length === 0) return [segment];
  parts.push(segment.slice(start));
  return parts;
}

/** A verb that finishes a piece. */
export const isDone = (head: Tok): boolean => headsOf(head).some(({ kind }) => kind === "finish");

/** What is asked for a piece begins here. */
export const asksAt = (tokens: readonly Tok[], at: number): boolean =>
  ASKS_FOR.has(tokens[at]!.text) && tokens[at + 1]?.kind === "amount";

/** "gas 30 drove 60 miles": what stands before the verb is a note already, and the verb has its own things. */
function isSaidWithoutVerb(before: readonly Tok[], after: readonly Tok[]): boolean {
  const shape = shapeOf(before);
  const isThing = (shape.supply || shape.stream) && !shape.piece && !shape.loan;
  const complete = (isThing && shape.amount) || shape.miles;
  return (
    complete && after.some((token) => token.kind !== "word" && token.kind !== "mark" && token.kind !== "day")
  );
}

/** A light verb after another verb opens a clause only where a piece or a number of its own follows. */
function wantsOwnClause(segment: readonly Tok[], at: number): boolean {
  const rest = segment.slice(at + 1);
  const thing = rest.some((token) => token.kind === "piece" || isSupply(token) || token.roles.pronoun);
  return thing && rest.some(isAmount);
}

/** "bought desk 40 going to list at 200": the plan belongs to the listing. */
function hedgeBefore(segment: readonly Tok[], headAt: number, at: number): number | null {
  let hedge: number | null = null;
  for (let place = at - 1; place > headAt; place -= 1) {
    const token = segment[place]!;
    if (token.kind !== "word" || !(token.roles.hedge || token.roles.filler || token.roles.opinion)) break;
    if (token.roles.hedge) hedge = place;
  }
  return hedge;
}

/** "sold desk 165 lamp sold 20": the noun right before a verb is that verb's own, once the first has its price. */
function pulledBack(segment: readonly Tok[], headAt: number, at: number): number {
  const previous = segment[at - 1];
  const hedge = hedgeBefore(segment, headAt, at);
  if (hedge !== null) return hedge;
  if (!previous || at - 1 <= headAt) return at;
  // "bought dresser 60 they threw in a mirror"
  const isSubject = previous.roles.person === true && SUBJECTS.has(previous.text);
  if (previous.kind !== "piece" && !isSubject) return at;
  const before = segment.slice(headAt + 1, at - 1);
  const complete =
    before.some(isAmount) &&
    (before.some((t) => t.kind === "piece") || segment.slice(0, headAt).some((t) => t.kind === "piece"));
  return complete ? at - 1 : at;
}
