import type { Tok } from "./clause.ts";
import { clausesOf } from "./clauses-read.ts";
import { dealOf } from "./deals/deals.ts";
import { questionReading } from "./interpreting/interpret.ts";
import { valueSaid } from "./mends/newest-value.ts";
import { takesItselfBack, withoutSlip } from "./mends/takenback.ts";
import { asksOfThem, isQuestion } from "./questions.ts";
import type { Reading, ReadingOf } from "./reading.ts";
import { type Units, unitsOf } from "./rows/units.ts";
import { clauseOf, type Told, typedText, untraced } from "./told.ts";
import { anyOf, eitherOf, isRefused, isWholeNote, unclear } from "./unclear.ts";
import { BESIDE_MISREAD, MISREAD } from "./words/mending.ts";

/** The notes of a line that is no correction. */
export function notesOf(tokens: Tok[], units: Units, told: Told): Reading[] {
  const value = valueRead(tokens, told);
  if (value) return value;
  const behind = behindMisread(tokens);
  const [fix, ...more] = behind ? readAgain(behind, told) : [];
  if (fix?.kind === "fix" && more.length === 0) return [{ ...fix, text: told.text }];
  if (takesItselfBack(tokens)) return takenBack(tokens, told);
  const deal = dealsOf(tokens, units, told);
  if (deal) return deal;
  if (startsAsQuestion(tokens)) return [questionReading(clauseOf(tokens, told), told.line)];
  return clausesOf(tokens, units, told);
}

/** The clauses of other tokens of a line, read by the way. */
export const readAgain = (tokens: Tok[], told: Told): Reading[] =>
  clausesOf(tokens, unitsOf(tokens), untraced(told));

/** "it took 2h": the one value that a line says. */
export function valueRead(tokens: readonly Tok[], { text, line }: Told): Reading[] | null {
  const value = valueSaid(tokens);
  return value && [{ kind: "fix", ...value, text, line }];
}

/**
 * "sold desk 90 no wait 95": what it says without the slip, asked about where the words leave doubt or it is not whole. What else the line tells stands
 * beside it.
 */
function takenBack(tokens: Tok[], told: Told): Reading[] {
  const kept = withoutSlip(tokens);
  const readings = kept ? readAgain(kept.tokens, told) : [];
  if (!kept || readings.some(isRefused)) return [unclear({ kind: "range" }, told)];
  if (kept.isSure && readings.every(isWholeNote)) return readings.map((one) => ({ ...one, text: told.text }));
  const slip = typedText(tokens.slice(kept.from, kept.to), told);
  return readings.map((one) => {
    if (readings.length > 1 && !one.text.includes(slip)) return one;
    const at = readings.length > 1 ? { text: one.text, line: one.line } : told;
    return eitherOf(anyOf(one), at, "range");
  });
}

/** "i read it wrong, it was 45": what it was, behind words that only say that it was wrong; null where it opens with none. */
function behindMisread(tokens: readonly Tok[]): Tok[] | null {
  const at = tokens.findIndex(({ kind }) => kind === "mark");
  if (at < 1) return null;
  const words = tokens.slice(0, at).flatMap(({ text }) => text.split(" "));
  const isMisread = words.some((word) => MISREAD.has(word));
  return isMisread && words.every((word) => MISREAD.has(word) || BESIDE_MISREAD.has(word))
    ? tokens.slice(at + 1)
    : null;
}

/** Beyond, a line is a list of notes, each in the words of its verb. */
const DEAL_TOKENS_MAX = 60;

/** The readings of a line in which a deal may be told: those before it, the deal, those behind it; null where none is. */
function dealsOf(tokens: Tok[], units: Units, told: Told): Reading[] | null {
  const isOther = tokens.length > DEAL_TOKENS_MAX || tokens.some(isQuestionMark) || asksOfThem(tokens);
  const deal = isOther ? null : dealOf(tokens, units, told.today, told.trace);
  if (!deal) return null;
  const around = [tokens.filter(({ to }) => to <= deal.from), tokens.filter(({ from }) => from >= deal.to)];
  const [before, behind] = around.map((part) => besideDeal(part, told));
  const own = tokens.filter(({ from, to }) => from >= deal.from && to <= deal.to);
  const said = deal.reading.kind === "share" ? shareOf(deal.reading, before!) : deal.reading;
  const place = { text: typedText(own, told), line: told.line };
  return said && [...before!, placed(said, place), ...behind!];
}

/** "sold the buffet 160, splitting the profit with dad": of the piece told before it; null where none is. */
function shareOf(share: ReadingOf<"share">, before: readonly Reading[]): Reading | null {
  if (share.pieces) return share;
  const told = before.at(-1);
  return told && "pieces" in told && Array.isArray(told.pieces)
    ? { ...share, pieces: told.pieces, follows: true }
    : null;
}

function besideDeal(part: Tok[], told: Told): Reading[] {
  if (part.every(({ kind }) => kind === "mark")) return [];
  const units = unitsOf(part);
  return dealsOf(part, units, told) ?? clausesOf(part, units, told);
}

const isQuestionMark = ({ kind, text }: Tok): boolean => kind === "mark" && text === "?";

/** A deal's reading, and all that it could be, with the words that told it. */
function placed(reading: Reading, at: { text: string; line: number }): Reading {
  if (reading.kind !== "unclear" || !reading.could) return { ...reading, ...at };
  return { ...reading, could: reading.could.map((one) => ({ ...one, ...at })), ...at };
}

/** A question runs on to its end, "and" and all, unless a sentence ends within it. */
function startsAsQuestion(tokens: readonly Tok[]): boolean {
  let ended = false;
  for (const token of tokens) {
    if (token.kind === "mark") ended ||= token.text === "." || token.text === "?" || token.text === "!";
    else if (ended && !token.roles.filler) return false;
  }
  return isQuestion(tokens) || asksOfThem(tokens);
}
