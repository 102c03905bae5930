import { expect, it } from "vitest";
import { Random } from "./random.ts";
import { drawPlan, playRound } from "./round.ts";

// Twenty rounds here; a longer run by ROUNDS, from another SEED where one is given.
const rounds = Number(process.env["ROUNDS"] ?? 20);
const seed = Number(process.env["SEED"] ?? 20260509);

it.concurrent.each(Array.from({ length: rounds }, (_, index) => seed + index))(
  "nothing is lost or counted twice, whenever the process dies (seed %i)",
  async (own) => {
    const { deaths, problems } = await playRound(drawPlan(new Random(own)));
    expect(problems).toEqual([]);
    expect(deaths).toBeGreaterThan(0);
  },
  600_000,
);
