import * as z from "zod";
import type { Books, Piece } from "../books/books.ts";
import { checkPieces } from "../books/check.ts";
import { moveCost } from "../books/cost.ts";
import { amountOf, type FactOf, type NewFact, onlyPiece } from "../books/facts.ts";
import type { BooksInHand } from "../books/hand.ts";
import { labelOf } from "../books/label.ts";
import { proceedsOf, statusOf } from "../books/piece.ts";
import { postedBy, postedTo } from "../books/posted.ts";
import type { Problem } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { owedByBuyers, sharesOfOwed } from "../books/shares.ts";
import { type Day, monthOf } from "../calendar.ts";
import { type Ask, type Choice, type Desk, NEVER_MIND } from "../decide/decision.ts";
import { dayWords, namesOf, piecesOf, profitLines } from "../decide/echo.ts";
import { inAll } from "../decide/pieces/choices.ts";
import { paidFor } from "../decide/pieces/fits.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { judgeRefund } from "../notes/judging/refunding.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { phrases } from "../notes/words/words.ts";
import { splitEvenly } from "../split.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    refund: {
      pieces?: Mention[];
      amount?: Cents;
      returned?: true;
      /** What was owed never comes: no cash goes out. */
      unpaid?: true;
      /** "a full refund": all that it brought in. */
      inFull?: true;
    };
  }
}

/**
 * A piece that brought nothing in, or is to come back unsold, was not sold; none gives back more cash than came in
 * for it, which what its buyer still owes did not.
 */
function checkRefund(books: Books, fact: FactOf<"refund">, shares: readonly Cents[]): Problem | null {
  for (const [index, number] of fact.pieces.entries()) {
    const piece = books.pieces.get(number)!;
    const broughtIn = proceedsOf(piece) - piece.owed;
    if (piece.gone !== "sold" && (fact.data.returned || proceedsOf(piece) === 0))
      return { kind: "piece not sold", number };
    if (shares[index]! > broughtIn) return { kind: "more than brought in", number, broughtIn };
  }
  return null;
}

/** What was owed and never comes: no more than that. */
function checkUnpaid(books: Books, fact: FactOf<"refund">): Problem | null {
  const owed = owedByBuyers(fact.pieces.map((number) => books.pieces.get(number)!));
  if (owed === 0) return { kind: "nothing owed", number: fact.pieces[0]! };
  return (fact.amount ?? 0) > owed ? { kind: "more than buyers owe", owed } : null;
}

/** The amount that is owed on a sold piece is off, that day. */
function writeOff(books: BooksInHand, number: number, amount: Cents): void {
  const piece = books.piece(number);
  piece.refunds += amount;
  piece.owed -= amount;
  books.post("refunds", amount, { piece: number });
  books.post("buyers owe", -amount, { piece: number });
}

function applyUnpaid(books: BooksInHand, fact: FactOf<"refund">): Problem | null {
  const problem = checkPieces(books, fact.pieces) ?? checkUnpaid(books, fact);
  if (problem) return problem;
  const pieces = fact.pieces.map((number) => books.piece(number));
  const shares = sharesOfOwed(pieces, fact.amount === undefined ? owedByBuyers(pieces) : amountOf(fact));
  fact.pieces.forEach((number, index) => {
    writeOff(books, number, shares[index]!);
  });
  return null;
}

/** A piece that came back is on hand again: finished (that day, where nobody had said so), neither sold nor listed. */
function comeBack(piece: Piece, day: Day): void {
  piece.finished ??= day;
  piece.sold = null;
  piece.gone = null;
  piece.goneOn = null;
  piece.listed = null;
  piece.listPrice = null;
}

const rules: FactRules<"refund"> = {
  mends: ["amount", "date", "pieces"],
  data: z
    .strictObject({ returned: z.literal(true).optional(), unpaid: z.literal(true).optional() })
    .refine(({ returned, unpaid }) => !(returned && unpaid), "a piece that came back has nothing owed on it"),
  apply(books, fact) {
    if (fact.data.unpaid) return applyUnpaid(books, fact);
    const shares = splitEvenly(amountOf(fact), fact.pieces.length);
    const problem = checkPieces(books, fact.pieces) ?? checkRefund(books, fact, shares);
    if (problem) return problem;
    fact.pieces.forEach((number, index) => {
      const piece = books.piece(number);
      piece.refunds += shares[index]!;
      books.post("refunds", shares[index]!, { piece: number });
      if (!fact.data.returned) return;
      // What is still owed on a piece that came back is cancelled; the fee stays.
      writeOff(books, number, piece.owed);
      moveCost(books, piece, "cost of pieces sold", "unsold pieces");
      comeBack(piece, fact.day);
    });
    books.post("cash", -amountOf(fact), { piece: onlyPiece(fact) });
    if (fact.data.returned) books.month(monthOf(fact.day)).flipped -= fact.pieces.length;
    return null;
  },
};

export const refund = defineVerb({
  kind: "refund",
  example: "refunded 25 on the desk",
  page: "notes",
  listed: (_, pieces) => `refunded ${pieces}`,
  story: (told) => {
    const amount = show(postedTo(told, "refunds"));
    const { unpaid, returned } = told.fact.data;
    return unpaid ? `${amount} never came` : `${returned ? "came back, " : ""}refunded ${amount}`;
  },
  said: ({ data }) => (data.unpaid ? "never paid" : null),
  books: rules,
  reads: {
    says: [
      {
        say: [
          ...phrases("refunded refund refunding partial_refund give_…_back gave_…_back"),
          ...phrases("a an the her his their my it").map((whose) => `gave … back … for ${whose}`),
          ...phrases(
            "gave_back given_back given_…_back went_back_to were_given_back handed_…_back had_to_give_…_back had_to_hand_…_back handed_back mailed_…_back mailed_back posted_…_back wired_…_back money_back sent_…_back paid_back paid_…_back",
          ),
        ],
        without: ["loan"],
      },
      {
        say: phrases(
          "came_back brought_…_back brought_back returned took_…_back took_back return_on return_: was_returned got_returned",
        ),
        means: { returned: true },
        with: ["named"],
      },
      { say: phrases("returned_…_to_her returned_…_to_him returned_…_to_them"), with: ["number"] },
      {
        say: ["came back", "brought back", "brought … back", "returned"],
        means: { returned: true },
        with: ["pronoun"],
      },
    ],
    slots: { pieces: "pieces", amount: "money" },
    bears: ["everyday words", "others act", "has a buyer", "of pieces", "behind a sale"],
    main: "amount",
    needs: ["pieces", "amount"],
    absorbs: phrases(
      "refunded refund gave_back gave back returned came_back took_back paid_back partial money_back knocked brought_back brought wanted money her_money his_money their_money whole_thing half return",
    ),
    judge: judgeRefund,
  },

  offered: ({ amount, returned, unpaid }, names) =>
    unpaid && amount !== undefined
      ? `${show(amount)} never came for ${names}`
      : `Gave back ${amount === undefined ? "" : `${show(amount)} `}on ${names}${returned ? ", it came back" : ""}`,

  decide(said, desk) {
    const need = { fit: paidFor, question: "was it", unknown: "refuse", lacks: "not sold" } as const;
    const settled = settlePieces(said, desk, need);
    if (settled.kind !== "settled") return settled;
    const reading = inAll(said, settled.pieces);
    const pieces = piecesOf(desk.books, settled);
    const ask = askBeforeRefund(reading, pieces, desk);
    if (ask) return { kind: "ask", ask };
    return { kind: "record", facts: [factOfRefund(reading, settled.pieces, owedByBuyers(pieces), desk)] };
  },
  echo({ fact, books, today }) {
    const back = backWords(books, fact, today);
    const [first] = piecesOf(books, fact);
    const returned =
      fact.data.returned && first
        ? [`${fact.pieces.length === 1 ? "It" : "They"} came back: ${statusOf(first)}, not listed`]
        : [];
    return [back, ...returned, ...profitLines(books, fact)];
  },
});

/** What was given back, what never came, or both: a piece that came back is owed for no more. */
function backWords(books: Books, fact: FactOf<"refund">, today: Day): string {
  const off = -postedBy(books, fact, "buyers owe");
  const names = `${namesOf(books, fact)}${dayWords(fact, today)}`;
  if (fact.data.unpaid) return `${show(off)} never came for ${names}`;
  const cancelled = off > 0 ? `, ${show(off)} no longer owed` : "";
  return `Gave back ${show(fact.amount ?? 0)} on ${names}${cancelled}`;
}

/** "Never paid" takes off what is owed; where nothing is, money that had come was taken back: a bounced check. */
function factOfRefund(
  reading: ReadingOf<"refund">,
  pieces: number[],
  owed: Cents,
  desk: Desk,
): Extract<NewFact, { kind: "refund" }> {
  const { amount, returned, unpaid } = reading;
  const base = { kind: "refund" as const, day: reading.date ?? desk.today, pieces };
  if (returned) return { ...base, amount: unpaid ? 0 : (amount ?? 0), data: { returned } };
  if (unpaid && owed > 0) return { ...base, ...(amount === undefined ? {} : { amount }), data: { unpaid } };
  return { ...base, amount: amount ?? 0, data: {} };
}

/** Where money is still owed, a refund is cash given back or off what is owed; else it needs its amount. */
function askBeforeRefund(
  reading: ReadingOf<"refund">,
  pieces: readonly Readonly<Piece>[],
  desk: Desk,
): Ask | null {
  const owed = owedByBuyers(pieces);
  const { amount, returned, unpaid } = reading;
  const names = labelOf(
    desk.books,
    pieces.map(({ number }) => number),
  );
  if (unpaid && (owed > 0 || returned)) return unpaid && !returned ? moreThanOwed(amount, owed, names) : null;
  if (amount === undefined) {
    const brought = pieces.reduce((sum, piece) => sum + proceedsOf(piece), 0);
    const all: Choice = {
      label: `All of it, ${show(brought)}`,
      words: ["all", "everything", "all of it"],
      effect: { kind: "settle", change: { amount: brought } },
    };
    const prompt = unpaid
      ? `${names} is booked as paid. How much of it never came?`
      : `How much did you give back on ${names}?`;
    return { prompt, wants: "amount", choices: [all, NEVER_MIND] };
  }
  const more = moreThanPaid(amount, pieces, names);
  if (more) return more;
  if (returned || owed === 0 || desk.confirmed.includes("cash back")) return null;
  return cashOrOwed(amount, owed);
}

/** No more can be given back than a piece brought in: that is offered, where anything is. */
function moreThanPaid(amount: Cents, pieces: readonly Readonly<Piece>[], names: string): Ask | null {
  const [only, ...others] = pieces;
  if (!only || others.length > 0) return null;
  const brought = proceedsOf(only) - only.owed;
  if (amount <= brought || brought <= 0) return null;
  const all: Choice = {
    label: `Gave back ${show(brought)}`,
    words: ["yes", "all"],
    effect: { kind: "settle", change: { amount: brought } },
  };
  const prompt = `${names} brought in ${show(brought)}, no more can be given back. Was it that?`;
  return { prompt, wants: "amount", choices: [all, NEVER_MIND] };
}

function moreThanOwed(amount: Cents | undefined, owed: Cents, names: string): Ask | null {
  if (amount === undefined || amount <= owed) return null;
  const prompt = `Only ${show(owed)} is owed on ${names}. How much never came?`;
  const all: Choice = {
    label: `All of it, ${show(owed)}`,
    effect: { kind: "settle", change: { amount: owed } },
  };
  return { prompt, wants: "amount", choices: [all, NEVER_MIND] };
}

function cashOrOwed(amount: Cents, owed: Cents): Ask {
  const cash: Choice = {
    label: `Gave back ${show(amount)} in cash`,
    words: ["cash", "cash back", "gave it back"],
    effect: { kind: "settle", confirm: "cash back" },
  };
  const off: Choice = {
    label: `${show(Math.min(amount, owed))} off what is owed`,
    words: ["off", "off what is owed", "owed"],
    effect: { kind: "settle", change: { unpaid: true, amount: Math.min(amount, owed) } },
  };
  const prompt = `${show(owed)} is still owed there. Was it cash back, or less to pay?`;
  return { prompt, wants: "choice", choices: [off, cash, NEVER_MIND] };
}
