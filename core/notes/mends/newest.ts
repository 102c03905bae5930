import type { Day } from "../../calendar.ts";
import type { Cents } from "../../money.ts";
import type { Tok } from "../clause.ts";
import { isAmount } from "../clause.ts";
import { headsOf } from "../heads.ts";
import type { Mention } from "../reading.ts";
import { newest } from "../rows/newest.ts";
import { centsIn } from "../slots/money.ts";
import { ALL_OF_THEM, THEY } from "../words/links.ts";
import {
  ALSO,
  BEHIND,
  DENIED_VERBS,
  EXCUSED,
  IN_CLAUSE,
  IT_WAS,
  POINTING,
  STILL_NOT,
  STILL_THERE,
  TOLD_OF_VALUE,
  UNDONE,
  US,
  WHO,
  WRONG_ONES,
} from "../words/mending.ts";
import { FOR_NOTHING, GIVES_BACK } from "../words/money.ts";
import { THEM } from "../words/pieces.ts";
import { besideSale, corrects, isOpening } from "./left-out.ts";
import { isSkipped, type Mend, type Of, side, takeTo } from "./mended.ts";
import { canBeBare, changeIn, forOther, otherPieces, TOKENS_MAX } from "./newest-changes.ts";
import { fieldNamed, nameForName, rightPerson } from "./newest-names.ts";

/*
 * What is sent right behind a note to correct it and names nothing of it: "no the hutch", "card not cash", "that was
 * mom", "to ana", "it's not finished", "only 1h", "not for the hutch", "add 5 to that".
 */

/** What becomes of the newest note. */
type NewestMended =
  | { kind: "fix"; amount?: Cents; minutes?: number; miles?: string; each?: true }
  | ({ kind: "mend"; bare?: true } & Mend);

/** A message as a correction of the newest note; null where a word of it says anything else. */
export function newestMended(line: readonly Tok[], today: Day): NewestMended | null {
  const said = withoutExcuse(line.filter(({ kind }) => kind !== "mark"));
  // "wrong piece, that was the dresser"
  const tokens = isWrongOne(said, 0) ? said.toSpliced(1, 1) : said;
  const isAsked = line.some(({ text }) => text === "?");
  const right = isAsked ? null : rightPiece(said);
  if (right) return { kind: "mend", of: { back: 1 }, to: { pieces: [right] } };
  const redone = isAsked ? null : otherAtPrice(said);
  if (redone) return { kind: "mend", of: { back: 1 }, to: redone };
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
  // "no the lamp is still there" tells how it stands.
  if (tokens.some(({ text }) => STILL_THERE.has(text))) return null;
  const again = toldAgain(tokens, today);
  if (again) return again;
  const from = tokens.findIndex((token) => !isOpening(token));
  if (from < 0) return null;
  // "the hutch, sorry", "25 i mean": the word that corrects may stand behind.
  const to = tokens.findLastIndex((token) => !BEHIND.has(token.text)) + 1;
  const opening = [...tokens.slice(0, from), ...tokens.slice(to)];
  // "instead", alone
  if (to <= from) return null;
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

/** "oops wrong chair, i sold the pine one": the piece that it was; null where it is not said, or more is. */
function rightPiece(said: readonly Tok[]): Mention | null {
  const [wrong, ...rest] = said.slice(said.findIndex((token) => !isOpening(token)));
  if (wrong?.kind !== "piece" || !wrong.text.startsWith("wrong ")) return null;
  // "wrong chair, the oak one"
  const { name, traits = [] } = wrong.mention!;
  if (rest.length === 0 && traits.length > 1) return { ...wrong.mention!, name, traits: traits.slice(1) };
  const [right, ...others] = rest.filter(
    (token) => !isSkipped(token) && !isOpening(token) && headsOf(token).length === 0,
  );
  return right?.mention && others.length === 0 ? right.mention : null;
}

/** "wrong one", "wrong piece", at a place. */
const isWrongOne = (said: readonly Tok[], at: number): boolean =>
  said[at]?.text === "wrong" && WRONG_ONES.has(said[at + 1]?.text ?? "");

/** "wrong one, it was the oak table, 200": the piece that it was, and its price; null where more is said. */
function otherAtPrice(said: readonly Tok[]): { pieces: Mention[]; amount: Cents } | null {
  const at = said.findIndex(({ text }) => text === "wrong");
  if (at < 0 || !isWrongOne(said, at) || !said.slice(0, at).every(isOpening)) return null;
  const told = said.slice(at + 2);
  const [piece, sum, ...others] = told.filter((token) => !isSkipped(token) && !isOpening(token));
  const amount = sum?.kind === "amount" ? centsIn(sum) : null;
  if (piece?.kind !== "piece" || !amount || others.length > 0) return null;
  return { pieces: [piece.mention!], amount };
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

/** "two of the pulls", "the two knobs": how many they were. */
const isCounting = (tokens: readonly Tok[], at: number): boolean =>
  tokens[at + 1]?.text === "of" || tokens[at + 1]?.roles.supply !== undefined;

/** How much it is, in cents; null where that is said of each. */
const inAll = (sum: Tok): Cents | null => (sum.each ? null : centsIn(sum));

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
    const isOfMoney = ({ kind }: Tok, at: number) => kind === "amount" && !isCounting(tokens, at);
    const amount = tokens.find(isOfMoney);
    const cents = beside.every(isOpening) && amount && !amount.each ? centsIn(amount) : null;
    if (cents === null) return null;
    const more = effect === "less" ? -cents : cents;
    // "returned two of the pulls, got 8.10 back": of what was spent on them.
    const supply = tokens.find(({ roles }) => roles.supply !== undefined);
    const isReturned = supply !== undefined && tokens.some(({ text }) => GIVES_BACK.has(text));
    return {
      kind: "mend",
      of: isReturned ? { kind: "spend", what: supply.text } : { back: 1 },
      to: { more },
    };
  }
  if (effect === "bought" || effect === "went") {
    const off = centsIn(tokens.find(isAmount)!);
    return off === null || beside.length > 0
      ? null
      : { kind: "mend", of: { kinds: [effect === "bought" ? "buy" : "sell"], back: 1 }, to: { more: -off } };
  }
  if (effect === "owed") {
    const [had, owed] = tokens.filter(isAmount).map(centsIn);
    return had && owed && beside.length === 0
      ? { kind: "mend", of: { kinds: ["sell"], amount: had + owed, back: 1 }, to: { owed } }
      : null;
  }
  if (effect === "is") {
    const sum = tokens.find(isAmount)!;
    const is = inAll(sum);
    return is === null || beside.some((token) => token !== sum) ? null : { kind: "fix", amount: is };
  }
  if (effect === "priced") {
    const price = inAll(tokens.find(isAmount)!);
    return price === null
      ? null
      : { kind: "mend", of: { kinds: ["list", "reprice"], back: 1 }, to: { amount: price } };
  }
  if (effect === "fee") {
    const fee = inAll(tokens.find(isAmount)!);
    const method = beside.find(({ roles }) => roles.method !== undefined)?.roles.method;
    const to = { fee: fee!, ...(method === undefined ? {} : { method }) };
    return fee === null ? null : { kind: "mend", of: { kinds: ["sell"], back: 1 }, to };
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
  // "split that with the bookcase": for it as well.
  if (effect === "split" && others.length === 0 && tokens.some(({ text }) => text === "with"))
    return { kind: "mend", of: { back: 1 }, to: { also: piece } };
  if (effect === "split")
    return others.length > 0 || piece.it
      ? { kind: "mend", of: { back: 1 }, to: { pieces: said.map((each) => ({ ...each })) } }
      : null;
  return others.length > 0 ? null : { kind: "mend", of: { back: 1 }, to: { also: piece } };
}

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
