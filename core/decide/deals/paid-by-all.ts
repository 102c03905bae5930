import { goingPrice } from "../../books/agreed.ts";
import type { Books, Piece } from "../../books/books.ts";
import { depositOf, owedByBuyers } from "../../books/shares.ts";
import type { Day } from "../../calendar.ts";
import type { Cents } from "../../money.ts";
import { lexed } from "../../notes/lexed.ts";
import type { Mention, Reading } from "../../notes/reading.ts";
import { besideName, settlingsIn } from "../../notes/settling.ts";
import { centsIn } from "../../notes/slots/money.ts";
import { ALL_OF_THEM, BOTH_OF_THEM, PAID_FOR_EACH, type Says } from "../../notes/words/settling.ts";
import { matchMention } from "../pieces/match.ts";
import { byNumbers } from "../pieces/mentioned.ts";
import { owingPieces, salesOwing } from "./owing.ts";

/** "dana and nell both paid up", "everybody paid me back": what each of them owes comes in; null where more is said. */
export function paidByAll(text: string, { books, today }: { books: Books; today: Day }): Reading[] | null {
  const owing = salesOwing(books).filter(({ data }) => data.buyer !== undefined);
  const buyers = [...new Set(owing.map(({ data }) => data.buyer!))];
  if (buyers.length < 2 || buyers.length !== owing.length) return null;
  let rest = text;
  const named = buyers.filter((who) => {
    const beside = besideName(rest, [who]);
    if (beside.who) rest = beside.rest;
    return beside.who !== undefined;
  });
  const isAll = ALL_OF_THEM.test(text) || (BOTH_OF_THEM.test(text) && buyers.length === 2);
  const who = named.length > 1 ? named : named.length === 0 && isAll ? buyers : [];
  const [settling] = settlingsIn(rest.replace(BOTH_OF_THEM, "they").replace(ALL_OF_THEM, "they"), [], today);
  if (who.length === 0 || !settling || settling.after.length > 0) return null;
  const { says, amounts, date } = settling.told;
  if (!says.has("paid") || amounts.length > 0 || OTHERWISE.some((each) => says.has(each))) return null;
  return owing
    .filter(({ data }) => who.includes(data.buyer!))
    .map((sale): Reading => {
      const pieces = owingPieces(books, sale);
      const at = { text, line: 0, ...(date ? { date } : {}) };
      return {
        kind: "collect",
        amount: owedByBuyers(pieces),
        pieces: byNumbers(pieces.map(({ number }) => number)),
        ...at,
      };
    });
}

const OTHERWISE: readonly Says[] = ["never", "out", "wants", "half", "down", "comes", "moved", "more"];

/** Of one piece, and how much was paid for it. */
interface Paid {
  mention: Mention;
  amount: Cents;
}

/**
 * "priya's been. paid the 260 on the armoire and 40 for the bench": each of the pieces held for her is sold, at what she
 * paid beside its deposit; null where more is said, or another sum was to pay.
 */
export function paidForEach(
  text: string,
  names: readonly string[],
  { books, today }: { books: Books; today: Day },
): Reading[] | null {
  const { who, rest } = besideName(text, names);
  if (who === undefined) return null;
  const { paid, around } = paidIn(rest);
  if (paid.length < 2) return null;
  const [settling] = settlingsIn(`${who} ${around}`, [who], today);
  const { says, amounts, left } = settling?.told ?? {};
  if (!says || amounts!.length > 0 || left!.length > 0 || settling!.after.length > 0) return null;
  if (!(says.has("paid") || says.has("fetched")) || [...OTHERWISE, ...LOSES].some((each) => says.has(each)))
    return null;
  const theirs = {
    allows: ({ hold, gone }: Readonly<Piece>) => gone === null && hold?.buyer === who,
  };
  const sales = paid.map(({ mention, amount }): Reading | null => {
    const match = matchMention(mention, books, theirs, new Set());
    if (match.kind !== "found") return null;
    const pieces = match.pieces.map((number) => books.pieces.get(number)!);
    const deposit = depositOf(pieces);
    if (deposit > 0 && amount + deposit !== goingPrice(books, pieces)) return null;
    const price = amount + deposit;
    return { kind: "sell", price, whole: true, buyer: who, pieces: byNumbers(match.pieces), text, line: 0 };
  });
  return sales.every((sale) => sale !== null) ? sales : null;
}

const LOSES: readonly Says[] = ["back", "kept", "later", "waits"];

/** "260 on the armoire", as often as it is told, and the words around that. */
function paidIn(text: string): { paid: Paid[]; around: string } {
  const tokens = lexed(text);
  const paid: Paid[] = [];
  const around: string[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const amount = tokens[at]!.kind === "amount" ? centsIn(tokens[at]!) : null;
    const to = tokens.findIndex(({ kind }, place) => place > at && kind === "piece");
    const between = tokens.slice(at + 1, to).map((token) => token.text);
    const isFor = between.length > 0 && between.every((word) => PAID_FOR_EACH.has(word));
    // "picked up both"
    if (tokens[at]!.mention?.it) continue;
    if (amount === null || to < 0 || !isFor) around.push(tokens[at]!.text);
    else {
      paid.push({ mention: tokens[to]!.mention!, amount });
      at = to;
    }
  }
  return { paid, around: around.join(" ") };
}
