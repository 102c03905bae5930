import type { Day } from "../../calendar.ts";
import type { Cents } from "../../money.ts";
import type { Tok } from "../clause.ts";
import { side, takeTo } from "../mends/mended.ts";
import { wholeOf } from "../quantities/amounts.ts";
import type { Again, Back, Kind, Reading } from "../reading.ts";
import { type GoingOn, goingOn } from "../rows/going-on.ts";
import { pieceToken, wordToken } from "../tokens/token.ts";
import { isWholeNote } from "../unclear.ts";
import { BESIDE_GOING_ON, PLUS } from "../words/links.ts";
import { LIST_WORDS, THROUGH } from "../words/pieces.ts";
import { sameAsBefore } from "./same.ts";

/** "full price, cash": the piece spoken of, sold at what it was listed at. */
const soldAsListed = ({ words }: Told, { text, line: at }: Pick<Line, "text" | "line">): Back | null => {
  const method = words.find(({ roles }) => roles.method !== undefined)?.roles.method;
  const paid = method === undefined ? {} : { method };
  const sale = {
    kind: "sell",
    atAsking: true,
    ...paid,
    missing: ["pieces", "price"],
    follows: true,
    text,
    line: at,
  };
  return { could: [sale as Reading], isEither: false };
};

/** More numbers are no range of pieces. */
const RANGE_MAX = 12;

/** What is needed to read a line of which one token is another. */
interface Line {
  text: string;
  line: number;
  today: Day;
  read(tokens: Tok[]): Reading[];
}

/** The words that go on, and those beside them: values and pieces, or it goes on from nothing. */
interface Told {
  words: readonly Tok[];
  beside: readonly Tok[];
}

/** The price said of the piece spoken of, and what it may be; the books know which. */
const SPOKEN: Partial<Record<GoingOn, (price: Cents) => object[]>> = {
  listed: (price) => [
    { kind: "list", price },
    { kind: "reprice", price },
  ],
  lowered: (price) => [{ kind: "reprice", price }],
  cut: (price) => [{ kind: "reprice", cut: price }],
  sold: (price) => [{ kind: "sell", price }],
  took: (price) => [
    { kind: "sell", price },
    { kind: "reprice", cut: price },
  ],
};

/**
 * How a line that says little by itself goes on from what was said before it: "same again", "now 200", "30 min on 2".
 * Null where a word of it says anything else.
 */
export function backOf(tokens: readonly Tok[], line: Line): Back | null {
  const again = sameAsBefore(tokens, line.today);
  if (again) return { again };
  for (const { effect, from, to } of goingOn.fired(tokens)) {
    const back =
      effect === "numbered"
        ? ofNumber(tokens, from, line)
        : made(effect, { words: tokens.slice(from, to), beside: tokens.toSpliced(from, to - from) }, line);
    if (back) return back;
  }
  return null;
}

/** "3 and 4 are finished", "2h on #1, 2 and 3": several numbers of pieces, where no other list of numbers stands. */
export function ofNumbers(tokens: readonly Tok[], { read }: Line): Back | null {
  const first = tokens.findIndex((_, at) => listEnd(tokens, at) > at + 1);
  if (first < 0) return null;
  const end = listEnd(tokens, first);
  const before = tokens[first - 1];
  // "chairs 1 through 4": those, by their name.
  const name = before?.mention?.plural ? before.mention.name : undefined;
  const from = name !== undefined || LIST_WORDS.has(before?.text ?? "") ? first - 1 : first;
  const named = name === undefined ? {} : { name };
  const list = ranged(tokens.slice(first, end)).flatMap((token, at, all) => {
    const number = numberOf(token);
    if (number !== null)
      return [pieceToken(token.text, token.from, token.to, { ...named, number, count: 1 })];
    return numberOf(all[at - 1]) === null
      ? []
      : [wordToken("word", "and", token.from, token.to, token.roles)];
  });
  const readings = read([...tokens.slice(0, from), ...list, ...tokens.slice(end)]);
  const [only, ...others] = readings;
  const isWhole = only && others.length === 0 && isWholeNote(only);
  return isWhole ? { could: readings, isEither: false } : null;
}

/** "1 through 3": all of them. */
function ranged(list: readonly Tok[]): readonly Tok[] {
  const [first, last] = [numberOf(list[0]), numberOf(list[2])];
  if (list.length !== 3 || !THROUGH.has(list[1]!.text) || first === null || last === null) return list;
  const { from, to } = list[1]!;
  const between = Array.from({ length: Math.max(0, Math.min(last - first - 1, RANGE_MAX)) }, (_, at) =>
    pieceToken(`${first + at + 1}`, from, to, { number: first + at + 1, count: 1 }),
  );
  const and = wordToken("word", "and", from, to, list[1]!.roles);
  return [list[0]!, ...between.flatMap((piece) => [and, piece]), and, list[2]!];
}

/** The number of a piece, with its sign or without. */
function numberOf(token: Tok | undefined): number | null {
  if (token?.kind === "piece")
    return token.mention!.name === undefined ? (token.mention!.number ?? null) : null;
  if (token?.kind !== "amount" || token.each || token.amount!.money || token.amount!.flaw) return null;
  return wholeOf(token.amount!.exact);
}

/** One behind the last number of a list that begins at `at`. */
function listEnd(tokens: readonly Tok[], at: number): number {
  if (numberOf(tokens[at]) === null) return at;
  let end = at + 1;
  for (;;) {
    let next = end;
    while (PLUS.has(tokens[next]?.text ?? "") || (next === at + 1 && THROUGH.has(tokens[next]?.text ?? "")))
      next += 1;
    if (next === end || numberOf(tokens[next]) === null) return end;
    end = next + 1;
  }
}

/** One more of a kind. */
const MORE_OF: Partial<Record<GoingOn, readonly Kind[]>> = {
  "paid more": ["pay"],
  "sold more": ["sell"],
};

/** "it sold for 60": one, of a pair spoken of. */
const SAYS_IT = /^\W*(?:it|its|it's|it’s)\b/i;

function made(effect: Exclude<GoingOn, "numbered">, told: Told, { text, line, today }: Line): Back | null {
  if (effect === "at asking") return told.beside.length > 0 ? null : soldAsListed(told, { text, line });
  const said = side();
  const of = MORE_OF[effect];
  const inside =
    effect === "paid more" || effect === "cut" ? told.words.filter(({ kind }) => kind === "amount") : [];
  const beside = told.beside.filter(({ text: word }) => !BESIDE_GOING_ON.has(word));
  if (!takeTo([...inside, ...beside], said, today)) return null;
  const { to } = said;
  const { count } = countIn(told.words);
  // "last two 70 cash"
  const left = effect === "sold more" && count ? { pieces: [{ other: true as const, count }] } : {};
  if (of) return { again: { how: "more", kinds: of, to: { ...to, ...left } } };
  const spoken = SPOKEN[effect];
  const each = told.beside.some((token) => token.each) ? { each: true as const } : {};
  const what = told.words.find(({ roles }) => roles.supply !== undefined)?.text;
  const about = effect === "again" && what !== undefined ? { kinds: ["spend"] as const, what } : {};
  if (!spoken)
    return { again: { how: effect as Again["how"], to, ...about, ...countIn(told.words), ...each } };
  const could = to.amount === undefined ? [] : spoken(to.amount);
  const paid = effect === "sold" && to.method ? { method: to.method } : {};
  const one = SAYS_IT.test(text) ? { one: true as const } : {};
  return {
    isEither: effect === "took",
    could: could.map(
      (fields) =>
        ({ ...fields, ...paid, ...one, ...each, missing: ["pieces"], follows: true, text, line }) as Reading,
    ),
  };
}

function countIn(words: readonly Tok[]): { count?: number } {
  const amount = words.find(({ kind }) => kind === "amount")?.amount;
  const count = amount && wholeOf(amount.exact);
  return count ? { count } : {};
}

/** "1 done": the number is a piece's. */
function ofNumber(tokens: readonly Tok[], at: number, { read }: Line): Back | null {
  const { text, from, to, amount } = tokens[at]!;
  const piece = pieceToken(text, from, to, { number: wholeOf(amount!.exact)!, count: 1 });
  const readings = read(tokens.map((token, place) => (place === at ? piece : token)));
  return readings.length === 1 ? { could: readings, isEither: false } : null;
}
