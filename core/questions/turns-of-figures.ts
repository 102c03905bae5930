import { has, isOfLoans, isSomebody, isStream, owns, type Turn } from "./beside.ts";
import type { Mark } from "./marks.ts";
import { possessiveOf } from "./phrases.ts";

/*
 * Words of figures that mean something else beside certain others: "how much do i come down, percent" names the unit.
 */

const isOfPercent = (mark: Mark): boolean => has(mark, "comeDown", "reached", "firstAsked", "share");

/** The turns of words that tell how a figure is wanted. */
export const FIGURE_TURNS: readonly Turn[] = [
  {
    // "What fees came out of #18"
    of: /^(?:(?:came|come|comes|taken) out(?: of)?|taken|taken on|charged|charged on)$/,
    when: ({ marks }) => marks.some((mark) => has(mark, "fees")),
    as: { flags: ["filler"] },
  },
  {
    // "The neighbor's kid" is neither of them.
    of: /./,
    when: ({ mark, before }) =>
      mark.senses.thing?.person === true &&
      /s$/.test(before?.text ?? "") &&
      (before?.senses.own.some(
        ({ dimension, value }) =>
          (dimension === "buyer" || dimension === "person" || dimension === "source") &&
          possessiveOf(value.toLowerCase()) === before.text,
      ) ??
        false),
    as: { unknown: true },
  },
  {
    // "Double october's profit" is no double piece.
    of: /^(?:double|triple|half|twice)$/,
    when: ({ next }) => next?.period !== undefined,
    as: { unknown: true },
  },
  {
    // "How much interest did the van charge", "the biggest discount i gave"
    of: /^(?:charges?|charged|(?:i |we )?(?:gave|give))$/,
    when: ({ marks, mark }) =>
      marks.some((other) =>
        /^charg/.test(mark.text) ? has(other, "interest") : has(other, "comeDown", "refunds"),
      ),
    as: { flags: ["filler"] },
  },
  {
    // "How many sales did i make"
    of: /^ma(?:ke|de)$/,
    when: ({ marks, before }) =>
      /\b(?:i|we)$/.test(before?.text ?? "") &&
      marks.some((mark) => has(mark, "howMany")) &&
      marks.some((mark) => has(mark, "sale")),
    as: { flags: ["filler"] },
  },
  {
    // "What did the neighbor cough up for the trunk": the buyer paid
    of: /^(?:cough|coughed|fork|forked|shell|shelled|dish|dished|pony|ponied) (?:up|over|out)(?: for)?$/,
    when: ({ before }) => owns(before, "buyer"),
    as: { cues: ["paid"] },
  },
  {
    // "What's owed on the van"
    of: /^(?:still )?(?:owed|owing|outstanding|unpaid)(?: on)?$/,
    when: ({ marks }) => marks.some((mark) => owns(mark, "loan") || isOfLoans(mark)),
    as: { cues: ["owe"] },
  },
  {
    // "How much to pay off the van": what is left
    of: /^(?:to )?pay off$/,
    when: ({ marks, before, mark }) =>
      (/(?:^| )to$/.test(before?.text ?? "") || mark.text.startsWith("to ")) &&
      /^how much\b/.test(marks[0]?.text ?? "") &&
      !marks.some(
        ({ amount, period, senses }) =>
          amount !== undefined || period !== undefined || senses.group === "month",
      ) &&
      marks.some((other) => owns(other, "loan") || isOfLoans(other)),
    as: { cues: ["owe"] },
  },
  {
    // "Dad's buys": the pieces
    of: /^(?:buys|purchases|pickups|scores|hauls)$/,
    when: ({ before }) => owns(before, "person"),
    as: { flags: ["generic"] },
  },
  {
    // "How many has the landlord taken"
    of: /^taken$/,
    when: ({ before }) => owns(before, "buyer"),
    as: { cues: ["took"] },
  },
  {
    // "Did thrift stores pay off": no loan, but what came of them
    of: /^pa(?:y|id|ys|ying) off$/,
    when: ({ marks }) =>
      !marks.some((mark) => owns(mark, "loan") || isOfLoans(mark)) &&
      marks.some((mark) => owns(mark, "source") || mark.senses.thing?.noun !== undefined),
    as: { cues: ["earn"] },
  },
  {
    // "Total haul from the landlord"
    of: /^(?:haul|take|total haul|total take)$/,
    when: ({ marks }) => marks.some((mark) => owns(mark, "buyer")),
    as: { cues: ["revenue"] },
  },
  {
    // "Which ones did i fix up in august": what was done
    of: /^(?:fix|fixed)(?: up)?$/,
    when: ({ before, marks, mark }) =>
      /\b(?:did|have) (?:i|we)$/.test(before?.text ?? "") &&
      !marks.some((other) => other !== mark && has(other, "money", "spent")),
    as: { cues: ["finished"] },
  },
  {
    // "Busiest month for hours": by those
    of: /^(?:the )?busiest$/,
    when: ({ marks }) =>
      marks.some((mark) => has(mark, "minutes", "miles", "bought", "listed", "finished", "income")),
    as: { order: "most" },
  },
  {
    // "Labor cost" is no hours.
    of: /^labou?r$/,
    when: ({ next }) => has(next, "cost", "spent", "money"),
    as: { unknown: true },
  },
  {
    // "Cash i handed over buying pieces": what we paid
    of: /^(?:has |have )?handed over(?: so far)?$/,
    when: ({ before }) => /(?:^| )(?:i|we|ive|weve)$/.test(before?.text ?? ""),
    as: { cues: ["paid"] },
  },
  {
    // "What did oak bring in, before costs": what came in
    of: /^before (?:costs|expenses|fees|anything|tax|taxes|all costs|any costs)$/,
    when: ({ marks }) => marks.some((mark) => has(mark, "revenue", "sale", "soldFor")),
    as: { flags: ["filler"] },
  },
  {
    // "If i did 450 a month on it"
    of: /^(?:i )?(?:did|do|doing|went with|go with|went to|go to)$/,
    when: ({ marks, next }) =>
      next?.amount !== undefined && marks.some((mark) => owns(mark, "loan") || isOfLoans(mark)),
    as: { cues: ["loanPaid"] },
  },
  {
    // "How much of october's money was card": of what came in
    of: /^money$/,
    when: ({ marks, before }) =>
      (before?.period !== undefined || /(?:^| )(?:my|our|the)$/.test(before?.text ?? "")) &&
      marks.some(({ text }, at) => /^how much\b/.test(text) && /^of\b/.test(marks[at + 1]?.text ?? "")) &&
      marks.some(({ senses }) => senses.thing?.method !== undefined),
    as: { cues: ["revenue"] },
  },
  {
    // "This time last month" is no whole month.
    of: /^time$/,
    when: ({ before, next }) =>
      /\b(?:this|same|that)$/.test(before?.text ?? "") && next?.period !== undefined,
    as: { unknown: true },
  },
  {
    // "The biggest payment i made"
    of: /^payments?$/,
    when: ({ marks, before, at }) =>
      before?.senses.order !== undefined && /^(?:i|we|ive|weve|that i)\b/.test(marks[at + 1]?.text ?? ""),
    as: { cues: ["loanPaid"] },
  },
  {
    // "The piece i have the most money in": by what is in it
    of: /^money$/,
    when: ({ marks, at, before, next }) =>
      before?.senses.order !== undefined &&
      /^(?:in|into|in it)$/.test(next?.text ?? "") &&
      at === marks.length - 2,
    as: { cues: ["cost"] },
  },
  {
    // "What did i lose to fees", "lost to refunds": what went for them
    of: /^(?:lose|lost|losing|loss|eaten|ate|eat)(?: to| in)?$/,
    when: ({ marks }) => marks.some((mark) => has(mark, "fees", "refunds")),
    as: { cues: ["cost"] },
  },
  {
    // "How many did i wrap up": done, where "wrap up of june" sums it up
    of: /^wrap(?:ped)? up$/,
    when: ({ before, marks }) =>
      /\b(?:i|we|dad|mom)$/.test(before?.text ?? "") || marks.some((mark) => has(mark, "howMany")),
    as: { cues: ["finished"] },
  },
  {
    // "No gas, no storage, what else did i spend"
    of: /^else$/,
    when: ({ marks, before }) =>
      /\b(?:what|whats|anything|much)$/.test(before?.text ?? "") &&
      marks.some(({ senses }) => senses.flags.has("negation")),
    as: { flags: ["filler"] },
  },
  {
    // "Margin on the trunk in dollars"
    of: /^(?:profit )?margins?$/,
    when: ({ marks }) => marks.some(({ text }) => /^in (?:dollars|money|usd)$/.test(text)),
    as: { cues: ["earn"] },
  },
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
    // "Is the vanity up": listed
    of: /^up$/,
    // "How many did i finish up": no listing
    when: ({ marks, at, first, before }) =>
      !/\b(?:finish|wrap|pick|fix|clean|do|done|sand|paint|buy|bought|sell|sold|use|end|set|hold|tie|eat|add|scoop|snap)\w*$/.test(
        before?.text ?? "",
      ) &&
      (/^(?:is|are|isnt|arent|any|anything|whats|what|which)$/.test(first) ||
        marks.some((mark) => has(mark, "howMany")) ||
        marks.slice(0, at).some(({ senses }) => senses.order !== undefined)) &&
      !marks.some((mark) =>
        has(mark, "daysListed", "sat", "spent", "sale", "earn", "net", "revenue", "fees"),
      ) &&
      marks.slice(at + 1).every(({ senses, period }) => period !== undefined || senses.flags.has("filler")),
    as: { cues: ["listed"] },
  },
  {
    // "How many days was the trunk up for"
    of: /^up(?: for)?$/,
    when: ({ marks }) => marks.some((mark) => has(mark, "howLong", "inDays")),
    as: { cues: ["daysListed"] },
  },
  {
    // "The most i ever got in tips"
    of: /^got in$/,
    when: ({ next }) => isStream(next),
    as: { cues: ["got"] },
  },
  {
    // "Which source gives the best hourly"
    of: /^gives?$/,
    when: ({ marks, at }) => marks.slice(at + 1).some((mark) => has(mark, "hourly", "earn", "net")),
    as: { flags: ["filler"] },
  },
  {
    // "If school gets 300 a month"
    of: /^(?:gets?|got)$/,
    when: ({ marks, at, next }) =>
      next?.amount !== undefined && marks.slice(0, at).some((mark) => owns(mark, "loan") || isOfLoans(mark)),
    as: { cues: ["loanPaid"] },
  },
  {
    // "The longest time on the board"
    of: /^time$/,
    when: ({ marks, at, before }) =>
      /\b(?:longest|shortest)$/.test(before?.text ?? "") &&
      marks.slice(at + 1).some((mark) => owns(mark, "place")),
    as: { cues: ["daysListed"] },
  },
  {
    // "Did i get paid for the dresser": whether it is paid
    of: /^paid for$/,
    when: ({ before, first }) =>
      /^(?:did|have|has)$/.test(first) && /\b(?:get|got|gotten)$/.test(before?.text ?? ""),
    as: { cues: ["paidUp"] },
  },
  {
    // "What came in the door moneywise": money, and no piece
    of: /^(?:came|come|comes) (?:in|into) (?:in )?the (?:door|shop)$/,
    when: ({ marks }) => marks.some((mark) => has(mark, "money")),
    as: { cues: ["revenue"] },
  },
  {
    // "Which kind pays the best"
    of: /^pays?$/,
    when: ({ marks, at }) =>
      marks.slice(at + 1, at + 4).some(({ senses }) => senses.order === "best" || senses.order === "worst") &&
      !marks.some(isSomebody),
    as: { cues: ["earn"] },
  },
  {
    // "My unsold stuff is worth what"
    of: /^worth$/,
    when: ({ marks }) =>
      marks.some((mark) => has(mark, "unsold")) && !marks.some(({ number }) => number !== undefined),
    as: { cues: ["tiedUp"] },
  },
  {
    // "The biggest sale ive had"
    of: /^(?:ive had|weve had|i had|we had|have i had|had|i ever had)$/,
    when: ({ marks, at }) =>
      marks.slice(0, at).some(({ senses }) => senses.order !== undefined) &&
      marks.slice(0, at).some((mark) => has(mark, "sale", "sold", "earn")) &&
      !marks.some((mark) => has(mark, "howLong")),
    as: { flags: ["filler"] },
  },
  {
    // "If i toss 100 extra at the loans"
    of: /^(?:toss|tossing|tossed|dump|dumping|dumped|fling|flung|slap|shove|shovel|chip in|kick in|drop|burn)$/,
    when: ({ marks, at }) =>
      marks.slice(at + 1).some(({ amount }) => amount !== undefined) && marks.some(isOfLoans),
    as: { cues: ["loanPaid"] },
  },
  {
    // "How many did the landlord take"
    of: /^takes?$/,
    when: ({ marks, at }) =>
      marks.slice(Math.max(0, at - 3), at).some((mark) => owns(mark, "buyer")) &&
      !marks.some((mark) => has(mark, "howLong")),
    as: { cues: ["took"] },
  },
  {
    // "Best day of the week to sell"
    of: /^to sell$/,
    when: ({ marks, at }) =>
      at === marks.length - 1 &&
      marks.slice(0, at).some(({ senses }) => senses.order !== undefined) &&
      marks.slice(0, at).some(({ senses }) => senses.group !== undefined && senses.group !== "kind"),
    as: { cues: ["sold"] },
  },
  {
    // "Which loan has the higher rate"
    of: /^(?:higher|bigger)$/,
    when: ({ marks }) => marks.some((mark) => has(mark, "rate")) && marks.some(isOfLoans),
    as: { order: "most" },
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
