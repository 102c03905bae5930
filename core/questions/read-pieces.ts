import type { Piece } from "../books/books.ts";
import type { Desk } from "./desk.ts";
import { passes } from "./filters.ts";
import { leftOver } from "./left-over.ts";
import { narrowed, type Refusal, refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import { OURS, PIECE_FACTS, type PieceFact, TOOK } from "./piece-facts.ts";
import { type PieceState, STATES, WAS_LISTED } from "./piece-states.ts";
import type { Filter, Period } from "./query.ts";
import { periodOf } from "./read-period.ts";
import type { Features } from "./rule.ts";
import { cues } from "./words/cues.ts";

/** A question about single pieces: one fact of each, or whether something is so. */
export type PieceQuestion =
  | { kind: "fact"; fact: PieceFact; pieces: readonly Readonly<Piece>[]; filters: readonly Filter[] }
  | {
      kind: "yes or no";
      state: PieceState;
      pieces: readonly Readonly<Piece>[];
      period: Period | null;
      filters: readonly Filter[];
      /** "any chair": one is enough. */
      any: boolean;
    };

/** The pieces that filters leave, by number. */
export function piecesOf(desk: Desk, filters: readonly Filter[]): Readonly<Piece>[] {
  const named = filters.find(({ dimension, not }) => dimension === "piece" && !not);
  const all = named
    ? named.values.flatMap((value) => desk.books.pieces.get(Number(value)) ?? [])
    : [...desk.books.pieces.values()];
  return all
    .filter((piece) =>
      passes({ day: piece.bought, piece, fact: null, units: 0 }, filters, {
        desk,
        measure: "profit",
        units: piece.price,
      }),
    )
    .sort((a, b) => a.number - b.number);
}

/** "who did i buy it from": a word that looks for the one who comes after it. */
function endsFrom(parts: Parts): boolean {
  return parts.marks.at(-1)?.senses.link === "from" || (parts.marks.at(-1)?.text.endsWith(" from") ?? false);
}

/** "How did the student pay": the word of the method, where but one piece went to them. */
function howOnePaid(parts: Parts, f: Features, desk: Desk): PieceQuestion | null {
  const isPlain = !f.period && !f.supply && !f.source && !f.limit && !f.order && !f.by && !f.beside;
  if (!f.asksWay || !(f.acting || f.buyer) || !isPlain || f.has("average", "median", "howMany")) return null;
  const fact = PIECE_FACTS.find(({ name }) => name === "method")!;
  const read = readFact(parts, fact, desk);
  return read.kind === "fact" && read.pieces.length === 1 ? read : null;
}

/** A question about single pieces, or null where it is none. */
export function readPieces(parts: Parts, f: Features, desk: Desk): PieceQuestion | Refusal | null {
  if (!f.piece) return howOnePaid(parts, f, desk);
  if (parts.orders.length > 0 || parts.groups.some(({ parted }) => parted) || parts.besideAt.length > 0)
    return null;
  const asksFigure = f.has(
    "howMany",
    "earn",
    "net",
    "revenue",
    "spent",
    "minutes",
    "miles",
    "fees",
    "hourly",
    "average",
    "median",
    "reached",
    "comeDown",
    "list",
    "notes",
  );
  // "How long did the vanity take": nothing that is still here took its days to sell.
  const took =
    f.has("howLong") && f.has("takes", "took") && !f.has("daysToSell", "sold", "listed", "loan", "average");
  const fact = took && isHere(parts, desk) ? TOOK : factOf(parts, f);
  const asksMuch = parts.marks.some(({ text }) => text.includes("how much"));
  // "How much was i asking for the hutch" asks for a price, whatever the piece has come to since.
  const isPrice = /price$|price before/.test(fact?.name ?? "") && fact?.name !== "agreed price";
  if (fact && (!asksMuch || isPrice) && !f.has("howMany", "average", "median", "earn", "net"))
    return readFact(parts, fact, desk);
  if (asksFigure || f.has("cost", "price", "soldFor", "daysToSell", "daysListed", "tiedUp", "interest"))
    return null;
  if (f.has("money") || f.has("when", "where", "who", "howLong", "which")) return null;
  return readYesNo(parts, f, desk);
}

/** Whether one piece is named, and all that may be meant is still here. */
function isHere(parts: Parts, desk: Desk): boolean {
  const found = narrowed(parts, "profit", desk);
  if ("kind" in found || parts.items.some(({ mark }) => mark.senses.thing?.plural)) return false;
  const pieces = piecesOf(
    desk,
    found.map(({ filter }) => filter),
  );
  return pieces.length > 0 && pieces.every(({ gone }) => !gone);
}

function factOf(parts: Parts, f: Features): PieceFact | null {
  if (f.has("who") && f.has("bought", "got", "paid") && endsFrom(parts))
    return {
      ...PIECE_FACTS.find(({ name }) => name === "source")!,
      takes: ["who", "bought", "got", "have", "paid", "price"],
    };
  // "Who sold me the trunk" is asked of whom it was bought from.
  if (f.has("who") && /\bsold (?:it to )?(?:me|us)\b|\bsold \S+(?: \S+)? to (?:me|us)\b/.test(parts.said))
    return { ...PIECE_FACTS.find(({ name }) => name === "source")!, takes: ["who", "sold", "have"] };
  if (/^(?:which|what) (?:buyer|customer)\b/.test(parts.said) && f.has("bought", "got", "took"))
    return {
      ...PIECE_FACTS.find(({ name }) => name === "buyer")!,
      takes: ["which", "bought", "got", "took"],
    };
  // "When did the nurse buy the hutch": the day of our sale.
  if (f.acting && f.has("when") && f.has("bought", "got", "took"))
    return { ...PIECE_FACTS.find(({ name }) => name === "sold")!, takes: ["when", "bought", "got", "took"] };
  const isBuyer = f.has("who") && f.has("bought") && !f.person;
  if (isBuyer) return PIECE_FACTS.find(({ name }) => name === "buyer")!;
  const named = (name: string): PieceFact => PIECE_FACTS.find((each) => each.name === name)!;
  if (parts.first === "how" && f.has("paid", "howPaid") && !f.has("money", "howMany")) {
    const isMine = f.has("bought", "price") || parts.marks.some(({ text }) => /\bdid (?:i|we)\b/.test(text));
    return {
      ...named(isMine ? "buying method" : "method"),
      takes: ["paid", "howPaid", "have", "price", "bought", "sold", "sale", "when"],
    };
  }
  // "What was #39 listed at": the last price of a piece that is gone as well.
  const { said } = parts;
  if (f.has("asking") && f.has("last"))
    return { ...named("last list price"), takes: ["last", "asking", "listed", "have"] };
  const isPut = f.has("listed") && f.endsAt;
  if ((f.has("asking") || isPut) && /\b(?:was|were|did)\b/.test(said) && !f.has("sold", "soldFor", "howLong"))
    return named("last list price");
  const found = PIECE_FACTS.find((each) => each.when(f));
  if (found) return found;
  // "#7 buyer"
  if (f.has("buyerName")) return named("buyer");
  // "who ended up with #22"
  const isBare = f.has("who") && [...parts.cues.keys()].every((cue) => /^(?:who|have|got|once)$/.test(cue));
  return isBare ? { ...named("buyer"), takes: ["who", "have", "got", "once"] } : null;
}

function readFact(parts: Parts, fact: PieceFact, desk: Desk): PieceQuestion | Refusal {
  const found = narrowed(parts, "profit", desk);
  if ("kind" in found) return found;
  const used = new Set(fact.takes.includes("which") ? parts.groups.map(({ at }) => at) : []);
  const fault = leftOver(parts, fact.takes, { used });
  if (fault) return fault;
  if (parts.amounts.length > 0) return refusal(parts.marks[parts.amounts[0]!.at]!);
  const filters = found.map(({ filter }) => filter);
  const pieces = piecesOf(desk, filters);
  const has = (some: PieceFact): boolean => pieces.some((piece) => some.of(piece, desk) !== null);
  const isSold = parts.cues.has("sold");
  const meant = fact.name === "buyer" && !isSold && !has(fact) && has(OURS) ? OURS : fact;
  return { kind: "fact", fact: meant, pieces, filters };
}

function readYesNo(parts: Parts, f: Features, desk: Desk): PieceQuestion | Refusal | null {
  // "Any dressers?", "got any tables?"
  const isAny =
    /^(?:(?:got|have|do i have|you got) )?any\b/.test(parts.said) &&
    [...parts.cues.keys()].every((cue) => cue === "got" || cue === "have");
  const standing = STATES.find(({ cue }) => (isAny ? cue === "have" : f.has(cue)));
  const isPast = standing?.cue === "listed" && /^(?:was|were|did|had)$/.test(parts.first);
  const state = isPast ? WAS_LISTED : standing;
  // "What did i refund on #16" is no yes or no.
  const isOpen = /^(?:returned|deposits)$/.test(state?.cue ?? "") && /^(?:what|how)$/.test(parts.first);
  if (!state || f.told || isOpen || !(parts.yesNo || f.number || isAny)) return null;
  const found = narrowed(parts, "profit", desk);
  if ("kind" in found) return found;
  const fault = leftOver(parts, [state.cue, ...cues("have got gone unsold listed asking sat takes")]);
  if (fault) return fault;
  if (parts.amounts.length > 0 || parts.limits.length > 0) return null;
  const period = periodOf(parts);
  if (period && "kind" in period) return period;
  const filters = found.map(({ filter }) => filter);
  const any = parts.marks.some(({ text }) => /\b(?:any|an?)\b/.test(text)) || parts.periods.length > 0;
  return { kind: "yes or no", state, pieces: piecesOf(desk, filters), period, filters, any };
}
