import type { Day } from "../../calendar.ts";
import { MEASURES_OR_PIECE, type Tok } from "../clause.ts";
import { lexed } from "../lexed.ts";
import { isFigure, isSkipped } from "../mends/mended.ts";
import { wholeOf } from "../quantities/amounts.ts";
import { isQuestion } from "../questions.ts";
import type { Kind } from "../reading.ts";
import { misnoted } from "../rows/misnoted.ts";
import { PREPOSITIONS } from "../words/links.ts";
import { OLD, WRONG_PEOPLE } from "../words/mending.ts";
import {
  APPOINTED,
  BECAME,
  BEFORE_OLD,
  DECIDES,
  DENIED_KINDS,
  DOUBTS,
  MAY_CORRECT,
  OLD_PHRASES,
  SPOKEN_OF,
  TWO_NOTES,
  WAS,
  WAS_NOT,
  WRONG,
} from "../words/misnoted.ts";
import { FOR_NOTHING } from "../words/money.ts";
import { type Misnoted, nothingSaid, prove, raise, type Values } from "./misnoted-said.ts";
import { type Names, takeValue, takeWord } from "./misnoted-words.ts";

/*
 * What a message tells of a note that was noted wrong, in whatever order: values that it should have, those that it has, and
 * by what it is known. Which note that is, the books tell (`mending/misnoted.ts`).
 */

const TOKENS_MAX = 36;

/** Whether a message holds a word that may correct a note; far cheaper than to see whether it does. */
export const mayCorrect = (text: string): boolean =>
  text
    .toLowerCase()
    .match(/[a-z]+/g)
    ?.some((word) => MAY_CORRECT.has(word)) === true;

/** What a message tells so; null where it tells more than that, or nothing of it. `names`: those on the books. */
export function misnotedIn(text: string, names: Names, today: Day): Misnoted | null {
  if (!mayCorrect(text)) return null;
  const tokens = lexed(text.replace(/[;:](?=\s)/g, ","));
  if (tokens.length > TOKENS_MAX || tokens.some(({ each }) => each)) return null;
  const said = nothingSaid();
  const taken = takeRows(said, tokens, names);
  // "should i list the hutch at 120"
  const isNamed = tokens.some(({ text: word }) => names.has(word));
  if (!taken.asks && !said.out && !isNamed && isQuestion(tokens)) return null;
  const wrong = tokens.findIndex(
    ({ text: word }, at) => WRONG.has(word) && WAS.has(tokens[at - 1]?.text ?? ""),
  );
  // "change the pickup to monday": when they come, and no day of a note.
  if (tokens.some(({ text: word }) => APPOINTED.has(word)) && tokens.some(({ kind }) => kind === "day"))
    return null;
  let isOld = false;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (taken.skips.has(at)) continue;
    if (isOld && token.text === "today") {
      said.old.date = today;
      prove(said);
      isOld = false;
      continue;
    }
    if (OLD.has(token.text) || OLD_PHRASES.has(token.text) || (!said.out && isWasNot(tokens, at))) {
      // "card instead"
      isOld = !OLD.has(token.text) || token.text === "not" || BEFORE_OLD.has(tokens[at + 1]?.text ?? "");
      raise(said, isOld ? "none" : "sure");
      continue;
    }
    if (token.kind === "mark") {
      if (token.text !== "#") isOld = false;
      continue;
    }
    if (isFigure(tokens, at)) return null;
    const side = isOld || taken.old.has(at) || at < wrong ? said.old : said.now;
    const isValue = isForNothing(tokens, at)
      ? takeNothing(side)
      : takeValue(said, side, token, { names, today, isWrong: at < wrong, isThing: isThing(tokens, at) });
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
  // A loan's own figures are told by its statement.
  if (said.isLoan && said.old.amount === undefined && !said.out) return null;
  // "it was a card payment not cash": what came in.
  if (said.now.method !== undefined && !said.isLoan && said.kinds.join() === "pay") said.kinds = PAID_KINDS;
  // "meant to say it went to rosa, not nell": it was told before.
  if (said.isLate && (said.isProven || isOfMethod(said))) {
    said.isLate = false;
    raise(said, "likely");
  }
  if (said.out === "denied") restateDenied(said, tokens, taken.denied);
  return withCount(withoutLabor(taken.isSlip ? withNowOf(said) : said));
}

/** "wood for the bench was 38": a cost, and no bench of wood. */
function isThing(tokens: readonly Tok[], at: number): boolean {
  const next = tokens[at + 1]?.text ?? "";
  return tokens[at]!.roles.supply !== undefined && (PREPOSITIONS.has(next) || WAS.has(next));
}

/** "oops free not 8", "for free actually": it cost nothing; "free shipping" tells of something else. */
function isForNothing(tokens: readonly Tok[], at: number): boolean {
  if (!FOR_NOTHING.has(tokens[at]!.text)) return false;
  const next = tokens[at + 1];
  return (
    !next || next.kind === "mark" || OLD.has(next.text) || DECIDES.has(next.text) || DOUBTS.has(next.text)
  );
}

function takeNothing(side: Values): boolean | null {
  if (side.amount !== undefined) return null;
  side.amount = 0;
  return true;
}

/** "i didn't sell the oval table, i sold the round table": the other piece in its place. */
function restateDenied(said: Misnoted, tokens: readonly Tok[], denied: ReadonlySet<number>): void {
  const isSaidAgain = tokens.some(
    ({ text }, at) =>
      !denied.has(at) && DENIED_KINDS[text] !== undefined && DENIED_KINDS[text] === said.kinds[0],
  );
  const old = [...denied].flatMap((at) => tokens[at]!.mention ?? []);
  const now = said.now.pieces.filter((piece) => !old.includes(piece));
  if (!isSaidAgain || old.length !== 1 || now.length !== 1) return;
  delete said.out;
  said.old.pieces = old;
  said.now.pieces = now;
  prove(said);
}

/** "lamp was cash, forgot to say": how it was paid, and no note of its own. */
const isOfMethod = ({ now }: Misnoted): boolean => now.method !== undefined && now.amount === undefined;

/** "it wasnt the thrift store": behind it what it was not; alone it denies all of it. */
const isWasNot = (tokens: readonly Tok[], at: number): boolean =>
  WAS_NOT.has(tokens[at]!.text) && tokens.slice(at + 1).some((token) => isTold(token, tokens));

/** A value that may stand on both sides of a correction. */
const isTold = ({ kind, text, roles }: Tok, tokens: readonly Tok[]): boolean => {
  const isBecome = ({ text: word }: Tok) => BECAME[word] !== undefined;
  if (isBecome({ text } as Tok)) return tokens.filter(isBecome).length > 1;
  const isPlace = (token: Tok) => token.roles.place !== undefined || token.roles.method !== undefined;
  if (roles.place !== undefined || roles.method !== undefined) return tokens.filter(isPlace).length > 1;
  const isValue = (token: Tok) => token.kind === "amount" || token.kind === kind;
  if (kind === "piece") return tokens.filter((token) => token.kind === "piece").length > 1;
  return (kind === "amount" || kind === "duration") && tokens.filter(isValue).length > 1;
};

/** So many are rather pieces than an amount. */
const COUNT_MAX = 12;

/** "2 not 3 stools": how many of them, and no amount. */
function withCount(said: Misnoted): Misnoted {
  const { amount, ...now } = said.now;
  const [old, ...others] = said.old.pieces;
  const count = (amount ?? 0) / 100;
  const isCount = Number.isInteger(count) && count > 0 && count <= COUNT_MAX && (old?.count ?? 1) > 1;
  return isCount && others.length === 0 && now.pieces.length === 0
    ? { ...said, now: { ...now, pieces: [{ ...old!, count }] } }
    : said;
}

/** "filled up for 22 not 20": without a time it tells of no work. */
function withoutLabor({ labor, ...said }: Misnoted): Misnoted {
  if (labor === undefined) return said;
  const isWork = said.now.minutes !== undefined || said.old.minutes !== undefined || said.out !== undefined;
  return { ...said, ...(isWork ? { what: labor, labor, kinds: ["work"] } : {}) };
}

/** "it heard me wrong i said fifty": what was said is what is meant. */
function withNowOf(said: Misnoted): Misnoted {
  const { now, old } = said;
  const isNone = now.pieces.length === 0 && now.traits.length === 0 && Object.keys(now).length === 2;
  return isNone && said.sense === "sure" ? { ...said, now: old, old: now } : said;
}

/** What the rows take of a line, with what they say of it. */
function takeRows(said: Misnoted, tokens: readonly Tok[], names: Names) {
  const skips = new Set<number>();
  const old = new Set<number>();
  const denied = new Set<number>();
  let asks = false;
  let isSlip = false;
  for (const { effect, from, to } of misnoted.fired(tokens)) {
    const places = Array.from({ length: to - from }, (_, at) => from + at);
    if (effect === "slip" || effect === "proof") {
      prove(said);
      asks = true;
      isSlip ||= effect === "slip";
      said.isWho ||= places.some((at) => WRONG_PEOPLE.has(tokens[at]!.text.split(" ").at(-1)!));
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
    } else if (effect === "owes") {
      said.isOwed = true;
      said.kinds = ["sell"];
    } else if (effect === "undo") said.undoes = notesIn(tokens.slice(from, to));
    else if (effect === "again") said.isAgain = true;
    else if (effect === "denied") {
      said.out = "denied";
      for (const at of places) denied.add(at);
      said.kinds = tokens.slice(from, to).flatMap(({ text }) => DENIED_KINDS[text.split(" ")[0]!] ?? []);
    } else {
      said.out = effect === "out" || effect === "said" ? "sure" : (said.out ?? "maybe");
      said.isOfTalk ||= effect === "said";
    }
    const isKept = (at: number): boolean =>
      MEASURES_OR_PIECE.has(tokens[at]!.kind) ||
      tokens[at]!.roles.method !== undefined ||
      names.has(tokens[at]!.text);
    for (const at of places) {
      if (effect === "old" && isKept(at)) old.add(at);
      else if (!isNamedIn(effect, tokens[at]!) || (at === from && said.out && tokens[at]!.kind === "word"))
        skips.add(at);
    }
  }
  return { skips, old, denied, asks, isSlip };
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
  if (effect === "owes") return kind === "amount" || kind === "piece";
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
const PAID_KINDS: readonly Kind[] = ["sell", "collect", "hold", "pay"];
