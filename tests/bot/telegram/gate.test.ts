import { afterEach, describe, expect, it } from "vitest";
import { inviteMember, membersText, ownerAtMachine, removeMember } from "../../../bot/members.ts";
import { OWNER, type Person } from "../../standin/standin.ts";
import { openTestLedger, temporaryDirectory, type Workbench, workbenches } from "./workbench.ts";

const WREN: Person = { id: 2002, first_name: "Wren", username: "wren_w" };
const STRANGER: Person = { id: 3003, first_name: "Quill" };

const { bench, closeAll } = workbenches();
afterEach(closeAll);

function invite({ ledger }: Workbench): string {
  const text = ledger.transaction(() => inviteMember(ledger, Date.now()));
  return /\/start [\w-]{32}$/.exec(text)?.[0] ?? "";
}

describe("pairing", () => {
  it("makes whoever opens the link first the owner, once", async () => {
    const { standin, ledger, shown } = await bench({ owner: undefined });
    await standin.waitFor(() => shown[0]);
    const command = /\/start [\w-]{32}$/m.exec(shown[0]!)![0];
    standin.say(command, { from: WREN });
    await standin.waitForReply("heard: start");
    expect(ledger.members.owner()).toMatchObject({ user: "2002", name: "Wren" });
    expect(ledger.settings.get("ownerChat")).toBe("2002");
    standin.say(command, { from: STRANGER });
    expect((await standin.waitForReply()).text).toMatch(/code does not work/);
    expect(ledger.members.list()).toHaveLength(1);
  });

  it("an owner named in the settings takes the place of one who paired, and gets a name by talking", async () => {
    const first = await bench({ owner: undefined });
    await first.standin.waitFor(() => first.shown[0]);
    first.standin.say(/\/start [\w-]{32}$/m.exec(first.shown[0]!)![0], { from: WREN });
    await first.standin.waitForReply("heard: start");
    await first.stop();
    const second = await bench({ ledger: first.ledger, standin: first.standin });
    second.standin.say("month");
    await second.standin.waitForReply("heard: month");
    expect(membersText(second.ledger)).toContain("2. Robin (owner)\n");
    expect(membersText(second.ledger)).not.toContain("Wren");
    const told = await second.standin.waitFor(() =>
      second.standin.sent().find(({ text }) => text.includes("no longer the owner")),
    );
    expect(told.chat).toBe(WREN.id);
    expect(second.shown).toEqual([]);
    await second.close();
  });
});

describe("a ledger begun at the terminal", () => {
  it("has its owner there; the one on Telegram hears what the bot says of its own accord", async () => {
    const directory = temporaryDirectory();
    const ledger = openTestLedger(directory);
    ledger.members.add({ user: "terminal", name: "terminal", role: "owner", joined: 0 });
    ledger.settings.set("ownerChat", "terminal");
    ledger.members.add({ user: String(OWNER.id), name: "Robin", role: "owner", joined: 1 });
    const started = await bench({ ledger, owner: undefined });
    await started.standin.waitFor(() => ledger.settings.get("ownerChat") === "1001" || undefined);
    const command = invite(started);
    started.standin.say(command, { from: WREN });
    expect((await started.standin.waitForReply("Wren joined")).chat).toBe(OWNER.id);
    expect(started.shown).toEqual([]);
  });
});

describe("a trial at the terminal before pairing", () => {
  it("leaves one owner, who can take back what was noted there", async () => {
    const directory = temporaryDirectory();
    const ledger = openTestLedger(directory);
    const atMachine = ledger.transaction(() => ownerAtMachine(ledger, 0));
    const { standin, shown } = await bench({ ledger, owner: undefined });
    await standin.waitFor(() => shown[0]);
    standin.say(/\/start [\w-]{32}$/m.exec(shown[0]!)![0]);
    await standin.waitForReply("heard: start");
    expect(ledger.members.list()).toMatchObject([
      { id: atMachine, user: "1001", name: "Robin", role: "owner" },
    ]);
    expect(shown.at(-1)).toContain("Robin is the owner now");
    expect(ledger.transaction(() => ownerAtMachine(ledger, 0))).toBe(atMachine);
  });
});

describe("invitations", () => {
  it("let one person in, once; the owner is told", async () => {
    const started = await bench();
    const { standin, ledger } = started;
    await standin.waitFor(() => ledger.settings.get("inviteLink") ?? undefined);
    const command = invite(started);
    standin.say(command, { from: WREN });
    const told = await standin.waitForReply("Wren joined");
    expect(told.chat).toBe(OWNER.id);
    standin.say("bought dresser 30", { from: WREN });
    expect((await standin.waitForReply("heard: bought dresser 30")).chat).toBe(WREN.id);
    standin.say(command, { from: STRANGER });
    await standin.waitForReply("code does not work");
    expect(ledger.members.list().map(({ name, role }) => [name, role])).toEqual([
      ["owner", "owner"],
      ["Wren", "member"],
    ]);
  });

  it("a removed member is a stranger again, and can come back by a new code only", async () => {
    const started = await bench();
    const { standin, ledger } = started;
    await standin.waitFor(() => ledger.settings.get("inviteLink") ?? undefined);
    const command = invite(started);
    standin.say(command, { from: WREN });
    await standin.waitForReply("heard: start");
    expect(ledger.transaction(() => removeMember(ledger, "wren", Date.now()))).toMatch(/Wren is out/);
    standin.say("bought dresser 30", { from: WREN });
    await standin.waitForReply("private bookkeeping bot");
    standin.say(invite(started), { from: WREN });
    await standin.waitForReply("heard: start");
    expect(ledger.members.list()).toHaveLength(2);
  });

  it("are worth nothing after a day", async () => {
    let clock = Date.now();
    const started = await bench({ now: () => clock });
    await started.standin.waitFor(() => started.ledger.settings.get("inviteLink") ?? undefined);
    const command = invite(started);
    clock += 86_400_000 + 1000;
    started.standin.say(command, { from: WREN });
    await started.standin.waitForReply("code does not work");
  });

  it("no number of wrong codes locks the right one out, nor an invited person", async () => {
    const started = await bench();
    const { standin, ledger } = started;
    await standin.waitFor(() => ledger.settings.get("inviteLink") ?? undefined);
    const command = invite(started);
    for (let index = 0; index < 80; index++) {
      const from = { id: 4000 + (index % 20), first_name: "Quill" };
      standin.say(`/start ${"x".repeat(30)}${10 + index}`, { from });
    }
    for (let index = 0; index < 8; index++)
      standin.say(`/start ${"y".repeat(31)}${index}`, { from: STRANGER });
    standin.say(command, { from: STRANGER });
    await standin.waitForReply("heard: start");
    expect(ledger.members.byUser("3003")).toMatchObject({ role: "member", removed: null });
    // Strangers cost no more than so many lines an hour.
    const wrong = standin.sent().filter(({ text }) => text.includes("code does not work"));
    expect(wrong.length).toBeLessThanOrEqual(30);
  });

  it("a wrong code gets its line after a first hello, too", async () => {
    const { standin } = await bench();
    standin.say("hi", { from: STRANGER });
    await standin.waitForReply("private bookkeeping bot");
    standin.say(`/start ${"x".repeat(32)}`, { from: STRANGER });
    expect((await standin.waitForReply("code does not work")).chat).toBe(STRANGER.id);
  });
});

describe("strangers and groups", () => {
  it("a stranger gets one line, and nothing of theirs is stored but a count", async () => {
    const { standin, ledger, conversation } = await bench();
    for (const text of ["hello", "bought dresser 30", "/help"]) standin.say(text, { from: STRANGER });
    standin.photo("p", { from: STRANGER, caption: "bought dresser 30" });
    standin.document("a.txt", "bought dresser 30", { from: STRANGER });
    standin.pressData(
      { chat: 3003, message: 1, text: "x", buttons: [], method: "", at: 0 },
      "undo:1",
      STRANGER,
    );
    standin.say("last", {});
    await standin.waitForReply("heard: last");
    const toStranger = standin.sent().filter(({ chat }) => chat === 3003);
    expect(toStranger.map(({ text }) => text)).toEqual([expect.stringMatching(/private bookkeeping bot/)]);
    expect(conversation.heard).toHaveLength(1);
    expect(conversation.pressed).toHaveLength(0);
    expect(ledger.invitations.strangersCount()).toBe(1);
    expect(standin.calls.some(({ method }) => method === "getFile")).toBe(false);
    const tables = ["members", "notes", "outbox", "settings"];
    for (const table of tables) {
      const rows = JSON.stringify(ledger.connection.sqlite.prepare(`select * from ${table}`).all());
      expect(rows).not.toMatch(/\b3003\b|Quill/);
    }
  });

  it("a group gets one line and is left, even with the owner in it", async () => {
    const { standin, conversation } = await bench();
    const me = { user: { id: 4242, is_bot: true, first_name: "Ledger" }, status: "member" };
    const chat = { id: -55, type: "group", title: "yard" };
    standin.update({
      my_chat_member: { chat, from: OWNER, date: 1, old_chat_member: me, new_chat_member: me },
    });
    standin.say("bought dresser 30", { chat: -55 });
    await standin.waitForReply("private chat only");
    await standin.waitFor(() => standin.calls.find(({ method }) => method === "leaveChat"));
    standin.say("last", {});
    await standin.waitForReply("heard: last");
    expect(standin.sent().filter((sent) => sent.chat === -55)).toHaveLength(1);
    expect(conversation.heard).toHaveLength(1);
  });
});
