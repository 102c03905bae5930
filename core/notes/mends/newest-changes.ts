import type { Day } from "../../calendar.ts";
import type { Tok } from "../clause.ts";
import { strongHeadsOf } from "../heads.ts";
import { centsIn } from "../slots/money.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { bears } from "../verbs.ts";
import { isCommon } from "../words/daily.ts";
import { ARTICLES } from "../words/filler.ts";
import { BE } from "../words/lived.ts";
import { ACTED, FOR_IT, FORGOTTEN, LINKS, NOT_BY, NOT_US, OLD, POINTING, WHO } from "../words/mending.ts";
import { HOUSEHOLD } from "../words/people.ts";
import { OPINIONS } from "../words/traits.ts";
import { type Change, forgotten, isFee, isOpening, methodAlone } from "./left-out.ts";
import { isSkipped, type Of, side, takeOld, takeTo } from "./mended.ts";

/* What else the newest note should have: its pieces, who did it, the place, the way of paying. */

/** A line of more words says more than what became of the newest note. */
export const TOKENS_MAX = 9;

/** "for the hutch, not the rocker": what it was for, and not the name of a piece. */
export function isForOther(line: readonly Tok[]): boolean {
  if (!line.some(({ hints }) => (hints & HINTS.old) !== 0)) return false;
  const tokens = line.filter(({ kind }) => kind !== "mark");
  return tokens.length <= TOKENS_MAX && forOther(tokens) !== null;
}

/** "for the hutch, not the rocker": the piece that it was for, and the one that it was not. */
export function forOther(tokens: readonly Tok[]): Change | null {
  const told = tokens.slice(tokens.findIndex((token) => !isOpening(token)));
  const [lead, ...rest] = told.filter(({ text }) => !ARTICLES.has(text));
  const [now, not, ...behind] = rest;
  const [old, ...more] = behind.filter(({ text }) => !FOR_IT.has(text));
  const isOther = FOR_IT.has(lead?.text ?? "") && OLD.has(not?.text ?? "") && more.length === 0;
  if (!isOther || now?.kind !== "piece" || old?.kind !== "piece") return null;
  return { of: { pieces: [old.mention!] }, to: { pieces: [now.mention!] } };
}

/** "not for the hutch", "not the desk, the hutch": the pieces that it was not of, and those that it was. */
export function otherPieces([first, ...rest]: readonly Tok[]): Change | null {
  const [old, now, ...others] = rest.filter(({ kind }) => kind === "piece");
  const isPlain = rest.every((token) => token.kind === "piece" || isSkipped(token) || token.text === "but");
  if (first?.text !== "not" || !old || others.length > 0 || !isPlain) return null;
  if (!now && !rest.some(({ text }) => text === "for" || text === "on")) return null;
  return { of: { pieces: [old.mention!] }, to: { pieces: now ? [now.mention!] : [] } };
}

/** "forgot", "forgot to say" */
const isForgotten = ({ text }: Tok): boolean =>
  FORGOTTEN.has(text) || FORGOTTEN.has(text.split(" ").find((word) => word !== "i")!);

/** "by my dad", "forgot, cash", "at an estate sale": one thing of a note that was other than noted. */
export function changeIn(told: readonly Tok[], today: Day): Change | null {
  const by = householdIn(told);
  if (by) return by;
  if (isForgotten(told[0]!)) {
    const left = told.slice(1);
    const paid = methodAlone(left.filter((token) => !isOpening(token)));
    return paid ? { to: { method: paid } } : forgotten(left, today);
  }
  const method = methodAlone(told);
  if (method) return { to: { method } };
  const got = gotInAll(told);
  if (got) return got;
  if (isNoFee(told)) return { to: { fee: 0 } };
  const place = placeIn(told);
  if (place) return { to: { source: place } };
  // "meant to go to the auction but it rained"
  if (told.some(isPraised) || told.some(({ text }) => text === "but")) return null;
  const said = side();
  const old = told.findIndex(({ text }) => OLD.has(text));
  if (!takeTo(old < 0 ? told : told.slice(0, old), said, today)) return null;
  if (old >= 0 && !takeOld(told.slice(old), said, today)) return null;
  const { amount, minutes, miles, ...to } = said.to;
  // Amounts and measures are read as corrections elsewhere.
  const isValue = amount !== undefined || minutes !== undefined || miles !== undefined;
  if (isValue || Object.keys(to).length === 0) return null;
  return to.pieces && said.of.pieces ? { of: { pieces: said.of.pieces }, to } : { to };
}

/** "got 40 in cash" behind a sale at 40: how it was paid. */
function gotInAll(told: readonly Tok[]): Change | null {
  const [sum, ...others] = told.filter(({ kind }) => kind === "amount");
  const amount = sum && others.length === 0 ? centsIn(sum) : null;
  const method = methodAlone(told.filter((token) => token !== sum));
  return amount && method ? { of: { amount, kinds: ["sell"] }, to: { method } } : null;
}

/** "mom", "by my dad", "my wife bought that one, not me", "dad did those 90 minutes": who of the household did what. */
function householdIn(told: readonly Tok[]): Change | null {
  // "that wasn't me, it was mom"
  const me = told.findIndex(({ text }) => text === "me" || text === "us");
  const isDenied = me > 0 && told.slice(0, me).every(({ text }) => NOT_BY.has(text));
  const who = isDenied ? told.slice(me + 1).filter((token) => !isOpening(token)) : told;
  const named = who.filter(({ text }) => text !== "by" && text !== "my");
  const [only, ...more] = named;
  if (!only || !HOUSEHOLD.has(only.text)) return null;
  const deeds = more.filter((token) => strongHeadsOf(token).some(({ kind }) => !bears(kind, "corrects")));
  const minutes = more.find(({ kind }) => kind === "duration")?.minutes;
  const own = more.filter(
    (token) =>
      token.kind !== "piece" &&
      !(token.kind === "duration" && token.minutes !== undefined) &&
      !deeds.includes(token) &&
      !isSkipped(token) &&
      ![ACTED, WHO, NOT_US, POINTING].some((words) => words.has(token.text)),
  );
  // "uncle joe", and not "the kids are asleep" or "the kids were up all night"
  if (own.length > 1 || deeds.length > 1) return null;
  // "mom paid half" is no name.
  if (own[0] && told[told.indexOf(only) + 1] !== own[0]) return null;
  if (own.some(({ unknown, text }) => !unknown || isCommon(text)) || isHow(told, only)) return null;
  const pieces = told.flatMap(({ mention }) => (mention && !mention.it ? [mention] : []));
  const kinds = deeds.flatMap((token) => strongHeadsOf(token)).map(({ kind }) => kind);
  const of: Of = {
    ...(pieces.length > 0 ? { pieces } : {}),
    ...(kinds.length > 0 ? { kinds } : {}),
    ...(minutes === undefined ? {} : { minutes }),
  };
  const by = [only, ...own].map(({ text }) => text).join(" ");
  return { ...(Object.keys(of).length > 0 ? { of } : {}), to: { by } };
}

/** "the boys were up at five": how somebody was, and nothing that they did. */
const isHow = (told: readonly Tok[], who: Tok): boolean =>
  BE.has(told[told.indexOf(who) + 1]?.text ?? "") &&
  !told.some(({ text }) => text !== "up" && (ACTED.has(text) || WHO.has(text)));

/** "an estate sale", "the thrift store": where it came from. */
function placeIn(told: readonly Tok[]): string | null {
  if (told[0]!.text === "to") return null;
  const [only, ...more] = told.filter((token) => !isSkipped(token) && !LINKS.has(token.text));
  return only?.kind === "word" && more.length === 0 ? (only.roles.place ?? null) : null;
}

/** "that was a good desk" tells what it was like. */
const isPraised = ({ kind, text, mention }: Tok): boolean =>
  kind === "piece" &&
  !(mention!.other || mention!.besides) &&
  text.split(" ").some((word) => OPINIONS.has(word));

const isNoFee = (told: readonly Tok[]): boolean => told.length === 1 && isFee(told[0]!.text);

/** "yesterday", "cash", "to ana", "for the hutch": enough without a word before it. */
export function canBeBare({ of, to }: Change, told: readonly Tok[]): boolean {
  if (to.by) return NOT_BY.has(told[0]!.text) || told.some(({ text }) => ACTED.has(text)) || isNotUs(told);
  if (of) return true;
  if (to.pieces?.every(({ it }) => it)) return true;
  if (to.pieces) return told[0]!.text === "for" || told[0]!.text === "on";
  return to.fee === undefined || FORGOTTEN.has(told[0]!.text);
}

/** "my brother drove, not me" */
const isNotUs = (told: readonly Tok[]): boolean =>
  told.some(({ text }, at) => OLD.has(text) && told[at + 1]?.text === "me");
