import { ASKING_CUES, BEFORE_QUESTION } from "../words/asking.ts";
import { MONTHS } from "../words/calendar.ts";
import { CHAT_JOINTS, CHAT_MARKS } from "../words/chatter.ts";
import { DOUBTED, JOKES, OPENS_TAKEN_BACK } from "../words/doubts.ts";
import { CLASHING_SHORT_FORMS } from "../words/furniture.ts";
import { AND, SEPARATORS } from "../words/links.ts";
import { BEHIND, OLD, REDOES, STILL_OWED } from "../words/mending.ts";
import { PROCEEDS, REMAINDERS, RESTS } from "../words/money.ts";
import { EACH_WORDS } from "../words/numbers.ts";
import { PLACES, STANDS_FOR_PIECES } from "../words/pieces.ts";
import type { Roles } from "./roles.ts";
import { BITS, HINTS, type OwnSigns } from "./sign-bits.ts";
import { lastWord } from "./text.ts";

const PICKUPS = [
  "pickup",
  "pick up",
  "picking up",
  "picks up",
  "picking it up",
  "coming",
  "collecting",
  "picks",
  "gets",
  "takes",
  "grabs",
  "fetching",
];

const WORDS: readonly (readonly [hints: number, words: Iterable<string>])[] = [
  [HINTS.preposition, ["to", "for", "from", "at", "off", "off of", "out of", "outta"]],
  [HINTS.until, ["until", "till", "til", "thru", "through", "before", "by", ...PICKUPS]],
  [HINTS.method, ["by", "via"]],
  [HINTS.on, ["on", "in"]],
  [HINTS.fee, ["commission"]],
  [HINTS.asks, ASKING_CUES],
  [HINTS.beforeAsking, BEFORE_QUESTION],
  [HINTS.markBetween, SEPARATORS],
  [HINTS.wordBetween, AND],
  [HINTS.markByChat, ["?", ...CHAT_MARKS]],
  [HINTS.wordByChat, CHAT_JOINTS],
  [HINTS.standsForPieces, STANDS_FOR_PIECES],
  [HINTS.takesBack, OPENS_TAKEN_BACK],
  [HINTS.doubted, DOUBTED],
  [HINTS.joke, JOKES],
  [HINTS.old, OLD],
  [HINTS.corrects, ["only", ...STILL_OWED]],
  [HINTS.behind, BEHIND],
  [HINTS.questionMark, ["?"]],
  [HINTS.clashing, CLASHING_SHORT_FORMS],
  [HINTS.month, Object.keys(MONTHS)],
  [HINTS.rest, ["full", ...REMAINDERS, ...RESTS]],
  [HINTS.each, EACH_WORDS],
  [HINTS.redoes, REDOES],
  [HINTS.rank, Object.keys(PLACES)],
];

const HINT_OF = new Map<string, number>();
for (const [hints, words] of WORDS)
  for (const word of words) HINT_OF.set(word, (HINT_OF.get(word) ?? 0) | hints);

/** What the first word of a phrase tells of all of it, and the last of one that says a verb ("hold for"). */
const OF_FIRST = HINTS.asks | HINTS.takesBack | HINTS.rank;

/** The hints of a word or phrase, whatever stands around it. */
export function hintsOf(text: string, roles: Roles): number {
  const { heads, method, place, person, actor, owed, agreed, hedge } = roles;
  let hints = HINT_OF.get(text) ?? 0;
  const blank = text.indexOf(" ");
  if (blank > 0) {
    hints |= (HINT_OF.get(text.slice(0, blank)) ?? 0) & OF_FIRST;
    if (heads) hints |= (HINT_OF.get(lastWord(text)) ?? 0) & HINTS.preposition;
  }
  if (method) hints |= HINTS.method;
  if (place) hints |= HINTS.place;
  if (person) hints |= HINTS.person;
  if (actor) hints |= HINTS.actor;
  if (owed || agreed || hedge === "part paid") hints |= HINTS.owed;
  if (text.endsWith("fee") || text.endsWith("fees")) hints |= HINTS.fee;
  return hints;
}

const LOAN = /(?:^| )loans?(?: |$)/;

/** The signs of a word or phrase, whatever stands around it. */
export function ownSignsOf(text: string, roles: Roles): number {
  let signs = 0;
  if (roles.supply) signs |= BITS.supply;
  if (roles.stream) signs |= BITS.stream;
  if (roles.person) signs |= BITS.person;
  if (roles.labor) signs |= BITS.labor;
  // "at asking", "half of what i asked": the price, though no number says it.
  if (roles.asking) signs |= BITS.number;
  if (roles.pronoun) signs |= BITS.pronoun;
  if (text === "tax" || text === "taxes") signs |= BITS.tax;
  if (text.includes("loan") && LOAN.test(text)) signs |= BITS.loan;
  if (PROCEEDS.has(text)) signs |= BITS.proceeds;
  return signs;
}

/** All of it, as it is kept with a phrase of the lexicon. */
export const ownOf = (text: string, roles: Roles): OwnSigns => ({
  signs: ownSignsOf(text, roles),
  hints: hintsOf(text, roles),
  units: undefined,
});
