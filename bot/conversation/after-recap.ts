import { tellMonth } from "../../core/answers/recap-aloud.ts";
import { type Month, monthName } from "../../core/calendar.ts";
import { newMatter } from "../../core/decide/decision.ts";
import { show } from "../../core/money.ts";
import { decideAll } from "./recording.ts";
import { NOT_SHOWN, seesMoney } from "./sight.ts";
import type { Turn } from "./turn.ts";

/** What a button under a month's recap does: the money was sent, a goal is wanted, the month in sentences. */
export function afterRecap(turn: Turn, kind: "ra" | "rg" | "rs", what: string): void {
  if (!seesMoney(turn.ledger, turn.person)) turn.spoken.push(NOT_SHOWN);
  else if (kind === "rs" && /^[1-9]\d{0,10}$/.test(what)) paySent(turn, Number(what));
  else if (/^\d{4}-\d{2}$/.test(what)) (kind === "ra" ? readAloud : offerGoal)(turn, what);
  else turn.spoken.push("That button is from an older version. Ask: recap");
}

function paySent(turn: Turn, amount: number): void {
  const text = `paid loan ${show(amount)}`;
  decideAll(turn, [newMatter({ kind: "pay", amount, text, line: 0 }, turn.today)], { root: turn.note });
}

function readAloud(turn: Turn, month: Month): void {
  const { books } = turn.ledger;
  turn.spoken.push(
    books.months.has(month)
      ? tellMonth(books, month, turn.today).join("\n")
      : "Nothing in that month any more.",
  );
}

/** As many as were flipped in the month before, a few more, and a good many more. */
function offerGoal(turn: Turn, month: Month): void {
  const months = [...turn.ledger.books.months.entries()].filter(([each]) => each < month);
  const flipped = Math.max(2, months.at(-1)?.[1].flipped ?? 0);
  const sizes = [flipped, flipped + 2, flipped + 5];
  turn.spoken.push(`How many pieces in ${monthName(month)}?\nOr text me, like: goal 800 a month`);
  turn.buttons.push(sizes.map((pieces) => ({ label: `${pieces} pieces`, press: `g:${pieces}` })));
}
