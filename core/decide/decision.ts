import type { Books } from "../books/books.ts";
import type { NewFact } from "../books/facts.ts";
import type { Day } from "../calendar.ts";
import type { Past } from "../mending/past.ts";
import type { Cents } from "../money.ts";
import type { Mention, Missing, Reading } from "../notes/reading.ts";

/** What may be looked at: the books as they stand, and the message's own day. */
export interface Looking {
  books: Books;
  today: Day;
  /** The next piece number that was never given. */
  nextPiece: number;
  /** What was spoken of before this note. */
  talk?: Talk;
  /** What correcting earlier notes may look at; absent where only a new note may stand. */
  past?: Past;
}

/** What deciding may look at. */
export interface Desk extends Looking {
  /** Names of the odd things that the person has already said yes to for this reading. */
  confirmed: readonly string[];
}

/** The talk around a note, by piece numbers. */
export interface Talk {
  /** The pieces of the message replied to. */
  replied?: number[];
  /** Those of this person's last recorded note or answer of the day. */
  latest?: number[];
  /** Those of all notes of that message, or told one after the other, where they tell the same of several pieces: what "those" means. */
  readonly several?: readonly number[] | undefined;
  /** Those of each note that told the same one after the other up to the last, however many each is about, where they are at least two. */
  readonly run?: readonly (readonly number[])[] | undefined;
  /** Those that were spoken of last and are not on the books: what is asked about them has no answer yet. */
  awaited?: readonly Mention[];
  /** What was offered for pieces, or told of them in a note that waits, and is still open, newest first. */
  offers?: readonly Offer[];
  /** Words that this ledger has learnt to pass over beside a verb: "sell zorp". */
  passed?: ReadonlySet<string>;
}

/** A price that somebody offered, in cents, for pieces by their numbers. */
export interface Offer {
  pieces: number[];
  price: Cents;
  /** It was told as the price, in a note that still waits: what was agreed on before may hold no more. */
  isTold?: true;
}

/** A reading on its way to the books: what was said, and what answers have settled since. */
export interface Matter {
  reading: Reading;
  /** The day of the message it came from: what the fact is dated where the note names no day. */
  said: Day;
  /** Odd things said yes to. */
  confirmed: string[];
  /** Clauses of the same message whose "it" waits for this one. */
  waiting: Reading[];
  /** Notes of their own (each with its root note) that wait until this one is recorded, refused or dropped. */
  after?: { matter: Matter; root: number }[];
  /** The message (its root note) whose facts this takes the place of, where it came of an edit. */
  amends?: number;
}

/** A reading at the start of its way: nothing settled yet, nothing waiting for it. `said`: the message's local day. */
export function newMatter(reading: Reading, said: Day): Matter {
  return { reading, said, confirmed: [], waiting: [] };
}

/** What picking a choice does. */
export type Effect =
  /** The reading goes on with these changes; `confirm` names an odd thing said yes to. */
  | { kind: "settle"; change?: Partial<Reading>; confirm?: string }
  /** Other readings take its place, decided in order; `confirm` names an odd thing said yes to. */
  | {
      kind: "instead";
      readings: Reading[];
      confirm?: string;
      /** Words from no list that the person passes over by picking this. */
      passed?: string[];
    }
  /** Voids what stands of a message (its root note): all of it, or what the person answering recorded. */
  | { kind: "undo"; root: number; own: boolean }
  /** Replaces the amount of one fact. */
  | { kind: "fix"; fact: number; amount: Cents }
  /** Another open question goes on with these changes to its reading. */
  | { kind: "change"; question: number; change: Partial<Reading> }
  /** Records the stored history file of a note; `sent`: its profit has already gone to the loan. */
  | { kind: "history"; note: number; sent: boolean }
  /** Facts no longer stand, and others take the place of some of them. */
  | { kind: "amend"; voids: number[]; facts: { fact: NewFact; replaces: number }[] }
  /** The answer leaves a question of its own, in the place of the first. */
  | { kind: "ask"; ask: Ask; change?: Partial<Reading> }
  | { kind: "drop" };

/** One way to answer: what the button says, the words that pick it when typed, and what it does. */
export interface Choice {
  label: string;
  words?: readonly string[];
  effect: Effect;
}

/** The field that a bare answer fills, or "choice" where only a choice settles it. */
export type Wanted = Missing | "day" | "rate" | "refunded" | "loan" | "choice";

/** What the bot asks, and what it will make of the answer. */
export interface Ask {
  /** The question in one or two short lines. */
  prompt: string;
  wants: Wanted;
  choices: Choice[];
  /** Which mention of the reading is in doubt, where only one of its pieces is asked about. */
  mention?: number;
  /** Where other readings have to be settled first, such as a purchase before its sale: these are asked about. */
  first?: Reading[];
  /** The books hold no piece that this fits: as one of several readings it is none. */
  misfit?: true;
  /** What it asks whether it was taken. */
  offer?: Offer;
}

export type Decision =
  | { kind: "record"; facts: NewFact[]; ask?: { reading: Reading; ask: Ask } }
  | { kind: "ask"; ask: Ask }
  /** Earlier notes are changed. */
  | { kind: "act"; effect: Effect }
  | { kind: "refuse"; why: string };

/** A message that may answer a question: its words, its day, and what they read as by themselves. */
export interface Said {
  text: string;
  today: Day;
  readings: readonly Reading[];
}

/** The readings that the buttons of a question record. */
export const readingsOn = ({ choices }: Pick<Ask, "choices">): Reading[] =>
  choices.flatMap(({ effect }) => (effect.kind === "instead" ? effect.readings : []));

export const NEVER_MIND: Choice = { label: "Never mind", effect: { kind: "drop" } };

/** A question that a yes or a no settles. */
export function confirmation(
  prompt: string,
  yes: { label: string; confirm: string },
  others: Choice[] = [],
): Ask {
  const agree: Choice = {
    label: yes.label,
    words: ["yes"],
    effect: { kind: "settle", confirm: yes.confirm },
  };
  return { prompt, wants: "choice", choices: [agree, ...others, { ...NEVER_MIND, words: ["no"] }] };
}

/** The numbers of the pieces of which a decision records facts. */
export const recordedPieces = (decision: Decision): number[] =>
  decision.kind === "record" ? decision.facts.flatMap(({ pieces }) => pieces) : [];

/** Whether the books cannot take a reading as it is: refused, or no piece on them fits it. */
export function cannotBe(decision: Decision): boolean {
  return decision.kind === "refuse" || (decision.kind === "ask" && decision.ask.misfit === true);
}
