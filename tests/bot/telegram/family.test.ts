import { afterEach, beforeEach, expect, it } from "vitest";
import type { Ledger } from "../../../db/ledger.ts";
import { OWNER, type Person, type Sent, type Standin } from "../../standin/standin.ts";
import { workbenches } from "./workbench.ts";

// The real conversation, as a household uses it.
const WREN: Person = { id: 2002, first_name: "Wren" };

const { talking: bench, closeAll } = workbenches();
let standin: Standin;
let ledger: Ledger;
let shown: readonly string[];
beforeEach(async () => {
  ({ standin, ledger, shown } = await bench({ owner: undefined }));
});
afterEach(closeAll);

async function pairOwner(): Promise<void> {
  standin.say(await standin.waitFor(() => /\/start [\w-]{32}/.exec(shown.join("\n"))?.[0]));
  await standin.waitForReply("bought dresser 30");
}

async function inviteWren(): Promise<void> {
  standin.say("invite");
  const invitation = await standin.waitForReply(/\/start [\w-]{32}/);
  standin.say(/\/start [\w-]{32}/.exec(invitation.text)![0], { from: WREN });
  // Each chat has a line of its own: either message may be the first.
  const told = (fits: (sent: Sent) => boolean) => standin.waitFor(() => standin.sent().find(fits));
  expect((await told(({ text }) => text.startsWith("Wren joined"))).chat).toBe(OWNER.id);
  await told(({ chat }) => chat === WREN.id);
  await standin.waitForReply((sent) => sent === standin.sent().at(-1));
}

it("pairs, invites, and removes", async () => {
  await pairOwner();
  await inviteWren();
  standin.say("bought dresser 30", { from: WREN });
  await standin.waitForReply(({ chat, text }) => chat === WREN.id && text.includes("dresser"));
  standin.say("members");
  expect((await standin.waitForReply("Wren")).text).toContain("1. Robin (owner)\n2. Wren");
  standin.say("invite", { from: WREN });
  expect((await standin.waitForReply(({ chat }) => chat === WREN.id)).text).toMatch(/owner/);
  standin.say("remove Wren");
  await standin.waitForReply("Wren is out");
  standin.say("sold dresser 190 cash", { from: WREN });
  await standin.waitForReply("private bookkeeping bot");
  const facts = ledger.books.facts.map(({ kind, author }) => [kind, author]);
  expect(facts).toEqual([["buy", 2]]);
});

it("pictures: under a note, in reply to one, and shown again", async () => {
  await pairOwner();
  standin.photo("before", { caption: "bought dresser 30" });
  const bought = await standin.waitForReply("dresser");
  standin.photo("after", { replyTo: bought.message });
  await standin.waitForReply("Picture added");
  standin.say("show dresser");
  const shown = await standin.waitFor(() => {
    const photos = standin.sent().filter(({ method }) => method === "sendPhoto");
    return photos.length >= 2 ? photos : undefined;
  });
  expect(shown.map(({ file }) => file)).toEqual([{ id: "file-before-1280" }, { id: "file-after-1280" }]);
});

it("an album without words right after a purchase joins it, and is answered once", async () => {
  await pairOwner();
  standin.say("bought desk 30");
  await standin.waitForReply("Bought #1 desk");
  for (const unique of ["one", "two", "three"]) standin.photo(unique, { also: { media_group_id: "album" } });
  await standin.waitForReply("Picture added to #1 desk");
  standin.say("show desk");
  await standin.waitFor(
    () => standin.sent().filter(({ method }) => method === "sendPhoto").length === 3 || undefined,
  );
  expect(standin.sent().filter(({ text }) => text.startsWith("Picture added"))).toHaveLength(1);
});

it("the commands of the menu are all answered, and every long answer arrives whole", async () => {
  await pairOwner();
  const menu = await standin.waitFor(() => standin.calls.find(({ method }) => method === "setMyCommands"));
  const commands = menu.fields["commands"] as { command: string; description: string }[];
  expect(commands.length).toBeLessThanOrEqual(8);
  for (const { command, description } of commands) {
    expect(description).toMatch(/^[A-Z].{5,60}$/);
    standin.say(`/${command}`);
    const { text } = await standin.waitForReply();
    expect([command, text]).not.toEqual([
      command,
      expect.stringMatching(/I see nothing|can't tell|not sure|unclear/i),
    ]);
  }
  const lines = Array.from({ length: 120 }, (_, index) => `bought dresser ${index + 1}`);
  standin.say(lines.join("\n"));
  await standin.waitForReply("dresser");
  standin.say("pieces");
  await standin.waitForReply("dresser");
  expect(standin.sent().every(({ text }) => text.length <= 4096)).toBe(true);
});

it("a file of notes is read line by line", async () => {
  await pairOwner();
  standin.document("march.txt", "bought dresser 30\nsold dresser 190 cash\n");
  await standin.waitForReply("dresser");
  await standin.waitFor(() => ledger.books.facts.length === 2 || undefined);
});
