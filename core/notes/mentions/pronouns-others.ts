import { placeAfter, type Tok } from "../clause.ts";
import { ARTICLES } from "../words/filler.ts";
import { AND, BEFORE_PRICE } from "../words/links.ts";
import { ANOTHER, AS_WELL, BE, FOR_ALL, GONE, MORE, ONE, ONTO, PAIRS, POINTS_OUT } from "../words/pieces.ts";
import { countOf } from "./counts.ts";
import { type Found, isHeadOf, isOfStanding, isPriced, isToldOf, verbAt } from "./pronouns-told.ts";

/* Those that are left of the ones spoken of: "the other one", "the last two", "the rest of the stools". */

/** A bare number behind "the other" counts no more than this. */
const OTHERS_MAX = 6;

/** "the other one", "the other 3", "the others". */
export function others(tokens: readonly Tok[], at: number): Found | null {
  const left = remaining(tokens, at);
  if (left) return left;
  const from = POINTS_OUT.has(tokens[at]!.text) ? at + 1 : at;
  const word = tokens[from]?.text;
  if (word === "others" && from > at) return { mention: { other: true, plural: true }, to: from + 1 };
  if (word !== "other") return null;
  const next = tokens[from + 1];
  if (next?.text === "ones") return { mention: { other: true, plural: true }, to: from + 2 };
  if (next?.text === "one") return { mention: { other: true, count: 1 }, to: from + 2 };
  if (PAIRS.has(next?.text ?? "")) return { mention: { other: true, count: 2 }, to: from + 2 };
  const count = countOf(next);
  const isFirst = at === 0 || tokens[at - 1]!.kind === "mark";
  const isCount = count !== null && count > 1 && count <= OTHERS_MAX && (from > at || isFirst);
  const behind = at === 0 ? verbAt(tokens, from + 2) : tokens[from + 2];
  // "sold one chair 35 and promised the other two to his sister"
  const isPromised = tokens[at - 1]?.text === "promised";
  const isCounted =
    behind === undefined
      ? isSpelled(next!) || isPriceless(tokens[at - 1])
      : behind.kind === "amount" ||
        behind.kind === "duration" ||
        behind.kind === "mark" ||
        isOfStanding(behind) ||
        behind.roles.labor === true ||
        GONE.has(behind.text) ||
        (BEFORE_PRICE.has(behind.text) && isPriced(tokens, from + 2)) ||
        behind.text === (isPromised || tokens[at - 1]?.text === "gave" ? "to" : null);
  if (isCount && isCounted) return { mention: { other: true, count }, to: from + 2 };
  const isAlone = from > at && ((isPromised && next?.text === "to") || isOtherAlone(tokens[at - 1], next));
  return isAlone ? { mention: { other: true, count: 1 }, to: from + 1 } : null;
}

/** "painted the other 1h", "sold the other 65", "the other is done": no day, and no money still owed. */
function isOtherAlone(before: Tok | undefined, next: Tok | undefined): boolean {
  const isTold = before !== undefined && isToldOf(before);
  if (isTold && next?.kind === "amount") return true;
  if (before === undefined) return false;
  const isEnd =
    next === undefined ||
    next.kind === "mark" ||
    next.kind === "duration" ||
    BEFORE_PRICE.has(next.text) ||
    AS_WELL.has(next.text);
  // "20 less on the other as well"
  if (isEnd && (before.text === "on" || before.text === "off")) return true;
  return isEnd && (isTold || before.roles.labor === true);
}

/** "finished the other 3", "2h sanding the other 3": no price comes with it. */
const isPriceless = (before: Tok | undefined): boolean =>
  before?.roles.labor === true ||
  isHeadOf(before, (kind) => kind === "finish" || kind === "start" || kind === "retire");

const isSpelled = (token: Tok): boolean => /^[a-z]/.test(token?.text ?? "");

/** The last that is left, or that came. */
const LAST = { last: true } as const;

/** "sold the last three 70", "marked the rest down to 25", "sold another 12": of those spoken of, what is left. */
function remaining(tokens: readonly Tok[], at: number): Found | null {
  const before = tokens[at - 1];
  const led = lastOnes(tokens, at);
  if (led) return led;
  if (!before || !isToldOf(before)) return null;
  const { text } = tokens[at]!;
  // "put another 75 on it"
  const isMoney = ONTO.has(tokens[at + 2]?.text ?? "");
  // "sold another two 45", "sold another two to a student, 45 for both"
  const more = anotherFew(tokens, at);
  if (more !== null && !isMoney && isSpelled(tokens[at + 1]!))
    return { mention: { other: true, count: more }, to: at + 2 };
  if (ANOTHER.has(text) && tokens[at + 1]?.kind === "amount" && !isMoney)
    return { mention: { other: true, count: 1 }, to: at + 1 };
  if (text !== "the") return null;
  const next = tokens[at + 1]?.text;
  if (next === "rest") return { mention: { other: true, plural: true }, to: at + 2 };
  if (next !== "last" && next !== "remaining") return null;
  const behind = tokens[at + 2];
  const last = next === "last" ? LAST : {};
  const count = countOf(behind);
  const isCount = count !== null && count > 1 && count <= OTHERS_MAX;
  const isAll = tokens[at + 3] === undefined || tokens[at + 3]!.kind === "amount";
  return isCount && isAll ? { mention: { other: true, count, ...last }, to: at + 3 } : null;
}

/** "another two": so many more; null where it is no such number. */
function anotherFew(tokens: readonly Tok[], at: number): number | null {
  const count = ANOTHER.has(tokens[at]!.text) ? countOf(tokens[at + 1]) : null;
  return count !== null && count > 1 && count <= OTHERS_MAX ? count : null;
}

/** "the last two went for 50", "the rest sold for 30", "a shade for the last one": told before the verb, or as what a thing is for. */
function lastOnes(tokens: readonly Tok[], at: number): Found | null {
  // "two more went for 10"
  const more = MORE.has(tokens[at + 1]?.text ?? "") ? countOf(tokens[at]) : null;
  const isMoreTold = tokens[at + 2] !== undefined && isOfStanding(tokens[at + 2]!);
  if (more !== null && more <= OTHERS_MAX && isMoreTold && at === 0)
    return { mention: { other: true, count: more }, to: at + 2 };
  const another = at === 0 && isMoreTold ? anotherFew(tokens, at) : null;
  if (another !== null) return { mention: { other: true, count: another }, to: at + 2 };
  const start = tokens[at]!.text === "the" ? at + 1 : at;
  if (start === at && at > 0) return null;
  const [word, next] = [tokens[start]?.text, tokens[start + 1]];
  const isFirst = tokens.slice(0, at).every(({ roles, kind }) => kind === "mark" || roles.filler === true);
  const opens = isFirst || tokens[at - 1]!.kind === "mark" || AND.has(tokens[at - 1]!.text);
  const isTold = (token: Tok | undefined) =>
    opens && token !== undefined && (isOfStanding(token) || BE.has(token.text) || GONE.has(token.text));
  if (word === "rest" && isTold(verbAt(tokens, start + 1)))
    return { mention: { other: true, plural: true }, to: start + 1 };
  if ((word !== "last" && word !== "remaining" && word !== "other") || !next) return null;
  const count = ONE.has(next.text) ? 1 : countOf(next);
  const behind = word !== "other" || at === 0 ? verbAt(tokens, start + 2) : tokens[start + 2];
  // "last ones are done", but "last one's done"
  if (next.text === "ones" && BE.has(behind?.text ?? "") && opens)
    return { mention: { other: true, plural: true }, to: start + 2 };
  const isFor = tokens[at - 1]?.text === "for" && (behind === undefined || behind.kind === "amount");
  if (count === null || count > OTHERS_MAX || !(isTold(behind) || isFor)) return null;
  return { mention: { other: true, count, ...(word === "last" ? LAST : {}) }, to: start + 2 };
}

/** "the rest of the stools", "rest of the chairs sold": those of the name that were not just spoken of. */
export function restOf(tokens: readonly Tok[], at: number): Found | null {
  const from = POINTS_OUT.has(tokens[at]!.text) ? at + 1 : at;
  if (tokens[from]?.text !== "rest" || tokens[from + 1]?.text !== "of") return null;
  const before = at === 0 ? undefined : tokens[at - 1]!;
  const isTold =
    before === undefined ||
    before.kind === "mark" ||
    AND.has(before.text) ||
    FOR_ALL.has(before.text) ||
    before.roles.labor === true ||
    isToldOf(before);
  // "got the rest of the chairs 40": theirs, or the rest of their money.
  if (!isTold) return null;
  const of = placeAfter(tokens, from + 2, ARTICLES);
  const { name, plural, traits } = tokens[of]?.mention ?? {};
  if (name === undefined || !plural) return null;
  return { mention: { name, plural, ...(traits ? { traits } : {}), besides: true }, to: of + 1 };
}
