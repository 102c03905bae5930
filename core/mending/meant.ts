import type { Books, Piece } from "../books/books.ts";
import { type Fact, newPiecesOf } from "../books/facts.ts";
import { addDays, type Day } from "../calendar.ts";
import type { Desk } from "../decide/decision.ts";
import type { Cents } from "../money.ts";
import { HOURS_MAX } from "../notes/mends/mended.ts";
import type { Mention, Reading } from "../notes/reading.ts";
import { isNearSpelling } from "../notes/tokens/spelling.ts";
import { bears } from "../notes/verbs.ts";
import { THE_NOTE } from "../notes/words/mending.ts";
import { PLACES } from "../notes/words/pieces.ts";
import type { MendOf } from "./fields.ts";
import type { Past } from "./past.ts";

const isItsOwn = ({ kind }: Fact): boolean =>
  bears(kind as Reading["kind"], "standing pieces") || kind === "buy";

/**
 * Those whose amount is the piece's own: "the vanity was 40" is no cost that was put into it. The newest cost or time of today
 * is meant as well, where what it should be (`now`) is by far nearer to it: "the armchair was 65" behind 60 for its cloth.
 */
export function ofItsOwn(
  facts: readonly Fact[],
  { kind, what, amount, fact, back }: MendOf,
  now?: Cents,
  past?: Past,
): readonly Fact[] {
  if (kind ?? what ?? amount ?? fact ?? back) return facts;
  const own = facts.filter(isItsOwn);
  const [first] = facts;
  const isNearest =
    first && now && past?.isToday(first) && own.every((other) => off(first, now) < NEARER * off(other, now));
  if (isNearest && !own.includes(first)) return [first, ...own];
  return own.length > 0 ? own : facts;
}

/** How much nearer the newest amount has to be than any other. */
const NEARER = 0.6;

/** How far a fact's amount, its hours or minutes, or its miles are from what is said. */
function off({ kind, amount, data }: Fact, now: Cents): number {
  const measure =
    kind === "work"
      ? (data.minutes ?? 0) / (now < HOURS_MAX ? 60 : 1)
      : kind === "drive"
        ? Number(data.miles)
        : 0;
  return Math.abs(Math.log((amount || measure * 100 || 1) / now));
}

/**
 * "sorry, the desk was 100" behind its sale for 110: of its purchase, its listing and its sale the one noted last, where that
 * is by far the nearest as well; of a cost where it is pointed at ("the armchair one was 65"). Of several of one kind it is asked.
 */
export function likeliest(
  facts: readonly Fact[],
  amount: Cents | undefined,
  past: Past,
  text = "",
): readonly Fact[] {
  const [first, ...others] = facts;
  if (!first || !amount || !past.isToday(first)) return facts;
  if (first.kind === "spend" && others.length > 0 && !THE_NOTE.test(text)) return facts;
  const isLikelier = (other: Fact): boolean =>
    other.kind !== first.kind && off(first, amount) < NEARER * off(other, amount);
  return others.every(isLikelier) ? [first] : facts;
}

/**
 * The standing facts that fit, the one recorded last first, without those of profit sent. They are put in order at the
 * end: books of ten years have 25,000 facts, and few of them fit.
 */
export const newestFirst = ({ facts }: Pick<Books, "facts">, fits: (fact: Fact) => boolean): Fact[] =>
  facts.filter((fact) => fact.kind !== "sent" && fits(fact)).sort((a, b) => b.place - a.place);

/** The standing facts that a correction may speak of, the one recorded last first. */
export function factsMeant(of: MendOf, { books }: Desk, past: Past): Fact[] {
  if (of.fact !== undefined) return books.facts.filter((fact) => fact.id === of.fact);
  const isReplied = (fact: Fact): boolean => fact.root === past.replied;
  const pieceOf = (number: number) => books.pieces.get(number)!;
  const pieces = withPlaces(of.pieces ?? [], books);
  // "monday, not today" in reply to what is still asked about is of no other note.
  const isOfReply =
    past.replied !== null && (of.back !== undefined || newestFirst(books, isReplied).length > 0);
  const fitting = newestFirst(
    books,
    (fact) =>
      (!isOfReply || isReplied(fact)) &&
      isOfKind(fact, of, pieceOf) &&
      isOfWhat(fact, of.what) &&
      (of.amount === undefined || fact.amount === of.amount) &&
      (of.fee === undefined || isOfFee(fact, of.fee)) &&
      (of.minutes === undefined || (fact.kind === "work" && fact.data.minutes === of.minutes)) &&
      (of.miles === undefined || (fact.kind === "drive" && fact.data.miles === of.miles)) &&
      (of.date === undefined || isOfDay(fact, of.date)) &&
      (of.number === undefined || fact.pieces.includes(of.number)) &&
      pieces.every((mention) => fact.pieces.some((number) => isMeant(mention, pieceOf(number)))),
  );
  return of.back === undefined ? fitting : nthLast(fitting, of, past);
}

/** On that day, or kept until that weekday. */
const isOfDay = (fact: Fact, day: Day): boolean =>
  fact.day === day ||
  (fact.kind === "hold" && (fact.data.until === day || fact.data.until === addDays(day, WEEK)));
const WEEK = 7;

/** A sale with that fee, or a fee of its own. */
const isOfFee = (fact: Fact, fee: Cents): boolean =>
  (fact.kind === "sell" && fact.data.fee === fee) ||
  (fact.kind === "spend" && fact.data.category === "fees" && fact.amount === fee);

/** "The last paint" is a fact of that description; "the note before last" all that one message of this person recorded. */
function nthLast(facts: readonly Fact[], { back = 1, ...of }: MendOf, { person }: Past): Fact[] {
  if (Object.keys(of).length > 0) return facts.slice(back - 1, back);
  const own = facts.filter((fact) => fact.author === person);
  const root = [...new Set(own.map((fact) => fact.root))][back - 1];
  return own.filter((fact) => fact.root === root);
}

/** A piece that came in a trade was bought by it, one that went in a trade sold. */
function isOfKind(fact: Fact, { kind, number, pieces = [] }: MendOf, pieceOf: (n: number) => Piece): boolean {
  if (kind === undefined || fact.kind === kind) return true;
  if (fact.kind !== "trade" || (kind !== "buy" && kind !== "sell")) return false;
  const got = newPiecesOf(fact);
  const named = fact.pieces.filter(
    (each) => each === number || pieces.some((mention) => isMeant(mention, pieceOf(each))),
  );
  return named.some((each) => got.includes(each) === (kind === "buy"));
}

/** Whether a fact is about a thing, labor or stream of that name. */
export function isOfWhat(fact: Fact, said: string | undefined): boolean {
  if (said === undefined) return true;
  const is =
    fact.kind === "income"
      ? fact.data.stream
      : fact.kind === "spend" || fact.kind === "work"
        ? fact.data.what
        : undefined;
  if (is === undefined) return false;
  const [wanted, words] = [said, is].map((text) => text.toLowerCase().split(" ").map(singular));
  return wanted!.every((word) => words!.includes(word)) || words!.every((word) => wanted!.includes(word));
}

function singular(word: string): string {
  return word.length > 3 ? word.replace(/s$/, "") : word;
}

/** "the second mirror": the one of that place among those of the name, where there are several. */
export function withPlaces(mentions: readonly Mention[], { pieces }: Pick<Books, "pieces">): Mention[] {
  return mentions.map((mention) => {
    const { place = PLACES[mention.traits?.[0] ?? ""], name } = mention;
    if (place === undefined || name === undefined) return mention;
    const named = [...pieces.values()].filter((piece) => piece.name === name);
    const meant = named.length > 1 ? named[place - 1] : undefined;
    return meant ? { number: meant.number } : mention;
  });
}

/** Whether a mention can mean a piece: its number, or a name that ends alike with no word that the piece has not. */
export function isMeant(mention: Mention, piece: Readonly<Piece>): boolean {
  if (mention.it) return true;
  if (mention.number !== undefined) return mention.number === piece.number;
  // "the oak one"
  if (mention.name === undefined)
    return (
      (mention.traits ?? []).length > 0 && mention.traits!.every((trait) => piece.traits.includes(trait))
    );
  const [kind] = piece.name.split(" of ");
  // "the chest" of a chest of drawers.
  if (mention.name === kind && kind !== piece.name)
    return (mention.traits ?? []).every((trait) => piece.traits.includes(trait));
  const words = [...piece.traits, ...piece.name.split(" ")];
  const said = [...(mention.traits ?? []), ...mention.name.split(" ")];
  if (said.at(-1) === words.at(-1)) return said.every((word) => words.includes(word));
  return isNearSpelling(mention.name, piece.name);
}
