import { parseArgs } from "node:util";
import { factsThrough, foldFacts } from "../../core/books/fold.ts";
import { type Day, dayOfInstant, isDay } from "../../core/calendar.ts";
import { answer } from "../../core/questions/ask.ts";
import type { Person, QuestionDesk } from "../../core/questions/desk.ts";
import type { LedgerReader } from "../../db/ledger.ts";
import { openReader } from "../../db/open.ts";
import { readSettings } from "../settings.ts";
import { machineZone, zoneInForce } from "../zone.ts";

/** Only what a reader needs: nothing of the chat's settings can stand in its way. */
function ownSettings(): ReturnType<typeof readSettings> {
  const { DATA_DIR, TIME_ZONE, CURRENCY } = process.env;
  return readSettings({ DATA_DIR, TIME_ZONE, CURRENCY });
}

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
function deskOf(reader: LedgerReader | null, { on, as }: Options): QuestionDesk | { why: string } {
  const read = ownSettings();
  if (read.kind === "refused") return { why: read.problems.join("\n") };
  const { zone, currency } = read.settings;
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
function lineOf(typed: string, desk: QuestionDesk): string {
  const question = typed.endsWith("\r") ? typed.slice(0, -1) : typed;
  const { understood, measure, value, rows, period, text } = answer(question, desk);
  return JSON.stringify({ question, understood, measure, value, rows, period, text });
}

async function answerAll(desk: QuestionDesk): Promise<void> {
  let rest = "";
  process.stdin.setEncoding("utf8");
  for await (const chunk of process.stdin) {
    const lines = (rest + chunk).split("\n");
    rest = lines.pop() ?? "";
    for (const line of lines) console.log(lineOf(line, desk));
  }
  if (rest !== "") console.log(lineOf(rest, desk));
}

function fail(why: string, exitCode: 1 | 2): void {
  console.error(why);
  process.exitCode = exitCode;
}

// Exits with 2 for bad options or settings, 1 for a ledger that cannot be read.
const options = optionsOf(process.argv.slice(2));
if ("why" in options) fail(`${options.why}\n${USAGE}`, 2);
else {
  const read = ownSettings();
  const opened = read.kind === "refused" ? null : openReader(read.settings.directory);
  if (opened?.kind === "unusable") fail(opened.why, 1);
  else {
    const reader = opened?.kind === "open" ? opened.reader : null;
    const desk = deskOf(reader, options);
    if ("why" in desk) fail(desk.why, 2);
    else await answerAll(desk);
    reader?.close();
  }
}
