import { pluralOf, singularOf } from "../notes/mentions/plural.ts";
import type { Category } from "../notes/reading.ts";
import type { Entry } from "../notes/tokens/lexicon.ts";
import { allBehind, nextOf } from "../notes/tokens/lexicon.ts";
import { isNearSpelling, samePlain, slipsBetween } from "../notes/tokens/spelling.ts";
import { isBare } from "../notes/tokens/unvowelled.ts";
import { language } from "../notes/verbs.ts";
import { isCommon } from "../notes/words/daily.ts";
import { isEveryday } from "../notes/words/everyday.ts";
import { ORDINARY } from "../notes/words/never-corrected.ts";

/*
 * The one door from questions to the words of notes. Everything else in this folder knows words only through
 * what stands here, so that the lexicon can change its shape without the questions noticing.
 */

export { askedApart } from "../notes/second-look/cuts.ts";
export { MONTHS, ORDINALS, WEEKDAYS } from "../notes/words/calendar.ts";
export { UNITS as NUMBERS } from "../notes/words/numbers.ts";
export { standFor, wordsAlike } from "../notes/words/words.ts";
export { pluralOf, singularOf, slipsBetween };

/** Finds the one known word that a typed word is a slip away from. */
export interface Speller {
  /** Whether the word is known, or an ordinary one that is taken as typed. */
  isSettled(word: string): boolean;
  /** The known word meant, or null: known already, too short, or more than one would do. */
  meant(word: string): string | null;
}

/**
 * A speller over some words, and a few more. It is asked of few words, so that it looks through those of the same first letter
 * instead of keeping every way to misspell every word.
 */
export function spellerOf(known: ReadonlySet<string>, also: readonly string[] = []): Speller {
  const byLetter = new Map<string, string[]>();
  for (const word of [...known, ...also.filter((more) => !known.has(more))]) {
    const list = byLetter.get(word[0] ?? "");
    if (list) list.push(word);
    else byLetter.set(word[0] ?? "", [word]);
  }
  const isSettled = (word: string): boolean =>
    known.has(word) || also.includes(word) || ORDINARY.has(word) || isEveryday(word);
  const meant = (word: string): string | null => {
    if (isSettled(word)) return null;
    let best: string | null = null;
    let fewest = Number.POSITIVE_INFINITY;
    for (const candidate of byLetter.get(word[0] ?? "") ?? []) {
      if (Math.abs(candidate.length - word.length) > 2 || !isNearSpelling(word, candidate)) continue;
      const slips = slipsBetween(word, candidate);
      if (slips < fewest) {
        best = candidate;
        fewest = slips;
      } else if (slips === fewest) best = samePlain(best, candidate);
    }
    return best;
  };
  return { isSettled, meant };
}

/** What a word or phrase of the trade may stand for; which of it holds, the question decides. */
export interface Thing {
  /** Canonical singular name of a piece. */
  noun?: string;
  plural?: true;
  supply?: Category;
  place?: string;
  method?: string;
  stream?: string;
  person?: true;
  trait?: true;
}

/** A word or phrase of the trade: what goes on from it, and what may be said of it by `thingAt`. */
export type TradeEntry = Entry<unknown>;

/** What begins with a word, as the notes know it. */
export const tradeEntry = (word: string): TradeEntry | undefined => language().lexer.lexicon.entry(word);

/** What goes on from a word or phrase of the trade with one more word. */
export const tradeBehind = (entry: TradeEntry, word: string): TradeEntry | undefined => nextOf(entry, word);

/** What a phrase of the trade may stand for; null where it is of no interest to a question. */
export function thingAt({ said }: TradeEntry): Thing | null {
  if (!said) return null;
  const { noun, supply, place, method, stream, person, trait } = said;
  const thing: Thing = {
    ...(noun ? { noun: noun.name, ...(noun.plural ? { plural: true as const } : {}) } : {}),
    ...(supply ? { supply } : {}),
    ...(place ? { place } : {}),
    ...(method ? { method } : {}),
    ...(stream ? { stream } : {}),
    ...(person ? { person } : {}),
    ...(trait ? { trait } : {}),
  };
  return Object.keys(thing).length > 0 ? thing : null;
}

/** Every phrase of the trade that may stand for something: pieces, supplies, places, methods, streams, people, traits. */
export function tradePhrases(): string[] {
  const { lexicon } = language().lexer;
  const goThrough = (entry: TradeEntry | undefined): string[] =>
    entry ? [...(thingAt(entry) ? [entry.phrase] : []), ...allBehind(entry).flatMap(goThrough)] : [];
  return [...lexicon.vocabulary].flatMap((word) => goThrough(lexicon.entry(word)));
}

/** The word that a listed misspelling or short form stands for; undefined where it is none. */
export const formOf = (word: string): string | undefined => language().lexer.shorthands.get(word);

/** The word that is written without its vowels; undefined where it is none. */
export const fullFormOf = (word: string): string | undefined =>
  isBare(word) && !isCommon(word) ? language().lexer.unvowelled(word)[0] : undefined;

/** The kind of a piece's name: its last word, or the last one before "of" ("chest of drawers" is a chest). */
export function kindOf(name: string): string {
  const of = name.indexOf(" of ");
  const head = of > 0 ? name.slice(0, of) : name;
  return head.slice(head.lastIndexOf(" ") + 1);
}
