import { has, isSomebody, isStream, type Turn } from "./beside.ts";

/*
 * Words of sums and counts that mean something else beside certain others: "the profit number" counts nothing.
 */

/** The turns of words that count or add up. */
export const SUM_TURNS: readonly Turn[] = [
  {
    // "The profit number": the figure, where "the number of chairs" counts them
    of: /^(?:numbers?|figures?|amounts?|sums?)$/,
    when: ({ before }) =>
      has(before, "earn", "net", "spent", "cost", "revenue", "fees", "hourly", "tiedUp", "interest"),
    as: { flags: ["filler"] },
  },
  {
    // "How many workshops did i teach"
    of: /^(?:teach|taught|teaching|run|ran|gave|give|given|lead|led|host|hosted|hold|held)$/,
    // "Tips i gave" went out.
    when: ({ marks, mark }) =>
      marks.some(isStream) && !(/^g/.test(mark.text) && marks.some(({ text }) => /^tips?$/.test(text))),
    as: { flags: ["filler"] },
  },
  {
    // "The tally for the year, profit": a sum of money
    of: /^(?:the )?tally(?: of)?$/,
    when: ({ marks }) =>
      marks.some((mark) =>
        has(mark, "earn", "net", "spent", "cost", "revenue", "sale", "fees", "income", "money"),
      ),
    as: { cues: ["total"] },
  },
  {
    // "Did i eat", "who ate more": no money, where nothing says what went
    of: /^(?:eat|ate|eaten)$/,
    when: ({ marks, mark }) =>
      !marks.some(
        (other) =>
          other !== mark &&
          (has(other, "fees", "refunds", "money", "interest") ||
            (other.senses.thing ?? other.senses.own[0]) !== undefined) &&
          !isSomebody(other),
      ),
    as: { unknown: true },
  },
  {
    // "How many got lost"
    of: /^lost$/,
    when: ({ before }) => /\b(?:got|get|getting|gotten)$/.test(before?.text ?? ""),
    as: { unknown: true },
  },
  {
    // "How many did i get done": finished, where "what did i get done" asks for all
    of: /^(?:(?:did|have|has) (?:i|we) )?(?:get|got|gotten) done$/,
    when: ({ marks }) => marks.some((mark) => has(mark, "howMany")),
    as: { cues: ["finished"] },
  },
  {
    // "How many did i finish up"
    of: /^up$/,
    when: ({ before }) => has(before, "finished"),
    as: { flags: ["filler"] },
  },
];
