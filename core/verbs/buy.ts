import * as z from "zod";
import { amountOf, onlyPiece } from "../books/facts.ts";
import { madeShape, takeIn } from "../books/made.ts";
import { postedTo } from "../books/posted.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { dayWords, methodWords, namesOf, piecesOf, sharesWords } from "../decide/echo.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { type Clause, says } from "../notes/clause.ts";
import {
  couldBeCountAlone,
  goodsIn,
  isAskedFor,
  isCostOfSomething,
  isForSomethingElse,
  isFreeForOthers,
  isMoneyFound,
  isMoneyReturned,
  isNoGift,
  isOffPrice,
  isPaidForHelp,
  isRestOfPrice,
  isWhatBecameOfIt,
} from "../notes/judging/buying.ts";
import { isSetName } from "../notes/mentions/furniture.ts";
import { pluralOf } from "../notes/mentions/plural.ts";
import { FOR_NOTHING, GOT_FREE } from "../notes/words/money.ts";
import { OUT_OF_BINS } from "../notes/words/places.ts";
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
          "bought",
          "bougt",
          "boght",
          "bot",
          "purchased",
          "picked up",
          "picked … up for",
          "snagged",
          "scooped",
          "scooped up",
          "snatched up",
          "copped",
          "scored",
          "grabbed",
          "won",
          "rescued",
          "found",
          "acquired",
          "obtained",
          "bought up",
          "just bought",
          ...["nabbed", "snaffled", "snaffled up", "hoovered up", "scavenged", "scrounged"],
          "landed",
          "nab",
          "snapped up",
          "bagged",
          "thrifted",
          "salvaged",
          "brought home",
          "took home",
          ...["hauled", "lugged", "carted", "fetched", "toted", "dragged", "brung", "wheeled", "drug"].map(
            (verb) => `${verb} home`,
          ),
          "came home with",
          "come home with",
          "came home w",
          "ended up getting",
          "ended up buying",
          "wound up getting",
          "wound up buying",
          "went home with",
          "walked away with",
          "ended up with",
          "swooped up",
          "swooped in on",
          "lucked into",
          "lucked out on",
          "treated myself to",
          "treated us to",
          "stumbled on",
          "stumbled upon",
          "stumbled across",
          "walked out with",
          "drove home with",
          "splurged on",
          "sprung for",
          "winning bid",
          "won the bid",
          "won the bidding",
          "won the auction",
          "high bidder",
          "highest bidder",
          "top bidder",
        ],
        without: ["supplyFirst"],
      },
      { say: ["buying", "picking up", "grabbing", "snagging"], with: ["piece", "number"] },
      // "auction win: lamp 20", "todays haul: lamp 6, rug 10": a heading that says what became of them.
      {
        say: [
          ...[
            "auction win",
            "auction wins",
            "auction buy",
            "new pickup",
            "new pickups",
            "new find",
            "new finds",
          ],
          ...[
            "new buy",
            "new buys",
            "new purchase",
            "new purchases",
            "new piece",
            "new pieces",
            "haul",
            "hauls",
          ],
          ...["todays haul", "todays pickups", "todays finds", "todays find", "todays buys", "todays pickup"],
        ],
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
        say: ["picked", "fished", "dug", "saved", "rescued", "grabbed", "took", "found", "got"].flatMap(
          (took) => OUT_OF_BINS.map((bin) => `${took} … ${bin}`),
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
        say: ["threw … in", "tossed … in", "threw … in free", "tossed … in free"],
        with: ["piece", "person"],
        without: ["number", "supply"],
        means: { price: 0 },
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
        say: [
          ...["shelled out … for", "forked over … for", "coughed up … for", "handed over … for"],
          ...[
            "plunked down … for",
            "laid out … for",
            "ponied up … for",
            "forked out … for",
            "parted with … for",
          ],
          ...[
            "stumped up … for",
            "splashed out … on",
            "splashed … on",
            "spent out … for",
            "bunged him … for",
          ],
        ],
        with: ["moneyFirst", "named"],
        without: ["supply", "loan"],
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
          ["a", "an", "his", "her", "their"].map((whose) => `${gave} … for ${whose}`),
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
        say: [
          ...["managed to get", "managed to snag", "managed to buy", "managed to grab", "managed to pick up"],
          ...["managed to score", "managed to find", "manage to get", "manage to snag", "manage to buy"],
        ],
        with: ["piece", "number"],
        without: ["supplyFirst"],
      },
      { say: ["gave … for"], with: ["moneyFirst", "piece"], without: ["supply", "duration"], light: true },
      {
        say: [
          ...GOT_FREE,
          "curb find",
          "curb score",
          "curbside find",
          "roadside find",
          "trash pick",
          "trash find",
          "dumpster find",
          "alley find",
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
      "found",
      "got",
      "spent",
      "cost",
      "sale",
      "on sale",
      "deal",
      "cost me",
      "gave",
      "asking",
      "they were asking",
      "marked",
    ],
    judge(fields, clause) {
      if (isFreeForOthers(clause)) return { kind: "noVerb" };
      // "bought everything but the desk": nobody knows what that was.
      if (fields.pieces?.some(({ allBut }) => allBut)) return { kind: "unknown" };
      if (isAskedFor(clause)) return { kind: "intention" };
      if (isNoGift(clause)) return { kind: "unknown" };
      if (isOffPrice(clause)) return { kind: "cutOrPrice" };
      if (isWhatBecameOfIt(fields, clause)) return { kind: "unknown" };
      if (isMoneyReturned(clause)) return { kind: "unknown" };
      if (isForSomethingElse(clause)) return { kind: "twoKinds" };
      if (isCostOfSomething(clause)) return { kind: "loneNumber" };
      if (isMoneyFound(fields, clause)) return { kind: "loneNumber" };
      if (isMethodFetched(clause)) return { kind: "unknown" };
      if (isPaidForHelp(clause)) return { kind: "anotherPerson" };
      if (goodsIn(fields, clause) !== null) return { kind: "pieceOrCost" };
      if (couldBeCountAlone(fields, clause) || isRestOfPrice(clause)) return { kind: "twoNumbers" };
      if (fields.price === undefined && clause.tokens.some(({ text }) => FOR_NOTHING.has(text)))
        fields.price = 0;
      if (fields.price === 0 && fields.source === undefined && says(clause, /^(?:curb|curbside)/))
        fields.source = "curb";
      if (clause.signs.has("percent") && says(clause, /^(?:off|discount)$/)) return { kind: "unclaimed" };
      return null;
    },
  },

  offered({ price, method, source }, names) {
    if (price === undefined) return `Bought ${names}`;
    const paid = price === 0 ? "free" : `${show(price)}${methodWords(method)}`;
    return `Bought ${names} ${paid}${source ? `, ${source}` : ""}`;
  },

  decide(reading, desk) {
    const mentions = reading.pieces ?? [];
    if (mentions.some((mention) => mention.number !== undefined)) {
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

/** "picked up the check for the desk 90": what was fetched is the money. */
function isMethodFetched({ tokens }: Clause): boolean {
  return tokens.some((token, at) => {
    if (token.roles.method === undefined) return false;
    return /^(?:the|my|her|his|their)$/.test(tokens[at - 1]?.text ?? "");
  });
}
