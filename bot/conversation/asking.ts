import type { Answer } from "../../core/answers/answer.ts";
import { answers } from "../../core/answers/list.ts";
import { addDays, dayOfInstant, showDay, showTime, timeOfInstant } from "../../core/calendar.ts";
import { ever } from "../../core/decide/pieces/fits.ts";
import { matchMention } from "../../core/decide/pieces/match.ts";
import type { Reading, ReadingOf } from "../../core/notes/reading.ts";
import { nudgeTime } from "../../db/settings.ts";
import { monthPictureBody } from "../files/bodies.ts";
import { queuePictures } from "./pictures.ts";
import { isOwner, OWNER_ONLY } from "./rights.ts";
import { isAboutMoney, NOT_SHOWN, seesMoney } from "./sight.ts";
import { keepAsked } from "./talk.ts";
import type { Turn } from "./turn.ts";

/** Answers a question about the books. */
export function answerQuestion(turn: Turn, question: ReadingOf<"ask">): void {
  const rule = answers.find(({ about }) => about === question.about);
  if (!rule) throw new Error(`no answer for ${question.about}`);
  const { ledger, today, currency } = turn;
  if (isAboutMoney(question.about) && !seesMoney(ledger, turn.person)) {
    turn.spoken.push(NOT_SHOWN);
    return;
  }
  const mileageRates = ledger.settings.get("mileageRates") ?? {};
  const pieces = piecesAsked(turn, question);
  if (question.about === "piece" && pieces.length > 0) keepAsked(turn, pieces);
  const answer = rule.answer({ question, books: ledger.books, today, currency, pieces, mileageRates });
  turn.spoken.push(answer.text);
  showBeside(turn, answer);
}

/** What an answer has beside its text: buttons, a piece's pictures, a month's picture. */
export function showBeside(
  turn: Turn,
  { buttons = [], pictures = [], monthPicture: month }: Pick<Answer, "buttons" | "pictures" | "monthPicture">,
): void {
  const { ledger, today, currency } = turn;
  turn.buttons.push(...buttons);
  for (const piece of pictures) queuePictures(turn, piece);
  const picture = month ? monthPictureBody(ledger.books, { month, today, currency }) : null;
  if (picture) turn.files.push(picture);
}

/** A question about pieces speaks of them: "it" after it is the one. */
export function keepWhatWasAsked(turn: Turn, reading: Reading): void {
  if (reading.kind !== "ask" || reading.about !== "piece") return;
  const pieces = piecesAsked(turn, reading);
  if (pieces.length > 0) keepAsked(turn, pieces);
}

/** Every piece that a question may mean: it tells of all of them rather than asking which. */
function piecesAsked(turn: Turn, question: ReadingOf<"ask">): number[] {
  const asked = (question.pieces ?? []).flatMap((mention) => {
    const { plural: _, ...one } = mention;
    const match = matchMention(one, turn.ledger.books, ever, new Set());
    if (match.kind === "found" || match.kind === "too few") return match.pieces;
    return match.kind === "several" ? match.groups.flat() : [];
  });
  return [...new Set(asked)];
}

/** Sets the daily message as asked: its hour, off, or quiet for some days. */
export function setNudge(turn: Turn, { at, off, days }: ReadingOf<"nudge">): void {
  const { settings } = turn.ledger;
  if (!isOwner(turn)) {
    turn.spoken.push(OWNER_ONLY);
    return;
  }
  if (off) {
    settings.set("nudgeOff", true);
    turn.spoken.push("The daily message is off.\nTo turn it on: nudge at 6pm");
  } else if (days !== undefined) {
    const until = addDays(turn.today, days);
    settings.set("snoozedUntil", until);
    turn.spoken.push(`Quiet until ${showDay(until, turn.today)}.`);
  } else {
    if (at) settings.set("nudgeAt", at);
    settings.unset("nudgeOff");
    settings.unset("snoozedUntil");
    const from = startsTomorrow(turn) ? ", from tomorrow" : "";
    turn.spoken.push(
      `The daily message comes at ${showTime(nudgeTime(settings))}${from},\nwhen there is something to say.`,
    );
  }
}

/** An hour that is past already is not made up for at once: today counts as done. */
function startsTomorrow({ ledger, now, zone }: Turn): boolean {
  if (timeOfInstant(now(), zone()) < nudgeTime(ledger.settings)) return false;
  ledger.reminders.claim(dayOfInstant(now(), zone()), "nudge", now());
  return true;
}
