/** How often something random is tried: in every run of the tests, and in `npm run long`; RUNS says otherwise. */
export function runsOf({ short, long }: { short: number; long: number }): number {
  return Number(process.env["RUNS"] ?? (process.env["LONG"] ? long : short));
}

/** Whether what failed is made as small as can be: for whoever reads it; a mutant need only fail. */
export const SHRINKS = process.env["SHRINK"] !== "no";

/** The seed of what is random: fixed, so that a failure is the same everywhere; another one by SEED. */
export const SEED = Number(process.env["SEED"] ?? 20260509);
