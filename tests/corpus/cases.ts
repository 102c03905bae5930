import { readFileSync } from "node:fs";
import { printReading, readMessage } from "../../core/notes/read.ts";

type Printed = Record<string, unknown> & { kind: string };

export interface Case {
  id: string;
  on: string;
  line: string;
  readings?: Printed[];
  anyOf?: Printed[][];
}

const MONEY = [
  "price",
  "amount",
  "deposit",
  "refunded",
  "kept",
  "fee",
  "balance",
  "cut",
  "owed",
  "paid",
  "received",
  "worth",
];

export function casesOf(name: string): Case[] {
  const text = readFileSync(new URL(`./${name}`, import.meta.url), "utf8");
  return text
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line) => JSON.parse(line) as Case);
}

/** The kind a case is counted under: "several" where it holds more than one reading. */
export function kindOf({ readings, anyOf }: Case): string {
  const wanted = readings ?? anyOf![0]!;
  return wanted.length > 1 ? "several" : wanted[0]!.kind;
}

export function readCase({ line, on }: Case): Printed[] {
  return readMessage(line, on).map((reading) => printReading(reading) as Printed);
}

function samePieces(wanted: unknown, got: unknown): boolean {
  if (!Array.isArray(wanted)) return wanted === got;
  const pieces = (got ?? []) as Record<string, unknown>[];
  return (
    wanted.length === pieces.length &&
    wanted.every((piece: Record<string, unknown>, index) => {
      const other = pieces[index]!;
      const same = ["name", "count", "number", "plural", "it"].every(
        (field) => piece[field] === other[field],
      );
      return (
        same && (!piece["traits"] || JSON.stringify(piece["traits"]) === JSON.stringify(other["traits"]))
      );
    })
  );
}

const MENTIONS: ReadonlySet<string> = new Set(["pieces", "gave", "got"]);

/** Every listed field equal, those of a part of a reading ("of", "to", "note") one by one. */
function sameFields(wanted: Record<string, unknown>, got: Record<string, unknown>): boolean {
  return Object.entries(wanted).every(([field, value]) => {
    const other = got[field];
    if (MENTIONS.has(field)) return samePieces(value, other);
    const isPart = typeof value === "object" && value !== null && !Array.isArray(value);
    if (!isPart) return JSON.stringify(value) === JSON.stringify(other);
    return sameFields(value as Record<string, unknown>, (other ?? {}) as Record<string, unknown>);
  });
}

function sameReading(wanted: Printed, got: Printed): boolean {
  if (wanted.kind !== got.kind) return false;
  if (wanted.kind === "unclear") return true;
  if (MONEY.some((field) => got[field] !== undefined && wanted[field] === undefined)) return false;
  return sameFields(wanted, got);
}

/** Whether a case passes by the rules of the corpora: every listed field equal, no money that is not listed. */
export function passes({ readings, anyOf }: Case, got: readonly Printed[]): boolean {
  return (anyOf ?? [readings!]).some(
    (wanted) =>
      wanted.length === got.length && wanted.every((reading, index) => sameReading(reading, got[index]!)),
  );
}

/** Whether a case is asked about in part, and nothing but what was wanted is recorded of the rest. */
export function isAsked({ readings, anyOf }: Case, got: readonly Printed[]): boolean {
  const wanted = anyOf ? anyOf.flat() : readings!;
  const isOpen = ({ kind }: Printed): boolean => kind === "unclear";
  return got.some(isOpen) && got.every((one) => isOpen(one) || wanted.some((want) => sameReading(want, one)));
}
