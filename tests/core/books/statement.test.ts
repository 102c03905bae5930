import { describe, expect, it } from "vitest";
import { factsThrough, foldFacts } from "../../../core/books/fold.ts";
import { statementOf } from "../../../core/books/statement.ts";
import { Ledger } from "../../books/ledger.ts";

describe("the statement", () => {
  it("prints the documented example, key for key", () => {
    const ledger = new Ledger();
    ledger.add("loan", "2026-05-31", { amount: 1_425_000, data: { loan: "loan", rate: "5.50" } });
    const folded = foldFacts([
      {
        ...ledger.facts[0]!,
        id: 9,
      },
      {
        kind: "buy",
        id: 1,
        place: 1,
        author: 1,
        note: 1,
        root: 1,
        day: "2026-05-03",
        pieces: [9],
        amount: 1_200,
        data: { made: [{ name: "nightstand", traits: [] }] },
      },
      { ...blank(2, "2026-05-05"), kind: "work", data: { minutes: 150 } },
      { ...blank(3, "2026-05-07"), kind: "finish", data: {} },
      { ...blank(4, "2026-05-08"), kind: "list", amount: 5_500, data: {} },
      { ...blank(5, "2026-05-10"), kind: "sell", amount: 5_500, data: {} },
    ]);
    if (folded.kind === "impossible") throw new Error(folded.problem.kind);
    const statement = statementOf(folded.books, { through: "2026-05-31", currency: "USD" });
    expect(JSON.stringify(statement)).toBe(
      [
        '{"currency":"USD","through":"2026-05-31",',
        '"pieces":[{"number":9,"name":"nightstand","traits":[],"status":"sold","lot":null,"bought":"2026-05-03",',
        '"started":null,"finished":"2026-05-07","listed":"2026-05-08","listPrice":"55.00","sold":"2026-05-10",',
        '"price":"12.00","materials":"0.00","fees":"0.00","deposit":"0.00","depositsKept":"0.00",',
        '"proceeds":"55.00","profit":"43.00","minutes":150,"miles":"0","owed":"0.00"}],',
        '"months":[{"month":"2026-05","flipped":1,"proceeds":"55.00","costOfSold":"12.00","fees":"0.00",',
        '"overhead":"0.00","writtenOff":"0.00","flipProfit":"43.00","otherIncome":"0.00","taxSetAside":"0.00",',
        '"forLoan":"43.00","paidToLoan":"0.00","cashIn":"55.00","cashOut":"12.00"}],',
        '"loans":[{"name":"loan","rate":"5.5","principal":"14250.00","accruedInterest":"0.00",',
        '"balance":"14250.00","paid":"0.00","interestPaid":"0.00"}],',
        '"earmarked":"43.00","depositsHeld":"0.00","buyersOwe":"0.00","unsoldCost":"0.00"}',
      ].join(""),
    );
  });

  it("has a row for every month from the first fact to the day, none before any fact", () => {
    const ledger = new Ledger();
    expect(ledger.statement("2026-05-31")).toMatchObject({
      pieces: [],
      months: [],
      loans: [],
      earmarked: "0.00",
    });
    ledger.add("goal", "2025-11-30", { amount: 80_000, data: { per: "month" } });
    ledger.buy("2026-02-01", ["desk"], 100);
    const months = ledger.statement("2026-03-01").months.map((row) => row.month);
    expect(months).toEqual(["2025-11", "2025-12", "2026-01", "2026-02", "2026-03"]);
  });

  it("on an earlier day knows only the facts through it", () => {
    const ledger = new Ledger();
    const [desk] = ledger.buy("2026-05-03", ["desk"], 1_200);
    ledger.add("sell", "2026-05-10", { pieces: [desk!], amount: 5_000, data: {} });
    const folded = foldFacts(factsThrough(ledger.facts, "2026-05-09"));
    if (folded.kind === "impossible") throw new Error(folded.problem.kind);
    const statement = statementOf(folded.books, { through: "2026-05-09", currency: "EUR" });
    expect(statement.pieces[0]).toMatchObject({ status: "bought", sold: null, profit: null });
    expect(statement).toMatchObject({ currency: "EUR", unsoldCost: "12.00", earmarked: "0.00" });
    expect(factsThrough(ledger.facts, "2026-05-10")).toHaveLength(2);
  });

  it("has its pieces by number, whenever they were bought", () => {
    const ledger = new Ledger();
    for (const day of ["2026-05-09", "2026-05-02", "2026-05-11", "2026-05-01"])
      ledger.buy(day, ["desk"], 100);
    const { pieces } = ledger.statement("2026-05-31");
    expect(pieces.map(({ number, bought }) => [number, bought])).toEqual([
      [1, "2026-05-09"],
      [2, "2026-05-02"],
      [3, "2026-05-11"],
      [4, "2026-05-01"],
    ]);
  });

  it("leaves an undone buy out and never shows its number again", () => {
    const ledger = new Ledger();
    ledger.buy("2026-05-03", ["desk"], 1_200);
    ledger.buy("2026-05-04", ["hutch"], 800);
    const folded = foldFacts(ledger.facts.slice(1));
    if (folded.kind === "impossible") throw new Error(folded.problem.kind);
    const { pieces } = statementOf(folded.books, { through: "2026-05-09", currency: "USD" });
    expect(pieces.map((piece) => piece.number)).toEqual([2]);
  });
});

function blank(id: number, day: string) {
  return { id, place: id, author: 1, note: id, root: id, day, pieces: [9] };
}
