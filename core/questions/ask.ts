import { asksHelp, helpLines } from "../answers/help.ts";
import { helpPageFor, helpText } from "../answers/help-pages.ts";
import { exampleQuestions } from "../answers/list.ts";
import { emptyBooks } from "../books/fold.ts";
import { statusOf } from "../books/piece.ts";
import type { Button } from "../reply.ts";
import { answerFact, answerNotes, answerYesNo } from "./answer-pieces.ts";
import { answerSuppose } from "./answer-suppose.ts";
import { answerView } from "./answer-views.ts";
import { type Answered, type PrintedRow, printedValue } from "./answered.ts";
import { asksSomething, namesFigure } from "./asks.ts";
import { askingButton, nextButtons, questionOf } from "./canonical.ts";
import { answerLoanChart, barsOf } from "./chart.ts";
import { type Desk, type QuestionDesk, withIndex } from "./desk.ts";
import { featuresOf } from "./features.ts";
import { standsFirst } from "./is-first.ts";
import { leftOver } from "./left-over.ts";
import { type Mark, marksOf, plainWords, WORDS_MAX } from "./marks.ts";
import { measures } from "./measures.ts";
import { type Refusal, refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import { pointedIn } from "./pointed.ts";
import type { Query } from "./query.ts";
import { readQuery } from "./read.ts";
import { readLists } from "./read-lists.ts";
import { answerMeasures, type MeasuresQuestion, readMeasures } from "./read-measures.ts";
import type { NotesQuestion } from "./read-notes.ts";
import { type PieceQuestion, piecesOf, readPieces } from "./read-pieces.ts";
import { type LoanQuestion, readSuppose } from "./read-suppose.ts";
import { readUnions } from "./read-unions.ts";
import type { Result } from "./result.ts";
import type { Features } from "./rule.ts";
import { isHeld, piecesIn, runQuery } from "./run.ts";
import { isOwnersKinds, isOwnersQuery, isOwnersView } from "./sight.ts";
import { partsOf } from "./sorting.ts";
import { answerTarget, readTarget, type TargetQuestion } from "./target.ts";
import { answerTodo, readTodo, type TodoQuestion } from "./todo.ts";
import { bareNumber, refused, whatAbout, wholeRefusal, wordsInTheWay } from "./unanswered.ts";
import { readView, type ViewQuestion } from "./views.ts";
import { vocabularyFor } from "./vocabulary.ts";
import { cut, linesOf, restOf, showValue, wordsOf } from "./words-of-answers.ts";
import { answerWorth, readWorth, type WorthQuestion } from "./worth.ts";

import { answerWouldMake, readWouldMake, type WouldMake } from "./would-make.ts";

/** What a question turned out to be. */
type Read =
  | Query
  | PieceQuestion
  | NotesQuestion
  | LoanQuestion
  | ViewQuestion
  | WorthQuestion
  | WouldMake
  | TodoQuestion
  | TargetQuestion
  | MeasuresQuestion
  | Refusal;

/** Answers a question in plain words, or says which word stands in the way. Pure: same words, same books, same answer. */
export function answer(text: string, on: QuestionDesk): Answered {
  const page = helpPageFor(text);
  if (page) return told(helpText(page, exampleQuestions()));
  if (asksHelp(plainWords(text).join(" "))) return told(helpLines().join("\n"));
  const desk = withIndex(on);
  const numbered = bareNumber(text, desk);
  if (numbered) return numbered;
  const pointed = pointedIn(text, readParts(text, desk), desk);
  if (pointed?.question === null) return refused({ kind: "refused", words: [pointed.word] });
  const answered = answerWords(pointed?.question ?? text, desk);
  if (pointed?.question) return { ...answered, asked: pointed.question };
  if (answered.understood) return answered;
  return answered.words?.length ? withNearest(answered, text, desk) : answered;
}

function told(text: string): Answered {
  return { understood: true, value: null, period: null, text, asks: true };
}

/** Builds the tables of words, so that the first question does not wait for them. */
export function warmQuestions(): void {
  const books = emptyBooks();
  answer("how mcuh on paint in may", {
    books,
    today: "2026-01-01",
    currency: "USD",
    people: [],
    me: null,
    mileageRates: {},
  });
}

/** A question that is not understood for a word or two: the same without them, to tap where that was enough. */
function withNearest(answered: Answered, text: string, desk: Desk): Answered {
  const shorter = answered
    .words!.reduce((words, word) => words.replace(` ${word} `, " "), ` ${plainWords(text).join(" ")} `)
    .trim()
    .replace(/ (?:for|on|in|from|to|of|by|at|with|since|during|the)$/, "");
  const nearest =
    shorter === "" || shorter === plainWords(text).join(" ") ? null : answerWords(shorter, desk);
  const question = nearest?.understood && nearest.query ? questionOf(nearest.query) : null;
  const button = nearest?.understood
    ? (askingButton(headOf(nearest.text), question) ?? askingButton(headOf(nearest.text), shorter))
    : null;
  return button ? { ...answered, buttons: [[button]] } : answered;
}

/** What an answer is about: its first line up to the figure. */
function headOf(text: string): string {
  const [line = ""] = text.split("\n");
  return line.slice(0, line.lastIndexOf(": ") > 0 ? line.lastIndexOf(": ") : 40);
}

function readParts(text: string, desk: Desk): Parts {
  return partsOf(marksOf(text, vocabularyFor(desk), desk.today));
}

function answerWords(text: string, desk: Desk): Answered {
  if (plainWords(text).length > WORDS_MAX)
    return refused({ kind: "refused", words: [], why: "That is too long for one question." });
  const parts = readParts(text, desk);
  const answered = answerParts(parts, desk);
  const opens = namesFigure(parts);
  return { ...answered, asks: answered.asks === true || asksSomething(parts), ...(opens ? { opens } : {}) };
}

/** "loan chart", "picture of the loans": nothing but that. */
function isLoanChart(parts: Parts): boolean {
  const isPlain = [...parts.cues.keys()].every(
    (cue) => cue === "chart" || cue === "loan" || cue === "money" || cue === "owe" || cue === "list",
  );
  return (
    isPlain &&
    parts.cues.has("chart") &&
    (parts.cues.has("loan") || parts.groups.some(({ group }) => group === "loan")) &&
    leftOver(parts, ["chart", "loan", "money", "owe", "list"]) === null
  );
}

function answerParts(parts: Parts, desk: Desk): Answered {
  if (isLoanChart(parts)) return answerLoanChart(desk);
  const read = readQuestion(parts, desk);
  if (read === null) return whatAbout(parts) ?? refused({ kind: "refused", words: wordsInTheWay(parts) });
  if (!("kind" in read)) return answerQuery(desk, read, parts);
  switch (read.kind) {
    case "fact":
      return { ...answerFact(desk, read), of: ofPieces(read) };
    case "yes or no":
      return { ...answerYesNo(desk, read), of: ofPieces(read) };
    case "notes":
      return { ...answerNotes(desk, read), isOwners: isOwnersKinds(read.asked.kinds) };
    case "refused":
      return refused(wholeRefusal(read, parts));
    case "worth":
    case "ask for":
    case "offer":
      return answerWorth(desk, read);
    case "would make":
      return answerWouldMake(read);
    case "todo":
      return answerTodo(desk, read);
    case "target":
      return answerTarget(desk, read);
    case "measures":
      return answerMeasures(desk, read);
    case "view":
      return { ...answerView(desk, read), isOwners: isOwnersView(read), ...ofView(read) };
    default:
      return { ...answerSuppose(desk, read), isOwners: true, of: OF_LOAN };
  }
}

/** Suppositions first, then single pieces, lists and views, then what can be measured: the more telling words win. */
const READERS = [
  readWorth,
  readWouldMake,
  readTodo,
  readTarget,
  readSuppose,
  readUnions,
  readPieces,
  readLists,
  readQueryOf,
  readView,
] as const;

function readQueryOf(parts: Parts, f: Features, desk: Desk): Read | null {
  const isFaring = f.has("fared") && !f.has("earn", "net", "revenue");
  // "hows the dresser doing" asks for its story, "how did june go" for the month's, "how did the dressers do" for what
  // they made.
  const story = isFaring ? readView(parts, f, desk) : null;
  const isPast = parts.items.length > 0 && /\bhow did .* do$/.test(parts.said);
  const isStory = !isPast && story?.kind === "view" && (parts.items.length > 0 || parts.periods.length > 0);
  return isStory ? story : readQuery(parts, f, desk);
}

/** What the words ask: the first reader that takes them; a refusal only where none does. */
function readQuestion(parts: Parts, desk: Desk): Read | null {
  const f = featuresOf(parts);
  // "Both loans" are two.
  const both = parts.marks.find(({ text, senses }) => text === "both" && senses.flags.has("filler"));
  if (both && desk.books.loans.size !== 2) return refusal(both);
  let refused: Refusal | null = null;
  for (const read of READERS) {
    const found = read(parts, f, desk);
    if (found === null) continue;
    if (!("kind" in found) || found.kind !== "refused") return found;
    refused ??= found;
  }
  return readMeasures(parts, desk) ?? refused;
}

function correctedWords(marks: readonly Mark[]): string[] {
  return marks
    .filter(({ corrected, senses }) => corrected && (senses.thing !== undefined || senses.own.length > 0))
    .map(({ typed, text }) => `${typed} read as ${text}`);
}

/** States that have a view of their own: where nothing narrows them, its words tell more than rows. */
const STATE_VIEWS = {
  unlisted: "unlisted",
  "on the market": "listed",
  held: "held",
  unsold: "unsold",
} as const;

function stateText(desk: Desk, { counted, list, filters, period }: Query, { rows }: Result): string | null {
  const isPlain = list && filters.length === 0 && !period && counted !== null;
  if (isPlain && counted === "not listed" && rows?.length) {
    const ready = [...desk.books.pieces.values()].filter((piece) => statusOf(piece) === "finished").length;
    const head = `${ready} finished, not listed; ${rows.length - ready} not finished or held`;
    return [head, ...cut(linesOf(rows, "money"))].join("\n");
  }
  const about = isPlain && counted in STATE_VIEWS ? STATE_VIEWS[counted as keyof typeof STATE_VIEWS] : null;
  return about ? answerView(desk, { kind: "view", about, pieces: [], loan: null }).text : null;
}

function answerQuery(desk: Desk, query: Query, parts: Parts): Answered {
  const result = runQuery(desk, query);
  const words = wordsOf(desk, query, result, correctedWords(parts.marks));
  const { unit } = measures[query.measure];
  const state = stateText(desk, query, result);
  const period =
    query.period && (query.period.from !== null || query.period.to !== null) ? query.period : null;
  const rows = result.rows?.map(
    ({ label, number, value }): PrintedRow => ({
      label,
      ...(number === undefined ? {} : { number }),
      value: printedValue(value, result.rowUnit ?? unit),
    }),
  );
  return {
    understood: true,
    // The rest of what was reached.
    measure: query.measure === "come down" ? "reached" : query.measure,
    value: query.yesNo ? yesOrNo(desk, query, result) : printedValue(result.value, result.valueUnit ?? unit),
    ...(rows ? { rows } : {}),
    period: period ? { from: period.from, to: period.to } : null,
    text: `${firstWordOf(desk, query, result)}${state ?? words}`,
    ...(state === null ? restOf(linesOf(result.rows ?? [], result.rowUnit ?? unit)) : {}),
    ...(query.picture && result.rows ? { chart: barsOf(headOf(words), result.rows, unit, showValue) } : {}),
    query,
    of: spokenIn(desk, query, rows),
    isOwners: isOwnersQuery(query),
    ...buttonsOf(query, desk),
  };
}

const OF_LOAN = { pieces: [], loan: true } as const;

function ofPieces({ pieces }: PieceQuestion): NonNullable<Answered["of"]> {
  return { pieces: pieces.map(({ number }) => number) };
}

function ofView({ about, pieces }: ViewQuestion): Pick<Answered, "of"> {
  if (about === "loan") return { of: OF_LOAN };
  return about === "piece" ? { of: { pieces } } : {};
}

/** What a figure is of: the pieces it names, else those of its rows. */
function spokenIn(desk: Desk, query: Query, rows: readonly PrintedRow[] = []): NonNullable<Answered["of"]> {
  if (query.measure === "paid" || query.measure === "interest") return OF_LOAN;
  const isNamed = query.filters.some(
    ({ dimension, not }) => !not && (dimension === "piece" || dimension === "kind"),
  );
  if (isNamed && !query.order && query.beside.length === 0) {
    const counted = piecesIn(desk, query);
    return {
      pieces: counted.length > 0 ? counted : piecesOf(desk, query.filters).map(({ number }) => number),
    };
  }
  const numbers = rows.flatMap(({ number }) => number ?? []);
  // What stands first in an order is what was asked for.
  return { pieces: query.order ? numbers.slice(0, 1) : numbers, isList: true };
}

function buttonsOf(query: Query, { today }: Desk): Pick<Answered, "buttons"> {
  const next = [...nextButtons(query, today), ...storyButton(query)];
  return next.length > 0 ? { buttons: [next] } : {};
}

/** The story of the one piece that a question is about, one tap away. */
function storyButton({ filters }: Query): Button[] {
  const numbers = filters.flatMap(({ dimension, values, not }) =>
    dimension === "piece" && !not ? values : [],
  );
  return numbers.length === 1 ? [{ label: "Its story", press: `ask:show #${numbers[0]}` }] : [];
}

/** "Yes." and "no.", "up." and "down.", where that was asked. */
function firstWordOf(desk: Desk, query: Query, result: Result): string {
  const value = Number(result.value ?? 0);
  if (query.asksWay) return value > 0 ? "Up. " : value < 0 ? "Down. " : "Level. ";
  if (!query.yesNo) return "";
  return yesOrNo(desk, query, result) === "yes" ? "Yes. " : "No. ";
}

/** Whether there is anything: more than nothing is a yes, or less where a loss is asked for. */
function yesOrNo(desk: Desk, query: Query, result: Result): "yes" | "no" {
  const { asksLess, against } = query;
  const { value, rows } = result;
  if (query.isFirst) return standsFirst(desk, query, result) ? "yes" : "no";
  if (against) return (query.order ? (rows ?? []).length > 0 : isHeld(query, value ?? 0)) ? "yes" : "no";
  if (query.list) return (rows ?? []).length > 0 ? "yes" : "no";
  return Number(value ?? 0) * (asksLess ? -1 : 1) > 0 ? "yes" : "no";
}
