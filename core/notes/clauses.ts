import type { Tok } from "./clause.ts";
import type { VerbFacts } from "./heads.ts";
import { absorbs, headOf, headsOf, isHead, isLight, strongHeadsOf, takesSlot } from "./heads.ts";
import { isQuestion } from "./questions.ts";
import type { Shape } from "./shape.ts";
import { isAmount, isStream, isSupply, PREPOSITIONS, shapeOf } from "./shape.ts";

/** A run of tokens that makes one clause; `repeats` is the verb of the clause before, said once for both. */
export interface Cut {
  tokens: Tok[];
  /** A piece joined on after the price: nobody can say whether the price was for both. */
  ambiguous?: true;
  repeats?: Tok;
}

const AND = new Set(["and", "then", "also", "plus", "but", "so", "&", "+"]);

const SEPARATORS = new Set([",", ".", ";", "!", "?", ":", "&", "+", "-", "|", "/"]);

function isSeparator(token: Tok): boolean {
  return token.kind === "mark" ? SEPARATORS.has(token.text) : token.kind === "word" && AND.has(token.text);
}

/** Whether a head's words are finished by words further on that hold this token ("put … on hold"). */
function isTailOf(head: Tok, tokens: readonly Tok[], at: number): boolean {
  return headsOf(head).some(({ tail }) => {
    if (tail.length === 0) return false;
    const words = tokens[at]!.text.split(" ");
    const before = tokens[at - 1]?.text ?? "";
    return (
      words.every((word) => tail.includes(word)) &&
      (words[0] === tail[0] || before === tail[0] || tail.length > 1)
    );
  });
}

/** A light verb has its say when something to record stands between it and the next verb. */
function hasHadItsSay(between: readonly Tok[]): boolean {
  const thing = between.some((token) => token.kind === "piece" || isSupply(token) || isStream(token));
  return thing || between.some(isSeparator);
}

/** Parts of a line between separators, each still with at most one verb that has had its say. */
function splitAtHeads(segment: Tok[], facts: VerbFacts): Tok[][] {
  const parts: Tok[][] = [];
  let start = 0;
  let headAt = -1;
  for (let at = 0; at < segment.length; at += 1) {
    if (!isHead(segment, at)) continue;
    if (headAt < 0) {
      // "gas 31 for 62 mile trip": the miles are the trip's.
      const from = segment[at - 1]?.kind === "miles" && takesSlot(segment[at], "miles", facts) ? at - 1 : at;
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

/** "gas 30 drove 60 miles": what stands before the verb is a note already, and the verb has its own things. */
function isSaidWithoutVerb(before: readonly Tok[], after: readonly Tok[]): boolean {
  const shape = shapeOf(before);
  const complete = ((shape.supply || shape.stream) && shape.amount && !shape.piece) || shape.miles;
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
  if (previous?.kind !== "piece" || at - 1 <= headAt) return at;
  const before = segment.slice(headAt + 1, at - 1);
  const complete =
    before.some(isAmount) &&
    (before.some((t) => t.kind === "piece") || segment.slice(0, headAt).some((t) => t.kind === "piece"));
  return complete ? at - 1 : at;
}

/** "bought dresser 30 nightstand 18", "gas 20 tolls 5": each thing with its own number. */
function splitAtThings(part: Tok[], facts: VerbFacts): Tok[][] {
  let parts: Tok[][] | undefined;
  let start = 0;
  let thing = false;
  let number = false;
  for (let at = 0; at < part.length; at += 1) {
    const token = part[at]!;
    const measure = token.kind === "miles" || token.kind === "duration";
    const opens = opensThing(token) && !isOwnFee(token, part, start, at, facts);
    const complete = thing && number;
    const foreign = complete && measure && isForeignMeasure(token, part.slice(start, at), facts);
    if (foreign || (complete && opens && ownNumber(part, at) && !isPreposition(part[at - 1]))) {
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

const opensThing = (token: Tok): boolean => token.kind === "piece" || isSupply(token) || isStream(token);

const isPreposition = (token: Tok | undefined): boolean =>
  token !== undefined && (PREPOSITIONS.has(token.text) || /^(?:the|my|a|an|this|that)$/.test(token.text));

/** "sold hutch 220 fee 6.60": the fee of the sale before it. */
function isOwnFee(token: Tok, part: readonly Tok[], start: number, at: number, facts: VerbFacts): boolean {
  if (token.kind !== "word" || !/fees?$|^commission$/.test(token.text)) return false;
  const head = headOf(part.slice(start, at));
  return head !== undefined && headsOf(head).some((said) => facts.takes(said.kind, "fee"));
}

function ownNumber(part: readonly Tok[], at: number): boolean {
  for (let next = at + 1; next < part.length; next += 1) {
    const token = part[next]!;
    if (isAmount(token)) return true;
    if (token.kind === "piece" || isSupply(token) || isStream(token)) return false;
  }
  return false;
}

function isForeignMeasure(token: Tok, before: readonly Tok[], facts: VerbFacts): boolean {
  if (token.kind !== "miles" && token.kind !== "duration") return false;
  const head = headOf(before);
  if (!head) return false;
  const slot = token.kind === "miles" ? "miles" : "minutes";
  return headsOf(head).every((said) => !facts.takes(said.kind, slot));
}

interface Segment {
  tokens: Tok[];
  /** The separators before it. */
  joint: Tok[];
}

/** No clause is longer than this; what is gets cut, so that the time to read grows no faster than the line. */
const SEGMENT_TOKENS_MAX = 60;

/** "nightstand: 45", "lamp - 10": the mark belongs to the amount. */
function isBeforeAmount(tokens: readonly Tok[], at: number): boolean {
  const mark = tokens[at]!;
  const joined = mark.kind === "mark" && (mark.text === ":" || mark.text === "-");
  return joined && tokens[at + 1]?.kind === "amount" && at > 0 && tokens[at - 1]!.kind !== "mark";
}

function segmentsOf(tokens: readonly Tok[]): Segment[] {
  const segments: Segment[] = [];
  let joint: Tok[] = [];
  let run: Tok[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (!isSeparator(token) || isBeforeAmount(tokens, at)) {
      if (run.length === SEGMENT_TOKENS_MAX) {
        segments.push({ tokens: run, joint });
        joint = [];
        run = [];
      }
      run.push(token);
      continue;
    }
    if (run.length > 0) {
      segments.push({ tokens: run, joint });
      joint = [];
      run = [];
    }
    joint.push(token);
  }
  if (run.length > 0) segments.push({ tokens: run, joint });
  return segments;
}

/** Whether a run without a verb says a kind of note by what it holds alone. */
function standsAlone(shape: Shape, before: Shape, facts: VerbFacts, comma: boolean): boolean {
  const { head } = before;
  if (shape.miles) return before.miles || !takesSlot(head, "miles", facts);
  if (shape.duration) return before.duration || !takesSlot(head, "minutes", facts);
  if (shape.stream && shape.amount) return true;
  if (shape.supply && shape.amount) {
    const waits = takesSlot(head, "money", facts) || takesSlot(head, "price", facts);
    // "bought armoire, paint 12": after a comma, and the number right behind it.
    const isPricedAlone = comma && shape.pricedSupply && before.piece;
    // "spent 2h on the desk and 14 on paint"
    const isWorked = before.duration && !before.supply;
    return before.amount || isWorked || isPricedAlone || !(before.supply || waits);
  }
  return shape.loan && shape.amount;
}

function saysTheSame(a: Tok, b: Tok): boolean {
  return strongHeadsOf(a).some(({ kind }) => strongHeadsOf(b).some((head) => head.kind === kind));
}

/** A verb that could complete the one before opens a clause where it brings a thing or an amount of its own. */
function hasItsOwn(next: Shape, before: Shape, paid = true): boolean {
  if (next.loan || next.supply || next.stream) return true;
  if (next.percent && !before.percent) return true;
  // "spent 19 on glass and spent 40 minutes on it"
  if (next.duration && before.amount && !before.duration) return true;
  // "bureau 35 bought, coat rack free"
  if (next.piece && before.piece && before.amount && next.head?.text === "free") return true;
  // "deposit 45 on desk, hold hutch": the same kind of note again, of another piece.
  if (next.head && before.head && next.headFirst && before.piece && saysTheSame(next.head, before.head))
    return true;
  if (!next.amount) return false;
  // "hold #4 and #5 till fri 60 deposit" is one hold; "sold desk, paid 40 for lamp" a sale and a purchase.
  const isNamed = next.piece || next.unlisted;
  const another = isNamed && (before.piece ? before.amount || next.headFirst : !paid);
  // "listed it for 180 and then a man put down 40 on it"
  if (next.pronoun && !next.piece && before.amount && isDeposit(next.head)) return true;
  return another || (next.hands && before.amount);
}

const isTrade = (head: Tok): boolean => headsOf(head).some(({ kind }) => kind === "buy" || kind === "sell");

const isDeposit = (head: Tok | undefined): boolean =>
  head !== undefined && strongHeadsOf(head).some(({ kind }) => kind === "hold");

/** "so i went to the estate sale and": nothing that could be recorded yet. */
function isLeadIn(before: Shape, cut: Cut): boolean {
  const thing = before.amount || before.miles || before.duration;
  if (thing || cut.repeats) return false;
  return !before.head || (isLight(before.head) && !before.piece && !before.supply);
}

/** "needed a new drill so i spent 60": what for, before how much. */
function isWhatFor(before: Shape, next: Shape, facts: VerbFacts): boolean {
  const isSupply = before.supply && !before.amount && (!before.head || isLight(before.head));
  return isSupply && next.amount && !next.supply && !next.piece && takesSlot(next.head, "money", facts);
}

/** How a run of tokens goes on from the clause before it. */
function joins(next: Shape, cut: Cut, facts: VerbFacts, comma: boolean): "merge" | "own" | "repeat" {
  const before = shapeOf(cut.tokens);
  const verb = before.head ?? cut.repeats;
  if (next.head) {
    // "2 lamps 5 each, got em tues": the verb comes late.
    const isLate = next.pronoun && !next.piece && !next.amount && !verb && before.piece && before.amount;
    if (isLate && isTrade(next.head)) return "merge";
    const paid = verb !== undefined && strongHeadsOf(verb).some((head) => facts.takes(head.kind, "money"));
    if (verb && absorbs(verb, next.head, facts) && !hasItsOwn(next, before, paid)) return "merge";
    return before.filling || isLeadIn(before, cut) || isWhatFor(before, next, facts) ? "merge" : "own";
  }
  // "stripped and sanded desk 3h": one job, and its parts.
  if (isLeadIn(before, cut) && !before.piece && !before.supply && !before.stream && !before.loan)
    return "merge";
  if (next.filling || (next.fee && verb && headsOf(verb).some((said) => facts.takes(said.kind, "fee"))))
    return "merge";
  if (next.loan && next.amount && before.loan && before.amount && verb) return "repeat";
  if (standsAlone(next, { ...before, head: verb }, facts, comma)) return "own";
  if (next.piece && next.amount && before.amount && verb && before.piece) return "repeat";
  if (next.piece && next.buyer && before.piece && before.buyer && verb) return "repeat";
  if (next.piece && next.amount && before.amount && !verb) return "own";
  if (next.unlisted && before.amount && before.piece && verb) return "repeat";
  return "merge";
}

/** "bought dresser 30 and nightstand": was the nightstand in the 30? */
function isPriceForBoth(cut: Cut, next: Shape, joint: readonly Tok[], facts: VerbFacts): boolean {
  const head = headOf(cut.tokens) ?? cut.repeats;
  if (!next.piece || next.amount || next.head || next.prepositional || !head || joint.length === 0)
    return false;
  const price = cut.tokens.findLastIndex(isAmount);
  const piece = cut.tokens.findIndex((token) => token.kind === "piece");
  return (
    price >= 0 &&
    piece >= 0 &&
    piece < price &&
    strongHeadsOf(head).some((said) => facts.takes(said.kind, "price"))
  );
}

/** "listed it for 180 and a man called and put 40 down": the man's call leads in what follows. */
function isSomebodysDoing(shape: Shape, part: readonly Tok[]): boolean {
  const isBare = !shape.head && !shape.piece && !shape.amount && !shape.supply && !shape.pronoun;
  return (
    isBare &&
    part.some(({ roles }) => roles.person) &&
    part.some(({ roles }) => roles.hedge === "offer" || roles.hedge === "appointment")
  );
}

/** "snooze 2 days, whats unlisted": a question behind a note is one of its own. */
function asksSomething(part: readonly Tok[]): boolean {
  return (
    /^(?:what|whats|how|hows|show|which|when|where|who|whos)(?: |$)/.test(part[0]!.text) && isQuestion(part)
  );
}

/** "i think i overpaid but i bought …": what stands before "but" says nothing to record, and takes nothing from it. */
function isOutweighed(last: Cut, joint: readonly Tok[]): boolean {
  if (!joint.some(({ text }) => text === "but")) return false;
  const before = shapeOf(last.tokens);
  const isDoubt = last.tokens.some(({ roles }) => roles.hedge === "doubt");
  return isLeadIn(before, last) && !before.piece && !before.supply && !isDoubt;
}

/** Adds one part of a line to the cuts: to the last of them, or as a clause of its own. */
function addPart(
  cuts: Cut[],
  part: Tok[],
  { joint, isGlued, following }: { joint: readonly Tok[]; isGlued: boolean; following: Segment | undefined },
  facts: VerbFacts,
): void {
  if (part.length === 0) return;
  const last = cuts.at(-1);
  if (!last || last.tokens.length > 2 * SEGMENT_TOKENS_MAX) {
    cuts.push({ tokens: part });
    return;
  }
  const shape = shapeOf(part);
  if (isOutweighed(last, joint)) {
    last.tokens = part;
    return;
  }
  if (following && isSomebodysDoing(shape, part)) {
    cuts.push({ tokens: part });
    return;
  }
  const way =
    (joint.length > 0 && asksSomething(part)) || (isGlued && shape.head && shapeOf(last.tokens).head)
      ? "own"
      : joins(shape, last, facts, joint[0]?.text === ",");
  const isDoubtful = way === "merge" && isPriceForBoth(last, shape, joint, facts);
  // "lamp 8 and desk and mirror 40": the price of the desk is still to come.
  const isPricedLater = isDoubtful && following !== undefined && isPiecePriced(following.tokens);
  if (way === "merge" && !isPricedLater) {
    if (isDoubtful) last.ambiguous = true;
    last.tokens.push(...joint, ...part);
    return;
  }
  const verb = headOf(last.tokens) ?? last.repeats;
  cuts.push({ tokens: part, ...(way !== "own" && verb ? { repeats: verb } : {}) });
}

/** "mirror 40", joined to what stands before it. */
function isPiecePriced(tokens: readonly Tok[]): boolean {
  const shape = shapeOf(tokens);
  return shape.piece && shape.amount && !shape.head;
}

/** Cuts a line's tokens into clauses. Every token lands in exactly one clause or is a separator between two. */
export function cutsOf(tokens: readonly Tok[], facts: VerbFacts): Cut[] {
  const cuts: Cut[] = [];
  const segments = segmentsOf(tokens);
  for (let index = 0; index < segments.length; index += 1) {
    const { tokens: segment, joint } = segments[index]!;
    const following = segments[index + 1];
    let isGlued = false;
    for (const half of splitAtHeads(segment, facts)) {
      for (const part of splitAtThings(half, facts)) {
        addPart(cuts, part, { joint, isGlued, following }, facts);
        isGlued = true;
      }
    }
  }
  return cuts;
}
