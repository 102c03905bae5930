import type { Tok } from "../clause.ts";
import { isAmount } from "../clause.ts";
import { headOf } from "../heads.ts";
import { BEFORE_PRICE, BEFORE_UNLISTED, PREPOSITIONS } from "../words/links.ts";
import { ASKS_FOR, FEES, FOR_NOTHING } from "../words/money.ts";
import { HELPERS } from "../words/people.ts";
import { WAS } from "../words/pieces.ts";

export const isSupply = (token: Tok): boolean =>
  token.kind === "word" && token.roles.supply !== undefined && !token.roles.heads;

export const isStream = (token: Tok): boolean => token.kind === "word" && token.roles.stream !== undefined;

const FILLING = (token: Tok): boolean =>
  token.kind === "mark" ||
  (token.kind === "word" &&
    (token.roles.filler === true || token.roles.opinion === true) &&
    !token.roles.heads);

export interface Shape {
  head: Tok | undefined;
  piece: boolean;
  amount: boolean;
  supply: boolean;
  stream: boolean;
  miles: boolean;
  duration: boolean;
  loan: boolean;
  percent: boolean;
  pronoun: boolean;
  labor: boolean;
  filling: boolean;
  /** Hands are paid: "paid cousin 20". */
  hands: boolean;
  fee: boolean;
  /** The verb stands before the first piece. */
  headFirst: boolean;
  /** "for" somebody, as in a hold. */
  buyer: boolean;
  prepositional: boolean;
  /** What it was like: "chair was junk". */
  told: boolean;
  /** What is asked for it: "asking 80". */
  asking: boolean;
  /** Where it was. */
  place: boolean;
  /** A noun nobody listed and an amount right behind it: "a globe 6". */
  unlisted: boolean;
  /** It cost nothing. */
  free: boolean;
  /** A supply first and an amount right behind it: "paint 12". */
  pricedSupply: boolean;
}

export function shapeOf(tokens: readonly Tok[]): Shape {
  const shape: Shape = {
    head: headOf(tokens),
    piece: false,
    amount: false,
    supply: false,
    stream: false,
    miles: false,
    duration: false,
    loan: false,
    percent: false,
    pronoun: false,
    labor: false,
    filling: true,
    hands: false,
    fee: false,
    headFirst: false,
    buyer: false,
    prepositional: tokens.length > 0 && PREPOSITIONS.has(tokens[0]!.text),
    told: false,
    asking: false,
    place: false,
    unlisted: isUnlistedPriced(tokens),
    free: false,
    pricedSupply: tokens.length > 1 && isSupply(tokens[0]!) && isAmount(tokens[1]!),
  };
  for (let at = 0; at < tokens.length; at += 1) addToShape(shape, tokens[at]!, tokens[at + 1]);
  if (shape.head)
    shape.headFirst = tokens.indexOf(shape.head) < tokens.findIndex((token) => token.kind === "piece");
  if (shape.hands) shape.hands = tokens.some((token) => HELPERS.has(token.text));
  return shape;
}

const UNLISTED_WORDS_MAX = 3;

function isUnlistedPriced(tokens: readonly Tok[]): boolean {
  let at = 0;
  while (at < tokens.length && isBeforeNoun(tokens[at]!)) at += 1;
  const first = at;
  while (
    at < tokens.length &&
    tokens[at]!.kind === "word" &&
    (tokens[at]!.unknown || tokens[at]!.roles.trait)
  )
    at += 1;
  const isNoun = at > first && at - first <= UNLISTED_WORDS_MAX && tokens[at - 1]!.unknown === true;
  if (!isNoun) return false;
  if (BEFORE_PRICE.has(tokens[at]?.text ?? "")) at += 1;
  return tokens[at]?.kind === "amount";
}

const isBeforeNoun = ({ kind, text, roles }: Tok): boolean =>
  kind === "word" && (BEFORE_UNLISTED.has(text) || roles.heads !== undefined);

function addToShape(shape: Shape, token: Tok, next: Tok | undefined): void {
  if (shape.filling && !FILLING(token)) shape.filling = false;
  if (token.kind === "piece") shape.piece = true;
  else if (token.kind === "amount") shape.amount = true;
  else if (token.kind === "miles") shape.miles = true;
  else if (token.kind === "duration") shape.duration = true;
  else if (token.kind === "percent") shape.percent = true;
  if (token.kind !== "word") return;
  const { text, roles } = token;
  if (FOR_NOTHING.has(text)) shape.free = true;
  if (roles.supply !== undefined && !roles.heads) shape.supply = true;
  if (roles.stream !== undefined) shape.stream = true;
  if (roles.place !== undefined) shape.place = true;
  if (ASKS_FOR.has(text)) shape.asking = true;
  if (roles.plain && WAS.has(text.slice(0, Math.max(0, text.indexOf(" "))))) shape.told = true;
  if (text === "loan" || text === "loans") shape.loan = true;
  if (text === "paid" || text === "pd" || text === "payed") shape.hands = true;
  if (text === "for" && next?.kind === "word") shape.buyer = true;
  if (FEES.has(text) || text.endsWith(" fee") || text.endsWith(" fees")) shape.fee = true;
  if (roles.pronoun) shape.pronoun = true;
  if (roles.labor) shape.labor = true;
}
