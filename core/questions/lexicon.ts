import type { Entry, Roles } from "../notes/lexicon.ts";
import { pluralOf, shorthands, singularOf, tradeLexicon } from "../notes/lexicon.ts";
import type { Category } from "../notes/reading.ts";
import { makeSpeller, type Speller, slipsBetween } from "../notes/spelling.ts";
import { ORDINARY } from "../notes/words/ordinary.ts";

/*
 * The one door from questions to the words of notes. Everything else in this folder knows words only through
 * what stands here, so that the lexicon can change its shape without the questions noticing.
 */

export type { Speller };
export { pluralOf, singularOf, slipsBetween };

/** A speller over some words; ordinary words of English are taken as typed. */
export function spellerOf(vocabulary: Iterable<string>): Speller {
  return makeSpeller(vocabulary, ORDINARY);
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

function thingOf({ noun, supply, place, method, stream, person, trait }: Roles): Thing | null {
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

function gather(entry: Entry, into: Map<string, Thing>): void {
  const thing = entry.roles ? thingOf(entry.roles) : null;
  if (thing) into.set(entry.phrase, thing);
  for (const next of entry.next?.values() ?? []) gather(next, into);
}

/** Every phrase of the trade with what it may stand for: pieces, supplies, places, methods, streams, people, traits. */
export function tradeThings(): Map<string, Thing> {
  const lexicon = tradeLexicon();
  const things = new Map<string, Thing>();
  for (const word of lexicon.vocabulary) {
    const entry = lexicon.entry(word);
    if (entry) gather(entry as Entry, things);
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
