import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { openReader } from "../../../db/open.ts";
import { type Standin, startStandin } from "../../standin/standin.ts";
import { Home } from "./home.ts";

let standin: Standin;
let old: Home;
let next: Home;
beforeEach(async () => {
  standin = await startStandin();
  old = new Home(standin);
  next = new Home(standin);
});
afterEach(async () => {
  for (const home of [old, next]) home.end();
  await standin.close();
});

// The steps of the README, one after the other.
it("the books, the owner and the settings go to another machine with a backup and the token", async () => {
  const first = old.starts("setup");
  first.type(standin.token, "denver", "14,600", "5.8");
  standin.say(await first.saying(/\/start [\w-]{32}/));
  await standin.waitForReply("bought dresser 30");
  standin.say("bought dresser 30");
  await standin.waitForReply("Bought #1 dresser");
  standin.say("backup");
  const sent = await standin.waitForReply(({ file }) => file !== undefined && "bytes" in file);
  first.child.kill("SIGTERM");
  expect(await first.exit()).toBe(0);

  const copy = join(next.folder, "copy.sqlite");
  writeFileSync(copy, (sent.file as { bytes: Buffer }).bytes);
  const restore = next.starts("restore", [copy]);
  expect([await restore.exit(), restore.output()]).toEqual([0, expect.stringContaining("Restored.")]);
  const second = next.starts("setup");
  second.type(standin.token, "");
  await second.saying("Your days go by America/Denver time.");
  await second.saying("Your loan is on the books already: 14,600.00 at 5.8%.");
  await second.saying("Robin is the owner. Send @yard_ledger_bot a note from the phone.");
  standin.say("sold dresser 190 cash");
  expect((await standin.waitForReply("Sold #1 dresser")).text).toContain("Profit 160.00");
  expect(second.output()).not.toContain("To become the owner");
  second.child.kill("SIGTERM");
  expect(await second.exit()).toBe(0);

  const doctor = next.starts("doctor");
  expect([await doctor.exit(), doctor.output()]).toEqual([0, expect.stringContaining("All is well")]);
  const opened = openReader(join(next.folder, "data"));
  if (opened.kind !== "open") throw new Error(opened.kind);
  expect(opened.reader.books.facts.map(({ kind }) => kind)).toEqual(["loan", "buy", "sell"]);
  opened.reader.close();
});
