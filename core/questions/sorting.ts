import type { Mark } from "./marks.ts";
import type { Building, Item, Parts } from "./parts.ts";
import { Sorter } from "./sorter.ts";
import type { Cue } from "./words/cues.ts";

const AUXILIARIES: ReadonlySet<string> = new Set(
  "is are was were am do does did has have had can could will would should any isnt arent wasnt werent dont doesnt didnt hasnt havent".split(
    " ",
  ),
);
const OPENERS: ReadonlySet<string> = new Set(
  "hey hi hello yo ok okay so and well um uh hm hmm oh please pls also but then bot now".split(" "),
);

/** "Sell faster" asks to compare as "faster" does. */
const COMPARED = / (?:faster|slower|quicker|sooner|better|worse)$|\blonger to sell$/;

/** Sorts the marks of a question. */
export function partsOf(said: readonly Mark[]): Parts {
  const marks = said.map((_, at) => meantBeside(said, at));
  const parts: Building = {
    marks: [...marks],
    cues: new Map(),
    items: [],
    periods: [],
    groups: [],
    orders: [],
    limits: [],
    amounts: [],
    besideAt: [],
    orAt: [],
    andAt: [],
    comparing: marks.some(({ senses, text }) => senses.flags.has("comparing") || COMPARED.test(text)),
    mine: null,
    eachItem: false,
    perMile: null,
    leads: [],
    notCues: [],
    unknown: [],
    adrift: null,
    yesNo: false,
    first: firstOf(marks),
    said: marks.map(({ text }) => text).join(" "),
  };
  parts.yesNo = AUXILIARIES.has(parts.first);
  const sorter = new Sorter(marks, parts);
  for (let at = 0; at < marks.length; at = sorter.take(at));
  sorter.end();
  // "Anything sold this month" asks whether, "anything over 100" asks which.
  if (/^any(?:thing|one|body)$/.test(parts.first) && parts.limits.length === 0) parts.yesNo = true;
  for (const item of parts.items) if (isActing(item, marks)) item.acting = true;
  return parts;
}

/** What may be counted of pieces. */
const OF_COUNTS: readonly Cue[] = ["bought", "sold", "finished", "listed", "unsold"];

/** What is done to pieces. */
const OF_DEEDS: readonly Cue[] = [
  "sold",
  "finished",
  "listed",
  "started",
  "returned",
  "kept",
  "given",
  "scrapped",
  "traded",
];

/** A mark as the ones beside it have it. */
function meantBeside(marks: readonly Mark[], at: number): Mark {
  const mark = marks[at]!;
  const { senses } = mark;
  // "Sold for cash" is no price.
  if (senses.cues.includes("soldFor") && marks[at + 1]?.senses.thing?.method !== undefined)
    return { ...mark, senses: { ...senses, cues: ["sold"] } };
  // "Does oak pay": what it brings, where nobody of ours pays.
  const isPaying = /^pays?$/.test(mark.text) && at === marks.length - 1;
  const isSomebody = ({ text, senses }: Mark): boolean =>
    /\b(?:i|we|who|how|people|buyers?)\b/.test(text) ||
    senses.own.some(({ dimension }) => dimension === "buyer" || dimension === "person");
  if (isPaying && !marks.some(isSomebody))
    return { ...mark, senses: { cues: ["earn"], flags: new Set(), own: [] } };
  // "Is #22 paid for", "has the desk been paid"
  const isOfPiece = marks.some((each) => each.number !== undefined || each.senses.thing?.noun !== undefined);
  const isState = /^(?:been )?paid(?: for)?$/.test(mark.text) && at === marks.length - 1 && isOfPiece;
  if (
    isState &&
    /^(?:is|are|was|has|have|isnt|hasnt)$/.test(firstOf(marks)) &&
    !marks.some(({ text }) => /\b(?:i|we)\b/.test(text))
  )
    return { ...mark, senses: { cues: ["paidUp"], flags: new Set(), own: [] } };
  // "The last truck payment", "payments to the truck" went to the loan of that name.
  const isLoan = (mark: Mark | undefined): boolean =>
    mark?.senses.own.some(({ dimension }) => dimension === "loan") ?? false;
  const isLed = /^(?:to|on|for)/.test(marks[at + 1]?.text ?? "") && marks.slice(at + 1, at + 4).some(isLoan);
  if ((isLoan(marks[at - 1]) || isLed) && /^payments?$/.test(mark.text))
    return { ...mark, senses: { cues: ["loanPaid"], flags: new Set(), own: [] } };
  // "How much has gas run since august"
  const isBought = ({ senses }: Mark): boolean =>
    senses.thing?.supply !== undefined || senses.own.some(({ dimension }) => dimension === "what");
  const isRunning = /^runs?$/.test(mark.text) && marks.slice(0, at).some(isBought);
  if (isRunning && !marks.slice(at + 1).some(({ senses }) => senses.thing))
    return { ...mark, unknown: undefined, senses: { cues: ["spent"], flags: new Set(), own: [] } } as Mark;
  // "Total chairs bought": how many.
  const next = marks[at + 1]?.senses;
  const isMany = Boolean(next?.thing?.plural || (next?.flags.has("generic") && !next.flags.has("filler")));
  const isDone = marks.some(({ senses }) => senses.cues.some((cue) => OF_COUNTS.includes(cue)));
  if (mark.text === "total" && isMany && isDone)
    return { ...mark, senses: { cues: ["howMany"], flags: new Set(), own: [] } };
  // "Total sold to the nurse" is what she paid.
  const isTo = /^to\b/.test(marks[at + 1]?.text ?? "") && marks.slice(at + 2, at + 4).some(isBuyer);
  if (mark.text === "total sold" && isTo)
    return { ...mark, senses: { cues: ["total", "sold"], flags: new Set(), own: [] } };
  // "Double my payment": no double dresser.
  const isOfPayments = marks.slice(at + 1, at + 6).some(({ senses }) => senses.cues.includes("paid"));
  if (/^(?:double|triple)$/.test(mark.text) && isOfPayments)
    return { ...mark, senses: { cues: [], flags: new Set(["filler"]), own: [] } };
  // "Both loans": all of them, as long as there are two.
  if (mark.text === "both" && marks.slice(at + 1, at + 4).some(isOfLoans))
    return { ...mark, senses: { cues: [], flags: new Set(["filler"]), own: [] } };
  // "Top kinds by number sold", "months by pieces sold": by how many.
  const isCounted = marks[at + 1]?.senses.cues.some((cue) => OF_COUNTS.includes(cue));
  const isBy = marks[at - 1]?.senses.flags.has("parted") && /^(?:pieces|items|things|units)$/.test(mark.text);
  if ((mark.text === "number" || isBy) && isCounted)
    return { ...mark, senses: { cues: ["howMany"], flags: new Set(), own: [] } };
  // "Which dressers have sold" asks for what was done, and not for what there is.
  const behind = marks
    .slice(at + 1)
    .find(({ senses }) => !senses.flags.has("filler") || senses.cues.length > 0);
  if (/^(?:have|has)$/.test(mark.text) && behind?.senses.cues.some((cue) => OF_DEEDS.includes(cue)))
    return { ...mark, senses: { cues: [], flags: new Set(["filler"]), own: [] } };
  if (
    mark.text === "been listed" &&
    /^(?:which|what)$/.test(firstOf(marks)) &&
    !marks.some(({ senses }) => senses.order)
  )
    return { ...mark, senses: { cues: ["listed"], flags: new Set(), own: [] } };
  // "Do dressers take longer than lamps to sell"
  const isTaking2 =
    marks.some(({ text }) => text === "longer than") &&
    marks.some(({ senses }) => senses.cues.includes("takes"));
  if (mark.text === "to sell" && isTaking2)
    return { ...mark, senses: { cues: ["daysToSell"], flags: new Set(), own: [] } };
  // "Which lamp made more" looks for the one that made the most.
  const isLast = marks
    .slice(at + 1)
    .every(({ period, senses }) => period !== undefined || senses.link !== undefined);
  const isOfTwo = marks.some(
    ({ senses }) =>
      senses.flags.has("or") ||
      senses.flags.has("and") ||
      senses.flags.has("compare") ||
      senses.flags.has("than"),
  );
  if (/^(?:more|less)$/.test(mark.text) && isLast && !isOfTwo && /^(?:which|who)$/.test(firstOf(marks)))
    return {
      ...mark,
      senses: { cues: [], flags: new Set(), own: [], order: mark.text === "more" ? "most" : "least" },
    };
  // "What did the bank say": no winnings.
  if (mark.text === "bank" && /(?:^| )(?:the|my|our)$/.test(marks[at - 1]?.text ?? ""))
    return { ...mark, unknown: true, senses: { cues: [], flags: new Set(), own: [] } };
  // "Hey bot" asks nothing, "how many did the robot sell" asks for what nobody knows.
  if (/^(?:ro)?bot$/.test(mark.text) && /(?:^| )(?:the|a|my|our)$/.test(marks[at - 1]?.text ?? ""))
    return { ...mark, unknown: true, senses: { cues: [], flags: new Set(), own: [] } };
  // "Dressers minus desks": one beside the other, since no dresser is a desk.
  const isKind = (each: Mark | undefined): boolean => each?.senses.thing?.noun !== undefined;
  if (mark.text === "minus" && isKind(marks[at - 1]) && isKind(marks[at + 1]))
    return { ...mark, senses: { cues: [], flags: new Set(["compare"]), own: [] } };
  // "For a piece" means no average.
  if (mark.text === "a piece" && / (?:for|on|of|from)$|^(?:for|on|of|from)$/.test(marks[at - 1]?.text ?? ""))
    return { ...mark, text: "piece", senses: { cues: [], flags: new Set(["generic"]), own: [] } };
  // "Including tips", "counting workshops"
  const isTaking = /^(?:including|counting|include|adding in|plus|with)$/;
  const isStream = (each: Mark | undefined): boolean =>
    each?.senses.thing?.stream !== undefined ||
    Boolean(each?.senses.own.some(({ dimension }) => dimension === "stream"));
  const isMade = marks.some(({ senses }) => senses.cues.includes("earn") || senses.cues.includes("net"));
  const isTaken = isTaking.test(mark.text) && isStream(marks[at + 1]);
  const isOfTaken = isStream(mark) && isTaking.test(marks[at - 1]?.text ?? "");
  if (isMade && (isTaken || isOfTaken))
    return {
      ...mark,
      unknown: undefined,
      senses: { cues: ["everything"], flags: new Set(), own: [] },
    } as Mark;
  // "With ads and tips": all of them are taken in.
  const before = marks[at - 1]?.senses.flags.has("and") ? marks[at - 2] : undefined;
  const isMore =
    before?.senses.cues.includes("everything") || (isMade && isTaking.test(marks[at - 3]?.text ?? ""));
  if (isStream(mark) && before && isMore)
    return { ...mark, senses: { cues: ["everything"], flags: new Set(), own: [] } };
  return mark;
}

function isBuyer({ senses }: Mark): boolean {
  return senses.own.some(({ dimension }) => dimension === "buyer");
}

function isOfLoans({ senses, text }: Mark): boolean {
  return senses.cues.includes("loan") || /\bloans?\b/.test(text);
}

/** The verbs of somebody who buys: "the student paid". */
const OF_BUYERS: readonly Cue[] = ["paid", "spent", "bought", "got", "took"];

/** Whether a buyer is named with no word before, and what buyers do follows, not done by "i". */
function isActing({ mark, at, link }: Item, marks: readonly Mark[]): boolean {
  const owns = (dimension: string): boolean => mark.senses.own.some((own) => own.dimension === dimension);
  if (!owns("buyer") || owns("person")) return false;
  // "Bought by the nurse"
  if (link === "by") return marks.slice(0, at).some(({ senses }) => senses.cues.includes("bought"));
  if (link) return false;
  const behind = marks.slice(at + 1, at + 4);
  const verb = behind.findIndex(
    ({ senses, period }) => !period && !senses.cues.includes("average") && !senses.flags.has("filler"),
  );
  if (verb < 0 || !behind[verb]!.senses.cues.some((cue) => OF_BUYERS.includes(cue))) return false;
  return !behind.slice(0, verb).some(({ text }) => /\b(?:i|we)\b/.test(text));
}

function firstOf(marks: readonly Mark[]): string {
  const words = marks.flatMap(({ text }) => text.split(" "));
  return words.find((word) => !OPENERS.has(word)) ?? "";
}
