import { isAmount, isPiece, placeAfter, placeBefore, type Tok } from "../clause.ts";
import { type Exact, wholeOf } from "../quantities/amounts.ts";
import { isContainer } from "../slots/money.ts";
import { measuresIn } from "../slots/spending.ts";
import { PLUS } from "../words/links.ts";
import {
  BETWEEN_SUMS,
  COMES_TO,
  IN_ALL,
  MARKS_OF_SUMS,
  OFF_NOUNS,
  OPENS_OFF,
  PERCENT_OFF_BEFORE,
  PERCENT_OFF_BEHIND,
  PRICED,
  TAKES_OFF,
  TAX_MAX,
  TAX_ON_TOP,
  TRAIL_ENDS,
  TRAILS,
} from "../words/worked-out.ts";
import { isOfCost, isSupply } from "./for-whom.ts";

/*
 * "hinges were 8 plus tax so 8.64", "six knobs at two fifty each so 15 total", "18 but had a 5 off coupon so 13": a cost whose
 * sum is worked out in its note. It is read as if only what it came to were told, where arithmetic says so too.
 */

/** A line's tokens with what each cost came to in the place of how; the same ones where none is worked out. */
export function withWorkedOut(tokens: Tok[]): Tok[] {
  const thing = tokens.findIndex(isSupply);
  if (thing < 0) return tokens;
  let told = tokens;
  for (let from = 0; from < told.length; ) {
    let to = from;
    while (to < told.length && !isEnd(told[to]!)) to += 1;
    const said = told.slice(from, to);
    const made =
      to - from < SENTENCE_MAX &&
      said.some(isSupply) &&
      said.every((token) => isOfCost(token) || TRAILS.has(token.text))
        ? withoutWays(worked(said))
        : said;
    if (made.length !== said.length) told = [...told.slice(0, from), ...made, ...told.slice(to)];
    from += made.length + 1;
  }
  return told;
}

/** No sum is worked out in a longer sentence. */
const SENTENCE_MAX = 60;

const isEnd = ({ kind, text }: Tok): boolean => kind === "mark" && /^[.;!?]/.test(text);

/** "2 of them", "2 gallons": it counts as a number does. */
const isNumber = (token: Tok): boolean =>
  isAmount(token) || countOf(token) !== undefined || token.kind === "percent";

function countOf(token: Tok): number | undefined {
  if (isPiece(token) && token.mention!.it) return token.mention!.count;
  return token.kind === "grain" ? measuresIn(token)?.count : undefined;
}

const textOf = (tokens: readonly Tok[]): string =>
  tokens.map((token) => (isAmount(token) ? "$" : token.kind === "percent" ? "%" : token.text)).join(" ");

/** The tokens of a sentence with its last number alone, where the others come to it. */
function worked(said: Tok[]): Tok[] {
  const numbers = said.flatMap((token, at) => (isNumber(token) ? [at] : []));
  const last = numbers.at(-1);
  if (last === undefined || numbers.length < 2 || !isAmount(said[last]!)) return said;
  for (const [place, first] of numbers.slice(0, -1).entries()) {
    const isOfThing = place === 0 || said.slice(numbers[place - 1]!, first).some(isSupply);
    const made = isOfThing ? workedFrom(said, first, last) : null;
    if (made) return made;
  }
  return said;
}

/** So, where the numbers from a place on are those of one sum; null where they are not. */
function workedFrom(said: readonly Tok[], first: number, last: number): Tok[] | null {
  const run = said.slice(first, last);
  const supplies = run.filter(isSupply);
  const isOfOne = supplies.length === 0 || isCountOf(run);
  if (!isOfOne || !run.every((token) => isNumber(token) || isSupply(token) || isBetween(token))) return null;
  const [total, behind] = [said[last]!, said.slice(last + 1)];
  const from = placeBefore(said, first - 1, PRICED) + 1;
  const isLess = from < first;
  const isTotal = COMES_TO.test(textOf(run)) || IN_ALL.test(textOf(behind)) || run.some(({ each }) => each);
  if (isTotal && !total.each && comesTo(run, total, textOf(said), { isLess, isCounted: supplies.length > 0 }))
    return [...said.slice(0, from), ...supplies, total, ...behind];
  if (supplies.length > 0 || from < first) return null;
  const all = said.slice(0, first).some(isSupply) ? ofSoMany(run, total) : null;
  if (all) return [...said.slice(0, first), all, ...behind];
  const onTop = withTax(run, total, behind);
  return onTop && [...said.slice(0, first), onTop.sum, ...behind.slice(onTop.words)];
}

/** "2 packs for 13", "3 for 13", "2 at 6.50 each": what all of them came to. */
function ofSoMany(run: readonly Tok[], total: Tok): Tok | null {
  const [count, ...words] = run;
  const many = count?.amount?.money ? null : wholeOf(count?.amount?.exact ?? null);
  const price = total.amount?.exact;
  if (!many || many > COUNTED_MAX || count!.each || !price) return null;
  const link = words.filter((word) => !isContainer(word));
  if (link.length > 1) return null;
  const [by] = link.map(({ text }) => text);
  if (total.each && (by === undefined || by === "at" || by === "@" || by === ",")) {
    const factors: [Exact, Exact] = [{ digits: many, scale: 0 }, price];
    const exact = { digits: many * price.digits, scale: price.scale };
    return { ...total, each: undefined, amount: { exact, money: true, factors } };
  }
  const isForAll = by === "for" || (by === "," && words.length > link.length);
  return isForAll && !total.each && valuesOf(total)[0]! > many * 100 ? total : null;
}

/** So many things are counted; more are rather money. */
const COUNTED_MAX = 24;

const isBetween = (token: Tok): boolean =>
  token.kind === "mark" ? MARKS_OF_SUMS.has(token.text) : BETWEEN_SUMS.has(token.text) || isContainer(token);

/** "six knobs at …": a count right before the one thing. */
function isCountOf(run: readonly Tok[]): boolean {
  const at = run.findIndex(isSupply);
  return (
    isAmount(run[0]!) &&
    run.slice(1, at).every((token) => isContainer(token) || token.text === "of") &&
    !run.slice(at + 1).some(isSupply)
  );
}

/** What a number may be, in cents. */
function valuesOf(token: Tok): number[] {
  const count = countOf(token);
  if (count !== undefined) return [count * 100];
  const { exact, either } = token.amount!;
  if (exact) return [(exact.digits * 100) / 10 ** exact.scale];
  return either ? [...either] : [];
}

/** Whether some numbers come to a total: added up, so many times one, less what came off, with tax or less a discount. */
function comesTo(
  run: readonly Tok[],
  total: Tok,
  text: string,
  { isLess: isPriced, isCounted }: { isLess: boolean; isCounted: boolean },
): boolean {
  const words = text.split(" ");
  const isOff = isPriced || words.some((word) => TAKES_OFF.has(word)) || /half|%/.test(text);
  const isTaxed = /\btax/.test(text);
  const numbers = run.filter((token) => isNumber(token) && token.kind !== "percent");
  const sums = numbers.reduce<number[][]>(
    (all, token) => all.flatMap((before) => valuesOf(token).map((value) => [...before, value])),
    [[]],
  );
  return valuesOf(total).some((sum) =>
    sums.flatMap(isCounted ? productOf : resultsOf).some(({ cents, isLess }) => {
      if (isLess && !isOff) return false;
      if (Math.abs(cents - sum) < 1) return true;
      if (isTaxed && cents < sum && sum <= cents * (1 + TAX_MAX)) return true;
      return isOff && numbers.length === 1 && sum < cents;
    }),
  );
}

interface Result {
  cents: number;
  isLess?: boolean;
}

/** So many things at the price of one. */
const productOf = ([count = 0, price = 0, ...others]: readonly number[]): Result[] =>
  others.length === 0 ? [{ cents: (count * price) / 100 }] : [];

/** All that some numbers may come to, in cents. */
function resultsOf(numbers: readonly number[]): Result[] {
  const [one = 0, other, third, ...more] = numbers;
  if (more.length > 0) return [{ cents: numbers.reduce((sum, number) => sum + number, 0) }];
  if (other === undefined) return [{ cents: one }];
  const isCount = one % 100 === 0 || other % 100 === 0;
  const pairs = [
    { cents: one + other },
    ...(isCount ? [{ cents: (one * other) / 100 }] : []),
    { cents: one - other, isLess: true },
  ];
  if (third === undefined) return pairs;
  return pairs.flatMap(({ cents, isLess }) => [
    { cents: cents + third, isLess: isLess ?? false },
    { cents: cents - third, isLess: true },
  ]);
}

/** "12 plus 1 in tax": both; null where nothing is put on top. */
function withTax(
  run: readonly Tok[],
  onTop: Tok,
  behind: readonly Tok[],
): { sum: Tok; words: number } | null {
  const [price, link, ...others] = run;
  const tax = TAX_ON_TOP.exec(textOf(behind));
  if (!tax || !link || others.length > 0 || !(PLUS.has(link.text) || link.text === "plus")) return null;
  const [one, more] = [price!.amount?.exact, onTop.amount?.exact];
  if (!one || !more || price!.each || onTop.each) return null;
  const [cents, extra] = [valuesOf(price!)[0]!, valuesOf(onTop)[0]!];
  if (extra > cents * TAX_MAX) return null;
  const exact = { digits: Math.round(cents + extra), scale: 2 };
  return {
    sum: { ...price!, to: onTop.to, amount: { exact, money: true } },
    words: tax[0].split(" ").length,
  };
}

/** Without the words that an amount is all of it, and by how much less it was. */
function withoutWays(said: Tok[]): Tok[] {
  const [at, ...others] = said.flatMap((token, place) => (isAmount(token) ? [place] : []));
  if (at === undefined || others.length > 0) return said;
  const [before, behind] = [said.slice(0, at), said.slice(at + 1)];
  const off = PERCENT_OFF_BEHIND.exec(textOf(behind));
  const cut = off ? tokensIn(behind, off[0]) : trailOf(behind);
  const lead = PERCENT_OFF_BEFORE.exec(textOf(before));
  const from = lead ? at - tokensIn(before.toReversed(), lead[0].trim()) : at;
  if (before.slice(from).some(isSupply)) return said;
  return [...before.slice(0, from), said[at]!, ...behind.slice(cut)];
}

/** How many tokens hold so many words. */
function tokensIn(tokens: readonly Tok[], text: string): number {
  let words = text
    .trim()
    .split(/ +/)
    .filter((word) => word !== "").length;
  let count = 0;
  while (words > 0 && count < tokens.length) {
    words -= tokens[count]!.kind === "percent" ? 1 : tokens[count]!.text.split(" ").length;
    count += 1;
  }
  return count;
}

/** How many words behind an amount say that it is all of it. */
function trailOf(behind: readonly Tok[]): number {
  let to = placeAfter(behind, 0, TRAILS);
  while (to > 0 && !endsTrail(behind, to - 1)) to -= 1;
  return to;
}

/** "all in", and "13 before tax, 14.04 after". */
function endsTrail(behind: readonly Tok[], at: number): boolean {
  const { text } = behind[at]!;
  if (text === "in") return at > 0 && behind[at - 1]!.text === "all";
  // "20 dollar coupon for stain" is no price.
  if (OFF_NOUNS.has(text) && !OPENS_OFF.has(behind[0]!.text)) return false;
  return TRAIL_ENDS.has(text) || (text === "after" && (behind[at + 1]?.text ?? "for") === "for");
}
