import type { Desk } from "./desk.ts";
import { isOfKind } from "./filters.ts";
import { singularOf } from "./lexicon.ts";
import type { Mark } from "./marks.ts";
import { measures } from "./measures.ts";
import { cutsOf, type Item, type Parts } from "./parts.ts";
import { type Narrower, possessiveOf } from "./phrases.ts";
import type { Dimension, Filter, MeasureName } from "./query.ts";

/** Why a question is not answered: the words that nobody could place, or a plain reason. */
export interface Refusal {
  kind: "refused";
  /** The words as typed that stand in the way. */
  words: readonly string[];
  /** A whole reason, where it is more than a word that is not known. */
  why?: string;
}

export function refusal(...marks: readonly Mark[]): Refusal {
  return { kind: "refused", words: marks.map(({ typed }) => typed) };
}

/** A filter with the item it came of. */
export interface Narrowing {
  filter: Filter;
  item: Item;
}

/** What an item may be, likeliest first where no measure has its own wish. */
const LIKELY: readonly Narrower[] = [
  "kind",
  "trait",
  "source",
  "method",
  "place",
  "buyer",
  "category",
  "what",
  "stream",
  "person",
  "loan",
];

/** What a word before the item makes of it. */
const BY_LINK: Readonly<Record<string, readonly Narrower[]>> = {
  from: ["source", "stream"],
  at: ["source", "place"],
  to: ["buyer", "loan"],
  on: ["place"],
  via: ["method"],
  by: ["person", "method", "buyer"],
};

/** Everything an item may be, by dimension. */
function candidates({ mark }: Item): Map<Narrower, string> {
  const found = new Map<Narrower, string>();
  const { thing, own } = mark.senses;
  if (mark.number !== undefined) found.set("piece", String(mark.number));
  for (const { dimension, value } of own) if (!found.has(dimension)) found.set(dimension, value);
  if (!thing) return found;
  const add = (dimension: Narrower, value: string | undefined): void => {
    if (value !== undefined && !found.has(dimension)) found.set(dimension, value);
  };
  add("kind", thing.noun);
  add("trait", thing.trait ? mark.text : undefined);
  add("source", thing.place ? singularOf(thing.place) : thing.person ? mark.text : undefined);
  add("method", thing.method);
  add("stream", thing.stream);
  add("what", thing.supply ? singularOf(mark.text.replace(/ money$/, "")) : undefined);
  add("buyer", thing.person ? mark.text : undefined);
  add("person", thing.person ? mark.text : undefined);
  return found;
}

/** The dimension that an item narrows by under a measure; null where it can narrow nothing there. */
function dimensionOf(item: Item, measure: MeasureName, parts: Parts): Narrower | null {
  const found = candidates(item);
  if (found.has("piece")) return "piece";
  const isOwn = (dimension: Narrower): boolean =>
    item.mark.senses.own.some((own) => own.dimension === dimension);
  // "Me or dad", of whom the books have nothing yet: as the other one
  const ours = parts.items.find(
    ({ mark }) => mark !== item.mark && mark.senses.own.some(({ dimension }) => dimension === "person"),
  );
  if (ours && item.mark.senses.thing?.person && item.mark.senses.own.length === 0)
    return dimensionOf(ours, measure, parts) === "bought by" ? "bought by" : "person";
  if (isOwn("person") && !isOwn("buyer") && boughtIt(item, measure, parts)) return "bought by";
  const done = item.mark.senses.own.find(({ name }) => name !== undefined);
  // "Spent in june on pieces bought in may": what was paid for them was paid in may.
  if (done) return done.dimension === "bought on" && measure === "price" ? null : done.dimension;
  // "On saturdays" is said of whatever has a day.
  if (found.has("weekday")) return measures[measure].stock ? null : "weekday";
  if (item.acting && found.has("buyer")) return "buyer";
  const allowed =
    measures[measure].narrowedBy ??
    LIKELY.filter((dimension) => !/category|what|stream|loan/.test(dimension));
  // "made off the student", whom the ledger knows as a buyer alone.
  if (item.link === "from" && isOwn("buyer") && !isOwn("source"))
    return allowed.includes("buyer") ? "buyer" : null;
  // "Spent at the flea market on paint": where a thing was bought is not noted.
  if (measure === "spent" && item.link === "at" && !found.has("place")) return null;
  // "The student loan" is no student.
  if (found.has("loan") && allowed.includes("loan")) return "loan";
  // "Bought by the student", who only ever bought.
  if (item.link === "by" && isOwn("buyer") && !isOwn("person") && allowed.includes("buyer")) return "buyer";
  // "Pieces from mom", who is one of ours: what she bought
  if (
    item.link === "from" &&
    isOwn("person") &&
    !isOwn("source") &&
    !isOwn("stream") &&
    allowed.includes("person")
  )
    return measures[measure].byNotes ? "person" : "bought by";
  const linked = item.link ? (BY_LINK[item.link] ?? []) : [];
  for (const dimension of linked) if (found.has(dimension) && allowed.includes(dimension)) return dimension;
  // "Dressers with mirrors" are not dressers and mirrors.
  if (item.link === "via" && isWith(item, parts) && (found.has("kind") || found.has("what"))) return null;
  const isBuying = parts.cues.has("bought") || parts.cues.has("price") || parts.cues.has("got");
  const isSelling = parts.cues.has("sold") || parts.cues.has("revenue") || parts.cues.has("soldFor");
  if (found.has("buyer") && found.has("source") && !item.mark.senses.thing?.place)
    return (
      personal(item, { isBuying, isSelling }) ??
      // "How much has mom spent", of whom the books have nothing
      (item.mark.senses.own.length === 0 && measures[measure].byNotes ? "person" : null)
    );
  if (isOwn("buyer") && !isOwn("source") && !isBuying && allowed.includes("buyer")) return "buyer";
  return allowed.find((dimension) => found.has(dimension)) ?? null;
}

/** "what mom bought", "dad's chairs": one of ours, who bought the pieces that something else is asked of. */
function boughtIt({ mark, at, link }: Item, measure: MeasureName, parts: Parts): boolean {
  const { marks, items } = parts;
  if (measures[measure].byNotes || measure === "price" || measure === "cost") return false;
  const isOf = (place: number): boolean =>
    marks[place]?.senses.cues.some((cue) => cue === "bought" || cue === "got") ?? false;
  // "Mom pieces"
  const next = marks[at + 1]?.senses;
  const isTheirs =
    (link === null || link === "on") && Boolean(next?.flags.has("generic") || next?.thing?.noun);
  const person = mark.senses.own.find(({ dimension }) => dimension === "person");
  const isPossessive = person !== undefined && mark.text === possessiveOf(person.value.toLowerCase());
  // "Mom and dad's pieces"
  const behind = marks[at + 1]?.senses.flags;
  const other =
    behind?.has("and") || behind?.has("or") ? items.find((each) => each.at === at + 2) : undefined;
  const isWithOther =
    other?.mark.senses.own.some(({ dimension }) => dimension === "person") && boughtIt(other, measure, parts);
  // "Who found better stuff, mom or dad"
  const isFound = measure === "profit" && (parts.cues.has("bought") || parts.cues.has("got"));
  return (
    isFound ||
    isWithOther ||
    isPossessive ||
    isTheirs ||
    isOf(at + 1) ||
    (isOf(at - 2) && marks[at - 1]?.senses.link === "by") ||
    isOf(at - 1)
  );
}

/** Whether "with" stands before an item, or before the traits that lead to it, and another item before that. */
function isWith(item: Item, { marks, items }: Parts): boolean {
  const at = marks.findLastIndex(({ text }, place) => place < item.at && text === "with");
  const isItem = (place: number): boolean => items.some((other) => other.at === place);
  const isLed = marks.slice(at + 1, item.at).every((_, index) => isItem(at + 1 + index));
  return at >= 0 && isLed && items.some((other) => other.at < at);
}

/** A person with no word before: who bought, or whom it was bought from, as the verb and the books have it. */
function personal(
  item: Item,
  { isBuying, isSelling }: { isBuying: boolean; isSelling: boolean },
): Narrower | null {
  const own = new Set(item.mark.senses.own.map(({ dimension }) => dimension));
  if (own.has("person") && !own.has("source") && !own.has("buyer")) return "person";
  if (isBuying && !isSelling)
    return own.has("source") && !own.has("buyer") && item.link === "from"
      ? "source"
      : own.has("person")
        ? "person"
        : "buyer";
  if (isSelling && own.has("buyer")) return "buyer";
  if (own.has("buyer") !== own.has("source")) return own.has("buyer") ? "buyer" : "source";
  return null;
}

/** The filters that the items of a question make under a measure, or the words that make none. */
export function narrowed(parts: Parts, measure: MeasureName, desk: Desk): Narrowing[] | Refusal {
  const found: { dimension: Narrower; value: string; item: Item }[] = [];
  for (const item of parts.items) {
    const dimension = dimensionOf(item, measure, parts);
    // "How much cash is tied up": money, where nothing is paid in one way or another.
    if (dimension === null && item.mark.text === "cash" && measures[measure].unit === "money") continue;
    if (dimension === null) return refusal(item.mark);
    const sort = dimension === "bought by" ? "person" : dimension;
    found.push({ dimension, value: candidates(item).get(sort)!, item });
  }
  const wrong = numberFault(found, desk);
  if (wrong) return wrong;
  const kept = found.filter(({ dimension, item }) => !isNameOfNumber(found, dimension, item));
  const mixed = mixedTrait(kept, parts);
  if (mixed) return refusal(mixed.mark);
  const narrowings: Narrowing[] = [];
  for (const { dimension, value, item } of kept) {
    const before = narrowings.find(
      ({ filter, item: other }) =>
        filter.dimension === dimension &&
        Boolean(filter.not) === item.not &&
        !isStacked(dimension, other, item, parts),
    );
    if (before && !isParted(parts, before.item, item)) {
      if (!before.filter.values.includes(value))
        before.filter = { ...before.filter, values: [...before.filter.values, value] };
    } else
      narrowings.push({
        filter: {
          dimension,
          values: [value],
          ...(item.not ? { not: true as const } : {}),
          ...nameOf(item, dimension),
        },
        item,
      });
  }
  return withCategories(narrowings, parts);
}

/** The days of something done as said. */
function nameOf({ mark }: Item, dimension: Narrower): Pick<Filter, "name"> {
  const name = mark.senses.own.find((own) => own.dimension === dimension)?.name;
  return name === undefined ? {} : { name };
}

/** "Tools and gas": a sort of spending beside a thing bought; either is meant. */
function withCategories(narrowings: Narrowing[], parts: Parts): Narrowing[] {
  const { marks } = parts;
  const of = (dimension: Dimension) =>
    narrowings.find(({ filter }) => filter.dimension === dimension && !filter.not);
  const [what, category] = [of("what"), of("category")];
  if (!what || !category || isParted(parts, what.item, category.item)) return narrowings;
  const [first, last] = [what.item.at, category.item.at].sort((a, b) => a - b) as [number, number];
  const isJoined = marks
    .slice(first + 1, last)
    .some(({ senses }) => senses.flags.has("and") || senses.flags.has("or"));
  if (!isJoined) return narrowings;
  what.filter = { ...what.filter, values: [...what.filter.values, ...category.filter.values] };
  return narrowings.filter((each) => each !== category);
}

/** "my sales": by whoever asks. */
export function mineOnly({ mine }: Parts, { me }: Desk): Filter[] {
  return mine === null || me === null ? [] : [{ dimension: "person", values: [`#${me}`] }];
}

/** "tall white dresser": both traits hold; "tall or white": either. */
function isStacked(dimension: Dimension, before: Item, item: Item, parts: Parts): boolean {
  if (dimension !== "trait") return false;
  return !parts.marks
    .slice(before.at + 1, item.at)
    .some(({ senses }) => senses.flags.has("or") || senses.flags.has("and"));
}

/** The two stand on different sides of "versus". */
function isParted(parts: Parts, before: Item, item: Item): boolean {
  return cutsOf(parts).some((cut) => before.at < cut && item.at > cut);
}

function isNameOfNumber(
  found: readonly { dimension: Narrower; item: Item }[],
  dimension: Narrower,
  item: Item,
): boolean {
  if (dimension !== "kind" && dimension !== "trait") return false;
  return found.some((other) => other.dimension === "piece" && Math.abs(other.item.at - item.at) <= 2);
}

/** A number that is not on the books, or is another piece than the one named with it. */
function numberFault(
  found: readonly { dimension: Narrower; value: string; item: Item }[],
  desk: Desk,
): Refusal | null {
  for (const { dimension, value, item } of found) {
    if (dimension !== "piece") continue;
    const piece = desk.books.pieces.get(Number(value));
    if (!piece)
      return { kind: "refused", words: [item.mark.typed], why: `There is no #${value} on the books.` };
    const named = found.find((other) => other.dimension === "kind" && Math.abs(other.item.at - item.at) <= 2);
    if (named && !isOfKind(piece, named.value))
      return {
        kind: "refused",
        words: [item.mark.typed],
        why: `#${value} is a ${piece.name}, no ${named.value}.`,
      };
  }
  return null;
}

/** A trait beside several kinds of one side: of which of them it is said, nobody can tell. */
function mixedTrait(
  found: readonly { dimension: Narrower; value: string; item: Item }[],
  parts: Parts,
): Item | null {
  const traits = found.filter(({ dimension }) => dimension === "trait");
  const isMixed = ({ item }: { item: Item }): boolean => {
    const near = found.filter(
      (other) =>
        other.dimension === "kind" &&
        !isParted(parts, other.item, item) &&
        !isParted(parts, item, other.item),
    );
    return new Set(near.map(({ value }) => value)).size > 1;
  };
  return traits.find(isMixed)?.item ?? null;
}
