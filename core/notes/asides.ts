import type { Tok } from "./clause.ts";
import { placeBefore } from "./clause.ts";
import { headsOf } from "./heads.ts";
import { NO_ROLES, wordToken } from "./token.ts";

/*
 * Numbers said by the way: a house's, an apartment's, how many people asked, what a piece used to cost. None of
 * them is an amount of the note, so each is set aside before anything looks for one. Where every amount of a line
 * would go, those that may be its amount after all stay.
 */

/** Some tokens that say a number by the way, from `from` up to `to`. */
interface Aside {
  from: number;
  to: number;
  /** Only beside another amount is this surely none: "sold the 90 desk" may tell its price. */
  doubtful: boolean;
}

type Find = (tokens: readonly Tok[], at: number) => Aside | null;

const one = (at: number, doubtful: boolean): Aside => ({ from: at, to: at + 1, doubtful });

const isPlain = ({ amount, each }: Tok): boolean => amount?.money !== true && each !== true;

const BEFORE_ADDRESS = new Set(["at", "on", "from", "near", "off", "to", "in"]);
const STREETS = new Set(
  "st street ave avenue rd road dr ln lane blvd boulevard ct court pl cir circle hwy highway pkwy terrace".split(
    " ",
  ),
);
/** How many words the name of a street may have. */
const STREET_WORDS_MAX = 2;

/** "at 1420 maple ave" */
const address: Find = (tokens, at) => {
  if (!isPlain(tokens[at]!) || !BEFORE_ADDRESS.has(tokens[at - 1]?.text ?? "")) return null;
  for (let end = at + 1; end <= at + 1 + STREET_WORDS_MAX; end += 1) {
    const word = tokens[end];
    if (word?.kind !== "word") return null;
    if (end > at + 1 && STREETS.has(word.text)) return { from: at, to: end + 1, doubtful: false };
  }
  return null;
};

const NUMBERED = new Set(
  "apt apartment unit booth suite room space aisle row exit gate building bldg stall spot".split(" "),
);
const WITHIN = new Set(["in", "at", "from", "to", "of", "by", "near", "the"]);

/** "the guy in booth 14" */
const place: Find = (tokens, at) => {
  const isNumbered = NUMBERED.has(tokens[at - 1]?.text ?? "") && WITHIN.has(tokens[at - 2]?.text ?? "");
  return isNumbered && isPlain(tokens[at]!) ? one(at, false) : null;
};

/** No picture or table top is given in less: "6x2" of a thing is a count and a price. */
const SIDE_MIN = 10;

/** "24x36 mirror" */
const size: Find = (tokens, at) => {
  const factors = tokens[at]!.amount?.factors;
  if (!factors || tokens[at + 1]?.kind !== "piece") return null;
  return factors.every(({ digits, scale }) => scale === 0 && digits >= SIDE_MIN) ? one(at, false) : null;
};

/** "donated 3 chairs worth 60": a value is no price. A question asks for it, and is read before. */
const worth: Find = (tokens, at) => {
  if (tokens[at - 1]?.text !== "worth") return null;
  const isSaidOfFact = tokens.slice(0, at).some((token) => headsOf(token).some(({ light }) => !light));
  return isSaidOfFact ? { from: at - 1, to: at + 1, doubtful: false } : null;
};

const OTHERS = new Set(
  (
    "people guys offers messages texts calls dogs cats kids times buyers customers folks lookers emails " +
    "likes views comments questions stops flights floors stairs steps blocks houses sales stores"
  ).split(" "),
);

/** "after 10 people asked" */
const others: Find = (tokens, at) => {
  if (!isPlain(tokens[at]!) || !OTHERS.has(tokens[at + 1]?.text ?? "")) return null;
  const from = /^(?:like|about|around|over|some|maybe)$/.test(tokens[at - 1]?.text ?? "") ? at - 1 : at;
  // What those others did is nothing that the note hedges.
  const did = tokens[at + 2]?.roles.hedge;
  return { from, to: did === "offer" || did === "appointment" ? at + 3 : at + 1, doubtful: true };
};

const WHOSE = new Set(["the", "her", "his", "their", "my", "that"]);

/** "refunded 15 of the 90": the first is what was given back. */
const whole: Find = (tokens, at) => {
  const before = placeBefore(tokens, at - 1, WHOSE);
  if (tokens[before]?.text !== "of" || tokens[before - 1]?.kind !== "amount") return null;
  return { from: before, to: at + 1, doubtful: true };
};

const OWNING = new Set(["the", "my", "that", "this", "our", "her", "his", "a"]);

/** "sold my $5 lamp for 40": what the piece is known by. */
const knownBy: Find = (tokens, at) => {
  if (tokens[at + 1]?.kind !== "piece" || !OWNING.has(tokens[at - 1]?.text ?? "")) return null;
  // "gave him a 50 for the 30 dollar desk": there was change.
  const isHanded = tokens.slice(0, at).some(({ text }) => /^(?:gave|handed|paid)$/.test(text));
  return !isHanded && tokens[at]!.each !== true ? one(at, true) : null;
};

const PRICE_TAGS = new Set(["asking", "tagged", "priced", "marked"]);
const PRICE_LINKS = new Set(["at", "for", "was", "were", "they", "i", "had", "it"]);

/** "sold couch for 120, was asking 150", "bought armoire tagged 80 for 50": what it did not go for. */
const tag: Find = (tokens, at) => {
  let from = at - 1;
  if (tokens[from]?.text === "at") from -= 1;
  if (!PRICE_TAGS.has(tokens[from]?.text.split(" ").at(-1) ?? "") || !isTrade(tokens, from)) return null;
  while (from > 0 && PRICE_LINKS.has(tokens[from - 1]!.text)) from -= 1;
  return { from, to: at + 1, doubtful: true };
};

/** "sold desk for 90, down from 110" */
const downFrom: Find = (tokens, at) =>
  tokens[at - 1]?.text === "from" && tokens[at - 2]?.text === "down" && isTrade(tokens, at)
    ? { from: at - 2, to: at + 1, doubtful: true }
    : null;

/** "150 total including the 40 deposit" */
const included: Find = (tokens, at) => {
  const next = tokens[at + 1]?.text;
  if ((next !== "deposit" && next !== "deposits") || !isTrade(tokens, at)) return null;
  const before = placeBefore(tokens, at - 1, OWNING);
  const isWithin = /^(?:including|includes|incl|counting)$/.test(tokens[before]?.text ?? "");
  return isWithin ? { from: before, to: at + 2, doubtful: true } : null;
};

const TOOK = new Set(["after", "within", "in", "took", "only", "just"]);

/** "bought desk 15 min ago", "sold couch 180 after 2 weeks": when, and how long it took. */
function timeAt(tokens: readonly Tok[], at: number): Aside | null {
  if (tokens[at]!.kind === "duration" && tokens[at + 1]?.text === "ago")
    return { from: at, to: at + 2, doubtful: false };
  return TOOK.has(tokens[at - 1]?.text ?? "") && isTrade(tokens, at) ? one(at, false) : null;
}

/** A sale or a purchase was said before this place. */
function isTrade(tokens: readonly Tok[], end: number): boolean {
  return tokens
    .slice(0, end)
    .some((token) => headsOf(token).some(({ kind, light }) => !light && (kind === "sell" || kind === "buy")));
}

const FINDS: readonly Find[] = [address, place, size, worth, others, whole, knownBy, tag, downFrom, included];

/** Words right before an amount from which any of the finds begins; `others` and `knownBy` begin from the next. */
const BEFORE = new Set([
  ...BEFORE_ADDRESS,
  ...NUMBERED,
  ...OWNING,
  ...PRICE_TAGS,
  ...["worth", "of", "their", "including", "includes", "incl", "counting"],
]);

function asideAt(tokens: readonly Tok[], at: number): Aside | null {
  const before = tokens[at - 1];
  const next = tokens[at + 1];
  const begins = before !== undefined && (BEFORE.has(before.text) || before.text.endsWith(" asking"));
  if (!begins && !(next !== undefined && (next.kind === "piece" || OTHERS.has(next.text)))) return null;
  for (const find of FINDS) {
    const aside = find(tokens, at);
    if (aside) return aside;
  }
  return null;
}

/** The tokens with every number that is said by the way, and the words that say it, as one token of no meaning. */
export function withAsides(tokens: Tok[]): Tok[] {
  let found: Aside[] | undefined;
  let amounts = 0;
  for (let at = 0; at < tokens.length; at += 1) {
    const { kind } = tokens[at]!;
    // "spent 90 min on the 60 dollar hutch" is about minutes.
    if (kind === "duration") amounts += 1;
    if (kind !== "amount" && kind !== "duration" && kind !== "span") continue;
    const aside = kind === "amount" ? asideAt(tokens, at) : timeAt(tokens, at);
    if (!aside && kind !== "amount") continue;
    if (!aside || aside.from < (found?.at(-1)?.to ?? 0)) amounts += 1;
    else found = [...(found ?? []), aside];
  }
  if (!found) return tokens;
  const sure = amounts > 0 ? found : found.filter(({ doubtful }) => !doubtful);
  const left: Tok[] = [];
  let at = 0;
  for (const { from, to } of sure) {
    left.push(...tokens.slice(at, from), asideToken(tokens, from, to));
    at = to;
  }
  return [...left, ...tokens.slice(at)];
}

function asideToken(tokens: readonly Tok[], from: number, to: number): Tok {
  const text = tokens
    .slice(from, to)
    .map((token) => token.text)
    .join(" ");
  return wordToken("grain", text, tokens[from]!.from, tokens[to - 1]!.to, NO_ROLES);
}
