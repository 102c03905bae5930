import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

const piece = (number: number) => chat.statement().pieces.find((each) => each.number === number);

describe("a correction in plain words", () => {
  test("changes the one fact it speaks of, shows what it was, and is undone by itself", () => {
    chat.say("bought hutch 60");
    chat.say("bought desk 30");
    const said = chat.say("hutch actually cost 65");
    expect(said.text).toContain("Bought #1 hutch, 65.00");
    expect(said.text).toContain("Before: Bought #1 hutch, 60.00");
    expect(chat.statement().pieces).toHaveLength(2);
    expect(chat.say("undo").text).toContain("Stands again: Bought #1 hutch, 60.00");
    expect(piece(1)?.price).toBe("60.00");
    expect(chat.say("undo").text).toContain("Taken back: Bought #2 desk, 30.00");
    expect(chat.statement().pieces.map(({ number }) => number)).toEqual([1]);
  });

  test("takes back one correction at a time, then the note", () => {
    chat.say("bought hutch 60");
    chat.say("hutch actually cost 65");
    chat.say("hutch actually cost 70");
    expect(piece(1)?.price).toBe("70.00");
    chat.say("undo");
    expect(piece(1)?.price).toBe("65.00");
    chat.say("undo");
    expect(piece(1)?.price).toBe("60.00");
    chat.say("undo");
    expect(chat.statement().pieces).toEqual([]);
  });

  test("the note itself is taken back by a reply, in whatever version", () => {
    chat.say("bought hutch 60", { message: "first" });
    chat.say("hutch actually cost 65");
    expect(chat.say("undo", { replyTo: "first" }).text).toContain("Taken back: Bought #1 hutch, 65.00");
    expect(chat.statement().pieces).toEqual([]);
  });

  test("moves a cost to a piece that was bought later that day, and back", () => {
    for (const note of ["bought trunk 25", "hinges 9 for trunk", "bought bench 14"]) chat.say(note);
    expect(chat.say("those hinges were for the bench").text).toContain("Hinges 9.00 for #2 bench");
    expect([piece(1)?.materials, piece(2)?.materials]).toEqual(["0.00", "9.00"]);
    chat.say("undo");
    expect([piece(1)?.materials, piece(2)?.materials]).toEqual(["9.00", "0.00"]);
  });

  test("takes a fact out, and brings it back", () => {
    chat.say("bought desk 30");
    chat.say("drove 24 miles");
    const out = chat.say("delete the drive");
    expect(out.text).toContain("Taken out: ");
    expect(chat.ledger.books.facts).toHaveLength(1);
    expect(chat.press("Undo").text).toContain("Stands again: ");
    expect(chat.ledger.books.facts).toHaveLength(2);
    expect(chat.press("Undo").text).toContain("That is taken back already.");
    expect(chat.ledger.books.facts).toHaveLength(2);
  });

  test("asks which of several, the newest first", () => {
    chat.say("bought desk 30");
    chat.say("paint 12 for desk");
    chat.at("2026-05-10T15:00:00Z");
    chat.say("paint 14 for desk");
    const asked = chat.say("delete the paint");
    expect(asked.buttons.map(({ label }) => label)).toEqual([
      "Paint 14.00 for #1 desk",
      "Paint 12.00 for #1 desk on Sat May 9",
      "None of these",
    ]);
    chat.press(/12\.00/);
    expect(piece(1)?.materials).toBe("14.00");
    chat.say("undo");
    expect(piece(1)?.materials).toBe("26.00");
  });

  test("a piece that was a mistake goes with all that is on it, shown first, in one step that is undone in one", () => {
    chat.say("bought desk 30");
    chat.say("bought hutch 60");
    chat.say("paint 12 for hutch");
    chat.say("spent 20 on primer for desk and hutch");
    const before = chat.statement();
    const asked = chat.say("#2 was a mistake");
    expect(asked.text).toContain("With #2 hutch goes:");
    expect(asked.text).toContain("(its share)");
    chat.press("Take out all 3");
    expect(chat.statement().pieces.map(({ number, materials }) => [number, materials])).toEqual([
      [1, "20.00"],
    ]);
    chat.say("undo");
    expect(chat.statement()).toEqual(before);
    chat.say("bought lamp 5");
    expect(chat.say("#3 was a mistake").text).toContain("Taken out: Bought #3 lamp");
  });

  test("what a later fact needs is refused, naming it, with the way out as a button", () => {
    chat.say("bought desk 30");
    chat.say("sold desk 165");
    chat.say("refunded 20 on the desk");
    const said = chat.say("delete the sale");
    expect(said.text).toContain("In the way: Gave back 20.00 on #1 desk");
    chat.press("Take that back first");
    expect(chat.ledger.books.facts.map(({ kind }) => kind)).toEqual(["buy"]);
  });

  test("another person's note is shown before it is changed, and stays that person's", () => {
    const other = chat.ledger.transaction(() =>
      chat.ledger.members.add({ user: "1002", name: "Dana", role: "member", joined: 0 }),
    );
    chat.say("bought hutch 60", { person: other });
    expect(chat.say("hutch actually cost 65").text).toContain("Dana noted that: Bought #1 hutch, 60.00");
    chat.press("Yes, change it");
    expect(piece(1)?.price).toBe("65.00");
    expect(chat.ledger.books.facts[0]?.author).toBe(other);
    chat.say("undo");
    expect(piece(1)?.price).toBe("60.00");
  });

  test("of the owner's note is not a member's to make, nor to take back", () => {
    const other = chat.ledger.transaction(() =>
      chat.ledger.members.add({ user: "1002", name: "Dana", role: "member", joined: 0 }),
    );
    chat.say("bought hutch 60");
    chat.say("hutch actually cost 70", { person: other });
    expect(piece(1)?.price).toBe("60.00");
    const changed = chat.say("hutch actually cost 65");
    const undo = changed.buttons.find(({ label }) => label === "Undo")!;
    const said = chat.tap({ message: changed.message, press: undo.press, person: other });
    expect(said.text).toContain("Only they or the owner can change it.");
    expect(piece(1)?.price).toBe("65.00");
  });

  test("says so where there is no such note, and adds nothing", () => {
    chat.say("bought desk 30");
    expect(chat.say("delete the drive").text).toContain("I find no note like that");
    const cost = chat.say("lamp actually cost 9");
    expect(cost.text).toContain("No lamp on the books");
    expect(cost.buttons.map(({ label }) => label)).toEqual(["Bought lamp 9.00", "Never mind"]);
    expect(chat.ledger.books.facts).toHaveLength(1);
  });
});

describe("a list of the last notes", () => {
  beforeEach(() => {
    chat.say("bought desk 30");
    chat.say("bought hutch 60");
    chat.say("paint 12 for hutch");
    chat.say("drove 24 miles");
  });

  test("has a letter a line, and the next message changes or takes out one by it", () => {
    const list = chat.say("last 3 notes");
    expect(list.text).toContain(
      "\na  Sat May 9: drove 24 miles\nb  Sat May 9: paint for #2 hutch 12.00\nc  ",
    );
    expect(chat.say("b was 14").text).toContain("Paint 14.00 for #2 hutch");
    expect(piece(2)?.materials).toBe("14.00");
    expect(chat.say("b was for the desk").text).toContain("Paint 14.00 for #1 desk");
    expect(chat.say("a was yesterday").text).toContain("on Fri May 8");
    expect(chat.say("a was 18 miles").text).toContain("18 miles");
    expect(chat.say("remove a").text).toContain("Taken out: ");
    expect(chat.say("remove a").text).toContain("That note is gone.");
    expect(chat.ledger.books.facts).toHaveLength(3);
    chat.say("undo");
    expect(chat.ledger.books.facts).toHaveLength(4);
  });

  test("means nothing by its letters where none was shown, or another day", () => {
    expect(chat.say("remove b").text).not.toContain("Taken out");
    chat.say("what did I note today");
    chat.at("2026-05-10T15:00:00Z");
    chat.say("remove b");
    expect(chat.ledger.books.facts).toHaveLength(4);
  });
});
