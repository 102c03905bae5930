import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { buy, clearLedgers, record, sell } from "../../db/ledgers.ts";
import { local, Simulation, ZONE } from "./simulation.ts";

let simulation: Simulation;

/** A stool bought on May 3 and sold on May 10. */
beforeEach(() => {
  simulation = new Simulation(ZONE, local("2026-05-20T12:00"));
  const { ledger } = simulation;
  record(ledger, buy(ledger, 1000, "2026-05-03", "stool"), sell(1, 2500, "2026-05-10"));
});

afterEach(() => {
  simulation.stop();
  clearLedgers();
});

const texts = () =>
  simulation.queued().flatMap(({ body }) => (body.kind === "text" ? [body.reply.text] : []));

/** A lamp sold in a month for 40, noted late. */
function sellLate(day: string): void {
  const { ledger } = simulation;
  const piece = ledger.nextPiece;
  record(ledger, buy(ledger, 500, day, "lamp"), sell(piece, 4000, day));
}

describe("a month that was told", () => {
  beforeEach(() => {
    simulation.start();
    simulation.at(local("2026-06-01T09:00"));
  });

  test("is told again in one line when later notes change it, its picture by button", () => {
    sellLate("2026-05-31");
    simulation.at(local("2026-06-01T09:30"));
    simulation.at(local("2026-06-01T10:00"));
    expect(texts().filter((text) => text.startsWith("May is now"))).toEqual([
      "May is now +50.00 (was +15.00), 2 pieces flipped",
    ]);
    const [again] = simulation.queued().filter(({ key }) => key === null);
    if (again?.body.kind !== "text") throw new Error("nothing told again");
    expect(again.body.reply.buttons).toEqual([[{ label: "Recap and picture", press: "r:2026-05" }]]);
  });

  test("once for all that comes together, when it has been quiet", () => {
    sellLate("2026-05-30");
    const { sqlite } = simulation.ledger.connection;
    sqlite.prepare("update notes set handled = ?").run(local("2026-06-01T09:05"));
    simulation.at(local("2026-06-01T09:06"));
    expect(texts().filter((text) => text.startsWith("May is now"))).toEqual([]);
    sellLate("2026-05-31");
    simulation.at(local("2026-06-01T09:20"));
    expect(texts().filter((text) => text.startsWith("May is now"))).toEqual([
      "May is now +85.00 (was +15.00), 3 pieces flipped",
    ]);
  });

  test("is not told again for notes of another month, nor after a restart", () => {
    sellLate("2026-06-01");
    simulation.at(local("2026-06-01T10:00"));
    simulation.restart();
    simulation.at(local("2026-06-02T10:00"));
    expect(texts().filter((text) => text.includes("is now"))).toEqual([]);
  });
});

describe("months' ends that were missed", () => {
  test("two of them give two recaps, the older first", () => {
    simulation.start();
    sellLate("2026-06-15");
    simulation.at(local("2026-07-02T08:00"));
    expect(simulation.keys("recap:")).toEqual(["recap:2026-05", "recap:2026-06"]);
    expect(simulation.textOf("recap:2026-05")).toContain("May 2026: ");
  });

  test("a clock that was wrong by years holds no later month back", () => {
    simulation.start();
    simulation.at(local("2031-03-02T12:00"));
    simulation.at(local("2026-06-01T09:00"));
    expect(simulation.keys("recap:")).toContain("recap:2026-05");
  });
});

describe("while notes wait to be heard", () => {
  test("a copy is made, and nothing is told", () => {
    simulation.heardAll = false;
    simulation.now = local("2026-06-01T18:30");
    simulation.start();
    expect(simulation.keys()).toEqual([]);
    sellLate("2026-05-31");
    simulation.heardAll = true;
    simulation.at(local("2026-06-01T18:31"));
    expect(simulation.textOf("recap:2026-05")).toContain(", 2 flipped");
    expect(texts().filter((text) => text.includes("is now"))).toEqual([]);
  });
});
