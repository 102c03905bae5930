import type { Day } from "../../calendar.ts";
import { placeBefore, type Tok, textOf } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { decimalText } from "../quantities/amounts.ts";
import { pastDay } from "../quantities/days.ts";
import type { Kind, Mention, ReadingFields } from "../reading.ts";
import { centsOfToken } from "../slots/money.ts";
import { bears } from "../verbs.ts";
import { ARTICLES } from "../words/filler.ts";
import { KIND_NOUNS } from "../words/kinds.ts";
import { LABOR_NAMES } from "../words/labors.ts";
import {
  BACK,
  ENTERED,
  FIELDS,
  LAST,
  OLD,
  POINTING,
  SAME_AS_BEFORE,
  SKIPPED,
  TRIPS,
} from "../words/mending.ts";
import { FOR_NOTHING } from "../words/money.ts";
import { ONE, PLACES } from "../words/pieces.ts";

/* The two sides of a correction: what it speaks of, and what becomes of it. */

export type Mend = ReadingFields["mend"];
export type Of = NonNullable<Mend["of"]>;
export type To = NonNullable<Mend["to"]>;

export interface Side {
  of: Of;
  to: To;
  /** Something of money was named that is no main amount. */
  isFee: boolean;
  /** "that sale", "those knobs": it points at something noted. */
  points: boolean;
  /** "the buyer of the desk": which field becomes what follows. */
  field?: "buyer" | "source";
  /** A verb was said: with an amount beside it that is a whole note of its own. */
  isTold: boolean;
}

export const side = (): Side => ({ of: {}, to: {}, isFee: false, points: false, isTold: false });

/** "the vanity is a gold mine": what it is like, and no trait of it. */
export const isFigure = (tokens: readonly Tok[], at: number): boolean =>
  tokens[at]!.roles.trait === true &&
  /^an?$/.test(tokens[at - 1]?.text ?? "") &&
  tokens[at + 1]?.kind === "word" &&
  !tokens[at + 1]!.roles.trait &&
  !ONE.has(tokens[at + 1]!.text) &&
  !OLD.has(tokens[at + 1]!.text);

export const nameOf = ({ name, traits }: Pick<Mention, "name" | "traits">): To => ({
  ...(name ? { name } : {}),
  ...(traits && traits.length > 0 ? { traits } : {}),
});

export const ofPiece = (mention: Mention): Of =>
  mention.number !== undefined && mention.name === undefined
    ? { number: mention.number }
    : { pieces: [mention], ...(mention.number !== undefined ? { number: mention.number } : {}) };

export const isSkipped = ({ kind, text, roles }: Tok): boolean =>
  kind === "mark" || SKIPPED.has(text) || (kind === "word" && roles.filler === true && !roles.heads);

/** Takes every token as part of what is spoken of; false where one is none. */
export function takeOf(tokens: readonly Tok[], said: Side, today: Day): boolean {
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    const back = backAt(tokens, at);
    if (back) {
      said.of.back = back.notes;
      at += back.words - 1;
    } else if (POINTING.has(token.text)) said.points ||= tokens.slice(0, at).every(isSkipped);
    else if (!takeOneOf(token, tokens[at + 1], said, today)) return false;
  }
  return true;
}

/** "last", "before last", "second to last", "2 notes ago": how many notes back, and in how many words. */
function backAt(tokens: readonly Tok[], at: number): { notes: number; words: number } | null {
  const [first = "", second = "", third = ""] = tokens.slice(at, at + 3).map(({ text }) => text);
  if (LAST.has(first)) return { notes: 1, words: 1 };
  if (first === "before" && LAST.has(second)) return { notes: 2, words: 2 };
  if (first === "before" && second === "the" && LAST.has(third)) return { notes: 2, words: 3 };
  const counted = BACK[first];
  if (counted !== undefined && second === "to" && LAST.has(third)) return { notes: counted, words: 3 };
  return counted !== undefined && LAST.has(second) ? { notes: counted, words: 2 } : null;
}

function takeOneOf(token: Tok, next: Tok | undefined, said: Side, today: Day): boolean {
  const { of } = said;
  const { kind, text, roles } = token;
  if (text === "fee" || text === "fees") {
    said.isFee = true;
    return true;
  }
  const noun = KIND_NOUNS[text];
  if (noun && !(roles.supply && !next)) {
    // "undo the last paint and bought lamp 5": another note.
    if (of.kind !== undefined && of.kind !== noun && headsOf(token).some(({ light }) => !light)) return false;
    of.kind = noun;
    said.isTold ||= headsOf(token).some(({ light }) => !light);
    return true;
  }
  switch (kind) {
    case "piece": {
      // "remove the first mirror"
      const place = PLACES[text.split(" ")[0]!];
      Object.assign(of, ofPiece({ ...(place === undefined ? {} : { place }), ...token.mention! }));
      return true;
    }
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
      if (isOfOther(said, "work")) return false;
      of.kind = "work";
      if (token.minutes !== undefined) of.minutes = token.minutes;
      return true;
    case "miles":
      if (isOfOther(said, "drive")) return false;
      of.kind = "drive";
      if (token.miles !== undefined) of.miles = token.miles;
      return true;
    case "mark":
      return true;
    case "word":
      return takeWordOf(token, said);
    default:
      return false;
  }
}

/** "finished bench, and that hour was two": a note of its own stands before the measure. */
const isOfOther = ({ of, isTold }: Side, kind: Kind): boolean =>
  isTold && of.kind !== undefined && of.kind !== kind;

function takeWordOf(token: Tok, said: Side): boolean {
  const { of } = said;
  const { text, roles } = token;
  const field = FIELDS[text];
  if (field) {
    said.field = field;
    return true;
  }
  // "get rid of the second lamp entry": the note, and no fee at the door.
  if (roles.supply !== undefined && !(SKIPPED.has(text) && of.pieces)) {
    // "the purchase of paint" was spending; "sold lamp 20, the paint" are two notes.
    if (of.kind === undefined || of.kind === "buy") of.kind = "spend";
    if (of.kind !== "spend") return false;
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
  if (ENTERED.has(text)) return true;
  const [head] = headsOf(token).filter(({ light, tails }) => !light && tails === null);
  if (head && !bears(head.kind, "corrects")) {
    of.kind ??= head.kind;
    said.isTold = true;
    return true;
  }
  if (text === "loan") of.kind = "pay";
  return isSkipped(token) || text === "loan" || roles.method !== undefined;
}

/** Takes every token as part of what becomes of it. */
export function takeTo(tokens: readonly Tok[], said: Side, today: Day): boolean {
  const { to } = said;
  // "to the same lady as last time": somebody whom only the person knows.
  if (tokens.some(({ text }) => SAME_AS_BEFORE.has(text))) return false;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    const { kind, text, roles } = token;
    const before = leadOf(tokens, at);
    // "All of it to the loan": no loan is somebody who buys.
    if (before === "to" && /\bloans?$/.test(restOf(tokens, at))) return false;
    if (kind === "amount") {
      const found = centsOfToken(token);
      if (!("cents" in found) || to.amount !== undefined || to.fee !== undefined) return false;
      if (said.isFee) to.fee = found.cents;
      else to.amount = found.cents;
    } else if (kind === "word" && FOR_NOTHING.has(text) && to.amount === undefined && !said.isFee)
      to.amount = 0;
    else if (kind === "duration" && token.minutes !== undefined) {
      // "another 2h on desk, 5 hours total": two times are not one.
      if (to.minutes !== undefined) return false;
      to.minutes = token.minutes;
    } else if (kind === "miles" && token.miles !== undefined) {
      if (to.miles !== undefined) return false;
      to.miles = token.miles;
    } else if (kind === "day") {
      const found = pastDay(token.said!, today);
      if (!("day" in found)) return false;
      to.date = found.day;
    } else if (kind === "piece") takePieceTo(token, before, said);
    else if (roles.method !== undefined) to.method = roles.method;
    else if (said.field && kind === "word" && !isSkipped(token)) to[said.field] ??= restOf(tokens, at);
    else if (before === "to" && kind === "word" && !isSkipped(token)) to.buyer = restOf(tokens, at);
    else if ((before === "from" || before === "at") && kind === "word" && !isSkipped(token)) {
      // "mirror was from the flea market, stool from my aunt": of two pieces.
      if (to.source !== undefined) return false;
      to.source = restOf(tokens, at);
    } else if (to.buyer !== undefined || to.source !== undefined) continue;
    else if (kind === "word" && roles.trait && isPieceAlone(said)) to.traits = [...(to.traits ?? []), text];
    // "gas was for the buffet trip"
    else if (to.pieces !== undefined && TRIPS.has(text)) continue;
    else if (!isSkipped(token) && text !== "to" && text !== "for") return false;
  }
  return true;
}

/** The word before, articles aside: "to the neighbor". */
function leadOf(tokens: readonly Tok[], at: number): string {
  return tokens[placeBefore(tokens, at - 1, ARTICLES)]?.text ?? "";
}

/** A name runs to the end of its side. */
const restOf = (tokens: readonly Tok[], at: number): string =>
  textOf(tokens.slice(at).filter((token) => !isSkipped(token)));

const isPieceAlone = ({ of }: Pick<Side, "of">): boolean =>
  (of.pieces !== undefined || of.number !== undefined) && of.kind === undefined;

/** "were for the desk" gives a cost its piece; "#4 is a sideboard" gives a piece its name. */
function takePieceTo(token: Tok, before: string, { of, to }: Side): void {
  const mention = token.mention!;
  if (isPieceAlone({ of }) && mention.number === undefined && before !== "for" && before !== "on")
    Object.assign(to, nameOf(mention));
  else to.pieces = [...(to.pieces ?? []), mention];
}

/** A bare number of a work below this is of hours. */
export const HOURS_MAX = 10_00;

/** "the drive was 31 not 13", "hours on the desk should be 2": no money is told of a drive or a work. */
export function inMeasure({ of, to }: Mend): void {
  // "3 hours not 2": the old number is of that measure as well.
  if (to?.minutes !== undefined || to?.miles !== undefined) delete of?.amount;
  if (to?.amount === undefined) return;
  if (of?.kind === "drive") to.miles = decimalText({ digits: to.amount, scale: 2 });
  else if (of?.kind === "work") to.minutes = Math.round((to.amount / 100) * (to.amount < HOURS_MAX ? 60 : 1));
  else return;
  delete to.amount;
  delete of.amount;
}

/** "not 12", "instead of the hutch": what it was, which tells which note is meant. */
export function takeOld(tokens: readonly Tok[], said: Side, today: Day): boolean {
  // "to mike not bob": who it was tells nothing more.
  if (said.to.buyer !== undefined || said.to.source !== undefined) return true;
  const old = side();
  const rest = tokens.filter(({ text }) => !OLD.has(text) && text !== "than");
  if (!takeOf(rest, old, today)) return false;
  const { pieces, number, ...fields } = old.of;
  // "that fee was 4.50 not 4.05"
  if (said.to.fee !== undefined && fields.amount !== undefined) {
    fields.fee = fields.amount;
    delete fields.amount;
  }
  Object.assign(said.of, fields);
  // The old piece of a cost tells which cost; the old name of a piece is told by the piece itself.
  const then = pieces ?? (number === undefined ? undefined : [{ number, count: 1 }]);
  if (said.to.pieces && then) said.of.pieces = then;
  return true;
}
