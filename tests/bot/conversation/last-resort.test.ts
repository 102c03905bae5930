import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

/*
 * What nobody could read is offered as what it may be by what is recognised in it and by the books, and never recorded by
 * itself.
 */

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

const LISTED = ["bought dresser 40", "listed dresser 185"];
const HELD = [...LISTED, "deposit 45 on dresser from teo"];
const OWED = ["bought hutch 60", "sold hutch 220 to nell, 50 still owed"];

const labelsOf = (before: readonly string[], line: string): string[] => {
  for (const note of before) chat.say(note);
  const stood = chat.ledger.books.facts.length;
  const { buttons } = chat.say(line);
  expect(chat.ledger.books.facts).toHaveLength(stood);
  return buttons.map(({ label }) => label);
};

describe("what cannot be read", () => {
  const OFFERED: readonly [before: readonly string[], line: string, label: string][] = [
    [LISTED, "dresser zorped for 170", "Sold #1 dresser 170.00"],
    [HELD, "teo whisked the dresser away, gave us 140", "Sold #1 dresser 185.00"],
    [HELD, "teo he not materialise for dresser", "Buyer of #1 dresser gone, kept 45.00"],
    [OWED, "nell zorped round with her last fifty", "Got 50.00 for #1 hutch"],
    [["bought crib 10"], "i gived crib for the shelter", "Gave away #1 crib"],
    [["bought bench 15"], "bench was riddled with worm, straight in the skip", "Scrapped #1 bench"],
    [LISTED, "nobody ring, dresser i vlope 150 now", "#1 dresser now 150.00"],
    [
      LISTED,
      "earmarked the dresser for kim, 40 in hand as deposit",
      "Hold #1 dresser for kim, deposit 40.00",
    ],
    [["bought sofa 20"], "the man who clean sofa take 45", "Clean 45.00 for #1 sofa"],
    [
      ["bought dresser 40"],
      "threw 22 at the dresser in primer and stain",
      "Primer and stain 22.00 for #1 dresser",
    ],
    [["bought desk 30"], "lets shoot for five hundred a month", "Goal: 500.00 a month"],
    [LISTED, "dresser went for asking", "Sold #1 dresser 185.00"],
    [["gas 20"], "wipe the gas, that was my own", "Take out: Gas 20.00: shop cost, vehicle"],
  ];

  test.each(OFFERED)("behind %j, %j may be %j", (before, line, label) => {
    expect(labelsOf(before, line)).toContain(label);
  });

  const NOTHING: readonly [before: readonly string[], line: string][] = [
    [LISTED, "what a day, my feet hurt"],
    [HELD, "teo rang, still keen on the dresser"],
    [LISTED, "my sister would love the dresser"],
    [OWED, "nell says sorry about the 50, next week"],
    [LISTED, "dresser wobbles a bit, need to look at it"],
    [["bought desk 30", "gas 20"], "delete the drive"],
  ];

  test.each(NOTHING)("behind %j, %j gets no button", (before, line) => {
    expect(labelsOf(before, line)).not.toContain("None of these");
  });

  test("may be several things told in parts, all of them on one button", () => {
    for (const note of ["bought mirror 12", "listed mirror 50", "hold mirror for pat"]) chat.say(note);
    const said = chat.say("mirror back, pat he not materialise. i make mirror price 45 again");
    const both = said.buttons.find(({ label }) => label.includes("; "));
    expect(both?.label).toBe("Buyer of #1 mirror gone; #1 mirror now 45.00");
    chat.tap({ message: said.message, press: both!.press });
    expect(chat.ledger.books.pieces.get(1)).toMatchObject({ hold: null, listPrice: 4500 });
  });

  test("tells what an unknown thing cost behind what it was for", () => {
    const labels = labelsOf([], "got a dresser for 30 and it has a broken foot so 7 for a new foot");
    expect(labels[0]).toBe("Bought dresser 30.00; Foot 7.00");
  });

  test("stands beside a question that asks for what its verb would need", () => {
    const before = ["bought dresser 40", "sold dresser 185"];
    const labels = labelsOf(before, "forgot the 14 for paint on the dresser before it sold");
    expect(labels).toContain("Paint 14.00 for #1 dresser");
  });

  test("is recorded by its button", () => {
    for (const note of HELD) chat.say(note);
    const said = chat.say("teo whisked the dresser away, gave us 140");
    const whole = said.buttons.find(({ label }) => label.startsWith("Sold #1 dresser 185.00"))!;
    expect(chat.tap({ message: said.message, press: whole.press }).text).toContain(
      "Sold #1 dresser for 185.00",
    );
  });
});
