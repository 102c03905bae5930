import type { Books } from "../../books/books.ts";
import { isNamedMoney } from "../../notes/bare.ts";
import type { Mention, Reading } from "../../notes/reading.ts";
import { OF_KNOWN } from "../../notes/words/replies.ts";
import { saysAny } from "../../notes/words/words.ts";
import type { Effect, Wanted } from "../decision.ts";
import { ever } from "../pieces/fits.ts";
import { matchMention } from "../pieces/match.ts";
import { mentionsOf } from "../pieces/mentioned.ts";
import type { Asked } from "./answer.ts";

const MONEY: ReadonlySet<Wanted> = new Set(["price", "amount"]);

/**
 * "lamp 6", "dresser was 40" while the price of just that piece is asked: the answer, and no note of its own. Null
 * where it names anything else, or a piece on the books that it may be about instead.
 */
export function namedAnswer(
  { matter, ask }: Asked,
  readings: readonly Reading[],
  books: Books,
): Effect | null {
  const [said, ...more] = readings;
  const [asked, ...rest] = ask.first ?? [matter.reading];
  if (
    !said ||
    more.length > 0 ||
    !asked ||
    !MONEY.has(ask.wants) ||
    !asked.missing?.includes(ask.wants as never)
  )
    return null;
  const amount = amountFor(asked, said, ask.wants, books);
  if (amount === null) return null;
  const missing = asked.missing.filter((field) => field !== ask.wants);
  const method = said.kind === "mend" && said.to?.method ? { method: said.to.method } : {};
  const change = { [ask.wants]: amount, ...method, missing } as Partial<Reading>;
  if (ask.first) return { kind: "instead", readings: [{ ...asked, ...change } as Reading, ...rest] };
  return { kind: "settle", change };
}

function amountFor(asked: Reading, said: Reading, wants: Wanted, books: Books): number | null {
  const names = mentionsOf(asked);
  if (names.length === 0) return null;
  if (said.kind === "mend") {
    const { of = {}, to = {} } = said;
    const isOnBooks = names.some((mention) => matchMention(mention, books, ever, new Set()).kind !== "none");
    const isOfIt =
      areSame(of.pieces ?? [], names) &&
      (of.kind === undefined || of.kind === asked.kind || to.method !== undefined);
    const isAmount = Object.keys(to).every((field) => field === "amount" || field === "method");
    return isOfIt && isAmount && !(asked.kind === "buy" && isOnBooks) ? (to.amount ?? null) : null;
  }
  // "the table cost me 12": the one that is asked about.
  if (
    said.kind === "buy" &&
    asked.kind === "buy" &&
    saysAny(said.text, OF_KNOWN) &&
    areSame(mentionsOf(said), names)
  )
    return said.price ?? null;
  // "somebody may come get the hutch for 180" is no price of the hutch, whatever was asked.
  if (said.kind !== "unclear" || !isNamedMoney(said.text)) return null;
  const same = (said.could ?? []).find(
    (each) => each.kind === asked.kind && areSame(mentionsOf(each), names),
  ) as Record<string, unknown> | undefined;
  const amount = same?.[wants];
  return typeof amount === "number" ? amount : null;
}

function areSame(a: readonly Mention[], b: readonly Mention[]): boolean {
  return (
    a.length === b.length &&
    a.every(({ name, traits = [] }, index) => {
      const other = b[index]!;
      // "the table" of a side table: it is what is asked about.
      const isName = name === other.name || (name !== undefined && other.name?.endsWith(` ${name}`) === true);
      return isName && traits.every((word) => other.traits?.includes(word));
    })
  );
}
