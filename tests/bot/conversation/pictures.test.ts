import { afterEach, beforeEach, expect, test } from "vitest";
import { makeFile } from "../../../bot/files/make.ts";
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

test("one that comes right after a purchase joins it, with a way out", () => {
  chat.say("bought dresser 30");
  chat.say("bought lamp 5");
  expect(chat.say("", { picture }).text).toBe("Picture added to #2 lamp.");
  expect(chat.ledger.pictures.ofPiece(2)).toHaveLength(1);
  expect(chat.press("Another piece").text).toMatch(/^Picture kept\. Which piece is it\?/);
  expect(chat.ledger.pictures.ofPiece(2)).toHaveLength(0);
  expect(chat.press("#1 dresser").text).toBe("Picture added to #1 dresser.");
  expect(chat.ledger.pictures.ofPiece(1)).toHaveLength(1);
});

test("one that comes later, or after anything but a purchase, is asked about with a button", () => {
  chat.say("bought dresser 30");
  chat.at("2026-05-09T16:00:00Z");
  expect(chat.say("", { picture }).text).toMatch(/^Picture kept\. Which piece is it\?/);
  expect(chat.press("#1 dresser").text).toBe("Picture added to #1 dresser.");
  chat.say("finished dresser");
  expect(chat.say("", { picture: { file: "f2", unique: "two" } }).text).toMatch(/^Picture kept\./);
});

test("an album without words is one matter: its first picture is asked about, and all of it is filed", () => {
  chat.say("bought dresser 30");
  chat.say("bought lamp 5");
  chat.at("2026-05-09T19:00:00Z");
  expect(chat.say("", { picture, message: "p1" }).text).toMatch(/^Picture kept\./);
  for (const unique of ["two", "three"]) {
    const follower = { text: "", picture: { file: unique, unique }, replyTo: "p1", follows: true as const };
    expect(chat.hear(follower).text).toBe("");
  }
  chat.press("#1 dresser");
  expect(chat.ledger.pictures.ofPiece(1)).toHaveLength(3);
});

test("before and after are the first picture and the last", () => {
  const { message } = chat.say("bought desk 30");
  for (const unique of ["one", "two", "three"])
    chat.say("", { picture: { file: unique, unique }, replyTo: message });
  expect(chat.say("show the desk before and after").text).toMatch(/\[file one\]\n\[file three\]$/);
  const captions = chat.ledger.outbox
    .lately("home")
    .slice(0, 2)
    .map(({ body }) => body.kind === "file" && body.caption);
  expect(captions).toEqual(["#1 after, Sat May 9", "#1 before, Sat May 9"]);
});

test("a receipt is found again by what it was for, and is in the export", async () => {
  chat.say("bought dresser 30");
  chat.say("paint 12.50 for dresser");
  expect(chat.say("", { picture }).text).toBe("Receipt kept: Paint 12.50 for #1 dresser");
  chat.say("gas 20", { picture: { file: "f2", unique: "two" } });
  expect(chat.say("show paint receipts").text).toBe("1 receipt: paint\n[file one]");
  expect(chat.say("show receipts").text).toBe("2 receipts\n[file two]\n[file one]");
  expect(chat.say("show receipts for april").text).toContain("No receipt kept.");
  expect(chat.say("show varnish receipts").text).toContain("No receipt of varnish kept.");
  const args = { through: "2026-05-09", currency: "USD", table: "pictures" };
  const { bytes } = await makeFile(chat.ledger, { what: "export", name: "pictures.csv", args });
  const rows = bytes.toString().trim().split(/\r?\n/);
  expect(rows[0]).toContain("day,sort,pieces,what,amount,note,receipt,file in the chat");
  expect(rows[1]).toContain("2026-05-09,receipt,1,paint,12.50,paint 12.50 for dresser,,file-1");
  expect(rows[2]).toContain("receipt,,gas,20.00,gas 20,,f2");
});

test("one that could be of any piece is kept, and a reply to it names the piece", () => {
  chat.say("bought dresser 30");
  chat.say("finished dresser");
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
