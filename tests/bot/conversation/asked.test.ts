import { afterEach, beforeEach, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
  for (const note of [
    "bought dresser 30 yard sale",
    "paint 12.50 for dresser",
    "sold dresser 120 cash",
    "bought lamp 5",
    "gas 20",
  ])
    chat.say(note);
});
afterEach(() => chat.end());

test("a question in any wording is answered in the chat, the figure in the first line", () => {
  expect(chat.say("dresser earnings to date").text).toContain("77.50 (1 piece)");
  expect(chat.say("how much on paint this year?").text.split("\n")[0]).toBe(
    "Paint, 2026 so far: 12.50 (1 note)",
  );
  expect(chat.say("#2 gone already?").text).toContain("No. #2 lamp: not gone");
});

test("a word that is not understood is named, and the nearest question is one tap away", () => {
  const said = chat.say("how much did i make on dressers when the moon was full?");
  expect(said.text).toContain("moon");
  expect(said.text).not.toContain("77.50");
  const near = chat.say("profit on haunted dressers?");
  expect(near.text).toContain('"haunted"');
  expect(near.buttons).toHaveLength(1);
  expect(chat.tap({ message: near.message, press: near.buttons[0]!.press }).text).toContain("77.50");
});

test("a question without its mark that opens like none of the notes names the word in the way as well", () => {
  const near = chat.say("profit on haunted dressers");
  expect(near.text).toContain('"haunted"');
  expect(chat.tap({ message: near.message, press: near.buttons[0]!.press }).text).toContain("77.50");
});

test("what is asked behind an amount makes a question of it, and so much an hour is no hour worked", () => {
  chat.say("new loan school 2000 at 5.5%");
  const before = chat.ledger.books.facts.length;
  expect(chat.say("put 1000 on the school loan now what do i save").text).toMatch(/No pace|saves/);
  expect(chat.say("per hour on dressers").text).toContain("An hour");
  expect(chat.say("average profit dressers").text).toContain("Average profit, dressers");
  expect(chat.ledger.books.facts).toHaveLength(before);
});

test("an amount is held against the sum, and the share of a part is told", () => {
  expect(chat.say("have i made over 50 on dressers").text).toMatch(
    /^Yes\. Profit, dressers, ever: 77\.50\n {2}\(over 50\.00\)/,
  );
  expect(chat.say("what percent of my spending was gas").text).toBe("Spent, ever: gas 62% (20.00 of 32.50)");
  expect(chat.say("and dressers?").text).toBe("Spent, ever: dressers 38%\n  (12.50 of 32.50)");
});

test.each(["gas 2026", "paint 2025", "tips 2026", "fees in 2026", "miles 2026"])(
  "%s: a year is no money",
  (text) => {
    const before = chat.ledger.books.facts.length;
    expect(chat.say(text).text).toMatch(/, 202[56]: /);
    expect(chat.ledger.books.facts.length).toBe(before);
  },
);

test.each([
  "deposit on #2 from who",
  "hold #2 for who",
  "sold #1 for how much",
  "bought #1 for what",
  "sold dresser to who",
  "everything mom bought",
  "time spent on dressers",
  "stuff i bought last month",
])("%s: what ends or opens like a question records nothing", (text) => {
  const before = chat.ledger.books.facts.length;
  const said = chat.say(text).text;
  expect(chat.ledger.books.facts.length).toBe(before);
  expect(said).not.toMatch(/What did|Who|How much|Which/);
});

test.each([
  ["sold lamp 40, no idea who", /Sold #2 lamp for 40\.00/],
  ["sold lamp 40 to i forgot who", /Sold #2 lamp/],
  ["spent 2024 on paint", /2,024\.00/],
])("%s: a note that tells its amount stays one", (text, told) => {
  expect(chat.say(text).text).toMatch(told);
});

test("it is the piece of the message replied to, or the last one spoken of", () => {
  expect(chat.say("how much did i pay for it?").text).toContain("5.00");
});

test("a note stays a note, however it ends", () => {
  const before = chat.ledger.books.facts.length;
  chat.say("listed lamp 25");
  expect(chat.ledger.books.facts).toHaveLength(before + 1);
  expect(chat.say("dresser 30").text).not.toMatch(/ever:/);
});

test("what tells of the month stays the owner's, however it is cut", () => {
  const person = chat.ledger.transaction(() =>
    chat.ledger.members.add({ user: "2002", name: "Wren", role: "member", joined: 0 }),
  );
  expect(chat.say("net profit this year?", { person }).text).toContain("owner's to tell");
  expect(chat.say("profit on dressers?", { person }).text).toContain("77.50");
});

test("a note that says too little is no question of which the books know nothing", () => {
  const bench = chat.say("bought bench 14").message;
  chat.say("bought mirror 9");
  expect(chat.say("sanded 45 min", { replyTo: bench }).text).toContain("45 min sanding on #3 bench");
  expect(chat.say("top of the mirror is done").text).not.toContain("Profit");
});

test("scratch that with a value changes the newest note, and takes none back", () => {
  chat.say("bought bench 14");
  expect(chat.say("scratch that, it was 8").text).toContain("Bought #3 bench, 8.00");
  expect(chat.statement().pieces.find(({ number }) => number === 2)).toMatchObject({ price: "5.00" });
});

test("a number alone is asked about, with the piece of that number beside it", () => {
  const said = chat.say("2");
  expect(said.text).toBe("What is the number for?");
  expect(said.buttons.map(({ label }) => label)).toContain("#2");
  expect(chat.say("77").buttons.map(({ label }) => label)).not.toContain("#77");
});

test("no caution stands under a question", () => {
  const told = chat.say("sold the tall dresser for how much");
  expect(told.text).not.toContain("anti-tip");
});

test.each([
  ["what did i make on the bureau", "77.50 (1 piece)"],
  ["profit on chests of drawers", "77.50 (1 piece)"],
])("furniture is asked for by its other name, as notes mean it: %s", (question, figure) => {
  expect(chat.say(question).text).toContain(figure);
});

test.each([
  ["profit for the last 90 days", /^Made, last 90 days: /],
  ["notes since the 1st", /^Noted, since /],
  ["fees for the last 30 days", /^Fees, last 30 days: nothing/],
  ["asking price of the bench", /^Asking, benches, now: 60\.00/],
  ["when does sam pick up", /^To be picked up: 1 piece/],
  ["days since my last sale", /./],
])("a figure that is asked for is no note of what was spoken of: %s", (question, told) => {
  for (const note of ["bought bench 14", "listed bench 60", "hold bench deposit 10 from sam"]) chat.say(note);
  expect(chat.say("who has the bench on hold").text).toContain("sam");
  const before = chat.ledger.books.facts.length;
  expect(chat.say(question).text).toMatch(told);
  expect(chat.ledger.books.facts).toHaveLength(before);
});

test("what to do is no deed to come: the question is refused as one", () => {
  expect(chat.say("which loan should i throw money at first").text).not.toContain("Not done yet");
});

test.each([
  "list what the teacher bought",
  "give me everything the teacher bought",
  "show me the last thing the teacher bought",
  "bought vs sold",
  "sales not to the teacher",
  "spent last week",
  "sold at a loss",
  "pieces bought under 20",
  "hourly on the ones listed on the board",
  "sales minus gas",
])("%s: asks, and records nothing", (text) => {
  const chat = openChat();
  for (const note of [
    "bought nightstand 15",
    "listed nightstand 70 on the board",
    "hold nightstand deposit 20 from the teacher",
    "bought mirror 12, sold mirror 40 to the teacher",
    "gas 20",
  ])
    chat.say(note);
  const before = chat.ledger.books.facts.length;
  const { text: said } = chat.say(text);
  expect(chat.ledger.books.facts.length).toBe(before);
  expect(said).not.toMatch(/Say its name|What did|What was|Which of these|What is the asking/);
});
