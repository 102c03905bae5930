import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Fact } from "../../core/books/facts.ts";
import { answer } from "../../core/questions/ask.ts";
import { type Chat, openChat } from "../bot/conversation/chat.ts";
import { runsOf, SEED } from "../runs.ts";
import { linesOf } from "./cases.ts";
import { wantedOf } from "./engine.ts";
import { randomLedger } from "./random-ledger.ts";

const ON = "2026-10-15";
let chat: Chat;

/** A ledger with these notes; each of them must be recorded as it stands. */
function typed(notes: readonly string[]): Chat {
  const opened = openChat({ start: "2026-10-15T18:00:00Z" });
  for (const note of notes) {
    const before = opened.ledger.books.facts.length;
    const said = opened.say(note);
    if (opened.ledger.books.facts.length === before) throw new Error(`${note}: ${said.text}`);
  }
  return opened;
}

beforeAll(() => {
  chat = typed(linesOf("questions-ledger.txt"));
});
afterAll(() => chat.end());

function ask(question: string, { books } = chat.ledger) {
  return answer(question, { books, today: ON, currency: "USD", people: [], me: 1, mileageRates: {} });
}

/** Ways to say a measure, with what each means to the second engine. */
const MEASURES: readonly (readonly [string, readonly string[]])[] = [
  ["profit", ["profit on", "what did i make on", "gain on", "earnings on"]],
  ["proceeds", ["revenue from", "how much came in on", "takings on"]],
  ["price", ["total i paid for", "purchase price of"]],
  ["minutes", ["hours on", "time spent on", "labor on"]],
  ["miles", ["miles for", "mileage on"]],
  ["count:sold", ["how many sold of", "number sold of"]],
  ["count:bought", ["how many bought of", "count bought of"]],
];
const THINGS: readonly (readonly [string, readonly string[]])[] = [
  ["k:dresser", ["dressers", "the dressers"]],
  ["k:nightstand", ["nightstands", "my nightstands"]],
  ["k:lamp", ["lamps", "lamps"]],
  ["t:black", ["black pieces", "black stuff"]],
  ["k:bench t:black", ["black benches"]],
  ["k:dresser|lamp", ["dressers and lamps", "lamps or dressers"]],
  ["!k:dresser k:dresser|lamp|bench", ["lamps and benches"]],
];
const PERIODS: readonly (readonly [string, readonly string[]])[] = [
  ["", ["", "ever", "so far"]],
  ["p:2026-08-01..2026-08-31", ["in august", "during aug", "august 2026"]],
  ["p:2026-07-01..2026-09-30", ["in q3", "from july to september"]],
  ["p:2026-06-01..2026-10-15", ["since june", "june till now"]],
  ["p:2026-09-01..2026-09-30", ["last month", "in sept"]],
  ["p:2026-01-01..2026-10-15", ["this year", "ytd"]],
];

const pick = (table: readonly (readonly [string, readonly string[]])[]) =>
  fc
    .constantFrom(...table)
    .chain(([meaning, ways]) => fc.constantFrom(...ways).map((said) => ({ meaning, said })));

const asked = fc.tuple(pick(MEASURES), pick(THINGS), pick(PERIODS), fc.boolean());

interface Part {
  meaning: string;
  said: string;
}

function worded([measure, thing, period, first]: [Part, Part, Part, boolean]): string {
  const what = `${measure.said} ${thing.said}`;
  return (first ? `${period.said} ${what}` : `${what} ${period.said}`).trim();
}

/** What a question must come to: the second engine's figure of the same meaning. */
function expectSame([measure, thing, period, first]: Parameters<typeof worded>[0], { ledger }: Chat): void {
  const question = worded([measure, thing, period, first]);
  const facts: readonly Fact[] = ledger.books.facts;
  const wanted = wantedOf(facts, `${measure.meaning} ${thing.meaning} ${period.meaning}`, ON);
  expect(`${question}: ${Number(ask(question, ledger).value)}`).toBe(`${question}: ${Number(wanted.value)}`);
}

test("any measure of anything in any period is what the second engine makes of it", () => {
  fc.assert(
    fc.property(asked, (parts) => expectSame(parts, chat)),
    { numRuns: runsOf({ short: 40, long: 1500 }), seed: 20261015 },
  );
});

test("so it is over random ledgers", () => {
  const ledgers = runsOf({ short: 1, long: 60 });
  for (let run = 0; run < ledgers; run += 1) {
    const random = typed(randomLedger(SEED + run, "2026-04-20", "2026-10-14"));
    fc.assert(
      fc.property(asked, (parts) => expectSame(parts, random)),
      { numRuns: process.env["LONG"] ? 100 : 50, seed: SEED + run },
    );
    random.end();
  }
});

test("a word that nobody knows is never answered, wherever it stands", () => {
  const strange = fc.constantFrom("zorble", "quibbly", "flommox", "brindled2", "snarfing");
  fc.assert(
    fc.property(asked, strange, fc.nat(), (parts, word, at) => {
      const words = worded(parts).split(" ");
      words.splice(at % (words.length + 1), 0, word);
      const answered = ask(words.join(" "));
      expect(`${words.join(" ")}: ${answered.understood}`).toBe(`${words.join(" ")}: false`);
    }),
    { numRuns: runsOf({ short: 40, long: 1500 }), seed: 20261016 },
  );
});
