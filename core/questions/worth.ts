import { Decimal } from "decimal.js";
import { counted } from "../answers/wording.ts";
import type { Piece } from "../books/books.ts";
import { costOf, pieceLabel } from "../books/piece.ts";
import { daysBetween } from "../calendar.ts";
import { amountText, type Cents, roundHalfUp, show } from "../money.ts";
import { suggestPrice } from "../past-sales.ts";
import type { Answered } from "./answered.ts";
import type { Desk } from "./desk.ts";
import { leftOver } from "./left-over.ts";
import { narrowed, type Refusal, refusal } from "./narrowing.ts";
import { answerOffer, whichOne } from "./offered.ts";
import { historyFor, middleOf, type OwnHistory, quantile, thinWords, usualHour } from "./own-history.ts";
import type { Parts } from "./parts.ts";
import { piecesOf } from "./read-pieces.ts";
import type { Features } from "./rule.ts";
import { cues } from "./words/cues.ts";

/** What a piece is worth buying at, or what to ask for one. */
export type WorthQuestion =
  | { kind: "worth"; kindOf: string; traits: readonly string[]; price: Cents | null; tooMuch: boolean }
  | {
      kind: "ask for";
      pieces: readonly Readonly<Piece>[];
      kindOf: string | null;
      traits: readonly string[];
      /** "Is 240 too high for the hutch": a price held against what to ask. */
      held?: { price: Cents; tooLow: boolean };
      /** Whether to come down now is asked: "should i drop the price on the vanity". */
      drops?: true;
    }
  /** Whether to take so much for a piece of ours; null: how low to go. */
  | { kind: "offer"; pieces: readonly Readonly<Piece>[]; price: Cents | null };

/** Fewer sales than this are no history at all. */
const SALES_MIN = 3;

/** A question about a price to pay or to ask, or null. */
export function readWorth(parts: Parts, f: Features, desk: Desk): WorthQuestion | Refusal | null {
  const { said } = parts;
  const isDrop = said.startsWith("should i drop the price on ") && parts.amounts.length === 0;
  const isAsking =
    isDrop ||
    f.has("askFor") ||
    // "What would a lamp go for", "what should i list the vanity at"
    (/\b(?:would|could|might)\b/.test(said) &&
      f.has("soldFor", "revenue", "sold") &&
      !f.has("bought", "paid")) ||
    /\bshould (?:i|we) (?:list|post|sell|price)\b.* (?:at|for)$/.test(said) ||
    asksWorth(parts) ||
    (f.has("asking") && parts.first === "what" && parts.marks.some(({ text }) => text.includes("should")));
  // "Was offered 60 for the mirror and took it" tells, and "guy offered 60 for the mirror" asks nothing.
  const asksOffer =
    /\b(?:should|how low|lowest|least|do i|take it|take that|accept(?: it| that)?)\b/.test(said) &&
    !/\b(?:took|accepted|agreed)\b/.test(said);
  const isOffer = f.has("offered") && asksOffer && parts.limits.length === 0 && parts.amounts.length < 2;
  if (!f.piece || !(f.has("advice") || isAsking || isOffer) || f.has("hourly")) return null;
  if (!isAsking && !isOffer && !isAboutBuying(parts)) return null;
  const found = narrowed(parts, "profit", desk);
  if ("kind" in found) return found;
  const used = new Set([...parts.amounts, ...parts.limits].flatMap(({ at }) => [at, at + 1]));
  parts.marks.forEach(({ senses }, at) => {
    if (senses.limit) used.add(at);
  });
  const fault = leftOver(
    parts,
    [
      "advice",
      "askFor",
      ...(isOffer ? (["offered", "takes", "took"] as const) : []),
      ...cues("bought paid price money asking which got cost listed todo earn spent take have"),
      ...(isDrop ? (["priceCut"] as const) : []),
      ...(isAsking ? (["soldFor", "revenue", "sold"] as const) : []),
    ],
    { used },
  );
  if (fault) return fault;
  const kindOf = found.find(({ filter }) => filter.dimension === "kind")?.filter.values[0] ?? null;
  const traits = found
    .filter(({ filter }) => filter.dimension === "trait")
    .flatMap(({ filter }) => filter.values);
  const other = found.find(
    ({ filter }) => !["kind", "trait", "piece"].includes(filter.dimension) || filter.not,
  );
  if (other) return refusal(other.item.mark);
  if (isAsking || isOffer) {
    const pieces = piecesOf(
      desk,
      found.map(({ filter }) => filter),
    ).filter((piece) => !piece.gone);
    if (isOffer) return { kind: "offer", pieces, price: parts.amounts[0]?.cents ?? null };
    // "Whats a dresser worth" is asked of none in particular.
    const isAny = asksWorth(parts) && /\ban? (?:\w+ )?\w+ worth\b/.test(said);
    return {
      kind: "ask for",
      pieces: isAny ? [] : pieces,
      kindOf,
      traits,
      ...(isDrop ? { drops: true as const } : {}),
    };
  }
  const amounts = [...parts.amounts, ...parts.limits];
  if (amounts.length > 1) return null;
  const tooMuch = parts.marks.some(({ text }) =>
    /^(?:too (?:much|high|steep|pricey|expensive)|overpriced)/.test(text),
  );
  const tooLow = parts.marks.some(({ text }) => /^too (?:low|cheap|little)/.test(text));
  // What is here is to be sold, and not bought.
  const ours =
    amounts.length === 1 && (tooMuch || tooLow) && (f.number || /\b(?:the|my|our)\b/.test(said))
      ? piecesOf(
          desk,
          found.map(({ filter }) => filter),
        ).filter((piece) => !piece.gone)
      : [];
  if (ours.length > 0)
    return { kind: "ask for", pieces: ours, kindOf, traits, held: { price: amounts[0]!.cents, tooLow } };
  if (kindOf === null || tooLow) return null;
  return { kind: "worth", kindOf, traits, price: amounts[0]?.cents ?? null, tooMuch };
}

/** "What is the oak desk worth", "value of the vanity": what it would bring. */
function asksWorth({ said, amounts, limits }: Parts): boolean {
  if (amounts.length + limits.length > 0) return false;
  return (
    /^(?:so |and )?(?:what|whats|how much)\b.* worth$/.test(said) ||
    /^(?:the )?(?:value|worth) of\b/.test(said) ||
    /^(?:(?:so |and )?(?:whats|what is|what would be) )?(?:a |the )?(?:fair|good|right|decent) price (?:for|on)\b/.test(
      said,
    )
  );
}

/** An amount to pay, or words that look for one. */
function isAboutBuying(parts: Parts): boolean {
  if (parts.amounts.length + parts.limits.length > 0) return true;
  return parts.marks.some(({ text }) => /\b(?:pay|most|max|highest|offer)\b/.test(text));
}

export function answerWorth(desk: Desk, question: WorthQuestion): Answered {
  if (question.kind === "offer") return answerOffer(desk, question);
  return question.kind === "worth" ? answerBuying(desk, question) : answerAsking(desk, question);
}

function tooThin({ sales }: OwnHistory): Answered {
  return {
    understood: true,
    value: null,
    period: null,
    text: `Too few sales to tell: ${counted(sales.length, "piece")} sold so far.`,
  };
}

function answerBuying(
  desk: Desk,
  { kindOf, traits, price, tooMuch }: Extract<WorthQuestion, { kind: "worth" }>,
): Answered {
  const history = historyFor(desk, kindOf, traits);
  if (history.sales.length < SALES_MIN) return tooThin(history);
  const margins = history.sales.map(({ margin }) => margin);
  const hour = usualHour(desk);
  const most = mostToPay(hour, history);
  const lines = [
    thinWords(history) ?? `Going by your ${history.sales.length} ${history.name} sold`,
    `They take ${quantile(
      history.sales.map(({ daysToSell }) => daysToSell),
      0.5,
    )} days to sell (median)`,
  ];
  const margin = middleMargin(history);
  // Where the usual hour leaves nothing to pay, what still gains is told beside it.
  const top =
    hour === null || (most === 0 && margin > 0)
      ? `Pay less than ${show(Math.max(0, margin))} to gain anything`
      : `Pay at most ${show(most)} for your usual ${show(hour)} an hour`;
  if (most === 0 && margin > 0) lines.push(`Your usual ${show(hour ?? 0)} an hour leaves nothing to pay`);
  if (price === null)
    return {
      understood: true,
      value: amountText(most === 0 ? Math.max(0, margin) : most),
      period: null,
      text: [`${top} (estimate)`, ...lines].join("\n"),
    };
  const at = (quarter: number): string => show(quantile(margins, quarter) - price);
  // "Is 60 too much" is the other way round.
  const yes = price <= most !== tooMuch;
  const verdict = tooMuch ? `${yes ? "Yes, it is" : "No, it is not"}` : yes ? "Yes" : "No";
  return {
    understood: true,
    value: yes ? "yes" : "no",
    period: null,
    text: [
      `${verdict}, at ${show(price)}: profit ${at(0.25)} to ${at(0.75)}, median ${at(0.5)} (estimate)`,
      ...lines,
      top,
    ].join("\n"),
  };
}

function middleMargin({ sales }: OwnHistory): Cents {
  return quantile(
    sales.map((sale) => sale.margin),
    0.5,
  );
}

/** What is left of the median margin once the median hours are paid at the usual rate; never below nothing. */
function mostToPay(hour: Cents | null, history: OwnHistory): Cents {
  const { sales } = history;
  const margin = middleMargin(history);
  const minutes = middleOf(sales.map((sale) => sale.minutes));
  const labor =
    hour === null || minutes === null
      ? 0
      : roundHalfUp(new Decimal(Math.max(0, hour)).times(minutes).div(60));
  return Math.max(0, margin - labor);
}

/** Asked prices end on 0 or 5. */
const STEP_CENTS = 500;

function answerAsking(
  desk: Desk,
  { pieces, kindOf, traits, held, drops }: Extract<WorthQuestion, { kind: "ask for" }>,
): Answered {
  const [piece, other] = pieces;
  if (other && !areAlike(pieces)) return whichOne(pieces);
  const isUp = piece?.listed && piece.listPrice !== null;
  if (drops && !isUp)
    return {
      understood: true,
      value: null,
      period: null,
      text: piece ? `${pieceLabel(piece)} is not listed.` : "None of those is here.",
    };
  const kind = piece?.name ?? kindOf;
  const history = historyFor(desk, kind, piece?.traits ?? traits);
  if (history.sales.length < SALES_MIN) return tooThin(history);
  const prices = history.sales.map(({ price }) => price);
  const share = middleOf(history.sales.map(({ reached }) => reached)) ?? 10_000;
  const wanted = new Decimal(quantile(prices, 0.5)).times(10_000).div(Math.max(1, share));
  const floor = piece ? costOf(piece) : 0;
  const price = Math.max(STEP_CENTS, roundHalfUp(wanted.div(STEP_CENTS)) * STEP_CENTS);
  const asked = price > floor ? price : Math.ceil((floor + 1) / STEP_CENTS) * STEP_CENTS;
  const lines = [
    `${piece ? `${pieces.map(pieceLabel).join(", ")}: ask` : "Ask"} about ${show(asked)}${other ? " each" : ""} (estimate)`,
    `Sold for ${show(quantile(prices, 0.25))} to ${show(quantile(prices, 0.75))}, median ${show(quantile(prices, 0.5))}`,
    thinWords(history) ?? `Going by your ${history.sales.length} ${history.name} sold`,
    dropWords(desk, history, piece),
  ].filter((line) => line !== null);
  if (drops) {
    const why = lines.slice(3).join() || "No own days listed to go by";
    const yes = why.includes(": drop to ");
    const isLong = why.startsWith("Listed") && !yes;
    const head = piece!.hold
      ? "No, it is on hold"
      : yes
        ? "Yes"
        : isLong
          ? "No, nothing would be left"
          : "Not yet";
    const text = [
      `${head}: ${pieceLabel(piece!)}, asking ${show(piece!.listPrice!)} (estimate)`,
      why,
      ...lines.slice(1, 3),
    ];
    return {
      understood: true,
      value: yes && !piece!.hold ? "yes" : "no",
      period: null,
      text: text.join("\n"),
    };
  }
  if (!held) return { understood: true, value: amountText(asked), period: null, text: lines.join("\n") };
  const yes = held.tooLow ? held.price < asked : held.price > asked;
  const verdict = `${yes ? "Yes" : "No"}, ${show(held.price)} is ${yes ? "" : "not "}too ${held.tooLow ? "low" : "high"} (estimate)`;
  return { understood: true, value: yes ? "yes" : "no", period: null, text: [verdict, ...lines].join("\n") };
}

/** Of one name and the same traits: each of them would bring as much as the other. */
function areAlike([first, ...others]: readonly Readonly<Piece>[]): boolean {
  return others.every(
    ({ name, traits }) => name === first?.name && traits.join(" ") === first.traits.join(" "),
  );
}

/** When to come down, by how long such pieces take; for one that is listed longer, to what. */
function dropWords(
  { books, today }: Desk,
  { sales }: OwnHistory,
  piece: Readonly<Piece> | undefined,
): string | null {
  const usual = middleOf(sales.map(({ daysListed }) => daysListed));
  if (usual === null) return null;
  const listed = piece?.listed ? daysBetween(piece.listed, today) : null;
  if (piece && listed !== null && listed > usual) {
    const lower = suggestPrice(books, piece, costOf(piece));
    return `Listed ${listed} days, usual is ${usual}${lower === null ? "" : `: drop to ${show(lower)}`}`;
  }
  return `Usual: ${usual} days listed; drop the price after that`;
}
