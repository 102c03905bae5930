import type { Day } from "../../calendar.ts";
import { placeBefore, type Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { isSkipped } from "../mends/mended.ts";
import { pastDay } from "../quantities/days.ts";
import type { Kind, Mention } from "../reading.ts";
import { centsIn } from "../slots/money.ts";
import { ARTICLES } from "../words/filler.ts";
import { LABOR_NAMES } from "../words/labors.ts";
import { ARTICLES_WIDE } from "../words/links.ts";
import { OLD, POINTING } from "../words/mending.ts";
import {
  BECAME,
  BEFORE_CHANGED,
  BEFORE_PLACE,
  BEFORE_PLANNED,
  BEFORE_SHOP,
  BESIDE_MISNOTED,
  CAME_OUT,
  CORRECTIONS,
  DECIDES,
  DOUBTS,
  IN_SUMS,
  LOAN,
  MAKES_IT,
  MAY_TURN,
  MEANT,
  NAMES_IT,
  NO_CORRECTION,
  NOTED_AS,
  OF_SHOP,
  SPOKEN_OF,
  TELLS_SUM,
  THEIR_OWN,
  THINGS_TOO,
  WAS,
  WE_PAY,
  WRONG,
} from "../words/misnoted.ts";
import { HOUSEHOLD } from "../words/people.ts";
import { type Misnoted, prove, raise, type Values } from "./misnoted-said.ts";

/* What each word of a message that corrects a note says of it. */

/** Those who are on the books. */
export type Names = Pick<ReadonlySet<string>, "has">;

/** Takes a value; false where a token is none, null where it cannot be read or a second one of its kind stands there. */
export function takeValue(
  said: Misnoted,
  side: Values,
  token: Tok,
  { names, today, isWrong, isThing }: { names: Names; today: Day; isWrong: boolean; isThing: boolean },
): boolean | null {
  const { kind, text, roles } = token;
  switch (kind) {
    case "piece":
      if (isPartial(token.mention!)) return null;
      // "wrong table. the 95 was for the end table"
      if (token.mention!.traits?.[0] === "wrong") {
        prove(said);
        const traits = token.mention!.traits.slice(1);
        if (traits.length > 0) side.pieces.push({ ...token.mention!, traits });
        return traits.length > 0;
      }
      if (token.mention!.it) said.points = true;
      else if (isWrong) said.now.pieces.push(token.mention!);
      else side.pieces.push(token.mention!);
      return true;
    case "amount": {
      const cents = centsIn(token);
      if (cents === null || (side.amount !== undefined && side.amount !== cents)) return null;
      side.amount = cents;
      return true;
    }
    case "duration":
      if (token.minutes === undefined || (side.minutes ?? token.minutes) !== token.minutes) return null;
      side.minutes = token.minutes;
      return true;
    case "miles":
      if (token.miles === undefined || (side.miles ?? token.miles) !== token.miles) return null;
      side.miles = token.miles;
      return true;
    case "day": {
      const found = pastDay(token.said!, today);
      if (!("day" in found)) return null;
      side.date = found.day;
      return true;
    }
    case "word":
      break;
    default:
      return null;
  }
  const name = [text, text.replace(/s$/, "")].find((each) => names.has(each));
  if (name !== undefined) side.who = name;
  else if (BECAME[text] !== undefined) side.how = BECAME[text];
  else if (roles.method !== undefined) side.method = roles.method;
  else if (roles.place !== undefined) side.place = roles.place;
  else if (roles.trait && !roles.heads && !isThing && !BESIDE_MISNOTED.has(text)) side.traits.push(text);
  else return false;
  return true;
}

/** "the second one", "2 of them", "the others": which they are, the talk tells. */
const isPartial = ({ it, count, place, other, half, last, plural, name }: Mention): boolean =>
  place !== undefined ||
  other === true ||
  half === true ||
  last === true ||
  (it === true && (count !== undefined || plural === true)) ||
  (name === undefined && it !== true && count === undefined);

/** Takes a word that is no value; false where it turns what is told. */
export function takeWord(said: Misnoted, tokens: readonly Tok[], at: number): boolean {
  const { kind, text, roles, unknown } = tokens[at]!;
  if (kind === "piece") return true;
  // "make the hutch 200", "make her deposit 20"
  if (text === "make" && ARTICLES_WIDE.has(tokens[at + 1]?.text ?? "")) {
    raise(said, "likely");
    return true;
  }
  if (LOAN.has(text)) {
    // "the loan one" is what was paid to it.
    if (tokens[at + 1]?.text !== "one") said.isLoan = true;
    said.kinds = ["pay"];
    return true;
  }
  // "no the lamp is still there": how it stands.
  if (text === "still" && /^(?:t?here)$/.test(tokens[at + 1]?.text ?? "")) return false;
  // "turned up with the 110": who came.
  if (text === "turned up" || (text === "turned" && tokens[at + 1]?.text === "up")) return false;
  const words = text.split(" ");
  const isAny = (list: ReadonlySet<string>): boolean =>
    list.has(text) || words.some((word) => list.has(word));
  // "meant to sand today but ran out of paper": it was planned.
  if (MEANT.has(text) && tokens[at + 1]?.text === "to") return false;
  if (OF_SHOP.has(text) && BEFORE_SHOP.has(tokens[placeBefore(tokens, at - 1, ARTICLES_WIDE)]?.text ?? "")) {
    said.isOfShop = true;
    return true;
  }
  if (isProof(tokens, at)) prove(said);
  else if (isAny(DECIDES) && !isOfNothing(tokens, at)) raise(said, "sure");
  else if (isAny(DOUBTS)) raise(said, "likely");
  else if (isAny(CAME_OUT)) raise(said, "weak");
  if (isAny(WAS)) said.isTold = true;
  if (isAny(NOTED_AS)) said.isNoun = true;
  if (isAny(POINTING)) said.points = true;
  if (isAny(NAMES_IT) && tokens[at + 1]?.kind === "piece" && !OLD.has(tokens[at - 1]?.text ?? ""))
    said.isName = true;
  if (isAny(WE_PAY)) said.isOurs = true;
  // "my total should be 260", "the price at the other shop was 110 not 120": of none of our notes, as likely as not.
  if (isOfNoNote(tokens, at)) said.left.push(text);
  if (isAny(THEIR_OWN)) said.isTheirs = true;
  for (const word of words) {
    const kinds = SPOKEN_OF[word];
    if (kinds) said.kinds = said.kinds.length === 0 ? kinds : both(said.kinds, kinds);
  }
  if (roles.supply !== undefined && !isAny(BESIDE_MISNOTED) && SPOKEN_OF[text] === undefined)
    said.what = said.what ? `${said.what} ${text}` : text;
  else if (roles.labor) {
    said.labor = LABOR_NAMES.get(text) ?? text;
  } else if (roles.stream !== undefined) said.what = roles.stream;
  else if (isAny(NO_CORRECTION) && !said.out && !said.undoes && !said.isAgain) return false;
  else if (isAny(MAY_TURN) && !words.includes("you") && tokens[at + 1]?.text !== "you") {
    said.isTurned = true;
    said.left.push(text);
  } else if (isTaken(tokens[at]!)) return true;
  else if ((unknown || roles.person) && isOneName(said, tokens, at)) {
    const { now } = said;
    now.name = now.name ? `${now.name} ${text}` : text;
  } else said.left.push(text);
  return true;
}

/** "i meant 145 for the listing", "lamp price wrong, 48": that what is noted is another, and no new price. */
function isProof(tokens: readonly Tok[], at: number): boolean {
  const { text } = tokens[at]!;
  const next = tokens[at + 1];
  if (WRONG.has(text)) return !next || next.kind === "mark" || next.kind === "amount";
  // "straps for the crib, make it 8.99": of a cost, which has no other price from now on.
  if (MAKES_IT.has(text) && next?.kind === "amount")
    return tokens.some(({ roles }) => roles.supply !== undefined);
  if (CORRECTIONS.has(text)) return next?.roles.supply === undefined;
  return MEANT.has(text) && next !== undefined && !BEFORE_PLANNED.has(next.text);
}

/** "double shift today", "he had the 2 bucks change": a thing, where nothing stands behind it that is to be changed. */
function isOfNothing(tokens: readonly Tok[], at: number): boolean {
  const next = tokens[at + 1];
  return (
    THINGS_TOO.has(tokens[at]!.text) &&
    (!next || next.kind === "day" || (next.kind === "word" && !BEFORE_CHANGED.has(next.text)))
  );
}

/** A name stands in one place; "typo in the ad" names nobody. */
function isOneName({ now: { name } }: Misnoted, tokens: readonly Tok[], at: number): boolean {
  if (name !== undefined) return name.endsWith(tokens[at - 1]!.text);
  return !BEFORE_PLACE.has(tokens[placeBefore(tokens, at - 1, ARTICLES)]?.text ?? "");
}

/** A sum of many notes that is told before its amount, or where else a price was asked. */
function isOfNoNote(tokens: readonly Tok[], at: number): boolean {
  const { text } = tokens[at]!;
  const next = tokens[at + 1];
  if (IN_SUMS.has(text)) return next !== undefined && TELLS_SUM.has(next.text.split(" ")[0]!);
  const isPrice =
    text === "price at" || (text === "at" && tokens.slice(0, at).some(({ text: word }) => word === "price"));
  return isPrice && next !== undefined && next.kind !== "amount" && next.kind !== "piece";
}

const both = (one: readonly Kind[], other: readonly Kind[]): readonly Kind[] => {
  const kinds = one.filter((kind) => other.includes(kind));
  return kinds.length > 0 ? kinds : one;
};

const isTaken = (token: Tok): boolean => {
  const { text, roles } = token;
  const isWord = (word: string): boolean =>
    BESIDE_MISNOTED.has(word) ||
    DECIDES.has(word) ||
    DOUBTS.has(word) ||
    SPOKEN_OF[word] !== undefined ||
    THEIR_OWN.has(word);
  return (
    isSkipped(token) ||
    HOUSEHOLD.has(text) ||
    CAME_OUT.has(text) ||
    DECIDES.has(text) ||
    DOUBTS.has(text) ||
    BESIDE_MISNOTED.has(text) ||
    text.split(" ").every(isWord) ||
    (roles.opinion === true && headsOf(token).length === 0)
  );
};
