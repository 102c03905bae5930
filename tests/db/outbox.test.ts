import { afterEach, describe, expect, test } from "vitest";
import type { Ledger } from "../../db/ledger.ts";
import type { OutboxBody } from "../../db/outbox.ts";
import { addNote, clearLedgers, ledgerWithOwner } from "./ledgers.ts";

afterEach(clearLedgers);

const text = (words: string): OutboxBody => ({ kind: "text", reply: { text: words } });

function queue(ledger: Ledger, chat: string, words: string, key?: string): number | null {
  return ledger.transaction(() => ledger.outbox.queue({ chat, body: text(words), ...(key ? { key } : {}) }));
}

describe("the outbox", () => {
  test("hands rows out in order and each until it is marked", () => {
    const { ledger } = ledgerWithOwner();
    const { outbox } = ledger;
    const [first, second] = [queue(ledger, "a", "one")!, queue(ledger, "a", "two")!];
    expect(outbox.nextUnsent(0)?.id).toBe(first);
    expect(outbox.nextUnsent(0)?.id).toBe(first);
    outbox.markSent(first, "77", 5);
    expect(outbox.nextUnsent(0)).toMatchObject({ id: second, body: text("two") });
    outbox.markSent(second, "78", 6);
    expect(outbox.nextUnsent(0)).toBeNull();
    expect(outbox.heads()).toEqual([]);
  });

  test("keeps a chat in order while its head waits, and lets other chats go on", () => {
    const { ledger } = ledgerWithOwner();
    const { outbox } = ledger;
    const [a1, a2, b1] = [queue(ledger, "a", "1")!, queue(ledger, "a", "2")!, queue(ledger, "b", "3")!];
    outbox.putOff(a1, 1000, 1);
    expect(outbox.nextUnsent(999)?.id).toBe(b1);
    outbox.markSent(b1, "9", 10);
    expect(outbox.nextUnsent(999)).toBeNull();
    expect(outbox.heads().map(({ notBefore }) => notBefore)).toContain(1000);
    expect(outbox.nextUnsent(1000)).toMatchObject({ id: a1, tries: 1, notBefore: 1000 });
    outbox.giveUp(a1, "the chat is gone");
    expect(outbox.nextUnsent(0)?.id).toBe(a2);
    expect(outbox.get(a1)?.gaveUp).toBe("the chat is gone");
  });

  test("queues a key once, ever", () => {
    const { ledger } = ledgerWithOwner();
    const id = queue(ledger, "a", "good evening", "nudge:2026-05-09")!;
    expect(queue(ledger, "a", "good evening again", "nudge:2026-05-09")).toBeNull();
    ledger.outbox.markSent(id, "1", 0);
    expect(queue(ledger, "a", "and again", "nudge:2026-05-09")).toBeNull();
    expect(ledger.outbox.nextUnsent(0)).toBeNull();
  });

  test("finds the note that a sent message answers", () => {
    const { ledger } = ledgerWithOwner();
    const [note, id] = ledger.transaction(() => {
      const of = addNote(ledger);
      return [of, ledger.outbox.queue({ chat: "home", body: text("done"), about: of, replyTo: "m1" })!];
    });
    ledger.outbox.markSent(id, "501", 9);
    expect(ledger.outbox.messageOf("home", "501")).toMatchObject({ id, note, replyTo: "m1", sent: 9 });
    expect(ledger.outbox.messageOf("elsewhere", "501")).toBeNull();
  });

  test("keeps edits and files by what makes them, and refuses a body it does not know", () => {
    const { ledger } = ledgerWithOwner();
    const file: OutboxBody = {
      kind: "file",
      make: { what: "month picture", name: "may.png", args: { month: "2026-05" } },
      caption: "May",
    };
    const edit: OutboxBody = {
      kind: "edit",
      outbox: 1,
      reply: { text: "x", buttons: [[{ label: "a", press: "b" }]] },
    };
    ledger.transaction(() => [file, edit].map((body) => ledger.outbox.queue({ chat: "a", body })));
    expect([1, 2].map((id) => ledger.outbox.get(id)?.body)).toEqual([file, edit]);
    const wrong = { kind: "song" } as unknown as OutboxBody;
    expect(() => ledger.transaction(() => ledger.outbox.queue({ chat: "a", body: wrong }))).toThrow();
  });
});
