import { afterAll, describe, expect, test } from "vitest";
import { PHONE_COLUMNS, PHONE_LINES, rowsOf } from "../../../core/phone.ts";
import { verbs } from "../../../core/verbs/list.ts";
import { type Chat, openChat } from "./chat.ts";

// One chat, every kind of reply, in the order of a day; each note with how its answer begins: the fact first.
const NOTES: readonly (readonly [note: string, begins: RegExp])[] = [
  ["loan 14,600 at 5.8%", /^Loan: 14,600\.00 at 5\.8%/],
  ["bought tall oak dresser 30 cash yard sale", /^Bought #1 tall oak dresser, 30\.00 cash$/m],
  ["bought 2 chairs 22 yard sale", /^Bought 2 chairs \(#2, #3\), 22\.00/],
  ["free desk off the curb", /^Got #4 desk, free, curb/],
  ["got oak table and bench 80 at estate sale yesterday", /^Bought #5 oak table, #6 bench, 80\.00/],
  ["bought lamp 4", /^Bought #7 lamp, 4\.00/],
  ["bought stool 6", /^Bought #8 stool, 6\.00/],
  ["paint 12.50 for dresser", /^Paint 12\.50 for #1 tall oak dresser/],
  ["sander 59", /^Sander 59\.00: shop cost/],
  ["45 min on desk", /^45 min on #4 desk/],
  ["started the desk", /^#4 desk is started/],
  ["finished dresser", /^#1 tall oak dresser is finished/],
  ["listed desk 165", /^Listed #4 desk at 165\.00/],
  ["dropped desk to 150", /^#4 desk now 150\.00/],
  ["lowered desk by 20", /^#4 desk now 130\.00, 20\.00 less/],
  ["deposit 45 on desk transfer", /^#4 desk is on hold, deposit 45\.00 by transfer/],
  ["buyer backed out of desk, refunded 30", /^Buyer gone: #4 desk is listed again, 30\.00 given back/],
  ["deposit 45 on desk", /^#4 desk is on hold, deposit 45\.00/],
  ["sold desk 145", /^Sold #4 desk for 145\.00/],
  ["sold dresser 190 cash fee 6.60", /^Sold #1 tall oak dresser for 190\.00 cash/],
  ["sold chairs 60", /^Sold 2 chairs \(#2, #3\) for 60\.00/],
  ["refunded 25 on the desk", /^Gave back 25\.00 on #4 desk/],
  ["dresser came back gave back 190", /^Gave back 190\.00 on #1 tall oak dresser/],
  ["donated the bench", /^#6 bench is given away/],
  ["keeping table", /^#5 oak table is kept for yourself/],
  ["ads 240", /^Got 240\.00 from ads/],
  ["paid loan 500", /^Paid loan 500\.00/],
  ["loan balance 13900", /^Loan balance 13,900\.00/],
  ["loan rate 6.8%", /^Loan: 6\.8% a year/],
  ["drove 24 miles for dresser", /^Drove 24 miles for #1 tall oak dresser/],
  ["goal 100 pieces this year", /^Goal: 100 pieces a year/],
  ["set aside 20% for tax", /^Setting aside 20% for tax/],
  ["nudge at 6:30pm", /^The daily message comes at 6:30 pm/],
  ["undo", /^Taken back: Setting aside 20% for tax/],
  ["bought crate 5", /^Bought #9 crate, 5\.00/],
  ["make that 8", /^Bought #9 crate, 8\.00/],
  ["sold lamp 30, 10 still owed", /^Sold #7 lamp for 30\.00/],
  ["got the other 10 for the lamp", /10\.00/],
  ["storage 60 every month", /60\.00 every month/],
  ["never mind", /./],
  ["traded the stool for a bookcase", /stool/],
  ["20", /20\.00/],
  ["delete the drive", /Drove 24 miles/],
  ["sold bookcase 60", /^Sold #10 bookcase for 60\.00/],
  ["split the profit on the bookcase with dad", /dad|20\.00/],
];

/** Kinds that record nothing of their own, or are asked of the books. */
const NOT_NOTED = ["ask"];

/** Widest at a joint: what a list or a question may take, since a phone breaks it between words. */
const QUESTIONS = [
  "month",
  "loan?",
  "recap",
  "pace",
  "tax",
  "unlisted",
  "listed",
  "held",
  "unsold",
  "pieces",
];

describe("every kind of reply", () => {
  const chat: Chat = openChat();
  const shown: { note: string; text: string }[] = [];
  afterAll(() => {
    chat.end();
    const lines = shown.flatMap(({ text }) => text.split("\n"));
    const wide = lines.filter((line) => [...line].length > PHONE_COLUMNS);
    console.log(
      `${shown.length} replies, ${lines.length} lines, ${wide.length} over ${PHONE_COLUMNS} columns`,
    );
    for (const line of wide) console.log(`  ${line}`);
  });

  test.each(NOTES)("'%s' is answered with the fact first, in five lines of a phone", (note, begins) => {
    const { text, texts } = chat.say(note);
    shown.push({ note, text });
    expect(text).toMatch(begins);
    for (const each of texts) expect(rowsOf(each)).toBeLessThanOrEqual(PHONE_LINES);
    // Nothing that cannot be broken is wider than the phone, and an amount stands in no line's broken end.
    for (const word of text.split(/\s+/)) expect([...word].length).toBeLessThanOrEqual(PHONE_COLUMNS);
    expect(text).not.toMatch(/undefined|null|NaN|\[object/);
  });

  test("the line of what moved comes after the fact, once, and within the width", () => {
    for (const { text } of shown) {
      const moved = text
        .split("\n")
        .filter((line) => /^(?:Month|Loan|Due|Paid ahead|To earn back) [+-]?\d/.test(line));
      expect(moved.filter((line) => line.startsWith("Month")).length).toBeLessThanOrEqual(1);
      for (const line of moved) expect([...line].length).toBeLessThanOrEqual(PHONE_COLUMNS);
      expect(text.split("\n")[0]).not.toMatch(/^(?:Month|Due|Paid ahead|To earn back) /);
    }
  });

  test.each(QUESTIONS)("'%s' has no line that a phone would have to break inside a figure", (question) => {
    const { text } = chat.say(question);
    shown.push({ note: question, text });
    for (const word of text.split(/\s+/)) expect([...word].length).toBeLessThanOrEqual(PHONE_COLUMNS);
  });

  test("a kind that the table does not have is answered as short, by its own example", () => {
    const recorded = new Set<string>(allFacts(chat).map(({ kind }) => kind));
    expect(recorded.size).toBeGreaterThan(20);
    for (const { kind, example } of verbs) {
      if (recorded.has(kind) || NOT_NOTED.includes(kind)) continue;
      for (const each of chat.say(example).texts)
        expect([kind, rowsOf(each) <= PHONE_LINES]).toEqual([kind, true]);
    }
  });
});

/** Every fact ever recorded, voided ones too. */
function allFacts({ ledger }: Chat): { kind: string }[] {
  return ledger.connection.sqlite.prepare("select kind from facts").all() as { kind: string }[];
}
