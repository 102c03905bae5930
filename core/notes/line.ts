import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import { backOf, ofNumbers } from "./back.ts";
import { withoutChatter } from "./chatter.ts";
import type { Clause, Tok } from "./clause.ts";
import { cutsOf } from "./clauses.ts";
import type { Cut } from "./cut.ts";
import { dealOf } from "./deals.ts";
import { type Draft, draft } from "./draft.ts";
import { interpret, questionReading } from "./interpret.ts";
import { corrects } from "./left-out.ts";
import { lexed, lexedOf } from "./lexed.ts";
import { mayMend, mendOf, withoutReason } from "./mends.ts";
import { newestMended, valueSaid } from "./newest.ts";
import { inParts } from "./parts.ts";
import { isQuestion } from "./questions.ts";
import type { Reading, ReadingOf } from "./reading.ts";
import { type Repeated, repeatedIn, standingOf } from "./repeated.ts";
import { withRows } from "./rows/apply.ts";
import { chatter } from "./rows/chatter.ts";
import { corrections } from "./rows/corrections.ts";
import { deals } from "./rows/deals.ts";
import { standingIn } from "./rows/lookup.ts";
import { repeats } from "./rows/repeats.ts";
import type { Trace } from "./rows/trace.ts";
import { type Units, unitsOf } from "./rows/units.ts";
import { saysSame } from "./same.ts";
import { tokenShown } from "./shown.ts";
import { HINTS } from "./sign-bits.ts";
import { signsOf } from "./signs.ts";
import { withSlipsMeant } from "./slips.ts";
import { centsIn } from "./slots/money.ts";
import { isJoke, takesItselfBack, withoutSlip } from "./takenback.ts";
import type { Word } from "./text.ts";
import { wordsOf } from "./text.ts";
import { togetherOf } from "./together.ts";
import { meantBy } from "./tokens.ts";
import { isBotWord, tellsNoFact, unclear } from "./unclear.ts";
import { bears, language } from "./verbs.ts";
import { withNoteWithin } from "./within.ts";
import { BESIDE_MISREAD, MISREAD, REDOES } from "./words/mending.ts";

/** Where a clause's tokens stand in the line as typed. */
interface Typed {
  line: string;
  spans: readonly { start: number; end: number }[];
}

function clauseOf(tokens: Tok[], { line, spans }: Typed, today: Day): Clause {
  const first = tokens[0]!;
  const last = tokens.at(-1)!;
  const text = line.slice(spans[first.from]!.start, spans[last.to - 1]!.end);
  return { tokens, text, line, spans, signs: signsOf(tokens), today };
}

/** "1. sold desk 90": the number of a list's item is no amount. */
function withoutBullet(words: Word[], line: string): Word[] {
  if (words[0]?.kind !== "digits" || words[1]?.kind !== "mark") return words;
  return /^\s{0,20}\d{1,3}[.)]\s{1,20}\p{L}/u.test(line) ? words.slice(2) : words;
}

const isMark = ({ kind }: Word): boolean => kind === "mark";

/**
 * What makes a line more than notes told plainly: a row of these tables that may stand in it, or a word for any of
 * these. Nearly every line has none, and is spared the search for each.
 */
const TURNING = {
  tables: chatter.bit | corrections.bit | repeats.bit | deals.bit,
  hints:
    HINTS.mark |
    HINTS.wordByChat |
    HINTS.asks |
    HINTS.takesBack |
    HINTS.doubted |
    HINTS.joke |
    HINTS.old |
    HINTS.corrects |
    HINTS.behind |
    HINTS.redoes,
};

/** The readings of one line; none for a blank one. */
export function readLine(line: string, today: Day, index: number, trace?: Trace[]): Reading[] {
  const readings = asTyped(line, today, index, trace);
  return withSlipsMeant(readings, line, (meant) => asTyped(meant, today, index));
}

/** The readings of one line, its words taken for no others than the speller does. */
function asTyped(line: string, today: Day, index: number, trace?: Trace[]): Reading[] {
  const text = line.trim();
  if (text === "") return [];
  const typedWords = withoutBullet(wordsOf(line), line);
  const place = { text, line: index };
  if (typedWords.every(isMark)) return [unclear({ kind: "unknown" }, place)];
  const meant = meantBy(line, typedWords, language().lexer);
  if (isBotWord(meant.norms)) return [unclear({ kind: "botWord" }, place)];
  const { tokens, hints } = lexedOf(meant);
  const typed: Typed = { line, spans: meant.words };
  const units = unitsOf(tokens);
  const at: Place = { text, line: index, trace };
  const isPlain = (hints & TURNING.hints) === 0 && (standingIn(units).tables & TURNING.tables) === 0;
  return isPlain ? plainlyTold(tokens, units, typed, today, at) : turned(tokens, units, typed, today, at);
}

/** The readings of a line that holds nothing but notes. */
function plainlyTold(tokens: Tok[], units: Units, typed: Typed, today: Day, at: Place): Reading[] {
  const noted = valueRead(tokens, at) ?? clausesOf(tokens, units, typed, today, at);
  if (noted.length === 1 && isWholeNote(noted[0]!) && !isFeeOfNothing(noted[0]!)) return noted;
  const told = withBack(noted, tokens, typed, today, at);
  return isShortLine(tokens) ? withParts(told, tokens, typed, today, at) : withWithin(told, typed, today, at);
}

/** The readings of a line that may hold chatter, a correction, a standing note, a question or a deal. */
function turned(all: Tok[], allUnits: Units, typed: Typed, today: Day, at: Place): Reading[] {
  const { trace, ...place } = at;
  const tokens = withoutChatter(all, allUnits, trace);
  const units = tokens === all ? allUnits : unitsOf(tokens);
  const isShort = isShortLine(tokens);
  const mend = isShort ? mendOf(units, today, trace) : null;
  const repeated = isShort ? repeatedIn(tokens, units, today) : null;
  const mayBeParts = isShort && (mend !== null || repeated !== null || isQuestion(all));
  const parts = mayBeParts ? partsRead(all, typed, today, at.line) : null;
  if (parts) return parts;
  const standing = repeated && standingReading(repeated, tokens, units, typed, today, at);
  if (standing) return [standing];
  if (mend?.isSure) return [{ kind: "mend", ...mend.mend, ...place }];
  const noted = withBack(notesOf(tokens, units, typed, today, at), tokens, typed, today, at);
  if (mend) return mendOr({ kind: "mend", ...mend.mend, ...place }, noted);
  if (noted.length === 1 && noted[0]!.back) return noted;
  return isShort ? withParts(noted, all, typed, today, at) : withWithin(noted, typed, today, at);
}

/** With what its parts say, or words within it, where not all of a line is understood. */
function withParts(noted: Reading[], all: readonly Tok[], typed: Typed, today: Day, at: Place): Reading[] {
  const parts = noted.some(isRefused) ? partsRead(all, typed, today, at.line) : null;
  return withWithin(parts ?? noted, typed, today, at);
}

const withWithin = (noted: Reading[], typed: Typed, today: Day, { text, line }: Place): Reading[] =>
  withNoteWithin(
    noted,
    () => lexed(typed.line),
    { text, line },
    (part) => clausesOf(part, unitsOf(part), typed, today, { text, line }),
  );

const isRefused = (reading: Reading): boolean => reading.kind === "unclear" && !reading.could;

const partsRead = (tokens: readonly Tok[], typed: Typed, today: Day, line: number): Reading[] | null =>
  inParts(tokens, (part) => partRead(part, typed, today, line));

/** A part of a line, read as if it stood alone. */
function partRead(part: Tok[], typed: Typed, today: Day, line: number): Reading[] {
  const tokens = withoutChatter(part, unitsOf(part));
  const units = unitsOf(tokens);
  const place = { text: clauseOf(tokens, typed, today).text, line };
  const repeated = repeatedIn(tokens, units, today);
  const standing = repeated && standingReading(repeated, tokens, units, typed, today, place);
  if (standing) return [standing];
  const mend = mendOf(units, today);
  if (mend?.isSure) return [{ kind: "mend", ...mend.mend, ...place }];
  return notesOf(tokens, units, typed, today, place);
}

const isWholeNote = ({ kind, missing }: Reading): boolean => kind !== "unclear" && !missing;

/** What says little by itself may go on from what was said before, or correct it. */
function withBack(
  readings: Reading[],
  said: readonly Tok[],
  typed: Typed,
  today: Day,
  place: Place,
): Reading[] {
  const [reading, ...others] = readings;
  if (!reading || typed.spans.length > BACK_WORDS_MAX) return readings;
  const isUnclear = readings.some(({ kind }) => kind === "unclear");
  // "200 and its gone" falls into parts of which none is read.
  const isNoneRead = readings.every((each) => each.kind === "unclear" && !each.could);
  const isOpen =
    isNoneRead ||
    (others.length === 0 && reading.missing !== undefined && said.some(saysSame)) ||
    (others.length === 0 && (isUnclear || reading.missing?.includes("pieces") === true));
  // "wrong one, it was the vanity i sold" falls into parts.
  const saysMore = readings.some(isWholeNote) && !said.some(isWrongPiece);
  const isCut = others.length > 0 && (corrects(said[0]!.text) || isWrongPiece(said[0]!)) && !saysMore;
  const mayCorrect =
    isCut || (others.length === 0 && (isOpenToCorrection(reading) || said.some(correctsByItself)));
  // "no wait we kept it": the note before, told anew.
  if (others.length === 0 && !isUnclear && REDOES.has(said[0]!.text))
    return [{ ...reading, back: { restated: true } }];
  if (!isUnclear && !isOpen && !mayCorrect) return readings;
  const { text, line } = place;
  const tokens = lexed(typed.line);
  const read = (other: Tok[]) => clausesOf(other, unitsOf(other), typed, today, { text, line });
  const isNoFact = readings.some((each) => each.kind === "unclear" && tellsNoFact(each.why));
  const numbers = isUnclear && !isNoFact ? ofNumbers(tokens, { text, line, today, read }) : null;
  if (numbers && others.length > 0)
    return [{ ...unclear({ kind: "unknown" }, { text, line }), back: numbers }];
  const on = numbers ?? (isOpen && !isNoFact ? backOf(tokens, { text, line, today, read }) : null);
  const mend = on || !mayCorrect ? null : newestMended(tokens, today);
  const back = on ?? (mend && { mend: { ...mend, text, line } as ReadingOf<"mend" | "fix"> });
  if (back && others.length > 0) return [{ ...unclear({ kind: "unknown" }, { text, line }), back }];
  return back ? [{ ...reading, back }] : readings;
}

/** "oops wrong desk, i finished the pine one": no note beside the correction. */
const isWrongPiece = ({ kind, text }: Tok): boolean => kind === "piece" && text.startsWith("wrong ");

/** "only 90 min", "45 min, sorry": no measure of its own. */
const correctsByItself = ({ hints }: Tok, at: number, { length }: { length: number }): boolean =>
  (hints & HINTS.corrects) !== 0 || (at === length - 1 && (hints & HINTS.behind) !== 0);

/** It says no fact by itself: nothing clear, a fee of nothing named, or only who did something ("mom bought it"). */
function isOpenToCorrection(reading: Reading): boolean {
  const { kind, by, missing = [] } = reading;
  return (
    kind === "unclear" ||
    isFeeOfNothing(reading) ||
    (by !== undefined && missing.includes("pieces") && missing.length > 1)
  );
}

const isFeeOfNothing = (reading: Reading): boolean =>
  reading.kind === "spend" && reading.category === "fees" && !reading.pieces;

/** Words that only go on from others are few. */
const BACK_WORDS_MAX = 12;

/** "the primer was 18" may correct a note, or be one: asked, with both. */
function mendOr(mend: Reading, noted: Reading[]): Reading[] {
  const [note, ...others] = noted;
  if (!note || others.length > 0) return noted;
  const isNothing = note.kind === "unclear" && !note.could;
  if (isNothing) return [mend];
  const could = [mend, ...(note.kind === "unclear" ? note.could! : [note])];
  const at = { text: note.text, line: note.line };
  const asked = { ...unclear({ kind: "newOrOld" }, at), could: could.slice(0, COULD_MAX) };
  // Where the books hold nothing that it could correct, a whole note that names its piece is what it is.
  const isWhole = note.kind === "spend" && !note.missing && note.pieces !== undefined;
  return [isWhole ? { ...asked, byBooks: true } : asked];
}

/** So many readings fit on buttons, with one more for none of them. */
const COULD_MAX = 3;

/** "it took 2h": the one value that a line says. */
function valueRead(tokens: readonly Tok[], { text, line }: Place): Reading[] | null {
  const value = valueSaid(tokens);
  return value && [{ kind: "fix", ...value, text, line }];
}

/** The notes of a line that is no correction. */
function notesOf(tokens: Tok[], units: Units, typed: Typed, today: Day, place: Place): Reading[] {
  const { text, line, trace } = place;
  const value = valueRead(tokens, place);
  if (value) return value;
  const behind = behindMisread(tokens);
  const [fix, ...more] = behind ? clausesOf(behind, unitsOf(behind), typed, today, { text, line }) : [];
  if (fix?.kind === "fix" && more.length === 0) return [{ ...fix, text }];
  if (takesItselfBack(tokens)) {
    const kept = withoutSlip(tokens);
    const [meant, ...others] = kept ? clausesOf(kept, unitsOf(kept), typed, today, { text, line }) : [];
    const isWhole = meant !== undefined && others.length === 0 && meant.kind !== "unclear";
    return [{ ...unclear({ kind: "range" }, { text, line }), ...(isWhole ? { could: [meant] } : {}) }];
  }
  const deal = dealsOf(tokens, units, typed, today, place);
  if (deal) return deal;
  if (startsAsQuestion(tokens)) return [questionReading(clauseOf(tokens, typed, today), line)];
  return clausesOf(tokens, units, typed, today, { text, line, trace });
}

/** A correction or a standing note is a short line. */
const isShortLine = ({ length }: readonly Tok[]): boolean => length <= WHOLE_TOKENS_MAX;

const WHOLE_TOKENS_MAX = 40;

/** Beyond, a line is a list of notes, each in the words of its verb. */
const DEAL_TOKENS_MAX = 60;

/** The readings of a line in which a deal may be told: those before it, the deal, those behind it; null where none is. */
function dealsOf(tokens: Tok[], units: Units, typed: Typed, today: Day, place: Place): Reading[] | null {
  const isOther = tokens.length > DEAL_TOKENS_MAX || tokens.some(isQuestionMark);
  const deal = isOther ? null : dealOf(tokens, units, today, place.trace);
  if (!deal) return null;
  const around = [tokens.filter(({ to }) => to <= deal.from), tokens.filter(({ from }) => from >= deal.to)];
  const [before, behind] = around.map((part) => besideDeal(part, typed, today, place));
  const told = tokens.filter(({ from, to }) => from >= deal.from && to <= deal.to);
  const at = { text: clauseOf(told, typed, today).text, line: place.line };
  const said = deal.reading.kind === "share" ? shareOf(deal.reading, before!) : deal.reading;
  return said && [...before!, placed(said, at), ...behind!];
}

/** "sold the buffet 160, splitting the profit with dad": of the piece told before it; null where none is. */
function shareOf(share: ReadingOf<"share">, before: readonly Reading[]): Reading | null {
  if (share.pieces) return share;
  const told = before.at(-1);
  return told && "pieces" in told && Array.isArray(told.pieces)
    ? { ...share, pieces: told.pieces, follows: true }
    : null;
}

function besideDeal(part: Tok[], typed: Typed, today: Day, place: Place): Reading[] {
  if (part.every(({ kind }) => kind === "mark")) return [];
  const units = unitsOf(part);
  return dealsOf(part, units, typed, today, place) ?? clausesOf(part, units, typed, today, place);
}

const isQuestionMark = ({ kind, text }: Tok): boolean => kind === "mark" && text === "?";

/** A deal's reading, and all that it could be, with the words that told it. */
function placed(reading: Reading, at: { text: string; line: number }): Reading {
  if (reading.kind !== "unclear" || !reading.could) return { ...reading, ...at };
  return { ...reading, could: reading.could.map((one) => ({ ...one, ...at })), ...at };
}

interface Place {
  text: string;
  line: number;
  trace?: Trace[] | undefined;
}

/** The readings of a line's clauses, each whole. */
function clausesOf(
  tokens: Tok[],
  units: Units,
  typed: Typed,
  today: Day,
  { text, line, trace }: Place,
): Reading[] {
  const place = { text, line };
  const said = withRows(units, trace);
  const cuts = cutsOf(said.tokens, language().facts);
  if (trace)
    for (const cut of cuts) trace.push({ table: "clause", words: cut.tokens.map(tokenShown).join(" ") });
  if (cuts.length > 1 && isJoke(tokens)) return [unclear({ kind: "denial" }, place)];
  const around = { typed, today, isMending: cuts.length > 1 && mayMend(said) };
  const drafts: Draft[] = [];
  for (const cut of cuts) drafts.push(draftOf(cut, around, drafts.at(-1)));
  if (drafts.length === 0) return [unclear({ kind: "unknown" }, place)];
  return correctedOnly(togetherOf(drafts, line), text);
}

/** "scratch that, it was 8": the note stands with the other value, and nothing is taken back beside it. */
function correctedOnly(readings: Reading[], text: string): Reading[] {
  const [undo, fix, ...others] = readings;
  // "i put it on the wrong one, it was for the bench": of what is not understood, and not of the newest note.
  const isOfUnknown = undo?.kind === "unclear" && !undo.could && fix?.kind === "mend" && fix.of?.back === 1;
  if (isOfUnknown && others.length === 0) return [{ ...undo, text }];
  const amount = fix?.kind === "fix" && others.length === 0 ? fix.amount : undefined;
  const old = undo?.kind === "unclear" && amount !== undefined ? amountIn(undo) : null;
  // "i typed 27, should've been 21": what it was tells which note is meant.
  if (undo && old !== null && amount !== undefined)
    return [{ kind: "mend", of: { amount: old }, to: { amount }, text, line: undo.line }];
  if (undo?.kind !== "undo" || fix?.kind !== "fix" || others.length > 0) return readings;
  return [{ ...fix, text }];
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

/** The one amount of a clause that says nothing else that is known. */
function amountIn({ text }: Reading): Cents | null {
  const [amount, ...others] = lexed(text).filter(({ kind }) => kind === "amount");
  return amount && others.length === 0 ? centsIn(amount) : null;
}

/** "storage 60 every month", "storage is 65 from june", "stop the storage"; null where a line says none of it. */
function standingReading(
  said: Repeated,
  tokens: Tok[],
  units: Units,
  typed: Typed,
  today: Day,
  place: Place,
): Reading | null {
  const { rest, every, day, from, stop, known } = said;
  const at = { text: place.text, line: place.line };
  const since = from === undefined ? {} : { from };
  if (stop || known || every === undefined) {
    // "cancel the sandpaper, returned it" takes back what was noted.
    const isStopped = stop === true && tokens[0]!.text !== "cancel";
    const meant = standingOf(isStopped ? withoutReason(rest) : rest, stop === true, known === true);
    if (!meant) return null;
    repeatedIn(tokens, units, today, place.trace);
    return { kind: "repeat", ...meant, ...(stop ? { stop } : {}), ...since, ...at } as Reading;
  }
  const copies = rest.map((token) => ({ ...token }));
  const [note, ...others] = clausesOf(copies, unitsOf(copies), typed, today, place);
  if (!note || others.length > 0 || !bears(note.kind, "repeats") || note.missing) return null;
  repeatedIn(tokens, units, today, place.trace);
  const { text: _, line: __, ...plain } = note;
  const which = day === undefined ? {} : { day };
  return { kind: "repeat", every, ...which, ...since, note: { ...plain, ...at }, ...at } as Reading;
}

/** A question runs on to its end, "and" and all, unless a sentence ends within it. */
function startsAsQuestion(tokens: readonly Tok[]): boolean {
  let ended = false;
  for (const token of tokens) {
    if (token.kind === "mark") ended ||= token.text === "." || token.text === "?" || token.text === "!";
    else if (ended && !token.roles.filler) return false;
  }
  return isQuestion(tokens);
}

interface Around {
  typed: Typed;
  today: Day;
  /** One clause of several may correct an earlier note. */
  isMending: boolean;
}

function draftOf(cut: Cut, { typed, today, isMending }: Around, before: Draft | undefined): Draft {
  const clause = clauseOf(cut.tokens, typed, today);
  const mend = isMending ? mendOf(unitsOf(cut.tokens), today) : null;
  // "the hutch was 60 not 65 and the paint was 14": a correction goes on.
  if (mend && (mend.isSure || before?.kind === "mend")) return draft("mend", { ...mend.mend }, clause);
  const isOfLoan = before !== undefined && isPaidOnIt(clause, before);
  if (isOfLoan) clause.signs.add("loan");
  const made = interpret(clause, cut);
  if (!isOfLoan) {
    made.repeats = cut.repeats !== undefined;
    return made;
  }
  const name = before.fields["loan"];
  if (made.kind === "pay" && made.fields["loan"] === undefined && name !== undefined)
    made.fields["loan"] = name;
  return made;
}

/** "statement says 6251.08 on the van loan, paid 200 on it": the loan again. */
function isPaidOnIt({ tokens, signs }: Clause, before: Draft): boolean {
  if (!signs.has("pronoun") || !signs.has("number") || signs.has("named")) return false;
  const isOfLoan = language()
    .grammars.get(before.kind)
    ?.fields.some(({ slot }) => slot === "loan");
  return isOfLoan === true && tokens.some(({ text }) => /^(?:paid|pd|payed|sent|put)$/.test(text));
}
