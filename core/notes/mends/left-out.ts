import type { Day } from "../../calendar.ts";
import type { Tok } from "../clause.ts";
import { centsIn } from "../slots/money.ts";
import {
  ADDS_FEE,
  BESIDE_FEE,
  BESIDE_FORGOTTEN,
  BESIDE_OWED,
  HOW_PAID,
  LINKS,
  OPENERS,
  POINTING,
  POINTING_BACK,
  STILL_OWED,
  STILL_TO_COME,
} from "../words/mending.ts";
import { isSkipped, type Of, side, type To, takeTo } from "./mended.ts";

/* What the newest note left out, told right behind it: its fee, what is still owed, how it was paid, to whom. */

/** What of the newest note changes, and into what. */
export interface Change {
  of?: Of;
  to: To;
}

/** "and there was a 7.50 fee", "minus 5 in fees": what the note before left out; "fee 5" alone is a cost of its own. */
function feeBeside(tokens: readonly Tok[]): Change | null {
  const amounts = tokens.filter(({ kind }) => kind === "amount");
  const [amount, ...others] = amounts;
  const pieces = tokens.flatMap(({ mention }) => (mention && !mention.it ? [mention] : []));
  const words = tokens.filter(
    ({ kind, mention }) => kind !== "amount" && !(kind === "piece" && !mention!.it),
  );
  const isSaid =
    words.some(({ text }) => isFee(text)) &&
    words.some(({ text }) => text.split(" ").some((word) => ADDS_FEE.has(word)));
  const isAll = words.every(
    ({ text }) => isFee(text) || text.split(" ").every((word) => ADDS_FEE.has(word) || BESIDE_FEE.has(word)),
  );
  const fee = amount && others.length === 0 && !amount.each && isSaid && isAll ? centsIn(amount) : null;
  return fee === null ? null : { ...(pieces.length > 0 ? { of: { pieces } } : {}), to: { fee } };
}

/** "she still owes 25", "she only gave me 200, still owes 25": of a sale noted as paid, which says the sum. */
function owedBeside(tokens: readonly Tok[]): Change | null {
  const amounts = tokens.filter(({ kind }) => kind === "amount");
  const isPart = tokens.some(
    ({ text }, at) => text === "of" && POINTING_BACK.has(tokens[at + 1]?.text ?? ""),
  );
  const owes = tokens.findIndex(({ text }) => STILL_OWED.has(text) || (isPart && STILL_TO_COME.has(text)));
  const isAll = tokens.every(
    ({ kind, text }) =>
      kind === "amount" ||
      (kind === "day" && isPart) ||
      STILL_OWED.has(text) ||
      text.split(" ").every((word) => BESIDE_OWED.has(word)),
  );
  const [first, second, ...others] = amounts;
  // "got 40 they owed": it came.
  const hasCome = tokens.some(({ text }) => text === "owed") && tokens[0]!.text === "got";
  if (!first || owes < 0 || hasCome || !isAll || others.length > 0 || amounts.some(({ each }) => each))
    return null;
  const [given, left] = second ? [centsIn(first), centsIn(second)] : [null, centsIn(first)];
  if (left === null || (second && given === null)) return null;
  return { ...(given === null ? {} : { of: { amount: given + left } }), to: { owed: left } };
}

/** The fee of a sale, or what is owed on it, in a message of nothing else. */
export function besideSale(tokens: readonly Tok[]): Change | null {
  return feeBeside(tokens) ?? owedBeside(tokens);
}

/** "paid by check", "she paid cash": how, and nothing else. */
export function methodAlone(told: readonly Tok[]): string | null {
  const rest = told.filter((token) => !HOW_PAID.has(token.text) && !isSkipped(token));
  const [only, ...more] = rest;
  return only && more.length === 0 && rest.length < told.length ? (only.roles.method ?? null) : null;
}

/** "forgot the fee, 5", "forgot: cash", "forgot, it was to ana": what the newest note left out. */
export function forgotten(told: readonly Tok[], today: Day): Change | null {
  const said = side();
  said.isFee = told.some(({ text }) => isFee(text));
  // "forgot to say": "to" before somebody is not of these.
  const isBeside = ({ text }: Tok, at: number) =>
    isFee(text) ||
    (BESIDE_FORGOTTEN.has(text) && (text !== "to" || BESIDE_FORGOTTEN.has(told[at + 1]?.text ?? "")));
  const rest = told.filter((token, at) => !isBeside(token, at));
  const plain = rest.slice(
    Math.max(
      0,
      rest.findIndex((token) => !isOpening(token)),
    ),
  );
  if (!takeTo(plain, said, today)) return null;
  const { fee, method, buyer, source, date } = said.to;
  const left = { fee, method, buyer, source, date };
  const known = Object.entries(left).filter(([, value]) => value !== undefined);
  return known.length > 0 && known.length === Object.keys(said.to).length ? { to: said.to } : null;
}

export const isFee = (word: string): boolean => /^(?:\w+ )?fees?$/.test(word);

/** A word that corrects what was just said, alone or in a phrase ("sorry it was"). */
export const corrects = (text: string): boolean =>
  OPENERS.has(text) || (text.includes(" ") && text.split(" ").some((word) => OPENERS.has(word)));

/** A word that only opens a correction. */
export const isOpening = ({ text, kind }: Tok): boolean =>
  kind === "word" && (OPENERS.has(text) || text.split(" ").every(opens));

const opens = (word: string): boolean => OPENERS.has(word) || POINTING.has(word) || LINKS.has(word);
