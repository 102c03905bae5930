import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

const kinds = () => chat.ledger.books.facts.map(({ kind, pieces }) => `${kind} ${pieces.join()}`);
const open = () => chat.ledger.questions.everyOpen().length;

describe("notes of a piece of which it is still asked what it cost", () => {
  it("wait behind that question, which is shown again, and are recorded in their order once it is answered", () => {
    chat.say("grabbed a rocker off the curb down the street");
    const work = chat.say("sanded the rocker 40 min");
    expect(work.text).toContain(
      '"sanded the rocker 40 min" waits for this:\nWhat did you pay for the rocker?',
    );
    expect(work.buttons.map(({ label }) => label)).toEqual(["It was free", "Never mind"]);
    chat.say("listed it 60");
    expect(kinds()).toEqual([]);
    expect(open()).toBe(1);
    chat.press("It was free");
    expect(kinds()).toEqual(["buy 1", "work 1", "list 1"]);
    expect(open()).toBe(0);
  });

  it("are recorded when another note tells what was asked", () => {
    chat.say("picked up a washstand");
    chat.say("finished the washstand");
    chat.say("bought the washstand for 12");
    expect(kinds()).toEqual(["buy 1", "finish 1"]);
    expect(open()).toBe(0);
  });

  it("are asked about by themselves where the purchase is dropped, and lost only with all that waits", () => {
    chat.say("picked up a washstand");
    chat.say("finished the washstand");
    expect(chat.say("never mind").text).toContain('About "finished the washstand":');
    expect(open()).toBe(1);
    chat.say("picked up a cot");
    chat.say("waxed the cot 10 min");
    expect(chat.say("clear waiting").text).toContain("picked up a cot, waxed the cot 10 min");
    expect(open()).toBe(0);
  });

  it("are taken back, corrected and told of", () => {
    chat.say("picked up a cot");
    chat.say("waxed it 10 min");
    expect(chat.say("no 15 min").text).toContain("15 min");
    chat.say("listed it 30");
    expect(chat.say("what's waiting").text).toContain("Behind it waits: waxed it 10 min, listed it 30");
    expect(chat.say("undo").text).toContain("listed it 30");
    chat.say("5");
    expect(chat.ledger.books.facts.map(({ kind }) => kind)).toEqual(["buy", "work"]);
    expect(chat.ledger.books.facts[1]!.data).toMatchObject({ minutes: 15 });
  });

  it("survive a restart", () => {
    chat.say("picked up a cot");
    chat.say("waxed it 10 min");
    chat.restart();
    chat.say("5");
    expect(kinds()).toEqual(["buy 1", "work 1"]);
  });

  it("are asked about where a piece of that name is here already", () => {
    chat.say("bought desk 20");
    chat.say("picked up another desk");
    const asked = chat.say("sanded the desk 40 min");
    expect(asked.buttons.map(({ label }) => label)).toEqual(["The new one", "#1 desk", "Never mind"]);
    chat.press("The new one");
    chat.say("15");
    expect(kinds()).toEqual(["buy 1", "buy 2", "work 2"]);
  });

  it("ask which desk it was where the new one has come before that was answered", () => {
    chat.say("bought desk 20");
    chat.say("picked up another desk");
    chat.say("sanded the desk 40 min");
    chat.say("15");
    chat.press("The new one");
    expect(kinds()).toEqual(["buy 1", "buy 2"]);
    expect(open()).toBe(1);
  });
});

describe("what a clause leaves open", () => {
  it("is taken from the next one, in an edit as well", () => {
    chat.say("drove 14 miles for a cot, gave the man 9", { message: "cot" });
    expect(kinds()).toEqual(["buy 1", "drive 1"]);
    chat.say("drove 16 miles for a cot, gave the man 8", { message: "cot", edited: true });
    expect(kinds()).toEqual(["buy 1", "drive 1"]);
    expect(chat.ledger.books.facts[0]!.amount).toBe(800);
  });

  it("stays open where the next may be something else", () => {
    for (const note of [
      "drove 14 miles for a cot, put 20 down",
      "drove 14 miles for a cot and a trunk, paid 30",
      "drove 14 miles for a sled, she wants 30",
    ]) {
      chat.say(note);
      expect(kinds()).toEqual([]);
    }
  });
});
