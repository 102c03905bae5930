import type { Clause, Tok } from "../clause.ts";
import { claim, freeTokens, isMark } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { unlistedMention } from "../mentions/mentions.ts";
import type { Mention } from "../reading.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { MONTHS } from "../words/calendar.ts";
import { WHOM } from "../words/names.ts";
import {
  ALL_OF_THEM,
  HOW_MUCH,
  PLAIN_NOUNS,
  PURPOSES,
  SEVERAL,
  THE_SAME,
  THEM,
  WITH_PARTS,
} from "../words/pieces.ts";
import type { Fill, Filled } from "./filled.ts";
import { trouble } from "./filled.ts";
import { afterArticles, beforeArticles } from "./names.ts";
import { withoutMentioned } from "./told-pieces.ts";
import { isUnlistedNoun, unlisted } from "./unlisted.ts";

/** "the oak chairs, 4 of them": the count is theirs. */
function countedLater(tokens: Tok[]): Tok[] {
  const [named, counted] = tokens;
  if (tokens.length !== 2 || !named!.mention!.plural || !counted!.mention!.it || !counted!.mention!.count)
    return tokens;
  const { plural: _, ...mention } = named!.mention!;
  named!.mention = { ...mention, count: counted!.mention!.count };
  claim(counted!);
  return [named!];
}

/** "finished the hutch, yeah the hutch is finished": the same piece told once more, not a second one. */
function withoutNamedAgain({ tokens }: Clause, pieces: Tok[]): Tok[] {
  if (pieces.length < 2) return pieces;
  return pieces.filter((piece, place) => {
    const first = pieces.slice(0, place).find(({ mention }) => isSamePiece(mention!, piece.mention!));
    const isAgain = first !== undefined && isToldAnew(tokens, tokens.indexOf(first), tokens.indexOf(piece));
    if (isAgain) claim(piece);
    return !isAgain;
  });
}

const isSamePiece = (a: Mention, b: Mention): boolean =>
  a.name !== undefined &&
  a.name === b.name &&
  a.count === b.count &&
  a.number === undefined &&
  b.number === undefined &&
  String(a.traits ?? []) === String(b.traits ?? []);

/** Behind "the" or "that", with more between than what joins two of them. */
const isToldAnew = (tokens: readonly Tok[], from: number, to: number): boolean =>
  THE_SAME.has(tokens[to - 1]?.text ?? "") &&
  tokens.slice(from + 1, to - 1).some((token) => headsOf(token).length > 0 || token.roles.plain === true);

/** All pieces named; where none is, words nobody listed, or "it". */
export const pieces: Fill = (clause) => {
  const tokens = withoutNamedAgain(clause, countedLater(freeTokens(clause, "piece")));
  if (tokens.length > 0) {
    claim(...tokens);
    if (tokens.length > 1 && areSideBySide(tokens)) return trouble("twoNouns");
    if (tokens.length > 1 && isNumberRange(clause, tokens)) return trouble("range");
    if (tokens.length > 1 && tokens.some((token) => isOwnedBesides(clause, token)))
      return trouble("twoNouns");
    if (isSetSpeltOut(clause, tokens)) return trouble("twoNouns");
    if (tokens.length > 1 && couldBePriceBefore(tokens)) return trouble("twoNumbers");
    return withJoinedNouns(clause, withoutMentioned(clause, withoutParts(clause, tokens)));
  }
  const told = (clause.signs.hints & HINTS.actor) === 0 ? undefined : clause.tokens.find(isOfActor);
  if (told) {
    for (const token of clause.tokens) if (token.roles.pronoun) claim(token);
    return { value: [told.mention!] };
  }
  const pronoun = clause.tokens.find(
    (token) => token.kind === "word" && token.roles.pronoun && !token.claimed && isPronounHere(clause, token),
  );
  if (pronoun) {
    claim(pronoun);
    return { value: [], follows: true, ...(ALL_OF_THEM.has(pronoun.text) ? { several: true } : {}) };
  }
  // "did the hutch doors, 40 min": what was worked on is a part of it.
  const isWork = clause.tokens.some(({ kind }) => kind === "duration");
  const part = isWork ? clause.tokens.find(isPart) : undefined;
  if (part) return { value: [part.mention!] };
  const found = unlisted(clause, true);
  clause.unlisted = found;
  return found.length > 0 ? { value: found } : null;
};

/** "lady saw the crib and bought it" */
const isOfActor = ({ roles, mention }: Tok): boolean => roles.actor !== undefined && mention !== undefined;

const isPart = ({ kind, roles, mention }: Tok): boolean =>
  kind === "word" && roles.supply !== undefined && mention !== undefined;

/** "sold it 150 and bought lunch with it", "blew 30 of it on wood": that money, and no piece. */
const isMoneyOf = (tokens: readonly Tok[], at: number): boolean =>
  tokens[at - 1]?.text === "with" || (tokens[at - 1]?.text === "of" && tokens[at - 2]?.kind === "amount");

const isThem = ({ kind, text, claimed }: Tok, at: number, tokens: readonly Tok[]): boolean =>
  kind === "word" && THEM.has(text) && !claimed && !isMoneyOf(tokens, at);

/** Pieces of other kinds of note that only help to place it: none is made up from unknown words. */
export const knownPieces: Fill = (clause) => {
  const tokens = freeTokens(clause, "piece");
  if (tokens.length > 0) {
    claim(...tokens);
    return { value: tokens.map((token) => token.mention!) };
  }
  // "desk drawer": what was paid for is of the desk.
  const part = clause.tokens.find(isPart);
  if (part) return { value: [part.mention!] };
  const pronoun = clause.tokens.find(isThem);
  if (!pronoun) return namedAfterFor(clause);
  claim(pronoun);
  return { value: [], follows: true, ...(SEVERAL.has(pronoun.text) ? { several: true } : {}) };
};

const FOR_WORDS_MAX = 2;

/** "paint 12 for the whatnot": a noun nobody listed behind "for" is a piece too, or is asked about. */
function namedAfterFor(clause: Clause): Filled {
  const { tokens } = clause;
  for (let at = 0; at < tokens.length - 1; at += 1) {
    if (tokens[at]!.claimed || tokens[at]!.text !== "for") continue;
    const start = afterArticles(tokens, at + 1);
    let end = start;
    while (tokens[end]?.unknown && isUnlistedNoun(tokens[end]!) && !PURPOSES.has(tokens[end]!.text)) end += 1;
    // "storage 60 for may", "paint 34 for a quart": what it pays for, and no piece.
    const paysFor = tokens[start]?.text ?? "";
    if (MONTHS[paysFor] !== undefined || HOW_MUCH.has(paysFor)) {
      claim(tokens[at]!, tokens[start]!);
      continue;
    }
    const isWhole = tokens[end] === undefined || tokens[end]!.kind !== "word" || tokens[end]!.claimed;
    const run = tokens.slice(start, end);
    const mention =
      run.length > 0 && run.length <= FOR_WORDS_MAX && isWhole ? unlistedMention(run, null) : null;
    if (!mention) continue;
    claim(tokens[at]!, ...run);
    return { value: [mention] };
  }
  return null;
}

/** "that desk" points at the desk; "that" alone at the clause before. */
function isPronounHere(clause: Clause, token: Tok): boolean {
  if (/^(?:it|them|em|both of them)$/.test(token.text)) return true;
  const next = clause.tokens[clause.tokens.indexOf(token) + 1];
  return next?.kind !== "word" || (!next.unknown && !next.roles.trait && !next.roles.opinion);
}

/** "vanity dresser": one piece by two names, or two? */
function areSideBySide(tokens: readonly Tok[]): boolean {
  const isList = tokens.length > 2 && tokens.at(-2)!.to < tokens.at(-1)!.from;
  return tokens.some((token, at) => {
    // "dresser nightstand and table": no such dresser describes another piece.
    if (isList && PLAIN_NOUNS.has(token.mention?.name ?? "")) return false;
    const next = tokens[at + 1];
    const adjacent = next !== undefined && next.from === token.to;
    return (
      adjacent &&
      token.mention?.number === undefined &&
      next.mention?.number === undefined &&
      next.mention?.traits === undefined &&
      !/\d|^(?:a|an|the|both|pair|two|three|four)\b/.test(next.text)
    );
  });
}

/** "bought desk 40 now i have 6 desks": what there is by now was not bought with it. */
function isOwnedBesides({ tokens }: Clause, piece: Tok): boolean {
  return /^(?:have|has|ive|own|got now)$/.test(
    tokens[beforeArticles(tokens, tokens.indexOf(piece) - 1)]?.text ?? "",
  );
}

/** "dining set (table 4 chairs)": the set again, in its pieces. */
function isSetSpeltOut({ tokens }: Clause, pieces: readonly Tok[]): boolean {
  return pieces.some(
    (piece) => piece.mention?.set === true && isMark(tokens[tokens.indexOf(piece) + 1], "(", ":"),
  );
}

/** No set that is told by its numbers has more of a kind than this. */
const SET_OF_A_KIND_MAX = 8;

/** "posted table 85 chairs 40": eighty-five chairs, or a table for 85? "table 4 chairs" is a table with four. */
function couldBePriceBefore(tokens: readonly Tok[]): boolean {
  return tokens.some((token, at) => {
    const next = tokens[at + 1];
    return next?.from === token.to && /^\d/.test(next.text) && (next.mention?.count ?? 0) > SET_OF_A_KIND_MAX;
  });
}

/** "#4 to #6" may be two pieces or three. */
function isNumberRange(clause: Clause, tokens: readonly Tok[]): boolean {
  return tokens.some((token, at) => {
    const next = tokens[at + 1];
    if (token.mention?.number === undefined || next?.mention?.number === undefined) return false;
    return /^(?:to|-|thru|through)$/.test(clause.tokens[clause.tokens.indexOf(token) + 1]?.text ?? "");
  });
}

/** "dresser and whatnot 40", "whatnot and dresser 40": a noun nobody listed, joined to one that is known, is a piece too. */
function withJoinedNouns(clause: Clause, tokens: readonly Tok[]): Filled {
  if (tokens.length === 1 && !clause.signs.has("unknown")) return { value: [tokens[0]!.mention!] };
  const mentions = tokens.map((token) => ({ at: token.from, mention: token.mention! }));
  if (clause.signs.has("unknown")) {
    clause.tokens.forEach((token, at) => {
      if (!JOINS.has(token.text)) return;
      const run = joinedAfter(clause.tokens, at) ?? joinedBefore(clause, at);
      const mention = run ? unlistedMention(run, null) : null;
      if (!run || !mention) return;
      claim(...run);
      mentions.push({ at: run[0]!.from, mention });
    });
  }
  return { value: mentions.sort((a, b) => a.at - b.at).map(({ mention }) => mention) };
}

const JOINS = new Set(["and", "&", "+", ","]);
const JOINED_WORDS_MAX = 2;

/** The unlisted noun between "and" and the price. */
function joinedAfter(tokens: readonly Tok[], and: number): Tok[] | null {
  const start = afterArticles(tokens, and + 1);
  let end = start;
  // "sold desk to bob and sue 140"
  const isBehindName =
    tokens[and - 1]?.kind === "word" && WHOM.has(tokens[beforeArticles(tokens, and - 2)]?.text ?? "");
  if (isBehindName) return null;
  while (tokens[end]?.unknown && isUnlistedNoun(tokens[end]!)) end += 1;
  const fits = end > start && end - start <= JOINED_WORDS_MAX && tokens[end]?.kind === "amount";
  return fits && tokens[and]!.text !== "," ? tokens.slice(start, end) : null;
}

/** The unlisted noun between the verb and "and" with a piece behind it. */
function joinedBefore({ tokens, head }: Clause, and: number): Tok[] | null {
  if (tokens[afterArticles(tokens, and + 1)]?.kind !== "piece") return null;
  let start = and;
  while (start > 0 && tokens[start - 1]!.unknown && isUnlistedNoun(tokens[start - 1]!)) start -= 1;
  const before = beforeArticles(tokens, start - 1);
  const fits =
    start < and && and - start <= JOINED_WORDS_MAX && head !== undefined && tokens[before] === head;
  return fits ? tokens.slice(start, and) : null;
}

const isWith = (token: Tok | undefined): boolean => token?.text === "with" || token?.text === "w";

/** "dresser with mirror" is one piece; "shelves for hutch" are no hutch. */
function withoutParts(clause: Clause, tokens: readonly Tok[]): Tok[] {
  return tokens.filter((token) => {
    const before = beforeArticles(clause.tokens, clause.tokens.indexOf(token) - 1);
    const joined = isWith(clause.tokens[before]) && clause.tokens[before - 1]?.kind === "piece";
    const purpose =
      clause.tokens[before]?.text === "for" &&
      clause.tokens.some((other, place) => place < before && other.kind === "piece");
    return !(joined && WITH_PARTS.has(token.mention?.name ?? "")) && !purpose;
  });
}
