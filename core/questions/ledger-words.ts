import type { Books } from "../books/books.ts";
import { type Fact, newPiecesOf } from "../books/facts.ts";

/** What the ledger itself calls things, beside the words of the trade. */
export class LedgerWords {
  readonly names = new Set<string>();
  readonly traits = new Set<string>();
  readonly sources = new Set<string>();
  readonly buyers = new Set<string>();
  readonly methods = new Set<string>();
  readonly places = new Set<string>();
  readonly whats = new Set<string>();
  readonly streams = new Set<string>();
  readonly people = new Set<string>();
  /** Grows whenever a word is new. */
  revision = 0;

  /** Takes in the words of a fact. */
  learn(books: Books, fact: Fact): void {
    const data = fact.data as { method?: string; source?: string; buyer?: string; place?: string };
    if (data.method) this.#word(this.methods, data.method);
    if (data.source) this.#word(this.sources, data.source);
    if (data.buyer) this.#word(this.buyers, data.buyer);
    if (data.place) this.#word(this.places, data.place);
    if (fact.kind === "spend") this.#word(this.whats, fact.data.what);
    if (fact.kind === "income") this.#word(this.streams, fact.data.stream);
    if (fact.by) this.#word(this.people, fact.by);
    for (const number of newPiecesOf(fact)) {
      const piece = books.pieces.get(number);
      if (!piece) continue;
      this.#word(this.names, piece.name);
      for (const trait of piece.traits) this.#word(this.traits, trait);
    }
  }

  #word(words: Set<string>, word: string): void {
    if (words.has(word)) return;
    words.add(word);
    this.revision += 1;
  }
}
