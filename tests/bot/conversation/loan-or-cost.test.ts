import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

const labels = (text: string): string[] => (chat.say(text).buttons ?? []).flat().map(({ label }) => label);

describe("a cost that is called like a loan", () => {
  beforeEach(() => {
    chat.say("new loan van 3100 at 7.2%");
    chat.say("new loan truck 900 at 3%");
  });

  test.each([
    ["van 150", "Paid van loan 150.00"],
    ["paid van 150", "Paid van loan 150.00"],
    ["truck 80", "Paid truck loan 80.00"],
  ])("%s is asked about", (note, button) => {
    expect(labels(note)).toContain(button);
    expect(chat.ledger.books.facts.filter(({ kind }) => kind === "spend" || kind === "pay")).toHaveLength(0);
  });

  test.each(["van insurance 90", "gas 30 for the van"])("%s is a cost and is not asked about", (note) => {
    chat.say(note);
    expect(chat.ledger.books.facts.at(-1)?.kind).toBe("spend");
  });
});

test("without such a loan it is a cost", () => {
  chat.say("van 150");
  expect(chat.ledger.books.facts.at(-1)?.kind).toBe("spend");
});

describe("no goal", () => {
  test("says that there is none, and how to set one", () => {
    expect(chat.say("no goal").text).toBe("No goal is set. Any time, text:\ngoal 800 a month");
  });

  test("says how to take one out", () => {
    chat.say("goal 30 pieces this year");
    expect(chat.say("no goal").text).toBe("Goal: 30 pieces a year\nTo take it out, text:\ndelete the goal");
    chat.say("delete the goal");
    expect(chat.say("no goals please").text).toContain("No goal is set");
  });
});

test.each([
  "how do i get the smell out of a trunk",
  "how do i fix a wobbly chair",
  "how to strip the oak dresser",
])("%s: no page of the help tells of it", (question) => {
  expect(chat.say(question).text).toBe("How that is done I cannot tell: I only keep the books.");
});

describe("an offer", () => {
  beforeEach(() => {
    chat.say("bought mirror 25 cash");
  });

  test.each(["guy offered 60 for the mirror", "was offered 60 for the mirror and took it"])(
    "%s is a note and no question",
    (note) => {
      expect(chat.say(note).text).toContain("An offer is no sale yet.");
    },
  );

  test("whether to take it is answered", () => {
    for (const price of [40, 50, 60]) {
      chat.say(`bought lamp 10`);
      chat.say(`sold lamp ${price}`);
    }
    expect(chat.say("guy offered 60 for the mirror, take it?").text).toMatch(
      /^(?:Yes|No), at 60\.00 #1 mirror/,
    );
  });
});
