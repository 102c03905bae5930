import type { Clause, Tok } from "../clause.ts";
import { asSaid, claim, placeAfter, placeBefore } from "../clause.ts";
import { lastWord } from "../tokens/text.ts";
import {
  BEFORE_OCCASION,
  DANGLES,
  DATES_NAME,
  DETERMINERS,
  ENDS_BEFORE_PIECE,
  ENDS_SOURCE,
  JOINS_NAME,
  LOAN_NAMES,
  NO_LOAN_NAMES,
  NO_NAMES,
  NO_NAMES_ALONE,
  OCCASIONS,
  SAID_OF_THEM,
  SUBJECTS,
  WHENCE,
  WHENCE_PAID,
  WHERE,
  WHICH_PLACE,
  WHICH_STREAM,
  WHOM,
  WITH,
} from "../words/names.ts";
import { BLEMISHES, SERVICES } from "../words/parts.ts";
import { HOUSEHOLD } from "../words/people.ts";
import { OWN_SPOTS } from "../words/places.ts";
import { PAST_OF } from "../words/tenses.ts";
import type { Fill } from "./filled.ts";

/** Where a name after a preposition ends: before a number, a day, a way of paying, a mark or another verb. */
function nameEnd(clause: Clause, start: number): number {
  let at = start;
  for (; at < clause.tokens.length; at += 1) {
    const token = clause.tokens[at]!;
    if (token.claimed || (token.kind === "mark" && token.text !== "-" && token.text !== ".")) break;
    if (token.kind !== "word") break;
    if (token.roles.method && at > start) break;
    // "to teo, he talked me down to": a row's words that begin with their mark.
    if (at > start && token.text.startsWith(",")) break;
    // "at the church sale it was 12", "off the curb w my brother": the note goes on.
    if (at > start && (IT_WAS_SAID.test(token.text) || isWithKin(clause.tokens, at))) break;
    if (ENDS_SOURCE.has(token.text) && !isAndSomebody(clause.tokens, at, start)) break;
    if (JOINS_NAME.has(token.text) && isEndAfter(clause, at)) break;
    if (at > start && occasionEnd(clause.tokens, at) > at) break;
    if (token.roles.heads?.some((head) => !head.light) && at > start) break;
    if (
      (token.roles.hedge || token.roles.owed || token.roles.agreed || SUBJECTS.has(token.text)) &&
      at > start
    )
      break;
  }
  return at;
}

/** "off a coworker at break", "from mona after my shift", "to amy by phone": where it ends when, on what way or how. */
function occasionEnd(tokens: readonly Tok[], at: number): number {
  const token = tokens[at];
  if (token?.kind !== "word") return at;
  const [first, ...rest] = token.text.split(" ") as [string, ...string[]];
  if (DATES_NAME.has(first) || (first === "this" && rest.length > 0)) return at + 1;
  if (!BEFORE_OCCASION.has(first)) return at;
  if (rest.length > 0) return rest.some((word) => OCCASIONS.has(word)) ? at + 1 : at;
  let end = afterArticles(tokens, at + 1);
  while (OCCASIONS.has(tokens[end]?.text ?? "")) end += 1;
  return OCCASIONS.has(tokens[end - 1]!.text) ? end : at;
}

const isWhoOrWhere = (token: Tok | undefined): boolean =>
  token?.roles.place !== undefined || token?.roles.person === true;

const IT_WAS_SAID = /^it (?:was|is)$/;

const isWithKin = (tokens: readonly Tok[], at: number): boolean =>
  WITH.has(tokens[at]!.text) && HOUSEHOLD.has(tokens[afterArticles(tokens, at + 1)]?.text ?? "");

/** "bob and sue": a second name, and nothing else behind it. */
function isAndSomebody(tokens: readonly Tok[], at: number, start: number): boolean {
  if (at === start || !/^(?:and|&)$/.test(tokens[at]!.text)) return false;
  const next = tokens[afterArticles(tokens, at + 1)];
  const isName = next?.kind === "word" && (next.unknown === true || next.roles.person === true);
  const isNamed = tokens[at - 1]!.unknown === true || tokens[at - 1]!.roles.person === true;
  return isName && isNamed && !next.claimed;
}

/** A preposition followed by a number, a day, a piece or a way of paying is no part of a name. */
function isEndAfter(clause: Clause, at: number): boolean {
  const next = clause.tokens[afterArticles(clause.tokens, at + 1)];
  if (!next || (next.kind === "piece" && ENDS_BEFORE_PIECE.has(clause.tokens[at]!.text))) return true;
  if (next.kind !== "word" && next.kind !== "piece") return true;
  return next.roles.method !== undefined || next.roles.asking !== undefined;
}

/** The place of the first token from `start` on that is no article. */
export const afterArticles = (tokens: readonly Tok[], start: number): number =>
  placeAfter(tokens, start, DETERMINERS);

/** The place of the last token up to `end` that is no article; -1 where there is none. */
export const beforeArticles = (tokens: readonly Tok[], end: number): number =>
  placeBefore(tokens, end, DETERMINERS);

const isSaidInPassing = ({ text, roles }: Tok): boolean =>
  roles.filler === true && !roles.place && !/^sales?$/.test(text);

/** "the curb lol": what is said in passing after a name is no part of it. */
function withoutAsides(name: readonly Tok[]): Tok[] {
  let end = name.length;
  while (end > 1 && (isSaidInPassing(name[end - 1]!) || DANGLES.has(name[end - 1]!.text))) end -= 1;
  return name.slice(0, end);
}

function nameAfter(clause: Clause, prepositions: ReadonlySet<string>): string | null {
  const { tokens } = clause;
  for (let at = 0; at < tokens.length - 1; at += 1) {
    const token = tokens[at]!;
    // The "for" of "hold for the neighbor" is the verb's own.
    const word = token === clause.head ? lastWord(token.text) : token.text;
    if (token.kind !== "word" || !prepositions.has(word)) continue;
    if (token.claimed && (token !== clause.head || word === token.text)) continue;
    const behind = afterArticles(tokens, at + 1);
    const isWhich =
      prepositions === WHENCE &&
      WHICH_PLACE.has(tokens[behind]?.text ?? "") &&
      isWhoOrWhere(tokens[behind + 1]);
    const start = isWhich ? behind + 1 : behind;
    const first = tokens[start];
    if (
      first?.kind !== "word" ||
      first.claimed ||
      // What leaves from our own garage names no buyer.
      (word === "from" && prepositions === WHOM && OWN_SPOTS.has(first.text)) ||
      first.roles.pronoun ||
      first.roles.method ||
      first.roles.hedge ||
      first.roles.asking ||
      // "15 off for the dent"
      (prepositions === WHOM && BLEMISHES.has(first.text)) ||
      // "for 9o" is a slip in a number.
      /^\d+[a-z]$/.test(first.text) ||
      first.roles.vagueTime ||
      // "borrowed a truck to drop it off"
      (word === "to" && PAST_OF.has(first.text) && /^(?:it|them|that)$/.test(tokens[start + 1]?.text ?? ""))
    )
      continue;
    const last = nameEnd(clause, start);
    // "from megan shes coming sunday"
    const isNext = ({ text }: Tok, place: number): boolean =>
      place > start && place < last && SAID_OF_THEM.has(text.split(" ")[0]!);
    const next = prepositions === WHOM ? tokens.findIndex(isNext) : -1;
    const end = next < 0 ? last : next;
    if (end <= start) continue;
    const name = withoutAsides(tokens.slice(start, end));
    if (name.every((word) => word.roles.filler && !word.roles.place) || NO_NAMES.has(first.text)) continue;
    // "2 trips to the car", "wanted 200 for his"
    if (name.length === 1 && prepositions === WHOM && NO_NAMES_ALONE.has(first.text)) continue;
    claim(token, ...tokens.slice(at + 1, Math.max(end, occasionEnd(tokens, end))));
    return name.length === 1 && first.roles.place ? first.roles.place : asSaid(clause, name);
  }
  return null;
}

/** "neighbor bought the desk": a person before the verb is no place. */
function isActor(clause: Clause, token: Tok, at: number): boolean {
  return token.roles.person === true && clause.head !== undefined && at < clause.tokens.indexOf(clause.head);
}

/** A place known on its own: "yard sale", with the words before it that are part of its name. */
function knownPlace(clause: Clause): string | null {
  const at = clause.tokens.findIndex(
    (token, index) =>
      token.kind === "word" &&
      token.roles.place !== undefined &&
      !token.claimed &&
      !isActor(clause, token, index),
  );
  if (at < 0) return null;
  const token = clause.tokens[at]!;
  claim(token);
  return token.roles.place!;
}

export const source: Fill = (clause) => {
  const name = nameAfter(clause, WHENCE) ?? knownPlace(clause);
  return name ? { value: name } : null;
};

export const buyer: Fill = (clause) => {
  const name = nameAfter(clause, WHOM);
  return name ? { value: name } : null;
};

export const place: Fill = (clause) => {
  const name = nameAfter(clause, WHERE) ?? knownPlace(clause);
  return name ? { value: name } : null;
};

/** Cash, card, check, transfer; or any one word after "via", or after "by" where no date follows. */
export const method: Fill = (clause) => {
  const { tokens } = clause;
  const said: string[] = [];
  tokens.forEach((token, at) => {
    if (token.claimed || token.kind !== "word") return;
    if (token.roles.method) {
      claim(token);
      said.push(token.roles.method);
    } else if (token.text === "via" || token.text === "by") {
      const next = tokens[at + 1];
      if (next?.roles.method) claim(token);
      if (!next || next.claimed || next.kind !== "word" || next.roles.method || DETERMINERS.has(next.text))
        return;
      // "by … card": what stands between is not understood.
      if (next.text.includes(" ") || tokens[at + 2]?.roles.method) return;
      if (token.text === "by" && (next.roles.filler || next.roles.person)) return;
      claim(token, next);
      // "refinished by bob": who did it is no way of paying.
      if (token.text !== "by" || !SERVICES.has(tokens[at - 1]?.text ?? "")) said.push(next.text);
    }
  });
  const [first, ...others] = said;
  if (!first) return null;
  return others.some((other) => other !== first) ? null : { value: first };
};

const LOAN = /(?:^| )loans?(?: |$)/;

/** "grad loan", "new loan grad 4100": the words that tell loans apart. */
export const loan: Fill = (clause) => {
  const { tokens } = clause;
  const at = tokens.findIndex((token) => token.kind === "word" && LOAN.test(token.text));
  if (at < 0) return null;
  claim(tokens[at]!);
  let start = at;
  while (start > 0 && isLoanName(tokens[start - 1]!)) start -= 1;
  let name = tokens.slice(start, at);
  if (name.length === 0) {
    // "new loan 14000 at 5.5% called grad"
    const called = tokens.findIndex(({ text }) => text === "called" || text === "named");
    const from = (called < 0 ? at : called) + 1;
    let end = from;
    while (end < tokens.length && isLoanName(tokens[end]!)) end += 1;
    // "sent 300 to the loan feels good"
    name = tokens[end]?.roles.opinion ? [] : tokens.slice(from, end);
  }
  claim(...name);
  return name.length > 0 ? { value: asSaid(clause, name) } : null;
};

/** Whether a word may name a loan: "car", "grad". */
export function isLoanName(token: Tok): boolean {
  if (token.kind !== "word" || token.claimed || token.roles.heads || token.roles.hedge || token.roles.method)
    return false;
  if (NO_LOAN_NAMES.has(token.text) || token.text.startsWith(",")) return false;
  // "200 to the loan out of the desk money"
  const blank = token.text.indexOf(" ");
  if (blank > 0 && WHENCE_PAID.has(token.text.slice(0, blank))) return false;
  if (LOAN_NAMES.has(token.text)) return true;
  return !token.roles.filler && !token.roles.opinion;
}

export const stream: Fill = (clause) => {
  const token = clause.tokens.find((word) => word.kind === "word" && word.roles.stream && !word.claimed);
  if (token) {
    claim(token);
    return { value: token.roles.stream };
  }
  const name = nameAfter(clause, WHICH_STREAM);
  return name ? { value: name } : null;
};
