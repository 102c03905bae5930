import { amountText } from "../money.ts";
import type { Mention, Reading } from "./reading.ts";
import { whyOf } from "./unclear.ts";

const MONEY = new Set([
  "price",
  "amount",
  "deposit",
  "agreed",
  "refunded",
  "kept",
  "fee",
  "balance",
  "cut",
  "owed",
  "paid",
  "received",
  "worth",
]);
const MENTIONS = new Set(["pieces", "gave", "got"]);
/** Kept on a reading for the conversation, and no part of its documented shape. */
const INNER = new Set([
  "kind",
  "text",
  "line",
  "each",
  "follows",
  "one",
  "asNew",
  "longAgo",
  "byBooks",
  "back",
  "isWrong",
  "isKnownSum",
  "atAsking",
  "beside",
  "whole",
  "isTold",
  "all",
  "inFull",
  "half",
  "forShop",
]);

function printMention({ name, count, traits, number, plural, it, other }: Mention): object {
  return {
    ...(it ? { it } : {}),
    ...(other ? { other } : {}),
    ...(name !== undefined ? { name } : {}),
    ...(count !== undefined ? { count } : {}),
    ...(traits ? { traits } : {}),
    ...(number !== undefined ? { number } : {}),
    ...(plural ? { plural } : {}),
  };
}

function printField(field: string, value: unknown): unknown {
  if (MENTIONS.has(field) && Array.isArray(value))
    return value.map((mention: Mention) => printMention(mention));
  if (field === "note") return printReading(value as Reading);
  if (field === "could") return (value as Reading[]).map(printReading);
  if ((field === "of" || field === "to") && typeof value === "object") return printFields(value as object);
  if (typeof value === "number" && MONEY.has(field)) return amountText(value);
  return value;
}

/** The fields of a part of a reading: which fact a correction speaks of, and what becomes of it. */
function printFields(fields: object): object {
  const printed = Object.entries(fields).map(([field, value]) => [field, printField(field, value)]);
  return Object.fromEntries(printed.filter(([, value]) => value !== undefined));
}

/** "bought stools 15 each": the price of one is no price of the lot until they are counted. */
function isPriceOfOne(reading: Reading, field: string): boolean {
  return field === "price" && reading.each === true && reading.missing?.includes("count") === true;
}

/**
 * The reading as the documented shape has it: "it" with nothing before it in the line is a mention, and a price of each
 * of nobody knows how many is unclear as long as no books can count them.
 */
function asPrinted(reading: Reading): Reading {
  const fields = reading as { pieces?: Mention[]; follows?: true; each?: true; missing?: string[] } & Reading;
  const missing = fields.missing?.filter((field) => field !== "pieces") ?? [];
  const left = missing.length > 0 ? { missing } : { missing: undefined };
  const isOpen = fields.follows && fields.pieces === undefined && reading.kind !== "buy";
  const isUnnamed = fields.each && fields.missing?.includes("pieces") === true && fields.kind !== "buy";
  if ((isOpen && fields.each) || isUnnamed)
    return { kind: "unclear", why: whyOf({ kind: "eachOfUnknown" }), text: reading.text, line: reading.line };
  if (isOpen) return { ...fields, pieces: [{ it: true }], ...left } as Reading;
  if (Array.isArray(fields.pieces) && fields.pieces.some(({ alike }) => alike)) {
    const { pieces: _, ...rest } = fields;
    return { ...rest, missing: ["pieces", ...(fields.missing ?? [])] } as Reading;
  }
  const isUncounted =
    fields.each && Array.isArray(fields.pieces) && fields.pieces.some(({ plural }) => plural);
  if (!isUncounted) return reading;
  return { kind: "unclear", why: whyOf({ kind: "eachOfUnknown" }), text: reading.text, line: reading.line };
}

/** A reading in its documented JSON shape: amounts as "60.00", only the fields the note gave. */
export function printReading(reading: Reading): object {
  const said = asPrinted(reading);
  const printed: Record<string, unknown> = { kind: said.kind };
  for (const [field, value] of Object.entries(said))
    if (!INNER.has(field) && !isPriceOfOne(said, field) && value !== undefined)
      printed[field] = printField(field, value);
  return printed;
}
