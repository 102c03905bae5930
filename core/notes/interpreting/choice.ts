import type { Clause, Said, Tails, Tok } from "../clause.ts";
import type { Bearing } from "../grammar.ts";
import { headsOf, isHead } from "../heads.ts";
import type { Kind } from "../reading.ts";
import { HINTS, maskOf } from "../tokens/sign-bits.ts";
import { firstWord } from "../tokens/text.ts";
import { bears, language } from "../verbs.ts";
import { AFTER_VERB } from "../words/links.ts";
import { HELPERS } from "../words/people.ts";

export interface Choice {
  said: Said;
  head?: Tok;
  tail: readonly Tok[];
  score: number;
  /** The signs that depend on what follows the verb. */
  mask: number;
}

/** A clause with more verb words than this is no note, and comparing them all would take the square of their number. */
const HEADS_MAX = 12;

const NO_BARS: readonly Bearing[] = [];

/** What rules out those kinds that bear it: who it went to is no purchase, nor is a part of a piece. */
function barsOf({ tokens, signs }: Clause): readonly Bearing[] {
  let bars = NO_BARS;
  // Who it went to is told by a row, and a service or a part is a supply.
  if ((signs.hints & HINTS.actor) === 0 && !signs.has("supply")) return bars;
  for (let at = 0; at < tokens.length; at += 1) {
    const { kind, roles, mention } = tokens[at]!;
    const { actor, service, supply } = roles;
    if (kind !== "word" && !actor) continue;
    if (actor === "buyer" || actor === "nobody") bars = [...bars, "not to a buyer"];
    if (service) bars = [...bars, "not a service"];
    if (supply !== undefined && mention !== undefined) bars = [...bars, "not a part"];
  }
  return bars;
}

/** Whether a saying has all that it needs, and nothing that rules it out. */
const isFitting = ({ needs, rulesOut }: Said, mask: number): boolean =>
  (mask & needs) === needs && (mask & rulesOut) === 0;

const isBarred = (kind: Kind, bars: readonly Bearing[]): boolean =>
  bars.length > 0 && bars.some((bar) => bears(kind, bar));

export function chosen(clause: Clause, repeats: Tok | undefined, behind?: readonly Tok[]): Choice | null {
  const { tokens } = clause;
  const heads = headPlaces(tokens);
  if (heads.length > HEADS_MAX) return null;
  const bars = barsOf(clause);
  let best: Choice | null = null;
  for (const at of heads)
    if (heads.length === 1 || !isAbsorbed(clause, at, heads)) best = better(best, clause, tokens[at]!, bars);
  if (best) return best;
  if (repeats && heads.length === 0) return better(null, clause, repeats, bars, behind);
  // A verb that was said and does not fit is not overruled by what the clause holds: "returned paint 20".
  if (bars.length === 0 && heads.some((at) => saysMore(clause, tokens[at]!))) return null;
  return unsaidChoice(clause.signs.mask, bars);
}

function headPlaces(tokens: readonly Tok[]): number[] {
  const places: number[] = [];
  for (let at = 0; at < tokens.length; at += 1) if (isHead(tokens, at)) places.push(at);
  return places;
}

/** The saying without words that names most of what the clause holds. */
function unsaidChoice(mask: number, bars: readonly Bearing[]): Choice | null {
  let best: Said | null = null;
  let most = -1;
  for (const said of language().unsaid) {
    if (!isFitting(said, mask) || isBarred(said.kind, bars)) continue;
    const score = Math.floor(said.weight);
    if (score <= most) continue;
    best = said;
    most = score;
  }
  return best ? { said: best, tail: NO_TAIL, score: most, mask: 0 } : null;
}

function saysMore(clause: Clause, token: Tok): boolean {
  return headsOf(token).some((head) => !head.light && tailOf(clause, token, head.tails) !== null);
}

/** Words that only complete the verb of the clause ("refunded 30" after "backed out") do not compete with it. */
function isAbsorbed(clause: Clause, at: number, heads: readonly number[]): boolean {
  const { facts } = language();
  const { tokens } = clause;
  return heads.some((place) => {
    if (place === at) return false;
    const other = tokens[place]!;
    const takes = headsOf(other).some(
      (head) =>
        !head.light &&
        facts.absorbs(head.kind, tokens[at]!.text) &&
        // "put 20 toward the lamp": no loan is paid, so that nothing is a part of that.
        isFitting(head.said, clause.signs.mask | maskAfter(clause, other)) &&
        tailOf(clause, other, head.tails) !== null,
    );
    if (!takes) return false;
    const taken = headsOf(tokens[at]!).some((head) => !head.light && facts.absorbs(head.kind, other.text));
    return !taken || place < at;
  });
}

/** The better of a choice and what one verb word says: a plain verb before a light one, then the fuller saying. */
function better(
  before: Choice | null,
  clause: Clause,
  token: Tok,
  bars: readonly Bearing[],
  behind?: readonly Tok[],
): Choice | null {
  const after = maskAfter(clause, token);
  const mask = clause.signs.mask | after;
  let best = before;
  for (const { said, tails, light } of headsOf(token)) {
    if (!isFitting(said, mask) || isBarred(said.kind, bars)) continue;
    const own = tailOf(clause, token, tails);
    const ending = own ?? (behind ? tailOf({ tokens: behind }, token, tails) : null);
    if (!ending) continue;
    // What was said of the clause before is none of its words.
    const tail = own ?? NO_TAIL;
    const length = token.to - token.from + wordsOf(ending) * 3;
    const score = (light ? 20 : 100) + length * 3 + said.weight;
    if (!best || best.score < score) best = { said, head: token, tail, score, mask: after };
  }
  return best;
}

const MONEY_FIRST = maskOf(["moneyFirst"]);

const PIECE_FIRST = maskOf(["pieceFirst"]);

const HELPER = maskOf(["helper"]);

const SUPPLY_FIRST = maskOf(["supplyFirst"]);

/** Whether the verb is about a supply ("bought dresser knobs 12") and not a piece that has one ("desk, missing a drawer"). */
function supplyMask(tokens: readonly Tok[], from: number): number {
  for (let at = from; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (token.kind === "piece") {
      const next = tokens[at + 1];
      return next?.kind === "word" && next.roles.supply !== undefined ? SUPPLY_FIRST : 0;
    }
    if (token.kind === "word" && token.roles.supply !== undefined && !token.roles.heads) return SUPPLY_FIRST;
  }
  return from > 0 ? supplyMask(tokens, 0) : 0;
}

/** The signs that depend on what follows the verb. */
function maskAfter(clause: Clause, head: Tok): number {
  const place = clause.tokens.indexOf(head) + 1;
  return nextMask(clause, place) | (clause.signs.has("supply") ? supplyMask(clause.tokens, place) : 0);
}

function nextMask({ tokens }: Clause, place: number): number {
  let at = place;
  while (at < tokens.length && AFTER_VERB.has(tokens[at]!.text)) at += 1;
  const next = tokens[at];
  if (next?.kind === "amount" || next?.roles.asking) return MONEY_FIRST;
  if (next?.kind === "piece") return PIECE_FIRST;
  return next?.kind === "word" && (HELPERS.has(next.text) || next.roles.supply === "help") ? HELPER : 0;
}

const NO_TAIL: readonly Tok[] = [];

/** How many words some tokens have. */
function wordsOf(tokens: readonly Tok[]): number {
  let words = 0;
  for (const { text } of tokens) words += text.split(" ").length;
  return words;
}

/** The tokens that finish a verb's words further on, the longest of them; null where there are none. */
function tailOf(
  { tokens }: { tokens: readonly Tok[] },
  head: Tok,
  tails: Tails | null,
): readonly Tok[] | null {
  if (tails === null) return NO_TAIL;
  const { endings, words } = tails;
  let found: readonly Tok[] | null = null;
  let longest = 0;
  for (let at = tokens.indexOf(head) + 1; at < tokens.length; at += 1) {
    let text = "";
    for (let to = at; to < tokens.length && words.has(firstWord(tokens[to]!.text)); to += 1) {
      text = text ? `${text} ${tokens[to]!.text}` : tokens[to]!.text;
      if (text.length <= longest || !endings.has(text)) continue;
      found = tokens.slice(at, to + 1);
      longest = text.length;
    }
  }
  return found;
}
