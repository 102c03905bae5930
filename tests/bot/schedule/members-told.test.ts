import { afterEach, beforeEach, expect, test } from "vitest";
import { addNote, buy, clearLedgers, record } from "../../db/ledgers.ts";
import { Simulation } from "./simulation.ts";

const at = (text: string) => Date.parse(`${text}:00-05:00`);
let simulation: Simulation;
let wren: number;
beforeEach(() => {
  simulation = new Simulation("America/Chicago", at("2026-05-20T12:00"));
  const { ledger } = simulation;
  wren = ledger.transaction(() =>
    ledger.members.add({ user: "2002", name: "Wren", role: "member", joined: 0 }),
  );
});
afterEach(() => {
  simulation.stop();
  clearLedgers();
});

function buysByWren(count: number): void {
  const { ledger } = simulation;
  for (let index = 0; index < count; index++) {
    ledger.transaction(() => {
      const note = addNote(ledger, "bought lamp 5", wren);
      ledger.record({ note, author: wren, facts: [buy(ledger, 500, "2026-05-20", "lamp")] });
    });
  }
}

const told = () => simulation.queued().filter(({ key }) => key?.startsWith("members:"));

test("what members noted comes once a day, by name, without a sound; the owner's own notes are left out", () => {
  record(simulation.ledger, buy(simulation.ledger, 3000, "2026-05-20"));
  buysByWren(2);
  simulation.start();
  simulation.at(at("2026-05-20T17:59"));
  expect(told()).toEqual([]);
  simulation.at(at("2026-05-20T18:00"));
  expect(told()).toMatchObject([{ key: "members:2026-05-20", chat: "1001", body: { silent: true } }]);
  expect(simulation.textOf("members:2026-05-20")).toBe(
    "Noted by others:\nWren: Bought #2 lamp, 5.00\nWren: Bought #3 lamp, 5.00",
  );
  buysByWren(1);
  simulation.at(at("2026-05-20T20:00"));
  simulation.at(at("2026-05-21T18:00"));
  simulation.at(at("2026-05-22T18:00"));
  expect(told().map(({ key }) => key)).toEqual(["members:2026-05-20", "members:2026-05-21"]);
  expect(simulation.textOf("members:2026-05-21")).toBe(
    "Noted by others:\nWren: Bought #4 lamp, 5.00 on Wed May 20",
  );
});

test("it has at most twenty lines", () => {
  buysByWren(19);
  simulation.start();
  simulation.at(at("2026-05-20T18:00"));
  expect(simulation.textOf("members:2026-05-20").split("\n")).toHaveLength(20);
  buysByWren(60);
  simulation.at(at("2026-05-21T18:00"));
  const lines = simulation.textOf("members:2026-05-21").split("\n");
  expect(lines).toHaveLength(20);
  expect(lines.at(-1)).toBe("and 42 more");
});

test("told of nothing, or asked not to tell, it says nothing", () => {
  simulation.start();
  simulation.at(at("2026-05-20T18:00"));
  simulation.ledger.settings.set("tellOwner", false);
  buysByWren(1);
  simulation.at(at("2026-05-20T18:30"));
  expect(told()).toEqual([]);
});
