import type { Piece, Status } from "../../books/books.ts";
import { labelOf } from "../../books/label.ts";
import { statusOf } from "../../books/piece.ts";
import { goneWords } from "../../books/problem.ts";
import { owedByBuyers } from "../../books/shares.ts";
import { showDay } from "../../calendar.ts";
import { show } from "../../money.ts";
import { pluralOf } from "../../notes/mentions/plural.ts";
import type { Reading } from "../../notes/reading.ts";
import { type Ask, type Choice, type Decision, type Desk, NEVER_MIND } from "../decision.ts";
import { isSeveral } from "../echo.ts";
import { anotherOne, meaning, type PieceNeed, type WithPieces } from "./choices.ts";
import { isOne, nameWith } from "./mention-words.ts";
import { byNumbers } from "./mentioned.ts";

/*
 * Pieces that were found, and that the verb does not fit, or that are fewer than was said: what became of them, and
 * what the note may mean then.
 */

export function tooFew(reading: WithPieces, index: number, pieces: number[], desk: Desk): Ask {
  const mention = reading.pieces![index]!;
  const said = `${mention.count} ${pluralOf(nameWith(mention))}`;
  return {
    misfit: true,
    prompt: `You said ${said}; the books have only ${labelOf(desk.books, pieces)}.`,
    wants: "choice",
    choices: [
      { ...meaning(reading, index, pieces, `Only ${labelOf(desk.books, pieces)}`), words: ["yes", "only"] },
      { ...NEVER_MIND, words: ["no"] },
    ],
  };
}

/** All pieces of that name are gone (or not so far): by number refused, by name asked. */
export function unfit(
  reading: WithPieces,
  index: number,
  pieces: number[],
  desk: Desk,
  need: PieceNeed,
): Decision {
  const mention = reading.pieces![index]!;
  const what = describeUnfit(pieces, desk, need);
  if (mention.number !== undefined || need.unknown === "refuse") {
    const isGone = pieces.every((number) => desk.books.pieces.get(number)!.gone);
    return { kind: "refuse", why: isGone ? `${what} Undo that first if it is wrong.` : what };
  }
  const [same, another, add] = isOne(mention)
    ? ["The same one", "another", `Another ${mention.name}: add it`]
    : ["The same ones", "others", `Other ${pluralOf(mention.name ?? "piece")}: add them`];
  const skip: Choice = {
    label: `${same}: skip`,
    words: ["the same", "same", "same one", "the same one", "the same ones"],
    effect: { kind: "drop" },
  };
  const told = [...restOwed(reading, pieces, desk), ...otherPrice(reading, pieces, desk)];
  const choices = [...told, anotherOne(reading, index, desk, add), skip];
  const prompt = `${what} ${same}, or ${another}?`;
  return { kind: "ask", ask: { prompt, wants: "choice", choices, misfit: true } };
}

/** "got 40 for the desk" where that much is still owed on it: the rest of its price, rather than another sale. */
function restOwed(reading: WithPieces, pieces: readonly number[], { books }: Desk): Choice[] {
  if (reading.kind !== "sell" || reading.price === undefined) return [];
  const owing = pieces.filter((number) => books.pieces.get(number)!.owed > 0);
  const owed = owedByBuyers(owing.map((number) => books.pieces.get(number)!));
  if (owing.length === 0 || owed < reading.price) return [];
  const { price, method, date, text, line } = reading;
  const rest: Reading = {
    kind: "collect",
    amount: price,
    pieces: byNumbers(owing),
    ...(method ? { method } : {}),
    ...(date ? { date } : {}),
    text,
    line,
  };
  const label = `${show(price)} of what is owed on ${labelOf(books, owing)}`;
  return [{ label, words: ["the rest", "rest", "owed"], effect: { kind: "instead", readings: [rest] } }];
}

/** "just talked to my wife, the dresser sold for 170" of one that went for 185: what it rather went for. */
function otherPrice(reading: WithPieces, pieces: readonly number[], { books, past }: Desk): Choice[] {
  if (reading.kind !== "sell" || reading.price === undefined || !past || pieces.length > 1) return [];
  const { price: amount, text, line } = reading;
  const fact = books.facts.findLast(
    ({ kind, pieces: sold }) => kind === "sell" && sold.length === 1 && sold[0] === pieces[0],
  );
  if (!fact || fact.amount === amount) return [];
  const mend: Reading = { kind: "mend", of: { fact: fact.id }, to: { amount }, text, line };
  return [
    {
      label: `${past.echo(fact)}: now ${show(amount)}`,
      words: ["change it", "correct it", "that one", "fix it"],
      effect: { kind: "instead", readings: [mend] },
    },
  ];
}

/** Why the verb fits none of them: what became of each, or what it lacks. Those of the same fate are told as one. */
function describeUnfit(pieces: readonly number[], desk: Desk, need: PieceNeed): string {
  const { books } = desk;
  const fates = new Map<string, number[]>();
  for (const number of pieces) {
    const fate = fateOf(books.pieces.get(number)!, desk, need, "one");
    fates.set(fate, [...(fates.get(fate) ?? []), number]);
  }
  if (fates.size > UNFIT_TOLD_MAX) {
    const states = new Set(pieces.map((number) => STATES[statusOf(books.pieces.get(number)!)]));
    return `All ${labelOf(books, pieces)} are ${[...states].join(" or ")}.`;
  }
  const told = [...fates.values()].map((numbers) => {
    const names = labelOf(books, numbers);
    const count = isSeveral(names) ? "several" : "one";
    return `${names} ${fateOf(books.pieces.get(numbers[0]!)!, desk, need, count)}.`;
  });
  return told.join(" ");
}

function fateOf(
  piece: Readonly<Piece>,
  { today }: Desk,
  { lacks }: PieceNeed,
  count: "one" | "several",
): string {
  const { gone, goneOn } = piece;
  if (!gone)
    return `${count === "one" ? "is" : "are"} ${STATES[statusOf(piece)]}${lacks ? `, ${lacks}` : ""}`;
  const day = goneOn === today ? "today" : `on ${showDay(goneOn!, today)}`;
  return `${goneWords(gone, count === "one" ? "was" : "were")} ${day}`;
}

const UNFIT_TOLD_MAX = 3;

const STATES: Record<Status, string> = {
  bought: "bought",
  started: "started",
  finished: "finished",
  listed: "listed",
  held: "on hold",
  sold: "sold",
  kept: "kept for yourself",
  given: "given away",
  scrapped: "scrapped",
};

/** What tells candidates apart on a button: number, words, and the state or price that they share. */
export function describe(group: readonly number[], desk: Desk): string {
  const states = new Set(group.map((number) => stateOf(desk.books.pieces.get(number)!)));
  const [state, ...others] = states;
  const each = group.length > 1 && state?.startsWith("listed ") ? " each" : "";
  const label = labelOf(desk.books, group);
  return others.length > 0 ? label : `${label}, ${state}${each}`;
}

function stateOf(piece: Readonly<Piece>): string {
  const status = statusOf(piece);
  if (status !== "listed" || piece.listPrice === null) return STATES[status];
  return `listed ${show(piece.listPrice).replace(/\.00$/, "")}`;
}
