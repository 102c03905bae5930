import { readMessage } from "../core/notes/read.ts";
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
 * Reads an example of each kind of note, one at a time between other work, so that the first note of a person
 * does not wait for the word tables to be built and the code to be compiled. Begun once the first poll is under
 * way, which would wait for it else. Gives the function that ends it.
 */
export function warmUp(): () => void {
  const examples = verbs.map(({ example }) => example);
  let isOver = false;
  const next = () => {
    const example = examples.pop();
    if (isOver) return;
    if (example === undefined) {
      warmQuestions();
      return;
    }
    readMessage(example, "2026-05-09");
    setImmediate(next);
  };
  setTimeout(next, WARM_UP_AFTER_MS).unref();
  return () => {
    isOver = true;
  };
}
