import type { Clause, Tok } from "../clause.ts";
import { placeAfter, placeBefore, says, saysOneOf } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";
import { ARTICLES } from "../words/filler.ts";
import { ALL_OF_IT, BEFORE_BACK, BEFORE_RETURNED, BEHIND_BACK, BRINGS_BACK } from "../words/verbs.ts";

/** A deposit given back belongs to a sale that fell through, and a supply returned is no refund to a buyer. */
export function judgeRefund(fields: ReadingFields["refund"], clause: Clause): Trouble | null {
  if (says(clause, /^(?:deposit|deposits)$/)) return { kind: "unknown" };
  // "came back from the lake"
  if (fields.pieces === undefined && !clause.signs.has("pronoun") && says(clause, /^from$/))
    return { kind: "unknown" };
  // "returned dresser to seller got 30 back": money that came in.
  if (says(clause, /^(?:seller|got|store|shop)$/) && says(clause, /^(?:returned|return|back)$/))
    return { kind: "unknown" };
  if (
    fields.returned === undefined &&
    says(clause, /^(?:came back|brought back|returned|took back|return)$/)
  ) {
    const amount = clause.tokens.findIndex((token) => token.kind === "amount");
    const returned = clause.tokens.findIndex((token) =>
      /^(?:came back|brought back|returned|took back)$/.test(token.text),
    );
    const next = clause.tokens[returned + 1];
    // "returned 30 on the desk" gives money back; "buyer returned the desk" and "desk returned 30" the desk.
    const isMoney = amount === returned + 1 || next?.kind === "amount";
    if (!isMoney || isPieceReturned(clause)) fields.returned = true;
  } else if (fields.returned === undefined && isPieceSent(clause)) {
    fields.returned = true;
  } else if (fields.returned && isMoneyReturned(clause)) delete fields.returned;
  if (says(clause, /^(?:, |and |- )?(?:its|is|it is) back\b/)) fields.returned = true;
  if (isHereAgain(clause.tokens)) fields.returned = true;
  if (fields.amount === undefined && saysOneOf(clause, ALL_OF_IT)) fields.inFull = true;
  return null;
}

/** "desk returned 140", "the lamp was returned, 20" */
function isPieceReturned({ tokens }: Clause): boolean {
  const at = tokens.findIndex(({ text }) => text === "returned");
  return tokens[placeBefore(tokens, at - 1, BEFORE_RETURNED)]?.kind === "piece";
}

/** "she sent the table back", "sent back the table": the piece, where "sent back 30" is money. */
function isPieceSent({ tokens }: Clause): boolean {
  const at = tokens.findIndex(({ text }) =>
    /^(?:sent|gave|handed|took|take|taking|brought|bring)(?: back)?$/.test(text),
  );
  if (at < 0) return false;
  const rest = tokens.slice(at + 1).filter(({ text }) => !ARTICLES.has(text));
  const [first, second] = rest;
  const isThing = (token: Tok | undefined) => token?.kind === "piece" || token?.text === "it";
  if (tokens[at]!.text.endsWith("back")) return isThing(first);
  return first?.text === "back" ? isThing(second) : isThing(first) && second?.text === "back";
}

/** "dresser's back, …", "ruth is returning the dresser": the piece itself. */
export function isHereAgain(tokens: readonly Tok[]): boolean {
  return tokens.some(({ text, kind }, at) => {
    if (kind !== "word") return false;
    if (text === "returning") {
      const thing = tokens[placeAfter(tokens, at + 1, ARTICLES)];
      return thing?.kind === "piece" || thing?.text === "it";
    }
    // "it's back in my garage", "she brought it back"
    const before = tokens[at - 1]?.text ?? "";
    const isIt = before === "its" || (before === "it" && BRINGS_BACK.has(tokens[at - 2]?.text ?? ""));
    const behind = tokens[at + 1];
    const isAlone = isOver(behind) || BEHIND_BACK.has(behind?.text ?? "");
    if (text === "back" && isIt && isAlone) return true;
    const piece = placeBefore(tokens, at - 1, BEFORE_BACK);
    const isSaidOfIt = (text === "is back" || text === "back") && tokens[piece]?.kind === "piece";
    // "the desk back leg"
    return isSaidOfIt && (piece < at - 1 ? behind?.kind !== "amount" : isOver(behind));
  });
}

/** A row may have taken a mark to its words. */
const isOver = (token: Tok | undefined): boolean => token === undefined || /^[,.;!-]/.test(token.text);

function isMoneyReturned(clause: Clause): boolean {
  if (isPieceReturned(clause)) return false;
  const at = clause.tokens.findIndex((token) => token.text === "returned");
  if (at < 0) return false;
  const next = clause.tokens
    .slice(at + 1)
    .find((token) => !/^(?:the|his|her|their|a|my|back|him|them)$/.test(token.text));
  return (
    next?.kind === "amount" &&
    !clause.tokens.some((token) => /^(?:came back|brought back|took back)$/.test(token.text))
  );
}
