import { afterEach, beforeEach, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

const picture = { file: "file-1", unique: "one" };

test("a picture without words joins the one piece of the message it replies to", () => {
  const { message } = chat.say("bought dresser 30");
  expect(chat.say("", { picture, replyTo: message }).text).toBe("Picture added to #1 dresser.");
  expect(chat.say("show dresser").text).toContain("[file one]");
});

test("one that could be of any piece is kept, and a reply to it names the piece", () => {
  chat.say("bought dresser 30");
  expect(chat.say("", { picture, message: "photo" }).text).toMatch(/^Picture kept\. Which piece is it\?/);
  expect(chat.say("the hutch", { replyTo: "photo" }).text).toMatch(/^I can't tell which piece that is\./);
  expect(chat.say("#1", { replyTo: "photo" }).text).toBe("Picture added to #1 dresser.");
  expect(chat.ledger.pictures.ofPiece(1)).toHaveLength(1);
});

test("a picture taken late in the evening is shown with the day it was there", () => {
  // Half past ten in Chicago, when the day is over in UTC.
  chat.at("2026-05-10T03:30:00Z");
  const { message } = chat.say("bought dresser 30");
  chat.say("", { picture, replyTo: message });
  chat.say("show dresser");
  const sent = Array.from({ length: 9 }, (_, index) => chat.ledger.outbox.get(index + 1)?.body);
  expect(sent.find((body) => body?.kind === "file")).toMatchObject({ caption: "#1, Sat May 9" });
});
