import { recap } from "../../core/answers/recap.ts";
import { counted, signed } from "../../core/answers/wording.ts";
import type { Books } from "../../core/books/books.ts";
import { monthRow } from "../../core/books/month.ts";
import { addMonths, type Day, firstDayOf, type Month, monthName, monthOf } from "../../core/calendar.ts";
import type { Reply } from "../../core/reply.ts";
import type { Ledger } from "../../db/ledger.ts";
import { monthPictureBody } from "../files/bodies.ts";
import type { Job, Moment, ScheduleDeps } from "./schedule.ts";

/** The month is told in the morning of its first day, not at midnight. */
const RECAP_AT = "09:00";
/** After a longer absence only the latest month is told. */
const MONTHS_MISSED_MAX = 12;
/** Later notes change these recaps still. */
const MONTHS_RETOLD = 3;
/** Notes that come late come together: the month is told again when they have been quiet for so long. */
const QUIET_MS = 600_000;

/** On the first of a month, or on coming back later in it: each month ended since the last one told, and drawn. */
export const tellMonths: Job = (deps, { instant, today, time, chat }) => {
  const { ledger } = deps;
  const first = firstDayOf(monthOf(today));
  if (chat === null || (today === first && time < RECAP_AT)) return false;
  if (ledger.reminders.has(first, "recap")) return false;
  return ledger.transaction(() => {
    const firsts = firstsMissed(ledger, first);
    const told = firsts.map((day) => {
      ledger.reminders.claim(day, "recap", instant);
      return tellMonth(deps, { month: addMonths(monthOf(day), -1), today, chat });
    });
    return told.includes(true);
  });
};

/** The first days of months, up to this one, on which nothing was told; oldest first. */
function firstsMissed(ledger: Ledger, first: Day): Day[] {
  const missed: Day[] = [];
  for (let back = 0; back < MONTHS_MISSED_MAX; back++) {
    const day = firstDayOf(addMonths(monthOf(first), -back));
    if (ledger.reminders.has(day, "recap")) return missed;
    missed.unshift(day);
  }
  return [first];
}

type Telling = { month: Month; today: Day; chat: string };

function tellMonth({ ledger, currency }: ScheduleDeps, { month, today, chat }: Telling): boolean {
  const { books, settings, outbox } = ledger;
  keepTold(ledger, month, figuresOf(books, month, today));
  if (!books.months.has(month)) return false;
  const { text, buttons = [] } = recap.answer({
    question: { kind: "ask", about: "recap", month, text: "recap", line: 0 },
    ...{ books, today, currency, pieces: [] },
    mileageRates: settings.get("mileageRates") ?? {},
  });
  outbox.queue({ chat, body: { kind: "text", reply: { text, buttons } }, key: `recap:${month}` });
  const picture = monthPictureBody(books, { month, today, currency });
  if (picture) outbox.queue({ chat, body: picture, key: `recap picture:${month}` });
  return true;
}

/** What a recap comes down to; a month told with other figures is told again. */
type Told = { profit: number; income: number; flipped: number; paid: number };

function figuresOf(books: Books, month: Month, today: Day): Told {
  const { flipProfit, otherIncome, flipped, paidToLoan } = monthRow(books, month, today);
  return { profit: flipProfit, income: otherIncome, flipped, paid: paidToLoan };
}

function keepTold({ settings }: Ledger, month: Month, told: Told): void {
  const all = { ...settings.get("recapsTold"), [month]: told };
  const latest = Object.entries(all)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .slice(-MONTHS_RETOLD);
  settings.set("recapsTold", Object.fromEntries(latest));
}

/**
 * A month whose recap later notes have changed is told again in one line, the whole of it and the picture by
 * button. Looked at only when the books changed since the last look.
 */
export function monthRetelling(): Job {
  let looked: { books: Books; facts: number } | null = null;
  return ({ ledger }, { instant, today, chat }: Moment) => {
    const { books, settings } = ledger;
    if (chat === null || (looked?.books === books && looked.facts === books.facts.length)) return false;
    const told = Object.entries(settings.get("recapsTold") ?? {}) as [Month, Told][];
    const changed = told.flatMap(([month, before]) => {
      const now = figuresOf(books, month, today);
      return JSON.stringify(now) === JSON.stringify(before) ? [] : [{ month, before, now }];
    });
    // Those still coming in may change it again.
    if (changed.length > 0 && ledger.hasRecentNote(instant - QUIET_MS, () => true)) return false;
    looked = { books, facts: books.facts.length };
    if (changed.length === 0) return false;
    return ledger.transaction(() => {
      for (const { month, before, now } of changed) {
        keepTold(ledger, month, now);
        const reply = retelling(month, before, now);
        ledger.outbox.queue({ chat, body: { kind: "text", reply } });
      }
      return true;
    });
  };
}

/** "October is now +167.50 (was +107.50), 3 flipped". */
function retelling(month: Month, before: Told, now: Told): Reply {
  const parts = [
    ...(now.profit === before.profit ? [] : [`${signed(now.profit)} (was ${signed(before.profit)})`]),
    ...(now.flipped === before.flipped ? [] : [`${counted(now.flipped, "piece")} flipped`]),
    ...(now.income === before.income ? [] : [`other income ${signed(now.income)}`]),
    ...(now.paid === before.paid ? [] : [`paid to the loan ${signed(now.paid)}`]),
  ];
  return {
    text: `${monthName(month)} is now ${parts.join(", ")}`,
    buttons: [[{ label: "Recap and picture", press: `r:${month}` }]],
  };
}
