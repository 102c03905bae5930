import type { Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import {
  ANIMALS,
  BEFORE_DOING,
  BEFORE_THEIRS,
  BUDGES,
  FROM,
  KIN_DOES,
  LEADS_TO_WHO,
  NOT_WHO,
  SELLER_AND_I,
  SOMEBODY,
  TELLS_OF_SELLER,
  UNDOES_PURCHASE,
  WHOSE,
} from "../words/described.ts";
import { AND } from "../words/links.ts";
import { DENIES, OF_DEALS } from "../words/lived.ts";
import { HOUSEHOLD } from "../words/people.ts";

/*
 * Who sold a piece, and what others did with it before: "from a customer whose panel I was swapping", "they were tossing
 * it", "somebody painted it purple". None of it is a deed of ours, unless it undoes the purchase.
 */

export const isAnd = ({ kind, text }: Tok): boolean => kind === "word" && AND.has(text);

/** "from the estate sale", "off a guy" */
export function isFromSomebody(tokens: readonly Tok[], at: number): boolean {
  if (tokens[at]!.kind !== "word" || !FROM.has(tokens[at]!.text)) return false;
  for (let next = at + 1; next < tokens.length && next <= at + NAMED_WITHIN; next += 1) {
    const { kind, roles } = tokens[next]!;
    if (kind !== "word") return false;
    if (roles.person || roles.place) return true;
  }
  return false;
}

const NAMED_WITHIN = 3;

/** What somebody else did or does, told behind the price of a purchase: with no sum, and nothing that undoes it. */
export function isTaleOfOthers(tokens: readonly Tok[], from: number, to: number): boolean {
  let at = from;
  while (at < to && LEADS_TO_WHO.has(tokens[at]!.text)) at += 1;
  const who = whoIn(tokens, at, to);
  if (!who || who.end + (who.isAll ? 0 : 1) > to) return false;
  if (who.isKin && !KIN_DOES.has(tokens[who.end]?.text ?? "")) return false;
  for (let place = who.end; place < to; place += 1) if (!isOfTale(tokens, place)) return false;
  return true;
}

interface Who {
  /** One behind the words that name them. */
  end: number;
  isKin: boolean;
  /** "theyre": they and their verb. */
  isAll: boolean;
}

function whoIn(tokens: readonly Tok[], from: number, to: number): Who | null {
  for (let at = from; at < to && at <= from + WHO_IN; at += 1) {
    const { kind, text, roles } = tokens[at]!;
    if (kind !== "word") return null;
    const [first] = text.split(" ") as [string];
    if (HOUSEHOLD.has(text)) return { end: at + 1, isKin: true, isAll: false };
    const isThey = SOMEBODY.has(first) || ANIMALS.has(text);
    if (isThey || (roles.person && !WHOSE.has(text) && !NOT_WHO.has(text)))
      return { end: at + 1, isKin: false, isAll: text.includes(" ") || /(?:hes|shes|theyre)$/.test(first) };
    if (!roles.filler && !roles.trait && !WHOSE.has(text)) return null;
  }
  return null;
}

const WHO_IN = 3;

function isOfTale(tokens: readonly Tok[], at: number): boolean {
  const token = tokens[at]!;
  const { kind, text, roles, mention } = token;
  const before = tokens[at - 1];
  if (kind === "piece") return mention?.it === true || isTheirs(before);
  if (kind !== "word") return kind === "span" || kind === "grain";
  if (text.split(" ").some((word) => UNDOES_PURCHASE.has(word)) || roles.method || roles.vagueTime)
    return false;
  if (OF_DEALS.has(text)) return false;
  if (DENIES.has(text)) return BUDGES.has(tokens[at + 1]?.text ?? "");
  if (roles.hedge && !HARMLESS.has(roles.hedge)) return false;
  // "they were tossing it"
  const isDeed = headsOf(token).some(({ light, tails }) => !light && tails === null);
  return !isDeed || (/ing(?: |$)/.test(text) && BEFORE_DOING.has(before?.text ?? ""));
}

const HARMLESS: ReadonlySet<string> = new Set(["offer", "vague", "intention", "denial"]);

/** The tokens without what is told of somebody from whom a thing came. */
export function withoutSeller(tokens: Tok[]): Tok[] {
  for (let at = 1; at < tokens.length; at += 1) {
    if (!FROM.has(tokens[at]!.text)) continue;
    const opens = opensTale(tokens, at + 1);
    if (opens < 0) continue;
    const ends = endOfTale(tokens, opens);
    if (ends > opens) return withoutSeller([...tokens.slice(0, opens), ...tokens.slice(ends)]);
  }
  return tokens;
}

/** Where it begins to be told of somebody named from a place on; -1 where it does not. */
function opensTale(tokens: readonly Tok[], from: number): number {
  for (let at = from; at < tokens.length && at <= from + WHO_WITHIN; at += 1) {
    const { kind, text, roles } = tokens[at]!;
    if (kind !== "word") return -1;
    // "from a friend of my sister"
    const isBehindWho = at > from && !tokens[at - 1]!.roles.filler && tokens[at - 1]!.text !== "of";
    if (isBehindWho && (TELLS_OF_SELLER.has(text) || SELLER_AND_I.has(text))) return at;
    if (at > from && tokens[at - 1]!.roles.person && /ing(?: |$)/.test(text)) return at;
    if (roles.hedge || (headsOf(tokens[at]!).length > 0 && !roles.filler && !roles.person)) return -1;
  }
  return -1;
}

const WHO_WITHIN = 5;

/** How far it is told: up to a mark, a sum, a day or a way to pay; nowhere where that may undo the purchase. */
function endOfTale(tokens: readonly Tok[], from: number): number {
  for (let at = from; at < tokens.length; at += 1) {
    const { kind, text, roles, mention } = tokens[at]!;
    const next = tokens[at + 1];
    const isBeforePrice = next?.kind === "amount" && (text === "for" || text === "at" || text === "on");
    if (kind === "mark" || kind === "amount" || kind === "day" || isBeforePrice || roles.method)
      return at - from > 1 ? at : -1;
    if (kind === "piece" && !mention?.it && !isTheirs(tokens[at - 1])) return -1;
    if (kind !== "word" && kind !== "piece") return -1;
    if (text.split(" ").some((word) => UNDOES_PURCHASE.has(word)) || (at > from && isAnd(tokens[at]!)))
      return -1;
  }
  return tokens.length - from > 1 ? tokens.length : -1;
}

const isTheirs = (token: Tok | undefined): boolean => BEFORE_THEIRS.has(token?.text ?? "");
