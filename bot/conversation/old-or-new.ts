import type { Fact } from "../../core/books/facts.ts";
import { decideWhole, wholeLabel } from "../../core/decide/decide.ts";
import { type Choice, type Effect, newMatter } from "../../core/decide/decision.ts";
import { namesOf, piecesOf } from "../../core/decide/echo.ts";
import { talkedOf } from "../../core/decide/talk/talk.ts";
import { NONE_OF_THESE } from "../../core/decide/unclear/whole.ts";
import { show } from "../../core/money.ts";
import type { Reading } from "../../core/notes/reading.ts";
import type { Question } from "../../db/questions.ts";
import { openQuestion } from "./questions.ts";
import { newestFact, talkOf } from "./talk.ts";
import { deskOf, type Turn } from "./turn.ts";

/** Whether this person has recorded something since a question was last asked. */
export function isOlderThanNewest(turn: Turn, { prompt, note }: Question): boolean {
  const asked = (prompt === null ? null : turn.ledger.outbox.get(prompt)?.note) ?? note;
  // What an answer recorded is no note of its own.
  return (newestFact(turn, (fact) => fact.note === fact.root)?.note ?? 0) > asked;
}

const MONEY_WANTED: ReadonlySet<string> = new Set(["price", "amount", "balance", "refunded"]);

/**
 * An amount that answers an older question and could as well correct, or go on about, the newest note: asked, with
 * both as buttons. False where only the question can be meant.
 */
export function asksOldOrNew(
  turn: Turn,
  said: { text: string; readings: readonly Reading[]; effect: Effect; question: Question },
): boolean {
  const { text, readings, effect, question } = said;
  if (effect.kind !== "settle" || !effect.change || !MONEY_WANTED.has(question.ask.wants)) return false;
  const desk = { ...deskOf(turn), talk: talkOf(turn, undefined) };
  const settled = { ...question.matter.reading, ...effect.change } as Reading;
  const old: Choice = {
    label: wholeLabel(settled, desk),
    effect: { kind: "change", question: question.id, change: effect.change },
  };
  const [reading] = readings;
  const others = reading?.follows ? aboutIt(settled, desk) : correcting(turn, amountIn(effect.change));
  if (others.length === 0) return false;
  const matter = newMatter(reading ?? { kind: "unclear", text, line: 0 }, turn.today);
  const prompt = `Is that about "${question.matter.reading.text}", or the newest note?`;
  openQuestion(
    turn,
    matter,
    { prompt, wants: "choice", choices: [old, ...others, NONE_OF_THESE] },
    turn.root,
  );
  return true;
}

/** "sold it 48": the piece spoken of last, where what the question is about fits it. */
function aboutIt(settled: Reading, desk: Parameters<typeof wholeLabel>[1]): Choice[] {
  const it = { ...settled, pieces: undefined, missing: ["pieces"], follows: true } as unknown as Reading;
  const given = talkedOf(it, desk, { decide: decideWhole });
  if (given === it || given.missing?.length) return [];
  return [{ label: wholeLabel(given, desk), effect: { kind: "instead", readings: [given] } }];
}

function amountIn(change: Partial<Reading>): number | null {
  const values = Object.entries(change).filter(([field]) => MONEY_WANTED.has(field));
  const [only, ...others] = values;
  return only && others.length === 0 && typeof only[1] === "number" ? only[1] : null;
}

function correcting(turn: Turn, amount: number | null): Choice[] {
  const fact = newestFact(turn);
  if (!fact || amount === null || fact.amount === undefined || fact.amount === amount) return [];
  const label = `${nameOf(turn, fact)} ${show(fact.amount)} → ${show(amount)}`;
  return [{ label, effect: { kind: "fix", fact: fact.id, amount } }];
}

function nameOf({ ledger }: Turn, fact: Fact): string {
  if (fact.kind === "spend") return fact.data.what;
  return piecesOf(ledger.books, fact).length > 0 ? namesOf(ledger.books, fact) : fact.kind;
}
