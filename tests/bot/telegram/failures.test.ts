import { afterAll, describe, expect, it } from "vitest";
import { OWNER, startStandin } from "../../standin/standin.ts";
import { type Workbench, workbenches } from "./workbench.ts";

const { bench, closeAll } = workbenches();
afterAll(closeAll);

// Each test has a server, a ledger and a bot of its own and mostly waits as the bot does, so they run side by side;
// those that measure how long stopping takes run alone.
const texts = ({ standin }: Workbench) => standin.sent().map(({ text }) => text);

describe.concurrent("a send that fails", () => {
  it("waits as long as Telegram asks, and keeps the order", async () => {
    const started = await bench();
    const { standin } = started;
    standin.fail("sendMessage", { kind: "status", code: 429, retryAfter: 1 });
    const asked = Date.now();
    standin.say("first");
    standin.say("second");
    await standin.waitForReply("heard: second");
    expect(Date.now() - asked).toBeGreaterThanOrEqual(990);
    expect(texts(started)).toEqual(["heard: first", "heard: second"]);
  });

  it("is tried again after a fault of the server or of the line", async () => {
    const started = await bench();
    started.standin.fail("sendMessage", { kind: "status", code: 502 });
    started.standin.fail("sendMessage", { kind: "dropped" });
    started.standin.say("first");
    started.standin.say("second");
    await started.standin.waitForReply("heard: second");
    expect(texts(started)).toEqual(["heard: first", "heard: second"]);
  });

  it("may go out twice when the answer to it is lost, never not at all", async () => {
    const started = await bench();
    started.standin.fail("sendMessage", { kind: "lost" });
    started.standin.say("first");
    started.standin.say("second");
    await started.standin.waitForReply("heard: second");
    expect(texts(started)).toEqual(["heard: first", "heard: first", "heard: second"]);
    expect(started.conversation.heard).toHaveLength(2);
  });

  it("is given up where Telegram refuses for good, and holds nothing else up", async () => {
    const started = await bench();
    started.standin.fail("sendMessage", {
      kind: "status",
      code: 403,
      description: "Forbidden: bot was blocked",
    });
    started.standin.say("first");
    await started.standin.waitFor(() => started.ledger.outbox.get(1)?.gaveUp ?? undefined);
    expect(started.ledger.outbox.get(1)?.gaveUp).toMatch(/403.*blocked/);
    const body = { kind: "text" as const, reply: { text: "to another" } };
    started.ledger.outbox.queue({ chat: "777", body });
    started.standin.update({ future_thing: {} });
    await started.standin.waitForReply("to another");
    expect(texts(started)).toEqual(["to another"]);
  });

  it("holds back its own chat only", async () => {
    const started = await bench();
    const { standin, ledger } = started;
    standin.fail("sendMessage", { kind: "status", code: 429, retryAfter: 2 });
    standin.say("first");
    await standin.waitFor(() => (started.logged.some((line) => line.includes("put off")) ? true : undefined));
    ledger.outbox.queue({ chat: "777", body: { kind: "text", reply: { text: "to another" } } });
    standin.say("second");
    await standin.waitForReply("heard: second");
    expect(texts(started)).toEqual(["to another", "heard: first", "heard: second"]);
  });

  it("goes on with the part it stopped at", async () => {
    const started = await bench();
    const { standin, ledger } = started;
    const lines = Array.from({ length: 300 }, (_, index) => `line ${index} of a very long answer & more`);
    await standin.waitFor(() => standin.calls.find(({ method }) => method === "getUpdates"));
    const buttons = [[{ label: "Undo", press: "undo:1" }]];
    ledger.outbox.queue({ chat: "1001", body: { kind: "text", reply: { text: lines.join("\n"), buttons } } });
    standin.say("wake");
    await standin.waitFor(() => standin.sent()[0]);
    standin.fail("sendMessage", { kind: "status", code: 500 });
    await standin.waitForReply("heard: wake");
    const parts = standin.sent().filter(({ text }) => text.startsWith("line"));
    expect(parts.flatMap(({ text }) => text.split("\n"))).toEqual(lines);
    expect(parts.map((part) => part.buttons.length)).toEqual([...parts.slice(1).map(() => 0), 1]);
    expect(ledger.outbox.messageOf("1001", String(parts.at(-1)!.message))?.id).toBe(1);
  });

  it("a button with too much data is left out, the message is not", async () => {
    const { standin, ledger } = await bench();
    const buttons = [[{ label: "Long", press: "x".repeat(65) }], [{ label: "Short", press: "y" }]];
    ledger.outbox.queue({ chat: "1001", body: { kind: "text", reply: { text: "pick", buttons } } });
    standin.say("wake");
    expect((await standin.waitForReply("pick")).buttons).toEqual([[{ text: "Short", callback_data: "y" }]]);
  });

  it("a file that cannot be made is said so", async () => {
    const makeFile = async () => {
      throw new Error("scripted");
    };
    const { standin, ledger } = await bench({ makeFile });
    const make = { what: "export" as const, name: "books.xlsx", args: {} };
    ledger.outbox.queue({ chat: "1001", body: { kind: "file", make, caption: "" } });
    standin.say("wake");
    await standin.waitForReply("could not make that file");
  });
});

describe.concurrent("a ledger that cannot be written", () => {
  it("is admitted past it, and what was sent is not sent again", async () => {
    const started = await bench();
    const { standin, ledger } = started;
    standin.say("first");
    await standin.waitForReply("heard: first");
    await standin.waitFor(() => (ledger.outbox.heads().length === 0 ? true : undefined));
    const { sqlite } = ledger.connection;
    ledger.outbox.queue({ chat: "1001", body: { kind: "text", reply: { text: "owed" } } });
    // As on a read-only disk, every write fails from here on.
    sqlite.pragma("query_only = 1");
    standin.say("second");
    await standin.waitForReply("Nothing was recorded");
    await standin.waitFor(() => texts(started).includes("owed") || undefined);
    await new Promise((resolve) => setTimeout(resolve, 2500));
    expect(texts(started).filter((text) => text === "owed")).toHaveLength(1);
    sqlite.pragma("query_only = 0");
    standin.say("third");
    await standin.waitForReply("heard: third");
    await standin.waitFor(() => (ledger.outbox.heads().length === 0 ? true : undefined));
    expect(texts(started).filter((text) => !text.startsWith("heard"))).toHaveLength(2);
    expect(started.conversation.heard.map(({ text }) => text)).toEqual(["first", "third"]);
  });
});

describe.concurrent("the line to Telegram", () => {
  it("may be down at the start, and for a while later", async () => {
    const started = await bench();
    const { standin } = started;
    standin.outage(true);
    standin.say("first");
    setTimeout(() => standin.outage(false), 1500);
    await standin.waitForReply("heard: first");
    standin.outage(true);
    standin.say("second");
    await new Promise((resolve) => setTimeout(resolve, 500));
    standin.outage(false);
    await standin.waitForReply("heard: second");
  });

  it("updates that come twice or out of order count once each", async () => {
    const started = await bench();
    const { standin, conversation } = started;
    for (let index = 0; index < 10; index++) standin.say(`note ${index}`);
    await standin.waitForReply("heard: note 9");
    standin.redeliver();
    standin.say("note 10");
    standin.say("note 11");
    standin.reorder((a, b) => b.update_id - a.update_id);
    await standin.waitFor(() => (conversation.heard.length >= 12 ? true : undefined));
    await standin.waitFor(() => (standin.waiting === 0 ? true : undefined));
    const said = conversation.heard.map(({ text }) => text).sort();
    expect(new Set(said).size).toBe(12);
    expect(said).toHaveLength(12);
  });

  it("another poller is waited out for a while, then the bot gives up", async () => {
    const started = await bench({ conflict: { milliseconds: 1_500, pauseMilliseconds: 20 } });
    const { standin } = started;
    standin.fail("getUpdates", { kind: "status", code: 409 }, 3);
    standin.say("first");
    await standin.waitForReply("heard: first");
    standin.fail("getUpdates", { kind: "status", code: 409 }, 1000);
    standin.say("second");
    expect(await started.end).toEqual({ kind: "conflict" });
  });

  it("a start without the network says so in one plain line, and goes on by itself", async () => {
    const standin = await startStandin();
    standin.fail("getMe", { kind: "dropped" }, 2);
    const { shown, close } = await bench({ standin });
    standin.say("first");
    await standin.waitForReply("heard: first");
    expect(shown).toEqual(["Telegram cannot be reached. See that this computer is online: I go on trying."]);
    await close();
    await standin.close();
  });

  it("a token that Telegram does not know ends the bot", async () => {
    const started = await bench({ token: "100200300:withdrawn" });
    expect(await started.end).toEqual({ kind: "refused" });
  });

  it("after a silence of more than a day the owner hears what may be missing, once", async () => {
    const day = 86_400_000;
    const start = Date.UTC(2026, 4, 9, 15, 0);
    let clock = start;
    const first = await bench({ now: () => clock });
    first.standin.say("first");
    await first.standin.waitForReply("heard: first");
    await first.stop();
    clock = start + 2 * day;
    const second = await bench({ now: () => clock, standin: first.standin, ledger: first.ledger });
    const told = await second.standin.waitForReply("out of reach");
    expect(told.text).toContain("from Sat, May 9, 10:00 AM to Mon, May 11, 10:00 AM");
    expect(told.text).toContain("sent between Sat, May 9, 10:00 AM and Sun, May 10, 10:00 AM may be missing");
    second.standin.say("second");
    await second.standin.waitForReply("heard: second");
    await second.stop();
    clock += day - 3_600_000;
    const third = await bench({ now: () => clock, standin: first.standin, ledger: first.ledger });
    third.standin.say("third");
    await third.standin.waitForReply("heard: third");
    expect(texts(third).filter((text) => text.includes("out of reach"))).toHaveLength(1);
    await third.close();
    await second.close();
  });
});

describe.concurrent("the log", () => {
  it("never holds the token, whatever fails", async () => {
    const started = await bench();
    const { standin, ledger, logged } = started;
    for (const method of ["sendMessage", "getUpdates", "getFile", "answerCallbackQuery"]) {
      standin.fail(method, { kind: "dropped" });
      standin.fail(method, { kind: "status", code: 400, description: `bad ${standin.token}` });
    }
    standin.say("first");
    standin.document("a.txt", "x");
    standin.outage(true);
    await new Promise((resolve) => setTimeout(resolve, 300));
    standin.outage(false);
    standin.say("last");
    await standin.waitForReply("heard: last", 20_000);
    expect(logged.length).toBeGreaterThan(5);
    expect(logged.join("\n")).not.toContain(standin.token);
    expect(JSON.stringify(ledger.connection.sqlite.prepare("select * from outbox").all())).not.toContain(
      standin.token,
    );
    expect(String(OWNER.id)).toBe("1001");
  });
});

describe("stopping", () => {
  it("is quick while a poll waits, and confirms nothing that was not stored", async () => {
    const started = await bench();
    const { standin } = started;
    standin.say("first");
    await standin.waitForReply("heard: first");
    const before = standin.calls.length;
    const asked = Date.now();
    expect(await started.stop()).toEqual({ kind: "stopped" });
    expect(Date.now() - asked).toBeLessThan(1000);
    expect(standin.calls.length).toBe(before);
  });

  it("is quick while a file or a send hangs, and both are done at the next start", async () => {
    const first = await bench();
    const { standin, ledger } = first;
    standin.say("first");
    await standin.waitForReply("heard: first");
    standin.fail("sendMessage", { kind: "hangs" });
    standin.fail("getFile", { kind: "hangs" });
    standin.say("second");
    standin.document("history.txt", "third");
    await standin.waitFor(() => standin.calls.find(({ method }) => method === "getFile"));
    const asked = Date.now();
    await first.stop();
    expect(Date.now() - asked).toBeLessThan(4500);
    const second = await bench({ standin, ledger });
    await standin.waitForReply("heard: second");
    await standin.waitForReply("heard: third");
    expect(second.conversation.heard.map(({ text }) => text)).toEqual(["third"]);
    await second.close();
  });
});
