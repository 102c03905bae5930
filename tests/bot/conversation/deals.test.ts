import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";
import { tell } from "./telling.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

const piece = (number: number) => chat.statement().pieces.find((each) => each.number === number);

describe("a trade", () => {
  test("asks what was given is worth, and tells both sides", () => {
    chat.say("bought chair 15");
    chat.say("listed chair 40");
    const asked = chat.say("traded chair plus 20 for a dresser");
    expect(asked.text).toContain("What is #1 chair worth? A trade counts as a sale at that.");
    expect(asked.buttons.map(({ label }) => label)).toEqual([
      "List price 40.00",
      "What it cost 15.00",
      "Never mind",
    ]);
    const said = chat.press("List price 40.00");
    expect(said.text).toContain("Traded #1 chair for #2 dresser, 20.00 paid on top");
    expect(said.text).toContain("Profit 25.00 (cost 15.00)");
    expect(piece(2)).toMatchObject({ name: "dresser", price: "60.00", status: "bought" });
    expect(piece(1)).toMatchObject({ status: "sold", proceeds: "40.00" });
    chat.say("undo");
    expect(piece(1)).toMatchObject({ status: "listed", profit: null });
    expect(piece(2)).toBeUndefined();
  });

  test("takes a typed amount for the worth, and is corrected by its cost: worth or cash", () => {
    chat.say("bought chair 15");
    chat.say("traded chair for a dresser");
    chat.say("50");
    expect(piece(2)?.price).toBe("50.00");
    const asked = chat.say("dresser actually cost 65");
    expect(asked.buttons.map(({ label }) => label)).toEqual([
      "What I gave was worth 65.00",
      "15.00 was paid on top",
      "Never mind",
    ]);
    chat.press("15.00 was paid on top");
    expect(piece(2)?.price).toBe("65.00");
    expect(piece(1)?.proceeds).toBe("50.00");
  });

  test("of a piece with a deposit on it is refused until the buyer is settled", () => {
    chat.say("bought chair 15");
    chat.say("deposit 5 on chair");
    chat.say("traded chair for a dresser");
    expect(chat.say("50").text).toContain("A deposit of 5.00 is held on #1 chair");
  });
});

const hutch = [{ name: "hutch", count: 1 }];

describe("money still owed", () => {
  beforeEach(() => {
    chat.say("bought hutch 60");
  });

  test("is told so that the lines add up, and asked for nowhere else", () => {
    chat.say("deposit 45 on hutch");
    const said = tell(chat, "sell", {
      pieces: hutch,
      price: 20_000,
      owed: 5_000,
      fee: 660,
      buyer: "neighbor",
    });
    expect(said.text).toContain("Sold #1 hutch for 200.00 to neighbor\nfee 6.60");
    expect(said.text).toContain("200.00: 45.00 deposit, 105.00 today\n50.00 still owed");
    expect(said.text).toContain("Profit 133.40 (cost 60.00, fee 6.60)");
    expect(piece(1)).toMatchObject({ status: "sold", owed: "50.00", proceeds: "200.00" });
  });

  test("is collected from the one sale that owes it; more than that is asked about", () => {
    tell(chat, "sell", { pieces: hutch, price: 20_000, owed: 5_000 });
    const more = tell(chat, "collect", { amount: 6_000 });
    expect(more.text).toContain("Only 50.00 is owed on #1 hutch. How much came in?");
    tell(chat, "collect", { amount: 2_000, method: "cash" });
    const rest = tell(chat, "collect", { amount: 3_000 });
    expect(rest.text).toContain("Got 30.00 for #1 hutch");
    expect(rest.text).toContain("Paid in full");
    expect(tell(chat, "collect", { amount: 100, pieces: hutch }).text).toContain(
      "Nothing is owed on #1 hutch.",
    );
  });

  test("of several sales is asked about, and of the buyer named taken", () => {
    chat.say("bought desk 30");
    tell(chat, "sell", { pieces: hutch, price: 20_000, owed: 5_000, buyer: "neighbor" });
    tell(chat, "sell", { pieces: [{ name: "desk", count: 1 }], price: 9_000, owed: 5_000, buyer: "teacher" });
    const asked = tell(chat, "collect", { amount: 5_000 });
    expect(asked.labels).toEqual([
      "#2 desk: 50.00 owed by teacher",
      "#1 hutch: 50.00 owed by neighbor",
      "Never mind",
    ]);
    expect(tell(chat, "collect", { amount: 5_000, buyer: "neighbor" }).text).toContain(
      "Got 50.00 from neighbor for #1",
    );
  });

  test("for a held piece is its sale, at deposit and rest together", () => {
    chat.say("listed hutch 200");
    chat.say("deposit 45 on hutch");
    const sold = tell(chat, "collect", { amount: 15_500, pieces: hutch });
    expect(sold.text).toContain("Sold #1 hutch for 200.00");
    chat.say("undo");
    const asked = tell(chat, "collect", { amount: 12_000, pieces: hutch });
    expect(asked.labels).toEqual(["165.00, 120.00 of it today", "120.00 in all", "Never mind"]);
  });

  test("that never comes takes off the sale; on a sale booked as paid the cash goes back", () => {
    tell(chat, "sell", { pieces: hutch, price: 20_000, owed: 5_000 });
    expect(tell(chat, "refund", { pieces: hutch, unpaid: true }).text).toContain(
      "50.00 never came for #1 hutch",
    );
    expect(chat.statement()).toMatchObject({ buyersOwe: "0.00" });
    const bounced = tell(chat, "refund", { pieces: hutch, amount: 15_000, unpaid: true });
    expect(bounced.text).toContain("Gave back 150.00 on #1 hutch");
    expect(chat.statement().months[0]).toMatchObject({ proceeds: "0.00", cashOut: "210.00" });
  });

  test("makes a refund doubtful: cash back, or off what is owed", () => {
    tell(chat, "sell", { pieces: hutch, price: 20_000, owed: 5_000 });
    const asked = tell(chat, "refund", { pieces: hutch, amount: 2_000 });
    expect(asked.labels).toEqual(["20.00 off what is owed", "Gave back 20.00 in cash", "Never mind"]);
  });

  test("cannot be more than is left to pay", () => {
    chat.say("deposit 45 on hutch");
    const asked = tell(chat, "sell", { pieces: hutch, price: 20_000, owed: 18_000 });
    expect(asked.text).toContain("155.00 is left to pay, so 180.00 cannot be owed");
  });
});

describe("a share of a profit", () => {
  test("is shown piece by piece, recorded as help, and passes over what made nothing", () => {
    chat.say("bought desk 30");
    chat.say("sold desk 90");
    chat.say("bought lamp 30");
    chat.say("sold lamp 20");
    chat.press(/Yes/);
    const pieces = [
      { name: "desk", count: 1 },
      { name: "lamp", count: 1 },
    ];
    const asked = tell(chat, "share", { pieces, with: "dad", percent: "33.3" });
    expect(asked.text).toContain("33.3% of the profit for dad:\n#1 desk: 19.98 of 60.00");
    expect(chat.statement().months[0]?.flipProfit).toBe("50.00");
    tell(chat, "share", { pieces: [{ name: "desk", count: 1 }], with: "dad" });
    expect(piece(1)?.profit).toBe("60.00");
  });

  test("of an unsold piece is refused", () => {
    chat.say("bought desk 30");
    expect(tell(chat, "share", { pieces: [{ name: "desk", count: 1 }] }).text).toContain("not sold yet");
  });
});

test("who did it stays with the note and is told", () => {
  const said = tell(chat, "buy", { pieces: [{ name: "bookcase", count: 1 }], price: 2_500, by: "dad" });
  expect(said.text).toContain("Bought #1 bookcase, 25.00, by dad");
  expect(chat.ledger.books.facts[0]?.by).toBe("dad");
  expect(chat.say("make that 30").text).toContain("Bought #1 bookcase, 30.00, by dad");
});

test("commission is income of what is kept and nothing else", () => {
  tell(chat, "income", { amount: 1_000, stream: "commission" });
  expect(chat.statement().months[0]).toMatchObject({
    otherIncome: "10.00",
    cashIn: "10.00",
    proceeds: "0.00",
  });
});

test("the month names a traded piece as sold, with nothing said of later spending", () => {
  chat.say("bought hutch 60");
  chat.say("traded hutch for a trunk");
  chat.say("90");
  const { text } = chat.say("month");
  expect(text).toContain("+30.00  #1 hutch");
  expect(text).not.toContain("spent after the sale");
});
