import { isMark, placeAfter, type Tok, textOf } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { firstWord } from "../tokens/text.ts";
import { PASTS } from "../words/tenses.ts";
import {
  ABOUT_TO,
  AHEAD,
  BEFORE_SOMEBODY,
  BESIDE_WILL,
  GOING,
  IS_DATED,
  ITS,
  JOINS_ON,
  LEADS_INTO,
  MORE_OF_IT,
  ONE_OF_US,
  OURS_TO_COME,
  OVER,
  SAME_IN_PAST,
  SHALL_BE,
  SOMEBODY,
  THEIRS_TO_COME,
  WILL_DO,
  WILL_DO_WITH,
} from "../words/to-come.ts";
import { isAhead, isBeside, type Plan } from "./beside-plans.ts";

/*
 * What is still to come, told in a sentence of its own beside a fact, with a mark between or none: "finished the desk ill
 * list it tomorrow", "paint 24 for the desk and its supposed to rain tomorrow". Nothing of it was done, and its day is not
 * the fact's. It is passed over where what else the line tells is done whatever will come of it.
 */

/** The tokens of a line without what is still to come; the same ones where nothing is, or where it may turn the rest. */
export function withoutToCome(tokens: Tok[]): Tok[] {
  if (tokens.length < TOKENS_MIN || tokens.length > TOKENS_MAX || !tokens.some(mayBeToCome)) return tokens;
  if (tokens.some((token) => isMark(token, "?"))) return tokens;
  const plans: Plan[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const opening = planAt(tokens, at);
    if (!opening) continue;
    const to = endOf(tokens, opening.said);
    if (to === null) return tokens;
    plans.push({ ...opening, from: at, to });
    at = to - 1;
  }
  if (plans.length === 0) return tokens;
  const rest = tokens.filter((_, at) => !plans.some(({ from, to }) => at >= from && at < to));
  const told = trimmed(rest);
  if (!isTold(told) || !plans.every((plan) => isBeside(tokens, plan, told))) return tokens;
  return parted(tokens, plans);
}

const TOKENS_MIN = 5;
const TOKENS_MAX = 80;

const mayBeToCome = (token: Tok): boolean => {
  const word = firstWord(token.text);
  return (
    WILL_DO.has(word) ||
    OURS_TO_COME.has(word) ||
    THEIRS_TO_COME.has(word) ||
    AHEAD.has(token.text) ||
    ABOUT_TO.has(word)
  );
};

const isJoint = (token: Tok | undefined): boolean =>
  token !== undefined && (token.kind === "mark" || (token.kind === "word" && JOINS_ON.has(token.text)));

/** The sentence of what is to come that begins at a place; null where none does. */
function planAt(tokens: readonly Tok[], at: number): Omit<Plan, "from" | "to"> | null {
  const before = tokens[at - 1];
  if (
    before &&
    !isJoint(before) &&
    (LEADS_INTO.has(before.text.slice(before.text.lastIndexOf(" ") + 1)) || isOpen(before))
  )
    return null;
  if (tokens[at]!.text === "if") return at > 0 ? conditionAt(tokens, at) : null;
  // "tomorrow im going to the market"
  const start = isAhead(tokens[at]!) && at + 1 < tokens.length ? at + 1 : at;
  const subject = subjectAt(tokens, start);
  if (subject) {
    const verb = placeAfter(tokens, subject.end, BESIDE_WILL);
    // "so i can get another one"
    const isSoThat =
      subject.isOurs && before?.text === "so" && firstWord((tokens[verb] ?? before).text) === "can";
    if (willDo(tokens, verb) || isComing(tokens, verb) || isSoThat)
      return { said: verb + 1, isOurs: subject.isOurs };
    return null;
  }
  if (OURS_TO_COME.has(firstWord(tokens[start]!.text))) return { said: start + 1, isOurs: true };
  if (THEIRS_TO_COME.has(firstWord(tokens[start]!.text))) return { said: start + 1, isOurs: false };
  if (at === 0 || start > at) return null;
  const verb = placeAfter(tokens, at, BESIDE_WILL);
  if (willDo(tokens, verb) || isAboutTo(tokens, verb) || isMoreOfIt(tokens, verb))
    return { said: verb + 1, isOurs: true };
  return null;
}

/** A verb is still to get what it is of: "told him", "got". */
const isOpen = (token: Tok): boolean =>
  token.kind === "word" &&
  PASTS.has(token.text) &&
  !token.roles.pronoun &&
  headsOf(token).every(({ light }) => light);

/** Who is to do it, and where those words end; null where nobody is named. */
function subjectAt(tokens: readonly Tok[], at: number): { end: number; isOurs: boolean } | null {
  const { text, kind } = tokens[at]!;
  if (ONE_OF_US.has(text)) return { end: at + 1, isOurs: true };
  if (SOMEBODY.has(text)) return { end: at + 1, isOurs: false };
  if (kind !== "word" || !BEFORE_SOMEBODY.has(text)) return null;
  for (let end = at + 1; end <= at + 2 && end < tokens.length; end += 1)
    if (tokens[end]!.roles.person) return { end: end + 1, isOurs: false };
  return null;
}

function willDo(tokens: readonly Tok[], at: number): boolean {
  const token = tokens[at];
  if (token?.kind !== "word") return false;
  const [word, next] = token.text.split(" ");
  if (!WILL_DO.has(word!)) return false;
  // "he should have it back by tuesday", and no "should have been"
  if (token.text === "should" && tokens[at + 1]?.text === "have")
    return tokens[at + 2]?.roles.pronoun === true;
  if (IS_DATED.test(textOf(tokens.slice(at, at + 3)))) return false;
  const behind = WILL_DO_WITH.get(word!);
  return !behind || behind.has(next ?? tokens[at + 1]?.text.split(" ")[0] ?? "");
}

/** "a lady is coming tomorrow", "im listing it tomorrow" */
const isComing = (tokens: readonly Tok[], at: number): boolean =>
  tokens[at] !== undefined && firstWord(tokens[at]!.text).endsWith("ing") && isAboutTo(tokens, at);

/** What is about to be done, by a day to come that stands close behind it; "2h painting the desk sunday" was done. */
function isAboutTo(tokens: readonly Tok[], at: number): boolean {
  const token = tokens[at];
  if (!token || !ABOUT_TO.has(firstWord(token.text)) || tokens[at - 1]?.kind === "duration") return false;
  for (let next = at + 1; next < tokens.length && next - at <= DAY_MAX; next += 1) {
    const { kind, text } = tokens[next]!;
    if (isAhead(tokens[next]!)) return true;
    if (kind === "day") return next > at + 1 && WEEKDAY.test(text) && GOING.has(firstWord(token.text));
    if (kind !== "word" && kind !== "piece") return false;
    if (ONE_OF_US.has(text) || OURS_TO_COME.has(text) || isJoint(tokens[next])) return false;
  }
  return false;
}
const DAY_MAX = 6;
const WEEKDAY = /^(?:on )?(?:mon|tue|wed|thu|fri|sat|sun)/;

/** "one more coat tomorrow" */
function isMoreOfIt(tokens: readonly Tok[], at: number): boolean {
  const token = tokens[at];
  if (!token || !MORE_OF_IT.has(token.text)) return false;
  const day = tokens.slice(at + 1, at + 4).find(({ kind, text }) => kind === "day" || AHEAD.has(text));
  return day !== undefined && (isAhead(day) || tokens[at + 1]!.text === "on");
}

/** "if it doesnt sell by friday ill drop it to 50" */
function conditionAt(tokens: readonly Tok[], at: number): Omit<Plan, "from" | "to"> | null {
  for (let next = at + 2; next < tokens.length && next - at <= CONDITION_MAX; next += 1) {
    if (isJoint(tokens[next])) return null;
    if (
      OURS_TO_COME.has(firstWord(tokens[next]!.text)) ||
      (subjectAt(tokens, next)?.isOurs && willDo(tokens, next + 1))
    )
      return { said: next + 1, isOurs: true };
  }
  return null;
}
const CONDITION_MAX = 12;

/** Where a sentence of what is to come ends; null where that is not plain. */
function endOf(tokens: readonly Tok[], from: number): number | null {
  for (let at = from; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (isMark(token, ".", ";", "!", "\n")) return at;
    if (isJoint(token)) {
      const end = endAtJoint(tokens, at);
      if (end === null || end === at) return end;
      at = end - 1;
      continue;
    }
    if (isDone(tokens, at, from)) return startOfDone(tokens, at);
  }
  return tokens.length;
}

/** The place of a joint where the sentence ends at it, the place where it goes on behind it, or null where that is not plain. */
function endAtJoint(tokens: readonly Tok[], at: number): number | null {
  let next = at;
  while (next < tokens.length && isJoint(tokens[next])) next += 1;
  const joints = tokens.slice(at, next).map(({ text }) => text);
  const token = tokens[next];
  if (!token) return at;
  const isOn = joints.every((text) => text === "and" || text === "then" || text === ",");
  // "one more coat tomorrow and its done"
  if (isOn && ITS.has(token.text) && OVER.has(tokens[next + 1]?.text ?? "") && endsAt(tokens, next + 2))
    return next + 2;
  const other = planAt(tokens, next);
  if (other) return other.said;
  if (isOn && token.kind === "word" && SAME_IN_PAST.has(firstWord(token.text))) return null;
  if (isOn && isPlainVerb(token)) return next + 1;
  return at;
}

const endsAt = (tokens: readonly Tok[], at: number): boolean => at >= tokens.length || isJoint(tokens[at]);

/** "list" of "ill paint it and list it" */
const isPlainVerb = (token: Tok): boolean =>
  token.kind === "word" &&
  (headsOf(token).length > 0 || token.roles.labor === true) &&
  !PASTS.has(firstWord(token.text)) &&
  !/(?:ed|ing|s)$/.test(firstWord(token.text));

/** What was done: a verb of the books in the past, and not what shall be. */
function isDone(tokens: readonly Tok[], at: number, from: number): boolean {
  const token = tokens[at]!;
  if (
    headsOf(token).length === 0 ||
    !(PASTS.has(firstWord(token.text)) || firstWord(token.text).endsWith("ed"))
  )
    return false;
  return !tokens
    .slice(Math.max(from - 1, at - 4), at)
    .some(({ text }) => SHALL_BE.has(text) || SHALL_BE.has(text.split(" ").at(-1)!));
}

/** Where the sentence of something done begins; null where its subject is not plain. */
function startOfDone(tokens: readonly Tok[], at: number): number | null {
  const before = tokens[at - 1]!;
  if (ONE_OF_US.has(before.text) || SOMEBODY.has(before.text)) return at - 1;
  if (before.kind === "day" || isAhead(before) || before.kind === "amount") return at;
  for (let start = at - 1; start >= at - 4 && start > 0; start -= 1)
    if (tokens[start - 1]!.kind === "day" || isAhead(tokens[start - 1]!)) return start;
  return null;
}

function trimmed(tokens: readonly Tok[]): Tok[] {
  const kept = [...tokens];
  while (kept.length > 0 && isJoint(kept.at(-1))) kept.pop();
  while (kept.length > 0 && isJoint(kept[0])) kept.shift();
  return kept;
}

/** A verb of the books, a job, a measure, or a cost with its amount. */
const isTold = (tokens: readonly Tok[]): boolean =>
  tokens.some(
    (token) =>
      headsOf(token).length > 0 || token.roles.labor || token.kind === "duration" || token.kind === "miles",
  ) ||
  (tokens.some(({ roles }) => roles.supply) && tokens.some(({ kind }) => kind === "amount"));

/** The tokens without the plans; what stood on both sides of one stays parted. */
function parted(tokens: readonly Tok[], plans: readonly Plan[]): Tok[] {
  const kept: Tok[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const plan = plans.find(({ from }) => from === at);
    if (!plan) {
      kept.push(tokens[at]!);
      continue;
    }
    while (kept.length > 0 && isJoint(kept.at(-1))) kept.pop();
    at = plan.to - 1;
  }
  return trimmed(kept);
}
