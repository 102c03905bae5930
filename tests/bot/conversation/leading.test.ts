import { afterEach, beforeEach, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat({ zone: null });
});
afterEach(() => chat.end());

test("the first chat leads: three notes, the loan with its rate, the time zone by a tap, a goal", () => {
  const greeting = chat.say("start").text;
  expect(greeting).toContain("bought dresser 30\npaint 12.50 for dresser\nsold dresser 190 cash");
  expect(chat.say("bought dresser 30").text).toBe("Bought #1 dresser, 30.00");
  expect(chat.say("paint 12.50 for dresser").text).not.toContain("loan");
  const sold = chat.say("sold dresser 190 cash").text;
  expect(sold).toMatch(/^Sold #1 dresser for 190\.00 cash\n/);
  expect(sold).toContain("Which loan does the profit go to?");
  const loan = chat.say("loan 14,600 at 5.8%").text;
  expect(loan).toMatch(/^Loan: 14,600\.00 at 5\.8%\n/);
  expect(loan).toContain("Right? Else tap yours");
  const zone = chat.press("Mountain").text;
  expect(zone).toContain("Your days now go by America/Denver time.");
  expect(chat.ledger.settings.get("timeZone")).toBe("America/Denver");
  expect(zone).toContain("A goal to work toward?");
  expect(chat.press("10 pieces a month").text).toBe('Goal: 10 pieces a month\nHow it goes: "pace"');
  expect(chat.ledger.books.goals).toMatchObject([{ pieces: 10, per: "month" }]);
  // Nothing more: what the lead says of a sleeping computer is for the phone.
  expect(chat.say("bought lamp 5").text).toBe("Bought #2 lamp, 5.00");
});

test.each([
  ["14,600 at 5.8%", "Loan: 14,600.00 at 5.8%"],
  ["14600 5.8%", "Loan: 14,600.00 at 5.8%"],
  ["i owe $14,600 at 5.8 percent", "Loan: 14,600.00 at 5.8%"],
  ["5.8% on 14.6k", "Loan: 14,600.00 at 5.8%"],
  ["14600 @ 5.8", "Loan: 14,600.00 at 5.8%"],
  ["14,600", "Loan: 14,600.00 at 0% until you tell me its rate"],
])('the loan is "%s" once it was asked for, and nothing before', (typed, told) => {
  chat.say("start");
  const before = chat.say(typed).text;
  expect(before).not.toContain("Loan");
  for (const note of ["bought dresser 30", "bought lamp 5", "bought desk 10"]) chat.say(note);
  expect(chat.say(typed).text.split("\n")[0]).toBe(told);
  expect(chat.statement().loans).toMatchObject([{ balance: "14600.00" }]);
});

test("what is no answer to the lead is a note as ever, and changes no loan", () => {
  chat.say("start");
  for (const note of ["bought dresser 30", "bought lamp 5", "bought desk 10"]) chat.say(note);
  for (const typed of ["about 14,600 at 5.8%", "14,600 at 5.8% and 200 at 3%", "paint 20 at 5%", "5.8%"])
    chat.say(typed);
  expect(chat.statement().loans).toEqual([]);
});

test("a goal may be told without its word once it was asked for", () => {
  chat.say("start");
  chat.ledger.settings.set("timeZone", "America/Chicago");
  for (const note of ["bought dresser 30", "bought lamp 5", "bought desk 10"]) chat.say(note);
  chat.press("No loan");
  expect(chat.say("800 a month").text).toContain("Goal: 800.00 a month");
});

test("what was owed before a first payment may be told with its rate", () => {
  chat.say("paid loan 100");
  expect(chat.say("14,600 at 5.8%").text).toContain("Loan: 14,600.00 at 5.8%");
  expect(chat.statement().loans).toMatchObject([{ rate: "5.8", balance: "14500.00" }]);
});

test("the loan is taken as a person says it, the rate with it", () => {
  expect(chat.say("I owe 14,600 on my student loan at 5.8 percent").text).toMatch(
    /^Loan "student": 14,600\.00 at 5\.8%/,
  );
  expect(chat.statement().loans).toMatchObject([{ name: "student", rate: "5.8", balance: "14600.00" }]);
});

test("what is settled is passed over, and a no leads on", () => {
  chat.say("start");
  chat.ledger.settings.set("timeZone", "America/Chicago");
  for (const note of ["bought dresser 30", "bought lamp 5"]) chat.say(note);
  expect(chat.say("bought desk 10").text).toContain("Which loan");
  expect(chat.press("No loan").text).toMatch(/^No loan, then.*A goal to work toward\?/s);
  expect(chat.press("No goal").text).toMatch(/^No goal, then\. Any time, text:\ngoal 800 a month$/);
  expect(chat.say("bought bench 10").text).toBe("Bought #4 bench, 10.00");
});

test("an owner who has kept books for long is led nowhere, nor is a member", () => {
  for (const note of ["bought dresser 30", "bought lamp 5", "bought desk 10"]) {
    expect(chat.say(note).text).not.toMatch(/loan|goal|time/);
  }
  const wren = chat.ledger.transaction(() =>
    chat.ledger.members.add({ user: "2002", name: "Wren", role: "member", joined: 0 }),
  );
  expect(chat.say("start", { person: wren }).text).toContain("Text me what happens");
  expect(chat.say("bought stool 5", { person: wren }).text).not.toContain("loan");
  expect(chat.say("bought crate 5").text).not.toContain("loan");
});

test("a zone is set by a city or an everyday name as well", () => {
  for (const [said, zone] of [
    ["time zone Los Angeles", "America/Los_Angeles"],
    ["time zone central", "America/Chicago"],
    ["time zone Europe/Lisbon", "Europe/Lisbon"],
  ] as const) {
    chat.say(said);
    expect(chat.ledger.settings.get("timeZone")).toBe(zone);
  }
  expect(chat.say("time zone nowhere").text).toContain('I know no time zone "nowhere"');
});
