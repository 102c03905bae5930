import nock from "nock";
import { afterEach, beforeEach, expect, it } from "vitest";
import { openLog } from "../../../bot/log.ts";
import { API_ROOT } from "../../../bot/settings.ts";
import { createClient } from "../../../bot/telegram/bot.ts";
import { createCatchingUp } from "../../../bot/telegram/catching-up.ts";
import { createCourier } from "../../../bot/telegram/courier.ts";
import { poll } from "../../../bot/telegram/polling.ts";
import type { OutboxBody, OutboxRow } from "../../../db/outbox.ts";

// The shapes on the wire, as core.telegram.org/bots/api documents them, without any server of ours.
const TOKEN = "100200300:AAwire_token_of_the_tests_0123456789";
const log = openLog("silent");

beforeEach(() => {
  nock.disableNetConnect();
});
afterEach(() => {
  nock.cleanAll();
  nock.enableNetConnect();
});

const api = () => nock(API_ROOT);
const path = (method: string) => `/bot${TOKEN}/${method}`;

function row(body: OutboxBody, more: Partial<OutboxRow> = {}): OutboxRow {
  const rest = {
    note: null,
    replyTo: null,
    tries: 0,
    notBefore: null,
    sent: null,
    message: null,
    gaveUp: null,
  };
  return { id: 1, chat: "1001", body, ...rest, ...more } as OutboxRow;
}

function courier(outbox = { get: (): OutboxRow | null => null }) {
  const bot = createClient({ token: TOKEN, apiRoot: API_ROOT });
  const makeFile = async ({ name }: { name: string }) => ({ name, bytes: Buffer.from("a,b\n1,2\n") });
  return createCourier({ api: bot.api, outbox, makeFile, log });
}

const signal = new AbortController().signal;
const text = (words: string): OutboxBody => ({ kind: "text", reply: { text: words } });

it("a message: HTML escaped, no link preview, a reply that may dangle, buttons by rows", async () => {
  let sent: unknown;
  api()
    .post(path("sendMessage"), (body) => {
      sent = body;
      return true;
    })
    .reply(200, { ok: true, result: { message_id: 77 } });
  const reply = { text: "Tom & <Ann>", buttons: [[{ label: "Undo", press: "undo:1" }]] };
  const sending = await courier().send(row({ kind: "text", reply }, { replyTo: "5" }), signal);
  expect(sending).toEqual({ kind: "sent", message: "77" });
  expect(sent).toEqual({
    chat_id: "1001",
    text: "Tom &amp; &lt;Ann&gt;",
    parse_mode: "HTML",
    link_preview_options: { is_disabled: true },
    reply_parameters: { message_id: 5, allow_sending_without_reply: true },
    reply_markup: { inline_keyboard: [[{ text: "Undo", callback_data: "undo:1" }]] },
  });
});

it("an edit: of the message that the row was sent as; one that changes nothing is as good as done", async () => {
  const get = () => row(text("before"), { message: "70" });
  let sent: unknown;
  api()
    .post(path("editMessageText"), (body) => {
      sent = body;
      return true;
    })
    .reply(200, { ok: true, result: true });
  const edit: OutboxBody = { kind: "edit", outbox: 9, reply: { text: "after" } };
  expect(await courier({ get }).send(row(edit), signal)).toEqual({ kind: "sent", message: null });
  expect(sent).toMatchObject({ chat_id: "1001", message_id: 70, text: "after" });
  const description = "Bad Request: message is not modified: specified new message content is the same";
  api().post(path("editMessageText")).reply(400, { ok: false, error_code: 400, description });
  expect(await courier({ get }).send(row(edit), signal)).toEqual({ kind: "sent", message: null });
});

it("a file: a form with the bytes and a caption", async () => {
  let form = "";
  api()
    .post(path("sendDocument"), (body) => {
      form = String(body);
      return true;
    })
    .reply(200, { ok: true, result: { message_id: 78 } });
  const make = { what: "export" as const, name: "pieces.csv", args: {} };
  const sending = await courier().send(row({ kind: "file", make, caption: "A & B" }), signal);
  expect(sending).toEqual({ kind: "sent", message: "78" });
  expect(form).toContain("filename=pieces.csv");
  expect(form).toContain("a,b\n1,2\n");
  expect(form).toContain("A &amp; B");
});

it.each([
  [429, { retry_after: 35 }, { kind: "later", afterSeconds: 35 }],
  [500, undefined, { kind: "later" }],
  [502, undefined, { kind: "later" }],
  [401, undefined, { kind: "later" }],
  [400, undefined, { kind: "never" }],
  [403, undefined, { kind: "never" }],
  [413, undefined, { kind: "never" }],
])("a refusal with %i", async (code, parameters, expected) => {
  const answer = { ok: false, error_code: code, description: "scripted", parameters };
  api().post(path("sendMessage")).reply(code, answer);
  expect(await courier().send(row(text("hi")), signal)).toMatchObject(expected);
});

it("a broken line, and a page that is no JSON, are tried again later, and the reason holds no token", async () => {
  api()
    .post(path("sendMessage"))
    .replyWithError(`connect to ${path("sendMessage")} failed`);
  const broken = await courier().send(row(text("hi")), signal);
  api().post(path("sendMessage")).reply(502, "<html>Bad Gateway</html>");
  const page = await courier().send(row(text("hi")), signal);
  expect([broken.kind, page.kind]).toEqual(["later", "later"]);
  expect(JSON.stringify([broken, page])).not.toContain(TOKEN);
});

it("a poll: only the updates that the bot reads, and the next offset confirms", async () => {
  const polls: unknown[] = [];
  const stopping = new AbortController();
  const me = { id: 1, is_bot: true, first_name: "L", username: "yard_ledger_bot" };
  api().post(path("getMe")).reply(200, { ok: true, result: me });
  api().post(path("deleteWebhook")).reply(200, { ok: true, result: true });
  const message = { message_id: 1, date: 1, chat: { id: 1, type: "private" }, text: "hi" };
  const keep = (body: unknown) => {
    polls.push(body);
    return true;
  };
  api()
    .post(path("getUpdates"), keep)
    .reply(200, { ok: true, result: [{ update_id: 900, message }] });
  api()
    .post(path("getUpdates"), keep)
    .reply(200, () => {
      stopping.abort();
      return { ok: true, result: [] };
    });
  const bot = createClient({ token: TOKEN, apiRoot: API_ROOT });
  let heard = 0;
  bot.use(() => void heard++);
  let started = "";
  const end = poll({
    bot,
    stopping: stopping.signal,
    now: Date.now,
    log,
    catchingUp: createCatchingUp(Date.now, () => {}),
    onPolled: () => {},
    onConflict: () => {},
    onUnreachable: () => {},
    onStarted: (username) => {
      started = username;
    },
  });
  stopping.signal.addEventListener("abort", () => void bot.stop());
  expect(await end).toEqual({ kind: "stopped" });
  expect([heard, started]).toEqual([1, "yard_ledger_bot"]);
  expect(polls).toEqual([
    {
      offset: 1,
      // What waits already is given at once; the next poll waits for what comes.
      timeout: 0,
      allowed_updates: ["message", "edited_message", "callback_query", "my_chat_member"],
    },
    { offset: 901, timeout: 30 },
  ]);
});
