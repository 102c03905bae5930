import type { Mark } from "./marks.ts";
import type { Own } from "./phrases.ts";
import type { Cue } from "./words/cues.ts";

/*
 * "Bought in june and sold in july": of two things done to a piece, each with its days, the later is what is asked for
 * and the earlier narrows it, as one item that says when it was done.
 */

/** What is done to a piece in the order of its life, and what narrows by its days; the last of them never does. */
const DEEDS: readonly (readonly [Cue, Own["dimension"] | null])[] = [
  ["bought", "bought on"],
  ["got", "bought on"],
  ["started", "started on"],
  ["finished", "finished on"],
  ["listed", "listed on"],
  ...(["sold", "soldFor", "sale", "revenue", "gone", "kept", "given", "scrapped"] as const).map(
    (cue) => [cue, null] as const,
  ),
];

/** A deed with the days behind it, by their places; how far on in a piece's life it is. */
interface Dated {
  from: number;
  to: number;
  rank: number;
}

/** How far on in a piece's life a word is; -1 where it tells no deed. */
function rankOf({ senses }: Mark): number {
  if (senses.flags.has("generic")) return -1;
  const rank = DEEDS.findLastIndex(([cue]) => senses.cues.includes(cue));
  return rank >= 0 && DEEDS[rank]![1] === null ? DEEDS.length : rank;
}

function isIdle({ senses, period }: Mark): boolean {
  return (
    period === undefined &&
    (senses.flags.has("generic") ||
      (senses.cues.length === 0 && (senses.flags.has("filler") || senses.link !== undefined)))
  );
}

/** The deed that the days at a place are of: the word before them, with nothing told between. */
function datedAt(marks: readonly Mark[], to: number): Dated | null {
  const from = marks.findLastIndex((mark, at) => at < to && !isIdle(mark));
  const rank = from < 0 ? -1 : rankOf(marks[from]!);
  return rank < 0 ? null : { from, to, rank };
}

/** Whether nothing but "and", "or" or what compares stands between two places. */
function isJoined(marks: readonly Mark[], one: number, other: number): boolean {
  const between = marks.slice(Math.min(one, other) + 1, Math.max(one, other));
  return between.every(
    ({ senses }) =>
      senses.link !== undefined ||
      ["and", "or", "compare", "than", "filler"].some((flag) => senses.flags.has(flag as "and")),
  );
}

/** The words of a question, with each earlier deed and its days as one item. */
export function withLives(marks: readonly Mark[]): readonly Mark[] {
  const periods = marks.flatMap(({ period }, at) => (period && !period.moment ? [at] : []));
  if (periods.length === 1) return withBoth(marks, periods[0]!);
  if (periods.length < 2) return marks;
  const dated = periods.map((at) => ({ at, deed: datedAt(marks, at) }));
  const isLoose = ({ at, deed }: (typeof dated)[number]): boolean =>
    deed === null && dated.some((other) => other.at !== at && isJoined(marks, at, other.at));
  if (dated.some(isLoose)) return marks;
  const last = Math.max(...dated.map(({ deed }) => deed?.rank ?? DEEDS.length));
  const early = dated.flatMap(({ deed }) => (deed && deed.rank < last ? [deed] : []));
  return early.reduceRight((all, deed) => asItem(all, deed), marks);
}

/** "Pieces bought and sold in october": both were done in those days. */
function withBoth(marks: readonly Mark[], days: number): readonly Mark[] {
  const later = marks.findLastIndex((mark, at) => at < days && !isIdle(mark));
  const earlier = later - 2;
  if (earlier < 1 || !marks[later - 1]!.senses.flags.has("and")) return marks;
  const [from, rank] = [earlier, rankOf(marks[earlier]!)];
  const of = marks
    .slice(0, from)
    .findLast(({ text }) => !/^(?:that|which|i|we|both|ive|weve|were|i have|we have)$/.test(text));
  const isOfThem =
    of?.senses.thing?.plural || (of?.senses.flags.has("generic") && !/\b(?:i|we)\b/.test(of.text));
  if (!isOfThem || rank < 0 || rank >= rankOf(marks[later]!)) return marks;
  const deed: Mark = { ...marks[from]!, period: marks[days]!.period! };
  return asItem([...marks.slice(0, from), deed, ...marks.slice(later)], { from, to: from, rank });
}

/** A deed and its days as one mark; an "and" beside it joins nothing any more. */
function asItem(marks: readonly Mark[], { from, to, rank }: Dated): readonly Mark[] {
  const told = marks.slice(from, to + 1);
  const { from: first, to: end, name } = marks[to]!.period!;
  const text = told.map((mark) => mark.text).join(" ");
  const own: Own = { dimension: DEEDS[rank]![1]!, value: `${first ?? ""}..${end ?? ""}`, name };
  const item: Mark = {
    at: told[0]!.at,
    words: told.reduce((sum, { words }) => sum + words, 0),
    typed: told.map(({ typed }) => typed).join(" "),
    text,
    senses: { cues: [], flags: new Set(), own: [own] },
  };
  const isAnd = (mark: Mark | undefined): boolean => mark?.senses.flags.has("and") === true;
  const before = marks.slice(0, isAnd(marks[from - 1]) ? from - 1 : from);
  const behind = marks.slice(isAnd(marks[to + 1]) ? to + 2 : to + 1);
  // "Bought stuff in june" speaks of pieces all the same.
  return [...before, ...told.filter(({ senses }) => senses.flags.has("generic")), item, ...behind];
}
