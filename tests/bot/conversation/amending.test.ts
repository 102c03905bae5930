import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

describe("undo", () => {
  test("takes back all of the last message, then the one before", () => {
    chat.say("bought dresser 30");
    chat.say("bought lamp 5 and mirror 8");
    expect(chat.say("undo").text).toContain("Taken back:");
    expect(chat.statement().pieces.map((piece) => piece.name)).toEqual(["dresser"]);
    chat.say("undo");
    expect(chat.statement().pieces).toHaveLength(0);
    expect(chat.say("undo").text).toContain("nothing");
  });

  test("piece numbers are never used again", () => {
    chat.say("bought dresser 30");
    chat.say("undo");
    expect(chat.say("bought desk 20").text).toContain("#2 desk");
  });

  test("in a reply it takes back that note", () => {
    chat.say("bought dresser 30", { message: "old" });
    chat.say("bought lamp 5");
    chat.say("undo", { replyTo: "old" });
    expect(chat.statement().pieces.map((piece) => piece.name)).toEqual(["lamp"]);
  });

  test("in a reply to the bot's answer it takes back the note answered", () => {
    const answer = chat.say("bought dresser 30");
    chat.say("bought lamp 5");
    chat.say("undo", { replyTo: answer.message });
    expect(chat.statement().pieces.map((piece) => piece.name)).toEqual(["lamp"]);
  });

  test("a purchase whose piece is sold cannot be taken back alone", () => {
    chat.say("bought dresser 30", { message: "old" });
    chat.say("sold dresser 100");
    const before = chat.statement();
    expect(chat.say("undo", { replyTo: "old" }).text).toContain("Sold #1 dresser for 100.00");
    expect(chat.statement()).toEqual(before);
  });

  test("a block of more than five is confirmed first", () => {
    chat.say(Array.from({ length: 6 }, (_, index) => `bought lamp ${index + 1}`).join("\n"));
    expect(chat.say("undo").text).toContain("6 notes");
    expect(chat.statement().pieces).toHaveLength(6);
    chat.say("yes");
    expect(chat.statement().pieces).toHaveLength(0);
  });

  test("after a fix it removes the fix and the fact", () => {
    chat.say("bought dresser 30");
    chat.say("make that 35");
    chat.say("undo");
    expect(chat.statement().pieces).toHaveLength(0);
  });

  test("of a note that was only asked about, it drops the question", () => {
    chat.say("bought dresser 30");
    chat.say("sold dresser");
    expect(chat.say("undo").text).toContain("nothing was recorded");
    expect(chat.statement().pieces).toHaveLength(1);
    expect(chat.say("90").text).not.toContain("Sold");
  });

  test("drops what the same message still asks", () => {
    chat.say("bought lamp 5, sold dresser");
    expect(chat.say("undo").text).toContain("Dropped: sold dresser");
    chat.say("90");
    expect(chat.ledger.books.facts).toHaveLength(0);
  });

  test("takes back what was answered last, not a newer note that only waits", () => {
    const asked = chat.say("bought a desk");
    chat.say("bought a hutch");
    chat.say("40", { replyTo: asked.message });
    expect(chat.say("undo").text).toContain("Taken back: Bought #1 desk, 40.00");
    expect(chat.say("70").text).toContain("hutch, 70.00");
  });

  test("by the button of an answer it takes back the note that was answered", () => {
    chat.say("sold nightstand 60");
    const { message, buttons } = chat.say("12");
    const { press } = buttons.find(({ label }) => label === "Undo")!;
    chat.press("Undo");
    expect(chat.statement().pieces).toHaveLength(0);
    expect(() => chat.press("Undo")).toThrow("no button Undo");
    expect(chat.tap({ message, press }).text).toContain("That is taken back already");
  });

  test("by the button of a long block it is confirmed first, too", () => {
    chat.say(Array.from({ length: 6 }, (_, index) => `bought lamp ${index + 1}`).join("\n"));
    expect(chat.press("Undo").text).toContain("6 notes");
    expect(chat.statement().pieces).toHaveLength(6);
    chat.press(/Take back all 6/);
    expect(chat.statement().pieces).toHaveLength(0);
  });

  test("of a fix in another's block leaves the rest of that block", () => {
    const other = chat.ledger.transaction(() =>
      chat.ledger.members.add({ user: "2002", name: "Wren", role: "member", joined: 0 }),
    );
    chat.say("tips 20\nads 5", { person: other, message: "theirs" });
    chat.say("make that 30", { replyTo: "theirs" });
    chat.press(/tips/);
    chat.say("undo");
    expect(chat.statement().months[0]?.otherIncome).toBe("5.00");
  });

  test("another person's note is taken back only by replying to it", () => {
    const other = chat.ledger.transaction(() =>
      chat.ledger.members.add({ user: "2002", name: "Wren", role: "member", joined: 0 }),
    );
    chat.say("bought dresser 30");
    expect(chat.say("undo", { person: other }).text).toContain("nothing of yours");
    expect(chat.statement().pieces).toHaveLength(1);
  });
});

describe("fix", () => {
  test("says before and after, and keeps day, place and number", () => {
    chat.say("bought dresser 30 on 5/3");
    const reply = chat.say("make that 35");
    expect(reply.text).toContain("Bought #1 dresser, 35.00 on Sun May 3");
    expect(reply.text).toContain("Before: Bought #1 dresser, 30.00");
    expect(chat.statement().pieces[0]).toMatchObject({ number: 1, price: "35.00", bought: "2026-05-03" });
  });

  test("gives the books that the right note would have given", () => {
    const other = openChat();
    for (const note of [
      "loan 12000 at 5.5%",
      "bought dresser 30",
      "paint 12 for dresser",
      "sold dresser 150",
    ]) {
      other.say(note.replace("paint 12", "paint 14.50"));
      chat.say(note, note.startsWith("paint") ? { message: "paint" } : {});
    }
    chat.say("make that 14.50", { replyTo: "paint" });
    expect(chat.statement()).toEqual(other.statement());
    other.end();
  });

  test("with several amounts in the message it asks which", () => {
    chat.say("bought dresser 30 and lamp 5");
    expect(chat.say("make that 35").text).toContain("Which amount");
    chat.press(/dresser/);
    expect(chat.statement().pieces.map((piece) => piece.price)).toEqual(["35.00", "5.00"]);
  });

  test("where the price was each it asks each or in all", () => {
    chat.say("bought 4 stools 15 each");
    chat.say("make that 20");
    chat.press("20.00 each, 80.00 in all");
    expect(chat.statement().pieces.map((piece) => piece.price)).toEqual(["20.00", "20.00", "20.00", "20.00"]);
  });

  test("asks each or in all again after a first fix, and after a price given in an answer", () => {
    chat.say("bought 4 stools");
    chat.say("15 each");
    for (const [said, sum] of [
      ["20", "80.00"],
      ["22", "88.00"],
    ]) {
      chat.say(`make that ${said}`);
      chat.press(new RegExp(`each, ${sum}`));
    }
    expect(chat.ledger.books.facts.at(-1)?.amount).toBe(8800);
  });

  test("of a sale with a deposit asks whether it is the whole price or the rest", () => {
    chat.say("bought desk 30");
    chat.say("listed desk 190");
    chat.say("deposit 45 on desk");
    chat.say("sold desk 145");
    chat.press("145.00 today, 190.00 in all");
    chat.say("make that 150");
    chat.press("150.00 today, 195.00 in all");
    expect(chat.statement().pieces[0]).toMatchObject({ proceeds: "195.00", deposit: "0.00" });
    expect(chat.statement().months[0]).toMatchObject({ cashIn: "195.00", cashOut: "30.00" });
  });

  test("of a sale with a fee leaves the fee", () => {
    chat.say("bought desk 30");
    chat.say("sold desk 145 fee 6.60");
    chat.say("make that 150");
    expect(chat.statement().pieces[0]).toMatchObject({ proceeds: "150.00", fees: "6.60", profit: "113.40" });
  });

  test("means the note just asked about, not the one before it", () => {
    chat.say("bought tall dresser 30");
    chat.say("bought white dresser 40");
    chat.say("sold dresser 190");
    chat.say("make that 180");
    chat.press(/#1/);
    expect(chat.statement().pieces.map(({ price, proceeds }) => [price, proceeds])).toEqual([
      ["30.00", "180.00"],
      ["40.00", "0.00"],
    ]);
  });

  test("asks which where one amount is recorded and another still asked about", () => {
    chat.say("bought tall dresser 30");
    chat.say("bought white dresser 40");
    chat.say("bought lamp 5, sold dresser 190");
    expect(chat.say("make that 8").text).toContain("Which amount");
    chat.press(/lamp/);
    expect(chat.statement().pieces[2]?.price).toBe("8.00");
    chat.press(/#2/);
    expect(chat.statement().pieces[1]?.proceeds).toBe("190.00");
  });

  test("with nothing to fix it says so", () => {
    expect(chat.say("make that 35").text).toContain("no amount");
  });
});

describe("an edited message", () => {
  test("that says what a fix has said already is not told as a change", () => {
    chat.say("bought dresser 300", { message: "m" });
    chat.say("make that 30");
    const { text } = chat.say("bought dresser 30", { message: "m", edited: true });
    expect(text).toContain("Bought #1 dresser, 30.00");
    expect(text).not.toContain("Before");
  });

  test("amends what it recorded, in its place, with its numbers", () => {
    chat.say("bought dresser 30", { message: "m" });
    chat.say("bought lamp 5");
    const reply = chat.say("bought white dresser 35", { message: "m", edited: true });
    expect(reply.text).toContain("#1 white dresser, 35.00");
    expect(reply.text).toContain("Before: Bought #1 dresser, 30.00");
    expect(
      chat.statement().pieces.map(({ number, name, traits, price }) => [number, name, traits, price]),
    ).toEqual([
      [1, "dresser", ["white"], "35.00"],
      [2, "lamp", [], "5.00"],
    ]);
  });

  test("of a piece with a later history keeps that history", () => {
    chat.say("bought dresser 30", { message: "m" });
    chat.say("paint 10 for dresser");
    chat.say("sold dresser 100");
    chat.say("bought dresser 40", { message: "m", edited: true });
    expect(chat.statement().pieces[0]).toMatchObject({ price: "40.00", profit: "50.00" });
  });

  test("that cannot be read changes nothing and says so", () => {
    chat.say("bought dresser 30", { message: "m" });
    const before = chat.statement();
    expect(chat.say("bought dresser 30 40", { message: "m", edited: true }).text).toContain(
      "changed nothing",
    );
    expect(chat.statement()).toEqual(before);
  });

  test("that would leave a later note impossible is refused", () => {
    chat.say("bought dresser 30 on 5/3", { message: "m" });
    chat.say("sold dresser 100 on 5/5");
    const before = chat.statement();
    expect(chat.say("bought dresser 30 on 5/8", { message: "m", edited: true }).text).toContain(
      "changed nothing",
    );
    expect(chat.statement()).toEqual(before);
  });

  test("keeps the loan that a payment had to begin with, and its rate", () => {
    chat.say("paid loan 50", { message: "old" });
    chat.say("500");
    chat.say("5%");
    const edited = chat.say("paid loan 60", { message: "old", edited: true }).text;
    expect(edited).toContain("Paid loan 60.00");
    expect(edited).not.toContain("?");
    expect(chat.statement().loans).toMatchObject([{ rate: "5", principal: "440.00", paid: "60.00" }]);
  });

  test("that takes a sold piece out of a longer message is refused", () => {
    chat.say("bought lamp 20 and bought rug 10", { message: "old" });
    chat.say("sold lamp 50");
    const reply = chat.say("bought rug 10", { message: "old", edited: true }).text;
    expect(reply).toContain("In the way: Sold #1 lamp for 50.00");
    expect(chat.statement().pieces.map(({ number, name }) => [number, name])).toEqual([
      [1, "lamp"],
      [2, "rug"],
    ]);
  });

  test("keeps each piece's number where the pieces change places or one of them its name", () => {
    const named = () => chat.statement().pieces.map(({ number, name }) => [number, name]);
    chat.say("bought lamp and rug 30", { message: "old" });
    chat.say("bought rug and lamp 30", { message: "old", edited: true });
    expect(named()).toEqual([
      [1, "lamp"],
      [2, "rug"],
    ]);
    chat.say("bought rug and mirror 30", { message: "old", edited: true });
    expect(named()).toEqual([
      [1, "mirror"],
      [2, "rug"],
    ]);
    chat.say("bought rug 30", { message: "old", edited: true });
    expect(named()).toEqual([[2, "rug"]]);
  });

  test("keeps what was answered when it first came: the piece meant, the cost of one added", () => {
    chat.say("bought tall dresser 30");
    chat.say("bought white dresser 40");
    chat.say("sold dresser 190", { message: "m" });
    chat.press(/#2/);
    chat.say("sold dresser 180", { message: "m", edited: true });
    expect(chat.statement().pieces.map((piece) => piece.proceeds)).toEqual(["0.00", "180.00"]);
    chat.say("sold nightstand 60", { message: "n" });
    chat.say("12");
    chat.say("sold nightstand 65", { message: "n", edited: true });
    expect(chat.statement().pieces[2]).toMatchObject({ number: 3, price: "12.00", proceeds: "65.00" });
  });

  test("that is odd is asked about, and changes the books only after a yes", () => {
    chat.say("bought dresser 30");
    chat.say("sold dresser 190", { message: "m" });
    const before = chat.statement();
    expect(chat.say("sold dresser 20", { message: "m", edited: true }).text).toContain("changed nothing yet");
    expect(chat.statement()).toEqual(before);
    expect(chat.say("yes").text).toContain("Before: Sold #1 dresser for 190.00");
    expect(chat.statement().pieces[0]).toMatchObject({ proceeds: "20.00", profit: "-10.00" });
    expect(chat.statement().months[0]?.flipped).toBe(1);
  });

  test("of a bare answer corrects the note that it answered", () => {
    chat.say("sold nightstand 60");
    chat.say("12", { message: "a" });
    const reply = chat.say("15", { message: "a", edited: true });
    expect(reply.text).toContain("Before: Bought #1 nightstand, 12.00");
    chat.say("16", { message: "a", edited: true });
    expect(chat.statement().pieces[0]).toMatchObject({ price: "16.00", proceeds: "60.00" });
  });

  test("of words that were no answer yet is taken as one now", () => {
    chat.say("bought a desk");
    chat.say("3o5x", { message: "a" });
    expect(chat.say("35", { message: "a", edited: true }).text).toContain("Bought #1 desk, 35.00");
  });

  test("of several days is decided on the books as they stood when it was sent", () => {
    chat.say("bought desk 10 on 5/6");
    chat.say("bought dresser 30 on 5/3, sold desk 50", { message: "m" });
    chat.say("bought dresser 35 on 5/3, sold desk 55", { message: "m", edited: true });
    expect(chat.statement().pieces.map(({ price, proceeds }) => [price, proceeds])).toEqual([
      ["10.00", "55.00"],
      ["35.00", "0.00"],
    ]);
  });

  test("of a message with several facts says all that stood before", () => {
    chat.say("bought dresser 30 and lamp 5", { message: "m" });
    const reply = chat.say("bought dresser 35 and lamp 6", { message: "m", edited: true });
    expect(reply.text).toContain("Before:\nBought #1 dresser, 30.00\nBought #2 lamp, 5.00");
  });

  test("from a purchase to a sale does not keep the purchase", () => {
    chat.say("bought dresser 30", { message: "m" });
    const before = chat.statement();
    expect(chat.say("sold dresser 30", { message: "m", edited: true }).text).toContain("What did it cost?");
    expect(chat.statement()).toEqual(before);
    chat.say("10");
    expect(chat.statement().pieces.map(({ number, price, proceeds }) => [number, price, proceeds])).toEqual([
      [1, "10.00", "30.00"],
    ]);
  });

  test("drops what the message still asked, where it asks no more", () => {
    chat.say("bought lamp 5, sold dresser", { message: "m" });
    chat.say("bought lamp 6", { message: "m", edited: true });
    expect(chat.say("100").text).not.toContain("dresser on the books");
    expect(chat.statement().pieces.map((piece) => piece.price)).toEqual(["6.00"]);
  });

  test("to another kind leaves no trace of the first", () => {
    chat.say("bought dresser 30", { message: "m" });
    chat.say("drill 30", { message: "m", edited: true });
    expect(chat.statement().pieces).toHaveLength(0);
    expect(chat.statement().months[0]).toMatchObject({ overhead: "30.00", cashOut: "30.00" });
    chat.say("bought desk 30", { message: "m", edited: true });
    expect(chat.statement().pieces.map(({ number, name }) => [number, name])).toEqual([[2, "desk"]]);
  });

  test("of a note that only raised a question is read anew", () => {
    chat.say("bought dresser", { message: "m" });
    expect(chat.say("bought dresser 30", { message: "m", edited: true }).text).toContain(
      "Bought #1 dresser, 30.00",
    );
    expect(chat.say("bought lamp 3").text).not.toContain("still waiting");
  });
});

test("of an edited block of many notes only what is no more said of it is told as it was", () => {
  const notes = Array.from({ length: 14 }, (_, index) => `bought lamp ${index + 1}`);
  chat.say(notes.join("\n"), { message: "block" });
  notes[3] = "bought lamp 44";
  const { text } = chat.say(notes.join("\n"), { message: "block", edited: true });
  expect(text.split("\n").filter((line) => line.includes("Bought #4"))).toEqual([
    "Bought #4 lamp, 44.00",
    "Bought #4 lamp, 4.00",
  ]);
  expect(text).toContain("Before:\nBought #4 lamp, 4.00");
  expect(text.split("Before:")[1]).not.toContain("#5");
});

test("an edit may leave more than a thousand facts", () => {
  const lamps = (price: number) => Array.from({ length: 1010 }, () => `bought lamp ${price}`).join("\n");
  const numbers = Array.from({ length: 10 }, (_, index) => 1001 + index);
  const sold = numbers.map((number) => `sold lamp #${number} for 9`).join("\n");
  chat.say(lamps(3), { message: "long" });
  chat.say(`${lamps(4)}\n${sold}`, { message: "long", edited: true });
  const { pieces } = chat.statement();
  expect(pieces).toHaveLength(1010);
  expect(new Set(pieces.map(({ price }) => price))).toEqual(new Set(["4.00"]));
  expect(pieces.filter(({ status }) => status === "sold").map(({ number }) => number)).toEqual(numbers);
});

describe("an edit of many lines is worked out before it is written", () => {
  const lamps = (count: number, from: number) =>
    Array.from({ length: count }, (_, index) => `bought lamp ${index + from}`).join("\n");

  test("and once more where something was recorded meanwhile", async () => {
    await chat.hearLong({ text: lamps(30, 1), message: "long" });
    const edited = chat.hearLong({ text: `${lamps(30, 2)}\nbought chair 9`, message: "long", edited: true });
    chat.say("bought desk 40");
    expect((await edited).text).toContain("Recorded 31 notes: 31 bought");
    const { pieces, unsoldCost } = chat.statement();
    expect(pieces.slice(30).map(({ number, name }) => [number, name])).toEqual([
      [31, "desk"],
      [32, "chair"],
    ]);
    expect(unsoldCost).toBe(`${(30 * 31) / 2 + 30 + 9 + 40}.00`);
  });

  test("where nothing of the message stands, it is taken as a new one of as many lines", async () => {
    await chat.hearLong({ text: lamps(30, 1), message: "long" });
    chat.say("undo");
    chat.say("yes");
    expect(chat.statement().pieces).toHaveLength(0);
    const { text } = await chat.hearLong({ text: lamps(30, 2), message: "long", edited: true });
    expect(text).toContain("Recorded 30 notes: 30 bought");
    expect(chat.statement().pieces.map(({ price }) => price)[0]).toBe("2.00");
    expect(chat.ledger.settings.get("longNotes")).toEqual({});
  });
});
