import { has, isBought, isOfLoans, isOfOne, isStream, owns, type Turn } from "./beside.ts";

/*
 * Words of what is done, and of what the books hold nothing of: "how many were paid by check" were sold so.
 */

/** The turns of words for deeds, and for what nobody noted. */
export const DEED_TURNS: readonly Turn[] = [
  {
    // "Hourly on the ones listed on the board": which ones, and nothing asked of their listing
    of: /^(?:listed|posted|advertised)(?: on| at)?$/,
    when: ({ marks, at }) =>
      marks.slice(at + 1, at + 4).some((mark) => mark.senses.thing?.place || owns(mark, "place")) &&
      marks.some(
        (mark) =>
          has(mark, "hourly", "margin", "roi", "daysToSell", "sale", "reached", "earn", "takes") ||
          mark.senses.order === "best" ||
          mark.senses.order === "worst",
      ),
    as: { link: "at" },
  },
  {
    // "Which board sells faster", where one of them is called so
    of: /^boards?$/,
    when: ({ before }) => /^(?:which|what)$/.test(before?.text ?? ""),
    as: { group: "place" },
  },
  {
    // "Lamp money this year": what they made
    of: /^money$/,
    when: ({ marks, at, before }) =>
      before?.senses.thing?.noun !== undefined &&
      marks.every((mark, place) => place === at || has(mark, "fared") || mark.senses.cues.length === 0),
    as: { cues: ["earn"] },
  },
  {
    // "Money on hand": what is in the till stands in no book.
    of: /^on hand$/,
    when: ({ before }) => /^(?:money|cash)$/.test(before?.text ?? ""),
    as: { unknown: true },
  },
  {
    // "Projected profit": nothing that was made yet
    of: /^projects?$/,
    when: ({ mark }) => mark.typed === "projected",
    as: { unknown: true },
  },
  {
    // "How many flips to pay off the loan": what nobody can count yet
    of: /^(?:pay|pays|paying) (?:off|down)$/,
    when: ({ marks, before }) =>
      before?.text === "to" && has(marks[0], "howMany") && has(marks[1], "sold", "sale"),
    as: { unknown: true },
  },
  {
    // "My credit score": nothing that anybody found
    of: /^scored?$/,
    when: ({ mark, marks }) => mark.typed === "score" && !marks.some(({ text }) => /\b(?:i|we)\b/.test(text)),
    as: { unknown: true },
  },
  {
    // "How much gas does the truck use": what a tool takes is not in the books.
    of: /^uses?$/,
    when: ({ marks, before }) =>
      ((before && isBought(before)) || before?.senses.thing?.noun === undefined) &&
      marks.some(({ text }) => /^(?:did|does|do|will)$/.test(text)) &&
      !marks.some(({ text }) => /\b(?:i|we)\b/.test(text)),
    as: { unknown: true },
  },
  {
    // "When do i finish paying the loan"
    of: /^(?:do|will|am|would|can) (?:i|we) finish(?:ed)?$/,
    when: ({ marks }) => marks.some(isOfLoans),
    as: { cues: ["payoff"] },
  },
  {
    // "New listings", "new pieces bought": no trait of theirs
    of: /^new$/,
    when: ({ mark, next }) =>
      !owns(mark, "trait") &&
      (has(next, "listed", "bought", "purchases", "sale", "sold", "got") ||
        Boolean(next?.senses.flags.has("generic"))),
    as: { flags: ["filler"] },
  },
  {
    // "How many were paid by check", "how many got paid for in cash": what was sold so, where nobody of ours pays.
    of: /^(?:been |got |get )?paid(?: for)?$/,
    when: ({ marks, at }) =>
      has(marks[0], "howMany") &&
      marks.slice(at + 1, at + 4).some(({ senses }) => senses.thing?.method) &&
      !marks.some(
        (mark) => /\b(?:i|we)\b/.test(mark.text) || isBought(mark) || isStream(mark) || isOfLoans(mark),
      ) &&
      !marks.some((mark) => has(mark, "sold", "bought", "spent", "loanPaid", "notes", "purchases")),
    as: { cues: ["sold"] },
  },
  {
    // "Which lamp sold faster", of the lamps
    of: /^(?:(?:sells?|sold|moves?|moved|goes|went) )?(?:faster|quicker|sooner)$/,
    when: (beside) => isOfOne(beside) && !beside.marks.some(({ senses }) => senses.group),
    as: { order: "fastest", cues: ["daysToSell"] },
  },
  {
    of: /^(?:sells?|sold|took|takes?) (?:slower|longer)$/,
    when: (beside) => isOfOne(beside) && !beside.marks.some(({ senses }) => senses.group),
    as: { order: "slowest", cues: ["daysToSell"] },
  },
  {
    of: /^longer$/,
    when: (beside) => isOfOne(beside) && has(beside.before, "sat", "listed", "daysListed"),
    as: { order: "most", text: "longest" },
  },
];
