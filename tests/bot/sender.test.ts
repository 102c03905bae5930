import { afterEach, describe, expect, test } from "vitest";
import { type Sending, startSender } from "../../bot/sender.ts";
import type { Ledger } from "../../db/ledger.ts";
import type { OutboxRow } from "../../db/outbox.ts";
import { clearLedgers, ledgerWithOwner } from "../db/ledgers.ts";
import { keepingLog } from "./schedule/simulation.ts";

afterEach(clearLedgers);

const HOUR = 3_600_000;

/** A sender over a real outbox, with a chat that answers as told and clocks that the test sets. */
function senderOn(ledger: Ledger, answer: (row: OutboxRow, signal: AbortSignal) => Promise<Sending>) {
  const clock = { wall: Date.parse("2026-05-09T15:00:00Z"), steady: 0 };
  const sent: string[] = [];
  const sender = startSender({
    outbox: ledger.outbox,
    courier: {
      async send(row, signal) {
        const sending = await answer(row, signal);
        if (sending.kind === "sent") sent.push(wordsOf(row));
        return sending;
      },
    },
    now: () => clock.wall,
    elapsed: () => clock.steady,
    log: keepingLog(),
  });
  return { sender, sent, clock };
}

const wordsOf = ({ body }: OutboxRow) => (body.kind === "text" ? body.reply.text : body.kind);
const sentAs = (message: string): Sending => ({ kind: "sent", message });

function queue(ledger: Ledger, chat: string, text: string): void {
  ledger.transaction(() => ledger.outbox.queue({ chat, body: { kind: "text", reply: { text } } }));
}

async function until(isSo: () => boolean): Promise<void> {
  for (let tries = 0; !isSo() && tries < 400; tries++) await new Promise((resolve) => setTimeout(resolve, 5));
  expect(isSo()).toBe(true);
}

describe("each chat has its own line out", () => {
  test("a send that hangs holds up nobody else, and its own chat stays in order", async () => {
    const { ledger } = ledgerWithOwner();
    let release = () => {};
    const hanging = new Promise<void>((resolve) => {
      release = resolve;
    });
    queue(ledger, "1", "one");
    queue(ledger, "1", "two");
    queue(ledger, "2", "three");
    const { sender, sent } = senderOn(ledger, async (row) => {
      if (wordsOf(row) === "one") await hanging;
      return sentAs(String(row.id));
    });
    await until(() => sent.length === 1);
    queue(ledger, "2", "four");
    sender.wake();
    await until(() => sent.length === 2);
    expect(sent).toEqual(["three", "four"]);
    release();
    await until(() => sent.length === 4);
    expect(sent.slice(2)).toEqual(["one", "two"]);
    await sender.stop(100);
  });
});

describe("a wait goes by a clock that nobody can set", () => {
  test("five seconds stay five seconds when the clock is set back by a day", async () => {
    const { ledger } = ledgerWithOwner();
    queue(ledger, "1", "one");
    let isLimited = true;
    const { sender, sent, clock } = senderOn(ledger, async () =>
      isLimited ? { kind: "later", afterSeconds: 5, why: "429" } : sentAs("7"),
    );
    await until(() => ledger.outbox.get(1)?.tries === 1);
    isLimited = false;
    clock.wall -= 24 * HOUR;
    clock.steady += 4999;
    sender.wake();
    await new Promise((resolve) => setTimeout(resolve, 30));
    expect(sent).toEqual([]);
    clock.steady += 2;
    sender.wake();
    await until(() => sent.length === 1);
    await sender.stop(100);
  });

  test("one left over from before a restart is no more than ten minutes", async () => {
    const { ledger } = ledgerWithOwner();
    queue(ledger, "1", "one");
    const { sender, sent, clock } = senderOn(ledger, async () => sentAs("7"));
    await sender.stop(100);
    ledger.connection.sqlite.prepare("update outbox set sent = null").run();
    ledger.outbox.putOff(1, clock.wall + 24 * HOUR, 1);
    sent.length = 0;
    const next = senderOn(ledger, async () => sentAs("7"));
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(next.sent).toEqual([]);
    next.clock.steady += 601_000;
    next.sender.wake();
    await until(() => next.sent.length === 1);
    await next.sender.stop(100);
  });

  test("whatever a chat asks for, it is tried again within the hour", async () => {
    const { ledger } = ledgerWithOwner();
    queue(ledger, "1", "one");
    const { sender, clock } = senderOn(ledger, async () => ({
      kind: "later",
      afterSeconds: 1e9,
      why: "429",
    }));
    await until(() => ledger.outbox.get(1)?.tries === 1);
    clock.steady += HOUR + 1;
    sender.wake();
    await until(() => ledger.outbox.get(1)?.tries === 2);
    await sender.stop(100);
  });
});
