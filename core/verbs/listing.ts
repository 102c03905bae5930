import * as z from "zod";
import { checkNotGone } from "../books/check.ts";
import { amountOf } from "../books/facts.ts";
import { costOf } from "../books/piece.ts";
import { shareOf } from "../books/posted.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { dayWords, namesOf, piecesOf, sharesWords } from "../decide/echo.ts";
import { hereBut } from "../decide/fits.ts";
import { inAll } from "../decide/piece-choices.ts";
import { settlePieces } from "../decide/pieces.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { type Clause, says, saysOneOf } from "../notes/clause.ts";
import { MADE_AN_AD, ON_NET, PUT, STUCK, UP } from "../notes/words/dialects.ts";
import { BOARDS } from "../notes/words/verbs.ts";
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
const SET_OUT = ["put", "stuck", "placed", "set", "hung"].flatMap((verb) =>
  [
    "in the booth",
    "in my booth",
    "at the booth",
    "in the shop",
    "in the store",
    "in the window",
    "at the mall",
  ].map((place) => `${verb} … ${place}`),
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
          "listed",
          "list",
          "listing",
          "relisted",
          "relisting",
          "relist",
          "posted",
          "reposted",
          "posting",
          "post",
          "put … up",
          "putting … up",
          "putting up",
          "put … up for sale",
          "put … up for",
          "put … up at",
          "put up",
          "up for sale",
          "advertised",
          "uploaded",
          "uploading",
          "upload",
          "put … online",
          ...["market", "site", "board", "boards", "app", "page"].flatMap((where) => [
            `put … on ${where}`,
            `put … on the ${where}`,
          ]),
          "put … on internet",
          "put … on the internet",
          "threw … up",
          "threw … up on",
          "put … up on",
          "stuck … up",
          "put … for sale",
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
        say: [
          "is in internet for",
          "is in the internet for",
          "in internet for",
          "is on the internet for",
          "is on internet for",
          "on internet for",
          "on the internet for",
        ],
        with: ["piece", "number"],
        light: true,
      },
      {
        say: [
          ...[
            "ad up for",
            "ad is up for",
            "ad up",
            "is up",
            "are up",
            "in the booth at",
            "in the booth for",
            "in my booth at",
            "in my booth for",
            "for sale",
            "is for sale",
            "are for sale",
            "on the market",
            "back on the market",
          ],
          ...[
            "priced",
            "tagged",
            "put a … tag on",
            "put a price on",
            "put a price of … on",
            "now listed",
            "is now listed",
            "are now listed",
            "price tag",
          ],
        ],
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
        say: [
          ...["is live", "are live", "its live", "went live", "goes live", "live now", "now live", "up live"],
          ...["is online", "are online", "is on the internet", "went online", "is up online"],
        ],
        with: ["piece", "number"],
        light: true,
      },
      {
        say: [
          ...[
            "up for",
            "is up for",
            "are up for",
            "up at",
            "live at",
            "is up at",
            "up on",
            "is up on",
            "are up on",
          ],
          ...[
            "live on",
            "is live on",
            "are live on",
            "went up on",
            "went live on",
            "goes up on",
            "now live on",
          ],
        ],
        with: ["piece", "number"],
        light: true,
      },
      {
        say: [
          "went up … for",
          "went up … at",
          "just went up",
          "goes live at",
          "went live … at",
          "went live … for",
        ],
        with: ["piece", "number"],
        without: ["moneyFirst", "supply", "duration"],
        light: true,
      },
      // "desk done and up for 145": of the piece just told of.
      {
        say: [
          "up for",
          "up at",
          "is up for",
          "is up at",
          "its up for",
          "its up at",
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
    bears: ["standing pieces", "counted later", "of pieces", "not a service", "not a part"],
    main: "price",
    needs: ["pieces", "price"],
    absorbs: ["asking", "up for", "up", "put", "ask", "price"],
    // "put the desk on the truck" lists nothing, "put it up for 240 on swapcircle" does.
    judge: ({ pieces, price }, clause) =>
      isUpBySomething(clause) ||
      (!pieces && isUpAlone(clause, price ?? 0)) ||
      (clause.head?.text === "put" &&
        clause.tokens.some(({ text }) => text === "on") &&
        !(price !== undefined && says(clause, /^up(?: for| at)?$/)) &&
        !saysOneOf(clause, BOARDS))
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
