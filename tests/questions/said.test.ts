import { afterAll, beforeAll, expect, test } from "vitest";
import { answer } from "../../core/questions/ask.ts";
import { type Chat, openChat } from "../bot/conversation/chat.ts";
import { linesOf } from "./cases.ts";

let chat: Chat;

beforeAll(() => {
  chat = openChat({ start: "2026-10-15T18:00:00Z" });
  for (const note of linesOf("questions-ledger.txt")) chat.say(note);
  for (const note of [
    "lent the sander to mom 2026-10-01",
    "mom bought a sideboard 20 from yard sale 2026-10-02",
  ])
    chat.say(note);
});
afterAll(() => chat.end());

function asked(question: string) {
  const { books } = chat.ledger;
  return answer(question, {
    books,
    today: "2026-10-15",
    currency: "USD",
    people: [],
    me: 1,
    mileageRates: {},
  });
}

test.each([
  ["is walnut better than black", /^(?:Yes|No)\. Profit.*difference/],
  ["do lamps sell faster than dressers", /^(?:Yes|No)\. Days to sell/],
  ["did i do better in june or july", /^Made, side by side/],
  ["how did i do this month", /^October 2026 so far: /],
  ["how'd we do in june", /^June 2026: /],
  ["what did i do this month", /^Noted, /],
  ["compare lamps and dressers", /^Profit, ever: difference/],
  ["compare june to july to august", /^Made, side by side/],
  ["did i spend more on gas or storage", /^Spent, ever: difference/],
  ["what kind did i buy the most of", /^Pieces bought, ever, highest first/],
  ["sold under 80", /^Brought in, under 80\.00/],
  ["how long do things sit before they sell", /^Days to sell/],
  ["difference between benches and desks", /^Profit, ever: difference/],
  ["did i lose money in august", /^Yes\. Made, August: -/],
  ["did i lose money on trashed pieces", /^Yes\. Profit, scrapped/],
  ["did anything come back", /^Yes\. Pieces came back/],
  ["did mom buy anything", /^Yes\. Pieces bought by mom, ever: 1/],
  ["everything mom got", /^Bought, by mom, ever: 1 note/],
  ["which pieces did i keep", /^Kept, ever: 1 note/],
  ["what did i trash", /^Scrapped, ever: 2 notes/],
  ["last 3 sales", /^Sold: 3 notes/],
  ["what have i lent", /lent sander to mom/],
  ["who has the sander", /lent sander to mom/],
  ["gas a month on average", /^Gas a month on average, ever: 53\.62/],
  ["how much do i come down", /^Come down from the first list price/],
  ["what's been sitting the longest", /unsold, ever, most first/],
  ["whats #20 at", /#20 oak dresser: listed at 120\.00/],
  ["whats the small armoire at", /#27 small armoire: listed at/],
  ["whats the hutch at", /#23 small hutch: listed at/],
  ["who owes me", /^Owed by buyers, now/],
  ["profit between the 5th and 20th of august", /^Made, Aug 5, 2026 to Aug 20/],
  ["least i sold a lamp for", /^Sale price, lamps, ever, lowest first/],
  ["which month did i buy the most pieces", /^Pieces bought, ever, highest first/],
  ["what month did i sell the fewest lamps", /^Lamps sold, ever, lowest first/],
  ["days between buying and selling #22", /^Days to sell, #22/],
  ["profit on chairs i bought in july", /^Profit, chairs bought July 2026, ever/],
  ["how much did i make on pieces bought last year", /^Profit, bought 2025/],
  ["how many of the pieces i bought in august sold", /^Pieces sold bought August 2026, ever/],
  ["is this year better than last year", /^(?:Yes|No)\. Made, side by side/],
  ["did i sell fewer pieces in june than in may", /^(?:Yes|No)\. Pieces sold, side by side/],
  ["how long does a dresser sit", /^Days listed, dressers/],
  ["how much is in unfinished pieces", /^Tied up, unfinished, now/],
  ["how many pieces are not finished yet", /^Pieces unfinished, now/],
  ["when did i last sell a dresser", /^Sold, dressers, last:\n/],
  ["when was the first time i sold something", /^Sold, first:\n/],
  ["when did i last pay the loan", /^Loan payments, last:\n/],
  ["my first 2 sales", /^Sold: 2 notes/],
  ["how many did each buyer take", /^Pieces sold, ever/],
  ["can you check the profit for june", /^Made, June/],
  ["spending this year except fees", /^Not fees, /],
  ["my hourly, all pieces", /^An hour, gone, ever/],
  ["what is my hourly", /^An hour, sold, ever/],
  ["profit on pieces i paid over 40 for", /^Profit, bought over 40\.00/],
  ["what sold for less than 80", /^Sale price|^Brought in, under 80\.00/],
  ["how did i pay for #22", /paid by cash/],
  ["is the hutch done", /^(?:Yes|No)/],
  ["which pieces still need work", /^(?:Start|Finish) #/],
  ["overhead this year", /^Spent, overhead/],
  ["have i made over 5000 this year", /^No\. Made, 2026 so far: .*\(over 5,000\.00\)/],
  ["did i sell more than 3 lamps in august", /^(?:Yes|No)\. Lamps sold, August: \d+ \(over 3\)/],
  ["did any month lose money", /^(?:Yes|No)\. Made, ever/],
  ["which months did i make over 100", /^Made, ever, over 100\.00/],
  ["did i lose money on anything", /^Yes\. Profit, at a loss/],
  ["profit on lamps on weekends", /^Profit, lamps on weekends, ever/],
  ["what share of profit came from lamps", /^Profit, ever: lamps -?\d+% \(/],
  ["sold to the student since june", /^Pieces sold to student, since June: \d+\n/],
  ["bought in the last 3 months", /^Pieces bought, last 3 months: \d+\n/],
  ["which pieces lost money", /^Profit, at a loss, ever: -48\.25 \(2 pieces\)\n {2}#1 .*-30\.50\n {2}#6 /],
  ["how many months did i lose money", /^Made, ever, under 0\.00: \d+ months?\n/],
  ["how many different kinds have i sold", /^Pieces sold, ever: \d+ kinds\n/],
  ["how many different buyers bought something", /^Pieces sold, ever: \d+ buyers\n/],
  ["how many weeks did i spend over 40", /^Spent, ever, over 40\.00: \d+ weeks\n/],
  ["lamps vs dressers vs benches", /^Profit, ever, side by side:\n/],
  ["what's waiting on me", /^(?:List|Finish|Start|Settle|Drop) /],
  ["biggest sales day", /^Brought in, ever, highest first:\n {2}[A-Z][a-z]{2} \d+, 202\d: /],
  ["longest on hand", /^Days here, now, most first:/],
  ["do i do better on desks than on lamps", /^(?:Yes|No)\. Profit, ever: difference/],
  ["stuff i bought in august", /^Bought, August: \d+ notes/],
  ["show me sales over 100 since june", /^Sold, over 100\.00, since June: \d+ notes?/],
  ["how many pieces are finished but not up", /^Pieces finished, not listed, now/],
  ["how did august go", /^August 2026: /],
  ["what did september come to", /^September 2026: /],
  ["was july any good", /^July 2026: /],
  ["gas per mile", /^Gas a mile, ever: 0?\d*\.\d\d \([\d.,]+ over [\d.]+ miles\)/],
  ["cost per mile in june", /^Spent a mile, June: /],
  ["what havent i started yet", /^Pieces not started, now: \d+/],
  ["what have i not started", /^Pieces not started, now: \d+/],
  ["how many has nobody bought yet", /^Pieces unsold, now: \d+/],
  ["how many pieces have i got here that nobody has bought yet", /^Pieces unsold, now: \d+/],
  ["what do i still have that isnt listed", /^(?:\d+ finished, not listed|Nothing finished)/],
  ["how much is tied up in stuff i havent listed", /^Tied up, not listed, now: /],
  ["set aside for tax in august", /^Set aside for tax, August: /],
  ["tax q3", /^Set aside for tax, Q3: /],
  ["whats the rate on the school loan", /^school loan: 5\.5% a year$/],
  ["interest rates", /^school loan: 5\.5% a year\ntruck loan: 6\.9% a year$/],
  ["how much is due to the loan", /^(?:Due to the loan|Paid ahead|To earn back|Waiting on buyers)/],
  ["profit on what mom bought", /^Profit, bought by mom, ever: /],
  ["how many of mom's are left", /^Pieces unsold bought by mom, now: 1/],
  ["who found the sideboard", /: bought by mom$/],
  ["who bought the sideboard", /: bought by mom$/],
  ["who sold the armoire", /armoire/],
  ["how's the oak stuff been paying", /^Profit, oak, ever: /],
  ["do benches pay off", /^(?:Yes|No)\. Profit, benches, ever: /],
  ["does oak pay", /^(?:Yes|No)\. Profit, oak, ever: /],
  ["everything from the church sale", /^Pieces bought from church sale, ever: \d+\n/],
  ["how much has the student given me", /^Brought in, to student, ever: /],
  ["how many dressers for over 100", /^Dressers over 100\.00 sold, ever: \d+/],
  ["how many pieces did i get over 100 for", /^Over 100\.00 sold|^Pieces sold over 100\.00/],
  ["what does a lamp sell for", /^Average sale price, lamps, ever: /],
  ["how much do i make on a lamp", /^Average profit, lamps, ever: /],
  ["what have my lamps sold for", /^Brought in, lamps, ever: [\d.,]+ \(\d+ pieces\)\n {2}#/],
  ["how much did the lamps go for each", /^Brought in, lamps, ever: [\d.,]+ \(\d+ pieces\)\n {2}#/],
  ["paint list", /^Spent, paint, ever: \d+ notes/],
  ["list what i sold over 150", /^Sold, over 150\.00, ever: \d+ notes/],
  ["what do i work on this weekend", /^(?:Start|Finish|List|Settle|Drop) /],
  ["cost to fix up the small hutch", /^Spent, small hutches without buying, ever/],
  ["what happened to the small hutch", /hutch: is /],
  ["what can i ask you", /^Text me what happened/],
])("%s", (question, told) => {
  const { understood, text } = asked(question);
  expect(text).toMatch(told);
  expect(understood).toBe(true);
});

test("a kind alone is asked back, what may be asked of it on buttons", () => {
  const { understood, text, buttons } = asked("lamps?");
  expect(understood).toBe(false);
  expect(text).toBe("What about lamps?");
  expect(buttons?.flat().map(({ press }) => press)).toEqual([
    "ask:profit on lamps",
    "ask:how many lamps sold",
    "ask:how many lamps are left",
  ]);
  for (const { press } of buttons!.flat()) expect(asked(press.slice(4)).understood).toBe(true);
});

test.each([
  ["whats my profit margin", "profit margin"],
  ["return on investment for lamps", "return on investment"],
  ["how many times did i drive in june", "how many times"],
  ["how many hutches should i have sold", "should"],
  ["profit on dressers with lamps", "lamps"],
  ["how much did the first lamp make", "the first"],
  ["sales on the 5th of each month", "the 5th"],
  ["how much will i make this month", "will"],
  ["how much money do i have left", "left"],
  ["who bought both lamps", "both"],
  ["how often do i sell a lamp", "how often"],
  ["spent at the yard sale on paint", "yard sale"],
  ["double the paint spend", "double"],
  ["profit per foot", "foot"],
  ["profit per mile by kind", "mile"],
  ["how much is due to the loan for the truck loan", "truck"],
  ["profit on paint", "paint"],
  ["how much on paint while barefoot", "barefoot"],
  ["finished #22", "finished"],
  ["august profit without gas", "gas"],
  ["how long did it take me to finish the small hutch", "finish"],
])("%s: refused by the word", (question) => {
  expect(asked(question).understood).toBe(false);
});
