import type { Books } from "../books/books.ts";
import { type Fact, type NewFact, newPiecesOf } from "../books/facts.ts";
import { labelOf } from "../books/label.ts";
import type { Desk } from "../decide/decision.ts";
import { ever } from "../decide/pieces/fits.ts";
import { matchMention } from "../decide/pieces/match.ts";
import { allHere } from "../decide/talk/unnamed.ts";
import type { Mention } from "../notes/reading.ts";
import type { Changed, MendOf, MendTo } from "./fields.ts";
import { isMeant } from "./meant.ts";
import { recounted } from "./recounted.ts";

/** Fields that stand in a fact's data under the same name. */
const IN_DATA = [
  "until",
  "minutes",
  "miles",
  "method",
  "buyer",
  "source",
  "loan",
  "how",
  "fee",
  "owed",
  "agreed",
  "paid",
  "received",
] as const;

/** The fields that hold a percent. */
const PERCENTS = ["percent", "rate"] as const;

/** The same fact with what is to be changed changed; what it does not say stays. */
export function changed(fact: Fact, to: MendTo, of: MendOf, desk: Desk): Changed {
  const next = { ...asNew(fact), ...(to.date === undefined ? {} : { day: to.date }) } as NewFact;
  if (to.date !== undefined && to.date > desk.today) return { why: "That day has not come yet." };
  if (to.amount !== undefined) next.amount = to.amount;
  if (to.by !== undefined) next.by = to.by;
  const data: Record<string, unknown> = { ...next.data };
  for (const field of IN_DATA) if (to[field] !== undefined) data[field] = to[field];
  if (to.percent !== undefined) {
    const field = PERCENTS.find((each) => each in data);
    if (!field) return { why: "There is no percent in that note." };
    data[field] = to.percent;
    delete data["rateUnknown"];
  }
  if (to.amount === 0 && fact.kind === "hold") delete next.amount;
  // A fee of nothing is none.
  if (to.fee === 0) delete data["fee"];
  // Cash of a trade goes one way: what is said now takes the place of what was said of the other.
  if (to.paid && !to.received) delete data["received"];
  if (to.received && !to.paid) delete data["paid"];
  const plain = { ...next, data } as NewFact;
  if (to.name !== undefined || to.traits !== undefined) return renamed(plain, to, of, desk);
  if (to.pieces === undefined) return { fact: plain };
  if ("made" in plain.data) return recounted(plain, to.pieces, desk);
  return moved(plain, to.pieces, desk);
}

/** A standing fact without what recording it gave it. */
export function asNew(fact: Fact): NewFact {
  const { kind, day, pieces, amount, data, by } = fact;
  return {
    kind,
    day,
    pieces,
    data,
    ...(amount === undefined ? {} : { amount }),
    ...(by === undefined ? {} : { by }),
  } as NewFact;
}

/** A name or a trait is that of one piece, unless several were said. */
function renamed(fact: NewFact, { name, traits }: MendTo, of: MendOf, { books }: Desk): Changed {
  if (fact.kind !== "buy" && fact.kind !== "trade") return { why: "Only a piece has a name." };
  const numbers = newPiecesOf(fact);
  const meant = numbers.filter((number) =>
    isNamed(of, number, (mention) => isMeant(mention, books.pieces.get(number)!)),
  );
  const isPlural = (of.pieces ?? []).some((mention) => mention.plural || (mention.count ?? 1) > 1);
  if (meant.length > 1 && !isPlural) return { why: `Which one? There are ${labelOf(books, meant)}.` };
  const made = fact.data.made.map((piece, index) =>
    meant.includes(numbers[index]!) ? { name: name ?? piece.name, traits: traits ?? piece.traits } : piece,
  );
  return { fact: { ...fact, data: { ...fact.data, made } } as NewFact };
}

function isNamed(of: MendOf, number: number, matches: (mention: Mention) => boolean): boolean {
  if (of.number !== undefined) return of.number === number;
  return (of.pieces ?? []).every(matches);
}

/** The pieces that a cost, a drive or a sale was really for. */
function moved(fact: NewFact, mentions: readonly Mention[], { books }: Desk): Changed {
  const taken = new Set<number>();
  for (const mention of mentions) {
    const all = mention.other
      ? otherThan(fact.pieces, books)
      : mention.it && mention.count
        ? allHere(books)
        : [];
    // "for both": where that many are here, it is those.
    if (all.length > 0 && all.length === (mention.count ?? all.length)) {
      for (const number of all) taken.add(number);
      continue;
    }
    const { besides, ...named } = mention;
    const match = matchMention(named, books, ever, besides ? new Set([...taken, ...fact.pieces]) : taken);
    if (match.kind === "several") {
      // What it was of already is not what it should be of.
      const others = match.groups.filter((group) => !group.some((number) => fact.pieces.includes(number)));
      const [only, ...more] = match.trust === "sure" ? others : [];
      if (!only || more.length > 0) return { several: others.length > 0 ? others : match.groups };
      for (const number of only) taken.add(number);
      continue;
    }
    if (mention.it) return { why: "Which pieces? Say their names or numbers." };
    if (match.kind !== "found")
      return mention.other
        ? { why: "Which pieces? Say their names or numbers." }
        : { why: `There is no ${mention.name ?? `#${mention.number}`} on the books.` };
    for (const number of match.pieces) taken.add(number);
  }
  return { fact: { ...fact, pieces: [...taken] } };
}

/** Those here of the names of these, and none of them; where there is none, the one other piece that is here. */
export function otherThan(numbers: readonly number[], books: Books): number[] {
  const names = new Set(numbers.map((number) => books.pieces.get(number)!.name));
  const others = [...books.pieces.values()].filter(
    ({ number, gone }) => gone === null && !numbers.includes(number),
  );
  const alike = others.filter(({ name }) => names.has(name));
  return (alike.length > 0 || others.length > 1 ? alike : others).map(({ number }) => number);
}
