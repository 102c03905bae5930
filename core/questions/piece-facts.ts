import type { Piece } from "../books/books.ts";
import { costOf, pieceLabel, statusOf } from "../books/piece.ts";
import { goneWords } from "../books/problem.ts";
import type { Day } from "../calendar.ts";
import { daysBetween, showDay } from "../calendar.ts";
import { showMinutes } from "../decide/echo.ts";
import { amountText, show } from "../money.ts";
import type { Desk } from "./desk.ts";
import { buyerOf, methodOf, personOf, placeOf } from "./filters.ts";
import type { Features } from "./rule.ts";
import { type Cue, cues } from "./words/cues.ts";

/** One thing that can be asked of a piece: a day, a name or a number of days, and how it is told. */
export interface PieceFact {
  name: string;
  when(f: Features): boolean;
  takes: readonly Cue[];
  /** As printed: a day, words as recorded, whole days; null where it is not so (yet). */
  of(piece: Readonly<Piece>, desk: Desk): string | null;
  /** "bought", "from": what stands before the value in the answer. */
  told: string;
}

const ALWAYS: readonly Cue[] = ["have", "which", "money"];

function day(
  cue: Cue,
  told: string,
  of: (piece: Readonly<Piece>, desk: Desk) => Day | null,
  more: readonly Cue[] = [],
): PieceFact {
  return {
    name: told,
    when: (f) => f.has("when") && f.has(cue, ...more),
    takes: [...ALWAYS, "when", cue, ...more, "got", "gone", "unsold", "listed"],
    of,
    told,
  };
}

/** Who of the household bought a piece: what "who bought" asks where nobody has bought it from us. */
export const OURS: PieceFact = {
  name: "ours",
  when: () => false,
  takes: [],
  of: (piece, { index }) => (piece.gone === "sold" ? null : (index.of(piece.number).buy?.by ?? null)),
  told: "bought by",
};

/** How long a piece that is still here took so far: "how long did the vanity take". */
export const TOOK: PieceFact = {
  name: "time worked",
  when: () => false,
  takes: [...ALWAYS, "howLong", "takes", "took", "minutes"],
  of: ({ minutes, gone }) => (gone || minutes === 0 ? null : String(minutes)),
  told: "minutes",
};

/** Where a piece is: in whose hands, or how far. */
function standing(piece: Readonly<Piece>, desk: Desk): string {
  const status = statusOf(piece);
  const buyer = buyerOf(desk, { piece, fact: null });
  if (status === "sold") return buyer ? `sold to ${buyer}` : "sold";
  if (status === "held") return buyer ? `on hold for ${buyer}` : "on hold";
  const place = status === "listed" ? placeOf(desk, piece) : null;
  return place
    ? `listed on ${place}`
    : piece.gone
      ? goneWords(piece.gone).replace(/^was /, "")
      : `here, ${status}`;
}

/** The facts of a piece, the more telling first. */
export const PIECE_FACTS: readonly PieceFact[] = [
  {
    // "what is the desk held at", "what did kim agree to pay for it"
    name: "agreed price",
    when: (f) => f.has("agreed"),
    takes: [...ALWAYS, "agreed", "held", "asking", "listed", "price", "paid", "sold", "fared"],
    of: ({ hold, gone }) => (gone || hold === null || hold.agreed === null ? null : amountText(hold.agreed)),
    told: "agreed at",
  },
  day("returned", "came back", (piece, { index }) => index.of(piece.number).returned),
  day("kept", "kept", (piece) => (piece.gone === "kept" ? piece.goneOn : null)),
  day("scrapped", "scrapped", (piece) => (piece.gone === "scrapped" ? piece.goneOn : null)),
  day("given", "given away", (piece) => (piece.gone === "given" ? piece.goneOn : null)),
  day("held", "on hold since", (piece) => piece.hold?.since ?? null),
  {
    ...day("listed", "listed", (piece) => piece.listed, ["daysListed", "asking"]),
    when: (f) =>
      f.has("when") && f.has("listed", "daysListed", "asking") && !f.has("sold", "sale", "soldFor"),
  },
  day("sold", "sold", (piece) => piece.sold, ["sale", "soldFor", "gone"]),
  day("finished", "finished", (piece) => piece.finished),
  day("started", "started", (piece) => piece.started),
  day("bought", "bought", (piece) => piece.bought, ["got", "price", "paid"]),
  {
    // "who sold the hutch", but "who was it sold to"
    name: "noter of the sale",
    when: (f) => /^(?:sold|sells?|moved|unloaded|flipped)$/.test(f.whoDid),
    takes: [...ALWAYS, "who", "sold"],
    of: (piece, desk) => (piece.sold === null ? null : personOf(desk, desk.index.of(piece.number).sell)),
    told: "sold by",
  },
  {
    name: "noter of the listing",
    when: (f) => /^(?:listed|posted|lists|put)$/.test(f.whoDid) && f.has("listed"),
    takes: [...ALWAYS, "who", "listed"],
    of: (piece, desk) => personOf(desk, desk.index.of(piece.number).list),
    told: "listed by",
  },
  {
    name: "finder",
    when: (f) => /^(?:found|scored|spotted|hauled|brought|snagged|dragged)$/.test(f.whoDid),
    takes: [...ALWAYS, "who", "got", "bought", "revenue"],
    of: (piece, desk) => personOf(desk, desk.index.of(piece.number).buy),
    told: "bought by",
  },
  {
    // "Who noted the hutch sale"
    name: "noter of the sale",
    when: (f) => f.has("who") && f.has("notes") && f.has("sold", "sale"),
    takes: [...ALWAYS, "who", "notes", "sold", "sale"],
    of: (piece, desk) => (piece.sold === null ? null : personOf(desk, desk.index.of(piece.number).sell)),
    told: "sold by",
  },
  {
    name: "buyer",
    when: (f) => f.has("buyerName"),
    takes: [...ALWAYS, "buyerName", "sold", "bought", "held", "who"],
    of: (piece, desk) => buyerOf(desk, { piece, fact: null }),
    told: "to",
  },
  {
    name: "buyer",
    when: (f) =>
      (f.has("who") &&
        f.has("sold", "took", "held", "gone", "paid", "deposits", "have", "soldFor", "sale")) ||
      (f.has("whose") && f.has("deposits", "held")),
    takes: cues("who whose sold took bought held gone paid got deposits loanPaid price soldFor sale", ALWAYS),
    of: (piece, desk) => buyerOf(desk, { piece, fact: null }),
    told: "to",
  },
  {
    name: "noter",
    when: (f) => f.has("who") && f.has("notes"),
    takes: [...ALWAYS, "who", "notes", "bought", "sold", "sale"],
    of: (piece, desk) => personOf(desk, desk.index.of(piece.number).buy),
    told: "noted by",
  },
  {
    name: "place",
    when: (f) => f.has("where") && f.has("listed", "asking"),
    takes: [...ALWAYS, "where", "listed", "asking"],
    of: (piece, desk) => placeOf(desk, piece),
    told: "listed on",
  },
  {
    // "where is the hutch", "where did it go"
    name: "standing",
    when: (f) =>
      f.has("where") && f.whereabouts && !f.has("bought", "got", "price", "paid", "sold", "revenue"),
    takes: [...ALWAYS, "where", "gone", "unsold", "fared"],
    of: standing,
    told: "is",
  },
  {
    name: "source",
    when: (f) => f.has("where") && !f.has("sold"),
    takes: [...ALWAYS, "where", "bought", "got", "price", "paid"],
    of: (piece) => piece.source,
    told: "from",
  },
  {
    name: "method",
    when: (f) => f.has("howPaid"),
    takes: [...ALWAYS, "howPaid", "paid", "sold", "bought", "price", "who"],
    of: (piece, desk) => methodOf(desk, "profit", { day: piece.bought, piece, fact: null, units: 0 }),
    told: "paid by",
  },
  {
    name: "buying method",
    when: () => false,
    takes: [...ALWAYS, "howPaid", "paid"],
    of: (piece, { index }) =>
      (index.of(piece.number).buy?.data as { method?: string } | undefined)?.method ?? null,
    told: "paid by",
  },
  {
    name: "last list price",
    when: () => false,
    takes: [...ALWAYS, "listed", "asking", "price"],
    of: (piece) => (piece.listPrice === null ? null : amountText(piece.listPrice)),
    told: "listed at",
  },
  {
    // "What was it listed at before i dropped it"
    name: "price before the drop",
    when: (f) => f.has("beforeDrop"),
    takes: [...ALWAYS, "beforeDrop"],
    of: ({ number }, { index }) => {
      const { prices } = index.of(number);
      const at = prices.findLastIndex(({ fact }) => index.cutBy.has(fact.id));
      return at > 0 ? amountText(prices[at - 1]!.cents) : null;
    },
    told: "listed at",
  },
  {
    name: "first list price",
    when: (f) => f.has("firstAsked"),
    takes: [...ALWAYS, "firstAsked", "listed", "asking"],
    of: (piece) => (piece.firstListPrice === null ? null : amountText(piece.firstListPrice)),
    told: "first listed at",
  },
  {
    // "whats the hutch at"
    name: "asking price",
    when: (f) => f.endsAt && !f.has("where", "when", "who"),
    takes: [...ALWAYS, "fared", "listed", "asking"],
    of: (piece) => (piece.gone || piece.listPrice === null ? null : amountText(piece.listPrice)),
    told: "listed at",
  },
  {
    // "How long has #18 been on hold"
    name: "days held",
    when: (f) => f.has("howLong") && f.has("held"),
    takes: [...ALWAYS, "howLong", "held", "unsold", "had"],
    of: ({ hold, gone }, { today }) =>
      gone || hold === null ? null : String(daysBetween(hold.since, today)),
    told: "days",
  },
  {
    name: "days had",
    when: (f) =>
      f.has("howLong") &&
      !f.habit &&
      f.has("had", "have", "bought", "unsold", "sat") &&
      !f.has("sold", "takes", "listed"),
    takes: [...ALWAYS, "howLong", "had", "bought", "unsold", "sat", "got"],
    of: (piece, { today }) => String(daysBetween(piece.bought, piece.goneOn ?? today)),
    told: "days",
  },
  {
    name: "status",
    when: (f) => f.has("whatStatus"),
    takes: [...ALWAYS, "whatStatus"],
    of: (piece) => statusOf(piece),
    told: "is",
  },
];

/** A fact in a line: "#21 dresser: to student". */
export function factLine(piece: Readonly<Piece>, fact: PieceFact, desk: Desk): string {
  const value = fact.of(piece, desk);
  if (value === null) return `${pieceLabel(piece)}: ${unknownWords(piece, fact, desk)}`;
  const shown = /^\d{4}-\d{2}-\d{2}$/.test(value) ? showDay(value, desk.today) : value;
  if (fact.told === "minutes")
    return `${pieceLabel(piece)}: ${showMinutes(Number(value))} of work so far, not sold`;
  return fact.told === "days"
    ? `${pieceLabel(piece)}: ${shown} days`
    : `${pieceLabel(piece)}: ${fact.told} ${shown}`;
}

/** Why there is nothing to tell: it has not happened, or nobody noted it. */
function unknownWords(piece: Readonly<Piece>, fact: PieceFact, desk: Desk): string {
  if (fact.name === "buyer" || fact.name === "sold" || fact.name === "asking price") {
    if (!piece.gone)
      return fact.name === "asking price" ? `not listed, cost ${show(costOf(piece))} so far` : "not sold";
    if (piece.gone !== "sold" || fact.name === "asking price")
      return `${goneWords(piece.gone)} ${showDay(piece.goneOn!, desk.today)}`;
  }
  if (fact.name === "agreed price")
    return piece.gone ? goneWords(piece.gone).replace(/^was /, "") : "no price agreed on";
  if (fact.name === "time worked") return "no hours noted, not sold";
  return fact.told === "to" || fact.told === "from" || fact.told === "paid by"
    ? "not noted"
    : `not ${fact.told}`;
}
