import * as z from "zod";
import type { Books } from "../books/books.ts";
import { checkPieces } from "../books/check.ts";
import { amountOf, onlyPiece } from "../books/facts.ts";
import { labelOf } from "../books/label.ts";
import { statusOf } from "../books/piece.ts";
import { postedBy, postedTo } from "../books/posted.ts";
import type { Problem } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { depositOf, sharesOfDeposit } from "../books/shares.ts";
import { type Ask, type Decision, NEVER_MIND } from "../decide/decision.ts";
import { dayWords, piecesOf, subjectOf } from "../decide/echo.ts";
import { held } from "../decide/fits.ts";
import { inAll } from "../decide/piece-choices.ts";
import { settlePieces } from "../decide/pieces.ts";
import { type Cents, show } from "../money.ts";
import { judgeFallthrough } from "../notes/judging/fallingthrough.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    fallthrough: {
      pieces?: Mention[];
      refunded?: Cents;
      kept?: Cents;
      /** All of the deposit went back, or half of it. */
      inFull?: true;
      half?: true;
    };
  }
}

function checkHeld(books: Books, numbers: readonly number[]): Problem | null {
  const number = numbers.find((each) => !books.pieces.get(each)!.hold);
  return number === undefined ? null : { kind: "piece not held", number };
}

const rules: FactRules<"fallthrough"> = {
  mends: ["amount", "date", "pieces"],
  data: z.strictObject({ kept: z.literal(true).optional() }),
  apply(books, fact) {
    const problem = checkPieces(books, fact.pieces) ?? checkHeld(books, fact.pieces);
    if (problem) return problem;
    const held = depositOf(fact.pieces.map((number) => books.pieces.get(number)!));
    const amount = fact.amount === undefined ? 0 : amountOf(fact);
    if (amount > held) return { kind: "more than held", held };
    const pieces = fact.pieces.map((number) => books.piece(number));
    const refunded = fact.data.kept ? held - amount : amount;
    const shares = sharesOfDeposit(pieces, refunded);
    pieces.forEach((piece, index) => {
      const kept = piece.deposit - shares[index]!;
      books.post("deposits held", piece.deposit, { piece: piece.number });
      books.post("deposits kept", -kept, { piece: piece.number });
      piece.depositsKept += kept;
      piece.deposit = 0;
      piece.hold = null;
    });
    books.post("cash", -refunded, { piece: onlyPiece(fact) });
    return null;
  },
};

/** How a buyer leaves a deal, or a deal its buyer. */
const OUT_OF_IT = [
  ...["cant make it", "wont make it", "cant come", "isnt going to make it", "not going to make it"].flatMap(
    (no) => [`${no} anymore`, `${no} after all`],
  ),
  ...["walked on", "walked away from", "lost the sale", "lost the buyer"],
  ...["lost my buyer", "lost our buyer", "never came for", "never came to get", "never came by for"],
  ...["never picked up", "never made it", "deal off", "deal is dead", "deals dead", "deal died", "deal dead"],
  ...["sale is off", "sale off", "sales off", "sale is dead", "deal fell apart", "sale fell apart"],
  ...["deal didnt work out", "sale didnt work out", "deal didnt go through", "sale didnt go through"],
  ...["sale of … is off", "sale on … is off", "deal on … is off"],
  ...["sale of … is dead", "deal on … is dead", "passed on … after all"],
  ...["has", "have", ""].flatMap((has) =>
    [
      "cried off",
      "pulled out",
      "pulled out of",
      "backed out",
      "bailed",
      "dropped out",
      "gone off",
      "gone cold on",
    ].map((left) => `${has} ${left}`.trim()),
  ),
  ...[
    "crying off",
    "bottled it",
    "bottled out",
    "chickened out",
    "wimped out",
    "did a runner",
    "done a runner",
  ],
  ...[
    "did a bunk",
    "let me down",
    "let us down",
    "went cold on",
    "reneged",
    "reneged on",
    "welched",
    "blew me off",
  ],
  ...[
    "blew us off",
    "jacked it in",
    "jacked it in on",
    "dropped out of buying",
    "called it off",
    "called it off on",
    "mucked me about",
    "messed me about",
    "messed me around",
    "mucked us about",
    "stiffed me",
  ],
  ...[
    "had second thoughts",
    "thought better of it",
    "never turned up",
    "never turned up for",
    "didnt turn up",
  ],
  ...[
    "didnt turn up for",
    "never arrived",
    "didnt came",
    "not came",
    "never come for",
    "didnt come for",
    "cried off on",
  ],
];

/** How a hold ends, said behind it, and what is done to it, said before. */
const HOLD_ENDED = [
  ...[
    "expired",
    "lapsed",
    "ended",
    "ran out",
    "is up",
    "is over",
    "is off",
    "is done",
    "is gone",
    "fell through",
  ],
  ...["is cancelled", "was cancelled", "is canceled", "was canceled", "is released", "was released"],
  ...["got cancelled", "got canceled", "has expired", "has lapsed", "timed out"],
];
const HOLD_TAKEN = [
  ...["released", "release", "releasing", "lifted", "lift", "lifting", "removed", "removing", "ended", "end"],
  ...["ending", "cancelled", "canceled", "canceling", "cancelling", "let go of", "cancel", "remove"],
];
const HOLD_TAKEN_OFF = ["took", "take", "taking", "taken"];

/** That somebody wants a piece no more. */
const WANT_NO_MORE = [
  ...["doesnt need", "does not need", "no longer needs"],
  ...["doesnt want", "does not want", "dont want", "no longer wants", "no longer want", "didnt want"],
  ...["isnt taking", "arent taking", "wont be taking", "wont take … after all", "cant take … after all"],
  ...["not taking … after all", "cant do … after all", "isnt getting", "arent buying", "arent taking"],
  ...["decided against", "decided not to buy", "decided not to take", "decided not to get"],
  ...["isnt gonna take", "isnt going to take", "not gonna take", "not going to take", "wont be getting"],
  ...[
    "not gonna buy",
    "not going to buy",
    "isnt gonna buy",
    "isnt going to buy",
    "not gonna get",
    "not taking",
  ],
  ...[
    "not going to get",
    "isnt gonna get",
    "cant buy … after all",
    "cant get … after all",
    "no longer taking",
  ],
  ...["no want", "not want", "no wants", "not wants", "no need", "isnt having", "not having … after all"],
  ...["isnt having … after all", "not have … after all"],
  ...["lost interest in", "no longer interested in", "not interested in … anymore", "cant take"],
];

export const fallthrough = defineVerb({
  kind: "fallthrough",
  example: "buyer backed out of desk, refunded 30",
  page: "notes",
  listed: (_, pieces) => `buyer backed out of ${pieces}`,
  story: (told) => {
    const kept = postedTo(told, "deposits kept");
    return `buyer backed out${kept === 0 ? "" : `, kept ${show(-kept)}`}`;
  },
  books: rules,
  byItsDay: true,
  reads: {
    says: [
      {
        say: [
          "backed out",
          "back out",
          "backing out",
          "backed out of",
          "fell through",
          "fell thru",
          "fall through",
          "falls through",
          "no show",
          "no showed",
          "noshow",
          "noshowed",
          "no call no show",
          "flaked",
          "flaked out",
          "bailed",
          "bailed out",
          "ghosted",
          "vanished",
          "disappeared",
          "ghosted me",
          "cancelled",
          "canceled",
          "never showed",
          "never showed up",
          "never came",
          "didnt show",
          "didnt show up",
          "did not show",
          "stood me up",
          "changed her mind",
          "changed his mind",
          "changed their mind",
          "changed mind",
          "changed minds",
          "changed their minds",
          "got cold feet",
          "buyer disappeared",
          "deal is off",
          "deals off",
          "sale fell through",
          "doesnt want it anymore",
          "isnt coming for",
          "not coming for",
          "aint coming for",
          "isnt buying",
          "not buying",
          "walked away",
          ...OUT_OF_IT,
        ],
      },
      { say: WANT_NO_MORE, with: ["piece"] },
      {
        say: [
          ...["off hold", "no longer on hold", "no longer holding", "not on hold anymore"],
          ...["not on hold any more", "isnt on hold anymore", "not holding … anymore"],
          ...[
            "available again",
            "up for grabs again",
            "back up for grabs",
            "back on the market",
            "free again",
          ],
          ...[
            "up for sale again",
            "back up for sale",
            "no longer pending",
            "not pending anymore",
            "unmark … pending",
          ],
          ...["unmarked … pending", "not reserved anymore", "no longer reserved", "no longer spoken for"],
          ...HOLD_ENDED.flatMap((ended) => [`hold ${ended}`, `hold … ${ended}`]),
          ...HOLD_TAKEN.map((took) => `${took} … hold`),
          ...HOLD_TAKEN_OFF.flatMap((took) => [`${took} … hold off`, `${took} … off hold`]),
          ...["drop the hold", "dropped the hold", "dropping the hold", "clear the hold", "cleared the hold"],
          ...[
            "unhold",
            "unholding",
            "unreserve",
            "unreserved",
            "un reserve",
            "un hold",
            "released",
            "release",
          ],
        ],
        with: ["piece"],
      },
      {
        say: [
          "deposit forfeited",
          "deposit … forfeited",
          "forfeited … deposit",
          "kept … deposit",
          "keeping … deposit",
          "refunded … deposit",
          "returned … deposit",
          "gave back … deposit",
          "gave … deposit back",
          "deposit … back",
          "deposit back",
          "deposit refunded",
          "deposit returned",
          ...["deposit", "down payment"].flatMap((put) => [
            ...[
              "refunded",
              "returned",
              "was refunded",
              "was returned",
              "went back",
              "given back",
              "sent back",
            ].map((back) => `${put} … ${back}`),
          ]),
        ],
        with: ["piece"],
      },
    ],
    slots: { pieces: "pieces" },
    bears: ["others act", "has a buyer", "of pieces"],
    needs: ["pieces"],
    absorbs: [
      "sale of",
      "sale",
      "refunded",
      "refund",
      "gave",
      "gave back",
      "returned",
      "kept",
      "keeping",
      "deposit",
      "back",
      "paid back",
      "sent back",
      "gave him back",
      "gave her back",
      "gave them back",
      "keep",
      "sent",
      "the deposit",
      "returning",
      "refunding",
      "got",
      "wants",
      "no show",
      "deposit back",
      "deposit refunded",
      "deposit returned",
      "was returned",
      "was refunded",
      "went back",
      "went",
      "hold",
      "on hold",
      "paid",
      ...["hanging on to", "hanging onto", "hung on to", "hung onto", "holding on to", "holding onto"],
      ...["stays", "anymore", "any more", "after all", "half"],
    ],
    judge: judgeFallthrough,
  },

  offered({ refunded, kept }, names) {
    const money = refunded ? `, gave back ${show(refunded)}` : kept ? `, kept ${show(kept)}` : "";
    return `Buyer of ${names} gone${money}`;
  },

  decide(told, desk) {
    const need = { fit: held, question: "fell through", unknown: "refuse", lacks: "not on hold" } as const;
    const settled = settlePieces(told, desk, need);
    if (settled.kind !== "settled") return settled;
    const reading = inAll(told, settled.pieces);
    const deposit = depositOf(piecesOf(desk.books, settled));
    const { refunded, kept: left } = sharesSaid(reading, deposit);
    const said = refunded ?? left;
    if (said !== undefined && said > deposit)
      return moreThanHeld(reading, deposit, labelOf(desk.books, settled.pieces));
    const isClear =
      said !== undefined && (left === undefined || refunded === undefined || refunded + left === deposit);
    const ask = isClear ? null : depositQuestion(deposit);
    if (ask) return { kind: "ask", ask };
    const kept = refunded === undefined && left !== undefined;
    return {
      kind: "record",
      facts: [
        {
          kind: "fallthrough",
          day: reading.date ?? desk.today,
          pieces: settled.pieces,
          amount: said ?? 0,
          data: kept ? { kept } : {},
        },
      ],
    };
  },
  echo({ fact, books, today }) {
    const back = -postedBy(books, fact, "cash");
    const kept = -postedBy(books, fact, "deposits kept");
    const [first] = piecesOf(books, fact);
    const isListed = first !== undefined && statusOf(first) === "listed";
    const state = `${subjectOf(books, fact)} ${isListed ? "listed again" : "off hold"}`;
    const given = back > 0 ? `, ${show(back)} given back` : "";
    const money = `${given}${kept > 0 ? `, ${show(kept)} kept` : ""}`;
    return [`Buyer gone: ${state}${money}${dayWords(fact, today)}`];
  },
});

/** No more can be given back or kept than is held: that is offered, where anything is. */
function moreThanHeld(reading: ReadingOf<"fallthrough">, deposit: Cents, names: string): Decision {
  const why = `Only ${show(deposit)} is held on ${names}.`;
  if (deposit === 0) return { kind: "refuse", why };
  const isKept = reading.refunded === undefined;
  const change = isKept ? { kept: deposit } : { refunded: deposit };
  const label = `${isKept ? "Kept" : "Gave back"} ${show(deposit)}`;
  const choices = [{ label, words: ["yes", "all"], effect: { kind: "settle" as const, change } }, NEVER_MIND];
  return { kind: "ask", ask: { prompt: `${why} Was it that?`, wants: "refunded", choices } };
}

/** What went back and what stayed, as far as said, of what is held. */
function sharesSaid(
  { refunded, kept, inFull, half }: ReadingOf<"fallthrough">,
  deposit: Cents,
): Pick<ReadingOf<"fallthrough">, "refunded" | "kept"> {
  if (refunded !== undefined || kept !== undefined) return { refunded, kept };
  if (inFull) return { refunded: deposit };
  return half && deposit > 0 ? { refunded: Math.floor(deposit / 2) } : {};
}

/** Where a deposit is held, what became of it has to be known; any part of it is taken as said. */
function depositQuestion(deposit: Cents): Ask | null {
  if (deposit === 0) return null;
  return {
    prompt: `${show(deposit)} is held. How much did you give back?`,
    wants: "refunded",
    choices: [
      {
        label: `Gave back ${show(deposit)}`,
        words: [
          "all",
          "everything",
          "gave it back",
          "gave it all back",
          "i gave it back",
          "all of it",
          "refunded",
          ...["gave everything", "returned everything", "refunded everything", "sent everything"],
          ...["full refund", "refunded all", "gave it all", "returned it", "sent it back", "sent all back"],
        ],
        effect: { kind: "settle", change: { refunded: deposit } },
      },
      {
        label: `Kept ${show(deposit)}`,
        words: [
          "nothing",
          "none",
          "kept it",
          "kept all",
          "keeping it",
          "keeping all",
          "no refund",
          "not a cent",
        ],
        effect: { kind: "settle", change: { refunded: 0 } },
      },
      NEVER_MIND,
    ],
  };
}
