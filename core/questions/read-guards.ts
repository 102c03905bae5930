import type { Mark } from "./marks.ts";
import type { Features } from "./measure-rules.ts";
import { isTimeGroup, type Parts } from "./parts.ts";

/** Words that ask for what no measure is: each names the word that stands in the way. */
type Guard = (parts: Parts, f: Features) => Mark | null;

/** What is to come stands in no book. */
function toCome({ marks }: Parts): Mark | null {
  return marks.find(({ text }) => /\b(?:will|gonna)\b/.test(text)) ?? null;
}

/** An amount that is held against no single thing: "more than 3 chairs", "over 2 hours", "did i make over 5000". */
function notOfOne({ marks, limits, orders, yesNo }: Parts, f: Features): Mark | null {
  const counted = orders.find(({ top }) => top !== null);
  if (yesNo && counted) return marks[counted.at]!;
  for (const { at } of limits) {
    const after = marks[at + 1]?.amount ? marks[at + 2] : undefined;
    const isCount =
      marks[at + 1]?.amount?.money === false &&
      after !== undefined &&
      (after.senses.thing?.plural ||
        /^(?:pieces|things|items|flips|times)$/.test(after.text) ||
        isTimeGroup(after) ||
        after.senses.cues.some((cue) => cue === "minutes" || cue === "howLong" || cue === "daysToSell"));
    const isOfSum =
      yesNo && !f.generic && f.has("earn", "net", "spent", "revenue", "paid") && !f.has("soldFor");
    if (isCount || isOfSum) return marks[at]!;
  }
  return null;
}

/** "How much money do i have left": what is in hand is not what lies in pieces. */
function purse({ marks }: Parts, f: Features): Mark | null {
  if (f.piece || f.generic || f.loan || f.supply || !f.has("money")) return null;
  if (marks.some(({ text }) => /\b(?:tied|stuck|sitting|locked)\b/.test(text))) return null;
  const last = marks.at(-1)!;
  return last.text === "left" ? last : null;
}

/** "the first hutch", "the 5th of each month": no day of this month. */
function ordinalAdrift({ marks, periods }: Parts): Mark | null {
  for (const { at } of periods) {
    const { text } = marks[at]!;
    if (!/^(?:on )?(?:the )?(?:first|second|third|fourth|fifth|\d+(?:st|nd|rd|th))$/.test(text)) continue;
    const next = marks[at + 1];
    if (!next) continue;
    const { thing, flags } = next.senses;
    if (
      thing?.noun ||
      flags.has("generic") ||
      flags.has("parted") ||
      marks[at + 2]?.senses.flags.has("parted")
    )
      return marks[at]!;
  }
  return null;
}

const GUARDS: readonly Guard[] = [
  toCome,
  ({ unknown }) => unknown[0] ?? null,
  ({ adrift }) => adrift,
  notOfOne,
  ordinalAdrift,
  purse,
];

/** The first word for which no measure can answer; null where there is none. */
export function guarded(parts: Parts, f: Features): Mark | null {
  for (const guard of GUARDS) {
    const mark = guard(parts, f);
    if (mark) return mark;
  }
  return null;
}

/** "how can i make money", "should i have sold": advice is asked for, and no figure. */
export function asksAdvice({ first, said }: Parts): boolean {
  return (
    /^(?:should|shall|must|would|could)$/.test(first) ||
    /\b(?:(?:can|could) (?:i|we) (?!see|get|have)|(?:should|would|shall) (?:i|we) (?!see))/.test(said)
  );
}
