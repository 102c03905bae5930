import * as z from "zod";
import { checkPieces } from "../books/check.ts";
import { costAccountOf } from "../books/cost.ts";
import { amountOf, onlyPiece } from "../books/facts.ts";
import { spentOn } from "../books/posted.ts";
import type { FactRules } from "../books/rules.ts";
import { categoryShape, wordsShape } from "../books/shapes.ts";
import { costLine, dayWords, methodWords, namesOf } from "../decide/echo.ts";
import { ever } from "../decide/fits.ts";
import { settlePieces } from "../decide/pieces.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { judgeSpending } from "../notes/judging/spending.ts";
import { splitEvenly } from "../split.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    spend: { what?: string; amount?: Cents; category?: Category; pieces?: Mention[]; method?: string };
  }
}

const rules: FactRules<"spend"> = {
  mends: ["amount", "date", "method", "pieces"],
  alone: true,
  data: z.strictObject({ what: wordsShape, category: categoryShape, method: wordsShape.optional() }),
  apply(books, fact) {
    const problem = checkPieces(books, fact.pieces);
    if (problem) return problem;
    const amount = amountOf(fact);
    if (fact.pieces.length === 0) books.post("overhead", amount, { detail: fact.data.category });
    else {
      const shares = splitEvenly(amount, fact.pieces.length);
      const isFee = fact.data.category === "fees";
      fact.pieces.forEach((number, index) => {
        const piece = books.piece(number);
        const share = shares[index]!;
        if (isFee) piece.fees += share;
        else piece.materials += share;
        books.post(isFee ? "selling fees" : costAccountOf(piece), share, { piece: number });
      });
    }
    books.post("cash", -amount, { piece: onlyPiece(fact) });
    return null;
  },
};

/** Money handed to somebody for a hand with a piece. */
const HELPED = ["gave", "paid", "pay", "pd", "handed", "slipped", "tipped"].flatMap((gave) =>
  [
    "for help",
    "for helping",
    "to help",
    "to move",
    "to load",
    "to carry",
    "for carry",
    "to redo",
    "for helping sand",
    "for helping strip",
    "for helping paint",
    "for helping move",
    "for helping load",
    "to help sand",
    "to help move",
    "to help load",
  ].map((what) => `${gave} … ${what}`),
);

export const spend = defineVerb({
  kind: "spend",
  example: "paint 12.50 for dresser",
  page: "costs",
  upon: "started",
  listed: ({ data }, pieces) => `${data.what}${pieces ? ` for ${pieces}` : ""}`,
  story: (told) => `${told.fact.data.what} ${show(spentOn(told))}`,
  said: ({ data }) => data.what,
  books: rules,
  goesOn: { pieces: "same", carries: ({ amount, data }) => ({ ...data, amount }) },
  reads: {
    says: [
      { with: ["supply", "number"], without: ["loan", "percent"] },
      {
        say: ["spent", "spend", "spending", "dropped … on", "blew"],
        without: ["duration", "loan"],
        light: true,
      },
      {
        say: ["bought", "bougt", "boght", "picked up", "grabbed", "purchased", "snagged", "ordered"],
        with: ["supplyFirst"],
        without: ["loan", "stream"],
      },
      {
        say: ["got", "paid", "pd", "paid for", "payed"],
        with: ["supplyFirst"],
        without: ["loan", "stream"],
        light: true,
      },
      { say: ["paid", "pd", "payed", "tipped"], with: ["helper", "number"], without: ["loan"] },
      {
        say: HELPED,
        with: ["number"],
        without: ["loan"],
        means: { category: "help" },
      },
      {
        say: [
          "cost me",
          "cost us",
          "ran me",
          "ran us",
          "run me",
          "run us",
          "set me back",
          "knocked me back",
          "set us back",
        ],
        with: ["supply", "number"],
        without: ["loan", "duration"],
        light: true,
      },
      // A full tank is named by what was done.
      {
        say: [
          ...[
            "filled up",
            "filled it up",
            "fueled up",
            "gassed up",
            "filled the tank",
            "filled the truck",
            "filled the van",
            ...[
              "filled up the ute",
              "filled the ute",
              "topped up the van",
              "topped up the truck",
              "topped up the car",
              "put … in the ute",
              "filled up the lorry",
            ],
          ],
          ...[
            "topped off the tank",
            "topped off the truck",
            "topped off the van",
            "topped up the tank",
            "fill up",
          ],
          ...[
            "put … in the tank",
            "in the tank",
            "put … in the truck",
            "put … in the van",
            "filled up the truck",
            "filled up the van",
          ],
          ...[
            "filled up the tank",
            "filled my tank",
            "filled my truck",
            "filled the car",
            "filled up the car",
          ],
        ],
        with: ["number"],
        without: ["piece", "loan", "duration", "stream"],
        means: { what: "gas", category: "vehicle" },
      },
      {
        say: ["paid … to park", "pd … to park"],
        with: ["moneyFirst"],
        means: { what: "parking", category: "vehicle" },
      },
      {
        say: ["put … into", "sunk … into", "sank … into", "poured … into", "put another … into"],
        with: ["supply", "number"],
        without: ["loan", "duration"],
      },
      {
        say: ["restocked", "restocked on", "stocked up on", "reordered", "topped up on"],
        with: ["supplyFirst", "number"],
        without: ["loan", "piece"],
      },
      { say: ["charged", "charged me"], with: ["supply", "number"], light: true },
      {
        say: ["paid … for", "pd … for", "spent … on", "spent … for"],
        with: ["moneyFirst", "stream"],
        without: ["loan", "piece"],
        light: true,
      },
      {
        say: [
          "shelled out … for",
          ...["fork out", "shell out", "cough up", "fork over", "stump up", "lay out"].flatMap((pay) =>
            ["for", "on"].map((on) => `had to ${pay} … ${on}`),
          ),
          "forked over … for",
          "coughed up … for",
          "plunked down … for",
          "dropped … for",
          ...[
            "forked out … for",
            "forked out … on",
            "shelled out … on",
            "splashed out … on",
            "laid out … for",
          ],
          ...[
            "laid out … on",
            "forked over … on",
            "stumped up … for",
            "parted with … for",
            "coughed up … on",
          ],
        ],
        with: ["moneyFirst", "supply"],
        without: ["loan", "stream"],
      },
      { say: "put", with: ["supply", "number"], without: ["loan", "piece", "duration"], light: true },
      {
        say: ["put down", "mark down", "jot down", "write down", "note down", "put me down for"],
        with: ["number", "supply"],
        without: ["piece", "loan"],
      },
      { say: ["charged", "charge"], with: ["supply", "number"] },
    ],
    slots: { what: "what", amount: "money", category: "category", pieces: "pieces", method: "method" },
    bears: [
      "any count",
      "dated in passing",
      "things beside",
      "repeats",
      "of pieces",
      "piece or none",
      "at work",
      "not to a buyer",
    ],
    main: "amount",
    needs: ["what", "amount"],
    absorbs: ["cost", "paid", "for free", "help move", "help moving"],
    judge: judgeSpending,
  },

  offered({ what, amount, method }, names) {
    const paid = amount === undefined ? "" : ` ${show(amount)}${methodWords(method)}`;
    return `${capital(what ?? "spent")}${paid}${names ? ` for ${names}` : ""}`;
  },

  decide(reading, desk) {
    const need = { fit: ever, question: "was it for", unknown: "add or leave out" } as const;
    const settled = settlePieces(reading, desk, need);
    if (settled.kind !== "settled") return settled;
    const { what, category, method } = reading;
    return {
      kind: "record",
      facts: [
        {
          kind: "spend",
          day: reading.date ?? desk.today,
          pieces: settled.pieces,
          amount: reading.amount!,
          data: { what: what!, category: category ?? "other", ...(method ? { method } : {}) },
        },
      ],
    };
  },
  echo({ fact, books, today }) {
    const paid = `${capital(fact.data.what)} ${show(fact.amount ?? 0)}${methodWords(fact.data.method)}`;
    const day = dayWords(fact, today);
    if (fact.pieces.length === 0) return [`${paid}${day}: shop cost, ${fact.data.category}`];
    return [`${paid} for ${namesOf(books, fact)}${day}`, costLine(books, fact)];
  },
});

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
