import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import type { Tok } from "./clause.ts";
import { headsOf } from "./heads.ts";
import { lexed } from "./lexed.ts";
import { isSkipped } from "./mended.ts";
import { pastDay } from "./quantities/days.ts";
import { isQuestion } from "./questions.ts";
import type { Kind, Mention } from "./reading.ts";
import { misnoted } from "./rows/misnoted.ts";
import { centsIn } from "./slots/money.ts";
import { LABOR_NAMES } from "./words/labors.ts";
import { PREPOSITIONS } from "./words/links.ts";
import { OLD, POINTING } from "./words/mending.ts";
import {
  BEFORE_OLD,
  BESIDE_MISNOTED,
  CAME_OUT,
  DECIDES,
  DOUBTS,
  MAY_CORRECT,
  MAY_TURN,
  NAMES_IT,
  NO_CORRECTION,
  NOTED_AS,
  SPOKEN_OF,
  THEIR_OWN,
  WAS,
  WE_PAY,
  WRONG,
  WRONG_NAMES,
} from "./words/misnoted.ts";
import { HOUSEHOLD } from "./words/people.ts";

/*
 * What a message tells of a note that was noted wrong, in whatever order: values that it should have, those that it has, and
 * by what it is known. Which note that is, the books tell (`mending/misnoted.ts`).
 */

/** Values that a note has, or should have. */
export interface Values {
  amount?: Cents;
  minutes?: number;
  miles?: string;
  date?: Day;
  method?: string;
  place?: string;
  /** Somebody on the books. */
  who?: string;
  /** A word that nobody knows: a name, as often as not. */
  name?: string;
  traits: string[];
  pieces: Mention[];
}

export interface Misnoted {
  /** How much the words say that it is a correction. */
  sense: "sure" | "likely" | "weak" | "none";
  /** Not only by a word that may change a price as well. */
  isProven: boolean;
  /** It is to go: "maybe" by a word that says something else as well. */
  out?: "sure" | "maybe";
  /** What was said last is taken back. */
  undoes: boolean;
  /** It may have been noted before. */
  isAgain: boolean;
  now: Values;
  old: Values;
  /** The kinds of note that its verbs and nouns tell; none told: any. */
  kinds: readonly Kind[];
  what?: string;
  labor?: string;
  /** "that", "it": what was spoken of last. */
  points: boolean;
  /** Told of when a piece came. */
  isThen: boolean;
  /** Told only now: it may be a note of its own. */
  isLate: boolean;
  /** "the sale was", "teo paid": what a note is called, and that it is told what it was. */
  isNoun: boolean;
  isTold: boolean;
  /** We paid, they paid. */
  isOurs: boolean;
  isTheirs: boolean;
  /** "its a …": what it is called. */
  isName: boolean;
  /** A name was wrong. */
  isWho: boolean;
  left: string[];
  /** One of these turns what is told. */
  isTurned: boolean;
}

const TOKENS_MAX = 36;

const values = (): Values => ({ traits: [], pieces: [] });

/** What a message tells so; null where it tells more than that, or nothing of it. `names`: people on the books. */
export function misnotedIn(text: string, names: ReadonlySet<string>, today: Day): Misnoted | null {
  if (
    !text
      .toLowerCase()
      .match(/[a-z]+/g)
      ?.some((word) => MAY_CORRECT.has(word))
  )
    return null;
  const tokens = lexed(text);
  if (tokens.length > TOKENS_MAX || tokens.some(({ each }) => each)) return null;
  const said: Misnoted = {
    sense: "none",
    isProven: false,
    undoes: false,
    isAgain: false,
    now: values(),
    old: values(),
    kinds: [],
    points: false,
    isThen: false,
    isNoun: false,
    isLate: false,
    isTold: false,
    isOurs: false,
    isTheirs: false,
    isName: false,
    isWho: false,
    left: [],
    isTurned: false,
  };
  const taken = takeRows(said, tokens);
  // "should i list the hutch at 120"
  const isNamed = tokens.some(({ text: word }) => names.has(word));
  if (!taken.asks && !said.out && !isNamed && isQuestion(tokens)) return null;
  const wrong = tokens.findIndex(
    ({ text: word }, at) => WRONG.has(word) && WAS.has(tokens[at - 1]?.text ?? ""),
  );
  let isOld = false;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (taken.skips.has(at)) continue;
    if (OLD.has(token.text)) {
      // "card instead"
      isOld = token.text === "not" || BEFORE_OLD.has(tokens[at + 1]?.text ?? "");
      raise(said, isOld ? "none" : "sure");
      continue;
    }
    if (token.kind === "mark") {
      if (token.text !== "#") isOld = false;
      continue;
    }
    const side = isOld || taken.old.has(at) || at < wrong ? said.old : said.now;
    const isValue = takeValue(said, side, token, { names, today, isWrong: at < wrong });
    if (isValue === null) return null;
    if (isValue && isOld) prove(said);
    if (isValue) isOld = false;
    // "not bad", "not dry yet": what is denied is no value.
    else if (isOld && !said.out && !isSkipped(token) && !PREPOSITIONS.has(token.text)) return null;
    else if (!takeWord(said, tokens, at)) return null;
  }
  if (isOld && !said.out) return null;
  return withoutLabor(taken.isSlip ? withNowOf(said) : said);
}

/** "filled up for 22 not 20": without a time it tells of no work. */
function withoutLabor({ labor, ...said }: Misnoted): Misnoted {
  if (labor === undefined) return said;
  const isWork = said.now.minutes !== undefined || said.old.minutes !== undefined || said.out !== undefined;
  return { ...said, ...(isWork ? { what: labor, kinds: ["work"] } : {}) };
}

/** "it heard me wrong i said fifty": what was said is what is meant. */
function withNowOf(said: Misnoted): Misnoted {
  const { now, old } = said;
  const isNone = now.pieces.length === 0 && now.traits.length === 0 && Object.keys(now).length === 2;
  return isNone && said.sense === "sure" ? { ...said, now: old, old: now } : said;
}

const RANK = { none: 0, weak: 1, likely: 2, sure: 3 } as const;

function raise(said: Misnoted, sense: Misnoted["sense"]): void {
  if (RANK[sense] > RANK[said.sense]) said.sense = sense;
}

function prove(said: Misnoted): void {
  raise(said, "sure");
  said.isProven = true;
}

/** What the rows take of a line, with what they say of it. */
function takeRows(said: Misnoted, tokens: readonly Tok[]) {
  const skips = new Set<number>();
  const old = new Set<number>();
  let asks = false;
  let isSlip = false;
  for (const { effect, from, to } of misnoted.fired(tokens)) {
    const places = Array.from({ length: to - from }, (_, at) => from + at);
    if (effect === "slip" || effect === "proof") {
      prove(said);
      asks = true;
      isSlip ||= effect === "slip";
      said.isWho ||= places.some((at) => WRONG_NAMES.has(tokens[at]!.text.split(" ").at(-1)!));
    } else if (effect === "found" || effect === "added" || effect === "wait") raise(said, "likely");
    else if (effect === "late") said.isLate = true;
    else if (effect === "listing") said.kinds = LISTING_KINDS;
    else if (effect === "held") said.kinds = HOLD_KINDS;
    else if (effect === "then") {
      prove(said);
      said.isThen = true;
    } else if (effect === "old") {
      prove(said);
      asks = true;
    } else if (effect === "undo") said.undoes = true;
    else if (effect === "again") said.isAgain = true;
    else said.out = effect === "out" ? "sure" : (said.out ?? "maybe");
    const isKept = (at: number): boolean =>
      KEPT.has(tokens[at]!.kind) || tokens[at]!.roles.method !== undefined;
    for (const at of places) {
      if (effect === "old" && isKept(at)) old.add(at);
      else if (!isNamedIn(effect, tokens[at]!)) skips.add(at);
    }
  }
  return { skips, old, asks, isSlip };
}

/** Of some rows only what they are of says which note is meant. */
function isNamedIn(effect: string, { kind, text, roles }: Tok): boolean {
  const isThing = kind !== "word" || roles.supply !== undefined || SPOKEN_OF[text] !== undefined;
  if (effect === "added" || effect === "held") return kind !== "word";
  if (effect === "wait") return roles.supply !== undefined;
  return (
    effect !== "undo" &&
    effect !== "again" &&
    effect !== "slip" &&
    effect !== "wait" &&
    isThing &&
    kind !== "mark"
  );
}

const LISTING_KINDS: readonly Kind[] = ["list", "reprice"];
const HOLD_KINDS: readonly Kind[] = ["hold"];

const KEPT: ReadonlySet<string> = new Set(["piece", "amount", "miles", "duration"]);

/** Takes a value; false where a token is none, null where it cannot be read or a second one of its kind stands there. */
function takeValue(
  said: Misnoted,
  side: Values,
  token: Tok,
  { names, today, isWrong }: { names: ReadonlySet<string>; today: Day; isWrong: boolean },
): boolean | null {
  const { kind, text, roles } = token;
  switch (kind) {
    case "piece":
      if (isPartial(token.mention!)) return null;
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
  else if (roles.method !== undefined) side.method = roles.method;
  else if (roles.place !== undefined) side.place = roles.place;
  else if (roles.trait && !roles.heads && !BESIDE_MISNOTED.has(text)) side.traits.push(text);
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
function takeWord(said: Misnoted, tokens: readonly Tok[], at: number): boolean {
  const { text, roles, unknown } = tokens[at]!;
  const words = text.split(" ");
  const isAny = (list: ReadonlySet<string>): boolean =>
    list.has(text) || words.some((word) => list.has(word));
  if (isAny(DECIDES)) raise(said, "sure");
  else if (isAny(DOUBTS)) raise(said, "likely");
  else if (isAny(CAME_OUT)) raise(said, "weak");
  if (isAny(WAS)) said.isTold = true;
  if (isAny(NOTED_AS)) said.isNoun = true;
  if (isAny(POINTING)) said.points = true;
  if (isAny(NAMES_IT) && tokens[at + 1]?.kind === "piece" && !OLD.has(tokens[at - 1]?.text ?? ""))
    said.isName = true;
  if (isAny(WE_PAY)) said.isOurs = true;
  if (isAny(THEIR_OWN)) said.isTheirs = true;
  for (const word of words) {
    const kinds = SPOKEN_OF[word];
    if (kinds) said.kinds = said.kinds.length === 0 ? kinds : both(said.kinds, kinds);
  }
  if (roles.supply !== undefined && !isAny(BESIDE_MISNOTED))
    said.what = said.what ? `${said.what} ${text}` : text;
  else if (roles.labor) {
    said.labor = LABOR_NAMES.get(text) ?? text;
  } else if (roles.stream !== undefined) said.what = roles.stream;
  else if (isAny(NO_CORRECTION) && !said.out && !said.undoes && !said.isAgain) return false;
  else if (isAny(MAY_TURN)) {
    said.isTurned = true;
    said.left.push(text);
  } else if (isTaken(tokens[at]!)) return true;
  else if (unknown || roles.person) said.now.name = said.now.name ? `${said.now.name} ${text}` : text;
  else said.left.push(text);
  return true;
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
