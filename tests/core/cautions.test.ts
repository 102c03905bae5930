import { describe, expect, it, test } from "vitest";
import { HAZARDS } from "../../core/cautions/hazards.ts";
import { plainWords } from "../../core/cautions/plain.ts";
import { cautionFor, type Memory, type Named, type Noted, notedOf } from "../../core/cautions.ts";
import { Ledger } from "../books/ledger.ts";

const chest = { number: 7, name: "dresser", traits: [], listPrice: null };

function noted(of: Partial<Noted>): Noted {
  return { text: "", root: 1, kinds: ["work"], pieces: [], ...of };
}

/** What is remembered, as plain records. */
function memoryOf(given: Named = {}, waiting: Named = {}): Memory {
  return { given: () => given, waiting: () => waiting };
}

function said(each: Noted, { day = "2026-03-02", given = {} as Named } = {}): string | undefined {
  return cautionFor({ noted: [each], day }, memoryOf(given)).caution?.hazard;
}

test("no pattern looks beyond a line: many lines are looked through at once first", () => {
  const patterns = HAZARDS.flatMap(({ when }) => when.flatMap(({ words, piece }) => [words, piece]));
  const far = patterns.filter((pattern) => pattern && /\\[sSWD]|\[\^|(?<!\\)[$^]|\\n/.test(pattern.source));
  expect(far).toEqual([]);
  expect(patterns.filter((pattern) => pattern && pattern.flags !== "")).toEqual([]);
});

describe("when a caution comes again", () => {
  it("never for a piece, once a year for what is no piece's", () => {
    const listing = noted({ text: "listed dresser 190", kinds: ["list"], pieces: [chest] });
    expect(said(listing)).toBe("tip-over");
    const both = { "tip-over#7": "2026-03-02", "recall#7": "2026-03-02" };
    expect(said(listing, { day: "2029-01-01", given: both })).toBe(undefined);
    const help = noted({ text: "paid cousin 30", kinds: ["spend"], spentOn: "help" });
    expect(said(help, { day: "2027-03-01", given: { helpers: "2026-03-02" } })).toBe(undefined);
    expect(said(help, { day: "2027-03-02", given: { helpers: "2026-03-02" } })).toBe("helpers");
  });

  it("waits for a later note of the piece where a worse one was said first", () => {
    const listing = noted({ text: "listed dresser 190", kinds: ["list"], pieces: [chest] });
    const { given, waiting } = cautionFor({ noted: [listing], day: "2026-03-02" }, memoryOf());
    expect(given).toEqual({ "tip-over#7": "2026-03-02" });
    expect(waiting).toEqual({ "recall#7": "2026-03-02" });
    const later = noted({ text: "drove 4 miles for dresser", kinds: ["drive"], pieces: [chest] });
    const next = cautionFor({ noted: [later], day: "2026-03-05" }, memoryOf(given, waiting));
    expect(next.caution?.hazard).toBe("recall");
    expect(next.given).toEqual({ "tip-over#7": "2026-03-02", "recall#7": "2026-03-05" });
    expect(next.waiting).toEqual({});
  });

  it("does not wait for the piece's sale", () => {
    const sold = noted({ text: "sold dresser 180", kinds: ["sell"], pieces: [chest] });
    const memory = memoryOf({ "tip-over#7": "2026-03-02" }, { "recall#7": "2026-03-02" });
    expect(cautionFor({ noted: [sold], day: "2026-03-05" }, memory).caution).toBeNull();
  });

  it("asks for what was said only where something is called for", () => {
    const memory: Memory = {
      given: () => {
        throw new Error("asked");
      },
      waiting: () => ({ "recall#9": "2026-03-01" }),
    };
    const plain = noted({ text: "bought desk 30", kinds: ["buy"], pieces: [{ ...chest, name: "desk" }] });
    expect(cautionFor({ noted: [plain], day: "2026-03-02" }, memory)).toEqual({ caution: null });
  });

  it("was said for the message when its piece was not known: not said again for that piece", () => {
    const asked = noted({ text: "bought crib", kinds: ["buy"], asTyped: true, root: 12 });
    const first = cautionFor({ noted: [asked], day: "2026-03-02" }, memoryOf());
    expect(first.caution?.hazard).toBe("crib");
    const crib = { ...chest, name: "crib" };
    const bought = noted({ text: "bought crib", kinds: ["buy"], pieces: [crib], root: 12 });
    const then = cautionFor({ noted: [bought], day: "2026-03-03" }, memoryOf(first.given));
    expect(then.caution).toBeNull();
    expect(then.given).toHaveProperty("crib#7");
    // Another crib of another message is told.
    const other = noted({ ...bought, pieces: [{ ...crib, number: 8 }], root: 20 });
    expect(said(other, { day: "2026-03-03", given: then.given! })).toBe("crib");
  });
});

describe("a deposit kept beyond the default sales law", () => {
  const keep = (listed: number, deposit: number) => {
    const ledger = new Ledger();
    const pieces = ledger.buy("2026-03-01", ["desk"], 0);
    ledger.add("list", "2026-03-01", { pieces, amount: listed, data: {} });
    ledger.add("hold", "2026-03-02", { pieces, amount: deposit, data: {} });
    const fact = ledger.add("fallthrough", "2026-03-03", { pieces, amount: deposit, data: { kept: true } });
    const books = ledger.books();
    return cautionFor(
      { noted: [notedOf(fact, { text: "no show, kept it", books })], day: "2026-03-03" },
      memoryOf(),
    );
  };
  it.each([
    [18_000, 4_000, "at most 36.00"],
    [1_000_000, 60_000, "at most 500.00"],
  ])("listed %i, kept %i: %s", (listed, deposit, words) => {
    expect(keep(listed, deposit).caution?.line).toContain(words);
  });
  it("is no matter up to a fifth", () => expect(keep(30_000, 5_000).caution).toBeNull());
});

test.each([
  ["Drop-side CRIB’s", "drop side cribs"],
  ["methylen chloride", "methylene chloride"],
  ["turpentien, acetone", "turpentine acetone"],
  ["the matress", "the mattress"],
  ["standing on landing", "standing on landing"],
])("%s is looked at as %s", (typed, plain) => expect(plainWords(typed)).toBe(plain));

test("no hazard hangs on a long note", () => {
  const long = "sanding old paint ".repeat(2000);
  const start = process.cpuUsage().user;
  for (const { when } of HAZARDS)
    for (const { words, piece } of when) {
      words?.test(long);
      piece?.test(long);
    }
  expect((process.cpuUsage().user - start) / 1e6).toBeLessThan(5);
});
