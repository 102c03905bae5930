import type { Desk } from "./desk.ts";
import { joiningItems, leftOver } from "./left-over.ts";
import { mineOnly, type Narrowing, narrowed, type Refusal, refusal } from "./narrowing.ts";
import type { NoteKind, NotesAsked } from "./notes-list.ts";
import { asksFigure, type Parts } from "./parts.ts";
import type { Filter, MeasureName } from "./query.ts";
import { apartIn, periodOf } from "./read-period.ts";
import { isCommandOnly } from "./read-standing.ts";
import type { Features } from "./rule.ts";
import { type Cue, cues } from "./words/cues.ts";

/** Notes one by one. */
export interface NotesQuestion {
  kind: "notes";
  asked: NotesAsked;
  title: string;
  /** How many there are is asked. */
  counts?: true;
  /** Whether there are any is asked: "anything sold this month". */
  yesNo?: true;
  /** Who noted them is asked. */
  who?: true;
}

/** Only so many from one end. */
export type Ends = NonNullable<NotesAsked["ends"]>;

/** Which notes a cue lists; what it narrows by is that measure's. */
export const KINDS: readonly (readonly [Cue, readonly NoteKind[], MeasureName, string])[] = [
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
  ["priceCut", ["reprice"], "profit", "Repriced"],
  ["finished", ["finish"], "profit", "Finished"],
  ["started", ["start"], "profit", "Started"],
  ["sold", ["sell"], "profit", "Sold"],
  ["sale", ["sell"], "profit", "Sold"],
  ["soldFor", ["sell"], "profit", "Sold"],
  ["bought", ["buy"], "price", "Bought"],
  ["listed", ["list"], "profit", "Listed"],
  ["price", ["buy"], "price", "Bought"],
  ["lent", ["lent"], "spent", "Lent"],
  ["kept", ["kept"], "profit", "Kept"],
  ["given", ["given"], "profit", "Given away"],
  ["scrapped", ["scrapped"], "profit", "Scrapped"],
  ["held", ["hold"], "profit", "Held"],
  ["got", ["buy"], "price", "Bought"],
];

/** "when did i buy the sander": the last time where there were several. */
export function asksDayOfBuying(f: Features): boolean {
  return f.supply && !f.piece && f.has("when") && f.has("bought", "got", "spent", "paid");
}

/** "how many trips in october", "number of expenses": so many notes, and not what they come to. */
export function countsNotes({ said }: Parts): boolean {
  return /\b(?:how many|number of|count of) (?:of my |my )?(?:drives|trips|expenses|work sessions|price cuts|price drops|loan payments|payments|(?:\w+ )?fees|deposits (?:have|did) (?:i|we) (?:take|taken|collect|collected|get|gotten|received?)|deposits (?:i|we|ive|weve) (?:took|taken|collected|got|gotten|received))\b/.test(
    said,
  );
}

/** "How many times did i buy gas", "how many tips did i get": so many notes. */
export function countsSpending(f: Features): boolean {
  if (f.stream && f.has("howMany") && !f.has("money", "minutes", "miles", "average", "share")) return true;
  const isOfLoan = f.loan && f.has("paid", "loanPaid");
  return f.has("times") && !f.piece && (isOfLoan || (f.supply && f.has("bought", "got", "spent", "paid")));
}

function limitFilters({ limits }: Parts): Filter[] {
  return limits.map(({ limit, cents }) => ({ dimension: limit, values: [String(cents)] }));
}

function filtersOf(found: readonly Narrowing[]): Filter[] {
  return found.map(({ filter }) => filter);
}

/** The notes that a question asks for. */
export function notesAsked(
  parts: Parts,
  f: Features,
  desk: Desk,
  single: Ends | null = null,
): NotesQuestion | Refusal {
  const { kind, isLent, isTheirs } = kindAsked(parts, f);
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
  // "When did i first list the bookcase i sold in october": of which of the two the day is, the kinds do not tell.
  const listing = parts.marks.find(
    ({ senses, text }) => senses.cues.includes("listed") && text !== "list expenses",
  );
  if (asksDay && listing && kind && kind[0] !== "listed") return refusal(listing);
  const isFirst = f.has("first");
  if (isFirst && (kind === undefined || f.has("last")))
    return refusal(parts.marks[parts.cues.get("first")![0]!]!);
  const taken = [
    ...cues("list did notes which money have got total listed last gone loan"),
    ...(countsNotes(parts) ? cues("howMany times earn take took takes held revenue") : []),
    ...(countsSpending(f) ? cues("howMany times spent paid had held took earn did") : []),
    ...(isLent ? cues("who where") : []),
    ...(asksDay ? cues("when ageOf") : []),
    ...(kind ? [kind[0]] : []),
    // "Which loan payments have i made"
    ...(kind?.[0] === "loanPaid" ? cues("earn") : []),
    ...(isTheirs ? cues("bought took") : []),
    ...(kind?.[0] === "spent" ? cues("bought price fees paid cost") : cues("price paid soldFor")),
  ];
  const used = new Set([
    ...(last?.used ?? []),
    ...(single ? parts.orders.flatMap(({ at, top }) => (top === null ? [at] : [at, at + 1])) : []),
    ...parts.limits.flatMap(({ at, words }) => Array.from({ length: words }, (_, word) => at + word)),
  ]);
  const fault = leftOver(parts, taken, { used, passed: joiningItems(parts) });
  if (fault) return fault;
  const isSpent = f.supply && !isLent;
  const kinds = f.stream ? ["income" as const] : isSpent ? ["spend" as const] : (kind?.[1] ?? null);
  const withBuys = kind?.[0] === "spent" && (f.has("bought") || f.has("price")) ? ["buy" as const] : [];
  const apart = apartIn(parts);
  const period = apart ? null : periodOf(parts);
  if (period && "kind" in period) return period;
  return {
    kind: "notes",
    asked: {
      kinds: kinds ? new Set([...kinds, ...withBuys]) : null,
      filters: [...filtersOf(found), ...limitFilters(parts), ...mineOnly(parts, desk)],
      // A hold may be without a deposit.
      ...(kind?.[0] === "deposits" ? { withAmount: true as const } : {}),
      period,
      ...(apart ? { apart } : {}),
      last: asksDay || isFirst ? null : (last?.count ?? null),
      ...(single ? { ends: single } : {}),
      ...(last && (asksDay || isFirst)
        ? { ends: { from: isFirst ? "oldest" : "newest", count: last.count, asksDay, isAge } as const }
        : {}),
    },
    ...(parts.yesNo && !asksFigure(parts) && !last ? { yesNo: true as const } : {}),
    // "Who noted the paint in may"
    ...(/^who noted\b/.test(parts.said) ? { who: true as const } : {}),
    title: f.stream ? "Other income" : isSpent ? "Spent" : (kind?.[3] ?? "Noted"),
  };
}

/** Of which kind the notes are, whether a thing was lent, and whether it is told from a buyer's side. */
function kindAsked(parts: Parts, f: Features) {
  // "Who has the sander": a thing that is no piece was lent.
  const isLent =
    f.has("lent") || (f.has("who") && f.supply && !f.has("sold", "bought", "spent", "paid", "notes"));
  const isPaid = f.loan && f.has("paid");
  // What the nurse bought was sold to her.
  const isTheirs =
    f.buyer && !f.person && f.has("bought", "got", "took") && (f.has("last", "first") || f.acting);
  const only = isTheirs ? "sold" : isPaid ? "loanPaid" : isLent ? "lent" : null;
  const kind = KINDS.find(([cue]) => (only ? cue === only : f.has(cue) && !isCommandOnly(parts, cue)));
  return { kind, isLent, isTheirs };
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
