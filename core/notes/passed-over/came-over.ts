import { placeAfter, type Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { isKin, kinAt } from "../mentions/kin.ts";
import { isDeed } from "../second-look/told.ts";
import { AND, OPENS_SUBJECT } from "../words/links.ts";
import { DETERMINERS } from "../words/names.ts";
import { NO_COMING, PLACES_WHO, SELVES } from "../words/people.ts";
import { BESIDE_VERB, isDone, NO_PAST } from "../words/tenses.ts";
import { COMES_HERE, OVER } from "../words/visits.ts";

/*
 * "uncle came over and worked 2 hours on the hutch": who did the first did the second. What leads up to it is left out, so
 * that the note begins with who did it, as one that is told plainly. Kin may do anything first that is none of the books';
 * of others it is only told that they came.
 */

/** Who is told of, and how they came to do what is a note. */
interface Coming {
  /** The tokens that name them end before, and what they did at first begins there. */
  end: number;
  /** Where what is a note begins. */
  verb: number;
}

/** The tokens of a line without what somebody did before they did what is a note. */
export function withoutComing(tokens: Tok[]): Tok[] {
  for (let at = 0; at < tokens.length; at += 1) {
    if (!opensSubject(tokens, at)) continue;
    const coming = comingAt(tokens, at);
    if (!coming) continue;
    const { end, verb } = coming;
    const days = tokens.slice(end, verb).filter(({ kind }) => kind === "day");
    return [...tokens.slice(0, at), ...days, ...tokens.slice(at, end), ...tokens.slice(verb)];
  }
  return tokens;
}

/** Whether somebody may be told of from a place on as who does it. */
function opensSubject(tokens: readonly Tok[], at: number): boolean {
  if (tokens[at]!.kind !== "word") return false;
  const before = tokens[at - 1];
  if (before === undefined || before.kind === "mark") return true;
  const isJoined = AND.has(before.text) && tokens[at - 2] !== undefined && tokens[at - 2]!.kind !== "mark";
  return OPENS_SUBJECT.has(before.text) && !isJoined;
}

function comingAt(tokens: readonly Tok[], at: number): Coming | null {
  const kin = placeOfKin(tokens, at);
  if (kin < 0) return comingOfOthers(tokens, at);
  const named = kinAt(tokens, kin);
  const end = kin + named.length;
  if (PLACES_WHO.has(tokens[end]?.text ?? "")) return comingOfOthers(tokens, at);
  const verb = verbBehind(tokens, end, tokens[kin]!.text);
  return verb < 0 ? null : { end, verb };
}

/** Where kin stand who are told of from a place on, behind no more than an article; -1 where none do. */
function placeOfKin(tokens: readonly Tok[], at: number): number {
  const kin = placeAfter(tokens, at, DETERMINERS);
  return kin < tokens.length && isKin(tokens[kin]!) ? kin : -1;
}

/** "a guy from work came by and picked up the dresser" */
function comingOfOthers(tokens: readonly Tok[], at: number): Coming | null {
  const end = tokens.findIndex(({ text }, place) => place > at && COMES_HERE.has(text));
  if (end < 0 || end - at > NAMED_WITHIN) return null;
  const who = tokens.slice(at, end);
  const isSomebody = who.some(({ roles, unknown, text }) => (roles.person || unknown) && !SELVES.has(text));
  const first = who.find(({ text }) => !DETERMINERS.has(text));
  if (!isSomebody || !first || SELVES.has(first.text) || !who.every(isOfName)) return null;
  const verb = verbBehind(tokens, end, null);
  return verb < 0 ? null : { end, verb };
}

const NAMED_WITHIN = 7;

/** "two doors down", "i work with" */
const isOfName = ({ kind, text, roles }: Tok): boolean =>
  (kind === "word" || kind === "grain" || kind === "piece" || (kind === "amount" && text.length === 3)) &&
  !AND.has(text) &&
  (text === "next" || !NO_PAST.has(text)) &&
  !roles.method;

/**
 * Where the verb of a note stands that goes on from what leads up to it: behind "and", or behind who did it once more; -1 where none
 * does, or where what stands before it is more than how they came.
 */
function verbBehind(tokens: readonly Tok[], from: number, kin: string | null): number {
  for (let at = from; at < tokens.length && at <= from + LED_MAX; at += 1) {
    const verb = at > from ? verbAfterJoint(tokens, at, kin) : -1;
    if (verb >= 0) return verb;
    if (!leadsUp(tokens, at, from)) return -1;
  }
  return -1;
}

const LED_MAX = 9;

function verbAfterJoint(tokens: readonly Tok[], at: number, kin: string | null): number {
  let place = at;
  const isMark = tokens[place]!.kind === "mark";
  if (isMark) place += 1;
  const isAnd = AND.has(tokens[place]?.text ?? "");
  if (isAnd) place += 1;
  const named = placeAfter(tokens, place, DETERMINERS);
  const isAgain = kin !== null && tokens[named]?.text === kin;
  if (isAgain) place = named + 1;
  if (!(isAgain ? isAnd || isMark : isAnd)) return -1;
  const verb = placeAfter(tokens, place, BESIDE_VERB);
  return isPast(tokens[verb]) ? verb : -1;
}

function isPast(token: Tok | undefined): boolean {
  if (!token) return false;
  const [first] = token.text.split(" ") as [string];
  return (headsOf(token).length > 0 || token.roles.labor === true) && isDone(first);
}

/** Whether a token may stand in what somebody did first: no sum, no piece, no deed, no plan, nobody else who acts. */
function leadsUp(tokens: readonly Tok[], at: number, from: number): boolean {
  const token = tokens[at]!;
  const { kind, text, roles } = token;
  if (kind === "day" || kind === "clock" || kind === "span") return true;
  if (kind !== "word") return false;
  if (AND.has(text)) return at > from && !isWho(tokens[at + 1]);
  if (text.split(" ").some((word) => NO_PAST.has(word) || NO_COMING.has(word))) return false;
  // "dropped by", "popped over": words that are of prices elsewhere.
  if (COMES_HERE.has(text) || (COMES_HERE.has(tokens[at - 1]!.text) && OVER.has(text))) return true;
  // "went to an auction and got a bench": where it was is the note's as well.
  if (roles.hedge || roles.method || roles.vagueTime || roles.place) return false;
  if ((roles.supply || roles.stream || roles.labor) && !roles.plain) return false;
  return !isDeed(token);
}

const isWho = (token: Tok | undefined): boolean =>
  token === undefined || token.kind !== "word" || token.roles.person === true || SELVES.has(token.text);
