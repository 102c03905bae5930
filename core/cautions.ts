import type { Books, Piece } from "./books/books.ts";
import type { Fact, FactKind } from "./books/facts.ts";
import type { Day } from "./calendar.ts";
import { daysBetween } from "./calendar.ts";
import { type CautionRule, RULES } from "./cautions/rules.ts";
import type { Cents } from "./money.ts";
import { percentOf, show } from "./money.ts";

/** A caution that was given: for a group that goes by the piece, the piece; else null. */
export interface Given {
  group: string;
  piece: number | null;
  day: Day;
}

/** One line to put under a reply, and what to remember of it. */
export interface Caution {
  line: string;
  group: string;
  piece: number | null;
}

/** What cautions look at: a fact just recorded and the words that recorded it. */
export interface Noted {
  kind: FactKind;
  /** The clause as typed. */
  text: string;
  day: Day;
  pieces: readonly Pick<Piece, "number" | "name" | "traits" | "listPrice">[];
  /** Cents of a buyer's deposit kept when the sale fell through. */
  kept?: Cents;
  given: readonly Given[];
}

type NotedPiece = Noted["pieces"][number];

/** Days after which a caution of a quarter may come again: no calendar quarter is longer. */
const QUARTER_DAYS = 92;

/** At most one caution for a note, and only where something in it calls for one that is due. */
export function cautionsFor(noted: Noted): Caution[] {
  const deposit = depositCaution(noted);
  if (deposit && isDue(deposit, noted)) return [deposit];
  const text = noted.text.toLowerCase();
  for (const rule of RULES) {
    if (rule.kinds && !rule.kinds.includes(noted.kind)) continue;
    for (const piece of triggersOf(rule, text, noted.pieces)) {
      const caution = {
        line: rule.line,
        group: rule.group,
        piece: rule.oncePiece ? (piece?.number ?? null) : null,
      };
      if (isDue(caution, noted)) return [caution];
    }
  }
  return [];
}

/** The pieces for which a rule fires; the first of the note, or none at all, where its words alone fire it. */
function triggersOf(rule: CautionRule, text: string, pieces: readonly NotedPiece[]): (NotedPiece | null)[] {
  const named = rule.names ? pieces.filter((piece) => rule.names!.test(wordsOf(piece))) : [];
  const worded = rule.words?.test(text) ?? false;
  if (rule.both) return worded ? named : [];
  if (named.length > 0) return named;
  if (!worded) return [];
  return pieces.length > 0 ? [...pieces] : [null];
}

function wordsOf(piece: NotedPiece): string {
  return [...piece.traits, piece.name].join(" ");
}

/** Once a piece is for good; a group without a piece waits for the next quarter. */
function isDue({ group, piece }: Caution, { day, given }: Noted): boolean {
  return given.every(
    (before) =>
      before.group !== group ||
      before.piece !== piece ||
      (piece === null && daysBetween(before.day, day) >= QUARTER_DAYS),
  );
}

/** The most that the default sales law lets a seller keep of a deposit (UCC 2-718(2)(b)): cents. */
export function keptDepositMax(price: Cents): Cents {
  return Math.min(percentOf("20", price), 50_000);
}

/** A buyer's money kept beyond that: the price is what the pieces are listed at. */
function depositCaution({ kept = 0, pieces }: Noted): Caution | null {
  const price = pieces.reduce((sum, piece) => sum + (piece.listPrice ?? 0), 0);
  const most = keptDepositMax(price);
  if (price === 0 || kept <= most) return null;
  return {
    line: `Unless agreed otherwise, a US seller may keep at most ${show(most)} of it; check local rules.`,
    group: "kept deposit",
    piece: null,
  };
}

/** What cautions look at, from a fact on the books and the words that recorded it. */
export function notedOf(
  fact: Fact,
  { text, books, given }: { text: string; books: Books; given: readonly Given[] },
): Noted {
  const kept = (books.postings.get(fact.id) ?? [])
    .filter(({ account }) => account === "deposits kept")
    .reduce((sum, { cents }) => sum - cents, 0);
  return {
    kind: fact.kind,
    text,
    day: fact.day,
    pieces: fact.pieces.flatMap((number) => books.pieces.get(number) ?? []),
    ...(kept > 0 ? { kept } : {}),
    given,
  };
}
