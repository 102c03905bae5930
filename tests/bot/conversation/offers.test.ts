import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
  chat.say("bought dresser 45");
  chat.say("listed dresser 325");
});
afterEach(() => chat.end());

const dresser = () => chat.ledger.books.pieces.get(1)!;

describe("what is offered for a listed piece", () => {
  test("is no sale, and waits to be taken", () => {
    const reply = chat.say("guy offered 280 for the dresser");
    expect(reply.text).toContain("no sale yet");
    expect(reply.buttons.map(({ label }) => label)).toEqual([
      "Hold #1 dresser at 280.00",
      "Sold #1 dresser 280.00",
      "Not taken",
    ]);
    expect(dresser()).toMatchObject({ gone: null, hold: null });
  });

  test.each([
    ["somebody wants the dresser for 280"],
    ["a guy wants it for 280"],
    ["she wants the dresser, 280"],
  ])("is told by %j as well, and is no question of what one is worth", (text) => {
    expect(chat.say(text).text).toContain("An offer of 280.00");
    expect(chat.say("she paid the 280 and left with it").text).toContain("Sold #1 dresser for 280.00");
  });

  test("is asked about with a question mark", () => {
    expect(chat.say("someone wants the dresser for 280, good price?").text).not.toContain("An offer of");
  });

  test.each([
    ["took it"],
    ["ok, i took it"],
    ["accepted the 280"],
    ["im fine with 280"],
    ["told him yes"],
    ["deal"],
  ])("is taken by %j", (answer) => {
    chat.say("guy offered 280 for it");
    expect(chat.say(answer).text).toContain("on hold at 280.00");
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
  });

  test("is taken with what is told of the deal, and paid at that price", () => {
    chat.say("guy offered 280, said id think about it");
    expect(chat.say("took it. he's coming saturday, put 40 down").text).toMatch(
      /at 280\.00 until Sat.*\n.*40\.00/,
    );
    expect(chat.say("he came, paid the rest").text).toContain("Sold #1 dresser for 280.00");
  });

  test.each([["he gave me 280 and took it"], ["she paid the 280 and left with it"]])(
    "is paid: %j",
    (text) => {
      chat.say("guy offered 280 for it");
      expect(chat.say(text).text).toContain("Sold #1 dresser for 280.00");
    },
  );

  test("is taken with when they come", () => {
    chat.say("guy offered 280 for it");
    expect(chat.say("he agreed, coming at 5").text).toContain("on hold at 280.00");
  });

  test("is answered with another price, and taken at that", () => {
    chat.say("guy offered 250 for it");
    expect(chat.say("told him 280 and he's in").text).toContain("on hold at 280.00");
  });

  test("is taken with what was left for it, and when they come", () => {
    chat.say("guy offered 280 for it");
    expect(chat.say("took it. picks it up saturday, left 20").text).toMatch(
      /at 280\.00 until Sat.*\n?.*20\.00/,
    );
  });

  test("is taken by a yes that is told with what was left", () => {
    chat.say("guy offered 280 for it");
    expect(chat.say("said yes, he left 30 and comes friday").text).toMatch(
      /at 280\.00 until Fri.*\n?.*30\.00/,
    );
  });

  test.each([["said yes, she will send a 50 deposit later"], ["took it, deposit 50 when she gets off work"]])(
    "is taken without the deposit that is still to come: %j",
    (text) => {
      chat.say("guy offered 280 for it");
      expect(chat.say(text).text).toContain("on hold at 280.00");
      expect(dresser().deposit).toBe(0);
      expect(chat.say("got the 50").buttons[0]?.label).toBe("Hold #1 dresser, deposit 50.00");
    },
  );

  test("is not taken where a sum told with it cannot be placed", () => {
    chat.say("guy offered 280 for it");
    chat.say("took it, 15 and 20 for whatever");
    expect(dresser().hold).toBeNull();
  });

  test("is what a deposit is put down on", () => {
    chat.say("guy offered 280");
    chat.say("he put 40 down already");
    expect(dresser().hold).toMatchObject({ agreed: 28_000 });
    expect(dresser().deposit).toBe(4_000);
  });

  test("is not what a deposit on another piece is for", () => {
    chat.say("bought lamp 10");
    chat.say("listed lamp 60");
    chat.say("guy offered 280 for the dresser");
    chat.say("paint 12 for lamp");
    chat.say("he put 15 down on it");
    expect(dresser()).toMatchObject({ hold: null, deposit: 0 });
  });

  test("stands beside the asking price where a sale tells none", () => {
    chat.say("a lady would pay 270 for it");
    const labels = chat.say("sold the dresser").buttons.map(({ label }) => label);
    expect(labels.slice(0, 2)).toEqual(["270.00, as offered", "325.00, as listed"]);
  });

  test("is asked about where it was held without a price and is fetched", () => {
    chat.say("guy offered 280 for the dresser");
    chat.say("deposit 40 on dresser from sam");
    const reply = chat.say("sam picked up the dresser");
    expect(dresser().gone).toBeNull();
    expect(reply.buttons.map(({ label }) => label)).toContain("280.00, as offered");
  });

  test.each([
    ["someone offered 200, told him no"],
    ["lowballed 120 on the dresser lol"],
    ["guy wants 20 off"],
  ])("is not asked about in %j", (text) => {
    chat.say(text);
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
  });

  test("is dropped when it is turned down, and by the sale at another price", () => {
    chat.say("guy offered 280 for the dresser");
    chat.say("told him no");
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
    chat.say("guy offered 290 for the dresser");
    chat.say("sold dresser 310 cash");
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
    expect(dresser().gone).toBe("sold");
  });

  test("of two prices the one named last is the one that was taken", () => {
    chat.say("she offered 250, i countered 300");
    expect(chat.say("deal").text).toContain("on hold at 300.00");
  });
});

test("what somebody will pay is no sale, and nobody is called by it", () => {
  expect(chat.say("he'll take it for 290").text).toContain("no sale yet");
  expect(chat.say("she'd pay 290 for the dresser").text).toContain("no sale yet");
  expect(dresser().gone).toBeNull();
});

describe("what a note that waits tells of a held piece", () => {
  beforeEach(() => {
    chat.say("hold dresser for dana at 290, 50 deposit");
    expect(dresser().hold?.agreed).toBe(29000);
  });

  test("is not forgotten by the sale that follows", () => {
    chat.say("sold dresser to ray, 300, he paid half now and half when he picks up");
    const reply = chat.say("he picked up and paid the rest");
    expect(reply.buttons.map(({ label }) => label)).toEqual([
      "300.00, as told",
      "290.00, as agreed",
      "Never mind",
    ]);
    expect(dresser().gone).toBeNull();
  });

  test("leaves the price agreed on where nothing waits", () => {
    expect(chat.say("he picked up and paid the rest").text).toContain("Sold #1 dresser for 290.00");
  });

  test("is not what a note of another kind corrects", () => {
    chat.say("bought bench 20");
    chat.say("sold dresser to ray, 300, he paid half now and half when he picks up");
    expect(chat.say("actually just list the bench at 150").text).toContain("Listed #2 bench at 150.00");
  });
});
