import { describe, expect, it } from "vitest";
import { type Caution, cautionsFor, type Given, type Noted, notedOf } from "../../core/cautions.ts";
import { Ledger } from "../books/ledger.ts";

type Piece = Noted["pieces"][number];

function named(name: string, number = 1, traits: string[] = []): Piece {
  return { number, name, traits, listPrice: null };
}

function caution(noted: Partial<Noted>): Caution | undefined {
  return cautionsFor({ kind: "work", text: "", day: "2026-03-02", pieces: [], given: [], ...noted })[0];
}

function givenOf({ group, piece }: Caution, day: string): Given {
  return { group, piece, day };
}

describe("cautions", () => {
  it.each([
    ["crib", { kind: "buy", text: "bought crib 20", pieces: [named("crib")] }],
    ["crib", { kind: "buy", text: "bought drop side bed 20", pieces: [named("bed")] }],
    ["recall of children's piece", { kind: "list", text: "listed crib 60", pieces: [named("crib")] }],
    ["recall of children's piece", { kind: "list", text: "listed toy box 40", pieces: [named("toy box")] }],
    ["recall", { kind: "list", text: "listed dresser 190", pieces: [named("dresser")] }],
    ["children's piece", { kind: "buy", text: "bought high chair 5", pieces: [named("high chair")] }],
    ["old paint", { text: "2h sanding chippy paint off hutch", pieces: [named("hutch")] }],
    ["old paint", { kind: "start", text: "stripping the original paint", pieces: [named("door")] }],
    ["latch", { kind: "buy", text: "bought cedar chest 40", pieces: [named("cedar chest")] }],
    ["methylene chloride", { kind: "spend", text: "methylene chloride stripper 18" }],
    ["stripper", { kind: "spend", text: "stripper 14" }],
    ["oily rags", { kind: "spend", text: "danish oil 12 for desk", pieces: [named("desk")] }],
    ["tip-over", { kind: "sell", text: "sold tall dresser 190", pieces: [named("dresser", 1, ["tall"])] }],
    ["redone upholstery", { kind: "spend", text: "new fabric 30 for chair", pieces: [named("chair")] }],
    ["mattress", { kind: "buy", text: "bought mattress 10", pieces: [named("mattress")] }],
    ["used upholstery", { kind: "buy", text: "free sofa off the curb", pieces: [named("sofa")] }],
    ["overpayment", { kind: "hold", text: "hold desk, cashier's check coming", pieces: [named("desk")] }],
    ["meeting buyers", { kind: "hold", text: "hold desk, pickup tonight", pieces: [named("desk")] }],
  ] as const)("%s", (group, noted) => {
    const given = caution(noted as unknown as Partial<Noted>);
    expect(given?.group).toBe(group);
    // Two to three lines of a phone.
    expect(given!.line.length).toBeLessThanOrEqual(96);
    expect(given!.line).not.toContain("\n");
  });

  it.each([
    { kind: "buy", text: "bought dresser 30", pieces: [named("dresser")] },
    { kind: "sell", text: "sold nightstand 60 cash", pieces: [named("nightstand")] },
    { kind: "buy", text: "picked up 2 chairs 22 yard sale", pieces: [named("chair"), named("chair", 2)] },
    { kind: "spend", text: "paint 12.50 for dresser", pieces: [named("dresser")] },
    { kind: "sell", text: "sold desk 165 check", pieces: [named("desk")] },
    { kind: "buy", text: "bought gateleg table 30", pieces: [named("gateleg table")] },
    { kind: "finish", text: "finished desk", pieces: [named("desk")] },
    { kind: "list", text: "listed bookcase 80", pieces: [named("bookcase")] },
  ] as const)("nothing for %o", (noted) => {
    expect(caution(noted as unknown as Partial<Noted>)).toBeUndefined();
  });

  it("comes once a piece for cribs, children's pieces and old paint", () => {
    const crib = { kind: "buy", text: "bought crib 20", pieces: [named("crib", 7)] } as const;
    const first = caution(crib)!;
    expect(first.piece).toBe(7);
    const given = [givenOf(first, "2026-03-02")];
    expect(caution({ ...crib, day: "2027-03-02", given })).toBeUndefined();
    expect(caution({ ...crib, pieces: [named("crib", 8)], given })?.piece).toBe(8);
  });

  it("comes at most once a quarter for the others", () => {
    const oil = { kind: "spend", text: "linseed oil 9" } as const;
    const given = [givenOf(caution(oil)!, "2026-03-02")];
    expect(caution({ ...oil, day: "2026-03-03", given })).toBeUndefined();
    expect(caution({ ...oil, day: "2026-06-01", given })).toBeUndefined();
    expect(caution({ ...oil, day: "2026-06-02", given })?.group).toBe("oily rags");
  });

  it("gives one line, and the next in weight once the first was given", () => {
    const dresser = { kind: "list", text: "listed dresser 190", pieces: [named("dresser")] } as const;
    const given = [givenOf(caution(dresser)!, "2026-03-02")];
    expect(caution({ ...dresser, given })?.group).toBe("tip-over");
  });

  it("asks for the recall list at each crib's own listing", () => {
    const crib = { kind: "list", text: "listed crib 60", pieces: [named("crib", 7)] } as const;
    const given = [givenOf(caution(crib)!, "2026-03-02")];
    expect(caution({ ...crib, given })).toBeUndefined();
    expect(caution({ ...crib, pieces: [named("crib", 9)], given })?.group).toBe("recall of children's piece");
  });

  it("speaks of a deposit kept beyond the default sales law, from the books", () => {
    const keep = (listed: number, deposit: number): Caution[] => {
      const ledger = new Ledger();
      const pieces = ledger.buy("2026-03-01", ["desk"], 0);
      ledger.add("list", "2026-03-01", { pieces, amount: listed, data: {} });
      ledger.add("hold", "2026-03-02", { pieces, amount: deposit, data: {} });
      const fact = ledger.add("fallthrough", "2026-03-03", { pieces, amount: deposit, data: { kept: true } });
      return cautionsFor(
        notedOf(fact, { text: "no show on desk kept it", books: ledger.books(), given: [] }),
      );
    };
    expect(keep(18_000, 4_000)[0]?.line).toContain("at most 36.00");
    expect(keep(30_000, 5_000)).toEqual([]);
    expect(keep(1_000_000, 60_000)[0]?.line).toContain("at most 500.00");
  });
});
