import { expect, it } from "vitest";
import { Random } from "./random.ts";
import { drawPlan, playRound } from "./round.ts";

// Twenty rounds here; a longer run by ROUNDS, from another SEED where one is given.
const rounds = Number(process.env["ROUNDS"] ?? 20);
const seed = Number(process.env["SEED"] ?? 20260509);

it.each(Array.from({ length: rounds }, (_, index) => seed + index))(
  "nothing is lost or counted twice, whenever the process dies (seed %i)",
  async (own) => {
    expect(await playRound(drawPlan(new Random(own)))).toEqual([]);
  },
  120_000,
);
