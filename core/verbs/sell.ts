import * as z from "zod";
import type { Books, Piece } from "../books/books.ts";
import { checkNotGone } from "../books/check.ts";
import { amountOf, type FactOf, onlyPiece } from "../books/facts.ts";
import type { BooksInHand } from "../books/hand.ts";
import { postedBy, postedTo } from "../books/posted.ts";
import type { Problem } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { centsShape, wordsShape } from "../books/shapes.ts";
import { depositOf, dueOf, sharesOfSale } from "../books/shares.ts";
import { sellOne } from "../books/sold.ts";
import { depositFate, doubtOfSale } from "../decide/deals/selling.ts";
import { dayWords, methodWords, namesOf, piecesOf, profitLines, sharesWords } from "../decide/echo.ts";
import { inAll } from "../decide/pieces/choices.ts";
import { forSale } from "../decide/pieces/fits.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import { type Cents, show } from "../money.ts";
import { judgeSale } from "../notes/judging/selling.ts";
import { FOUND_A_HOME } from "../notes/words/verbs.ts";
import { phrases } from "../notes/words/words.ts";
import { splitByWeight } from "../split.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    sell: {
      pieces?: Mention[];
      price?: Cents;
      method?: string;
      fee?: Cents;
      buyer?: string;
      /** What of the price is still to come. */
      owed?: Cents;
      /** A piece on hold was picked up: the amount may be the price or the rest of it. */
      fetched?: true;
      /** The deposit is part of the price, as said. */
      whole?: true;
      /** "at asking", "for the full price": it sold for what it was listed at. */
      atAsking?: true;
      /** So much less or more than that, or so many percent of it. */
      beside?: { is: "off" | "over" | "of"; cents?: Cents; percent?: string };
      /** "got the 30": a sum that was spoken of before, so that it may be what was owed. */
      isKnownSum?: true;
      /** What it cost was said beside the price. */
      costSaid?: true;
    };
  }
}

/** Settles what is held on the pieces: part of the price, given back to its buyer, or kept that day. */
function settleDeposits(books: BooksInHand, fact: FactOf<"sell">, pieces: readonly Piece[]): void {
  const held = depositOf(pieces);
  const how = fact.data.deposit ?? "applied";
  const today = amountOf(fact) - (fact.data.owed ?? 0);
  books.post("cash", how === "applied" ? today - held : today, { piece: onlyPiece(fact) });
  if (how === "refunded") books.post("cash", -held, { piece: onlyPiece(fact) });
  for (const piece of pieces) {
    books.post("deposits held", piece.deposit, { piece: piece.number });
    if (how === "kept") {
      books.post("deposits kept", -piece.deposit, { piece: piece.number });
      piece.depositsKept += piece.deposit;
    }
    piece.deposit = 0;
    piece.hold = null;
  }
}

/** What is left to pay of each piece's share of the price: its deposit is part of it, unless that went elsewhere. */
function duesOf(fact: FactOf<"sell">, pieces: readonly Readonly<Piece>[]): Cents[] {
  const isApplied = (fact.data.deposit ?? "applied") === "applied";
  const deposits = pieces.map((piece) => (isApplied ? piece.deposit : 0));
  return dueOf(sharesOfSale(pieces, amountOf(fact)), deposits);
}

/** That the cash of the day is not below zero because of what is owed. */
function checkOwed(books: Books, fact: FactOf<"sell">): Problem | null {
  const pieces = fact.pieces.map((number) => books.pieces.get(number)!);
  const isApplied = (fact.data.deposit ?? "applied") === "applied";
  const due = Math.max(0, amountOf(fact) - (isApplied ? depositOf(pieces) : 0));
  return (fact.data.owed ?? 0) > due ? { kind: "more owed than due", due } : null;
}

const rules: FactRules<"sell"> = {
  mends: ["amount", "date", "method", "buyer", "fee", "owed", "pieces"],
  data: z.strictObject({
    fee: centsShape.optional(),
    method: wordsShape.optional(),
    buyer: wordsShape.optional(),
    deposit: z.enum(["applied", "refunded", "kept"]).optional(),
    owed: centsShape.optional(),
  }),
  apply(books, fact) {
    const problem = checkNotGone(books, fact.pieces) ?? checkOwed(books, fact);
    if (problem) return problem;
    const pieces = fact.pieces.map((number) => books.piece(number));
    const prices = sharesOfSale(pieces, amountOf(fact));
    const fees = sharesOfSale(pieces, fact.data.fee ?? 0);
    const owed = splitByWeight(fact.data.owed ?? 0, duesOf(fact, pieces));
    settleDeposits(books, fact, pieces);
    pieces.forEach((piece, index) => {
      const of = { piece: piece.number };
      sellOne(books, piece, { price: prices[index]!, day: fact.day });
      books.post("buyers owe", owed[index]!, of);
      // The fee is its own pair, so that cash in is gross.
      books.post("selling fees", fees[index]!, of);
      books.post("cash", -fees[index]!, of);
      piece.owed += owed[index]!;
      piece.fees += fees[index]!;
    });
    return null;
  },
};

export const sell = defineVerb({
  kind: "sell",
  example: "sold nightstand 60 cash",
  page: "notes",
  listed: (_, pieces) => `sold ${pieces}`,
  story: (told) => {
    const owed = postedTo(told, "buyers owe");
    const { method, buyer } = told.fact.data;
    const price = `sold ${show(-postedTo(told, "sales"))}${owed > 0 ? `, ${show(owed)} of it owed` : ""}`;
    return `${price}${method ? ` ${method}` : ""}${buyer ? ` to ${buyer}` : ""}`;
  },
  said: ({ data }) => data.buyer ?? null,
  books: rules,
  goesOn: { pieces: "alike", carries: ({ amount, data: { method } }) => ({ price: amount, method }) },
  reads: {
    says: [
      {
        say: phrases("sold sld sodl slod soldd resold is_sold are_sold got_sold just_sold"),
      },
      {
        say: phrases(
          "went_for gone_for is_gone_for let_go_of_…_for let_…_go_for unloaded offloaded flogged flog shifted got_shot_of got_shut_of got_shed_of turned_loose_of hawked rehomed_…_for rehomed cashed_out said_goodbye_to said_good_bye_to waved_goodbye_to said_bye_to said_farewell_to bid_farewell_to bid_goodbye_to sent_off palmed_off palmed_…_off fobbed_…_off flogged_off moved_on_…_for sold_on unburdened_myself_of moved_…_for sold_off went_together_for",
        ),
        with: ["number"],
      },
      { say: ["went too", "went as well", "went together"], with: ["piece", "number"], without: ["miles"] },
      {
        say: [
          ...phrases("managed_to manage_to was_able_to were_able_to finally_got_to").flatMap((managed) =>
            phrases("sell flog shift offload unload move get_rid_of get_shot_of").map(
              (sell) => `${managed} ${sell}`,
            ),
          ),
          "let him have",
          "let her have",
          "let them have",
        ],
        with: ["piece", "number"],
        without: ["supply"],
      },
      {
        say: phrases("gone is_gone are_gone all_gone just_gone"),
        with: ["piece", "number"],
        without: ["supply", "loan"],
        light: true,
      },
      // The whole message, in reply to a piece's: its price is asked, with the one listed on a button.
      {
        say: ["gone", "all gone"],
        without: ["named", "number", "duration", "labor", "supply", "unknown", "loan", "stream", "miles"],
        light: true,
      },
      {
        say: "gone",
        with: ["number"],
        without: ["named", "duration", "labor", "supply", "unknown", "loan", "stream", "miles"],
        light: true,
      },
      // A note in another's tongue.
      { say: ["have sell", "i sell", "is sell"], with: ["piece", "number"] },
      {
        say: phrases(
          "paid_and_gone paid_for_and_gone paid_and_picked_up ended_up_taking_…_for wound_up_taking_…_for ended_up_getting_…_for ended_up_letting_…_go wound_up_letting_…_go wound_up_getting_…_for",
        ),
        with: ["piece", "number"],
        without: ["supply"],
      },
      {
        say: phrases(
          "made_a_sale made_another_sale got_a_sale another_sale first_sale first_sale_of_the_day sale_of_the_day",
        ),
        with: ["number"],
        without: ["supply", "stream", "piece"],
        light: true,
      },
      {
        say: phrases("gone is_gone all_gone gone_at_last finally_gone"),
        with: ["number"],
        without: ["supply", "stream", "loan", "unknown", "piece", "duration", "miles"],
        light: true,
      },
      { say: "delivered … got", with: ["piece", "number"], without: ["supply"], light: true },
      { say: "sale of", with: ["number"], light: true },
      {
        say: phrases(
          "cash_in_hand_for in_my_pocket in_my_hand in_my_purse closed_…_at closed_the_sale_on closed_on",
        ),
        with: ["piece", "number"],
        without: ["supply", "loan", "stream"],
        light: true,
      },
      {
        say: ["out the door", "went out the door", "rolled out the door"],
        with: ["piece", "number"],
        light: true,
      },
      {
        say: [...FOUND_A_HOME, "flew out the door", "flew off the shelf"],
        with: ["piece", "number"],
      },
      { say: ["let go of", "let … go at", "let … go"], with: ["piece", "number"], without: ["supply"] },
      { say: ["flipped", "parted with", "got rid of"], with: ["piece", "number"], without: ["supply"] },
      {
        say: phrases("finally_moved is_out_the_door out_the_door is_out_of_here is_finally_out"),
        with: ["piece", "number"],
        without: ["supply"],
      },
      { say: ["flipped it", "flipped them", "parted with it", "parted with them"], with: ["number"] },
      {
        say: phrases("got_…_for got_…_out_of got_…_outta took_…_for got_paid_…_for"),
        with: ["moneyFirst", "piece"],
        without: ["supply", "stream"],
        light: true,
      },
      {
        say: ["got … for", "got … out of", "took … for"],
        with: ["moneyFirst", "pronoun"],
        without: ["supply", "stream", "piece"],
        light: true,
      },
    ],
    slots: { pieces: "pieces", price: "money", method: "method", fee: "fee", buyer: "buyer" },
    bears: [
      "everyday words",
      "standing pieces",
      "counted later",
      "has a buyer",
      "one end for several",
      "of pieces",
      "not a part",
    ],
    main: "price",
    needs: ["pieces", "price"],
    absorbs: phrases(
      "paid got paid_in took picked_up went_for listed deposit gave cleared made sold gone pending buyer lady_paid guy_paid delivered took_out accepted settled settled_for settled_on settled_at sale",
    ),
    judge: judgeSale,
  },

  offered({ price, method, buyer, fee, owed }, names) {
    const paid = price === undefined ? "" : ` ${show(price)}${methodWords(method)}`;
    const rest = owed === undefined ? "" : owed === price ? ", all owed" : `, ${show(owed)} owed`;
    return `Sold ${names}${paid}${buyer ? ` to ${buyer}` : ""}${fee ? `, fee ${show(fee)}` : ""}${rest}`;
  },

  decide(reading, desk) {
    const settled = settlePieces(reading, desk, { fit: forSale, question: "did you sell", unknown: "add" });
    if (settled.kind !== "settled") return settled;
    const pieces = piecesOf(desk.books, settled);
    const price = inAll(reading, settled.pieces).price!;
    const doubt = doubtOfSale({ ...reading, price }, pieces, desk);
    if (doubt) return doubt;
    const { fee, method, buyer, owed } = reading;
    const deposit = depositFate(desk);
    return {
      kind: "record",
      facts: [
        {
          kind: "sell",
          day: reading.date ?? desk.today,
          pieces: settled.pieces,
          amount: price,
          data: {
            ...(fee ? { fee } : {}),
            ...(method ? { method } : {}),
            ...(buyer ? { buyer } : {}),
            ...(deposit ? { deposit } : {}),
            ...(owed ? { owed } : {}),
          },
        },
      ],
    };
  },
  echo({ fact, books, today }) {
    const price = fact.amount ?? 0;
    const buyer = fact.data.buyer ? ` to ${fact.data.buyer}` : "";
    const fee = fact.data.fee ? `, fee ${show(fact.data.fee)}` : "";
    const legs = books.postings.get(fact.id) ?? [];
    const sales = legs.filter((leg) => leg.account === "sales");
    const shares = sharesWords(sales.map((leg) => -leg.cents));
    const each = shares ? ` (${shares})` : "";
    const first = `Sold ${namesOf(books, fact)} for ${show(price)}${each}${methodWords(fact.data.method)}${buyer}${fee}${dayWords(fact, today)}`;
    const deposit = postedBy(books, fact, "deposits held");
    const applied = deposit > 0 && (fact.data.deposit ?? "applied") === "applied";
    return [first, ...moneyLine(fact, applied ? deposit : 0), ...profitLines(books, fact, price)];
  },
});

/** "165.00: 45.00 deposit, 70.00 today, 50.00 owed": what of the price came, comes and is to come; nothing where all came. */
function moneyLine(fact: FactOf<"sell">, deposit: Cents): string[] {
  const price = fact.amount ?? 0;
  const owed = fact.data.owed ?? 0;
  if (deposit === 0 && owed === 0) return [];
  const parts = [
    ...(deposit > 0 ? [`${show(deposit)} deposit`] : []),
    `${show(price - deposit - owed)} today`,
    ...(owed > 0 ? [`${show(owed)} still owed`] : []),
  ];
  return [`${show(price)}: ${parts.join(", ")}`];
}
