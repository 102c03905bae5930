import { parseArgs } from "node:util";
import { factsThrough, foldFacts } from "../../core/books/fold.ts";
import { type Day, dayOfInstant, isDay } from "../../core/calendar.ts";
import { answer } from "../../core/questions/ask.ts";
import type { Person, QuestionDesk } from "../../core/questions/desk.ts";
import type { LedgerReader } from "../../db/ledger.ts";
import { openReader } from "../../db/open.ts";
import { toolSettings } from "../environment.ts";
import type { Settings } from "../settings.ts";
import { typedLines } from "../typed-lines.ts";
import { machineZone, zoneInForce } from "../zone.ts";

const USAGE = "usage: npm run -s ask [-- --on YYYY-MM-DD] [--as NAME]";

interface Options {
  on: Day | null;
  as: string | null;
}

/** The options given; a sentence where they make no sense. */
function optionsOf(args: string[]): Options | { why: string } {
  try {
    const { values } = parseArgs({ args, options: { on: { type: "string" }, as: { type: "string" } } });
    const { on = null, as = null } = values;
    return on === null || isDay(on) ? { on, as } : { why: `"${on}" is not a day such as 2026-05-31` };
  } catch (error) {
    return { why: error instanceof Error ? error.message : String(error) };
  }
}

/** Who asks: the one named, else the owner; a sentence where nobody has that name. */
function askerOf(
  people: readonly Person[],
  owner: number | null,
  as: string | null,
): number | null | { why: string } {
  if (as === null) return owner;
  const named = people.find(({ name }) => name.toLowerCase() === as.toLowerCase());
  return named ? named.id : { why: `there is no member "${as}"` };
}

/** What the ledger gives to questions on a day, nothing where none has been begun. */
function deskOf(
  reader: LedgerReader | null,
  { on, as }: Options,
  { zone, currency }: Settings,
): QuestionDesk | { why: string } {
  const today =
    on ?? dayOfInstant(Date.now(), reader ? zoneInForce(zone, reader.settings) : (zone ?? machineZone()));
  const folded = foldFacts(factsThrough(reader?.books.facts ?? [], today));
  if (folded.kind === "impossible") throw new Error(`fact ${folded.fact.id} stands only with later ones`);
  const people = reader?.members.list().map(({ id, name }) => ({ id, name })) ?? [];
  const me = askerOf(people, reader?.members.owner()?.id ?? null, as);
  if (me !== null && typeof me === "object") return me;
  const mileageRates = reader?.settings.get("mileageRates") ?? {};
  return { books: folded.books, today, currency, people, me, mileageRates };
}

/** One question as one line of JSON. */
function lineOf(question: string, desk: QuestionDesk): string {
  const { understood, measure, value, rows, period, text } = answer(question, desk);
  return JSON.stringify({ question, understood, measure, value, rows, period, text });
}

function fail(why: string, exitCode: 1 | 2): void {
  console.error(why);
  process.exitCode = exitCode;
}

/** Answers what is asked, a line each. Exits with 2 for bad options or settings, 1 for a ledger that cannot be read. */
async function answerAll(args: string[]): Promise<void> {
  const options = optionsOf(args);
  if ("why" in options) return fail(`${options.why}\n${USAGE}`, 2);
  const read = toolSettings();
  if (read.kind === "refused") return fail(read.problems.join("\n"), 2);
  const opened = openReader(read.settings.directory);
  if (opened.kind === "unusable") return fail(opened.why, 1);
  const reader = opened.kind === "open" ? opened.reader : null;
  const desk = deskOf(reader, options, read.settings);
  if ("why" in desk) fail(desk.why, 2);
  else for await (const line of typedLines()) console.log(lineOf(line, desk));
  reader?.close();
}

await answerAll(process.argv.slice(2));
