import type { Day } from "../calendar.ts";
import { type Tok, textOf } from "./clause.ts";
import { clausesOf } from "./clauses-read.ts";
import { isFeeOfNothing, withBack } from "./going-on/going-on.ts";
import { lexedOf } from "./lexed.ts";
import { mendOf } from "./mends/mends.ts";
import { removedForSure } from "./mends/removed.ts";
import { withKinMeant } from "./mentions/kin.ts";
import { notesOf, readAgain, valueRead } from "./notes-read.ts";
import { withBargained } from "./passed-over/bargained.ts";
import { withoutComing } from "./passed-over/came-over.ts";
import { withoutChatter } from "./passed-over/chatter.ts";
import { hasTwoPieces, withoutDescribed } from "./passed-over/described.ts";
import { withForWhom } from "./passed-over/for-whom.ts";
import { withItsDays } from "./passed-over/its-day.ts";
import { toldOfOtherDay } from "./passed-over/other-day.ts";
import { withPutRight } from "./passed-over/put-right.ts";
import { asSpoken } from "./passed-over/spoken.ts";
import { withWorkedOut } from "./passed-over/worked-out.ts";
import { isQuestion } from "./questions.ts";
import type { Reading } from "./reading.ts";
import { repeatedIn, standingReading } from "./repeated.ts";
import { chatter } from "./rows/chatter.ts";
import { corrections } from "./rows/corrections.ts";
import { deals } from "./rows/deals.ts";
import { standingIn } from "./rows/lookup.ts";
import { misnoted } from "./rows/misnoted.ts";
import { repeats } from "./rows/repeats.ts";
import type { Trace } from "./rows/trace.ts";
import { type Units, unitsOf } from "./rows/units.ts";
import { inParts } from "./second-look/parts.ts";
import { withSlipsMeant } from "./second-look/slips.ts";
import { toldInPast } from "./second-look/tenses.ts";
import { agreedWithDeposit, heldForVisit, withoutTold } from "./second-look/told-beside.ts";
import { withNoteWithin } from "./second-look/within.ts";
import { MARKS } from "./tokens/lexicon.ts";
import { meantBy } from "./tokens/meant.ts";
import { HINTS } from "./tokens/sign-bits.ts";
import { type Word, wordsOf } from "./tokens/text.ts";
import { type Told, typedText, untraced } from "./told.ts";
import { anyOf, isBotWord, isRefused, isWholeNote, unclear } from "./unclear.ts";
import { language } from "./verbs.ts";

/** "1. sold desk 90": the number of a list's item is no amount. */
function withoutBullet(words: Word[], line: string): Word[] {
  if (words[0]?.kind !== "digits" || words[1]?.kind !== "mark") return words;
  return /^\s{0,20}\d{1,3}[.)]\s{1,20}\p{L}/u.test(line) ? words.slice(2) : words;
}

const wordsIn = (line: string): Word[] => withoutBullet(wordsOf(line), line);

const isMark = ({ kind }: Word): boolean => kind === "mark";

/**
 * What makes a line more than notes told plainly: a row of these tables that may stand in it, or a word for any of
 * these. Nearly every line has none, and is spared the search for each.
 */
const TURNING = {
  tables: corrections.bit | repeats.bit | deals.bit,
  hints:
    HINTS.mark |
    HINTS.asks |
    HINTS.takesBack |
    HINTS.doubted |
    HINTS.joke |
    HINTS.old |
    HINTS.corrects |
    HINTS.behind |
    HINTS.redoes,
};

/** What may be told of the day stands beside one of these words or marks, or in the words of a row. */
const BESIDE_CHATTER = HINTS.wordByChat | HINTS.markByChat;

/** The readings of one line; none for a blank one. */
export function readLine(line: string, today: Day, index: number, trace?: Trace[]): Reading[] {
  const again = (meant: string): Reading[] => asTyped(meant, today, index);
  const told = toldInPast(asTyped(line, today, index, trace), line, again);
  return removedForSure(withSlipsMeant(told.readings, told.line, again));
}

/** The readings of one line, its words taken for no others than the speller does. */
function asTyped(line: string, today: Day, index: number, trace?: Trace[]): Reading[] {
  const text = line.trim();
  if (text === "") return [];
  const typedWords = wordsIn(line);
  const place = { text, line: index };
  if (typedWords.every(isMark)) return [unclear({ kind: "unknown" }, place)];
  const meant = meantBy(line, typedWords, language().lexer);
  if (isBotWord(meant.norms)) return [unclear({ kind: "botWord" }, place)];
  const { tokens: typed, hints } = lexedOf(meant);
  const tokens = asMeant(typed, text, { marks: meant.marks, hints });
  if (trace) traceMisnoted(tokens, trace);
  const told: Told = { text, line: index, today, typed: line, spans: meant.words, trace };
  const units = unitsOf(tokens);
  const { tables } = standingIn(units);
  const mayChat = (hints & BESIDE_CHATTER) !== 0 || (tables & chatter.bit) !== 0;
  const kept = mayChat ? withoutChatter(tokens, units, trace) : tokens;
  const isTurned = (hints & TURNING.hints) !== 0 || (tables & TURNING.tables) !== 0 || kept !== tokens;
  return isTurned ? turned(tokens, kept, units, told) : plainlyTold(tokens, units, told);
}

/** The tokens of a line as they are meant. Each step is taken where the line holds what it begins from. */
function asMeant(typed: Tok[], line: string, { marks, hints }: { marks: number; hints: number }): Tok[] {
  const right = withWorkedOut((marks & MARKS.putsRight) === 0 ? typed : withPutRight(typed));
  const mayBargain = (marks & MARKS.haggles) !== 0 && (marks & MARKS.dealt) !== 0;
  let tokens = mayBargain ? withBargained(right, line) : right;
  tokens = withForWhom(withItsDays(toldOfOtherDay(asSpoken(tokens))));
  const isOfSomebody = (hints & HINTS.person) !== 0;
  if (isOfSomebody || (marks & MARKS.describes) !== 0 || hasTwoPieces(tokens))
    tokens = withoutDescribed(tokens);
  return isOfSomebody ? withoutComing(withKinMeant(tokens)) : tokens;
}

/** What a line tells of a note that was noted wrong is read where the books are at hand; here it is only told. */
function traceMisnoted(tokens: readonly Tok[], trace: Trace[]): void {
  for (const { row, from, to } of misnoted.fired(tokens))
    trace.push({ table: "misnoted", row, words: textOf(tokens.slice(from, to)) });
}

/** The readings of a line that holds nothing but notes. */
function plainlyTold(tokens: Tok[], units: Units, told: Told): Reading[] {
  const noted = valueRead(tokens, told) ?? clausesOf(tokens, units, told);
  const [only, ...others] = noted;
  const isDatedHold = only?.kind === "hold" && only.date !== undefined;
  if (only && others.length === 0 && isWholeNote(only) && !isFeeOfNothing(only) && !isDatedHold) return noted;
  return withRest(withBack(noted, tokens, told), tokens, isShortLine(tokens), told);
}

/**
 * The readings of a line, or of a part of it, that may hold a correction, a standing note, a question or a deal: of those
 * of its tokens that are no chatter.
 */
function turned(all: Tok[], tokens: Tok[], allUnits: Units, line: Told, isPart = false): Reading[] {
  const { today, trace } = line;
  const told = isPart ? { ...line, text: typedText(tokens, line) } : line;
  const units = tokens === all ? allUnits : unitsOf(tokens);
  const isShort = isShortLine(tokens);
  const mend = isShort ? mendOf(units, today, trace) : null;
  const repeated = isShort ? repeatedIn(tokens, units, today) : null;
  const mayBeParts = !isPart && isShort && (mend !== null || repeated !== null || isQuestion(all));
  const parts = mayBeParts ? partsRead(all, told) : null;
  if (parts) return parts;
  const standing = repeated && standingReading(repeated, tokens, units, told);
  if (standing) return [standing];
  const correction: Reading | null = mend && { kind: "mend", ...mend.mend, text: told.text, line: told.line };
  if (correction && mend!.isSure) return [correction];
  const notes = putRight(notesOf(tokens, units, told));
  if (isPart) return notes;
  const noted = withBack(notes, tokens, told);
  if (correction) return mendOr(correction, noted);
  return withRest(noted, all, isShort, told);
}

/** "listed the desk at 190 by mistake, supposed to be 109": what is taken back and told anew is put right. */
function putRight(notes: Reading[]): Reading[] {
  const [mend, fix, ...others] = notes;
  if (mend?.kind !== "mend" || !mend.removed || fix?.kind !== "fix" || others.length > 0) return notes;
  const { removed: _, ...kept } = mend;
  return fix.amount === undefined ? notes : [{ ...kept, to: { amount: fix.amount } }];
}

/** A correction or a standing note is a short line. */
const isShortLine = ({ length }: readonly Tok[]): boolean => length <= WHOLE_TOKENS_MAX;

const WHOLE_TOKENS_MAX = 40;

/** With what its parts say, or words within it, where not all of a line is understood. */
function withRest(noted: Reading[], all: readonly Tok[], isShort: boolean, told: Told): Reading[] {
  const { text, line } = told;
  const lexed = (): Tok[] =>
    asSpoken(lexedOf(meantBy(told.typed, wordsIn(told.typed), language().lexer)).tokens);
  const agreed = agreedWithDeposit(noted);
  if (agreed) return [{ ...agreed, text }];
  const held = heldForVisit(noted, lexed, (rest) => partRead(rest, told));
  if (held) return held.length === 1 ? [{ ...held[0]!, text }] : held;
  if (noted.length === 1 && noted[0]!.back) return noted;
  const parts = isShort && noted.some(isRefused) ? partsRead(all, told) : null;
  const kept = withTold(
    withoutTold(parts ?? noted, lexed, (rest) => partRead(rest, told)),
    lexed,
    text,
  );
  return withNoteWithin(kept, lexed, { text, line }, (part) => readAgain(part, told));
}

/** "she'd like the mirror as well, hold it too": the one piece that is told before it in passing. */
function withTold(readings: Reading[], lexed: () => Tok[], text: string): Reading[] {
  const [first, ...others] = readings;
  if (!first?.follows || !first.missing?.includes("pieces")) return readings;
  const tokens = lexed();
  const at = tokens.findIndex(({ roles }) => roles.heads?.some(({ kind }) => kind === first.kind));
  const [told, ...more] = tokens.flatMap(({ mention }, place) => (mention ? [{ mention, place }] : []));
  if (!told || more.length > 0 || told.mention.it || told.place > at) return readings;
  const { follows: _, missing, ...rest } = first;
  const left = missing.filter((field) => field !== "pieces");
  const meant = {
    ...rest,
    text,
    pieces: [told.mention],
    ...(left.length > 0 ? { missing: left } : {}),
  } as Reading;
  return [meant, ...others];
}

/** The parts of a line, each read as if it stood alone; null where it does not fall into any. */
const partsRead = (tokens: readonly Tok[], told: Told): Reading[] | null =>
  inParts(tokens, (part) => partRead(part, told));

function partRead(part: Tok[], told: Told): Reading[] {
  const units = unitsOf(part);
  return turned(part, withoutChatter(part, units), units, untraced(told), true);
}

/** "the primer was 18" may correct a note, or be one: asked, with both. */
function mendOr(mend: Reading, noted: Reading[]): Reading[] {
  const [note, ...others] = noted;
  if (!note || others.length > 0) return noted;
  if (isRefused(note)) return [mend];
  const could = [mend, ...anyOf(note)];
  const at = { text: note.text, line: note.line };
  const asked = { ...unclear({ kind: "newOrOld" }, at), could: could.slice(0, COULD_MAX) };
  // Where the books hold nothing that it could correct, a whole note of its piece, or of money that came in, is what it is.
  const isWhole =
    (note.kind === "spend" && !note.missing && note.pieces !== undefined) ||
    (note.kind === "income" && !note.missing);
  return [isWhole ? { ...asked, byBooks: true } : asked];
}

/** So many readings fit on buttons, with one more for none of them. */
const COULD_MAX = 3;
