import type { Thing } from "./lexicon.ts";
import {
  pluralOf,
  singularOf,
  type TradeEntry,
  thingAt,
  tradeBehind,
  tradeEntry,
  tradePhrases,
} from "./lexicon.ts";
import type { Dimension, Grouping } from "./query.ts";
import { type Cue, cuesSaid } from "./words/cues.ts";
import {
  AND,
  COMPARING,
  COMPARISONS,
  FILLERS,
  GENERIC,
  GROUPS,
  LIMITS,
  LINKS,
  MINE,
  NEGATIONS,
  OR,
  ORDERS,
  PARTED,
  THAN,
  UNKNOWN,
  UNNOTED,
  WEEKLY,
} from "./words/plain.ts";

export type Link = "from" | "at" | "to" | "on" | "by" | "for" | "in" | "via";
export type OrderWord = "best" | "worst" | "most" | "least" | "fastest" | "slowest";
export type Limit = "over" | "under" | "least" | "most" | "exactly";
export type Flag =
  | "filler"
  | "generic"
  | "negation"
  | "compare"
  | "than"
  | "or"
  | "and"
  | "parted"
  | "mine"
  | "comparing";

/** What the ledger itself means by a word. */
export interface Own {
  dimension: Exclude<Dimension, Limit | "status" | "piece" | "lot" | "shop">;
  value: string;
  /** Of the days of something done: the period as said. */
  name?: string;
  /** How it is said, where that is another name than its own. */
  said?: string;
}

/** What an item may narrow by. */
export type Narrower = Own["dimension"] | "piece";

/** Everything that one phrase may be. */
export interface Senses {
  cues: readonly Cue[];
  flags: ReadonlySet<Flag>;
  link?: Link;
  group?: Grouping;
  /** The words say by themselves that rows are wanted: "monthly". */
  groupWhole?: true;
  order?: OrderWord;
  limit?: Limit;
  thing?: Thing;
  own: readonly Own[];
}

type Draft = { -readonly [K in keyof Senses]: Senses[K] };

/** Of some ten thousand words most have no sense of a kind, and few have words after them. */
const NONE: readonly never[] = [];
const NO_FLAGS: ReadonlySet<Flag> = new Set();

const NO_SENSES: Senses = { cues: NONE, flags: NO_FLAGS, own: NONE };

/** Phrases by their words; the longest from a place is found. */
export class Phrases {
  /** In one map, not word by word: most of some ten thousand beginnings lead to one phrase alone. */
  readonly #senses = new Map<string, Senses>();
  /** Those that it was settled with, in their order, and what each may be: two lists take a fifth of such a map. */
  #settled: readonly string[] = [];
  #settledSenses: readonly Senses[] = [];
  /** How many words the longest phrase has that begins with a word. */
  readonly #reach = new Map<string, number>();
  readonly words = new Set<string>();
  readonly #isThing: ((phrase: string) => boolean) | null;

  /** `isThing`: of which phrases it also holds what the trade means by them; of none without it. */
  constructor(isThing: ((phrase: string) => boolean) | null = null) {
    this.#isThing = isThing;
  }

  /** Puts all that is kept into less room; what is added from now on is found before it. */
  settle(): void {
    this.#settled = [...this.#senses.keys()].sort();
    this.#settledSenses = this.#settled.map((phrase) => this.#senses.get(phrase)!);
    this.#senses.clear();
  }

  #kept(phrase: string): Senses | undefined {
    const added = this.#senses.get(phrase);
    if (added) return added;
    let low = 0;
    let high = this.#settled.length - 1;
    while (low <= high) {
      const middle = (low + high) >> 1;
      const other = this.#settled[middle]!;
      if (other === phrase) return this.#settledSenses[middle];
      if (other < phrase) low = middle + 1;
      else high = middle - 1;
    }
    return undefined;
  }

  /** What is kept of a phrase, to add to. */
  at(phrase: string): Draft {
    const draft = { ...(this.#kept(phrase) ?? NO_SENSES) };
    this.#keep(phrase, draft);
    return draft;
  }

  /** Adds a cue to a phrase; those that are this cue and nothing else share what is kept of them. */
  addCue(phrase: string, alone: Senses): void {
    const before = this.#kept(phrase);
    this.#keep(phrase, before ? { ...before, cues: [...before.cues, ...alone.cues] } : alone);
  }

  /** Adds a flag in the same way. */
  addFlag(phrase: string, flag: Flag, alone: Senses): void {
    const before = this.#kept(phrase);
    if (!before) this.#keep(phrase, alone);
    else if (before.flags.size === 0) this.#keep(phrase, { ...before, flags: alone.flags });
    else this.#keep(phrase, { ...before, flags: new Set([...before.flags, flag]) });
  }

  #keep(phrase: string, senses: Senses): void {
    if (!this.#kept(phrase)) {
      const words = phrase.split(" ");
      this.know(phrase);
      this.#reach.set(words[0]!, Math.max(words.length, this.#reach.get(words[0]!) ?? 0));
    }
    this.#senses.set(phrase, senses);
  }

  longest(words: readonly string[], at: number): { senses: Senses; words: number } | null {
    let phrase = words[at] ?? "";
    let entry = this.#isThing ? tradeEntry(phrase) : undefined;
    const reach = this.#reach.get(phrase) ?? 0;
    let found: { senses: Senses; words: number } | null = null;
    for (let count = 1; at + count <= words.length && (count <= reach || entry); count += 1) {
      if (count > 1) {
        const word = words[at + count - 1]!;
        phrase += ` ${word}`;
        entry &&= tradeBehind(entry, word);
      }
      const senses = this.#sensesOf(phrase, entry);
      if (senses) found = { senses, words: count };
    }
    return found;
  }

  /** What a phrase may be; what the trade means by it is put there when it is first asked. */
  #sensesOf(phrase: string, entry: TradeEntry | undefined): Senses | undefined {
    const senses = this.#kept(phrase);
    if (!entry?.said || senses?.thing || !this.#isThing!(phrase)) return senses;
    const thing = thingAt(entry);
    if (!thing) return senses;
    const both = { ...(senses ?? NO_SENSES), thing };
    this.#senses.set(phrase, both);
    return both;
  }

  /** Takes the words of a phrase for known ones. */
  know(phrase: string): void {
    for (const word of phrase.split(" ")) this.words.add(word);
  }
}

function flagAll(phrases: Phrases, words: readonly string[], flag: Flag): void {
  const alone: Senses = { ...NO_SENSES, flags: new Set([flag]) };
  for (const word of words) phrases.addFlag(word, flag, alone);
}

/** "who bought" asks for somebody as well, where no rows are wanted. */
function cuesOfWords(phrases: Phrases, phrase: string): Cue[] {
  return phrase.split(" ").flatMap((word) => phrases.longest([word], 0)?.senses.cues ?? []);
}

function addGroups(phrases: Phrases): void {
  for (const [group, { words, whole = [] }] of Object.entries(GROUPS)) {
    for (const word of words) {
      const senses = phrases.at(word);
      senses.group ??= group as Grouping;
      if (/^(?:who|where|how|what|bought|sold) /.test(word) && senses.cues.length === 0)
        senses.cues = cuesOfWords(phrases, word);
    }
    for (const word of whole) {
      const senses = phrases.at(word);
      senses.group ??= group as Grouping;
      senses.groupWhole = true;
    }
  }
}

/** Words of the trade that a question uses for something else, so that they narrow nothing. */
const NO_THINGS: ReadonlySet<string> = new Set(
  (
    "he she they him her his their you your who person people someone somebody buyer buyers customer client seller " +
    "fee fees commission commissions a one gig class channel online month months piece pieces pcs case load stick yard trash dump job set lot"
  ).split(" "),
);

/** Whether a phrase of the trade stands in a question for what it is: no word for a category, and none of `NO_THINGS`. */
const isThing = (phrase: string): boolean => !NO_THINGS.has(phrase) && !OF_CATEGORIES.has(phrase);

let common: Phrases | undefined;

/** The words of questions and of the trade, built once. */
export function commonPhrases(): Phrases {
  if (common) return common;
  const phrases = new Phrases(isThing);
  for (const [cue, words] of Object.entries(cuesSaid())) {
    const alone: Senses = { ...NO_SENSES, cues: [cue as Cue] };
    for (const word of words) phrases.addCue(word, alone);
  }
  const flags: [readonly string[], Flag][] = [
    [FILLERS, "filler"],
    [GENERIC, "generic"],
    [NEGATIONS, "negation"],
    [COMPARISONS, "compare"],
    [THAN, "than"],
    [OR, "or"],
    [AND, "and"],
    [PARTED, "parted"],
    [MINE, "mine"],
    [COMPARING, "comparing"],
  ];
  for (const [words, flag] of flags) flagAll(phrases, words, flag);
  for (const [link, words] of Object.entries(LINKS))
    for (const word of words) phrases.at(word).link = link as Link;
  for (const [order, words] of Object.entries(ORDERS))
    for (const word of words) phrases.at(word).order = order as OrderWord;
  for (const [limit, words] of Object.entries(LIMITS))
    for (const word of words) phrases.at(word).limit = limit as Limit;
  addGroups(phrases);
  for (const phrase of tradePhrases()) if (!NO_THINGS.has(phrase)) phrases.know(phrase);
  addCategories(phrases);
  for (const [value, words] of Object.entries(WEEKLY))
    for (const word of words) phrases.at(word).own = [{ dimension: "weekday", value }];
  for (const dimension of UNNOTED) phrases.at(`unknown ${dimension}`).own = [{ dimension, value: UNKNOWN }];
  phrases.settle();
  common = phrases;
  return phrases;
}

/** Words for a category of spending rather than for one thing. */
const CATEGORY_WORDS: Readonly<Record<string, readonly string[]>> = {
  materials: ["materials", "material", "supplies", "supply"],
  tools: ["tools", "tool"],
  vehicle: ["vehicle", "vehicles", "car costs", "truck costs", "van costs", "vehicle costs"],
  fees: [],
  help: ["help", "helpers", "hired help", "paid help", "hired hands", "helping hands"],
  storage: ["storage", "storage costs", "storage rent"],
  other: ["misc", "miscellaneous"],
};

const OF_CATEGORIES: ReadonlySet<string> = new Set(Object.values(CATEGORY_WORDS).flat());

function addCategories(phrases: Phrases): void {
  for (const [category, words] of Object.entries(CATEGORY_WORDS))
    for (const word of words) {
      const senses = phrases.at(word);
      senses.own = [...senses.own, { dimension: "category", value: category }];
    }
}

/** A name as it stands before what is somebody's. */
export function possessiveOf(name: string): string {
  return `${name}s`;
}

/** Words that the ledger adds, each with its plural: names, traits, places, people, what was bought, loans. */
export function ownPhrases(words: readonly Own[]): Phrases {
  const phrases = new Phrases();
  for (const own of words) {
    const spoken = (own.said ?? own.value).toLowerCase();
    const forms = new Set([spoken]);
    if (/^(?:kind|what|source|method)$/.test(own.dimension)) {
      forms.add(pluralOf(spoken));
      if (own.dimension === "what") forms.add(singularOf(spoken));
    }
    // "Dad's pieces": apostrophes are gone by then.
    if (own.dimension === "person" || own.dimension === "buyer") forms.add(possessiveOf(spoken));
    for (const form of forms) {
      const senses = phrases.at(form.replaceAll("-", " "));
      if (!senses.own.some((each) => each.dimension === own.dimension && each.value === own.value))
        senses.own = [...senses.own, own];
    }
  }
  return phrases;
}
