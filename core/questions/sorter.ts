import { isItem, isPriceAt, unitOf } from "./items.ts";
import type { Mark } from "./marks.ts";
import type { Building } from "./parts.ts";
import type { Limit, Link, Own } from "./phrases.ts";
import type { Cue } from "./words/cues.ts";

const FEES: Own = { dimension: "category", value: "fees" };

/** Cues of a state that a negation right before may turn. */
const TURNED: ReadonlySet<Cue> = new Set(["free", "held", "kept", "given", "scrapped", "returned"]);

/** Cues that tell how a piece stands. */
const STATES: ReadonlySet<Cue> = new Set(["sold", "unsold", "listed", "finished", "started", "held"]);

/** Words that are cues as well, and groups where something is put in order: "the day i sold the most". */
const ALSO_GROUPS: ReadonlySet<Cue> = new Set(["when", "howPaid", "which", "buyerName", "loan"]);

/** Goes over the marks of a question and puts each where it belongs. */
export class Sorter {
  #link: Link | null = null;
  #negation: Mark | null = null;
  #parted: number | null = null;
  /** The last mark was an item, or joins two. */
  #inItems = false;
  #not = false;
  #skip = 0;

  constructor(
    private readonly marks: readonly Mark[],
    private readonly parts: Building,
  ) {}

  /** Takes the mark at a place; gives the place of the next one. */
  take(at: number): number {
    const mark = this.marks[at]!;
    const { senses } = mark;
    const skip = this.#skips(at);
    if (skip > 0) {
      this.#skip = skip;
      this.parts.leads.push(at);
      return at + 1;
    }
    const range = this.#range(at);
    if (range) return range;
    if (mark.unknown) return this.#leave(at, () => this.parts.unknown.push(mark));
    if (mark.period) return this.#period(mark, at);
    const limited = this.#limit(at);
    if (limited) return limited;
    if (this.#opensMile(at)) {
      this.parts.perMile = at;
      return at + 2;
    }
    if (mark.amount) return this.#amount(mark, at);
    if (isItem(this.marks, at)) return this.#item(mark, at);
    if (senses.flags.has("negation") && !(this.parts.yesNo && mark.text === this.parts.first)) {
      this.#negation = mark;
      this.#not = true;
      return at + 1;
    }
    if (this.#group(mark, at)) return at + 1;
    return this.#word(mark, at);
  }

  /** "Second best": how many stand before it; 0 where no such word is before an order. */
  #skips(at: number): number {
    const [, nth] =
      /^(?:the |my |our )?(second|2nd|next|third|3rd|fourth|4th)$/.exec(this.marks[at]!.text) ?? [];
    if (nth === undefined || !this.marks[at + 1]?.senses.order) return 0;
    return /^(?:second|2nd|next)$/.test(nth) ? 1 : /^(?:third|3rd)$/.test(nth) ? 2 : 3;
  }

  /** Nothing may be left hanging at the end. */
  end(): void {
    const last = this.marks.length - 1;
    const { cues, orders, limits, items } = this.parts;
    // "The least i sold a mirror for", "how many did i get over 100 for": a price.
    if (this.marks[last]?.text === "for" && orders.length + limits.length > 0)
      this.#addCues([cues.has("sold") || (limits.length > 0 && cues.has("got")) ? "soldFor" : "price"], last);
    // "What did the stools sell for each"
    if (/^(?:each|apiece)$/.test(this.marks[last]?.text ?? "") && items.length > 0)
      this.parts.eachItem = true;
    // "June july august profit each"
    if (/^each$/.test(this.marks[last]?.text ?? "") && items.length === 0 && this.parts.periods.length > 1)
      this.parts.groups.push({ group: "month", parted: true, at: last });
    // "How much did i make on each", "what did each sell for": by piece.
    const each = this.marks.findIndex(
      ({ text, senses }, at) =>
        senses.flags.has("parted") && /(?:^| )each$/.test(text) && !this.#opensRows(at),
    );
    const isAlone = items.length + this.parts.groups.length + limits.length === 0;
    if (each >= 0 && isAlone && this.parts.periods.length < 2)
      this.parts.groups.push({ group: "piece", parted: true, at: each });
    if (this.#negation) this.parts.adrift ??= this.#negation;
    if (this.#parted !== null) this.parts.adrift ??= this.marks[this.#parted]!;
  }

  #leave(at: number, act: () => void): number {
    act();
    this.#inItems = false;
    this.#link = null;
    return at + 1;
  }

  #period(mark: Mark, at: number): number {
    if (this.#negation) this.parts.adrift ??= this.#negation;
    this.#negation = null;
    this.#not = false;
    return this.#leave(at, () => this.parts.periods.push({ period: mark.period!, at }));
  }

  /** "between 50 and 100": both hold, the ends included. */
  #range(at: number): number | null {
    const [lead, low, and, high] = this.marks.slice(at, at + 4);
    if (lead?.text !== "between" || !low?.amount || !/^(?:and|to)$/.test(and?.text ?? "") || !high?.amount)
      return null;
    this.#limited("least", { at, amountAt: at + 1, words: 2 });
    return this.#limited("most", { at: at + 2, amountAt: at + 3, words: 2 });
  }

  /** "over 100", "100 or more". */
  #limit(at: number): number | null {
    // "Sold within 30 days"
    const isWithin = this.marks[at]!.text === "within" && this.marks[at + 1]?.amount !== undefined;
    const limit = isWithin ? "most" : this.marks[at]!.senses.limit;
    // "over the summer" is in it.
    const next = this.marks.slice(at + 1).find(({ senses }) => !senses.flags.has("filler"));
    if (limit && next?.period && !/\bthan$/.test(this.marks[at]!.text)) {
      this.#link = "in";
      this.parts.leads.push(at);
      return at + 1;
    }
    const amount = this.marks[at + 1]?.amount;
    if (!limit || !amount) return null;
    return this.#limited(this.#turned(limit), { at, amountAt: at + 1, words: 2 });
  }

  /** An amount with its limit, and the unit behind it: "over 5 hours", "more than 3 chairs". */
  #limited(limit: Limit, { at, amountAt, words }: { at: number; amountAt: number; words: number }): number {
    const amount = this.marks[amountAt]!.amount!;
    // "Which pieces made over 60 an hour"
    const isHourly =
      !this.parts.yesNo &&
      this.parts.groups.length === 0 &&
      this.marks[at + words]?.senses.cues.includes("hourly") === true;
    if (isHourly) {
      this.parts.limits.push({ limit, cents: amount.cents, at, words: words + 1, unit: "hourly" });
      this.#inItems = false;
      return at + words + 1;
    }
    const after = amount.money ? undefined : this.#countedAfter(at + words);
    const unit = after ? unitOf(after) : null;
    // "Over 60 days old"
    if (unit && after?.senses.cues.includes("had")) this.#addCues(["had"], at);
    this.parts.limits.push({
      limit,
      cents: amount.cents * (unit?.times ?? 1),
      at,
      words: words + (unit && unit.name !== "count" ? 1 : 0),
      ...(unit ? { unit: unit.name } : {}),
    });
    this.#inItems = false;
    return at + this.parts.limits.at(-1)!.words;
  }

  /** What an amount is of: "more than 5 walnut or oak pieces" are pieces. */
  #countedAfter(at: number): Mark | undefined {
    const isTelling = ({ senses, link }: { senses: Mark["senses"]; link?: unknown }): boolean =>
      link === undefined &&
      Boolean(
        senses.thing?.trait ||
          senses.thing?.place ||
          senses.own.some(({ dimension }) => /^(?:trait|source|person|buyer)$/.test(dimension)),
      );
    const isSmall = ({ text }: Mark): boolean => /^(?:or|and|non|not)$/.test(text);
    for (let next = at; next < this.marks.length; next += 1) {
      const mark = this.marks[next]!;
      if (!isTelling(mark) && !isSmall(mark)) return mark;
      if (mark.senses.thing?.plural) return mark;
    }
    return this.marks[at];
  }

  /** "not over 100" is at most that. */
  #turned(limit: Limit): Limit {
    if (!this.#negation) return limit;
    // "Not exactly 50" is no one stretch of amounts.
    if (limit === "exactly") this.parts.adrift ??= this.#negation;
    this.#negation = null;
    this.#not = false;
    return limit === "exactly"
      ? limit
      : ({ over: "most", under: "least", least: "under", most: "over" } as const)[limit];
  }

  #amount(mark: Mark, at: number): number {
    const after = this.marks[at + 1]?.senses.limit;
    const order = this.marks[at + 1]?.senses.order;
    const amount = mark.amount!;
    if ((after === "least" || after === "most") && !this.marks[at + 2]?.amount) {
      return this.#limited(after, { at, amountAt: at, words: 2 });
    }
    if (order && amount.cents % 100 === 0) {
      this.parts.orders.push({ order, top: amount.cents / 100, at });
      return at + 2;
    }
    if (isPriceAt(this.marks, at)) return this.#limited("exactly", { at, amountAt: at, words: 1 });
    this.parts.amounts.push({ ...amount, at });
    return at + 1;
  }

  #item(mark: Mark, at: number): number {
    if (this.#parted !== null && mark.senses.group === undefined && !this.#partsByLink(mark)) {
      this.parts.eachItem = true;
      this.#parted = null;
    } else if (this.#parted !== null && mark.senses.group)
      // "By supply" parts, where "on supplies" narrows.
      return this.#group(mark, at) ? at + 1 : this.#word(mark, at);
    this.#parted = null;
    if (this.#negation && mark.senses.cues.length > 0) this.#negation = null;
    // "non oak chairs" are chairs; "not oak or walnut" turns both.
    const isAlone = this.#negation?.text === "non";
    this.#negation = null;
    this.parts.items.push({ mark, at, link: this.#link, not: this.#not });
    if (isAlone) this.#not = false;
    this.#inItems = true;
    this.#keepCues(mark, at);
    return at + 1;
  }

  /** "by dad", "by cash": no rows, but who or how. */
  #partsByLink({ senses }: Mark): boolean {
    const { thing, own } = senses;
    if (this.#link !== "by") return false;
    return Boolean(
      thing?.person || thing?.method || own.some(({ dimension }) => /person|method|buyer/.test(dimension)),
    );
  }

  #keepCues({ senses }: Mark, at: number): void {
    if (senses.thing || senses.own.length > 0) return;
    this.#addCues(senses.cues, at);
  }

  #addCues(cues: readonly Cue[], at: number): void {
    const all = this.parts.cues as Map<Cue, number[]>;
    for (const cue of cues) all.set(cue, [...(all.get(cue) ?? []), at]);
  }

  /** What rows go by: after "by", or named where something is put in order. */
  #group(mark: Mark, at: number): boolean {
    const { group, groupWhole, cues, flags } = mark.senses;
    if (!group) return false;
    if (groupWhole || this.#parted !== null) {
      this.parts.groups.push({ group, parted: true, at });
      if (groupWhole) this.#addCues(cues, at);
      this.#parted = null;
      this.#link = null;
      return true;
    }
    const isOrdered =
      this.marks.some(({ senses }) => senses.order) && cues.every((cue) => ALSO_GROUPS.has(cue));
    // "Which loan have i paid the most on", but "the month i paid the most to the loan".
    const isLoan = cues.includes("loan") && !/^(?:which|what)$/.test(this.marks[at - 1]?.text ?? "");
    if (flags.has("generic") || flags.has("filler") || (cues.length > 0 && !isOrdered) || isLoan)
      return false;
    this.parts.groups.push({ group, parted: false, at });
    this.#inItems = false;
    return true;
  }

  #word(mark: Mark, at: number): number {
    // "Spending except fees": those noted as spent, which alone could be among it.
    const isHadNone = /^ha(?:s|d|ve)$/.test(this.marks[at - 2]?.text ?? "");
    if (this.#negation && mark.senses.cues.includes("fees") && !isHadNone)
      return this.#item({ ...mark, senses: { cues: [], flags: new Set(), own: [FEES] } }, at);
    const { senses } = mark;
    const { flags } = senses;
    if (senses.order) return this.#order(mark, at);
    if (flags.has("parted") && this.#opensRows(at)) this.#parted = at;
    // "per foot" asks for a quotient that nobody works out.
    else if (mark.text === "per") this.parts.adrift ??= mark;
    // "Sell faster than" says both what is measured and that two things are.
    if (flags.has("compare") || flags.has("than") || mark.text.endsWith(" than"))
      this.parts.besideAt.push(at);
    if (flags.has("or")) this.parts.orAt.push(at);
    if (flags.has("and")) this.parts.andAt.push(at);
    if (flags.has("mine")) this.parts.mine = at;
    if (senses.link) this.#link = senses.link;
    this.#addCues(senses.cues, at);
    if (flags.has("and") || flags.has("or") || flags.has("filler")) return at + 1;
    if (senses.link && senses.cues.length === 0) {
      if (this.#inItems && !this.#negation) this.#not = false;
      this.#inItems = false;
      return at + 1;
    }
    if (!this.#negation) this.#not = false;
    else if (senses.cues.some((cue) => TURNED.has(cue))) this.#turnState(mark);
    else if (senses.cues.length > 0 && !senses.link) this.parts.adrift ??= this.#negation;
    this.#inItems = false;
    if (!senses.link) this.#link = null;
    return at + 1;
  }

  #turnState({ senses }: Mark): void {
    this.parts.notCues.push(...senses.cues.filter((cue) => TURNED.has(cue)));
    this.#negation = null;
    this.#not = false;
  }

  /** "gas per mile", "what does it cost me a mile". */
  #opensMile(at: number): boolean {
    return (
      /^(?:per|a|each|every)$/.test(this.marks[at]!.text) && /^miles?$/.test(this.marks[at + 1]?.text ?? "")
    );
  }

  /** Whether a group or an item follows "by", with nothing but fillers between. */
  #opensRows(at: number): boolean {
    for (let next = at + 1; next < this.marks.length; next += 1) {
      const { senses, number } = this.marks[next]!;
      if (senses.group) return true;
      if (number !== undefined || senses.thing || senses.own.length > 0)
        return !this.marks[at]!.senses.link || Boolean(senses.thing?.noun);
      // "Time per sold lamp"
      const isState = senses.cues.some((cue) => STATES.has(cue));
      if (!senses.flags.has("filler") && !isState) return false;
    }
    return false;
  }

  #order(mark: Mark, at: number): number {
    const next = this.marks[at + 1];
    const isCount = next?.amount && next.amount.cents % 100 === 0 && !next.amount.money;
    this.parts.orders.push({
      order: mark.senses.order!,
      top: isCount ? next.amount!.cents / 100 : null,
      at,
      ...(this.#skip > 0 ? { skip: this.#skip } : {}),
    });
    this.#skip = 0;
    this.#addCues(mark.senses.cues, at);
    if (mark.senses.flags.has("comparing")) this.parts.comparing = true;
    return at + (isCount ? 2 : 1);
  }
}
