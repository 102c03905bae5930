import { labelOf } from "../../books/label.ts";
import { show } from "../../money.ts";
import { lexed } from "../../notes/lexed.ts";
import type { Mention, Reading } from "../../notes/reading.ts";
import { centsIn } from "../../notes/slots/money.ts";
import { couldOf, tellsNoFact } from "../../notes/unclear.ts";
import { THE_SAME } from "../../notes/words/links.ts";
import { WORTH } from "../../notes/words/mending.ts";
import { PAYS_THEM, SAID_OF_PAY, SHE_KIN, THEM } from "../../notes/words/people.ts";
import { saysAny } from "../../notes/words/words.ts";
import type { Ask, Desk, Looking, Matter } from "../decision.ts";
import { here } from "../pieces/fits.ts";
import { matchMention } from "../pieces/match.ts";
import { mentionLabel } from "../pieces/mention-words.ts";
import { mentionsOf } from "../pieces/mentioned.ts";
import { NONE_OF_THESE } from "./whole.ts";

/** What somebody of the household did that may have been for the shop, or with it; null where nothing has to be asked. */
export function householdQuestion(matter: Matter, desk: Looking): Ask | null {
  const { reading, confirmed } = matter;
  const { by } = reading;
  if (by === undefined || confirmed.includes("for us")) return null;
  if (reading.kind === "buy") return boughtOrSold(reading, by, desk);
  return reading.kind === "pay" ? whoseMoney(reading, by) : null;
}

type Buy = Extract<Reading, { kind: "buy" }>;

/** "mom bought the desk 120" while a desk of ours could be sold. */
function boughtOrSold(reading: Buy, by: string, { books, today }: Looking): Ask | null {
  const mentions = reading.pieces ?? [];
  const numbers = mentions.flatMap((mention) => piecesOfOurs(mention, books));
  if (numbers.length === 0 || mentions.length === 0) return null;
  const { by: _, source: __, ...rest } = reading;
  const sale = { ...rest, kind: "sell", date: reading.date ?? today, buyer: by } as Reading;
  const price = reading.price === undefined ? "" : ` ${show(reading.price)}`;
  const sold = {
    label: `Sold ${labelOf(books, numbers)}${price} to ${by}`,
    words: ["sold", "from us", "to them"],
    effect: { kind: "instead" as const, readings: [sale] },
  };
  const bought = {
    label: `Bought ${mentions.map(mentionLabel).join(" and ")}${price}, by ${by}`,
    words: ["bought", "for us", "for the shop"],
    effect: { kind: "settle" as const, confirm: "for us" },
  };
  const isListed = numbers.every((number) => books.pieces.get(number)!.listed !== null);
  const choices = isListed ? [sold, bought] : [bought, sold];
  return {
    prompt: `Did ${by} buy it from us, or for us?`,
    wants: "choice",
    choices: [...choices, NONE_OF_THESE],
  };
}

function piecesOfOurs(mention: Mention, books: Desk["books"]): number[] {
  const match = matchMention(mention, books, here, new Set());
  if (match.kind === "found") return match.pieces;
  return match.kind === "several" && match.trust === "sure" ? match.groups[0]! : [];
}

/** Their own money into our loan is no payment of the shop's. */
function whoseMoney(reading: Extract<Reading, { kind: "pay" }>, by: string): Ask {
  const label = `Paid loan ${show(reading.amount ?? 0)}, by ${by}`;
  return {
    prompt: `Was that the shop's money? What ${by} gives of their own is no payment of the shop's.`,
    wants: "choice",
    choices: [
      { label, words: ["yes", "shop", "ours"], effect: { kind: "settle", confirm: "for us" } },
      NONE_OF_THESE,
    ],
  };
}

/**
 * "gave him 25 for it" behind what uncle did: what he got for it is a cost of the pieces he did it to. Null where it is of
 * somebody else, or of anything more.
 */
export function paidToTheSame(reading: Reading, { books, past }: Looking): Reading | null {
  const fact = past?.before();
  if (!fact?.by || !DONE_FOR_PAY.has(fact.kind) || reading.kind !== "unclear" || couldOf(reading).length > 0)
    return null;
  const tokens = lexed(reading.text).filter(({ kind }) => kind !== "mark");
  const [amount, ...others] = tokens.filter(({ kind }) => kind === "amount");
  const cents = amount && others.length === 0 && !amount.each ? centsIn(amount) : null;
  const isOfHer = SHE_KIN.has(fact.by);
  const isSaid = tokens.every(
    ({ kind, text }) => kind === "amount" || text === (isOfHer ? "her" : "him") || SAID_OF_PAY.has(text),
  );
  const isPaid = tokens.some(({ text }) => PAYS_THEM.has(text)) && tokens.some(({ text }) => THEM.has(text));
  if (cents === null || !isSaid || !isPaid) return null;
  const { text, line } = reading;
  const pieces = fact.pieces.map((number) => ({ name: books.pieces.get(number)!.name, count: 1, number }));
  const method = tokens.some((token) => token.text === "cash") ? { method: "cash" } : {};
  return { kind: "spend", what: "help", category: "help", amount: cents, pieces, ...method, text, line };
}

const DONE_FOR_PAY: ReadonlySet<string> = new Set(["work", "finish", "list", "drive"]);

/**
 * "he listed it too, 55" behind what dad did: whatever it may be, he did it. Null where nobody of the household did the
 * note before, where it is anybody ("someone asked …"), or where nothing has happened yet.
 */
export function byTheSame(reading: Reading, { books, past }: Looking): Reading | null {
  const fact = past?.before();
  const [first] = couldOf(reading);
  const isThem = THE_SAME.has(reading.text.toLowerCase().split(" ", 1)[0]!);
  if (!fact?.by || !first || !isThem || tellsNoFact(reading) || saysAny(reading.text, WORTH)) return null;
  const isNew = mentionsOf(first).every(
    (mention) => !mention.it && matchMention(mention, books, here, new Set()).kind === "none",
  );
  // "he also got a lamp for 5": bought, as the bench was.
  const isBought = first.kind === "sell" && fact.kind === "buy" && mentionsOf(first).length > 0 && isNew;
  const { buyer: _, ...rest } = first as Reading & { buyer?: string };
  return { ...rest, ...(isBought ? { kind: "buy" } : {}), by: fact.by } as Reading;
}
