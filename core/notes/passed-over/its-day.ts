import { isMark, type Tok, textOf } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { NO_ROLES, wordToken } from "../tokens/token.ts";
import { bears } from "../verbs.ts";
import {
  ALL_ON_DAY,
  BEHIND_DAY,
  BEHIND_TOLD_DAY,
  DAY_TOLD,
  DAY_TOLD_BEHIND_MARK,
  OPENS_LIST_OF_DAY,
  OPENS_TOLD_DAY,
} from "../words/times.ts";

/*
 * "stain for hutch 13.20, that was monday", "sold the desk 90. did this on friday": a clause that tells the day of what stands
 * before it, and nothing else. The day is told with that note, before any word is taken for a correction of an earlier one.
 */

/** A line's tokens, each day told behind its note standing with it; the same ones where none is. */
export function withItsDays(tokens: Tok[]): Tok[] {
  if (!tokens.some(isDay) || tokens.some(isAsking)) return tokens;
  let told = aheadOfAll(withoutLead(tokens));
  for (let at = 1; at < told.length; at += 1)
    if (isDay(told[at]!)) {
      const found = toldAt(told, at);
      if (!found) continue;
      const day = told[at]!;
      told = [...told.slice(0, found.from), day, ...told.slice(found.to)];
      at = found.from;
    }
  return told;
}

/** "finished the desk and drove 24 miles, both on sunday": the day stands ahead of all of it. */
function aheadOfAll(tokens: Tok[]): Tok[] {
  const last = tokens.findLastIndex(({ kind }) => kind !== "mark");
  const day = tokens[last];
  if (day?.kind !== "day" || tokens.slice(0, last).some(isDay)) return tokens;
  let from = last - 1;
  while (from > 0 && tokens[from]!.kind !== "mark" && last - from <= LEAD_MAX) from -= 1;
  if (from < 1 || tokens[from]!.kind !== "mark" || !ALL_ON_DAY.test(textOf(tokens.slice(from + 1, last))))
    return tokens;
  const note = tokens.slice(0, from);
  if (!isNote(note)) return tokens;
  const { from: start, to } = note[0]!;
  return [{ ...day, from: start, to }, wordToken("mark", ":", start, to, NO_ROLES), ...note];
}

/** "for monday: sold the desk 90", "this was monday, sold the desk 90": without the words before a day that stands ahead. */
function withoutLead(tokens: Tok[]): Tok[] {
  const day = tokens.findIndex(isDay);
  const mark = tokens[day + 1];
  if (day < 1 || day > LEAD_MAX || mark?.kind !== "mark") return tokens;
  const said = textOf(tokens.slice(0, day));
  const isLead = OPENS_TOLD_DAY.test(said) || (mark.text !== "," && OPENS_LIST_OF_DAY.test(said));
  return isLead ? tokens.slice(day) : tokens;
}

/** The stretch that tells nothing but that day of the note before it; null where none does. */
function toldAt(tokens: readonly Tok[], day: number): { from: number; to: number } | null {
  const to = endOf(tokens, day + 1);
  const from = to === null ? null : startOf(tokens, day, to);
  if (to === null || from === null || !isNote(tokens.slice(0, from))) return null;
  // "(that was monday)"
  const isBracket = tokens[from]!.text === "(" && tokens[to]?.text === ")";
  return { from, to: isBracket ? to + 1 : to };
}

/** Where what stands behind the day ends, and a mark or the line with it; null where more is said. */
function endOf(tokens: readonly Tok[], behind: number): number | null {
  for (let at = behind; ; ) {
    const token = tokens[at];
    if (!token || (token.kind === "mark" && token.text !== ",")) return at;
    const next = wordsBehind(tokens, token.kind === "mark" ? at + 1 : at);
    // A comma ends it as well, before whatever is told next.
    if (next === null) return token.kind === "mark" ? at : null;
    at = next;
  }
}

/** The longest run of words that say nothing more behind a day: where it ends; null where there is none. */
function wordsBehind(tokens: readonly Tok[], from: number): number | null {
  for (let to = Math.min(tokens.length, from + WORDS_MAX); to > from; to -= 1) {
    const said = textOf(tokens.slice(from, to));
    const isNothing = BEHIND_DAY.has(said) || BEHIND_TOLD_DAY.test(said);
    if (isNothing && !tokens.slice(from, to).some(({ kind }) => kind === "mark")) return to;
  }
  return null;
}
const WORDS_MAX = 5;

/** Where what leads to the day begins, its mark with it. */
function startOf(tokens: readonly Tok[], day: number, end: number): number | null {
  const isToldBehind = tokens
    .slice(day + 1, end)
    .some((_, at, behind) => BEHIND_TOLD_DAY.test(textOf(behind.slice(at, at + 2))));
  // "did this friday": the word before a weekday may be what was done.
  const pointed = /^this /.test(tokens[day]!.text) ? " this" : "";
  let from: number | null = null;
  for (let at = day - 1; at >= Math.max(1, day - LEAD_MAX) && tokens[at]!.kind === "word"; at -= 1) {
    const said = textOf(tokens.slice(at, day)) + pointed;
    const isMarked = tokens[at - 1]!.kind === "mark";
    if (DAY_TOLD.test(said) || (isMarked && DAY_TOLD_BEHIND_MARK.test(said))) from = at;
  }
  if (from === null && isToldBehind && tokens[day - 1]!.kind === "mark") from = day;
  while (from !== null && from > 1 && tokens[from - 1]!.kind === "mark") from -= 1;
  return from;
}
const LEAD_MAX = 8;

/** Something that can have a day: a verb of the books, or what a note is made of. */
const isNote = (tokens: readonly Tok[]): boolean =>
  tokens.some(
    (token) =>
      token.kind === "piece" ||
      token.roles.stream !== undefined ||
      token.text.startsWith("loan") ||
      token.roles.supply !== undefined ||
      headsOf(token).some(({ kind }) => !bears(kind, "corrects")),
  );
const isDay = ({ kind }: Tok): boolean => kind === "day";
const isAsking = (token: Tok): boolean => isMark(token, "?");
