import type { Settings } from "../../db/settings.ts";
import { isZone, machineZone, zoneNamed, zonesCalled } from "../zone.ts";
import type { Dialogue } from "./dialogue.ts";

/** Asks whose days count, with the machine's own zone as the answer that Enter gives. */
export async function askZone({ say, ask }: Dialogue, settings: Settings): Promise<void> {
  const likely = settings.get("timeZone") ?? machineZone();
  for (;;) {
    const answer = await ask(
      `Your days go by ${likely} time. Right? Press Enter. Else type a city or a zone, like Denver:`,
    );
    const zone = answer === "" ? likely : zoneMeant(answer);
    if (zone) {
      settings.set("timeZone", zone);
      say(`Days go by ${zone} time.`);
      return;
    }
    say(`I know no time zone "${answer}". A big city near you will do, like Chicago or Los Angeles.`);
  }
}

function zoneMeant(answer: string): string | null {
  if (isZone(answer) && answer.includes("/")) return zoneNamed(answer);
  return zonesCalled(answer)[0] ?? null;
}
