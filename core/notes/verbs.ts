import { verbs } from "../verbs/list.ts";
import type { Head } from "./clause.ts";
import type { Grammar, Saying, Slot } from "./grammar.ts";
import type { VerbFacts } from "./heads.ts";
import { shorthands, tradeLexicon } from "./lexicon.ts";
import { KEYWORDS, TIME_WORDS } from "./quantities/starters.ts";
import { questionWords } from "./questions.ts";
import type { Kind } from "./reading.ts";
import { maskOf } from "./signs.ts";
import { makeSpeller } from "./spelling.ts";
import type { Lexer } from "./tokens.ts";
import { LABORS } from "./words/labors.ts";
import { ORDINARY } from "./words/ordinary.ts";

/** A saying as bits: the signs it needs, those it rules out, and how much it says beside its words. */
export interface Fit {
  needs: number;
  rulesOut: number;
  weight: number;
}

/** The order in which slots claim: what is marked by its own words first, bare words and numbers last. */
const SLOT_ORDER: readonly Slot[] = [
  "until",
  "minutes",
  "miles",
  "percent",
  "loan",
  "fee",
  "method",
  "buyer",
  "source",
  "stream",
  "labor",
  "what",
  "category",
  "pieces",
  "bought",
  "place",
  "money",
];

function inOrder(slots: Readonly<Record<string, Slot>>): [string, Slot][] {
  return Object.entries(slots).sort(([, a], [, b]) => SLOT_ORDER.indexOf(a) - SLOT_ORDER.indexOf(b));
}

function fitOf(saying: Saying<Kind>): Fit {
  return {
    needs: maskOf(saying.with),
    rulesOut: maskOf(saying.without),
    weight: (saying.with?.length ?? 0) * 2 + (saying.without?.length ?? 0) * 0.1,
  };
}

/** A grammar with its kind set aside, for the engine that treats all kinds alike. */
export interface AnyGrammar {
  kind: Kind;
  says: readonly Saying<Kind>[];
  /** The same sayings as bits, for telling at once which of them a clause fits. */
  fits: readonly Fit[];
  /** Fields and their slots, in the order in which slots claim. */
  slots: readonly (readonly [field: string, slot: Slot])[];
  needs: readonly string[];
  absorbs: ReadonlySet<string>;
  whole: boolean;
  dateless: boolean;
  judge?: (fields: Record<string, unknown>, clause: never) => unknown;
}

/** Everything that is built once from the lists of verbs and words. */
export interface Language {
  lexer: Lexer<Head>;
  facts: VerbFacts;
  grammars: ReadonlyMap<Kind, AnyGrammar>;
  /** Sayings without words, by kind, in the order of the list. */
  unsaid: readonly { kind: Kind; saying: number }[];
}

let built: Language | undefined;

/** The language, built at the first reading and kept: it depends on nothing but the lists. */
export function language(): Language {
  built ??= build();
  return built;
}

function grammarsOf(): Map<Kind, AnyGrammar> {
  const grammars = new Map<Kind, AnyGrammar>();
  for (const verb of verbs) {
    const reads = verb.reads as unknown as Grammar<"sell">;
    grammars.set(verb.kind, {
      kind: verb.kind,
      says: reads.says as readonly Saying<Kind>[],
      fits: (reads.says as readonly Saying<Kind>[]).map(fitOf),
      slots: inOrder(reads.slots as Record<string, Slot>),
      needs: reads.needs ?? [],
      absorbs: new Set(reads.absorbs ?? []),
      whole: reads.whole ?? false,
      dateless: reads.dateless ?? false,
      ...(reads.judge ? { judge: reads.judge as AnyGrammar["judge"] } : {}),
    });
  }
  return grammars;
}

export function phrasesOf(saying: Saying<Kind>): readonly string[] {
  return saying.say === undefined ? [] : typeof saying.say === "string" ? [saying.say] : saying.say;
}

function build(): Language {
  const grammars = grammarsOf();
  const lexicon = tradeLexicon<Head>();
  const unsaid: { kind: Kind; saying: number }[] = [];
  for (const grammar of grammars.values()) {
    grammar.says.forEach((saying, index) => {
      const phrases = phrasesOf(saying);
      if (phrases.length === 0) unsaid.push({ kind: grammar.kind, saying: index });
      for (const phrase of phrases) {
        const [head = "", ...tails] = phrase.split(" … ");
        const tail = tails.flatMap((part) => part.split(" "));
        lexicon.add(head, {
          heads: [{ kind: grammar.kind, saying: index, tail, light: saying.light ?? false }],
        });
      }
    });
  }
  for (const word of LABORS) lexicon.add(word, { labor: true });
  const shorts = shorthands();
  const ordinary = new Set([...ORDINARY, ...KEYWORDS, ...questionWords(), ...lexicon.vocabulary]);
  for (const short of shorts.keys()) ordinary.delete(short);
  const speller = makeSpeller(
    [...lexicon.targets, ...TIME_WORDS].filter((word) => !shorts.has(word)),
    ordinary,
  );
  return {
    lexer: { lexicon, speller, shorthands: shorts },
    facts: factsOf(grammars),
    grammars,
    unsaid,
  };
}

const SLOTS_OF: Readonly<Record<string, readonly Slot[]>> = {
  money: ["money"],
  pieces: ["pieces", "bought"],
  minutes: ["minutes"],
  miles: ["miles"],
  fee: ["fee"],
};

function factsOf(grammars: ReadonlyMap<Kind, AnyGrammar>): VerbFacts {
  return {
    absorbs: (kind, text) => {
      const absorbed = grammars.get(kind)?.absorbs;
      return absorbed !== undefined && (absorbed.has(text) || absorbed.has(text.split(" ", 1)[0]!));
    },
    takes: (kind, slot) => {
      if (slot === "price") return grammars.get(kind)?.slots.some(([field]) => field === "price") ?? false;
      const taken = grammars.get(kind)?.slots ?? [];
      return taken.some(([, name]) => SLOTS_OF[slot]!.includes(name));
    },
  };
}
