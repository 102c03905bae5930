import { afterEach, describe, expect, it } from "vitest";
import { OWNER } from "../../standin/standin.ts";
import { workbenches } from "./workbench.ts";

const { bench, closeAll } = workbenches();
afterEach(closeAll);

describe("a member's messages", () => {
  it("reach the conversation with the time they were sent, and are answered", async () => {
    const { standin, conversation } = await bench();
    const date = Date.UTC(2026, 4, 9, 17, 30);
    const message = standin.say("bought dresser 30", { date });
    const reply = await standin.waitForReply("heard: bought dresser 30");
    expect(conversation.heard).toMatchObject([{ message: String(message), said: date, chat: "1001" }]);
    expect(reply.buttons).toEqual([[{ text: "Undo", callback_data: "undo:1" }]]);
  });

  it("keep their order, and their replies too", async () => {
    const { standin, conversation } = await bench();
    for (let index = 0; index < 30; index++) standin.say(`note ${index}`);
    await standin.waitForReply("heard: note 29");
    expect(conversation.heard.map(({ text }) => text)).toEqual(
      Array.from({ length: 30 }, (_, index) => `note ${index}`),
    );
    expect(standin.sent().map(({ text }) => text)).toEqual(
      Array.from({ length: 30 }, (_, index) => `heard: note ${index}`),
    );
  });

  it("are edited under the day they were first sent on", async () => {
    const { standin, conversation } = await bench();
    const date = Date.UTC(2026, 4, 9, 17, 30);
    const message = standin.say("bought dresser 30", { date });
    standin.edit(message, "bought dresser 35", { date });
    await standin.waitForReply("dresser 35");
    expect(conversation.heard[1]).toMatchObject({ message: String(message), edited: true, said: date });
  });

  it("carry what they reply to", async () => {
    const { standin, conversation } = await bench();
    const message = standin.say("bought dresser 30");
    standin.say("undo", { replyTo: message });
    await standin.waitForReply("heard: undo");
    expect(conversation.heard[1]).toMatchObject({ replyTo: String(message) });
  });

  it("may be commands, which are the plain words", async () => {
    const { standin, conversation } = await bench();
    for (const text of ["/start", "/start abc", "/month feb", "/UNDO@yard_ledger_bot", "/help"])
      standin.say(text);
    await standin.waitForReply("heard: help");
    expect(conversation.heard.map(({ text }) => text)).toEqual([
      "start",
      "start",
      "month feb",
      "undo",
      "help",
    ]);
  });
});

describe("pictures and files", () => {
  it("a photo with a caption is a note with the largest size", async () => {
    const { standin, conversation } = await bench();
    standin.photo("a1", { caption: "bought dresser 30" });
    await standin.waitForReply("heard: bought dresser 30");
    expect(conversation.heard[0]).toMatchObject({ picture: { file: "file-a1-1280", unique: "a1-1280" } });
  });

  it("a photo without words reaches the message it replies to; an album's pictures reach its first", async () => {
    const { standin, conversation } = await bench();
    standin.photo("b1", { replyTo: 77 });
    const first = standin.photo("c1", { caption: "finished dresser", also: { media_group_id: "g" } });
    standin.photo("c2", { also: { media_group_id: "g" } });
    await standin.waitFor(() => (conversation.heard.length === 3 ? true : undefined));
    expect(conversation.heard[0]).toMatchObject({ text: "", replyTo: "77" });
    expect(conversation.heard[2]).toMatchObject({
      text: "",
      replyTo: String(first),
      picture: { unique: "c2-1280" },
    });
  });

  it("a text file is read as its content", async () => {
    const { standin, conversation } = await bench();
    standin.document("history.txt", "bought dresser 30\nsold dresser 190\n");
    await standin.waitForReply("bought dresser 30");
    expect(conversation.heard[0]).toMatchObject({
      text: "bought dresser 30\nsold dresser 190\n",
      document: { name: "history.txt" },
    });
  });

  it("a file too large or of another kind is declined in one line", async () => {
    const { standin, conversation } = await bench();
    standin.document("history.csv", Buffer.alloc(1_000_001, "a"));
    expect((await standin.waitForReply()).text).toMatch(/more than I read at once/);
    standin.document("plan.pdf", "x");
    expect((await standin.waitForReply()).text).toMatch(/text only/);
    expect(conversation.heard).toEqual([]);
  });

  it("a file that cannot be fetched is said to be lost", async () => {
    const { standin } = await bench();
    standin.fail("getFile", { kind: "dropped" });
    standin.document("history.txt", "bought dresser 30");
    expect((await standin.waitForReply()).text).toMatch(/could not fetch that file/);
  });

  it("are sent from outbox rows: made ones as bytes, a person's own by its id", async () => {
    const { standin, ledger, close } = await bench();
    const file = (what: "export" | "picture" | "month picture", name: string, args = {}) =>
      ledger.outbox.queue({
        chat: String(OWNER.id),
        body: { kind: "file", make: { what, name, args }, caption: "<Tom & Ann>" },
      });
    file("export", "books.xlsx");
    file("month picture", "may.png");
    file("picture", "dresser.jpg", { file: "file-a1-1280" });
    standin.say("wake");
    const sent = await standin.waitFor(() => (standin.sent().length >= 4 ? standin.sent() : undefined));
    expect(sent.slice(0, 3).map(({ method, text, file }) => ({ method, text, file }))).toEqual([
      {
        method: "sendDocument",
        text: "<Tom & Ann>",
        file: { name: "books.xlsx", bytes: Buffer.from("made books.xlsx") },
      },
      {
        method: "sendPhoto",
        text: "<Tom & Ann>",
        file: { name: "may.png", bytes: Buffer.from("made may.png") },
      },
      { method: "sendPhoto", text: "<Tom & Ann>", file: { id: "file-a1-1280" } },
    ]);
    await close();
  });
});

describe("presses", () => {
  it("reach the conversation, are answered at once, and an edit changes the message", async () => {
    const { standin, conversation } = await bench();
    standin.say("bought dresser 30");
    const reply = await standin.waitForReply();
    standin.press(reply, "Undo");
    const edit = await standin.waitForReply("pressed: undo:1");
    expect(edit).toMatchObject({ method: "editMessageText", message: reply.message });
    expect(conversation.pressed).toMatchObject([{ press: "undo:1", message: String(reply.message) }]);
    await standin.waitFor(() => standin.calls.find(({ method }) => method === "answerCallbackQuery"));
  });
});

describe("messages that are no notes", () => {
  it("get one honest line, and notices of the chat none", async () => {
    const { standin, conversation } = await bench();
    standin.message({ sticker: { file_id: "s", file_unique_id: "s", width: 1, height: 1, type: "regular" } });
    expect((await standin.waitForReply()).text).toMatch(/text only/);
    standin.message({ pinned_message: { message_id: 1, date: 0, chat: { id: OWNER.id, type: "private" } } });
    standin.say("x".repeat(4097));
    expect((await standin.waitForReply()).text).toMatch(/more than I read/);
    expect(standin.sent()).toHaveLength(2);
    expect(conversation.heard).toEqual([]);
  });

  it("that not even the ledger takes are said to be lost, and do not stop what follows", async () => {
    const { standin, conversation } = await bench();
    standin.say("throw this");
    expect((await standin.waitForReply()).text).toMatch(/Nothing was recorded/);
    standin.say("bought dresser 30");
    const reply = await standin.waitForReply("heard: bought dresser 30");
    standin.pressData(reply, "throw");
    expect((await standin.waitForReply()).text).toMatch(/Nothing was recorded/);
    expect(conversation.pressed).toEqual([]);
  });
});
