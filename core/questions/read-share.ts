import type { Mark } from "./marks.ts";
import type { Narrowing } from "./narrowing.ts";
import type { Counted, Filter } from "./query.ts";
import type { Reading } from "./reading.ts";

/** Between what the share is of and what makes it: "what share of profit came from chairs". */
const PARTING = /^(?:.* )?(?:was|were|is|are|came|come|comes|went|goes|go|did|do|does|made|make)(?: .*)?$/;

/** What the whole is narrowed by, and the part of it beside that; the word in the way where that is not plain. */
export function shareIn(
  { parts, found, measure, counted }: Reading,
  limits: readonly Filter[],
): { whole: Filter[]; part: Filter[]; counted?: Counted } | Mark | null {
  const at = parts.cues.get("share")?.[0];
  if (at === undefined || measure === "reached") return null;
  // "What percent of the yard sale pieces sold": of those bought.
  const soldAt = parts.cues.get("sold")?.at(-1) ?? -1;
  const isLast =
    counted === "sold" &&
    soldAt > at + 1 &&
    found.every(({ item }) => item.at < soldAt) &&
    soldAt === parts.marks.length - 1;
  if (isLast && limits.length === 0)
    return {
      whole: found.map(({ filter }) => filter),
      part: [{ dimension: "status", values: ["sold"] }],
      counted: "bought",
    };
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
