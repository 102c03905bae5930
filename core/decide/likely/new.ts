import type { Books } from "../../books/books.ts";
import { owedByBuyers } from "../../books/shares.ts";
import type { Cents } from "../../money.ts";
import type { Gathered } from "../../notes/second-look/gathered.ts";
import { A_PERIOD, CAME_TO_US, OF_THEM } from "../../notes/words/telling.ts";
import { saysAny } from "../../notes/words/words.ts";
import { owingPieces, salesOwing } from "../deals/owing.ts";
import type { Looking } from "../decision.ts";
import { byNumbers } from "../pieces/mentioned.ts";
import { type Likely, likely } from "./of-pieces.ts";

/* What may be told of things that are not on the books yet, and of no piece at all. */

export function likelyNew(found: Gathered, numbers: readonly number[], { books }: Looking): Likely[] {
  const { tells, text, line, date, method, mentions, amounts, miles, supply, labor, by, source } = found;
  const goal = goalOf(found);
  if (goal) return [goal];
  if (tells.has("planned") || tells.has("doubted")) return [];
  const at = { text, line, ...(date === undefined ? {} : { date }), ...(by === undefined ? {} : { by }) };
  const paid = method === undefined ? {} : { method };
  const of = numbers.length > 0 ? { pieces: byNumbers(numbers) } : {};
  const isNone = numbers.length === 0;
  const all: Likely[] = [];
  const isHere = numbers.some((number) => books.pieces.get(number)!.gone === null);
  const isNamed = mentions.length > 0 && mentions.every(({ number }) => number === undefined);
  const price = amounts[0] ?? (tells.has("free") ? 0 : undefined);
  // "my friend picked up a bookcase 25": theirs, unless it came from them.
  const isTheirs = found.isOthers && source === undefined && !saysAny(text, CAME_TO_US);
  const from = source === undefined ? {} : { source };
  if (isNamed && price !== undefined && !tells.has("denied") && tells.has("got") && !isTheirs)
    all.push(
      likely(isNone ? 5 : isHere ? 1 : 3, { kind: "buy", pieces: mentions, price, ...from, ...at, ...paid }),
    );
  const [gave, got, ...more] = mentions;
  if (tells.has("traded") && isHere && gave && got && more.length === 0 && amounts.length === 0)
    all.push(likely(5, { kind: "trade", gave: of.pieces, got: [got], ...at }));
  const [amount] = amounts;
  if (mentions.length === 0 && amount !== undefined && !tells.has("denied"))
    all.push(...owedOf(amount, found, books));
  if (miles.length > 0 && Number(miles.at(-1)) <= MILES_MAX)
    all.push(likely(4, { kind: "drive", miles: miles.at(-1), ...at, ...(mentions.length > 0 ? of : {}) }));
  if (isNone && mentions.length === 0 && amount !== undefined && !tells.has("denied")) {
    // "helped the neighbor paint his fence, he gave 40"
    const isHelp = tells.has("helps") && found.isOthers && tells.has("paid");
    if (isHelp) all.push(likely(5, { kind: "income", amount, stream: "help", ...at, ...paid }));
    else if (supply) all.push(likely(4, { kind: "spend", ...supply, amount, ...at, ...paid }));
    if (labor !== undefined && tells.has("paid") && saysAny(text.replace(/['’]/g, ""), OF_THEM))
      all.push(likely(4, { kind: "income", amount, stream: "help", ...at, ...paid }));
  }
  return all;
}

/** "lets shoot for five hundred a month" */
function goalOf({ text, line, tells, amounts, mentions }: Gathered): Likely | null {
  const [amount, ...others] = amounts;
  const per = A_PERIOD.exec(text)?.[1]?.toLowerCase();
  if (amount === undefined || others.length + mentions.length > 0 || !per || !tells.has("aims")) return null;
  return likely(6, { kind: "goal", amount, per, text, line });
}

/** Nobody drives further for furniture. */
const MILES_MAX = 1000;

/** Just what is still owed on a sale. */
function owedOf(amount: Cents, { text, line, method }: Gathered, books: Books): Likely[] {
  const paid = method === undefined ? {} : { method };
  return salesOwing(books, { amount })
    .map((sale) => owingPieces(books, sale))
    .filter((pieces) => owedByBuyers(pieces) === amount)
    .map((pieces) =>
      likely(5, {
        kind: "collect",
        amount,
        pieces: byNumbers(pieces.map(({ number }) => number)),
        ...paid,
        text,
        line,
      }),
    );
}
