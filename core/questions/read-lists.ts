import type { Desk } from "./desk.ts";
import { leftOver } from "./left-over.ts";
import { mineOnly, type Narrowing, narrowed, type Refusal, refusal } from "./narrowing.ts";
import type { NoteKind, NotesAsked } from "./notes-list.ts";
import { asksFigure, type Parts } from "./parts.ts";
import type { Filter, MeasureName, Query } from "./query.ts";
import { isCommandOnly, LIST_WORDS, stateAsked, stateList } from "./read-standing.ts";
import type { Features } from "./rule.ts";
import type { Cue } from "./words/cues.ts";

/** Notes one by one. */
export interface NotesQuestion {
  kind: "notes";
  asked: NotesAsked;
  title: string;
  /** How many there are is asked. */
  counts?: true;
  /** Whether there are any is asked: "anything sold this month". */
  yesNo?: true;
}

type Ends = NonNullable<NotesAsked["ends"]>;

/** Which notes a cue lists; what it narrows by is that measure's. */
const KINDS: readonly (readonly [Cue, readonly NoteKind[], MeasureName, string])[] = [
  ["spent", ["spend", "fee"], "spent", "Expenses"],
  ["fees", ["fee"], "fees", "Fees"],
  ["income", ["income"], "income", "Other income"],
  ["interest", ["pay"], "paid", "Loan payments"],
  ["loanPaid", ["pay"], "paid", "Loan payments"],
  ["deposits", ["hold"], "deposits", "Deposits"],
  ["miles", ["drive"], "miles", "Drives"],
  ["minutes", ["work"], "minutes", "Work"],
  ["refunds", ["refund"], "profit", "Refunds"],
  ["returned", ["return"], "profit", "Came back"],
  ["traded", ["trade"], "profit", "Traded"],
  ["finished", ["finish"], "profit", "Finished"],
  ["started", ["start"], "profit", "Started"],
  ["sold", ["sell"], "profit", "Sold"],
  ["sale", ["sell"], "profit", "Sold"],
  ["bought", ["buy"], "price", "Bought"],
  ["price", ["buy"], "price", "Bought"],
  ["listed", ["list"], "profit", "Listed"],
  ["lent", ["lent"], "spent", "Lent"],
  ["kept", ["kept"], "profit", "Kept"],
  ["given", ["given"], "profit", "Given away"],
  ["scrapped", ["scrapped"], "profit", "Scrapped"],
  ["held", ["hold"], "profit", "Held"],
  ["got", ["buy"], "price", "Bought"],
];

/** Whether rows are wanted: "show …", "list …", "what did i …", "which …". */
function isListing(parts: Parts, f: Features): boolean {
  return (
    LIST_WORDS.has(parts.first) ||
    f.has("list", "did", "notes", "last", "first", "traded") ||
    isCommandOnly(parts, "listed") ||
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
    parts.besideAt.length + parts.limits.length === 0
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
  if (f.order || f.by || parts.besideAt.length > 0) return null;
  if (isMonthShown(parts) || f.has("story") || f.whom !== null) return null;
  if (parts.limits.length > 0 && !isListedSales(parts, f)) return null;
  if (f.has("money", "total") && !f.has("list")) return null;
  if (/^(?:cost|costs|value)$/.test(parts.first)) return null;
  if (f.has("deposits") || (f.has("owed") && f.has("who", "whose"))) return null;
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
    f.has("sale", "sold") &&
    limits.length === 1 &&
    limits[0]!.unit === undefined &&
    !f.has("earn", "net", "money")
  );
}

/** "when did i buy the sander": the last time where there were several. */
function asksDayOfBuying(f: Features): boolean {
  return f.supply && !f.piece && f.has("when") && f.has("bought", "got", "spent", "paid");
}

/** "how many trips in october", "number of expenses": so many notes, and not what they come to. */
function countsNotes({ said }: Parts): boolean {
  return /\b(?:how many|number of|count of) (?:of my |my )?(?:drives|trips|expenses|work sessions|loan payments)\b/.test(
    said,
  );
}

/** "The biggest tip", "my smallest loan payment", "the largest single expense": one note, by its amount. */
function singleOf({ marks, orders, groups, besideAt, limits }: Parts, f: Features): Ends | null {
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
  const next = behind[isOfLoan ? 1 : 0];
  if (!next || next.text.endsWith("s") !== (said.top !== null && said.top > 1)) return null;
  const isTip = f.stream && (next.senses.thing?.stream !== undefined || next.senses.own.length > 0);
  const isPayment = /\bpayments?$/.test(next.text) && (f.loan || f.has("loanPaid"));
  const isExpense =
    /\bsingle\b/.test(marks[said.at]!.text) && /^(?:expense|expenditure|bill)s?$/.test(next.text);
  if (!isTip && !isPayment && !isExpense) return null;
  const from = said.order === "most" ? "highest" : "lowest";
  return { from, count: said.top ?? 1, asksDay: false, isAge: false };
}

/** "How many times did i buy gas": so many notes. */
function countsSpending(f: Features): boolean {
  const isOfLoan = f.loan && f.has("paid", "loanPaid");
  return f.has("times") && !f.piece && (isOfLoan || (f.supply && f.has("bought", "got", "spent", "paid")));
}

/** "show me august": the month's own answer. */
function isMonthShown({ first, items, periods, cues, groups }: Parts): boolean {
  const [said, more] = periods;
  const { from, to } = said?.period ?? { from: null, to: null };
  const isPlain =
    items.length === 0 && groups.length === 0 && [...cues.keys()].every((cue) => cue === "list");
  return isPlain && more === undefined && LIST_WORDS.has(first) && from?.slice(8) === "01" && to !== from;
}

/** "what did i list", "which chairs did i sell": something done, no state. */
function isEvent(parts: Parts, f: Features): boolean {
  return (
    f.has("notes", "did") ||
    f.has("lent") ||
    (f.has("last", "first", "ageOf") && f.has("listed")) ||
    parts.marks.some(({ text }) => text === "been listed") ||
    (parts.marks.some(({ text }) => /\bdid (?:i|we)\b|\bhave (?:i|we)\b|^did$/.test(text)) &&
      !f.has("unlisted", "unfinished", "unstarted", "inProgress", "have") &&
      !(f.has("unsold") && !f.has("sold", "bought", "listed")))
  );
}

/** "stuff i bought last month", "everything we sold in may" */
function isWhatWasDone({ first, said, periods }: Parts, f: Features): boolean {
  return (
    /^(?:stuff|things|items|pieces|everything|anything|all)$/.test(first) &&
    /\b(?:i|we|ive|weve)\b/.test(said) &&
    ((periods.length > 0 && f.has("bought", "sold", "listed", "finished")) ||
      f.has("kept", "given", "scrapped"))
  );
}

function isWhatDid(parts: Parts, f: Features): boolean {
  if (!/^(?:what|whatd|whats|which|everything|anything|who)$/.test(parts.first)) return false;
  if (f.has("withoutBuying", "spent", "cost")) return false;
  // "everything dad got"
  if (f.has("got") && f.person) return true;
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
  );
}

function limitFilters({ limits }: Parts): Filter[] {
  return limits.map(({ limit, cents }) => ({ dimension: limit, values: [String(cents)] }));
}

function filtersOf(found: readonly Narrowing[]): Filter[] {
  return found.map(({ filter }) => filter);
}

function notesAsked(
  parts: Parts,
  f: Features,
  desk: Desk,
  single: Ends | null = null,
): NotesQuestion | Refusal {
  // "Who has the sander": a thing that is no piece was lent.
  const isLent = f.has("lent") || (f.has("who") && f.supply && !f.has("sold", "bought", "spent", "paid"));
  const isPaid = f.loan && f.has("paid");
  // What the nurse bought was sold to her.
  const isTheirs =
    f.buyer && !f.person && f.has("bought", "got", "took") && (f.has("last", "first") || f.acting);
  const kind = KINDS.find(([cue]) =>
    isTheirs
      ? cue === "sold"
      : isPaid
        ? cue === "loanPaid"
        : isLent
          ? cue === "lent"
          : f.has(cue) && !isCommandOnly(parts, cue),
  );
  const isSupply = f.supply || kind?.[0] === "spent";
  const measure: MeasureName = f.stream ? "income" : isSupply ? "spent" : (kind?.[2] ?? "spent");
  const found = narrowed(parts, measure, desk);
  if ("kind" in found) return found;
  const last =
    lastOf(parts, "last") ??
    lastOf(parts, "first") ??
    (asksDayOfBuying(f) || f.has("ageOf") ? { count: 1, used: new Set<number>() } : null);
  if (last && "kind" in last) return last;
  const asksDay = last !== null && f.has("when", "ageOf");
  const isAge = f.has("ageOf");
  const isFirst = f.has("first");
  if (isFirst && (kind === undefined || f.has("last")))
    return refusal(parts.marks[parts.cues.get("first")![0]!]!);
  const taken: Cue[] = [
    ...(countsNotes(parts) ? (["howMany", "earn"] as const) : []),
    ...(countsSpending(f) ? (["howMany", "times", "spent", "paid"] as const) : []),
    "list",
    "did",
    "notes",
    "which",
    "money",
    "have",
    "got",
    "total",
    "listed",
    "last",
    "gone",
    "loan",
    ...(isLent ? (["who", "where"] as const) : []),
    ...(asksDay ? (["when", "ageOf"] as const) : []),
    ...(kind ? [kind[0]] : []),
    // "Which loan payments have i made"
    ...(kind?.[0] === "loanPaid" ? (["earn"] as const) : []),
    ...(isTheirs ? (["bought", "took"] as const) : []),
  ];
  const extra: Cue[] =
    kind?.[0] === "spent" ? ["bought", "price", "fees", "paid", "cost"] : ["price", "paid", "soldFor"];
  const used = new Set([
    ...(last?.used ?? []),
    ...(single ? parts.orders.flatMap(({ at, top }) => (top === null ? [at] : [at, at + 1])) : []),
    ...parts.limits.flatMap(({ at, words }) => Array.from({ length: words }, (_, word) => at + word)),
  ]);
  const fault = leftOver(parts, [...taken, ...extra], { used });
  if (fault) return fault;
  const isSpent = f.supply && !isLent;
  const kinds = f.stream ? ["income" as const] : isSpent ? ["spend" as const] : (kind?.[1] ?? null);
  const withBuys = kind?.[0] === "spent" && (f.has("bought") || f.has("price")) ? ["buy" as const] : [];
  const [said] = parts.periods;
  return {
    kind: "notes",
    asked: {
      kinds: kinds ? new Set([...kinds, ...withBuys]) : null,
      filters: [...filtersOf(found), ...limitFilters(parts), ...mineOnly(parts, desk)],
      period: said?.period ?? null,
      last: asksDay || isFirst ? null : (last?.count ?? null),
      ...(single ? { ends: single } : {}),
      ...(last && (asksDay || isFirst)
        ? { ends: { from: isFirst ? "oldest" : "newest", count: last.count, asksDay, isAge } as const }
        : {}),
    },
    ...(parts.yesNo && !asksFigure(parts) && !last ? { yesNo: true as const } : {}),
    title: f.stream ? "Other income" : isSpent ? "Spent" : (kind?.[3] ?? "Noted"),
  };
}

/** "last 5 notes", "the 3 latest sales", "my first sale". */
function lastOf(parts: Parts, cue: "last" | "first"): { count: number; used: Set<number> } | Refusal | null {
  const at = parts.cues.get(cue)?.[0];
  const [amount, more] = parts.amounts;
  if (at === undefined) return amount && cue === "first" ? refusal(parts.marks[amount.at]!) : null;
  if (more) return refusal(parts.marks[more.at]!);
  if (!amount) return { count: 1, used: new Set([at]) };
  if (Math.abs(amount.at - at) > 2 || amount.cents % 100 !== 0) return refusal(parts.marks[amount.at]!);
  return { count: amount.cents / 100, used: new Set([at, amount.at]) };
}
