import { countedBy, saysNotListed } from "./counted.ts";
import type { Desk } from "./desk.ts";
import { isYesNo } from "./features.ts";
import { groupings } from "./groupings.ts";
import { askedFirst } from "./is-first.ts";
import { lapseOf } from "./lapses.ts";
import { leftOver } from "./left-over.ts";
import { RULES } from "./measure-rules.ts";
import { measures } from "./measures.ts";
import { mineOnly, type Narrowing, narrowed, type Refusal, refusal } from "./narrowing.ts";
import { cutsOf, type Parts } from "./parts.ts";
import { thisMonth } from "./periods.ts";
import type { Counted, Filter, Grouping, Lapse, MeasureName, Order, Query, Side } from "./query.ts";
import { asksAdvice, guarded } from "./read-guards.ts";
import { limitsOf } from "./read-limits.ts";
import { groupOf } from "./read-order.ts";
import { doneIn, periodOf } from "./read-period.ts";
import { shareIn } from "./read-share.ts";
import { sidesOf } from "./read-sides.ts";
import { ALWAYS, statesOf } from "./read-states.ts";
import type { Reading } from "./reading.ts";
import type { Features } from "./rule.ts";
import { isState } from "./subjects.ts";
import {
  aggregateOf,
  asksEach,
  asksPrices,
  byWhom,
  isListOfSales,
  isOfRows,
  isOnePiece,
  isPlainChart,
  isRate,
  isSalePrice,
  saysEver,
  saysLess,
} from "./wanted.ts";
import { type Cue, cues } from "./words/cues.ts";

/** A question that asks for a measure, as a query; or why it is none. Null: no measure is asked for. */
export function readQuery(parts: Parts, f: Features, desk: Desk): Query | Refusal | null {
  const rule = RULES.find((each) => each.when(f));
  if (!rule || asksAdvice(parts)) return null;
  if (parts.unknown.length > 0) return refusal(...parts.unknown);
  const wrong = guarded(parts, f);
  if (wrong) return refusal(wrong);
  const counted = rule.measure === "count" ? countedNow(parts, f) : null;
  const isAmong = f.order || cutsOf(parts).length > 0;
  const taken: Cue[] = [
    ...rule.takes,
    ...(counted ? [counted.cue] : []),
    ...(isAmong ? (["who", "where", "when"] as const) : []),
    // "The fees on the dresser the student took"
    ...(f.acting && (f.piece || f.generic) ? (["bought", "took", "got"] as const) : []),
  ];
  const found = narrowed(parts, rule.measure, desk);
  if ("kind" in found) return found;
  return composed({
    parts,
    f,
    desk,
    measure: rule.measure,
    counted: counted?.counted ?? null,
    taken,
    found,
    list: rule.list === true || wantsRows(parts, f, rule.measure),
    tally: rule.tally === true,
  });
}

/** What is so now where a word may tell of what was done as well. */
const NOW: Partial<Record<Counted, Counted>> = {
  listed: "on the market",
  finished: "done",
  started: "in progress",
};

/** "How many are listed" asks for what is up now, "how many did i list" for what was done. */
function countedNow(parts: Parts, f: Features): ReturnType<typeof countedBy> {
  const counted = countedBy(f);
  if (counted?.counted === "unlisted" && saysNotListed(parts)) return { ...counted, counted: "not listed" };
  const isNow =
    /\b(?:are|is|now|currently|have)\b/.test(parts.said) &&
    !/\b(?:did|was|were)\b|\b(?:have (?:i|we)|i have|ive|weve) (?:ever )?(?:listed|finished|started)\b/.test(
      parts.said,
    ) &&
    !f.period;
  const now = isNow ? NOW[counted?.counted ?? "bought"] : undefined;
  return counted && now ? { ...counted, counted: now } : counted;
}

/** "Which pieces not from yard sales did i sell": they, and not how many. */
function wantsRows(parts: Parts, f: Features, measure: MeasureName): boolean {
  const isListed =
    f.lists && (f.generic || f.piece) && /^(?:which|what|show|list|pieces|stuff|things)\b/.test(parts.first);
  return (
    measure === "count" &&
    isListed &&
    !f.has("howMany") &&
    !f.order &&
    !f.by &&
    !f.beside &&
    parts.groups.length === 0
  );
}

/** "Spent on pieces other than dressers": on pieces, where a turned filter alone would let the shop's costs in. */
function saysOfPieces({ marks, cues }: Parts, found: readonly Narrowing[]): boolean {
  return (
    !cues.has("overhead") &&
    (found.some(({ filter }) => filter.not) || cues.has("withoutBuying")) &&
    // "Spent on pieces" is one phrase.
    marks.some(
      ({ text, senses }) =>
        /(?:^| )(?:pieces|furniture|stuff|finds)$/.test(text) && !senses.cues.includes("withoutBuying"),
    )
  );
}

/** Words between sides and parts, which may stand in any question. */
const JOINING = ["negation", "parted", "or"] as const;
const COMPARING = ["compare", "than", "comparing"] as const;

function composed(reading: Reading): Query | Refusal {
  const { parts, f, desk, measure: asked, found } = reading;
  const group = groupOf(reading);
  if (group && "kind" in group) return group;
  const sides = sidesOf(reading);
  if (sides && "kind" in sides) return sides;
  const done = sides ? null : doneIn(reading);
  const period = sides?.isPeriods || done ? null : periodOf(reading.parts);
  if (period && "kind" in period) return period;
  // Only what stands can be told of a moment.
  if (period?.moment && !measures[asked].stock && !isState(reading.counted))
    return refusal(parts.marks[parts.periods[0]!.at]!);
  const limits = limitsOf(reading, isOfRows(group, parts));
  if ("senses" in limits) return refusal(limits);
  const { perMile } = parts;
  const isQuotient = perMile !== null && measures[asked].adds && measures[asked].unit === "money";
  if (perMile !== null && (!isQuotient || group || sides || f.average))
    return refusal(parts.marks[perMile + 1]!);
  const share = shareIn(reading, limits.filters, group?.by != null);
  if (share && "senses" in share) return refusal(share);
  const filters = [
    ...(share?.whole ?? [...(sides?.shared ?? found.map(({ filter }) => filter)), ...limits.filters]),
    ...impliedBy(reading, group?.order ?? null, done?.filter ?? null, limits.filters),
  ];
  const measure = measureFor(
    reading,
    [...filters, ...(share?.part ?? [])],
    group?.by ?? null,
    group?.order ?? null,
    sides?.beside ?? [],
  );
  const fault = leftOverOf(reading, Boolean(sides), [...limits.used, ...(done ? [done.at] : [])]);
  if (fault) return fault;
  const income = incomeBeside(parts);
  if (income && measure !== "net") return refusal(income);
  const isBare =
    filters.length === 0 && !group && !sides && !f.average && !share && perMile === null && !limits.against;
  const query: Query = {
    measure,
    counted: share?.counted ?? reading.counted,
    aggregate: aggregateOf(reading),
    filters,
    period: period ?? (isBare && isOfThisMonth(reading, measure) ? thisMonth(desk.today) : null),
    by:
      group?.by ??
      byWhom(reading) ??
      (isPlainChart(reading, Boolean(group?.order), Boolean(sides)) ? "month" : null),
    order: group?.order ?? null,
    beside: sides?.beside ?? [],
    ...(sides?.summed ? { summed: true as const } : {}),
    withIncome: f.has("everything") && measure === "net",
    ...(f.has("withBuying") ? { withBuying: true as const } : {}),
    // "May or june" wants to know which.
    yesNo: isYesNo(parts, f) && !(sides && parts.orAt.length > 0),
    asksLess: f.has("loss") || (sides !== null && saysLess(parts)),
    ...(sides && parts.said.startsWith("up down ") ? { asksWay: true as const } : {}),
    list:
      !share &&
      (reading.list ||
        (parts.first === "list" && measure === "profit" && !group && !sides) ||
        isListOfSales(reading) ||
        asksPrices(reading) ||
        asksEach(reading)),
    picture: f.has("chart"),
    ...(limits.against ? { against: limits.against } : {}),
    ...(f.settles && measure === "owed" ? { against: { dimension: "most" as const, values: ["0"] } } : {}),
    ...(share ? { share: share.part } : {}),
    ...(perMile === null ? {} : { perMile: true as const }),
    ...(reading.tally ? { tally: true as const } : {}),
    ...(group?.by && isYesNo(parts, f) && /\b(?:every|each) \w+$/.test(parts.said)
      ? { every: true as const }
      : {}),
    ...(!sides && isOnePiece(reading) ? { ofOne: true as const } : {}),
    ...(measure === "days between" ? { lapse: lapseIn(parts) } : {}),
    ...(isSalePrice(reading) ? { salePrice: true as const } : {}),
  };
  const first = sides ? null : askedFirst(parts, query.order, query.filters, query.period);
  return first ? { ...query, ...first, yesNo: true } : query;
}

/** What narrows it besides its items, its sides and its limits. */
function impliedBy(
  reading: Reading,
  order: Order | null,
  done: Filter | null,
  limits: readonly Filter[],
): Filter[] {
  const { parts, f, desk, measure, counted, found } = reading;
  // "The worst one ive sold": of those alone, by what came of them.
  const isOfSold =
    measure === "count" && order?.of === "piece" && counted === "sold" && /\bsold\b/.test(parts.said);
  const isOverhead = /^(?:spent|miles|minutes)$/.test(measure) && f.has("overhead");
  return [
    ...(done ? [done] : []),
    ...statesOf(reading).filter(({ values }) => !isSaid(values[0]!, done, limits)),
    ...(measure === "spent" && saysOfPieces(parts, found)
      ? [{ dimension: "shop" as const, values: ["overhead"], not: true as const }]
      : []),
    ...(isOverhead ? [{ dimension: "shop" as const, values: ["overhead"] }] : []),
    ...(isOfSold ? [{ dimension: "status" as const, values: ["sold"] }] : []),
    ...mineOnly(parts, desk),
  ];
}

/** "Profit on lamps with tips": no piece has a share in other income. */
const incomeBeside = ({ marks }: Parts) =>
  marks.find(
    ({ senses, text }) =>
      senses.cues.includes("everything") &&
      !/^(?:in all|(?:and |n |counting |with )?everything.*)$/.test(text),
  );

/** What all of it came to, with no time said, is asked of the running month. */
function isOfThisMonth({ parts, f }: Reading, measure: MeasureName): boolean {
  // "How much have i spent in total"
  const isOfAllTime = saysEver(parts) || (f.has("total") && /\b(?:have|ive|weve)\b/.test(parts.said));
  return (measure === "net" || measure === "spent") && !isOfAllTime && !parts.yesNo && !f.has("chart");
}

/** Whether another filter says the state already: "sold over 100", "bought in june". */
function isSaid(state: string, done: Filter | null, limits: readonly Filter[]): boolean {
  return (
    done?.dimension === `${state} on` ||
    (state === "sold" && limits.some(({ of }) => of === "proceeds")) ||
    (state === "listed" && limits.some(({ of }) => of === "asking"))
  );
}

/** The two deeds that a question names. */
function lapseIn({ marks, cues }: Parts): Lapse {
  return lapseOf(marks[cues.get("lapse")![0]!]!.text);
}

/** What is made is net of everything where no pieces are meant, and goes by the piece where they are. */
function measureFor(
  reading: Reading,
  filters: readonly Filter[],
  by: Grouping | null,
  order: Order | null,
  sides: readonly Side[],
): MeasureName {
  const { parts, f, measure } = reading;
  if (measure === "count" && order?.of === "piece") return "profit";
  if (measure === "days between" && lapseIn(parts).from === "bought" && lapseIn(parts).to === "sold")
    return "days to sell";
  if (measure !== "profit") return measure;
  const cut = [by, order?.of ?? null].filter((group) => group !== null);
  const narrow = filters.length > 0 || sides.some((side) => side.filters.length > 0);
  if (narrow || (f.average && !isRate(reading)) || saysOnPieces(parts)) return "profit";
  return cut.some((group) => groupings[group].ofPieces) ? "profit" : "net";
}

/** "profit on all pieces". */
function saysOnPieces({ marks }: Parts): boolean {
  return marks.some(({ senses }, at) => {
    if (!senses.flags.has("generic") || senses.cues.length > 0) return false;
    return marks
      .slice(Math.max(0, at - 3), at)
      .some(({ senses: { link }, text }) => link === "on" || link === "from" || text === "of");
  });
}

/** The first word that nothing takes up. */
function leftOverOf({ parts, taken }: Reading, isBeside: boolean, used: readonly number[]): Refusal | null {
  const adrift = parts.amounts.find(({ at }) => !used.includes(at));
  if (adrift) return refusal(parts.marks[adrift.at]!);
  return leftOver(
    parts,
    [
      ...taken,
      ...ALWAYS,
      ...(isBeside ? (["rest"] as const) : []),
      ...cues("chart which total everything share"),
    ],
    {
      used: usedPlaces(parts, used),
      passed: isBeside ? [...JOINING, ...COMPARING] : JOINING,
    },
  );
}

function usedPlaces(
  { items, periods, groups, orders, limits, leads, perMile }: Parts,
  more: readonly number[],
): Set<number> {
  const used = new Set([...leads, ...more, ...(perMile === null ? [] : [perMile, perMile + 1])]);
  for (const { at } of [...items, ...periods, ...groups, ...orders]) used.add(at);
  for (const { at, words } of limits) for (let word = 0; word < words; word += 1) used.add(at + word);
  for (const { at, top } of orders) if (top !== null) used.add(at + 1);
  return used;
}
