import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

/** The lines of a reply; all of them have to fit a phone. */
function linesOf(reply: { text: string }): string[] {
  const lines = reply.text.split("\n");
  for (const line of lines) expect(line.length).toBeLessThanOrEqual(90);
  return lines;
}

describe("a note of one fact", () => {
  test("is answered in five short lines at most: piece, profit, and what it moved", () => {
    chat.say("loan 14250 at 5.5%");
    chat.say("bought nightstand 12");
    const lines = linesOf(chat.say("sold nightstand 60 cash"));
    expect(lines).toEqual([
      "Sold #1 nightstand for 60.00 cash",
      "Profit 48.00 (cost 12.00)",
      "Month +48.00 · due to the loan 48.00",
    ]);
  });

  test("keeps to five lines with a deposit, a caution, a loan and a note that waits", () => {
    for (const note of ["loan 14250 at 5.5%", "bought tall chest 12", "bought lamp", "deposit 20 on chest"])
      chat.say(note);
    expect(linesOf(chat.say("sold chest 160")).length).toBeLessThanOrEqual(5);
  });

  test("names the day when it is not the message's own", () => {
    expect(linesOf(chat.say("bought dresser 30 yesterday"))[0]).toBe("Bought #1 dresser, 30.00 on Fri May 8");
    expect(chat.statement().pieces[0]?.bought).toBe("2026-05-08");
  });

  test("says what a lot came to for each piece", () => {
    expect(linesOf(chat.say("bought 2 dressers 60"))).toEqual([
      "Bought 2 dressers (#1, #2), 60.00:",
      "30.00 each",
    ]);
    expect(chat.say("bought desk, chair and mirror 100").text).toContain("33.34, 33.33, 33.33");
  });

  test("dated by when it was sent, in the ledger's zone", () => {
    chat.at("2026-06-01T03:30:00Z");
    chat.say("bought dresser 30");
    expect(chat.statement().pieces[0]?.bought).toBe("2026-05-31");
  });

  test("the same update twice counts once", () => {
    chat.say("bought dresser 30", { update: "77", message: "5" });
    expect(chat.say("bought dresser 30", { update: "77", message: "5" }).text).toBe("");
    expect(chat.statement().pieces).toHaveLength(1);
  });
});

describe("several clauses and lines", () => {
  test("a line a fact, the totals once, 'it' is the piece of the clause before", () => {
    chat.say("bought desk 20");
    const lines = linesOf(chat.say("finished desk and listed it 165"));
    expect(lines.slice(0, 2)).toEqual(["#1 desk is finished", "Listed #1 desk at 165.00"]);
    expect(lines).toHaveLength(2);
    expect(chat.statement().pieces[0]).toMatchObject({ finished: "2026-05-09", listPrice: "165.00" });
  });

  test("every line of several says its amounts", () => {
    chat.say("bought desk 20 and hutch 30");
    const lines = linesOf(chat.say("deposit 45 on desk transfer\nhold hutch for bob"));
    expect(lines.slice(0, 2)).toEqual([
      "#1 desk is on hold, deposit 45.00 by transfer",
      "#2 hutch is on hold for bob",
    ]);
    expect(chat.say("desk fell through refunded 30").text).toContain("30.00 given back\n15.00 kept");
  });

  test("in a pasted block what is not understood is listed with its line, the rest is recorded", () => {
    const reply = chat.say("bought dresser 30\nasdkjh\nbought lamp 5");
    expect(reply.text).toContain('Line 2 "asdkjh" is not recorded');
    expect(chat.statement().pieces.map((piece) => piece.name)).toEqual(["dresser", "lamp"]);
  });

  test("a clause whose 'it' is not settled waits with it", () => {
    chat.say("bought white dresser 30");
    chat.say("bought blue dresser 40");
    const reply = chat.say("finished dresser and listed it 165");
    expect(reply.text).toContain("Which dresser");
    expect(chat.statement().pieces.every((piece) => piece.listed === null)).toBe(true);
    chat.press(/#2/);
    expect(chat.statement().pieces[1]).toMatchObject({ finished: "2026-05-09", listPrice: "165.00" });
    expect(chat.statement().pieces[0]).toMatchObject({ finished: null, listPrice: null });
  });

  test("a long pasted block gets one summary and the totals", () => {
    const block = Array.from({ length: 40 }, (_, index) => `bought lamp ${index + 1}`).join("\n");
    const reply = chat.say(block);
    expect(reply.text.split("\n")[0]).toBe("Recorded 40 notes: 40 bought");
    expect(chat.statement().pieces).toHaveLength(40);
  });

  test("and the summary counts one of a kind as one", () => {
    const bought = Array.from({ length: 19 }, (_, index) => `bought lamp ${index + 1}`);
    const block = [...bought, "loan 1000 at 5%", "paid loan 20", "drove 4 miles", "drove 5 miles"].join("\n");
    expect(chat.say(block).text.split("\n")[0]).toBe(
      "Recorded 23 notes: 19 bought, 2 drives, 1 loan, 1 loan payment",
    );
  });
});

describe("the pieces a note means", () => {
  test("a sale of a piece that was never bought asks its cost, adds it, and goes on", () => {
    const asked = chat.say("sold nightstand 60 cash");
    expect(asked.text).toContain("No nightstand on the books. What did it cost?");
    expect(chat.statement().pieces).toHaveLength(0);
    const reply = chat.say("12");
    expect(reply.text).toContain("Sold #1 nightstand for 60.00 cash");
    expect(chat.statement().pieces[0]).toMatchObject({ price: "12.00", proceeds: "60.00", profit: "48.00" });
  });

  test("'it was free' is an answer to what it cost", () => {
    chat.say("sold nightstand 60 cash");
    chat.press("It was free");
    expect(chat.statement().pieces[0]).toMatchObject({ price: "0.00", profit: "60.00" });
  });

  test("several candidates get a button each; a trait picks one", () => {
    chat.say("bought tall dresser 30");
    chat.say("bought white dresser 40");
    const asked = chat.say("sold dresser 190");
    expect(asked.buttons.map((button) => button.label)).toEqual([
      "#1 tall dresser, bought",
      "#2 white dresser, bought",
      "Never mind",
    ]);
    expect(chat.say("the tall one").text).toContain("Sold #1 tall dresser for 190.00");
  });

  test("two bought apart are never taken for one another", () => {
    chat.say("bought dresser 30");
    chat.say("bought dresser 90 estate sale");
    expect(chat.say("sold dresser 190").text).toContain("Which dresser");
    expect(chat.say("#2").text).toContain("Profit 100.00");
  });

  test("pieces alike in a lot: the lowest number is taken and named", () => {
    chat.say("bought 4 chairs 40");
    expect(chat.say("sold chair 35").text).toContain("Sold #1 chair for 35.00");
    expect(chat.say("sold 2 chairs 70").text).toContain("Sold 2 chairs (#2, #3) for 70.00");
  });

  test("a set's name means all of it that is left", () => {
    chat.say("bought dining set 5 pieces 120");
    expect(chat.say("sold dining set 400").text).toContain("Sold dining set (#1–#5) for 400.00");
    expect(chat.statement().months[0]?.flipped).toBe(5);
  });

  test("a smaller count of a set is asked about", () => {
    chat.say("bought dining set 5 pieces 120");
    const asked = chat.say("sold dining set 3 pieces 200");
    expect(asked.text).toBe("All 5 of the dining set, or only 3?");
    expect(asked.buttons.map(({ label }) => label)).toEqual(["All 5: #1–#5", "Only 3: #1–#3", "Never mind"]);
    expect(chat.statement().pieces.filter((piece) => piece.sold)).toHaveLength(0);
    chat.say("3");
    expect(chat.statement().pieces.filter((piece) => piece.sold)).toHaveLength(3);
  });

  test("a sold piece: by number refused, by name asked", () => {
    chat.say("bought dresser 30");
    chat.say("sold dresser 100");
    expect(chat.say("sold #1 120").text).toMatch(
      /^#1 \w+ was sold today\. Undo that first if it is wrong\.$/,
    );
    expect(chat.say("sold dresser 120").text).toContain("The same one, or another?");
    expect(chat.statement().months[0]?.proceeds).toBe("100.00");
  });

  test("several sold pieces are asked about as several", () => {
    chat.say("bought 2 stools 20");
    chat.say("sold stools 50");
    const asked = chat.say("sold 2 stools 45");
    expect(asked.text).toBe("2 stools (#1, #2) were sold today. The same ones, or others?");
    expect(asked.buttons.map(({ label }) => label)).toEqual([
      "Other stools: add them",
      "The same ones: skip",
    ]);
  });

  test("what several sold together for each is told beside their price, not beside the profit", () => {
    chat.say("bought 2 stools 20");
    expect(chat.say("sold stools 50 cash").text).toMatch(
      /^Sold 2 stools \(#1, #2\) for 50\.00\n\(25\.00 each\) cash\nProfit 30\.00 \(cost 20\.00\)\n/,
    );
  });

  test("a piece that was not listed is off hold when its buyer goes, not bought again", () => {
    chat.say("bought 2 stools 20");
    chat.say("hold stools");
    expect(chat.say("no show on stools").text).toContain("Buyer gone: 2 stools (#1, #2) are off hold");
  });

  test("where no piece of the name fits, what became of each is told", () => {
    chat.say("bought buffet 30");
    chat.say("sold buffet 100");
    chat.say("bought maple buffet 42");
    chat.say("listed maple buffet 240");
    expect(chat.say("no show on buffet, kept 20").text).toBe(
      "#1 buffet was sold today. #2 maple buffet is listed, not on hold.",
    );
    expect(chat.say("refunded 10 on #2").text).toBe("#2 maple buffet is listed, not sold.");
  });

  test("a near-miss spelling of an unlisted noun finds its piece", () => {
    chat.say("bought whirligig 20");
    expect(chat.say("sold whirlygig 50").text).toContain("Sold #1 whirligig");
  });

  test("a head noun alone is the one piece that goes by it; where two do, it is asked", () => {
    chat.say("bought end table 20");
    expect(chat.say("started the table").text).toContain("#1 end table is started");
    chat.say("bought coffee table 30");
    expect(chat.say("sold table 50").text).toContain("Which table");
    expect(chat.statement().pieces[0]?.sold).toBeNull();
  });

  test("a word that means much the same is asked about, not guessed", () => {
    chat.say("bought trunk 20");
    expect(chat.say("sold chest 50").text).toContain("Which chest");
    expect(chat.statement().pieces[0]?.sold).toBeNull();
  });

  test("another word for the same thing is that, where no other piece is", () => {
    chat.say("bought bookcase 20");
    expect(chat.say("sold bookshelf 50").text).toContain("Sold #1 bookcase for 50.00");
  });

  test("a number that is not there is refused", () => {
    expect(chat.say("finished #14").text).toContain("There is no #14");
  });
});

describe("what cannot be recorded is said plainly and changes nothing", () => {
  test.each([
    ["asdkjh"],
    ["bought stool 15 20"],
    ["sold vanity -45"],
    ["bought desk 19.995"],
    ["finished #99"],
    ["   "],
    ["45"],
  ])("%s", (note) => {
    const reply = chat.say(note);
    expect(reply.text.length).toBeGreaterThan(10);
    expect(chat.ledger.books.facts).toHaveLength(0);
  });

  test("a plan is offered as what it would record", () => {
    chat.say("bought dresser 30");
    const asked = chat.say("want to list the dresser at 90");
    expect(asked.buttons.map(({ label }) => label)).toEqual(["Listed #1 dresser at 90.00", "None of these"]);
    chat.press("None of these");
    expect(chat.statement().pieces[0]?.listed).toBeNull();
  });

  test("no button records a piece or a rate that was only an example", () => {
    expect(chat.say("45").buttons).toEqual([]);
    expect(chat.say("loan 500").buttons.map((button) => button.label)).not.toContain("new loan 500 at 5.5%");
  });

  test("a noun and a number offers what it could be, by the books", () => {
    const asked = chat.say("dresser 30");
    expect(asked.buttons.map((button) => button.label)).toEqual(["Bought dresser 30.00", "None of these"]);
    chat.press("Bought dresser 30.00");
    expect(chat.statement().pieces[0]).toMatchObject({ name: "dresser", price: "30.00" });
    chat.say("finished dresser");
    expect(chat.say("dresser 80").buttons.map((button) => button.label)).toEqual([
      "Listed #1 dresser at 80.00",
      "Sold #1 dresser 80.00",
      "Bought dresser 80.00",
      "None of these",
    ]);
  });

  test("a refused fact leaves the books as they were", () => {
    chat.say("bought dresser 30");
    chat.say("deposit 40 on dresser");
    const before = chat.statement();
    expect(chat.say("trashed the dresser").text).toMatch(/40\.00/);
    expect(chat.say("buyer backed out of dresser, refunded 60").text).toContain("Only 40.00 is held");
    expect(chat.statement()).toEqual(before);
  });
});

describe("a list that says no verb", () => {
  const HAUL = "rummage sale: wingback chair 15, 2 lamps 3 each, plant stand 4";
  const piecesOf = () =>
    [...chat.ledger.books.pieces.values()].map(({ name, price, source }) => [name, price, source]);
  const BOUGHT = [
    ["wingback chair", 1500, "rummage sale"],
    ["lamp", 300, "rummage sale"],
    ["lamp", 300, "rummage sale"],
    ["plant stand", 400, "rummage sale"],
  ];

  test("is a purchase from the place said first, where the books have nothing of the kind", () => {
    expect(chat.say(HAUL).buttons.map(({ label }) => label)).toEqual(["Undo"]);
    expect(piecesOf()).toEqual(BOUGHT);
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
  });

  test("is asked about once, and one press records all of it from the place said first", () => {
    chat.say("bought lamp 5");
    const asked = chat.say(HAUL);
    expect(asked.buttons.map(({ label }) => label)).toEqual([
      "Bought wingback chair 15.00, rummage sale, and 2 more",
      "One by one",
      "None of these",
    ]);
    chat.press(/2 more/);
    expect(piecesOf().slice(1)).toEqual(BOUGHT);
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
  });

  test("is asked about piece by piece where that is wanted", () => {
    chat.say("bought desk 30");
    chat.say("desk 120, stool 8");
    chat.press("One by one");
    chat.press("Listed #1 desk at 120.00");
    chat.press("Bought stool 8.00");
    const pieces = [...chat.ledger.books.pieces.values()];
    expect(pieces.map(({ name, listPrice }) => [name, listPrice])).toEqual([
      ["desk", 12000],
      ["stool", null],
    ]);
  });
});
