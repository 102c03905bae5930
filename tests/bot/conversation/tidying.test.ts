import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Said } from "../../../db/outbox.ts";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

const rows = () => chat.ledger.outbox.lately("home");
/** The labels that the bot's message shows now. */
function labelsUnder(message: string): string[] {
  const id = Number(message.replace("bot-", ""));
  const isOf = ({ id: own, body }: Said) => own === id || (body.kind === "edit" && body.outbox === id);
  const newest = rows().find(isOf)!;
  return newest.body.kind === "file"
    ? []
    : (newest.body.reply.buttons ?? []).flat().map(({ label }) => label);
}

describe("buttons", () => {
  test("of a next step go when the step was taken, by whatever way; undo stays as long as there is something", () => {
    const bought = chat.say("bought dresser 30");
    expect(labelsUnder(bought.message)).toEqual(["Undo", "Start it"]);
    const started = chat.say("started dresser");
    expect(labelsUnder(bought.message)).toEqual(["Undo"]);
    expect(labelsUnder(started.message)).toEqual(["Undo", "It's finished"]);
    chat.say("undo");
    expect(labelsUnder(started.message)).toEqual([]);
    chat.say("undo");
    expect(labelsUnder(bought.message)).toEqual([]);
  });

  test("go as well where notes about other pieces came in between, and where what they are about is taken back", () => {
    const bought = chat.say("bought dresser 30");
    const lamp = chat.say("bought lamp 5", { message: "lamp" });
    for (const other of ["bought bench 6", "bought stool 7"]) chat.say(other);
    chat.say("started dresser");
    expect(labelsUnder(bought.message)).toEqual(["Undo"]);
    for (const other of ["bought mirror 8", "bought trunk 9"]) chat.say(other);
    expect(labelsUnder(lamp.message)).toEqual(["Undo", "Start it"]);
    chat.say("undo", { replyTo: "lamp" });
    expect(labelsUnder(lamp.message)).toEqual([]);
  });

  test("of a question go when it is answered in words", () => {
    chat.say("bought tall dresser 30");
    chat.say("bought white dresser 40");
    const asked = chat.say("sold dresser 190");
    expect(labelsUnder(asked.message).length).toBeGreaterThan(1);
    chat.say("the tall one");
    expect(labelsUnder(asked.message)).toEqual([]);
  });

  test("nothing is sent where nothing went out of date", () => {
    chat.say("bought dresser 30");
    const before = rows().length;
    chat.say("bought lamp 5");
    expect(rows()).toHaveLength(before + 1);
  });
});

describe("an edit", () => {
  test("changes the bot's answer in its place, and says it anew where that cannot be", () => {
    const first = chat.say("bought dresser 30", { message: "m1" });
    const again = chat.say("bought dresser 35", { message: "m1", edited: true });
    expect(again.message).toBe(first.message);
    expect(again.text).toContain("Bought #1 dresser, 35.00");
    expect(rows()[0]?.body).toMatchObject({ kind: "edit", orSend: true });
  });

  test("that leaves a question is answered by a message, since the answer is sought there", () => {
    const first = chat.say("bought dresser 30", { message: "m1" });
    const asked = chat.say("bought dresser", { message: "m1", edited: true });
    expect(asked.message).not.toBe(first.message);
    expect(chat.say("45").text).toContain("45.00");
  });
});

describe("several notes under way", () => {
  test("each reply quotes its note; one alone does not", () => {
    chat.say("bought dresser 30", { message: "11" });
    chat.say("bought lamp 5", { message: "12" });
    const [second, first] = rows();
    expect([first?.replyTo, second?.replyTo]).toEqual([null, "12"]);
    chat.at("2026-05-09T18:00:00Z");
    chat.say("bought stool 5", { message: "13" });
    expect(rows()[0]?.replyTo).toBeNull();
  });

  test("a note that waited for the bot is quoted too", () => {
    chat.at("2026-05-09T18:00:00Z");
    chat.hear({ text: "bought stool 5", message: "14", said: Date.parse("2026-05-09T16:00:00Z") });
    expect(rows()[0]?.replyTo).toBe("14");
  });
});
