import * as z from "zod";
import { checkPieces } from "../books/check.ts";
import { costAccountOf } from "../books/cost.ts";
import { amountOf, onlyPiece } from "../books/facts.ts";
import { spentOn } from "../books/posted.ts";
import type { FactRules } from "../books/rules.ts";
import { categoryShape, wordsShape } from "../books/shapes.ts";
import { costLine, dayWords, methodWords, namesOf } from "../decide/echo.ts";
import { ever } from "../decide/pieces/fits.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { judgeSpending } from "../notes/judging/spending.ts";
import { phrases } from "../notes/words/words.ts";
import { splitEvenly } from "../split.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    spend: {
      what?: string;
      amount?: Cents;
      category?: Category;
      pieces?: Mention[];
      method?: string;
      /** It was said to be of no piece. */
      forShop?: true;
    };
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
const HELPED = phrases("gave paid pay pd handed slipped tipped").flatMap((gave) =>
  phrases(
    "for_help for_helping to_help to_move to_load to_carry for_carry to_redo for_helping_sand for_helping_strip for_helping_paint for_helping_move for_helping_load to_help_sand to_help_move to_help_load",
  ).map((what) => `${gave} … ${what}`),
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
        say: phrases("spent spend spending dropped_…_on blew"),
        without: ["duration", "loan"],
        light: true,
      },
      {
        say: phrases(
          "bought just_bought bougt boght picked_up grabbed purchased snagged nabbed scored ended_up_getting ended_up_buying ordered treated_myself_to treated_us_to splurged_on sprung_for",
        ),
        with: ["supplyFirst"],
        without: ["loan", "stream"],
      },
      {
        say: phrases("got paid pd paid_for payed"),
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
        say: phrases("cost_me cost_us ran_me ran_us run_me run_us set_me_back knocked_me_back set_us_back"),
        with: ["supply", "number"],
        without: ["loan", "duration"],
        light: true,
      },
      // A full tank is named by what was done.
      {
        say: phrases(
          "filled_up filled_it_up fueled_up gassed_up filled_the_tank filled_the_truck filled_the_van filled_up_the_ute filled_the_ute topped_up_the_van topped_up_the_truck topped_up_the_car put_…_in_the_ute filled_up_the_lorry topped_off_the_tank topped_off_the_truck topped_off_the_van topped_up_the_tank fill_up put_…_in_the_tank in_the_tank put_…_in_the_truck put_…_in_the_van filled_up_the_truck filled_up_the_van filled_up_the_tank filled_my_tank filled_my_truck filled_the_car filled_up_the_car",
        ),
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
        say: phrases("put_…_into sunk_…_into sank_…_into poured_…_into put_another_…_into"),
        with: ["supply", "number"],
        without: ["loan", "duration"],
      },
      {
        say: phrases("restocked restocked_on stocked_up_on reordered topped_up_on"),
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
          ...phrases("fork_out shell_out cough_up fork_over stump_up lay_out").flatMap((pay) =>
            ["for", "on"].map((on) => `had to ${pay} … ${on}`),
          ),
          ...phrases(
            "forked_over_…_for coughed_up_…_for plunked_down_…_for dropped_…_for forked_out_…_for forked_out_…_on shelled_out_…_on splashed_out_…_on laid_out_…_for laid_out_…_on forked_over_…_on stumped_up_…_for parted_with_…_for coughed_up_…_on",
          ),
        ],
        with: ["moneyFirst", "supply"],
        without: ["loan", "stream"],
      },
      { say: "put", with: ["supply", "number"], without: ["loan", "piece", "duration"], light: true },
      {
        say: phrases("put_down mark_down jot_down write_down note_down put_me_down_for"),
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
    absorbs: phrases("cost paid for_free help_move help_moving"),
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
