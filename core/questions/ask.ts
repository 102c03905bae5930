import { asksHelp, helpLines } from "../answers/help.ts";
import { asksHandwork, helpPageFor, helpText } from "../answers/help-pages.ts";
import { exampleQuestions } from "../answers/list.ts";
import { emptyBooks } from "../books/fold.ts";
import type { Button } from "../reply.ts";
import { answerFact, answerNotes, answerYesNo } from "./answer-pieces.ts";
import { answerQuery, headOf, OF_LOAN } from "./answer-query.ts";
import { answerSuppose } from "./answer-suppose.ts";
import { answerView } from "./answer-views.ts";
import type { Answered } from "./answered.ts";
import { figuresApart, questionsApart } from "./apart.ts";
import { askedTwice } from "./asked-twice.ts";
import { asksSomething, namesFigure } from "./asks.ts";
import { askingButton, questionOf } from "./canonical.ts";
import { answerLoanChart } from "./chart.ts";
import { type Desk, type QuestionDesk, withIndex } from "./desk.ts";
import { featuresOf } from "./features.ts";
import { answerHolding, type HoldingQuestion, readHolding } from "./holding.ts";
import { leftOver } from "./left-over.ts";
import { marksOf, plainWords, WORDS_MAX } from "./marks.ts";
import { narrowed, type Refusal, refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import { answerPickups, type PickupsQuestion, readPickups } from "./pickups.ts";
import { isLeftOfWhat, pointedIn, pricedOne } from "./pointed.ts";
import { answerPricesHad, type PricesQuestion, readPricesHad } from "./prices-had.ts";
import type { Query } from "./query.ts";
import { readQuery } from "./read.ts";
import { readLists } from "./read-lists.ts";
import { answerMeasures, type MeasuresQuestion, readMeasures } from "./read-measures.ts";
import type { NotesQuestion } from "./read-notes.ts";
import { type PieceQuestion, piecesOf, readPieces } from "./read-pieces.ts";
import { type LoanQuestion, readSuppose } from "./read-suppose.ts";
import { readUnions } from "./read-unions.ts";
import type { Features } from "./rule.ts";
import { isOwnersKinds, isOwnersView } from "./sight.ts";
import { answerSitting, readSitting, type SittingQuestion } from "./sitting.ts";
import { partsOf } from "./sorting.ts";
import { answerTarget, readTarget, type TargetQuestion } from "./target.ts";
import { answerTodo, readTodo, type TodoQuestion } from "./todo.ts";
import { answerTook, readTook, type TookQuestion } from "./took.ts";
import { bareNumber, leftOfWhat, refused, whatAbout, wholeRefusal, wordsInTheWay } from "./unanswered.ts";
import { readView, type ViewQuestion } from "./views.ts";
import { vocabularyFor } from "./vocabulary.ts";
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
  | HoldingQuestion
  | PickupsQuestion
  | SittingQuestion
  | TookQuestion
  | PricesQuestion
  | TodoQuestion
  | TargetQuestion
  | MeasuresQuestion
  | Refusal;

/** Answers a question in plain words, or says which word stands in the way. Pure: same words, same books, same answer. */
export function answer(asked: string, on: QuestionDesk): Answered {
  const page = helpPageFor(asked);
  if (page) return told(helpText(page, exampleQuestions()));
  if (asksHelp(plainWords(asked).join(" "))) return told(helpLines().join("\n"));
  const desk = withIndex(on);
  const text = withDayOfLast(asked, desk);
  const numbered = bareNumber(text, desk);
  if (numbered) return numbered;
  const parts = readParts(text, desk);
  // "Did carol take it": what is held for her.
  const holding = readHolding(parts, desk);
  if (holding) return { ...answeredRead(holding, parts, desk), asks: true };
  const pointed = pointedIn(text, parts, desk);
  // "How many sold in may and what did they bring in": "they" may be what another of the questions asks of.
  const apart = pointed?.question ? null : answersApart(text, desk);
  if (apart) return joined(apart.map(({ answered }) => answered));
  if (pointed?.question === null) return refused({ kind: "refused", words: [pointed.word] });
  if (!pointed && isLeftOfWhat(text)) return leftOfWhat(desk);
  const figures = pointed ? null : figuresApart(parts, text);
  if (figures) {
    const all = figures.questions.map((question) => answerWords(question, desk));
    const isWhole = all.every(({ understood }) => understood);
    return isWhole ? joined(all) : refused({ kind: "refused", words: [figures.last] });
  }
  const answered = pointed?.question ? answerWords(pointed.question, desk) : answerRead(text, parts, desk);
  if (pointed?.question) return { ...answered, asked: pointed.question };
  if (answered.understood) return answered;
  const priced = pricedOne(text);
  const numbers = priced && answerWords(priced.asked, desk).rows?.flatMap(({ number }) => number ?? []);
  if (priced && numbers?.length) return answerWords(priced.with(numbers), desk);
  if (asksHandwork(text))
    return { ...answered, text: "How that is done I cannot tell: I only keep the books." };
  return answered.words?.length ? withNearest(answered, text, desk) : answered;
}

/** "Since my last sale": since its day; as it is where there was none. */
function withDayOfLast(text: string, { books }: Desk): string {
  const [said, sold, bought] = SINCE_LAST.exec(text) ?? [];
  // "Days since my last sale" asks how long ago it is.
  if (said === undefined || /\b(?:days?|weeks?|months?|long|time|been|it)\b.* since\b/i.test(text))
    return text;
  const kind = sold ? "sell" : bought ? "buy" : "pay";
  const day = books.facts.reduce<string>(
    (last, fact) => (fact.kind === kind && fact.day > last ? fact.day : last),
    "",
  );
  return day === "" ? text : text.replace(said, `since ${day}`);
}
const SINCE_LAST =
  /\bsince (?:(?:my|our|the) (?:very )?(?:last|latest) (?:(sale|flip)|(purchase|buy)|(?:loan )?payment)|(?:the last time )?(?:i|we) (?:last )?(?:(sold)|(bought)) (?:something|anything|a piece))\b/i;

/** Several questions in one, each as whole as the others make it, with its answer; null where not all have one. */
export function answersApart(
  text: string,
  on: QuestionDesk,
): { question: string; answered: Answered }[] | null {
  const said = plainWords(text).join(" ");
  if (!/ and (?:to who|for how|who|how|when|where|what|which|did)|[,;?.!] +\w/.test(`${said} ${text}`))
    return null;
  const desk = withIndex(on);
  const { items } = readParts(text, desk);
  const [thing, more] = items.filter(
    ({ mark }) => mark.number !== undefined || mark.senses.thing?.noun !== undefined,
  );
  const isOne = thing && (!more || more.mark.text === thing.mark.text);
  // "The oak sideboard" is not any sideboard.
  let from = thing?.at ?? 0;
  while (items.some(({ at, mark }) => at === from - 1 && mark.senses.thing?.trait)) from -= 1;
  const name = items.filter(({ at }) => at >= from && at <= (thing?.at ?? 0)).map(({ mark }) => mark.text);
  const all = (isOne ? askedTwice(said, name.join(" ")) : null) ?? questionsApart(text, desk);
  const answers = all?.map((question) => ({ question, answered: answerWords(question, desk) }));
  return answers?.every(({ answered }) => answered.understood) ? answers : null;
}

/** The first's figure and the words of all. */
function joined(answers: readonly Answered[]): Answered {
  return {
    ...answers[0]!,
    text: answers.map(({ text }) => text).join("\n"),
    asks: true,
    isOwners: answers.some(({ isOwners }) => isOwners === true),
  };
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
  return {
    ...answered,
    // Looked for where it is shown: most messages that are no question are asked all the same.
    get buttons() {
      const button = nearestButton(answered.words!, text, desk);
      return button ? [[button]] : answered.buttons;
    },
  };
}

function nearestButton(words: readonly string[], text: string, desk: Desk): Button | null {
  const shorter = words
    .reduce((rest, word) => rest.replace(` ${word} `, " "), ` ${plainWords(text).join(" ")} `)
    .trim()
    .replace(/ (?:for|on|in|from|to|of|by|at|with|since|during|the)$/, "");
  const nearest =
    shorter === "" || shorter === plainWords(text).join(" ") ? null : answerWords(shorter, desk);
  if (!nearest?.understood) return null;
  const question = nearest.query ? questionOf(nearest.query) : null;
  return askingButton(headOf(nearest.text), question) ?? askingButton(headOf(nearest.text), shorter);
}

function readParts(text: string, desk: Desk): Parts {
  return partsOf(marksOf(text, vocabularyFor(desk), desk.today));
}

const answerWords = (text: string, desk: Desk): Answered => answerRead(text, readParts(text, desk), desk);

/** The answer to a question whose parts are known. */
function answerRead(text: string, parts: Parts, desk: Desk): Answered {
  if (plainWords(text).length > WORDS_MAX)
    return refused({ kind: "refused", words: [], why: "That is too long for one question." });
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
  return answeredRead(read, parts, desk);
}

function answeredRead(read: Read, parts: Parts, desk: Desk): Answered {
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
    case "holding":
      return answerHolding(desk, read);
    case "pickups":
      return answerPickups(desk, read);
    case "sitting":
      return answerSitting(desk, read);
    case "took":
      return answerTook(read);
    case "prices had":
      return answerPricesHad(desk, read);
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
  readPickups,
  readSitting,
  readTook,
  readPricesHad,
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
  const isPast = parts.items.length > 0 && /\bhow did (?:.* do$|(?:i|we)\b)/.test(parts.said);
  const isStory = !isPast && story?.kind === "view" && (parts.items.length > 0 || parts.periods.length > 0);
  return isStory ? story : readQuery(parts, f, desk);
}

/** What the words ask: the first reader that takes them; a refusal only where none does. */
function readQuestion(parts: Parts, desk: Desk): Read | null {
  const f = featuresOf(parts);
  // "Both loans", "both nightstands" are two, "the three lamps" as many.
  const counted = parts.marks.find(
    ({ text, senses }) => senses.flags.has("filler") && howManySaid(text) !== null,
  );
  if (counted && !areSoMany(howManySaid(counted.text)!, parts, desk)) return refusal(counted);
  let refused: Refusal | null = null;
  for (const read of READERS) {
    const found = read(parts, f, desk);
    if (found === null) continue;
    if (!("kind" in found) || found.kind !== "refused") return found;
    refused ??= found;
  }
  return readMeasures(parts, desk) ?? refused;
}

/** "Both", "the three": so many of a name. */
function howManySaid(text: string): number | null {
  if (/^both/.test(text)) return 2;
  const [, count] = /^(?:the |all |all the )?(two|three|four|five|[2-5])$/.exec(text) ?? [];
  if (count === undefined) return null;
  const place = ["two", "three", "four", "five"].indexOf(count);
  return place < 0 ? Number(count) : place + 2;
}

function areSoMany(count: number, parts: Parts, desk: Desk): boolean {
  if (!parts.items.some(({ mark }) => mark.senses.thing?.noun !== undefined))
    return desk.books.loans.size === count;
  const found = narrowed(parts, "count", desk);
  if ("kind" in found) return false;
  return (
    piecesOf(
      desk,
      found.map(({ filter }) => filter),
    ).length === count
  );
}

function ofPieces({ pieces }: PieceQuestion): NonNullable<Answered["of"]> {
  return { pieces: pieces.map(({ number }) => number) };
}

function ofView({ about, pieces }: ViewQuestion): Pick<Answered, "of"> {
  if (about === "loan") return { of: OF_LOAN };
  return about === "piece" ? { of: { pieces } } : {};
}
