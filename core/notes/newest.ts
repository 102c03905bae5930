import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import { type Tok, textOf } from "./clause.ts";
import { headsOf } from "./heads.ts";
import { besideSale, type Change, corrects, forgotten, isFee, isOpening, methodAlone } from "./left-out.ts";
import { isSkipped, type Mend, type Of, side, type To, takeOld, takeTo } from "./mended.ts";
import type { Mention, ReadingFields } from "./reading.ts";
import { newest } from "./rows/newest.ts";
import { HINTS } from "./sign-bits.ts";
import { centsIn } from "./slots/money.ts";
import { ARTICLES } from "./words/filler.ts";
import { ALL_OF_THEM, THEY } from "./words/links.ts";
import {
  ACTED,
  ALSO,
  BEFORE_NAME,
  BEHIND,
  COMES_TO,
  DENIED_VERBS,
  EXCUSED,
  EXTRAS,
  FIELDS,
  FOR_IT,
  FORGOTTEN,
  IN_CLAUSE,
  IS_NAMED,
  IT_WAS,
  LINKS,
  NOT_US,
  OLD,
  POINTING,
  STILL_NOT,
  TELLS_TOTAL,
  TOLD_OF_VALUE,
  TOTAL_SAID,
  UNDONE,
  US,
  VALUE_TOLD,
  WHO,
  WRONG_ONES,
  WRONG_PEOPLE,
} from "./words/mending.ts";
import { FOR_NOTHING } from "./words/money.ts";
import { HOUSEHOLD } from "./words/people.ts";
import { THEM } from "./words/pieces.ts";
import { OPINIONS } from "./words/traits.ts";

/*
 * What is sent right behind a note to correct it and names nothing of it: "no the hutch", "card not cash", "that was
 * mom", "to ana", "it's not finished", "only 1h", "not for the hutch", "add 5 to that".
 */

/** What becomes of the newest note. */
type NewestMended =
  | { kind: "fix"; amount?: Cents; minutes?: number; miles?: string; each?: true }
  | ({ kind: "mend"; bare?: true } & Mend);

const TOKENS_MAX = 9;

/** A message as a correction of the newest note; null where a word of it says anything else. */
export function newestMended(line: readonly Tok[], today: Day): NewestMended | null {
  const said = withoutExcuse(line.filter(({ kind }) => kind !== "mark"));
  // "wrong piece, that was the dresser"
  const isWrongOne = said[0]?.text === "wrong" && WRONG_ONES.has(said[1]?.text ?? "");
  const tokens = isWrongOne ? said.toSpliced(1, 1) : said;
  const isAsked = line.some(({ text }) => text === "?");
  const right = isAsked ? null : rightPiece(said);
  if (right) return { kind: "mend", of: { back: 1 }, to: { pieces: [right] } };
  if (tokens.length === 0 || tokens.length > TOKENS_MAX || isAsked) return null;
  const denied = undone(tokens);
  if (denied) return { kind: "mend", of: { back: 1, ...denied }, removed: true };
  const [first, ...others] = tokens;
  if (first?.each && others.length === 0) return eachWas(first);
  const person = rightPerson(said);
  if (person) return { kind: "mend", of: { back: 1 }, to: { who: person } };
  const named = fieldNamed(tokens);
  if (named) return { kind: "mend", of: { back: 1 }, to: named };
  const swap = nameForName(tokens);
  if (swap) return { kind: "mend", of: { back: 1 }, to: { swap } };
  const left = besideSale(tokens);
  if (left) return { kind: "mend", of: { ...left.of, back: 1 }, to: left.to };
  const row = byRow(tokens);
  if (row) return row;
  // "both were yesterday" is of several notes.
  if (tokens.some(({ kind, text }) => kind === "word" && ALL_OF_THEM.has(text))) return null;
  if (isFreeNow(tokens)) return { kind: "mend", of: { kinds: ["buy"], back: 1 }, to: { amount: 0 } };
  const again = toldAgain(tokens, today);
  if (again) return again;
  const from = tokens.findIndex((token) => !isOpening(token));
  if (from < 0) return null;
  // "the hutch, sorry", "25 i mean": the word that corrects may stand behind.
  const to = tokens.findLastIndex((token) => !BEHIND.has(token.text)) + 1;
  const opening = [...tokens.slice(0, from), ...tokens.slice(to)];
  const told = withoutClause(tokens.slice(from, to));
  if (to < tokens.length || tokens.some(({ text }) => text === "only")) {
    const value = valueAlone(told, today, opening.some(isOther));
    if (value) return value;
  }
  const change = forOther(told) ?? otherPieces(told) ?? changeIn(told, today);
  // "only the lamp left" is what there still is.
  if (!change || (change.to.pieces && tokens.some(({ text }) => text === "only"))) return null;
  const isBare =
    to === tokens.length && !opening.some(({ text: word }) => corrects(word) || POINTING.has(word));
  if (isBare && !canBeBare(change, told)) return null;
  return { kind: "mend", of: { ...change.of, back: 1 }, to: change.to, ...(isBare ? { bare: true } : {}) };
}

/** "it was free actually" */
const isFreeNow = (tokens: readonly Tok[]): boolean =>
  tokens.some(({ text }) => FOR_NOTHING.has(text)) &&
  tokens.some(({ text }) => corrects(text) || BEHIND.has(text) || IT_WAS.has(text)) &&
  tokens.every((token) => FOR_NOTHING.has(token.text) || BEHIND.has(token.text) || isOpening(token));

/** "bought it thursday actually", "sold it for 95 actually": the newest note of that verb, with another value. */
function toldAgain(tokens: readonly Tok[], today: Day): NewestMended | null {
  const to = tokens.findLastIndex(({ text }) => !BEHIND.has(text)) + 1;
  const [verb, it, ...rest] = tokens.slice(0, to).filter(({ text }) => !US.has(text));
  const kinds = verb ? headsOf(verb).map(({ kind }) => kind) : [];
  const isIt = it !== undefined && THEM.has(it.text);
  const said = side();
  if (to === tokens.length || kinds.length === 0 || !isIt || rest.length === 0) return null;
  if (!takeTo(rest, said, today) || Object.keys(said.to).length !== 1) return null;
  return { kind: "mend", of: { kinds, back: 1 }, to: said.to };
}

/** "wrong guy, it was ines": who it was; null where that is not said, or more is. */
function rightPerson(said: readonly Tok[]): string | null {
  const [wrong, who, ...rest] = said.slice(
    said.findIndex((token) => !isOpening(token) || token.text === "wrong"),
  );
  if (wrong?.text !== "wrong" || !WRONG_PEOPLE.has(who?.text ?? "")) return null;
  const name = rest.filter((token) => !isSkipped(token) && !isOpening(token) && !FIELDS[token.text]);
  const isName = name.length > 0 && name.length <= NAME_WORDS_MAX && name.every(isWordOfName);
  return isName ? textOf(name) : null;
}

/** "oops wrong chair, i sold the pine one": the piece that it was; null where it is not said, or more is. */
function rightPiece(said: readonly Tok[]): Mention | null {
  const [wrong, ...rest] = said.slice(said.findIndex((token) => !isOpening(token)));
  if (wrong?.kind !== "piece" || !wrong.text.startsWith("wrong ")) return null;
  const [right, ...others] = rest.filter(
    (token) => !isSkipped(token) && !isOpening(token) && headsOf(token).length === 0,
  );
  return right?.mention && others.length === 0 ? right.mention : null;
}

/** "75 sorry fat fingers", "18 miles i mean lol": how it came to be wrong, behind the word that corrects. */
function withoutExcuse(said: readonly Tok[]): readonly Tok[] {
  const to = said.findLastIndex(({ text }) => BEHIND.has(text)) + 1;
  const isExcuse = to > 0 && said.slice(to).every(({ text, roles }) => EXCUSED.has(text) || roles.opinion);
  return isExcuse ? said.slice(0, to) : said;
}

/** "the vanity i sold", "the vanity that sold": the piece. */
function withoutClause(told: readonly Tok[]): readonly Tok[] {
  const at = told.findLastIndex(({ kind }) => kind === "piece");
  const [verb, ...before] = told.slice(at + 1).reverse();
  const isClause =
    at >= 0 && verb && headsOf(verb).length > 0 && before.every(({ text }) => IN_CLAUSE.has(text));
  return isClause ? told.slice(0, at + 1) : told;
}

/** "she", "they": not us. */
const isOther = ({ text }: Tok): boolean => text.split(" ").some((word) => THEY.has(word));

/** "only 1h", "it took only 6": one value and nothing else, the note's own measure. */
function valueAlone(told: readonly Tok[], today: Day, byOther: boolean): NewestMended | null {
  const [value, ...others] = told.filter(({ text }) => text !== "only" && !TOLD_OF_VALUE.has(text));
  const said = side();
  if (!value || others.length > 0 || value.each || !takeTo([value], said, today)) return null;
  const { amount, minutes, miles } = said.to;
  // "she only gave me 190" is told of what came in.
  if (byOther && amount !== undefined)
    return { kind: "mend", of: { kinds: ["sell", "collect", "hold"], back: 1 }, to: { amount } };
  const isMeasure = amount !== undefined || minutes !== undefined || miles !== undefined;
  return isMeasure ? ({ kind: "fix", ...said.to } as NewestMended) : null;
}

/** "30 each" alone: what was said of all was said of each. */
function eachWas(token: Tok): NewestMended | null {
  const amount = token.kind === "amount" ? centsIn(token) : null;
  return amount === null ? null : { kind: "fix", amount, each: true };
}

const VALUE_TOKENS_MAX = 9;

const isValue = ({ kind }: Tok): boolean => kind === "amount" || kind === "duration";

const isWordOrValue = ({ kind }: Tok): boolean =>
  kind === "word" || kind === "mark" || kind === "amount" || kind === "duration";

/** "i paid 25", "it took 2 hours", "plus tax so 21.35 all in" as the whole line: the value of the newest note; null where it says anything else. */
export function valueSaid(line: readonly Tok[]): ReadingFields["fix"] | null {
  if (line.length > VALUE_TOKENS_MAX) return null;
  // "*34.15": what was typed wrong, put right.
  if (line.length === 2 && line[0]!.text === "*" && line[1]!.kind === "amount" && !line[1]!.each) {
    const meant = centsIn(line[1]!);
    return meant === null ? null : { amount: meant };
  }
  if (!line.every(isWordOrValue)) return null;
  const [value, ...others] = withoutExtra(line).filter(isValue);
  if (!value || others.length > 0 || value.each) return null;
  const rest = line.filter(({ kind }) => kind === "word");
  const isTotal = value.kind === "amount" && isOfTotal(rest) && rest.length + 3 >= line.length;
  if (!isTotal && !VALUE_TOLD.has(textOf(rest))) return null;
  if (value.kind === "duration")
    return value.minutes === undefined ? null : { minutes: value.minutes, isTold: true };
  const amount = centsIn(value);
  return amount === null ? null : { amount };
}

/** "plus 3 tax so 43 all in": 43. */
const withoutExtra = (line: readonly Tok[]): readonly Tok[] =>
  line.filter(({ kind }, at) => kind !== "amount" || !EXTRAS.has(line[at + 1]?.text ?? ""));

/** What it came to in the end, in words of nothing else. */
const isOfTotal = (rest: readonly Tok[]): boolean => {
  if (!rest.every(({ text }) => text.includes(" ") || isSaidOfTotal(text))) return false;
  const words = rest.flatMap(({ text }) => text.split(" "));
  const isTold = words.some((word) => TELLS_TOTAL.has(word));
  // "plus tax 2" is no total.
  const isWithExtra = words.some((word) => EXTRAS.has(word)) && words.some((word) => COMES_TO.has(word));
  return words.every(isSaidOfTotal) && (isTold || isWithExtra);
};

const isSaidOfTotal = (word: string): boolean => TOTAL_SAID.has(word) || EXTRAS.has(word);

/** "lena not ana", "yard sale not thrift store": one name for another; of what, the note tells. */
function nameForName(tokens: readonly Tok[]): { now: string; then: string } | null {
  const said = tokens.slice(
    Math.max(
      0,
      tokens.findIndex((token) => !isOpening(token)),
    ),
  );
  const not = said.findIndex(({ text }) => OLD.has(text));
  // "the hold is for nell not rosa": the name stands behind its preposition.
  const [now, then] = [said.slice(0, not), said.slice(not + 1)].map((part) =>
    textOf(
      part
        .slice(part.findLastIndex(({ text }) => BEFORE_NAME.has(text)) + 1)
        .filter(({ text }) => !ARTICLES.has(text) && !FIELDS[text] && !IS_NAMED.has(text)),
    ),
  );
  const isWords = said.every(({ kind, roles }) => kind === "word" && roles.method === undefined);
  // "nell bought it not dana" says more than a name.
  if (said.slice(0, not).some((token) => THEM.has(token.text) || WHO.has(token.text))) return null;
  return not > 0 && isWords && now && then ? { now, then } : null;
}

/** "the buyer was iris", "customer's name is bo": the name in a field of the newest note; null where it says more. */
function fieldNamed(tokens: readonly Tok[]): To | null {
  const said = tokens.filter(({ text }, at) => !(at === 0 && ARTICLES.has(text)));
  const field = FIELDS[said[0]?.text ?? ""];
  const from = said.findIndex(({ text }, at) => at > 0 && !IS_NAMED.has(text));
  const name = from > 1 ? said.slice(from) : [];
  const isName = name.length > 0 && name.length <= NAME_WORDS_MAX && name.every(isWordOfName);
  return field && isName ? { [field]: textOf(name) } : null;
}

const NAME_WORDS_MAX = 2;

const isWordOfName = ({ kind, unknown, roles }: Tok): boolean =>
  kind === "word" && (unknown === true || roles.person === true);

/** What a row makes of the newest note by the whole line; null where none does. */
function byRow(tokens: readonly Tok[]): NewestMended | null {
  const [fired] = newest.fired(tokens);
  if (!fired) return null;
  const { effect, from, to } = fired;
  const beside = [...tokens.slice(0, from), ...tokens.slice(to)];
  if (effect === "undone")
    return beside.length === 0 ? { kind: "mend", of: { kinds: ["sell"], back: 1 }, removed: true } : null;
  if (effect === "buyer") {
    const who = tokens.findIndex(({ text }) => WHO.has(text));
    const buyer = tokens[who - 1]?.text;
    return buyer === undefined ? null : { kind: "mend", of: { back: 1 }, to: { who: buyer } };
  }
  if (effect === "more" || effect === "less") {
    const amount = tokens.find(({ kind }) => kind === "amount");
    const cents = beside.every(isOpening) && amount && !amount.each ? centsIn(amount) : null;
    const more = effect === "less" ? -(cents ?? 0) : cents;
    return cents === null || more === null ? null : { kind: "mend", of: { back: 1 }, to: { more } };
  }
  if (effect === "agreed") {
    const [now] = tokens.filter(({ kind }) => kind === "amount");
    const agreed = now && !now.each && beside.length === 0 ? centsIn(now) : null;
    return agreed === null || agreed === undefined
      ? null
      : { kind: "mend", of: { kinds: ["hold"], back: 1 }, to: { agreed } };
  }
  const said = beside.flatMap(({ mention }) => mention ?? []);
  const isAll = beside.every((token) => token.kind === "piece" || isSkipped(token) || ALSO.has(token.text));
  const [piece, ...others] = said;
  if (!isAll || !piece) return null;
  // "split it between the two": of one piece there is nothing to split.
  if (effect === "split")
    return others.length > 0 || piece.it
      ? { kind: "mend", of: { back: 1 }, to: { pieces: said.map((each) => ({ ...each })) } }
      : null;
  return others.length > 0 ? null : { kind: "mend", of: { back: 1 }, to: { also: piece } };
}

/** "for the hutch, not the rocker": what it was for, and not the name of a piece. */
export function isForOther(line: readonly Tok[]): boolean {
  if (!line.some(({ hints }) => (hints & HINTS.old) !== 0)) return false;
  const tokens = line.filter(({ kind }) => kind !== "mark");
  return tokens.length <= TOKENS_MAX && forOther(tokens) !== null;
}

function forOther(tokens: readonly Tok[]): Change | null {
  const told = tokens.slice(tokens.findIndex((token) => !isOpening(token)));
  const [lead, ...rest] = told.filter(({ text }) => !ARTICLES.has(text));
  const [now, not, ...behind] = rest;
  const [old, ...more] = behind.filter(({ text }) => !FOR_IT.has(text));
  const isOther = FOR_IT.has(lead?.text ?? "") && OLD.has(not?.text ?? "") && more.length === 0;
  if (!isOther || now?.kind !== "piece" || old?.kind !== "piece") return null;
  return { of: { pieces: [old.mention!] }, to: { pieces: [now.mention!] } };
}

/** "not for the hutch", "not the desk, the hutch": the pieces that it was not of, and those that it was. */
function otherPieces([first, ...rest]: readonly Tok[]): Change | null {
  const [old, now, ...others] = rest.filter(({ kind }) => kind === "piece");
  const isPlain = rest.every((token) => token.kind === "piece" || isSkipped(token) || token.text === "but");
  if (first?.text !== "not" || !old || others.length > 0 || !isPlain) return null;
  if (!now && !rest.some(({ text }) => text === "for" || text === "on")) return null;
  return { of: { pieces: [old.mention!] }, to: { pieces: now ? [now.mention!] : [] } };
}

/** "forgot", "forgot to say" */
const isForgotten = ({ text }: Tok): boolean =>
  FORGOTTEN.has(text) || FORGOTTEN.has(text.split(" ").find((word) => word !== "i")!);

function changeIn(told: readonly Tok[], today: Day): Change | null {
  const by = householdIn(told);
  const pieces = told.flatMap(({ mention }) => (mention && !mention.it ? [mention] : []));
  if (by) return { ...(pieces.length > 0 ? { of: { pieces } } : {}), to: { by } };
  if (isForgotten(told[0]!)) {
    const left = told.slice(1);
    const paid = methodAlone(left.filter((token) => !isOpening(token)));
    return paid ? { to: { method: paid } } : forgotten(left, today);
  }
  const method = methodAlone(told);
  if (method) return { to: { method } };
  if (isNoFee(told)) return { to: { fee: 0 } };
  const place = placeIn(told);
  if (place) return { to: { source: place } };
  if (told.some(isPraised)) return null;
  const said = side();
  const old = told.findIndex(({ text }) => OLD.has(text));
  if (!takeTo(old < 0 ? told : told.slice(0, old), said, today)) return null;
  if (old >= 0 && !takeOld(told.slice(old), said, today)) return null;
  const { amount, minutes, miles, ...to } = said.to;
  // Amounts and measures are read as corrections elsewhere.
  const isValue = amount !== undefined || minutes !== undefined || miles !== undefined;
  if (isValue || Object.keys(to).length === 0) return null;
  return to.pieces && said.of.pieces ? { of: { pieces: said.of.pieces }, to } : { to };
}

/** "mom", "by my dad": somebody of the household did it. */
function householdIn(told: readonly Tok[]): string | null {
  const named = told.filter(({ text }) => text !== "by" && text !== "my");
  const [only, ...more] = named;
  if (!only || !HOUSEHOLD.has(only.text)) return null;
  // "it was mom who bought the stool, not me"
  const isWho = more.some(({ text }) => WHO.has(text));
  const own = more.filter(
    (token) =>
      token.kind !== "piece" &&
      ![ACTED, WHO, NOT_US].some((words) => words.has(token.text)) &&
      !(isWho && headsOf(token).length > 0),
  );
  // "uncle joe"
  if (own.length > 1 || own.some(({ unknown }) => !unknown)) return null;
  return [only, ...own].map(({ text }) => text).join(" ");
}

/** "an estate sale", "the thrift store": where it came from. */
function placeIn(told: readonly Tok[]): string | null {
  if (told[0]!.text === "to") return null;
  const [only, ...more] = told.filter((token) => !isSkipped(token) && !LINKS.has(token.text));
  return only?.kind === "word" && more.length === 0 ? (only.roles.place ?? null) : null;
}

/** "that was a good desk" tells what it was like. */
const isPraised = ({ kind, text, mention }: Tok): boolean =>
  kind === "piece" && !mention!.other && text.split(" ").some((word) => OPINIONS.has(word));

const isNoFee = (told: readonly Tok[]): boolean => told.length === 1 && isFee(told[0]!.text);

/** "didn't sell after all", "i never listed the trunk": what was noted did not happen. */
function undone(tokens: readonly Tok[]): Of | null {
  const at = tokens.findIndex(({ text }) => UNDONE.has(text));
  if (at < 0) return null;
  const rest = tokens.filter(
    (token, place) => place !== at && !STILL_NOT.has(token.text) && !isOpening(token),
  );
  const [verb, ...more] = rest;
  const [object, ...others] = more.filter((token) => !isSkipped(token));
  if (verb?.kind !== "word" || others.length > 0) return null;
  const pieces = object?.mention;
  const what = object?.roles.supply === undefined ? undefined : object.text;
  if (object && !pieces && what === undefined) return null;
  const denied = DENIED_VERBS[verb.text];
  const kinds = [...(denied ? [denied] : []), ...headsOf(verb).map(({ kind }) => kind)];
  if (kinds.length === 0) return null;
  if (what !== undefined) return { kinds: [...kinds, "spend"], what };
  return pieces ? { kinds, pieces: [pieces] } : { kinds };
}

/** "yesterday", "cash", "to ana", "for the hutch": enough without a word before it. */
function canBeBare({ of, to }: Change, told: readonly Tok[]): boolean {
  if (of) return true;
  if (to.pieces?.every(({ it }) => it)) return true;
  if (to.pieces) return told[0]!.text === "for" || told[0]!.text === "on";
  if (to.by) return told[0]!.text === "by" || told.some(({ text }) => ACTED.has(text));
  return to.fee === undefined || FORGOTTEN.has(told[0]!.text);
}
