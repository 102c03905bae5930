import { measures } from "./measures.ts";
import { isOrderToList, type Parts } from "./parts.ts";
import type { Filter, MeasureName } from "./query.ts";
import type { Reading } from "./reading.ts";
import type { Cue } from "./words/cues.ts";

/** Cues that narrow where they are not what is asked: "profit on sold chairs". */
const STATUS_CUES: readonly (readonly [Cue, string])[] = [
  ["sold", "sold"],
  ["unsold", "unsold"],
  ["held", "held"],
  ["unlisted", "unlisted"],
  ["unfinished", "unfinished"],
  ["unstarted", "unstarted"],
  ["inProgress", "started"],
  ["together", "bought together"],
  ["listed", "listed"],
  ["finished", "finished"],
  ["started", "started"],
  ["kept", "kept"],
  ["given", "given"],
  ["scrapped", "scrapped"],
  ["returned", "returned"],
  ["free", "free"],
];

/** States that a piece which is here may be in. */
const STANDS: ReadonlySet<string> = new Set(["finished", "started", "listed"]);

/** Cues that say nothing but the state, whatever is asked. */
export const ALWAYS: readonly Cue[] = ["together", "unstarted", "inProgress"];

/** The states that narrow a question: said, and not already meant by its measure. */
export function statesOf(reading: Reading): Filter[] {
  const { measure, parts, found } = reading;
  const isPlaced = found.some(({ filter }) => filter.dimension === "place");
  const own = [...(measures[measure].implies ?? []), ...(isPlaced ? ["listed"] : [])];
  // "What has been sitting" is still here, "what sat" may have gone.
  const isHere =
    (measure === "days listed" && /\b(?:been|now|currently)\b/.test(parts.said)) ||
    // "The cheapest thing i own"
    (measure === "price" &&
      reading.f.order &&
      parts.cues.has("have") &&
      !parts.cues.has("paid") &&
      !parts.cues.has("bought"));
  const here: Filter[] = isHere ? [{ dimension: "status", values: ["unsold"] }] : [];
  const said = joinedStates(parts, saidStates(reading, own).map(meantIn(measure)));
  if (measure !== "hourly" || said.length > 0) return [...here, ...said];
  // What was kept, given or scrapped earns nothing by the hour: it counts where all of them are asked for.
  return [{ dimension: "status", values: [saysAllPieces(parts) ? "gone" : "sold"] }];
}

function saidStates(reading: Reading, own: readonly string[]): Filter[] {
  const { measure, counted, taken, parts } = reading;
  return STATUS_CUES.flatMap(([cue, status]): Filter[] => {
    const places = (parts.cues.get(cue) ?? []).filter((at) => isOnlyCue(reading, at, cue));
    const isTurned = parts.notCues.includes(cue);
    if (places.length === 0 || !(taken.includes(cue) || ALWAYS.includes(cue))) return [];
    if (isTurned) return [{ dimension: "status", values: [status], not: true }];
    if (own.includes(status)) return [];
    // "What is left of it after costs": money, where no piece is left.
    if (
      status === "unsold" &&
      measure === "profit" &&
      parts.cues.has("net") &&
      places.every((at) => /left/.test(parts.marks[at]!.text))
    )
      return [];
    // "How many are finished but not sold"
    const isBoth = counted === "unsold" && STANDS.has(status);
    if (counted === status || (measure === "count" && status !== "free" && !isBoth)) return [];
    return [{ dimension: "status", values: [status] }];
  });
}

/** Ways in which a piece went: none went in two of them. */
const WAYS: ReadonlySet<string> = new Set(["sold", "kept", "given", "scrapped"]);

/** "Profit on kept and donated pieces": either is meant. */
function joinedStates({ orAt, andAt }: Parts, said: readonly Filter[]): Filter[] {
  const isWay = ({ values, not }: Filter): boolean => !not && WAYS.has(values[0]!);
  const ways = said.filter(isWay);
  if (ways.length < 2 || orAt.length + andAt.length === 0) return [...said];
  const joined: Filter = { dimension: "status", values: ways.flatMap(({ values }) => values) };
  return [...said.filter((filter) => !isWay(filter)), joined];
}

/** Money lies in whatever is not listed, finished or not. */
function meantIn(measure: MeasureName): (filter: Filter) => Filter {
  return (filter) =>
    measures[measure].stock && filter.values[0] === "unlisted"
      ? { ...filter, values: ["not listed"] }
      : filter;
}

/** "my hourly over all pieces". */
function saysAllPieces({ said }: Parts): boolean {
  return /\b(?:all|every) (?:the |my |of my )?(?:pieces?|furniture|of them)\b/.test(said);
}

/** A word that says nothing else, so that it must mean the state. */
function isOnlyCue({ parts, taken }: Reading, at: number, cue: Cue): boolean {
  if (isOrderToList(parts, at)) return false;
  const { cues, flags } = parts.marks[at]!.senses;
  if (flags.has("generic") || flags.has("filler")) return false;
  return cues.every((other) => other === cue || !taken.includes(other));
}
