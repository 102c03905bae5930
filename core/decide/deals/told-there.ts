import { goingPrice } from "../../books/agreed.ts";
import type { Piece } from "../../books/books.ts";
import { lexed } from "../../notes/lexed.ts";
import type { Mention, Reading } from "../../notes/reading.ts";
import { centsIn } from "../../notes/slots/money.ts";
import type { Token } from "../../notes/tokens/token.ts";
import { anyOf, eitherOf } from "../../notes/unclear.ts";
import {
  AGREED_TO,
  AROUND_AGREED,
  BEATEN_DOWN,
  NOT_THROUGH,
  PAID_AHEAD,
  PAID_THERE,
  PRONOUN,
  SOLD_THERE,
  TELLS_DEAL,
  TOLD_AND_HELD,
  WE_PAY,
} from "../../notes/words/offers.ts";
import { HOUSEHOLD } from "../../notes/words/people.ts";
import { saysAny } from "../../notes/words/words.ts";
import type { Looking } from "../decision.ts";
import { here } from "../pieces/fits.ts";
import { foundBy } from "../pieces/match.ts";
import { byNumbers } from "../pieces/mentioned.ts";

/*
 * Deals that a whole message tells, every word of it: who beat the price down and paid, what came of a price and what is to
 * come, what was agreed on for a piece that is held, and what we paid somebody ahead.
 */

export const LENGTH_MAX = 120;

/** What is told so, of the pieces named or else of those spoken of last; null where a word says anything else. */
export function toldThere(
  text: string,
  readings: readonly Reading[],
  { books, talk }: Looking,
): Reading[] | null {
  if (text.length > LENGTH_MAX || !/\d/.test(text) || text.includes("?")) return null;
  if (!saysAny(text, TELLS_DEAL)) return null;
  const tokens = lexed(text.replace(/[\s.!]+$/, ""));
  const sums = tokens.flatMap((token) =>
    token.kind === "amount" ? [token.each ? null : centsIn(token)] : [],
  );
  if (sums.length === 0 || sums.includes(null)) return null;
  const [price] = sums as number[];
  const shape = tokens.map(shapeOf).join(" ");
  const named = tokens.flatMap(({ mention }) => (mention && !isPointing(mention) ? [mention] : []));
  const numbers = named.length > 0 ? foundBy(named, books, here) : (talk?.replied ?? talk?.latest ?? []);
  const pieces = (numbers ?? []).map((number) => books.pieces.get(number)!);
  if (pieces.length === 0 || pieces.some(({ gone }) => gone !== null)) return null;
  const method = tokens.find(({ roles }) => roles.method !== undefined)?.text;
  const place = { pieces: byNumbers(pieces.map(({ number }) => number)), text, line: 0 };
  const at = { ...place, ...(method === undefined ? {} : { method }) };
  if (sums.length > 1) return null;
  if (PAID_AHEAD.test(shape)) {
    const help: Reading = { kind: "spend", what: "help", category: "help", amount: price!, ...at };
    const { pieces: _, ...unnamed } = at;
    const another: Reading = { kind: "buy", price: price!, pieces: named, ...unnamed };
    return [eitherOf(named.length > 0 ? [help, another] : [help], place)];
  }
  if (isAgreed(tokens, shape, pieces, price!, goingPrice(books, pieces)))
    return [
      eitherOf(
        [
          { kind: "hold", agreed: price!, ...place },
          { kind: "reprice", price: price!, ...place },
        ],
        place,
      ),
    ];
  if (soldThere(text, readings, shape)) return [{ kind: "sell", price: price!, ...at }];
  // "told him 150 and he paid a deposit": on hold, at that price or with as much put down.
  if (TOLD_AND_HELD.test(shape) && readings.some(({ kind }) => kind === "hold"))
    return [
      eitherOf(
        [
          { kind: "hold", agreed: price!, ...at },
          { kind: "hold", deposit: price!, ...at },
        ],
        place,
        "deposit",
      ),
    ];
  return isBeatenDown(readings, shape)
    ? [eitherOf(afterHaggling(price!, at, shape), place, "pending")]
    : null;
}

/** "guy beat my wife down on the hutch to 210, loaded and paid": no offer, hold or new price. */
const soldThere = (text: string, readings: readonly Reading[], shape: string): boolean =>
  saysAny(text, PAID_THERE) &&
  !readings.every(({ kind, missing }) => kind === "sell" && missing === undefined) &&
  !WE_PAY.test(text.replace(/['’]/g, "")) &&
  SOLD_THERE.test(shape);

/** Of nothing else, and not read as a sale already. */
const isBeatenDown = (readings: readonly Reading[], shape: string): boolean =>
  BEATEN_DOWN.test(shape) && !readings.some((reading) => reading.kind === "sell" || soldOnly(anyOf(reading)));

const soldOnly = (could: readonly Reading[]): boolean =>
  could.length > 0 && could.every(({ kind }) => kind === "sell");

/** What a price that was beaten down is: of a sale, of one that waits, or only what it costs now. */
function afterHaggling(price: number, at: Place, shape: string): Reading[] {
  const sold: Reading = { kind: "sell", price, ...at };
  const held: Reading = { kind: "hold", agreed: price, ...at };
  const now: Reading = { kind: "reprice", price, ...at };
  return NOT_THROUGH.test(shape) ? [held, now, sold] : [sold, held, now];
}

interface Place {
  pieces: Mention[];
  text: string;
  line: number;
}

/** Less than a held piece would bring otherwise, in words of nothing else. */
const isAgreed = (
  tokens: readonly Token[],
  shape: string,
  pieces: readonly Readonly<Piece>[],
  price: number,
  going: number | null,
): boolean =>
  going !== null &&
  price < going &&
  price * 2 > going &&
  pieces.every(({ hold }) => hold !== null) &&
  AGREED_TO.test(shape.replaceAll(" ,", "")) &&
  tokens.every((token) => {
    const word = shapeOf(token, 1);
    return /^[PW$,]$/.test(word) || word.split(" ").every((one) => AROUND_AGREED.has(one)) || token.unknown;
  });

const isPointing = ({ it }: Mention): boolean => it === true;

/** What a token is in the patterns. */
export function shapeOf({ kind, text, roles, unknown, mention }: Token, at: number): string {
  if (kind === "mark") return ",";
  if (kind === "amount") return "$";
  if (kind === "piece") return isPointing(mention!) ? text : "P";
  if (kind === "day") return "D";
  if (kind !== "word") return "?";
  if (roles.method !== undefined) return "M";
  if (HOUSEHOLD.has(text)) return "K";
  return (roles.person && !PRONOUN.test(text)) || (unknown && at === 0) ? "W" : text;
}
