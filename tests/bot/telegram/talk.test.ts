import { dirname } from "node:path";
import { afterAll, expect, it } from "vitest";
import { examine } from "../../../db/doctor.ts";
import { workbenches } from "./workbench.ts";

const { talking: bench, closeAll } = workbenches();
afterAll(closeAll);

it.concurrent("what was typed while the line was down lands on the day it was typed", async () => {
  const { standin, ledger, logged } = await bench();
  standin.say("bought dresser 30", { date: Date.UTC(2026, 3, 1, 18) });
  await standin.waitForReply("dresser");
  standin.outage(true);
  // Half past eleven at night in Chicago on the 2nd; in Greenwich it is the 3rd by then.
  standin.say("paint 12.50 for dresser", { date: Date.UTC(2026, 3, 3, 4, 30) });
  standin.say("sold dresser 190 cash", { date: Date.UTC(2026, 3, 4, 18) });
  await standin.waitFor(() => /cannot be reached/.test(logged.join("")) || undefined);
  standin.outage(false);
  await standin.waitForReply("190", 15_000);
  expect(ledger.books.facts.map(({ day }) => day)).toEqual(["2026-04-01", "2026-04-02", "2026-04-04"]);
});

it.concurrent("an edit, an undo by reply and a press reach the books", async () => {
  const { standin, ledger } = await bench();
  const standing = () => ledger.books.facts.map(({ kind, amount }) => [kind, amount]);
  const bought = standin.say("bought dresser 30");
  const reply = await standin.waitForReply("dresser");
  standin.edit(bought, "bought dresser 35");
  await standin.waitForReply("35");
  expect(standing()).toEqual([["buy", 3500]]);
  const painted = standin.say("paint 12.50 for dresser");
  await standin.waitForReply(/12\.50/);
  standin.say("undo", { replyTo: painted });
  await standin.waitForReply();
  expect(standing()).toEqual([["buy", 3500]]);
  standin.press(reply, "Undo");
  await standin.waitForReply();
  await standin.waitFor(() => standing().length === 0 || undefined);
  expect(examine(dirname(ledger.connection.path))?.findings).toEqual([]);
});
