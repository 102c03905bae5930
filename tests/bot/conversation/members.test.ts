import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { appointOwner, membersText } from "../../../bot/members.ts";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

let users = 2000;
const letIn = (name: string): number =>
  chat.ledger.transaction(() =>
    chat.ledger.members.add({ user: String(++users), name, role: "member", joined: 0 }),
  );

/** What was queued for another chat, oldest first. */
const toldTo = (other: string) =>
  chat.ledger.connection.sqlite
    .prepare<[string], string>("select body from outbox where chat = ? order by id")
    .pluck()
    .all(other)
    .map((body) => (JSON.parse(body) as { reply: { text: string } }).reply.text);

describe("a member of any name can be taken out", () => {
  const NAMES = [
    "😀",
    "👨‍👩‍👧",
    "<b>Wren</b>",
    "Dr. J.",
    "a:b",
    "Wren!",
    "O'Hara-Nuñez",
    "#7",
    "member",
    "…",
    '"x"\\',
  ];

  test.each(NAMES)("%s, by the words that the bot gives", (name) => {
    const id = letIn(name);
    expect(membersText(chat.ledger)).toContain("remove member and the number");
    expect(chat.say(`remove member ${id}`).text).toContain(`${name} is out`);
    expect(chat.ledger.members.byId(id)?.removed).not.toBeNull();
  });

  test.each(NAMES)("%s, by the name as it is", (name) => {
    const id = letIn(name);
    chat.say(`remove ${name}`);
    expect(chat.ledger.members.byId(id)?.removed).not.toBeNull();
  });

  test("what nobody is called is no member", () => {
    letIn("Wren");
    expect(chat.say("remove the hinges").text).not.toMatch(/is out|called/);
    expect(chat.say("remove member hinges").text).toContain('Nobody here is called "hinges"');
  });

  test("two of one name are told apart by their numbers", () => {
    const [first, second] = [letIn("Sam"), letIn("sam")];
    expect(chat.say("remove sam").text).toContain(`${second}. sam`);
    expect(chat.say(`remove ${first}`).text).toContain("Sam is out");
  });

  test("a member cannot", () => {
    const [wren] = [letIn("Wren"), letIn("Sam")];
    expect(chat.say("remove Sam", { person: wren }).text).toBe("Only the owner can do that.");
    expect(chat.ledger.members.list()).toHaveLength(3);
  });
});

test("with a member who is taken out, what was still asked of them closes, and is named", () => {
  const wren = letIn("Wren");
  chat.say("sold armoire 90", { person: wren });
  expect(chat.ledger.questions.everyOpen()).toHaveLength(1);
  expect(chat.say("remove Wren").text).toContain("Dropped, it was still open: sold armoire 90");
  expect(chat.ledger.questions.everyOpen()).toEqual([]);
});

test("another OWNER_ID takes the former owner out, and both are told", () => {
  chat.say("sold armoire 90");
  chat.ledger.transaction(() => appointOwner(chat.ledger, "5005", 1));
  expect(chat.ledger.members.list().map(({ user, role }) => [user, role])).toEqual([["5005", "owner"]]);
  expect(toldTo("1001")).toEqual([expect.stringContaining("no longer the owner")]);
  expect(toldTo("5005")).toEqual([
    expect.stringMatching(/^You are the owner now\. Robin.*is out[\s\S]*sold armoire 90/),
  ]);
  chat.ledger.transaction(() => appointOwner(chat.ledger, "5005", 1));
  expect(toldTo("5005")).toHaveLength(1);
});

describe("who may do what, by button", () => {
  let wren: number;
  let sam: number;
  const rootOf = (text: string) =>
    chat.ledger.connection.sqlite
      .prepare("select root from notes where text = ?")
      .pluck()
      .get(text) as number;
  const forge = (press: string, person: number) => chat.tap({ message: `bot-${person}`, press, person });

  beforeEach(() => {
    wren = letIn("Wren");
    sam = letIn("Sam");
    chat.say("bought dresser 30");
    chat.say("bought lamp 10", { person: wren });
  });

  test("a note is taken back by its author and by the owner, by nobody else", () => {
    expect(forge(`u:${rootOf("bought dresser 30")}`, wren).text).toContain("That is Robin's note");
    expect(forge(`u:${rootOf("bought lamp 10")}`, sam).text).toContain("That is Wren's note");
    expect(chat.statement().pieces).toHaveLength(2);
    expect(forge(`u:${rootOf("bought lamp 10")}`, wren).text).toContain("Taken back");
    chat.say("bought stool 5", { person: sam });
    expect(forge(`u:${rootOf("bought stool 5")}`, 1).text).toContain("Taken back");
    expect(chat.statement().pieces.map(({ name }) => name)).toEqual(["dresser"]);
  });

  test("nor by a reply, whether undone or corrected", () => {
    chat.say("tips 20", { message: "owners" });
    for (const words of ["undo", "make that 30"])
      expect(chat.say(words, { person: wren, replyTo: "owners" }).text).toContain("That is Robin's note");
    expect(chat.statement().months[0]?.otherIncome).toBe("20.00");
  });

  test("nor by naming it", () => {
    chat.say("#1 was 45", { person: wren });
    for (const { message, press } of [chat.say("the dresser was a mistake", { person: wren })].flatMap(
      (said) => said.buttons.map((button) => ({ message: said.message, press: button.press })),
    ))
      chat.tap({ message, press, person: wren });
    expect(chat.statement().pieces[0]).toMatchObject({ name: "dresser", price: "30.00" });
  });

  test("a question is answered by whom it was asked", () => {
    const asked = chat.say("sold armoire 90");
    const [free] = asked.buttons;
    expect(forge(free!.press, wren).text).toContain("not open");
    expect(chat.statement().pieces).toHaveLength(2);
  });

  test("the daily message is changed by the owner alone", () => {
    for (const press of ["nw:1:3", "nx:1"])
      expect(forge(press, wren).text).toBe("Only the owner can do that.");
    for (const words of ["nudge off", "nudge at 9am", "snooze 3 days"])
      expect(chat.say(words, { person: wren }).text).toBe("Only the owner can do that.");
    const { settings } = chat.ledger;
    expect([settings.get("leftOutPieces"), settings.get("piecesWaiting"), settings.get("nudgeOff")]).toEqual([
      null,
      null,
      null,
    ]);
    forge("nx:1", 1);
    expect(settings.get("leftOutPieces")).toEqual([1]);
  });

  test.each([
    "u:999",
    "u:-1",
    "u:",
    "um:1",
    "um:x",
    "q::",
    "q:x:99",
    "n:sell:999",
    "n:eat:1",
    "nw:1",
    "r:2026-13",
    "r:",
    "zz",
    "",
  ])("%s, made up, changes nothing and is answered", (press) => {
    const before = chat.statement();
    expect(forge(press, sam).text).not.toBe("");
    expect(chat.statement()).toEqual(before);
  });

  test("the owner hears of what a member took back", () => {
    chat.ledger.settings.set("ownerChat", "1001");
    chat.say("undo", { person: wren });
    expect(toldTo("1001").at(-1)).toContain("Wren took back Bought #2 lamp");
  });
});

test('"finished it" of two people is about two things, and of one person once', () => {
  const wren = letIn("Wren");
  chat.say("bought desk 30");
  chat.say("bought lamp 5", { person: wren });
  expect(chat.say("finished it", { person: wren }).text).toContain("lamp is finished");
  expect(chat.say("finished it").text).toContain("desk is finished");
  expect(chat.say("finished it").text).toContain("just now");
});
