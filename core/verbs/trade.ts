import * as z from "zod";
import type { Books, Piece } from "../books/books.ts";
import { checkNoDeposit, checkNotGone } from "../books/check.ts";
import { amountOf, type FactOf } from "../books/facts.ts";
import { labelOf } from "../books/label.ts";
import { type Made, madeShape, takeIn } from "../books/made.ts";
import { costOf } from "../books/piece.ts";
import { postedTo } from "../books/posted.ts";
import { type Problem, problemText } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { centsShape } from "../books/shapes.ts";
import { sharesOfSale } from "../books/shares.ts";
import { sellOne } from "../books/sold.ts";
import { type Ask, type Choice, type Decision, type Desk, NEVER_MIND } from "../decide/decision.ts";
import { dayWords, piecesOf, profitLines } from "../decide/echo.ts";
import { here } from "../decide/pieces/fits.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import { type Cents, show } from "../money.ts";
import { pluralOf } from "../notes/mentions/plural.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { phrases } from "../notes/words/words.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    trade: {
      gave?: Mention[];
      got?: Mention[];
      /** Cash on top, paid by us or to us. */
      paid?: Cents;
      received?: Cents;
      /** What the given pieces are worth. */
      worth?: Cents;
      /** The given pieces, where an answer has said which they are. */
      pieces?: Mention[];
    };
  }
}

declare module "../books/facts.ts" {
  interface FactData {
    /** `pieces` of the fact: those given, then those got, which `made` describes. The amount is their worth. */
    trade: { made: { name: string; traits: string[] }[]; paid?: Cents; received?: Cents };
  }
}

/** The pieces that a trade gives, and those it brings, by number. */
export function sidesOf({ pieces, data }: Pick<FactOf<"trade">, "pieces" | "data">) {
  const given = pieces.length - data.made.length;
  return { gave: pieces.slice(0, given), got: pieces.slice(given) };
}

/** What the pieces got cost: the worth of those given, more by what was paid and less by what came back. */
function costOfGot({ amount = 0, data }: Pick<FactOf<"trade">, "amount" | "data">): Cents {
  return amount + (data.paid ?? 0) - (data.received ?? 0);
}

function checkTrade(books: Books, fact: FactOf<"trade">): Problem | null {
  const { gave } = sidesOf(fact);
  const cost = costOfGot(fact);
  const problem = checkNotGone(books, gave) ?? checkNoDeposit(books, gave);
  return problem ?? (cost < 0 ? { kind: "trade below zero", cost } : null);
}

const rules: FactRules<"trade"> = {
  mends: ["amount", "date", "paid", "received", "name", "traits", "pieces"],
  data: z
    .strictObject({ made: madeShape, paid: centsShape.optional(), received: centsShape.optional() })
    .refine(({ paid, received }) => !(paid && received), "cash goes one way"),
  apply(books, fact) {
    const problem = checkTrade(books, fact);
    if (problem) return problem;
    const { day, data } = fact;
    const { gave, got } = sidesOf(fact);
    const given = gave.map((number) => books.piece(number));
    const worth = sharesOfSale(given, amountOf(fact));
    given.forEach((piece, index) => {
      sellOne(books, piece, { price: worth[index]!, day });
    });
    takeIn(books, { numbers: got, made: data.made, day, cost: costOfGot(fact) });
    books.post("cash", (data.received ?? 0) - (data.paid ?? 0));
    return null;
  },
};

export const trade = defineVerb({
  kind: "trade",
  example: "traded #1 plus 20 for a dresser",
  page: "deals",
  listed: (fact, _, books) => {
    const { gave, got } = sidesOf(fact);
    return `traded ${labelOf(books, gave)} for ${labelOf(books, got)}`;
  },
  story: (told) =>
    postedTo(told, "sales") === 0
      ? `got in a trade, ${show(postedTo(told, "unsold pieces"))}`
      : `traded away at ${show(-postedTo(told, "sales"))}`,
  said: ({ data }) => `for ${data.made.map(({ name }) => name).join(", ")}`,
  books: rules,
  reads: {
    says: [
      {
        say: phrases(
          "traded trade trading swapped swapping bartered exchanged traded_in did_a_trade did_a_swap",
        ),
        with: ["named"],
        without: ["loan"],
      },
    ],
    slots: {},
    bears: ["has a buyer", "not a part"],
    main: "worth",
    absorbs: phrases("got paid gave gave_me threw_in received"),
    // The rows of deals tell a trade; what they leave has no two sides.
    judge: () => ({ kind: "twoNouns" }),
  },

  offered({ gave = [], got = [], paid, received, worth }, names) {
    const given = names || gave.map(({ name }) => name ?? "it").join(" and ");
    const cash = paid ? `, ${show(paid)} paid` : received ? `, ${show(received)} back` : "";
    const made = got.map(({ name }) => name ?? "it").join(" and ");
    return `Traded ${given} for ${made}${worth === undefined ? "" : `, worth ${show(worth)}`}${cash}`;
  },

  decide(reading, desk) {
    const given = { ...reading, pieces: reading.pieces ?? reading.gave ?? [] };
    const settled = settlePieces(given, desk, { fit: here, question: "did you trade", unknown: "add" });
    if (settled.kind !== "settled") return settled;
    const made = madeOf(reading);
    if ("why" in made) return { kind: "refuse", why: made.why };
    const pieces = piecesOf(desk.books, settled);
    if (reading.worth === undefined) return { kind: "ask", ask: askWorth(pieces, desk) };
    return recordTrade(reading, settled.pieces, made.made, desk);
  },
  echo({ fact, books, today }) {
    const { gave, got } = sidesOf(fact);
    const { paid, received } = fact.data;
    const cash = paid ? `, ${show(paid)} paid on top` : received ? `, ${show(received)} came back` : "";
    const worth = show(fact.amount ?? 0);
    return [
      `Traded ${labelOf(books, gave)} for ${labelOf(books, got)}${cash}${dayWords(fact, today)}`,
      `Counts as sold for ${worth}; ${got.length === 1 ? "the new piece" : "what you got"} cost ${show(costOfGot(fact))}`,
      ...profitLines(books, { pieces: gave }),
    ];
  },
});

function recordTrade(
  reading: ReadingOf<"trade">,
  gave: readonly number[],
  made: Made,
  { books, today, nextPiece }: Desk,
): Decision {
  const { paid, received, worth } = reading;
  const data = { made, ...(paid ? { paid } : {}), ...(received ? { received } : {}) };
  const got = made.map((_, index) => nextPiece + index);
  const pieces = [...gave, ...got];
  const fact = { kind: "trade" as const, day: reading.date ?? today, pieces, amount: worth!, data };
  const cost = costOfGot(fact);
  if (cost < 0) return { kind: "refuse", why: problemText({ kind: "trade below zero", cost }, books) };
  return { kind: "record", facts: [fact] };
}

/** The new pieces in words, one for each; or why they cannot be told. */
function madeOf({ got = [], paid, received }: ReadingOf<"trade">): { made: Made } | { why: string } {
  if (got.length === 0) return { why: 'What did you get for it? Like: "traded #1 for a dresser"' };
  if (paid && received) return { why: "Cash goes one way in a trade: paid on top, or paid to you?" };
  const vague = got.find((mention) => mention.name === undefined || mention.plural);
  if (vague?.name !== undefined)
    return { why: `How many ${pluralOf(vague.name)} did you get? Send it with the number.` };
  if (vague) return { why: "What you got needs a name, its number I give." };
  const made = got.flatMap(({ name, traits = [], count = 1 }) =>
    Array.from({ length: count }, () => ({ name: name!, traits })),
  );
  return { made };
}

/** What the given pieces are worth stands in for the market value of what was got, which is how barter is taxed. */
function askWorth(pieces: readonly Readonly<Piece>[], { books }: Desk): Ask {
  const sum = (of: (piece: Readonly<Piece>) => Cents) =>
    pieces.reduce((total, piece) => total + of(piece), 0);
  const isListed = pieces.every((piece) => piece.listPrice !== null);
  const worth = (label: string, cents: Cents): Choice => ({
    label: `${label} ${show(cents)}`,
    effect: { kind: "settle", change: { worth: cents, missing: [] } },
  });
  const choices = [
    ...(isListed
      ? [
          worth(
            "List price",
            sum((piece) => piece.listPrice!),
          ),
        ]
      : []),
    worth("What it cost", sum(costOf)),
  ];
  const names = labelOf(
    books,
    pieces.map(({ number }) => number),
  );
  const prompt = `What is ${names} worth? A trade counts as a sale at that.`;
  return { prompt, wants: "worth", choices: [...choices, NEVER_MIND] };
}
