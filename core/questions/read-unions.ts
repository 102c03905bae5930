import type { Desk } from "./desk.ts";
import { leftOver } from "./left-over.ts";
import { mineOnly, narrowed, type Refusal, refusal } from "./narrowing.ts";
import { asksFigure, type Parts } from "./parts.ts";
import { type Counted, type Filter, piecesCounted, type Query } from "./query.ts";
import { periodOf } from "./read-period.ts";
import type { Features } from "./rule.ts";
import type { Cue } from "./words/cues.ts";

/*
 * Pieces in one of several states: "what did i give away or trash", "listed or on hold", "neither listed nor finished".
 */

type Table = Readonly<Partial<Record<Cue, string>>>;

/** How pieces went: no piece went in two ways, so that "and" joins as "or" does. */
const WAYS: Table = { sold: "sold", kept: "kept", given: "given", scrapped: "scrapped" };
/** How a piece that is here stands, and the same turned round. */
const STANDS: Table = {
  listed: "listed",
  held: "held",
  finished: "finished",
  started: "started",
  inProgress: "started",
};
const STANDS_NOT: Table = { unlisted: "not listed", unfinished: "unfinished", unstarted: "unstarted" };
const TURNED: Readonly<Record<string, string>> = {
  listed: "not listed",
  finished: "unfinished",
  started: "unstarted",
};

/** A state said at a place. */
interface Said {
  at: number;
  status: string;
  cue: Cue;
}

/** The states of a table in the order in which they are said. */
function saidOf({ marks }: Parts, table: Table): Said[] {
  return marks.flatMap(({ senses }, at): Said[] => {
    const cue = senses.cues.find((each) => table[each] !== undefined);
    return cue ? [{ at, status: table[cue]!, cue }] : [];
  });
}

/** Whether nothing but small words stands between the states, and a word that joins them among these. */
function areJoined({ marks, orAt, andAt }: Parts, said: readonly Said[], withAnd: boolean): boolean {
  const from = said[0]!.at;
  const to = said.at(-1)!.at;
  const isPlain = marks.slice(from, to + 1).every(({ senses, text }, index) => {
    const isState = said.some(({ at }) => at === from + index);
    return isState || text === "nor" || senses.flags.size > 0;
  });
  const joins = [...orAt, ...(withAnd ? andAt : [])].some((at) => at > from && at < to);
  return isPlain && (joins || marks.slice(from, to).some(({ text }) => text === "nor"));
}

/** What the joined states leave: one filter of all of them, or each of them turned round. */
function unionOf(parts: Parts): { counted: Counted; filters: Filter[]; said: Said[] } | null {
  const ways = saidOf(parts, WAYS);
  if (new Set(ways.map(({ status }) => status)).size > 1 && areJoined(parts, ways, true))
    return { counted: "gone", filters: [{ dimension: "status", values: statusesOf(ways) }], said: ways };
  const stands = saidOf(parts, { ...STANDS, ...STANDS_NOT });
  if (new Set(stands.map(({ status }) => status)).size < 2 || !areJoined(parts, stands, false)) return null;
  const isTurned =
    parts.adrift?.text === "neither" ||
    (STANDS_NOT[stands[0]!.cue] && stands.slice(1).some(({ cue }) => STANDS[cue]));
  if (!isTurned)
    return {
      counted: "unsold",
      filters: [{ dimension: "status", values: statusesOf(stands) }],
      said: stands,
    };
  const filters = statusesOf(stands).map((status): Filter => {
    const turned = STANDS_NOT[stands[0]!.cue] === status ? status : TURNED[status];
    return turned
      ? { dimension: "status", values: [turned] }
      : { dimension: "status", values: [status], not: true };
  });
  return { counted: "unsold", filters, said: stands };
}

function statusesOf(said: readonly Said[]): string[] {
  return [...new Set(said.map(({ status }) => status))];
}

const TAKEN: readonly Cue[] = ["list", "which", "got", "have", "gone", "did", "howMany", "unsold", "total"];

/** Pieces in one of several states, one by one or counted; null where no such are asked for. */
export function readUnions(parts: Parts, f: Features, desk: Desk): Query | Refusal | null {
  if (f.order || f.by || f.number || parts.besideAt.length + parts.limits.length > 0) return null;
  if (f.has("money", "earn", "net", "revenue", "cost", "spent", "average", "median", "who", "when", "where"))
    return null;
  if (
    !f.has("howMany") &&
    !f.lists &&
    !f.commands &&
    !f.yesNo &&
    !f.generic &&
    !STATE_FIRST.test(parts.first)
  )
    return null;
  const union = unionOf(parts);
  if (!union) return null;
  const found = narrowed(parts, "count", desk);
  if ("kind" in found) return found;
  const { adrift } = parts;
  const isTaken = adrift?.text === "neither";
  const plain = isTaken ? { ...parts, adrift: null } : parts;
  const used = new Set([
    ...union.said.map(({ at }) => at),
    ...(isTaken ? [parts.marks.indexOf(adrift)] : []),
  ]);
  parts.marks.forEach(({ text }, at) => {
    if (text === "nor") used.add(at);
  });
  const fault = leftOver(plain, TAKEN, { used, passed: ["or"] });
  if (fault) return fault;
  const period = periodOf(parts);
  if (period && "kind" in period) return period;
  const [extra] = parts.amounts;
  if (extra) return refusal(parts.marks[extra.at]!);
  return piecesCounted({
    counted: union.counted,
    filters: [...found.map(({ filter }) => filter), ...union.filters, ...mineOnly(parts, desk)],
    period,
    yesNo: parts.yesNo && !asksFigure(parts),
    list: !f.has("howMany"),
  });
}

const STATE_FIRST =
  /^(?:sold|kept|keeping|gave|given|donated|trashed|scrapped|listed|started|finished|neither|not)$/;
