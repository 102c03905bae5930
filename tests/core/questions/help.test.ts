import { expect, test } from "vitest";
import { answer } from "../../../core/questions/ask.ts";
import { HELP_TOPICS, helpText, helpTopicFor } from "../../../core/questions/help-topics.ts";
import { springLedger } from "../answers/asking.ts";

const desk = {
  books: springLedger().books(),
  today: "2026-04-10",
  currency: "USD",
  people: [{ id: 1, name: "Robin" }],
  me: 1,
  mileageRates: {},
};

test.each(HELP_TOPICS.map((topic) => [topic.name, topic] as const))("help %s fits a phone", (name, topic) => {
  const lines = helpText(topic).split("\n");
  expect(lines.length).toBeLessThanOrEqual(12);
  for (const line of lines) expect(line.length).toBeLessThanOrEqual(54);
  expect(helpTopicFor(`help ${name}`)).toBe(topic);
});

test("a topic is found by what one wants to do", () => {
  expect(helpTopicFor("how do I delete a note")?.name).toBe("slips");
  expect(helpTopicFor("How can I get a buyer's deposit in?")?.name).toBe("deposits");
  expect(helpTopicFor("how much did i make")).toBeNull();
  expect(helpTopicFor("how are the chairs doing")).toBeNull();
});

test("the questions that the help names are understood", () => {
  const questions = HELP_TOPICS.find(({ name }) => name === "questions")!.lines.filter(
    (line) => !line.includes("."),
  );
  for (const question of questions.filter(
    (line) => !line.startsWith("who bought") && !line.startsWith("chart"),
  ))
    expect(`${question}: ${answer(question, desk).understood}`).toBe(`${question}: true`);
});
