import * as z from "zod";
import { checkNotGone } from "../books/check.ts";
import { amountOf } from "../books/facts.ts";
import { costOf } from "../books/piece.ts";
import { shareOf } from "../books/posted.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { dayWords, namesOf, piecesOf, sharesWords } from "../decide/echo.ts";
import { inAll } from "../decide/pieces/choices.ts";
import { hereBut } from "../decide/pieces/fits.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { type Clause, says, saysOneOf } from "../notes/clause.ts";
import { MADE_AN_AD, ON_NET, PUT, STUCK, UP } from "../notes/words/dialects.ts";
import { ASKS_FOR } from "../notes/words/money.ts";
import { BOARDS } from "../notes/words/verbs.ts";
import { phrases } from "../notes/words/words.ts";
import { splitEvenly } from "../split.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    list: { pieces?: Mention[]; price?: Cents; place?: string };
  }
}

const rules: FactRules<"list"> = {
  mends: ["amount", "date", "pieces"],
  data: z.strictObject({ place: wordsShape.optional() }),
  apply(books, fact) {
    const problem = checkNotGone(books, fact.pieces);
    if (problem) return problem;
    const prices = splitEvenly(amountOf(fact), fact.pieces.length);
    fact.pieces.forEach((number, index) => {
      const piece = books.piece(number);
      piece.listed = fact.day;
      piece.listPrice = prices[index]!;
      piece.firstListed ??= fact.day;
      piece.firstListPrice ??= prices[index]!;
    });
    return null;
  },
};

/** "desk is up 20", "is up to 120": by how much, or to what, and no listing. */
function isUpBySomething({ tokens, head }: Clause): boolean {
  if (!head || !/^(?:(?:is|are) up|just went up)$/.test(head.text)) return false;
  const next = tokens[tokens.indexOf(head) + 1];
  return next?.kind === "amount" || next?.text === "to";
}

/** "stuck the sideboard in the booth at 190": set out where it is for sale. */
const SET_OUT = phrases("put stuck placed set hung").flatMap((verb) =>
  phrases("in_the_booth in_my_booth at_the_booth in_the_shop in_the_store in_the_window at_the_mall").map(
    (place) => `${verb} … ${place}`,
  ),
);

const HOURS_OF_DAY = 24_00;

/** "up at 6" may be when somebody rose, and "gave up at 40" lists nothing. */
function isUpAlone({ head, tokens }: Clause, price: Cents): boolean {
  if (!head || !/\bup (?:at|for)$/.test(head.text)) return false;
  const first = tokens.find(({ roles }) => roles.filler !== true || roles.heads !== undefined);
  return first !== head || (head.text === "up at" && price <= HOURS_OF_DAY);
}

export const list = defineVerb({
  kind: "list",
  example: "listed dresser 190",
  page: "notes",
  listed: (_, pieces) => `listed ${pieces}`,
  story: (told) => {
    const { amount = 0, data } = told.fact;
    return `listed ${show(shareOf(told, amount))}${data.place ? `, ${data.place}` : ""}`;
  },
  books: rules,
  goesOn: { pieces: "alike", carries: ({ amount }) => ({ price: amount }) },
  byItsDay: true,
  upon: "finished",
  reads: {
    says: [
      {
        say: [
          ...phrases(
            "listed list listing relisted relisting relist posted reposted posting post put_…_up putting_…_up putting_up put_…_up_for_sale put_…_up_for put_…_up_at put_up up_for_sale advertised uploaded uploading upload put_…_online",
          ),
          ...phrases("market site board boards app page").flatMap((where) => [
            `put … on ${where}`,
            `put … on the ${where}`,
          ]),
          ...phrases(
            "put_…_on_internet put_…_on_the_internet threw_…_up threw_…_up_on put_…_up_on stuck_…_up put_…_for_sale",
          ),
        ],
      },
      {
        say: ["got … up online", "got … up for sale"],
        with: ["piece", "number"],
        without: ["moneyFirst", "supply"],
        light: true,
      },
      { say: SET_OUT, with: ["piece", "number"] },
      {
        say: STUCK,
        ends: UP,
        with: ["number"],
        without: ["supply", "duration", "loan", "miles", "labor"],
        light: true,
      },
      {
        say: MADE_AN_AD,
        with: ["number"],
        without: ["supply", "duration", "loan", "miles", "labor"],
        light: true,
      },
      {
        say: PUT,
        ends: ON_NET,
        with: ["number"],
        without: ["duration", "loan", "miles", "labor"],
        light: true,
      },
      {
        say: phrases(
          "is_in_internet_for is_in_the_internet_for in_internet_for is_on_the_internet_for is_on_internet_for on_internet_for on_the_internet_for",
        ),
        with: ["piece", "number"],
        light: true,
      },
      {
        say: phrases(
          "ad_up_for ad_is_up_for ad_up is_up are_up in_the_booth_at in_the_booth_for in_my_booth_at in_my_booth_for for_sale is_for_sale are_for_sale on_the_market back_on_the_market priced tagged put_a_…_tag_on put_a_price_on put_a_price_of_…_on now_listed is_now_listed are_now_listed price_tag",
        ),
        with: ["piece", "number"],
        without: ["supply", "duration", "miles"],
        light: true,
      },
      {
        say: "put … on",
        with: ["piece", "number"],
        without: ["moneyFirst", "supply", "duration"],
        light: true,
      },
      {
        say: phrases(
          "is_live are_live its_live went_live goes_live live_now now_live up_live is_online are_online is_on_the_internet went_online is_up_online up_now online_now is_up_now now_up now_online up_now_asking online_now_asking up_asking online_asking posted_now listed_now",
        ),
        with: ["piece", "number"],
        light: true,
      },
      {
        say: phrases(
          "up_for is_up_for are_up_for up_at live_at is_up_at up_on is_up_on are_up_on live_on is_live_on are_live_on went_up_on went_live_on goes_up_on now_live_on",
        ),
        with: ["piece", "number"],
        light: true,
      },
      {
        say: phrases("went_up_…_for went_up_…_at just_went_up goes_live_at went_live_…_at went_live_…_for"),
        with: ["piece", "number"],
        without: ["moneyFirst", "supply", "duration"],
        light: true,
      },
      // "desk done and up for 145", "finished it and priced it at 145": of the piece just told of.
      {
        say: [
          ...phrases(
            "up_for up_at is_up_for is_up_at its_up_for its_up_at priced priced_it priced_them tagged_it_at",
          ),
          ...["its online", "its live"].flatMap((where) => [`${where} for`, `${where} at`]),
          "now up for",
          "now up at",
        ],
        with: ["number"],
        without: ["piece", "supply", "stream", "loan", "duration", "miles", "unknown"],
        light: true,
      },
    ],
    slots: { pieces: "pieces", price: "money", place: "place" },
    bears: ["everyday words", "standing pieces", "counted later", "of pieces", "not a service", "not a part"],
    main: "price",
    needs: ["pieces", "price"],
    absorbs: phrases("asking up_for up put ask price"),
    // "put the desk on the truck" lists nothing, "put it up for 240 on swapcircle" does.
    judge: ({ pieces, price }, clause) =>
      isUpBySomething(clause) ||
      (!pieces && isUpAlone(clause, price ?? 0)) ||
      (clause.head?.text === "put" &&
        clause.tokens.some(({ text }) => text === "on") &&
        !(price !== undefined && says(clause, /^up(?: for| at)?$/)) &&
        !saysOneOf(clause, BOARDS) &&
        !saysOneOf(clause, ASKS_FOR))
        ? { kind: "noVerb" }
        : null,
  },

  offered: ({ price }, names) => `Listed ${names}${price === undefined ? "" : ` at ${show(price)}`}`,

  decide(reading, desk) {
    const fit = hereBut(
      (piece) => piece.listed !== null,
      (piece) => piece.finished !== null,
    );
    const settled = settlePieces(reading, desk, { fit, question: "did you list", unknown: "add" });
    if (settled.kind !== "settled") return settled;
    const data = reading.place ? { place: reading.place } : {};
    const day = reading.date ?? desk.today;
    return {
      kind: "record",
      facts: [
        { kind: "list", day, pieces: settled.pieces, amount: inAll(reading, settled.pieces).price!, data },
      ],
    };
  },
  echo({ fact, books, today }) {
    const pieces = piecesOf(books, fact);
    const shares = sharesWords(pieces.map((piece) => piece.listPrice ?? 0));
    const place = fact.data.place ? `, ${fact.data.place}` : "";
    const cost = pieces.reduce((sum, piece) => sum + costOf(piece), 0);
    return [
      `Listed ${namesOf(books, fact)} at ${show(fact.amount ?? 0)}${shares && `: ${shares}`}${place}${dayWords(fact, today)}`,
      `Profit at that price: ${show((fact.amount ?? 0) - cost)}`,
    ];
  },
});
