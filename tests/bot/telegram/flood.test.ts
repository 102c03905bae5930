import { afterAll, describe, expect, it } from "vitest";
import { statementOf } from "../../../core/books/statement.ts";
import type { Ledger } from "../../../db/ledger.ts";
import { OWNER } from "../../standin/standin.ts";
import { workbenches } from "./workbench.ts";

const { talking: bench, closeAll } = workbenches();
afterAll(closeAll);

const notesIn = (ledger: Ledger) =>
  ledger.connection.sqlite.prepare("select count(*) from notes").pluck().get() as number;
const piecesIn = (ledger: Ledger) =>
  statementOf(ledger.books, { through: "2100-01-01", currency: "USD" }).pieces.length;

// Each has a bot of its own, and some wait as long as they are told to.
describe.concurrent("a flood of notes", () => {
  it("of a second is stored whole, and answered in few messages", async () => {
    const { standin, ledger } = await bench();
    const date = Date.now();
    for (let index = 1; index <= 300; index++) {
      const note = index % 100 === 0 ? "sold armoire 90" : `bought lamp ${index}`;
      standin.say(note, { date });
    }
    await standin.waitFor(() => (notesIn(ledger) === 300 ? true : undefined), 60_000);
    expect(piecesIn(ledger)).toBe(297);
    await standin.waitFor(() => (ledger.outbox.heads().length === 0 ? true : undefined), 60_000);
    const texts = standin.sent().map(({ text }) => text);
    expect(texts.length).toBeLessThan(100);
    expect(texts.some((text) => /^Recorded \d+ notes: \d+ bought/.test(text))).toBe(true);
    expect(texts.join("\n")).not.toMatch(/too many/i);
    // Everything recorded is told of: by name in a message of its own, or as a number.
    const told = texts.reduce((sum, text) => {
      const [, count] = /^Recorded (\d+) notes/.exec(text) ?? [];
      return sum + (count ? Number(count) : /^Bought/.test(text) ? 1 : 0);
    }, 0);
    expect(told).toBe(297);
  }, 120_000);

  it("that waits for the line is told together, and what asks something after it by itself", async () => {
    const { standin, ledger } = await bench();
    standin.say("bought desk 30");
    await standin.waitForReply("Bought");
    standin.fail("sendMessage", { kind: "status", code: 429, retryAfter: 3 });
    standin.say("bought lamp 1");
    await standin.waitFor(() => (notesIn(ledger) === 2 ? true : undefined));
    await standin.waitFor(() => (ledger.outbox.headOf(String(OWNER.id))?.tries === 1 ? true : undefined));
    for (const note of ["bought chair 2", "sold armoire 90", "bought stool 3", "bought bench 4"])
      standin.say(note);
    await standin.waitFor(() => (notesIn(ledger) === 6 ? true : undefined));
    const joined = await standin.waitForReply("Recorded 4 notes: 4 bought");
    expect(joined.text).toContain("1 more needs an answer");
    await standin.waitFor(() => (ledger.outbox.heads().length === 0 ? true : undefined));
    const rest = standin.sent().map(({ text }) => text);
    expect(rest.filter((text) => text.includes("No armoire on the books"))).toHaveLength(1);
  }, 60_000);

  it("of what is not read is answered together, each under its own words", async () => {
    const { standin, ledger } = await bench();
    standin.fail("sendMessage", { kind: "status", code: 429, retryAfter: 2 });
    const said = ["blorp", "fizzle", "asdf qwerty", "lorem", "ipsum", "dolor"];
    for (const words of said) standin.say(words);
    await standin.waitFor(() => (notesIn(ledger) === said.length ? true : undefined));
    const answer = await standin.waitForReply("dolor");
    for (const words of said) expect(answer.text).toContain(`"${words}"`);
    expect(standin.sent()).toHaveLength(1);
  }, 60_000);

  it("of presses is handled, each", async () => {
    const { standin, ledger } = await bench();
    for (let index = 0; index < 260; index++)
      standin.pressData(
        { chat: OWNER.id, message: 9, text: "x", buttons: [], method: "", at: 0 },
        `nx:${index + 1}`,
      );
    await standin.waitFor(() => (notesIn(ledger) === 260 ? true : undefined), 60_000);
    expect(ledger.settings.get("leftOutPieces")).toHaveLength(260);
  }, 120_000);
});

describe.concurrent("a chat that would take nothing", () => {
  it("is told what it missed when its person is back", async () => {
    const { standin, ledger } = await bench();
    standin.fail(
      "sendMessage",
      { kind: "status", code: 403, description: "Forbidden: bot was blocked by the user" },
      2,
    );
    standin.say("bought desk 30");
    await standin.waitFor(() => (ledger.outbox.get(1)?.gaveUp ? true : undefined));
    ledger.outbox.queue({
      chat: String(OWNER.id),
      body: { kind: "text", reply: { text: "Good evening" } },
      key: "nudge:2026-05-09",
    });
    standin.update({ future_thing: {} });
    await standin.waitFor(() => (ledger.outbox.get(2)?.gaveUp ? true : undefined));
    expect(standin.sent()).toEqual([]);
    standin.say("bought lamp 10");
    await standin.waitForReply("lamp");
    const texts = standin.sent().map(({ text }) => text);
    expect(texts[0]).toContain("#1 desk");
    expect(texts[1]).toBe(
      "I could not write to you for a while.\n1 answer above could not be sent before.\nLeft out: 1 message of my own.",
    );
    expect(texts[2]).toContain("#2 lamp");
    standin.say("bought chair 10");
    await standin.waitForReply("chair");
    expect(standin.sent()).toHaveLength(4);
  }, 120_000);

  it("one message refused for what it is comes no second time", async () => {
    const { standin, ledger } = await bench();
    standin.fail("sendMessage", {
      kind: "status",
      code: 400,
      description: "Bad Request: message is too long",
    });
    standin.say("bought desk 30");
    await standin.waitFor(() => (ledger.outbox.get(1)?.gaveUp ? true : undefined));
    standin.say("bought lamp 10");
    await standin.waitForReply("lamp");
    expect(standin.sent()).toHaveLength(1);
  });
});

describe("an update with a date that makes no sense", () => {
  it.each([["yesterday"], [1e18], [-5], [null], [0.5]])(
    "%s: the note counts, and so do the next ones",
    async (date) => {
      const { standin, ledger } = await bench();
      standin.message({ text: "bought desk 30" }, { also: { date } });
      await standin.waitForReply("Bought");
      const id = standin.say("bought lamp 10");
      await standin.waitForReply("lamp");
      const message = {
        message_id: id,
        chat: { id: OWNER.id, type: "private" },
        from: { ...OWNER, is_bot: false },
      };
      standin.update({
        edited_message: {
          ...message,
          date: Math.floor(Date.now() / 1000),
          edit_date: date,
          text: "bought lamp 12",
        },
      });
      standin.say("bought chair 5");
      await standin.waitForReply("chair");
      expect(ledger.books.months.size).toBe(1);
      expect(Math.abs((ledger.settings.get("lastSeenUpdateAt") ?? 0) - Date.now())).toBeLessThan(120_000);
    },
  );
});
