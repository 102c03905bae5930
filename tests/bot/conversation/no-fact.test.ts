import { afterAll, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

/*
 * What was offered, planned, feared or denied is recorded nowhere, whatever stands on the books or is still asked: an
 * open question that wants a price is not answered by the price of somebody who only thinks about it.
 */

const BEFORE: readonly (readonly string[])[] = [
  ["bought desk 35 and bench 20", "bought hutch 60", "listed hutch 199"],
  ["bought hutch 60", "listed hutch 199", "dad picked up a bench 25"],
  ["bought desk 35", "bought hutch 60", "my wife sold the desk, 65 cash", "thats sold"],
  ["bought hutch 60", "sold hutch"],
  ["bought hutch 60", "bought lamp"],
  ["bought hutch 60", "listed hutch 199", "deposit 40 on hutch from ben"],
  ["bought hutch 60", "listed hutch 199", "hold the hutch for ben till friday"],
  ["loan 14250 at 5.5%", "bought hutch 60", "paint for hutch"],
  ["bought hutch 60", "worked on the hutch"],
  ["bought 2 hutches 60", "sold a hutch 90"],
];

const LINES: readonly string[] = [
  "someone asked if id do 180 on the hutch",
  "a guy offered 150 for the hutch",
  "she wants it for 120",
  "might sell the hutch for 150",
  "ben is thinking about 170",
  "lady says she can do 140 cash",
  "he asked if i would take 90",
  "somebody may come get the hutch for 180",
  "if he comes it sells for 160",
  "planning to drop it to 150",
  "i wont take less than 170",
  "almost sold the hutch for 180",
  "no one wants the hutch at 199",
  "will pay 200 on the loan friday",
  "gonna buy paint 20",
  "saw a dresser for 60",
  "guy wants 80 for his dresser",
  "mom wants to buy the hutch for 100",
  "got an offer of 165 on the hutch",
  "pending at 180",
  "would be 40 for paint",
  "quoted 75 to fix the hutch",
  "not done with hutch",
  "let me know if the hutch sells for 180",
];

describe("what has not happened", () => {
  const chats: Chat[] = [];
  afterAll(() => {
    for (const chat of chats) chat.end();
  });

  test.each(BEFORE.map((before) => ({ before })))("records nothing behind $before", ({ before }) => {
    const chat = openChat();
    chats.push(chat);
    for (const note of before) chat.say(note);
    const back = chat.keep();
    const stood = chat.ledger.books.facts.map(({ id }) => id);
    const recorded = LINES.filter((line) => {
      chat.say(line);
      const stands = chat.ledger.books.facts.map(({ id }) => id);
      back();
      return stands.join() !== stood.join();
    });
    expect(recorded).toEqual([]);
  });
});
