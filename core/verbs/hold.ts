import * as z from "zod";
import { dueAtPickup } from "../books/agreed.ts";
import type { Books, Hold, Piece } from "../books/books.ts";
import { checkNotGone } from "../books/check.ts";
import { amountOf, type FactOf, onlyPiece } from "../books/facts.ts";
import { postedBy, postedTo } from "../books/posted.ts";
import type { FactRules } from "../books/rules.ts";
import { centsShape, dayShape, wordsShape } from "../books/shapes.ts";
import { depositOf } from "../books/shares.ts";
import { addDays, type Day, showDay } from "../calendar.ts";
import { isAnother, toldApart } from "../decide/deals/whom.ts";
import { type Ask, confirmation, type Desk, NEVER_MIND } from "../decide/decision.ts";
import { dayWords, methodWords, piecesOf, subjectOf } from "../decide/echo.ts";
import { inAll } from "../decide/pieces/choices.ts";
import { here } from "../decide/pieces/fits.ts";
import { byNumbers } from "../decide/pieces/mentioned.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { judgeHold } from "../notes/judging/holding.ts";
import type { Reading, ReadingOf } from "../notes/reading.ts";
import { A_WEEKDAY } from "../notes/words/times.ts";
import { phrases } from "../notes/words/words.ts";
import { splitEvenly } from "../split.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    hold: {
      pieces?: Mention[];
      deposit?: Cents;
      method?: string;
      buyer?: string;
      until?: Day;
      /** The whole price that was agreed on, deposit included. */
      agreed?: Cents;
    };
  }
}

const rules: FactRules<"hold"> = {
  mends: ["amount", "agreed", "date", "until", "method", "buyer", "pieces"],
  data: z.strictObject({
    buyer: wordsShape.optional(),
    until: dayShape.optional(),
    method: wordsShape.optional(),
    agreed: centsShape.optional(),
  }),
  apply(books, fact) {
    const problem = checkNotGone(books, fact.pieces);
    if (problem) return problem;
    const deposit = fact.amount === undefined ? 0 : amountOf(fact);
    const shares = splitEvenly(deposit, fact.pieces.length);
    const { buyer, until } = fact.data;
    const agreed = fact.data.agreed && splitEvenly(fact.data.agreed, fact.pieces.length);
    fact.pieces.forEach((number, index) => {
      const piece = books.piece(number);
      // A second deposit on a held piece adds up; what it does not say stays as it was.
      const { hold } = piece;
      piece.hold = {
        since: hold?.since ?? fact.day,
        buyer: buyer ?? hold?.buyer ?? null,
        until: until ?? hold?.until ?? null,
        agreed: agreed ? agreed[index]! : agreedBefore(hold, buyer),
      };
      piece.deposit += shares[index]!;
      books.post("deposits held", -shares[index]!, { piece: number });
    });
    books.post("cash", deposit, { piece: onlyPiece(fact) });
    return null;
  },
};

/** What was agreed on stays until another price is said, or another buyer. */
function agreedBefore(hold: Hold | null, buyer: string | undefined): Cents | null {
  const isAnothers = buyer !== undefined && hold !== null && hold.buyer !== null && hold.buyer !== buyer;
  return isAnothers ? null : (hold?.agreed ?? null);
}

/** What money is sent for, so that a piece is kept. */
const TO_KEEP_IT = phrases("reserve secure lock_in lock_down lock_it_in claim guarantee save").map(
  (keep) => `to ${keep}`,
);

const MARKED = ["mark", "marked", "marking"];

const DIBS = phrases("dibs_on has_dibs_on called_dibs_on got_dibs_on first_dibs_on has_first_dibs_on");

/** Who had backed out is back. */
const AFTER_ALL = ["is taking … after all", "is buying … after all", "is getting … after all"].concat(
  "is back on for",
  "back on for",
  "is back in for",
);

/** "she only put down 50", "her deposit was 50" of what a deposit is held on: all that it was, or more of it. */
function moreOrAll(reading: ReadingOf<"hold">, pieces: readonly Readonly<Piece>[], desk: Desk): Ask | null {
  const { deposit, text, line } = reading;
  const held = depositOf(pieces);
  const isDoubted = deposit !== undefined && held > 0 && /\b(?:only|was|make|makes)\b/i.test(text);
  if (!isDoubted || desk.confirmed.includes("more deposit")) return null;
  const mentions = byNumbers(pieces.map(({ number }) => number));
  const mend: Reading = {
    kind: "mend",
    of: { kind: "hold", pieces: mentions },
    to: { amount: deposit },
    text,
    line,
  };
  return {
    prompt: `${show(held)} is held already. Is ${show(deposit)} all of it, or more?`,
    wants: "choice",
    choices: [
      {
        label: `${show(deposit)} in all`,
        words: ["all", "in all"],
        effect: { kind: "instead", readings: [mend] },
      },
      {
        label: `${show(deposit)} more`,
        words: ["more"],
        effect: { kind: "settle", confirm: "more deposit" },
      },
      NEVER_MIND,
    ],
  };
}

export const hold = defineVerb({
  kind: "hold",
  example: "deposit 45 on desk transfer",
  page: "notes",
  listed: (_, pieces) => `held ${pieces}`,
  story: (told) => {
    const deposit = postedTo(told, "deposits held");
    const { buyer, agreed } = told.fact.data;
    return `held${buyer ? ` for ${buyer}` : ""}${agreed ? ` at ${show(agreed)}` : ""}${deposit === 0 ? "" : `, deposit ${show(-deposit)}`}`;
  },
  said: ({ data }) => data.buyer ?? null,
  books: rules,
  goesOn: {
    pieces: "alike",
    carries: ({ amount, data: { until, buyer, agreed } }) => ({ deposit: amount, until, buyer, agreed }),
  },
  byItsDay: true,
  upon: "listed",
  reads: {
    says: [
      {
        say: phrases("deposit deposits deposited depost took_deposit got_deposit holding_deposit"),
      },
      { say: "holds", with: ["piece"], without: ["supply"], light: true },
      {
        say: phrases(
          "hold holding held on_hold put_…_on_hold putting_…_on_hold reserved reserve spoken_for saved_…_for promised_to set_aside_for earmarked_for on_layaway layaway hold_for held_for holding_for",
        ),
      },
      {
        say: [
          ...phrases(
            "down_on down_for to_hold down_from down_payment down_payment_on down_payment_for put_…_down put_…_down_on put_down left_…_deposit left_…_down money_down half_up_front_on up_front_on up_front_for half_down_on half_now_on earnest_money partial_payment part_payment",
          ),
          ...TO_KEEP_IT,
          ...phrases("first_payment put_…_toward put_…_towards nonrefundable_deposit non_refundable_deposit"),
        ],
        with: ["number"],
        without: ["loan", "supply", "percent"],
      },
      {
        say: [
          "set … aside",
          "setting … aside",
          "put … aside",
          "putting … aside",
          ...["tucked … away for", ...DIBS],
          ...AFTER_ALL,
        ],
        with: ["piece"],
      },
      { say: [...DIBS, ...AFTER_ALL], with: ["pronoun"] },
      { say: "down", with: ["piece", "number"], light: true },
      {
        say: ["gave me … toward", "gave me … towards", "left … on"],
        with: ["piece", "number"],
        without: ["loan", "supply"],
        light: true,
      },
      {
        say: MARKED.flatMap((marked) =>
          phrases("pending as_pending on_hold as_on_hold reserved as_reserved sold_pending held as_held").map(
            (how) => `${marked} … ${how}`,
          ),
        ),
        with: ["piece"],
        without: ["number"],
      },
      { say: ["keeping … aside", "keep … aside", "kept … aside"], with: ["piece"] },
      {
        say: phrases("put_…_by put_…_to_one_side set_…_to_one_side put_…_to_the_side keep_…_to_one_side"),
        with: ["piece"],
        without: ["number"],
      },
      {
        say: ["nonrefundable", "non refundable", "nonrefundable on", "nonrefundable for"],
        with: ["piece", "number"],
        without: ["supply", "loan"],
      },
      { say: "saving", with: ["piece"], without: ["number"], light: true },
      { say: ["pending", "is pending", "pending pickup", "sale pending"], with: ["piece"], light: true },
    ],
    slots: { pieces: "pieces", deposit: "money", method: "method", buyer: "buyer", until: "until" },
    bears: ["others act", "has a buyer", "of pieces", "not a part"],
    main: "deposit",
    needs: ["pieces"],
    absorbs: phrases(
      "deposit down down_on hold holding held on_hold took got made paid put left gave pickup picking_up pick_up coming comes is_coming wants pending till collecting received put_down to_hold coming_back will_pick_up picks_up called texted sent sent_me messaged emailed nonrefundable non_refundable transferred dropped_off handed wired layaway on_layaway first_payment half second another third extra",
    ),
    judge: judgeHold,
  },

  offered({ deposit, buyer, agreed, until }, names) {
    return `Hold ${names}${buyer ? ` for ${buyer}` : ""}${until ? ` until ${showDay(until, until)}` : ""}${agreed ? ` at ${show(agreed)}` : ""}${deposit ? `, deposit ${show(deposit)}` : ""}`;
  },

  decide(said, desk) {
    const settled = settlePieces(said, desk, { fit: here, question: "is on hold", unknown: "add" });
    if (settled.kind !== "settled") return settled;
    const reading = inAll(said, settled.pieces);
    const { deposit, method } = reading;
    const pieces = piecesOf(desk.books, settled);
    const isKnown = pieces.some(({ hold }) => hold?.buyer);
    const buyer = isKnown ? toldApart(reading.buyer) : reading.buyer;
    const until = holdUntil(reading, desk.today);
    const other = pieces.find((piece) => isAnother(buyer, piece.hold?.buyer));
    if (other && !desk.confirmed.includes("second buyer")) {
      const prompt = `It is already on hold for ${other.hold!.buyer}. Hold it for ${buyer} as well?`;
      return { kind: "ask", ask: confirmation(prompt, { label: "Yes, hold it", confirm: "second buyer" }) };
    }
    const more = moreOrAll(reading, pieces, desk);
    if (more) return { kind: "ask", ask: more };
    const { agreed } = reading;
    const doubt =
      agreed === undefined ? null : doubtOfPrice(agreed, depositOf(pieces) + (deposit ?? 0), desk);
    if (doubt) return { kind: "ask", ask: doubt };
    const data = {
      ...(buyer ? { buyer } : {}),
      ...(until ? { until } : {}),
      ...(method ? { method } : {}),
      ...(agreed ? { agreed } : {}),
    };
    const amount = deposit ? { amount: deposit } : {};
    const day = reading.date ?? desk.today;
    return { kind: "record", facts: [{ kind: "hold", day, pieces: settled.pieces, ...amount, data }] };
  },
  echo({ fact, books, today }) {
    const buyer = fact.data.buyer ? ` for ${fact.data.buyer}` : "";
    const agreed = fact.data.agreed ? ` at ${show(fact.data.agreed)}` : "";
    const until = fact.data.until ? ` until ${showDay(fact.data.until, today)}` : "";
    const first = `${subjectOf(books, fact)} on hold${buyer}${agreed}${until}${dayWords(fact, today)}`;
    if (!fact.amount) return [first];
    const deposit = `deposit ${show(fact.amount)}${methodWords(fact.data.method)}`;
    const sale = saleAfter(books, fact);
    const pieces = piecesOf(books, fact);
    const due = dueAtPickup(pieces);
    const rest = due === null ? "" : `; ${show(due)} at pickup`;
    const held = `${show(depositOf(pieces))} held: owed, not earned yet${rest}`;
    return [`${first}, ${deposit}`, sale ?? held];
  },
});

/** A price below what has been paid already is hardly the whole of it. */
function doubtOfPrice(agreed: Cents, deposit: Cents, desk: Desk): Ask | null {
  if (agreed >= deposit || desk.confirmed.includes("agreed price")) return null;
  const prompt = `${show(deposit)} deposit is more than ${show(agreed)} in all. Is that right?`;
  return confirmation(prompt, { label: `Yes, ${show(agreed)} in all`, confirm: "agreed price" });
}

/** "till saturday" said on a saturday is a week on: a hold until today holds nothing. */
function holdUntil({ until, text }: ReadingOf<"hold">, today: Day): Day | undefined {
  return until === today && A_WEEKDAY.test(text) ? addDays(today, 7) : until;
}

/** A deposit told of after the sale is part of the price recorded then: what that leaves for its day. */
function saleAfter(books: Books, { day, pieces }: FactOf<"hold">): string | null {
  if (pieces.every((number) => books.pieces.get(number)!.gone !== "sold")) return null;
  const ids = pieces.flatMap((number) => books.story.get(number) ?? []);
  const sale = books.facts.findLast(
    (fact) => fact.kind === "sell" && fact.day >= day && ids.includes(fact.id),
  );
  if (sale?.kind !== "sell") return null;
  if ((sale.data.deposit ?? "applied") !== "applied") return "Settled with the sale, as said then.";
  const used = postedBy(books, sale, "deposits held");
  const price = sale.amount ?? 0;
  return `${show(price)}: ${show(used)} deposit, ${show(price - used)} that day`;
}
