import type { Parts } from "./parts.ts";
import { type Cue, cues } from "./words/cues.ts";

/*
 * Whether the words of a message ask anything, where no mark and no opening says so.
 */

/** Cues that notes have as well: alone they make no question. */
const OF_NOTES: ReadonlySet<string> = new Set(
  (
    "sold sale bought got paid price cost finished started listed kept given scrapped returned gone held took takes have money first " +
    "last extra until once take free fared loan soldFor asking deposits minutes miles fees income loanPaid notes sat put withoutBuying agreed"
  ).split(" "),
);

/** Whether the words ask for themselves, without a mark or a word that opens a question. */
export function asksSomething({ cues, groups, orders, periods, items }: Parts): boolean {
  if (
    [...cues.keys()].some((cue) => !OF_NOTES.has(cue)) ||
    groups.some(({ parted }) => parted) ||
    orders.length > 0
  )
    return true;
  return periods.length > 0 && items.length + cues.size > 0;
}

/** Cues of a figure that small talk seldom has. */
const FIGURES: readonly Cue[] = cues(
  "net revenue fees miles minutes income interest tiedUp hourly margin roi average median share daysToSell reached howMany",
);

/** Whether the words name a figure, so that a word in the way is worth naming: "profit on glorbs", "best month for gnomes". */
export function namesFigure({ cues, groups, orders, items, periods, said, first }: Parts): boolean {
  const isOrdered = orders.length > 0 && groups.length > 0;
  return (
    FIGURES.some((cue) => cues.has(cue)) ||
    /\b(?:profits?|earnings?|gains?|made on|(?:asking|list) price of|(?:total|average|highest|lowest) (?:asking|list) price|days since)\b/.test(
      said,
    ) ||
    (items.length > 0 && cues.has("earn") && / money$/.test(said)) ||
    groups.some(({ parted }) => parted) ||
    isOrdered ||
    (periods.length > 0 && /^(?:notes|sales|purchases|expenses|payments|listings|drives)$/.test(first)) ||
    (items.length > 0 && periods.length > 0)
  );
}
