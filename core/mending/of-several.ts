import type { Fact } from "../books/facts.ts";
import type { Cents } from "../money.ts";
import type { Tok } from "../notes/clause.ts";
import { headsOf } from "../notes/heads.ts";
import { lexed } from "../notes/lexed.ts";
import { isOpening } from "../notes/mends/left-out.ts";
import { isSkipped, side, takeTo } from "../notes/mends/mended.ts";
import type { Mention, Reading, ReadingOf } from "../notes/reading.ts";
import { centsIn } from "../notes/slots/money.ts";
import { isWholeNote } from "../notes/unclear.ts";
import { bears } from "../notes/verbs.ts";
import { ALL_OF_THEM } from "../notes/words/links.ts";
import { BEFORE_NAME, HOW_PAID, POINTING } from "../notes/words/mending.ts";
import {
  BESIDE_ALL,
  BOTH,
  IN_ALL,
  MAY_TURN,
  NOT_SO,
  OF_EACH,
  SEVERAL,
  TOLD_SO,
  TURNS_REASON,
} from "../notes/words/misnoted.ts";
import { saysAny } from "../notes/words/words.ts";
import { canMend, type MendTo } from "./fields.ts";
import { isMeant, newestFirst } from "./meant.ts";
import type { LookingBack } from "./misnoted-facts.ts";

/* What was noted wrong of several at once: a price of each that was of all, or one thing that holds for all the notes. */

type Mend = ReadingOf<"mend">;

/** More notes than these are not changed by one word. */
const NOTES_MAX = 4;
const TOKENS_MAX = 20;

/** The corrections of a message about several; null where it is of none. */
export function ofSeveral(text: string, readings: readonly Reading[], desk: LookingBack): Mend[] | null {
  if (text.includes("?") || readings.some((each) => isWholeNote(each) && !bears(each.kind, "corrects")))
    return null;
  if (saysAny(text, IN_ALL) || saysAny(text, OF_EACH)) {
    const priced = eachOrAll(text, desk);
    if (priced) return [priced];
  }
  if (saysAny(text, SEVERAL)) return alike(text, desk);
  return text.includes(",") ? eachPaid(text, desk) : null;
}

const mendOf = ({ id }: Fact, to: MendTo, text: string): Mend => ({
  kind: "mend",
  of: { fact: id },
  to,
  text,
  line: 0,
});

/**
 * "the 12 was for all four, not each", "24 was just for one of them, 72 for the lot": what was paid in all, where the books
 * and the sums that are told agree on it.
 */
function eachOrAll(text: string, { past, books }: LookingBack): Mend | null {
  const tokens = lexed(text);
  const fact = past.newest();
  const count = fact?.pieces.length ?? 0;
  if (!fact || fact.amount === undefined || count < 2 || tokens.length > TOKENS_MAX) return null;
  const isOf = (mention: Mention): boolean =>
    fact.pieces.some((number) => isMeant(mention, books.pieces.get(number)!));
  // "got 24 for each": a deed of its own.
  const isDeed = (token: Tok): boolean =>
    headsOf(token).some(({ light, kind }) => !light && !bears(kind, "corrects"));
  if (
    tokens.some(isDeed) ||
    !saysAny(text, TOLD_SO) ||
    saysAny(text, MAY_TURN) ||
    saysAny(text, TURNS_REASON)
  )
    return null;
  if (tokens.some(({ mention }) => mention?.name !== undefined && !isOf(mention))) return null;
  const sums = [...new Set(tokens.flatMap((token) => centsOf(token, count)))];
  const told = sidesOf(tokens);
  const was = fact.amount;
  const [first = was, second] = sums;
  if (sums.length > 2 || told === null) return null;
  if (second !== undefined) {
    const [one, all] = [Math.min(first, second), Math.max(first, second)];
    return one * count === all && (was === one || was === all) ? changeTo(was === one ? all : one) : null;
  }
  if (told === "all" && sums.length === 1) return first * count === was ? changeTo(first) : null;
  return told === "each" && first === was ? changeTo(was * count) : null;

  function changeTo(amount: Cents): Mend {
    return mendOf(fact!, { amount }, text);
  }
}

/** The sum that a token tells; none of how many there are. */
function centsOf(token: Tok, count: number): Cents[] {
  const cents = token.kind === "amount" ? centsIn(token) : null;
  return cents === null || cents === count * 100 ? [] : [cents];
}

/** Whether a price is told of each or of all; null where it is told of neither, or of both. */
function sidesOf(tokens: readonly Tok[]): "each" | "all" | "both" | null {
  const not = tokens.findIndex(({ text }) => NOT_SO.has(text));
  const end = tokens.findIndex(({ kind }, at) => at > not && kind === "mark");
  const isSaid = (words: ReadonlySet<string>, isDenied: boolean): boolean =>
    tokens.some(
      ({ text, each }, at) =>
        (not >= 0 && at > not && (end < 0 || at < end)) === isDenied &&
        (saysAny(text, words) || (words === OF_EACH && each === true)),
    );
  const [each, all] = [isSaid(OF_EACH, false), isSaid(IN_ALL, false)];
  const [notEach, notAll] = [isSaid(OF_EACH, true), isSaid(IN_ALL, true)];
  if (each && all) return "both";
  if (each && !notEach) return "each";
  if (all && !notAll) return "all";
  return notEach ? "all" : notAll ? "each" : null;
}

/** "desk was transfer, mirror cash": how each was paid. */
function eachPaid(text: string, { past, books }: LookingBack): Mend[] | null {
  const tokens = lexed(text).filter((token) => isPlain(token));
  const pairs = tokens.length / 2;
  if (pairs < 2 || pairs > NOTES_MAX) return null;
  const mends = tokens.flatMap(({ mention }, at): Mend[] => {
    const method = tokens[at + 1]?.roles.method;
    if (at % 2 > 0 || !mention || method === undefined) return [];
    const fact = past.newest(
      ({ kind, pieces }) =>
        canMend(kind, { method }) && pieces.some((number) => isMeant(mention, books.pieces.get(number)!)),
    );
    return fact && fact.kind !== "buy" ? [mendOf(fact, { method }, text)] : [];
  });
  return mends.length === pairs ? mends : null;
}

/** It tells something: no mark, and no word that only stands beside what is told. */
const isPlain = (token: Tok): boolean =>
  token.kind !== "mark" &&
  token.mention?.it !== true &&
  (token.roles.method !== undefined ||
    !(isOpening(token) || isSkipped(token) || BESIDE_SEVERAL.some((words) => words.has(token.text))));

const BESIDE_SEVERAL = [HOW_PAID, POINTING, BESIDE_ALL, ALL_OF_THEM];

/** What may hold for several notes; a day ("both were yesterday") right behind two of a kind. */
const SHARED: ReadonlySet<keyof MendTo> = new Set(["method", "buyer", "source", "pieces"]);

/** "both of those were cash", "that was all by transfer": the newest notes of a kind, as many as are meant. */
function alike(text: string, desk: LookingBack): Mend[] | null {
  const plain = lexed(text).filter((token) => isPlain(token) || BEFORE_NAME.has(token.text));
  const said = side();
  if (plain.length === 0 || !takeTo(plain, said, desk.today)) return null;
  const { to } = said;
  const [field, ...others] = Object.keys(to) as (keyof MendTo)[];
  if (field === undefined || others.length > 0 || !(field === "date" || SHARED.has(field))) return null;
  const { past, books } = desk;
  const isOwn = ({ kind }: Fact): boolean => kind === "buy" || kind === "sell";
  const newest = past.newest((fact) => canMend(fact.kind, to) && !(field === "pieces" && isOwn(fact)));
  if (!newest || !past.isToday(newest)) return null;
  const isAlike = (fact: Fact): boolean =>
    fact.kind === newest.kind && fact.author === past.person && past.isToday(fact);
  const facts = newestFirst(books, isAlike).slice(0, saysAny(text, BOTH) ? 2 : undefined);
  if (facts.length < 2 || facts.length > NOTES_MAX) return null;
  const last = newestFirst(books, ({ author }) => author === past.person).slice(0, facts.length);
  if (field === "date" && !facts.every((fact) => last.includes(fact))) return null;
  const isSo = ({ data }: Fact): boolean =>
    to.method !== undefined && (data as { method?: string }).method === to.method;
  return facts.filter((fact) => !isSo(fact)).map((fact) => mendOf(fact, to, text));
}
