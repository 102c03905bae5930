import type { Books } from "./books.ts";
import type { Problem } from "./problem.ts";

/** The first of the numbers that no piece on the books has, as a problem. */
export function checkPieces(books: Books, numbers: readonly number[]): Problem | null {
  const number = numbers.find((each) => !books.pieces.has(each));
  return number === undefined ? null : { kind: "no such piece", number };
}

/** The first piece that is not there or is gone, as a problem. */
export function checkNotGone(books: Books, numbers: readonly number[]): Problem | null {
  const problem = checkPieces(books, numbers);
  if (problem) return problem;
  for (const number of numbers) {
    const { gone, goneOn } = books.pieces.get(number)!;
    if (gone) return { kind: "piece gone", number, how: gone, on: goneOn! };
  }
  return null;
}

/** The buyer is settled first: no piece goes while a deposit is held on it. */
export function checkNoDeposit(books: Books, numbers: readonly number[]): Problem | null {
  for (const number of numbers) {
    const { deposit } = books.pieces.get(number)!;
    if (deposit > 0) return { kind: "deposit held", number, held: deposit };
  }
  return null;
}

/** That a loan of the name is on the books. */
export function checkLoan(books: Books, name: string): Problem | null {
  return books.loans.has(name) ? null : { kind: "no such loan", name };
}
