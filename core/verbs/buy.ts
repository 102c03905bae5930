import * as z from "zod";
import { amountOf, onlyPiece } from "../books/facts.ts";
import { madeShape, takeIn } from "../books/made.ts";
import { postedTo } from "../books/posted.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { dayWords, methodWords, namesOf, piecesOf, sharesWords } from "../decide/echo.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { judgeBuy } from "../notes/judging/buying.ts";
import { isSetName } from "../notes/mentions/furniture.ts";
import { pluralOf } from "../notes/mentions/plural.ts";
import { FOR_NOTHING, GOT_FREE } from "../notes/words/money.ts";
import { OUT_OF_BINS } from "../notes/words/places.ts";
import { phrases } from "../notes/words/words.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    buy: { pieces?: Mention[]; price?: Cents; method?: string; source?: string };
  }
}

const rules: FactRules<"buy"> = {
  mends: ["amount", "date", "method", "source", "name", "traits", "pieces"],
  data: z.strictObject({
    made: madeShape,
    set: z.literal(true).optional(),
    method: wordsShape.optional(),
    source: wordsShape.optional(),
  }),
  apply(books, fact) {
    const { day, pieces: numbers, data } = fact;
    takeIn(books, { ...data, numbers, day, cost: amountOf(fact) });
    books.post("cash", -amountOf(fact), { piece: onlyPiece(fact) });
    return null;
  },
};

/** More pieces than this in one note are a slip of the thumb. */
const PIECES_MAX = 60;

const onSomethingNew = (...spent: string[]): string[] =>
  spent.flatMap((verb) => [`${verb} … on a`, `${verb} … on an`, `${verb} … on another`]);

export const buy = defineVerb({
  kind: "buy",
  example: "bought dresser 30",
  page: "notes",
  listed: (_, pieces) => `bought ${pieces}`,
  story: (told) => {
    const price = postedTo(told, "unsold pieces");
    const { source } = told.fact.data;
    return `${price === 0 ? "got free" : `bought ${show(price)}`}${source ? `, ${source}` : ""}`;
  },
  said: ({ data }) => data.source ?? null,
  books: rules,
  goesOn: { pieces: "alike", carries: ({ amount, data: { method } }) => ({ price: amount, method }) },
  reads: {
    says: [
      {
        say: [
          ...phrases(
            "bought bougt boght bot purchased picked_up picked_…_up_for snagged scooped scooped_up snatched_up copped scored grabbed won rescued found acquired obtained bought_up just_bought nabbed snaffled snaffled_up hoovered_up scavenged scrounged landed nab snapped_up bagged thrifted salvaged brought_home took_home",
          ),
          ...phrases("hauled lugged carted fetched toted dragged brung wheeled drug").map(
            (verb) => `${verb} home`,
          ),
          ...phrases(
            "came_home_with come_home_with came_home_w ended_up_getting ended_up_buying wound_up_getting wound_up_buying went_home_with walked_away_with ended_up_with swooped_up swooped_in_on lucked_into lucked_out_on treated_myself_to treated_us_to stumbled_on stumbled_upon stumbled_across walked_out_with drove_home_with splurged_on sprung_for followed_me_home followed_us_home took_a_chance_on took_a_punt_on winning_bid won_the_bid won_the_bidding won_the_auction high_bidder highest_bidder top_bidder",
          ),
        ],
        without: ["supplyFirst"],
      },
      { say: ["buying", "picking up", "grabbing", "snagging"], with: ["piece", "number"] },
      // "auction win: lamp 20", "todays haul: lamp 6, rug 10": a heading that says what became of them.
      {
        say: phrases(
          "auction_win auction_wins auction_buy new_pickup new_pickups new_find new_finds new_buy new_buys new_purchase new_purchases new_piece new_pieces haul hauls thrift_run thrift_runs thrift_trip thrift_haul thrift_finds junk_run picking_run picking_trip todays_haul todays_pickups todays_finds todays_find todays_buys todays_pickup",
        ),
        with: ["piece", "number"],
        without: ["supplyFirst", "duration", "miles"],
        light: true,
      },
      // "took 25 off the desk" is a cut, "took the desk off her hands for 25" no less a purchase than any.
      {
        say: ["took … off", "took … off of"],
        with: ["pieceFirst", "number"],
        without: ["supplyFirst", "percent", "duration", "labor"],
      },
      {
        say: phrases("picked fished dug saved rescued grabbed took found got").flatMap((took) =>
          OUT_OF_BINS.map((bin) => `${took} … ${bin}`),
        ),
        with: ["pieceFirst"],
        without: ["number"],
        means: { price: 0 },
        light: true,
      },
      {
        say: ["brought back … from", "came back with", "drove back with"],
        with: ["piece", "number"],
        without: ["person", "unknown", "supplyFirst"],
      },
      // What came along with a purchase.
      {
        say: ["threw … in", "tossed … in", "threw … in free", "tossed … in free", "included"],
        with: ["piece", "person"],
        without: ["number", "supply"],
        means: { price: 0 },
      },
      {
        say: phrases(
          "came_with_it came_with_them came_along_with_it came_free_with_it came_for_free_with_it came_free came_for_free was_thrown_in were_thrown_in got_thrown_in thrown_in",
        ),
        with: ["piece"],
        without: ["number", "supply"],
        means: { price: 0 },
        light: true,
      },
      {
        say: ["inherited", "trash picked", "curb picked", "dumpster dived"],
        with: ["named"],
        without: ["number"],
        means: { price: 0 },
      },
      { say: ["gave me", "gave us"], with: ["piece"], without: ["number"], means: { price: 0 }, light: true },
      {
        say: ["got", "paid", "pd", "payed"],
        with: ["pronoun", "number"],
        without: ["piece", "loan", "supply", "stream", "helper", "unknown"],
        light: true,
      },
      { say: "picked", with: ["named", "number"], without: ["supplyFirst", "stream"], light: true },
      { say: "got", with: ["named"], without: ["moneyFirst", "stream", "supplyFirst"], light: true },
      {
        say: ["paid", "pd", "payed"],
        with: ["number", "piece"],
        without: ["loan", "supplyFirst", "stream", "helper"],
        light: true,
      },
      {
        say: ["paid", "pd", "payed"],
        with: ["moneyFirst", "named"],
        without: ["loan", "supply", "stream", "piece", "helper"],
        light: true,
      },
      {
        say: ["cost me", "cost us", "ran me", "set me back"],
        with: ["piece", "number"],
        without: ["loan", "supply", "stream", "labor"],
        light: true,
      },
      {
        say: phrases(
          "shelled_out_…_for forked_over_…_for coughed_up_…_for handed_over_…_for plunked_down_…_for laid_out_…_for ponied_up_…_for forked_out_…_for parted_with_…_for stumped_up_…_for splashed_out_…_on splashed_…_on spent_out_…_for bunged_him_…_for",
        ),
        with: ["moneyFirst", "named"],
        without: ["supply", "loan"],
      },
      {
        say: ["purchase of", "acquisition of", "purchase"],
        with: ["piece", "number"],
        without: ["supply", "loan"],
        light: true,
      },
      // On "the desk" it is spent for something; "a desk" is new.
      {
        say: onSomethingNew("spent", "blew"),
        with: ["moneyFirst", "piece"],
        without: ["supply", "loan", "duration", "labor", "stream"],
        light: true,
      },
      {
        say: onSomethingNew("dropped"),
        with: ["moneyFirst", "piece"],
        without: ["supply", "loan", "duration", "labor", "stream"],
      },
      {
        say: ["gave", "handed", "paid"].flatMap((gave) =>
          phrases("a an his her their").map((whose) => `${gave} … for ${whose}`),
        ),
        with: ["piece", "number"],
        without: ["supply", "loan", "duration", "labor", "stream"],
      },
      {
        say: ["paid for"],
        with: ["number", "piece"],
        without: ["loan", "supplyFirst", "stream", "helper", "labor"],
        light: true,
      },
      // A note in another's tongue, and one that begins like a line of a list.
      { say: ["have buy", "i buy", "buy :"], with: ["piece", "number"], without: ["supplyFirst"] },
      { say: ["let me have", "let us have"], with: ["piece", "number"], without: ["supplyFirst"] },
      {
        say: ["ended up paying", "wound up paying"],
        with: ["number"],
        without: ["loan", "supply", "stream", "helper"],
      },
      {
        say: phrases(
          "adopted procured sprang_for pounced_on got_my_hands_on couldnt_resist splurged_on treated_myself_to managed_to_get managed_to_snag managed_to_buy managed_to_grab managed_to_pick_up managed_to_score managed_to_find manage_to_get manage_to_snag manage_to_buy",
        ),
        with: ["piece", "number"],
        without: ["supplyFirst"],
      },
      { say: ["gave … for"], with: ["moneyFirst", "piece"], without: ["supply", "duration"], light: true },
      {
        say: [
          ...GOT_FREE,
          ...phrases(
            "thrown_in tossed_in chucked_in curb_find curb_score curbside_find roadside_find trash_pick trash_find dumpster_find alley_find",
          ),
        ],
        with: ["named"],
        without: ["number"],
        means: { price: 0 },
        light: true,
      },
    ],
    slots: { pieces: "bought", price: "money", method: "method", source: "source" },
    bears: ["any count", "one end for several", "not to a buyer", "not a service", "not a part"],
    main: "price",
    needs: ["pieces", "count", "price"],
    absorbs: [
      "paid",
      "pd",
      "payed",
      ...FOR_NOTHING,
      ...phrases("found got spent cost sale on_sale deal cost_me gave asking they_were_asking marked"),
    ],
    judge: judgeBuy,
  },

  offered({ price, method, source }, names) {
    if (price === undefined) return `Bought ${names}`;
    const paid = price === 0 ? "free" : `${show(price)}${methodWords(method)}`;
    return `Bought ${names} ${paid}${source ? `, ${source}` : ""}`;
  },

  decide(reading, desk) {
    const mentions = reading.pieces ?? [];
    if (mentions.some(({ number, name }) => number !== undefined || name === undefined)) {
      return {
        kind: "refuse",
        why: "A new piece needs a name, its number I give.\nLike: bought dresser 30",
      };
    }
    const made = mentions.flatMap((mention) =>
      Array.from({ length: mention.count ?? 1 }, () => ({
        name: mention.name!,
        traits: mention.traits ?? [],
      })),
    );
    if (made.length > PIECES_MAX) {
      const why = `${made.length} ${pluralOf("piece")} in one note is more than ${PIECES_MAX}. Split the note.`;
      return { kind: "refuse", why };
    }
    const [first] = mentions;
    const set = mentions.length === 1 && made.length > 1 && (first!.set || isSetName(first!.name ?? ""));
    const { method, source } = reading;
    return {
      kind: "record",
      facts: [
        {
          kind: "buy",
          day: reading.date ?? desk.today,
          pieces: made.map((_, index) => desk.nextPiece + index),
          amount: reading.price!,
          data: {
            made,
            ...(set ? { set } : {}),
            ...(method ? { method } : {}),
            ...(source ? { source } : {}),
          },
        },
      ],
    };
  },
  echo({ fact, books, today }) {
    const price = fact.amount === 0 ? "free" : `${show(fact.amount ?? 0)}${methodWords(fact.data.method)}`;
    const source = fact.data.source ? `, ${fact.data.source}` : "";
    const shares = sharesWords(piecesOf(books, fact).map((piece) => piece.price));
    const each = shares && fact.amount !== 0 ? `: ${shares}` : "";
    const got = fact.amount === 0 ? "Got" : "Bought";
    return [`${got} ${namesOf(books, fact)}, ${price}${each}${source}${dayWords(fact, today)}`];
  },
});
