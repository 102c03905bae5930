import type { Day, Instant } from "../../core/calendar.ts";
import { decide } from "../../core/decide/decide.ts";
import { newMatter } from "../../core/decide/decision.ts";
import { type Cents, show } from "../../core/money.ts";
import { readBareMoney, readBarePercent } from "../../core/notes/bare.ts";
import type { Ledger } from "../../db/ledger.ts";
import { ownerAtMachine, TERMINAL_USER } from "../members.ts";
import type { Dialogue } from "./dialogue.ts";

/** Asks for the loan that the profit goes to, and puts it on the books; Enter leaves it for the chat. */
export async function askLoan(
  dialogue: Dialogue,
  ledger: Ledger,
  { today, now }: { today: Day; now: Instant },
): Promise<void> {
  const { say } = dialogue;
  const [loan] = ledger.books.loans.values();
  if (loan) {
    say("", `Your loan is on the books already: ${show(loan.principal)} at ${loan.rate}%.`);
    return;
  }
  const balance = await askBalance(dialogue);
  if (balance === null) {
    say("No loan for now. You can tell the bot any time, like: loan 14,250 at 5.5%");
    return;
  }
  const rate = await askRate(dialogue);
  recordLoan(ledger, { balance, rate, today, now });
  say(`On the books: ${show(balance)} at ${rate}%.`);
}

async function askBalance({ say, ask }: Dialogue): Promise<Cents | null> {
  for (;;) {
    const answer = await ask(
      "The loan that the profit goes to: how much is still owed? Like 14,250. No loan: press Enter.",
    );
    if (answer === "" || /^(?:no|none|0)$/i.test(answer)) return null;
    const balance = readBareMoney(answer);
    if (balance) return balance;
    say("I need one amount, like 14,250 or 9871.14.");
  }
}

async function askRate({ say, ask }: Dialogue): Promise<string> {
  for (;;) {
    const rate = readBarePercent(await ask("Its interest a year, in percent? Like 5.5. None: 0"));
    if (rate !== null) return rate;
    say("I need a percentage, like 5.5 or 6.8%.");
  }
}

function recordLoan(
  ledger: Ledger,
  { balance, rate, today, now }: { balance: Cents; rate: string; today: Day; now: Instant },
): void {
  const text = `loan ${show(balance)} at ${rate}%`;
  const reading = { kind: "loan" as const, balance, rate, text, line: 0 };
  const desk = { books: ledger.books, today, nextPiece: ledger.nextPiece };
  const decision = decide(newMatter(reading, today), desk);
  if (decision.kind !== "record") throw new Error(`a first loan was ${decision.kind}ed about`);
  ledger.transaction(() => {
    const author = ownerAtMachine(ledger, now);
    const note = ledger.addNote({
      chat: TERMINAL_USER,
      message: `setup-${now}`,
      text,
      author,
      said: now,
      handled: now,
    });
    const recorded = ledger.record({ note, author, facts: decision.facts });
    if (recorded.kind === "impossible") throw new Error(`a first loan cannot be: ${recorded.problem.kind}`);
    ledger.setNoteState(note, "recorded");
  });
}
