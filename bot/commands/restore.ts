import { dayOfInstant } from "../../core/calendar.ts";
import { show } from "../../core/money.ts";
import { type Restored, restore, type Summary } from "../../db/restore.ts";
import { readEnvironment } from "../environment.ts";
import { readSettings } from "../settings.ts";
import { machineZone } from "../zone.ts";

const USAGE = "usage: npm run restore FILE (the nightly copies are in the data directory, under backups)";

function summaryText({ notes, standing, pieces, earmarked }: Summary): string {
  return `${notes} notes, ${standing} facts, ${pieces} pieces, ${show(earmarked)} earmarked`;
}

function outcomeText(restored: Restored): string {
  switch (restored.kind) {
    case "no such file":
      return `There is no such file. Nothing was changed.\n${USAGE}`;
    case "locked":
      return "The bot is running on this ledger. Stop it first. Nothing was changed.";
    case "refused": {
      const findings = restored.findings.map(({ check, detail }) => `${check}: ${detail}`);
      return ["This copy is no good, so nothing was changed:", ...findings].join("\n");
    }
    case "restored": {
      const { before, after, kept } = restored;
      const was = kept ? "could not be read whole" : "no ledger";
      return [
        "Restored.",
        `Before: ${before ? summaryText(before) : was}`,
        `Now:    ${summaryText(after)}`,
        ...(kept ? [`The replaced ledger is kept in ${kept}`] : []),
      ].join("\n");
    }
  }
}

/** Puts a backup in the ledger's place. Exits with 2 for bad use, 1 where nothing was restored. */
function restoreFile(files: string[]): void {
  const { DATA_DIR, TIME_ZONE } = readEnvironment();
  const read = readSettings({ DATA_DIR, TIME_ZONE });
  const [file] = files;
  if (read.kind === "refused" || file === undefined || files.length > 1) {
    console.error(read.kind === "refused" ? read.problems.join("\n") : USAGE);
    process.exitCode = 2;
    return;
  }
  const { directory, zone } = read.settings;
  const now = Date.now();
  const today = dayOfInstant(now, zone ?? machineZone());
  const restored = restore({ directory, file, now, today });
  const isDone = restored.kind === "restored";
  console[isDone ? "log" : "error"](outcomeText(restored));
  process.exitCode = isDone ? 0 : 1;
}

restoreFile(process.argv.slice(2));
