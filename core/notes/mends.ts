import type { Day } from "../calendar.ts";
import { apart } from "./apart.ts";
import type { Tok } from "./clause.ts";
import { headsOf } from "./heads.ts";
import { pastDay } from "./quantities/days.ts";
import type { Kind, Mention, ReadingFields } from "./reading.ts";
import type { Trace } from "./rows/apply.ts";
import { type CorrectionEffect, corrections } from "./rows/corrections.ts";
import type { Units } from "./rows/pattern.ts";
import { centsOfToken } from "./slots/money.ts";
import { KIND_NOUNS } from "./words/kinds.ts";
import { LABOR_NAMES } from "./words/labors.ts";

/*
 * Corrections of an earlier note: what they speak of on one side of a few words, what becomes of it on the other.
 * Every word of both sides must be taken by one of them; else it is no correction.
 */

export type Mend = ReadingFields["mend"];
type Of = NonNullable<Mend["of"]>;
type To = NonNullable<Mend["to"]>;

interface Side {
  of: Of;
  to: To;
  /** Something of money was named that is no main amount. */
  isFee: boolean;
  /** "that sale", "those knobs": it points at something noted. */
  points: boolean;
  /** A verb was said: with an amount beside it that is a whole note of its own. */
  isTold: boolean;
}

const side = (): Side => ({ of: {}, to: {}, isFee: false, points: false, isTold: false });

const SKIPPED = new Set(
  (
    "the a an my our note notes entry entries expense cost costs thing one ones amount price from on for of at in with i it we this please pls oh oops " +
    "no nope wait sorry actually and ok okay hey um uh just all total purchase's record by as was were is are , . ! - : ; hours hour time"
  ).split(" "),
);
const POINTING = new Set(["that", "those", "these", "this"]);
const LAST = new Set(["last", "latest", "newest", "recent", "previous"]);
const OLD = new Set(["not", "instead", "rather"]);

/** A correction of an earlier note that a whole line says; null where it says none. */
export function mendOf(line: readonly Tok[], units: Units, today: Day, trace?: Trace[]): Mend | null {
  if (!corrections.mayFire(units) && !line.some(({ text }) => text === "not")) return null;
  const tokens = apart(line);
  for (const fired of corrections.fired(tokens)) {
    const before = tokens.slice(0, fired.from);
    const after = tokens.slice(fired.to);
    const made = mendFrom(fired.effect, before, after, today);
    if (!made) continue;
    const words = tokens.slice(fired.from, fired.to).map(({ text }) => text);
    made.of = withKindOf(made, words);
    trace?.push({ table: "corrections", row: fired.row, words: words.join(" ") });
    return made;
  }
  return notThat(tokens, today);
}

/** "hutch cost 65" speaks of its purchase, "the desk sold for 120" and a fee of a sale. */
function withKindOf({ of = {}, to = {} }: Mend, words: readonly string[]): Of {
  if (of.kind !== undefined) return of;
  const isOfPiece = of.pieces !== undefined || of.number !== undefined;
  if (to.fee !== undefined || (isOfPiece && words[0] === "sold")) return { ...of, kind: "sell" };
  if (isOfPiece && to.amount !== undefined && words.includes("cost")) return { ...of, kind: "buy" };
  return isOfPiece && words[0] === "listed" ? { ...of, kind: "list" } : of;
}

/** Words before a value alone that correct the newest note: "i paid 25", "it took 2 hours". */
const VALUE_TOKENS_MAX = 6;
const TOLD = new Set([
  "i paid",
  "cost me",
  "it cost me",
  "it cost",
  "i gave",
  "it took",
  "took me",
  "it took me",
  "i spent",
]);

/** "i paid 25", "it took 2 hours" as the whole line: the value of the newest note; null where it says anything else. */
export function valueSaid(line: readonly Tok[]): ReadingFields["fix"] | null {
  if (line.length > VALUE_TOKENS_MAX) return null;
  const value = line.find(({ kind }) => kind === "amount" || kind === "duration");
  const rest = apart(line.filter((token) => token !== value && token.kind !== "mark"));
  if (!value || value.each || !TOLD.has(words(rest))) return null;
  if (value.kind === "duration") return value.minutes === undefined ? null : { minutes: value.minutes };
  const found = centsOfToken(value);
  return "cents" in found ? { amount: found.cents } : null;
}

function mendFrom(
  effect: CorrectionEffect,
  before: readonly Tok[],
  after: readonly Tok[],
  today: Day,
): Mend | null {
  switch (effect) {
    case "remove":
      return removal(before, after, today);
    case "mistake":
      return removal(after, before, today);
    case "rename":
      return renamed(after);
    case "to":
      return changedTo(after, today);
    case "change":
      return change(before, after, today, "certain");
    case "told":
      return change(before, after, today, "told");
    case "denied":
      return change(before, after, today, "denied");
  }
}

/** What is named is taken out; the other side says nothing. */
function removal(other: readonly Tok[], named: readonly Tok[], today: Day): Mend | null {
  const said = side();
  // "scratch that, sold bench 45": another sentence is another note.
  if (named.slice(0, -1).some(({ kind, text }) => kind === "mark" && text !== "#")) return null;
  if (!takeOf(named, said, today) || !takeOf(other, side(), today) || !other.every(isSkipped)) return null;
  return isNamed(said.of) ? { of: said.of, removed: true } : null;
}

/** Something beside "the last one" is named. */
function isNamed({ back: _, ...of }: Of): boolean {
  return Object.keys(of).length > 0;
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
        ? { name: words(rest) }
        : null;
  return named && (to?.kind !== "piece" || more.length === 0)
    ? { of: ofPiece(piece.mention!), to: nameOf(named) }
    : null;
}

const RENAMING = new Set(["to", "as", "the", "a", "an", "into", "my"]);
const words = (tokens: readonly Tok[]): string => tokens.map(({ text }) => text).join(" ");

const nameOf = ({ name, traits }: Pick<Mention, "name" | "traits">): To => ({
  ...(name ? { name } : {}),
  ...(traits && traits.length > 0 ? { traits } : {}),
});

const ofPiece = (mention: Mention): Of =>
  mention.number !== undefined && mention.name === undefined
    ? { number: mention.number }
    : { pieces: [mention], ...(mention.number !== undefined ? { number: mention.number } : {}) };

/** "change the paint to 14", "change paint from 12 to 14", "move the knobs to the desk". */
function changedTo(tokens: readonly Tok[], today: Day): Mend | null {
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
  how: "certain" | "told" | "denied",
): Mend | null {
  const said = side();
  if (!takeOf(before, said, today)) return null;
  const old = after.findIndex(({ text }) => OLD.has(text));
  const value = old < 0 ? after : after.slice(0, old);
  if (!takeTo(value, said, today)) return null;
  const isDenied = old >= 0;
  if (isDenied && !takeOld(after.slice(old), said, today)) return null;
  if (Object.keys(said.to).length === 0) return null;
  if (!isNamed(said.of) && !said.isFee) return null;
  if (how === "denied" && !isDenied) return null;
  if (how === "told" && !isDenied && !saysEnough(said)) return null;
  return { of: said.of, to: said.to };
}

/** "that sale was yesterday", "the paint on the 3rd was 14": enough without "actually"; "fabric was 38" is a purchase. */
function saysEnough({ of, to, points, isFee, isTold }: Side): boolean {
  const names = Object.keys(of).filter((field) => field !== "amount");
  if ((isTold && of.amount !== undefined) || (names.length === 0 && !isFee)) return false;
  const fields = Object.keys(to);
  if (isFee || points || of.date !== undefined || of.amount !== undefined || of.back !== undefined)
    return true;
  if (
    fields.every((field) => field === "date" || field === "pieces" || field === "method" || field === "buyer")
  )
    return of.kind !== undefined || of.what !== undefined;
  if (of.kind !== undefined && of.what === undefined && of.kind !== "work") return true;
  return (
    to.amount !== undefined && (of.pieces !== undefined || of.number !== undefined) && of.kind === undefined
  );
}

/** "24 not 20", "paint 14 not 12": the old amount names the note. */
function notThat(tokens: readonly Tok[], today: Day): Mend | null {
  const at = tokens.findIndex(({ text }) => text === "not");
  const now = tokens[at - 1];
  const then = tokens[at + 1];
  if (at < 1 || !now || now.kind !== "amount" || then?.kind !== "amount") return null;
  const said = side();
  const rest = [...tokens.slice(0, at - 1), ...tokens.slice(at + 2)];
  if (!takeOf(rest, said, today) || !takeTo([now], said, today)) return null;
  const old = centsOfToken(then);
  if (!("cents" in old)) return null;
  if (said.isFee) return { of: said.of, to: said.to };
  return { of: { ...said.of, amount: old.cents }, to: said.to };
}

const isSkipped = ({ kind, text, roles }: Tok): boolean =>
  kind === "mark" || SKIPPED.has(text) || (kind === "word" && roles.filler === true && !roles.heads);

/** Takes every token as part of what is spoken of; false where one is none. */
function takeOf(tokens: readonly Tok[], said: Side, today: Day): boolean {
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (POINTING.has(token.text)) said.points ||= tokens.slice(0, at).every(isSkipped);
    else if (!takeOneOf(token, tokens[at + 1], said, today)) return false;
  }
  return true;
}

function takeOneOf(token: Tok, next: Tok | undefined, said: Side, today: Day): boolean {
  const { of } = said;
  const { kind, text, roles } = token;
  if (LAST.has(text)) {
    of.back = 1;
    return true;
  }
  if (text === "fee" || text === "fees") {
    said.isFee = true;
    return true;
  }
  const noun = KIND_NOUNS[text];
  if (noun && !(roles.supply && !next)) {
    of.kind = noun;
    said.isTold ||= headsOf(token).some(({ light }) => !light);
    return true;
  }
  switch (kind) {
    case "piece":
      Object.assign(of, ofPiece(token.mention!));
      return true;
    case "amount": {
      const found = centsOfToken(token);
      if ("cents" in found) of.amount = found.cents;
      return "cents" in found;
    }
    case "day": {
      const found = pastDay(token.said!, today);
      if ("day" in found) of.date = found.day;
      return "day" in found;
    }
    case "duration":
    case "miles":
      of.kind = kind === "miles" ? "drive" : "work";
      return true;
    case "mark":
      return true;
    case "word":
      return takeWordOf(token, said);
    default:
      return false;
  }
}

function takeWordOf(token: Tok, said: Side): boolean {
  const { of } = said;
  const { text, roles } = token;
  if (roles.supply !== undefined) {
    of.kind ??= "spend";
    of.what = of.what === undefined ? text : `${of.what} ${text}`;
    return true;
  }
  if (roles.labor) {
    of.kind ??= "work";
    of.what = LABOR_NAMES.get(text) ?? text;
    return true;
  }
  if (roles.stream !== undefined) {
    of.kind ??= "income";
    of.what = roles.stream;
    return true;
  }
  const [head] = headsOf(token).filter(({ light, tail }) => !light && tail.length === 0);
  if (head && !CORRECTING.has(head.kind)) {
    of.kind ??= head.kind;
    said.isTold = true;
    return true;
  }
  if (text === "loan") of.kind = "pay";
  return isSkipped(token) || text === "loan";
}

const CORRECTING: ReadonlySet<Kind> = new Set<Kind>(["fix", "undo", "mend", "ask"]);

/** Takes every token as part of what becomes of it. */
function takeTo(tokens: readonly Tok[], said: Side, today: Day): boolean {
  const { to } = said;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    const { kind, text, roles } = token;
    const before = tokens[at - 1]?.text ?? "";
    if (kind === "amount") {
      const found = centsOfToken(token);
      if (!("cents" in found) || to.amount !== undefined || to.fee !== undefined) return false;
      if (said.isFee) to.fee = found.cents;
      else to.amount = found.cents;
    } else if (kind === "duration" && token.minutes !== undefined) to.minutes = token.minutes;
    else if (kind === "miles" && token.miles !== undefined) to.miles = token.miles;
    else if (kind === "day") {
      const found = pastDay(token.said!, today);
      if (!("day" in found)) return false;
      to.date = found.day;
    } else if (kind === "piece") takePieceTo(token, before, said);
    else if (roles.method !== undefined) to.method = roles.method;
    else if (before === "to" && kind === "word" && !isSkipped(token)) to.buyer = restOf(tokens, at);
    else if ((before === "from" || before === "at") && kind === "word" && !isSkipped(token))
      to.source = restOf(tokens, at);
    else if (to.buyer !== undefined || to.source !== undefined) continue;
    else if (!isSkipped(token) && text !== "to" && text !== "for") return false;
  }
  return true;
}

/** A name runs to the end of its side. */
const restOf = (tokens: readonly Tok[], at: number): string =>
  tokens
    .slice(at)
    .filter((token) => !isSkipped(token))
    .map(({ text }) => text)
    .join(" ");

/** "were for the desk" gives a cost its piece; "#4 is a sideboard" gives a piece its name. */
function takePieceTo(token: Tok, before: string, { of, to }: Side): void {
  const mention = token.mention!;
  const isOfPiece = (of.pieces !== undefined || of.number !== undefined) && of.kind === undefined;
  if (isOfPiece && mention.number === undefined && before !== "for" && before !== "on")
    Object.assign(to, nameOf(mention));
  else to.pieces = [...(to.pieces ?? []), mention];
}

/** "not 12", "instead of the hutch": what it was, which tells which note is meant. */
function takeOld(tokens: readonly Tok[], said: Side, today: Day): boolean {
  const old = side();
  const rest = tokens.filter(({ text }) => !OLD.has(text) && text !== "than");
  if (!takeOf(rest, old, today)) return false;
  const { pieces, number, ...fields } = old.of;
  if (said.to.fee !== undefined) delete fields.amount;
  Object.assign(said.of, fields);
  // The old piece of a cost tells which cost; the old name of a piece is told by the piece itself.
  if (said.to.pieces)
    Object.assign(said.of, pieces ? { pieces } : {}, number !== undefined ? { number } : {});
  return true;
}
