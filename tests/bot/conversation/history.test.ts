import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createConversation } from "../../../bot/conversation/conversation.ts";
import { handleHistory, historiesLeft } from "../../../bot/conversation/history.ts";
import type { NewFact } from "../../../core/books/facts.ts";
import type { LedgerOnFile } from "../../../db/ledger-on-file.ts";
import { type Chat, openChat } from "./chat.ts";

const PAST = `name,bought on,price,materials,sold on,sold for
oak dresser,2026-01-03,30,12.50,2026-02-01,190
lamp,2026-02-20,10,,,
`;

const NOW = Date.parse("2026-05-09T16:00:00Z");

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

const quiet = { debug() {}, info() {}, warn() {}, error: console.error };
const depsOf = ({ ledger }: Chat) => ({
  ...{ ledger, currency: "USD", log: quiet },
  zone: () => "America/Chicago",
  now: () => NOW,
});

test("a file of past pieces is one question, whatever its rows, and is recorded after the answer", () => {
  const asked = chat.say(PAST, { document: { name: "past.csv" } });
  expect(asked.text).toMatch(/^This would record 2 pieces\n/);
  expect(chat.statement().pieces).toHaveLength(0);
  expect(chat.say("yes").text).toContain(
    "Recorded 2 past pieces, 1 of them sold. Their profit counts as sent.",
  );
  expect(chat.statement()).toMatchObject({
    earmarked: "0.00",
    pieces: [{ profit: "147.50" }, { profit: null }],
  });
});

test("taking it back says in words what each row was", () => {
  chat.say(PAST, { document: { name: "past.csv" } });
  chat.say("yes");
  const back = chat.say("undo").text.split("\n");
  expect(back).toContain("Profit sent to the loan before: 147.50");
  expect(chat.statement().pieces).toHaveLength(0);
});

test("with a tax set aside, or at a loss, it changes nothing that is due to the loan", () => {
  chat.say("set aside 20% for tax");
  chat.say("loan 1000 at 0%");
  chat.say("tips 100");
  const due = chat.statement().earmarked;
  chat.say(PAST, { document: { name: "past.csv" } });
  chat.say("yes");
  expect(chat.statement().earmarked).toBe(due);
  const losing = "name,bought on,price,materials,sold on,sold for\ndesk,2026-01-03,90,,2026-03-01,40\n";
  expect(chat.say(losing, { document: { name: "more.csv" } }).text).toContain("Their loss takes nothing");
  chat.say("yes");
  expect(chat.statement().earmarked).toBe(due);
  expect(chat.statement().pieces).toHaveLength(3);
});

test("a row that was taken out since does not come back with the same file, nor a row twice with a longer one", () => {
  chat.say(PAST, { document: { name: "past.csv" } });
  chat.say("yes");
  chat.say("#2 was a mistake");
  expect(chat.statement().pieces).toHaveLength(1);
  expect(chat.say(PAST, { document: { name: "again.csv" } }).text).toContain("All of its rows were recorded");
  const longer = `${PAST}bench,2026-03-01,20,,,\n`;
  const asked = chat.say(longer, { document: { name: "longer.csv" } });
  expect(asked.text).toContain("This would record 1 piece");
  expect(asked.text).toContain("Left out, recorded from a file before: 2 rows");
  chat.say("yes");
  expect(chat.statement().pieces.map(({ name }) => name)).toEqual(["dresser", "bench"]);
});

test("taking back a long file is said in a few lines", () => {
  const rows = Array.from({ length: 50 }, (_, index) => `lamp,2026-01-03,${index + 1},,,`);
  chat.say(`name,bought on,price,materials,sold on,sold for\n${rows.join("\n")}\n`, {
    document: { name: "past.csv" },
  });
  chat.say("yes");
  chat.say("undo");
  const back = chat.say("yes").text.split("\n");
  expect(back.slice(0, 2)).toEqual(["Taken back:", "Bought #1 lamp, 1.00 on Sat Jan 3"]);
  expect(back).toContain("and 40 more");
  expect(chat.statement().pieces).toHaveLength(0);
});

describe("what is left of a file", () => {
  /** Sixty pieces, before and behind which others were bought. */
  const many = Array.from({ length: 60 }, (_, index) => {
    const day = String(1 + ((index * 7) % 28)).padStart(2, "0");
    return `oak chair,2026-02-${day},${index + 1},2.50,${index % 2 ? `2026-03-${day},${index + 40}` : ","}`;
  });
  const FILE = ["name,bought on,price,materials,sold on,sold for", ...many].join("\n");
  const conversation = () => createConversation(depsOf(chat));
  const yes = () => ({ person: 1, chat: "home", message: "yes", text: "yes", said: NOW });

  function offered(): void {
    chat.say("bought desk 30 on jan 2");
    chat.say("bought mirror 9 today");
    chat.say(FILE, { document: { name: "past.csv" } });
    conversation().hear(yes(), { leavesLong: true });
    expect(chat.statement().pieces).toHaveLength(2);
  }

  /** The books are those that the facts give, in the file as in memory. */
  function isWhole(): void {
    const order = [...chat.ledger.books.pieces.keys()];
    const told = chat.statement();
    expect((chat.ledger as LedgerOnFile).rederive()).toBe(0);
    chat.restart();
    expect(chat.statement()).toEqual(told);
    expect([...chat.ledger.books.pieces.keys()]).toEqual(order);
  }

  test("is gone on with after a stop, and recorded once", async () => {
    offered();
    chat.restart();
    await conversation().goOn(() => true);
    expect(chat.statement().pieces).toHaveLength(2);
    await conversation().goOn(() => false);
    await conversation().goOn(() => false);
    conversation().hear(yes());
    expect(chat.statement().pieces).toHaveLength(62);
    expect(chat.statement().earmarked).toBe("0.00");
    isWhole();
    expect(chat.say("undo").text).toContain("151 notes");
    chat.say("yes");
    expect(chat.statement().pieces).toHaveLength(2);
    isWhole();
  });

  test("is worked out again where something is recorded meanwhile", () => {
    offered();
    const [left] = historiesLeft(chat);
    const steps = handleHistory(depsOf(chat), left!, () => {});
    for (let index = 0; index < 400; index += 1) steps.next();
    const { ledger } = chat;
    const data = { made: [{ name: "stool", traits: [] }] };
    const facts: NewFact[] = [
      { kind: "buy", data, day: "2026-02-10", pieces: [ledger.nextPiece], amount: 700 },
    ];
    ledger.transaction(() => ledger.record({ note: 1, author: 1, facts }));
    while (!steps.next().done);
    expect(chat.statement().pieces).toHaveLength(63);
    expect(historiesLeft(chat)).toEqual([]);
    isWhole();
  });

  test("that goes wrong leaves nothing in the books, and is told", () => {
    offered();
    const [left] = historiesLeft(chat);
    const deps = depsOf(chat);
    const steps = handleHistory({ ...deps, log: { ...deps.log, error() {} } }, left!, () => {
      throw new Error("broken");
    });
    while (!steps.next().done);
    expect(chat.statement().pieces).toHaveLength(2);
    expect(historiesLeft(chat)).toEqual([]);
    expect(chat.ledger.note(left!.note.id)).toMatchObject({ state: "failed" });
    expect(chat.say("bought lamp 3").text).toContain("nothing of the file is in the books");
    isWhole();
  });
});
