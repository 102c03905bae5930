import { monitorEventLoopDelay } from "node:perf_hooks";
import { createAside } from "../../bot/aside.ts";
import { exportBodies } from "../../bot/files/bodies.ts";
import { openBenchLedger } from "./ledgers.ts";

const YEARS = 4;
const RESOLUTION_MS = 1;

/** The longest time, in milliseconds, that nothing was heard while 10,000 notes were copied and exported. */
export async function benchPause(): Promise<number> {
  const { directory, end, close } = openBenchLedger(YEARS);
  try {
    const aside = createAside(directory);
    const whole = exportBodies({ through: end, currency: "USD" }).map(({ make }) => make);
    const delay = monitorEventLoopDelay({ resolution: RESOLUTION_MS });
    // What was left over from filling the ledger is not meant.
    await new Promise((resolve) => setTimeout(resolve, 500));
    delay.enable();
    const copied = await aside.copy(end);
    for (const make of whole) await aside.make(make);
    delay.disable();
    if (copied.kind !== "made") throw new Error(copied.why);
    return delay.max / 1e6;
  } finally {
    close();
  }
}
