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

  test("with nothing to fix it says so", () => {
    expect(chat.say("make that 35").text).toContain("no amount");
  });
});

describe("an edited message", () => {
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

  test("of a note that only raised a question is read anew", () => {
    chat.say("bought dresser", { message: "m" });
    expect(chat.say("bought dresser 30", { message: "m", edited: true }).text).toContain(
      "Bought #1 dresser, 30.00",
    );
    expect(chat.say("bought lamp 3").text).not.toContain("still waiting");
  });
});
