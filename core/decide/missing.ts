import { pluralOf } from "../notes/mentions/plural.ts";
import type { Missing, Reading } from "../notes/reading.ts";
import { type Ask, NEVER_MIND } from "./decision.ts";
import { mentionsOf } from "./pieces/mentioned.ts";

/**
 * What a traded piece is worth is asked by its verb, with figures from the books.
 * When several fields are missing they are asked in this order, so the same one is always asked first. */
const ORDER: readonly Missing[] = [
  "pieces",
  "count",
  "what",
  "price",
  "amount",
  "balance",
  "minutes",
  "miles",
  "percent",
  "stream",
  "per",
];

/** The question for the first field that a reading needs and does not have; null where nothing is missing. */
export function askMissing(reading: Reading): Ask | null {
  const field = ORDER.find((candidate) => reading.missing?.includes(candidate));
  if (!field) return null;
  const choices = field === "price" && reading.kind === "buy" ? [freeChoice()] : [];
  return {
    prompt: promptFor(field, reading),
    wants: field,
    choices: [...choices, ...periods(field), ...withoutTime(field, reading), NEVER_MIND],
  };
}

function freeChoice(): Ask["choices"][number] {
  return {
    label: "It was free",
    words: ["free", "nothing"],
    effect: { kind: "settle", change: { price: 0, missing: [] } },
  };
}

/** A part of the work whose time nobody took: the piece is at least started. */
function withoutTime(field: Missing, reading: Reading): Ask["choices"] {
  if (field !== "minutes" || reading.kind !== "work" || reading.what === undefined || !reading.pieces)
    return [];
  const { pieces, text, line, date, by } = reading;
  const start: Reading = {
    kind: "start",
    pieces,
    text,
    line,
    ...(date === undefined ? {} : { date }),
    ...(by === undefined ? {} : { by }),
  };
  const words = ["no time", "none", "dont know", "don't know", "skip the time"];
  return [{ label: "No time", words, effect: { kind: "instead", readings: [start] } }];
}

function periods(field: Missing): Ask["choices"] {
  if (field !== "per") return [];
  return (["month", "year"] as const).map((per) => ({
    label: `A ${per}`,
    words: [per, `a ${per}`],
    effect: { kind: "settle", change: { per, missing: [] } },
  }));
}

function promptFor(field: Missing, reading: Reading): string {
  const what = piecesSaid(reading);
  switch (field) {
    case "pieces":
      return `${piecesQuestion(reading)} Say its name or number.`;
    case "count":
      return `How many ${what}?`;
    case "what":
      return "What was it spent on?";
    case "price":
      return priceQuestion(reading, what);
    case "amount":
      return amountQuestion(reading, what);
    case "balance":
      return "What is owed on the loan?";
    case "minutes":
      return `How long did you work on ${what}? Like "45 min" or "2h".`;
    case "miles":
      return "How many miles?";
    case "percent":
      return "How many percent?";
    case "stream":
      return `What was it from? Like "tips" or "ads".`;
    case "worth":
      return "What is it worth?";
    case "per":
      return "Is that for a month or a year?";
  }
}

function piecesQuestion(reading: Reading): string {
  const acts: Partial<Record<Reading["kind"], string>> = {
    buy: "What did you buy?",
    sell: "What did you sell?",
    list: "What did you list?",
    finish: "What is finished?",
    start: "What did you start?",
    work: "What did you work on?",
    retire: "Which piece?",
  };
  return acts[reading.kind] ?? "Which piece is that about?";
}

function priceQuestion(reading: Reading, what: string): string {
  if (reading.kind === "buy") return `What did you pay for ${what}?`;
  if (reading.kind === "sell") return `What did ${what} sell for, in all?`;
  if (reading.kind === "list") return `What is the asking price for ${what}?`;
  return `What is the new price for ${what}?`;
}

function amountQuestion(reading: Reading, what: string): string {
  if (reading.kind === "spend") return `How much was ${reading.what ?? "it"}?`;
  if (reading.kind === "pay") return "How much did you send to the loan?";
  if (reading.kind === "refund") return `How much did you give back on ${what}?`;
  if (reading.kind === "income") return `How much came in from ${reading.stream ?? "it"}?`;
  return "How much?";
}

/** The pieces as the note named them: "the white dresser", "2 chairs", "#4". */
function piecesSaid(reading: Reading): string {
  const mentions = mentionsOf(reading);
  if (mentions.length === 0) return "it";
  const said = mentions.map((mention) => {
    const words = [...(mention.traits ?? []), mention.name ?? "piece"].join(" ");
    if (mention.number !== undefined)
      return mention.name ? `#${mention.number} ${words}` : `#${mention.number}`;
    const count = mention.count ?? 0;
    if (count > 1) return `${count} ${pluralOf(words)}`;
    return mention.plural || count === 0 ? pluralOf(words) : `the ${words}`;
  });
  return said.join(" and ");
}
