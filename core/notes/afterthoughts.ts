import type { Day } from "../calendar.ts";
import type { Tok } from "./clause.ts";
import { headsOf } from "./heads.ts";
import { lexed } from "./line.ts";
import { isSkipped, side, type To, takeOld, takeTo } from "./mended.ts";
import type { Kind } from "./reading.ts";
import {
  ACTED,
  BESIDE_FORGOTTEN,
  DENIED_VERBS,
  FORGOTTEN,
  LINKS,
  OLD,
  OPENERS,
  POINTING,
  STILL_NOT,
  UNDONE,
} from "./words/mending.ts";
import { HOUSEHOLD } from "./words/people.ts";
import { OPINIONS } from "./words/traits.ts";

/*
 * What is sent right behind a note to correct it and names nothing of it: "no the hutch", "card not cash", "that was
 * mom", "to ana", "it's not finished".
 */

/** What becomes of the newest note. */
export interface Afterthought {
  to?: To;
  /** It did not happen, where it is of one of these kinds. */
  removed?: { kinds: Kind[] };
  /** Said without "no", "actually", "that was": it corrects only what was said just before. */
  isBare: boolean;
}

const TOKENS_MAX = 9;

/** A message as a correction of the newest note; null where a word of it says anything else. */
export function afterthoughtOf(text: string, today: Day): Afterthought | null {
  const tokens = lexed(text).filter(({ kind }) => kind !== "mark");
  if (tokens.length === 0 || tokens.length > TOKENS_MAX || text.includes("?")) return null;
  const removed = undone(tokens);
  if (removed) return { removed, isBare: false };
  const from = tokens.findIndex((token) => !isOpening(token));
  if (from < 0) return null;
  const [opening, told] = [tokens.slice(0, from), tokens.slice(from)];
  const to = changeIn(told, today);
  if (!to) return null;
  const isBare = !opening.some(({ text: word }) => OPENERS.has(word) || POINTING.has(word));
  return canBeBare(to, told) || !isBare ? { to, isBare } : null;
}

const isOpening = ({ text, kind }: Tok): boolean =>
  kind === "word" && (OPENERS.has(text) || POINTING.has(text) || LINKS.has(text));

function changeIn(told: readonly Tok[], today: Day): To | null {
  const by = householdIn(told);
  if (by) return { by };
  if (FORGOTTEN.has(told[0]!.text)) return forgotten(told.slice(1), today);
  if (isNoFee(told)) return { fee: 0 };
  const place = placeIn(told);
  if (place) return { source: place };
  if (told.some(isPraised)) return null;
  const said = side();
  const old = told.findIndex(({ text }) => OLD.has(text));
  if (!takeTo(old < 0 ? told : told.slice(0, old), said, today)) return null;
  if (old >= 0 && !takeOld(told.slice(old), said, today)) return null;
  const { amount, minutes, miles, ...to } = said.to;
  // Amounts and measures are read as corrections elsewhere.
  const isValue = amount !== undefined || minutes !== undefined || miles !== undefined;
  return isValue || Object.keys(to).length === 0 ? null : to;
}

/** "mom", "by my dad": somebody of the household did it. */
function householdIn(told: readonly Tok[]): string | null {
  const named = told.filter(({ text }) => text !== "by" && text !== "my");
  const [only, ...more] = named;
  if (!only || !HOUSEHOLD.has(only.text)) return null;
  const own = more.filter(({ text }) => !ACTED.has(text));
  // "uncle joe"
  if (own.length > 1 || own.some(({ unknown }) => !unknown)) return null;
  return [only, ...own].map(({ text }) => text).join(" ");
}

/** "an estate sale", "the thrift store": where it came from. */
function placeIn(told: readonly Tok[]): string | null {
  const [only, ...more] = told.filter((token) => !isSkipped(token) && !LINKS.has(token.text));
  return only?.kind === "word" && more.length === 0 ? (only.roles.place ?? null) : null;
}

/** "that was a good desk" tells what it was like. */
const isPraised = ({ kind, text }: Tok): boolean =>
  kind === "piece" && text.split(" ").some((word) => OPINIONS.has(word));

/** "forgot the fee, 5": what the newest note left out. */
function forgotten(told: readonly Tok[], today: Day): To | null {
  const said = side();
  const rest = told.filter(({ text }) => !BESIDE_FORGOTTEN.has(text) && !isFee(text));
  said.isFee = told.some(({ text }) => isFee(text));
  return said.isFee && takeTo(rest, said, today) && said.to.fee !== undefined ? { fee: said.to.fee } : null;
}

const isFee = (word: string): boolean => word === "fee" || word === "fees";

const isNoFee = (told: readonly Tok[]): boolean => told.length === 1 && isFee(told[0]!.text);

/** "didn't sell after all", "it's not finished": what was noted did not happen. */
function undone(tokens: readonly Tok[]): Afterthought["removed"] | null {
  const at = tokens.findIndex(({ text }) => UNDONE.has(text));
  if (at < 0) return null;
  const rest = tokens.filter(
    (token, place) => place !== at && !STILL_NOT.has(token.text) && !isOpening(token),
  );
  const [verb, ...more] = rest;
  if (verb === undefined || more.some((token) => !isSkipped(token))) return null;
  const denied = DENIED_VERBS[verb.text];
  const kinds = [...(denied ? [denied] : []), ...headsOf(verb).map(({ kind }) => kind)];
  return verb.kind === "word" && kinds.length > 0 ? { kinds } : null;
}

/** "yesterday", "cash", "to ana", "for the hutch": enough without a word before it. */
function canBeBare(to: To, told: readonly Tok[]): boolean {
  if (to.pieces) return told[0]!.text === "for" || told[0]!.text === "on";
  if (to.by) return told[0]!.text === "by" || told.some(({ text }) => ACTED.has(text));
  return to.fee === undefined || FORGOTTEN.has(told[0]!.text);
}
