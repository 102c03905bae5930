/** Work that may be left after each step and gone on with later: nothing else need wait for all of it. */
export type Steps<T> = Generator<void, T, void>;

/** All of the work at once. */
export function allAtOnce<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
