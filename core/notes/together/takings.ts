import type { Clause, Tok } from "../clause.ts";
import { placeAfter } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { type Draft, draft as madeDraft, unclearDraft } from "../interpreting/draft.ts";
import { isMeasured, withoutPassing } from "../passed-over/passing.ts";
import type { Mention } from "../reading.ts";
import { centsIn } from "../slots/money.ts";
import { bears, language } from "../verbs.ts";
import { ALL_OF_THEM, AND, BEFORE_TOPIC, SUMS_UP } from "../words/links.ts";
import { FOR_NOTHING, FEES as SALE_FEES } from "../words/money.ts";
import { BUYERS_SAID } from "../words/names.ts";
import { THROWS } from "../words/verbs.ts";
import { withDayAhead } from "./days-ahead.ts";
import { withSameDoing } from "./same-doing.ts";

/** What clauses take from each other before their pieces are settled, one after the other. */
export const TAKINGS: readonly ((drafts: readonly Draft[]) => readonly Draft[])[] = [
  withUndone,
  withoutReasonOfUndo,
  withSameDoing,
  withoutPassing,
  withVerbOfAll,
  withThrownIn,
  withFreeOnes,
  withTopic,
  withPriceLater,
  withValueLater,
  withOneSum,
  withFee,
  withTimeLater,
  withNeed,
  withTimeAlone,
  withDayAhead,
];

/** "someone bought the hutch! 220, paid with card, fee 6.38": what the sale told right before cost. */
function withFee(drafts: readonly Draft[]): readonly Draft[] {
  const at = drafts.findIndex(
    ({ kind, trouble, fields }) => kind === "spend" && !trouble && isFeeAlone(fields),
  );
  const before = at > 0 ? drafts[at - 1]! : undefined;
  const sales = before ? [before, ...before.could].filter(({ kind }) => kind === "sell") : [];
  if (sales.length === 0 || sales.some(({ fields }) => fields["fee"] !== undefined || !fields["price"]))
    return drafts;
  for (const sale of sales) sale.fields["fee"] = drafts[at]!.fields["amount"];
  return drafts.filter((_, place) => place !== at);
}

const isFeeAlone = ({ category, pieces, what }: Draft["fields"]): boolean =>
  category === "fees" && pieces === undefined && SALE_FEES.has(String(what));

/** "undo, mirror still needs glue": why something is taken back is no note. */
function withoutReasonOfUndo(drafts: readonly Draft[]): readonly Draft[] {
  const [undo, ...reasons] = drafts;
  const isReason = ({ trouble, clause }: Draft) => trouble !== undefined && !isMeasured(clause);
  return undo?.kind === "undo" && !undo.trouble && reasons.every(isReason) ? [undo] : drafts;
}

/** "sold the desk 60 to a guy from work, he never came back for it": what did not come about is no sale of that line. */
function withUndone(drafts: readonly Draft[]): readonly Draft[] {
  const at = drafts.findIndex((draft, place) => place > 0 && isUndoing(draft, drafts[place - 1]!));
  if (at < 0) return drafts;
  const sold = drafts[at - 1]!;
  const asked = unclearDraft(sold.clause, { kind: "denial" }, { could: [sold] });
  return [...drafts.slice(0, at - 1), asked, ...drafts.slice(at + 1)];
}

/** They did not, of the sale told right before and of nothing else. */
function isUndoing({ kind, trouble, fields, clause }: Draft, before: Draft): boolean {
  if (before.kind !== "sell" || before.trouble || isMeasured(clause) || piecesIn(clause).length > 0)
    return false;
  if (kind === "fallthrough")
    return !trouble && fields["refunded"] === undefined && fields["kept"] === undefined;
  return trouble?.kind === "denial" && clause.tokens.some(({ text }) => BUYERS_SAID.has(text));
}

/** "bought bookcase 10, mirror free, lamp free": what came along with it. */
function withFreeOnes(drafts: readonly Draft[]): readonly Draft[] {
  const given: Draft[] = [];
  for (const draft of drafts) {
    const before = given.at(-1);
    const [free, ...others] = draft.could;
    const isAlong = before?.kind === "buy" && !before.trouble && draft.trouble?.kind === "noVerb";
    if (isAlong && free?.kind === "buy" && free.fields["price"] === 0 && others.length === 0) {
      const { source } = before.fields;
      given.push({ ...free, fields: { ...(source === undefined ? {} : { source }), ...free.fields } });
    } else given.push(draft);
  }
  return given;
}

/** "bought 3 stools 30, they tossed in a bench": one price for all of them, or for the stools alone. */
function withThrownIn(drafts: readonly Draft[]): readonly Draft[] {
  const at = drafts.findIndex(({ kind, clause }) => kind === "buy" && THROWS.has(clause.head?.text ?? ""));
  const bought = at > 0 ? drafts[at - 1]! : undefined;
  if (bought?.kind !== "buy" || bought.fields["price"] === undefined) return drafts;
  // "… and they threw in a bench for free": it has its own price.
  if (drafts[at]!.clause.tokens.some(({ text }) => FOR_NOTHING.has(text))) return drafts;
  const pieces = [bought, drafts[at]!].flatMap(({ fields }) => piecesOf(fields));
  const lot = { ...bought, fields: { ...bought.fields, pieces } };
  const asked = unclearDraft(bought.clause, { kind: "priceOfBoth" }, { could: [lot, bought] });
  return [...drafts.slice(0, at - 1), asked, ...drafts.slice(at + 1)];
}

/** "desk 30 and chair 10, both bought at the thrift store": the verb behind the last is that of all. */
function withVerbOfAll(drafts: readonly Draft[]): readonly Draft[] {
  const last = drafts.at(-1);
  if (!last || last.trouble) return drafts;
  const isSaidOfAll =
    isOfThem(last) ||
    (bears(last.kind, "one end for several") && last.clause.tokens.some(({ text }) => ALL_OF_THEM.has(text)));
  if (!isSaidOfAll && !isVerbLast(last)) return drafts;
  const told = drafts.map((draft) =>
    draft.trouble?.kind === "noVerb" ? (draft.could.find(({ kind }) => kind === last.kind) ?? draft) : draft,
  );
  const { price, pieces, ...said } = last.fields as { price?: number; pieces?: Mention[] };
  if (price !== undefined || pieces?.some(({ name }) => name) || told.at(-2)?.kind !== last.kind) return told;
  // "both sold sat" alone is what was said of them, and no sale more.
  return told
    .slice(0, -1)
    .map((draft) => (draft.kind === last.kind ? { ...draft, fields: { ...said, ...draft.fields } } : draft));
}

/** "bench 45 and lamp 20, both posted just now": of the two before, and nothing else. */
const isOfThem = ({ fields }: Draft): boolean =>
  fields["price"] === undefined && piecesOf(fields).length > 0 && piecesOf(fields).every(({ it }) => it);

const piecesOf = (fields: Draft["fields"]): Mention[] => (fields["pieces"] as Mention[] | undefined) ?? [];

/** "table 160, bench 55 listed": the verb that ends a list of prices is that of all of them. */
const isVerbLast = ({ clause: { tokens, head }, fields }: Draft): boolean =>
  head !== undefined && tokens.at(-1) === head && fields["price"] !== undefined;

/** "hutch: sanding 1h, paint 12, desk: wax 9": every clause behind a piece and its mark is about that piece. */
function withTopic(drafts: readonly Draft[]): readonly Draft[] {
  const [first, ...others] = drafts;
  if (!first || others.length === 0) return drafts;
  const isAlone = isTopicAlone(first.clause);
  if (first.trouble && !isAlone) return drafts;
  const isList = others.some(({ clause }) => isTopicAlone(clause));
  const isByComma = !isList && drafts.length > 2;
  let named = topicOf(first.clause, isAlone || isList || !isByComma);
  if (!named) return drafts;
  const facts: Draft[] = [];
  for (const draft of others) {
    if (isTopicAlone(draft.clause)) {
      named = piecesIn(draft.clause);
      continue;
    }
    facts.push(draft);
    if (draft.trouble || !bears(draft.kind, "of pieces")) continue;
    // "desk, paint 12, hutch, sold 80, wax 9": behind another piece, nobody says which of them.
    if (isByComma && draft.fields["pieces"] !== undefined) named = [];
    if (draft.fields["pieces"] !== undefined || named.length === 0) continue;
    if (isByComma && draft.kind === "spend" && draft.fields["category"] !== "materials") continue;
    draft.fields["pieces"] = named.map((mention) => ({ ...mention }));
    draft.takesBefore = false;
  }
  return isTopicAlone(first.clause) ? facts : [first, ...facts];
}

/** A clause that names pieces and nothing else. */
function isTopicAlone({ tokens }: Clause): boolean {
  return (
    tokens.some(({ kind }) => kind === "piece") &&
    tokens.every(
      ({ kind, text }) => kind === "piece" || kind === "mark" || AND.has(text) || BEFORE_TOPIC.has(text),
    )
  );
}

/** The pieces that a clause names before a mark and nothing else; null where it does not. */
function topicOf({ tokens, line, spans }: Clause, isByComma: boolean): Mention[] | null {
  const start = placeAfter(tokens, 0, BEFORE_TOPIC);
  let end = start;
  while (tokens[end]?.kind === "piece" || (end > start && isBetweenPieces(tokens, end))) end += 1;
  const heading = isByComma ? /^\s*(?::|[-–—,]\s)/ : /^\s*(?::|[-–—]\s)/;
  if (end === start || !heading.test(line.slice(spans[tokens[end - 1]!.to - 1]!.end))) return null;
  return tokens.slice(start, end).flatMap(({ mention }) => (mention ? [mention] : []));
}

/** "desk, lamp: paint 12": both. */
function isBetweenPieces(tokens: readonly Tok[], at: number): boolean {
  return (tokens[at]?.text === "," || AND.has(tokens[at]?.text ?? "")) && tokens[at + 1]?.kind === "piece";
}

/** "found a bench at the thrift store and bought it for 6": one purchase, told in two clauses. */
function withPriceLater(drafts: readonly Draft[]): readonly Draft[] {
  if (!drafts.some(({ kind }) => kind === "buy")) return drafts;
  const kept: Draft[] = [];
  for (const draft of drafts) {
    const before = kept.at(-1);
    const isPrice = isOpenPurchase(draft, "pieces", "price") && draft.clause.signs.has("pronoun");
    if (before && isPrice && isOpenPurchase(before, "price", "pieces"))
      before.fields = { ...draft.fields, ...before.fields };
    else kept.push(draft);
  }
  return kept;
}

/** "chairs need new seats, fabric 22": what a piece needs is no fact, and says what the cost behind it is for. */
function withNeed(drafts: readonly Draft[]): readonly Draft[] {
  return drafts.filter(({ trouble, clause }, at) => {
    if (trouble?.kind !== "intention" && trouble?.kind !== "unknown") return true;
    const cost = drafts[at + 1];
    const pieces = piecesIn(clause);
    const isNeed = clause.tokens.some(({ text }) => /^needs?\b/.test(text));
    if (!isNeed || pieces.length === 0 || isMeasured(clause)) return true;
    if (cost?.kind !== "spend" || cost.trouble || cost.fields["pieces"]) return true;
    cost.fields["pieces"] = pieces.map((mention) => ({ ...mention }));
    return false;
  });
}

/** "finished sanding the bench, 50 min": how long it took, told behind what was done. */
function withTimeLater(drafts: readonly Draft[]): readonly Draft[] {
  return drafts.filter((draft, at) => {
    const before = at > 0 ? drafts[at - 1] : undefined;
    const { minutes, pieces, what } = draft.fields;
    if (draft.kind !== "work" || draft.trouble || minutes === undefined || pieces || what) return true;
    if (before?.kind !== "work" || before.trouble || before.fields["minutes"] !== undefined) return true;
    before.fields["minutes"] = minutes;
    return false;
  });
}

/** "14 hours, no sales, three codes": a time alone beside words that nobody knows may be of anything. */
function withTimeAlone(drafts: readonly Draft[]): readonly Draft[] {
  const isUnknown = ({ trouble }: Draft) => trouble?.kind === "unknown";
  if (!drafts.some(isUnknown)) return drafts;
  return drafts.map((draft) => {
    const { kind, trouble, clause, fields } = draft;
    const isAlone = kind === "work" && !trouble && !clause.head && !fields["pieces"] && !fields["what"];
    const others = drafts.filter((other) => other !== draft);
    return isAlone && others.every(isUnknown)
      ? unclearDraft(clause, { kind: "left" }, { could: [draft] })
      : draft;
  });
}

/** "sold the bench, it was 60 cash", "bought a hutch 40, it was 19 miles": what "it was" tells in a note that has just begun. */
function withValueLater(drafts: readonly Draft[]): readonly Draft[] {
  const kept: Draft[] = [];
  for (const draft of drafts) {
    const before = kept.at(-1);
    const value = before && !before.trouble ? valueIn(draft) : null;
    const told = before && value ? toldOf(before, draft, value) : draft;
    if (told) kept.push(told);
  }
  return kept;
}

/** The value that "it was" tells: alone, or with how it was paid and where. */
function valueIn({ kind, fields, trouble, clause }: Draft): Draft["fields"] | null {
  if (kind === "fix") return fields;
  const isFix = clause.head !== undefined && headsOf(clause.head).some((head) => head.kind === "fix");
  if (!trouble || !isFix) return null;
  const [value, ...others] = clause.tokens.filter((token) => token !== clause.head && !isBesideValue(token));
  const amount = value?.kind === "amount" && others.length === 0 ? centsIn(value) : null;
  return amount === null ? null : { amount };
}

const isBesideValue = ({ kind, roles }: Tok): boolean =>
  kind === "mark" ||
  (kind === "word" && Boolean(roles.filler || roles.method || roles.place) && !roles.hedge);

/** What a value said of the note before it makes: nothing of its own where it fills that note, else a note. */
function toldOf(before: Draft, draft: Draft, { amount, minutes, miles }: Draft["fields"]): Draft | null {
  const open = before.needs.find((field) => OPEN_VALUES.has(field) && before.fields[field] === undefined);
  const value = open === "minutes" ? minutes : amount;
  if (open && value !== undefined) {
    before.fields[open] = value;
    for (const { roles } of draft.clause.tokens) {
      if (roles.method) before.fields["method"] ??= roles.method;
      if (roles.place && before.kind === "buy") before.fields["source"] ??= roles.place;
    }
    return null;
  }
  const of = (kind: "drive" | "work", fields: Record<string, unknown>): Draft =>
    madeDraft(kind, fields, draft.clause, language().grammars.get(kind));
  if (miles !== undefined && before.kind !== "drive") return of("drive", { miles });
  if (minutes !== undefined && before.kind !== "work" && before.wantsPieces) return of("work", { minutes });
  return draft;
}

const OPEN_VALUES: ReadonlySet<string> = new Set(["price", "amount", "minutes"]);

/** "8 knobs for the dresser and 2 hinges for the hutch, 31 total": one sum for all of it. */
function withOneSum(drafts: readonly Draft[]): readonly Draft[] {
  const last = drafts.at(-1);
  const isSum = last?.clause.tokens.some(({ text }) => SUMS_UP.has(text));
  if (!last || !isSum || last.kind !== "spend" || last.fields["amount"] === undefined) return drafts;
  const from = drafts.findIndex(
    ({ kind, fields, trouble }) => kind === "spend" && !trouble && fields["amount"] === undefined,
  );
  const run = from < 0 ? [] : drafts.slice(from);
  if (run.length < 2 || run.some((draft) => draft.kind !== "spend" || draft.trouble)) return drafts;
  if (run.slice(0, -1).some(({ fields }) => fields["amount"] !== undefined)) return drafts;
  const all = (field: string): unknown[] => run.flatMap(({ fields }) => (fields[field] ?? []) as unknown[]);
  const pieces = all("pieces");
  const what = [...new Set(all("what"))].join(" and ");
  const one = { ...last, fields: { ...last.fields, what, ...(pieces.length > 0 ? { pieces } : {}) } };
  return [...drafts.slice(0, from), one];
}

/** A purchase in which one field is said and another is not. */
function isOpenPurchase({ kind, trouble, eachOf, fields }: Draft, open: string, said: string): boolean {
  return (
    kind === "buy" &&
    trouble === undefined &&
    eachOf === undefined &&
    fields[open] === undefined &&
    fields[said] !== undefined
  );
}

/** "desk not sold yet, lowered it to 110": what did not happen names its piece all the same. */
export function piecesIn({ tokens }: Clause): Mention[] {
  return tokens.flatMap(({ mention }) => (mention ? [mention] : []));
}
