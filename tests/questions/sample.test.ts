import { afterAll, beforeAll, expect, test } from "vitest";
import type { PrintedRow } from "../../core/questions/answered.ts";
import { answer } from "../../core/questions/ask.ts";
import { type Chat, openChat } from "../bot/conversation/chat.ts";
import { linesOf, passesCase, questionCases } from "./cases.ts";
import { wantedOf } from "./engine.ts";

let chat: Chat;

beforeAll(() => {
  chat = openChat({ start: "2026-10-15T18:00:00Z" });
  for (const note of linesOf("questions-ledger.txt")) {
    const before = chat.ledger.books.facts.length;
    const said = chat.say(note);
    if (chat.ledger.books.facts.length === before) throw new Error(`${note}: ${said.text}`);
  }
});

afterAll(() => chat.end());

function ask(question: string, on: string) {
  const { books } = chat.ledger;
  const desk = { books, today: on, currency: "USD", people: [{ id: 1, name: "Robin" }], me: 1 };
  return answer(question, { ...desk, mileageRates: {} });
}

/** Zero rows are free: only what is there is compared. */
function isSameRows(
  rows: readonly PrintedRow[],
  wanted: readonly (readonly [string, string | null])[],
): boolean {
  const got = rows.filter(({ value }) => Number(value) !== 0);
  const all = wanted.filter(([, value]) => Number(value) !== 0);
  return (
    got.length === all.length &&
    all.every(
      ([label, value], index) =>
        Number(got[index]!.value) === Number(value) &&
        got.some(
          (row) =>
            (row.label === label || String(row.number) === label) && Number(row.value) === Number(value),
        ),
    )
  );
}

function isSameValue(got: string | null | undefined, wanted: string | null): boolean {
  return got === wanted || (got != null && wanted !== null && Number(got) === Number(wanted));
}

test("the sample's questions are answered as expected", () => {
  const wrong = questionCases("questions.jsonl").flatMap((each) => {
    const answered = ask(each.question, each.on);
    return passesCase(each, answered) ? [] : [`${each.id} ${each.question}: ${answered.text}`];
  });
  expect(wrong).toEqual([]);
});

test("questions in phone wording come to what a second engine makes of the raw facts", () => {
  const on = "2026-10-15";
  const wrong = linesOf("own.tsv").flatMap((line) => {
    const [meaning, question] = line.split("\t") as [string, string];
    const answered = ask(question, on);
    if (meaning === "refuse") {
      const isNothing = !answered.understood || answered.value == null || Number(answered.value) === 0;
      return isNothing ? [] : [`${question}: ${answered.text}`];
    }
    const wanted = wantedOf(chat.ledger.books.facts, meaning, on);
    const isRight =
      answered.understood &&
      (wanted.value === undefined || isSameValue(answered.value, wanted.value)) &&
      (wanted.rows === undefined || isSameRows(answered.rows ?? [], wanted.rows));
    return isRight ? [] : [`${question}: ${answered.text}, not ${JSON.stringify(wanted)}`];
  });
  expect(wrong).toEqual([]);
});
