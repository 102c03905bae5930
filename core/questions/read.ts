import { addDays } from "../calendar.ts";
import type { Desk } from "./desk.ts";
import { isTime } from "./groupings.ts";
import { leftOver } from "./left-over.ts";
import type { Mark } from "./marks.ts";
import { countedBy, type Features, RULES } from "./measure-rules.ts";
import { measures } from "./measures.ts";
import { mineOnly, type Narrowing, narrowed, type Refusal, refusal } from "./narrowing.ts";
import { asksFigure, cutsOf, type Parts } from "./parts.ts";
import { thisMonth } from "./periods.ts";
import type { Counted, Filter, Grouping, MeasureName, Order, Period, Query, Side } from "./query.ts";
import type { Cue } from "./words/cues.ts";

/** A question that asks for a measure, as a query; or why it is none. Null: no measure is asked for. */
export function readQuery(parts: Parts, f: Features, desk: Desk): Query | Refusal | null {
  const rule = RULES.find((each) => each.when(f));
  if (!rule || /^(?:should|shall|must|would|could)$/.test(parts.first)) return null;
  // "how can i make money" asks for advice, not for a figure.
  const said = parts.marks.map(({ text }) => text).join(" ");
  if (/\b(?:(?:can|could) (?:i|we) (?!see|get|have)|(?:should|would|shall) (?:i|we) (?!see))/.test(said))
    return null;
  // What is to come stands in no book.
  const coming = parts.marks.find(({ text }) => /\b(?:will|gonna)\b/.test(text));
  if (coming) return refusal(coming);
  if (parts.unknown.length > 0) return refusal(...parts.unknown);
  if (parts.adrift) return refusal(parts.adrift);
  const wrong = notOfOne(parts, f) ?? ordinalAdrift(parts) ?? purse(parts, f);
  if (wrong) return refusal(wrong);
  const counted = rule.measure === "count" ? countedNow(parts, f) : null;
  const isAmong = f.order || cutsOf(parts).length > 0;
  const taken: Cue[] = [
    ...rule.takes,
    ...(counted ? [counted.cue] : []),
    ...(isAmong ? (["who", "where", "when"] as const) : []),
  ];
  const found = narrowed(parts, rule.measure, desk);
  if ("kind" in found) return found;
  return new Reader(parts, f, {
    desk,
    measure: rule.measure,
    counted: counted?.counted ?? null,
    taken,
    found,
  }).query();
}

/** An amount that is held against no single thing: "more than 3 chairs", "over 2 hours", "did i make over 5000". */
function notOfOne({ marks, limits, orders, yesNo }: Parts, f: Features): Mark | null {
  const counted = orders.find(({ top }) => top !== null);
  if (yesNo && counted) return marks[counted.at]!;
  for (const { at } of limits) {
    const after = marks[at + 1]?.amount ? marks[at + 2] : undefined;
    const isCount =
      marks[at + 1]?.amount?.money === false &&
      after !== undefined &&
      (after.senses.thing?.plural ||
        /^(?:pieces|things|items|flips|times)$/.test(after.text) ||
        isTimeGroup(after) ||
        after.senses.cues.some((cue) => cue === "minutes" || cue === "howLong" || cue === "daysToSell"));
    const isOfSum =
      yesNo && !f.generic && f.has("earn", "net", "spent", "revenue", "paid") && !f.has("soldFor");
    if (isCount || isOfSum) return marks[at]!;
  }
  return null;
}

/** "How much money do i have left": what is in hand is not what lies in pieces. */
function purse({ marks }: Parts, f: Features): Mark | null {
  if (f.piece || f.generic || f.loan || f.supply || !f.has("money")) return null;
  if (marks.some(({ text }) => /\b(?:tied|stuck|sitting|locked)\b/.test(text))) return null;
  const last = marks.at(-1)!;
  return last.text === "left" ? last : null;
}

const isTimeGroup = ({ senses }: Mark): boolean => senses.group !== undefined && isTime(senses.group);

/** "the first hutch", "the 5th of each month": no day of this month. */
function ordinalAdrift({ marks, periods }: Parts): Mark | null {
  for (const { at } of periods) {
    const { text } = marks[at]!;
    if (!/^(?:on )?(?:the )?(?:first|second|third|fourth|fifth|\d+(?:st|nd|rd|th))$/.test(text)) continue;
    const next = marks[at + 1];
    if (!next) continue;
    const { thing, flags } = next.senses;
    if (
      thing?.noun ||
      flags.has("generic") ||
      flags.has("parted") ||
      marks[at + 2]?.senses.flags.has("parted")
    )
      return marks[at]!;
  }
  return null;
}

/** "How many are listed" asks for what is up now, "how many did i list" for what was done. */
function countedNow(parts: Parts, f: Features): ReturnType<typeof countedBy> {
  const counted = countedBy(f);
  const said = parts.marks.map(({ text }) => text).join(" ");
  const isNow =
    /\b(?:are|is|now|currently|have)\b/.test(said) && !/\b(?:did|was|were)\b/.test(said) && !f.period;
  return counted?.counted === "listed" && isNow ? { ...counted, counted: "on the market" } : counted;
}

interface Read {
  desk: Desk;
  measure: MeasureName;
  counted: Counted | null;
  taken: readonly Cue[];
  found: readonly Narrowing[];
}

/** Cues that narrow where they are not what is asked: "profit on sold chairs". */
const STATUS_CUES: readonly (readonly [Cue, string])[] = [
  ["sold", "sold"],
  ["unsold", "unsold"],
  ["held", "held"],
  ["unlisted", "unlisted"],
  ["unfinished", "unfinished"],
  ["listed", "listed"],
  ["finished", "finished"],
  ["started", "started"],
  ["kept", "kept"],
  ["given", "given"],
  ["scrapped", "scrapped"],
  ["returned", "returned"],
  ["free", "free"],
];

/** What each measure says of the state of its pieces by itself. */
const OWN_STATUS: Partial<Record<MeasureName, readonly string[]>> = {
  net: ["sold", "finished", "listed"],
  proceeds: ["sold", "listed"],
  fees: ["sold", "listed"],
  price: ["listed", "finished"],
  "tied up": ["unsold", "listed"],
  asking: ["unsold", "listed"],
  deposits: ["held", "unsold"],
  owed: ["sold", "unsold"],
  "days to sell": ["sold", "held", "unsold", "finished", "listed"],
  "days listed": ["listed"],
  hourly: ["sold"],
  reached: ["sold", "listed"],
  "come down": ["sold", "listed"],
  income: ["sold"],
};

/** What an amount behind these is of. */
const LIMITED: readonly (readonly [Cue, NonNullable<Filter["of"]>])[] = [
  ["soldFor", "proceeds"],
  ["sold", "proceeds"],
  ["price", "price"],
  ["paid", "price"],
  ["bought", "price"],
  ["cost", "cost"],
  ["asking", "asking"],
  ["listed", "asking"],
];

/** What was done to a piece on a day, which a question about what came of the piece may name. */
const DONE = { bought: "bought on", finished: "finished on", listed: "listed on" } as const;

/** Measures of what came of a piece: a day of its life may narrow them. */
const OF_LIVES: ReadonlySet<MeasureName> = new Set([
  "profit",
  "net",
  "proceeds",
  "count",
  "hourly",
  "reached",
  "come down",
  "days to sell",
  "minutes",
  "fees",
]);

/** What adds up over time. */
const RATED: ReadonlySet<MeasureName> = new Set([
  "profit",
  "net",
  "spent",
  "fees",
  "miles",
  "minutes",
  "income",
  "paid",
  "interest",
  "count",
]);

/** Groups that only pieces have: what is made goes by the piece there. */
const PIECE_GROUPS: ReadonlySet<Grouping> = new Set([
  "kind",
  "source",
  "person",
  "buyer",
  "method",
  "place",
  "piece",
]);

/** Words between sides and parts, which may stand in any question. */
const JOINING = ["negation", "parted", "or"] as const;
const COMPARING = ["compare", "than", "comparing"] as const;

class Reader {
  /** Where the word for what was done in the period stands. */
  #doneAt: number | null = null;

  constructor(
    private readonly parts: Parts,
    private readonly f: Features,
    private readonly read: Read,
  ) {}

  query(): Query | Refusal {
    const { parts, read } = this;
    const group = this.#group();
    if (group && "kind" in group) return group;
    const sides = this.#sides();
    if (sides && "kind" in sides) return sides;
    const done = sides ? null : this.#doneIn();
    const period = sides?.isPeriods || done ? null : this.#period();
    if (period && "kind" in period) return period;
    const filters = [
      ...(sides?.shared ?? read.found.map(({ filter }) => filter)),
      ...this.#limits(),
      ...(done ? [done] : []),
      ...this.#statuses().filter(({ values }) => done?.dimension !== `${values[0]} on`),
      ...(read.measure === "spent" && this.f.has("overhead")
        ? [{ dimension: "shop" as const, values: ["overhead"] }]
        : []),
      ...mineOnly(parts, read.desk),
    ];
    const measure = this.#measureFor(filters, group?.by ?? null, group?.order ?? null, sides?.beside ?? []);
    const fault = this.#leftOver(Boolean(sides));
    if (fault) return fault;
    const isBare = filters.length === 0 && !group && !sides && !this.f.average;
    const query: Query = {
      measure,
      counted: read.counted,
      aggregate: this.#aggregate(),
      filters,
      period:
        period ??
        (isBare &&
        (measure === "net" || measure === "spent") &&
        !this.#saysEver() &&
        !parts.yesNo &&
        !this.f.has("chart")
          ? thisMonth(read.desk.today)
          : null),
      by:
        group?.by ??
        this.#byWhom() ??
        (this.#isPlainChart(Boolean(group?.order), Boolean(sides)) ? "month" : null),
      order: group?.order ?? null,
      beside: sides?.beside ?? [],
      withIncome: this.f.has("everything") && measure === "net",
      // "May or june" wants to know which.
      yesNo: this.#isYesNo() && !(sides && parts.orAt.length > 0),
      asksLess: this.f.has("loss") || (sides !== null && this.#saysLess()),
      list: this.#isListOfSales(),
      picture: this.f.has("chart"),
    };
    return query;
  }

  /** A chart of one figure is one of its months. */
  #isPlainChart(isOrdered: boolean, isBeside: boolean): boolean {
    return this.f.has("chart") && !isOrdered && !isBeside && !measures[this.read.measure].stock;
  }

  /** "what sold for less than 300": the pieces, and not what they came to. */
  #isListOfSales(): boolean {
    const { limits, first } = this.parts;
    return (
      this.read.measure === "proceeds" &&
      limits.length > 0 &&
      /^(?:what|whats|which|show|list|sold|pieces|ones|anything|everything)$/.test(first) &&
      !this.f.has("money", "total", "revenue")
    );
  }

  /** "whose deposits", "who owes me": a row for each of them. */
  #byWhom(): Grouping | null {
    const isOfBuyers = this.read.measure === "deposits" || this.read.measure === "owed";
    return isOfBuyers && this.f.has("who", "whose") ? "buyer" : null;
  }

  /** "did i make money in may", but not "do you know how much i made". */
  #isYesNo(): boolean {
    const { parts } = this;
    if (
      !parts.yesNo ||
      this.f.has("howMany", "which", "when", "where", "who", "howLong") ||
      parts.orders.length > 0
    )
      return false;
    return !asksFigure(parts);
  }

  /** "is oak worse than walnut", "do lamps sell faster than desks": yes where the first is less. */
  #saysLess(): boolean {
    return this.parts.marks.some(({ text }) =>
      /\b(?:worse|lower|less|smaller|fewer|cheaper|faster|quicker|sooner)\b/.test(text),
    );
  }

  #saysEver(): boolean {
    return this.parts.periods.some(({ period }) => period.from === null && period.to === null);
  }

  #aggregate(): Query["aggregate"] {
    if (this.f.has("median")) return "median";
    if (!this.f.has("average")) return null;
    return this.#isRate() ? "rate" : "average";
  }

  /** "gas per month on average": of what adds up, so much a month. */
  #isRate(): boolean {
    const said = this.parts.marks.map(({ text }) => text).join(" ");
    return (
      this.f.has("average") &&
      RATED.has(this.read.measure) &&
      this.parts.groups.some(({ group, parted }) => parted && isTime(group)) &&
      /\b(?:(?:per|an?|each|every) (?:day|week|month|quarter|year)|daily|weekly|monthly|yearly)\b/.test(said)
    );
  }

  /** Rows by something, or something put in order. */
  #group(): { by: Grouping | null; order: Order | null } | Refusal | null {
    const { groups, eachItem } = this.parts;
    // "Which did better" beside "or" compares and puts nothing in order.
    const isBeside = cutsOf(this.parts).length > 0;
    const orders = this.parts.orders.filter(
      ({ at }) => !(isBeside && this.parts.marks[at]!.senses.flags.has("comparing")),
    );
    const parted = groups.find((group) => group.parted);
    const named = groups.find((group) => !group.parted && group.group !== parted?.group);
    if (groups.length > 1 && parted && named && orders.length === 0)
      return refusal(this.parts.marks[named.at]!);
    if (groups.filter((group) => group.parted).length > 1)
      return refusal(this.parts.marks[groups.at(-1)!.at]!);
    const [first] = orders;
    const wrong = groups.find(({ group }) => !isGroupOf(this.read.measure, group));
    if (wrong) return refusal(this.parts.marks[wrong.at]!);
    if (first) return this.#order(first, parted?.group ?? named?.group ?? this.#impliedGroup());
    if (parted) return { by: parted.group, order: null };
    if (eachItem) return { by: "piece", order: null };
    if (!named) return null;
    // "which kinds make money" puts kinds in order; a group that nothing asks for is refused.
    if (this.f.has("which") || /^(?:what|whats|which)$/.test(this.parts.first))
      return { by: null, order: { of: named.group, first: "most", top: null } };
    return refusal(this.parts.marks[named.at]!);
  }

  #impliedGroup(): Grouping {
    const said = this.parts.marks.map(({ text }) => text).join(" ");
    // "Who sold the most" asks for one of ours.
    if (this.f.has("who") && /\bwho (?:has )?sold\b(?!.* to\b)/.test(said)) return "person";
    if (this.f.has("who")) return "buyer";
    if (this.f.has("where")) return "source";
    if (this.f.has("when")) return "month";
    if (this.read.measure === "spent" && !this.f.piece) return "what";
    if (this.read.measure === "income") return "stream";
    if (this.read.measure === "paid" || this.read.measure === "interest") return "month";
    return "piece";
  }

  #order(said: Parts["orders"][number], of: Grouping): { by: null; order: Order } | Refusal {
    const { orders } = this.parts;
    const { measure } = this.read;
    const isDays = measure === "days to sell" || measure === "days listed";
    const ends = orders.map(({ order }) => {
      if (order === "fastest") return "least";
      if (order === "slowest" || order === "most") return "most";
      if (order === "least") return "least";
      return (order === "best") === isDays ? "least" : "most";
    });
    if (new Set(ends).size > 1 && !orders.some(({ order }) => order === "best"))
      return refusal(this.parts.marks[orders[1]!.at]!);
    const top = orders.find((order) => order.top !== null)?.top ?? null;
    const first = orders.length > 1 && said.order === "best" ? ends[1]! : ends[0]!;
    return { by: null, order: { of, first: first as Order["first"], top } };
  }

  /** "profit on chairs i bought in june": the days are those of the buying, whenever the chairs went. */
  #doneIn(): Filter | null {
    const { parts, read } = this;
    const [said, more] = parts.periods;
    if (!said || more || read.measure === "price" || read.measure === "cost") return null;
    const before = parts.marks.slice(0, said.at).findLast(({ senses }) => !senses.flags.has("filler"));
    const done = before?.senses.cues.find((cue) => cue in DONE) as keyof typeof DONE | undefined;
    if (!before || !done || read.counted === done || !OF_LIVES.has(read.measure)) return null;
    this.#doneAt = parts.marks.indexOf(before);
    const { from, to, name } = said.period;
    return { dimension: DONE[done], values: [`${from ?? ""}..${to ?? ""}`], name };
  }

  /** The period said; several only where one takes in the other. */
  #period(): Period | Refusal | null {
    const said = this.parts.periods.filter(({ period }) => period.from !== null || period.to !== null);
    const [first, second, third] = said;
    if (!first) return null;
    if (!second) return first.period;
    if (this.parts.andAt.some((at) => at > first.at && at < said.at(-1)!.at)) {
      const joined = inOne(said.map(({ period }) => period));
      if (joined) return joined;
    }
    if (third) return refusal(this.parts.marks[third.at]!);
    return both(first.period, second.period) ?? refusal(this.parts.marks[second.at]!);
  }

  #limits(): Filter[] {
    return this.parts.limits.map(({ limit, cents, at }) => {
      const of = this.#limited(at);
      return { dimension: limit, values: [String(cents)], ...(of ? { of } : {}) };
    });
  }

  /** "profit on pieces that i paid over 50 for": the amount is of what stands right before it. */
  #limited(at: number): Filter["of"] {
    const before = this.parts.marks.slice(0, at).findLast(({ senses }) => !senses.flags.has("filler"));
    const said = LIMITED.find(([cue]) => before?.senses.cues.includes(cue));
    return said && said[1] !== this.read.measure && this.read.measure !== "count" ? said[1] : undefined;
  }

  #statuses(): Filter[] {
    const { measure } = this.read;
    const isPlaced = this.read.found.some(({ filter }) => filter.dimension === "place");
    const own = [...(OWN_STATUS[measure] ?? []), ...(isPlaced ? ["listed"] : [])];
    // "What has been sitting" is still here, "what sat" may have gone.
    const isHere = measure === "days listed" && this.parts.marks.some(({ text }) => /\bbeen\b/.test(text));
    const here: Filter[] = isHere ? [{ dimension: "status", values: ["unsold"] }] : [];
    const said = this.#saidStatuses(own);
    if (measure !== "hourly" || said.length > 0) return [...here, ...said];
    // What was kept, given or scrapped earns nothing by the hour: it counts where all of them are asked for.
    return [{ dimension: "status", values: [this.#saysAllPieces() ? "gone" : "sold"] }];
  }

  #saidStatuses(own: readonly string[]): Filter[] {
    const { measure, counted, taken } = this.read;
    return STATUS_CUES.flatMap(([cue, status]): Filter[] => {
      const places = (this.parts.cues.get(cue) ?? []).filter((at) => this.#isOnlyCue(at, cue));
      if (places.length === 0 || own.includes(status) || !taken.includes(cue)) return [];
      if (counted === status || (measure === "count" && status !== "free")) return [];
      return [{ dimension: "status", values: [status] }];
    });
  }

  /** "my hourly over all pieces". */
  #saysAllPieces(): boolean {
    const said = this.parts.marks.map(({ text }) => text).join(" ");
    return /\b(?:all|every) (?:the |my |of my )?(?:pieces?|furniture|of them)\b/.test(said);
  }

  /** A word that says nothing else, so that it must mean the state. */
  #isOnlyCue(at: number, cue: Cue): boolean {
    const { cues, flags } = this.parts.marks[at]!.senses;
    if (flags.has("generic") || flags.has("filler")) return false;
    return cues.every((other) => other === cue || !this.read.taken.includes(other));
  }

  /** What is made is net of everything where no pieces are meant, and goes by the piece where they are. */
  #measureFor(
    filters: readonly Filter[],
    by: Grouping | null,
    order: Order | null,
    sides: readonly Side[],
  ): MeasureName {
    const { measure } = this.read;
    if (measure === "count" && order?.of === "piece") return "profit";
    if (measure !== "profit") return measure;
    const parts = [by, order?.of ?? null].filter((group) => group !== null);
    const narrow = filters.length > 0 || sides.some((side) => side.filters.length > 0);
    if (narrow || (this.f.average && !this.#isRate()) || this.#saysOnPieces()) return "profit";
    return parts.some((group) => PIECE_GROUPS.has(group)) ? "profit" : "net";
  }

  /** "profit on all pieces". */
  #saysOnPieces(): boolean {
    const { marks } = this.parts;
    return marks.some(({ senses }, at) => {
      if (!senses.flags.has("generic") || senses.cues.length > 0) return false;
      return marks
        .slice(Math.max(0, at - 3), at)
        .some((mark) => mark.senses.link === "on" || mark.senses.link === "from");
    });
  }

  /** Both sides of a comparison: the one thing that stands on each side, all else held by both. */
  #sides(): { beside: Side[]; shared: Filter[]; isPeriods: boolean } | Refusal | null {
    const { parts, read } = this;
    const joint = cutsOf(parts);
    if (joint.length === 0) return null;
    const periods = parts.periods.filter(({ period }) => period.from !== null || period.to !== null);
    const sideOf = (at: number): number => joint.filter((cut) => cut < at).length;
    if (periods.length === joint.length + 1 && new Set(periods.map(({ at }) => sideOf(at))).size > 1) {
      const beside = periods.map(
        ({ period }): Side => ({ filters: [], period, label: labelOfPeriod(period) }),
      );
      return { beside, shared: read.found.map(({ filter }) => filter), isPeriods: true };
    }
    const dimensions = [...new Set(read.found.map(({ filter }) => sideSort(filter)))];
    const split = dimensions.find((dimension) => {
      const places = read.found.filter(({ filter }) => sideSort(filter) === dimension);
      return new Set(places.map(({ item }) => sideOf(item.at))).size > 1;
    });
    if (!split)
      return joint.length > 0 && parts.besideAt.length > 0 ? refusal(parts.marks[joint[0]!]!) : null;
    return { ...this.#sidesBy(split, sideOf), isPeriods: false };
  }

  #sidesBy(split: Filter["dimension"], sideOf: (at: number) => number): { beside: Side[]; shared: Filter[] } {
    const { found } = this.read;
    const sides = new Map<number, Filter[]>();
    const shared: Filter[] = [];
    const sideFilters = found.filter(({ filter }) => sideSort(filter) === split);
    for (const { filter, item } of found) {
      const near = sideFilters.some(
        (other) => sideOf(other.item.at) === sideOf(item.at) && Math.abs(other.item.at - item.at) <= 1,
      );
      if (sideSort(filter) === split || (filter.dimension === "trait" && near)) {
        const side = sideOf(item.at);
        sides.set(side, [...(sides.get(side) ?? []), filter]);
      } else shared.push(filter);
    }
    const beside = [...sides].map(
      ([, filters]): Side => ({ filters, period: null, label: labelOfFilters(filters) }),
    );
    return { beside, shared };
  }

  /** The first word that nothing takes up. */
  #leftOver(isBeside: boolean): Refusal | null {
    const { parts, read } = this;
    if (parts.amounts.length > 0) return refusal(parts.marks[parts.amounts[0]!.at]!);
    return leftOver(parts, [...read.taken, "chart", "which", "total", "everything"], {
      used: this.#usedPlaces(),
      passed: isBeside ? [...JOINING, ...COMPARING] : JOINING,
    });
  }

  #usedPlaces(): Set<number> {
    const { items, periods, groups, orders, limits } = this.parts;
    const used = new Set(this.parts.leads);
    for (const { at } of [...items, ...periods, ...groups, ...orders]) used.add(at);
    for (const { at } of limits) used.add(at).add(at + 1);
    if (this.#doneAt !== null) used.add(this.#doneAt);
    for (const { at, top } of orders) if (top !== null) used.add(at + 1);
    return used;
  }
}

/** What only some measures can be parted by. */
const GROUPS_OF: Partial<Record<Grouping, readonly MeasureName[]>> = {
  category: ["spent"],
  what: ["spent"],
  stream: ["income"],
  loan: ["paid", "interest"],
};

function isGroupOf(measure: MeasureName, group: Grouping): boolean {
  return GROUPS_OF[group]?.includes(measure) ?? true;
}

/** The stretch that two periods share, where one lies in the other: "summer, june through august". */
function both(a: Period, b: Period): Period | null {
  const from = a.from === null ? b.from : b.from === null || a.from > b.from ? a.from : b.from;
  const to = a.to === null ? b.to : b.to === null || a.to < b.to ? a.to : b.to;
  if (from !== null && to !== null && from > to) return null;
  if (from === a.from && to === a.to) return a;
  if (from === b.from && to === b.to) return b;
  // An open end takes the other's: "since june, before september".
  if (a.from === null || a.to === null || b.from === null || b.to === null)
    return { from, to, name: `${a.name}, ${b.name}` };
  return null;
}

/** "gas or storage": a thing bought stands beside a category as beside another thing. */
function sideSort({ dimension }: Filter): Filter["dimension"] {
  return dimension === "category" ? "what" : dimension;
}

/** "june, july and august": those that follow on one another as one; null where something lies between. */
function inOne(periods: readonly Period[]): Period | null {
  const [first, ...more] = [...periods].sort((a, b) => ((a.from ?? "") < (b.from ?? "") ? -1 : 1));
  let { to } = first!;
  for (const next of more) {
    if (to === null || next.from === null || addDays(to, 1) !== next.from) return null;
    to = next.to;
  }
  const year = / \d{4}$/.exec(more.at(-1)!.name)?.[0] ?? "";
  const names = [first!, ...more].map(({ name }) => name.replace(year, ""));
  return { from: first!.from, to, name: `${names.slice(0, -1).join(", ")} and ${names.at(-1)}${year}` };
}

function labelOfPeriod({ from, to, name }: Period): string {
  if (
    from !== null &&
    to !== null &&
    from.slice(0, 7) === to.slice(0, 7) &&
    from.endsWith("-01") &&
    to >= `${from.slice(0, 7)}-28`
  )
    return from.slice(0, 7);
  return name;
}

function labelOfFilters(filters: readonly Filter[]): string {
  return [...filters]
    .sort((a) => (a.dimension === "trait" ? -1 : 0))
    .map(
      ({ dimension, values, not }) =>
        `${not ? "not " : ""}${dimension === "piece" ? values.map((value) => `#${value}`).join(", ") : values.join(" and ")}`,
    )
    .join(" ");
}
