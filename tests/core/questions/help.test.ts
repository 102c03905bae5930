import { expect, test } from "vitest";
import { HELP_PAGES, helpPageFor, helpText } from "../../../core/answers/help-pages.ts";
import { answer } from "../../../core/questions/ask.ts";
import { springLedger } from "../answers/asking.ts";

const desk = {
  books: springLedger().books(),
  today: "2026-04-10",
  currency: "USD",
  people: [{ id: 1, name: "Robin" }],
  me: 1,
  mileageRates: {},
};

test.each(HELP_PAGES.map((page) => [page.name, page] as const))("help %s fits a phone", (name, page) => {
  const lines = helpText(page).split("\n");
  expect(lines.length).toBeLessThanOrEqual(12);
  for (const line of lines) expect(line.length).toBeLessThanOrEqual(54);
  expect(helpPageFor(`help ${name}`)).toBe(page);
});

test("a topic is found by what one wants to do", () => {
  expect(helpPageFor("how do I delete a note")?.name).toBe("slips");
  expect(helpPageFor("How can I get a buyer's deposit in?")?.name).toBe("deposits");
  expect(helpPageFor("how much did i make")).toBeNull();
  expect(helpPageFor("how are the chairs doing")).toBeNull();
});

test("the questions that the help names are understood", () => {
  const questions = HELP_PAGES.find(({ name }) => name === "questions")!.lines.filter(
    (line) => !line.includes(".") && !line.startsWith("More"),
  );
  for (const question of questions.filter(
    (line) => !line.startsWith("who bought") && !line.startsWith("chart"),
  ))
    expect(`${question}: ${answer(question, desk).understood}`).toBe(`${question}: true`);
});
