import fc from "fast-check";
import { expect, test } from "vitest";
import { foldFacts } from "../../core/books/fold.ts";
import { earmarked } from "../../core/books/month.ts";
import {
  asksWhetherSent,
  dryRunText,
  type HistoryPlan,
  historyFacts,
  planHistory,
  sentFact,
} from "../../core/history.ts";
import { Ledger } from "../books/ledger.ts";

const TODAY = "2026-05-09";
const HEADING = "name,bought on,price,materials,sold on,sold for";

function plan(...rows: string[]) {
  return planHistory([HEADING, ...rows].join("\n"), { today: TODAY });
}

function whyOf(row: string): string | undefined {
  return plan(row).problems[0]?.why;
}

/** All facts of a file, where its profit is all that comes to the loan. */
function factsOf(made: HistoryPlan, how: { declaredSent: boolean; nextPiece: number }) {
  const sent = sentFact(made, { ...how, added: Math.max(0, made.profit) });
  return [...historyFacts(made, how.nextPiece), ...(sent ? [sent] : [])];
}

function booksOf(facts: ReturnType<typeof historyFacts>) {
  const numbered = facts.map((fact, index) => {
    const id = index + 1;
    return { ...fact, id, place: id, author: 1, note: 1, root: 1 };
  });
  const folded = foldFacts(numbered);
  if (folded.kind === "impossible") throw new Error(JSON.stringify(folded));
  return folded.books;
}

test("a good file: totals, facts on their own days, and books that say the same", () => {
  const good = plan(
    'oak dresser,2025-03-01,30,12.50,2025-04-10,"1,190.00"',
    "desk,3/5/2025,$20,,4/2/25,15",
    "bench,2025-05-01,0,,,",
  );
  expect(good.problems).toEqual([]);
  expect(good).toMatchObject({ pieces: 3, soldPieces: 2, from: "2025-03-01", to: "2025-05-01" });
  expect(good).toMatchObject({ spent: 6250, proceeds: 120500, profit: 114250, lastSale: "2025-04-10" });
  const facts = factsOf(good, { declaredSent: true, nextPiece: 7 });
  expect(facts.map(({ kind, day, pieces, amount }) => ({ kind, day, pieces, amount }))).toEqual([
    { kind: "buy", day: "2025-03-01", pieces: [7], amount: 3000 },
    { kind: "spend", day: "2025-03-01", pieces: [7], amount: 1250 },
    { kind: "sell", day: "2025-04-10", pieces: [7], amount: 119000 },
    { kind: "buy", day: "2025-03-05", pieces: [8], amount: 2000 },
    { kind: "sell", day: "2025-04-02", pieces: [8], amount: 1500 },
    { kind: "buy", day: "2025-05-01", pieces: [9], amount: 0 },
    { kind: "sent", day: "2025-04-10", pieces: [], amount: 114250 },
  ]);
  expect(earmarked(booksOf(facts), TODAY)).toBe(0);
});

test("not declared as sent, the profit is due to the loan", () => {
  const good = plan("desk,2025-03-05,20,5,2025-04-02,90");
  expect(earmarked(booksOf(factsOf(good, { declaredSent: false, nextPiece: 1 })), TODAY)).toBe(6500);
});

test.each([
  [",2025-03-01,30,,,", "the name is empty"],
  ["desk,,30,,,", '"bought on" is empty'],
  ["desk,2025-02-30,30,,,", '"bought on" "2025-02-30" does not exist: US days are month/day/year'],
  ["desk,13/2/2025,30,,,", '"bought on" "13/2/2025" does not exist: US days are month/day/year'],
  ["desk,march,30,,,", '"bought on" "march" is no day: write 2026-03-14 or 3/14/2026'],
  ["desk,2026-05-10,30,,,", '"bought on" "2026-05-10" is still to come'],
  ["desk,2025-03-01,,,,", '"price" is empty'],
  ["desk,2025-03-01,-5,,,", '"price" "-5" is below zero'],
  ["desk,2025-03-01,(5),,,", '"price" "(5)" is below zero'],
  ["desk,2025-03-01,1.999,,,", '"price" "1.999" is no amount: write 1250 or 12.50'],
  ["desk,2025-03-01,1e3,,,", '"price" "1e3" is no amount: write 1250 or 12.50'],
  ["desk,2025-03-01,1000000.01,,,", '"price" "1000000.01" is over 1,000,000'],
  ["desk,2025-03-01,30,x,,", '"materials" "x" is no amount: write 1250 or 12.50'],
  ["desk,2025-03-01,30,,2025-04-01,", '"sold on" is filled but "sold for" is empty'],
  ["desk,2025-03-01,30,,,90", '"sold for" is filled but "sold on" is empty'],
  ["desk,2025-03-01,30,,2025-02-01,90", "sold before it was bought"],
  ["desk,2025-03-01,1,250,2025-04-01,90,1", "more cells than the heading has"],
])("a wrong row says why: %s", (row, why) => {
  expect(whyOf(row)).toBe(why);
});

test("one wrong row and nothing can be recorded", () => {
  const mixed = plan("desk,2025-03-01,30,,,", "bench,soon,30,,,");
  expect(mixed.problems).toEqual([
    { row: 3, why: '"bought on" "soon" is no day: write 2026-03-14 or 3/14/2026' },
  ]);
  expect(() => factsOf(mixed, { declaredSent: true, nextPiece: 1 })).toThrow();
  expect(asksWhetherSent(mixed)).toBe(false);
  expect(dryRunText(mixed, TODAY)).toMatch(/^Nothing is recorded yet\.\nOne thing is wrong:\nRow 3: /);
});

test("columns may be named otherwise, stand in any order, and be parted by semicolons or tabs", () => {
  const semicolons = planHistory("Sale price;Sold;ITEM;Purchase date;Cost\n95,50;;lamp;2025-01-05;1,250", {
    today: TODAY,
  });
  expect(semicolons.problems[0]?.why).toBe('"sold for" is filled but "sold on" is empty');
  const tabs = planHistory(
    "\u{FEFF}Sold\tSold for\tItem\tBought\tPaid\tPhoto\r\n3/1/25\t95.5\tLamp\t1/5/25\t1,250\tx",
    {
      today: TODAY,
    },
  );
  expect(tabs.problems).toEqual([]);
  expect(tabs.ignored).toEqual(["Photo"]);
  expect(tabs.rows).toEqual([
    {
      row: 2,
      name: "lamp",
      traits: [],
      count: 1,
      set: false,
      bought: "2025-01-05",
      price: 125000,
      materials: 0,
      sold: { day: "2025-03-01", price: 9550 },
    },
  ]);
});

test('a heading "bought" or "sold" means what stands under it', () => {
  const days = planHistory("piece,bought,price,sold,sold for\ndesk,2025-01-05,20,2025-02-01,60", {
    today: TODAY,
  });
  expect(days.rows[0]).toMatchObject({ bought: "2025-01-05", sold: { day: "2025-02-01", price: 6000 } });
  const amounts = planHistory("piece,bought on,bought,sold on,sold\ndesk,2025-01-05,20,2025-02-01,60", {
    today: TODAY,
  });
  expect(amounts.rows[0]).toMatchObject({ price: 2000, sold: { day: "2025-02-01", price: 6000 } });
});

test.each([
  ["", "The file is empty."],
  [HEADING, "There are no rows under the heading."],
  ["piece,price\ndesk,20", /^No column "bought on"\. The first row names/],
  ['name,bought on,price\n"desk,2025-01-05,20\nlamp,2025-01-05,20', /quotation mark/],
  [`${HEADING}\n${"desk,2025-01-05,1,,,\n".repeat(5001)}`, /More than 5000 rows/],
])("a file that is no such list says why", (csv, why) => {
  const { problems, rows } = planHistory(csv, { today: TODAY });
  expect(problems).toHaveLength(1);
  expect(rows).toEqual([]);
  expect(problems[0]?.why).toMatch(why);
});

test("rows alike, and rows like a piece on the books, are pointed out but not refused", () => {
  const ledger = new Ledger();
  const [desk] = ledger.buy("2025-01-05", ["desk"], 2000);
  ledger.add("sell", "2025-02-01", { pieces: [desk!], amount: 6000, data: {} });
  const rows = ["desk,2025-01-05,20,,2025-02-01,60", "lamp,2025-01-05,5,,,", "lamp,2025-01-05,5,,,"];
  const twice = planHistory([HEADING, ...rows].join("\n"), {
    today: TODAY,
    pieces: ledger.books().pieces.values(),
  });
  expect(twice.problems).toEqual([]);
  expect(twice.cautions).toEqual([
    { row: 2, why: "looks like #1 on the books" },
    { row: 4, why: "is the same as row 3" },
  ]);
});

test("a name that says a count or a set makes as many pieces for the one price", () => {
  const mention = { name: "chair", count: 4, traits: ["oak"], set: true as const };
  const chairs = planHistory(`${HEADING}\nset of 4 oak chairs,2025-01-05,40,,2025-02-01,160`, {
    today: TODAY,
    mentionOf: () => mention,
  });
  expect(chairs.pieces).toBe(4);
  const books = booksOf(factsOf(chairs, { declaredSent: false, nextPiece: 1 }));
  expect([...books.pieces.values()].map(({ price, sales, set }) => ({ price, sales, set }))).toEqual(
    Array.from({ length: 4 }, () => ({ price: 1000, sales: 4000, set: true })),
  );
});

test("the dry run fits a phone and asks where the profit went", () => {
  const text = dryRunText(plan("desk,2025-03-05,20,5,2025-04-02,90", "lamp,2025-03-05,4,,,"), TODAY);
  expect(text).toBe(
    [
      "This would record 2 pieces",
      "1 sold, 1 unsold",
      "From Wed Mar 5, 2025 to Wed Apr 2, 2025",
      "Spent 29.00, sold for 90.00",
      "Profit of the sold ones 65.00",
      "",
      "Has this profit (65.00) already gone to the loan?",
    ].join("\n"),
  );
});

test("a loss cannot have gone to the loan: that is not asked, and no entry is made", () => {
  const loss = plan("desk,2025-03-05,90,,2025-04-02,20");
  expect(dryRunText(loss, TODAY)).toMatch(/Record it\?$/);
  const facts = factsOf(loss, { declaredSent: true, nextPiece: 1 });
  expect(facts.map(({ kind }) => kind)).toEqual(["buy", "sell"]);
});

test("thirty wrong rows are told in ten lines and a count", () => {
  const text = dryRunText(plan(...Array.from({ length: 30 }, () => "desk,soon,1,,,")), TODAY);
  expect(text).toContain("30 things are wrong:");
  expect(text.match(/^Row /gm)).toHaveLength(10);
  expect(text).toContain("and 20 more");
});

test("any text gives a plan, never a throw", () => {
  const line = fc.array(
    fc.oneof(fc.string(), fc.constantFrom("2025-01-05", "12.50", '"', "\n", "constructor")),
  );
  fc.assert(
    fc.property(fc.array(line), fc.constantFrom(",", ";", "\t"), fc.boolean(), (rows, delimiter, headed) => {
      const body = rows.map((cells) => cells.join(delimiter)).join("\n");
      const made = planHistory(headed ? `${HEADING}\n${body}` : body, { today: TODAY });
      dryRunText(made, TODAY);
      if (made.problems.length === 0) booksOf(factsOf(made, { declaredSent: true, nextPiece: 1 }));
    }),
  );
});
