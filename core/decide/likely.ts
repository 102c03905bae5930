import type { Books } from "../books/books.ts";
import { statusOf } from "../books/piece.ts";
import { owedByBuyers } from "../books/shares.ts";
import type { Cents } from "../money.ts";
import type { Tok } from "../notes/clause.ts";
import { lexed } from "../notes/lexed.ts";
import type { Kind, Reading, ReadingOf } from "../notes/reading.ts";
import { centsIn } from "../notes/slots/money.ts";
import { whyOf } from "../notes/unclear.ts";
import type { Desk } from "./decision.ts";
import { byNumbers } from "./mentioned.ts";
import { owingPieces, salesOwing } from "./owing.ts";

/** What comes next for a piece that stands so, with an amount: likeliest first. */
const NEXT: Readonly<Partial<Record<string, readonly Kind[]>>> = {
  bought: ["list", "sell"],
  started: ["list", "sell"],
  finished: ["list", "sell"],
  listed: ["sell", "reprice"],
  held: ["sell", "reprice"],
};

/** Nobody could read it. */
const UNREAD: ReadonlySet<string> = new Set(
  (["unknown", "unclaimed", "loneNumber"] as const).map((kind) => whyOf({ kind })),
);

/** So far from the amount of the newest note it hardly corrects it. */
const NEAR_LEAST = 0.5;
const NEAR_MOST = 2;

/**
 * A message that nobody could read, with one amount and no piece of its own: what such an amount would be of the piece
 * spoken of, or of the newest note. Only ever offered.
 */
export function likelyOf(
  { why, text, line }: ReadingOf<"unclear">,
  { books, talk, past }: Omit<Desk, "confirmed">,
): Reading[] {
  if (!UNREAD.has(why ?? "")) return [];
  const tokens = lexed(text);
  const [amount, ...others] = tokens.filter(({ kind }) => kind === "amount");
  const isOfOther = tokens.some(({ kind, text: word }) => MEASURES.has(kind) || word === "?");
  // "3 no shows in a row", "14 views"
  const behind = tokens[tokens.indexOf(amount!) + 1];
  // "25 came in by transfer" counts nothing.
  const isCount = !amount?.amount?.money && isCounted(behind) && !behind?.roles.heads;
  const cents =
    amount && !isCount && others.length === 0 && !isOfOther && !amount.each ? centsIn(amount) : null;
  if (cents === null || cents === 0) return [];
  const spoken = (talk?.replied ?? talk?.latest ?? []).map((number) => books.pieces.get(number)!);
  const [first] = spoken;
  const status =
    first && spoken.every((piece) => statusOf(piece) === statusOf(first)) ? statusOf(first) : null;
  const pieces = byNumbers(spoken.map(({ number }) => number));
  const next = (status && NEXT[status]) || [];
  const ofPieces = next.map((kind) => ({ kind, price: cents, pieces, text, line }) as Reading);
  const fact = past?.before();
  const share = fact?.amount ? cents / fact.amount : 0;
  const isNear = share >= NEAR_LEAST && share <= NEAR_MOST && share !== 1;
  const mend: Reading[] =
    fact && isNear ? [{ kind: "mend", of: { fact: fact.id }, to: { amount: cents }, text, line }] : [];
  const method = tokens.find(({ roles }) => roles.method !== undefined)?.roles.method;
  return [...owedOf(cents, method, { books, text, line }), ...ofPieces, ...mend];
}

/** Just what is still owed on one sale. */
function owedOf(
  amount: Cents,
  method: string | undefined,
  { books, text, line }: { books: Books; text: string; line: number },
): Reading[] {
  const owing = salesOwing(books).map((sale) => owingPieces(books, sale));
  const [pieces, ...others] = owing.filter((each) => owedByBuyers(each) === amount);
  if (!pieces || others.length > 0) return [];
  const paid = method === undefined ? {} : { method };
  const of = byNumbers(pieces.map(({ number }) => number));
  return [{ kind: "collect", amount, pieces: of, ...paid, text, line }];
}

/** What stands behind a number that counts it. */
const isCounted = (next: Tok | undefined): boolean =>
  next?.kind === "word" && next.roles.filler !== true && next.roles.method === undefined;

/** Tokens of something else than an amount of money: it is told of another thing. */
const MEASURES: ReadonlySet<string> = new Set(["piece", "duration", "miles", "percent", "clock", "grain"]);
