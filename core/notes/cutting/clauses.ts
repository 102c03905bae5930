import type { Tok } from "../clause.ts";
import { isAmount, isPiece } from "../clause.ts";
import type { VerbFacts } from "../heads.ts";
import { headOf, headsOf, takesSlot } from "../heads.ts";
import { TO_DO } from "../words/pieces.ts";
import { SAYS_TODAY } from "../words/replies.ts";
import type { Cut } from "./cut.ts";
import { headingDayEnd } from "./day-ahead.ts";
import { asksAt, isDone, isSeparator, splitAtHeads } from "./heads.ts";
import { asksSomething, isOutweighed, isPriceForBoth, isSomebodysDoing, joins } from "./joints.ts";
import { pricedApart } from "./listed.ts";
import { revalued, saidOfAnother } from "./same.ts";
import { type Shape, shapeOf } from "./shape.ts";
import { isMeasure, opensThing, splitAtThings } from "./things.ts";

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
    const heading = run.length === 0 && token.kind === "day" ? headingDayEnd(tokens, at) : at;
    if (heading > at) {
      run.push(...tokens.slice(at, heading));
      at = heading - 1;
      continue;
    }
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
  const again = saidOfAnother(part, last);
  if (again) {
    cuts.push({ tokens: again, same: true });
    return;
  }
  const other = revalued(part, last);
  if (other) {
    last.tokens = other;
    return;
  }
  const shape = shapeOf(part);
  // "bought a chest for 30, and some knobs for it, 8": its price stands behind one more comma.
  if (isSupplyPricedNext(shape, last, following)) {
    cuts.push({ tokens: part });
    return;
  }
  const isOfNextDay = headingDayEnd(part, 0) > 0;
  if (isOutweighed(last, joint)) {
    last.tokens = part;
    return;
  }
  if (isUndoAlone(last) && joint.some(({ kind }) => kind === "mark")) {
    cuts.push({ tokens: part });
    return;
  }
  if (isOtherNotDone(part, shape, last, joint)) {
    cuts.push({ tokens: part, isOpen: true });
    return;
  }
  const isOfAnother = (last.isOpen && shape.head) || isPricedBeside(shape, last, facts);
  if ((following && isSomebodysDoing(shape, part)) || isOfAnother) {
    cuts.push({ tokens: part });
    return;
  }
  const way =
    joint.some(isUnsaidMark) ||
    isNextTopic(part, cuts, following) ||
    (joint.length > 0 && asksSomething(part)) ||
    (isGlued && shape.head && shapeOf(last.tokens).head)
      ? "own"
      : isListedPrice(shape, joint, following) && isUnpriced(last, facts)
        ? "repeat"
        : joins(shape, last, facts, joint[0]?.text);
  // "…; tuesday: handles for it, 13": a note of another day is not the one before.
  const isMerged = way === "merge" && !isOfNextDay && !isToday(part, last);
  const isDoubtful = isMerged && isPriceForBoth(last, shape, joint, facts);
  // "lamp 8 and desk and mirror 40": the price of the desk is still to come.
  const isPricedLater = isDoubtful && following !== undefined && isPiecePriced(following.tokens);
  // "sold stool, 10, bench, 40": its price stands behind one more comma.
  const isPricedNext = isDoubtful && following?.tokens.every(isAmount) === true;
  if (isMerged && !isPricedLater && !isPricedNext) {
    if (isDoubtful) last.ambiguous = true;
    last.tokens.push(...joint, ...part);
    return;
  }
  const own = headOf(last.tokens);
  const verb = own ?? last.repeats;
  const behind = own ? last.tokens.slice(last.tokens.indexOf(own) + 1) : last.behind;
  cuts.push({
    tokens: part,
    ...(way !== "own" && !isOfNextDay && verb ? { repeats: verb, ...(behind ? { behind } : {}) } : {}),
  });
}

/** A mark that nobody wrote: there a sentence of its own begins (passed-over/spoken.ts). */
const isUnsaidMark = ({ kind, from, to }: Tok): boolean => kind === "mark" && from === to;

/** A thing of a cost whose price stands alone behind a comma, beside a clause that has a price of its own. */
function isSupplyPricedNext(
  { supply, amount, piece, head, duration }: Shape,
  last: Cut,
  following: Segment | undefined,
): boolean {
  if (!supply || amount || piece || head || duration || !following) return false;
  return isComma(following.joint) && following.tokens.every(isAmount) && shapeOf(last.tokens).amount;
}

/** "undo, mirror still needs glue": behind its mark only why is told. */
const isUndoAlone = ({ tokens }: Cut): boolean => {
  const said = tokens.filter(({ kind, roles }) => kind !== "mark" && roles.filler !== true);
  return said.length === 1 && headsOf(said[0]!).some(({ kind }) => kind === "undo");
};

/** "dresser sold 170. desk not yet": of another piece it is only said that nothing has become of it. */
function isOtherNotDone(part: readonly Tok[], shape: Shape, last: Cut, joint: readonly Tok[]): boolean {
  const isOther = shape.piece && !shape.amount && !shape.head && joint.some(({ kind }) => kind === "mark");
  if (
    !isOther ||
    !part.some(({ text, roles }) => roles.hedge !== undefined || text === "still" || TO_DO.test(text))
  )
    return false;
  const before = shapeOf(last.tokens);
  return (before.piece || before.amount) && (before.head !== undefined || before.labor);
}

/** "desk done, dresser 160": no price belongs to what was done. */
function isPricedBeside({ piece, amount, head }: Shape, last: Cut, facts: VerbFacts): boolean {
  if (!piece || !amount || head) return false;
  const before = shapeOf(last.tokens);
  return (
    before.piece &&
    before.head !== undefined &&
    isDone(before.head) &&
    !takesSlot(before.head, "money", facts)
  );
}

/** "desk: paint 12, hutch: stain 9", "desk: sold 70. lamp: hold till friday": a piece alone, and behind it what is told of it. */
function isNextTopic(part: readonly Tok[], cuts: readonly Cut[], following: Segment | undefined): boolean {
  if (cuts.length === 0 || !following || !part.every(isPiece)) return false;
  if (isMarked(following.joint) && hasSaid(shapeOf(cuts.at(-1)!.tokens))) return true;
  if (cuts.length < 2 || !cuts[0]!.tokens.every(isPiece)) return false;
  const { piece, head, supply, amount, duration } = shapeOf(following.tokens);
  return !piece && (head ? amount : duration || (supply && amount));
}

/** Behind a colon, or a dash. */
const isMarked = (joint: readonly Tok[]): boolean =>
  joint.length === 1 && (joint[0]!.text === ":" || joint[0]!.text === "-");

const hasSaid = ({ piece, head, amount, duration, miles }: Shape): boolean =>
  piece && (head !== undefined || amount || duration || miles);

/** "sanded the desk yesterday 1h, today i painted it, 40 min" */
const isToday = (part: readonly Tok[], { tokens }: Cut): boolean =>
  SAYS_TODAY.has(part[0]!.text) && tokens.some(({ kind }) => kind === "day") && !shapeOf(part).filling;

const isComma = (joint: readonly Tok[]): boolean => joint.length === 1 && joint[0]!.text === ",";

/** The trunk of "bought mirror, trunk 8, bench 15": in a list of prices each has its own. */
const isListedPrice = (shape: Shape, joint: readonly Tok[], following: Segment | undefined): boolean =>
  shape.piece &&
  shape.amount &&
  !shape.head &&
  isComma(joint) &&
  following !== undefined &&
  isComma(following.joint) &&
  isPiecePriced(following.tokens);

/** "bought mirror": its price is not said yet. */
function isUnpriced({ tokens }: Cut, facts: VerbFacts): boolean {
  const { piece, amount, head, free } = shapeOf(tokens);
  return piece && !amount && !free && takesSlot(head, "price", facts);
}

/** "mirror 40", joined to what stands before it. */
function isPiecePriced(tokens: readonly Tok[]): boolean {
  const shape = shapeOf(tokens);
  return shape.piece && shape.amount && !shape.head;
}

/**
 * One verb at the most, before all things, one number at the most, which is no time behind them, and nothing between
 * clauses: nearly every note is so.
 */
function isOneClause(tokens: readonly Tok[]): boolean {
  if (tokens.length === 0 || tokens.length > SEGMENT_TOKENS_MAX) return false;
  let isSaid = false;
  let isNamed = false;
  let isNumbered = false;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    const isVerb = headsOf(token).length > 0;
    const measures = isMeasure(token);
    const isNumber = measures || isAmount(token);
    if (isSeparator(token) || (isVerb && (isSaid || isNamed)) || (isNumber && isNumbered)) return false;
    if ((measures && isNamed) || (isNumber && at > 0 && asksAt(tokens, at - 1))) return false;
    isSaid ||= isVerb;
    isNumbered ||= isNumber;
    isNamed ||= measures || opensThing(token) || token.roles.labor === true;
  }
  return true;
}

/**
 * Cuts a line's tokens into clauses. Every token lands in one clause, is a separator between two, or stands before
 * a "but" that outweighs it.
 */
export function cutsOf(tokens: readonly Tok[], facts: VerbFacts): Cut[] {
  if (isOneClause(tokens)) return [{ tokens: tokens.slice() }];
  const cuts: Cut[] = [];
  const segments = segmentsOf(pricedApart(tokens));
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
