import type { Clause } from "../clause.ts";
import { claim, freeTokens } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { Kind, ReadingFields } from "../reading.ts";
import { money } from "../slots/money.ts";
import { what } from "../slots/spending.ts";

/** The words by which an earlier note is spoken of. */
const KINDS: Readonly<Record<string, Kind>> = {
  drive: "drive",
  sale: "sell",
  purchase: "buy",
  listing: "list",
  payment: "pay",
  deposit: "hold",
  trade: "trade",
};

/** Which earlier note a correction speaks of, and what becomes of it. */
export function judgeMend(fields: ReadingFields["mend"], clause: Clause): Trouble | null {
  const head = clause.head?.text ?? "";
  const pieces = freeTokens(clause, "piece");
  claim(...pieces);
  const [only] = pieces;
  const mention = only?.mention;
  if (/mistake|error/.test(head)) {
    if (mention?.number === undefined) return { kind: "unknown" };
    fields.of = { number: mention.number };
    fields.removed = true;
    return null;
  }
  if (/^actually/.test(head)) {
    const amount = money(clause);
    if (!mention || !amount || !("value" in amount)) return { kind: "unclaimed" };
    fields.of = { kind: "buy", pieces: [mention] };
    fields.to = { amount: amount.value as number };
    return null;
  }
  const word = clause.tokens.find((token) => KINDS[token.text] !== undefined);
  if (word) claim(word);
  const named = word ? null : what(clause);
  const said = named && "value" in named ? (named.value as string) : undefined;
  if (!word && said === undefined) return { kind: "undoMore" };
  fields.of = {
    ...(word ? { kind: KINDS[word.text]! } : { kind: "spend", what: said! }),
    ...(mention ? { pieces: [mention] } : {}),
    ...(/last$/.test(head) ? { back: 1 } : {}),
  };
  fields.removed = true;
  return null;
}
