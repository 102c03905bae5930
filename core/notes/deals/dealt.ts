import { percentOf } from "../../money.ts";
import type { Mention, Reading } from "../reading.ts";
import type { Dealt } from "../rows/deals.ts";
import { eitherOf } from "../unclear.ts";
import { SHARES } from "../words/deals.ts";
import { saysOf } from "../words/settling.ts";
import type { Who } from "./somebody.ts";
import type { Taken } from "./taken.ts";
import { tradeOf } from "./traded.ts";

/** The text and the line are the caller's to fill in. */
const PLACE = { text: "", line: 0 } as const;

/** A deal as a reading; null where its words hold too much or too little for it. */
export function dealReading(effect: Dealt, taken: Taken): Reading | null {
  switch (effect) {
    case "collect":
      return collected({ ...taken, amounts: [...taken.amounts, ...taken.bracket] });
    case "collect part":
      return collected(taken);
    case "collect or sell":
      return collectedOr("sell", { ...taken, amounts: [...taken.amounts, ...taken.bracket] });
    case "collect or buy":
      return collectedOr("buy", { ...taken, amounts: [...taken.amounts, ...taken.bracket] });
    case "unpaid":
      return unpaid(taken);
    case "share":
      return shared(taken);
    case "commission":
      return commission(taken);
    case "trade":
    case "trade back":
      return tradeOf(taken, effect === "trade back");
  }
}

const withPieces = (pieces: readonly Mention[]) => (pieces.length > 0 ? { pieces: [...pieces] } : {});
const withDate = ({ date }: Taken) => (date === undefined ? {} : { date });

function collected(taken: Taken): Reading | null {
  const { amounts, pieces, method, who } = taken;
  if (amounts.length > 1) return null;
  const person = who.name === undefined ? {} : isTakenInFor(who) ? { by: who.name } : { buyer: who.name };
  const amount = amounts[0] === undefined ? {} : { amount: amounts[0] };
  const paid = method === undefined ? {} : { method };
  const isAll = amounts.length === 0 && taken.tokens.some(({ text }) => saysOf(text).includes("all"));
  return {
    kind: "collect",
    ...amount,
    ...withPieces(pieces),
    ...paid,
    ...person,
    ...withDate(taken),
    ...(isAll ? { all: true as const } : {}),
    ...PLACE,
  };
}

const isTakenInFor = ({ isHousehold, leads, takesIn }: Who): boolean => isHousehold && leads && takesIn;

/** "got my 25 for the chairs" is the price, or what was left of it; "the rest of the chairs" came, or their money. */
function collectedOr(kind: "sell" | "buy", taken: Taken): Reading | null {
  const rest = collected(taken);
  const [price, ...others] = taken.amounts;
  if (!rest || price === undefined || others.length > 0 || taken.pieces.length === 0) return null;
  const isUncounted = kind === "buy" && taken.pieces.some(({ plural }) => plural);
  const pieces = isUncounted ? taken.pieces.map(({ plural: _, ...piece }) => piece) : taken.pieces;
  const missing = isUncounted ? { missing: ["count" as const] } : {};
  const other: Reading = { kind, pieces, price, ...withDate(taken), ...missing, ...PLACE };
  return asked([rest, other]);
}

function unpaid(taken: Taken): Reading | null {
  const amounts = [...taken.amounts, ...taken.bracket];
  if (amounts.length > 1) return null;
  const amount = amounts[0] === undefined ? {} : { amount: amounts[0] };
  const missing = taken.pieces.length > 0 ? {} : { missing: ["pieces" as const] };
  return {
    kind: "refund",
    unpaid: true,
    ...withPieces(taken.pieces),
    ...amount,
    ...withDate(taken),
    ...missing,
    ...PLACE,
  };
}

const HALF_OF_HUNDRED = 5000;

/** Half where no other share is said. "gave dad half the profit, 20": the amount told may not be what the books say. */
function shared(taken: Taken): Reading | null {
  const { tokens, pieces, who, amounts, bracket } = taken;
  // "dresser earnings to date" asks for them.
  if (who.name === undefined || who.name === "date") return null;
  const told = [...amounts, ...bracket];
  // "50 50"
  const isHalves = told.length === 2 && told.every((part) => part === HALF_OF_HUNDRED);
  const [paid, ...others] = isHalves ? [] : told;
  if (others.length > 0) return null;
  const said = tokens.map(({ text }) => SHARES[text]).find((percent) => percent !== undefined);
  const percent = taken.percent ?? said ?? SHARES["half"]!;
  const share: Reading = {
    kind: "share",
    ...withPieces(pieces),
    with: who.name,
    percent,
    ...withDate(taken),
    ...PLACE,
  };
  if (paid === undefined) return share;
  const help = { kind: "spend", what: `share for ${who.name}`, category: "help", amount: paid } as const;
  return asked([{ ...help, ...withPieces(pieces), ...withDate(taken), ...PLACE }, share]);
}

const asked = (could: Reading[]): Reading => eitherOf(could, PLACE);

/** Only what is kept of somebody else's piece is ours; a percent of the price is worked out, and asked about. */
function commission(taken: Taken): Reading | null {
  const [amount, ...others] = taken.bracket;
  const kept = { kind: "income", stream: "commission", ...withDate(taken), ...PLACE } as const;
  if (amount === undefined) {
    const [price, ...more] = taken.amounts;
    if (price === undefined || more.length > 0 || taken.percent === undefined) return null;
    return asked([{ ...kept, amount: percentOf(taken.percent, price) }]);
  }
  if (others.length > 0 || taken.amounts.some((price) => price < amount)) return null;
  return { ...kept, amount };
}
