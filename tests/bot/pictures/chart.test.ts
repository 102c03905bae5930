import { expect, test } from "vitest";
import { drawChart } from "../../../bot/pictures/chart.ts";
import { pngOf } from "../../../bot/pictures/png.ts";
import { answer } from "../../../core/questions/ask.ts";
import { openChat } from "../conversation/chat.ts";

const NOTES = [
  "new loan grad 4100 6.8% 2026-03-01",
  "new loan van 900 5% 2026-03-01",
  "bought dresser 30",
  "paint 12.50 for dresser",
  "sold dresser 120 cash",
  "gas 20",
  "paid grad loan 200",
];

function asked(question: string) {
  const chat = openChat();
  for (const note of NOTES) chat.say(note);
  const { books } = chat.ledger;
  const desk = { books, today: "2026-05-09", currency: "USD", people: [], me: 1, mileageRates: {} };
  const answered = answer(question, desk);
  const said = chat.say(question);
  chat.end();
  return { answered, said };
}

test("a chart of profit by month shows the same amounts as its caption", async () => {
  const { answered, said } = asked("chart of profit by month");
  expect(answered.text.split("\n")[0]).toBe("Made, ever: 57.50");
  const svg = drawChart(answered.chart!);
  expect(svg).toContain("May 2026");
  expect(svg).toContain("57.50");
  expect(said.text).toBe("[file chart.png]");
  expect((await pngOf(svg)).subarray(1, 4).toString()).toBe("PNG");
});

test("losses go to the left of the zero line, gains to the right", () => {
  const svg = drawChart(asked("chart by kind").answered.chart!);
  expect(svg).toContain("dresser");
  const bars = {
    kind: "bars",
    title: "Made",
    bars: [
      { label: "a", value: -500, told: "-5.00" },
      { label: "b", value: 500, told: "5.00" },
    ],
  } as const;
  const [loss, gain] = [
    ...drawChart({ ...bars, bars: [...bars.bars] }).matchAll(
      /<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)"[^>]* rx=/g,
    ),
  ];
  expect(Number(loss![1]) + Number(loss![2])).toBeCloseTo(Number(gain![1]), 0);
});

test("two loans in one chart are told apart by name, colour and dashes", () => {
  const { answered } = asked("loan chart");
  const svg = drawChart(answered.chart!);
  expect(svg).toContain("grad: 4,100.00 to");
  expect(svg).toContain("van: 900.00 to 900.00");
  const strokes = [
    ...svg.matchAll(/stroke="(#\w+)" stroke-width="6"[^>]*?(?:stroke-dasharray="([^"]+)")?\/>/g),
  ].map(([, color, dash]) => `${color} ${dash}`);
  expect(new Set(strokes).size).toBe(2);
});
