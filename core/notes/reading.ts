import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";

/**
 * A mention of pieces, as said. `name` is the canonical singular lower-case noun; `count` is 1 unless said
 * and is absent where `plural` is true or the reading's `missing` has "count"; `number` is the bot's own
 * piece number ("#12").
 */
export interface Mention {
  name?: string;
  count?: number;
  traits?: string[];
  number?: number;
  plural?: true;
  /** "set of 4 chairs", "dining set 5 pieces", "pair of lamps": bought to be kept and sold together. */
  set?: true;
  /** "it", "that", "them" with nothing before it in the line; with a count so many of them. */
  it?: true;
  /** "half of them" */
  half?: true;
  /** "the other one", "the others": alike to the pieces just spoken of, and not them. */
  other?: true;
  /** "the last one": of the others, or the one that came last. */
  last?: true;
  /** "the other bookcase": one of the name that was not just spoken of. */
  besides?: true;
  /** "everything but the dresser": all that is here and is not this. */
  allBut?: true;
  /** "another one just like it": so many more of what was spoken of. */
  alike?: true;
  /** "the first one", "the second chair": which of several, from 1. */
  place?: number;
  /** "1h on each": all that were spoken of, each by itself. */
  each?: true;
  /** Not on the books yet: it comes with the answer to what is still asked about it. */
  awaited?: true;
}

export type Category = "materials" | "tools" | "vehicle" | "fees" | "help" | "storage" | "other";
export type RetireHow = "kept" | "given" | "scrapped";
export type DaysInYear = "365" | "365.25" | "actual";
export type PaymentOrder = "highest" | "prorata";
export type Question =
  | "month"
  | "year"
  | "recap"
  | "loan"
  | "piece"
  | "pieces"
  | "unlisted"
  | "listed"
  | "held"
  | "unsold"
  | "best"
  | "pace"
  | "tax"
  | "miles"
  | "price"
  | "worth"
  | "help";

/**
 * What a kind of note may say. Amounts are cents, days local; fields a note does not give are absent. Each verb's
 * file adds the fields of its own kind.
 */
export interface ReadingFields {
  unclear: {
    why?: string;
    /** What it may mean: whole readings, likeliest first. */
    could?: Reading[];
    /** The words that no reading takes up. */
    left?: string[];
    /** Nothing is left over: where the books leave one of them standing, it is that. */
    byBooks?: true;
    /** The rest of a list that says no verb: pieces with their prices, unclear in the same way; empty: asked by itself. */
    rest?: Reading[];
    /** A correction made its readings what they are: the words tell nothing more. */
    isCorrected?: true;
  };
}

export type Kind = keyof ReadingFields;

/** A needed field that the note did not give: the bot asks for just that. */
export type Missing =
  | "pieces"
  | "count"
  | "price"
  | "amount"
  | "what"
  | "minutes"
  | "miles"
  | "balance"
  | "percent"
  | "stream"
  | "worth"
  | "per";

export interface Again {
  how: "again" | "next" | "more" | "other" | "too";
  to: NonNullable<ReadingFields["mend"]["to"]>;
  /** The newest note of one of these kinds, and about that; where neither is said, the newest. */
  kinds?: readonly Kind[];
  what?: string;
  /** So many more. */
  count?: number;
  each?: true;
  /** With whom the note before was. */
  byThem?: true;
}

/**
 * How a line goes on from what stood before it: the newest note once more with these values in the place of its own
 * ("too": its amount is another one, and asked), or whole readings of the piece spoken of, likeliest first. `isEither`:
 * which of them, only the person knows. "prices": the same of as many pieces, each at its own. "restated": the newest note told anew, where it is of that kind. "mend": a correction of the newest note, where it can be one.
 */
export type Back =
  | { again: Again }
  | { could: Reading[]; isEither: boolean }
  | { could: Reading[]; prices: Cents[] }
  | { restated: true }
  | { mend: ReadingOf<"mend"> | ReadingOf<"fix"> };

/** What every reading carries beside its fields. */
interface ReadingCommon {
  /** The day said; absent when the note names none (then it is the message's own day). */
  date?: Day;
  /** Who of the household or the members did it, where the note says so. */
  by?: string;
  missing?: Missing[];
  /** The clause as typed. */
  text: string;
  /** Which line of the message it stood on, from 0. */
  line: number;
  /**
   * The price was "each": `price` is already times the count, and a fix must ask which is meant. While the count
   * is missing it is the price of one, and whoever gives the count multiplies.
   */
  each?: true;
  /** The pieces were said as "it", "them" or "that", or left out: they are those of the clause before. */
  follows?: true;
  /** It was picked as a note of its own, where it might have been about an earlier one. */
  asNew?: true;
  /** They were said as "it": one piece, or a set. */
  one?: true;
  /** What it may be by what stood before it, since it says little by itself. */
  back?: Back;
  /** Day and month were said without a year and lie more than nine months back: asked about first. */
  longAgo?: true;
}

export type ReadingOf<K extends Kind> = { kind: K } & ReadingFields[K] & ReadingCommon;
/** One clause understood: plain data, so an open question can be stored with it as JSON. */
export type Reading = { [K in Kind]: ReadingOf<K> }[Kind];
