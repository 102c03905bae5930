import type { Day } from "../../calendar.ts";
import { type Tok, textOf } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { isVerb } from "../rows/classes.ts";
import { type CorrectionEffect, corrections } from "../rows/corrections.ts";
import type { Trace } from "../rows/trace.ts";
import type { Units } from "../rows/units.ts";
import { apart } from "../tokens/apart.ts";
import { firstWord } from "../tokens/text.ts";
import { saysOneMore } from "../words/again.ts";
import {
  EXCUSES,
  IT_WAS,
  LISTING,
  OF_A_SUM,
  OLD,
  OPENS_REASON,
  POINTING,
  RENAMING,
  SELLING,
  TOLD_OF_IT,
  WORTH,
} from "../words/mending.ts";
import {
  inMeasure,
  isFigure,
  isSkipped,
  type Mend,
  nameOf,
  type Of,
  ofPiece,
  type Side,
  side,
  takeOf,
  takeOld,
  takeTo,
} from "./mended.ts";
import { isForOther } from "./newest-changes.ts";
import { notThat } from "./not-that.ts";

/*
 * Corrections of an earlier note: what they speak of on one side of a few words, what becomes of it on the other.
 * Every word of both sides must be taken by one of them; else it is no correction.
 */

/** A correction, and whether it can be nothing else: "the primer was 18" may be a new note. */
interface Correction {
  mend: Mend;
  isSure: boolean;
}

const isNot = ({ text }: Tok): boolean => text === "not";

/** Whether a line, or a part of it, may say a correction; far cheaper than to see which. */
export const mayMend = (line: Units): boolean => corrections.mayFire(line) || line.tokens.some(isNot);

/** A correction of an earlier note that a whole line says; null where it says none. */
export function mendOf(line: Units, today: Day, trace?: Trace[]): Correction | null {
  if (!mayMend(line)) return null;
  const tokens = apart(line.tokens);
  const all = corrections.fired(tokens, tokens === line.tokens ? line : undefined);
  if (all.length === 0 && !tokens.some(isNot)) return null;
  const isTrade = line.tokens.some((token) => headsOf(token).some(({ kind }) => kind === "trade"));
  if (!isTrade && line.tokens.some(({ text }) => WORTH.has(text))) return null;
  if (isForOther(tokens) || OF_A_SUM.test(textOf(tokens)) || tokens.some((_, at) => isFigure(tokens, at)))
    return null;
  let doubtful: Correction | null = null;
  for (const fired of all) {
    const words = tokens.slice(fired.from, fired.to).map(({ text }) => text);
    const [before, after] = [tokens.slice(0, fired.from), tokens.slice(fired.to)];
    const made =
      mendFrom(fired.effect, before, after, words, today) ??
      (fired.effect === "remove" ? null : mendFrom(fired.effect, before, withoutReason(after), words, today));
    if (!made) continue;
    made.mend.of = withKindOf(made.mend, words);
    if (isOtherCost(made.mend, words, after)) continue;
    inMeasure(made.mend);
    trace?.push({ table: "corrections", row: fired.row, words: words.join(" ") });
    if (made.isSure) return made;
    doubtful ??= made;
  }
  return sure(notThat(tokens, today)) ?? doubtful;
}

/** "hutch cost 65" speaks of its purchase, "the desk sold for 120" and a fee of a sale. */
function withKindOf({ of = {}, to = {} }: Mend, words: readonly string[]): Of {
  const isOfPiece = of.pieces !== undefined || of.number !== undefined;
  // "the hutch deposit was from mara": whose it was, and no place.
  if (of.kind === "hold" && to.source !== undefined) {
    to.buyer = to.source;
    delete to.source;
  }
  // "the desk payment": what came in for it.
  if (of.kind === "pay" && isOfPiece) return { ...of, kind: "sell" };
  if (of.kind !== undefined) return of;
  const isOfSale =
    words.some((word) => SELLING.has(firstWord(word))) || to.method !== undefined || to.buyer !== undefined;
  if (to.fee !== undefined || (isOfPiece && isOfSale)) return { ...of, kind: "sell" };
  if (isOfPiece && to.source !== undefined) return { ...of, kind: "buy" };
  if (isOfPiece && to.amount !== undefined && words.includes("cost")) return { ...of, kind: "buy" };
  // "the headboard was free"
  if (isOfPiece && to.amount === 0) return { ...of, kind: "buy" };
  return isOfPiece && LISTING.has(words[0]!) ? { ...of, kind: "list" } : of;
}

/** "drove 25 miles for the buffet and it was free", "sold a cot 40, cost me 10": what was paid is not what is told there. */
const isOtherCost = ({ of, to }: Mend, words: readonly string[], after: readonly Tok[]): boolean => {
  const isMeasured = of?.kind === "drive" || of?.kind === "work";
  const isSaid = after[0]?.text === "me" || after[0]?.text === "us";
  const isPriced = isSaid && of?.amount !== undefined && (of.kind === "sell" || of.kind === "list");
  if (to?.amount === undefined || !(isMeasured || isPriced)) return false;
  return (isMeasured && to.amount === 0) || words.includes("cost");
};

const sure = (mend: Mend | null): Correction | null => mend && { mend, isSure: true };

function mendFrom(
  effect: CorrectionEffect,
  before: readonly Tok[],
  after: readonly Tok[],
  words: readonly string[],
  today: Day,
): Correction | null {
  switch (effect) {
    case "remove":
      return sure(removal(before, after, today));
    case "unsure": {
      const mend = removal(before, after, today);
      return sure(mend && { ...mend, isWrong: true });
    }
    case "mistake":
    case "wrong": {
      const mend = removal(after, before, today);
      return sure(mend && effect === "wrong" && after.length === 0 ? { ...mend, isWrong: true } : mend);
    }
    case "off":
    case "moved":
      return takenOff(before, after, today, effect === "moved" ? 2 : 1);
    case "rename":
      return sure(renamed(after));
    case "to":
      return changedTo(after, today);
    case "paid":
      return toldBehind(before, after, today, true);
    case "only":
      return toldBehind(before, after, today, false);
    case "change":
      return change(before, after, today, "certain");
    case "told":
      return isToldLater(before) ? null : change(before, after, today, isPresent(words) ? "present" : "told");
    case "newest":
      return ofNewest(before, after, today);
    case "either":
      return change(before, after, today, "either");
    case "denied":
      return change(before, after, today, "denied");
    case "none":
      return null;
  }
}

/** "the paint wasnt for the hutch": a cost that stays, and of no piece, or of the one said behind it. */
function takenOff(
  before: readonly Tok[],
  after: readonly Tok[],
  today: Day,
  pieces: 1 | 2,
): Correction | null {
  const said = side();
  const [old, now, ...others] = after.flatMap(({ mention }) => mention ?? []);
  const isSaid = others.length === 0 && (now !== undefined) === (pieces === 2);
  if (!old || !isSaid || !takeOf(before, said, today) || said.of.what === undefined) return null;
  return sure({ of: { ...said.of, kind: "spend", pieces: [old] }, to: { pieces: now ? [now] : [] } });
}

/** What is named is taken out; the other side says nothing. */
function removal(beside: readonly Tok[], told: readonly Tok[], today: Day): Mend | null {
  const [other, named] = [withoutExcuse(beside), withoutExcuse(told)];
  const said = side();
  // "undo that it was the mirror": why, and nothing of the mirror's own.
  if (named.some(({ text }) => TOLD_OF_IT.has(text))) return null;
  // "scratch that, sold bench 45": another sentence is another note.
  if (named.slice(0, -1).some(({ kind, text }) => kind === "mark" && text !== "#")) return null;
  if (!takeOf(named, said, today) || !takeOf(other, side(), today) || !other.every(isSkipped)) return null;
  return isNamed(said.of) ? { of: said.of, removed: true } : null;
}

/** "sconces cost 18, forgot the tax": what holds nothing that a note is made of only says why. */
export function withoutReason(tokens: readonly Tok[]): readonly Tok[] {
  const at = tokens.findIndex(({ text }) => text === ",");
  const isReason =
    at >= 0 &&
    tokens.slice(at).every(({ kind, roles }) => kind === "mark" || (kind === "word" && !roles.method));
  return isReason ? tokens.slice(0, at) : tokens;
}

/** It is of no other note: no value, no day, and no piece by its name. */
const namesNothing = ({ kind, mention }: Tok): boolean =>
  kind === "mark" || kind === "word" || kind === "grain" || (kind === "piece" && mention!.name === undefined);

/** "the note about #8, it was a mistake", "… delete it": said again. "the sandpaper, because i took it back": why. */
function withoutExcuse(said: readonly Tok[]): readonly Tok[] {
  const why = said.findIndex(
    ({ text }, at) => at > 0 && OPENS_REASON.has(text) && said.slice(at).every(namesNothing),
  );
  const tokens = why < 0 ? said : said.slice(0, said[why - 1]!.kind === "mark" ? why - 1 : why);
  const at = tokens.findIndex(({ kind, text }) => kind === "mark" && text !== "#");
  if (at < 0) return tokens;
  // "delete the drive, dad drove"
  if (tokens.slice(at).every(({ text }) => EXCUSES.has(text))) return tokens.slice(0, at);
  return withoutReason(tokens);
}

/** Something beside "the last one" is named. */
function isNamed({ back = 0, ...of }: Of): boolean {
  return Object.keys(of).length > 0 || back > 1;
}

/** "i actually paid 65 for the hutch", "i only drove 18 miles on sunday": both sides behind the words. */
function toldBehind(
  before: readonly Tok[],
  after: readonly Tok[],
  today: Day,
  isSure: boolean,
): Correction | null {
  const said = side();
  const isValue = ({ kind }: Tok) => kind === "amount" || kind === "duration" || kind === "miles";
  if (!before.every(isSkipped) || !takeTo(after.filter(isValue), said, today)) return null;
  const rest = after.filter((token) => !isValue(token));
  if (!takeOf(rest, said, today) || !isNamed(said.of) || Object.keys(said.to).length !== 1) return null;
  const isOfPiece = said.of.pieces !== undefined || said.of.number !== undefined;
  const isPaid = said.of.kind === undefined || (said.of.kind === "spend" && said.of.what === undefined);
  const kind = isPaid && isOfPiece ? "buy" : said.of.kind;
  return { mend: { of: kind ? { ...said.of, kind } : said.of, to: said.to }, isSure };
}

function renamed(tokens: readonly Tok[]): Mend | null {
  const [piece, ...rest] = tokens.filter(({ text }) => !RENAMING.has(text));
  if (piece?.kind !== "piece") return null;
  const { name, number, traits } = piece.mention!;
  // "rename #4 sideboard": the number and the new name are said as one piece.
  if (rest.length === 0)
    return number !== undefined && name ? { of: { number }, to: nameOf({ name, traits }) } : null;
  const [to, ...more] = rest;
  const named =
    to?.kind === "piece"
      ? to.mention!
      : rest.every(({ kind }) => kind === "word")
        ? { name: textOf(rest) }
        : null;
  return named && (to?.kind !== "piece" || more.length === 0)
    ? { of: ofPiece(piece.mention!), to: nameOf(named) }
    : null;
}

/** "change the paint to 14", "change paint from 12 to 14", "move the knobs to the desk". */
function changedTo(tokens: readonly Tok[], today: Day): Correction | null {
  const at = tokens.findLastIndex(
    ({ text }) => text === "to" || text === "into" || text === "as" || text === "onto",
  );
  if (at < 0) return null;
  return change(tokens.slice(0, at), tokens.slice(at + 1), today, "certain");
}

/** From what stands before to what follows; `how` sure the words between are that it is a correction. */
function change(
  before: readonly Tok[],
  after: readonly Tok[],
  today: Day,
  how: "certain" | "told" | "present" | "either" | "denied",
): Correction | null {
  const said = side();
  // "and another chair, this one was 12"
  if (before.some(({ kind, text }) => kind === "piece" && saysOneMore(text))) return null;
  if (!takeOf(before, said, today)) return null;
  // "both were yesterday" is of several notes.
  if (said.of.pieces?.some(({ it, count = 1 }) => it && count > 1)) return null;
  const old = after.findIndex(({ text }) => OLD.has(text));
  const value = old < 0 ? after : after.slice(0, old);
  if (!takeTo(value, said, today)) return null;
  const isDenied = old >= 0;
  if (isDenied && !takeOld(after.slice(old), said, today)) return null;
  if (Object.keys(said.to).length === 0) return null;
  // "the fee on the desk was 5, i left it out"
  if (said.to.fee !== undefined && said.to.traits !== undefined) return null;
  // "it was 4 chairs not 3": so many, and no other pieces.
  const [counted, ...more] = said.to.pieces ?? [];
  if (isDenied && (counted?.count ?? 0) > 1 && more.length === 0 && said.of.amount !== undefined) return null;
  // "the 4.05 fee should be 4.50"
  if (said.isFee && said.of.amount !== undefined && Object.keys(said.of).length === 1) {
    said.of.fee = said.of.amount;
    delete said.of.amount;
  }
  // "fee on that was 4.50"
  if (said.isFee && !isNamed(said.of) && before.some(({ text }) => POINTING.has(text))) said.of.back = 1;
  if (!isNamed(said.of) && !said.isFee) return null;
  if (how === "denied" && !isDenied) return null;
  if (how === "either" && said.to.buyer === undefined && said.to.source === undefined) return null;
  // "loan payment is 110", "desk is worth 140": what it is by now corrects nothing that was noted.
  if (how === "present" && !isDenied && said.to.amount !== undefined) return null;
  // "desk was yesterday": the newest note of it.
  const isDayOf = said.of.pieces !== undefined && Object.keys(said.of).length === 1;
  if (how === "told" && isDayOf && Object.keys(said.to).join() === "date") said.of.back = 1;
  const isSaid = how === "told" || how === "present";
  const isSure = how === "certain" || isDenied || (isSaid && saysEnough(said));
  if (!isSure && isSaid && !pointsOut(before) && !isOldBesideNew(said) && !isDaysIncome(said)) return null;
  return { mend: { of: said.of, to: said.to }, isSure };
}

/** "sold the bench, it was 60 cash", "bought a desk it was forty bucks": the note goes on to tell its own value. */
function isToldLater(before: readonly Tok[]): boolean {
  const [last, it] = before.slice(-2);
  const opens = before.findIndex((token) => !isSkipped(token));
  const isBehindNote = last?.kind === "mark" || last?.kind === "piece";
  return isBehindNote && IT_WAS.has(it?.text ?? "") && opens >= 0 && isVerb(before[opens]!);
}

const isPresent = ([word]: readonly string[]): boolean => word === "is" || word === "are";

/** "that was for the hutch": of the newest note of this person, what is said becomes of it. */
function ofNewest(before: readonly Tok[], after: readonly Tok[], today: Day): Correction | null {
  const said = side();
  if (!before.every(isSkipped) || !takeTo(after, said, today)) return null;
  const { pieces } = said.to;
  return pieces ? sure({ of: { back: 1 }, to: { pieces } }) : null;
}

/** "sander 59 was 79": mended, or marked down? */
const isOldBesideNew = ({ of, to }: Side): boolean => of.amount !== undefined && to.amount !== undefined;

/** "tips yesterday were 18": what came in that day, if nothing is noted of it. */
const isDaysIncome = ({ of, to }: Pick<Side, "of" | "to">): boolean =>
  of.kind === "income" && of.date !== undefined && of.amount === undefined && to.amount !== undefined;

/** "the primer was 18": a thing that both sides know. */
const pointsOut = ([first]: readonly Tok[]): boolean => first?.text === "the" || first?.text === "my";

/** "that sale was yesterday", "the paint on the 3rd was 14": enough without "actually"; "fabric was 38" is a purchase. */
function saysEnough({ of, to, points, isFee, isTold, field }: Side): boolean {
  const names = Object.keys(of).filter((field) => field !== "amount");
  if ((isTold && of.amount !== undefined) || (names.length === 0 && !isFee)) return false;
  const fields = Object.keys(to);
  if (of.number !== undefined && fields.every((field) => field === "traits")) return true;
  // "desk was 140 new": what it cost somebody else.
  if (to.amount !== undefined && to.traits !== undefined) return false;
  if (isDaysIncome({ of, to })) return points === true;
  if (isFee || points || of.date !== undefined || of.back !== undefined) return true;
  if (of.amount !== undefined) return to.amount === undefined;
  if (
    fields.every((field) => field === "date" || field === "pieces" || field === "method" || field === "buyer")
  )
    return of.kind !== undefined || of.what !== undefined || field !== undefined;
  if (of.kind !== undefined && of.what === undefined && of.kind !== "work") return true;
  return (
    to.amount !== undefined && (of.pieces !== undefined || of.number !== undefined) && of.kind === undefined
  );
}
