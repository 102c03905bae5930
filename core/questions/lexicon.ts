import type { Entry } from "../notes/lexicon.ts";
import { shorthands } from "../notes/lexicon.ts";
import { pluralOf, singularOf } from "../notes/plural.ts";
import type { Category } from "../notes/reading.ts";
import type { Roles } from "../notes/roles.ts";
import { isNearSpelling, slipsBetween } from "../notes/spelling.ts";
import { language } from "../notes/verbs.ts";
import { isEveryday } from "../notes/words/everyday.ts";
import { ORDINARY } from "../notes/words/ordinary.ts";

/*
 * The one door from questions to the words of notes. Everything else in this folder knows words only through
 * what stands here, so that the lexicon can change its shape without the questions noticing.
 */

export { MONTHS, ORDINALS, WEEKDAYS } from "../notes/words/calendar.ts";
export { UNITS as NUMBERS } from "../notes/words/numbers.ts";
export { pluralOf, singularOf, slipsBetween };

/** Finds the one known word that a typed word is a slip away from. */
export interface Speller {
  /** Whether the word is known, or an ordinary one that is taken as typed. */
  isSettled(word: string): boolean;
  /** The known word meant, or null: known already, too short, or more than one would do. */
  meant(word: string): string | null;
}

/**
 * A speller over some words. It is asked of few words, so that it looks through those of the same first letter
 * instead of keeping every way to misspell every word.
 */
export function spellerOf(vocabulary: Iterable<string>): Speller {
  const known = new Set(vocabulary);
  const byLetter = new Map<string, string[]>();
  for (const word of known) {
    const list = byLetter.get(word[0] ?? "");
    if (list) list.push(word);
    else byLetter.set(word[0] ?? "", [word]);
  }
  const isSettled = (word: string): boolean => known.has(word) || ORDINARY.has(word) || isEveryday(word);
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

/** Two words as near as each other settle nothing, unless one only goes on from the other ("deposit", "deposits"). */
function samePlain(a: string | null, b: string): string | null {
  if (a === null) return null;
  if (a.startsWith(b)) return b;
  return b.startsWith(a) ? a : null;
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

function thingOf<Head>(roles: Roles<Head>): Thing | null {
  const { noun, supply, place, method, stream, person, trait } = roles;
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

function gather<Head>(entry: Entry<Head>, into: Map<string, Thing>): void {
  const thing = entry.said ? thingOf(entry.said) : null;
  if (thing) into.set(entry.phrase, thing);
  for (const next of entry.next?.values() ?? []) gather(next, into);
}

/** Every phrase of the trade with what it may stand for: pieces, supplies, places, methods, streams, people, traits. */
export function tradeThings(): Map<string, Thing> {
  const { lexicon } = language().lexer;
  const things = new Map<string, Thing>();
  for (const word of lexicon.vocabulary) {
    const entry = lexicon.entry(word);
    if (entry) gather(entry, things);
  }
  return things;
}

/** Listed misspellings and short forms, each with the word it stands for. */
export function shortForms(): Map<string, string> {
  return shorthands();
}

/** The kind of a piece's name: its last word, or the last one before "of" ("chest of drawers" is a chest). */
export function kindOf(name: string): string {
  const of = name.indexOf(" of ");
  const head = of > 0 ? name.slice(0, of) : name;
  return head.slice(head.lastIndexOf(" ") + 1);
}
