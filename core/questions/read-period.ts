import { addDays } from "../calendar.ts";
import { measures } from "./measures.ts";
import { type Refusal, refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import type { Filter, Period } from "./query.ts";
import type { Reading } from "./reading.ts";
import { isState } from "./subjects.ts";

/** What was done to a piece on a day, which a question about what came of the piece may name. */
const DONE = { bought: "bought on", finished: "finished on", listed: "listed on" } as const;

/** "profit on chairs i bought in june": the days are those of the buying, whenever the chairs went. */
export function doneIn(reading: Reading): { filter: Filter; at: number } | null {
  const { parts, measure, counted, f } = reading;
  // "Who bought in august": they, and not we.
  if (f.acting || f.whom === "buyer" || (f.groups("buyer") && f.has("bought"))) return null;
  const [said, more] = parts.periods;
  if (!said || more || measure === "price") return null;
  // "What did the pieces i sold in june cost me": of what went in it, whenever the costs came.
  if (measure === "cost") {
    const sold = parts.cues.get("sold")?.at(-1);
    const { from, to, name } = said.period;
    return sold === undefined || parts.cues.has("bought")
      ? null
      : { filter: { dimension: "sold on", values: [`${from ?? ""}..${to ?? ""}`], name }, at: sold };
  }
  if (isState(counted) || measures[measure].stock) {
    const origin = boughtIn(parts, said);
    const bought = parts.cues.get("bought")?.findLast((at) => at < said.at);
    if (origin) return { filter: origin, at: bought ?? said.at - 1 };
  }
  const next = parts.marks[said.at + 1]?.text ?? "";
  if (/^(?:buys|purchases|pickups|finds|haul)$/.test(next) && measures[measure].ofLives) {
    const origin = boughtIn(parts, said);
    if (origin) return { filter: origin, at: said.at + 1 };
  }
  const before = parts.marks.slice(0, said.at).findLast(({ senses }) => !senses.flags.has("filler"));
  const done = before?.senses.cues.find((cue) => cue in DONE) as keyof typeof DONE | undefined;
  // "Yard sale finds this summer" are no pieces found this summer.
  if (!before || !done || before.senses.flags.has("generic")) return null;
  if (counted === done || !measures[measure].ofLives) return null;
  const { from, to, name } = said.period;
  return {
    filter: { dimension: DONE[done], values: [`${from ?? ""}..${to ?? ""}`], name },
    at: parts.marks.indexOf(before),
  };
}

/** "Still unsold from june", "left of what i bought in june": the days are those of the buying. */
export function boughtIn({ marks }: Parts, { period, at }: Parts["periods"][number]): Filter | null {
  const before = marks.slice(0, at).findLast(({ senses }) => !senses.flags.has("filler"));
  const isFrom =
    marks[at - 1]?.text === "from" ||
    before?.senses.cues.includes("bought") ||
    // "The june buys"
    /^(?:buys|purchases|pickups|finds|haul)$/.test(marks[at + 1]?.text ?? "");
  if (!isFrom || period.moment) return null;
  return {
    dimension: "bought on",
    values: [`${period.from ?? ""}..${period.to ?? ""}`],
    name: period.name,
  };
}

/** The period said; several only where one takes in the other. */
export function periodOf(parts: Parts): Period | Refusal | null {
  const said = parts.periods.filter(({ period }) => period.from !== null || period.to !== null);
  const [first, second, third] = said;
  if (!first) return null;
  if (!second) return first.period;
  // "Gas june july" has no word between them.
  const isRow = said.every(({ at }, place) => place === 0 || at === said[place - 1]!.at + 1);
  if (isRow || parts.andAt.some((at) => at > first.at && at < said.at(-1)!.at)) {
    const joined = inOne(said.map(({ period }) => period));
    if (joined) return joined;
  }
  if (third) return refusal(parts.marks[third.at]!);
  return both(first.period, second.period) ?? refusal(parts.marks[second.at]!);
}

/** "May and august": stretches of time with "and" between them that do not touch; null where they are none. */
export function apartIn(parts: Parts): readonly Period[] | null {
  const { periods, andAt, marks } = parts;
  const areApart = periods.slice(1).every(({ at, period }, place) => {
    const before = periods[place]!;
    const between = marks.slice(before.at + 1, at);
    const isJoined = between.every(
      ({ senses }, index) => andAt.includes(before.at + 1 + index) || senses.link === "in",
    );
    return isJoined && before.period.to !== null && period.from !== null && before.period.to < period.from;
  });
  const areBounded = periods.every(
    ({ period }) => period.from !== null && period.to !== null && !period.moment,
  );
  if (periods.length < 2 || !areApart || !areBounded || !("kind" in (periodOf(parts) ?? {}))) return null;
  return periods.map(({ period }) => period);
}

/** The stretch that two periods share, where one lies in the other: "summer, june through august". */
function both(a: Period, b: Period): Period | null {
  const from = a.from === null ? b.from : b.from === null || a.from > b.from ? a.from : b.from;
  const to = a.to === null ? b.to : b.to === null || a.to < b.to ? a.to : b.to;
  if (from !== null && to !== null && from > to) return null;
  if (from === a.from && to === a.to) return a;
  if (from === b.from && to === b.to) return b;
  // An open end takes the other's: "since june, before september".
  if (a.from === null || a.to === null || b.from === null || b.to === null)
    return { from, to, name: `${a.name}, ${b.name}` };
  return null;
}

/** "june, july and august": those that follow on one another as one; null where something lies between. */
function inOne(periods: readonly Period[]): Period | null {
  const [first, ...more] = [...periods].sort((a, b) => ((a.from ?? "") < (b.from ?? "") ? -1 : 1));
  let { to } = first!;
  for (const next of more) {
    if (to === null || next.from === null || addDays(to, 1) !== next.from) return null;
    to = next.to;
  }
  const year = / \d{4}$/.exec(more.at(-1)!.name)?.[0] ?? "";
  const names = [first!, ...more].map(({ name }) => name.replace(year, ""));
  return { from: first!.from, to, name: `${names.slice(0, -1).join(", ")} and ${names.at(-1)}${year}` };
}
