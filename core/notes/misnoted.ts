import type { Day } from "../calendar.ts";
import type { Tok } from "./clause.ts";
import { lexed } from "./lexed.ts";
import { isSkipped } from "./mended.ts";
import { type Misnoted, nothingSaid, prove, raise } from "./misnoted-said.ts";
import { takeValue, takeWord } from "./misnoted-words.ts";
import { isQuestion } from "./questions.ts";
import { wholeOf } from "./quantities/amounts.ts";
import type { Kind } from "./reading.ts";
import { misnoted } from "./rows/misnoted.ts";
import { PREPOSITIONS } from "./words/links.ts";
import { OLD } from "./words/mending.ts";
import { BEFORE_OLD, DENIED_KINDS, TWO_NOTES, MAY_CORRECT, SPOKEN_OF, WAS, WRONG, WRONG_NAMES } from "./words/misnoted.ts";

/*
 * What a message tells of a note that was noted wrong, in whatever order: values that it should have, those that it has, and
 * by what it is known. Which note that is, the books tell (`mending/misnoted.ts`).
 */

const TOKENS_MAX = 36;

/** What a message tells so; null where it tells more than that, or nothing of it. `people`: those on the books. */
export function misnotedIn(text: string, people: () => ReadonlySet<string>, today: Day): Misnoted | null {
  if (
    !text
      .toLowerCase()
      .match(/[a-z]+/g)
      ?.some((word) => MAY_CORRECT.has(word))
  )
    return null;
  const tokens = lexed(text);
  if (tokens.length > TOKENS_MAX || tokens.some(({ each }) => each)) return null;
  const names = people();
  const said = nothingSaid();
  const taken = takeRows(said, tokens);
  // "should i list the hutch at 120"
  const isNamed = tokens.some(({ text: word }) => names.has(word));
  if (!taken.asks && !said.out && !isNamed && isQuestion(tokens)) return null;
  const wrong = tokens.findIndex(
    ({ text: word }, at) => WRONG.has(word) && WAS.has(tokens[at - 1]?.text ?? ""),
  );
  let isOld = false;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (taken.skips.has(at)) continue;
    if (OLD.has(token.text)) {
      // "card instead"
      isOld = token.text === "not" || BEFORE_OLD.has(tokens[at + 1]?.text ?? "");
      raise(said, isOld ? "none" : "sure");
      continue;
    }
    if (token.kind === "mark") {
      if (token.text !== "#") isOld = false;
      continue;
    }
    const side = isOld || taken.old.has(at) || at < wrong ? said.old : said.now;
    const isValue = takeValue(said, side, token, { names, today, isWrong: at < wrong });
    // Of what takes a note back no more is asked than what it is of.
    if (isValue === null && (said.undoes > 0 || said.isAgain || said.out === "denied")) continue;
    if (isValue === null) return null;
    if (isValue && isOld) prove(said);
    if (isValue) isOld = false;
    // "not bad", "not dry yet": what is denied is no value.
    else if (isOld && !said.out && !isSkipped(token) && !PREPOSITIONS.has(token.text)) return null;
    else if (!takeWord(said, tokens, at)) return null;
  }
  if (isOld && !said.out) return null;
  return withoutLabor(taken.isSlip ? withNowOf(said) : said);
}

/** "filled up for 22 not 20": without a time it tells of no work. */
function withoutLabor({ labor, ...said }: Misnoted): Misnoted {
  if (labor === undefined) return said;
  const isWork = said.now.minutes !== undefined || said.old.minutes !== undefined || said.out !== undefined;
  return { ...said, ...(isWork ? { what: labor, kinds: ["work"] } : {}) };
}

/** "it heard me wrong i said fifty": what was said is what is meant. */
function withNowOf(said: Misnoted): Misnoted {
  const { now, old } = said;
  const isNone = now.pieces.length === 0 && now.traits.length === 0 && Object.keys(now).length === 2;
  return isNone && said.sense === "sure" ? { ...said, now: old, old: now } : said;
}

/** What the rows take of a line, with what they say of it. */
function takeRows(said: Misnoted, tokens: readonly Tok[]) {
  const skips = new Set<number>();
  const old = new Set<number>();
  let asks = false;
  let isSlip = false;
  for (const { effect, from, to } of misnoted.fired(tokens)) {
    const places = Array.from({ length: to - from }, (_, at) => from + at);
    if (effect === "slip" || effect === "proof") {
      prove(said);
      asks = true;
      isSlip ||= effect === "slip";
      said.isWho ||= places.some((at) => WRONG_NAMES.has(tokens[at]!.text.split(" ").at(-1)!));
    } else if (effect === "found" || effect === "added" || effect === "wait") raise(said, "likely");
    else if (effect === "late") said.isLate = true;
    else if (effect === "listing") said.kinds = LISTING_KINDS;
    else if (effect === "held") said.kinds = HOLD_KINDS;
    else if (effect === "then") {
      prove(said);
      said.isThen = true;
    } else if (effect === "old") {
      prove(said);
      asks = true;
    } else if (effect === "undo") said.undoes = notesIn(tokens.slice(from, to));
    else if (effect === "again") said.isAgain = true;
    else if (effect === "denied") {
      said.out = "denied";
      said.kinds = tokens.slice(from, to).flatMap(({ text }) => DENIED_KINDS[text.split(" ")[0]!] ?? []);
    }
    else said.out = effect === "out" ? "sure" : (said.out ?? "maybe");
    const isKept = (at: number): boolean =>
      KEPT.has(tokens[at]!.kind) || tokens[at]!.roles.method !== undefined;
    for (const at of places) {
      if (effect === "old" && isKept(at)) old.add(at);
      else if (!isNamedIn(effect, tokens[at]!) || (at === from && said.out && tokens[at]!.kind === "word"))
        skips.add(at);
    }
  }
  return { skips, old, asks, isSlip };
}

/** How many notes a message takes back: "the last two", "that and the one before". */
function notesIn(words: readonly Tok[]): number {
  const amount = words.find(({ kind }) => kind === "amount")?.amount;
  const count = amount ? wholeOf(amount.exact) : null;
  return count ?? (words.some(({ text }) => text.split(" ").some((word) => TWO_NOTES.has(word))) ? 2 : 1);
}

/** Of some rows only what they are of says which note is meant. */
function isNamedIn(effect: string, { kind, text, roles }: Tok): boolean {
  const isThing = kind !== "word" || roles.supply !== undefined || SPOKEN_OF[text] !== undefined;
  if (effect === "added" || effect === "held") return kind !== "word";
  if (effect === "denied") return kind === "piece";
  // "ditch one of the gas ones"
  if (text === "one") return false;
  if (effect === "wait") return roles.supply !== undefined;
  return (
    effect !== "undo" &&
    effect !== "again" &&
    effect !== "slip" &&
    effect !== "wait" &&
    isThing &&
    kind !== "mark"
  );
}

const LISTING_KINDS: readonly Kind[] = ["list", "reprice"];
const HOLD_KINDS: readonly Kind[] = ["hold"];

const KEPT: ReadonlySet<string> = new Set(["piece", "amount", "miles", "duration"]);
