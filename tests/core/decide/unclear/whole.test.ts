import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "../../../bot/conversation/chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

const labels = (text: string, how: Parameters<Chat["say"]>[1] = {}): string[] =>
  chat.say(text, how).buttons.map(({ label }) => label);
const kinds = (): string[] => chat.ledger.books.facts.map(({ kind }) => kind);

describe("an unclear note is asked with whole readings", () => {
  test("in words of the books, likeliest first, the last for none of them", () => {
    chat.say("bought desk 50");
    chat.say("listed desk 140");
    expect(labels("lowered desk 20")).toEqual(["#1 desk, 20.00 less", "#1 desk now 20.00", "None of these"]);
    expect(chat.press("#1 desk, 20.00 less").text).toContain("#1 desk now 120.00");
  });

  test("what the books cannot take is no button", () => {
    expect(labels("dresser 30")).toEqual(["Bought dresser 30.00", "None of these"]);
  });

  test("none of these records nothing and leaves nothing open", () => {
    chat.say("dresser 30");
    chat.press("None of these");
    expect(kinds()).toEqual([]);
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
  });

  test("where nothing is left over and one reading stands, it is recorded", () => {
    chat.say("bought trunk 25");
    chat.say("listed trunk 80");
    expect(chat.say("the neighbor bought the trunk 80").text).toContain(
      "Sold #1 trunk for 80.00 to neighbor",
    );
  });

  test("a word from no list is asked twice, then passed over, and told in the settings", () => {
    for (const piece of ["desk", "lamp", "bench"]) chat.say(`bought ${piece} 10`);
    expect(labels("sold desk 40 zorp")).toEqual(["Sold #1 desk 40.00", "None of these"]);
    chat.press("Sold #1 desk 40.00");
    chat.say("sold lamp 30 zorp");
    chat.say("yes");
    expect(chat.say("settings").text).toContain('Passed over: "zorp" beside sell');
    expect(chat.say("sold bench 35 zorp").text).toContain("Sold #3 bench for 35.00");
  });

  test("a word passed over beside one verb is still asked beside another", () => {
    for (const piece of ["desk", "lamp", "bench"]) chat.say(`bought ${piece} 10`);
    for (const note of ["sold desk 40 zorp", "sold lamp 30 zorp"]) {
      chat.say(note);
      chat.say("yes");
    }
    expect(labels("listed bench 60 zorp")).toContain("None of these");
    expect(kinds()).not.toContain("list");
  });
});

describe("the piece spoken of", () => {
  test("a cost of material goes to it, and can be taken off it", () => {
    chat.say("bought armoire 55");
    expect(chat.say("hinges 9.50").text).toContain("Hinges 9.50 for #1 armoire");
    expect(chat.press("Not for the armoire").text).toContain("shop cost");
    expect(chat.statement().pieces[0]?.materials).toBe("0.00");
    expect(chat.statement().months[0]?.overhead).toBe("9.50");
  });

  test("of several costs each button says which it takes off", () => {
    chat.say("bought armoire 55");
    expect(labels("new runners, 18, and white paint 27")).toEqual(
      expect.arrayContaining(["New runners not for the armoire", "White paint not for the armoire"]),
    );
  });

  test("other costs, another day and a piece that is gone are no part of it", () => {
    chat.say("bought armoire 55");
    chat.say("gas 20");
    chat.say("sander 59");
    chat.say("stain 8 yesterday");
    chat.say("sold armoire 200");
    chat.say("wax 4");
    chat.at("2026-05-11T15:00:00Z");
    chat.say("bought bench 10");
    chat.at("2026-05-12T15:00:00Z");
    chat.say("glue 3");
    expect(chat.statement().pieces.map(({ materials }) => materials)).toEqual(["0.00", "0.00"]);
  });

  test("it is the newest one, of this person, that day; a verb that does not fit is asked about", () => {
    chat.say("bought bench 12");
    chat.say("bought armoire 55");
    expect(chat.say("finished it").text).toContain("#2 armoire is finished");
    chat.say("sold armoire 200");
    expect(chat.say("listed it 60").text).toBe("What did you list? Say its name or number.");
    expect(chat.statement().pieces[0]?.listed).toBeNull();
  });

  test("it is the piece asked about since", () => {
    chat.say("bought bench 12");
    chat.say("bought armoire 55");
    chat.say("how's the bench doing");
    expect(chat.say("finished it").text).toContain("#1 bench is finished");
  });

  test("a reply to its message needs no name", () => {
    const bench = chat.say("bought bench 12").message;
    chat.say("bought armoire 55");
    expect(chat.say("wax 9.40", { replyTo: bench }).text).toContain("Wax 9.40 for #1 bench");
    expect(chat.say("listed 30", { replyTo: bench }).text).toContain("Listed #1 bench at 30.00");
    expect(chat.say("sold 60", { replyTo: bench }).text).toContain("Sold #1 bench for 60.00");
  });

  test("another person's piece is not it", () => {
    const wren = chat.ledger.transaction(() =>
      chat.ledger.members.add({ user: "2002", name: "Wren", role: "member", joined: 0 }),
    );
    chat.say("bought armoire 55");
    chat.say("hinges 9.50", { person: wren });
    expect(chat.statement().pieces[0]?.materials).toBe("0.00");
  });
});

describe("pieces and the words for them", () => {
  test("a number and a name that disagree are asked about, both as buttons", () => {
    chat.say("bought bench 12");
    chat.say("bought hutch 40");
    expect(labels("sold #1 hutch 90")).toEqual(["#2 hutch, bought", "#1 bench, bought", "Never mind"]);
    expect(kinds()).not.toContain("sell");
    expect(chat.press("#2 hutch, bought").text).toContain("Sold #2 hutch for 90.00");
  });

  test("a compound name, or another trait, is not just the piece", () => {
    chat.say("bought chair 14");
    chat.say("bought big dresser 40");
    for (const note of ["sold office chair 45", "sold small dresser 90", "sold red chair 40"]) {
      const asked = chat.say(note);
      expect(asked.text, note).toMatch(/^Which /m);
      expect(asked.buttons.map(({ label }) => label)).toContain("Another: add it");
    }
    expect(kinds()).not.toContain("sell");
  });
});

describe("a held piece that is fetched", () => {
  beforeEach(() => {
    chat.say("bought sideboard 40");
    chat.say("listed sideboard 130");
    chat.say("deposit 30 on sideboard from nell");
  });

  test("is sold whole where deposit and amount make its price", () => {
    expect(chat.say("sideboard picked up 100 cash").text).toContain("Sold #1 sideboard for 130.00 cash");
  });

  test("is sold whole without an amount", () => {
    expect(chat.say("sideboard picked up").text).toContain("Sold #1 sideboard for 130.00");
  });

  test("else both totals are asked", () => {
    expect(labels("sideboard picked up 105")).toEqual([
      "105.00 in all",
      "105.00 today, 135.00 in all",
      "Never mind",
    ]);
  });

  test("whether the piece is named or who left the deposit", () => {
    expect(chat.say("picked up, 100 cash").text).toContain("Sold #1 sideboard for 130.00 cash");
  });

  test("an amount beside who left the deposit is asked with both totals", () => {
    expect(labels("nell picked it up, paid 95")).toEqual([
      "95.00 in all",
      "95.00 today, 125.00 in all",
      "Never mind",
    ]);
  });

  test("by another than who left the deposit: what becomes of that is asked", () => {
    expect(chat.say("oscar picked up the sideboard 130").text).toContain("30.00 is held from nell");
  });
});

describe("who acts", () => {
  test("who of the household did it is kept and said", () => {
    expect(chat.say("dad picked up a bookcase 25").text).toContain("Bought #1 bookcase, 25.00, by dad");
    expect(chat.ledger.books.facts[0]?.by).toBe("dad");
    chat.say("no 28");
    expect(chat.ledger.books.facts[0]).toMatchObject({ by: "dad", amount: 2800 });
  });

  test("mom bought what we could have sold: for us, or from us", () => {
    chat.say("bought trunk 25");
    chat.say("listed trunk 80");
    expect(labels("mom bought the trunk 80")).toEqual([
      "Sold #1 trunk 80.00 to mom",
      "Bought trunk 80.00, by mom",
      "None of these",
    ]);
    expect(chat.press("Bought trunk 80.00, by mom").text).toContain("Bought #2 trunk, 80.00, by mom");
  });

  test("their own money into our loan is asked about", () => {
    chat.say("new loan 6000 at 5%");
    chat.say("dad paid 100 on the loan");
    expect(kinds()).toEqual(["loan"]);
    expect(chat.press("Paid loan 100.00, by dad").text).toContain("Paid loan 100.00");
  });
});

describe("corrections of the newest note, as spoken", () => {
  test("time, miles, a day and a percent", () => {
    chat.say("bought bench 12");
    chat.say("45 min on bench");
    expect(chat.say("make that 1 hour").text).toContain("1 h on #1 bench");
    expect(chat.say("no 50 min").text).toContain("50 min on #1 bench");
    chat.say("drove 24 miles");
    expect(chat.say("no 30 miles").text).toContain("Drove 30 miles");
    expect(chat.say("35 not 30").text).toContain("Drove 35 miles");
    expect(chat.say("that was yesterday").text).toContain("on Fri May 8");
    chat.say("set aside 20% for tax");
    expect(chat.say("make that 22%").text).toContain("22%");
    expect(kinds().sort()).toEqual(["buy", "drive", "taxrate", "work"]);
  });

  test("a part of the work whose time nobody took starts the piece", () => {
    chat.say("bought hall tree 40");
    expect(labels("finished first coat on hall tree")).toEqual(["No time", "Never mind"]);
    expect(chat.press("No time").text).toContain("#1 hall tree is started");
    expect(chat.statement().pieces[0]?.finished).toBeNull();
  });

  test("with nothing to correct nothing changes", () => {
    chat.say("bought bench 12");
    expect(chat.say("no 30 miles").text).toBe("I see nothing of yours that this corrects.");
    expect(chat.say("make that 22%").text).toBe("I see nothing of yours that this corrects.");
  });

  test("a small number may be of the pieces or the fee: asked", () => {
    chat.say("bought 2 stools 18");
    expect(labels("no 3")).toEqual(["3 stools, 18.00 in all", "3.00 in all", "Never mind"]);
    expect(chat.press("3 stools, 18.00 in all").text).toContain("Bought 3 stools (#1–#3), 18.00");
    chat.say("bought trunk 25");
    chat.say("sold trunk 80 fee 4");
    expect(labels("no 6")).toEqual(["Fee 6.00", "6.00 in all", "Never mind"]);
    expect(chat.press("Fee 6.00").text).toContain("fee 6.00");
    expect(chat.statement().pieces.at(-1)?.proceeds).toBe("80.00");
  });

  test("a hold till the weekday that it is means a week on", () => {
    chat.say("bought bench 12");
    expect(chat.say("hold bench till saturday").text).toContain("until Sat May 16");
  });
});

describe("answers", () => {
  test("a day in an answer counts from the answer", () => {
    chat.say("bought bench 12");
    chat.say("sold bench");
    chat.at("2026-05-14T15:00:00Z");
    expect(chat.say("55 yesterday").text).toContain("Sold #1 bench for 55.00 on Wed May 13");
  });

  test("today in an answer is the day of the answer", () => {
    chat.say("bought bench 12");
    chat.say("sold bench");
    chat.at("2026-05-14T15:00:00Z");
    chat.say("55 today");
    expect(chat.statement().pieces[0]?.sold).toBe("2026-05-14");
  });

  test("how many: a price is not taken as a count", () => {
    chat.say("bought stools 24");
    expect(labels("24")).toEqual(["24 stools", "Never mind"]);
    expect(labels("6 each")).toEqual(["4 stools at 6.00 each", "Never mind"]);
    expect(chat.press("4 stools at 6.00 each").text).toContain("Bought 4 stools");
  });

  test("how many and what for at once", () => {
    chat.say("bought stools");
    expect(chat.say("3 for 24").text).toContain("Bought 3 stools (#1–#3), 24.00");
  });

  test("what it was spent on: a piece is its piece, not the thing bought", () => {
    chat.say("bought bench 12");
    chat.say("spent 14");
    expect(labels("the bench")).toEqual(["Stuff for the bench", "Never mind"]);
    chat.say("glue");
    expect(chat.statement().pieces[0]?.materials).toBe("14.00");
  });

  test("words beside a value are asked about", () => {
    chat.say("bought armoire 70");
    chat.say("bought stool");
    chat.say("15 off");
    expect(kinds()).toEqual(["buy"]);
    expect(chat.say("came with the armoire").text).toContain("Got #2 stool, free");
  });

  test("what nobody answered for a week is dropped, with a line", () => {
    chat.say("bought bench 12");
    chat.say("sold bench");
    chat.at("2026-05-18T15:00:00Z");
    expect(chat.say("bought lamp 4").text).toContain("Dropped after a week: sold bench");
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
  });
});
