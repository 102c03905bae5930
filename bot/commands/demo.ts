import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openLedger } from "../../db/open.ts";
import { fillDemo } from "../demo/fill.ts";
import { readEnvironment } from "../environment.ts";
import { openLog } from "../log.ts";
import { readSettings } from "../settings.ts";
import { runTerminal } from "../terminal/terminal.ts";
import { zoneInForce } from "../zone.ts";

/** The chat of the terminal on a throw-away ledger with an invented half year in it. */
const directory = mkdtempSync(join(tmpdir(), "tailgate-demo-"));
const read = readSettings({ ...readEnvironment(), BOT_TOKEN: "", DATA_DIR: directory });
if (read.kind === "refused") {
  console.error(read.problems.join("\n"));
  process.exitCode = 1;
} else {
  const { settings } = read;
  const now = () => Date.now();
  const opened = openLedger({ directory, now: now() });
  if (opened.kind !== "open") throw new Error(`the demo's ledger did not open: ${opened.kind}`);
  const { ledger } = opened;
  const zone = () => zoneInForce(settings.zone, ledger.settings);
  const deps = { ledger, currency: settings.currency, zone, now, log: openLog(settings.level, []) };
  fillDemo(deps);
  process.stdout.write("A half year of invented notes, thrown away when you leave.\n");
  process.stdout.write('Ask "month", "loan", "pieces", "best", "recap"; or send a note of your own.\n\n');
  await runTerminal(deps);
  ledger.close();
  rmSync(directory, { recursive: true, force: true });
}
