import { SAME_THINGS } from "../notes/words/same.ts";
import type { Desk } from "./desk.ts";
import { LACKS } from "./filters.ts";
import type { LedgerIndex } from "./ledger-index.ts";
import { kindOf } from "./lexicon.ts";
import { type Vocabulary, vocabularyOf } from "./marks.ts";
import { type Own, ownPhrases } from "./phrases.ts";

/** What people call the one loan of their books: no name that narrows. */
const NAMELESS_LOAN = "loan";

/** "the rocker" of a ledger that has rocking chairs and no rocker, as notes mean it. */
const otherNames = (names: ReadonlySet<string>): Own[] =>
  SAME_THINGS.flatMap((same) => {
    const [value, ...more] = [...same].filter((name) => names.has(name));
    if (value === undefined || more.length > 0) return [];
    return [...same]
      .filter((said) => said !== value)
      .map((said): Own => ({ dimension: "kind", value, said }));
  });

/** Everything that this ledger calls something. */
function ownWords({ index, books, people }: Desk): Own[] {
  const { words } = index;
  const all = (dimension: Own["dimension"], values: Iterable<string>): Own[] =>
    [...values].map((value) => ({ dimension, value }));
  const loans = [...books.loans.keys()].filter((name) => name !== NAMELESS_LOAN);
  return [
    ...all("kind", words.names),
    ...all("kind", new Set([...words.names].map(kindOf))),
    ...otherNames(words.names),
    ...all("trait", words.traits),
    ...Object.entries(LACKS).map(([value, { said }]): Own => ({ dimension: "trait", value, said })),
    ...all("source", words.sources),
    ...all("buyer", words.buyers),
    ...all("method", words.methods),
    ...all("place", words.places),
    ...all("what", words.whats),
    ...all("stream", words.streams),
    ...all("person", [...words.people, ...people.map(({ name }) => name)]),
    ...all("loan", loans),
  ];
}

interface Kept {
  key: string;
  vocabulary: Vocabulary;
}

const kept = new WeakMap<LedgerIndex, Kept>();

/** The vocabulary of a ledger, made anew only when a word is new. */
export function vocabularyFor(desk: Desk): Vocabulary {
  const { index, books, people, me } = desk;
  const key = [index.words.revision, ...books.loans.keys(), "|", me, ...people.map(({ name }) => name)].join(
    " ",
  );
  const before = kept.get(index);
  if (before?.key === key) return before.vocabulary;
  const own = ownPhrases(ownWords(desk));
  // "Me or dad": whoever asks.
  if (me !== null) own.at("myself").own = [{ dimension: "person", value: `#${me}` }];
  const vocabulary = vocabularyOf(own);
  kept.set(index, { key, vocabulary });
  return vocabulary;
}
