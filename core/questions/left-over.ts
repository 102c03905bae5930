import { type Refusal, refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import type { Flag } from "./phrases.ts";
import type { Cue } from "./words/cues.ts";
import { PRONOUNS } from "./words/plain.ts";

/** Words that can change nothing. */
const IDLE: readonly Flag[] = ["filler", "generic", "and", "mine"];

/**
 * The words of a question that a reading of it does not take up; the first is named. `used` are places that it takes
 * up beside its cues, `passed` words that it needs no more; `isItKnown`: "it" is spoken of.
 */
export function leftOver(
  parts: Parts,
  taken: readonly Cue[],
  {
    used = new Set(),
    passed = [],
    isItKnown = false,
  }: { used?: ReadonlySet<number>; passed?: readonly Flag[]; isItKnown?: boolean } = {},
): Refusal | null {
  if (parts.unknown.length > 0) return refusal(...parts.unknown);
  if (parts.adrift) return refusal(parts.adrift);
  const cues = new Set(taken);
  const idle = [...IDLE, ...passed];
  const places = new Set([...parts.leads, ...[...parts.items, ...parts.periods].map(({ at }) => at)]);
  const left = parts.marks.find((mark, at) => {
    if (places.has(at) || used.has(at)) return false;
    const { flags, link } = mark.senses;
    if (mark.senses.cues.some((cue) => cues.has(cue))) return false;
    if (!isItKnown && isPronounAdrift(parts, at)) return true;
    if (isMoreBehind(parts, at)) return true;
    return link === undefined && !idle.some((flag) => flags.has(flag));
  });
  return left ? refusal(left) : null;
}

/** What may stand between items besides: "or" where it joins two of them, a negation where it turns them and no state. */
export function joiningItems({ items, orAt, notCues, marks }: Parts): readonly Flag[] {
  const isItem = (at: number): boolean => items.some((item) => item.at === at);
  const isJoin = (at: number): boolean =>
    isItem(at - 1) && marks.slice(at + 1, at + 3).some((_, index) => isItem(at + 1 + index));
  return [
    ...(orAt.every(isJoin) ? (["or"] as const) : []),
    ...(notCues.length === 0 ? (["negation"] as const) : []),
  ];
}

/** "Dressers and stuff": what else is meant beside them, nobody can tell. */
function isMoreBehind({ marks, items }: Parts, at: number): boolean {
  const isAnd = marks[at - 1]?.senses.flags.has("and") === true;
  return isAnd && MORE.test(marks[at]!.text) && items.some((item) => item.at === at - 2);
}
const MORE =
  /^(?:(?:other |more |all that )?(?:stuff|things|items)|such|so on|whatever|whatnot|others|more|the like)$/;

/** Whether a word stands for something that the question does not hold. */
function isPronounAdrift({ marks, items }: Parts, at: number): boolean {
  const { text, senses } = marks[at]!;
  if (items.length > 0 || marks.some((mark) => mark.senses.flags.has("generic") && mark.text !== text))
    return false;
  if (PRONOUNS.always.has(text)) return true;
  const before = marks[at - 1]?.senses;
  const isLast = marks
    .slice(at + 1)
    .every((mark) => mark.period !== undefined || mark.senses.link !== undefined);
  return PRONOUNS.linked.has(text) && isLast && before?.link !== undefined && senses.link === undefined;
}
