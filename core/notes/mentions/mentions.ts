import type { Tok } from "../clause.ts";
import { tokenBefore } from "../clause.ts";
import type { Mention } from "../reading.ts";
import { lastWord } from "../tokens/text.ts";
import { pieceToken } from "../tokens/token.ts";
import { ALL_OF_THEM, TOWARDS_SOMEBODY } from "../words/links.ts";
import { COATS } from "../words/parts.ts";
import {
  DESCRIBED_PARTS,
  EACH_OF,
  HAS,
  MORE,
  NO_TRAITS,
  OTHER_NUMBERED,
  PAIRS,
  PIECES,
  SEVERAL,
  SIZED,
  THESE,
} from "../words/pieces.ts";
import { PARTS } from "../words/traits.ts";
import { COUNT_WORDS, countBefore, countInProduct, countOf, setCountBefore } from "./counts.ts";
import { isSetName } from "./furniture.ts";
import { singularOf } from "./plural.ts";

/** No piece has more drawers, legs or shelves. */
const PARTS_MAX = 24;

function isTrait(token: Tok | undefined): boolean {
  if (token?.kind !== "word") return false;
  if (token.roles.trait) return true;
  return token.unknown === true && !COUNT_WORDS.has(token.text) && !NO_TRAITS.has(token.text);
}

/** "sold to carol desk 90": the unknown word is whoever the preposition is about. */
function isAfterPreposition(tokens: readonly Tok[], at: number): boolean {
  const before = tokens[at - 1];
  // "bought for bob dresser 40": right behind the verb "for" is about somebody.
  return (
    before !== undefined &&
    (TOWARDS_SOMEBODY.has(before.text) ||
      (before.text === "for" && tokens[at - 2]?.roles.heads !== undefined))
  );
}

/** The describing words before a noun, and where they begin. */
function traitsBefore(tokens: readonly Tok[], noun: number): { traits: string[]; from: number } {
  let traits: string[] = [];
  let at = noun - 1;
  for (; at >= 0; at -= 1) {
    const token = tokens[at]!;
    const number = tokenBefore(tokens, at);
    // "second coat dresser 1h"
    if (COATS.has(token.text)) break;
    if (number?.kind === "amount" && !number.amount?.money && PARTS.has(token.text)) {
      traits.unshift(`${number.text} ${token.text}`);
      at -= 1;
    } else if (token.kind === "grain" && PARTS.has(token.text.split(" ").at(-1)!)) traits.unshift(token.text);
    else if (token.roles.opinion && !token.roles.trait) continue;
    // "2 more chairs" are two.
    else if (countOf(number) !== null && MORE.has(token.text)) continue;
    else if (isTrait(token) && !(token.unknown && isAfterPreposition(tokens, at)))
      traits = [...(token.text.includes(" ") ? token.text.split(" ") : [token.text]), ...traits];
    else break;
  }
  return { traits, from: at + 1 };
}

/** "dining set 5 pieces", "chairs x4", "dresser #12", "nightstands 2 for 30": what follows a noun. */
function after(tokens: readonly Tok[], noun: number, mention: Mention, plural: boolean): number {
  let to = noun + 1;
  const next = tokens[to];
  if (!next) return to;
  if (next.kind === "number") {
    mention.number = next.value!;
    mention.count ??= 1;
    return to + 1;
  }
  if (next.kind === "count" && mention.count === undefined) {
    mention.count = next.value!;
    return to + 1;
  }
  // "lamps both sold 18 each"
  if (plural && mention.count === undefined && next.text === "both" && tokens[to + 1]?.text !== "for") {
    mention.count = COUNT_WORDS.get(next.text)!;
    return to + 1;
  }
  if (mention.count === undefined && PAIRS.has(next.text)) {
    mention.count = 2;
    mention.set = true;
    return to + 1;
  }
  if (isPartCount(tokens, to)) return to + partOffset(tokens, to) + 2;
  // "chairs 2@10" counts them, and the product stays the price.
  const factor = countInProduct(next);
  if (factor !== null && plural && mention.count === undefined) mention.count = factor;
  const open =
    next.kind === "mark" && (next.text === "(" || isCountAside(tokens, to, mention, plural)) ? 1 : 0;
  const count = countOf(tokens[to + open]);
  if (count === null || mention.count !== undefined) return to;
  const unit = tokens[to + open + 1];
  if (unit && PIECES.has(unit.text) && mention.name && isSetName(mention.name)) {
    mention.count = count;
    return to + open + 2;
  }
  if (!plural) return to;
  if (open && (tokens[to + 2]?.text === ")" || tokens[to + 2]?.text === ",")) to += 3;
  else if (unit?.text === "for" && isMoreThan(tokens[to + 2], count)) to += 1;
  else if (unit?.kind === "amount" && unit.each) to += 1;
  else if ((unit?.text === "at" || unit?.text === "@") && tokens[to + 2]?.each) to += 1;
  else return to;
  mention.count = count;
  return to;
}

/** "dining set, 5 pieces, …", "chairs, 4, 60 bucks": the count between commas. */
function isCountAside(tokens: readonly Tok[], comma: number, { name }: Mention, plural: boolean): boolean {
  if (tokens[comma]!.text !== "," || countOf(tokens[comma + 1]) === null) return false;
  const unit = tokens[comma + 2];
  const isOfSet = unit !== undefined && PIECES.has(unit.text) && name !== undefined && isSetName(name);
  return isOfSet || (plural && unit?.text === "," && tokens[comma + 3]?.kind === "amount");
}

/** "chairs 4 for 100" counts them; "chairs 40 for 2" could be either way round. */
function isMoreThan(token: Tok | undefined, count: number): boolean {
  if (token?.kind !== "amount") return false;
  const { exact, money } = token.amount!;
  return money || exact === null || exact.digits >= count * 10 ** exact.scale;
}

/** A comma or "with" between a noun and what it has. */
function partOffset(tokens: readonly Tok[], at: number): number {
  return at < tokens.length && HAS.has(tokens[at]!.text) ? 1 : 0;
}

/** "dresser, 3 drawer": drawers are no pieces and three no price. */
function isPartCount(tokens: readonly Tok[], at: number): boolean {
  const from = at + partOffset(tokens, at);
  const count = countOf(tokens[from]);
  // "hutch 90 legs are wobbly" is a price.
  return count !== null && count <= PARTS_MAX && DESCRIBED_PARTS.has(tokens[from + 1]?.text ?? "");
}

function joinedToken(tokens: readonly Tok[], from: number, to: number, mention: Mention): Tok {
  let text = tokens[from]!.text;
  for (let at = from + 1; at < to; at += 1) text += ` ${tokens[at]!.text}`;
  return pieceToken(text, tokens[from]!.from, tokens[to - 1]!.to, mention);
}

const isOtherNumber = (tokens: readonly Tok[], at: number): boolean =>
  tokens[at]!.kind === "number" &&
  (OTHER_NUMBERED.has(tokenBefore(tokens, at)?.text ?? "") ||
    isSized(tokenBefore(tokens, at)) ||
    isSized(tokens[at + 1]));

/** "finish nails" */
const isSized = (token: Tok | undefined): boolean =>
  token !== undefined && (SIZED.has(token.text) || SIZED.has(lastWord(token.text)));

/** "#1", "#1 the dresser", "#4 tall white hutch": the number, and what is called by it. */
function numberedMention(tokens: readonly Tok[], at: number): { mention: Mention; from: number; to: number } {
  const first = tokens[at + 1]?.text === "the" ? at + 2 : at + 1;
  let next = first;
  while (tokens[next]?.roles.trait && !tokens[next]!.roles.noun) next += 1;
  const noun = tokens[next]?.roles.noun;
  const number = tokens[at]!.value!;
  if (!noun) return { mention: { count: 1, number }, from: at, to: at + 1 };
  const traits = tokens.slice(first, next).map(({ text }) => text);
  const mention = { name: noun.name, count: 1, number, ...(traits.length > 0 ? { traits } : {}) };
  return { mention: ordered(mention), from: at, to: next + 1 };
}

function mentionAt(
  tokens: readonly Tok[],
  at: number,
): { mention: Mention; from: number; to: number } | null {
  const token = tokens[at]!;
  if (token.kind === "number") {
    if (isOtherNumber(tokens, at)) return null;
    return numberedMention(tokens, at);
  }
  const noun = token.roles.noun;
  if (!noun || token.kind !== "word") return null;
  const drawers = noun.name === "drawer chest" && !noun.plural ? countOf(tokens[at - 1]) : null;
  if (drawers !== null) {
    // "5 drawer chest"
    const mention: Mention = { name: "chest", count: 1, traits: [`${drawers} drawer`] };
    return { mention, from: at - 1, to: at + 1 };
  }
  const mention: Mention = { name: noun.name };
  const { traits, from: traitsFrom } = traitsBefore(tokens, at);
  let counted = countBefore(tokens, traitsFrom, noun.plural);
  // "bookcase, 3 shelf": what it has, not what was bought.
  if (PARTS.has(token.text) && !noun.plural && (counted.count ?? 1) > 1) return null;
  if (counted.count === undefined && !counted.set && noun.isSet) {
    const whole = setCountBefore(tokens, counted.from);
    if (whole.count !== undefined) counted = whole;
  }
  if (counted.count !== undefined) mention.count = counted.count;
  if (counted.set || noun.isSet) mention.set = true;
  if (traits.length > 0) mention.traits = traits;
  // "4 @ 20 stools": the product stays the price.
  const factor = countInProduct(tokenBefore(tokens, counted.from));
  if (factor !== null && noun.plural) mention.count ??= factor;
  if (isTheOther(tokens, traitsFrom, at)) mention.besides = true;
  const to = after(tokens, at, mention, noun.plural);
  if (mention.count === undefined) {
    if (noun.plural) mention.plural = true;
    else mention.count = 1;
  }
  return { mention: ordered(mention), from: Math.min(counted.from, traitsFrom), to };
}

/** "the other bookcase", "my other oak desk" */
function isTheOther(tokens: readonly Tok[], from: number, noun: number): boolean {
  let at = from;
  while (at < noun && tokens[at]!.text !== "other") at += 1;
  return at < noun && (at === 0 || THESE.has(tokens[at - 1]!.text));
}

/** The fields of a mention that are there, in the order in which they are printed. */
function ordered({ name, count, traits, number, plural, set, besides }: Mention): Mention {
  // Nearly all mentions are a name and a count.
  if (
    name !== undefined &&
    count !== undefined &&
    !traits &&
    number === undefined &&
    !plural &&
    !set &&
    !besides
  )
    return { name, count };
  const mention: Mention = {};
  if (name !== undefined) mention.name = name;
  if (count !== undefined) mention.count = count;
  if (traits) mention.traits = traits;
  if (number !== undefined) mention.number = number;
  if (plural) mention.plural = true;
  if (set) mention.set = true;
  if (besides) mention.besides = true;
  return mention;
}

/** Only a noun or a piece's number can be the heart of a mention. */
const isNamed = ({ kind, roles }: Tok): boolean => kind === "number" || roles.noun !== undefined;

/** Joins the words of each mention of pieces into one token. */
export function withMentions(tokens: Tok[]): Tok[] {
  if (!tokens.some(isNamed)) return tokens;
  const joined: Tok[] = [];
  const origins: number[] = [];
  let at = 0;
  while (at < tokens.length) {
    const token = tokens[at]!;
    const found = isNamed(token) ? mentionAt(tokens, at) : null;
    if (!found) {
      joined.push(isOtherNumber(tokens, at) ? { ...token, kind: "grain" } : token);
      origins.push(at);
      at += 1;
      continue;
    }
    while (origins.length > 0 && origins.at(-1)! >= found.from) {
      origins.pop();
      joined.pop();
    }
    if (isOneOfThem(joined, found.mention)) {
      joined.at(-2)!.each = true;
      joined.pop();
      origins.pop();
      at = found.to;
      continue;
    }
    if (found.mention.plural) shareNoun(joined, found.mention);
    else if (isOfEvery(joined, found.mention)) found.mention = saidOfEach(tokens, joined, found.mention);
    // An earlier mention may already hold these words: it keeps them.
    joined.push(
      joinedToken(tokens, Math.max(found.from, (origins.at(-1) ?? -1) + 1), found.to, found.mention),
    );
    origins.push(at);
    at = found.to;
  }
  return joined;
}

/** "listed them, 40 a chair": what each of those told before is to bring. */
function isOneOfThem(joined: readonly Tok[], { count, name }: Mention): boolean {
  const [price, article] = joined.slice(-2);
  if (count !== 1 || price?.kind !== "amount" || !/^an?$/.test(article?.text ?? "")) return false;
  return joined.some(
    ({ text, mention }) =>
      SEVERAL.has(text) ||
      ALL_OF_THEM.has(text) ||
      (mention && (mention.name ?? name) === name && (mention.plural || (mention.count ?? 1) > 1)),
  );
}

/** "each nightstand", "45 min per chair", "took 5 off each nightstand" */
function isOfEvery(joined: readonly Tok[], { count, number, set }: Mention): boolean {
  const before = joined.at(-1)?.text ?? "";
  const isOne = count === 1 && number === undefined && !set;
  // "20 min a chair"
  if (isOne && before === "a") return joined.at(-2)?.kind === "duration";
  return isOne && EACH_OF.has(lastWord(before));
}

/**
 * All of that name, and the one price or time of the line said of each of them. Where several are told, the word
 * stays: nobody knows which of them it is about.
 */
function saidOfEach(tokens: readonly Tok[], joined: Tok[], mention: Mention): Mention {
  const told = tokens.filter(({ kind }) => kind === "amount" || kind === "duration");
  if (told.length > 1 || told[0]?.each) return mention;
  if (told[0]) told[0].each = true;
  if (EACH_OF.has(joined.at(-1)!.text)) joined.pop();
  const { count: _, ...all } = mention;
  return ordered({ ...all, plural: true });
}

/** "the wide and narrow bookcases": what stands before "and" is told by the same noun. */
function shareNoun(joined: Tok[], { name, traits }: Mention): void {
  const [described, link] = joined.slice(-2);
  if (
    !traits ||
    !link ||
    (link.text !== "and" && link.text !== "&") ||
    described?.kind !== "word" ||
    !described.roles.trait
  )
    return;
  const { text, from, to } = described;
  joined[joined.length - 2] = pieceToken(
    text,
    from,
    to,
    ordered({ name: name!, traits: [text], plural: true }),
  );
}

/** A mention from words nobody listed, where the verb makes them clear: "bought a whatnot 30". */
export function unlistedMention(words: readonly Tok[], count: number | null): Mention | null {
  const firstName = words.findIndex((word) => !word.roles.trait && !word.roles.opinion);
  const start = firstName === -1 ? words.length - 1 : firstName;
  const nouns = words.slice(start).map((word) => word.text);
  const last = nouns.at(-1);
  if (!last || !/\p{L}{2}/u.test(last)) return null;
  const singular = singularOf(last);
  const name = [...nouns.slice(0, -1), singular].join(" ");
  const traits = words
    .slice(0, start)
    .filter((word) => word.roles.trait)
    .map((word) => word.text);
  const plural = singular !== last && count === null;
  return ordered({
    name,
    ...(plural ? { plural: true } : { count: count ?? 1 }),
    ...(traits.length > 0 ? { traits } : {}),
  });
}
