import * as z from "zod";
import { goingPrice } from "../books/agreed.ts";
import { checkPieces } from "../books/check.ts";
import { amountOf, type FactOf, onlyPiece } from "../books/facts.ts";
import { labelOf } from "../books/label.ts";
import { postedTo } from "../books/posted.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { depositOf, owedByBuyers, sharesOfOwed } from "../books/shares.ts";
import { salesOwing } from "../decide/deals/owing.ts";
import {
  type Ask,
  type Choice,
  confirmation,
  type Decision,
  type Desk,
  NEVER_MIND,
} from "../decide/decision.ts";
import { dayWords, methodWords, namesOf, piecesOf } from "../decide/echo.ts";
import { inAll } from "../decide/pieces/choices.ts";
import type { Fit } from "../decide/pieces/match.ts";
import { byNumbers } from "../decide/pieces/mentioned.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import { type Cents, show } from "../money.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { phrases } from "../notes/words/words.ts";
import { sell } from "./sell.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    collect: {
      amount?: Cents;
      pieces?: Mention[];
      buyer?: string;
      method?: string;
      /** "the rest": all that is owed. */
      all?: true;
    };
  }
}

declare module "../books/facts.ts" {
  interface FactData {
    /** What a buyer owed comes in. */
    collect: { method?: string; buyer?: string };
  }
}

const rules: FactRules<"collect"> = {
  mends: ["amount", "date", "method", "buyer", "pieces"],
  data: z.strictObject({ method: wordsShape.optional(), buyer: wordsShape.optional() }),
  apply(books, fact) {
    const problem = checkPieces(books, fact.pieces);
    if (problem) return problem;
    const owed = owedByBuyers(fact.pieces.map((number) => books.pieces.get(number)!));
    if (owed === 0) return { kind: "nothing owed", number: fact.pieces[0]! };
    if (amountOf(fact) > owed) return { kind: "more than buyers owe", owed };
    const pieces = fact.pieces.map((number) => books.piece(number));
    const shares = sharesOfOwed(pieces, amountOf(fact));
    pieces.forEach((piece, index) => {
      piece.owed -= shares[index]!;
      books.post("buyers owe", -shares[index]!, { piece: piece.number });
    });
    books.post("cash", amountOf(fact), { piece: onlyPiece(fact) });
    return null;
  },
};

/** Pieces on which something is owed; a held one is about to be paid for, which is its sale. */
const payable: Fit = {
  allows: (piece) => piece.gone === "sold" || piece.hold !== null,
  prefers: (piece) => piece.owed > 0 || piece.hold !== null,
};

export const collect = defineVerb({
  kind: "collect",
  example: "got the other 50 for #2",
  page: "deals",
  listed: (_, pieces) => `the rest for ${pieces}`,
  story: (told) => `${show(-postedTo(told, "buyers owe"))} of what was owed came in`,
  said: ({ data }) => data.buyer ?? null,
  byItsDay: true,
  books: rules,
  reads: {
    says: [
      {
        say: phrases("collected settled_up squared_up paid_me_back paid_off paid_up"),
        with: ["number"],
        without: ["loan", "supply", "stream"],
      },
    ],
    slots: { amount: "money", pieces: "pieces", method: "method" },
    bears: ["everyday words", "has a buyer"],
    main: "amount",
    absorbs: phrases("for owed owes owed_me the_rest rest other paid paid_me got for_the balance left"),
  },

  offered: ({ amount }, names) => `Got ${amount === undefined ? "the rest" : show(amount)} for ${names}`,

  decide(reading, desk) {
    if (reading.pieces?.length) return collectNamed(reading, desk);
    const sales = salesOwing(desk.books, reading);
    const [only, ...others] = sales;
    if (!only) return { kind: "refuse", why: 'Nobody owes you that. "held" shows who owes what.' };
    if (others.length > 0) return { kind: "ask", ask: whichSale(sales, desk) };
    return collectOn(reading, only.pieces, desk);
  },
  echo({ fact, books, today }) {
    const from = fact.data.buyer ? ` from ${fact.data.buyer}` : "";
    const amount = `${show(fact.amount ?? 0)}${methodWords(fact.data.method)}`;
    const left = owedByBuyers(piecesOf(books, fact));
    const rest = left > 0 ? `Still owed on it: ${show(left)}` : "Paid in full";
    return [`Got ${amount}${from} for ${namesOf(books, fact)}${dayWords(fact, today)}`, rest];
  },
});

function collectNamed(reading: ReadingOf<"collect">, desk: Desk): Decision {
  const need = {
    fit: payable,
    question: "was it paid for",
    unknown: "refuse",
    lacks: "and nothing is owed on it",
  } as const;
  const settled = settlePieces(reading, desk, need);
  if (settled.kind !== "settled") return settled;
  const pieces = piecesOf(desk.books, settled);
  if (owedByBuyers(pieces) === 0) {
    if (pieces.every((piece) => piece.hold !== null)) return sellHeld(reading, settled.pieces, desk);
    return { kind: "refuse", why: `Nothing is owed on ${labelOf(desk.books, settled.pieces)}.` };
  }
  return collectOn(inAll(reading, settled.pieces), settled.pieces, desk);
}

/** The amount said, or all that is owed where "the rest" was; more than that is asked about. */
function collectOn(reading: ReadingOf<"collect">, pieces: readonly number[], desk: Desk): Decision {
  const owed = owedByBuyers(piecesOf(desk.books, { pieces: [...pieces] }));
  const names = labelOf(desk.books, pieces);
  if (reading.amount === undefined && !reading.all && !desk.confirmed.includes("all of it")) {
    const ask = confirmation(`${show(owed)} is owed on ${names}. Did all of it come in?`, {
      label: `Yes, ${show(owed)}`,
      confirm: "all of it",
    });
    return { kind: "ask", ask: { ...ask, wants: "amount" } };
  }
  const amount = reading.amount ?? owed;
  if (amount > owed) return { kind: "ask", ask: moreThanOwed(owed, names) };
  const { method, buyer } = reading;
  const data = { ...(method ? { method } : {}), ...(buyer ? { buyer } : {}) };
  const day = reading.date ?? desk.today;
  return { kind: "record", facts: [{ kind: "collect", day, pieces: [...pieces], amount, data }] };
}

function moreThanOwed(owed: Cents, names: string): Ask {
  const all: Choice = {
    label: `It was ${show(owed)}`,
    words: ["yes"],
    effect: { kind: "settle", change: { amount: owed } },
  };
  const prompt = `Only ${show(owed)} is owed on ${names}. How much came in?`;
  return { prompt, wants: "amount", choices: [all, { ...NEVER_MIND, words: ["no"] }] };
}

function whichSale(sales: readonly FactOf<"sell">[], { books, today }: Desk): Ask {
  const choices = sales.map((sale): Choice => {
    const owed = owedByBuyers(piecesOf(books, sale));
    const buyer = sale.data.buyer ? ` by ${sale.data.buyer}` : "";
    const mentions = byNumbers(sale.pieces);
    return {
      label: `${labelOf(books, sale.pieces)}: ${show(owed)} owed${buyer}${dayWords(sale, today)}`,
      effect: { kind: "settle", change: { pieces: mentions } },
    };
  });
  return { prompt: "Which one was paid?", wants: "pieces", choices: [...choices, NEVER_MIND] };
}

/** "Paid the rest, 120" for a held piece is its sale, at deposit and rest together where that is the price agreed on, or listed. */
function sellHeld(reading: ReadingOf<"collect">, numbers: readonly number[], desk: Desk): Decision {
  const { amount, buyer, method, date, text, line } = reading;
  const pieces = piecesOf(desk.books, { pieces: [...numbers] });
  const mentions = byNumbers(numbers);
  const deposit = depositOf(pieces);
  const going = goingPrice(desk.books, pieces);
  const whole = amount === undefined ? going : amount + deposit;
  const saleAt = (price: Cents): ReadingOf<"sell"> => ({
    kind: "sell",
    pieces: mentions,
    price,
    text,
    line,
    ...(buyer ? { buyer } : {}),
    ...(method ? { method } : {}),
    ...(date ? { date } : {}),
  });
  const confirmed = [...desk.confirmed, "whole price"];
  if (whole !== null && (amount === undefined || whole === going))
    return sell.decide!(saleAt(whole), { ...desk, confirmed });
  const names = labelOf(desk.books, numbers);
  if (amount === undefined)
    return { kind: "refuse", why: `What did ${names} sell for, in all? Like: sold #${numbers[0]} 120` };
  const choice = (price: Cents, label: string): Choice => ({
    label,
    effect: { kind: "instead", readings: [saleAt(price)], confirm: "whole price" },
  });
  const prompt = `${names} is on hold, ${show(deposit)} deposit. Sold for how much in all?`;
  const choices = [
    choice(deposit + amount, `${show(deposit + amount)}, ${show(amount)} of it today`),
    choice(amount, `${show(amount)} in all`),
  ];
  return { kind: "ask", ask: { prompt, wants: "choice", choices: [...choices, NEVER_MIND] } };
}
