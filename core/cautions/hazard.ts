import type { FactKind } from "../books/facts.ts";

/** Something done, known by the kind of the fact, or by its words in a note that is not recorded. */
export interface Doing {
  kinds: readonly FactKind[];
  words: RegExp;
}

/** What calls for a caution: all that is given of it must hold. */
export interface Trigger {
  /** In the note's words. */
  words?: RegExp;
  /** In the name and traits of a piece; in the note's words where no piece of the note has it. */
  piece?: RegExp;
  doing?: Doing;
  /** What the money was spent on, by the category of the fact. */
  spentOn?: string;
}

/** How bad: 1 can kill or is forbidden, 2 harms a person, 3 costs money or paper. */
export type Weight = 1 | 2 | 3;

/** One hazard of the trade: what calls for its caution, the one line, and where that comes from. */
export interface Hazard {
  id: string;
  weight: Weight;
  /** Of a piece: said once for each. Of the trade: once a year in a ledger, whatever the piece. */
  of: "piece" | "trade";
  /** Any one of them will do. Matched against plain words: small letters, no hyphens and apostrophes. */
  when: readonly Trigger[];
  /** Two lines of a phone at most, and it defers to local rules or to licensed practice. */
  line: string;
  /** The published text behind it. "From memory" where that was not read again. */
  source: string;
}

/** Putting a piece before buyers, or handing it over. */
export const OFFERING: Doing = {
  kinds: ["list", "hold", "sell"],
  words:
    /\b(?:sell|sells|selling|sold|list|lists|listed|listing|post|posted|hold|held|deposit|buyer|buyers|for sale)\b/,
};

export const LISTING: Doing = {
  kinds: ["list"],
  words: /\b(?:list|lists|listed|listing|post|posted|posting|put up|for sale)\b/,
};

export const BUYING: Doing = {
  kinds: ["buy"],
  words:
    /\b(?:buy|buying|bought|got|grabbed|snagged|scored|found|free|picked up|brought home|took home|rescued|curb)\b/,
};

/** Work on a piece, or money spent for it. */
export const WORKING: Doing = {
  kinds: ["work", "spend", "start", "finish"],
  words:
    /\b(?:sand\w*|strip\w*|scrap\w*|paint\w*|stain\w*|cut\w*|drill\w*|grind\w*|polish\w*|work\w*|hours?|\d+h|start\w*|going to|gonna)\b/,
};
