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

  test("a price with its fee is the sale's, and no shop cost", () => {
    chat.say("bought dresser 30");
    chat.say("sold dresser");
    expect(chat.say("190 fee 5").text).toContain("Sold #1 dresser for 190.00, fee 5.00");
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

  test("a yes, a day or a shrug names no stream and no purchase", () => {
    for (const note of ["income 40", "spent 12"]) {
      chat.say(note);
      const count = chat.ledger.books.facts.length;
      for (const words of ["no", "yesterday", "idk", "not sure", "I don't know"]) chat.say(words);
      expect(chat.ledger.books.facts).toHaveLength(count);
      chat.say("never mind");
    }
  });

  test("what waits is asked again on asking for it", () => {
    expect(chat.say("what's waiting").text).toBe("Nothing is waiting for an answer.");
    chat.say("bought a desk");
    chat.say("sold lamp");
    chat.say("tips 20");
    const asked = chat.say("waiting");
    expect(asked.text).toBe(
      'About "sold lamp":\nWhat did the lamp sell for, in all?\n1 note still waiting: bought a desk',
    );
    chat.say("never mind");
    expect(chat.say("waiting").buttons.map(({ label }) => label)).toEqual(["It was free", "Never mind"]);
  });

  test("no button offers an amount that was only an example", () => {
    for (const note of ["goal 5", "goal 0 pieces this month", "loan 100000000"])
      expect(chat.say(note).buttons).toEqual([]);
    for (const note of ["desk 30", "desk $1.2k", "desk thirty five", "loan 500"])
      expect(chat.say(note).buttons.length).toBeGreaterThan(1);
  });

  test("miles corrected before they were said have no idle zeros", () => {
    chat.say("drove");
    expect(chat.say("make that 35").text).toContain("Drove 35 miles");
  });

  test("a price of each waits for how many there were", () => {
    expect(chat.say("bought stools 15 each").text).toContain("How many stools?");
    expect(chat.say("4").text).toContain("60.00");
    expect(chat.statement().pieces.filter((piece) => piece.name === "stool")).toHaveLength(4);
  });

  test("a new note does not drop an open question, and does not speak of it", () => {
    chat.say("bought dresser 30");
    chat.say("sold dresser");
    expect(chat.say("bought lamp 5").text).not.toContain("waiting");
    expect(chat.say("waiting").text).toContain('About "sold dresser":');
    expect(chat.say("190").text).toContain("Sold #1 dresser for 190.00");
  });

  test("an amount after a newer note may be the answer or that note's: both are buttons", () => {
    chat.say("bought dresser 30");
    chat.say("sold dresser");
    chat.say("bought lamp 5");
    expect(chat.say("19").buttons.map(({ label }) => label)).toEqual([
      "Sold #1 dresser 19.00",
      "#2 lamp 5.00 → 19.00",
      "None of these",
    ]);
    expect(chat.statement().pieces.map(({ price, proceeds }) => [price, proceeds])).toEqual([
      ["30.00", "0.00"],
      ["5.00", "0.00"],
    ]);
    chat.press("#2 lamp 5.00 → 19.00");
    expect(chat.statement().pieces[1]?.price).toBe("19.00");
    expect(chat.ledger.questions.everyOpen().map(({ matter }) => matter.reading.text)).toEqual([
      "sold dresser",
    ]);
  });

  test("a correction goes to the newest note, whatever is open", () => {
    chat.say("bought bench 12");
    chat.say("sold bench");
    chat.say("bought mirror 20");
    expect(chat.say("actually 25").text).toContain("Bought #2 mirror, 25.00");
    expect(chat.statement().pieces[0]?.sold).toBeNull();
  });

  test("a note that says what was asked closes the question", () => {
    chat.say("bought bench 12");
    chat.say("sold bench");
    expect(chat.say("sold the bench for 45 cash").text).toContain("Sold #1 bench for 45.00 cash");
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
  });

  test("a note that waited for its piece goes on when the piece is bought", () => {
    expect(chat.say("sold hutch 200").text).toContain("No hutch on the books");
    expect(chat.say("bought hutch 40").text).toContain("hutch for 200.00");
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
    expect(chat.statement().pieces[0]).toMatchObject({ price: "40.00", proceeds: "200.00" });
  });

  test("everything that waits can be cleared at once", () => {
    chat.say("bought dresser, sold nightstand 60");
    expect(chat.say("clear waiting").text).toBe("Dropped: bought dresser, sold nightstand 60");
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
    expect(chat.say("never mind all").text).toBe("Nothing is waiting for an answer.");
  });

  test("small talk gets a word or nothing, and leaves what is open", () => {
    chat.say("bought mirror");
    expect(chat.say("thanks!!").text).toBe("Any time.");
    expect(chat.say("good morning").text).toBe("Good morning.");
    for (const words of ["lol", "\u{1F44D}", "haha nice", "ok cool"])
      expect(chat.say(words).text, words).toBe("");
    expect(chat.say("14").text).toContain("Bought #1 mirror, 14.00");
  });

  test("what can be no more is asked about no longer", () => {
    chat.say("bought 2 lamps 10");
    chat.say("maybe list the lamps at 40");
    expect(chat.ledger.questions.everyOpen()).toHaveLength(1);
    chat.say("finished the lamps");
    expect(chat.ledger.questions.everyOpen()).toHaveLength(1);
    chat.say("sold both lamps 25");
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
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
    const { message, buttons } = chat.say("sold dresser 190");
    const { press } = buttons.find(({ label }) => label.includes("#2"))!;
    chat.press(/#1/);
    expect(() => chat.press(/#2/)).toThrow("no button");
    expect(chat.tap({ message, press }).text).toContain("answered already");
    expect(chat.statement().months[0]?.flipped).toBe(1);
  });

  test.each([["sold for 190"], ["sold it for 190"], ["it was 190"], ["190 to neighbor"], ["make that 190"]])(
    "'%s' answers what it sold for",
    (answer) => {
      chat.say("bought dresser 30");
      chat.say("sold dresser");
      expect(chat.say(answer).text).toContain("Sold #1 dresser for 190.00");
      expect(chat.statement().pieces[0]?.proceeds).toBe("190.00");
    },
  );

  test("what came back and what was kept of a deposit is said in any of these ways", () => {
    for (const [answer, kept] of [
      ["30", "15.00"],
      ["refunded 30", "15.00"],
      ["kept it", "45.00"],
      ["all", "0.00"],
    ] as const) {
      const other = openChat();
      other.say("bought desk 30");
      other.say("deposit 45 on desk");
      other.say("no show on desk");
      other.say(answer);
      expect([answer, other.statement().pieces[0]?.depositsKept]).toEqual([answer, kept]);
      other.end();
    }
  });

  test("an open question takes no note that is about another piece", () => {
    chat.say("bought dresser 30");
    chat.say("sold dresser");
    for (const note of ["lamp 30", "thinking of selling the hutch for 90", "mirror 40 to neighbor"]) {
      chat.say(note);
      expect(chat.statement().pieces).toHaveLength(1);
      expect(chat.statement().pieces[0]?.sold).toBeNull();
    }
    chat.say("drove 24 miles");
    expect(chat.ledger.books.facts.at(-1)?.kind).toBe("drive");
  });

  test("a number that picks one of several leaves the other pieces of the note in it", () => {
    chat.say("bought tall dresser 30");
    chat.say("bought white dresser 40");
    chat.say("bought lamp 5");
    chat.say("sold dresser and lamp 90");
    chat.say("#2");
    expect(chat.statement().pieces.map((piece) => piece.proceeds)).toEqual(["0.00", "45.00", "45.00"]);
  });

  test("a bare number is a piece only where a candidate has it", () => {
    chat.say("bought tall dresser 30");
    chat.say("bought white dresser 40");
    chat.say("sold dresser 190");
    chat.say("7");
    expect(chat.statement().pieces.every((piece) => piece.sold === null)).toBe(true);
    chat.say("#2");
    expect(chat.statement().pieces[1]?.proceeds).toBe("190.00");
  });

  test("a question about one of several pieces picks none of them", () => {
    chat.say("bought tall dresser 30");
    chat.say("bought white dresser 40");
    chat.say("sold dresser 190");
    const count = chat.statement().pieces.length;
    const shown = chat.say(`show #${count}`).text;
    expect(shown).toContain(`#${count} white dresser: bought`);
    chat.say(`is it #${count}?`);
    chat.say("how's the white dresser");
    expect(chat.statement().pieces.filter(({ sold }) => sold !== null)).toEqual([]);
    expect(chat.say(`#${count}`).text).toContain("Sold");
  });

  test("several alike but for their state are told apart by it", () => {
    chat.say("bought 4 chairs 40");
    chat.say("listed chairs 70");
    chat.say("deposit 20 on 2 chairs");
    expect(chat.say("sold 2 chairs 50").buttons.map(({ label }) => label)).toEqual([
      "2 chairs (#1, #2), on hold",
      "2 chairs (#3, #4), listed 17.50 each",
      "Never mind",
    ]);
  });

  test("in a reply it answers the question replied to, not the newest", () => {
    const desk = chat.say("bought a desk");
    chat.say("bought a hutch");
    expect(chat.say("40", { replyTo: desk.message }).text).toContain("Bought #1 desk, 40.00");
    chat.say("70");
    expect(chat.statement().pieces.map(({ name, price }) => [name, price])).toEqual([
      ["desk", "40.00"],
      ["hutch", "70.00"],
    ]);
  });

  test("in a reply to a question answered before it answers no other", () => {
    const desk = chat.say("bought a desk");
    chat.say("40");
    chat.say("bought a hutch");
    chat.say("45", { replyTo: desk.message });
    expect(chat.statement().pieces.map(({ name, price }) => [name, price])).toEqual([["desk", "40.00"]]);
  });

  test("a yes that answers nothing says what is asked, or that nothing is", () => {
    expect(chat.say("yes").text).toBe("Nothing is waiting for an answer.");
    chat.say("bought a desk");
    const again = chat.say("yes");
    expect(again.text).toBe("That needs more than a yes or no.\nWhat did you pay for the desk?");
    expect(again.buttons.map(({ label }) => label)).toEqual(["It was free", "Never mind"]);
    chat.say("40");
    expect(chat.statement().pieces[0]?.price).toBe("40.00");
  });

  test("never mind names all that is dropped", () => {
    chat.say("bought white dresser 30");
    chat.say("bought blue dresser 40");
    chat.say("finished dresser and listed it 165");
    expect(chat.say("never mind").text).toBe("Dropped: finished dresser, listed it 165");
  });

  test("the next one of the same message says what it is about", () => {
    chat.say("sold hutch\nsold chair");
    expect(chat.say("never mind").text).toBe(
      'Dropped: sold hutch\nAbout "sold chair":\nWhat did the chair sell for, in all?',
    );
  });

  test("never mind closes the newest of several, the others wait on", () => {
    chat.say("bought a desk");
    chat.say("bought a hutch");
    expect(chat.say("never mind").text).toBe("Dropped: bought a hutch\n1 note still waiting: bought a desk");
    expect(chat.say("40").text).toContain("Bought #1 desk, 40.00");
  });

  test("two members each have their own", () => {
    const other = chat.ledger.transaction(() =>
      chat.ledger.members.add({ user: "2002", name: "Wren", role: "member", joined: 0 }),
    );
    chat.say("bought a desk");
    chat.say("bought a hutch", { person: other });
    chat.say("40");
    chat.say("70", { person: other });
    expect(chat.statement().pieces.map(({ name, price }) => [name, price])).toEqual([
      ["desk", "40.00"],
      ["hutch", "70.00"],
    ]);
  });

  test("another note meanwhile does not ask the next one before its turn", () => {
    chat.say("bought dresser, sold nightstand 60");
    chat.say("bought lamp 5");
    chat.say("30");
    expect(chat.press("Bought dresser 30.00").text).toContain("Bought #2 dresser, 30.00");
    chat.say("10");
    expect(chat.statement().pieces.map(({ name, price }) => [name, price])).toEqual([
      ["lamp", "5.00"],
      ["dresser", "30.00"],
      ["nightstand", "10.00"],
    ]);
  });

  test("the next step's button asks by number and name", () => {
    chat.say("bought tall dresser 30");
    chat.say("finished dresser");
    expect(chat.press("List it").text).toBe("What is the asking price for #1 tall dresser?");
    chat.say("190");
    expect(chat.statement().pieces[0]?.listPrice).toBe("190.00");
  });

  test("a restart in the middle of several loses none and keeps their order", () => {
    chat.say("bought dresser, sold nightstand 60");
    chat.restart();
    expect(chat.say("30").text).toContain("No nightstand on the books");
    chat.restart();
    expect(chat.say("10").text).toContain("Sold #2 nightstand for 60.00");
  });

  test("a clause after one recorded without a piece goes by its own words", () => {
    chat.say("paint 12 for dresser and listed it 90");
    expect(chat.press(/shop cost/).text).toContain("No dresser on the books");
    chat.say("20");
    expect(chat.statement().pieces[0]).toMatchObject({
      price: "20.00",
      listPrice: "90.00",
      materials: "0.00",
    });
  });

  test("what money was spent on brings its category and its piece", () => {
    chat.say("bought desk 30");
    chat.say("spent 18");
    chat.say("glue");
    expect(chat.ledger.books.facts.at(-1)?.data).toMatchObject({ what: "glue", category: "materials" });
    chat.say("spent 7");
    chat.say("paint for the desk");
    // The desk was the piece spoken of.
    expect(chat.statement().pieces[0]?.materials).toBe("25.00");
  });

  test("a day given in place of a doubted one is taken", () => {
    chat.at("2026-12-20T15:00:00Z");
    chat.say("bought dresser 30 feb 3");
    chat.say("dec 3");
    expect(chat.statement().pieces[0]?.bought).toBe("2026-12-03");
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

  test("ten times the list price, and the amount that was meant typed after it", () => {
    chat.say("sold dresser 1900");
    chat.say("195");
    expect(chat.statement().pieces[0]?.proceeds).toBe("195.00");
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

  test("the same block pasted twice is asked about as a whole", () => {
    chat.say("tips 20\nads 5");
    expect(chat.say("tips 20\nads 5").text).toContain("same note");
    expect(chat.statement().months[0]?.otherIncome).toBe("25.00");
    chat.say("yes");
    expect(chat.statement().months[0]?.otherIncome).toBe("50.00");
  });

  test("the same note from another member says who sent it", () => {
    const other = chat.ledger.transaction(() =>
      chat.ledger.members.add({ user: "2002", name: "Wren", role: "member", joined: 0 }),
    );
    chat.say("tips 20", { person: other });
    expect(chat.say("tips 20").text).toContain("Wren sent the same note");
    expect(chat.statement().months[0]?.otherIncome).toBe("20.00");
  });

  test("the same note while the first is still asked about takes the place of the first", () => {
    chat.say("bought a desk");
    const again = chat.say("bought a desk").text;
    expect(again).toBe("What did you pay for the desk?");
    expect(chat.say("40").text).not.toContain("waiting");
    expect(chat.statement().pieces.map((piece) => piece.name)).toEqual(["dresser", "desk"]);
  });

  test("the same note once more after what it lacked was recorded", () => {
    expect(chat.say("finished lamp").text).toContain("No lamp on the books");
    const bought = chat.say("bought lamp 20").text;
    expect(bought).toContain("lamp is finished");
    expect(bought).not.toContain("waiting");
  });

  test("the same note again after an hour is a note of its own", () => {
    chat.say("tips 20");
    chat.at("2026-05-09T16:30:00Z");
    expect(chat.say("tips 20").text).toContain("Got 20.00 from tips");
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

  test("deposits of two buyers are no part of one price", () => {
    chat.say("bought desk 30");
    chat.say("deposit 45 on dresser from ann");
    chat.say("deposit 15 on desk from bob");
    const before = chat.statement();
    expect(chat.say("sold dresser and desk 300 to ann").text).toContain("Deposits of ann and bob");
    expect(chat.statement()).toEqual(before);
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

  test("a rate told in an answer outlives an edit of the loan", () => {
    chat.say("new loan 12000", { message: "m" });
    chat.say("5.5");
    chat.say("new loan 13000", { message: "m", edited: true });
    expect(chat.statement().loans).toMatchObject([{ rate: "5.5", principal: "13000.00" }]);
  });

  test("an edit that leaves the rate open asks for it", () => {
    chat.say("new loan 12000 at 5.5%", { message: "m" });
    expect(chat.say("new loan 13000", { message: "m", edited: true }).text).toContain("yearly rate");
    chat.say("6");
    expect(chat.statement().loans).toMatchObject([{ rate: "6", principal: "13000.00" }]);
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
