import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat({ start: "2026-05-03T15:00:00Z" });
  chat.say("bought dresser 30");
});
afterEach(() => chat.end());

const sellOn = (day: string, note = "sold dresser 190") => {
  chat.at(`2026-05-${day}T15:00:00Z`);
  return chat.say(note);
};
const dresser = () => chat.statement().pieces[0];

describe("a late note about a piece that has gone since is tested against its own day", () => {
  test.each([
    ["finished dresser on 5/4", { finished: "2026-05-04" }],
    ["listed dresser 210 on 5/4", { listed: "2026-05-04", listPrice: "210.00" }],
    ["started dresser on 5/4", { started: "2026-05-04" }],
  ])("%s", (note, shown) => {
    sellOn("06");
    expect(chat.say(note).buttons.map(({ label }) => label)).toContain("Undo");
    expect(dresser()).toMatchObject({ ...shown, status: "sold", sold: "2026-05-06", profit: "160.00" });
  });

  test("a deposit from before is part of the price that was recorded, and the reply says so", () => {
    sellOn("06");
    const reply = chat.say("deposit 45 on dresser on 5/4");
    expect(reply.text).toContain("190.00: 45.00 deposit, 145.00 that day");
    expect(reply.text).not.toContain("not earned yet");
    expect(dresser()).toMatchObject({ proceeds: "190.00", deposit: "0.00" });
    expect(chat.statement().months[0]).toMatchObject({ cashIn: "190.00" });
  });

  test("a fall-through of a hold before the sale", () => {
    chat.say("deposit 45 on dresser from ann");
    sellOn("06", "sold dresser 190 to ann");
    expect(chat.say("dresser fell through on 5/4 kept 45").text).toContain("45.00 kept");
    expect(dresser()).toMatchObject({ proceeds: "235.00", depositsKept: "45.00", profit: "205.00" });
  });

  test("on the day of the sale or after it the piece is gone, and the note is refused", () => {
    sellOn("06");
    chat.at("2026-05-08T15:00:00Z");
    for (const note of ["finished #1 on 5/6", "finished #1", "listed #1 90 on 5/7"]) {
      const reply = chat.say(note);
      expect([note, reply.text]).toEqual([note, expect.stringContaining("was sold")]);
    }
  });

  test("a note of a name means the piece that was here that day, not one bought since", () => {
    sellOn("06");
    chat.say("bought dresser 50");
    chat.say("finished dresser on 5/4");
    expect(chat.statement().pieces.map((piece) => piece.finished)).toEqual(["2026-05-04", null]);
  });

  test("what would make a later fact impossible is refused, and the fact named", () => {
    chat.say("deposit 45 on dresser");
    chat.at("2026-05-05T15:00:00Z");
    chat.say("dresser fell through refunded 20");
    sellOn("06");
    expect(chat.say("dresser fell through on 5/4 refunded 45").text).toContain("In the way");
    expect(dresser()).toMatchObject({ depositsKept: "25.00" });
  });
});

describe("a fall-through that waits for its answer when the sale comes", () => {
  beforeEach(() => {
    chat.say("deposit 45 on dresser");
    chat.say("no show on dresser");
  });

  test("is settled first, and the sale then goes on by itself", () => {
    const asked = chat.say("sold dresser 190 cash");
    expect(asked.text).toContain("45.00 is held");
    expect(dresser()).toMatchObject({ status: "held" });
    const reply = chat.say("kept it");
    expect(reply.text).toContain("Sold #1 dresser for 190.00");
    expect(dresser()).toMatchObject({ proceeds: "235.00", depositsKept: "45.00", status: "sold" });
  });

  test("keeps the day of each", () => {
    sellOn("06");
    chat.at("2026-05-08T15:00:00Z");
    chat.press("Kept 45.00");
    expect(dresser()).toMatchObject({ sold: "2026-05-06", depositsKept: "45.00" });
    const [, , gone] = chat.ledger.books.facts;
    expect(gone).toMatchObject({ kind: "fallthrough", day: "2026-05-03" });
  });

  test("dropped, the sale goes on by itself too", () => {
    chat.say("sold dresser 190 cash");
    expect(chat.press("Never mind").text).toContain("Sold #1 dresser for 190.00");
    expect(dresser()).toMatchObject({ proceeds: "190.00", depositsKept: "0.00" });
  });

  test("a sale of several pieces keeps all of them", () => {
    chat.say("bought lamp 10");
    chat.say("sold dresser and lamp 200 cash");
    chat.say("kept it");
    expect(chat.statement().pieces.map((piece) => piece.status)).toEqual(["sold", "sold"]);
  });

  test("by somebody else, the sale asks the one who sells", () => {
    const member = chat.ledger.transaction(() =>
      chat.ledger.members.add({ user: "2002", name: "Wren", role: "member", joined: 1 }),
    );
    expect(chat.say("sold dresser 190 cash", { person: member }).text).toContain("45.00 is held");
    chat.say("kept it", { person: member });
    expect(dresser()).toMatchObject({ proceeds: "235.00" });
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
  });
});

describe("needless questions", () => {
  test("part of a deposit kept is taken as said", () => {
    chat.say("deposit 45 on dresser");
    const reply = chat.say("dresser fell through kept 40");
    expect(reply.text).toContain("5.00 given back\n40.00 kept");
  });

  test("nothing of it kept, too", () => {
    chat.say("deposit 45 on dresser");
    expect(chat.say("dresser fell through kept 0").text).toMatch(/ 45\.00 given back$/m);
  });

  test("more than is held is not", () => {
    chat.say("deposit 45 on dresser");
    expect(chat.say("dresser fell through kept 50").text).toContain("Only 45.00 is held");
  });
});

describe("a fix of a sale that used a deposit goes by the rule of the sale", () => {
  test("a price that no sale would be asked about is the whole price", () => {
    chat.say("deposit 45 on dresser");
    chat.say("sold dresser 190");
    const reply = chat.say("make that 185");
    expect(reply.text).toContain("185.00: 45.00 deposit, 140.00 today");
    expect(chat.ledger.questions.everyOpen()).toEqual([]);
    expect(dresser()).toMatchObject({ proceeds: "185.00" });
  });

  test("one at or under the list price less the deposit is asked about", () => {
    chat.say("listed dresser 190");
    chat.say("deposit 45 on dresser");
    chat.say("sold dresser 190");
    expect(chat.say("make that 140").buttons.map(({ label }) => label)).toContain(
      "140.00 today, 185.00 in all",
    );
  });

  test("a sale that was said as what came that day is still asked about", () => {
    chat.say("listed dresser 190");
    chat.say("deposit 45 on dresser");
    chat.say("sold dresser 145");
    chat.press("145.00 today, 190.00 in all");
    expect(chat.say("make that 150").buttons.map(({ label }) => label)).toContain(
      "150.00 today, 195.00 in all",
    );
  });
});
