import type { Cents } from "../../money.ts";
import { placeBefore, type Tok } from "../clause.ts";
import type { Mention, Reading } from "../reading.ts";
import { centsOfToken } from "../slots/money.ts";
import { eitherOf } from "../unclear.ts";
import { ARTICLES } from "../words/filler.ts";
import { FROM_THEM, FROM_US, PAID, PARTING, RECEIVED, WORTH } from "../words/trading.ts";
import type { Taken } from "./taken.ts";

const TAKING = 4;

interface Cash {
  paid?: Cents;
  received?: Cents;
  worth?: Cents;
}

/** A trade told with what was given first, or turned, with what was got first; null where its sides cannot be told apart. */
export function tradeOf({ tokens, who, date }: Taken, isTurned: boolean): Reading | null {
  const places = tokens.flatMap(({ kind }, at) => (kind === "piece" ? [at] : []));
  const parting = partingOf(tokens, places, isTurned);
  if (parting < 0) return null;
  const sideOf = (at: number): "gave" | "got" => (at < parting !== isTurned ? "gave" : "got");
  const sides: { gave: Mention[]; got: Mention[] } = { gave: [], got: [] };
  for (const at of places) if (!isNamedAgain(tokens, at)) sides[sideOf(at)].push(tokens[at]!.mention!);
  const cash = cashOf(tokens, parting, sideOf);
  // "two chairs for a table, each worth 20": what both chairs are worth is not said.
  const isEach = tokens.some(({ each, text }) => each || text === "each" || text === "apiece");
  if (isEach && (sides.gave.length > 1 || (sides.gave[0]?.count ?? 1) > 1 || cash?.worth === undefined))
    return null;
  if (!cash || sides.gave.length === 0 || sides.got.length === 0) return null;
  const by = who.isHousehold && who.leads ? { by: who.name! } : {};
  const trade: Reading = {
    kind: "trade",
    ...sides,
    ...cash,
    ...by,
    ...(date === undefined ? {} : { date }),
    text: "",
    line: 0,
  };
  if (!isUnsaid(tokens, cash)) return trade;
  const { received, ...rest } = trade;
  const could: Reading[] = [{ ...rest, worth: received! }, trade];
  return eitherOf(could, { text: "", line: 0 });
}

/** "swapped the lamp for a coat rack, lamp worth 20": what it is worth, of a piece that stands before. */
function isNamedAgain(tokens: readonly Tok[], at: number): boolean {
  const { name, number, it } = tokens[at]!.mention!;
  const isBefore = (one: Tok) => one.mention?.name === name && one.mention?.number === number;
  if (!it && !tokens.slice(0, at).some(isBefore)) return false;
  const isWorth = ({ text }: Tok) => WORTH.has(text);
  return (
    tokens.slice(at + 1, at + TAKING).some(isWorth) ||
    /^(?:at|@|=|as)$/.test(tokens[at + 1]?.text ?? "") ||
    isWorth(tokens[placeBefore(tokens, at - 1, ARTICLES)] ?? tokens[at]!)
  );
}

/** The parting word between two pieces: told in turn, the last one, behind "in trade". */
function partingOf(tokens: readonly Tok[], places: readonly number[], isTurned: boolean): number {
  const [first = -1] = places;
  const last = places.at(-1) ?? -1;
  const isParting = ({ text }: Tok, at: number) => at > first && at < last && PARTING.has(text);
  const found = tokens.findIndex(isParting);
  return isTurned && tokens[found]?.text === "in" ? tokens.findLastIndex(isParting) : found;
}

/** "traded desk for wardrobe, 150": what it is worth, or cash? */
function isUnsaid(tokens: readonly Tok[], { received }: Cash): boolean {
  const at = tokens.findLastIndex(({ kind }) => kind === "piece");
  const [mark, amount, ...others] = tokens.slice(at + 1);
  return (
    received !== undefined &&
    mark?.text === "," &&
    amount?.kind === "amount" &&
    !amount.amount?.money &&
    others.length === 0
  );
}

/** Every amount of the words: the worth, or cash that goes with its side; null where both ways or twice. */
function cashOf(
  tokens: readonly Tok[],
  parting: number,
  sideOf: (at: number) => "gave" | "got",
): Cash | null {
  const cash: Cash = {};
  for (const [at, token] of tokens.entries()) {
    if (token.kind !== "amount" || at === parting) continue;
    const found = centsOfToken(token);
    if (!("cents" in found)) return null;
    const field = fieldOf(tokens, at, sideOf(at));
    if (cash[field] !== undefined) return null;
    cash[field] = found.cents;
  }
  return cash.paid !== undefined && cash.received !== undefined ? null : cash;
}

function fieldOf(tokens: readonly Tok[], at: number, side: "gave" | "got"): keyof Cash {
  const before = wordsBefore(tokens, at);
  const behind = tokens.slice(at + 1, at + TAKING).map(({ text }) => text);
  const isWorth = before.some((word) => WORTH.has(word)) || WORTH.has(behind[0] ?? "");
  if (isWorth || before[0] === "at" || before[0] === "@") return "worth";
  const owner = before.find((word) => FROM_US.has(word) || FROM_THEM.has(word));
  if (
    behind.includes("back") ||
    (behind.includes("to") && behind.some((word) => word === "me" || word === "us"))
  )
    return "received";
  if (behind.includes("from") && behind.some((word) => word === "me" || word === "us")) return "paid";
  if (before.some((word) => RECEIVED.has(word))) return "received";
  if (owner !== undefined) return FROM_US.has(owner) ? "paid" : "received";
  if (before.some((word) => PAID.has(word))) return "paid";
  return side === "gave" ? "paid" : "received";
}

/** The words before an amount back to the nearest piece or amount, nearest first. */
function wordsBefore(tokens: readonly Tok[], at: number): string[] {
  const words: string[] = [];
  for (let place = at - 1; place >= Math.max(0, at - TAKING); place -= 1) {
    if (tokens[place]!.kind === "amount") break;
    if (tokens[place]!.kind === "piece") {
      if (!isNamedAgain(tokens, place)) break;
      continue;
    }
    words.push(tokens[place]!.text);
  }
  return words;
}
