import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import type { Tok } from "./clause.ts";
import { side, takeTo } from "./mended.ts";
import { wholeOf } from "./quantities/amounts.ts";
import type { Again, Back, Reading } from "./reading.ts";
import { type GoingOn, goingOn } from "./rows/going-on.ts";
import { pieceToken } from "./token.ts";

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
  for (const { effect, from, to } of goingOn.fired(tokens)) {
    const back =
      effect === "numbered"
        ? ofNumber(tokens, from, line)
        : made(effect, { words: tokens.slice(from, to), beside: tokens.toSpliced(from, to - from) }, line);
    if (back) return back;
  }
  return null;
}

function made(effect: Exclude<GoingOn, "numbered">, told: Told, { text, line, today }: Line): Back | null {
  const said = side();
  if (!takeTo(told.beside, said, today)) return null;
  const { to } = said;
  const spoken = SPOKEN[effect];
  const each = told.beside.some((token) => token.each) ? { each: true as const } : {};
  if (!spoken) return { again: { how: effect as Again["how"], to, ...countIn(told.words), ...each } };
  const could = to.amount === undefined || each.each ? [] : spoken(to.amount);
  return {
    isEither: effect === "took",
    could: could.map((fields) => ({ ...fields, missing: ["pieces"], follows: true, text, line }) as Reading),
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
