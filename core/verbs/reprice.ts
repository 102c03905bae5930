import * as z from "zod";
import type { Books, Piece } from "../books/books.ts";
import { checkNotGone } from "../books/check.ts";
import { amountOf, type FactOf } from "../books/facts.ts";
import { costOf } from "../books/piece.ts";
import { shareOf } from "../books/posted.ts";
import type { Problem } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { type Ask, type Choice, confirmation, type Desk } from "../decide/decision.ts";
import { dayWords, namesOf, piecesOf, sharesWords } from "../decide/echo.ts";
import { inAll } from "../decide/pieces/choices.ts";
import { here } from "../decide/pieces/fits.ts";
import { byNumbers } from "../decide/pieces/mentioned.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { judgePrice } from "../notes/judging/repricing.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { OF_ALL_TOGETHER } from "../notes/words/links.ts";
import { phrases, saysAny } from "../notes/words/words.ts";
import { splitEvenly } from "../split.ts";
import { defineVerb } from "./verb.ts";

/** "nightstands now 50", which are listed at 60 each: what each costs now, or both. */
function askEachOrAll(
  reading: ReadingOf<"reprice">,
  pieces: readonly Pick<Piece, "number" | "listPrice">[],
  names: string,
  { confirmed }: Desk,
): Ask | null {
  const { price, each, text } = reading;
  const isNearEach =
    pieces.length > 1 && pieces.some(({ listPrice }) => (listPrice ?? 0) >= (price ?? Infinity));
  const isSet = reading.pieces?.some(({ set }) => set) === true;
  if (price === undefined || each || !isNearEach || isSet || saysAny(text, OF_ALL_TOGETHER)) return null;
  if (confirmed.includes("in all")) return null;
  const all = byNumbers(pieces.map(({ number }) => number));
  const ofEach: Choice = {
    label: `${show(price)} each`,
    words: ["each"],
    effect: {
      kind: "instead",
      readings: [{ ...reading, pieces: all, price: price * pieces.length, each: true }],
    },
  };
  const ask = confirmation(`${names}: ${show(price)} each, or in all?`, {
    label: `${show(price)} in all`,
    confirm: "in all",
  });
  return { ...ask, choices: [ofEach, ...ask.choices] };
}

declare module "../notes/reading.ts" {
  interface ReadingFields {
    reprice: {
      pieces?: Mention[];
      price?: Cents;
      /** How much came off, instead of a new price. */
      cut?: Cents;
    };
  }
}

/** That every piece is listed, and at no less than its share of a cut. */
function checkPrices(books: Books, fact: FactOf<"reprice">, shares: readonly number[]): Problem | null {
  for (const [index, number] of fact.pieces.entries()) {
    const { listPrice } = books.pieces.get(number)!;
    if (listPrice === null) return { kind: "piece not listed", number };
    if (fact.data.cut && shares[index]! > listPrice) return { kind: "cut below zero", number, listPrice };
  }
  return null;
}

function isEarlierCut(data: unknown): boolean {
  return typeof data === "object" && data !== null && "by" in data && data.by === true;
}

const rules: FactRules<"reprice"> = {
  mends: ["amount", "date", "pieces"],
  // In ledgers of before, a cut is called "by".
  data: z.preprocess(
    (data) => (isEarlierCut(data) ? { cut: true } : data),
    z.strictObject({ cut: z.literal(true).optional() }),
  ),
  apply(books, fact) {
    const shares = splitEvenly(amountOf(fact), fact.pieces.length);
    const problem = checkNotGone(books, fact.pieces) ?? checkPrices(books, fact, shares);
    if (problem) return problem;
    fact.pieces.forEach((number, index) => {
      const piece = books.piece(number);
      piece.listPrice = fact.data.cut ? piece.listPrice! - shares[index]! : shares[index]!;
    });
    return null;
  },
};

export const reprice = defineVerb({
  kind: "reprice",
  example: "dropped dresser to 160",
  page: "notes",
  listed: ({ data }, pieces) => `${data.cut ? "price cut of" : "new price of"} ${pieces}`,
  story: (told) => {
    const { amount = 0, data } = told.fact;
    return `price ${data.cut ? "cut by" : "now"} ${show(shareOf(told, amount))}`;
  },
  books: rules,
  byItsDay: true,
  upon: "listed",
  reads: {
    says: [
      {
        say: [
          ...phrases(
            "dropped drop dropping lowered lower lowering reduced reduce marked_…_down marked_…_down_to knocked_…_down_to brought_…_down_to took_…_down_to marked_down mark_…_down price_drop price_cut cut_…_price cut slashed repriced reprice discounted knocked_…_off knocking_…_off knocking_…_down_to shaving_…_off lopping_…_off",
          ),
          ...phrases("shaved lopped whacked docked trimmed sliced chopped slashed hacked").map(
            (verb) => `${verb} … off`,
          ),
          "knocked off",
          "knock … off",
          "cut … off",
        ],
        without: ["duration", "supply", "labor"],
      },
      {
        say: ["off each", "off of each"],
        with: ["number"],
        without: ["duration", "supply", "labor"],
        light: true,
      },
      { say: "cut … to", with: ["pronoun", "number"], without: ["duration", "supply", "miles"] },
      { say: ["took … off", "take … off"], without: ["duration", "supply", "labor", "pieceFirst"] },
      {
        say: [
          ...phrases("put moved brought set bumped took pushed").flatMap((verb) =>
            phrases("back_up_to back_to back_at back_down_to up_to down_to").map((to) => `${verb} … ${to}`),
          ),
          ...phrases("back_up_to back_down_to is_back_up_to went_back_up_to is_back_to is_back_down_to"),
          ...[
            ...phrases(
              "brought_…_down brought_…_down_from took_…_down_from knocked_…_down knocked_…_down_from",
            ),
            "came down on",
            "come down on",
            "went down on",
            ...["come down to", "came down to", "gone down to"].flatMap((to) => [`${to} … on`, to]),
            ...phrases("made_…_price made_…_now made_price_of made_the_price_of put_…_price put_price_of"),
          ],
        ],
        with: ["piece", "number"],
        without: ["supply", "duration", "stream", "loan", "miles", "percent"],
        light: true,
      },
      {
        say: phrases("dropped lowered reduced cut slashed marked marked_down"),
        with: ["piece"],
        without: ["duration", "supply"],
      },
      {
        say: phrases(
          "cutting_…_by cutting_…_to knocked_…_to nudged_…_to trimmed_…_to shaved_…_to chopped_…_to jacked_…_to jacked_…_up_to brought_down_…_to knocked_down_…_to took_down_…_to",
        ),
        with: ["piece"],
        without: ["duration", "supply"],
      },
      { say: phrases("raised raise upped bumped bumped_up increased marked_up marked_…_up") },
      {
        say: phrases("changed change changed_price changed_the_price new_price price_change set_price"),
        with: ["number"],
        without: ["supply"],
      },
      {
        say: phrases(
          "now is_now are_now down_to going_down_to goes_down_to go_down_to coming_down_to comes_down_to price_is_now now_only now_at",
        ),
        with: ["piece", "number"],
        without: ["supply", "duration", "stream", "loan", "miles"],
        light: true,
      },
      {
        say: [
          "down to",
          "going down to",
          "goes down to",
          "coming down to",
          "now down to",
          "price is now",
          "now at",
        ],
        with: ["number"],
        without: ["supply", "duration", "stream", "loan", "miles", "piece", "unknown", "percent"],
        light: true,
      },
      {
        say: phrases(
          "down_it_goes_to price_to price_is price_on price_at price_down_to price_now less cheaper went_down_to went_up_in_price went_up_in_price_to price_went_down_to price_went_up_to moved_…_from",
        ),
        with: ["piece", "number"],
        without: ["supply", "duration", "stream", "loan", "miles", "percent"],
        light: true,
      },
      { with: ["piece", "number", "off"], without: ["supply", "duration", "percent", "miles", "loan"] },
    ],
    slots: { pieces: "pieces" },
    bears: ["everyday words", "standing pieces", "counted later", "of pieces", "not a part"],
    main: "price",
    needs: ["pieces", "price"],
    absorbs: phrases("now down down_to price the_price is_now to asking up up_to off"),
    judge: judgePrice,
  },

  offered({ price, cut }, names) {
    return cut === undefined ? `${names} now ${show(price ?? 0)}` : `${names}, ${show(cut)} less`;
  },

  decide(said, desk) {
    const fit = { allows: here.allows, prefers: (piece: { listed: string | null }) => piece.listed !== null };
    const settled = settlePieces(said, desk, { fit, question: "has the new price", unknown: "refuse" });
    if (settled.kind !== "settled") return settled;
    const reading = inAll(said, settled.pieces);
    const day = reading.date ?? desk.today;
    const pieces = piecesOf(desk.books, settled);
    const names = namesOf(desk.books, settled);
    if (pieces.some((piece) => piece.listed === null)) {
      if (reading.price === undefined)
        return { kind: "refuse", why: `${names} is not listed, so there is no price to cut.` };
      const mentions = byNumbers(settled.pieces);
      const { text, line } = reading;
      const listing = {
        kind: "list" as const,
        pieces: mentions,
        price: reading.price,
        date: day,
        text,
        line,
      };
      const ask = confirmation(`${names} is not listed yet. List it at ${show(reading.price)}?`, {
        label: "List it",
        confirm: "",
      });
      ask.choices[0]!.effect = { kind: "instead", readings: [listing] };
      return { kind: "ask", ask };
    }
    const now = pieces.reduce((sum, piece) => sum + (piece.listPrice ?? 0), 0);
    if (
      reading.price !== undefined &&
      now > 0 &&
      reading.price >= now * 10 &&
      !desk.confirmed.includes("ten times")
    ) {
      const prompt = `${show(reading.price)} is ten times the old price ${show(now)}. Is that right?`;
      const ask = confirmation(prompt, { label: `Yes, ${show(reading.price)}`, confirm: "ten times" });
      return { kind: "ask", ask: { ...ask, wants: "price" } };
    }
    const each = askEachOrAll(reading, pieces, names, desk);
    if (each) return { kind: "ask", ask: each };
    const cut = reading.cut !== undefined;
    const amount = reading.cut ?? reading.price!;
    const data = cut ? { cut: true as const } : {};
    return { kind: "record", facts: [{ kind: "reprice", day, pieces: settled.pieces, amount, data }] };
  },
  echo({ fact, books, today }) {
    const pieces = piecesOf(books, fact);
    const prices = pieces.map((piece) => piece.listPrice ?? 0);
    const now = prices.reduce((sum, price) => sum + price, 0);
    const cut = fact.data.cut ? `, ${show(fact.amount ?? 0)} less` : "";
    const cost = pieces.reduce((sum, piece) => sum + costOf(piece), 0);
    const shares = sharesWords(prices);
    return [
      `${namesOf(books, fact)} now ${show(now)}${shares && `: ${shares}`}${cut}${dayWords(fact, today)}`,
      `Profit at that price: ${show(now - cost)}`,
    ];
  },
});
