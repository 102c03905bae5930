import { parseArgs } from "node:util";
import type { Fact } from "../../core/books/facts.ts";
import { factsThrough, foldFacts } from "../../core/books/fold.ts";
import { statementOf } from "../../core/books/statement.ts";
import { type Day, dayOfInstant, isDay } from "../../core/calendar.ts";
import { openReader } from "../../db/open.ts";
import { toolSettings } from "../environment.ts";
import type { Settings } from "../settings.ts";
import { machineZone, zoneInForce } from "../zone.ts";

const USAGE = "usage: npm run -s books [-- --through YYYY-MM-DD]";

/** What the ledger of a data directory holds, nothing where none has been begun; and whose days count. */
function historyIn({
  directory,
  zone,
}: Settings): { facts: readonly Fact[]; zone: string } | { why: string } {
  const opened = openReader(directory);
  if (opened.kind === "none") return { facts: [], zone: zone ?? machineZone() };
  if (opened.kind === "unusable") return { why: opened.why };
  const { reader } = opened;
  try {
    return { facts: reader.books.facts, zone: zoneInForce(zone, reader.settings) };
  } catch (error) {
    return { why: error instanceof Error ? error.message : String(error) };
  } finally {
    reader.close();
  }
}

/** The day given with --through, null for none; a sentence where the options make no sense. */
function throughOf(args: string[]): { day: Day | null } | { why: string } {
  try {
    const { values } = parseArgs({ args, options: { through: { type: "string" } } });
    const { through } = values;
    if (through === undefined) return { day: null };
    return isDay(through) ? { day: through } : { why: `"${through}" is not a day such as 2026-05-31` };
  } catch (error) {
    return { why: error instanceof Error ? error.message : String(error) };
  }
}

type Outcome = { kind: "line"; line: string } | { kind: "refused"; why: string; exitCode: 1 | 2 };

/** The statement of the books as one line of JSON. */
function statementLine(args: string[]): Outcome {
  const read = toolSettings();
  if (read.kind === "refused") return { kind: "refused", why: read.problems.join("\n"), exitCode: 2 };
  const asked = throughOf(args);
  if ("why" in asked) return { kind: "refused", why: `${asked.why}\n${USAGE}`, exitCode: 2 };
  const history = historyIn(read.settings);
  if ("why" in history) return { kind: "refused", why: history.why, exitCode: 1 };
  const through = asked.day ?? dayOfInstant(Date.now(), history.zone);
  const folded = foldFacts(factsThrough(history.facts, through));
  if (folded.kind === "impossible") throw new Error(`fact ${folded.fact.id} stands only with later ones`);
  return {
    kind: "line",
    line: JSON.stringify(statementOf(folded.books, { through, currency: read.settings.currency })),
  };
}

// Exits with 2 for bad options or settings, 1 for a ledger that cannot be read.
const outcome = statementLine(process.argv.slice(2));
if (outcome.kind === "line") console.log(outcome.line);
else {
  console.error(outcome.why);
  process.exitCode = outcome.exitCode;
}
