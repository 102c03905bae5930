import type { Mark } from "./marks.ts";
import { measures } from "./measures.ts";
import type { Narrowing } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import type { Counted, Filter } from "./query.ts";
import type { Reading } from "./reading.ts";

/** Between what the share is of and what makes it: "what share of profit came from chairs". */
const PARTING = /^(?:.* )?(?:was|were|is|are|came|come|comes|went|goes|go|did|do|does|made|make)(?: .*)?$/;

/** States of which a share of all that was bought may be. */
const ENDINGS = ["sold", "unsold", "kept", "given", "scrapped"] as const;

/** Only small words, what rows go by and days follow. */
function isEnd({ marks, groups }: Parts, at: number): boolean {
  return marks
    .slice(at + 1)
    .every(
      ({ period, senses }, index) =>
        senses.own.length === 0 &&
        (period !== undefined ||
          senses.flags.size > 0 ||
          senses.link !== undefined ||
          groups.some((group) => group.at === at + 1 + index)),
    );
}

/** What the whole is narrowed by, and the part of it beside that; the word in the way where that is not plain. */
export function shareIn(
  { parts, found, measure, counted }: Reading,
  limits: readonly Filter[],
  isParted: boolean,
): { whole: Filter[]; part: Filter[]; counted?: Counted } | Mark | null {
  const at = parts.cues.get("share")?.[0];
  if (at === undefined || measures[measure].unit === "percent") return null;
  // "What percent of the yard sale pieces sold", "what fraction of what i bought is unsold": of those bought.
  const state = ENDINGS.find((each) => each === counted);
  const stateAt = state ? (parts.cues.get(state)?.at(-1) ?? -1) : -1;
  const isLast = stateAt >= at && found.every(({ item }) => item.at !== stateAt) && isEnd(parts, stateAt);
  if (state && isLast && limits.length === 0)
    return {
      whole: found.map(({ filter }) => filter),
      part: [{ dimension: "status", values: [state] }],
      counted: "bought",
    };
  // "What percent of profit came from each kind": every row's share of all.
  if (isParted && found.length + limits.length === 0) return { whole: [], part: [] };
  const cut = parts.marks.findIndex(({ text, period }, place) => place > at && !period && PARTING.test(text));
  const isPart = ({ item }: Narrowing): boolean => cut >= 0 && item.at > cut;
  const filters = (some: readonly Narrowing[]): Filter[] => some.map(({ filter }) => filter);
  const part = found.filter(isPart);
  if (part.length > 0)
    return { whole: [...filters(found.filter((one) => !isPart(one))), ...limits], part: filters(part) };
  if (limits.length > 0) return { whole: filters(found), part: [...limits] };
  if (found.length === 1) return { whole: [], part: filters(found) };
  return parts.marks[at]!;
}
