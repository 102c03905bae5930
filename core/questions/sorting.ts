import { firstOf, OF_COUNTS } from "./beside.ts";
import { withLives } from "./lives.ts";
import type { Mark } from "./marks.ts";
import { meantBeside } from "./meant-beside.ts";
import type { Building, Item, Parts } from "./parts.ts";
import { withPieceNumbers } from "./piece-numbers.ts";
import { Sorter } from "./sorter.ts";
import type { Cue } from "./words/cues.ts";

const AUXILIARIES: ReadonlySet<string> = new Set(
  "is are was were am do does did has have had can could will would should any isnt arent wasnt werent dont doesnt didnt hasnt havent".split(
    " ",
  ),
);

/** "Sell faster" asks to compare as "faster" does. */
const COMPARED = / (?:faster|slower|quicker|sooner|better|worse)$|\blonger to sell$|\bt(?:akes?|ook) longer$/;

const isNamed = ({ senses }: Mark): boolean => (senses.thing ?? senses.own[0]) !== undefined;

/** "Oak or walnut, best", "what sells quickest, chairs or dressers": behind or before all that stands beside "or". */
function isRankOf(marks: readonly Mark[], at: number): boolean {
  const { senses } = marks[at]!;
  const or = marks.findIndex((mark) => mark.senses.flags.has("or"));
  if (senses.order === undefined || or <= 0) return false;
  const isIdle = (mark: Mark): boolean => mark.period !== undefined || mark.senses.flags.has("filler");
  const isBeside = [or - 1, or + 1].every((place) => marks[place] && isNamed(marks[place]));
  const isBefore =
    at < or &&
    /^(?:what|whats|who|whos)$/.test(firstOf(marks)) &&
    marks.slice(at + 1, or - 1).every(isIdle) &&
    marks.slice(or + 2).every(isIdle);
  return isBeside && (isBefore || (or < at && marks.slice(at + 1).every(isIdle)));
}

/** Whether a word asks to compare; "more than 50" holds against an amount, "which oak or pine pieces" asks for either. */
function isComparing(marks: readonly Mark[], at: number): boolean {
  const { senses, text } = marks[at]!;
  const next = marks[at + 1];
  if (senses.limit && next?.amount) return false;
  const named =
    /^of (?:the|my|our|all)/.test(next?.text ?? "") || next?.text === "of"
      ? marks.slice(at + 2).find(isNamed)
      : next;
  const isOfThem = text === "which" && named !== undefined && isNamed(named);
  return !isOfThem && (senses.flags.has("comparing") || COMPARED.test(text));
}

/** "In july what did i sell": the days said first are put behind what asks. */
function daysBehind(marks: readonly Mark[]): readonly Mark[] {
  const isLead = ({ period, senses, text }: Mark): boolean =>
    period !== undefined ||
    text === "so far" ||
    (senses.link !== undefined && senses.flags.has("filler") && senses.cues.length === 0);
  const asks = marks.findIndex((mark) => !isLead(mark));
  const lead = marks.slice(0, Math.max(0, asks));
  const isDays = lead.length > 0 && lead.at(-1)!.period !== undefined;
  if (
    !isDays ||
    !/^(?:what|whats|which|who|list|show|am|is|are|was|were|did|have|has)\b/.test(marks[asks]!.text)
  )
    return marks;
  return [...marks.slice(asks), ...lead];
}

/** Sorts the marks of a question. */
export function partsOf(typed: readonly Mark[]): Parts {
  const said = daysBehind(withPieceNumbers(typed));
  const first = firstOf(said);
  const marks = withLives(said.map((_, at) => meantBeside(said, at, first)));
  const parts: Building = {
    marks: [...marks],
    cues: new Map(),
    items: [],
    periods: [],
    groups: [],
    orders: [],
    limits: [],
    amounts: [],
    besideAt: [],
    orAt: [],
    andAt: [],
    comparing: marks.some((_, at) => isComparing(marks, at) || isRankOf(marks, at)),
    mine: null,
    eachItem: false,
    perMile: null,
    leads: [],
    notCues: [],
    unknown: [],
    adrift: null,
    yesNo: false,
    first: firstOf(marks),
    said: marks.map(({ text }) => text).join(" "),
  };
  parts.yesNo = AUXILIARIES.has(parts.first);
  const sorter = new Sorter(marks, parts);
  for (let at = 0; at < marks.length; at = sorter.take(at));
  sorter.end();
  takeTop(parts);
  takeFew(parts);
  // "Anything sold this month" asks whether, "anything over 100" asks which.
  if (/^any(?:thing|one|body)$/.test(parts.first) && parts.limits.length === 0) parts.yesNo = true;
  for (const item of parts.items) {
    if (!isActing(item, marks)) continue;
    item.acting = true;
    // "What didnt the nurse pay for": what she did not do is told by nothing.
    if (item.not) parts.adrift ??= item.mark;
  }
  return parts;
}

/** "Which 3 made me the least": so many of what is put in order further on. */
function takeTop(parts: Building): void {
  const [order, more] = parts.orders;
  const [amount] = parts.amounts;
  if (!order || more || order.top !== null || !amount || amount.money || amount.cents % 100 !== 0) return;
  const isLed = /^(?:which|what|whats|the|my)$/.test(parts.marks[amount.at - 1]?.text ?? "");
  if (!isLed || amount.at > order.at) return;
  order.top = amount.cents / 100;
  parts.amounts.shift();
  parts.leads.push(amount.at);
}

/** Up to so many, in hundredths, are pieces where no money is said. */
const FEW = 3000;

/** "Did i sell more than 3 in july": so many pieces, where nothing says that it is a price. */
function takeFew({ limits, marks, cues, yesNo, items, periods }: Building): void {
  const [limit, more] = limits;
  if (!limit || more || limit.unit || limit.cents > FEW) return;
  if (!yesNo || items.length > 0) return;
  // "Have we sold more than 10"
  if (periods.length === 0 && !/^(?:have|has) (?:i|we)\b/.test(marks[0]!.text)) return;
  const isMoney = marks.slice(limit.at, limit.at + limit.words).some(({ amount }) => amount?.money);
  const isDeed = [...cues.keys()].every((cue) => OF_COUNTS.includes(cue) || cue === "started");
  const isEnd = marks
    .slice(limit.at + limit.words)
    .every(
      ({ period, senses }) => period !== undefined || senses.link === "in" || senses.flags.has("filler"),
    );
  if (!isMoney && isDeed && isEnd && cues.size > 0) limit.unit = "count";
}

/** The verbs of somebody who buys: "the student paid". */
const OF_BUYERS: readonly Cue[] = ["paid", "spent", "bought", "got", "took"];

/** "On the dresser the student took": the word before is the dresser's. */
function isBehindThing(at: number, marks: readonly Mark[]): boolean {
  const before = marks.slice(0, at).findLast(({ text }) => !/^(?:the|my|our|that|which)$/.test(text));
  return before?.senses.thing?.noun !== undefined;
}

/** Whether a buyer is named with no word before, and what buyers do follows, not done by "i". */
function isActing({ mark, at, link }: Item, marks: readonly Mark[]): boolean {
  const owns = (dimension: string): boolean => mark.senses.own.some((own) => own.dimension === dimension);
  if (!owns("buyer") || owns("person")) return false;
  // "Bought by the nurse"
  if (link === "by") return marks.slice(0, at).some(({ senses }) => senses.cues.includes("bought"));
  if (link && !isBehindThing(at, marks)) return false;
  const behind = marks.slice(at + 1, at + 4);
  const verb = behind.findIndex(
    ({ senses, period }) => !period && !senses.cues.includes("average") && !senses.flags.has("filler"),
  );
  if (verb < 0 || !behind[verb]!.senses.cues.some((cue) => OF_BUYERS.includes(cue))) return false;
  return !behind.slice(0, verb).some(({ text }) => /\b(?:i|we)\b/.test(text));
}
