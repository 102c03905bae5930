import type { Clause } from "./clause.ts";
import type { Kind, Missing, ReadingFields } from "./reading.ts";
import type { Sign } from "./tokens/sign-bits.ts";
import type { Hedge } from "./words/hedges.ts";

/** One way to say a kind of note. */
export interface Saying<K extends Kind> {
  /** Words that say it; "…" stands for anything in between. Absent: what the clause holds says it. */
  say?: string | readonly string[];
  /** What stands further on behind any of those words, one of these: as if each were written behind each with "…". */
  ends?: readonly string[];
  with?: readonly Sign[];
  without?: readonly Sign[];
  /** Fields that the words themselves settle. */
  means?: Partial<ReadingFields[K]>;
  /** The words mean this only where no other verb claims the clause ("got", "now"). */
  light?: true;
}

/** What fills a field. Each slot is one function of slots.ts. */
export type Slot =
  | "pieces"
  | "bought"
  | "money"
  | "fee"
  | "method"
  | "source"
  | "buyer"
  | "until"
  | "minutes"
  | "labor"
  | "miles"
  | "percent"
  | "loan"
  | "what"
  | "category"
  | "stream"
  | "place";

/** A verb's last word on its own reading: it may change fields, or say why the note is unclear. */
type Judge<K extends Kind> = (fields: ReadingFields[K], clause: Clause) => Trouble | null | undefined;

/** Why a clause is no note: one name for each rule of trust.ts, with what was typed where that helps. */
export interface Trouble {
  kind:
    | "twoNumbers"
    | "toldAgain"
    | "decimals"
    | "negative"
    | "large"
    | "tooMuch"
    | "range"
    | "vagueAmount"
    | "eachOfUnknown"
    | "future"
    | "unrealDay"
    | "vagueTime"
    | "whichDay"
    | "noVerb"
    | "loneNumber"
    /** Work on a piece and a number: minutes, or what somebody took for it. */
    | "timeOrCost"
    | "milesUnsaid"
    | "cutOrPrice"
    | "raiseBy"
    | "loanAlone"
    | "botWord"
    | "anotherPerson"
    | "question"
    /** What we want for a piece, and no offer. */
    | "asking"
    | "clashingWord"
    | "twoKinds"
    | "unknown"
    | "percentUnsaid"
    | "shareOfPrice"
    | "gone"
    | "moneyBack"
    /** What went back of a deposit and what was kept: only the books know whether that is all of it. */
    | "backAndKept"
    | "clockUnsaid"
    | "goalUnsaid"
    | "undoMore"
    | "imperative"
    | "priceOfBoth"
    | "twoNouns"
    | "loanOrCost"
    | "newOrOld"
    | "eitherOf"
    | "unclaimed"
    /** Digits that are no number: "31.7.5". */
    | "unreadNumber"
    /** Bought, and seldom a piece to sell: a coke, a shirt. */
    | "pieceOrCost"
    /** A word that no slot takes and that is no known aside. */
    | "left"
    | "buyer"
    | Exclude<Hedge, "vague">;
}

/** What may stand in or beside a note of a kind, and what rules its kind out. */
export type Bearing =
  /** Somebody else may stand as the one who acts: a buyer backs out, puts money down, brings back. */
  | "others act"
  /** Another person may be whom it goes to. */
  | "has a buyer"
  /** It asks how many, or "some" makes no difference to it. */
  | "any count"
  /** A weekday far behind the verb is its day all the same. */
  | "dated in passing"
  /** A supply or a stream may stand beside what it records. */
  | "things beside"
  /** It is told of what is here: an everyday word behind its verb that no slot took tells nothing of it. */
  | "everyday words"
  /** Only the shop does it: he or she who does is one of us. */
  | "ours to do"
  /** It says how it is to be: a wish is as good as a fact. */
  | "wish"
  /** It is done to the piece in hand, and leaves it there: what is said next is likely of it too. */
  | "at work"
  /** Without a piece it is of the sale spoken of last. */
  | "behind a sale"
  /** It may be a standing note. */
  | "repeats"
  /** It is about an earlier note. */
  | "corrects"
  /** A day, source, method or buyer said once at the end holds for several in a row. */
  | "one end for several"
  /** Pieces named at the head of a line may be its own. */
  | "of pieces"
  /** It is told of pieces that stand on the books already. */
  | "standing pieces"
  /** A price of each may wait until it is known which pieces they are. */
  | "counted later"
  /** It may be about a piece and need not. */
  | "piece or none"
  /** A loan is what is spoken of. */
  | "of loans"
  | "not to a buyer"
  | "not a service"
  | "not a part";

/** The reading half of a verb: its words and slots. */
export interface Grammar<K extends Kind> {
  says: readonly Saying<K>[];
  slots: { readonly [F in keyof ReadingFields[K]]?: Slot };
  /** Fields asked for where the note does not give them, in this order. */
  needs?: readonly Missing[];
  /** Verb words of other kinds that only complete this one ("refunded 30" after "backed out"). */
  absorbs?: readonly string[];
  /** The words must be the whole clause: nothing beside them but fillers and what the slots take. */
  whole?: true;
  /** It records no fact, so it takes no date. */
  dateless?: true;
  bears?: readonly Bearing[];
  /** The field of the one amount that a note of the kind is about: what "make that 35" corrects. */
  main?: keyof ReadingFields[K] & string;
  judge?: Judge<K>;
}

/**
 * The words that ask a question; part of the answer's own file. In a phrase "…" stands for anything in
 * between, and {piece}, {money}, {month}, {year} for what the question is about.
 */
export interface QuestionGrammar {
  /** Asked wherever the words stand in a clause that sounds like a question. */
  phrases: readonly string[];
  /** Asked only where the words are the whole clause, fillers aside. */
  whole?: readonly string[];
}
