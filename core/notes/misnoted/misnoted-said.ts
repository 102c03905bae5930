import type { Day } from "../../calendar.ts";
import type { Cents } from "../../money.ts";
import type { Kind, Mention } from "../reading.ts";

/* What a message that corrects a note says of it. */

/** Values that a note has, or should have. */
export interface Values {
  amount?: Cents;
  minutes?: number;
  miles?: string;
  date?: Day;
  method?: string;
  place?: string;
  /** What became of a piece. */
  how?: "kept" | "given" | "scrapped";
  /** Somebody on the books. */
  who?: string;
  /** A word that nobody knows: a name, as often as not. */
  name?: string;
  traits: string[];
  pieces: Mention[];
}

/** What is told of a note that was noted wrong: the values, and by what the note is known. */
export interface Misnoted {
  /** How much the words say that it is a correction. */
  sense: "sure" | "likely" | "weak" | "none";
  /** Not only by a word that may change a price as well. */
  isProven: boolean;
  /** It is to go: "maybe" by a word that says something else as well; "denied": it has not happened. */
  out?: "sure" | "maybe" | "denied";
  /** "what i said about the desk": the newest of it. */
  isOfTalk: boolean;
  /** What was said last is taken back: so many notes. */
  undoes: number;
  /** It may have been noted before. */
  isAgain: boolean;
  now: Values;
  old: Values;
  /** The kinds of note that its verbs and nouns tell; none told: any. */
  kinds: readonly Kind[];
  what?: string;
  labor?: string;
  /** "that", "it": what was spoken of last. */
  points: boolean;
  /** Of what somebody owes, and of a loan. */
  isOwed?: boolean;
  isLoan?: boolean;
  /** Which of the loans on the books. */
  loan?: string | undefined;
  /** Told of when a piece came. */
  isThen: boolean;
  /** Told only now: it may be a note of its own. */
  isLate: boolean;
  /** "the sale was", "teo paid": what a note is called, and that it is told what it was. */
  isNoun: boolean;
  isTold: boolean;
  /** We paid, they paid. */
  isOurs: boolean;
  isTheirs: boolean;
  /** "its a …": what it is called. */
  isName: boolean;
  /** It is a cost of the shop, and of no piece. */
  isOfShop?: true;
  /** A name was wrong. */
  isWho: boolean;
  left: string[];
  /** One of these turns what is told. */
  isTurned: boolean;
}

const values = (): Values => ({ traits: [], pieces: [] });

/** What is said before a word is read. */
export const nothingSaid = (): Misnoted => ({
  sense: "none",
  isProven: false,
  undoes: 0,
  isOfTalk: false,
  isAgain: false,
  now: values(),
  old: values(),
  kinds: [],
  points: false,
  isThen: false,
  isNoun: false,
  isLate: false,
  isTold: false,
  isOurs: false,
  isTheirs: false,
  isName: false,
  isWho: false,
  left: [],
  isTurned: false,
});

const RANK = { none: 0, weak: 1, likely: 2, sure: 3 } as const;

/** It is a correction as much as that, if no word said more. */
export function raise(said: Misnoted, sense: Misnoted["sense"]): void {
  if (RANK[sense] > RANK[said.sense]) said.sense = sense;
}

/** It is one, and not only by a word that may change a price as well. */
export function prove(said: Misnoted): void {
  raise(said, "sure");
  said.isProven = true;
}
