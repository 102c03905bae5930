import type { Books } from "../../books/books.ts";
import type { Fact } from "../../books/facts.ts";
import type { Day } from "../../calendar.ts";
import { amountText, type Cents } from "../../money.ts";
import type { Tok } from "../../notes/clause.ts";
import { lexed } from "../../notes/lexed.ts";
import { pastDay } from "../../notes/quantities/days.ts";
import { readMessage } from "../../notes/read.ts";
import type { Reading, ReadingOf } from "../../notes/reading.ts";
import { besideName } from "../../notes/settling.ts";
import { centsIn } from "../../notes/slots/money.ts";
import { ANOTHER_ONE, SAME } from "../../notes/words/again.ts";
import {
  ALL_LOANS,
  BESIDE_BALANCE,
  BESIDE_LOAN,
  EACH_OF_LOANS,
  LOAN_MEANT,
  LOAN_STANDS,
  LOANWARD,
  MEANT_BEFORE,
  OTHER_LOAN,
  PAID_TO_LOAN,
} from "../../notes/words/links.ts";
import { THEM } from "../../notes/words/pieces.ts";
import { BETWEEN_PAYMENTS } from "../../notes/words/settling.ts";
import { saysAny } from "../../notes/words/words.ts";
import { UNNAMED_LOAN } from "./loans.ts";

const TOKENS_MAX = 8;

/** What was said before: the loan of the payment noted last, by its own name. */
interface Said {
  books: Books;
  today: Day;
  newest?: Fact | undefined;
}

/** "paid 100 on grad and 60 on undergrad", "paid 100 on grad and bought a desk 40"; null where any part is no whole note. */
function toSeveralLoans(text: string, said: Said): Reading[] | null {
  const parts = text.toLowerCase().split(BETWEEN_PAYMENTS);
  if (parts.length < 2 || parts.length > PARTS_MAX || parts.some((part) => part === "")) return null;
  const rest = { books: said.books, today: said.today };
  const read = parts.map(
    (part) => paidTo(part, rest) ?? paidTo(`to ${part}`, rest) ?? noteIn(part, said.today),
  );
  if (read.some((each) => each === null) || !read.some((each) => each?.kind === "pay" && each.loan))
    return null;
  return read.flatMap((each) => (each ? [{ ...each, text }] : []));
}

const PARTS_MAX = 4;

/** A payment to a loan by its name, and nothing else. */
function paidTo(part: string, said: Said): Reading | null {
  const [pay, ...others] = toKnownLoan(part, said) ?? [];
  return pay?.kind === "pay" && pay.loan !== undefined && others.length === 0 ? pay : null;
}

/** The one whole note of a part. */
function noteIn(part: string, today: Day): Reading | null {
  const [note, ...others] = readMessage(part, today);
  return note &&
    others.length === 0 &&
    note.kind !== "unclear" &&
    note.kind !== "ask" &&
    !note.missing &&
    !note.follows
    ? note
    : null;
}

/** "80 each to both loans": as much to all of them. */
function toEachLoan(text: string, { books }: Said): Reading[] | null {
  if (books.loans.size < 2) return null;
  const tokens = lexed(text);
  if (tokens.length > TOKENS_MAX) return null;
  const words = tokens.filter(({ kind }) => kind === "word").flatMap(({ text: word }) => word.split(" "));
  const [amount, ...more] = tokens.filter(({ kind }) => kind === "amount");
  const isEach = amount?.each === true || words.some((word) => EACH_OF_LOANS.has(word));
  const isAll = words.every(
    (word) => BESIDE_LOAN.has(word) || EACH_OF_LOANS.has(word) || ALL_LOANS.has(word),
  );
  const cents = amount && more.length === 0 ? centsIn(amount) : null;
  const isOfLoans = words.some((word) => word === "loan" || word === "loans");
  if (cents === null || !isEach || !isAll || !isOfLoans) return null;
  const isOfAll = words.some((word) => ALL_LOANS.has(word) || EACH_OF_LOANS.has(word));
  return isOfAll
    ? [...books.loans.keys()].map((loan) => ({ kind: "pay", amount: cents, loan, text, line: 0 }))
    : null;
}

/**
 * "150 to van", "50 more to the class loan": a payment to a loan that is on the books under that name, or to "the other
 * one" of two; "van one is at 2300": what its statement says; null else.
 */
export function toKnownLoan(text: string, told: Said): Reading[] | null {
  const { books, today, newest } = told;
  const names = [...books.loans.keys()].filter((name) => name !== UNNAMED_LOAN);
  const isNamed = names.some((name) => text.toLowerCase().includes(name));
  const several = (isNamed ? toSeveralLoans(text, told) : null) ?? toEachLoan(text, told);
  if (several) return several;
  const said = names.length > 0 ? besideName(text, names) : null;
  const other = said?.who === undefined ? otherLoan(names, newest ?? lastPaid(books)) : undefined;
  const loan = said?.who ?? other;
  if (!said || loan === undefined) return onIt(text, today, newest);
  // "that was for grad", "that 150 was supposed to go to grad": the payment noted before.
  const words = said.rest.trim().split(" ");
  const sum = newest?.kind === "pay" && newest.amount !== undefined ? amountText(newest.amount) : "";
  const isPast = words.some((word) => MEANT_BEFORE.has(word));
  const others = isPast ? words.filter((word) => word.replace("$", "") !== sum.replace(/\.00$/, "")) : words;
  if (said.who && others.every((word) => LOAN_MEANT.has(word)))
    return [{ kind: "mend", of: { kind: "pay", back: 1 }, to: { loan }, text, line: 0 }];
  const tokens = lexed(said.rest);
  const isOther = tokens.some(({ text: words }) => words.split(" ").some((word) => OTHER_LOAN.has(word)));
  if (tokens.length > TOKENS_MAX || isOther !== (other !== undefined)) return null;
  return (
    payIn(tokens, loan, text, today, isOther) ??
    balanceIn(tokens, loan, text) ??
    sameIn(tokens, loan, text, newest)
  );
}

/** "put 120 on it" right behind a note of a loan: a payment to that one. */
function onIt(text: string, today: Day, newest: Fact | undefined): Reading[] | null {
  const loan = newest && loanOf(newest);
  const tokens = loan === undefined ? [] : lexed(text);
  const isIt = tokens.some(({ text: word }) => THEM.has(word));
  if (loan === undefined || !isIt || tokens.length > TOKENS_MAX) return null;
  return payIn(
    tokens.filter(({ text: word }) => !THEM.has(word)),
    loan === UNNAMED_LOAN ? undefined : loan,
    text,
    today,
  );
}

const loanOf = (fact: Fact): string | undefined => {
  const isOfLoan = fact.kind === "loan" || fact.kind === "pay" || fact.kind === "statement";
  return isOfLoan ? (fact.data.loan ?? UNNAMED_LOAN) : undefined;
};

/** "same for the van": as much as was paid just now, to the other loan. */
function sameIn(
  tokens: readonly Tok[],
  loan: string,
  text: string,
  newest: Fact | undefined,
): Reading[] | null {
  const words = tokens.filter(({ kind }) => kind !== "mark").map(({ text: word }) => word);
  const isSame = words.some((word) => SAME.has(word.split(" ").at(-1)!));
  const isAll = words.every((word) => isAllOf(word, BESIDE_LOAN) || SAME.has(word.split(" ").at(-1)!));
  if (newest?.kind !== "pay" || newest.amount === undefined || !isSame || !isAll) return null;
  return [{ kind: "pay", amount: newest.amount, loan, text, line: 0 }];
}

/** The payment noted last, on whatever day. */
const lastPaid = ({ facts }: Books): Fact | undefined => facts.findLast(({ kind }) => kind === "pay");

/** The other one of two loans, beside that of the newest note. */
function otherLoan(names: readonly string[], newest: Fact | undefined): string | undefined {
  const paid = newest?.kind === "pay" ? newest.data.loan : undefined;
  const others = names.filter((name) => name !== paid);
  return paid !== undefined && others.length === 1 ? others[0] : undefined;
}

/** The one amount that is told; null where there is none, or more. */
function amountIn(tokens: readonly Tok[]): Cents | null {
  const [amount, ...others] = tokens.filter(({ kind }) => kind === "amount");
  return amount && others.length === 0 && !amount.each ? centsIn(amount) : null;
}

function payIn(
  tokens: readonly Tok[],
  loan: string | undefined,
  text: string,
  today: Day,
  isOther = false,
): Reading[] | null {
  const amount = amountIn(tokens);
  // "paid van 150": a cost is called so as well.
  const isCost = lexed(text).some(({ text: word, roles }) => word === loan && roles.supply !== undefined);
  const isPaid = tokens.some(({ text: words }) =>
    words
      .split(" ")
      .some((word) => LOANWARD.has(word) || (loan !== undefined && !isCost && PAID_TO_LOAN.has(word))),
  );
  // "another 40, the other loan this time"
  const isMore = isOther && saysAny(text, ANOTHER_ONE);
  if (amount === null || !(isPaid || isMore)) return null;
  const pay: ReadingOf<"pay"> = {
    kind: "pay",
    amount,
    ...(loan === undefined ? {} : { loan }),
    text,
    line: 0,
  };
  for (const { kind, text: words, said } of tokens) {
    const day = kind === "day" ? pastDay(said!, today) : null;
    if (day && "day" in day) pay.date = day.day;
    else if (kind !== "amount" && kind !== "mark" && !isAllOf(words, BESIDE_LOAN)) return null;
  }
  return [pay];
}

function balanceIn(tokens: readonly Tok[], loan: string, text: string): Reading[] | null {
  const balance = amountIn(tokens);
  const words = tokens
    .filter(({ kind }) => kind !== "amount" && kind !== "mark")
    .map(({ text: word }) => word);
  const isTold = words.some((word) => word.split(" ").some((one) => LOAN_STANDS.has(one)));
  if (balance === null || !isTold || !words.every((word) => isAllOf(word, BESIDE_BALANCE))) return null;
  return [{ kind: "statement", balance, loan, text, line: 0 }];
}

/** Every word of it stands beside a loan; "the other one" is a loan here. */
const isAllOf = (words: string, beside: ReadonlySet<string>): boolean =>
  words.split(" ").every((word) => beside.has(word) || OTHER_LOAN.has(word));
