import type { Books } from "../books/books.ts";
import type { FactOf } from "../books/facts.ts";
import type { Day } from "../calendar.ts";
import { byNumbers } from "../decide/pieces/mentioned.ts";
import { lexed } from "../notes/lexed.ts";
import { isSkipped } from "../notes/mends/mended.ts";
import { pastDay } from "../notes/quantities/days.ts";
import type { Reading } from "../notes/reading.ts";
import { besideName, partedIn } from "../notes/settling.ts";
import { centsIn } from "../notes/slots/money.ts";
import { eitherOf, isWholeNote } from "../notes/unclear.ts";
import { BOUNCED, PAPER, UNPAID_WORDS } from "../notes/words/deals.ts";
import { ACTED, HOW_PAID } from "../notes/words/mending.ts";
import { BESIDE_SETTLING } from "../notes/words/settling.ts";
import { saysAny } from "../notes/words/words.ts";
import type { MendTo } from "./fields.ts";
import { OFFERED_MAX } from "./misnoted-out.ts";

/** Longer messages say more than that. */
const LENGTH_MAX = 60;

/** "gwen paid by check btw", "gwen's sale was friday": of the newest sale to somebody, how or when it was; null else. */
export function ofPastBuyer(
  text: string,
  readings: readonly Reading[],
  { books, today }: { books: Books; today: Day },
): Reading[] | null {
  const isOpen = !readings.some(isWholeNote);
  if (text.length > LENGTH_MAX || text.includes("?") || !isOpen) return null;
  const sales = salesOf(books).reverse();
  const { who, rest } = besideName(
    text,
    sales.map(({ data }) => data.buyer!),
  );
  const sale = sales.find(({ data }) => data.buyer === who);
  const to = sale && toldOf(rest, today);
  return to ? [{ kind: "mend", of: { fact: sale.id }, to, text, line: 0 }] : null;
}

/** "dana's check bounced, 12 bank fee": what was booked as paid never came; null where it says anything else. */
export function ofBouncedCheck(
  text: string,
  { books, today }: { books: Books; today: Day },
): Reading[] | null {
  if (!saysAny(text, BOUNCED) || text.includes("?")) return null;
  const sales = salesOf(books).reverse();
  for (const { said, after } of [{ said: text, after: [] }, ...partedIn(text, today)]) {
    const { who, rest } = besideName(
      said,
      sales.map(({ data }) => data.buyer!),
    );
    const sale = sales.find(({ data }) => data.buyer === who);
    if (sale && tellsOfBounced(rest, sale, books))
      return [
        { kind: "refund", unpaid: true, pieces: byNumbers(sale.pieces), text: said, line: 0 },
        ...after,
      ];
  }
  return ofPaper(text, books);
}

/** "check bounced!": of the one sale that was paid so, or of which of them; null where a piece is named, or none was. */
function ofPaper(text: string, books: Books): Reading[] | null {
  const methods = lexed(text).flatMap(({ roles }) => roles.method ?? []);
  const paid = books.facts.filter(
    (fact): fact is FactOf<"sell"> => fact.kind === "sell" && methods.includes(fact.data.method ?? ""),
  );
  const could = paid
    .reverse()
    .filter((sale) => tellsOfBounced(text, { ...sale, pieces: [] }, books))
    .map(
      ({ pieces, amount }): Reading => ({
        ...{ kind: "refund", unpaid: true, pieces: byNumbers(pieces), text, line: 0 },
        ...(paid.length > 1 ? { amount } : {}),
      }),
    );
  if (could.length < 2) return could.length === 0 ? null : could;
  return [eitherOf(could.slice(0, OFFERED_MAX), { text, line: 0 })];
}

/** Whether the words tell of a check that came back, and nothing more than which piece and how much it was for. */
function tellsOfBounced(text: string, { pieces, amount }: FactOf<"sell">, books: Books): boolean {
  const tokens = lexed(text);
  const names = pieces.map((number) => books.pieces.get(number)!.name);
  const isOne = (words: ReadonlySet<string>) =>
    tokens.some(({ text: said }) => said.split(" ").some((word) => words.has(word)) || words.has(said));
  return (
    isOne(PAPER) &&
    isOne(BOUNCED) &&
    tokens.every((token) => {
      if (token.kind === "piece") return names.includes(token.mention!.name ?? "");
      if (token.kind === "amount") return centsIn(token) === amount;
      const words = token.text.split(" ");
      const isSaid = (word: string) => PAPER.has(word) || BOUNCED.has(word) || UNPAID_WORDS.has(word);
      return (
        isSaid(token.text) || words.every(isSaid) || isSkipped(token) || isBeside(token.kind, token.text)
      );
    })
  );
}

function salesOf({ facts }: Books): FactOf<"sell">[] {
  return facts.filter(
    (fact): fact is FactOf<"sell"> => fact.kind === "sell" && fact.data.buyer !== undefined,
  );
}

/** The one thing that the words tell, how it was paid or when. */
function toldOf(text: string, today: Day): MendTo | null {
  const told: MendTo[] = [];
  for (const token of lexed(text)) {
    const { kind, text: word, roles } = token;
    if (kind === "day") {
      const found = pastDay(token.said!, today);
      if (!("day" in found)) return null;
      told.push({ date: found.day });
    } else if (kind === "word" && roles.method !== undefined) told.push({ method: roles.method });
    else if (!isSkipped(token) && !isBeside(kind, word)) return null;
  }
  return told.length === 1 ? told[0]! : null;
}

const isBeside = (kind: string, word: string): boolean =>
  kind === "word" && (HOW_PAID.has(word) || ACTED.has(word) || word === "sale" || BESIDE_SETTLING.has(word));
