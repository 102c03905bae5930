import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import type { Tok } from "./clause.ts";
import { side, type To, takeTo } from "./mended.ts";
import { wholeOf } from "./quantities/amounts.ts";
import type { Back, Reading } from "./reading.ts";
import { type GoingOn, goingOn } from "./rows/going-on.ts";
import { pieceToken } from "./token.ts";

/** What is needed to read a line of which one token is another. */
interface Line {
  text: string;
  line: number;
  today: Day;
  read(tokens: Tok[]): Reading[];
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
        : made(effect, [...tokens.slice(0, from), ...tokens.slice(to)], line);
    if (back) return back;
  }
  return null;
}

function made(effect: Exclude<GoingOn, "numbered">, rest: readonly Tok[], line: Line): Back | null {
  const to = valuesOf(rest, line.today);
  const spoken = SPOKEN[effect];
  if (!to || !spoken) return to && { again: { how: effect as "again", to } };
  const { text, line: place } = line;
  const could = to.amount === undefined ? [] : spoken(to.amount);
  return {
    isEither: effect === "took",
    could: could.map(
      (fields) => ({ ...fields, missing: ["pieces"], follows: true, text, line: place }) as Reading,
    ),
  };
}

/** What is said beside the words that go on; null where anything else is. */
function valuesOf(tokens: readonly Tok[], today: Day): To | null {
  const said = side();
  return tokens.some(({ each }) => each) || !takeTo(tokens, said, today) ? null : said.to;
}

/** "1 done": the number is a piece's. */
function ofNumber(tokens: readonly Tok[], at: number, { read }: Line): Back | null {
  const { text, from, to, amount } = tokens[at]!;
  const piece = pieceToken(text, from, to, { number: wholeOf(amount!.exact)!, count: 1 });
  const readings = read(tokens.map((token, place) => (place === at ? piece : token)));
  return readings.length === 1 ? { could: readings, isEither: false } : null;
}
