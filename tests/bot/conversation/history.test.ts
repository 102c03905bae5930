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
