import type { Books } from "../../books/books.ts";
import { addDays } from "../../calendar.ts";
import { lexed } from "../../notes/lexed.ts";
import { comingDay } from "../../notes/quantities/days.ts";
import type { Mention, Reading } from "../../notes/reading.ts";
import { besideName } from "../../notes/settling.ts";
import { centsIn } from "../../notes/slots/money.ts";
import { type Word, wordsOf } from "../../notes/tokens/text.ts";
import type { Token } from "../../notes/tokens/token.ts";
import { eitherOf } from "../../notes/unclear.ts";
import { isCommon } from "../../notes/words/daily.ts";
import {
  ASKS_WHO,
  COMES_FOR,
  KEEPS,
  KEPT_FOR,
  KEPT_LONGER,
  LEFT_FOR,
  LEFT_TO_PAY,
  MAY_COME,
  NO_NAME_HERE,
  PAYS_LATER,
  WEEK_LONGER,
} from "../../notes/words/keeping.ts";
import type { Desk, Looking } from "../decision.ts";
import { here } from "../pieces/fits.ts";
import { foundBy } from "../pieces/match.ts";
import { byNumbers } from "../pieces/mentioned.ts";
import { LENGTH_MAX, shapeOf } from "./told-there.ts";

/**
 * A piece kept for somebody, told by a whole message: what was left for it, until when, for whom. Null where a word says anything
 * else, or no such piece is here.
 */
export function keptThere(text: string, readings: readonly Reading[], desk: Looking): Reading[] | null {
  const { books, talk, today } = desk;
  if (text.length > LENGTH_MAX || text.includes("?") || !KEEPS.test(text) || ASKS_WHO.test(text)) return null;
  if (readings.every(({ kind, missing }) => kind === "hold" && missing === undefined)) return null;
  const longer = weekLonger(text, { books, talk });
  if (longer) return keptThere(longer, readings, desk);
  const tokens = lexed(text.replace(/[\s.!]+$/, ""));
  const words = wordsOf(text);
  const shape = tokens.map((token, at) => (isName(token, words) ? "N" : shapeOf(token, at + 1))).join(" ");
  const amounts = tokens.filter(({ kind }) => kind === "amount");
  const days = tokens.flatMap(({ kind, said }) => (kind === "day" ? [comingDay(said!, today)] : []));
  const [deposit, ...others] = amounts.map(centsIn);
  const isLonger = KEPT_LONGER.some((way) => way.test(shape));
  if (others.length > 0 || days.length > (isLonger ? 2 : 1) || deposit === null || days.includes(null))
    return null;
  const buyer = buyerIn(tokens, words, text);
  const pieces = piecesMeant(tokens, { books, talk }) ?? (isLonger ? heldFor(buyer, books) : null);
  if (!pieces) return null;
  const spoken = foundBy(pieces, books, here) ?? [];
  const held = spoken.map((number) => books.pieces.get(number)!.hold);
  const method = tokens.find(({ roles }) => roles.method !== undefined)?.text;
  const until = days.at(-1);
  const place = { pieces, text, line: 0 };
  const at = { ...(until ? { until } : {}), ...place };
  const whom = buyer === undefined ? {} : { buyer };
  if (deposit !== undefined) {
    if (LEFT_FOR.some((way) => way.test(shape)) && buyer !== undefined)
      return [{ kind: "hold", deposit, ...whom, ...(method ? { method } : {}), ...at }];
    if (!PAYS_LATER.test(shape)) return null;
    const hold: Reading = { kind: "hold", agreed: deposit, ...whom, ...place };
    const owed: Reading = { kind: "sell", price: deposit, owed: deposit, ...whom, ...place };
    return [eitherOf([hold, owed], place)];
  }
  if (until && isLonger && held.length > 0 && held.every((each) => each !== null))
    return [{ kind: "hold", ...at }];
  if (!KEPT_FOR.some((way) => way.test(shape))) return null;
  const latest = (talk?.latest ?? []).map((number) => books.pieces.get(number)?.hold?.buyer);
  const theirs = buyer ?? latest.find((each) => each);
  return [{ kind: "hold", ...(theirs ? { buyer: theirs } : {}), ...at }];
}

/**
 * "shes coming sat for it", "rest on tuesday", "dan called, can only do sunday": until when a piece is kept that is on hold,
 * for whoever is named or as the one spoken of last; null where a word says anything else.
 */
export function comesFor(text: string, { books, talk, today, past }: Looking): Reading[] | null {
  if (text.length > LENGTH_MAX || text.includes("?") || !MAY_COME.test(text)) return null;
  const held = [...books.pieces.values()].filter(({ hold, gone }) => hold && gone === null);
  if (held.length === 0) return null;
  const { who, rest } = besideName(
    text,
    held.flatMap(({ hold }) => hold!.buyer ?? []),
  );
  // "rest is coming sunday": no piece of that name
  const tokens = lexed(rest).filter(({ kind, text: word }) => kind !== "piece" || !LEFT_TO_PAY.has(word));
  const shape = tokens
    .map((token) => shapeOf(token, 1))
    .filter((word) => word !== "P")
    .join(" ");
  if (!COMES_FOR.test(shape)) return null;
  const until = comingDay(tokens.find(({ kind }) => kind === "day")!.said!, today);
  const isTheirs = who !== undefined && tokens.every(({ mention }) => !mention || mention.it === true);
  const pieces = isTheirs ? heldFor(who, books) : piecesMeant(tokens, { books, talk });
  const isHeld = (foundBy(pieces ?? [], books, here) ?? []).map((number) => books.pieces.get(number)!.hold);
  if (!until || !pieces || isHeld.length === 0 || isHeld.includes(null)) return null;
  // Told right behind it, the day is a part of the hold itself.
  const before = past?.before();
  const isOfIt = before?.kind === "hold" && !before.data.until && isHeld.length === before.pieces.length;
  return isOfIt && pieces.every(({ number }) => before.pieces.includes(number ?? 0))
    ? [{ kind: "mend", of: { fact: before.id }, to: { until }, text, line: 0 }]
    : [{ kind: "hold", until, pieces, text, line: 0 }];
}

/** Those named; else those spoken of last, where they are on hold. */
function piecesMeant(
  tokens: readonly Token[],
  { books, talk }: Pick<Desk, "books" | "talk">,
): Mention[] | null {
  const named = tokens.flatMap(({ mention }) => (mention && mention.it !== true ? [mention] : []));
  // "the other one": the talk tells.
  if (named.some(({ other, name }) => other === true && name === undefined)) return named;
  if (named.length > 0) {
    const found = foundBy(named, books, here);
    return found && byNumbers(found);
  }
  const spoken = talk?.replied ?? talk?.latest ?? [];
  const isHeld = spoken.every(
    (number) => books.pieces.get(number)?.hold && books.pieces.get(number)!.gone === null,
  );
  return spoken.length > 0 && isHeld ? byNumbers(spoken) : null;
}

/** What is held for who is named, else the one thing that is; null where there is more than that. */
function heldFor(buyer: string | undefined, books: Books): Mention[] | null {
  const held = [...books.pieces.values()].filter(({ hold, gone }) => hold && gone === null);
  const theirs = held.filter(({ hold }) => hold!.buyer !== null && hold!.buyer === buyer);
  const isOne = held.every(
    ({ hold }) => hold!.buyer === held[0]!.hold!.buyer && hold!.since === held[0]!.hold!.since,
  );
  const meant = theirs.length > 0 ? theirs : isOne ? held : [];
  return meant.length > 0 ? byNumbers(meant.map(({ number }) => number)) : null;
}

/** "asked for one more week": as "till" the day that this comes to; null where nothing is held until a day. */
function weekLonger(text: string, { books, talk }: Pick<Desk, "books" | "talk">): string | null {
  if (!WEEK_LONGER.test(text)) return null;
  const named = foundBy(
    lexed(text).flatMap(({ mention }) => mention ?? []),
    books,
    here,
  );
  const spoken =
    named ?? talk?.replied ?? heldFor(undefined, books)?.flatMap(({ number }) => number ?? []) ?? [];
  const until = spoken.map((number) => books.pieces.get(number)?.hold?.until ?? null);
  const [first] = until;
  return first && until.every((day) => day === first)
    ? text.replace(WEEK_LONGER, `till ${addDays(first, 7)}`)
    : null;
}

/** A word that nobody listed, as typed: "megan" is no slip for "mean". */
function isName({ kind, unknown, from, text }: Token, words: readonly Word[]): boolean {
  return (
    kind === "word" && unknown === true && !NO_NAME_HERE.has(text) && !isCommon(words[from]?.norm ?? text)
  );
}

/** Whoever is named, else whoever it is, as typed. */
function buyerIn(tokens: readonly Token[], words: readonly Word[], text: string): string | undefined {
  const who =
    tokens.find((token) => isName(token, words)) ??
    tokens.find((token, at) => shapeOf(token, at + 1) === "W");
  const said = who && text.slice(words[who.from]!.start, words[who.to - 1]!.end).toLowerCase();
  return said?.replace(/['’]s$/, "");
}
