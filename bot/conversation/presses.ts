import { medianPriceOf } from "../../core/answers/history.ts";
import type { Piece } from "../../core/books/books.ts";
import { labelOf } from "../../core/books/label.ts";
import { statusOf } from "../../core/books/piece.ts";
import { addDays, showDay } from "../../core/calendar.ts";
import { newMatter } from "../../core/decide/decision.ts";
import { askMissing } from "../../core/decide/missing.ts";
import { show } from "../../core/money.ts";
import type { Mention, Reading } from "../../core/notes/reading.ts";
import { afterRecap } from "./after-recap.ts";
import { applyEffect } from "./answering.ts";
import { answerPressed, pressMore } from "./asked.ts";
import { answerQuestion } from "./asking.ts";
import { makeOverhead } from "./fixing.ts";
import { pressLead } from "./leading.ts";
import { takeBackMend } from "./mending.ts";
import { pressPicture } from "./pictures.ts";
import { openQuestion } from "./questions.ts";
import { decideAll } from "./recording.ts";
import { isOwner, OWNER_ONLY } from "./rights.ts";
import { takeBackInstance } from "./standing.ts";
import type { Turn } from "./turn.ts";
import { undoRoot } from "./undoing.ts";

/** What a button's data does; unknown data is answered, too. */
export function handlePress(turn: Turn, press: string): void {
  const [kind, ...rest] = press.split(":");
  const piece = Number(rest.at(kind === "n" ? 1 : 0));
  if (kind === "q") pressChoice(turn, rest[0] ?? "", Number(rest[1]));
  else if (kind === "no") makeOverhead(turn, piece);
  else if (kind === "u") undoRoot(turn, Number(rest[0]), false);
  else if (kind === "ui") takeBackInstance(turn, Number(rest[0]));
  else if (kind === "um") takeBackMend(turn, Number(rest[0]));
  else if (kind === "ask") answerPressed(turn, rest.join(":"));
  else if (kind === "more") pressMore(turn, Number(rest[0]), rest.slice(1).join(":"));
  else if (kind === "n" && isStep(rest[0])) takeStep(turn, rest[0], piece);
  else if (kind === "r") recapOf(turn, rest[0] ?? "");
  else if (kind === "ra" || kind === "rg" || kind === "rs") afterRecap(turn, kind, rest[0] ?? "");
  else if (kind === "pf" || kind === "px") pressPicture(turn, kind, piece, Number(rest[1]));
  else if (kind === "mb") letBackIn(turn, Number(rest[0]));
  else if (kind === "nl") listFromNudge(turn, piece);
  else if ((kind === "nw" || kind === "nx") && !isOwner(turn)) turn.spoken.push(OWNER_ONLY);
  else if (kind === "nw") waitWith(turn, piece, Number(rest[1]));
  else if (kind === "nx") leaveOut(turn, piece);
  else if (!pressLead(turn, press))
    turn.spoken.push("That button is from an older version. Send it as a note instead.");
}

function pressChoice(turn: Turn, token: string, index: number): void {
  const question = turn.ledger.questions.byToken(token);
  const choice = question?.ask.choices[index];
  if (!question || question.person !== turn.person || !choice) {
    turn.spoken.push("That question is not open any more.");
  } else if (question.closed !== null) {
    turn.spoken.push(`That was answered already: ${question.matter.reading.text}`);
  } else {
    closePrompt(turn, question.prompt, choice.label);
    applyEffect(turn, question, choice.effect);
  }
}

/** The buttons of an answered question go, and what was chosen stands in their place. */
function closePrompt(turn: Turn, row: number | null, label: string): void {
  const asked = row === null ? null : turn.ledger.outbox.get(row);
  if (asked?.body.kind !== "text" || asked.message === null) return;
  const reply = { text: `${asked.body.reply.text}\n→ ${label}` };
  turn.ledger.outbox.queue({ chat: asked.chat, body: { kind: "edit", outbox: asked.id, reply } });
}

/** The next steps of a piece, and whether they need a price. */
const STEPS = { start: false, finish: false, list: true, sell: true } as const;
type Step = keyof typeof STEPS;

function isStep(word: string | undefined): word is Step {
  return Object.hasOwn(STEPS, word ?? "");
}

function takeStep(turn: Turn, step: Step, number: number): void {
  const piece = turn.ledger.books.pieces.get(number);
  if (!piece) {
    turn.spoken.push(`There is no #${number} on the books any more.`);
    return;
  }
  const reading = {
    kind: step,
    pieces: [mentionOf(piece)],
    text: `${step} ${labelOf(turn.ledger.books, [number])}`,
    line: 0,
    ...(STEPS[step] ? { missing: ["price"] } : {}),
  } as Reading;
  decideAll(turn, [newMatter(reading, turn.today)], { root: turn.note });
}

function mentionOf({ number, name, traits }: Readonly<Piece>): Mention {
  return { number, name, count: 1, ...(traits.length > 0 ? { traits: [...traits] } : {}) };
}

/** Asks the price to list a finished piece (all that is left of its set) at, and offers what its kind sold for. */
function listFromNudge(turn: Turn, number: number): void {
  const { books } = turn.ledger;
  const piece = books.pieces.get(number);
  if (!piece || piece.gone || piece.listed) {
    turn.spoken.push(`#${number} is listed or gone already.`);
    return;
  }
  const isMate = (other: { lot: number | null; set: boolean }) =>
    piece.set && other.set && other.lot === piece.lot;
  const mates = [...books.pieces.values()].filter((other) => isMate(other) && statusOf(other) === "finished");
  const listed = mates.length > 0 ? mates : [piece];
  const numbers = listed.map((each) => each.number);
  const text = `list ${labelOf(books, numbers)}`;
  const pieces = listed.map(mentionOf);
  const reading: Reading = { kind: "list", pieces, text, line: 0, missing: ["price"] };
  const median = numbers.length === 1 ? medianPriceOf(books, piece.name) : null;
  const ask = askMissing(reading)!;
  if (median) {
    const change = { price: median, missing: [] };
    ask.choices.unshift({ label: `At ${show(median)}, its usual price`, effect: { kind: "settle", change } });
  }
  openQuestion(turn, newMatter(reading, turn.today), ask, turn.note);
}

/** Somebody whom a restore kept out, because they had been taken out after the copy. */
function letBackIn(turn: Turn, id: number): void {
  const member = turn.ledger.members.byId(id);
  if (!isOwner(turn)) turn.spoken.push(OWNER_ONLY);
  else if (!member || member.removed === null) turn.spoken.push("Nobody is kept out there.");
  else {
    const { user, name } = member;
    turn.ledger.members.add({ user, name, role: "member", joined: turn.now() });
    turn.spoken.push(`${name} is in again. To take them out: remove member ${id}`);
  }
}

/** A month's recap and its picture, as if asked for. */
function recapOf(turn: Turn, month: string): void {
  if (!/^\d{4}-(?:0[1-9]|1[0-2])$/.test(month))
    turn.spoken.push("That button is from an older version. Ask: recap");
  else answerQuestion(turn, { kind: "ask", about: "recap", month, text: "recap", line: 0 });
}

function waitWith(turn: Turn, piece: number, days: number): void {
  const waits = turn.ledger.settings.get("piecesWaiting") ?? {};
  const until = addDays(turn.today, Number.isInteger(days) && days > 0 ? days : 3);
  turn.ledger.settings.set("piecesWaiting", { ...waits, [piece]: until });
  turn.spoken.push(`#${piece} rests until ${showDay(until, turn.today)}.`);
}

function leaveOut(turn: Turn, piece: number): void {
  const left = turn.ledger.settings.get("leftOutPieces") ?? [];
  if (!left.includes(piece)) turn.ledger.settings.set("leftOutPieces", [...left, piece]);
  turn.spoken.push(`I won't bring up #${piece} again.`);
}
