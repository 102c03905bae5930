import { isAmount, isPiece, type Tok, tokenBefore } from "../clause.ts";
import type { VerbFacts } from "../heads.ts";
import { headOf, headsOf, strongHeadsOf } from "../heads.ts";
import { wholeOf } from "../quantities/amounts.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { ARTICLES } from "../words/filler.ts";
import { BEFORE_PRICED, PREPOSITIONS, PRICED_BY } from "../words/links.ts";
import { isStream, isSupply } from "./shape.ts";

/** "12 paint 9 primer 20 gas": every number before its thing. Whole where one of them may as well be how many. */
function numbersFirst(part: Tok[]): Tok[][] | null {
  const first = part.find((token) => !isPassing(token));
  if (!first || !isAmount(first)) return null;
  const places = part.flatMap((token, at) => (isAmount(token) ? [at] : []));
  const things = places.map((at, index) =>
    part.slice(at + 1, places[index + 1]).filter((token) => !isPassing(token)),
  );
  const isChain = things.every((own) => own.length === 1 && (isSupply(own[0]!) || isStream(own[0]!)));
  if (!isChain) return null;
  if (places.some((at, index) => couldCount(part[at]!, things[index]![0]!))) return [part];
  return places.map((at, index) => part.slice(index === 0 ? 0 : at, places[index + 1]));
}

/** "sold 40 for the lamp 25 for the mirror": behind one verb every price before its piece. */
function pricesFirst(part: Tok[]): Tok[][] | null {
  const places = part.flatMap((token, at) => (isAmount(token) ? [at] : []));
  const told = part.slice(0, places[0]).filter((token) => !isPassing(token));
  if (told.length !== 1 || headsOf(told[0]!).length === 0) return null;
  const isChain = places.every((at, index) => {
    const own = part.slice(at + 1, places[index + 1]);
    return (
      BEFORE_PRICED.has(own[0]?.text ?? "") &&
      own.filter((token) => !isPassing(token)).every(isPiece) &&
      own.some(isPiece)
    );
  });
  return isChain ? places.map((at, index) => part.slice(index === 0 ? 0 : at, places[index + 1])) : null;
}

/** "2 brushes": as likely how many as how much. */
const couldCount = ({ amount }: Tok, { text, roles: { supply } }: Tok): boolean =>
  !amount!.money &&
  (supply === "materials" || supply === "tools") &&
  /[^s]s$/.test(text) &&
  (wholeOf(amount!.exact) ?? 0) < COUNT_BELOW;

const COUNT_BELOW = 13;

function isPricedTwice(part: readonly Tok[]): boolean {
  let amounts = 0;
  for (let at = 0; at < part.length; at += 1) if (isAmount(part[at]!)) amounts += 1;
  return amounts > 1;
}

/** "bought dresser 30 nightstand 18", "gas 20 tolls 5": each thing with its own number. */
export function splitAtThings(part: Tok[], facts: VerbFacts): Tok[][] {
  const first = isPricedTwice(part) ? (numbersFirst(part) ?? pricesFirst(part)) : null;
  if (first) return first;
  let parts: Tok[][] | undefined;
  let start = 0;
  let thing = false;
  let number = false;
  for (let at = 0; at < part.length; at += 1) {
    const token = part[at]!;
    const measure = isMeasure(token);
    const opens = opensThing(token) && !isOwnFee(token, part, start, at, facts);
    // Nothing else begins another one.
    const mayBegin = opens || measure || token.roles.labor === true;
    const before = mayBegin && thing && number ? part.slice(start, at) : null;
    const isLed = before !== null && isPreposition(tokenBefore(part, at));
    const foreign = before && measure && !isLed && isForeignMeasure(token, before, facts);
    const isTimeOf = thing && !number && token.kind === "duration" && isTimeOfDone(part, start, at);
    const another = before && (!isLed || opensAnother(part, at)) && isAnother(part, at, before, opens);
    if (foreign || another || isTimeOf) {
      parts ??= [];
      parts.push(part.slice(start, at));
      start = at;
      thing = false;
      number = false;
    }
    if (measure) number = true;
    if (opens || measure) thing = true;
    if (isAmount(token)) number = true;
  }
  if (!parts) return [part];
  parts.push(part.slice(start));
  return parts;
}

/** "finished the bench 2h": what was done has no time of its own, so that it is said how long was worked on it. */
function isTimeOfDone(part: readonly Tok[], start: number, at: number): boolean {
  const before = part.slice(start, at);
  const head = headOf(before);
  // "cured 24h" is no work, and "finishing desk 2h" nothing else.
  if (!head || /^cured$|ing\b/.test(head.text)) return false;
  const isDone = strongHeadsOf(head).every(({ kind }) => kind === "finish" || kind === "start");
  const last = before.findLast(({ kind }) => kind !== "mark")!;
  return isDone && (isPiece(last) || last === head) && part.slice(at + 1).every(isPassing);
}

const isPassing = ({ kind, roles }: Tok): boolean =>
  kind === "mark" || kind === "day" || roles.filler === true;

export const isMeasure = ({ kind }: Tok): boolean => kind === "miles" || kind === "duration";

/** "dresser 30 nightstand 18", "desk 1h hutch 2h", "1h desk 2h hutch", "sanded dresser 1h painted desk 30 min". */
function isAnother(part: readonly Tok[], at: number, before: readonly Tok[], opens: boolean): boolean {
  const token = part[at]!;
  if (opens) return ownNumber(part, at, before);
  const next = part[at + 1];
  if (token.roles.labor && before.some(({ kind }) => kind === "miles")) return isWork(part.slice(at + 1));
  if (!before.some(isPiece) || !before.some(isMeasure)) return false;
  if (token.roles.labor && token.kind === "word")
    return (next?.kind === "piece" || before.some(({ roles }) => roles.labor)) && ownNumber(part, at, before);
  return isMeasure(token) && before.some(({ kind }) => kind === token.kind) && opensWork(part.slice(at + 1));
}

/** "drove 24 miles sanded desk 1h": a piece, and the time it took. */
function isWork(after: readonly Tok[]): boolean {
  const number = after.find((token) => isMeasure(token) || isAmount(token));
  return number?.kind === "duration" && after.some(isPiece);
}

/** What follows a measure names what it was on or for before any other number. */
function opensWork(after: readonly Tok[]): boolean {
  const named = after.findIndex(({ kind, roles }) => kind === "piece" || roles.labor === true);
  const number = after.findIndex((token) => isMeasure(token) || isAmount(token));
  return named >= 0 && (number < 0 || named < number);
}

export const opensThing = (token: Tok): boolean =>
  token.kind === "piece" || isSupply(token) || isStream(token);

const isPreposition = (token: Tok | undefined): boolean =>
  token !== undefined && (PREPOSITIONS.has(token.text) || /^(?:the|my|a|an|this|that)$/.test(token.text));

/**
 * "listed the bench at 70 the lamps at 40": behind a number with a preposition of its own a new thing begins, and in "sold
 * the bench 70 the lamp 40" with its article.
 */
const opensAnother = (part: readonly Tok[], at: number): boolean =>
  (ARTICLES.has(part[at - 1]?.text ?? "") &&
    part[at - 2]?.kind === "amount" &&
    part[at + 1]?.kind === "amount" &&
    isPiece(part[at]!) &&
    isPiece(part[at - 3]!)) ||
  isPricedApart(part, at);

const isPricedApart = (part: readonly Tok[], at: number): boolean =>
  PRICED_BY.has(part[at + 1]?.text ?? "") &&
  part[at + 2]?.kind === "amount" &&
  ARTICLES.has(part[at - 1]?.text ?? "") &&
  part[at - 2]?.kind === "amount" &&
  PRICED_BY.has(part[at - 3]?.text ?? "");

/** "sold hutch 220 fee 6.60": the fee of the sale before it. */
function isOwnFee(token: Tok, part: readonly Tok[], start: number, at: number, facts: VerbFacts): boolean {
  if (token.kind !== "word" || (token.hints & HINTS.fee) === 0) return false;
  const head = headOf(part.slice(start, at));
  return head !== undefined && headsOf(head).some((said) => facts.takes(said.kind, "fee"));
}

/** Whether a number follows before the next thing: an amount, or a measure as the one before it. */
function ownNumber(part: readonly Tok[], at: number, before: readonly Tok[]): boolean {
  for (let next = at + 1; next < part.length; next += 1) {
    const token = part[next]!;
    if (isAmount(token)) return true;
    if (isMeasure(token))
      return !before.some(isAmount) && before.some(isPiece) && before.some(({ kind }) => kind === token.kind);
    if (token.kind === "piece" || isSupply(token) || isStream(token)) return false;
  }
  return false;
}

function isForeignMeasure(token: Tok, before: readonly Tok[], facts: VerbFacts): boolean {
  const head = headOf(before);
  // "gas 20 24 miles", "paint 12 2h desk": two notes without a verb.
  if (!head) return before.some(isAmount) && before.some((one) => isSupply(one) || isStream(one));
  const slot = token.kind === "miles" ? "miles" : "minutes";
  return headsOf(head).every((said) => !facts.takes(said.kind, slot));
}
