import { emptyBooks } from "../core/books/fold.ts";
import { cautionFor } from "../core/cautions.ts";
import { decide } from "../core/decide/decide.ts";
import { mattersOf } from "../core/decide/matters.ts";
import { readMessage } from "../core/notes/read.ts";
import { makeNextTable } from "../core/notes/rows/words.ts";
import { warmQuestions } from "../core/questions/ask.ts";
import { verbs } from "../core/verbs/list.ts";
import type { Ledger } from "../db/ledger.ts";
import { failureText, type Log } from "./log.ts";

/** Nothing heard for so long: there is time for what no note should wait for. */
const QUIET_MS = 2_000;
const WARM_UP_AFTER_MS = 300;

/** Work for the moments between notes, and `also` other such work. `heard` is called after each note; `stop` ends it. */
export function startIdleWork({ ledger, log, also }: { ledger: Ledger; log: Log; also?: () => void }): {
  heard(): void;
  stop(): void;
} {
  let timer: NodeJS.Timeout | undefined;
  const work = () => {
    try {
      ledger.settle();
      also?.();
    } catch (error) {
      log.warn("not settled", { why: failureText(error) });
    }
  };
  return {
    heard() {
      clearTimeout(timer);
      timer = setTimeout(work, QUIET_MS).unref();
    },
    stop: () => clearTimeout(timer),
  };
}

/**
 * Takes an example of each kind of note as far as it goes without a ledger, one at a time between other work, so
 * that the first note of a person does not wait for the word tables to be built, patterns to be compiled and
 * statements to be prepared. Begun once the first poll is under way, which would wait for it else. Gives the function
 * that ends it.
 */
export function warmUp(ledger: Ledger): () => void {
  const work = [
    ...verbs.map(
      ({ example }) =>
        () =>
          goThrough(example),
    ),
    warmQuestions,
    () => lookAround(ledger),
  ];
  let isOver = false;
  const next = () => {
    if (isOver) return;
    if (!makeNextTable()) work.shift()?.();
    if (work.length > 0) setImmediate(next);
  };
  setTimeout(next, WARM_UP_AFTER_MS).unref();
  return () => {
    isOver = true;
  };
}

const SOME_DAY = "2026-05-09";

function goThrough(text: string): void {
  const readings = readMessage(text, SOME_DAY);
  const nothing = { given: () => ({}), waiting: () => ({}) };
  for (const matter of mattersOf(readings, SOME_DAY)) {
    decide(matter, { books: emptyBooks(), today: SOME_DAY, nextPiece: 1 });
    const noted = { text, root: 0, kinds: [matter.reading.kind], pieces: [] };
    cautionFor({ noted: [noted], day: SOME_DAY }, nothing);
  }
}

/** Asks what is asked after every note. */
function lookAround({ questions, outbox, settings }: Ledger): void {
  questions.everyOpen();
  const chat = settings.get("ownerChat");
  if (chat !== null) outbox.lately(chat);
}
