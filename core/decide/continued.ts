import type { Books, Piece } from "../books/books.ts";
import type { Fact } from "../books/facts.ts";
import { pluralOf } from "../books/label.ts";
import type { Day } from "../calendar.ts";
import { show } from "../money.ts";
import { readMessage } from "../notes/read.ts";
import type { Reading } from "../notes/reading.ts";
import { nameWith } from "./pieces.ts";

/*
 * Messages that only go on from the note before them ("same again", "now 200", "only 1h", "30 min on 2"): said in
 * full with the newest note, the piece spoken of or its number, and read as any other.
 */

/** What a message may go on from. */
export interface Before {
  /** The person's newest note of the day, or the one replied to. */
  fact: Fact | undefined;
  /** The pieces spoken of. */
  pieces: readonly number[];
  books: Books;
  today: Day;
}

/** The readings of a message that goes on from the one before it; null where it says something of its own. */
export function continuedReadings(text: string, before: Before): Reading[] | null {
  const said = text
    .trim()
    .replace(/[.!]+$/, "")
    .replace(/\s+/g, " ")
    .toLowerCase();
  const corrected = onlyThat(said, before) ?? notForIt(said, before);
  if (corrected) return [{ ...corrected, text }];
  const both = soldOrOff(said, before);
  if (both)
    return [{ kind: "unclear", why: "Sold for that, or taken off the price?", could: both, text, line: 0 }];
  const full = againInFull(said, before) ?? ofThePiece(said, before) ?? byNumber(said, before);
  const read = full === null ? null : one(full, before.today);
  return read && [{ ...read, text }];
}

/** Words that point back, whatever else is said. */
const POINTS_BACK = /^(?:(?:no|oops|it|that|was|took|were|and|then|the)[, ]+){0,3}(?:only|same|ditto)\b/i;

/** Whether a message says nothing by itself, or leaves its piece to what was said before. */
export const mayGoOn = (text: string, readings: readonly Reading[]): boolean =>
  POINTS_BACK.test(text.trim()) ||
  readings.every(
    (reading) =>
      (reading.kind === "unclear" && !reading.could) || reading.missing?.includes("pieces") === true,
  );

const one = (text: string, today: Day): Reading | null => {
  const [reading, ...more] = readMessage(text, today);
  return reading && more.length === 0 && reading.kind !== "unclear" ? reading : null;
};

/** "only 1h", "it was only 6": the newest note's own measure corrected. */
function onlyThat(said: string, { fact, today }: Before): Reading | null {
  const value = /^(?:(?:no|oops|it|that|was|took|were)[, ]+){0,3}only (\$?[\d.]+ ?[a-z]*)$/.exec(said)?.[1];
  if (value === undefined || !fact) return null;
  const fix = one(`make that ${value}`, today);
  if (fix?.kind !== "fix") return null;
  const isItsOwn =
    (fix.minutes !== undefined && fact.kind === "work") ||
    (fix.miles !== undefined && fact.kind === "drive") ||
    (fix.amount !== undefined && fact.amount !== undefined);
  return isItsOwn ? fix : null;
}

/** "not for the hutch" behind a cost that went to it: it is the shop's. */
function notForIt(said: string, { fact, books }: Before): Reading | null {
  const name = /^(?:no |oops )?(?:that was |was |it was |its )?not (?:for|on) (?:the |my |that )?(.+)$/.exec(
    said,
  )?.[1];
  if (name === undefined || fact?.kind !== "spend" || fact.pieces.length === 0) return null;
  const isIts = fact.pieces.every((number) => name === `#${number}` || namesOf(books, number).includes(name));
  if (!isIts) return null;
  return { kind: "mend", of: { fact: fact.id }, to: { pieces: [] }, text: said, line: 0 };
}

function namesOf(books: Books, number: number): string[] {
  const piece = books.pieces.get(number)!;
  return [piece.name, pluralOf(piece.name), nameWith(piece)];
}

/** "same again", "another one 30", "the last one 10", "same for the bench": the newest note's kind once more. */
function againInFull(said: string, { fact, books }: Before): string | null {
  if (!fact) return null;
  const again = /^(?:and |then |oh |plus )?(?:the )?(?:same|same thing|same one) again((?: .+)?)$/.exec(said);
  if (again) return sentence(fact, books, { isWhole: true, values: again[1]!.trim() });
  const more =
    /^(?:and |then |oh |plus )?(?:another|another one|one more|(?:the )?last one)(?: for| at)? (\$?\d.*)$/.exec(
      said,
    );
  if (more) return sentence(fact, books, { values: more[1]! });
  const other =
    /^(?:and |then )?(?:the )?(?:same|same thing|ditto)(?: again)? (?:for|with|on|to) (.+?)( \$?\d[\d.]*(?: [a-z]+)?)?$/.exec(
      said,
    );
  if (!other || fact.pieces.length === 0) return null;
  return sentence(fact, books, { piece: other[1]!, values: other[2]?.trim() ?? "" });
}

interface Changes {
  /** The words of another piece. */
  piece?: string;
  /** What is said of amount, time and way of paying. */
  values?: string;
  /** As many pieces as then. */
  isWhole?: true;
}

/** The newest note in words, with what is changed of it. */
function sentence(fact: Fact, books: Books, { piece, values = "", isWhole }: Changes): string | null {
  const of = piece ?? (fact.pieces.length > 0 ? wordsOf(fact.pieces, books, isWhole === true) : "");
  if (of === null) return null;
  const method = "method" in fact.data && fact.data.method ? ` ${fact.data.method}` : "";
  const amount = values || `${show(fact.amount ?? 0)}${method}`;
  switch (fact.kind) {
    case "buy":
      return `bought ${of} ${amount}`;
    case "sell":
      return `sold ${of} ${amount}`;
    case "list":
      return `listed ${of} ${amount}`;
    case "finish":
      return `finished ${of} ${values}`;
    case "start":
      return `started ${of} ${values}`;
    case "work":
      return `${values || `${fact.data.minutes} min`} on ${piece ?? numbered(fact.pieces)}`;
    case "spend":
      return `${fact.data.what} ${amount}${spentOn(piece ?? numbered(fact.pieces))}`;
    case "income":
      return piece === undefined ? `${fact.data.stream} ${amount}` : null;
    case "drive":
      return piece === undefined ? `drove ${values || `${fact.data.miles} miles`}` : null;
    default:
      return null;
  }
}

/** Work and costs go on with the very pieces. */
const numbered = (pieces: readonly number[]): string => pieces.map((number) => `#${number}`).join(" and ");

const spentOn = (of: string): string => (of === "" ? "" : ` for ${of}`);

/** "lamp", or "2 lamps" where as many are meant; null where they go by several names. */
function wordsOf(pieces: readonly number[], books: Books, isWhole: boolean): string | null {
  const all = pieces.map((number) => books.pieces.get(number)!);
  const [first, ...others] = all;
  if (!first || others.some((piece) => nameWith(piece) !== nameWith(first))) return null;
  if (!isWhole || others.length === 0) return nameWith(first);
  return `${all.length} ${pluralOf(nameWith(first))}`;
}

/** The one piece spoken of, while it is here. */
function spokenOf({ pieces, books }: Before): Readonly<Piece> | null {
  const piece = pieces.length === 1 ? books.pieces.get(pieces[0]!) : undefined;
  return piece?.gone === null ? piece : null;
}

const VALUE = "(\\$?\\d[\\d,.]*k?)";
const LOWERED = new RegExp(
  `^(?:its |it's |it is )?(?:now|(?:down|dropped|lowered|cut|reduced|marked down) to|now at) ${VALUE}$`,
);
const POSTED = new RegExp(`^(?:its |it's |it is )?(?:up|posted|online|live)(?: now)? (?:for|at) ${VALUE}$`);
const TOOK = new RegExp(`^(?:they |he |she |i |we )?took ${VALUE}$`);

/** "up for 220", "now 200" of the piece spoken of. */
function ofThePiece(said: string, before: Before): string | null {
  const piece = spokenOf(before);
  if (!piece) return null;
  const posted = POSTED.exec(said)?.[1];
  if (posted)
    return piece.listed === null ? `listed #${piece.number} ${posted}` : `#${piece.number} now ${posted}`;
  const lowered = LOWERED.exec(said)?.[1];
  return lowered && piece.listed !== null ? `dropped #${piece.number} to ${lowered}` : null;
}

/** "took 200" of a listed piece: what it sold for, or what came off its price. */
function soldOrOff(said: string, before: Before): Reading[] | null {
  const piece = spokenOf(before);
  const value = TOOK.exec(said)?.[1];
  if (!piece || piece.listed === null || value === undefined) return null;
  const could = [`sold #${piece.number} ${value}`, `took ${value} off #${piece.number}`];
  return could.flatMap((text) => one(text, before.today) ?? []);
}

/** "1 done", "30 min on 2": the number of a piece that is here. */
function byNumber(said: string, { books }: Before): string | null {
  const isHere = (number: string): boolean => books.pieces.get(Number(number))?.gone === null;
  const done = /^(\d{1,3}) (?:is |all )*(done|finished|started)$/.exec(said);
  if (done && isHere(done[1]!)) return `#${done[1]} ${done[2]}`;
  const worked = /^(.*\d ?(?:m|min|mins|minutes|h|hr|hrs|hour|hours)(?: [a-z]+)?) (?:on|for) (\d{1,3})$/.exec(
    said,
  );
  return worked && isHere(worked[2]!) ? `${worked[1]} on #${worked[2]}` : null;
}
