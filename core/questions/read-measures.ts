import type { Answered } from "./answered.ts";
import { printedValue } from "./answered.ts";
import type { Desk } from "./desk.ts";
import { featuresOf } from "./features.ts";
import type { Mark } from "./marks.ts";
import { measures } from "./measures.ts";
import { asksFigure, type Parts } from "./parts.ts";
import type { Period, Query } from "./query.ts";
import { readQuery } from "./read.ts";
import { HAPPENED } from "./rule.ts";
import { runQuery } from "./run.ts";
import { isOwnersQuery } from "./sight.ts";
import { partsOf } from "./sorting.ts";
import { percentOf } from "./subjects.ts";
import { capital, periodWords, titleOf } from "./titles.ts";
import { showValue } from "./words-of-answers.ts";

/*
 * Two figures beside each other that are measured in the same unit: "spent versus brought in in october", "did i spend
 * more than i made". Each side is read as a question of its own; the days are those of both.
 */

/** Two measures side by side. */
export interface MeasuresQuestion {
  kind: "measures";
  sides: readonly [Query, Query];
  yesNo: boolean;
  isLess: boolean;
  /** "Fees as a percent of sales": the one in percent of the other. */
  isRatio?: true;
}

/** A side as a query, with the days of the other one where it has none of its own. */
function sideOf(marks: readonly Mark[], days: readonly Mark[], desk: Desk): Query | null {
  const own = marks.filter(
    ({ senses, text }) => !senses.flags.has("comparing") && !/^(?:did|do|difference)$/.test(text),
  );
  // "Sales vs may": days alone are no figure.
  const isDays = own.every(
    ({ period, senses }) => period !== undefined || senses.link !== undefined || senses.flags.has("filler"),
  );
  if (isDays) return null;
  const parts = partsOf(own.some(({ period }) => period) ? own : [...own, ...days]);
  const plain = { ...parts, yesNo: false };
  const read = readQuery(plain, featuresOf(plain), desk) ?? countOf(parts, desk);
  if (!read || "kind" in read) return null;
  const isPlain =
    !read.by && !read.order && !read.list && read.beside.length === 0 && !read.share && !read.tally;
  const period: Period | null = parts.periods.length > 0 ? read.period : null;
  return isPlain ? { ...read, period, yesNo: false } : null;
}

const HOW_MANY: Mark = {
  at: 0,
  words: 1,
  typed: "how many",
  text: "how many",
  senses: { cues: ["howMany"], flags: new Set(), own: [] },
};

/** "Bought versus sold": where no money is said, so many pieces. */
function countOf({ marks, cues }: Parts, desk: Desk): ReturnType<typeof readQuery> {
  if (![...cues.keys()].every((cue) => HAPPENED.includes(cue))) return null;
  const counted = partsOf([HOW_MANY, ...marks]);
  return readQuery(counted, featuresOf(counted), desk);
}

/** Both sides of a comparison of measures; null where it is none, or where one side alone is narrowed. */
export function readMeasures(parts: Parts, desk: Desk): MeasuresQuestion | null {
  const { marks, besideAt, periods, unknown, adrift } = parts;
  const [cut, more] = besideAt;
  if (cut === undefined || more !== undefined || unknown.length > 0 || adrift) return null;
  const days = periods.map(({ at }) => marks[at]!);
  if (days.length > 1) return null;
  const first = sideOf(marks.slice(0, cut), days, desk);
  const second = sideOf(marks.slice(cut + 1), days, desk);
  if (!first || !second) return null;
  const isSame = first.measure === second.measure && first.counted === second.counted;
  const isMixed = measures[first.measure].unit !== measures[second.measure].unit;
  // "Spent versus made on dressers": whether the first is of dressers too, nobody can tell.
  const isUneven = (first.filters.length === 0) !== (second.filters.length === 0);
  const isOfOne = isOfLoans(first, second);
  if (isSame || isMixed || (isUneven && !isOfOne && !isOfBuys(first, second))) return null;
  const sides =
    isUneven && isOfOne
      ? [first, second].map((side) => ({ ...side, filters: [...first.filters, ...second.filters] }))
      : [first, second];
  const isLess = marks.some(({ text }) => /\b(?:less|fewer|lower|smaller)\b/.test(text));
  return {
    kind: "measures",
    sides: sides as [Query, Query],
    yesNo: parts.yesNo && !asksFigure(parts),
    isLess,
    ...(marks.some(({ text }) => text === "ratio of") ? { isRatio: true as const } : {}),
  };
}

/** "Interest vs principal on the car": a loan that is named is that of both. */
function isOfLoans(...sides: readonly Query[]): boolean {
  return sides.every(({ filters }) => filters.every(({ dimension }) => dimension === "loan"));
}

/** "Sales vs gas": what was bought narrows nothing but what was spent. */
function isOfBuys(...sides: readonly Query[]): boolean {
  return sides.every(({ filters }) =>
    filters.every(({ dimension }) => /^(?:what|category)$/.test(dimension)),
  );
}

/** The two figures and their difference, first less second. */
export function answerMeasures(desk: Desk, { sides, yesNo, isLess, isRatio }: MeasuresQuestion): Answered {
  const { unit } = measures[sides[0].measure];
  const rows = sides.map((query) => ({ label: titleOf(query), value: runQuery(desk, query).value }));
  const [first, second] = rows.map(({ value }) => Number(value ?? 0)) as [number, number];
  const percent = isRatio && second > 0 ? percentOf(first, second) : null;
  const isMore = isLess ? first < second : first > second;
  const { period } = sides[0];
  const said = yesNo ? (isMore ? "Yes. " : "No. ") : "";
  return {
    understood: true,
    value: isRatio ? printedValue(percent, "percent") : printedValue(first - second, unit),
    rows: rows.map(({ label, value }) => ({ label: label.toLowerCase(), value: printedValue(value, unit) })),
    period: period ? { from: period.from, to: period.to } : null,
    isOwners: sides.some(isOwnersQuery),
    text: [
      `${said}${capital(rows.map(({ label }) => label.toLowerCase()).join(" against "))}, ${periodWords(sides[0], desk.today)}: ${isRatio ? showValue(percent, "percent") : `difference ${showValue(first - second, unit)}`}`,
      ...rows.map(({ label, value }) => `  ${label}: ${showValue(value, unit)}`),
    ].join("\n"),
  };
}
