import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

describe("follow-up answers", () => {
  test("a missing price is asked, and the next bare answer is taken", () => {
    expect(chat.say("bought a dresser at the thrift store").text).toContain(
      "What did you pay for the dresser?",
    );
    expect(chat.say("35").text).toContain("Bought #1 dresser, 35.00, thrift store");
  });

  test("an answer may say how it was paid, too", () => {
    chat.say("bought dresser 30");
    chat.say("sold dresser");
    expect(chat.say("90 cash").text).toContain("Sold #1 dresser for 90.00 cash");
  });

  test("hours, miles and counts are taken as such", () => {
    chat.say("bought hutch 30");
    chat.say("worked on the hutch");
    expect(chat.say("1h30").text).toContain("1 h 30");
    chat.say("drove to get the hutch");
    expect(chat.say("24").text).toContain("Drove 24 miles");
    chat.say("bought stools 60");
    chat.say("3");
    expect(chat.statement().pieces.filter((piece) => piece.name === "stool")).toHaveLength(3);
  });

  test("a new note does not drop an open question, and says that it waits", () => {
    chat.say("bought dresser 30");
    chat.say("sold dresser");
    const reply = chat.say("bought lamp 5");
    expect(reply.text.split("\n").at(-1)).toBe("1 note still waiting: sold dresser");
    expect(chat.say("190").text).toContain("Sold #1 dresser for 190.00");
    expect(chat.say("bought mirror 5").text).not.toContain("still waiting");
  });

  test("never mind closes it and records nothing", () => {
    chat.say("sold nightstand 60");
    expect(chat.say("never mind").text).toContain("Dropped");
    expect(chat.ledger.books.facts).toHaveLength(0);
    expect(chat.say("never mind").text).toContain("Nothing is waiting");
  });

  test("open questions survive a restart", () => {
    chat.say("bought a dresser");
    chat.restart();
    expect(chat.say("35").text).toContain("Bought #1 dresser, 35.00");
  });

  test("two of one message are asked in turn", () => {
    const first = chat.say("bought dresser, sold nightstand 60");
    expect(first.text).toContain("What did you pay for the dresser?");
    const second = chat.say("30");
    expect(second.text).toContain("Bought #1 dresser");
    expect(second.text).toContain("No nightstand on the books");
    expect(chat.say("10").text).toContain("Sold #2 nightstand for 60.00");
  });

  test("a button of an answered question does nothing more", () => {
    chat.say("bought tall dresser 30");
    chat.say("bought white dresser 40");
    chat.say("sold dresser 190");
    chat.press(/#1/);
    expect(chat.press(/#2/).text).toContain("answered already");
    expect(chat.statement().months[0]?.flipped).toBe(1);
  });

  test("an old day is asked about before it counts", () => {
    chat.at("2026-12-20T15:00:00Z");
    const asked = chat.say("bought dresser 30 feb 3");
    expect(asked.text).toContain("long ago");
    expect(chat.ledger.books.facts).toHaveLength(0);
    chat.say("yes");
    expect(chat.statement().pieces[0]?.bought).toBe("2026-02-03");
  });
});

describe("odd but possible", () => {
  beforeEach(() => {
    chat.say("bought dresser 30");
    chat.say("listed dresser 190");
  });

  test("ten times the list price", () => {
    const asked = chat.say("sold dresser 1900");
    expect(asked.text).toContain("ten times".replace("ten", "10"));
    chat.press("It was 190.00");
    expect(chat.statement().pieces[0]?.proceeds).toBe("190.00");
  });

  test("under cost", () => {
    expect(chat.say("sold dresser 20").text).toContain("under what it cost");
    expect(chat.statement().pieces[0]?.sold).toBeNull();
    expect(chat.say("yes").text).toContain("Profit -10.00");
  });

  test("the same note twice within five minutes", () => {
    chat.say("tips 20");
    expect(chat.say("tips 20").text).toContain("same note");
    expect(chat.statement().months[0]?.otherIncome).toBe("20.00");
    chat.say("yes");
    expect(chat.statement().months[0]?.otherIncome).toBe("40.00");
  });

  test("the same note again after an hour is a note of its own", () => {
    chat.say("tips 20");
    chat.at("2026-05-09T16:30:00Z");
    expect(chat.say("tips 20").text).toContain("Other income: 20.00");
    expect(chat.statement().months[0]?.otherIncome).toBe("40.00");
  });

  test("a price that could be the whole or the rest of a deposit's sale", () => {
    chat.say("deposit 45 on dresser from neighbor");
    const asked = chat.say("sold dresser 145");
    expect(asked.buttons.map((button) => button.label)).toEqual([
      "145.00 in all",
      "145.00 today, 190.00 in all",
      "Never mind",
    ]);
    const reply = chat.press("145.00 today, 190.00 in all");
    expect(reply.text).toContain("190.00: 45.00 deposit, 145.00 today");
    expect(chat.statement().depositsHeld).toBe("0.00");
  });

  test("another buyer than the hold's", () => {
    chat.say("deposit 45 on dresser from neighbor");
    chat.say("sold dresser 190 to lady in the red truck");
    chat.press("Given back to neighbor");
    expect(chat.statement().pieces[0]).toMatchObject({
      proceeds: "190.00",
      depositsKept: "0.00",
      deposit: "0.00",
    });
    expect(chat.statement().months[0]).toMatchObject({ cashIn: "235.00", cashOut: "75.00" });
  });

  test("a sale dated before its piece was bought", () => {
    expect(chat.say("sold dresser 190 on 5/2").text).toContain("was bought");
    expect(chat.ledger.books.facts.some((fact) => fact.kind === "sell")).toBe(false);
  });

  test("a fall-through with a deposit held asks what became of it", () => {
    chat.say("deposit 45 on dresser");
    expect(chat.say("no show on dresser").text).toContain("45.00 is held");
    chat.press("Kept 45.00");
    expect(chat.statement().pieces[0]).toMatchObject({ depositsKept: "45.00", status: "listed" });
  });
});

describe("the loan", () => {
  test("without a rate it is recorded at 0, said so, and the rate asked holds from its first day", () => {
    const reply = chat.say("new loan 12000");
    expect(reply.text).toContain("0%");
    expect(reply.text).toContain("rate");
    chat.say("5.5");
    expect(chat.statement().loans[0]).toMatchObject({ rate: "5.5", principal: "12000.00" });
    chat.at("2026-06-09T15:00:00Z");
    expect(chat.statement().loans[0]?.accruedInterest).toBe("56.05");
  });

  test("more than is owed is not recorded as it stands", () => {
    chat.say("loan 85.40 at 5.5%");
    chat.at("2026-05-29T15:00:00Z");
    expect(chat.say("paid loan 100").text).toContain("Only 85.66 is owed");
    chat.press("Pay 85.66");
    expect(chat.statement().loans[0]).toMatchObject({ balance: "0.00", paid: "85.66" });
  });

  test("a payment before any loan is on the books waits for the loan", () => {
    expect(chat.say("paid loan 500").text).toContain("What was owed before");
    chat.say("12000");
    chat.say("0");
    expect(chat.statement().loans[0]).toMatchObject({ principal: "11500.00", paid: "500.00" });
  });
});
