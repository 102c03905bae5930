import { createConversation } from "../../bot/conversation/conversation.ts";
import { answers } from "../../core/answers/list.ts";
import { answer as ask } from "../../core/questions/ask.ts";
import { openLedger } from "../../db/open.ts";
import { type BenchLedger, openBenchLedger } from "./ledgers.ts";
import { medianOf } from "./notes.ts";

const silent = { debug() {}, info() {}, warn() {}, error() {} };

/** Milliseconds by what is done, each at the median, on a ledger of some age. */
export interface AgedTimes {
  note: number;
  /** Dated a day, a year, and half of the ledger's age back. */
  backdatedDay: number;
  backdatedYear: number;
  backdatedHalf: number;
  undo: number;
  fix: number;
  edit: number;
  /** Of the notes made longest ago. */
  undoOldest: number;
  /** `month` asked again. */
  month: number;
  /** `month` as an answer alone, of books that have answered it before. */
  monthAgain: number;
  /** The slowest question about the books, and which. */
  slowestQuestion: number;
  slowest: string;
  /** Opening it: after this release wrote it, and where all of it is gone through first. */
  open: number;
  openChecked: number;
}

/** A person who talks to the ledger, each word timed. */
function personOn(bench: BenchLedger) {
  let count = 0;
  const deps = {
    ledger: bench.ledger,
    currency: "USD",
    zone: () => "America/Chicago",
    now: () => Date.parse(`${bench.end}T18:00:00Z`) + count * 1000,
    log: silent,
  };
  const conversation = createConversation(deps);
  const hear = (text: string, of: { message?: string; edited?: true; replyTo?: string } = {}) => {
    count += 1;
    const message = of.message ?? `b${count}`;
    const incoming = { person: bench.person, chat: "1001", message, text, said: deps.now(), ...of };
    const milliseconds = timed(() => conversation.hear({ ...incoming, update: `u${count}` }));
    return { message, milliseconds, said: sendAll(bench, deps.now()) };
  };
  return { hear };
}

/** Marks all that is owed as sent; gives what was said or reworded. */
function sendAll({ ledger: { outbox } }: BenchLedger, now: number): string {
  const said: string[] = [];
  for (let row = outbox.nextUnsent(now); row; row = outbox.nextUnsent(now)) {
    if (row.body.kind !== "file") said.push(row.body.reply.text);
    outbox.markSent(row.id, row.body.kind === "edit" ? null : `r${row.id}`, now);
  }
  return said.join("\n");
}

type Person = ReturnType<typeof personOn>;

/** The median of what is timed in each round; what is said must fit, or the figure would be of something else. */
function medianOfRounds(rounds: number, round: (index: number) => number): number {
  return medianOf(Array.from({ length: rounds }, (_, index) => round(index)));
}

function fitting({ milliseconds, said }: ReturnType<Person["hear"]>, expected: RegExp): number {
  if (!expected.test(said)) throw new Error(`not what was to be timed: ${said}`);
  return milliseconds;
}

/** Times what a person may do on a ledger of `years`. */
export function benchAged(years: number, rounds = 20): AgedTimes {
  const bench = openBenchLedger(years);
  try {
    const { hear } = personOn(bench);
    const warm = ["bought crib 5", "undo", "tips 3", "make that 4", "undo", "month"];
    for (const text of [...warm, ...warm]) hear(text);
    const bought = /^Bought/m;
    const backdated = (day: string) =>
      medianOfRounds(rounds, (index) => fitting(hear(`bought lamp ${index + 5} ${day}`), bought));
    const on = (daysBack: number) =>
      new Date(Date.parse(bench.end) - daysBack * 86_400_000).toISOString().slice(0, 10);
    const times = {
      note: medianOfRounds(rounds, (index) => fitting(hear(`bought lamp ${index + 5}`), bought)),
      backdatedDay: backdated("yesterday"),
      backdatedYear: backdated(on(365)),
      backdatedHalf: backdated(on(Math.round((years * 365) / 2))),
      undo: medianOfRounds(rounds, (index) => {
        hear(`bought lamp ${index + 40}`);
        return fitting(hear("undo"), /^Taken back/m);
      }),
      fix: medianOfRounds(rounds, (index) => {
        hear(`bought lamp ${index + 70}`);
        return fitting(hear(`make that ${index + 100}`), bought);
      }),
      edit: medianOfRounds(rounds, (index) => {
        const { message } = hear(`bought lamp ${index + 130}`);
        return fitting(hear(`bought lamp ${index + 160}`, { message, edited: true }), bought);
      }),
      undoOldest: medianOfRounds(rounds, (index) =>
        fitting(
          hear("undo", { replyTo: `old${index * 7 + 1}` }),
          /^(?:Taken back|Not taken back|In the way)/m,
        ),
      ),
      month: medianOfRounds(rounds, () => hear("month").milliseconds),
    };
    return { ...times, ...questions(bench), ...opening(bench) };
  } finally {
    bench.close();
  }
}

/** Questions in plain words, with and without a filter. */
const IN_WORDS: readonly string[] = [
  "how much did i make ever",
  "profit by kind",
  "paint since june",
  "how many dressers did i sell",
  "average sale",
  "best month",
  "last 5 notes",
  "tied up",
];

function questions({
  ledger,
  end,
}: BenchLedger): Pick<AgedTimes, "slowestQuestion" | "slowest" | "monthAgain"> {
  const pieces = [...ledger.books.pieces.keys()].slice(-3);
  const of = { books: ledger.books, today: end, currency: "USD", pieces, mileageRates: {} };
  const timesOf = answers.flatMap(({ about, answer }) => {
    if (about === undefined) return [];
    const question = { kind: "ask" as const, about, text: about, line: 0 };
    return { about, milliseconds: medianOfRounds(5, () => timed(() => answer({ ...of, question }))) };
  });
  const desk = { books: ledger.books, today: end, currency: "USD", people: [], me: 1, mileageRates: {} };
  const inWords = IN_WORDS.map((about) => ({
    about,
    milliseconds: medianOfRounds(5, () => timed(() => ask(about, desk))),
  }));
  const slowest = [...timesOf, ...inWords].reduce((a, b) => (b.milliseconds > a.milliseconds ? b : a));
  const monthAgain = timesOf.find(({ about }) => about === "month")!.milliseconds;
  return { slowestQuestion: slowest.milliseconds, slowest: slowest.about, monthAgain };
}

/** Closing and opening again, as a restart of the bot does. */
function opening(bench: BenchLedger): { open: number; openChecked: number } {
  const reopen = () => {
    bench.ledger.close();
    return timed(() => {
      const opened = openLedger({ directory: bench.directory, now: Date.parse(bench.end), release: "bench" });
      if (opened.kind !== "open") throw new Error(`ledger ${opened.kind}`);
      bench.ledger = opened.ledger;
    });
  };
  return { openChecked: reopen(), open: reopen() };
}

function timed(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}
