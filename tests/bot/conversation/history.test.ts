import { afterEach, beforeEach, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

const PAST = `name,bought on,price,materials,sold on,sold for
oak dresser,2026-01-03,30,12.50,2026-02-01,190
lamp,2026-02-20,10,,,
`;

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

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
