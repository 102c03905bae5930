import type { Books } from "../books/books.ts";
import type { Fact } from "../books/facts.ts";
import type { Account } from "../books/postings.ts";
import { shareOfMiles } from "../books/shares.ts";
import type { Day } from "../calendar.ts";
import { showDay } from "../calendar.ts";
import { showMinutes } from "../decide/echo.ts";
import { showMiles } from "../mileage.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { splitEvenly } from "../split.ts";

/** What happened to a piece, in the order of the books: a day and a few words each, sums its own share. */
export function storyOf(books: Books, number: number, today: Day): string[] {
  const ids = new Set(books.story.get(number) ?? []);
  return books.facts
    .filter((fact) => ids.has(fact.id))
    .map((fact) => `${showDay(fact.day, today)}: ${happening(books, fact, number)}`);
}

function happening(books: Books, fact: Fact, number: number): string {
  const posted = (account: Account): string => show(Math.abs(postedTo(books, fact, number, account)));
  switch (fact.kind) {
    case "buy": {
      const price = postedTo(books, fact, number, "unsold pieces");
      return `${price === 0 ? "got free" : `bought ${show(price)}`}${fact.data.source ? `, ${fact.data.source}` : ""}`;
    }
    case "spend":
      return `${fact.data.what} ${show(spentOn(books, fact, number))}`;
    case "work":
      return `${fact.data.what ?? "work"} ${showMinutes(shareOf(fact, fact.data.minutes, number))}`;
    case "drive":
      return `drove ${showMiles(shareOfMiles(fact.data.miles, fact.pieces.length))} miles`;
    case "start":
      return "started";
    case "finish":
      return "finished";
    case "list":
      return `listed ${show(shareOf(fact, fact.amount ?? 0, number))}${fact.data.place ? `, ${fact.data.place}` : ""}`;
    case "reprice":
      return `price ${fact.data.cut ? "cut by" : "now"} ${show(shareOf(fact, fact.amount ?? 0, number))}`;
    case "hold": {
      const deposit = postedTo(books, fact, number, "deposits held");
      const buyer = fact.data.buyer ? ` for ${fact.data.buyer}` : "";
      return `held${buyer}${deposit === 0 ? "" : `, deposit ${show(-deposit)}`}`;
    }
    case "fallthrough": {
      const kept = postedTo(books, fact, number, "deposits kept");
      return `buyer backed out${kept === 0 ? "" : `, kept ${posted("deposits kept")}`}`;
    }
    case "sell": {
      const owed = postedTo(books, fact, number, "buyers owe");
      return `sold ${posted("sales")}${owed > 0 ? `, ${show(owed)} of it owed` : ""}${fact.data.method ? ` ${fact.data.method}` : ""}${fact.data.buyer ? ` to ${fact.data.buyer}` : ""}`;
    }
    case "collect":
      return `${show(-postedTo(books, fact, number, "buyers owe"))} of what was owed came in`;
    case "trade":
      return postedTo(books, fact, number, "sales") === 0
        ? `got in a trade, ${posted("unsold pieces")}`
        : `traded away at ${posted("sales")}`;
    case "refund":
      if (fact.data.unpaid) return `${posted("refunds")} never came`;
      return `${fact.data.returned ? "came back, " : ""}refunded ${posted("refunds")}`;
    case "retire":
      return fact.data.how === "given" ? "given away" : fact.data.how;
    default:
      return fact.kind;
  }
}

/** What a fact posted to one account of a piece, in cents: debit positive. */
function postedTo(books: Books, fact: Fact, number: number, account: Account): Cents {
  return (books.postings.get(fact.id) ?? [])
    .filter((posting) => posting.piece === number && posting.account === account)
    .reduce((sum, posting) => sum + posting.cents, 0);
}

/** A piece's share of spending in cents, wherever its cost went. */
function spentOn(books: Books, fact: Fact, number: number): Cents {
  return (books.postings.get(fact.id) ?? [])
    .filter((posting) => posting.piece === number && posting.account !== "cash")
    .reduce((sum, posting) => sum + posting.cents, 0);
}

/** A piece's even share of whole units, the earlier pieces taking the odd ones. */
function shareOf(fact: Fact, units: number, number: number): number {
  return splitEvenly(units, fact.pieces.length)[fact.pieces.indexOf(number)] ?? 0;
}
