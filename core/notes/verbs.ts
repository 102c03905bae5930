import type { Head, Said, Tails } from "./clause.ts";
import type { Bearing, Grammar, Saying, Slot } from "./grammar.ts";
import type { VerbFacts } from "./heads.ts";
import { DESCRIBES } from "./passed-over/described.ts";
import { PAUSES, SPOKEN } from "./passed-over/hesitations.ts";
import { questionWords } from "./phrases.ts";
import type { Kind } from "./reading.ts";
import { wordsOfRows } from "./rows/words.ts";
import type { Fill } from "./slots/filled.ts";
import { knownPieces } from "./slots/pieces.ts";
import type { Cues } from "./slots/slots.ts";
import { cuesOf, slots } from "./slots/slots.ts";
import { isSettled, MARKS, shorthands, tradeLexicon } from "./tokens/lexicon.ts";
import { type Lexer, TWOFOLD } from "./tokens/meant.ts";
import type { Roles } from "./tokens/roles.ts";
import { maskOf } from "./tokens/sign-bits.ts";
import { makeSpeller } from "./tokens/spelling.ts";
import { firstWord } from "./tokens/text.ts";
import { OPENINGS } from "./tokens/tokens.ts";
import { makeUnvowelled } from "./tokens/unvowelled.ts";
import { OF_DEEDS, OF_HAGGLING } from "./words/bargained.ts";
import { isCommon } from "./words/daily.ts";
import { OPENS_ORDER } from "./words/dictated.ts";
import { LABORS } from "./words/labors.ts";
import { ORDINARY } from "./words/never-corrected.ts";
import { MAY_PUT_RIGHT } from "./words/put-right.ts";
import { KEYWORDS, TIME_WORDS } from "./words/starters.ts";
import { PARTS } from "./words/traits.ts";

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

/** A field, the slot that fills it, and what a clause must hold for that. */
export interface Field {
  name: string;
  slot: Slot;
  fill: Fill;
  cues: Cues;
}

function inOrder({ slots: named, needs = [], kind }: SlotsOf): Field[] {
  const order = Object.entries(named).sort(([, a], [, b]) => SLOT_ORDER.indexOf(a) - SLOT_ORDER.indexOf(b));
  return order.map(([name, slot]) => {
    // Where pieces are only named by the way, none is made up from unknown words.
    const byTheWay = slot === "pieces" && !needs.includes("pieces") && kind !== "hold";
    return { name, slot, fill: byTheWay ? knownPieces : slots[slot], cues: cuesOf(slot) };
  });
}

interface SlotsOf {
  kind: Kind;
  slots: Readonly<Record<string, Slot>>;
  needs?: readonly string[];
}

function saidOf(saying: Saying<Kind>, kind: Kind): Said {
  return {
    kind,
    means: (saying.means ?? {}) as Readonly<Record<string, unknown>>,
    needs: maskOf(saying.with),
    rulesOut: maskOf(saying.without),
    weight: (saying.with?.length ?? 0) * 2 + (saying.without?.length ?? 0) * 0.1,
  };
}

/** A grammar with its kind set aside, for the engine that treats all kinds alike. */
export interface AnyGrammar {
  kind: Kind;
  /** In the order in which their slots claim. */
  fields: readonly Field[];
  needs: readonly string[];
  wantsPieces: boolean;
  absorbs: ReadonlySet<string>;
  whole: boolean;
  dateless: boolean;
  bears: ReadonlySet<Bearing>;
  main: string | null;
  judge?: (fields: Record<string, unknown>, clause: never) => unknown;
}

/** Everything that is built once from the lists of verbs and words. */
interface Language {
  lexer: Lexer<Head>;
  facts: VerbFacts;
  grammars: ReadonlyMap<Kind, AnyGrammar>;
  /** Sayings without words, by kind, in the order of the list. */
  unsaid: readonly Said[];
}

/** What the reader needs of a verb: its words and slots. */
interface Worded {
  readonly kind: Kind;
  readonly reads: unknown;
}

let verbs: readonly Worded[] = [];

/** Hands in the verbs, once, before anything is read. */
export function handInVerbs(list: readonly Worded[]): void {
  verbs = list;
}

let built: Language | undefined;

/** The language, built at the first reading and kept: it depends on nothing but the lists. */
export function language(): Language {
  built ??= build();
  return built;
}

/** Whether a kind's own file says that of it. */
export const bears = (kind: Kind, bearing: Bearing): boolean =>
  language().grammars.get(kind)?.bears.has(bearing) === true;

function grammarsOf(): Map<Kind, AnyGrammar> {
  const grammars = new Map<Kind, AnyGrammar>();
  for (const verb of verbs) {
    const reads = verb.reads as unknown as Grammar<"sell">;
    grammars.set(verb.kind, {
      kind: verb.kind,
      fields: inOrder({
        kind: verb.kind,
        slots: reads.slots as Record<string, Slot>,
        ...(reads.needs ? { needs: reads.needs } : {}),
      }),
      needs: reads.needs ?? [],
      wantsPieces: reads.needs?.includes("pieces") ?? false,
      absorbs: new Set(reads.absorbs ?? []),
      whole: reads.whole ?? false,
      dateless: reads.dateless ?? false,
      bears: new Set(reads.bears ?? []),
      main: reads.main ?? null,
      ...(reads.judge ? { judge: reads.judge as AnyGrammar["judge"] } : {}),
    });
  }
  return grammars;
}

function phrasesOf(saying: Saying<Kind>): readonly string[] {
  return saying.say === undefined ? [] : typeof saying.say === "string" ? [saying.say] : saying.say;
}

/** The first words of a saying's phrases with all that may follow them further on, "" where nothing must. */
function endingsByHead(phrases: readonly string[], ends: readonly string[] = [""]): Map<string, Set<string>> {
  const byHead = new Map<string, Set<string>>();
  for (const phrase of phrases) {
    const [head = "", ...tails] = phrase.split(" … ");
    const ending = tails.join(" ");
    const endings = byHead.get(head);
    const all = ends.map((further) => `${ending} ${further}`.trim());
    if (endings) for (const each of all) endings.add(each);
    else byHead.set(head, new Set(all));
  }
  return byHead;
}

const TAILS = new Map<string, Tails>();

/** Some endings as they are looked for: once for all verbs that have the same, since a dozen of them have hundreds. */
function tailsOf(endings: ReadonlySet<string>): Tails {
  const key = [...endings].join("|");
  const known = TAILS.get(key);
  if (known) return known;
  const all = [...endings].map((ending) => ending.split(" "));
  const tails = { endings, all, words: new Set(all.flat()) };
  TAILS.set(key, tails);
  return tails;
}

function build(): Language {
  const grammars = grammarsOf();
  const lexicon = tradeLexicon<Head>();
  const unsaid: Said[] = [];
  for (const { kind, reads } of verbs as readonly { kind: Kind; reads: Grammar<Kind> }[]) {
    for (const saying of reads.says as readonly Saying<Kind>[]) {
      const said = saidOf(saying, kind);
      const phrases = phrasesOf(saying);
      if (phrases.length === 0) unsaid.push(said);
      const light = saying.light ?? false;
      // One for all words of a saying with the same endings.
      const made = new Map<Tails | null, Roles<Head>>();
      const rolesWith = (tails: Tails | null): Roles<Head> => {
        const roles = made.get(tails) ?? { heads: [{ kind, said, tails, light }] };
        made.set(tails, roles);
        return roles;
      };
      for (const [head, endings] of endingsByHead(phrases, saying.ends)) {
        if (endings.delete("")) lexicon.add(head, rolesWith(null));
        if (endings.size > 0) lexicon.add(head, rolesWith(tailsOf(endings)));
      }
    }
  }
  for (const word of LABORS) lexicon.add(word, { labor: true });
  lexicon.mark(OPENINGS, MARKS.opens);
  lexicon.mark(SPOKEN, MARKS.spoken);
  lexicon.mark(TWOFOLD, MARKS.twofold);
  lexicon.mark(OPENS_ORDER, MARKS.order);
  lexicon.mark(PAUSES, MARKS.pause);
  lexicon.mark(MAY_PUT_RIGHT, MARKS.putsRight);
  lexicon.mark(DESCRIBES, MARKS.describes);
  lexicon.mark(OF_HAGGLING, MARKS.haggles);
  lexicon.mark(OF_DEEDS, MARKS.dealt);
  const shorts = shorthands();
  const ordinary = new Set([
    ...wordsOfRows(),
    ...ORDINARY,
    ...PARTS,
    ...KEYWORDS,
    ...questionWords(),
    ...lexicon.vocabulary,
  ]);
  for (const short of shorts.keys()) ordinary.delete(short);
  const meant = [...lexicon.targets, ...TIME_WORDS].filter((word) => !shorts.has(word));
  lexicon.mark([...meant, ...ordinary], MARKS.settled);
  const speller = makeSpeller(meant, (word) => isSettled(lexicon.entry(word)) || isCommon(word));
  return {
    lexer: { lexicon, speller, unvowelled: makeUnvowelled(lexicon), shorthands: shorts },
    facts: factsOf(grammars),
    grammars,
    unsaid,
  };
}

const SLOTS_OF: Readonly<Record<string, readonly Slot[]>> = {
  money: ["money"],
  what: ["what"],
  pieces: ["pieces", "bought"],
  minutes: ["minutes"],
  miles: ["miles"],
  fee: ["fee"],
};

function factsOf(grammars: ReadonlyMap<Kind, AnyGrammar>): VerbFacts {
  return {
    absorbs: (kind, text) => {
      const absorbed = grammars.get(kind)?.absorbs;
      return absorbed !== undefined && (absorbed.has(text) || absorbed.has(firstWord(text)));
    },
    takes: (kind, slot) => {
      const fields = grammars.get(kind)?.fields ?? [];
      if (slot === "price") return fields.some(({ name }) => name === "price");
      return fields.some((field) => SLOTS_OF[slot]!.includes(field.slot));
    },
  };
}
