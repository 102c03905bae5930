import { month } from "../../core/answers/month.ts";
import { openBenchLedger } from "./ledgers.ts";
import { benchNotes, medianOf } from "./notes.ts";
import { benchReading } from "./reading.ts";

/** Prints what the README's figures come from. Ratios travel between machines, times do not. */
function benchMonth(years: number): number {
  const { ledger, end, close } = openBenchLedger(years);
  const question = { kind: "ask", about: "month", text: "month", line: 0 } as const;
  const books = ledger.books;
  const times = Array.from({ length: 50 }, () => {
    const start = performance.now();
    month.answer({ question, books, today: end, currency: "USD", pieces: [], mileageRates: {} });
    return performance.now() - start;
  });
  close();
  return medianOf(times);
}

for (const years of [1, 10]) {
  const { noteMs, bareMs, ratio } = benchNotes(years);
  console.log(
    `a note on a ${years}-year ledger: ${noteMs.toFixed(2)} ms, bare durable transaction ${bareMs.toFixed(2)} ms, ratio ${ratio.toFixed(2)}`,
  );
}
const [one, ten] = [benchMonth(1), benchMonth(10)];
console.log(
  `the month answer: ${one.toFixed(2)} ms on one year, ${ten.toFixed(2)} ms on ten, ratio ${(ten / one).toFixed(2)}`,
);
const reading = benchReading();
console.log(
  `reading: ${Math.round(reading.linesPerSecond)} lines a second, chrono-node's parse alone ${Math.round(reading.chronoLinesPerSecond)}, ratio ${reading.ratio.toFixed(2)}`,
);
