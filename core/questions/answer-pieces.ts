import { counted } from "../answers/wording.ts";
import type { Piece } from "../books/books.ts";
import { pieceLabel } from "../books/piece.ts";
import { daysBetween, showDay } from "../calendar.ts";
import { showMinutes } from "../decide/echo.ts";
import { amountText, show } from "../money.ts";
import type { Answered, PrintedRow } from "./answered.ts";
import { type Desk, isIn } from "./desk.ts";
import { personOf } from "./filters.ts";
import { listNotes, type NoteLine, showNoteLine } from "./notes-list.ts";
import { factLine, type PieceFact } from "./piece-facts.ts";
import type { Filter, Period } from "./query.ts";
import type { NotesQuestion } from "./read-notes.ts";
import type { PieceQuestion } from "./read-pieces.ts";
import { capital, filtersWords, nameOf } from "./titles.ts";
import { UNKNOWN } from "./words/plain.ts";
import { cut, restOf } from "./words-of-answers.ts";

type Pieces = readonly Readonly<Piece>[];

function none(filters: readonly Filter[]): Answered {
  const what = filtersWords(filters);
  return {
    understood: true,
    value: null,
    rows: [],
    period: null,
    text: `No ${what || "piece"} on the books.`,
  };
}

/** One fact of each piece meant: of one, just that; of several those that have it, a row each. */
export function answerFact(
  desk: Desk,
  { fact, pieces, filters }: Extract<PieceQuestion, { kind: "fact" }>,
): Answered {
  if (pieces.length === 0) return none(filters);
  const here = pieces.filter(({ gone }) => !gone);
  // "How long have i had the table" speaks of the one that is still here.
  const meant = fact.name === "days had" && here.length === 1 ? here : pieces;
  const having = meant.filter((piece) => fact.of(piece, desk) !== null);
  const told: Pieces = having.length > 0 ? having : pieces;
  const lines = told.map((piece) => factLine(piece, fact, desk));
  const [only] = told;
  if (told.length === 1 || having.length === 0)
    return {
      understood: true,
      value: having.length === 0 ? null : fact.of(only!, desk),
      period: null,
      text: cut(lines).join("\n"),
      ...restOf(lines),
      ...story(told),
    };
  return {
    understood: true,
    value: shared(told, fact, desk),
    rows: told.map((piece) => row(piece, fact.of(piece, desk))),
    period: null,
    text: cut(lines).join("\n"),
    ...restOf(lines),
  };
}

function shared(pieces: Pieces, fact: PieceFact, desk: Desk): string | null {
  const values = new Set(pieces.map((piece) => fact.of(piece, desk)));
  return values.size === 1 ? [...values][0]! : null;
}

function row(piece: Readonly<Piece>, value: string | null): PrintedRow {
  return { label: pieceLabel(piece), number: piece.number, value };
}

/** The whole story behind a line, one tap away. */
function story(pieces: Pieces): Pick<Answered, "buttons"> {
  const [only, other] = pieces;
  return only && !other ? { buttons: [[{ label: "Its story", press: `ask:show #${only.number}` }]] } : {};
}

/** Yes or no first, then since when. */
export function answerYesNo(desk: Desk, question: Extract<PieceQuestion, { kind: "yes or no" }>): Answered {
  const { state, pieces, period, filters, any } = question;
  if (pieces.length === 0)
    return {
      ...none(filters),
      value: "no",
      text: `No: no ${filtersWords(filters) || "piece"} on the books.`,
    };
  const isSo = (piece: Readonly<Piece>): boolean => {
    const since = state.since(piece, desk);
    return since !== null && isIn(period as Period | null, since);
  };
  const so = pieces.filter(isSo);
  const here = pieces.filter((piece) => !piece.gone);
  // "Is the dresser listed" speaks of the one that is still here.
  const meant =
    !any && pieces.length > 1 && here.length === 1 && state.cue !== "sold" && state.cue !== "gone"
      ? here
      : pieces;
  const soMeant = meant.filter(isSo);
  const yes = any ? so.length > 0 : soMeant.length === meant.length;
  const isOne = filters.some(({ dimension }) => dimension === "piece");
  if (any && !yes && !isOne)
    return {
      understood: true,
      value: "no",
      period: period ? { from: period.from, to: period.to } : null,
      text: `No: no ${filtersWords(filters) || "piece"} ${state.told}${period ? `, ${nameOf(period, desk.today)}` : ""}.`,
    };
  const lines = yes
    ? soMeant.map(
        (piece) =>
          `${pieceLabel(piece)}: ${state.told}, ${showDay(state.since(piece, desk)!, desk.today)}${
            // "Is it still for sale": not to anybody else.
            state.cue === "listed" && piece.hold ? `, on hold for ${piece.hold.buyer ?? "a buyer"}` : ""
          }`,
      )
    : meant
        .filter((piece) => !isSo(piece))
        .map(
          (piece) =>
            `${pieceLabel(piece)}: not ${state.told}${period ? `, ${nameOf(period, desk.today)}` : ""}`,
        );
  const [first, ...more] = cut(lines);
  const some = !yes && soMeant.length > 0 ? ` (${soMeant.length} of ${meant.length} are)` : "";
  return {
    understood: true,
    value: yes ? "yes" : "no",
    ...(meant.length > 1 ? { rows: meant.map((piece) => row(piece, isSo(piece) ? "yes" : "no")) } : {}),
    period: period ? { from: period.from, to: period.to } : null,
    ...restOf(lines),
    text: [`${yes ? "Yes" : "No"}${some}. ${first ?? ""}`.trim(), ...more].join("\n"),
    ...story(meant),
  };
}

function printedNote({ date, label, numbers, value }: NoteLine): PrintedRow {
  const pieces = numbers.length === 1 ? { number: numbers[0]! } : numbers.length > 1 ? { numbers } : {};
  return { date, label, ...pieces, value: value === null ? null : amountText(value) };
}

/** "when did i last sell a vanity": the day, with the note of it. */
function answerDay(
  desk: Desk,
  { from, isAge }: NonNullable<NotesQuestion["asked"]["ends"]>,
  title: string,
  lines: readonly NoteLine[],
  about: string,
): Answered {
  const [line] = lines;
  const head = `${title}${about ? `, ${about}` : ""}, ${from === "newest" ? "last" : "first"}`;
  const days = line && isAge ? daysBetween(line.date, desk.today) : null;
  return {
    understood: true,
    value: days === null ? (line?.date ?? null) : String(days),
    period: null,
    text: line
      ? `${head}${days === null ? "" : `, ${counted(days, "day")} ago`}:\n  ${showNoteLine(line, desk.today)}`
      : `${head}: nothing noted`,
    asks: true,
  };
}

function periodsSaid({ period, apart }: NotesQuestion["asked"], today: string): string {
  const said = apart ?? (period ? [period] : []);
  return said.map((each) => nameOf(each, today)).join(" and ") || "ever";
}

/** Dated lines, newest first, with what they come to. */
export function answerNotes(desk: Desk, { asked, title, counts, yesNo, who }: NotesQuestion): Answered {
  const lines = listNotes(desk, asked);
  const sum = lines.reduce((total, { value }) => total + (value ?? 0), 0);
  const isMoney =
    asked.kinds !== null &&
    (!asked.kinds.has("reprice") || asked.ends !== undefined) &&
    lines.some(({ value }) => value !== null);
  const about = filtersWords(asked.filters);
  if (asked.ends?.asksDay) return answerDay(desk, asked.ends, title, lines, about);
  const from = asked.ends?.from;
  const end = from === "highest" || from === "lowest" ? `, ${from}` : "";
  const when = asked.last !== null || asked.ends ? "" : `, ${periodsSaid(asked, desk.today)}`;
  const noters = who ? [...new Set(lines.map(({ fact }) => personOf(desk, fact) ?? UNKNOWN))] : [];
  const told = lines.map(
    (line) =>
      `  ${showNoteLine(line, desk.today)}${noters.length > 1 ? ` (${personOf(desk, line.fact) ?? UNKNOWN})` : ""}`,
  );
  const what = `${title}${about ? `, ${about}` : ""}`;
  // "The longest drive": its miles or hours are the figure.
  const [first] = lines;
  const isLength = first !== undefined && end !== "" && !isMoney;
  const length = first?.fact.kind === "work" ? showMinutes(first.size) : `${first?.size} miles`;
  const head = isLength
    ? `${what}, ${from === "highest" ? "longest" : "shortest"}: ${length}`
    : `${what}${end}${when}: ${counted(lines.length, "note")}${isMoney ? `, ${show(sum)}` : ""}`;
  const isAny = lines.length > 0 ? "yes" : "no";
  const said = yesNo
    ? `${isAny === "yes" ? "Yes" : "No"}. `
    : noters.length > 0
      ? `${noters.join() === UNKNOWN ? "Noter unknown" : noters.join(" and ")}. `
      : "";
  return {
    understood: true,
    ...(yesNo
      ? { value: isAny }
      : who
        ? { value: noters.length > 0 ? noters.join(" and ") : null }
        : isMoney && !counts
          ? { value: amountText(sum) }
          : isLength
            ? { value: String(first.size) }
            : { value: String(lines.length) }),
    rows: lines.map(printedNote),
    noted: lines.map(({ fact }) => fact.id),
    // "last 5 notes" asks by itself.
    ...(asked.last === null && !asked.ends ? {} : { asks: true }),
    period: asked.period ? { from: asked.period.from, to: asked.period.to } : null,
    text:
      lines.length === 0
        ? `${said}${capital(title.toLowerCase())}${about ? `, ${about}` : ""}${when}: nothing noted`
        : [`${said}${head}`, ...cut(told)].join("\n"),
    ...restOf(told),
  };
}
