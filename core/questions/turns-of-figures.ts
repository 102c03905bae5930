import { has, type Turn } from "./beside.ts";
import type { Mark } from "./marks.ts";

/*
 * Words of figures that mean something else beside certain others: "how much do i come down, percent" names the unit.
 */

const isOfPercent = (mark: Mark): boolean => has(mark, "comeDown", "reached", "firstAsked");

/** The turns of words that tell how a figure is wanted. */
export const FIGURE_TURNS: readonly Turn[] = [
  {
    // "How much do i come down on average, percent": told in percent anyway
    of: /^(?:(?:in )?(?:percent|percentage|pct)|percent wise)$/,
    when: ({ marks }) => marks.some(isOfPercent),
    as: { flags: ["filler"] },
  },
  {
    // "Profit share by kind", "percent by source"
    of: /^(?:shares?|percent|percentage|pct)$/,
    when: ({ next }) => Boolean(next?.senses.flags.has("parted")),
    as: { cues: ["share"] },
  },
  {
    // "Did i get many tips": whether there were any
    of: /^(?:many|much)$/,
    when: ({ marks, at, first }) =>
      /^(?:did|do|have|has|was|were|is|are|any)$/.test(first) &&
      !marks.slice(0, at).some(({ text }) => /\bhow$/.test(text)),
    as: { flags: ["filler"] },
  },
  {
    // "Did the hutch have a deposit": ever, and not now
    of: /^deposits?$/,
    when: ({ marks, first }) =>
      /^(?:did|was|were|had)$/.test(first) &&
      marks.some(({ number, senses }) => number !== undefined || senses.thing?.noun !== undefined),
    as: { cues: ["hadDeposit"] },
  },
  {
    // "Sold for its asking price": for no less
    of: /^(?:asking|asking price|list price|list)$/,
    when: ({ marks, at }) => {
      const before = marks.slice(0, at).findLast(({ text }) => !/^(?:the|its|their|my|his|her)$/.test(text));
      return has(before, "soldFor") || / for$/.test(before?.text ?? "");
    },
    as: { cues: ["fullPrice"] },
  },
];
