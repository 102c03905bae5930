import { type Day, showDay } from "../calendar.ts";
import { type Cents, show } from "../money.ts";
import type { RetireHow } from "../notes/reading.ts";
import type { Books } from "./books.ts";
import { pieceLabel } from "./piece.ts";

/** Why a fact cannot stand on the books as they are: one name a rule, with the data that explains it. */
export type Problem =
  | { kind: "no such piece"; number: number }
  | { kind: "not bought yet"; number: number; bought: Day }
  | { kind: "piece gone"; number: number; how: "sold" | RetireHow; on: Day }
  | { kind: "piece not sold"; number: number }
  | { kind: "piece not listed"; number: number }
  | { kind: "cut below zero"; number: number; listPrice: Cents }
  | { kind: "piece not held"; number: number }
  | { kind: "deposit held"; number: number; held: Cents }
  | { kind: "more than held"; held: Cents }
  | { kind: "more than brought in"; number: number; broughtIn: Cents }
  | { kind: "more owed than due"; due: Cents }
  | { kind: "nothing owed"; number: number }
  | { kind: "more than buyers owe"; owed: Cents }
  | { kind: "trade below zero"; cost: Cents }
  | { kind: "no such repeat" }
  | { kind: "no loan" }
  | { kind: "no such loan"; name: string }
  | { kind: "loan name taken"; name: string }
  | { kind: "loan not open yet"; name: string; opened: Day }
  | { kind: "more than owed"; owed: Cents }
  | { kind: "below interest due"; interest: Cents };

const NO_LOAN = 'There is no loan on the books yet. Add it: "loan 14250 at 5.5%".';

/** The same as a reply says it: its days as replies show them. */
export function problemWords(problem: Problem, books: Books, today: Day): string {
  return problemText(problem, books).replace(/\b\d{4}-\d{2}-\d{2}\b/g, (day) => showDay(day, today));
}

/** A problem in one or two short plain sentences, with what to do where something can be done. Days as printed. */
export function problemText(problem: Problem, books: Books): string {
  switch (problem.kind) {
    case "no such piece":
      return `There is no piece #${problem.number} on the books. "pieces" lists them.`;
    case "not bought yet":
      return `${nameOf(books, problem.number)} was bought on ${problem.bought}, after that day. Give a later day, or fix the buy first.`;
    case "piece gone":
      return `${nameOf(books, problem.number)} ${goneWords(problem.how)} on ${problem.on}. Undo that first if it is wrong.`;
    case "piece not sold":
      return `${nameOf(books, problem.number)} is not sold, so there is nothing to give back.`;
    case "piece not listed":
      return `${nameOf(books, problem.number)} is not listed yet. List it first: "listed #${problem.number} 120".`;
    case "cut below zero":
      return `${nameOf(books, problem.number)} is listed at ${show(problem.listPrice)}: it cannot go down by that much. Give the new price.`;
    case "piece not held":
      return `${nameOf(books, problem.number)} is not on hold.`;
    case "deposit held":
      return `A deposit of ${show(problem.held)} is held on ${nameOf(books, problem.number)}. Settle that buyer first: refunded or kept?`;
    case "more than held":
      return problem.held === 0
        ? "No deposit is held there, so none can be refunded or kept."
        : `Only ${show(problem.held)} is held there. Give that or less.`;
    case "more than brought in":
      return `${nameOf(books, problem.number)} brought in ${show(problem.broughtIn)}: no more than that can be refunded.`;
    case "more owed than due":
      return `Only ${show(problem.due)} of the price is left to pay, so no more can be owed.`;
    case "nothing owed":
      return `Nothing is owed on ${nameOf(books, problem.number)} that day.`;
    case "more than buyers owe":
      return `Only ${show(problem.owed)} is owed there.`;
    case "trade below zero":
      return `That trade leaves ${show(problem.cost)} for what you got: more cash came back than the piece is worth.`;
    case "no such repeat":
      return "That standing note is not there any more.";
    case "no loan":
      return NO_LOAN;
    case "no such loan":
      return noSuchLoan(problem.name, [...books.loans.keys()]);
    case "loan name taken":
      return `There is a loan named "${problem.name}" already. Give the new one another name: "new loan grad 4100 6.8%".`;
    case "loan not open yet":
      return `The ${loanWords(problem.name)} is on the books only from ${problem.opened}. Give that day or a later one.`;
    case "more than owed":
      return problem.owed === 0
        ? "Nothing is owed that day."
        : `Only ${show(problem.owed)} is owed that day. Pay that, or give the statement's balance first.`;
    case "below interest due":
      return `The interest due alone is ${show(problem.interest)} that day. Check the statement's balance.`;
  }
}

function nameOf(books: Books, number: number): string {
  const piece = books.pieces.get(number);
  return piece ? pieceLabel(piece) : `#${number}`;
}

/** "was sold", "was given away": what became of a piece that is gone. */
export function goneWords(how: "sold" | RetireHow, was: "was" | "were" = "was"): string {
  if (how === "kept") return `${was} kept for yourself`;
  return how === "given" ? `${was} given away` : `${was} ${how}`;
}

/** "grad" is the "grad loan", "loan" is just that. */
export function loanWords(name: string): string {
  return /\bloan$/.test(name) ? name : `${name} loan`;
}

function noSuchLoan(name: string, names: readonly string[]): string {
  if (names.length === 0) return NO_LOAN;
  return `There is no loan named "${name}". On the books: ${names.join(", ")}.`;
}
