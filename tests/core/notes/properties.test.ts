import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import { amountText } from "../../../core/money.ts";
import { printReading, readMessage } from "../../../core/notes/read.ts";
import { verbs } from "../../../core/verbs/list.ts";
import { casesOf } from "../../corpus/cases.ts";
import { runsOf } from "../../runs.ts";
import { printedReading } from "./shape.ts";

fc.configureGlobal({ seed: 20_260_512, numRuns: runsOf({ short: 100, long: 5000 }) });
afterAll(() => fc.resetConfigureGlobal());
const TODAY = "2026-05-12";
const read = (text: string): object[] => readMessage(text, TODAY).map(printReading);

/** Words that notes are made of, for text that comes close to meaning something. */
const noteWords = [...casesOf("sample.jsonl"), ...casesOf("own.jsonl")].flatMap(({ line }) =>
  line.split(/\s+/),
);
const nearNote = fc
  .array(
    fc.oneof(
      fc.constantFrom(...noteWords),
      fc.constantFrom(",", ".", "and", "-", "$", "#", "?", "\n"),
      fc.nat(5000).map(String),
    ),
    {
      maxLength: 24,
    },
  )
  .map((words) => words.join(" "));

/** Lines beside one from elsewhere in the list, of all its parts; in a long run each line. */
const own = casesOf("own.jsonl").map(({ line }) => line);
const step = Math.ceil(own.length / runsOf({ short: 40, long: own.length }));
const pairs = own.flatMap((line, at) => (at % step === 0 ? [[line, own[(at * 7 + 13) % own.length]!]] : []));

it.each([", ", " and ", "\n"])(
  "two notes of the corpus with %j between are read, whichever they are",
  (joint) => {
    for (const pair of pairs) expect(() => read(pair.join(joint)), pair.join(joint)).not.toThrow();
  },
);

it("each word that notes are made of is read by itself, behind the number of a list too", () => {
  const words = [...new Set(noteWords)];
  const every = Math.ceil(words.length / runsOf({ short: 150, long: words.length }));
  for (const word of words.filter((_, at) => at % every === 0))
    for (const line of [word, `2. ${word} (so)`]) expect(() => read(line), line).not.toThrow();
});

describe("any text", () => {
  it.each([
    ["of any characters", fc.string({ unit: "binary", maxLength: 300 })],
    ["of letters, digits and marks", fc.string({ maxLength: 300 })],
    ["close to a note", nearNote],
  ])("%s gives readings of the documented shape, and never throws", (_name, text) => {
    fc.assert(
      fc.property(text, (typed) => {
        for (const reading of read(typed)) {
          const parsed = printedReading.safeParse(reading);
          if (!parsed.success) throw new Error(`${JSON.stringify(reading)}: ${parsed.error.message}`);
        }
      }),
    );
  });

  it("gives nothing only for blank text, and each reading its own words of the line", () => {
    fc.assert(
      fc.property(nearNote, (typed) => {
        const lines = typed.split("\n");
        for (const reading of readMessage(typed, TODAY)) expect(lines[reading.line]).toContain(reading.text);
        expect(readMessage(typed, TODAY).length === 0).toBe(typed.trim() === "");
      }),
    );
  });

  it("means the same in capitals, with emoji, and with blanks around", () => {
    const sample = casesOf("sample.jsonl").filter(({ readings }) => readings);
    fc.assert(
      fc.property(fc.constantFrom(...sample), fc.constantFrom(" ", "  🎉", " 😅🙏"), ({ line, on }, tail) => {
        const plain = readMessage(line, on).map(printReading);
        expect(readMessage(`  ${line}${tail}`, on).map(printReading)).toEqual(plain);
      }),
    );
  });
});

const cents = fc.integer({ min: 1, max: 99_999_999 });
const name = fc.constantFrom(
  "dresser",
  "desk",
  "end table",
  "rocking chair",
  "armoire",
  "lamp",
  "bookcase",
  "nightstand",
);
const trait = fc.option(fc.constantFrom("white", "tall", "oak", "small", "blue"), { nil: undefined });
const method = fc.option(fc.constantFrom("cash", "card", "check", "transfer"), { nil: undefined });
const when = fc.constantFrom(
  ["", undefined],
  ["yesterday", "2026-05-11"],
  ["sat", "2026-05-09"],
  ["3/14", "2026-03-14"],
  ["on the 3rd", "2026-05-03"],
);

function sayCents(amount: number, how: number): string {
  const text = amountText(amount);
  const short = text.replace(/\.00$/, "");
  const grouped = text.replace(/\B(?=(\d{3})+(?=\.))/g, ",");
  return [text, `$${text}`, short, `${short} bucks`, grouped][how % 5]!;
}

/** Non-empty parts in the order of a permutation: free word order. */
function said(verb: string, parts: readonly string[], order: number): string {
  const rest = parts.filter((part) => part !== "");
  const turned = rest.map((_, index) => rest[(index + order) % rest.length]!);
  return [verb, ...turned].join(" ");
}

describe("a fact in any phrasing reads back as itself", () => {
  it.each([
    ["buy", ["bought", "picked up", "grabbed", "i just bought", "ok so i bought"]],
    ["sell", ["sold", "just sold", "finally sold", "sld", "SOLD"]],
  ] as const)("%s", (kind, heads) => {
    const fact = fc.record({
      name,
      trait,
      amount: cents,
      method,
      when,
      head: fc.constantFrom(...heads),
      how: fc.nat(4),
      order: fc.nat(5),
    });
    fc.assert(
      fc.property(fact, ({ name, trait, amount, method, when, head, how, order }) => {
        const piece = [trait ?? "", name].filter(Boolean).join(" ");
        const note = said(
          head,
          [`the ${piece}`, `for ${sayCents(amount, how)}`, method ?? "", when[0]!],
          order,
        );
        expect(read(note), note).toEqual([
          expect.objectContaining({
            kind,
            pieces: [{ name, count: 1, ...(trait ? { traits: [trait] } : {}) }],
            price: amountText(amount),
            ...(method ? { method } : {}),
            ...(when[1] ? { date: when[1] } : {}),
          }),
        ]);
      }),
    );
  });

  it("counts times each", () => {
    fc.assert(
      fc.property(
        name,
        fc.integer({ min: 2, max: 40 }),
        fc.integer({ min: 1, max: 2_000_000 }),
        fc.constantFrom("each", "ea", "apiece"),
        (noun, count, amount, each) => {
          const plural = noun.endsWith("shelf") ? `${noun.slice(0, -1)}ves` : `${noun}s`;
          expect(read(`sold ${count} ${plural} ${amountText(amount)} ${each}`)).toEqual([
            { kind: "sell", pieces: [{ name: noun, count }], price: amountText(amount * count) },
          ]);
        },
      ),
    );
  });

  it("hours, miles and loans", () => {
    fc.assert(
      fc.property(
        name,
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 0, max: 59 }),
        (noun, hours, minutes) => {
          const total = hours * 60 + minutes;
          const forms = [
            `${hours}h${String(minutes).padStart(2, "0")}`,
            `${hours} hours and ${minutes} min`,
            `${total} min`,
          ];
          for (const form of minutes > 0 ? forms : [`${hours}h`, `${hours} hrs`])
            expect(read(`worked on the ${noun} ${form}`)).toEqual([
              { kind: "work", minutes: total, pieces: [{ name: noun, count: 1 }] },
            ]);
          expect(read(`drove ${total} miles for ${noun}`)).toEqual([
            { kind: "drive", miles: String(total), pieces: [{ name: noun, count: 1 }] },
          ]);
          expect(read(`paid loan ${total}`)).toEqual([{ kind: "pay", amount: `${total}.00` }]);
        },
      ),
      { numRuns: runsOf({ short: 75, long: 1500 }) },
    );
  });

  it("two amounts for one piece are never guessed at", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("bought", "sold", "listed"),
        name,
        fc.integer({ min: 13, max: 999 }),
        fc.integer({ min: 13, max: 999 }),
        (head, noun, a, b) => {
          expect(readMessage(`${head} ${noun} ${a} ${b}`, TODAY).map(({ kind }) => kind)).toEqual([
            "unclear",
          ]);
        },
      ),
    );
  });

  it("every verb's own example with a hedge before it records nothing", () => {
    const facts = verbs.filter(
      ({ kind }) =>
        !["ask", "undo", "fix", "goal", "taxrate", "nudge", "statement", "terms", "loan"].includes(kind),
    );
    for (const { example } of facts)
      for (const hedge of ["thinking about", "might have", "maybe", "i want to say"])
        expect(readMessage(`${hedge} ${example}`, TODAY)[0]!.kind, `${hedge} ${example}`).toBe("unclear");
  });
});
