import type { Desk } from "./desk.ts";
import type { Refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import type { Query } from "./query.ts";
import {
  asksDayOfBuying,
  countsNotes,
  countsSpending,
  type Ends,
  KINDS,
  type NotesQuestion,
  notesAsked,
} from "./read-notes.ts";
import { isCommandOnly, LIST_WORDS, stateAsked, stateList } from "./read-standing.ts";
import type { Features } from "./rule.ts";

/** Whether rows are wanted: "show …", "list …", "what did i …", "which …". */
function isListing(parts: Parts, f: Features): boolean {
  return (
    LIST_WORDS.has(parts.first) ||
    f.has("list", "did", "notes", "last", "first", "traded") ||
    isCommandOnly(parts, "listed") ||
    (f.has("priceCut") && /^(?:list )?price /.test(parts.said)) ||
    (/^(?:purchases|buys)$/.test(parts.first) && parts.periods.length > 0) ||
    // "What were my van payments"
    (f.has("loanPaid") && /^(?:what (?:were|are)|which) .*\bpayments\b/.test(parts.said))
  );
}

/** Notes or pieces one by one, or null where no list is asked for. */
export function readLists(parts: Parts, f: Features, desk: Desk): NotesQuestion | Query | Refusal | null {
  if (
    (countsNotes(parts) || countsSpending(f)) &&
    !f.by &&
    !f.order &&
    parts.besideAt.length === 0 &&
    parts.limits.every(({ unit }) => unit === undefined)
  ) {
    const asked = notesAsked(parts, f, desk);
    return "asked" in asked ? { ...asked, counts: true } : asked;
  }
  const single = singleOf(parts, f);
  if (single) return notesAsked(parts, f, desk, single);
  if (
    f.has(
      "howMany",
      "earn",
      "net",
      "average",
      "median",
      "hourly",
      "reached",
      "comeDown",
      "tiedUp",
      "daysToSell",
    ) ||
    f.has("chart")
  )
    return null;
  // "Which are done that i should list" asks for advice.
  if (/\b(?:i|we) should\b/.test(parts.said)) return null;
  if (f.order || f.by || parts.besideAt.length > 0) return null;
  if (isMonthShown(parts) || f.has("story") || f.whom !== null) return null;
  if (parts.limits.length > 0 && !isListedSales(parts, f)) return null;
  // "How much was the last gas" is asked of that note.
  if (f.has("money", "total") && !f.has("list", "last", "first")) return null;
  // "Whats sunk into the things still sitting around" asks for a sum.
  const isSum = f.has("cost") && f.has("unsold") && !f.has("which");
  if (isSum && !LIST_WORDS.has(parts.first) && /^(?:what|whats|how)$/.test(parts.first)) return null;
  if (/^(?:cost|costs|value)$/.test(parts.first)) return null;
  if ((f.has("deposits") && !f.commands && !countsNotes(parts)) || (f.has("owed") && f.has("who", "whose")))
    return null;
  const state = isEvent(parts, f) ? undefined : stateAsked(parts, f);
  if (state && !isCommandOnly(parts, state[0])) return stateList(parts, state, desk);
  if (
    !isListing(parts, f) &&
    !isWhatDid(parts, f) &&
    !isWhatWasDone(parts, f) &&
    !(f.has("who") && f.supply) &&
    !asksDayOfBuying(f) &&
    !f.has("ageOf")
  )
    return null;
  // "List pieces from the flea market": they, and no notes of them
  const isOfThem = LIST_WORDS.has(parts.first) && f.generic && f.bare && !f.supply && !f.period;
  if (isOfThem && (f.source || f.person || f.piece)) return null;
  // "show #5" asks for the piece's story, not for its notes one by one.
  if (
    f.piece &&
    !f.has("notes", "did") &&
    !KINDS.some(([cue]) => f.has(cue) && !isCommandOnly(parts, cue)) &&
    !f.supply
  )
    return null;
  return notesAsked(parts, f, desk);
}

/** "show me sales over 200": notes, each held against the amount. */
function isListedSales({ first, limits }: Parts, f: Features): boolean {
  return (
    LIST_WORDS.has(first) &&
    f.has("sale", "sold", "spent") &&
    limits.length === 1 &&
    limits[0]!.unit === undefined &&
    !f.has("earn", "net", "money")
  );
}

/** "The biggest tip", "my smallest loan payment", "the largest single expense": one note, by its amount. */
function singleOf({ marks, orders, groups, besideAt, limits, said: words }: Parts, f: Features): Ends | null {
  const [said, more] = orders;
  if (
    !said ||
    more ||
    !/^(?:most|least)$/.test(said.order) ||
    groups.length + besideAt.length + limits.length > 0
  )
    return null;
  const behind = marks.slice(said.at + (said.top === null ? 1 : 2));
  // "My smallest van payment"
  const isOfLoan = behind[0]?.senses.own.some(({ dimension }) => dimension === "loan");
  // "The biggest single storage bill", "the largest gas purchase"
  const isBill = f.supply && BILLS.test(behind[1]?.text ?? "");
  // "Lowest ever listed" is of all that was ever put up, where "lowest listed" is of what is up now.
  const isListing = /\bever listed\b/.test(words) && besideAt.length === 0;
  const next = behind[isOfLoan || isBill ? 1 : 0];
  if (!next || next.text.endsWith("s") !== (said.top !== null && said.top > 1)) return null;
  const isTip = f.stream && (next.senses.thing?.stream !== undefined || next.senses.own.length > 0);
  const isPayment = /\bpayments?$/.test(next.text) && (f.loan || f.has("loanPaid"));
  const isExpense =
    /\bsingle\b/.test(marks[said.at]!.text) && /^(?:expense|expenditure|bill)s?$/.test(next.text);
  const isCut = /^price (?:cut|drop|reduction)s?$/.test(next.text);
  const isDeed = /^(?:drive|trip|work session|session)s?$/.test(next.text) && f.has("miles", "minutes");
  if (!isListing && !isTip && !isPayment && !isExpense && !isDeed && !isBill && !isCut) return null;
  const from = said.order === "most" ? "highest" : "lowest";
  return { from, count: said.top ?? 1, asksDay: false, isAge: false };
}

const BILLS = /^(?:bill|payment|purchase|expense|charge|receipt|fill up|fillup|run)s?$/;

/** "show me august": the month's own answer. */
function isMonthShown({ first, items, periods, cues, groups }: Parts): boolean {
  const [said, more] = periods;
  const { from, to } = said?.period ?? { from: null, to: null };
  const isPlain =
    items.length === 0 && groups.length === 0 && [...cues.keys()].every((cue) => cue === "list");
  return isPlain && more === undefined && LIST_WORDS.has(first) && from?.slice(8) === "01" && to !== from;
}

/** "Pieces listed in may", "chairs listed this month": nothing says how they stand. */
function isListedBehindThings({ marks, said }: Parts): boolean {
  const at = marks.findIndex(({ text }) => text === "listed");
  const before = marks[at - 1]?.senses;
  const isThings = before?.flags.has("generic") || before?.thing?.plural;
  return Boolean(isThings) && !/\b(?:is|are|whats|still|now|currently|have|got)\b/.test(said);
}

/** "What i bought in may and listed in june". */
function isOfLives({ items }: Parts): boolean {
  return items.some(({ mark }) => mark.senses.own.some(({ name }) => name !== undefined));
}

/** "what did i list", "which chairs did i sell": something done, no state. */
function isEvent(parts: Parts, f: Features): boolean {
  return (
    f.has("notes", "did") ||
    f.has("lent") ||
    // "What was listed in november" tells what was done, "at the end of november" how it stood.
    (f.has("listed") &&
      /\b(?:was|were|got|went)\b/.test(parts.said) &&
      parts.periods.some(({ period }) => !period.moment)) ||
    // "Listed this week", "pieces listed in may" tell what was done.
    ((parts.first === "listed" || isListedBehindThings(parts) || isOfLives(parts)) &&
      parts.periods.some(({ period }) => !period.moment)) ||
    (f.has("last", "first", "ageOf") && f.has("listed")) ||
    parts.marks.some(({ text }) => text === "been listed") ||
    (/\bdid\b|\bhave (?:i|we)\b(?! got\b| still got\b)/.test(parts.said) &&
      !f.has("unlisted", "unfinished", "unstarted", "inProgress", "have") &&
      !(f.has("unsold") && !f.has("sold", "bought", "listed")))
  );
}

/** "stuff i bought last month", "everything we sold in may" */
function isWhatWasDone({ first, said, periods, items, marks }: Parts, f: Features): boolean {
  // "Walnut stuff i sold", "chairs i bought in june"
  const isPlain =
    f.piece && items[0]?.at === 0 && (f.generic || items.some(({ mark }) => mark.senses.thing?.plural));
  const isOurs =
    /\b(?:i|we|ive|weve) (?:ve |have )?(?:sold|bought|listed|finished|kept|donated|trashed)\b/.test(said);
  if (isPlain && isOurs && marks.length > 2) return true;
  return (
    /^(?:stuff|things|items|pieces|furniture|everything|anything|all)$/.test(first) &&
    ((/\b(?:i|we|ive|weve)\b|^(?:all|everything) (?:sold|bought|listed|finished)\b/.test(said) &&
      ((periods.length > 0 && f.has("bought", "sold", "listed", "finished")) ||
        f.has("kept", "given", "scrapped"))) ||
      // "Stuff dad bought"
      (f.person && f.has("bought", "got", "sold", "listed", "finished")))
  );
}

function isWhatDid(parts: Parts, f: Features): boolean {
  if (!/^(?:what|whatd|whats|which|everything|anything|who)$/.test(parts.first)) return false;
  if (
    f.has("withoutBuying", "spent", "cost") ||
    /^what (?:did (?:i|we) pay|was the price)\b/.test(parts.said)
  )
    return false;
  // "everything dad got"
  if ((f.has("got") && f.person) || (f.acting && (f.has("took") || (f.has("got", "bought") && !f.generic))))
    return true;
  return f.has(
    "sold",
    "bought",
    "finished",
    "started",
    "listed",
    "returned",
    "traded",
    "kept",
    "given",
    "scrapped",
    "sale",
    "lent",
    "priceCut",
  );
}
