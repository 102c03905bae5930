import { expect, it } from "vitest";
import { SEED } from "../runs.ts";
import { Random } from "./random.ts";
import { drawPlan, playRound } from "./round.ts";

/** One round in every run of the tests; more of them by ROUNDS, from another SEED where one is given. */
const rounds = Number(process.env["ROUNDS"] ?? 1);

/** Rounds mostly wait, so four run side by side; more would only starve each other. */
const lanes: Promise<unknown>[] = Array.from({ length: 4 }, () => Promise.resolve());

function inLane<T>(index: number, work: () => Promise<T>): Promise<T> {
  const lane = index % lanes.length;
  const mine = lanes[lane]!.then(work);
  lanes[lane] = mine.catch(() => {});
  return mine;
}

it.concurrent.each(Array.from({ length: rounds }, (_, index) => SEED + index))(
  "nothing is lost or counted twice, whenever the process dies (seed %i)",
  async (own) => {
    const plan = drawPlan(new Random(own));
    const { deaths, problems } = await inLane(own, () => playRound(plan));
    expect(problems).toEqual([]);
    expect(deaths).toBeGreaterThan(0);
  },
  // A round waits for nothing but the bot, and gives up by itself where it hangs.
  3_600_000,
);
