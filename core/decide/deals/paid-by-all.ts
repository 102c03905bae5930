import type { Books } from "../../books/books.ts";
import { owedByBuyers } from "../../books/shares.ts";
import type { Day } from "../../calendar.ts";
import type { Reading } from "../../notes/reading.ts";
import { besideName, settlingsIn } from "../../notes/settling.ts";
import { ALL_OF_THEM, BOTH_OF_THEM, type Says } from "../../notes/words/settling.ts";
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
