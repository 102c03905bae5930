import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { printReading, readMessage } from "../../../core/notes/read.ts";
import { language } from "../../../core/notes/verbs.ts";
import { runsOf } from "../../runs.ts";

const RUNS = runsOf({ short: 150, long: 3000 });
const DAY = "2026-05-14";

type Printed = Record<string, unknown> & { kind: string };
const read = (note: string): Printed[] => readMessage(note, DAY).map((one) => printReading(one) as Printed);

const recorded = (readings: Printed[]): Printed[] =>
  readings.filter(({ kind, missing }) => kind !== "unclear" && missing === undefined);

const PIECES = ["desk", "dresser", "nightstand", "bookcase", "rocking chair", "hutch", "end table", "trunk"];
const SUPPLIES = ["paint", "sandpaper", "wax", "primer", "screws"];
const DAYS = ["", "yesterday", "on monday", "today"];
const METHODS = ["", "cash", "by check", "by card"];

/** One fact in several ways of saying it. `{p}` a piece, `{s}` a supply, `{n}` an amount, `{h}` hours. */
const WAYS: readonly (readonly string[])[] = [
  [
    "bought {p} {n}",
    "bought a {p} for {n}",
    "picked up {p} for {n}",
    "grabbed a {p} for {n}",
    "i bought the {p}, {n}",
  ],
  ["sold {p} {n}", "sold the {p} for {n}", "{p} sold {n}", "{p} sold for {n}", "just sold my {p} for {n}"],
  [
    "listed {p} {n}",
    "listed the {p} for {n}",
    "{p} listed at {n}",
    "posted the {p} at {n}",
    "put up the {p} for {n}",
  ],
  ["{s} {n} for {p}", "bought {s} for the {p} {n}", "{s} for {p} {n}", "spent {n} on {s} for the {p}"],
  ["sanded {p} {h}h", "{h} hours sanding the {p}", "sanded the {p} for {h} hours", "sanding {p} {h} hrs"],
  ["finished {p}", "the {p} is finished", "finished the {p}", "{p} done", "the {p} is done"],
  ["paid {n} on the loan", "paid loan {n}", "loan payment {n}", "sent {n} to the loan"],
];
const BEFORE = ["", "ok so ", "hey, ", "um ", "quick note: ", "finally "];
const AFTER = ["", " lol", "!", " :)", " yay", " thanks", "."];

interface Said {
  way: number;
  piece: string;
  supply: string;
  amount: number;
  hours: number;
  day: string;
  method: string;
}

const said: fc.Arbitrary<Said> = fc.record({
  way: fc.nat(WAYS.length - 1),
  piece: fc.constantFrom(...PIECES),
  supply: fc.constantFrom(...SUPPLIES),
  amount: fc.integer({ min: 13, max: 400 }),
  hours: fc.integer({ min: 2, max: 6 }),
  day: fc.constantFrom(...DAYS),
  method: fc.constantFrom(...METHODS),
});

function filled(pattern: string, { piece, supply, amount, hours }: Said): string {
  return pattern
    .replace("{p}", piece)
    .replace("{s}", supply)
    .replace("{n}", String(amount))
    .replace("{h}", String(hours));
}

/** Only money that changes hands has a way of paying. */
const PAID_WAYS = 2;

function wordsOf(one: Said, which: number, dayFirst: boolean): string {
  const ways = WAYS[one.way]!;
  const note = filled(ways[which % ways.length]!, one);
  const paid = one.way < PAID_WAYS && one.method ? `${note} ${one.method}` : note;
  if (!one.day) return paid;
  return dayFirst ? `${one.day}, ${paid}` : `${paid} ${one.day}`;
}

describe("a fact in other words", () => {
  it("is the same fact", () => {
    fc.assert(
      fc.property(
        said,
        fc.nat(9),
        fc.boolean(),
        fc.constantFrom(...BEFORE),
        fc.constantFrom(...AFTER),
        fc.constantFrom("as typed", "upper", "title"),
        (one, which, dayFirst, before, after, casing) => {
          const plain = read(wordsOf(one, 0, false));
          const other = `${before}${wordsOf(one, which, dayFirst)}${after}`;
          const cased =
            casing === "upper"
              ? other.toUpperCase()
              : casing === "title"
                ? other.replace(/^./, (c) => c.toUpperCase())
                : other;
          expect(recorded(plain)).toHaveLength(1);
          expect(read(cased), cased).toEqual(plain);
        },
      ),
      { numRuns: RUNS },
    );
  });
});

const CONSONANTS = [..."bdfgklmnprtvz"];
const VOWELS = [..."aeiou"];
/** A word of no list, and no slip of one either ("tolobox" is a toolbox): "zubofik". */
const strange = fc
  .array(fc.tuple(fc.constantFrom(...CONSONANTS), fc.constantFrom(...VOWELS)), { minLength: 3, maxLength: 4 })
  .map((syllables) => `${syllables.map((one) => one.join("")).join("")}x`)
  .filter((word) => language().lexer.speller.meant(word) === null);

/** What the books hold of a reading, without the free words in which a strange one is shown. */
function money(readings: Printed[]): unknown {
  return readings.map(({ kind, price, amount, minutes, date, pieces }) => ({
    kind,
    price,
    amount,
    minutes,
    date,
    pieces: (pieces as { name: string; count: number }[] | undefined)?.map(({ name, count }) => ({
      name,
      count,
    })),
  }));
}

describe("a word from no list", () => {
  it("is asked about, or shown as a name, and never changes what is recorded", () => {
    fc.assert(
      fc.property(said, fc.nat(9), strange, fc.nat(20), (one, which, word, place) => {
        const plain = wordsOf(one, which, false);
        // A name of two words is one thing: nothing stands within.
        const words = plain.split(one.piece).join(one.piece.replace(" ", "_")).split(" ");
        const at = place % (words.length + 1);
        const note = [...words.slice(0, at), word, ...words.slice(at)].join(" ").replace("_", " ");
        const got = recorded(read(note));
        if (got.length === 0) return;
        expect(JSON.stringify(got), note).toContain(word);
        expect(money(got), note).toEqual(money(read(plain)));
      }),
      { numRuns: RUNS },
    );
  });
});
