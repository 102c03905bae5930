import { cpus, totalmem } from "node:os";
import { type AgedTimes, benchAged } from "./aged.ts";
import { benchBots, ensureCompiled } from "./bots.ts";
import { benchReading } from "./compiled-reading.ts";
import { benchNotes } from "./notes.ts";
import { benchPause } from "./pause.ts";

/**
 * Prints what the figures of DEVELOPERS.md come from. Ratios beside a bare counterpart in the same run travel
 * between machines, times do not. With --check it ends with 1 where a bound is not kept: for a machine that has
 * nothing else to do.
 */
interface Figure {
  what: string;
  value: number;
  unit: "times" | "ms" | "MB" | "lines/s";
  /** At most, or at least. */
  bound?: { most: number } | { least: number };
  beside?: string;
}

const figures: Figure[] = [];

function tell(figure: Figure): void {
  figures.push(figure);
  const { what, value, unit, bound, beside } = figure;
  const shown = unit === "times" ? value.toFixed(2) : `${value.toFixed(value < 100 ? 1 : 0)} ${unit}`;
  const limit = bound ? ("most" in bound ? `, at most ${bound.most}` : `, at least ${bound.least}`) : "";
  console.log(`${isKept(figure) ? " " : "!"} ${what}: ${shown}${beside ? ` (${beside})` : ""}${limit}`);
}

function isKept({ value, bound }: Figure): boolean {
  if (!bound) return true;
  return "most" in bound ? value <= bound.most : value >= bound.least;
}

async function tellBots(): Promise<void> {
  const { ours, bare } = await benchBots();
  const ratio = (what: string, pair: [number, number], unit: "ms" | "MB", most: number) => {
    const beside = `${pair[0].toFixed(1)} to ${pair[1].toFixed(1)} ${unit}`;
    tell({ what, value: pair[0] / pair[1], unit: "times", bound: { most }, beside });
  };
  ratio("a note, at the median, beside a bare bot", [ours.median, bare.median], "ms", 2.5);
  ratio("a note, the slowest of a hundred, beside a bare bot", [ours.p99, bare.p99], "ms", 1.5);
  ratio("ready by npm start, beside a bare bot", [ours.readyByNpm, bare.readyByNpm], "ms", 1.3);
  if (ours.memory !== null && bare.memory !== null)
    ratio("memory at the peak, beside a bare bot", [ours.memory, bare.memory], "MB", 1.3);
  tell({ what: "the first note", value: ours.firstNote, unit: "ms", bound: { most: 50 } });
}

/** Milliseconds at the most on ten years; a hundred may take ten times that. */
const AGED: Partial<Record<keyof AgedTimes, [what: string, most: number]>> = {
  note: ["a note", 20],
  backdatedDay: ["a note of yesterday", 20],
  backdatedYear: ["a note dated a year back", 20],
  backdatedHalf: ["a note dated half of the years back", 20],
  undo: ["an undo", 50],
  undoOldest: ["an undo of the oldest notes", 50],
  fix: ["a fix", 50],
  edit: ["an edit", 50],
  month: ["month, the whole message", 20],
  slowestQuestion: ["the slowest question", 20],
  open: ["opening", 400],
};

function tellAged(years: number): void {
  const times = benchAged(years, years > 10 ? 5 : 20);
  for (const [name, [what, most]] of Object.entries(AGED)) {
    const value = times[name as keyof AgedTimes] as number;
    const factor = years <= 10 ? 1 : 10;
    const beside = name === "slowestQuestion" ? { beside: times.slowest } : {};
    tell({ what: `${years} years: ${what}`, value, unit: "ms", bound: { most: most * factor }, ...beside });
  }
  tell({
    what: `${years} years: the month answered again`,
    value: times.monthAgain,
    unit: "ms",
    bound: { most: 2 },
  });
  tell({ what: `${years} years: opening, all of it gone through`, value: times.openChecked, unit: "ms" });
}

console.log(
  `${new Date().toISOString().slice(0, 10)}, Node ${process.version}, ${cpus().length} cores of ${
    cpus()[0]?.model ?? "a machine that does not say"
  }, ${Math.round(totalmem() / 1_073_741_824)} GB`,
);
ensureCompiled();
await tellBots();
for (const years of [1, 10]) {
  const { noteMs, bareMs, ratio } = benchNotes(years);
  const beside = `${noteMs.toFixed(2)} to ${bareMs.toFixed(2)} ms`;
  tell({
    what: `${years} years: a note in process, beside its rows written bare`,
    value: ratio,
    unit: "times",
    beside,
  });
}
for (const years of [1, 10, 100]) tellAged(years);
const pause = await benchPause();
tell({
  what: "the longest pause while 10,000 notes are copied and exported",
  value: pause,
  unit: "ms",
  bound: { most: 50 },
});
const { ratio, linesPerSecond, chronoLinesPerSecond } = await benchReading();
const lines = `${linesPerSecond} to ${chronoLinesPerSecond} lines a second`;
tell({
  what: "reading, beside a date library's parse alone",
  value: ratio,
  unit: "times",
  bound: { least: 0.8 },
  beside: lines,
});
const missed = figures.filter((figure) => !isKept(figure));
if (missed.length > 0)
  console.log(`${missed.length} of ${figures.length} figures miss their bound (marked !).`);
if (process.argv.includes("--check")) process.exitCode = missed.length > 0 ? 1 : 0;
